// SPDX-License-Identifier: MIT
// A force that nobody drew or typed makes a figure worth looking at.
#include "ui/document/new_force.h"
#include "ui/document/sketch_document.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint {
namespace TAILPOINT_FILE {

Sketch withForces(int count, double division, Sketch sketch = emptySketch()) {
    for (int i = 0; i < count; ++i) {
        sketch = withNewForce(resultOf(sketch), division);
    }
    return sketch;
}

Force forceOf(const char* name, double magnitude, double degrees) {
    Force force;
    force.name = name;
    force.magnitude.value = magnitude;
    force.direction.form = AngleForm{degrees};
    return force;
}

/// Degrees counter-clockwise from +x, as drawn.
double drawn(const Eigen::Vector2d& v) {
    return std::atan2(v.y(), v.x()) * 180 / std::numbers::pi;
}
double between(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return std::abs(std::remainder(drawn(a) - drawn(b), 360));
}

struct Look {
    std::vector<Eigen::Vector2d> forces;
    Eigen::Vector2d resultant;
};
Look lookOf(const Sketch& sketch) {
    const Solution answer = resultOf(sketch).solved.solutions.at(0);
    Look look;
    for (const SolvedForce& force : answer.forces) {
        look.forces.push_back(force.vector);
    }
    look.resultant = answer.sum.vector;
    return look;
}

double nearest(const Eigen::Vector2d& v, const std::vector<Eigen::Vector2d>& others) {
    double least = 180;
    for (const Eigen::Vector2d& other : others) {
        least = std::min(least, between(v, other));
    }
    return least;
}

TEST(NewForce, TheFirstPointsUpAtTwentyFiveDegreesAndIsFourDivisionsLong) {
    const Look one = lookOf(withForces(1, 10));
    EXPECT_NEAR(drawn(one.forces[0]), 25, 1e-9);
    EXPECT_NEAR(one.forces[0].norm(), 40, 1e-9);
}

TEST(NewForce, TheSecondMakesAParallelogramWorthLookingAt) {
    const Sketch sketch = withForces(2, 10);
    EXPECT_TRUE(resultOf(sketch).construction.parallelogram);
    const Look two = lookOf(sketch);
    EXPECT_GE(between(two.forces[0], two.forces[1]), 40);
    EXPECT_LE(between(two.forces[0], two.forces[1]), 110);
    EXPECT_GE(nearest(two.resultant, two.forces), 12) << "the diagonal is told from the sides";
    EXPECT_NEAR(two.forces[1].norm(), 30, 1e-9) << "three quarters of the first, in half divisions";
}

TEST(NewForce, EveryFurtherOneIsFreeOfTheOthersAndOfTheResultant) {
    for (int count = 2; count <= 5; ++count) {
        const Look look = lookOf(withForces(count, 10));
        const std::vector<Eigen::Vector2d> before(look.forces.begin(), look.forces.end() - 1);
        EXPECT_GE(nearest(look.forces.back(), before), 40) << count;
        EXPECT_LE(nearest(look.forces.back(), before), 110) << count;
        EXPECT_GE(nearest(look.resultant, look.forces), 8) << count;
        const double ratio = look.forces.back().norm() / look.forces.front().norm();
        EXPECT_GE(ratio, 0.4) << count;
        EXPECT_LE(ratio, 2.5) << count;
    }
    const Look many = lookOf(withForces(12, 10));
    for (std::size_t i = 0; i < many.forces.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            EXPECT_GE(between(many.forces[i], many.forces[j]), 10) << i << " lies on " << j;
        }
    }
}

TEST(NewForce, ValuesAreRoundInTheSheetsUnitsWhateverItsAxisAndSense) {
    const auto isRound = [](double value, double step) {
        return std::abs(value / step - std::round(value / step)) < 1e-9;
    };
    for (const AngleUnit unit : kAngleUnits) {
        for (const Reference& reference :
             {Reference{0, Sense::ccw}, Reference{90, Sense::cw}, Reference{33, Sense::cw}}) {
            Sketch sheet = emptySketch();
            sheet.angleUnit = unit;
            sheet.reference = reference;
            const Sketch sketch = withForces(3, 50, sheet);
            for (const Force& force : sketch.forces) {
                const double angle = std::get<AngleForm>(force.direction.form).value;
                EXPECT_TRUE(isRound(*force.magnitude.value, 5)) << *force.magnitude.value;
                if (unit != AngleUnit::rad) {
                    EXPECT_TRUE(isRound(angle, 5)) << angle;
                }
            }
            const Look look = lookOf(sketch);
            EXPECT_NEAR(drawn(look.forces[0]), 25, 2.5) << "as seen, whatever the axis";
            EXPECT_GE(between(look.forces[0], look.forces[1]), 40);
            EXPECT_LE(between(look.forces[0], look.forces[1]), 110);
        }
    }
}

TEST(NewForce, ItsSizeGoesByTheOthersNotByTheSheet) {
    Sketch sketch = emptySketch();
    sketch.forces = {forceOf("P", 0.034, 25)};
    const double added = *withForces(1, 50, sketch).forces[1].magnitude.value;
    EXPECT_GE(added, 0.017);
    EXPECT_LE(added, 0.068);
}

TEST(NewForce, AForceWhoseValuesAreToFindIsNoObstacle) {
    Sketch sketch = emptySketch();
    sketch.forces = {forceOf("P", 340, 25), Force{}};
    sketch.forces[1].name = "Q";
    const Sketch after = withForces(1, 50, sketch);
    ASSERT_EQ(after.forces.size(), 3u);
    EXPECT_FALSE(firstFault(after));
    EXPECT_GT(*after.forces[2].magnitude.value, 0);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
