// The numbers of a chain as they are printed, so that each line computes: its result is what a reader gets
// who works out the printed numbers before it.
#pragma once

#include "core/derive/chain.h"

#include <string>

namespace tailpoint {

enum class Rounding {
    guarded, ///< values on the way carry guard figures, as many as are needed
    hand     ///< every value rounded as it is shown, on the way too
};

/// A number as it is printed: ASCII, no unit, digits as significant() and fixedDecimals() write them.
struct Decimal {
    std::string text;     ///< empty: the line has no value
    double value = 0;     ///< what the text reads
    bool exactly = false; ///< the full value is a tie of the shown digits: printed as that tie
    bool operator==(const Decimal&) const = default;
};

struct Printed {
    std::vector<Decimal> number;     ///< of each line
    std::vector<std::uint8_t> taken; ///< of each line the case that its printed numbers take
    int guard = 0;                   ///< figures (of angles decimals) beyond those that the sheet shows
    /// Every line has a value, takes the full calculation's case, and shortens to the digits that the full
    /// value shows. Not so: by hand as it may come; else the lines that fall short carry on with the full
    /// value.
    bool reached = false;
};

/// With kLeastGuard guard figures, and more until every line shortens to what the full calculation shows; a
/// square or a ratio has one more. A given number enters as it was typed, with all its digits. Up to
/// kMostPrinted figures in all. `full`: evaluate() of the same chain.
Printed printed(const Chain& chain, const Values& full, const Sketch& sketch, Rounding rounding);
inline constexpr int kLeastGuard = 2, kMostPrinted = 15;

} // namespace tailpoint
