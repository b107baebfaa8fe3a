// SPDX-License-Identifier: MIT
#include "core/derive/printed.h"

#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace tailpoint {

namespace {

constexpr int kMostDecimals = 12;
constexpr int kMostTypedDecimals = 8; ///< of an angle

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

Decimal read(std::string text, bool exactly) {
    Decimal out{std::move(text), 0, exactly};
    out.value = std::strtold(out.text.c_str(), nullptr);
    return out;
}

/// Significant digits of the shortest decimal that reads back, and how many of them stand behind the point.
struct Extent {
    int figures = 0, decimals = 0;
};
Extent extentOf(double value) {
    Extent out;
    bool point = false, leading = true;
    int zeros = 0;
    const std::string written = shortest(value);
    const std::size_t mark = written.find('e');
    for (const char c : std::string_view(written).substr(0, mark)) {
        point = point || c == '.';
        if (c < '0' || c > '9')
            continue;
        leading = leading && c == '0';
        zeros = c == '0' ? zeros + 1 : 0;
        out.figures += leading ? 0 : 1;
        out.decimals += point ? 1 : 0;
    }
    if (!point)
        out.figures -= std::min(zeros, out.figures);
    if (mark != std::string::npos)
        out.decimals -= std::atoi(written.c_str() + mark + 1);
    return out;
}

bool endsInZero(std::string_view text) {
    const std::string_view digits = text.substr(0, text.find('e'));
    return digits.find('.') != std::string_view::npos && digits.ends_with('0');
}

std::string withoutZeros(std::string text) {
    if (text.find('e') != std::string::npos)
        return text;
    while (endsInZero(text))
        text.pop_back();
    if (text.ends_with('.'))
        text.pop_back();
    return text;
}

/// -1: of none, or of one with an exponent.
int placesBehindPoint(std::string_view text) {
    if (text.empty() || text.find('e') != std::string_view::npos)
        return -1;
    const auto point = text.find('.');
    return point == std::string_view::npos ? 0 : static_cast<int>(text.size() - point - 1);
}

bool isConverted(const Formula& formula) {
    return formula.kind == FormulaKind::number && !formula.sub.empty() &&
           formula.text.find_first_not_of("-.0123456789") == std::string::npos &&
           extentOf(formula.value).decimals > kMostTypedDecimals;
}

bool holdsConverted(const Formula& formula) {
    return isConverted(formula) || std::any_of(formula.parts.begin(), formula.parts.end(), holdsConverted);
}

int leadOf(double value) {
    return static_cast<int>(std::floor(std::log10(std::abs(value))));
}

/// Both round to the same whole number, and neither lies near a half.
bool roundClearlyAlike(double a, double b) {
    constexpr double kClear = 0.49;
    const double nearest = std::round(a);
    return std::abs(a - nearest) < kClear && std::abs(b - nearest) < kClear;
}

bool isSum(LineKind kind) {
    return kind == LineKind::columnSum || kind == LineKind::elimination || kind == LineKind::check;
}

} // namespace

Paper::Paper(const Sketch& sketch, int guard, double scale)
    : m_sketch(&sketch), m_guard(guard), m_decimals(shownAngleDecimals(sketch)), m_scale(scale),
      m_residual(scale * std::pow(10.0, 1 - sketch.figures - guard)) {}

double Paper::quiet(What what, long double value) const {
    const auto number = static_cast<double>(value);
    return formOf(what) == Form::force && std::abs(number) <= kNoise * m_scale ? 0 : number;
}

std::string Paper::text(What what, double value, int guard) const {
    const Form form = formOf(what);
    if (form == Form::angle)
        return fixedDecimals(value, std::min(m_decimals + guard, kMostDecimals));
    const int figures =
        form == Form::precise ? m_sketch->figures + 1 : tailpoint::figuresOf(value, *m_sketch);
    return significant(value, std::min(figures + guard, kMostPrinted));
}

/// Written out only where that decides it: most pairs lie well within one last place.
bool Paper::showsAlike(What what, long double one, long double other) const {
    const double a = quiet(what, one), b = quiet(what, other);
    if (formOf(what) == Form::angle) {
        const double places = std::pow(10.0, m_decimals);
        if (roundClearlyAlike(a * places, b * places))
            return true;
    } else if (formOf(what) == Form::force && !m_sketch->moreAfterOne && a != 0 && b != 0 &&
               leadOf(a) == leadOf(b)) {
        const double place = std::pow(10.0, leadOf(a) + 1 - m_sketch->figures);
        if (roundClearlyAlike(a / place, b / place))
            return true;
    }
    return text(what, a, 0) == text(what, b, 0);
}

/// No place below the last one that the scale has with so many places, but one figure at
/// least, and every digit before the point.
int Paper::figuresOf(double value, int places) const {
    return m_scale == 0 ? places
                        : std::clamp(leadOf(value) - leadOf(m_scale) + places + 1,
                                     std::clamp(leadOf(value) + 1, 1, places), places);
}

Decimal Paper::computed(What what, long double printed, bool isSum, std::optional<long double> full) const {
    const double value = quiet(what, printed);
    if (formOf(what) == Form::force && m_guard > 0 && value != 0) {
        const int carried = m_sketch->figures + m_guard;
        const int figures = figuresOf(value, isSum ? carried : kMostPrinted);
        if (figures < carried) // below it there is but noise
            return read(significant(value, figures), false);
    }
    std::string most = text(what, value, m_guard);
    if (isSum && m_guard == 0 && std::abs(value) < m_residual) // zeros below the places of what was added
        most = withoutZeros(std::move(most));
    if (!endsInZero(most))
        return read(std::move(most), false);
    const double off = kNoise * (formOf(what) == Form::angle ? turnIn(m_sketch->angleUnit) : std::abs(value));
    for (int guard = 0; guard <= m_guard; ++guard)
        if (Decimal shorter = read(text(what, value, guard), true);
            std::abs(shorter.value - printed) <= off &&
            std::abs(shorter.value - full.value_or(printed)) <= off)
            return shorter;
    return read(std::move(most), false);
}

Decimal Paper::typed(What what, double value) const {
    const Extent extent = extentOf(value);
    const int guard = std::max(m_guard, kLeastGuard);
    if (formOf(what) == Form::angle) {
        if (extent.decimals > kMostTypedDecimals)
            return read(fixedDecimals(value, std::min(m_decimals + guard, kMostDecimals)), false);
        return read(fixedDecimals(value, std::max(m_decimals, extent.decimals), Origin::typed), true);
    }
    const int figures = tailpoint::figuresOf(value, *m_sketch);
    if (extent.figures > std::max(kMostTyped, figures))
        return read(significant(value, std::min(figures + guard, kMostPrinted)), false);
    return read(significant(value, std::max(figures, extent.figures), Origin::typed), true);
}

void Paper::put(Formula& formula) const {
    if (isConverted(formula)) {
        Decimal rounded = typed(What::direction, formula.value);
        formula.text = std::move(rounded.text);
        formula.value = static_cast<double>(rounded.value);
    }
    if (holdsConverted(formula))
        for (Formula& part : formula.parts)
            put(part);
}

namespace {

/// One line after the other, each from the printed numbers before it.
class Writing {
public:
    Writing(const Chain& chain, const Values& full, const Sketch& sketch, const Printing& printing)
        : m_chain(chain), m_full(full), m_sketch(sketch), m_printing(printing),
          m_turn(turnIn(sketch.angleUnit)) {
        for (std::size_t i = 0; i < chain.lines.size(); ++i)
            m_holdsConverted.push_back(
                std::any_of(chain.lines[i].cases.begin(), chain.lines[i].cases.end(),
                            [](const Case& one) { return holdsConverted(one.formula); }));
    }

    /// A try of a search is left where a line falls short: the rest of it would be thrown away.
    enum class Lines { all, untilShort };

    Printed run(int guard, Lines lines = Lines::all) const {
        const Paper paper(m_sketch, guard, m_printing.scale);
        Printed out;
        out.guard = guard;
        out.reached = true;
        out.values.reserve(m_chain.given.size() + m_chain.lines.size());
        writeGiven(out, paper);
        for (std::size_t i = 0; i < m_chain.lines.size(); ++i) {
            writeLine(out, paper, i);
            if (lines == Lines::untilShort && !out.reached)
                break;
        }
        return out;
    }

private:
    void writeGiven(Printed& out, const Paper& paper) const {
        for (std::size_t i = 0; i < m_chain.given.size(); ++i) {
            const QuantityId& given = m_chain.given[i];
            Decimal number;
            if (i < m_printing.given.size() && !m_printing.given[i].text.empty())
                number = m_printing.given[i];
            else if (const auto value = m_full.at(given))
                number = paper.typed(given.what, static_cast<double>(*value));
            if (!number.text.empty())
                out.values.set(given, number.value);
            out.given.push_back(std::move(number));
        }
    }

    std::pair<std::uint8_t, std::optional<long double>> valueOf(std::size_t i, const Values& values,
                                                                const Paper& paper) const {
        const Line& line = m_chain.lines[i];
        if (!m_holdsConverted[i])
            return evaluateLine(line, m_chain.unit, values);
        Line onPaper = line;
        for (Case& one : onPaper.cases)
            paper.put(one.formula);
        return evaluateLine(onPaper, m_chain.unit, values);
    }

    std::optional<long double> putInstead(const QuantityId& subject) const {
        for (const auto& [quantity, value] : m_printing.put)
            if (quantity == subject)
                return value;
        return std::nullopt;
    }

    void writeLine(Printed& out, const Paper& paper, std::size_t i) const {
        const Line& line = m_chain.lines[i];
        const auto [taken, computed] = valueOf(i, out.values, paper);
        const auto full = m_full.at(line.subject);
        auto value = m_printing.put.empty() ? computed : putInstead(line.subject);
        value = value ? value : computed;
        const bool within = i < m_printing.within.size() && m_printing.within[i];
        const bool replaced =
            !value && full && !within; // what has no value within a line leaves the line none
        if (replaced)
            value = full;
        Decimal number;
        if (value && within)
            out.values.set(line.subject, *value);
        if (value && !within) {
            number = decimal(paper, line, *value, full);
            if (taken != kNoCase && formOf(line.subject.what) == Form::force)
                cutToTerms(out, line.cases[taken].formula, *value, number);
            out.values.set(line.subject, number.value);
            out.reached = out.reached && isGood(paper, line, number, full);
        }
        const bool sameCase = m_full.taken.size() <= i || taken == m_full.taken[i];
        out.reached = out.reached && computed.has_value() && sameCase;
        out.replaced.push_back(replaced);
        out.taken.push_back(taken);
        out.number.push_back(std::move(number));
    }

    const Decimal* printedOf(const Printed& out, const QuantityId& id) const {
        for (std::size_t i = out.number.size(); i-- > 0;)
            if (m_chain.lines[i].subject == id)
                return &out.number[i];
        for (std::size_t i = 0; i < m_chain.given.size(); ++i)
            if (m_chain.given[i] == id)
                return &out.given[i];
        return nullptr;
    }

    /// A sum or a difference of printed numbers has the places of that which is rounded most coarsely; of
    /// those that are exact it has all places, and no more. By hand every number has
    /// its figures.
    void cutToTerms(const Printed& out, const Formula& formula, long double value, Decimal& number) const {
        if (out.guard == 0 || number.exactly)
            return;
        const bool isOne = formula.kind != FormulaKind::sum;
        int rounded = kMostPrinted, finest = 0;
        for (std::size_t i = 0; i < (isOne ? 1 : formula.parts.size()); ++i) {
            const Formula& part = isOne ? formula : std::as_const(formula.parts)[i];
            const bool isSigned = part.kind == FormulaKind::negative || part.kind == FormulaKind::absolute;
            const Formula& term = isSigned ? part.parts[0] : part;
            const Decimal* printed = term.kind == FormulaKind::symbol ? printedOf(out, term.id) : nullptr;
            const int places = printed == nullptr ? -1 : placesBehindPoint(printed->text);
            if (places < 0)
                return;
            finest = std::max(finest, places);
            if (!printed->exactly && printed->value != 0)
                rounded = std::min(rounded, places);
        }
        const int places = std::min(rounded, finest);
        if (placesBehindPoint(number.text) <= places || number.value == 0)
            return;
        if (Decimal cut = read(fixedDecimals(static_cast<double>(value), places), number.exactly);
            cut.value != 0)
            number = std::move(cut);
    }

    /// A full value half way between two numbers as they are shown is printed as that tie, where its printed
    /// numbers give it.
    Decimal decimal(const Paper& paper, const Line& line, long double value,
                    std::optional<long double> full) const {
        const What what = line.subject.what;
        Decimal number = paper.computed(what, value, isSum(line.kind), full);
        if (paper.guard() < kLeastGuard || !full || number.exactly || formOf(what) == Form::precise)
            return number;
        if (!isNearATie(what, static_cast<double>(*full)))
            return number;
        const long double nudge = 4 * kTieBand * std::abs(*full);
        if (paper.shown(what, *full - nudge) == paper.shown(what, *full + nudge))
            return number;
        const Paper oneMore(m_sketch, 1, m_printing.scale);
        Decimal tie = oneMore.computed(what, *full), near = oneMore.computed(what, value);
        return tie.text == near.text ? tie : number;
    }

    /// Within a millionth of the last shown place, or of the one below it: the only numbers for which it is
    /// worth while to write out both sides.
    bool isNearATie(What what, double full) const {
        constexpr double near = 1e-6;
        const bool isAngle = formOf(what) == Form::angle;
        if (full == 0)
            return false;
        const int last = isAngle ? -shownAngleDecimals(m_sketch) : leadOf(full) + 1 - m_sketch.figures;
        for (const int place : {last, last - 1}) { // one figure more where the first is a 1
            const double places = std::abs(full) / std::pow(10.0, place);
            if (std::abs(places - std::floor(places) - 0.5) < near * std::max(1.0, places * 1e-6))
                return true;
        }
        return false;
    }

    /// Shortens to what the full calculation shows. A check leaves over what it leaves over, and so does a
    /// sum that vanishes.
    bool isGood(const Paper& paper, const Line& line, const Decimal& number,
                std::optional<long double> full) const {
        const What what = line.subject.what;
        const Form form = formOf(what);
        if (!full)
            return false;
        if (line.kind == LineKind::check || form == Form::precise)
            return true;
        if (form == Form::force && paper.isNothing(*full))
            return std::abs(number.value) <= 2 * paper.residual();
        if (paper.showsAlike(what, number.value, *full))
            return true;
        return form == Form::angle && (paper.showsAlike(what, number.value - m_turn, *full) ||
                                       paper.showsAlike(what, number.value + m_turn, *full));
    }

    const Chain& m_chain;
    const Values& m_full;
    const Sketch& m_sketch;
    const Printing& m_printing;
    double m_turn;
    std::vector<bool> m_holdsConverted;
};

} // namespace

Printed printed(const Chain& chain, const Values& full, const Sketch& sketch, const Printing& printing) {
    const Writing writing(chain, full, sketch, printing);
    if (printing.rounding == Rounding::hand)
        return writing.run(0);
    if (printing.guard > 0 || !printing.put.empty())
        return writing.run(std::max(printing.guard, kLeastGuard));
    const int most = std::max(kMostPrinted - sketch.figures, kLeastGuard);
    for (int guard = kLeastGuard; guard < most; ++guard)
        if (Printed out = writing.run(guard, Writing::Lines::untilShort); out.reached)
            return out;
    return writing.run(most);
}

} // namespace tailpoint
