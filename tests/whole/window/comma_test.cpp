// SPDX-License-Identifier: MIT
// A number that reads two ways, typed on the real sheet: nothing changes until one reading is taken.
#include "tests/whole/window/raft_fixture.h"

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>

using namespace whole;

namespace TAILPOINT_FILE {

class AComma : public OnTheRaft {
protected:
    /// "1,234" into the magnitude of the first force; the screen once the reason stands there.
    QImage refused() {
        EXPECT_TRUE(key(QStringLiteral("Tab")) && key(QStringLiteral("Return")));
        const QImage before = settledScreen();
        EXPECT_TRUE(type(QStringLiteral("1,234")) && key(QStringLiteral("Return")));
        const int ink = countNear(before, m_program->sheet(), kWarning);
        return screenWhere(
            [&](const QImage& now) { return countNear(now, m_program->sheet(), kWarning) > ink + 200; });
    }
    /// What stands in the open field: selected, copied, and read from the clipboard.
    QString typedText() {
        QString text;
        EXPECT_TRUE(key(QStringLiteral("ctrl+a")) && key(QStringLiteral("ctrl+c")));
        eventually([&] {
            QCoreApplication::processEvents();
            text = QGuiApplication::clipboard()->text();
            return !text.isEmpty();
        });
        return text;
    }
};

TEST_F(AComma, BeforeThreeDigitsLeavesSketchAndTextAloneAndSaysWhy) {
    const QImage seen = refused();
    ASSERT_FALSE(seen.isNull()) << "no reason on the sheet" << keep(screen());
    EXPECT_EQ(typedText(), QStringLiteral("1,234")) << keep(seen);
    EXPECT_FALSE(isModified()) << m_program->title().toStdString();
    EXPECT_EQ(number(force(readJson(m_file), 0), "magnitude"), 340);
}

TEST_F(AComma, IsTakenAsTheDecimalMarkByTheFirstKeyThatIsOffered) {
    ASSERT_FALSE(refused().isNull()) << keep(screen());
    ASSERT_TRUE(key(QStringLiteral("alt+1")));
    ASSERT_TRUE(becomesModified(true));
    EXPECT_EQ(number(force(saved(), 0), "magnitude"), 1.234);
}

TEST_F(AComma, IsTakenAsPartingThousandsByTheSecond) {
    ASSERT_FALSE(refused().isNull()) << keep(screen());
    ASSERT_TRUE(key(QStringLiteral("alt+2")));
    ASSERT_TRUE(becomesModified(true));
    EXPECT_EQ(number(force(saved(), 0), "magnitude"), 1234);
}

} // namespace TAILPOINT_FILE
