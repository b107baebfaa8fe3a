// SPDX-License-Identifier: MIT
// Snapping: round magnitudes, round angles, other forces' lines, and Alt, which turns it off.
#include "tests/ui/canvas_fixture.h"
#include "ui/canvas/snap.h"

namespace tailpoint {

namespace TAILPOINT_FILE {

SnapField field(double pixelsPerUnit) {
    return {pixelsPerUnit, 50, {}, true};
}

TEST(CanvasSnap, MagnitudeStepsAreRoundAndFollowTheScale) {
    EXPECT_DOUBLE_EQ(magnitudeStep(field(1)), 5); // 4 px apart or more: 5 N
    EXPECT_DOUBLE_EQ(magnitudeStep(field(2)), 2); // 4 px at 2 N
    EXPECT_DOUBLE_EQ(magnitudeStep(field(0.05)), 100);
    EXPECT_DOUBLE_EQ(magnitudeStep(field(500)), 0.01);
}

TEST(CanvasSnap, AngleStepsAreOneFiveOrFifteenDegreesByTheLengthDrawn) {
    const double degreeInPixels = std::acos(-1.0) / 180;
    EXPECT_DOUBLE_EQ(angleStep(field(1), 4.1 / degreeInPixels, AngleUnit::deg), 1);
    EXPECT_DOUBLE_EQ(angleStep(field(1), 2 / degreeInPixels, AngleUnit::deg), 5);
    EXPECT_DOUBLE_EQ(angleStep(field(1), 0.5 / degreeInPixels, AngleUnit::deg), 15);
    EXPECT_DOUBLE_EQ(angleStep(field(1), 2 / degreeInPixels, AngleUnit::gon), 5);
    EXPECT_DOUBLE_EQ(angleStep(field(1), 2 / degreeInPixels, AngleUnit::rad), std::acos(-1.0) / 36);
}

TEST(CanvasSnap, RestsOnMultiplesOfTheSteps) {
    const Snapped to = snap({203.4, 61.3}, field(1), raft());
    EXPECT_DOUBLE_EQ(to.polar.magnitude, 205);
    EXPECT_DOUBLE_EQ(to.polar.referred, 60); // 1 degree is 3.5 px there: the 5 degree tier
    EXPECT_TRUE(to.mark.direction);
    EXPECT_FALSE(to.mark.magnitude);
}

TEST(CanvasSnap, AWholeNumberOfDivisionsIsMarked) {
    EXPECT_TRUE(snap({199, 33}, field(1), raft()).mark.magnitude);
    EXPECT_FALSE(snap({211, 33}, field(1), raft()).mark.magnitude);
}

TEST(CanvasSnap, WhatIsHeldIsLeftAlone) {
    const Snapped to = snap({203.4, 61.3}, field(1), raft(), false, true);
    EXPECT_DOUBLE_EQ(to.polar.magnitude, 203.4);
    const Snapped turned = snap({203.4, 61.3}, field(1), raft(), true, false);
    EXPECT_DOUBLE_EQ(turned.polar.referred, 61.3);
}

TEST(CanvasSnap, AnotherForcesLineIsCaughtOnBothSidesAndAcross) {
    Sketch sketch = raft();
    sketch.forces[1].direction.form = AngleForm{-37.3};
    SnapField near = field(1);
    near.lines = snapLines(sketch, 0);
    struct Case {
        double pointer, caught;
        const char* words;
    };
    for (const Case& c :
         {Case{-37.9, -37.3, "along Q"}, Case{143.1, 142.7, "opposite to Q"},
          Case{52.3, 52.7, "at right angles to Q"}, Case{-127.9, -127.3, "at right angles to Q"}}) {
        const Snapped to = snap({300, c.pointer}, near, sketch);
        EXPECT_NEAR(to.polar.referred, c.caught, 1e-12);
        EXPECT_EQ(plain(to.mark.words), c.words);
    }
    EXPECT_TRUE(snap({300, -34}, near, sketch).mark.words.empty());
}

TEST(CanvasSnap, AForceDoesNotCatchItsOwnLine) {
    for (const SnapLine& line : snapLines(raft(), 0)) {
        EXPECT_EQ(plain(line.words).find('P'), std::string::npos);
    }
}

TEST_F(CanvasTest, ADraggedTipRestsOnTheOppositeOfAnotherForce) {
    Sketch sketch = raft();
    sketch.forces[1].direction.form = AngleForm{-37.3};
    open(sketch);
    drag(tipOf(0), polar(250, 143));
    EXPECT_DOUBLE_EQ(angle(0), 142.7);
}

TEST_F(CanvasTest, AltTurnsSnappingOffWhileItIsHeld) {
    press(tipOf(0));
    move(polar(281, 52.4), Qt::AltModifier);
    EXPECT_NEAR(angle(0), 52.4, 0.15);
    EXPECT_NE(angle(0), std::round(angle(0)));
    move(polar(281, 52.4));
    EXPECT_DOUBLE_EQ(angle(0), std::round(angle(0)));
    EXPECT_DOUBLE_EQ(magnitude(0), 280);
    release(polar(281, 52.4));
}

TEST_F(CanvasTest, SnappingIsSwitchedOffAsAWhole) {
    QSignalSpy changed(&canvas, &Canvas::snappingChanged);
    canvas.setSnapping(false);
    EXPECT_EQ(changed.count(), 1);
    drag(tipOf(0), polar(281, 52.4));
    EXPECT_NEAR(angle(0), 52.4, 0.15);
    EXPECT_NE(angle(0), std::round(angle(0)));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
