// SPDX-License-Identifier: MIT
// A learner's own answer without a mouse, and as assistive technology meets it.
#include "tests/ui/attempt/own_answer_fixture.h"

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class AnswerByKeys : public OwnAnswerTest {
protected:
    QWidget* focus() { return window->focusWidget(); }
};

TEST_F(AnswerByKeys, TabGoesFromTheSheetThroughTheFieldsToTheButtonThatMarks) {
    begin();
    EXPECT_EQ(focus(), field("R")) << "the keyboard is in the first field";
    window->canvas().setFocus(Qt::TabFocusReason);
    for (int i = 0; i < 3; ++i) { // P, Q, R
        QTest::keyClick(focus(), Qt::Key_Tab);
        ASSERT_EQ(focus(), &window->canvas());
    }
    QTest::keyClick(focus(), Qt::Key_Tab);
    EXPECT_EQ(focus(), field("R"));
    QTest::keyClick(focus(), Qt::Key_Tab);
    EXPECT_EQ(focus(), field("theta_R"));
    QTest::keyClick(focus(), Qt::Key_Tab);
    EXPECT_EQ(focus(), child<QPushButton>(view(), "ownMark"));
    QTest::keyClick(focus(), Qt::Key_Tab);
    EXPECT_EQ(focus(), child<QPushButton>(view(), "ownAdd")) << "nothing is marked yet";
}

TEST_F(AnswerByKeys, EnterMarksAndEscapeLeavesFromAField) {
    begin();
    QTest::keyClicks(focus(), QStringLiteral("520"));
    QTest::keyClick(focus(), Qt::Key_Return);
    EXPECT_EQ(verdict("R"), QStringLiteral("right"));
    QTest::keyClick(focus(), Qt::Key_Escape);
    EXPECT_FALSE(answer().isOn());
}

TEST_F(AnswerByKeys, EscapeOnTheSheetDeselectsFirstAndLeavesThen) {
    begin();
    Canvas& canvas = window->canvas();
    canvas.setFocus(Qt::TabFocusReason);
    canvas.select(0);
    QTest::keyClick(&canvas, Qt::Key_Escape);
    EXPECT_TRUE(answer().isOn());
    QTest::keyClick(&canvas, Qt::Key_Escape);
    EXPECT_FALSE(answer().isOn());
}

TEST_F(AnswerByKeys, ACommandMarksFromAnywhereWhileAnAnswerIsUnderWay) {
    EXPECT_FALSE(child<QAction>(*window, "markOwnAnswer")->isEnabled());
    begin();
    type("R", "520");
    window->canvas().setFocus();
    trigger("markOwnAnswer");
    EXPECT_EQ(verdict("R"), QStringLiteral("right"));
}

/// What is told by an alert is the summary's name; the offscreen platform has nobody to tell it to.
TEST_F(AnswerByKeys, TheVerdictIsSpokenAndNamedAfterItsQuantity) {
    begin();
    auto* spoken = child<QLabel>(view(), "ownSummary");
    EXPECT_EQ(spoken->accessibleName(), QString());
    type("R", "335");
    QTest::keyClick(focus(), Qt::Key_Return);
    const QString words = spoken->accessibleName();
    EXPECT_TRUE(words.startsWith(QStringLiteral("It is not right yet.\n"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("Magnitude of R in N: not right"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("law of cosines")));
    EXPECT_FALSE(words.contains(QStringLiteral("520")));
    EXPECT_EQ(child<QLabel>(view(), "ownVerdict-R")->accessibleName(),
              QStringLiteral("Magnitude of R in N: not right: see below"));
    EXPECT_EQ(field("R")->accessibleDescription(), QStringLiteral("not right: see below"));
    EXPECT_EQ(field("theta_R")->accessibleName(), QStringLiteral("Direction of R in degrees"));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
