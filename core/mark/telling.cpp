// SPDX-License-Identifier: MIT
#include "core/mark/telling.h"

#include "core/explain/ranges.h"
#include "core/mark/rewriting.h"
#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

constexpr std::size_t kMostReadings = 3; ///< besides the one in front: more nobody reads

double scaleOf(const Question& question) {
    if (question.refusal)
        return 0;
    const Solution& found = question.own.solved.solutions.front();
    double scale = found.sum.magnitude;
    for (const SolvedForce& force : found.forces)
        scale += force.magnitude;
    return scale;
}

} // namespace

Telling::Telling(const Question& question, const Alternatives& alternatives)
    : m_question(question), m_alternatives(alternatives), m_scale(scaleOf(question)),
      m_paper(question.sketch(), kLeastGuard, m_scale) {}

const SlipOrigin& Telling::originOf(std::size_t single) const {
    return m_alternatives.origin(m_alternatives.at(single));
}
const Slip& Telling::slipOf(std::size_t single) const {
    return m_alternatives.slip(m_alternatives.at(single));
}

Prose Telling::say(const Wording& wording, const SlipOrigin& origin) const {
    VectorId of = kNobody, with = kNobody;
    if (origin.rewrite)
        of = origin.rewrite->of, with = origin.rewrite->with;
    else if (origin.reading)
        of = origin.reading->of;
    else if (origin.shortCut)
        of = origin.shortCut->of, with = origin.shortCut->with;
    else if (origin.form)
        of = origin.form->of;
    const auto named = [&](VectorId vector) {
        return vector == kNobody ? inWords({}) : m_question.things.vectorFormula(vector);
    };
    return Voice(m_question.options.sentences).say(wording, "of", named(of), "with", named(with));
}

std::optional<StepKey> Telling::stepOf(const SlipOrigin& origin) const {
    if (!origin.rewrite)
        return std::nullopt;
    const Chain& chain = m_alternatives.ways(origin).ways[origin.way].chain;
    const Line& line = chain.lines[origin.rewrite->changes.front().line];
    const bool byComponents = chain.route.way == Route::Way::components;
    switch (line.kind) {
    case LineKind::tails:
        return StepKey::tails;
    case LineKind::supplement:
    case LineKind::third:
        return StepKey::included;
    case LineKind::cosines:
        return StepKey::cosines;
    case LineKind::root:
        return byComponents ? StepKey::magnitude : StepKey::cosines;
    case LineKind::ratio:
    case LineKind::inverse:
    case LineKind::sinesSide:
        return byComponents ? StepKey::direction : StepKey::sines;
    case LineKind::halving:
        return StepKey::halving;
    case LineKind::component:
    case LineKind::columnSum:
        return StepKey::components;
    case LineKind::term:
        return StepKey::equations;
    case LineKind::elimination:
        return StepKey::elimination;
    case LineKind::pythagoras:
        return StepKey::magnitude;
    case LineKind::turn:
    case LineKind::arctangent:
    case LineKind::quadrant:
    case LineKind::referral:
    case LineKind::check:
        break;
    }
    return StepKey::direction;
}

Prose Telling::ask(const Fitting& fitting) const {
    const std::size_t single = fitting.slips.front().first;
    return say(slipOf(single).ask, originOf(single));
}

void Telling::addSecond(const Fitting& fitting, Finding& out) const {
    const Fitting::One& one = fitting.slips.front();
    const Slip &slip = slipOf(one.first), &other = slipOf(*one.second);
    const Wording both =
        fitting.isStrong ? SENTENCE("marking", "Two slips at once give these numbers. Of the first alone one "
                                               "would say: {first} Of the second alone: {second}")
                         : SENTENCE("marking", "Two slips at once may have given these numbers. Of the first "
                                               "alone one would say: {first} Of the second alone: {second}");
    out.second = other.id;
    if (!out.read)
        out.read = m_alternatives.read(originOf(*one.second));
    out.sentence = Voice(m_question.options.sentences)
                       .say(both, "first", say(slip.strong, originOf(one.first)), "second",
                            say(other.strong, originOf(*one.second)));
    for (ChangedLine& line : linesOf(*one.second))
        out.lines.push_back(std::move(line));
}

void Telling::addAlso(const Fitting& fitting, Finding& out) const {
    for (std::size_t i = 1; i < fitting.slips.size(); ++i) {
        const Fitting::One& more = fitting.slips[i];
        const std::string id(slipOf(more.first).id);
        if (more.second || id == out.id || std::find(out.also.begin(), out.also.end(), id) != out.also.end())
            continue;
        out.also.push_back(id);
        if (out.readings.size() == kMostReadings)
            continue;
        out.readings.push_back(say(slipOf(more.first).weak, originOf(more.first)));
    }
}

/// A slip is found by a magnitude's size; where its sign counts it is stated with the sign that was given.
double Telling::withItsSign(std::size_t cell, double value, const std::vector<Given>& givens) const {
    if (!isSignedBySense(m_question, cell))
        return value;
    const auto given =
        std::find_if(givens.begin(), givens.end(), [&](const Given& one) { return one.cell == cell; });
    const bool isNegative = given != givens.end() ? given->stated() < 0 : isNegativeBySense(m_question, cell);
    return isNegative ? -std::abs(value) : std::abs(value);
}

/// What is asked, and what it explains besides, in the answer against which was marked.
void Telling::addNumbers(const Fitting& fitting, std::size_t answer, const std::vector<Given>& givens,
                         Finding& out) const {
    for (std::size_t quantity = 0; quantity < m_question.quantities.size(); ++quantity) {
        const std::string& name = m_question.quantities[quantity].name;
        const std::size_t cell = m_question.cell(quantity, answer);
        const bool isTold = quantity < m_question.asked ||
                            std::find(out.explains.begin(), out.explains.end(), name) != out.explains.end();
        if (!isThere(fitting.numbers.value[cell]))
            continue;
        const double value = m_question.isDirection(cell)
                                 ? normalized(fitting.numbers.value[cell], m_question.sketch().angleUnit)
                                 : fitting.numbers.value[cell];
        out.numbers.emplace_back(m_question.quantities[quantity].id, withItsSign(cell, value, givens));
        if (isTold)
            out.gives.emplace_back(name, out.numbers.back().second);
    }
}

Finding Telling::finding(const Fitting& fitting, const std::vector<Given>& givens) const {
    Finding out;
    const Fitting::One& one = fitting.slips.front();
    const Slip& slip = slipOf(one.first);
    const SlipOrigin& origin = originOf(one.first);
    out.id = slip.id;
    out.place = slip.place;
    out.isStrong = fitting.isStrong;
    out.covered = fitting.covered;
    out.step = stepOf(origin);
    out.sentence = say(fitting.isStrong ? slip.strong : slip.weak, origin);
    out.mend = say(slip.mend, origin);
    out.lines = linesOf(one.first);
    out.routes = m_alternatives.at(one.first).routes;
    out.read = m_alternatives.read(origin);
    if (one.second)
        addSecond(fitting, out);
    addAlso(fitting, out);
    for (const std::size_t i : fitting.explained) {
        const Given& given = givens[i];
        out.explains.push_back(m_question.quantities[m_question.quantityOf(given.cell)].name);
        addEqual(out.about, given.cell, stated(given));
    }
    addNumbers(fitting, m_question.answerOf(givens.front().cell), givens, out);
    return out;
}

std::string Telling::shown(std::size_t cell, double value) const {
    const Sketch& sketch = m_question.sketch();
    const What what = m_question.quantities[m_question.quantityOf(cell)].id.what;
    if (what == What::direction)
        if (std::string bearing = bearingWords(value, sketch); !bearing.empty())
            return bearing;
    if (what == What::direction)
        return directionWords(normalized(value, sketch.angleUnit), sketch);
    if (dimensionOf(what) == Dimension::angle)
        return shownAngle(value, sketch);
    return shownForceWithUnit(std::abs(value) < Paper::kNoise * m_scale ? 0 : value, sketch);
}

/// The range of a vector's own values; null where it has none, or the quantity is another.
const tolerance::VectorRange* Telling::rangeFor(std::size_t cell) const {
    const VectorId of = m_question.quantities[m_question.quantityOf(cell)].id.of;
    const std::size_t answer = m_question.answerOf(cell);
    const bool isVector = of.kind == VectorId::Kind::force || of.kind == VectorId::Kind::sum;
    return isVector && answer < m_question.ranges.size()
               ? m_question.ranges[answer].find(of == kSumVector ? kSumIndex : of.index)
               : nullptr;
}

void Telling::addRange(std::size_t cell, MarkedQuantity& quantity) const {
    using Ranged = MarkedQuantity::Ranged;
    const Sketch& sketch = m_question.sketch();
    const QuantityId& id = quantity.id;
    const Voice voice(m_question.options.sentences);
    if (!m_question.hasTolerances)
        return;
    const bool isOwn = id.part == 0 && (id.what == What::magnitude || id.what == What::direction ||
                                        id.what == What::x || id.what == What::y);
    const auto* range = isOwn ? rangeFor(cell) : nullptr;
    quantity.ranged = range != nullptr ? Ranged::known : isOwn ? Ranged::unknown : Ranged::ofStated;
    if (range == nullptr)
        return;
    const auto take = [&](const auto& ends) {
        if (endsTold(ends, sketch).isOne) // no tolerance moves it
            quantity.ranged = Ranged::none;
        else
            quantity.rangeText = toText(rangeTold(ends, sketch, voice), Minus::ascii);
    };
    if (id.what == What::direction)
        return take(range->direction);
    tolerance::Range ends = id.what == What::magnitude ? range->magnitude
                            : id.what == What::x       ? range->x
                                                       : range->y;
    if (id.what == What::magnitude && isNegativeBySense(m_question, cell)) {
        std::swap(ends.least, ends.greatest);
        for (auto* end : {&ends.least, &ends.greatest})
            if (*end)
                *end = -**end;
    }
    take(ends);
}

/// "…, R = 335 N"
void Telling::addEqual(Prose& prose, std::size_t cell, const std::string& value) const {
    if (!prose.pieces.empty())
        appendText(prose, ", ");
    prose.pieces.emplace_back(
        m_question.things.formula(m_question.quantities[m_question.quantityOf(cell)].id));
    appendText(prose, " = " + withMinusSigns(value));
}

std::string Telling::stated(const Given& given) const {
    return given.number->drawn ? shown(given.cell, given.stated()) : asGiven(given.cell, *given.number);
}

std::string Telling::asGiven(std::size_t cell, const GivenNumber& number) const {
    if (number.hasUnit)
        return number.text;
    const Sketch& sketch = m_question.sketch();
    if (m_question.dimension(cell) == Dimension::force)
        return number.text + " " + std::string(symbolOf(sketch.forceUnit));
    return number.text +
           (sketch.angleUnit == AngleUnit::deg ? "°" : " " + std::string(nameOf(sketch.angleUnit)));
}

} // namespace tailpoint::marking
