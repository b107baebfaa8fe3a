// SPDX-License-Identifier: MIT
// The value of a formula, and whether a relation holds.
#include "core/formula/arithmetic.h"
#include "core/formula/formula.h"

#include <cmath>

namespace tailpoint {

namespace {

using arithmetic::finite;
using arithmetic::Value;

class Evaluator {
public:
    Evaluator(AngleUnit unit, const SymbolLookup& lookUp) : m_unit(unit), m_lookUp(lookUp) {}

    /// A part that stands for a quantity as a whole (R², sin β) is that quantity, where it is known.
    Value of(const Formula& f) const {
        if (f.id.what != What::none && f.kind != FormulaKind::symbol && m_lookUp)
            if (const Value known = m_lookUp(f))
                return known;
        return fromParts(f);
    }

private:
    Value fromParts(const Formula& f) const {
        switch (f.kind) {
        case FormulaKind::number:
            return finite(f.value);
        case FormulaKind::symbol:
            return m_lookUp ? m_lookUp(f) : std::nullopt;
        case FormulaKind::negative:
            return mapped(f.parts[0], [](long double x) { return Value(0 - x); });
        case FormulaKind::sum:
            return folded(f, 0, [](long double a, long double b) { return a + b; });
        case FormulaKind::product:
            return folded(f, 1, [](long double a, long double b) { return a * b; });
        case FormulaKind::fraction:
            return combined(f, arithmetic::quotient);
        case FormulaKind::power:
            return combined(f, arithmetic::raised);
        case FormulaKind::root:
            return mapped(f.parts[0], arithmetic::rootOf);
        case FormulaKind::absolute:
            return mapped(f.parts[0], [](long double x) { return Value(std::fabs(x)); });
        case FormulaKind::function:
            return mapped(f.parts[0], [&](long double x) {
                return arithmetic::valueOf(arithmetic::functionNamed(f.text), x, m_unit);
            });
        case FormulaKind::words:
        case FormulaKind::relation:
        case FormulaKind::row:
            return std::nullopt;
        }
        return std::nullopt;
    }

    template <class Map>
    Value mapped(const Formula& f, Map map) const {
        const Value x = of(f);
        return x ? map(*x) : std::nullopt;
    }
    template <class Combine>
    Value combined(const Formula& f, Combine combine) const {
        const Value a = of(f.parts[0]), b = of(f.parts[1]);
        return a && b ? combine(*a, *b) : std::nullopt;
    }
    template <class Fold>
    Value folded(const Formula& f, long double start, Fold fold) const {
        long double total = start;
        for (const Formula& part : f.parts) {
            const Value x = of(part);
            if (!x)
                return std::nullopt;
            total = fold(total, *x);
        }
        return finite(total);
    }

    AngleUnit m_unit;
    const SymbolLookup& m_lookUp;
};

} // namespace

std::optional<long double> evaluate(const Formula& formula, AngleUnit unit, const SymbolLookup& lookUp) {
    return Evaluator(unit, lookUp).of(formula);
}

std::optional<bool> holds(const Formula& relation, AngleUnit unit, const SymbolLookup& lookUp) {
    if (relation.kind != FormulaKind::relation)
        return std::nullopt;
    const Evaluator evaluator(unit, lookUp);
    bool all = true;
    for (std::size_t i = 0; i + 1 < relation.parts.size(); ++i) {
        const Value a = evaluator.of(relation.parts[i]), b = evaluator.of(relation.parts[i + 1]);
        const auto one = a && b ? arithmetic::compared(*a, relation.relations[i], *b) : std::nullopt;
        if (!one)
            return std::nullopt;
        all = all && *one;
    }
    return all;
}

} // namespace tailpoint
