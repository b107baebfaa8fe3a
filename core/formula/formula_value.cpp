// The value of a formula, and whether a relation holds.
#include "core/formula/formula.h"
#include "core/quantity/extended_angle.h"

#include <cmath>
#include <numbers>

namespace tailpoint {

namespace {

using Value = std::optional<long double>;

Value finite(long double x) {
    return std::isfinite(x) ? Value(x) : std::nullopt;
}

long double quarterTurn(AngleUnit unit) {
    switch (unit) {
    case AngleUnit::gon:
        return 100;
    case AngleUnit::rad:
        return std::numbers::pi_v<long double> / 2;
    case AngleUnit::deg:
        break;
    }
    return 90;
}

/// `x` radians in `unit`.
long double inUnit(long double x, AngleUnit unit) {
    return unit == AngleUnit::rad ? x : x * (quarterTurn(unit) / (std::numbers::pi_v<long double> / 2));
}

/// Exact where the angle is a known part of the quarter turn.
Value arcsine(long double x, AngleUnit unit) {
    const long double size = std::fabs(x), quarter = quarterTurn(unit);
    if (size > 1)
        return std::nullopt;
    const long double angle = size == 1      ? quarter
                              : size == 0.5L ? quarter / 3
                                             : inUnit(std::asin(size), unit);
    return x < 0 ? -angle : angle;
}

/// Written out by hand in a worked solution; no result of the program is computed here.
Value arccosine(long double x, AngleUnit unit) {
    const long double size = std::fabs(x), quarter = quarterTurn(unit);
    if (size > 1)
        return std::nullopt;
    const long double angle = size == 0 ? quarter
                              : size == 0.5L
                                  ? quarter * 2 / 3
                                  : inUnit(std::atan2(std::sqrt((1 - size) * (1 + size)), size), unit);
    return x < 0 ? 2 * quarter - angle : angle;
}

Value arctangent(long double x, AngleUnit unit) {
    const long double size = std::fabs(x);
    const long double angle = size == 1 ? quarterTurn(unit) / 2 : inUnit(std::atan(size), unit);
    return x < 0 ? -angle : angle;
}

Value valueOfFunction(std::string_view name, long double x, AngleUnit unit) {
    if (name == "sin")
        return cosSinExtended(x, unit).sin;
    if (name == "cos")
        return cosSinExtended(x, unit).cos;
    if (name == "tan") {
        const CosSin direction = cosSinExtended(x, unit);
        return direction.cos == 0 ? std::nullopt : finite(direction.sin / direction.cos);
    }
    if (name == "arctan")
        return arctangent(x, unit);
    if (name == "arcsin")
        return arcsine(x, unit);
    return name == "arccos" ? arccosine(x, unit) : std::nullopt;
}

Value raised(long double base, long double exponent) {
    return finite(exponent == 2 ? base * base : std::pow(base, exponent));
}

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
            return combined(f, [](long double a, long double b) { return b == 0 ? Value() : finite(a / b); });
        case FormulaKind::power:
            return combined(f, raised);
        case FormulaKind::root:
            return mapped(f.parts[0], [](long double x) { return x < 0 ? Value() : finite(std::sqrt(x)); });
        case FormulaKind::absolute:
            return mapped(f.parts[0], [](long double x) { return Value(std::fabs(x)); });
        case FormulaKind::function:
            return mapped(f.parts[0], [&](long double x) { return valueOfFunction(f.text, x, m_unit); });
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

std::optional<bool> compare(long double a, Relation relation, long double b) {
    switch (relation) {
    case Relation::equal:
        return a == b;
    case Relation::less:
        return a < b;
    case Relation::lessOrEqual:
        return a <= b;
    case Relation::greater:
        return a > b;
    case Relation::greaterOrEqual:
        return a >= b;
    case Relation::approximately:
    case Relation::implies:
        break;
    }
    return std::nullopt;
}

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
        const auto one = a && b ? compare(*a, relation.relations[i], *b) : std::nullopt;
        if (!one)
            return std::nullopt;
        all = all && *one;
    }
    return all;
}

} // namespace tailpoint
