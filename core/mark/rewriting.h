// SPDX-License-Identifier: MIT
// Moves of which rewrites are made: trees in, trees out. Internal to mark/.
#pragma once

#include "core/mark/slips.h"

#include <functional>

namespace tailpoint::marking {

using Changed = std::function<std::optional<Formula>(const Formula&)>;

const Force& vectorOf(const Sketch& sketch, VectorId vector); ///< a force or the sum
std::vector<VectorId> vectorsOf(const Sketch& sketch);        ///< the forces, then the sum

/// The tree with every part for which `change` has another in its place; empty where there is none.
/// A changed part isn't looked into again, a tree above a changed part is no longer the quantity it stood
/// for.
std::optional<Formula> replaced(const Formula& formula, const Changed& change);
/// The same for one occurrence alone, the `index`th; empty where there are fewer.
std::optional<Formula> replacedOnce(const Formula& formula, const Changed& change, std::size_t index);

/// The line with every case's formula changed; conditions stay, for they say how the vectors lie. Empty where
/// nothing is changed.
std::optional<Line> replacedIn(const Line& line, const Changed& change);
/// The line with one formula in place of all its cases.
Line withFormula(const Line& line, Formula formula);

bool isFunction(const Formula& formula, std::string_view name); ///< "sin" and so on
bool isInverse(const Formula& formula);                         ///< arcsin, arccos, arctan
/// What sin, cos or tan is taken of with the calculator set to radians or to degrees: the angle's digits as
/// they stand, with that unit behind them ("rad", "°").
struct Keyed {
    const Formula* angle;
    std::string_view unit;
};
std::optional<Keyed> keyedOtherwise(const Formula& formula);
bool isTurnOf(const Formula& formula); ///< a whole, half or quarter turn, with its minus
Formula less(Formula a, Formula b);
Formula half(const Pattern& pattern); ///< a half turn
Formula plain(double value);
const Formula& withoutSign(const Formula& formula);

/// An angle as the difference of two directions, or the supplement of one.
struct Tails {
    Formula a, b;
    bool isSupplement = false;
};
std::optional<Tails> tailsOf(const Line& line);

bool isFamily(const Pattern& pattern, Family family);
bool isAngle(const QuantityId& id); ///< of the triangle, or between tails
/// The first symbol below that stands for such an angle, or for a magnitude.
const Formula* firstSymbol(const Formula& formula, bool angle);
/// How a chain knows a vector's direction.
std::optional<QuantityId> wayOf(const Pattern& pattern, VectorId vector);
/// The sides whose law of cosines gave that vector's length; else those of the question's triangle.
std::vector<VectorId> sidesBeside(const Pattern& pattern, VectorId third);

/// One rewrite for each line for which `change` has another.
std::vector<Rewrite> eachLine(const Pattern& pattern,
                              const std::function<std::optional<Line>(const Line&)>& change);
/// One rewrite with all of them; none where there are no such lines.
std::vector<Rewrite> allLines(const Pattern& pattern,
                              const std::function<std::optional<Line>(const Line&)>& change);
void append(std::vector<Rewrite>& rewrites, std::vector<Rewrite> more);
} // namespace tailpoint::marking
