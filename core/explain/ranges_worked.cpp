// SPDX-License-Identifier: MIT
// The ranges of an answer within its worked solution: behind the answer, and where the extremes lie.
#include "core/explain/found_symbols.h"
#include "core/explain/listed.h"
#include "core/explain/ranges.h"
#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint {

namespace {

using tolerance::AnswerRange;
using tolerance::InputAt;
using tolerance::Place;
using tolerance::VectorRange;

/// More inputs than that are no sentence any more.
constexpr std::size_t kMostInputs = 6;

class RangeTeller {
public:
    RangeTeller(const Sketch& sketch, const Solved& solved, const Sentences* sentences)
        : m_sketch(sketch), m_solved(solved), m_things(sketch), m_found(m_things, solved),
          m_voice(sentences) {}

    /// "Within the given tolerances R is between 509 N and 530 N and θ_R between −5.1° and −2.2°."
    std::optional<Prose> found(const AnswerRange& range, std::size_t answer) const {
        std::vector<Prose> items;
        for (const VectorRange& vector : range.vectors) {
            if (vector.magnitudeFound)
                items.push_back(
                    is(m_found.size(vector.index, answer), betweenTold(vector.magnitude, m_sketch, m_voice)));
            if (vector.directionFound)
                items.push_back(
                    is(m_found.way(vector.index, answer), betweenTold(vector.direction, m_sketch, m_voice)));
        }
        if (items.empty())
            return std::nullopt;
        const Prose ranges = explaining::listed(m_voice, std::move(items));
        if (m_solved.solutions.size() < 2)
            return m_voice.say(SENTENCE("solution", "Within the given tolerances {ranges}."), "ranges",
                               ranges);
        return answer == 0
                   ? m_voice.say(SENTENCE("solution", "First answer, within the given tolerances: {ranges}."),
                                 "ranges", ranges)
                   : m_voice.say(
                         SENTENCE("solution", "Second answer, within the given tolerances: {ranges}."),
                         "ranges", ranges);
    }

    /// Where the found magnitudes have theirs; of a direction only where it is found alone.
    std::vector<Prose> extremes(const AnswerRange& range, std::size_t answer) const {
        std::vector<Prose> told;
        for (const VectorRange& vector : range.vectors) {
            const auto& magnitude = vector.magnitude;
            if (vector.magnitudeFound && isTold(magnitude.atLeast) && isTold(magnitude.atGreatest))
                told.push_back(m_voice.say(
                    SENTENCE("solution", "{quantity} is least with {least}, greatest with {greatest}."),
                    "quantity", m_found.size(vector.index, answer), "least", place(magnitude.atLeast),
                    "greatest", place(magnitude.atGreatest)));
            const auto& direction = vector.direction;
            if (vector.directionFound && !vector.magnitudeFound && !direction.any &&
                isTold(direction.atFrom) && isTold(direction.atTo))
                told.push_back(m_voice.say(
                    SENTENCE("solution",
                             "{quantity} begins its range with {least} and ends it with {greatest}."),
                    "quantity", m_found.way(vector.index, answer), "least", place(direction.atFrom),
                    "greatest", place(direction.atTo)));
        }
        return told;
    }

    std::vector<Prose> remarks(const AnswerRange& range) const {
        return rangeRemarks(range, m_sketch, m_voice);
    }

private:
    static bool isTold(const Place& place) { return !place.empty() && place.size() <= kMostInputs; }

    Prose is(Formula symbol, Prose range) const {
        return m_voice.say(SENTENCE("solution", "{quantity} is {range}"), "quantity", std::move(symbol),
                           "range", std::move(range));
    }

    /// "P at 335 N".
    Prose input(const InputAt& at) const {
        const VectorId vector = vectorId(at.index);
        const Formula symbol = m_things.formula(at.isDirection ? directionId(vector) : magnitudeId(vector));
        const Formula value =
            numberWithUnit(at.value, at.isDirection ? shownAngle(at.value, m_sketch)
                                                    : shownForceWithUnit(at.value, m_sketch));
        return m_voice.say(SENTENCE("solution", "{quantity} at {value}"), "quantity", symbol, "value", value);
    }
    Prose place(const Place& place) const {
        std::vector<Prose> items;
        for (const InputAt& at : place)
            items.push_back(input(at));
        return explaining::listed(m_voice, std::move(items));
    }

    const Sketch& m_sketch;
    const Solved& m_solved;
    const Things m_things;
    const FoundSymbols m_found;
    const Voice m_voice;
};

void appendProse(Prose& to, Prose more) {
    appendText(to, " ");
    for (Piece& piece : more.pieces)
        if (const auto* text = std::get_if<std::string>(&piece))
            appendText(to, *text);
        else
            to.pieces.push_back(std::move(piece));
}

} // namespace

void tellRanges(Worked& worked, const Sketch& sketch, const Solved& solved, std::size_t solution,
                const tolerance::Ranges& ranges, const Sentences* sentences) {
    const auto step = std::find_if(worked.steps.begin(), worked.steps.end(),
                                   [](const Step& each) { return each.key == StepKey::answer; });
    if (step == worked.steps.end() || solution >= ranges.size() || ranges.size() != solved.solutions.size())
        return;
    const RangeTeller teller(sketch, solved, sentences);
    std::vector<Prose> told;
    for (std::size_t answer = 0; answer < ranges.size(); ++answer)
        if (auto found = teller.found(ranges[answer], answer)) {
            if (answer == solution)
                appendProse(worked.answer, *found);
            told.push_back(std::move(*found));
        }
    step->conclusion.insert(step->conclusion.begin(), told.begin(), told.end());
    for (const auto& more : {teller.extremes(ranges[solution], solution), teller.remarks(ranges[solution])})
        step->conclusion.insert(step->conclusion.end(), more.begin(), more.end());
}

} // namespace tailpoint
