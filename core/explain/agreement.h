// Whether a check agrees with what was found: number is compared with number. Internal to explain/.
#pragma once

#include "core/explain/board.h"

namespace tailpoint::explaining {

/// Magnitude and direction found beside the same from components.
Prose agreement(const Board& board, const Vector& found, const Formula& size, const Formula& way);
/// By how much two printed numbers differ, to the places that they have; of none: less than the last one.
Prose apart(const Board& board, const Formula& a, const Formula& b);
/// Sums along x and y that are to vanish.
Prose vanishing(const Board& board, const Formula& x, const Formula& y);
/// By how much the components added up are off those of the sum.
Prose sameComponents(const Board& board, const Vector& sum, const Formula& x, const Formula& sumX,
                     const Formula& y, const Formula& sumY);
/// Components along the sum, which give it again, and across it, which give nothing.
Prose againAlong(const Board& board, const Vector& sum, const Formula& along, const Formula& across);

/// Three quotients by Lami's form that must be one number.
Prose sameQuotients(const Board& board, const std::array<Formula, 3>& quotients);

/// Force units: by how much numbers that were found may be off by their own rounding.
struct Slack {
    double carried = 0; ///< one in the last place that is carried, of each
    double shown = 0;   ///< what roundings on the way may have added up to: no more than an answer shows
};
Slack slackOf(const Board& board);

} // namespace tailpoint::explaining
