// SPDX-License-Identifier: MIT
// An attempt against each answer, or both of its pairs against both.
#include "core/mark/sheet.h"

#include <algorithm>
#include <tuple>

namespace tailpoint::marking {

/// A rare slip that fits one number alone says nothing.
Known Sheet::knownBy(const Fitting& fitting) const {
    if (fitting.slips.front().second || fitting.againstRight > 0)
        return Known::nothing;
    const bool isRare = m_telling.slipOf(fitting.slips.front().first).common < 3 && !fitting.isStrong;
    return fitting.explained.size() > 1 ? Known::withOthers : isRare ? Known::nothing : Known::alone;
}

Part Sheet::part(const Attempt& attempt, std::size_t answer, std::size_t position) const {
    Part part;
    part.givens = givenIn(m_question, attempt, answer, position);
    part.unread = attempt.unread;
    findFollowing(m_question, part.givens);
    part.fittings = m_findings.find(part.givens);
    std::vector<Known> known(part.givens.size(), Known::nothing);
    for (const Fitting& fitting : part.fittings)
        for (const std::size_t i : fitting.explained)
            known[i] = std::max(known[i], knownBy(fitting));
    if (findBalanced(m_question, part.givens, known))
        part.fittings = m_findings.find(part.givens);
    judge(part);
    return part;
}

namespace {

std::ptrdiff_t goodOnes(const Part& part) {
    return std::count_if(part.quantities.begin(), part.quantities.end(), [](const MarkedQuantity& one) {
        return one.asked && (one.verdict == Verdict::right || one.verdict == Verdict::rounded);
    });
}

/// Numbers that the likeliest finding explains, less those that speak against it; two slips explain less
/// well.
std::ptrdiff_t weightOf(const Part& part) {
    if (part.fittings.empty())
        return 0;
    const Fitting& first = part.fittings.front();
    return static_cast<std::ptrdiff_t>(first.explained.size()) -
           static_cast<std::ptrdiff_t>(first.contradicted) - (first.slips.front().second ? 1 : 0);
}

/// More that is right; then the one of which more is explained; then more points, the milder verdict.
bool isBetter(const Part& a, const Part& b) {
    if (goodOnes(a) != goodOnes(b))
        return goodOnes(a) > goodOnes(b);
    if (weightOf(a) != weightOf(b))
        return weightOf(a) > weightOf(b);
    return a.points != b.points ? a.points > b.points : rankOf(a.verdict) > rankOf(b.verdict);
}

/// More points; then more that is right, in whatever order the pairs were written; then more that is
/// explained.
bool isBetterPair(const std::array<Part, 2>& a, const std::array<Part, 2>& b) {
    const auto rank = [](const std::array<Part, 2>& pair) {
        return std::tuple(pair[0].points + pair[1].points, goodOnes(pair[0]) + goodOnes(pair[1]),
                          weightOf(pair[0]) + weightOf(pair[1]));
    };
    return rank(a) > rank(b);
}

} // namespace

Marking Sheet::made(Part part) const {
    Marking out;
    out.verdict = part.verdict;
    out.points = part.points;
    for (MarkedQuantity& quantity : part.quantities)
        out.of += quantity.of;
    out.quantities = std::move(part.quantities);
    if (!m_question.options.saysWhy)
        return out;
    for (const Fitting& fitting : part.fittings)
        out.slips.push_back(m_telling.finding(fitting, part.givens));
    if (!part.fittings.empty())
        out.ask = m_telling.ask(part.fittings.front());
    return out;
}

/// Both pairs are given: each counts half.
Marking Sheet::both(const Attempt& attempt) const {
    std::array<Part, 2> straight{part(attempt, 0, 0), part(attempt, 1, 1)},
        crossed{part(attempt, 1, 0), part(attempt, 0, 1)};
    std::array<Part, 2>& best = isBetterPair(crossed, straight) ? crossed : straight;
    Marking out;
    for (std::size_t i = 0; i < 2; ++i) {
        const Verdict verdict = best[i].verdict;
        Marking one = made(std::move(best[i]));
        if (i == 0 || rankOf(verdict) < rankOf(out.verdict))
            out.verdict = verdict;
        for (MarkedQuantity& quantity : one.quantities) {
            quantity.answer = static_cast<int>(i + 1);
            quantity.of /= 2;
            quantity.points /= 2;
            out.points += quantity.points;
            out.of += quantity.of;
            out.quantities.push_back(std::move(quantity));
        }
        for (Finding& finding : one.slips)
            if (std::none_of(out.slips.begin(), out.slips.end(), [&](const Finding& other) {
                    return other.id == finding.id && other.gives == finding.gives;
                }))
                out.slips.push_back(std::move(finding));
        if (!out.ask)
            out.ask = std::move(one.ask);
    }
    return out;
}

namespace {

/// Every pair of numbers is one number twice.
bool isOneTwice(const Attempt& attempt) {
    return std::all_of(attempt.values.begin(), attempt.values.end(), [](const GivenValue& value) {
        return value.numbers.size() < 2 ||
               (!value.numbers[0].readings.empty() && !value.numbers[1].readings.empty() &&
                value.numbers[0].readings.front().value == value.numbers[1].readings.front().value);
    });
}

/// The line for which it is given, where it is for one.
const GivenLine* lineIn(const Attempt& attempt) {
    for (const GivenValue& value : attempt.values)
        if (value.line)
            return &*value.line;
    return nullptr;
}

Attempt withoutSecond(Attempt attempt) {
    for (GivenValue& value : attempt.values)
        value.numbers.resize(std::min<std::size_t>(value.numbers.size(), 1));
    return attempt;
}

} // namespace

Marking Sheet::mark(const Attempt& attempt) const {
    const bool isPair = std::any_of(attempt.values.begin(), attempt.values.end(),
                                    [](const GivenValue& value) { return value.numbers.size() > 1; });
    if (isPair && m_question.answers == 2 && isOneTwice(attempt)) {
        Marking out = mark(withoutSecond(attempt));
        out.remarks.push_back(Voice(m_question.options.sentences)
                                  .say(SENTENCE("marking", "One answer is given twice: it counts once.")));
        return out;
    }
    if (isPair && m_question.answers == 2)
        return both(attempt);
    if (const GivenLine* line = lineIn(attempt); line != nullptr && line->subject.answer > 0)
        return made(part(attempt, std::min<std::size_t>(line->subject.answer, m_question.answers) - 1, 0));
    Part best = part(attempt, 0, 0);
    for (std::size_t answer = 1; answer < m_question.answers; ++answer)
        if (Part other = part(attempt, answer, 0); isBetter(other, best))
            best = std::move(other);
    Marking out = made(std::move(best));
    if (m_question.answers < 2 || !out.isRight() || lineIn(attempt) != nullptr)
        return out;
    const Voice voice(m_question.options.sentences);
    out.remarks.push_back(voice.say(SENTENCE("marking", "There is a second answer to this question.")));
    if (m_question.options.bothAnswers) {
        out.verdict = Verdict::incomplete;
        out.points /= 2;
    }
    return out;
}

} // namespace tailpoint::marking
