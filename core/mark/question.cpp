// SPDX-License-Identifier: MIT
#include "core/mark/question.h"

#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

constexpr double kNoise = 1e-13;      ///< of all magnitudes
constexpr double kRoundedAngle = 0.1; ///< degrees: to what angles on the way are rounded at least

QuantityId common(QuantityId id) {
    id.answer = 0;
    return id;
}

bool canBeAnswered(const QuantityId& id) {
    const Dimension dimension = dimensionOf(id.what);
    return (dimension == Dimension::force || dimension == Dimension::angle) && id.what != What::gap;
}

std::string refusalOf(const Solved& solved) {
    return solved.family == Family::check
               ? "all is given in this question, so there is nothing to answer; leave one or two values to "
                 "find"
               : "this question has no answer to compare with: " + solved.message().text();
}

} // namespace

Way::Way(Chain chain_, const Sketch& sketch)
    : chain(std::move(chain_)), program(chain), right(program.start(givenValues(chain, sketch))) {
    program.run(right);
}

Ways::Ways(const Sketch& sketch_) : Ways(sketch_, solve(sketch_)) {}

Ways::Ways(const Sketch& sketch_, const Solved& solved_) : sketch(sketch_), solved(solved_) {
    const Things things(sketch);
    for (const Route& route : routesOf(sketch, solved)) {
        Chain chain = chainOf(sketch, solved, things, route);
        if (!chain.lines.empty())
            ways.emplace_back(std::move(chain), sketch);
    }
}

Question::Question(const Sketch& sketch, const Solved& solved, const MarkOptions& options_)
    : options(options_), own(sketch, solved), things(own.sketch) {
    const bool isAnswered =
        !solved.solutions.empty() && solved.family != Family::check && solved.family != Family::unclear;
    if (isAnswered) {
        answers = std::min<std::size_t>(solved.solutions.size(), 2);
        collectAsked();
    }
    if (quantities.empty()) {
        refusal = refusalOf(solved);
        return;
    }
    collectOnTheWay();
    for (Way& way : own.ways)
        way.slots = slotsIn(way.program);
    addRights();
    hasTolerances = tolerance::boxOf(own.sketch).hasTolerance;
    if (hasTolerances)
        ranges = tolerance::rangesOf(own.sketch, own.solved);
}

void Question::add(const QuantityId& id, bool isAsked) {
    if (m_index.contains(id))
        return;
    m_index.add(id);
    Answerable one{id, things.at(id).plain, isAsked, dimensionOf(id.what), isAsked ? 1.0 : 0.0};
    for (const auto& [name, points] : options.points)
        if (isAsked && name == one.name)
            one.points = points;
    quantities.push_back(std::move(one));
}

void Question::collectAsked() {
    const Solution& first = own.solved.solutions.front();
    const auto collect = [&](VectorId vector, const SolvedForce& found) {
        if (found.magnitudeFound)
            add(magnitudeId(vector), true);
        if (found.directionFound && found.direction)
            add(directionId(vector), true);
    };
    for (std::size_t i = 0; i < first.forces.size(); ++i)
        collect(forceVector(i), first.forces[i]);
    collect(kSumVector, first.sum);
    asked = quantities.size();
}

void Question::collectOnTheWay() {
    for (const Way& way : own.ways)
        for (const Line& line : way.chain.lines)
            if (canBeAnswered(line.subject))
                add(common(line.subject), false);
}

std::size_t Question::find(const QuantityId& id) const {
    return std::min(m_index.find(common(id)), quantities.size());
}

bool Question::isDirection(std::size_t cell) const {
    const What what = quantities[quantityOf(cell)].id.what;
    return what == What::direction || what == What::fromX;
}

QuantityId Question::ownId(std::size_t cell) const {
    QuantityId id = quantities[quantityOf(cell)].id;
    if (answers == 2)
        id.answer = static_cast<std::uint8_t>(answerOf(cell) + 1);
    return id;
}

/// True zeros that were rounded.
double Question::withoutNoise(What what, double value) const {
    double scale = 0;
    for (const SolvedForce& force : own.solved.solutions.front().forces)
        scale += force.magnitude;
    return dimensionOf(what) == Dimension::force && std::abs(value) < kNoise * scale ? 0 : value;
}

std::optional<double> Question::ofLine(const GivenLine& line) const {
    const bool isAngle = dimensionOf(line.subject.what) == Dimension::angle;
    const auto isPrinted = [&](double value) {
        const double off = std::abs(value - line.printed.value_or(value));
        return off <= (isAngle ? 100 * kMostRounded * degree() : kMostRounded * std::abs(value));
    };
    for (const Way& way : own.ways)
        if (way.chain.route == line.route)
            if (const auto value = way.at(line.subject); value && isPrinted(static_cast<double>(*value)))
                return withoutNoise(line.subject.what, static_cast<double>(*value));
    return line.printed;
}

std::vector<std::size_t> Question::slotsIn(const Program& program) const {
    std::vector<std::size_t> slots(cells());
    for (std::size_t cell = 0; cell < cells(); ++cell) {
        slots[cell] = program.slotOf(ownId(cell));
        if (slots[cell] == Program::kNoSlot)
            slots[cell] = program.slotOf(quantities[quantityOf(cell)].id);
    }
    return slots;
}

double Question::halfUnit(What what, double value) const {
    if (dimensionOf(what) == Dimension::angle)
        return std::max(kRoundedAngle * degree(), std::pow(10.0, -shownAngleDecimals(sketch()))) / 2;
    if (value == 0)
        return 0;
    const bool isPrecise = dimensionOf(what) != Dimension::force;
    const int figures = figuresOf(value, sketch()) + (isPrecise ? 1 : 0);
    return std::pow(10.0, std::floor(std::log10(std::abs(value))) + 1 - figures) / 2;
}

double Question::halfAsked(std::size_t cell, double value) const {
    if (dimension(cell) == Dimension::angle)
        return std::pow(10.0, -shownAngleDecimals(sketch())) / 2;
    return halfUnit(What::magnitude, value);
}

double Question::apart(std::size_t cell, double a, double b) const {
    const double off = std::abs(a - b);
    return off > turn() / 2 && isDirection(cell) ? std::abs(std::remainder(a - b, turn())) : off;
}

double Question::limit(std::size_t cell, double value, double share) const {
    return dimension(cell) == Dimension::angle ? 100 * share * degree() : share * std::abs(value);
}

/// Half of what a slot was moved, up or down, to the cells that it stands for.
void Question::addMove(const Way& way, const Program::State& from, const Program::State& to, std::size_t slot,
                       double most, const Numbers& numbers, std::vector<double>& moved) const {
    const auto before = from.at(slot), after = to.at(slot);
    if (!before)
        return;
    for (std::size_t cell = 0; cell < cells(); ++cell)
        if (way.slots[cell] == slot && isThere(numbers.value[cell])) // without a value the limit decides
            moved[cell] +=
                0.5 * (after ? apart(cell, static_cast<double>(*after), static_cast<double>(*before))
                             : limit(cell, numbers.value[cell], most));
}

void Question::addTolerance(const Way& way, const Program::State& state,
                            std::span<const Program::Patch> patches, double most, Numbers& numbers,
                            std::span<const Program::Put> puts) const {
    std::vector<double> moved(cells(), 0);
    if (isTooLong(way.program)) {
        for (std::size_t cell = 0; cell < cells(); ++cell)
            if (isThere(numbers.value[cell]) && way.slots[cell] != Program::kNoSlot)
                numbers.tolerance[cell] = limit(cell, numbers.value[cell], most);
        return;
    }
    Program::Trial trial(way.program, state, patches, puts);
    for (std::size_t line = 0; line < way.program.lines(); ++line) {
        const std::size_t slot = way.program.slotOfLine(line);
        const auto value = state.at(slot);
        const bool isPut =
            std::any_of(puts.begin(), puts.end(), [&](const Program::Put& put) { return put.slot == slot; });
        if (way.chain.lines[line].kind == LineKind::check || !value || isPut)
            continue;
        const double half = halfOfMoved(way.program.quantity(slot).what, static_cast<double>(*value));
        for (const double off : {half, -half}) {
            trial.move(line, *value + off);
            for (const std::size_t other : trial.moved())
                if (other != slot)
                    addMove(way, state, trial.state(), other, most, numbers, moved);
            trial.back();
        }
    }
    for (std::size_t cell = 0; cell < cells(); ++cell)
        if (isThere(numbers.value[cell]))
            numbers.tolerance[cell] = std::max(numbers.tolerance[cell],
                                               std::min(moved[cell], limit(cell, numbers.value[cell], most)));
}

Numbers Question::numbersOf(const Ways& ways) const {
    Numbers out(cells());
    for (const Way& way : ways.ways) {
        const std::vector<std::size_t> slots = slotsIn(way.program);
        for (std::size_t cell = 0; cell < cells(); ++cell)
            if (const auto value = way.right.at(slots[cell]); value && !isThere(out.value[cell]))
                out.value[cell] = static_cast<double>(*value);
    }
    for (const auto& [id, value] : solvedValues(ways.sketch, ways.solved)) {
        const std::size_t quantity = find(id);
        if (quantity == quantities.size())
            continue;
        for (std::size_t answer = 0; answer < answers; ++answer)
            if (id.answer == 0 || id.answer == answer + 1)
                out.value[cell(quantity, answer)] = static_cast<double>(value);
    }
    return out;
}

std::optional<double> massOf(const Magnitude& magnitude, const Sketch& sketch) {
    return magnitude.typed && sketch.forceUnit != ForceUnit::kgf ? kilogrammesOf(*magnitude.typed)
                                                                 : std::nullopt;
}

void Question::addRights() {
    std::vector<Ways> all;
    rights.push_back(numbersOf(own));
    for (std::size_t cell = 0; cell < cells(); ++cell)
        rights.front().value[cell] =
            withoutNoise(quantities[quantityOf(cell)].id.what, rights.front().value[cell]);
    for (const Way& way : own.ways)
        addTolerance(way, way.right, {}, kMostRounded, rights.front());
    for (const double g : {9.81, 9.80}) { // of a mass whose weight is meant
        Sketch other = sketch();
        bool isChanged = false;
        const auto weigh = [&](Force& force) {
            const auto mass = massOf(force.magnitude, other);
            if (!mass)
                return;
            force.magnitude.value = convert(*mass * g, ForceUnit::N, other.forceUnit);
            force.magnitude.typed.reset();
            isChanged = true;
        };
        for (Force& force : other.forces)
            weigh(force);
        weigh(other.sum);
        if (!isChanged)
            return;
        Numbers numbers = numbersOf(Ways(other));
        numbers.tolerance = right().tolerance;
        rights.push_back(std::move(numbers));
    }
}

} // namespace tailpoint::marking
