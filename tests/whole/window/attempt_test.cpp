// SPDX-License-Identifier: MIT
// A learner's own answer in the real window, by real keys.
#include "tests/whole/window/hearing.h"
#include "tests/whole/window/raft_fixture.h"

using namespace whole;

namespace TAILPOINT_FILE {

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
    const QImage still = settledScreen(); // the panel may be painted after the sheet
    EXPECT_EQ(countNear(still, below(), kSum), 0) << keep(still);
    ASSERT_TRUE(type(QStringLiteral("335")));
    const QImage typed = settledScreen();
    EXPECT_EQ(changedPixels(still, typed, verdicts()), 0)
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

/// By keys alone: marked, and what gives the number drawn and taken off again.
TEST_F(OwnAnswerOnTheRaft, WhatGivesTheNumberIsDrawnOnTheSheetAndTakenOffAgain) {
    ASSERT_TRUE(key(QStringLiteral("F7")));
    ASSERT_FALSE(screenWhere([&](const QImage& now) {
                     return countNear(now, m_program->sheet(), kSum) < 150;
                 }).isNull());
    settledScreen();
    ASSERT_TRUE(type(QStringLiteral("335")));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    const QImage marked = settledScreen();
    for (int i = 0; i < 4; ++i) // the direction's field, the button that marks, the answer, what gives it
        ASSERT_TRUE(key(QStringLiteral("Tab")));
    ASSERT_TRUE(key(QStringLiteral("space")));
    const QImage drawn =
        screenWhere([&](const QImage& now) { return changedPixels(marked, now, m_program->sheet()) > 400; });
    ASSERT_FALSE(drawn.isNull()) << "nothing is drawn" << keep(screen());
    EXPECT_LT(countNear(drawn, m_program->sheet(), kSum), 150) << "the resultant is drawn" << keep(drawn);
    ASSERT_TRUE(key(QStringLiteral("space")));
    EXPECT_FALSE(screenWhere([&](const QImage& now) {
                     return changedPixels(marked, now, m_program->sheet()) == 0;
                 }).isNull())
        << "something stays on the sheet" << keep(screen());
}

#ifdef TAILPOINT_HAS_DBUS

/// 335 N is the other diagonal, 520 N the resultant (law of cosines, by hand).
TEST(SpokenAnswer, AScreenReaderHearsTheVerdictAndNotTheAnswer) {
    Hearing hearing;
    if (!hearing.whyNot().isEmpty())
        GTEST_SKIP() << hearing.whyNot().toStdString();
    const QTemporaryDir folder;
    const Program program({copyOfSample(QStringLiteral("survey-raft.json"), folder)});
    ASSERT_NE(program.window(), 0);
    ASSERT_TRUE(settledScreen().width() > 0);
    ASSERT_TRUE(key(QStringLiteral("F7")));
    settledScreen();
    ASSERT_TRUE(type(QStringLiteral("335")));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    const auto verdict = [&] {
        for (const QString& one : hearing.heard())
            if (one.contains(QStringLiteral("It is not right yet.")))
                return one;
        return QString();
    };
    ASSERT_TRUE(eventually([&] { return !verdict().isEmpty(); }))
        << hearing.heard().join(u'\n').toStdString();
    EXPECT_TRUE(verdict().startsWith(QStringLiteral("notification: "))) << verdict().toStdString();
    EXPECT_TRUE(verdict().contains(QStringLiteral("Magnitude of R in N: not right")))
        << verdict().toStdString();
    EXPECT_TRUE(verdict().contains(QStringLiteral("0 of 2 points")));
    EXPECT_FALSE(verdict().contains(QStringLiteral("520"))) << verdict().toStdString();
}

#endif

} // namespace TAILPOINT_FILE
