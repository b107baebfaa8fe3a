// SPDX-License-Identifier: MIT
// A part of the figure, by ids: what a step of the worked solution speaks of and the sheet lights up, and
// what a group of the display list stands for.
#pragma once

#include "core/formula/formula.h"

#include <string>
#include <variant>

namespace tailpoint {

/// What is drawn round the arrows.
struct FigureShape {
    enum class Kind : std::uint8_t {
        parallelogram, ///< `of`: of several (pairsOf) the one that adds this force, kNobody: of two forces
        triangle,      ///< `of`: its side, kNobody: all of it
        polygon,       ///< the same
        locus,         ///< line of action or circle of possible tips of `of`
        axis
    };
    Kind kind = Kind::parallelogram;
    VectorId of{};
    auto operator<=>(const FigureShape&) const = default;
};

/// A vector is its arrow. A quantity is a magnitude (a label), a direction (the arc from the axis), an angle
/// between tails or opposite to a side, or the slope that a direction is given by (its tangent). `answer` is
/// 0: the figure knows by itself which answer it shows.
using FigurePart = std::variant<VectorId, QuantityId, FigureShape>;

/// Between the tails of two vectors; `pair`: in the nth of successive parallelograms (pairsOf), from 1.
constexpr QuantityId betweenId(VectorId of, VectorId with, std::size_t pair = 0) {
    return {What::between, of, with, 0, static_cast<std::uint8_t>(pair)};
}
/// Opposite to a side of the triangle, or of half a parallelogram.
constexpr QuantityId oppositeId(VectorId side, std::size_t pair = 0) {
    return {What::opposite, side, {}, 0, static_cast<std::uint8_t>(pair)};
}
/// The tangent of a direction that is given by run and rise.
constexpr QuantityId slopeId(VectorId of) {
    return {What::ratio, of, {}, 0, kTangent};
}

/// The angle between two vectors is the same in either order.
constexpr bool isSame(const QuantityId& a, const QuantityId& b) {
    return a == b || (a.what == What::between && a == QuantityId{b.what, b.with, b.of, b.answer, b.part});
}
inline bool isSame(const FigurePart& a, const FigurePart& b) {
    const auto *one = std::get_if<QuantityId>(&a), *two = std::get_if<QuantityId>(&b);
    return one != nullptr && two != nullptr ? isSame(*one, *two) : a == b;
}

/// What is said of `whole` is said of `part`: it is the same, a side of it, or the slope of a direction.
inline bool covers(const FigurePart& whole, const FigurePart& part) {
    const auto *all = std::get_if<FigureShape>(&whole), *side = std::get_if<FigureShape>(&part);
    const bool isSide = all != nullptr && side != nullptr && all->kind == side->kind && all->of == kNobody;
    const auto* direction = std::get_if<QuantityId>(&whole);
    const bool isSlope = direction != nullptr && *direction == directionId(direction->of) &&
                         part == FigurePart(slopeId(direction->of));
    return isSide || isSlope || isSame(whole, part);
}

/// Between two vectors of the sketch at the common point; not with K or a partial sum, which have no ray
/// there.
constexpr bool isBetweenRays(const QuantityId& angle) {
    const auto isGiven = [](VectorId v) { return v.kind == VectorId::Kind::force || v == kSumVector; };
    return angle.what == What::between && angle.part == 0 && isGiven(angle.of) && isGiven(angle.with);
}

/// What an angle of the figure is called from a step on: "γ", "α′", "φ" with the subscript Q.
struct AngleName {
    QuantityId angle; ///< between or opposite
    Symbol symbol;
    bool operator==(const AngleName&) const = default;
};

} // namespace tailpoint
