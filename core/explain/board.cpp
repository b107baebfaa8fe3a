// SPDX-License-Identifier: MIT
#include "core/explain/board.h"
#include "core/explain/listed.h"
#include "core/explain/rounded.h"

#include "core/formula/turns.h"
#include "core/quantity/decimals.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

SolvedForce solvedVector(const Board& board, VectorId vector, std::size_t answer) {
    if (answer >= board.solved.solutions.size())
        return asGiven(board.given(vector), board.sketch);
    const Solution& found = board.solved.solutions[answer];
    return vector == kSumVector ? found.sum : found.forces[vector.index];
}

double scaleOf(const Sketch& given) {
    double scale = given.sum.magnitude.value.value_or(0);
    for (const Force& force : given.forces)
        scale += force.magnitude.value.value_or(0);
    return scale;
}

double scaleOf(const Solution& found) {
    double scale = found.sum.magnitude;
    for (const SolvedForce& force : found.forces)
        scale += force.magnitude;
    return scale;
}

} // namespace

Board::Board(const Sketch& theSketch, const Solved& theSolved, const Construction& theConstruction,
             std::size_t theSolution, const ExplainOptions& theOptions)
    : Voice(theOptions.sentences), sketch(theSketch), solved(theSolved), construction(theConstruction),
      options(theOptions), solution(theSolution), things(theSketch),
      reduction(reductionOf(theSketch, theSolved)),
      carried(theSketch, things, theOptions.handRounding ? Rounding::hand : Rounding::guarded),
      m_base(baseAnswer(theSolved)) {
    carried.scale = isAnswered() ? scaleOf(solved.solutions[m_base]) : scaleOf(theSketch);
    carried.take(groundOf(sketch, solved, things));
    worked.steps.reserve(24);
}

bool Board::follow(Route::Way next) {
    way = next;
    Chain chain = chainOf(sketch, solved, things, {way, kNobody});
    const bool leads = !chain.lines.empty();
    std::erase_if(chain.lines,
                  [](const Line& line) { return line.kind == LineKind::check; }); // it has its own
    carried.take(std::move(chain));
    return leads;
}

void Board::settle() {
    carried.settle(solvedValues(sketch, solved), options.changed);
    makeVectors();
}

void Board::makeVectors() {
    const auto common = [&](VectorId vector) {
        Standing standing = standingOf(solved, vector, m_base);
        standing.size.answer = standing.way.answer = 0;
        return vectorOf(standing, m_base);
    };
    m_forces.clear();
    m_forces.reserve(sketch.forces.size());
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        m_forces.push_back(common(forceVector(i)));
    m_sum = common(kSumVector);
    if (carried.find({What::x, kKnownVector}) != nullptr)
        m_known = madeVector(kKnownVector);
    m_partials.clear();
    for (std::size_t i = 1; carried.find(magnitudeId(partialVector(i))) != nullptr; ++i)
        m_partials.push_back(madeVector(partialVector(i)));
    for (std::size_t answer = 0; answer < 2 && hasTwoAnswers(); ++answer)
        makeAnswer(answer);
}

void Board::makeAnswer(std::size_t answer) {
    std::vector<Vector>& vectors = m_answers[answer];
    vectors.clear();
    vectors.reserve(sketch.forces.size() + 1);
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        vectors.push_back(vectorOf(standingOf(solved, forceVector(i), answer), answer));
    vectors.push_back(vectorOf(standingOf(solved, kSumVector, answer), answer));
}

Vector Board::vectorOf(const Standing& standing, std::size_t answer) const {
    const Force& typed = given(standing.vector);
    const SolvedForce found = solvedVector(*this, standing.vector, answer);
    Vector out;
    out.id = standing.vector;
    out.index = indexOf(standing.vector);
    out.sizeId = standing.size;
    out.wayId = standing.way;
    out.vector = things.vectorFormula(standing.vector);
    out.size = things.formula(standing.size);
    out.theta = things.formula(standing.way);
    out.sizeGiven = isGiven(typed.magnitude);
    out.wayGiven = isGiven(typed.direction);
    out.magnitude = typed.magnitude.value.value_or(found.magnitude);
    out.v = found.vector;
    out.turned = found.turned;
    out.direction = found.direction;
    if (!out.direction && out.wayGiven)
        out.direction = referredDirection(typed.direction, sketch);
    const bool typedAngle = std::holds_alternative<AngleForm>(typed.direction.form) && !found.turned;
    out.sizeNumber = numberOf(standing.size, out.magnitude, out.sizeGiven ? Origin::typed : Origin::computed);
    if (out.direction)
        out.wayNumber = numberOf(standing.way, *out.direction, typedAngle ? Origin::typed : Origin::computed);
    return out;
}

Vector Board::madeVector(VectorId vector) const {
    Vector out;
    out.id = vector;
    out.sizeId = magnitudeId(vector);
    out.wayId = directionId(vector);
    out.vector = things.vectorFormula(vector);
    out.size = things.formula(out.sizeId);
    out.theta = things.formula(out.wayId);
    if (vector == kKnownVector && reduction && reduction->addsUp())
        for (const auto& [part, sign] : reduction->known)
            out.v += sign * at(part).v;
    for (std::size_t i = 0; vector.kind == VectorId::Kind::partial && i <= vector.index; ++i)
        out.v += m_forces[i].v;
    out.magnitude = std::hypot(out.v.x(), out.v.y());
    out.direction =
        referredDirection(static_cast<long double>(out.v.x()), static_cast<long double>(out.v.y()), sketch);
    out.sizeNumber = numberOf(out.sizeId, out.magnitude, Origin::computed);
    if (out.direction)
        out.wayNumber = numberOf(out.wayId, *out.direction, Origin::computed);
    return out;
}

Formula Board::numberOf(const QuantityId& quantity, double fallback, Origin origin) const {
    if (carried.value(quantity))
        return carried.number(quantity);
    if (origin == Origin::typed)
        return carried.typed(fallback, quantity);
    Formula made = carried.carried(fallback, dimensionOf(quantity.what));
    made.id = quantity;
    return made;
}

Formula Board::supplementOf(const QuantityId& angle) const {
    return carried.carried(half() - carried.value(angle).value_or(0), Dimension::angle);
}

Formula Board::bound(double value) const {
    const double ends = std::stod(significant(value, kMostTyped)); // 0.6, where 4.2 - 3.6 has a tail of noise
    const bool isExact = std::abs(ends - value) <= Carried::kNoise * carried.scale;
    if (!isExact && !options.handRounding)
        return carried.carried(value, Dimension::force);
    Formula made = carried.typed(isExact ? ends : value, {What::magnitude, kSumVector});
    made.id = {};
    return made;
}

Formula Board::shownNumber(const QuantityId& quantity, double value) const {
    const Dimension dimension = dimensionOf(quantity.what);
    const bool isGiven = things.roleOf(quantity) == Thing::Role::given;
    const double quiet = dimension == Dimension::force ? withoutNoise(value, carried.scale) : value;
    Formula made = carried.shown(quiet, dimension, isGiven ? Origin::typed : Origin::computed);
    made.id = quantity;
    return made;
}

Formula Board::answered(const Formula& number) const {
    Formula out = carried.shown(number.value, dimensionOf(number.id.what));
    out.id = number.id;
    return out;
}

const Vector& Board::at(VectorId vector) const {
    switch (vector.kind) {
    case VectorId::Kind::force:
        return m_forces[vector.index];
    case VectorId::Kind::partial:
        return m_partials[vector.index - 1U];
    case VectorId::Kind::known:
        return m_known;
    case VectorId::Kind::sum:
    case VectorId::Kind::none:
        break;
    }
    return m_sum;
}

const Vector& Board::in(std::size_t answer, VectorId vector) const {
    if (!hasTwoAnswers())
        return at(vector);
    return vector == kSumVector ? m_answers[answer].back() : m_answers[answer][vector.index];
}

const Vector* Board::sought() const {
    const int index = solved.unknownVectors[0];
    return index == kNoVector ? nullptr : &at(vectorId(index));
}

const Force& Board::given(VectorId vector) const {
    return vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
}

Formula Board::axisWords() const {
    return inWords(withMinusSigns(axisName(sketch.reference)));
}

Prose Board::message() const {
    Phrase all;
    for (const Remark& remark : solved.remarks)
        if (remark.code != MessageCode::freeTwo && remark.code != MessageCode::otherSense)
            all += (all.empty() ? "" : " ") + remark.words;
    return proseOf(all, things);
}

Formula Board::halfTurn() const {
    return tailpoint::halfTurn(sketch.angleUnit);
}

Formula Board::fullTurn() const {
    return tailpoint::fullTurn(sketch.angleUnit);
}

void Board::show(Step& step, const QuantityId& line, const std::vector<QuantityId>& inlined) const {
    step.workings.push_back(told(carried.working(line, inlined), line));
    step.lines.push_back(line);
}

Working Board::told(Working working, const QuantityId& line) const {
    const auto isTurn = [](const Formula& formula) {
        return formula.kind == FormulaKind::negative && formula.parts[0].kind == FormulaKind::number;
    };
    if (!working.general && working.substituted && isTurn(*working.substituted)) // -90° is nothing to compute
        working.substituted.reset();
    if (auto remark = remarkOn(line, *working.value))
        working.told = inRow(std::move(*remark));
    return working;
}

/// Of its terms' in a sum of columns; 0 where nothing is left over.
int Board::digitsLostIn(const QuantityId& line) const {
    const Line* sum = carried.find(line);
    if (sum == nullptr || sum->kind != LineKind::columnSum)
        return 0;
    const auto size = [&](const QuantityId& of) {
        return std::abs(static_cast<double>(carried.value(of).value_or(0)));
    };
    double largest = 0;
    for (const Formula& term : carried.formulaOf(line).parts)
        largest = std::max(largest, size(term.kind == FormulaKind::negative ? term.parts[0].id : term.id));
    const double left = size(line);
    return left == 0 || withoutNoise(static_cast<double>(carried.full(line).value_or(0)), carried.scale) == 0
               ? 0
               : static_cast<int>(std::log10(largest / left));
}

/// What is said of a number in its own line: how an answer is rounded, and where by hand a line fails.
std::optional<Prose> Board::remarkOn(const QuantityId& line, const Formula& value) const {
    if (auto off = offTheFull(*this, carried, line, value); off || options.handRounding)
        return off;
    if (const int gone = digitsLostIn(line); gone >= kMostLost)
        return say(SENTENCE("solution", "{value}, where {count} leading digits cancel"), "value", value,
                   "count", explaining::counted(*this, gone));
    if (things.roleOf(line) != Thing::Role::asked)
        return std::nullopt;
    Formula shown = answered(value);
    return shown.text == value.text ? std::nullopt : std::optional(roundedTo(*this, value, std::move(shown)));
}

bool Board::hasStep(StepKey key) const {
    for (const Step& made : worked.steps)
        if (made.key == key)
            return true;
    return false;
}

Step& Board::step(StepKey key, const Wording& title, Stage stage, Law law) {
    Step& made = worked.steps.emplace_back();
    made.key = key;
    made.title = text(title);
    made.stage = stage;
    made.law = law;
    return made;
}

double withoutNoise(double component, double scale) {
    return std::abs(component) <= Carried::kNoise * scale ? 0 : component;
}

Eigen::Vector2d withoutNoise(const Vector& vector) {
    return {withoutNoise(vector.v.x(), vector.magnitude), withoutNoise(vector.v.y(), vector.magnitude)};
}

} // namespace tailpoint::explaining
