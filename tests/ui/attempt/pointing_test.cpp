// SPDX-License-Identifier: MIT
// An angle of the learner's own answer that is pointed at on the sheet.
#include "tests/ui/attempt/own_answer_fixture.h"

#include <QToolButton>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class PointedAngle : public OwnAnswerTest {
protected:
    void pressPoint(const std::string& name) {
        QTest::mouseClick(child<QToolButton>(view(), ("ownPoint-" + name).c_str()), Qt::LeftButton);
    }
    void look(const char* name) {
        begin();
        answer().addField(name);
        pressPoint(name);
        ASSERT_EQ(answer().pointing(), name);
    }
    std::size_t indexOf(const QuantityId& angle) {
        const auto& all = answer().pointable();
        for (std::size_t i = 0; i < all.size(); ++i)
            if (isSame(all[i].angle, angle))
                return i;
        ADD_FAILURE() << "no such angle";
        return 0;
    }
    void go(std::size_t index) {
        for (std::size_t i = 0; i <= index; ++i)
            QTest::keyClick(&window->canvas(), Qt::Key_Right);
        EXPECT_EQ(answer().pointsAt(), index);
    }
};

TEST_F(PointedAngle, TheRightOneIsTakenWithTheArrowKeysAndMarkedRight) {
    look("gamma");
    EXPECT_TRUE(window->canvas().hasFocus());
    EXPECT_EQ(summary(), QString::fromUtf8("Which angle is γ?"));
    go(indexOf(oppositeId(kSumVector)));
    EXPECT_EQ(summary(), QStringLiteral("Angle at the tip of P, with Q laid on there"));
    EXPECT_EQ(child<QLabel>(view(), "ownSummary")->accessibleName(), summary()) << "spoken";
    QTest::keyClick(&window->canvas(), Qt::Key_Return);
    EXPECT_TRUE(answer().pointing().empty());
    EXPECT_EQ(field("gamma")->placeholderText(), QStringLiteral("pointed at"));
    EXPECT_TRUE(field("gamma")->accessibleDescription().contains(QStringLiteral("tip of P")));
    EXPECT_TRUE(field("gamma")->hasFocus());
    EXPECT_EQ(verdict("gamma"), QString());
    QTest::keyClick(field("gamma"), Qt::Key_Return);
    EXPECT_EQ(verdict("gamma"), QStringLiteral("right"));
}

TEST_F(PointedAngle, AWrongOneIsToldByItsName) {
    look("gamma");
    go(indexOf(betweenId(forceVector(0), forceVector(1))));
    QTest::keyClick(&window->canvas(), Qt::Key_Space);
    mark();
    EXPECT_EQ(verdict("gamma"), QString::fromUtf8("not right: that is \u03c6"));
    EXPECT_FALSE(everything().contains(QStringLiteral("115"))) << "its value is not told";
}

TEST_F(PointedAngle, AClickOnItsArcTakesIt) {
    look("phi");
    const std::size_t tails = indexOf(betweenId(forceVector(0), forceVector(1)));
    const PointableAngle& angle = answer().pointable()[tails];
    const double middle = std::atan2(angle.leg.y(), angle.leg.x()) + angle.sweep / 2;
    Canvas& canvas = window->canvas();
    const QPoint common = pixel(0, 0);
    bool isFound = false;
    for (int radius = 20; radius < 200 && !isFound; radius += 4) { // out along its bisector
        const QPoint at = common + (radius * QPointF(std::cos(middle), -std::sin(middle))).toPoint();
        QTest::mouseMove(&canvas, at);
        isFound = answer().pointsAt() == tails;
        if (isFound)
            QTest::mouseClick(&canvas, Qt::LeftButton, {}, at);
    }
    ASSERT_TRUE(isFound);
    ASSERT_TRUE(answer().pointed("phi"));
    EXPECT_FALSE(window->document().canUndo()) << "the sketch is as it was";
    mark();
    EXPECT_EQ(verdict("phi"), QStringLiteral("right"));
}

TEST_F(PointedAngle, EscapeLeavesTheLookingAloneAndATypedValueCountsBeforeIt) {
    look("gamma");
    QTest::keyClick(&window->canvas(), Qt::Key_Escape);
    EXPECT_TRUE(answer().pointing().empty());
    EXPECT_TRUE(answer().isOn());
    EXPECT_TRUE(field("gamma")->hasFocus());
    pressPoint("gamma");
    go(indexOf(betweenId(forceVector(0), forceVector(1))));
    QTest::keyClick(&window->canvas(), Qt::Key_Return);
    type("gamma", "115"); // 180 - 65
    mark();
    EXPECT_EQ(verdict("gamma"), QStringLiteral("right"));
}

/// R drawn at 10 degrees makes 15 with P; the right angle there is 28.65 (law of sines, by hand).
TEST_F(PointedAngle, OnADrawnVectorItIsAsLargeAsItWasDrawn) {
    begin();
    answer().draw(kSumVector, 400 * Eigen::Vector2d(std::cos(0.174533), std::sin(0.174533)));
    const char* beta = nullptr;
    for (const Answerable& one : answer().addable())
        if (one.id == oppositeId(forceVector(1)))
            beta = one.name == "beta" ? "beta" : "alpha";
    ASSERT_TRUE(beta);
    answer().addField(beta);
    pressPoint(beta);
    go(indexOf(oppositeId(forceVector(1))));
    QTest::keyClick(&window->canvas(), Qt::Key_Return);
    mark();
    EXPECT_EQ(verdict(beta), QStringLiteral("the right one, as you drew it"));
    answer().forgetDrawn();
    EXPECT_FALSE(answer().pointed(beta)) << "its leg has gone";
}

TEST_F(PointedAngle, AChangedSketchEndsTheLooking) {
    look("gamma");
    change();
    EXPECT_TRUE(answer().pointing().empty());
    pressPoint("gamma");
    trigger("ownAnswer");
    EXPECT_TRUE(answer().pointing().empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
