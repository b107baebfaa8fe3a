// A learner's own answer in the real window, by real keys.
#include "tests/whole/window/raft_fixture.h"

using namespace whole;

namespace {

/// The panel is painted with the answer's colour where the answer stands, and 'to find' is set in it too.
class OwnAnswerOnTheRaft : public OnTheRaft {
protected:
    /// The fields and what stands under them: below the table of given values.
    QRect below() const { return panel().adjusted(0, 150, 0, 0); }
    QRect verdicts() const {
        const QRect frame = m_program->frame();
        return {frame.right() - 210, panel().top() + 150, 200, 100};
    }
};

TEST_F(OwnAnswerOnTheRaft, AWrongValueIsTypedAndItsVerdictShowsAndNothingToldTheAnswerBefore) {
    const QImage before = settledScreen();
    ASSERT_GT(countNear(before, m_program->sheet(), kSum), 400)
        << "the resultant is on the sheet" << keep(before);
    ASSERT_TRUE(key(QStringLiteral("F7")));
    const QImage hidden = screenWhere([&](const QImage& now) {
        return countNear(now, m_program->sheet(), kSum) < 150; // the ring and the letter of the open tip
    });
    ASSERT_FALSE(hidden.isNull()) << "the resultant stays on the sheet" << keep(screen());
    EXPECT_EQ(countNear(hidden, below(), kSum), 0) << "the answer stays in the panel" << keep(hidden);
    ASSERT_TRUE(type(QStringLiteral("335")));
    const QImage typed = settledScreen();
    EXPECT_EQ(changedPixels(hidden, typed, verdicts()), 0)
        << "nothing is said before it is marked" << keep(typed);
    ASSERT_TRUE(key(QStringLiteral("Return")));
    const QImage marked =
        screenWhere([&](const QImage& now) { return changedPixels(typed, now, verdicts()) > 60; });
    ASSERT_FALSE(marked.isNull()) << "no verdict beside the value" << keep(screen());
    EXPECT_EQ(countNear(marked, below(), kSum), 0) << "the answer is told unasked" << keep(marked);
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    const QImage after =
        screenWhere([&](const QImage& now) { return changedPixels(before, now, m_program->sheet()) == 0; });
    EXPECT_FALSE(after.isNull()) << "the sheet is another than before" << keep(screen());
    EXPECT_FALSE(isModified());
}

} // namespace
