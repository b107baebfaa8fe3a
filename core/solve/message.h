// SPDX-License-Identifier: MIT
// What a message says, as a code beside its words: for a marker, a test, a translation.
#pragma once

#include <cstddef>
#include <string_view>

namespace tailpoint {

enum class MessageCode {
    none, ///< nothing is said
    // Too many unknowns, or too few
    tooManyUnknowns,
    oneUnknown,          ///< one only, and what to free
    holdsByChance,       ///< answered: one unknown, and both equations hold with it
    holdsWithinRounding, ///< answered: the same, but for what the rounding of given values may leave over
    noMagnitudeHolds,    ///< no value of it does
    noDirectionHolds,    ///< the same
    equationHolds,       ///< everything is given
    equationHoldsShown,  ///< the same, to the shown digits
    equationFails,       ///< the same, and there is a gap
    freeTwo,             ///< what to free for a question
    indeterminate,       ///< three magnitudes or more along given lines: statics alone can't share them out
    // Zero vectors
    noForces,
    forcesBalance, ///< the forces' sum is zero
    othersClose,   ///< the force to be found is zero
    bothZero,      ///< both vectors to be found are
    // No answer
    parallelLines,
    unequalMagnitudes, ///< of two forces that would have to balance alone
    noTriangle,        ///< one side is longer than the other two
    circleMissesLine,
    bothPointAway,
    // Endlessly many
    endlessMagnitudes, ///< along parallel lines
    endlessDirections, ///< of equal magnitudes
    // One answer by contact, or two
    circleTouchesLine,
    circlesTouch,
    circleCutsLine,
    circlesCross,
    // Senses
    noAnswerInSense,      ///< but where a vector may act the other way
    secondAnswerReversed, ///< one answer, and another where a vector may act the other way
    otherSense,           ///< a vector given by its line of action acts in the other sense
    // Answers that move far
    nearlyParallel,
    nearlyTangent,
    // The smallest
    smallestNeedsOthers, ///< other quantities are to be given and to be found
    smallestNotNeeded,   ///< the smallest force is zero
    smallestTurnsSum,    ///< the smallest force turns the sum round
    smallestSumZero,
    smallestSumResisted,  ///< any such force makes the sum larger
    smallestForceResisted ///< any such force makes the smallest one larger
};
inline constexpr std::size_t kMessageCodes = static_cast<std::size_t>(MessageCode::smallestForceResisted) + 1;

/// Of the code, as it is spelled above: "circleCutsLine". Scripts rely on it.
std::string_view nameOf(MessageCode code);

} // namespace tailpoint
