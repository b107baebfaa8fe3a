#include "core/formula/formula.h"
#include "core/quantity/angle.h"

#include <cmath>

namespace tailpoint {

namespace {

using Value = std::optional<double>;

Value finite(double x) {
    return std::isfinite(x) ? Value(x) : std::nullopt;
}

double valueOfNumber(const Formula& f) {
    if (f.sub == "°")
        return toRadians(f.value, AngleUnit::deg);
    if (f.sub == "gon")
        return toRadians(f.value, AngleUnit::gon);
    return f.value;
}

Value valueOfFunction(std::string_view name, double x) {
    if (name == "sin")
        return finite(std::sin(x));
    if (name == "cos")
        return finite(std::cos(x));
    if (name == "tan")
        return finite(std::tan(x));
    if (name == "arctan")
        return finite(std::atan(x));
    if (name == "arcsin")
        return std::abs(x) <= 1 ? Value(std::asin(x)) : std::nullopt;
    // Written out by hand in a worked solution; no result of the program is computed here.
    if (name == "arccos")
        return std::abs(x) <= 1 ? Value(std::atan2(std::sqrt((1 - x) * (1 + x)), x)) : std::nullopt;
    return std::nullopt;
}

class Evaluator {
public:
    explicit Evaluator(const SymbolLookup& lookUp) : m_lookUp(lookUp) {}

    Value of(const Formula& f) const {
        switch (f.kind) {
        case FormulaKind::number:
            return finite(valueOfNumber(f));
        case FormulaKind::symbol:
            return m_lookUp ? m_lookUp(f) : std::nullopt;
        case FormulaKind::negative:
            return mapped(f.parts[0], [](double x) { return finite(-x); });
        case FormulaKind::sum:
            return folded(f, 0, [](double a, double b) { return a + b; });
        case FormulaKind::product:
            return folded(f, 1, [](double a, double b) { return a * b; });
        case FormulaKind::fraction:
            return combined(f, [](double a, double b) { return finite(a / b); });
        case FormulaKind::power:
            return combined(f, [](double a, double b) { return finite(std::pow(a, b)); });
        case FormulaKind::root:
            return mapped(f.parts[0], [](double x) { return finite(std::sqrt(x)); });
        case FormulaKind::absolute:
            return mapped(f.parts[0], [](double x) { return finite(std::abs(x)); });
        case FormulaKind::function:
            return mapped(f.parts[0], [&](double x) { return valueOfFunction(f.text, x); });
        case FormulaKind::words:
        case FormulaKind::relation:
            return std::nullopt;
        }
        return std::nullopt;
    }

private:
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
    Value folded(const Formula& f, double start, Fold fold) const {
        double total = start;
        for (const Formula& part : f.parts) {
            const Value x = of(part);
            if (!x)
                return std::nullopt;
            total = fold(total, *x);
        }
        return finite(total);
    }

    const SymbolLookup& m_lookUp;
};

} // namespace

std::optional<double> evaluate(const Formula& formula, const SymbolLookup& lookUp) {
    return Evaluator(lookUp).of(formula);
}

} // namespace tailpoint
