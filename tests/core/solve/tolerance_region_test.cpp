// SPDX-License-Identifier: MIT
// Where a found vector's tip can lie, against areas by closed form and points drawn in the box.
#include "core/solve/tolerance.h"
#include "tests/support/cases.h"
#include "tests/support/loose.h"
#include "tests/support/sketches.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint::tolerance {
namespace TAILPOINT_FILE {

using testing::Dice;
using testing::force;
using testing::kToFind;
using testing::loose;
using testing::sketch;

constexpr double kPi = std::numbers::pi, kDegree = kPi / 180;

double areaOf(const Outline& outline) {
    double area = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Eigen::Vector2d &a = outline[i], &b = outline[(i + 1) % outline.size()];
        area += (a.x() * b.y() - a.y() * b.x()) / 2;
    }
    return area;
}

double areaOf(const TipRegion& region) {
    double area = 0;
    for (const Outline& outline : region.outlines)
        area += areaOf(outline);
    return area;
}

/// How often the outlines go round a point.
double windingOf(const TipRegion& region, const Eigen::Vector2d& point) {
    double turns = 0;
    for (const Outline& outline : region.outlines)
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Eigen::Vector2d a = outline[i] - point, b = outline[(i + 1) % outline.size()] - point;
            turns += std::atan2(a.x() * b.y() - a.y() * b.x(), a.dot(b));
        }
    return turns / (2 * kPi);
}

TipRegion regionOf(const Sketch& made, const Effort& effort = kExact) {
    EXPECT_FALSE(firstFault(made));
    const std::vector<TipRegion> regions = tipRegions(made, solve(made), 0, effort);
    EXPECT_EQ(regions.size(), 1u);
    return regions.empty() ? TipRegion{} : regions.front();
}

/// A ring from `least` to `greatest` about `centre`: an outer outline and an inner one, clockwise.
void expectRing(const TipRegion& region, const Eigen::Vector2d& centre, double least, double greatest) {
    ASSERT_EQ(region.outlines.size(), 2u);
    const double room = 0.005 * 2 * greatest; // of its size
    for (const Eigen::Vector2d& point : region.outlines[0])
        EXPECT_NEAR((point - centre).norm(), greatest, room);
    for (const Eigen::Vector2d& point : region.outlines[1])
        EXPECT_NEAR((point - centre).norm(), least, room);
    EXPECT_NEAR(areaOf(region.outlines[0]), kPi * greatest * greatest, 0.005 * kPi * greatest * greatest);
    EXPECT_NEAR(areaOf(region.outlines[1]), -kPi * least * least, 0.01 * kPi * least * least);
    for (int way = 0; way < 12; ++way) {
        const Eigen::Vector2d along(std::cos(way), std::sin(way));
        EXPECT_NEAR(windingOf(region, centre + 0.9 * least * along), 0, 1e-9) << "the middle is hollow";
        EXPECT_NEAR(windingOf(region, centre + (least + greatest) / 2 * along), 1, 1e-9);
        EXPECT_NEAR(windingOf(region, centre + 1.1 * greatest * along), 0, 1e-9);
    }
}

// 100 ± 10 in any direction: area pi (110^2 - 90^2).
TEST(TipRegion, OfOneForceInAnyDirectionIsARing) {
    const Sketch made = sketch({loose(force("P", 100, 30), 10, 180)});
    const TipRegion exact = regionOf(made);
    expectRing(exact, {0, 0}, 90, 110);
    EXPECT_NEAR(areaOf(exact), kPi * (110 * 110 - 90 * 90), 0.01 * kPi * (110 * 110 - 90 * 90));
    expectRing(regionOf(made, kWhileDragging), {0, 0}, 90, 110);
}

// 100 ± 10 within so many degrees to either side of 30: area (110^2 - 90^2) times half the angle.
TEST(TipRegion, OfAnArcHasNothingOfTheGapThatIsLeft) {
    for (const double half : {20.0, 60.0, 90.0, 100.0, 135.0, 150.0, 170.0, 175.0}) {
        const TipRegion arc = regionOf(sketch({loose(force("P", 100, 30), 10, half)}));
        const double area = half * kDegree * (110 * 110 - 90 * 90);
        EXPECT_NEAR(areaOf(arc), area, 0.01 * area) << half;
        const double across = (30 + 180) * kDegree;
        EXPECT_NEAR(windingOf(arc, 100 * Eigen::Vector2d(std::cos(across), std::sin(across))), 0, 1e-9)
            << half;
    }
}

// The same beside a force of 30 along +x, and of 300, where the common point lies outside of the ring.
TEST(TipRegion, OfARingBesideAnotherForceIsThatRingMoved) {
    for (const double beside : {30.0, 300.0})
        expectRing(regionOf(sketch({loose(force("P", 100, 30), 10, 180), force("Q", beside, 0)})),
                   {beside, 0}, 90, 110);
}

// 60 ± 0.6 at 130 ± 20 beside 100 along +x: a ray from the common point meets that band twice. Area 60 * 1.2
// * 40 degrees.
TEST(TipRegion, OfACurvedBandHasNothingOfWhatLiesBetweenItsEnds) {
    const double area = 60 * 1.2 * 40 * kDegree;
    const Sketch made = sketch({force("P", 100, 0), loose(force("Q", 60, 130), 0.6, 20)});
    EXPECT_NEAR(areaOf(regionOf(made)), area, 0.01 * area);
    EXPECT_NEAR(areaOf(regionOf(made, kWhileDragging)), area, 0.02 * area);
}

// P 340 ± 5 at 25 ± 2 beside Q: area 340 * 10 * 4 degrees.
TEST(TipRegion, OfTheRaftIsThePullsSector) {
    const Sketch made = sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)});
    EXPECT_NEAR(areaOf(regionOf(made)), 340 * 10 * 4 * kDegree, 0.005 * 237);
}

// While a hand drags a region is an outer one: tips of points drawn in the box lie in it, but for 0.5 % of
// its size.
TEST(TipRegion, WhileDraggingNoTipLiesOutside) {
    const Sketch made = sketch({loose(force("P", 100, 0), 2, 3), loose(force("Q", 60, 130), 2, 20)});
    const TipRegion region = regionOf(made, kWhileDragging);
    Dice dice(11);
    for (int i = 0; i < 2'000; ++i) {
        const double p = dice.between(98, 102), q = dice.between(58, 62);
        const double atP = dice.between(-3, 3) * kDegree, atQ = dice.between(110, 150) * kDegree;
        Eigen::Vector2d tip(p * std::cos(atP) + q * std::cos(atQ), p * std::sin(atP) + q * std::sin(atQ));
        double near = 1e9;
        for (const Eigen::Vector2d& point : region.outlines.at(0))
            near = std::min(near, (point - tip).norm());
        EXPECT_TRUE(std::fabs(windingOf(region, tip)) > 0.5 || near < 0.25) << tip.transpose();
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::tolerance
