// SPDX-License-Identifier: MIT
// Candidates at the end of a leader: rings of directions about the leader's anchor, further and further out.
#pragma once

#include "core/figure/label_candidates.h"

#include <array>

namespace tailpoint {

/// One of the directions all round its anchor, on one of the rings further and
/// further out. A label in a drag takes any of them, else only a few directions on a few rings: on every
/// other of these rings those halfway between.
inline constexpr int kRings = 160, kEachDirection = 32, kEachRing = 8;
inline constexpr int kTurns = kLeaderDirections / kEachDirection, kSteps = kRings / kEachRing;
inline constexpr double kFirstRing = 12,
                        kRingGrowth = 1.02304; ///< points from anchor to label, and ring by ring
inline constexpr double kAwayCost = 0.03;      ///< of a point
inline const std::array<Point, kLeaderDirections> kWays = [] {
    std::array<Point, kLeaderDirections> ways;
    for (std::size_t i = 0; i < ways.size(); ++i)
        ways[i] = onCircle({0, 0}, 1, 360.0 / kLeaderDirections * static_cast<double>(i));
    return ways;
}();
inline const std::array<double, kRings> kAways = [] {
    std::array<double, kRings> aways;
    for (std::size_t i = 0; i < aways.size(); ++i)
        aways[i] = kFirstRing * std::pow(kRingGrowth, static_cast<double>(i));
    return aways;
}();

inline std::size_t indexOf(Rail anchor) {
    return anchor == Rail::firstAnchor ? 0 : 1;
}

inline int directionOf(const Place& place) {
    return static_cast<int>(place.position);
}

inline Place placeAt(Rail anchor, int ring, int direction) {
    return {PlaceKind::onLeader, anchor, static_cast<std::int16_t>(ring), static_cast<double>(direction)};
}

/// How much further round the coarse directions of this ring lie.
inline int shiftOf(int ring) {
    return ring / kEachRing % 2 * (kEachDirection / 2);
}

inline bool isCoarse(const Place& place) {
    return place.ring % kEachRing == 0 && (directionOf(place) - shiftOf(place.ring)) % kEachDirection == 0;
}

inline double costOfAway(int ring) {
    return kAwayCost * (kAways[static_cast<std::size_t>(ring)] - kFirstRing);
}

inline Point wayOf(int direction) {
    return kWays[static_cast<std::size_t>(direction)];
}

} // namespace tailpoint
