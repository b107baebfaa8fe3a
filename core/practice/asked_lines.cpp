// SPDX-License-Identifier: MIT
#include "core/practice/asked_lines.h"

#include "core/derive/chain.h"
#include "core/explain/wording.h"
#include "core/quantity/typed.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

QuantityId common(QuantityId id) {
    id.answer = 0;
    return id;
}

const Line* lineOf(const Chain& chain, const QuantityId& id) {
    const auto found = std::find_if(chain.lines.begin(), chain.lines.end(),
                                    [&](const Line& line) { return line.subject == id; });
    return found == chain.lines.end() ? nullptr : &*found;
}

QuantityId subjectAt(const Worked& worked, const WorkingPlace& place) {
    return worked.steps[place.step].workings[place.working].subject->id;
}

/// The chain that the solution tells: of all routes the one that has most of its lines.
Chain chainBehind(const Sketch& sketch, const Solved& solved, const Worked& worked) {
    const Things things(sketch);
    const auto places = calculatedLines(worked);
    Chain best;
    std::ptrdiff_t most = -1;
    for (const Route& route : routesOf(sketch, solved)) {
        Chain chain = chainOf(sketch, solved, things, route);
        const auto told = std::count_if(places.begin(), places.end(), [&](const WorkingPlace& place) {
            return lineOf(chain, subjectAt(worked, place)) != nullptr;
        });
        if (told > most) {
            most = told;
            best = std::move(chain);
        }
    }
    return best;
}

/// A root, a ratio and its inverse serve more laws than one: which, the step says.
Principle byLaw(Law law, Principle inRightTriangle) {
    return law == Law::cosines ? Principle::cosines : law == Law::sines ? Principle::sines : inRightTriangle;
}

Principle principleOf(LineKind kind, Law law) {
    switch (kind) {
    case LineKind::tails:
        return Principle::between;
    case LineKind::supplement:
    case LineKind::third:
    case LineKind::halving:
        return Principle::angles;
    case LineKind::turn:
    case LineKind::quadrant:
    case LineKind::referral:
        return Principle::turned;
    case LineKind::component:
    case LineKind::term:
        return Principle::resolved;
    case LineKind::columnSum:
    case LineKind::elimination:
    case LineKind::check:
        return Principle::summed;
    case LineKind::cosines:
        return Principle::cosines;
    case LineKind::pythagoras:
    case LineKind::root:
        return byLaw(law, Principle::pythagoras);
    case LineKind::sinesSide:
    case LineKind::ratio:
    case LineKind::inverse:
    case LineKind::arctangent:
        break;
    }
    return byLaw(law, Principle::rightTriangle);
}

bool isLaw(Principle principle) {
    return principle != Principle::between && principle != Principle::angles &&
           principle != Principle::turned;
}

bool hasArctangent(const Formula& formula) {
    return (formula.kind == FormulaKind::function && formula.text == "arctan") ||
           std::any_of(formula.parts.begin(), formula.parts.end(), hasArctangent);
}

/// A quadrant's line may have its arctangent within it.
Principle principleOf(const Line* line, const Step& step, const Working& working) {
    if (line == nullptr)
        return byLaw(step.law, Principle::summed);
    const bool isQuadrant = line->kind == LineKind::quadrant;
    return isQuadrant && working.general && hasArctangent(*working.general)
               ? Principle::rightTriangle
               : principleOf(line->kind, step.law);
}

/// A number of no quantity that can be answered may have the sheet's unit behind it, as its line prints it.
std::string_view withoutUnit(std::string_view typed, const Sketch& sketch) {
    for (const std::string_view unit :
         {symbolOf(sketch.forceUnit), std::string_view("\u00B0"), nameOf(sketch.angleUnit)})
        if (typed.ends_with(unit)) {
            typed.remove_suffix(unit.size());
            while (typed.ends_with(' '))
                typed.remove_suffix(1);
            break;
        }
    return typed;
}

/// The first line of a step that names its law; else the first that rests on one.
std::size_t startOf(const Worked& worked, const std::vector<AskedLine>& lines) {
    const auto named = std::find_if(lines.begin(), lines.end(), [&](const AskedLine& line) {
        return isLaw(line.principle) && worked.steps[line.place.step].law != Law::none;
    });
    const auto any =
        std::find_if(lines.begin(), lines.end(), [](const AskedLine& line) { return isLaw(line.principle); });
    const auto start = named != lines.end() ? named : any;
    return start == lines.end() ? 0 : static_cast<std::size_t>(start - lines.begin());
}

Wording wordingOf(Principle principle) {
    switch (principle) {
    case Principle::between:
        return SENTENCE("practice", "Difference of two directions");
    case Principle::angles:
        return SENTENCE("practice", "Angles of a triangle: a half turn, equal sides");
    case Principle::cosines:
        return SENTENCE("practice", "Law of cosines");
    case Principle::sines:
        return SENTENCE("practice", "Law of sines");
    case Principle::resolved:
        return SENTENCE("practice", "Component: magnitude times cosine or sine");
    case Principle::summed:
        return SENTENCE("practice", "Components added up along x or y");
    case Principle::pythagoras:
        return SENTENCE("practice", "Theorem of Pythagoras");
    case Principle::rightTriangle:
        return SENTENCE("practice", "Sine, cosine or tangent in a right triangle");
    case Principle::turned:
        break;
    }
    return SENTENCE("practice", "Turned off from another direction or axis");
}

} // namespace

std::string principleName(Principle principle, const Sentences* sentences) {
    return Voice(sentences).text(wordingOf(principle));
}

AskedLines::AskedLines(const Sketch& sketch, const MarkOptions& options)
    : AskedLines(sketch, solve(sketch), options) {}

AskedLines::AskedLines(const Sketch& sketch, const Solved& solved, const MarkOptions& options)
    : m_sketch(sketch), m_marker(sketch, solved, options) {
    if (solved.solutions.empty())
        return;
    m_worked = explain(sketch, solved, construct(sketch, solved));
    const Chain chain = chainBehind(sketch, solved, m_worked);
    m_route = chain.route;
    for (const WorkingPlace& place : calculatedLines(m_worked)) {
        const Step& step = m_worked.steps[place.step];
        const Line* line = lineOf(chain, subjectAt(m_worked, place));
        m_lines.push_back({place, principleOf(line, step, step.workings[place.working])});
    }
    m_start = startOf(m_worked, m_lines);
}

const Working& AskedLines::working(std::size_t line) const {
    const WorkingPlace& place = m_lines[line].place;
    return m_worked.steps[place.step].workings[place.working];
}

std::vector<Prose> AskedLines::whyAtStart() const {
    const std::size_t own = m_lines[m_start].place.step;
    std::vector<Prose> why;
    for (std::size_t step = 0; step <= own; ++step)
        if (step == own || m_worked.steps[step].key == StepKey::choice)
            why.insert(why.end(), m_worked.steps[step].reasoning.begin(),
                       m_worked.steps[step].reasoning.end());
    return why;
}

Readable<LineMark> AskedLines::mark(const Working& right, const Route& route, std::string_view typed) const {
    const QuantityId id = right.subject->id;
    const auto& all = m_marker.quantities();
    const auto named =
        std::find_if(all.begin(), all.end(), [&](const Answerable& one) { return one.id == common(id); });
    if (named == all.end())
        return markBare(right, typed);
    auto read = m_marker.read(named->name, typed);
    if (auto* fault = std::get_if<AttemptFault>(&read))
        return std::move(*fault);
    GivenValue given = std::get<GivenValue>(std::move(read));
    if (given.numbers.size() > 1)
        return AttemptFault{AttemptFault::Code::manyValues, named->name,
                            "the line has one number; type one value"};
    const auto printed = evaluate(*right.value, m_sketch.angleUnit);
    given.line = GivenLine{id, route, printed ? std::optional(static_cast<double>(*printed)) : std::nullopt};
    LineMark made;
    made.marking = m_marker.mark({{std::move(given)}});
    for (const MarkedQuantity& one : made.marking->quantities)
        if (one.name == named->name && one.given)
            made.verdict = one.verdict;
    return made;
}

Readable<LineMark> AskedLines::markBare(const Working& right, std::string_view typed) const {
    const Typed<double> number = parseNumber(withoutUnit(typed, m_sketch));
    if (const auto* error = std::get_if<TypedError>(&number)) {
        AttemptFault fault;
        fault.message = error->message;
        return fault;
    }
    const auto wanted = evaluate(*right.value, m_sketch.angleUnit);
    const double off = wanted ? std::fabs(std::get<double>(number) - static_cast<double>(*wanted)) : 1;
    LineMark made;
    if (wanted && off <= kBareNumberShare * std::fabs(static_cast<double>(*wanted)))
        made.verdict = Verdict::right;
    return made;
}

} // namespace tailpoint
