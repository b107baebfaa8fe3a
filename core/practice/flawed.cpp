// SPDX-License-Identifier: MIT
#include "core/mark/slip_numbers.h"
#include "core/practice/lots.h"
#include "core/practice/silenced.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint {

using namespace practising;

namespace {

constexpr long double kRoundedAway = 0.01L; ///< of a number, by rounding on the way
constexpr double kAngleAway = 0.2;          ///< degrees, the same

/// Whose subject prints alike.
std::optional<WorkingPlace> placeOf(const Worked& worked, const Formula& subject) {
    const std::string name = toText(subject);
    for (const WorkingPlace& place : calculatedLines(worked))
        if (toText(*worked.steps[place.step].workings[place.working].subject) == name)
            return place;
    return std::nullopt;
}

/// The answer of who makes that slip and states all that is asked.
Attempt attemptOf(const SlipTable& table, const SlipNumbers& slip) {
    Attempt attempt;
    for (std::size_t quantity = 0; quantity < table.asked.size(); ++quantity) {
        GivenValue value{table.asked[quantity].id, table.asked[quantity].name, {}};
        for (std::size_t i = 0; i < table.answers; ++i) {
            const std::size_t cell = quantity * table.answers + i;
            const auto& number =
                slip.numbers.values[cell] ? slip.numbers.values[cell] : table.right.values[cell];
            if (number)
                value.numbers.push_back({{}, {{*number, 0, 15}}, true, false});
        }
        attempt.values.push_back(std::move(value));
    }
    return attempt;
}

const Finding* findingOf(const Marking& marking, std::string_view slip) {
    const auto found = std::find_if(marking.slips.begin(), marking.slips.end(), [&](const Finding& one) {
        return one.id == slip && one.second.empty() && one.lines.size() == 1 && one.lines.front().right;
    });
    return found == marking.slips.end() ? nullptr : &*found;
}

/// What is given, and the lines that calculate, with nothing said about them.
Worked bare(const Worked& worked, WorkingPlace& flaw) {
    Worked out;
    const auto lines = calculatedLines(worked);
    for (std::size_t i = 0; i < worked.steps.size(); ++i) {
        const Step& step = worked.steps[i];
        if (!isAmong(lines, i) && step.key != StepKey::given)
            continue;
        if (i == flaw.step)
            flaw.step = out.steps.size();
        out.steps.push_back(step);
        if (step.key != StepKey::given)
            silence(out.steps.back());
    }
    return out;
}

bool hasAllAnswers(const SlipTable& table, const SlipNumbers& slip) {
    for (std::size_t cell = 0; cell < table.cells(); ++cell)
        if (table.right.values[cell] && !slip.numbers.values[cell])
            return false;
    return true;
}

bool readAlike(const std::optional<Formula>& a, const std::optional<Formula>& b) {
    return a.has_value() == b.has_value() && (!a || toText(*a) == toText(*b));
}

/// How numbers stand in a solution: as its lines print them, else as they are given.
class PrintedNumbers {
public:
    PrintedNumbers(const Worked& worked, std::vector<WorkedQuantity> quantities)
        : m_worked(worked), m_quantities(std::move(quantities)) {}

    /// The line of a quantity; `common`: of either of two answers.
    const Working* lineOf(const QuantityId& id, bool common = false) const {
        const Working* found = nullptr;
        for (const WorkingPlace& place : calculatedLines(m_worked)) {
            const Working& line = m_worked.steps[place.step].workings[place.working];
            QuantityId own = line.subject->id;
            own.answer = common ? std::uint8_t{0} : own.answer;
            if (own == id)
                found = &line;
        }
        return found;
    }

    Formula in(const Formula& formula) const {
        if (formula.id.what != What::none)
            if (auto number = numberOf(formula.id))
                return *number;
        Formula copy = formula;
        for (Formula& part : copy.parts)
            part = in(part);
        return copy;
    }

private:
    std::optional<Formula> numberOf(const QuantityId& id) const {
        if (const Working* line = lineOf(id))
            return line->value;
        for (const WorkedQuantity& quantity : m_quantities)
            if (quantity.thing.id == id)
                return quantity.number;
        return std::nullopt;
    }

    const Worked& m_worked;
    std::vector<WorkedQuantity> m_quantities;
};

/// With the numbers that are to be seen, not those behind them.
Formula asPrinted(Formula formula) {
    if (formula.kind == FormulaKind::number)
        formula.value = shownValue(formula);
    for (Formula& part : formula.parts)
        part = asPrinted(part);
    return formula;
}

/// One in the last place of a printed number, or of the first in what is printed.
double lastPlaceIn(const Formula& formula) {
    if (formula.kind != FormulaKind::number)
        return formula.parts.empty() ? 0 : lastPlaceIn(formula.parts.front());
    const auto [digits, exponent] = splitExponent(formula.text);
    const auto point = digits.find('.');
    const auto decimals =
        point == std::string_view::npos ? 0.0 : static_cast<double>(digits.size() - point - 1);
    return std::pow(10.0, (exponent.empty() ? 0.0 : std::stod(std::string(exponent))) - decimals);
}

/// Keyed as it is printed, the line gives what is printed, to its last place. A calculator in radians is
/// keyed by nobody who looks for the slip.
bool computesAsPrinted(const Working& line, AngleUnit unit, std::string_view slip) {
    constexpr long double tie = 1e-9L;
    if (!line.substituted || !line.value || slip.starts_with("radian-mode"))
        return true;
    const auto keyed = evaluate(asPrinted(*line.substituted), unit),
               printed = evaluate(asPrinted(*line.value), unit);
    return keyed && printed && std::fabs(*keyed - *printed) <= (0.5L + tie) * lastPlaceIn(*line.value);
}

MarkOptions aloneFor(std::string_view slip) {
    MarkOptions options;
    options.onlySlips.emplace_back(slip);
    return options;
}

/// One line of a solution after the other rewritten by one slip.
class FlawMaker {
public:
    FlawMaker(const Sketch& sketch, const Solved& solved, const SlipTable& table, std::string_view slip)
        : m_sketch(sketch), m_solved(solved), m_table(table), m_slip(slip),
          m_construction(construct(sketch, solved)), m_marker(sketch, solved, aloneFor(slip)) {}

    std::optional<FlawedSolution> make(const SlipNumbers& way, const Attempt& attempt) const {
        const Marking marking = m_marker.mark(attempt);
        const Finding* finding = findingOf(marking, m_slip);
        if (finding == nullptr)
            return std::nullopt;
        ExplainOptions options;
        options.method = way.route->way == Route::Way::components ? Method::components : Method::triangle;
        const Worked right = explain(m_sketch, m_solved, m_construction, 0, options);
        const ChangedLine& line = finding->lines.front();
        if (!isOf(line, way.lines.front().first))
            return std::nullopt; // another line gives the same numbers: both would be wrong
        const auto place = placeOf(right, *line.right->subject);
        if (!place || !readAlike(workingAt(right, *place).general, line.right->general))
            return std::nullopt; // told by another way
        options.changed = way.lines;
        FlawedSolution out{explain(m_sketch, m_solved, m_construction, 0, options),
                           *place,
                           std::string(m_slip),
                           workingAt(right, *place),
                           *way.route,
                           finding->mend};
        if (placeOf(out.worked, *out.right.subject) != place)
            return std::nullopt; // the wrong number makes it another solution
        Working& own = out.worked.steps[place->step].workings[place->working];
        if (!isCarried(line.changed, own) || readAlike(own.value, out.right.value))
            return std::nullopt; // the line that is told isn't the one that was changed
        const PrintedNumbers printed(out.worked, quantitiesOf(m_sketch, m_solved, m_construction, options));
        if (!leadsTo(printed, way))
            return std::nullopt;
        own = rewritten(line.changed, own, printed);
        if (!own.general && !own.substituted)
            return std::nullopt; // a number alone: no line that could be followed
        if (readAlike(own.general, out.right.general) && readAlike(own.substituted, out.right.substituted))
            return std::nullopt; // nothing to be seen
        if (!computesAsPrinted(own, m_sketch.angleUnit, m_slip))
            return std::nullopt; // its number would be a second slip
        out.worked = bare(out.worked, out.flaw);
        return out;
    }

private:
    /// Whose line was told is whose was changed; a square's is told with its root.
    static bool isOf(const ChangedLine& told, QuantityId changed) {
        QuantityId subject = told.right->subject->id;
        subject.answer = changed.answer = 0;
        return subject == changed ||
               (changed.what == What::square && changed.of == subject.of && subject.what == What::magnitude);
    }

    static const Working& workingAt(const Worked& worked, const WorkingPlace& place) {
        return worked.steps[place.step].workings[place.working];
    }

    /// The solution goes on with what the slip's line gives, but for rounding.
    bool isCarried(const Working& changed, const Working& carried) const {
        if (!changed.value || !carried.value)
            return false;
        const auto wrong = evaluate(*changed.value, m_sketch.angleUnit),
                   own = evaluate(*carried.value, m_sketch.angleUnit);
        return wrong && own && std::fabs(*wrong - *own) <= kRoundedAway * std::max(std::fabs(*wrong), 1.0L);
    }

    /// The lines of what is asked give the slip's numbers, in the first answer.
    bool leadsTo(const PrintedNumbers& printed, const SlipNumbers& way) const {
        for (std::size_t cell = 0; cell < m_table.cells(); cell += m_table.answers) {
            const auto wrong = way.numbers.values[cell];
            const Working* line = printed.lineOf(m_table.asked[cell / m_table.answers].id, true);
            const auto own =
                line != nullptr && line->value ? evaluate(*line->value, m_sketch.angleUnit) : std::nullopt;
            if (!wrong || !own)
                return false;
            const bool isAngle = m_table.asked[cell / m_table.answers].dimension == Dimension::angle;
            const double off = m_table.apart(cell, *wrong, static_cast<double>(*own));
            if (off > (isAngle ? kAngleAway * m_table.turn / 360
                               : static_cast<double>(kRoundedAway) * std::fabs(*wrong)))
                return false;
        }
        return true;
    }

    /// The slip's formula with the numbers that the solution carries, and the number that it carries on.
    static Working rewritten(const Working& changed, const Working& carried, const PrintedNumbers& printed) {
        Working line = changed;
        line.subject = carried.subject;
        line.value = carried.value;
        line.told = carried.told;
        if (changed.general && !readAlike(changed.general, carried.general)) // else it is keyed otherwise
            line.substituted = printed.in(*changed.general);
        return line;
    }

    const Sketch& m_sketch;
    const Solved& m_solved;
    const SlipTable& m_table;
    std::string_view m_slip;
    Construction m_construction;
    Marker m_marker;
};

} // namespace

namespace {

/// A component of what points along an axis of the sheet: it is seen, not calculated, and nobody slips there.
bool isOfAnAxis(const QuantityId& line, const Solved& solved) {
    constexpr double none = 1e-9; // of the magnitude
    if ((line.what != What::x && line.what != What::y) ||
        (line.of.kind != VectorId::Kind::force && line.of != kSumVector))
        return false;
    const Solution& found = solved.solutions.front();
    const Eigen::Vector2d& vector = (line.of == kSumVector ? found.sum : found.forces[line.of.index]).vector;
    return vector.cwiseAbs().minCoeff() <= none * vector.norm();
}

enum class Lines { calculated, any };

std::optional<FlawedSolution> flawedIn(Lines lines, const Sketch& sketch, std::string_view slip,
                                       std::uint32_t seed) {
    const Solved solved = solve(sketch);
    const auto table = slipTable(sketch, solved, std::array{slip});
    if (!table)
        return std::nullopt;
    std::vector<const SlipNumbers*> ways;
    for (const SlipNumbers& one : table->slips)
        if (one.changes && one.lines.size() == 1 && hasAllAnswers(*table, one) &&
            (lines == Lines::any || !isOfAnAxis(one.lines.front().first, solved)))
            ways.push_back(&one);
    if (ways.empty())
        return std::nullopt;
    const FlawMaker maker(sketch, solved, *table, slip);
    for (std::size_t i = 0; i < ways.size(); ++i) {
        const SlipNumbers& way = *ways[(seed + i) % ways.size()];
        if (auto made = maker.make(way, attemptOf(*table, way)))
            return made;
    }
    return std::nullopt;
}

} // namespace

std::optional<FlawedSolution> flawed(const Sketch& sketch, std::string_view slip, std::uint32_t seed) {
    auto made = flawedIn(Lines::calculated, sketch, slip, seed);
    return made ? made : flawedIn(Lines::any, sketch, slip, seed);
}

namespace {

/// Slips in the calculation: those to pick from, then the rest, both with the more frequent first.
struct Pick {
    std::vector<SlipEntry> first, rest;
};

Pick pickFrom(std::span<const std::string_view> likely) {
    constexpr int frequent = 3; // prior
    Pick pick;
    for (const SlipEntry& slip : slipEntries()) {
        if (slip.place != SlipPlace::calculation)
            continue;
        const bool isLikely = std::find(likely.begin(), likely.end(), slip.id) != likely.end();
        (isLikely || slip.common >= frequent ? pick.first : pick.rest).push_back(slip);
    }
    const auto frequentFirst = [](const SlipEntry& a, const SlipEntry& b) { return a.common > b.common; };
    std::stable_sort(pick.first.begin(), pick.first.end(), frequentFirst);
    std::stable_sort(pick.rest.begin(), pick.rest.end(), frequentFirst);
    return pick;
}

} // namespace

std::optional<FlawedSolution> flawedBySome(const Sketch& sketch, std::span<const std::string_view> likely,
                                           std::uint32_t seed) {
    Pick pick = pickFrom(likely);
    Lots lots(seed);
    for (std::size_t left = pick.first.size(); left > 0; --left) // each of those that can be as often
        std::swap(pick.first[lots.below(static_cast<std::uint32_t>(left))], pick.first[left - 1]);
    for (const Lines lines : {Lines::calculated, Lines::any}) {
        for (auto slip = pick.first.rbegin(); slip != pick.first.rend(); ++slip)
            if (auto made = flawedIn(lines, sketch, slip->id, seed))
                return made;
        for (const SlipEntry& slip : pick.rest)
            if (auto made = flawedIn(lines, sketch, slip.id, seed))
                return made;
    }
    return std::nullopt;
}

} // namespace tailpoint
