#include "core/mark/pairs.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

/// Two rare slips at once are nobody's.
constexpr int kLeastCommon = 6;

/// Different lines are changed, or another place.
bool canBePaired(const Rewrite& a, const Rewrite& b) {
    for (const Change& one : a.changes)
        for (const Change& other : b.changes)
            if (one.line == other.line)
                return false;
    return true;
}

} // namespace

Pairs::Pairs(const Question& question, const Alternatives& alternatives)
    : m_question(question), m_alternatives(alternatives), m_columns(question.asked * question.answers) {
    addRewrites();
    addForms();
}

void Pairs::add(std::size_t first, std::size_t second, const Numbers& numbers) {
    const auto isChanged = [&](std::size_t cell) {
        const double value = numbers.value[cell], right = m_question.right().value[cell];
        return isThere(value) && isThere(right) && !isSame(m_question, cell, value, right);
    };
    std::size_t changed = 0;
    for (std::size_t cell = 0; cell < m_columns.size(); ++cell)
        changed += isChanged(cell) ? 1 : 0;
    if (changed < 2) // it must explain two given numbers
        return;
    const auto& singles = m_alternatives.singles();
    m_pairs.push_back({static_cast<std::uint32_t>(first), static_cast<std::uint32_t>(second)});
    for (std::size_t cell = 0; cell < m_columns.size(); ++cell) {
        m_columns[cell].value.push_back(static_cast<float>(isChanged(cell) ? numbers.value[cell] : kNone));
        m_columns[cell].tolerance.push_back(static_cast<float>(
            std::max(singles[first].numbers.tolerance[cell], singles[second].numbers.tolerance[cell])));
    }
}

/// Two rewrites of one chain, or a form of what a slip gives. Empty where they don't go together.
std::optional<Numbers> Pairs::together(std::size_t first, std::size_t second, bool tolerances) const {
    const auto& singles = m_alternatives.singles();
    const Origin &a = m_alternatives.origin(singles[first]), &b = m_alternatives.origin(singles[second]);
    if (a.rewrite && b.rewrite) {
        if (a.way != b.way || !canBePaired(*a.rewrite, *b.rewrite))
            return std::nullopt;
        const Way& way = m_question.own.ways[a.way];
        Rewrite both = *a.rewrite;
        both.changes.insert(both.changes.end(), b.rewrite->changes.begin(), b.rewrite->changes.end());
        const Alternatives::Run run = Alternatives::run(way, both);
        Numbers numbers = m_alternatives.numbersIn(way, run.state);
        if (tolerances)
            m_question.addTolerance(way, run.state, run.patches, kMostInSlip, numbers);
        return numbers;
    }
    if (!b.form || a.form)
        return std::nullopt;
    Numbers numbers = singles[first].numbers;
    const double before = numbers.value[b.cell];
    if (!isThere(before) || !singles[first].changed[b.cell])
        return std::nullopt;
    const auto value = evaluate(b.form->formula, m_question.sketch().angleUnit,
                                [before](const Formula&) { return std::optional<long double>(before); });
    if (!value)
        return std::nullopt;
    numbers.value[b.cell] = static_cast<double>(*value);
    return numbers;
}

bool Pairs::areCommon(std::size_t first, std::size_t second) const {
    const auto& singles = m_alternatives.singles();
    return m_alternatives.slip(singles[first]).common + m_alternatives.slip(singles[second]).common >=
           kLeastCommon;
}

void Pairs::addRewrites() {
    const auto& singles = m_alternatives.singles();
    std::vector<std::vector<std::pair<std::size_t, Alternatives::Run>>> byWay(m_question.own.ways.size());
    for (std::size_t i = 0; i < singles.size(); ++i)
        if (const Origin& origin = m_alternatives.origin(singles[i]); origin.rewrite)
            byWay[origin.way].emplace_back(
                i, Alternatives::run(m_question.own.ways[origin.way], *origin.rewrite));
    Program::State state;
    for (std::size_t w = 0; w < byWay.size(); ++w) {
        const Way& way = m_question.own.ways[w];
        for (std::size_t i = 0; i < byWay[w].size(); ++i)
            for (std::size_t j = i + 1; j < byWay[w].size(); ++j) {
                const auto& [first, a] = byWay[w][i];
                const auto& [second, b] = byWay[w][j];
                if (!areCommon(first, second) ||
                    !canBePaired(*m_alternatives.origin(singles[first]).rewrite,
                                 *m_alternatives.origin(singles[second]).rewrite))
                    continue;
                way.program.change(a.state, state, b.patches, {}, a.patches);
                add(first, second, m_alternatives.numbersIn(way, state));
            }
    }
}

void Pairs::addForms() {
    const auto& singles = m_alternatives.singles();
    for (std::size_t j = 0; j < singles.size(); ++j) {
        if (!m_alternatives.origin(singles[j]).form ||
            m_alternatives.slip(singles[j]).verdict != Verdict::axis)
            continue; // of the forms those of a direction alone: a wrong number is wrong in any unit
        for (std::size_t i = 0; i < singles.size(); ++i)
            if (const auto numbers = areCommon(i, j) ? together(i, j, false) : std::nullopt)
                add(i, j, *numbers);
    }
}

Numbers Pairs::numbersOf(std::size_t index) const {
    const Pair& pair = m_pairs[index];
    Numbers numbers = together(pair.first, pair.second, true).value_or(Numbers(m_question.cells()));
    for (std::size_t cell = 0; cell < m_columns.size(); ++cell)
        if (isThere(numbers.value[cell]))
            numbers.tolerance[cell] = std::max(numbers.tolerance[cell], tolerance(index, cell));
    return numbers;
}

} // namespace tailpoint::marking
