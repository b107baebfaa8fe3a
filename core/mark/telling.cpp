#include "core/mark/telling.h"

#include "core/mark/rewriting.h"
#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

constexpr std::size_t kMostLines = 3; ///< of a slip that changes many

double scaleOf(const Question& question) {
    if (question.refusal)
        return 0;
    const Solution& found = question.own.solved.solutions.front();
    double scale = found.sum.magnitude;
    for (const SolvedForce& force : found.forces)
        scale += force.magnitude;
    return scale;
}

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
    for (Formula& part : copy.parts.own())
        part = expanded(part, own);
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

Telling::Telling(const Question& question, const Alternatives& alternatives)
    : m_question(question), m_alternatives(alternatives), m_scale(scaleOf(question)),
      m_paper(question.sketch(), kLeastGuard, m_scale) {}

const Origin& Telling::originOf(std::size_t single) const {
    return m_alternatives.origin(m_alternatives.singles()[single]);
}
const Slip& Telling::slipOf(std::size_t single) const {
    return m_alternatives.slip(m_alternatives.singles()[single]);
}

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
    for (Formula& part : copy.parts.own())
        part = inNumbers(part, valueOf);
    return copy;
}

/// Its result is what the printed numbers give.
Working Telling::working(const QuantityId& subject, const Formula& formula, const ValueOf& valueOf) const {
    Working out{m_question.things.formula(subject), formula, {}, {}};
    Formula numbers = inNumbers(formula, valueOf);
    m_paper.put(numbers);
    const auto value = evaluate(numbers, m_question.sketch().angleUnit);
    if (formula.kind == FormulaKind::number)
        out.general.reset();
    if (numbers.kind != FormulaKind::number)
        out.substituted = std::move(numbers);
    if (value)
        out.value = numberOf(subject, *value, false);
    return out;
}

Prose Telling::say(const Wording& wording, const Origin& origin) const {
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

std::vector<ChangedLine> Telling::rewritten(const Origin& origin) const {
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

std::vector<ChangedLine> Telling::readOtherwise(const Origin& origin) const {
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
    const Origin& origin = originOf(single);
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
        Working form = working(m_question.ownId(origin.cell), origin.form->formula, right);
        form.subject.reset(); // what comes out is not the quantity, but how it is stated
        lines.push_back({std::nullopt, std::move(form)});
    }
    return lines;
}

std::optional<StepKey> Telling::stepOf(const Origin& origin) const {
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

Finding Telling::finding(const Fitting& fitting, const std::vector<Given>& givens) const {
    Finding out;
    const Fitting::One& one = fitting.slips.front();
    const Slip& slip = slipOf(one.first);
    out.id = slip.id;
    out.place = slip.place;
    out.isStrong = fitting.isStrong;
    out.covered = fitting.covered;
    out.step = stepOf(originOf(one.first));
    out.sentence = say(fitting.isStrong ? slip.strong : slip.weak, originOf(one.first));
    out.mend = say(slip.mend, originOf(one.first));
    out.lines = linesOf(one.first);
    out.routes = m_alternatives.singles()[one.first].routes;
    if (one.second) {
        const Slip& other = slipOf(*one.second);
        out.second = other.id;
        const Voice voice(m_question.options.sentences);
        const Wording both = fitting.isStrong
                                 ? SENTENCE("marking", "Two slips at once lead to these numbers. Of the one "
                                                       "by itself: {first} Of the other: {second}")
                                 : SENTENCE("marking", "Two slips at once may have led to these numbers. Of "
                                                       "the one by itself: {first} Of the other: {second}");
        out.sentence = voice.say(both, "first", say(slip.strong, originOf(one.first)), "second",
                                 say(other.strong, originOf(*one.second)));
        for (ChangedLine& line : linesOf(*one.second))
            out.lines.push_back(std::move(line));
    }
    for (std::size_t i = 1; i < fitting.slips.size(); ++i) {
        const Fitting::One& more = fitting.slips[i];
        const std::string id(slipOf(more.first).id);
        if (more.second || id == out.id || std::find(out.also.begin(), out.also.end(), id) != out.also.end())
            continue;
        out.also.push_back(id);
        out.readings.push_back(say(slipOf(more.first).weak, originOf(more.first)));
    }
    for (const std::size_t i : fitting.explained)
        out.explains.push_back(m_question.quantities[m_question.quantityOf(givens[i].cell)].name);
    for (std::size_t cell = 0; cell < m_question.cells(); ++cell) {
        const std::size_t quantity = m_question.quantityOf(cell);
        const bool isAnswers =
            givens.empty() || m_question.answerOf(givens.front().cell) == m_question.answerOf(cell);
        const bool isTold = quantity < m_question.asked ||
                            std::find(out.explains.begin(), out.explains.end(),
                                      m_question.quantities[quantity].name) != out.explains.end();
        double value = fitting.numbers.value[cell];
        if (!isThere(value) || !isAnswers || !isTold)
            continue;
        if (m_question.isDirection(cell))
            value = normalized(value, m_question.sketch().angleUnit);
        out.gives.emplace_back(m_question.quantities[quantity].name, value);
    }
    return out;
}

std::string Telling::shown(std::size_t cell, double value) const {
    const Sketch& sketch = m_question.sketch();
    const What what = m_question.quantities[m_question.quantityOf(cell)].id.what;
    if (what == What::direction)
        return directionWords(normalized(value, sketch.angleUnit), sketch);
    if (dimensionOf(what) == Dimension::angle)
        return shownAngle(value, sketch);
    return shownForceWithUnit(std::abs(value) < Paper::kNoise * m_scale ? 0 : value, sketch);
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
