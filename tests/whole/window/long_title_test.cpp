// SPDX-License-Identifier: MIT
// Somebody's clipboard holds a book, and it lands in the title.
#include "tests/whole/window/raft_fixture.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>

using namespace whole;

namespace TAILPOINT_FILE {

/// Text of the clipboard that notes that somebody took it.
class Book : public QMimeData {
public:
    explicit Book(bool& taken) : m_taken(taken) {}
    QStringList formats() const override { return {QStringLiteral("text/plain")}; }

protected:
    QVariant retrieveData(const QString&, QMetaType) const override {
        m_taken = true;
        return QString(70'000, u'W');
    }

private:
    bool& m_taken;
};

TEST_F(OnTheRaft, ABookPastedIntoTheTitleIsRefusedInTheFieldAndNothingIsLost) {
    bool taken = false;
    QGuiApplication::clipboard()->setMimeData(new Book(taken)); // the clipboard owns it
    ASSERT_TRUE(key(QStringLiteral("alt+s")));
    settledScreen();
    ASSERT_TRUE(key(QStringLiteral("t")) && key(QStringLiteral("Return"))); // two commands begin with it
    settledScreen();
    ASSERT_TRUE(key(QStringLiteral("ctrl+v")));
    ASSERT_TRUE(eventually([&] {
        QCoreApplication::processEvents();
        return taken;
    })) << keep(screen());
    QCoreApplication::processEvents();
    ASSERT_TRUE(key(QStringLiteral("Return")));
    const QImage refused =
        screenWhere([&](const QImage& now) { return countNear(now, m_program->sheet(), kWarning) > 50; });
    EXPECT_FALSE(refused.isNull()) << "no line at the field that says why" << keep(screen());
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    ASSERT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Up")));
    ASSERT_TRUE(becomesModified(true));
    const QJsonObject sketch = saved();
    EXPECT_EQ(sketch[QStringLiteral("title")].toString(), QStringLiteral("Survey raft on two lines"));
    EXPECT_GT(number(force(sketch, 0), "magnitude"), 340);
    QGuiApplication::clipboard()->clear();
}

} // namespace TAILPOINT_FILE
