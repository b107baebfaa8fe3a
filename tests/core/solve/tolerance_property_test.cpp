// SPDX-License-Identifier: MIT
// Ranges against points of their boxes, drawn; some hundred sketches of all families, tolerances up to 20 %
// and 15 degrees. A longer one, of ten thousand, is tests/tolerant.
#include "core/solve/tolerance.h"
#include "core/solve/tolerance_uncertainty.h"
#include "tests/support/tolerances.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <gtest/gtest.h>
#include <limits>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using tolerance::AnswerRange;
using tolerance::InputAt;
using tolerance::Place;
using tolerance::Range;
using tolerance::rangesOf;
using tolerance::VectorRange;

constexpr std::uint64_t kCases = 300;
constexpr int kPoints = 150;

Sketch tolerantCase(std::uint64_t number) {
    Dice dice(4'000'037 * number + 11);
    return tolerantCase(dice, static_cast<Asked>(number % kAsked), 20, 15);
}

double scaleOf(const Sketch& sketch) {
    double scale = sketch.sum.magnitude.value.value_or(0);
    for (const Force& force : sketch.forces)
        scale += force.magnitude.value.value_or(0);
    return scale;
}

void expectWithin(const Range& range, double value, double room) {
    if (range.least) {
        EXPECT_GE(value, *range.least - room);
    }
    if (range.greatest) {
        EXPECT_LE(value, *range.greatest + room);
    }
}

void expectWithin(const VectorRange& range, const SolvedForce& found, double room) {
    expectWithin(range.magnitude, found.magnitude, room);
    expectWithin(range.x, found.vector.x(), room);
    expectWithin(range.y, found.vector.y(), room);
    if (range.direction.any || !found.direction)
        return;
    const double width = range.direction.to - range.direction.from;
    const double off = *found.direction - (range.direction.from + range.direction.to) / 2;
    EXPECT_LE(std::fabs(std::remainder(off, 360)), width / 2 + 1e-9);
}

// Neither of the true one nor of the quick one for a drag.
TEST(TolerantCases, NoPointOfTheBoxLiesOutsideOfTheRange) {
    long points = 0;
    for (std::uint64_t number = 0; number < kCases; ++number) {
        SCOPED_TRACE(number);
        const Sketch sketch = tolerantCase(number);
        ASSERT_FALSE(firstFault(sketch));
        const Solved solved = solve(sketch);
        const tolerance::Ranges ranges = rangesOf(sketch, solved);
        const tolerance::Ranges quick = rangesOf(sketch, solved, tolerance::kWhileDragging);
        ASSERT_EQ(ranges.size(), solved.solutions.size());
        ASSERT_EQ(quick.size(), solved.solutions.size());
        for (std::size_t answer = 0; answer < ranges.size(); ++answer) {
            Trial trial(sketch, answer);
            Dice dice(number);
            for (int i = 0; i < kPoints; ++i) {
                const std::optional<Solution> found = trial.at(drawn(trial.knobs(), dice));
                if (!found) {
                    EXPECT_FALSE(ranges[answer].everywhere || quick[answer].everywhere);
                    continue;
                }
                ++points;
                for (const AnswerRange* range : {&ranges[answer], &quick[answer]})
                    for (const VectorRange& vector : range->vectors)
                        expectWithin(vector, solvedVector(*found, vector.index), 1e-12 * scaleOf(sketch));
            }
        }
        if (HasFailure())
            return;
    }
    EXPECT_GT(points, 30'000);
}

/// The point that a range names for one of its ends.
std::vector<double> pointOf(const Trial& trial, const Place& place) {
    std::vector<double> values = trial.nominal();
    for (std::size_t i = 0; i < place.size(); ++i) {
        const Knob& knob = trial.knobs()[i];
        const double middle = (knob.least + knob.greatest) / 2;
        const double turned =
            knob.isDirection ? middle + std::remainder(place[i].value - middle, 360) : place[i].value;
        values[i] = place[i].end == InputAt::End::between ? std::clamp(turned, knob.least, knob.greatest)
                    : place[i].end == InputAt::End::least ? knob.least
                                                          : knob.greatest;
    }
    return values;
}

struct Reached {
    long ends = 0, marked = 0, sought = 0;
};

using Measured = double (*)(const SolvedForce&);

/// One end of a range of one vector, as if the greatest were looked for.
struct Looked {
    const Sketch& sketch;
    std::size_t answer;
    int index;
    Measured of;
    double sign;
    double at(const Solution& solution) const { return sign * of(solvedVector(solution, index)); }
};

/// The greatest that a search of its own finds: points drawn, then uphill from the best of them and from
/// `start`.
double greatest(Trial& trial, const Looked& looked, std::vector<double> start) {
    constexpr int kDrawn = 4'000, kBest = 4, kRounds = 60;
    const auto of = [&](const Solution& solution) { return looked.at(solution); };
    Dice dice(17);
    std::vector<std::pair<double, std::vector<double>>> points;
    for (int i = 0; i < kDrawn; ++i) {
        std::vector<double> point = drawn(trial.knobs(), dice);
        if (const std::optional<Solution> found = trial.at(point))
            points.emplace_back(of(*found), std::move(point));
    }
    std::sort(points.rbegin(), points.rend());
    points.resize(std::min<std::size_t>(points.size(), kBest));
    if (trial.at(start))
        points.emplace_back(0, std::move(start));
    double most = -std::numeric_limits<double>::infinity();
    for (const auto& [value, point] : points)
        most = std::max(most, climbed(trial, point, of, dice, kRounds));
    Swapped swapped(looked.sketch, looked.answer, looked.index);
    return swapped.isOf() ? std::max(most, climbed(swapped, swapped.nominal(), of, dice, 2 * kRounds)) : most;
}

void expectReached(Trial& trial, const Looked& looked, const Range& range, Reached& reached) {
    if (!range.least || !range.greatest)
        return;
    reached.ends += 1;
    if (range.marked) {
        reached.marked += 1;
        return;
    }
    const double room = 1e-3 * (*range.greatest - *range.least) + 1e-9 * std::fabs(*range.greatest);
    const double end = looked.sign > 0 ? *range.greatest : -*range.least;
    std::vector<double> named = pointOf(trial, looked.sign > 0 ? range.atGreatest : range.atLeast);
    const std::optional<Solution> found = trial.at(named);
    if (found && std::fabs(looked.at(*found) - end) <= room)
        return;
    reached.sought += 1;
    EXPECT_NEAR(greatest(trial, looked, std::move(named)), end, room) << looked.index << ' ' << looked.sign;
}

void expectReached(std::uint64_t number, Reached& reached) {
    SCOPED_TRACE(number);
    Sketch sketch = tolerantCase(number);
    sketch.reference = {};
    const Solved solved = solve(sketch);
    const tolerance::Ranges ranges = rangesOf(sketch, solved);
    for (std::size_t answer = 0; answer < ranges.size(); ++answer) {
        if (!ranges[answer].everywhere)
            continue;
        Trial trial(sketch, answer);
        for (const VectorRange& vector : ranges[answer].vectors) {
            if (!vector.magnitudeFound && !vector.directionFound)
                continue;
            const auto look = [&](const Range& range, Measured of) {
                for (const double sign : {-1.0, 1.0})
                    expectReached(trial, {sketch, answer, vector.index, of, sign}, range, reached);
            };
            if (vector.magnitudeFound)
                look(vector.magnitude, [](const SolvedForce& f) { return f.magnitude; });
            look(vector.x, [](const SolvedForce& f) { return f.vector.x(); });
            look(vector.y, [](const SolvedForce& f) { return f.vector.y(); });
        }
    }
}

// Where every point has the answer, the input's values that a range names for its ends give these, or a
// search of its own comes upon others that do: so it is no wider than it must be. The last four are cases in
// which that once was not so: of three the end was right and its place was not, of one a hollow side left the
// end 2 % too far.
TEST(TolerantCases, WhereTheRangeEndsThereIsAPointOfTheBox) {
    Reached reached;
    for (std::uint64_t number = 0; number < 380; ++number)
        expectReached(number, reached);
    for (const std::uint64_t number : {1680, 1968, 2063, 2997})
        expectReached(number, reached);
    EXPECT_GT(reached.ends, 2'500);
    EXPECT_LT(reached.marked, reached.ends / 80);
    EXPECT_LT(reached.sought, reached.ends / 200) << "almost every place is where the end is";
}

void expectSound(const Range& range) {
    if (range.least) {
        EXPECT_TRUE(std::isfinite(*range.least));
    }
    if (range.greatest) {
        EXPECT_TRUE(std::isfinite(*range.greatest));
    }
    if (range.least && range.greatest) {
        EXPECT_LE(*range.least, *range.greatest);
    }
}

// Anything that passes for a sketch, adversarial values and huge tolerances among them: 700 sketches.
TEST(TolerantCases, NothingCrashesHangsOrIsNotANumber) {
    for (std::uint64_t number = 0; number < 700; ++number) {
        SCOPED_TRACE(number);
        Dice dice(7'000'003 * number + 5);
        const Kind kind = kindOf(number);
        Sketch sketch = number % 4 == 0   ? resultantCase(dice, kind)
                        : number % 4 == 1 ? linesCase(dice, kind)
                        : number % 4 == 2 ? lineCircleCase(dice, kind)
                                          : tolerantCase(dice, static_cast<Asked>(number % kAsked), 99, 400);
        for (int i = kSumIndex; i < static_cast<int>(sketch.forces.size()) && number % 4 != 3; ++i) {
            Force& force = vectorOf(sketch, i);
            if (force.magnitude.value && *force.magnitude.value > 0 && dice.toss())
                force.magnitude.tolerance = plusMinus(*force.magnitude.value * dice.power(-16, 1));
            if (isGiven(force.direction) && dice.toss())
                force.direction.tolerance = plusMinus(dice.power(-13, 3));
        }
        if (firstFault(sketch))
            continue;
        const Solved solved = solve(sketch);
        const tolerance::Ranges ranges = rangesOf(sketch, solved, tolerance::Effort{60});
        for (std::size_t answer = 0; answer < ranges.size(); ++answer) {
            for (const VectorRange& vector : ranges[answer].vectors) {
                expectSound(vector.magnitude);
                expectSound(vector.x);
                expectSound(vector.y);
                EXPECT_TRUE(std::isfinite(vector.direction.from) && std::isfinite(vector.direction.to));
                EXPECT_LE(vector.direction.from, vector.direction.to);
            }
            if (number % 10 == 0) {
                for (const tolerance::TipRegion& region :
                     tipRegions(sketch, solved, answer, tolerance::kWhileDragging))
                    for (const tolerance::Outline& outline : region.outlines)
                        for (const Eigen::Vector2d& point : outline)
                            ASSERT_TRUE(point.allFinite());
                tolerance::uncertaintyOf(sketch, solved, answer, ranges[answer],
                                         {tolerance::Spread::normal, 2, 100});
            }
        }
        if (HasFailure())
            return;
    }
}

double distanceTo(const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& point) {
    const Eigen::Vector2d along = b - a;
    const double length = along.squaredNorm();
    const double part = length == 0 ? 0 : std::clamp(along.dot(point - a) / length, 0.0, 1.0);
    return (a + part * along - point).norm();
}

/// How far a point lies outside of a region, filled by the rule of non-zero winding.
double outside(const tolerance::TipRegion& region, const Eigen::Vector2d& point) {
    double turns = 0, nearest = std::numeric_limits<double>::infinity();
    for (const tolerance::Outline& outline : region.outlines)
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Eigen::Vector2d a = outline[i] - point, b = outline[(i + 1) % outline.size()] - point;
            turns += std::atan2(a.x() * b.y() - a.y() * b.x(), a.dot(b));
            nearest = std::fmin(nearest, distanceTo(outline[i], outline[(i + 1) % outline.size()], point));
        }
    return std::fabs(turns) > 3 ? 0 : nearest;
}

double sizeOf(const tolerance::TipRegion& region) {
    Eigen::AlignedBox2d box;
    for (const tolerance::Outline& outline : region.outlines)
        for (const Eigen::Vector2d& point : outline)
            box.extend(point);
    return box.isEmpty() ? 0 : box.diagonal().norm();
}

// Every tip at a point of the box lies in the region, to 0.5 % of its size: 120 sketches of all families.
TEST(TolerantCases, NoTipLiesOutsideOfItsRegion) {
    long tips = 0;
    for (std::uint64_t number = 0; number < 120; ++number) {
        SCOPED_TRACE(number);
        const Sketch sketch = tolerantCase(number);
        const Solved solved = solve(sketch);
        for (std::size_t answer = 0; answer < solved.solutions.size(); ++answer) {
            const std::vector<tolerance::TipRegion> regions = tolerance::tipRegions(sketch, solved, answer);
            Trial trial(sketch, answer);
            Dice dice(number);
            for (int i = 0; i < 60; ++i) {
                const std::optional<Solution> found = trial.at(drawn(trial.knobs(), dice));
                for (const tolerance::TipRegion& region : regions) {
                    if (!found || region.open)
                        continue;
                    ++tips;
                    const double off = outside(region, solvedVector(*found, region.index).vector);
                    EXPECT_LE(off, 0.005 * sizeOf(region) + 1e-9 * scaleOf(sketch)) << region.index;
                }
            }
        }
    }
    EXPECT_GT(tips, 8'000);
}

TEST(TolerantCases, TheSameSketchGivesTheSameBits) {
    for (std::uint64_t number = 0; number < 12; ++number) {
        const Sketch sketch = tolerantCase(number);
        const Solved solved = solve(sketch);
        const tolerance::Ranges one = rangesOf(sketch, solved), two = rangesOf(sketch, solved);
        for (std::size_t i = 0; i < one.size(); ++i)
            for (std::size_t v = 0; v < one[i].vectors.size(); ++v) {
                EXPECT_EQ(one[i].vectors[v].magnitude.least, two[i].vectors[v].magnitude.least);
                EXPECT_EQ(one[i].vectors[v].x.greatest, two[i].vectors[v].x.greatest);
                EXPECT_EQ(one[i].vectors[v].direction.from, two[i].vectors[v].direction.from);
            }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
