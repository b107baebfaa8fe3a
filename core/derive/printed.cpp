#include "core/derive/printed.h"

#include "core/quantity/decimals.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace tailpoint {

namespace {

constexpr double kNoise = 1e-13; ///< of the scale: below it a force is a true zero that was rounded
constexpr int kRadianDecimalsMore = 2;
constexpr int kMostDecimals = 12;

enum class Form { force, angle, precise }; ///< precise: squares and ratios

Form formOf(What what) {
    switch (what) {
    case What::direction:
    case What::fromX:
    case What::between:
    case What::opposite:
    case What::acute:
        return Form::angle;
    case What::square:
    case What::ratio:
    case What::term:
        return Form::precise;
    default:
        return Form::force;
    }
}

/// Writes and reads numbers of one sheet at one number of guard figures.
class Writing {
public:
    Writing(const Chain& chain, const Values& full, const Sketch& sketch, int guard)
        : m_chain(chain), m_full(full), m_sketch(sketch), m_guard(guard) {
        for (const QuantityId& given : chain.given)
            if (given.what == What::magnitude)
                m_scale += std::abs(static_cast<double>(full.at(given).value_or(0)));
    }

    /// One line after the other, each from the printed numbers before it.
    Printed run(bool fallBack) const {
        Printed out;
        out.guard = m_guard;
        Values values;
        values.reserve(m_chain.given.size() + m_chain.lines.size());
        for (const QuantityId& given : m_chain.given)
            if (const auto value = m_full.at(given))
                values.set(given, *value);
        out.reached = true;
        for (std::size_t i = 0; i < m_chain.lines.size(); ++i) {
            const Line& line = m_chain.lines[i];
            const auto [taken, value] = evaluateLine(line, m_chain.unit, values);
            Decimal number = value ? decimal(line.subject, static_cast<double>(*value)) : Decimal{};
            const auto full = m_full.at(line.subject);
            if (full && isTie(line.subject, static_cast<double>(*full)))
                number = tieOf(line.subject, static_cast<double>(*full));
            const bool good = taken == m_full.taken[i] && isGood(line, number, full);
            if (!good && fallBack && full)
                number = decimal(line.subject, static_cast<double>(*full));
            out.reached = out.reached && good;
            if (!number.text.empty())
                values.set(line.subject, number.value);
            out.taken.push_back(taken);
            out.number.push_back(std::move(number));
        }
        return out;
    }

private:
    int decimalsShown() const {
        return m_sketch.angleDecimals + (m_sketch.angleUnit == AngleUnit::rad ? kRadianDecimalsMore : 0);
    }
    double quiet(const QuantityId& id, double value) const {
        return formOf(id.what) == Form::force && std::abs(value) <= kNoise * m_scale ? 0 : value;
    }
    /// With `guard` more than the sheet shows.
    std::string text(const QuantityId& id, double value, int guard) const {
        const Form form = formOf(id.what);
        if (form == Form::angle)
            return fixedDecimals(value, std::min(decimalsShown() + guard, kMostDecimals));
        const int more = form == Form::precise ? 1 : 0;
        return significant(quiet(id, value), std::min(m_sketch.figures + guard + more, kMostPrinted));
    }
    Decimal decimal(const QuantityId& id, double value) const {
        Decimal out{text(id, value, m_guard), 0, false};
        out.value = std::strtod(out.text.c_str(), nullptr);
        return out;
    }
    /// Half way between two numbers as they are shown, to the band of a computed value.
    bool isTie(const QuantityId& id, double full) const {
        if (m_guard == 0 || formOf(id.what) == Form::precise || quiet(id, full) == 0)
            return false;
        const double nudge = 4 * kTieBand * std::abs(full);
        return text(id, full - nudge, 0) != text(id, full + nudge, 0);
    }
    Decimal tieOf(const QuantityId& id, double full) const {
        Decimal out{text(id, full, 1), 0, true};
        out.value = std::strtod(out.text.c_str(), nullptr);
        return out;
    }
    /// Shortens to what the full calculation shows. A check leaves over what it leaves over.
    bool isGood(const Line& line, const Decimal& number, std::optional<long double> full) const {
        if (number.text.empty() || !full)
            return false;
        if (line.kind == LineKind::check || formOf(line.subject.what) == Form::precise)
            return true;
        return text(line.subject, number.value, 0) == text(line.subject, static_cast<double>(*full), 0);
    }

    const Chain& m_chain;
    const Values& m_full;
    const Sketch& m_sketch;
    int m_guard;
    double m_scale = 0;
};

} // namespace

Printed printed(const Chain& chain, const Values& full, const Sketch& sketch, Rounding rounding) {
    if (rounding == Rounding::hand)
        return Writing(chain, full, sketch, 0).run(false);
    const int most = kMostPrinted - sketch.figures;
    for (int guard = kLeastGuard; guard <= most; ++guard)
        if (Printed out = Writing(chain, full, sketch, guard).run(false); out.reached)
            return out;
    return Writing(chain, full, sketch, std::max(most, kLeastGuard)).run(true);
}

} // namespace tailpoint
