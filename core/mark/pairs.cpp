#include "core/mark/pairs.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

/// Of more slips no pair would say anything.
constexpr std::size_t kMostPairedSlips = 300;
/// A chain of more lines has more pairs than they are worth: their evidence would be nothing.
constexpr std::size_t kMostLines = 24;
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

Pairs::Pairs(const Question& question, Alternatives& alternatives)
    : m_question(question), m_alternatives(alternatives), m_columns(question.asked * question.answers) {
    if (alternatives.singles().size() > kMostPairedSlips)
        return;
    addRewrites();
    addReadings();
    addForms();
}

void Pairs::add(std::size_t first, std::size_t second, const Numbers& numbers) {
    const auto isChanged = [&](std::size_t cell) {
        const double value = numbers.value[cell], right = m_question.right().value[cell];
        return isThere(value) && isThere(right) && !isSame(m_question, cell, value, right);
    };
    std::array<std::size_t, 2> changed{};
    for (std::size_t cell = 0; cell < m_columns.size(); ++cell)
        changed[m_question.answerOf(cell)] += isChanged(cell) ? 1 : 0;
    if (std::max(changed[0], changed[1]) < 2) // it must explain two given numbers
        return;
    const Alternative &a = m_alternatives.at(first), &b = m_alternatives.at(second);
    m_pairs.push_back({static_cast<std::uint32_t>(first), static_cast<std::uint32_t>(second)});
    for (std::size_t cell = 0; cell < m_columns.size(); ++cell) {
        m_columns[cell].value.push_back(static_cast<float>(isChanged(cell) ? numbers.value[cell] : kNone));
        m_columns[cell].tolerance.push_back(
            static_cast<float>(std::max(a.numbers.tolerance[cell], b.numbers.tolerance[cell])));
    }
}

/// Both rewrites of one chain, or one of a question read wrongly.
std::optional<Numbers> Pairs::inOneChain(const Origin& a, const Origin& b, Tolerance tolerance) const {
    const bool isReading = a.reading && b.ways == a.ways;
    if (!isReading &&
        (!a.rewrite || a.ways != b.ways || a.way != b.way || !canBePaired(*a.rewrite, *b.rewrite)))
        return std::nullopt;
    const Way& way = m_alternatives.ways(b).ways[b.way];
    Rewrite both = *b.rewrite;
    if (!isReading)
        both.changes.insert(both.changes.end(), a.rewrite->changes.begin(), a.rewrite->changes.end());
    const Alternatives::Run run = Alternatives::run(way, both);
    Numbers numbers = m_alternatives.numbersIn(way, run.state);
    if (tolerance == Tolerance::ofChange)
        m_question.addTolerance(way, run.state, run.patches, kMostInSlip, numbers);
    else if (tolerance == Tolerance::ofRight)
        m_question.addTolerance(way, way.right, {}, kMostInSlip, numbers);
    return numbers;
}

/// Two rewrites, or a form of what a slip gives. Empty where they don't go together.
std::optional<Numbers> Pairs::together(std::size_t first, std::size_t second, bool tolerances) const {
    const Alternative &one = m_alternatives.at(first), &other = m_alternatives.at(second);
    const Origin &a = m_alternatives.origin(one), &b = m_alternatives.origin(other);
    if (b.rewrite) {
        const bool isSteep = m_alternatives.slip(one).isSteep || m_alternatives.slip(other).isSteep;
        return inOneChain(a, b,
                          !tolerances ? Tolerance::none
                          : isSteep   ? Tolerance::ofRight
                                      : Tolerance::ofChange);
    }
    if (!b.form || a.form)
        return std::nullopt;
    Numbers numbers = one.numbers;
    const double before = numbers.value[b.cell];
    if (!isThere(before) || !one.changed[b.cell])
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
        if (way.program.lines() > kMostLines)
            continue;
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

void Pairs::addReadings() {
    for (std::size_t i = 0; i < m_alternatives.singles().size(); ++i) {
        const Origin& origin = m_alternatives.origin(m_alternatives.singles()[i]);
        if (!origin.reading || !origin.reading->inPairs)
            continue;
        const auto& ways = m_alternatives.ways(origin).ways;
        for (std::size_t way = 0; way < ways.size(); ++way)
            if (ways[way].program.lines() <= kMostLines)
                addRead(i, ways[way], way);
    }
}

/// Every slip in a chain of the question as it was read.
void Pairs::addRead(std::size_t reading, const Way& way, std::size_t number) {
    const Origin origin = m_alternatives.origin(m_alternatives.singles()[reading]);
    const Ways& ways = m_alternatives.ways(origin);
    const auto reduction = reductionOf(ways.sketch, ways.solved);
    const Pattern pattern{m_question, ways, way, reduction};
    const int common = m_alternatives.slip(m_alternatives.singles()[reading]).common;
    for (std::size_t slip = 0; slip < catalogue().size(); ++slip) {
        if (catalogue()[slip].rewrites == nullptr || catalogue()[slip].common + common < kLeastCommon)
            continue;
        const auto& singles = m_alternatives.singles();
        const auto same = std::find_if(singles.begin(), singles.end(),
                                       [&](const Alternative& one) { return one.slip == slip; });
        if (same == singles.end())
            continue;
        for (Rewrite& rewrite : catalogue()[slip].rewrites(pattern)) {
            const Numbers numbers = m_alternatives.numbersIn(way, Alternatives::run(way, rewrite).state);
            const std::size_t before = m_pairs.size(), next = m_alternatives.next();
            Alternative kept{slip, 0, Numbers(m_question.cells()), same->changed, {way.chain.route}};
            kept.numbers.tolerance = same->numbers.tolerance;
            const std::size_t index = m_alternatives.keep(
                std::move(kept), {.ways = origin.ways, .way = number, .rewrite = std::move(rewrite)});
            add(reading, index, numbers);
            if (m_pairs.size() == before)
                m_alternatives.dropFrom(next);
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
