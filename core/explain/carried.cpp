#include "core/explain/carried.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::explaining {

namespace {

const Force& givenVector(const Sketch& sketch, VectorId vector) {
    return vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
}

bool isOfSketch(VectorId vector) {
    return vector.kind == VectorId::Kind::force || vector == kSumVector;
}

/// Only a step on the way to the next line: told within it.
bool isOnTheWayOnly(What what) {
    return what == What::square || what == What::ratio || what == What::term;
}

constexpr std::size_t kMostTyped = 6; ///< decimals: a number with more was converted from another unit

bool isConverted(const Formula& number) {
    const auto point = number.text.find('.');
    return point != std::string::npos && number.text.size() - point > kMostTyped + 1;
}

Formula withoutSign(Formula number) {
    number.value = std::abs(number.value);
    if (number.text.starts_with('-'))
        number.text.erase(0, 1);
    return number;
}

} // namespace

bool isNumeric(const Formula& formula) {
    return formula.kind != FormulaKind::symbol &&
           std::all_of(formula.parts.begin(), formula.parts.end(), isNumeric);
}

int turnSign(const Formula& formula) {
    return formula.parts.size() > 1 && formula.parts[1].kind == FormulaKind::negative ? -1 : 1;
}

Carried::Carried(const Sketch& sketch, const Things& things, bool byHand)
    : m_sketch(&sketch), m_things(&things), m_byHand(byHand) {}

void Carried::take(Chain chain, const Overrides& exact, const std::vector<QuantityId>& within) {
    const std::size_t all = m_lines.size() + chain.lines.size();
    m_lines.reserve(all);
    m_index.reserve(all);
    m_full.reserve(all + chain.given.size());
    for (const QuantityId& given : chain.given)
        if (!m_full.at(given) && giveTyped(given))
            m_quantities.push_back(given);
    for (Line& line : chain.lines) {
        if (m_index.contains(line.subject))
            continue;
        for (Case& one : line.cases)
            putOnPaper(one.formula);
        evaluate(line, exact,
                 !isOnTheWayOnly(line.subject.what) &&
                     std::find(within.begin(), within.end(), line.subject) == within.end());
        m_index.add(line.subject);
        m_quantities.push_back(line.subject);
        m_lines.push_back(std::move(line));
    }
}

void Carried::give(const QuantityId& quantity, const Carried& from, std::optional<double> otherwise) {
    const auto full = from.full(quantity);
    if (!full && otherwise)
        return set(quantity, *otherwise);
    if (full)
        m_full.set(quantity, *full);
    if (const auto hand = from.m_hand.at(quantity))
        m_hand.set(quantity, *hand);
}

bool Carried::giveTyped(const QuantityId& quantity) {
    if (!isOfSketch(quantity.of))
        return false;
    const Force& vector = givenVector(*m_sketch, quantity.of);
    const auto value = quantity.what == What::magnitude ? vector.magnitude.value
                                                        : referredDirection(vector.direction, *m_sketch);
    if (value)
        set(quantity, *value);
    return value.has_value();
}

void Carried::set(const QuantityId& quantity, double value) {
    m_full.set(quantity, value);
    if (m_byHand)
        m_hand.set(quantity, shownValue(made(quantity)));
}

/// A number that was converted from another unit has no end: it stands as the sheet shows it.
void Carried::putOnPaper(Formula& formula) const {
    if (formula.kind == FormulaKind::number && !formula.sub.empty() && isConverted(formula))
        formula = shown(formula.value, Dimension::angle);
    for (Formula& part : formula.parts)
        putOnPaper(part);
}

void Carried::evaluate(const Line& line, const Overrides& exact, bool isRounded) {
    const auto [taken, computed] = evaluateLine(line, m_sketch->angleUnit, m_full);
    const auto put =
        std::find_if(exact.begin(), exact.end(), [&](const auto& one) { return one.first == line.subject; });
    const auto full = put != exact.end() ? std::optional(put->second) : computed;
    if (full)
        m_full.set(line.subject, *full);
    m_taken.push_back(taken);
    if (!m_byHand)
        return;
    auto [byHand, value] = evaluateLine(line, m_sketch->angleUnit, m_hand);
    if (!value)
        value = full;
    else
        m_taken.back() = byHand;
    if (value)
        m_hand.set(line.subject, *value);
    if (value && isRounded)
        m_hand.set(line.subject, made(line.subject).value);
}

const Line* Carried::find(const QuantityId& quantity) const {
    const std::size_t place = m_index.find(quantity);
    return place == QuantityIndex::kNone ? nullptr : &m_lines[place];
}

const Formula& Carried::formulaOf(const QuantityId& quantity) const {
    const std::size_t i = m_index.find(quantity);
    const std::size_t taken = m_taken[i] == kNoCase ? m_lines[i].cases.size() - 1 : m_taken[i];
    return m_lines[i].cases[taken].formula;
}

std::optional<long double> Carried::value(const QuantityId& quantity) const {
    if (m_byHand)
        if (const auto hand = m_hand.at(quantity))
            return hand;
    return m_full.at(quantity);
}

/// Given as a number, and as it stands.
bool Carried::isTyped(const QuantityId& quantity) const {
    if (!isOfSketch(quantity.of) || m_index.contains(quantity))
        return false;
    const Force& vector = givenVector(*m_sketch, quantity.of);
    if (quantity.what == What::magnitude)
        return isGiven(vector.magnitude);
    return quantity.what == What::direction && quantity.part == 0 &&
           std::holds_alternative<AngleForm>(vector.direction.form);
}

/// A component is measured by its own vector.
double Carried::quiet(const QuantityId& quantity, double value) const {
    double of = scale;
    if ((quantity.what == What::x || quantity.what == What::y) && isOfSketch(quantity.of))
        if (const auto size = m_full.at(magnitudeId(quantity.of, quantity.answer)))
            of = static_cast<double>(*size);
    return std::abs(value) <= kNoise * of ? 0 : value;
}

Formula Carried::shown(double value, Dimension dimension, Origin origin) const {
    Formula made =
        numberWithUnit(value, dimension == Dimension::angle ? shownAngle(value, *m_sketch, origin)
                                                            : shownForceWithUnit(value, *m_sketch, origin));
    if (m_byHand)
        made.value = shownValue(made);
    return made;
}

Formula Carried::number(const QuantityId& quantity) const {
    const std::size_t place = m_told.add(quantity);
    if (place == m_numbers.size())
        m_numbers.push_back(made(quantity));
    return m_numbers[place];
}

Formula Carried::made(const QuantityId& quantity) const {
    const Dimension dimension = dimensionOf(quantity.what);
    auto amount = static_cast<double>(value(quantity).value_or(0));
    const Origin origin = isTyped(quantity) ? Origin::typed : Origin::computed;
    if (dimension == Dimension::force && origin == Origin::computed)
        amount = quiet(quantity, amount);
    Formula made = shown(amount, dimension, origin);
    made.id = quantity;
    return made;
}

bool Carried::isInlined(const QuantityId& quantity, const std::vector<QuantityId>& inlined) const {
    return find(quantity) != nullptr &&
           (isOnTheWayOnly(quantity.what) ||
            std::find(inlined.begin(), inlined.end(), quantity) != inlined.end());
}

Formula Carried::expanded(const Formula& formula, const std::vector<QuantityId>& inlined) const {
    if (formula.id.what != What::none)
        return isInlined(formula.id, inlined) ? expanded(formulaOf(formula.id), inlined) : formula;
    Formula copy = formula;
    for (Formula& part : copy.parts)
        part = expanded(part, inlined);
    return copy;
}

Formula Carried::inNumbers(const Formula& formula) const {
    if (formula.kind == FormulaKind::symbol)
        return formula.id.what == What::none ? formula : number(formula.id);
    Formula copy = formula;
    for (Formula& part : copy.parts) {
        const bool isTakenAway = &part != &copy.parts.front() && part.kind == FormulaKind::negative;
        part = isTakenAway ? negative(inNumbers(part.parts[0])) : inNumbers(part);
    }
    if (copy.kind == FormulaKind::absolute && copy.parts[0].kind == FormulaKind::number)
        return withoutSign(std::move(copy.parts[0]));
    if (copy.kind == FormulaKind::negative && copy.parts[0].kind == FormulaKind::number &&
        copy.parts[0].value == 0)
        return std::move(copy.parts[0]);
    return copy;
}

Working Carried::working(const QuantityId& subject, const std::vector<QuantityId>& inlined) const {
    Working out{m_things->formula(subject), {}, {}, number(subject)};
    Formula formula = expanded(formulaOf(subject), inlined);
    if (formula.kind == FormulaKind::number) // on an axis: nothing is left to compute
        return out;
    if (!isNumeric(formula)) {
        if (formula.kind != FormulaKind::symbol)
            out.substituted = inNumbers(formula);
        if (out.substituted && toText(*out.substituted) == toText(*out.value)) // −δ, say: told once
            out.substituted.reset();
        out.general = std::move(formula);
    } else {
        out.substituted = std::move(formula);
    }
    return out;
}

} // namespace tailpoint::explaining
