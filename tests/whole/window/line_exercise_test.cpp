// SPDX-License-Identifier: MIT
// A problem worked by the lines of its solution in the real window, with real keys.
#include "tests/whole/window/raft_fixture.h"

#include <array>

using namespace whole;

namespace TAILPOINT_FILE {

/// 0NGFZD: 185 N at 60 degrees and 235 N at -19. By Python: between the tails 79 degrees, in the triangle 101
/// degrees, R = 325.64 N, opposite to 185 N 33.90 degrees, the direction 14.90 degrees; by
/// components 92.5 + 222.20 and 160.21 - 76.51.
class LinesInTheRealWindow : public OnTheRaft {
protected:
    /// Chooses the problem from the list, and with an access key how it is worked.
    void begin(const char* accessKey) {
        ASSERT_TRUE(key(QStringLiteral("F8")));
        ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Practice")); }));
        ASSERT_TRUE(type(QStringLiteral("0NGFZD")));
        ASSERT_TRUE(key(QString::fromLatin1(accessKey)));
        ASSERT_TRUE(m_program->turnTo());
        ASSERT_TRUE(eventually([&] {
            return m_program->title().startsWith(QStringLiteral("Unsaved sketch"));
        })) << m_program->title().toStdString();
        const QImage now = settledScreen();
        ASSERT_FALSE(isTold(now)) << "the answer is drawn" << keep(now);
    }
    /// The resultant's arrow is on the sheet.
    bool isTold(const QImage& seen) const { return countNear(seen, m_program->sheet(), kSum) > 300; }
    bool becomesTold() const {
        return !screenWhere([&](const QImage& now) { return isTold(now); }).isNull();
    }
};

TEST_F(LinesInTheRealWindow, TheLastLineIsFilledIn) {
    begin("alt+f");
    const QImage before = settledScreen();
    for (int i = 0; i < 9; ++i) // to the last of what a line can rest on: turned off from another direction
        ASSERT_TRUE(key(QStringLiteral("Down")));
    ASSERT_TRUE(key(QStringLiteral("Tab")));
    ASSERT_TRUE(type(QStringLiteral("45")));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    const QImage refused =
        screenWhere([&](const QImage& now) { return changedPixels(before, now, panel()) > 300; });
    ASSERT_FALSE(refused.isNull()) << "no verdict" << keep(screen());
    EXPECT_FALSE(isTold(refused)) << keep(refused);
    ASSERT_TRUE(key(QStringLiteral("ctrl+a")));
    ASSERT_TRUE(type(QStringLiteral("14.9")));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    EXPECT_TRUE(becomesTold()) << "the solution does not stand whole" << keep(screen());
    EXPECT_FALSE(isModified());
}

/// Which line has the slip is drawn: each is pointed at in turn and mended with its right number, which only
/// the one with the slip takes.
TEST_F(LinesInTheRealWindow, TheSlipIsFoundAndMended) {
    begin("alt+s");
    // by the triangle, or by components: which, the slip says
    const std::array<std::array<const char*, 2>, 8> right{{{"79", "92.5"},
                                                           {"101", "160.21"},
                                                           {"325.64", "222.20"},
                                                           {"33.9", " -76.509"},
                                                           {"14.9", "314.70"},
                                                           {"1", "83.70"},
                                                           {"1", "325.64"},
                                                           {"1", "14.9"}}};
    bool isMended = false;
    for (std::size_t line = 0; line < right.size() && !isMended; ++line) {
        const QImage before = settledScreen();
        ASSERT_TRUE(key(QStringLiteral("Return")));
        ASSERT_FALSE(screenWhere([&](const QImage& now) {
                         return changedPixels(before, now, panel()) > 100;
                     }).isNull())
            << "nothing is said of line " << line + 1 << keep(screen());
        for (std::size_t way = 0; way < 2 && !isMended; ++way) {
            ASSERT_TRUE(key(QStringLiteral("ctrl+a")));
            ASSERT_TRUE(type(QLatin1String(right[line][way])));
            ASSERT_TRUE(key(QStringLiteral("Return")));
            isMended = isTold(settledScreen());
        }
        if (!isMended) {
            ASSERT_TRUE(key(QStringLiteral("Down")));
        }
    }
    EXPECT_TRUE(isMended) << keep(screen());
    EXPECT_FALSE(isModified());
}

} // namespace TAILPOINT_FILE
