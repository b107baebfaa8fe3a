// SPDX-License-Identifier: MIT
#include "core/solve/solve.h"

#include "core/sketch/shown.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

Force given(std::string name, double magnitude, double degrees) {
    Force force;
    force.name = std::move(name);
    force.magnitude.value = magnitude;
    force.direction.form = AngleForm{degrees};
    return force;
}

TEST(Resultant, OfTheRaftOnTwoTowLines) {
    Sketch sketch = emptySketch();
    sketch.forces = {given("P", 340, 25), given("Q", 275, -40)};
    ASSERT_FALSE(firstFault(sketch));
    const Solved solved = solve(sketch);
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_EQ(solved.message().text(), "");
    const SolvedForce& sum = solved.solutions.front().sum;
    EXPECT_EQ(shownForceWithUnit(sum.magnitude, sketch), "520 N");
    EXPECT_EQ(shownAngle(*sum.direction, sketch), "-3.6°");
    EXPECT_EQ(directionWords(sum.direction, sketch), "3.6° clockwise from +x");
}

TEST(Resultant, OfOppositeForcesIsZeroAndHasNoDirection) {
    Sketch sketch = emptySketch();
    sketch.forces = {given("P", 100, 25), given("Q", 100, 205)};
    const Solved solved = solve(sketch);
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_EQ(solved.solutions.front().sum.magnitude, 0);
    EXPECT_FALSE(solved.solutions.front().sum.direction);
    EXPECT_NE(solved.message().text().find("no direction"), std::string::npos);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
