// SPDX-License-Identifier: MIT
// What the solutions of two unknowns that no triangle joins have in common. Internal to explain/.
#pragma once

#include "core/explain/board.h"
#include "core/explain/trial.h"
#include "core/explain/triangle.h"

namespace tailpoint::explaining::unreachable {

/// How far apart the parallels are, or a line is from the centre of a circle; what is left to bridge.
inline constexpr QuantityId kDistance{What::distance}, kLack{What::gap, kNobody, {}, 0, kDifference};

/// The step that draws to scale where the two sought can end, and the one that reckons whether they meet.
Step& drawing(Board& board, const Triangle& t, const Wording& title);
Step& reachStep(Board& board, const Triangle& t, const Wording& title);
/// The check by components.
Step& checkStep(Board& board);
/// "d = 3.2 kN"
Formula told(const Board& board, const QuantityId& quantity);
/// What a vector has along the line that decides.
QuantityId along(const Vector& vector, std::uint8_t answer = 0);
/// The known side as it goes into the equation by components.
Tried knownSide(const Triangle& t);

/// Magnitude of one and direction of the other: the line misses the circle, or meets it behind only.
void writeLineAndCircle(Board& board);
/// The nearest that can be done there, put into the equation.
void checkLineAndCircle(Board& board);

} // namespace tailpoint::explaining::unreachable
