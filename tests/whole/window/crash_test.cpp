// SPDX-License-Identifier: MIT
// The real program killed, started again, and killed again while it brings the work back.
#include "tests/whole/window/raft_fixture.h"

#include <QDir>
#include <QJsonDocument>

using namespace whole;

namespace TAILPOINT_FILE {

class Killed : public OnTheRaft {
protected:
    /// First magnitudes in the copies that a next start would find.
    QList<double> copies() const {
        QList<double> found;
        const QDir folder(m_program->home() + QStringLiteral("/state/tailpoint/recovery"));
        for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files)) {
            const QString text = readJson(folder.filePath(name))[QStringLiteral("sketch")].toString();
            if (!text.isEmpty())
                found << number(force(QJsonDocument::fromJson(text.toUtf8()).object(), 0), "magnitude");
        }
        return found;
    }
};

TEST_F(Killed, WorkThatIsBroughtBackOutlivesAKillInTheSameMoment) {
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Up")));
    ASSERT_TRUE(eventually([&] { return copies().size() == 1; }));
    const double changed = copies().front();
    ASSERT_GT(changed, 340);
    m_program->kill();
    // By hand as often as one likes: TAILPOINT_KILLS=1000 build/release/test_window --gtest_filter='Killed.*'
    bool isGiven = false;
    const int given = qEnvironmentVariableIntValue("TAILPOINT_KILLS", &isGiven);
    for (int times = 0; times < (isGiven ? given : 3); ++times) {
        Program next({}, m_program->home());
        ASSERT_NE(next.window(), 0);
        ASSERT_TRUE(eventually([&] { // as soon as it is offered
            return key(QStringLiteral("alt+b")) && next.title().contains(u'*');
        })) << keep(screen());
        next.kill();
        EXPECT_TRUE(copies().contains(changed)) << "lost at the kill number " << times + 1;
    }
}

} // namespace TAILPOINT_FILE
