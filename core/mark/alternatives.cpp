// SPDX-License-Identifier: MIT
#include "core/mark/alternatives.h"

#include "core/mark/rewriting.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

constexpr double kSame = 1e-9; ///< relative; of angles a part of the half turn

bool areSame(const Question& question, const Numbers& a, const Numbers& b) {
    for (std::size_t cell = 0; cell < a.value.size(); ++cell)
        if (isThere(a.value[cell]) != isThere(b.value[cell]) ||
            (isThere(a.value[cell]) && !isSame(question, cell, a.value[cell], b.value[cell])))
            return false;
    return true;
}

Numbers swappedAnswers(Numbers numbers) {
    for (std::size_t cell = 0; cell + 1 < numbers.value.size(); cell += 2) {
        std::swap(numbers.value[cell], numbers.value[cell + 1]);
        std::swap(numbers.tolerance[cell], numbers.tolerance[cell + 1]);
    }
    return numbers;
}

/// Every line of a sought magnitude in either sense.
Sketch withFreeSenses(Sketch sketch) {
    const auto free = [](Force& force) {
        if (!isGiven(force.magnitude) && isGiven(force.direction))
            force.lineOfActionOnly = true;
    };
    for (Force& force : sketch.forces)
        free(force);
    free(sketch.sum);
    return sketch;
}

} // namespace

bool isSame(const Question& question, std::size_t cell, double a, double b) {
    const bool isAngle = question.dimension(cell) == Dimension::angle;
    const double scale = isAngle ? question.turn() / 2 : std::max(std::abs(a), std::abs(b));
    return question.apart(cell, a, b) <= kSame * scale;
}

Alternatives::Alternatives(const Question& question, const std::function<bool(const Slip&)>& isWanted)
    : m_question(question) {
    m_read.push_back(std::shared_ptr<const Ways>(std::shared_ptr<void>(), &question.own));
    for (const Way& way : question.own.ways)
        m_rounding.emplace_back(question, way);
    for (std::size_t slip = 0; slip < catalogue().size(); ++slip) {
        const Slip& entry = catalogue()[slip];
        if (isWanted && !isWanted(entry))
            continue;
        if (entry.rewrites != nullptr)
            addRewrites(slip);
        if (entry.readings != nullptr)
            addReadings(slip);
        if (entry.shortCuts != nullptr)
            addShortCuts(slip);
        if (entry.forms != nullptr)
            addForms(slip);
    }
}

Alternatives::Run Alternatives::run(const Way& way, const Rewrite& rewrite) {
    Run run;
    for (const Change& change : rewrite.changes)
        run.patches.push_back(way.program.patch(change.line, change.now));
    run.state = way.program.changed(way.right, run.patches);
    return run;
}

Numbers Alternatives::numbersIn(const Way& way, const Program::State& state) const {
    Numbers numbers(m_question.cells());
    for (std::size_t cell = 0; cell < m_question.cells(); ++cell)
        if (const auto value = state.at(way.slots[cell]))
            numbers.value[cell] = static_cast<double>(*value);
    return numbers;
}

std::optional<long double> Alternatives::rightValue(const QuantityId& id) const {
    const std::size_t quantity = m_question.find(id);
    if (quantity < m_question.quantities.size()) {
        const std::size_t answer = id.answer == 2 ? 1 : 0;
        const double value = m_question.right().value[m_question.cell(quantity, answer)];
        if (isThere(value))
            return value;
    }
    for (const Way& way : m_question.own.ways)
        if (const auto value = way.at(id))
            return value;
    const Sketch& sketch = m_question.sketch();
    if (id.of.kind != VectorId::Kind::force && id.of != kSumVector)
        return std::nullopt;
    const Force& force = id.of == kSumVector ? sketch.sum : sketch.forces[id.of.index];
    const std::optional<double> given =
        id.what == What::magnitude ? force.magnitude.value : referredDirection(force.direction, sketch);
    return given ? std::optional<long double>(*given) : std::nullopt;
}

/// Of two answers the slip's first one may be nearer to the second: it is tried in both places.
void Alternatives::add(std::size_t slip, SlipOrigin origin, Numbers numbers, const Route* route) {
    const bool hasBoth = m_question.answers == 2 && (origin.rewrite || origin.reading);
    const Numbers swapped = hasBoth ? swappedAnswers(numbers) : Numbers();
    bool isNew = addNumbers(slip, std::move(numbers), route, false);
    if (hasBoth)
        isNew = addNumbers(slip, swapped, route, true) || isNew;
    if (isNew)
        m_origins.push_back(std::move(origin));
}

/// Of the origin that comes next. False where nothing is added.
bool Alternatives::addNumbers(std::size_t slip, Numbers numbers, const Route* route, bool isSwapped) {
    std::vector<bool> changed(m_question.cells(), false);
    bool any = false;
    for (std::size_t cell = 0; cell < m_question.cells(); ++cell) {
        const double value = numbers.value[cell], right = m_question.right().value[cell];
        changed[cell] = isThere(value) && (!isThere(right) || !isSame(m_question, cell, value, right));
        any = any || changed[cell];
    }
    if (!any) // what would be right here is no slip
        return false;
    for (Alternative& other : m_singles)
        if (other.slip == slip && areSame(m_question, other.numbers, numbers)) {
            if (route != nullptr && !isSwapped)
                other.routes.push_back(*route);
            for (std::size_t cell = 0; cell < numbers.value.size(); ++cell)
                other.numbers.tolerance[cell] =
                    std::max(other.numbers.tolerance[cell], numbers.tolerance[cell]);
            return false;
        }
    m_singles.push_back({slip, m_origins.size(), std::move(numbers), std::move(changed), {}, isSwapped});
    if (route != nullptr)
        m_singles.back().routes.push_back(*route);
    return true;
}

std::size_t Alternatives::keep(Alternative alternative, SlipOrigin origin) {
    alternative.origin = m_origins.size();
    m_origins.push_back(std::move(origin));
    m_kept.push_back(std::move(alternative));
    return m_singles.size() + m_kept.size() - 1;
}

void Alternatives::addRewrites(std::size_t slip) {
    const auto reduction = reductionOf(m_question.sketch(), m_question.own.solved);
    for (std::size_t i = 0; i < m_question.own.ways.size(); ++i) {
        const Way& way = m_question.own.ways[i];
        const Pattern pattern{m_question, m_question.own, way, reduction};
        auto rewrites = catalogue()[slip].rewrites(pattern);
        if (rewrites.size() > kMostOfOneSlip)
            continue;
        for (Rewrite& rewrite : rewrites) {
            const Run changed = run(way, rewrite);
            Numbers numbers = numbersIn(way, changed.state);
            if (catalogue()[slip].isSteep)
                m_rounding[i].addTolerance(way.right, {}, kMostInSlip, numbers);
            else
                m_rounding[i].addTolerance(changed.state, changed.patches, kMostInSlip, numbers);
            add(slip, {.way = i, .rewrite = std::move(rewrite)}, std::move(numbers), &way.chain.route);
        }
    }
}

void Alternatives::addReadings(std::size_t slip) {
    if (m_question.sketch().forces.size() > kMostOfOneSlip)
        return;
    for (Reading& reading : catalogue()[slip].readings(m_question)) {
        if (firstFault(reading.sketch))
            continue;
        bool isFreed = false;
        auto ways = std::make_shared<Ways>(reading.sketch);
        if (ways->solved.solutions.empty()) { // a student goes on with a negative magnitude
            reading.sketch = withFreeSenses(std::move(reading.sketch));
            ways = std::make_shared<Ways>(reading.sketch);
            isFreed = true;
        }
        if (ways->solved.solutions.size() != m_question.own.solved.solutions.size() ||
            ways->solved.unknownVectors != m_question.own.solved.unknownVectors)
            continue; // another question
        Numbers numbers = m_question.numbersOf(*ways);
        if (isFreed)
            turnBack(ways->solved, numbers);
        for (Way& way : ways->ways) {
            way.slots = m_question.slotsIn(way.program);
            Rounding(m_question, way).addTolerance(way.right, {}, kMostInSlip, numbers);
        }
        add(slip, {.ways = m_read.size(), .reading = std::move(reading)}, std::move(numbers), nullptr);
        m_read.push_back(std::move(ways));
    }
}

/// A magnitude in the other sense of its line is a negative one in the sense that the question has.
void Alternatives::turnBack(const Solved& solved, Numbers& numbers) const {
    for (std::size_t answer = 0; answer < solved.solutions.size(); ++answer) {
        const Solution& solution = solved.solutions[answer];
        for (const VectorId vector : vectorsOf(m_question.sketch())) {
            const SolvedForce& force = vector == kSumVector ? solution.sum : solution.forces[vector.index];
            const std::size_t quantity = m_question.find(magnitudeId(vector));
            if (force.turned && quantity < m_question.quantities.size())
                numbers.value[m_question.cell(quantity, answer)] *= -1;
        }
    }
}

void Alternatives::addShortCuts(std::size_t slip) {
    const SymbolLookup lookUp = [this](const Formula& part) { return rightValue(part.id); };
    for (ShortCut& cut : catalogue()[slip].shortCuts(m_question)) {
        Numbers numbers(m_question.cells());
        for (const auto& [id, formula] : cut.gives) {
            const std::size_t quantity = m_question.find(id);
            const auto value = evaluate(formula, m_question.sketch().angleUnit, lookUp);
            if (quantity == m_question.quantities.size() || !value)
                continue;
            for (std::size_t answer = 0; answer < m_question.answers; ++answer)
                if (id.answer == 0 || id.answer == answer + 1)
                    numbers.value[m_question.cell(quantity, answer)] = static_cast<double>(*value);
        }
        for (std::size_t cell = 0; cell < numbers.value.size();
             ++cell) // as far as the right values are rounded
            if (isThere(numbers.value[cell]) && catalogue()[slip].id.starts_with("answers"))
                numbers.tolerance[cell] = m_question.right().tolerance[cell];
        add(slip, {.shortCut = std::move(cut)}, std::move(numbers), nullptr);
    }
}

double Alternatives::formTolerance(const Form& form, std::size_t cell, double value) const {
    const double right = m_question.right().value[cell],
                 off = m_question.right().tolerance[cell] + m_question.halfAsked(cell, right);
    const auto at = [&](double of) {
        return evaluate(form.formula, m_question.sketch().angleUnit,
                        [of](const Formula&) { return std::optional<long double>(of); });
    };
    double most = 0;
    for (const double moved : {right - off, right + off})
        if (const auto there = at(moved))
            most = std::max(most, std::abs(static_cast<double>(*there) - value));
    return most;
}

void Alternatives::addForms(std::size_t slip) {
    const SymbolLookup lookUp = [this](const Formula& part) { return rightValue(part.id); };
    const std::size_t cells =
        catalogue()[slip].isOnTheWay ? m_question.cells() : m_question.asked * m_question.answers;
    for (std::size_t cell = 0; cell < cells; ++cell) {
        const double right = m_question.right().value[cell];
        if (!isThere(right))
            continue;
        for (Form& form : catalogue()[slip].forms(m_question, cell, right)) {
            const auto value = evaluate(form.formula, m_question.sketch().angleUnit, lookUp);
            const bool isInOtherUnit = catalogue()[slip].verdict == Verdict::unit;
            if (!value ||
                (m_question.isDirection(cell) && !isInOtherUnit && std::fabs(*value) > m_question.turn()))
                continue; // nobody states an angle of many turns
            Numbers numbers(m_question.cells());
            numbers.value[cell] = static_cast<double>(*value);
            // a moved point and a factor of units leave the digits as they are; an angle is converted as
            // shown
            if (!catalogue()[slip].isScaled || (isInOtherUnit && m_question.isDirection(cell)))
                numbers.tolerance[cell] = std::min(formTolerance(form, cell, numbers.value[cell]),
                                                   m_question.limit(cell, numbers.value[cell], kMostInSlip));
            add(slip, {.form = std::move(form), .cell = cell}, std::move(numbers), nullptr);
        }
    }
}

} // namespace tailpoint::marking
