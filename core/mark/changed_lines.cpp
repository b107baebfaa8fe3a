// SPDX-License-Identifier: MIT
// The line that a slip changes, beside the right one, in letters and in numbers.
#include "core/mark/rewriting.h"
#include "core/mark/telling.h"

#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

constexpr std::size_t kMostLines = 3; ///< of a slip that changes many

std::string unitOf(const QuantityId& id, const Sketch& sketch) {
    switch (dimensionOf(id.what)) {
    case Dimension::force:
        return std::string(symbolOf(sketch.forceUnit));
    case Dimension::forceSquared:
        return std::string(symbolOf(sketch.forceUnit)) + "²";
    case Dimension::angle:
        return sketch.angleUnit == AngleUnit::deg ? "°" : std::string(nameOf(sketch.angleUnit));
    case Dimension::number:
        break;
    }
    return {};
}

/// The line's case that a state takes.
const Formula& takenOf(const Line& line, std::uint8_t taken) {
    return line.cases[taken < line.cases.size() ? taken : 0].formula;
}

/// What is never told alone stands in its own formula: squares, ratios, terms.
Formula expanded(const Formula& formula, const std::function<const Formula*(const QuantityId&)>& own) {
    if (formula.id.what == What::square || formula.id.what == What::ratio || formula.id.what == What::term)
        if (const Formula* within = own(formula.id))
            return expanded(*within, own);
    if (formula.id.what != What::none)
        return formula;
    Formula copy = formula;
    for (Formula& part : copy.parts)
        part = expanded(part, own);
    return copy;
}

/// An angle's digits with another unit behind them: 115.0° keyed as 115 rad.
Formula withUnit(const Formula& angle, std::string_view unit) {
    Formula copy = angle;
    if (copy.kind == FormulaKind::number && !copy.sub.empty()) {
        if (copy.text.find('.') != std::string::npos) {
            copy.text.erase(copy.text.find_last_not_of('0') + 1);
            if (copy.text.back() == '.')
                copy.text.pop_back();
        }
        copy.sub = unit;
    }
    for (Formula& part : copy.parts)
        part = withUnit(part, unit);
    return copy;
}

/// As it is keyed: a function in another mode without the factor that makes it so.
Formula asKeyed(const Formula& formula, bool inNumbers) {
    const auto keyed = keyedOtherwise(formula);
    Formula copy = formula;
    if (keyed)
        copy.parts[0] = inNumbers ? withUnit(*keyed->angle, keyed->unit) : *keyed->angle;
    else
        for (Formula& part : copy.parts)
            part = asKeyed(part, inNumbers);
    return copy;
}

/// The square's line is told as the root of it.
struct Told {
    QuantityId subject;
    Formula formula;
};
Told told(const Way& way, const Rewrite& rewrite, std::size_t line, Formula formula) {
    const QuantityId& subject = way.chain.lines[line].subject;
    const auto isChanged = [&](std::size_t other) {
        return std::any_of(rewrite.changes.begin(), rewrite.changes.end(),
                           [&](const Change& c) { return c.line == other; });
    };
    if (subject.what == What::square && line + 1 < way.chain.lines.size() && !isChanged(line + 1) &&
        way.chain.lines[line + 1].kind == LineKind::root)
        return {way.chain.lines[line + 1].subject, root(std::move(formula))};
    return {subject, std::move(formula)};
}

} // namespace

bool Telling::isGivenQuantity(const QuantityId& id) const {
    return id.answer == 0 && id.part == 0 && m_question.things.at(id).role == Thing::Role::given;
}

Formula Telling::numberOf(const QuantityId& id, long double value, bool isGiven) const {
    const Decimal decimal =
        isGiven ? m_paper.typed(id.what, static_cast<double>(value)) : m_paper.computed(id.what, value);
    return number(static_cast<double>(decimal.value), decimal.text, unitOf(id, m_question.sketch()));
}

Formula Telling::inNumbers(const Formula& formula, const ValueOf& valueOf) const {
    if (formula.id.what != What::none)
        if (const auto value = valueOf(formula.id))
            return numberOf(formula.id, *value, isGivenQuantity(formula.id));
    Formula copy = formula;
    for (Formula& part : copy.parts)
        part = inNumbers(part, valueOf);
    return copy;
}

/// Its result is what the printed numbers give.
Working Telling::working(const QuantityId& subject, const Formula& formula, const ValueOf& valueOf) const {
    Working out{m_question.things.formula(subject), asKeyed(formula, false), {}, {}};
    Formula numbers = inNumbers(formula, valueOf);
    m_paper.put(numbers);
    const auto value = evaluate(numbers, m_question.sketch().angleUnit);
    if (formula.kind == FormulaKind::number)
        out.general.reset();
    if (numbers.kind != FormulaKind::number)
        out.substituted = asKeyed(numbers, true);
    if (value)
        out.value = numberOf(subject, *value, false);
    if (out.general && out.substituted &&
        tailpoint::toText(*out.general) == tailpoint::toText(*out.substituted))
        out.general.reset();
    if (out.substituted && out.value && tailpoint::toText(*out.substituted) == tailpoint::toText(*out.value))
        out.substituted.reset(); // told once
    return out;
}

std::vector<ChangedLine> Telling::rewritten(const SlipOrigin& origin) const {
    const Way& way = m_alternatives.ways(origin).ways[origin.way];
    const Alternatives::Run run = Alternatives::run(way, *origin.rewrite);
    const auto in = [&](const Program::State& state) {
        return [&](const QuantityId& id) { return state.at(way.program.slotOf(id)); };
    };
    const auto ownIn = [&](const Program::State& state, bool isRight) {
        return [&, isRight](const QuantityId& id) -> const Formula* {
            const std::size_t line = way.program.lineOf(id);
            if (line == way.chain.lines.size())
                return nullptr;
            for (const Change& change : origin.rewrite->changes)
                if (!isRight && change.line == line)
                    return &takenOf(change.now, state.taken[line]);
            return &takenOf(way.chain.lines[line], state.taken[line]);
        };
    };
    std::vector<ChangedLine> lines;
    for (const Change& change : origin.rewrite->changes) {
        if (lines.size() == kMostLines)
            break;
        const Line& own = way.chain.lines[change.line];
        const Told right =
                       told(way, *origin.rewrite, change.line, takenOf(own, way.right.taken[change.line])),
                   wrong = told(way, *origin.rewrite, change.line,
                                takenOf(change.now, run.state.taken[change.line]));
        lines.push_back(
            {working(right.subject, expanded(right.formula, ownIn(way.right, true)), in(way.right)),
             working(wrong.subject, expanded(wrong.formula, ownIn(run.state, false)), in(run.state))});
    }
    return lines;
}

std::vector<ChangedLine> Telling::readOtherwise(const SlipOrigin& origin) const {
    const Sketch &own = m_question.sketch(), &read = origin.reading->sketch;
    std::vector<ChangedLine> lines;
    const auto compare = [&](VectorId vector, const Force& right, const Force& wrong) {
        const auto add = [&](const QuantityId& id, const std::string& from, const std::string& to) {
            if (lines.size() < kMostLines)
                lines.push_back({Working{m_question.things.formula(id), {}, {}, inWords(from)},
                                 Working{m_question.things.formula(id), {}, {}, inWords(to)}});
        };
        if (!(right.magnitude.value == wrong.magnitude.value) && right.magnitude.value &&
            wrong.magnitude.value)
            add(magnitudeId(vector),
                shownForceWithUnit(*right.magnitude.value, own, tailpoint::Origin::typed),
                shownForceWithUnit(*wrong.magnitude.value, own, tailpoint::Origin::typed));
        if (!(right.direction == wrong.direction))
            add(directionId(vector), withMinusSigns(shownAsGiven(right.direction, own)),
                withMinusSigns(shownAsGiven(wrong.direction, own)));
    };
    for (std::size_t i = 0; i < own.forces.size(); ++i)
        compare(forceVector(i), own.forces[i], read.forces[i]);
    compare(kSumVector, own.sum, read.sum);
    return lines;
}

std::vector<ChangedLine> Telling::linesOf(std::size_t single) const {
    const SlipOrigin& origin = originOf(single);
    if (origin.rewrite)
        return rewritten(origin);
    if (origin.reading)
        return readOtherwise(origin);
    std::vector<ChangedLine> lines;
    const ValueOf right = [&](const QuantityId& id) { return m_alternatives.rightValue(id); };
    if (origin.shortCut)
        for (const auto& [id, formula] : origin.shortCut->gives)
            lines.push_back({std::nullopt, working(id, formula, right)});
    if (origin.form) {
        const QuantityId own = m_question.ownId(origin.cell);
        const bool isNegative = isNegativeBySense(m_question, origin.cell);
        Working form = working(own, origin.form->formula, [&](const QuantityId& id) {
            const auto value = right(id); // of a magnitude its size; stated is its sign too
            return value && isNegative && id == own ? std::optional(-*value) : value;
        });
        form.subject.reset(); // what comes out is not the quantity, but how it is stated
        lines.push_back({std::nullopt, std::move(form)});
    }
    return lines;
}

} // namespace tailpoint::marking
