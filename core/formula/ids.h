// SPDX-License-Identifier: MIT
// Who is who in a question: the ids of its vectors and of its quantities. Small values, valid for one sketch
// as it stands: `Sketch` and the file hold none. They live here, before sketch/, because a formula's symbols
// bear them and a formula knows nothing of forces; what an id means and how it is written says
// sketch/things.h.
#pragma once

#include <cstddef>
#include <cstdint>

#include <compare> // behind the others: as the first header of the library some preprocessors misread it

namespace tailpoint {

struct VectorId {
    enum class Kind : std::uint8_t {
        none,
        force,  ///< `index` in Sketch::forces
        sum,    ///< the sum S (on screen R)
        known,  ///< K: all known vectors added up beforehand
        partial ///< the sum of the forces 0 to `index`, 1 <= index: parallelogram by parallelogram
    };
    Kind kind = Kind::none;
    std::uint16_t index = 0;
    auto operator<=>(const VectorId&) const = default;
};

inline constexpr VectorId kNobody{}, kSumVector{VectorId::Kind::sum}, kKnownVector{VectorId::Kind::known};
constexpr VectorId forceVector(std::size_t index) {
    return {VectorId::Kind::force, static_cast<std::uint16_t>(index)};
}
constexpr VectorId partialVector(std::size_t index) {
    return {VectorId::Kind::partial, static_cast<std::uint16_t>(index)};
}

enum class What : std::uint8_t {
    none,
    magnitude, ///< of a vector
    direction, ///< as the sheet says it: from its axis, in its sense; `part` 1: as it acts, where that is or
               ///< may be the other sense of a line of action
    fromX,     ///< psi: counter-clockwise from +x, where the sheet measures otherwise; `part` as above
    x,         ///< component along the sheet's x
    y,
    between,  ///< phi: angle between the tails of `of` and `with`
    opposite, ///< angle of the force triangle opposite to the side `of`
    acute,    ///< of an arctangent, before the quadrant is decided; with the part kOfInverseSine: what an
           ///< inverse sine gives for the angle opposite to `of`, before it is decided whether that is obtuse
    square,   ///< of a magnitude, before the root; of kNobody: of the distance with the same `part`
    ratio,    ///< before its inverse: sine, cosine (of the angle opposite to `of`) or tangent, as `part` says
    distance, ///< of a circle's centre from the line that cuts it; `part` 1: half the chord that it cuts off
    term,     ///< cosine or sine (as `part` says) of a direction from +x: an unknown's factor in ΣFx or ΣFy
    along,    ///< component along the line on which everything lies
    gap       ///< what a check leaves over: `part` 0 along x, 1 along y, 2 along the resultant, 3 across it;
              ///< by how much both sides differ: 4 along x, 5 along y, 6 as a magnitude
};

struct QuantityId {
    What what = What::none;
    VectorId of{}, with{};
    std::uint8_t answer = 0; ///< 1, 2: of two answers this one's own; 0: common to both, or there is but one
    std::uint8_t part = 0;   ///< tells apart what has all else in common
    auto operator<=>(const QuantityId&) const = default;
};

constexpr QuantityId magnitudeId(VectorId of, std::uint8_t answer = 0) {
    return {What::magnitude, of, {}, answer};
}
constexpr QuantityId directionId(VectorId of, std::uint8_t answer = 0) {
    return {What::direction, of, {}, answer};
}

/// `part` of a ratio or a term, and of an acute angle.
inline constexpr std::uint8_t kSine = 0, kCosine = 1, kTangent = 2, kOfInverseSine = 1;

/// `part` of a gap.
inline constexpr std::uint8_t kDifferenceX = 4, kDifferenceY = 5, kDifference = 6;

struct QuantityHash {
    std::size_t operator()(const QuantityId& id) const {
        const auto vector = [](VectorId v) { return static_cast<std::uint64_t>(v.kind) << 16U | v.index; };
        const std::uint64_t low = vector(id.of) << 24U | vector(id.with);
        const std::uint64_t high = static_cast<std::uint64_t>(id.what) << 16U |
                                   static_cast<std::uint64_t>(id.answer) << 8U | id.part;
        const std::uint64_t mixed = low * 0x9E3779B97F4A7C15ULL ^ high * 0xC2B2AE3D27D4EB4FULL;
        return mixed ^ mixed >> 40U; // a table takes the low bits; a product mixes upwards
    }
};

} // namespace tailpoint
