// SPDX-License-Identifier: MIT
// Where the unknown directions of a piece can lie at the most, by closed forms of the whole box: a search
// that begins there need not look around.
#include "core/solve/tolerance_aim.h"

#include "core/solve/outward.h"
#include "core/solve/tolerance_problem.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint::tolerance {
namespace {

constexpr double kRoom = 1e-12; // radians: what rounding makes of the forms below

struct Bounds {
    double low = 0, high = 0;
    void add(double value) {
        low = std::fmin(low, value);
        high = std::fmax(high, value);
    }
};

/// The vector that the unknown ones must make up: its length and direction.
struct Rest {
    Bounds length, direction;
    double radius = 0;     ///< farthest that it may lie from where it is in the middle
    bool isAround = false; ///< it may vanish: any direction
};

/// Farthest from the middle of a sector that a vector of it may lie.
double radiusOf(const Sector& sector, Pt& middle) {
    const double size = (sector.least + sector.greatest) / 2;
    middle = size * unitAt(sector.middle());
    return (sector.greatest - sector.least) / 2 +
           2 * sector.greatest * std::sin(std::min(sector.width() / 4, std::numbers::pi / 2));
}

Rest restOf(const Problem& problem) {
    Pt sum{-static_cast<double>(problem.fixed.x), -static_cast<double>(problem.fixed.y)};
    Rest rest;
    rest.radius = problem.slack;
    for (const Sector& sector : problem.sectors) {
        Pt middle;
        rest.radius += radiusOf(sector, middle);
        sum = sum + -middle;
    }
    const double length = lengthOf(sum);
    rest.length = {std::max(0.0, length - rest.radius), length + rest.radius};
    rest.isAround = rest.radius >= length;
    if (!rest.isAround) {
        const double middle = std::atan2(sum.y, sum.x), half = std::asin(rest.radius / length) + kRoom;
        rest.direction = {middle - half, middle + half};
    }
    return rest;
}

void aimAt(Sector& sector, double from, double to) {
    if (to - from < std::min(2 * std::numbers::pi, sector.width())) {
        sector = sectorOf(sector.least, sector.greatest, from - kRoom, to + kRoom);
    }
}

/// The other leg where c is seen from the end of `side` under a right angle: with it the cosine is least.
double legOf(double side, double c) {
    return side > c ? std::sqrt((side - c) * (side + c)) : 0;
}

// Of the angle at the common point in a triangle of the sides own, rest and other: its cosine is greatest and
// least on the edges of the box, where one of the two sides beside it is such that the other is a tangent, or
// in a corner.
Bounds angleBeside(Bounds own, Bounds other, Bounds rest) {
    Bounds cosine{kNever, -kNever};
    const auto add = [&](double a, double b, double c) {
        const auto [value, size] = cosineBeside(a, b, c);
        cosine.add(value - kOfCosine * size);
        cosine.add(value + kOfCosine * size);
    };
    for (const double c : {other.low, other.high}) {
        for (const double a : {own.low, own.high}) {
            add(a, rest.low, c);
            add(a, rest.high, c);
            add(a, std::clamp(legOf(a, c), rest.low, rest.high), c);
        }
        for (const double b : {rest.low, rest.high}) {
            add(std::clamp(legOf(b, c), own.low, own.high), b, c);
        }
    }
    // An arccosine will do: the cosines are bounds, so that near 1 the angle gets wider and not untrue; its
    // own rounding lies within kRoom.
    return {std::acos(std::clamp(cosine.high, -1.0, 1.0)), std::acos(std::clamp(cosine.low, -1.0, 1.0))};
}

/// A sector's magnitudes, whose ends are rounded from more digits, outward.
Bounds sideOf(const Sector& sector) {
    return {down(sector.least), up(sector.greatest)};
}

void aimCircles(Piece& piece, const Rest& rest) {
    Sector &first = piece.unknown[0].sector, &second = piece.unknown[1].sector;
    if (rest.isAround || rest.length.low <= 0 || first.least <= 0 || second.least <= 0) {
        return;
    }
    const Bounds own = sideOf(first), other = sideOf(second);
    const Bounds one = angleBeside(own, other, rest.length), two = angleBeside(other, own, rest.length);
    const auto aim = [&](Sector& sector, const Bounds& angle, bool isLeft) {
        isLeft ? aimAt(sector, rest.direction.low + angle.low, rest.direction.high + angle.high)
               : aimAt(sector, rest.direction.low - angle.high, rest.direction.high - angle.low);
    };
    aim(first, one, piece.root == 0);
    aim(second, two, piece.root != 0);
}

/// Of a direction that is a difference of three, each of up to 2 pi and rounded once or twice: below 32u.
constexpr double kOfAngle = 32 * 0x1p-53;
/// A quotient's rounding, u, moves an arcsine near a quarter turn by up to sqrt(8u), 3e-8.
constexpr double kOfArcsine = 1e-7;

// What is left over square to the line is the circle's part of it.
void aimCircle(Piece& piece, const Rest& rest) {
    const bool firstIsLine = piece.unknown[0].isLine;
    const Unknown& line = piece.unknown[firstIsLine ? 0 : 1];
    Sector& circle = piece.unknown[firstIsLine ? 1 : 0].sector;
    if (circle.least <= 0 || line.sector.width() >= std::numbers::pi / 2) {
        return;
    }
    const double turn = line.sector.width() / 2, way = line.sector.middle();
    const double length = (rest.length.low + rest.length.high) / 2;
    const double middle =
        rest.isAround ? 0 : length * std::sin((rest.direction.low + rest.direction.high) / 2 - way);
    const double off = rest.isAround ? rest.length.high : rest.radius + rest.length.high * (turn + kOfAngle);
    const auto arcsine = [&](double value) {
        const double sine = value / (value < 0 ? circle.least : circle.greatest);
        const double widest = value / (value < 0 ? circle.greatest : circle.least);
        return Bounds{std::asin(std::clamp(std::fmin(sine, widest), -1.0, 1.0)),
                      std::asin(std::clamp(std::fmax(sine, widest), -1.0, 1.0))};
    };
    const double low = arcsine(middle - off).low - kOfArcsine, high = arcsine(middle + off).high + kOfArcsine;
    const bool back = (piece.root == 0) != line.flipped;
    back ? aimAt(circle, way - turn + std::numbers::pi - high, way + turn + std::numbers::pi - low)
         : aimAt(circle, way - turn + low, way + turn + high);
}

} // namespace

void aim(const Problem& problem, Piece& piece) {
    const Rest rest = restOf(problem);
    if (piece.rule == Rule::circles) {
        aimCircles(piece, rest);
    } else if (piece.rule == Rule::circle) {
        aimCircle(piece, rest);
    } else if (piece.rule == Rule::alone && !rest.isAround) {
        aimAt(piece.unknown[0].sector, rest.direction.low, rest.direction.high);
    }
}

} // namespace tailpoint::tolerance
