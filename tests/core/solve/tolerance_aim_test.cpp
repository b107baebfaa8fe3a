// SPDX-License-Identifier: MIT
// Where unknown directions are looked for at all, against arithmetic of 50 digits: sides of a triangle may
// differ by fifteen orders of magnitude.
#include "core/solve/tolerance_aim.h"
#include "core/solve/tolerance_problem.h"
#include "tests/support/cases.h"
#include "tests/support/loose.h"
#include "tests/support/many_digits.h"
#include "tests/support/sketches.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <optional>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using namespace tolerance;
using Many = boost::multiprecision::cpp_bin_float_50;

const Many kPi = boost::multiprecision::acos(Many(-1));

/// Three sides of a triangle, one of them shorter by up to fifteen orders of magnitude.
std::array<double, 3> needle(Dice& dice) {
    const double longer = dice.between(1, 400), shorter = longer * std::pow(10, -dice.between(0, 15));
    std::array<double, 3> sides{longer, longer + shorter * dice.between(-0.999, 0.999), shorter};
    std::swap(sides[dice.whole(3)], sides[dice.whole(3)]);
    return sides;
}

/// The value of an input of the box at a point: an end, or anything between.
long double drawn(const Input& input, Dice& dice) {
    const std::size_t way = dice.whole(4);
    return way == 0   ? input.least
           : way == 1 ? input.greatest
                      : input.least + static_cast<long double>(dice.part()) * (input.greatest - input.least);
}

struct Polar {
    Many size, angle;
};

Polar at(const Problem& problem, const Point& point, std::size_t vector) {
    const auto [size, angle] = problem.inputOf[vector];
    const BoxVector& own = problem.box.vectors[vector];
    return {Many(size < 0 ? own.magnitude.nominal : point[static_cast<std::size_t>(size)]),
            Many(angle < 0 ? own.direction.nominal : point[static_cast<std::size_t>(angle)])};
}

/// Whether `angle` lies within the sector, whole turns apart.
bool holds(const Sector& sector, const Many& angle) {
    const Many turn = 2 * kPi, past = angle - Many(sector.from);
    return past - floor(past / turn) * turn <= Many(sector.to) - Many(sector.from);
}

/// Beside the side a, of a triangle with b and c. By the law of cosines; empty where there is none.
std::optional<Many> angleBeside(const Many& a, const Many& b, const Many& c) {
    const Many cosine = (a * a + b * b - c * c) / (2 * a * b);
    return abs(cosine) > 1 ? std::nullopt : std::optional<Many>(acos(cosine));
}

// The law of cosines in 50 digits is off by no more than is stated, however unequal the sides are.
TEST(Aim, ACosineIsRightToItsStatedBound) {
    double worst = 0;
    for (std::uint64_t number = 0; number < 20'000; ++number) {
        Dice dice(3'000'017 * number + 1);
        const std::array<double, 3> sides = needle(dice);
        const Many a = sides[0], b = sides[1], c = sides[2], exact = (a * a + b * b - c * c) / (2 * a * b);
        const Cosine cosine = cosineBeside(sides[0], sides[1], sides[2]);
        worst = std::max(worst, static_cast<double>(abs(Many(cosine.value) - exact) / Many(cosine.size)));
        EXPECT_LE(Many(cosine.size), abs(exact) + 1 + kOfCosine) << number;
    }
    EXPECT_LE(worst, kOfCosine);
    EXPECT_GT(worst, kOfCosine / 16); // and it is no empty bound
}

// W and two forces whose directions are to find: what they make up is -W, and the law of cosines in 50 digits
// has the angles to both sides of it.
TEST(Aim, NoTriangleHasADirectionOutsideOfIt) {
    long looked = 0, narrowed = 0;
    for (std::uint64_t number = 0; number < 700; ++number) {
        SCOPED_TRACE(number);
        Dice dice(6'000'011 * number + 3);
        const std::array<double, 3> sides = needle(dice);
        const double least = *std::min_element(sides.begin(), sides.end());
        const auto part = [&] { return dice.toss() ? 0.0 : least * std::pow(10, -dice.between(2, 9)); };
        const Sketch made = balanced({loose(force("W", sides[0], dice.between(-180, 180)), part(),
                                            dice.toss() ? 0.0 : std::pow(10, -dice.between(2, 9))),
                                      loose(force("A", sides[1], kToFind), part(), 0),
                                      loose(force("B", sides[2], kToFind), part(), 0)});
        const Solved solved = solve(made);
        const Problem problem = problemOf(made, solved);
        for (std::size_t answer = 0; answer < solved.solutions.size() && !solved.tangent; ++answer) {
            const std::vector<tolerance::Piece> pieces = piecesOf(problem, made, solved, answer);
            ASSERT_EQ(pieces.size(), 1u);
            narrowed += pieces[0].unknown[0].sector.width() < 3;
            for (int i = 0; i < 8; ++i) {
                Point point;
                for (const Input& input : problem.inputs)
                    point.push_back(drawn(input, dice));
                const Polar rest = at(problem, point, 0);
                const Many a = at(problem, point, 1).size, b = at(problem, point, 2).size;
                const auto first = angleBeside(rest.size, a, b), second = angleBeside(rest.size, b, a);
                if (!first || !second)
                    continue;
                ++looked;
                const Many sense = pieces[0].root == 0 ? 1 : -1, way = rest.angle + kPi;
                EXPECT_TRUE(holds(pieces[0].unknown[0].sector, way + sense * *first));
                EXPECT_TRUE(holds(pieces[0].unknown[1].sector, way - sense * *second));
            }
        }
    }
    EXPECT_GT(looked, 6'000);
    EXPECT_GT(narrowed, 700);
}

// Line and circle: the circle's vector has the part of what is left that is square to the line.
TEST(Aim, NoVectorThatMeetsALinePointsOutsideOfIt) {
    long looked = 0;
    for (std::uint64_t number = 0; number < 700; ++number) {
        SCOPED_TRACE(number);
        Dice dice(9'000'011 * number + 5);
        const double load = dice.between(1, 400), way = dice.between(-180, 180);
        const double radius = load * std::pow(10, -dice.between(0, 9));
        const double sine =
            radius / load * (dice.toss() ? dice.between(-1, 1) : 1 - std::pow(10, -dice.between(1, 14)));
        const double line = way + std::asin(sine) * 180 / std::numbers::pi;
        const auto part = [&] { return dice.toss() ? 0.0 : radius * std::pow(10, -dice.between(2, 9)); };
        const Sketch made =
            balanced({loose(force("W", load, way), part(), 0), either(force("A", kToFind, line)),
                      loose(force("B", radius, kToFind), part(), 0)});
        const Solved solved = solve(made);
        const Problem problem = problemOf(made, solved);
        for (std::size_t answer = 0; answer < solved.solutions.size() && !solved.tangent; ++answer) {
            for (const tolerance::Piece& piece : piecesOf(problem, made, solved, answer)) {
                const Sector& sector = piece.unknown[piece.unknown[0].isLine ? 1 : 0].sector;
                for (int i = 0; i < 8; ++i) {
                    Point point;
                    for (const Input& input : problem.inputs)
                        point.push_back(drawn(input, dice));
                    const Polar rest = at(problem, point, 0), along = at(problem, point, 1);
                    const Many square =
                        rest.size * sin(rest.angle + kPi - along.angle) / at(problem, point, 2).size;
                    if (abs(square) > 1)
                        continue;
                    ++looked;
                    const Many off = asin(square);
                    const bool back = (piece.root == 0);
                    EXPECT_TRUE(holds(sector, along.angle + (back ? kPi - off : off)));
                }
            }
        }
    }
    EXPECT_GT(looked, 6'000);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
