#include "core/mark/pairs.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

/// Of more slips no pair would say anything.
constexpr std::size_t kMostPairedSlips = 300;
/// A chain of more lines has more pairs than they are worth: their evidence would be nothing. Nor are two
/// slips looked for where several forces are added two at a time: so many lines explain any two numbers.
constexpr std::size_t kMostLines = 24;
/// Two rare slips at once are nobody's.
constexpr int kLeastCommon = 6;

bool isPaired(const Way& way) {
    return way.program.lines() <= kMostLines && way.chain.route.way != Route::Way::parallelograms;
}

/// Different lines are changed.
bool canBePaired(const Rewrite& a, const Rewrite& b) {
    for (const Change& one : a.changes)
        for (const Change& other : b.changes)
            if (one.line == other.line)
                return false;
    return true;
}

bool areSame(const Line& a, const Line& b) {
    const auto isSame = [](const Case& one, const Case& other) {
        return one.when == other.when && one.formula == other.formula;
    };
    return a.subject == b.subject && a.kind == b.kind &&
           std::equal(a.cases.begin(), a.cases.end(), b.cases.begin(), b.cases.end(), isSame);
}

/// By line: whether the other chain has the same. Empty where the quantities are others, so that code for one
/// means nothing to the other.
std::vector<bool> sameLines(const Chain& a, const Chain& b) {
    std::vector<bool> same;
    const bool isAlike =
        a.given == b.given && a.lines.size() == b.lines.size() &&
        std::equal(a.lines.begin(), a.lines.end(), b.lines.begin(),
                   [](const Line& one, const Line& other) { return one.subject == other.subject; });
    for (std::size_t line = 0; isAlike && line < a.lines.size(); ++line)
        same.push_back(areSame(a.lines[line], b.lines[line]));
    return same;
}

/// Whether what a change goes by has the same signs in both chains.
bool haveSameSigns(const Program& program, const Program::State& a, const Program::State& b,
                   const std::vector<Program::Patch>& patches) {
    const auto isAlike = [&](std::size_t slot) {
        return a.known[slot] == b.known[slot] && (a.value[slot] < 0) == (b.value[slot] < 0);
    };
    return std::all_of(patches.begin(), patches.end(), [&](const Program::Patch& patch) {
        const auto &own = program.code(patch.line).inputs, &changed = patch.code.inputs;
        return isAlike(program.slotOfLine(patch.line)) && std::all_of(own.begin(), own.end(), isAlike) &&
               std::all_of(changed.begin(), changed.end(), isAlike);
    });
}

bool areAllIn(const Rewrite& rewrite, const std::vector<bool>& lines) {
    return !lines.empty() && std::all_of(rewrite.changes.begin(), rewrite.changes.end(),
                                         [&](const Change& change) { return lines[change.line]; });
}

/// Of the forms of one slip: the line in front, and how many are changed.
std::pair<std::size_t, std::size_t> placeOf(const Rewrite& rewrite) {
    return {rewrite.changes.front().line, rewrite.changes.size()};
}

} // namespace

Pairs::Pairs(const Question& question, Alternatives& alternatives)
    : m_question(question), m_alternatives(alternatives), m_columns(question.asked * question.answers) {
    if (alternatives.singles().size() > kMostPairedSlips)
        return;
    std::vector<std::vector<Ran>> own;
    for (std::size_t way = 0; way < question.own.ways.size(); ++way)
        own.push_back(isPaired(question.own.ways[way]) ? ranIn(way) : std::vector<Ran>());
    for (std::size_t way = 0; way < own.size(); ++way)
        addRewrites(way, own[way]);
    for (std::size_t i = 0; i < alternatives.singles().size(); ++i)
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

/// Of slips that make the same of what is asked only the commonest: with a third they do so again.
std::vector<Pairs::Ran> Pairs::ranIn(std::size_t way) const {
    std::vector<Ran> all;
    std::vector<std::vector<double>> asked;
    const auto& singles = m_alternatives.singles();
    for (std::size_t i = 0; i < singles.size(); ++i) {
        const Origin& origin = m_alternatives.origin(singles[i]);
        if (!origin.rewrite || origin.way != way)
            continue;
        Ran ran{i, Alternatives::run(m_question.own.ways[way], *origin.rewrite)};
        auto values = askedIn(m_question.own.ways[way], ran.run.state);
        const auto same = std::find_if(asked.begin(), asked.end(), [&](const std::vector<double>& other) {
            for (std::size_t cell = 0; cell < values.size(); ++cell)
                if (isThere(values[cell]) != isThere(other[cell]) ||
                    (isThere(values[cell]) && !isSame(m_question, cell, values[cell], other[cell])))
                    return false;
            return true;
        });
        if (same == asked.end()) {
            all.push_back(std::move(ran));
            asked.push_back(std::move(values));
            continue;
        }
        Ran& other = all[static_cast<std::size_t>(same - asked.begin())];
        if (m_alternatives.slip(singles[other.single]).common < m_alternatives.slip(singles[i]).common)
            other = std::move(ran);
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

void Pairs::addReading(std::size_t reading, const std::vector<std::vector<Ran>>& own) {
    const Origin& origin = m_alternatives.origin(m_alternatives.singles()[reading]);
    if (!origin.reading || !origin.reading->inPairs)
        return;
    const auto& ways = m_alternatives.ways(origin).ways;
    for (std::size_t way = 0; way < ways.size(); ++way)
        for (std::size_t same = 0; same < own.size(); ++same)
            if (isPaired(ways[way]) && ways[way].chain.route == m_question.own.ways[same].chain.route)
                addRead(reading, way, own[same]);
}

/// Every slip in a chain of the question as it was read. Mostly its lines are those of the question's own
/// chain, and so are their changed forms.
void Pairs::addRead(std::size_t reading, std::size_t number, const std::vector<Ran>& own) {
    if (own.empty())
        return;
    const auto& singles = m_alternatives.singles();
    const Way& way = m_alternatives.ways(m_alternatives.origin(singles[reading])).ways[number];
    const Way& ownWay = m_question.own.ways[m_alternatives.origin(singles[own.front().single]).way];
    const std::vector<bool> same = sameLines(way.chain, ownWay.chain);
    std::vector<Shared> shared(catalogue().size());
    Program::State state;
    for (const Ran& one : own) {
        const Alternative& single = singles[one.single];
        const Rewrite& rewrite = *m_alternatives.origin(single).rewrite;
        if (!areCommon(singles[reading].slip, single.slip))
            continue;
        const bool isShared =
            areAllIn(rewrite, same) && (!m_alternatives.slip(single).goesBySigns ||
                                        haveSameSigns(way.program, way.right, ownWay.right, one.run.patches));
        if (!isShared) {
            shared[single.slip].isWhole = false;
            continue;
        }
        shared[single.slip].places.push_back(placeOf(rewrite));
        way.program.together({way.right}, {one.run.state, one.run.patches}, same, state);
        addPart({single.slip, reading, number, &rewrite, &single}, way, state);
    }
    addMadeAnew(reading, number, shared);
}

/// What isn't shared: it has other lines to change, or changes them in another way.
void Pairs::addMadeAnew(std::size_t reading, std::size_t number, const std::vector<Shared>& shared) {
    const auto& singles = m_alternatives.singles();
    const Ways& ways = m_alternatives.ways(m_alternatives.origin(singles[reading]));
    const Way& way = ways.ways[number];
    const auto reduction = reductionOf(ways.sketch, ways.solved);
    const Pattern pattern{m_question, ways, way, reduction};
    for (std::size_t slip = 0; slip < shared.size(); ++slip) {
        const auto& [places, isWhole] = shared[slip];
        if (isWhole)
            continue;
        const auto first = std::find_if(singles.begin(), singles.end(),
                                        [&](const Alternative& one) { return one.slip == slip; });
        for (Rewrite& rewrite : catalogue()[slip].rewrites(pattern)) {
            if (std::find(places.begin(), places.end(), placeOf(rewrite)) != places.end())
                continue;
            m_made.push_back(std::move(rewrite));
            const Alternatives::Run run = Alternatives::run(way, m_made.back());
            if (!addPart({slip, reading, number, &m_made.back(), &*first}, way, run.state))
                m_made.pop_back();
        }
    }
}

bool Pairs::addPart(const Part& part, const Way& way, const Program::State& state) {
    m_parts.push_back(part);
    const bool isAdded =
        add({static_cast<std::uint32_t>(part.reading), static_cast<std::uint32_t>(m_parts.size() - 1), true},
            askedIn(way, state));
    if (!isAdded)
        m_parts.pop_back();
    return isAdded;
}

std::optional<double> Pairs::stated(std::size_t slip, std::size_t form) const {
    const Alternative& one = m_alternatives.singles()[slip];
    const Origin& origin = m_alternatives.origin(m_alternatives.singles()[form]);
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
        const Origin& origin = m_alternatives.origin(singles[j]);
        if (!origin.form || m_alternatives.slip(singles[j]).verdict != Verdict::axis)
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
    const Origin& first = m_alternatives.origin(singles[pair.first]);
    const bool isSteep = m_alternatives.slip(singles[pair.first]).isSteep;
    Numbers numbers(m_question.cells());
    if (pair.isRead) {
        const Part& part = m_parts[pair.second];
        numbers = inOneChain(m_alternatives.ways(first).ways[part.way], *part.rewrite,
                             isSteep || catalogue()[part.slip].isSteep);
    } else if (const Origin& second = m_alternatives.origin(singles[pair.second]); second.rewrite) {
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

std::pair<std::size_t, std::size_t> Pairs::slipsOf(std::size_t index) {
    const Pair& pair = m_pairs[index];
    if (!pair.isRead)
        return {pair.first, pair.second};
    Part& part = m_parts[pair.second];
    if (part.kept == 0) {
        const Origin& origin = m_alternatives.origin(m_alternatives.singles()[pair.first]);
        const Way& way = m_alternatives.ways(origin).ways[part.way];
        Alternative kept{part.slip, 0, part.like->numbers, part.like->changed, {way.chain.route}};
        part.kept = m_alternatives.keep(std::move(kept),
                                        {.ways = origin.ways, .way = part.way, .rewrite = *part.rewrite});
    }
    return {pair.first, part.kept};
}

} // namespace tailpoint::marking
