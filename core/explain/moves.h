// The moves of which every solution is made: an angle between tails, a law, a sum of angles, a turn.
// Each appends one working to a step and returns the number to carry on with. Internal to explain/.
#pragma once

#include "core/explain/blackboard.h"

namespace tailpoint::explaining {

/// A side or an angle with its symbol and its carried number.
struct Term {
    Formula symbol, number;
};

/// Angle between the tails of `a` and `b`, radians in [0, pi]; 0 where either has no direction.
double tailsBetween(const Arrow& a, const Arrow& b);

/// φ = θa − θb, or 360° less that. Preconditions: both have a direction.
Term writeTails(Blackboard& board, Step& step, const Arrow& a, const Arrow& b, Formula symbol);

/// The supplement: symbol = 180° − angle.
Term writeSupplement(Blackboard& board, Step& step, Formula symbol, const Term& angle, double radians);

/// 180° − φ straight from two directions: symbol = 180° − (θa − θb).
Term writeExterior(Blackboard& board, Step& step, const Arrow& a, const Arrow& b, Formula symbol);

/// symbol = 180° − a − b.
Term writeThird(Blackboard& board, Step& step, Formula symbol, const Term& a, const Term& b, double radians);

/// c = √(a² + b² − 2ab cos γ).
Term writeCosinesForSide(Blackboard& board, Step& step, Formula symbol, const Term& a, const Term& b,
                         const Term& included, double full);
/// γ = arccos((a² + b² − c²) / 2ab).
Term writeCosinesForAngle(Blackboard& board, Step& step, Formula symbol, const Term& a, const Term& b,
                          const Term& opposite, double radians);
/// a = known · sin α / sin κ.
Term writeSinesForSide(Blackboard& board, Step& step, Formula symbol, const Term& angle, const Term& known,
                       const Term& knownAngle, double full);
/// α = arcsin(a sin κ / known), the acute one.
Term writeSinesForAngle(Blackboard& board, Step& step, Formula symbol, const Term& side, const Term& known,
                        const Term& knownAngle, double radians);

/// θ = from ± angle, brought into (-180°, 180°]; the sign that leads to `direction` (sheet's unit).
struct Turn {
    Formula number;
    int sign = 1; ///< in the sheet's sense
};
Turn writeTurn(Blackboard& board, Step& step, Formula symbol, const Term& from, const Term& angle,
               double direction);

/// "counter-clockwise" or "clockwise": which way an angle of that sign turns on this sheet.
std::string_view wayOf(int sign, const Sketch& sketch);

Term sizeOf(const Arrow& arrow);
Term thetaOf(const Arrow& arrow);

/// First, second, third or fourth quadrant, or the axis: from the signs of the components.
std::string quadrantWords(const Eigen::Vector2d& v);

/// Adds a sentence where the shown numbers alone would give another last digit than the full ones.
void remarkOnRounding(Blackboard& board, Step& step, Quantity quantity);

} // namespace tailpoint::explaining
