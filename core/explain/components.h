// Components along the sheet's x and y, as formulas. Internal to explain/.
#pragma once

#include "core/explain/moves.h"

namespace tailpoint::explaining {

/// Whether directions are already counted counter-clockwise from +x.
bool isPlainReference(const Sketch& sketch);

/// The angle from +x, counter-clockwise: θ itself on a plain sheet, else ψ, written into `step` as a working
/// ψ = axis ± θ the first time. Precondition: the arrow has a direction.
Term writeAbsolute(Blackboard& board, Step& step, const Arrow& arrow);

/// θ from ψ: θ = ψ − axis or axis − ψ, with a full turn where needed. Sets the arrow's carried direction.
void writeReferred(Blackboard& board, Step& step, Arrow& arrow, const Term& psi);

/// F cos θ (axis 'x') or F sin θ ('y'), in symbols and in numbers.
struct Expression {
    Formula general, numbers;
};
Expression componentOf(const Arrow& arrow, const Term& angle, char axis);

/// A component's number; what is nothing but rounding noise of `scale` is zero.
Formula componentNumber(const Blackboard& board, double value, double scale);

/// Magnitude and direction of `arrow` from its components, with the quadrant decided by their signs.
void writePolar(Blackboard& board, Arrow& arrow, const Term& x, const Term& y);

} // namespace tailpoint::explaining
