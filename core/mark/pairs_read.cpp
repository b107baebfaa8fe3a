// SPDX-License-Identifier: MIT
// A slip in the calculation of a question that is read wrongly as well.
#include "core/mark/pairs.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

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

void Pairs::addReading(std::size_t reading, const std::vector<std::vector<Ran>>& own) {
    const SlipOrigin& origin = m_alternatives.origin(m_alternatives.singles()[reading]);
    if (!origin.reading || !origin.reading->inPairs || m_alternatives.singles()[reading].isSwapped)
        return;
    const auto& ways = m_alternatives.ways(origin).ways;
    for (std::size_t way = 0; way < ways.size(); ++way)
        for (std::size_t same = 0; same < own.size(); ++same)
            if (isPaired(ways[way]) && ways[way].chain.route == m_question.own.ways[same].chain.route)
                addRead(reading, way, own[same]);
}

/// Every slip in a chain of the question as it was read, unless a slip in the chain as it stands makes the
/// same of what is asked (a component's sign for a direction's). Mostly its lines are those of the question's
/// own chain, and so are their changed forms.
void Pairs::addRead(std::size_t reading, std::size_t number, const std::vector<Ran>& own) {
    if (own.empty())
        return;
    const auto& singles = m_alternatives.singles();
    const Way& way = m_alternatives.ways(m_alternatives.origin(singles[reading])).ways[number];
    const std::vector<double> asked = askedIn(way, way.right);
    if (std::any_of(own.begin(), own.end(), [&](const Ran& one) { return areSameAsked(one.asked, asked); }))
        return;
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

std::pair<std::size_t, std::size_t> Pairs::slipsOf(std::size_t index) {
    const Pair& pair = m_pairs[index];
    if (!pair.isRead)
        return {pair.first, pair.second};
    Part& part = m_parts[pair.second];
    if (part.kept == 0) {
        const SlipOrigin& origin = m_alternatives.origin(m_alternatives.singles()[pair.first]);
        const Way& way = m_alternatives.ways(origin).ways[part.way];
        Alternative kept{part.slip, 0, part.like->numbers, part.like->changed, {way.chain.route}};
        part.kept = m_alternatives.keep(std::move(kept),
                                        {.ways = origin.ways, .way = part.way, .rewrite = *part.rewrite});
    }
    return {pair.first, part.kept};
}

} // namespace tailpoint::marking
