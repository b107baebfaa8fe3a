// SPDX-License-Identifier: MIT
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
    std::string text;      ///< empty: the line has no value, or is told within others
    long double value = 0; ///< what the text reads
    bool exactly = false;  ///< nothing was rounded off
    bool operator==(const Decimal&) const = default;
};

/// How the numbers of one sheet stand on paper, with so many guard figures: significant figures of forces
/// (squares and ratios one more), decimals of angles beyond those that the sheet shows.
class Paper {
public:
    /// `scale`: magnitudes of all that is given or found; below kNoise of it a force is a true zero.
    Paper(const Sketch& sketch, int guard, double scale);
    /// Rounded half to even; a number that ends sooner is printed where it ends. A sum of
    /// forces (`isSum`) has no place below those that they carry, but one figure at least; by hand
    /// only zeros behind the point are left out of one that cancels.
    /// `full`: of the full calculation, which must end there too.
    Decimal computed(What what, long double value, bool isSum = false,
                     std::optional<long double> full = {}) const;
    /// A given number with all its digits; with more than kMostTyped of them (converted from another unit) it
    /// is rounded as a value on the way, with kLeastGuard guard figures at least.
    Decimal typed(What what, double value) const;
    /// The same of the angles that stand in a formula.
    void put(Formula& formula) const;
    /// As the sheet shows a computed value.
    std::string shown(What what, long double value) const { return text(what, quiet(what, value), 0); }
    bool showsAlike(What what, long double a, long double b) const;
    bool isNothing(long double force) const { return quiet(What::magnitude, force) == 0; }
    /// The greatest force that only the rounding of others leaves over.
    double residual() const { return m_residual; }
    int guard() const { return m_guard; }
    static constexpr double kNoise = 1e-14;

private:
    std::string text(What what, double value, int guard) const;
    double quiet(What what, long double value) const;
    int figuresOf(double value, int places) const;

    const Sketch* m_sketch;
    int m_guard, m_decimals;
    double m_scale, m_residual;
};

struct Printed {
    std::vector<Decimal> given;      ///< of each given quantity
    std::vector<Decimal> number;     ///< of each line
    std::vector<bool> replaced;      ///< its printed numbers give the line no value: it has the full one
    Values values;                   ///< what all of them read; told within others: not rounded
    std::vector<std::uint8_t> taken; ///< of each line the case that its printed numbers take
    int guard = 0;
    /// Every line has a value, takes the full calculation's case, and shortens to the digits that the full
    /// value shows. Not so: by hand as it may come; else the digits of a double don't suffice.
    bool reached = false;
};

struct Printing {
    Rounding rounding = Rounding::guarded;
    std::vector<bool> within;   ///< by line: told within the lines that take it, and not rounded; empty: none
    std::vector<Decimal> given; ///< by given quantity, where it was printed elsewhere; empty text: typed
    int guard = 0;              ///< where it is fixed; 0: as many as it takes
    Overrides put;              ///< numbers in place of what their lines give, and carried on
    double scale = 0;           ///< see Paper
};

/// With kLeastGuard guard figures, and more until every line shortens to what the full calculation shows. Up
/// to kMostPrinted figures in all. `full`: evaluate() of the same chain.
Printed printed(const Chain& chain, const Values& full, const Sketch& sketch, const Printing& printing);
inline constexpr int kLeastGuard = 2, kMostPrinted = 15, kMostTyped = 9;

} // namespace tailpoint
