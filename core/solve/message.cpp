// SPDX-License-Identifier: MIT
#include "core/solve/message.h"

#include <iterator>

namespace tailpoint {
namespace {

constexpr std::string_view kNames[] = {"none",
                                       "tooManyUnknowns",
                                       "oneUnknown",
                                       "holdsByChance",
                                       "holdsWithinRounding",
                                       "noMagnitudeHolds",
                                       "noDirectionHolds",
                                       "equationHolds",
                                       "equationHoldsShown",
                                       "equationFails",
                                       "freeTwo",
                                       "indeterminate",
                                       "noForces",
                                       "forcesBalance",
                                       "othersClose",
                                       "bothZero",
                                       "parallelLines",
                                       "unequalMagnitudes",
                                       "noTriangle",
                                       "circleMissesLine",
                                       "bothPointAway",
                                       "endlessMagnitudes",
                                       "endlessDirections",
                                       "circleTouchesLine",
                                       "circlesTouch",
                                       "circleCutsLine",
                                       "circlesCross",
                                       "noAnswerInSense",
                                       "secondAnswerReversed",
                                       "otherSense",
                                       "nearlyParallel",
                                       "nearlyTangent",
                                       "smallestNeedsOthers",
                                       "smallestNotNeeded",
                                       "smallestTurnsSum",
                                       "smallestSumZero",
                                       "smallestSumResisted",
                                       "smallestForceResisted"};
static_assert(std::size(kNames) == kMessageCodes);

} // namespace

std::string_view nameOf(MessageCode code) {
    return kNames[static_cast<std::size_t>(code)];
}

} // namespace tailpoint
