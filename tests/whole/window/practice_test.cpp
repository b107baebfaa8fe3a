// SPDX-License-Identifier: MIT
// Practice in the real window: a problem chosen by keys, answered, hinted at, and another one by the mouse.
#include "tests/whole/window/raft_fixture.h"

using namespace whole;

namespace TAILPOINT_FILE {

class PracticeInTheWindow : public OnTheRaft {
protected:
    /// Between the bar and the sheet, where the question stands in words, and above what its arrows reach.
    QRect head() const {
        const QRect frame = m_program->frame();
        return {frame.left() + 4, frame.top() + 70, panel().left() - frame.left() - 30, 140};
    }
    QRect below() const { return panel().adjusted(0, 150, 0, 0); }
    /// The last of the quiet buttons under the question: the rightmost place in the given forces' colour.
    std::optional<QPointF> lastLink(const QImage& seen) const {
        for (int x = head().right(); x > head().center().x(); x -= 2)
            for (int y = head().top(); y < head().bottom(); y += 12)
                if (countNear(seen, {x - 1, y, 2, 12}, kGiven) > 0)
                    return QPointF(x - 6, y + 6);
        return std::nullopt;
    }
};

/// 0NGFZD: 185 N at 60 degrees and 235 N at -19; R = 325.64 N at 14.9 degrees (law of cosines, by hand).
TEST_F(PracticeInTheWindow, AProblemIsChosenAnsweredAndFollowedByAnother) {
    const QImage before = settledScreen();
    ASSERT_TRUE(key(QStringLiteral("F8")));
    ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Practice")); }));
    ASSERT_TRUE(type(QStringLiteral("0NGFZD")));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    ASSERT_TRUE(m_program->turnTo());
    ASSERT_TRUE(eventually([&] { return m_program->title().startsWith(QStringLiteral("Unsaved sketch")); }))
        << m_program->title().toStdString();
    const QImage asked =
        screenWhere([&](const QImage& now) { return changedPixels(before, now, head()) > 1500; });
    ASSERT_FALSE(asked.isNull()) << "no question in words" << keep(screen());
    const QImage still = settledScreen();
    EXPECT_LT(countNear(still, m_program->sheet(), kSum), 150) << "the answer is drawn" << keep(still);
    EXPECT_EQ(countNear(still, below(), kSum), 0) << "the answer is told" << keep(still);

    ASSERT_TRUE(key(QStringLiteral("F9")));
    const auto isHinted = [&](const QImage& now) { return changedPixels(still, now, below()) > 200; };
    ASSERT_FALSE(screenWhere(isHinted).isNull()) << "no hint" << keep(screen());
    const QImage hinted = settledScreen();  // the whole of it
    ASSERT_TRUE(key(QStringLiteral("F9"))); // nothing was entered
    const QImage refused =
        screenWhere([&](const QImage& now) { return changedPixels(hinted, now, head()) > 100; });
    ASSERT_FALSE(refused.isNull()) << "not said why" << keep(screen());
    EXPECT_LT(changedPixels(hinted, refused, below()), 60) << "the caret at most" << keep(refused);

    ASSERT_TRUE(type(QStringLiteral("326")));
    ASSERT_TRUE(key(QStringLiteral("Tab")));
    ASSERT_TRUE(type(QStringLiteral("14.9")));
    const QImage typed = settledScreen();
    ASSERT_TRUE(key(QStringLiteral("Return")));
    ASSERT_FALSE(
        screenWhere([&](const QImage& now) { return changedPixels(typed, now, below()) > 200; }).isNull())
        << "no verdict" << keep(screen());
    const QImage marked = settledScreen();
    const auto link = lastLink(marked);
    ASSERT_TRUE(link) << "no button under the question" << keep(marked);
    ASSERT_TRUE(click(*link));
    EXPECT_FALSE(screenWhere([&](const QImage& now) {
                     return changedPixels(marked, now, m_program->sheet()) > 800;
                 }).isNull())
        << "no other question" << keep(screen());
    EXPECT_FALSE(isModified());
    const QImage next = settledScreen();
    EXPECT_LT(countNear(next, m_program->sheet(), kSum), 150) << keep(next);
}

} // namespace TAILPOINT_FILE
