// SPDX-License-Identifier: MIT
#include "core/explain/carried.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::explaining {

namespace {

/// Only a step on the way to the next line: told within it.
bool isOnTheWayOnly(What what) {
    return what == What::square || what == What::ratio || what == What::term;
}

bool isAmong(const QuantityId& quantity, const std::vector<QuantityId>& list) {
    return std::find(list.begin(), list.end(), quantity) != list.end();
}

bool isSignedNumber(const Formula& formula) {
    return formula.kind == FormulaKind::number ||
           (formula.kind == FormulaKind::negative && isSignedNumber(formula.parts[0]));
}

std::string_view unitOf(Dimension dimension, const Sketch& sketch) {
    switch (dimension) {
    case Dimension::force:
        return symbolOf(sketch.forceUnit);
    case Dimension::angle:
        return sketch.angleUnit == AngleUnit::deg ? "°" : nameOf(sketch.angleUnit);
    default:
        return {};
    }
}

What whatOf(Dimension dimension) {
    return dimension == Dimension::angle ? What::direction : What::magnitude;
}

} // namespace

Formula withoutMinus(Formula number) {
    number.value = std::abs(number.value);
    if (number.text.starts_with('-'))
        number.text.erase(0, 1);
    return number;
}

bool isNumeric(const Formula& formula) {
    return formula.kind != FormulaKind::symbol &&
           std::all_of(formula.parts.begin(), formula.parts.end(), isNumeric);
}

int turnSign(const Formula& formula) {
    return formula.parts.size() > 1 && formula.parts[1].kind == FormulaKind::negative ? -1 : 1;
}

Carried::Carried(const Sketch& sketch, const Things& things, Rounding rounding)
    : m_sketch(&sketch), m_things(&things), m_rounding(rounding) {
    m_chain.unit = sketch.angleUnit;
    m_printed.guard = rounding == Rounding::hand ? 0 : kLeastGuard;
}

void Carried::take(Chain chain, const QuantityIndex& within) {
    const std::size_t all = m_chain.lines.size() + chain.lines.size();
    m_chain.lines.reserve(all);
    m_index.reserve(all);
    for (const QuantityId& given : chain.given)
        if (!m_index.contains(given) && m_given.add(given) == m_chain.given.size()) {
            m_chain.given.push_back(given);
            m_quantities.push_back(given);
        }
    for (Line& line : chain.lines) {
        if (m_index.add(line.subject) < m_chain.lines.size())
            continue;
        m_quantities.push_back(line.subject);
        m_within.push_back(isOnTheWayOnly(line.subject.what) || within.contains(line.subject));
        m_chain.lines.push_back(std::move(line));
    }
}

void Carried::give(const QuantityId& quantity, Decimal printed) {
    if (m_elsewhere.add(quantity) == m_fromElsewhere.size())
        m_fromElsewhere.push_back(std::move(printed));
}

Printing Carried::printing() const {
    Printing out;
    out.rounding = m_rounding;
    out.within = m_within;
    out.scale = scale;
    return out;
}

void Carried::settle(const Overrides& exact, const Overrides& put) {
    m_full = evaluate(m_chain, givenValues(m_chain, *m_sketch), put.empty() ? exact : put);
    Printing how = printing();
    how.put = put;
    keep(printed(m_chain, m_full, *m_sketch, how));
}

void Carried::settleAt(int guard) {
    Printing how = printing();
    how.guard = guard;
    Values given = givenValues(m_chain, *m_sketch);
    for (const QuantityId& quantity : m_chain.given) {
        const std::size_t found = m_elsewhere.find(quantity);
        if (found == QuantityIndex::kNone) {
            how.given.emplace_back();
            continue;
        }
        how.given.push_back(m_fromElsewhere[found]);
        given.set(quantity, m_fromElsewhere[found].value);
    }
    m_full = evaluate(m_chain, given);
    keep(printed(m_chain, m_full, *m_sketch, how));
}

/// Formulas stand with the numbers that were computed with.
void Carried::keep(Printed printed) {
    m_printed = std::move(printed);
    const Paper onPaper = paper();
    for (Line& line : m_chain.lines)
        for (Case& one : line.cases)
            onPaper.put(one.formula);
    std::erase_if(m_quantities, [&](const QuantityId& quantity) { return !m_full.at(quantity); });
}

const Line* Carried::find(const QuantityId& quantity) const {
    const std::size_t place = m_index.find(quantity);
    return place == QuantityIndex::kNone ? nullptr : &m_chain.lines[place];
}

const Decimal& Carried::decimal(const QuantityId& quantity) const {
    static const Decimal none;
    if (const std::size_t line = m_index.find(quantity); line != QuantityIndex::kNone)
        return m_printed.number[line];
    const std::size_t given = m_given.find(quantity);
    return given == QuantityIndex::kNone ? none : m_printed.given[given];
}

bool Carried::isReplaced(const QuantityId& quantity) const {
    const std::size_t line = m_index.find(quantity);
    return line != QuantityIndex::kNone && m_printed.replaced[line];
}

bool Carried::goesAnotherWay(const QuantityId& quantity) const {
    const std::size_t i = m_index.find(quantity);
    return i != QuantityIndex::kNone && m_printed.taken[i] != kNoCase &&
           m_printed.taken[i] != m_full.taken[i];
}

const Formula& Carried::formulaOf(const QuantityId& quantity) const {
    const std::size_t i = m_index.find(quantity);
    const auto& cases = m_chain.lines[i].cases;
    std::size_t taken = i < m_printed.taken.size() ? m_printed.taken[i] : kNoCase;
    if (taken == kNoCase && i < m_full.taken.size())
        taken = m_full.taken[i];
    return cases[taken == kNoCase ? cases.size() - 1 : taken].formula;
}

Formula Carried::withUnit(const Decimal& decimal, Dimension dimension) const {
    return tailpoint::number(static_cast<double>(decimal.value), decimal.text,
                             std::string(unitOf(dimension, *m_sketch)));
}

Formula Carried::shown(double value, Dimension dimension, Origin origin) const {
    Formula made = tailpoint::number(
        value,
        dimension == Dimension::angle ? fixedDecimals(value, shownAngleDecimals(*m_sketch), origin)
                                      : shownForce(value, *m_sketch, origin),
        std::string(unitOf(dimension == Dimension::angle ? dimension : Dimension::force, *m_sketch)));
    made.value = shownValue(made);
    return made;
}

Formula Carried::carried(long double value, Dimension dimension) const {
    return carriedFrom(guard(), value, dimension);
}

Formula Carried::guarded(long double value, Dimension dimension) const {
    return carriedFrom(std::max(guard(), kLeastGuard), value, dimension);
}

Formula Carried::carriedFrom(int least, long double value, Dimension dimension) const {
    const What what = whatOf(dimension);
    const Paper own(*m_sketch, least, scale);
    Decimal number = own.computed(what, value);
    const std::string shown = own.shown(what, value);
    for (int guard = own.guard() + 1;
         guard > 1 && guard < kMostPrinted - m_sketch->figures && own.shown(what, number.value) != shown;
         ++guard)
        number = Paper(*m_sketch, guard, scale).computed(what, value);
    return withUnit(number, dimension);
}

Formula Carried::leftOver(long double value) const {
    return withUnit(paper().computed(What::gap, value, true), Dimension::force);
}

Formula Carried::typed(double value, const QuantityId& quantity) const {
    Formula made = withUnit(paper().typed(quantity.what, value), dimensionOf(quantity.what));
    made.id = quantity;
    return made;
}

Formula Carried::number(const QuantityId& quantity) const {
    const Dimension dimension = dimensionOf(quantity.what);
    const Decimal& printed = decimal(quantity);
    Formula made =
        printed.text.empty() ? carried(value(quantity).value_or(0), dimension) : withUnit(printed, dimension);
    made.id = quantity;
    return made;
}

bool Carried::isInlined(const QuantityId& quantity, const std::vector<QuantityId>& inlined) const {
    return (isOnTheWayOnly(quantity.what) || isAmong(quantity, inlined)) && find(quantity) != nullptr;
}

bool Carried::holdsInlined(const Formula& formula, const std::vector<QuantityId>& inlined) const {
    if (formula.id.what != What::none)
        return isInlined(formula.id, inlined);
    return std::any_of(formula.parts.begin(), formula.parts.end(),
                       [&](const Formula& part) { return holdsInlined(part, inlined); });
}

Formula Carried::expanded(const Formula& formula, const std::vector<QuantityId>& inlined) const {
    if (formula.id.what != What::none)
        return isInlined(formula.id, inlined) ? expanded(formulaOf(formula.id), inlined) : formula;
    if (!holdsInlined(formula, inlined))
        return formula;
    Formula copy = formula;
    copy.parts = formula.parts.each([&](const Formula& part) { return expanded(part, inlined); });
    return copy;
}

Formula Carried::inNumbers(const Formula& formula) const {
    if (formula.kind == FormulaKind::symbol)
        return formula.id.what == What::none ? formula : number(formula.id);
    if (formula.parts.empty())
        return formula;
    Formula copy = formula;
    copy.parts = formula.parts.each([&](const Formula& part) {
        const bool isTakenAway = &part != &formula.parts.front() && part.kind == FormulaKind::negative;
        return isTakenAway ? negative(inNumbers(part.parts[0])) : inNumbers(part);
    });
    if (copy.kind == FormulaKind::absolute && copy.parts[0].kind == FormulaKind::number)
        return withoutMinus(copy.parts[0]);
    if (copy.kind == FormulaKind::negative && copy.parts[0].kind == FormulaKind::number &&
        copy.parts[0].value == 0)
        return Formula(copy.parts[0]);
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
        if (out.substituted && isSignedNumber(*out.substituted) &&
            toText(*out.substituted) == toText(*out.value)) // −δ, say: told once
            out.substituted.reset();
        out.general = std::move(formula);
    } else {
        out.substituted = std::move(formula);
    }
    return out;
}

} // namespace tailpoint::explaining
