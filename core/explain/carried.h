// SPDX-License-Identifier: MIT
// The lines of a solution as they stand on paper: one chain, printed so that each line computes, and how a
// line is set. Internal to explain/.
#pragma once

#include "core/derive/printed.h"
#include "core/derive/quantity_index.h"
#include "core/explain/explain.h"
#include "core/sketch/shown.h"

namespace tailpoint::explaining {

class Carried {
public:
    Carried(const Sketch& sketch, const Things& things, Rounding rounding);

    /// Appends the lines that are not here yet. `within`: told within the lines that take them, and never
    /// rounded; squares, ratios and terms are so anyway.
    void take(Chain chain, const QuantityIndex& within = {});
    /// A given quantity as it was printed elsewhere.
    void give(const QuantityId& quantity, Decimal printed);
    /// Prints all lines. `exact`: the solver's values of what is asked, to which the printed ones must
    /// shorten; `put`: numbers in place of what their lines give.
    void settle(const Overrides& exact = {}, const Overrides& put = {});
    /// The same with a fixed number of guard figures, from what was given.
    void settleAt(int guard);

    /// What is given, then the subjects of the lines in their order.
    const std::vector<QuantityId>& quantities() const { return m_quantities; }
    const Line* find(const QuantityId& quantity) const;
    /// Of the case taken. Precondition: there is such a line.
    const Formula& formulaOf(const QuantityId& quantity) const;
    /// Of the full calculation.
    std::optional<long double> full(const QuantityId& quantity) const { return m_full.at(quantity); }
    /// What the printed number reads.
    std::optional<long double> value(const QuantityId& quantity) const {
        return m_printed.values.at(quantity);
    }
    /// All of them.
    const Values& values() const { return m_printed.values; }
    /// As it is printed; without text where it is not.
    const Decimal& decimal(const QuantityId& quantity) const;
    /// The same with its unit and its id. Precondition: it has a value.
    Formula number(const QuantityId& quantity) const;
    int guard() const { return m_printed.guard; }
    bool isReached() const { return m_printed.reached; }
    /// The line has no value of its own: its printed numbers leave none.
    bool isReplaced(const QuantityId& quantity) const;
    /// Another case than that of the full calculation.
    bool goesAnotherWay(const QuantityId& quantity) const;

    /// Subject = formula = the same in numbers = number. Squares, ratios and what is named in `inlined` stand
    /// as their own formulas within it.
    Working working(const QuantityId& subject, const std::vector<QuantityId>& inlined = {}) const;

    /// A number as the sheet shows it: its value is what the digits say.
    Formula shown(double value, Dimension dimension, Origin origin = Origin::computed) const;
    /// A number that is not a line's, with the guard figures of those that are, or more, so that it shortens
    /// to what the sheet shows.
    Formula carried(long double value, Dimension dimension) const;
    /// With kLeastGuard guard figures at least, by hand too.
    Formula guarded(long double value, Dimension dimension) const;
    /// What a sum leaves over of forces that cancel.
    Formula leftOver(long double value) const;
    /// As it was typed.
    Formula typed(double value, const QuantityId& quantity) const;
    /// Magnitudes of all that is given or found: below kNoise of it a force is a true zero that was rounded.
    double scale = 0;
    static constexpr double kNoise = Paper::kNoise;

private:
    Paper paper() const { return {*m_sketch, m_printed.guard, scale}; }
    Printing printing() const;
    void keep(Printed printed);
    Formula withUnit(const Decimal& decimal, Dimension dimension) const;
    Formula carriedFrom(int guard, long double value, Dimension dimension) const;
    bool isInlined(const QuantityId& quantity, const std::vector<QuantityId>& inlined) const;
    bool holdsInlined(const Formula& formula, const std::vector<QuantityId>& inlined) const;
    Formula expanded(const Formula& formula, const std::vector<QuantityId>& inlined) const;
    Formula inNumbers(const Formula& formula) const;

    const Sketch* m_sketch;
    const Things* m_things;
    Rounding m_rounding;
    Chain m_chain;
    std::vector<bool> m_within;
    std::vector<QuantityId> m_quantities;
    QuantityIndex m_index, m_given; ///< of lines, of what is given
    QuantityIndex m_elsewhere;      ///< given, and printed elsewhere
    std::vector<Decimal> m_fromElsewhere;
    Values m_full;
    Printed m_printed;
};

/// No symbol anywhere in it.
bool isNumeric(const Formula& formula);
/// A number as a size.
Formula withoutMinus(Formula number);
/// By which sign an angle is turned off in the line of a direction.
int turnSign(const Formula& formula);

} // namespace tailpoint::explaining
