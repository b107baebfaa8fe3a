// SPDX-License-Identifier: MIT
// What is wrong, and right for an earlier wrong value: every chain with that value put in.
#include "core/mark/balance.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

struct Source {
    std::size_t given, line;
    Program::Put put;
};

/// Wrong given numbers that the chain has before that line.
std::vector<Source> sourcesOf(const Way& way, const std::vector<Given>& givens, std::size_t target,
                              std::size_t before) {
    std::vector<Source> sources;
    for (std::size_t i = 0; i < givens.size(); ++i) {
        const std::size_t slot = way.slots[givens[i].cell];
        if (i == target || !givens[i].isWrong() || givens[i].isTooCoarse || slot == Program::kNoSlot)
            continue;
        const std::size_t line = way.program.lineOf(way.program.quantity(slot));
        if (line < before)
            sources.push_back({i, line, {slot, givens[i].reading.value}});
    }
    return sources;
}

class Following {
public:
    Following(const Question& question, std::vector<Given>& givens)
        : m_question(question), m_givens(givens) {}

    void find() {
        for (std::size_t target = 0; target < m_givens.size(); ++target)
            for (std::size_t i = 0; i < m_question.own.ways.size() && m_givens[target].isWrong() &&
                                    !m_givens[target].isTooCoarse && m_givens[target].follows.empty();
                 ++i)
                findIn(m_question.own.ways[i], target);
    }

private:
    void findIn(const Way& way, std::size_t target) {
        const std::size_t slot = way.slots[m_givens[target].cell];
        if (slot == Program::kNoSlot)
            return;
        const auto sources = sourcesOf(way, m_givens, target, way.program.lineOf(way.program.quantity(slot)));
        if (sources.size() > 1 && follows(way, target, sources))
            return;
        for (auto last = sources.rbegin(); last != sources.rend(); ++last) // the nearest first
            if (follows(way, target, {*last}))
                return;
    }

    bool follows(const Way& way, std::size_t target, const std::vector<Source>& sources) {
        Given& given = m_givens[target];
        std::vector<Program::Put> puts;
        for (const Source& source : sources)
            puts.push_back(source.put);
        const Program::State state = way.program.changed(way.right, {}, puts);
        const auto value = state.at(way.slots[given.cell]);
        const double right = m_question.right().value[given.cell];
        if (!value || isSame(m_question, given.cell, static_cast<double>(*value), right))
            return false;
        Numbers numbers(m_question.cells());
        numbers.value[given.cell] = static_cast<double>(*value);
        const double most = m_question.limit(given.cell, numbers.value[given.cell], kMostInFollowing);
        if (!fits(m_question, given.cell, given.reading, numbers.value[given.cell], most))
            return false; // whatever rounding moves
        if (isSignedBySense(m_question, given.cell) && (*value < 0) != (given.reading.value < 0))
            return false;
        m_question.addTolerance(way, state, {}, kMostInFollowing, numbers, puts);
        double room = numbers.tolerance[given.cell];
        for (std::size_t i = 0; i < sources.size(); ++i) // what the given values' last digits leave open
            room += effect(way, state, puts, i, given.cell, sources[i]);
        if (!fits(m_question, given.cell, given.reading, numbers.value[given.cell], std::min(room, most)))
            return false;
        for (const Source& source : sources)
            given.follows.push_back(source.given);
        given.verdict = Verdict::follows;
        return true;
    }

    double effect(const Way& way, const Program::State& state, std::vector<Program::Put> puts,
                  std::size_t which, std::size_t cell, const Source& source) const {
        puts[which].value += m_givens[source.given].reading.half;
        const auto moved = way.program.changed(state, {}, puts).at(way.slots[cell]);
        const auto from = state.at(way.slots[cell]);
        return moved && from ? m_question.apart(cell, static_cast<double>(*moved), static_cast<double>(*from))
                             : 0;
    }

    const Question& m_question;
    std::vector<Given>& m_givens;
};

bool isFree(const Question& question, const Given& given) {
    return given.isWrong() && !given.isTooCoarse && given.verdict != Verdict::follows &&
           question.quantityOf(given.cell) < question.asked;
}

/// Whether it follows, by whatever way, from the other.
bool comesFrom(const std::vector<Given>& givens, std::size_t given, std::size_t other) {
    const auto& sources = givens[given].follows;
    return given == other || std::any_of(sources.begin(), sources.end(), [&](std::size_t source) {
               return comesFrom(givens, source, other);
           });
}

/// Right for one wrong value, or for all of them.
bool isBalanced(const Balance& balance, std::vector<Given>& givens, std::size_t target,
                const std::vector<std::size_t>& sources) {
    std::vector<std::vector<std::size_t>> sets;
    for (const std::size_t source : sources)
        sets.push_back({source});
    if (sources.size() > 1)
        sets.push_back(sources);
    for (const std::vector<std::size_t>& set : sets) {
        std::vector<const Given*> wrong;
        for (const std::size_t source : set)
            wrong.push_back(&givens[source]);
        if (balance.follows(givens[target], wrong)) {
            givens[target].verdict = Verdict::follows;
            givens[target].follows = set;
            return true;
        }
    }
    return false;
}

} // namespace

bool findBalanced(const Question& question, std::vector<Given>& givens, const std::vector<Known>& known) {
    std::vector<std::size_t> targets;
    for (std::size_t i = givens.size(); i-- > 0;) // the later one in front
        if (isFree(question, givens[i]) && known[i] != Known::withOthers)
            targets.push_back(i);
    std::stable_sort(targets.begin(), targets.end(),
                     [&](std::size_t a, std::size_t b) { return known[a] < known[b]; });
    std::optional<Balance> balance;
    bool any = false;
    for (const std::size_t target : targets) {
        std::vector<std::size_t> sources;
        for (std::size_t i = 0; i < givens.size(); ++i)
            if (givens[i].isWrong() && !givens[i].isTooCoarse &&
                question.quantityOf(givens[i].cell) < question.asked && !comesFrom(givens, i, target))
                sources.push_back(i);
        if (sources.empty())
            continue;
        if (!balance)
            balance.emplace(question, question.answerOf(givens[target].cell));
        any = isBalanced(*balance, givens, target, sources) || any;
    }
    return any;
}

void findFollowing(const Question& question, std::vector<Given>& givens) {
    Following(question, givens).find();
}

} // namespace tailpoint::marking
