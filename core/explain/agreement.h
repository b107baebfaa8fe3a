// SPDX-License-Identifier: MIT
// Whether a check agrees with what was found: number is compared with number. Internal to explain/.
#pragma once

#include "core/explain/board.h"

namespace tailpoint::explaining {

/// Magnitude and direction found beside the same from components.
Prose agreement(const Board& board, const Vector& found, const Formula& size, const Formula& way);
/// Of a printed number, behind its point.
int decimalsOf(const Formula& number);
/// One in the last place that the sheet shows of a number, with so many guard figures.
double lastPlaceOf(const Board& board, const Formula& number, int guard = 0);
/// Whether two numbers as they are shown differ by no more than one in the last place of the second.
bool isWithinOnePlace(const Board& board, const Formula& a, const Formula& b);
/// How far apart two numbers lie; angles within half a turn.
double distanceOf(const Board& board, const Formula& a, const Formula& b);
/// By how much two printed numbers differ, to the places that they have; of none: less than the last one.
Prose apart(const Board& board, const Formula& a, const Formula& b);
/// The same of directions, which a full turn leaves as they are.
Prose turnedApart(const Board& board, const Formula& a, const Formula& b);
/// Sums along x and y that are to vanish.
Prose vanishing(const Board& board, const Formula& x, const Formula& y);
/// By how much the components added up are off those of the sum.
Prose sameComponents(const Board& board, const Vector& sum, const Formula& x, const Formula& sumX,
                     const Formula& y, const Formula& sumY);
/// Components along the sum, which give it again, and across it, which give nothing.
Prose againAlong(const Board& board, const Vector& sum, const Formula& along, const Formula& across);

/// The component of the smallest vector along the line that it stands across, which is to vanish.
Prose rightAngle(const Board& board, const Vector& smallest, const Vector& line, const Formula& along);

/// Three quotients by Lami's form that must be one number.
Prose sameQuotients(const Board& board, const std::array<Formula, 3>& quotients);

/// Force units: by how much numbers that were found may be off by their own rounding.
struct Slack {
    double carried = 0; ///< one in the last place that is carried, of each
    double shown = 0;   ///< what roundings on the way may have added up to: no more than an answer shows
    /// What they can add up to at the worst, where an answer shows more: components have fewer places than a
    /// direction of many decimals, or angles fewer than a magnitude of many figures.
    double addedUp = 0;
};
Slack slackOf(const Board& board);
/// Whether two numbers found in two ways differ by no more than that: a force, or a direction of a vector of
/// this size.
bool isRoundedApart(const Board& board, const Formula& a, const Formula& b, double size);

} // namespace tailpoint::explaining
