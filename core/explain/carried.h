// The lines of a chain with the numbers that are carried on from one to the next, and how a line stands on
// paper. Internal to explain/.
#pragma once

#include "core/derive/chain.h"
#include "core/explain/explain.h"
#include "core/sketch/shown.h"

namespace tailpoint::explaining {

class Carried {
public:
    /// By hand every number is rounded as it is shown before the next line takes it.
    Carried(const Sketch& sketch, const Things& things, bool byHand);

    /// Appends the lines that are not here yet. `exact`: the solver's values of what is asked, carried on in
    /// place of a line's own last digits (not by hand). `within`: told within the lines that take them, so
    /// that by hand they are not rounded.
    void take(Chain chain, const Overrides& exact = {}, const std::vector<QuantityId>& within = {});
    /// A quantity that no line here gives, with its number from elsewhere; `otherwise` where there is none.
    void give(const QuantityId& quantity, const Carried& from, std::optional<double> otherwise);

    /// What is given, then the subjects of the lines in their order.
    const std::vector<QuantityId>& quantities() const { return m_quantities; }
    const Line* find(const QuantityId& quantity) const;
    /// Of the case taken. Precondition: there is such a line.
    const Formula& formulaOf(const QuantityId& quantity) const;
    std::optional<long double> full(const QuantityId& quantity) const { return m_full.at(quantity); }
    /// By hand the rounded one.
    std::optional<long double> value(const QuantityId& quantity) const;
    /// As it is shown, with its unit and its id. Precondition: it has a value.
    Formula number(const QuantityId& quantity) const;

    /// Subject = formula = the same in numbers = number. Squares, ratios and what is named in `inlined` stand
    /// as their own formulas within it.
    Working working(const QuantityId& subject, const std::vector<QuantityId>& inlined = {}) const;

    /// A number as it is shown: by hand its value is what the digits say.
    Formula shown(double value, Dimension dimension, Origin origin = Origin::computed) const;
    /// Magnitudes of all that is given or found: below kNoise of it a force is a true zero that was rounded.
    double scale = 0;
    static constexpr double kNoise = 1e-13;

private:
    bool isTyped(const QuantityId& quantity) const;
    double quiet(const QuantityId& quantity, double value) const;
    bool giveTyped(const QuantityId& quantity);
    void set(const QuantityId& quantity, double value);
    void putOnPaper(Formula& formula) const;
    Formula made(const QuantityId& quantity) const;
    void evaluate(const Line& line, const Overrides& exact, bool isRounded);
    bool isInlined(const QuantityId& quantity, const std::vector<QuantityId>& inlined) const;
    Formula expanded(const Formula& formula, const std::vector<QuantityId>& inlined) const;
    Formula inNumbers(const Formula& formula) const;

    const Sketch* m_sketch;
    const Things* m_things;
    bool m_byHand;
    std::vector<QuantityId> m_quantities;
    std::vector<Line> m_lines;
    std::vector<std::uint8_t> m_taken;
    QuantityIndex m_index; ///< of m_lines
    Values m_full, m_hand;
    mutable QuantityIndex m_told;
    mutable std::vector<Formula> m_numbers; ///< as number() gave them
};

/// No symbol anywhere in it.
bool isNumeric(const Formula& formula);
/// By which sign an angle is turned off in the line of a direction.
int turnSign(const Formula& formula);

} // namespace tailpoint::explaining
