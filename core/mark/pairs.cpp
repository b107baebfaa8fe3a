// SPDX-License-Identifier: MIT
#include "core/mark/pairs.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

/// Of more slips no pair would say anything.
constexpr std::size_t kMostPairedSlips = 300;
/// A chain of more lines has more pairs than they are worth: their evidence would be nothing. Nor are two
/// slips looked for where several forces are added two at a time: so many lines explain any two numbers.
constexpr std::size_t kMostLinesOfPairs = 24;
/// Two rare slips at once are nobody's.
constexpr int kLeastCommon = 6;

/// Different lines are changed.
bool canBePaired(const Rewrite& a, const Rewrite& b) {
    for (const Change& one : a.changes)
        for (const Change& other : b.changes)
            if (one.line == other.line)
                return false;
    return true;
}

} // namespace

bool isPaired(const Way& way) {
    return way.program.lines() <= kMostLinesOfPairs && way.chain.route.way != Route::Way::parallelograms;
}

Pairs::Pairs(const Question& question, Alternatives& alternatives)
    : m_question(question), m_alternatives(alternatives), m_columns(question.asked * question.answers) {
    const auto& singles = alternatives.singles();
    if (static_cast<std::size_t>(std::count_if(singles.begin(), singles.end(), [&](const Alternative& one) {
            return !alternatives.origin(one).form;
        })) > kMostPairedSlips)
        return;
    std::vector<std::vector<Ran>> own;
    for (std::size_t way = 0; way < question.own.ways.size(); ++way)
        own.push_back(isPaired(question.own.ways[way]) ? ranIn(way) : std::vector<Ran>());
    for (std::size_t way = 0; way < own.size(); ++way)
        addRewrites(way, own[way]);
    for (std::size_t i = 0; i < singles.size(); ++i)
        addReading(i, own);
    addForms();
}

bool Pairs::add(const Pair& pair, const std::vector<double>& values) {
    std::vector<double> changed(m_columns.size(), kNone);
    std::array<std::size_t, 2> count{};
    for (std::size_t cell = 0; cell < m_columns.size(); ++cell) {
        const double value = values[cell], right = m_question.right().value[cell];
        if (!isThere(value) || !isThere(right) || isSame(m_question, cell, value, right))
            continue;
        changed[cell] = value;
        ++count[m_question.answerOf(cell)];
    }
    if (std::max(count[0], count[1]) < 2) // it must explain two given numbers
        return false;
    const Numbers& a = m_alternatives.singles()[pair.first].numbers;
    const Numbers& b = tolerancesOf(pair);
    for (std::size_t cell = 0; cell < m_columns.size(); ++cell) {
        m_columns[cell].value.push_back(static_cast<float>(changed[cell]));
        m_columns[cell].tolerance.push_back(
            static_cast<float>(std::max(a.tolerance[cell], b.tolerance[cell])));
    }
    m_pairs.push_back(pair);
    return true;
}

const Numbers& Pairs::tolerancesOf(const Pair& pair) const {
    return pair.isRead ? m_parts[pair.second].like->numbers : m_alternatives.singles()[pair.second].numbers;
}

std::vector<double> Pairs::askedIn(const Way& way, const Program::State& state) const {
    std::vector<double> values(m_columns.size(), kNone);
    for (std::size_t cell = 0; cell < values.size(); ++cell)
        if (const auto value = state.at(way.slots[cell]))
            values[cell] = static_cast<double>(*value);
    return values;
}

bool Pairs::areCommon(std::size_t first, std::size_t second) const {
    return catalogue()[first].common + catalogue()[second].common >= kLeastCommon;
}

bool Pairs::areSameAsked(const std::vector<double>& a, const std::vector<double>& b) const {
    for (std::size_t cell = 0; cell < a.size(); ++cell)
        if (isThere(a[cell]) != isThere(b[cell]) ||
            (isThere(a[cell]) && !isSame(m_question, cell, a[cell], b[cell])))
            return false;
    return true;
}

/// Of slips that make the same of what is asked only the commonest: with a third they do so again.
std::vector<Pairs::Ran> Pairs::ranIn(std::size_t way) const {
    std::vector<Ran> all;
    const auto& singles = m_alternatives.singles();
    for (std::size_t i = 0; i < singles.size(); ++i) {
        const SlipOrigin& origin = m_alternatives.origin(singles[i]);
        if (!origin.rewrite || origin.way != way || singles[i].isSwapped)
            continue;
        Ran ran{i, Alternatives::run(m_question.own.ways[way], *origin.rewrite)};
        ran.asked = askedIn(m_question.own.ways[way], ran.run.state);
        const auto same = std::find_if(all.begin(), all.end(),
                                       [&](const Ran& one) { return areSameAsked(one.asked, ran.asked); });
        if (same == all.end())
            all.push_back(std::move(ran));
        else if (m_alternatives.slip(singles[same->single]).common < m_alternatives.slip(singles[i]).common)
            *same = std::move(ran);
    }
    return all;
}

void Pairs::addRewrites(std::size_t number, const std::vector<Ran>& all) {
    const auto& singles = m_alternatives.singles();
    const Way& way = m_question.own.ways[number];
    Program::State state;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const std::size_t first = all[i].single, second = all[j].single;
            if (!areCommon(singles[first].slip, singles[second].slip) ||
                !canBePaired(*m_alternatives.origin(singles[first]).rewrite,
                             *m_alternatives.origin(singles[second]).rewrite))
                continue;
            way.program.together({all[i].run.state, all[i].run.patches},
                                 {all[j].run.state, all[j].run.patches}, {}, state);
            add({static_cast<std::uint32_t>(first), static_cast<std::uint32_t>(second)}, askedIn(way, state));
        }
}

std::optional<double> Pairs::stated(std::size_t slip, std::size_t form) const {
    const Alternative& one = m_alternatives.singles()[slip];
    const SlipOrigin& origin = m_alternatives.origin(m_alternatives.singles()[form]);
    const double before = one.numbers.value[origin.cell];
    if (!isThere(before) || !one.changed[origin.cell] || m_alternatives.origin(one).form)
        return std::nullopt;
    const auto value = evaluate(origin.form->formula, m_question.sketch().angleUnit,
                                [before](const Formula&) { return std::optional<long double>(before); });
    return value ? std::optional(static_cast<double>(*value)) : std::nullopt;
}

/// Of the forms those of a direction alone: a wrong number is wrong in any unit.
void Pairs::addForms() {
    const auto& singles = m_alternatives.singles();
    for (std::size_t j = 0; j < singles.size(); ++j) {
        const SlipOrigin& origin = m_alternatives.origin(singles[j]);
        if (!origin.form || origin.cell >= m_columns.size() ||
            m_alternatives.slip(singles[j]).verdict != Verdict::axis)
            continue;
        for (std::size_t i = 0; i < singles.size(); ++i) {
            const auto value =
                areCommon(singles[i].slip, singles[j].slip) ? stated(i, j) : std::optional<double>();
            if (!value)
                continue;
            std::vector<double> values(singles[i].numbers.value.begin(),
                                       singles[i].numbers.value.begin() +
                                           static_cast<std::ptrdiff_t>(m_columns.size()));
            values[origin.cell] = *value;
            add({static_cast<std::uint32_t>(i), static_cast<std::uint32_t>(j)}, values);
        }
    }
}

Numbers Pairs::inOneChain(const Way& way, const Rewrite& changed, bool isSteep) const {
    const Alternatives::Run run = Alternatives::run(way, changed);
    Numbers numbers = m_alternatives.numbersIn(way, run.state);
    if (isSteep)
        m_question.addTolerance(way, way.right, {}, kMostInSlip, numbers);
    else
        m_question.addTolerance(way, run.state, run.patches, kMostInSlip, numbers);
    return numbers;
}

Numbers Pairs::numbersOf(std::size_t index) const {
    const Pair& pair = m_pairs[index];
    const auto& singles = m_alternatives.singles();
    const SlipOrigin& first = m_alternatives.origin(singles[pair.first]);
    const bool isSteep = m_alternatives.slip(singles[pair.first]).isSteep;
    Numbers numbers(m_question.cells());
    if (pair.isRead) {
        const Part& part = m_parts[pair.second];
        numbers = inOneChain(m_alternatives.ways(first).ways[part.way], *part.rewrite,
                             isSteep || catalogue()[part.slip].isSteep);
    } else if (const SlipOrigin& second = m_alternatives.origin(singles[pair.second]); second.rewrite) {
        Rewrite both = *second.rewrite;
        both.changes.insert(both.changes.end(), first.rewrite->changes.begin(), first.rewrite->changes.end());
        numbers = inOneChain(m_question.own.ways[second.way], both,
                             isSteep || m_alternatives.slip(singles[pair.second]).isSteep);
    } else {
        numbers = singles[pair.first].numbers;
        numbers.value[second.cell] = stated(pair.first, pair.second).value_or(kNone);
    }
    for (std::size_t cell = 0; cell < m_columns.size(); ++cell)
        if (isThere(numbers.value[cell]))
            numbers.tolerance[cell] = std::max(numbers.tolerance[cell], tolerance(index, cell));
    return numbers;
}

} // namespace tailpoint::marking
