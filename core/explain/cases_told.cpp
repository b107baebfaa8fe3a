// SPDX-License-Identifier: MIT
// Cases in words: the tables of a report, a handout and the window.
#include "core/explain/cases.h"

#include "core/explain/listed.h"
#include "core/explain/ranges.h"
#include "core/quantity/decimals.h"
#include "core/sketch/cases.h"
#include "core/sketch/shown.h"
#include "core/sketch/stated.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

const char* const kDash = "\u2013";
/// A difference so much smaller than the values is none.
constexpr double kNoDifference = 1e-12;
constexpr int kMostPlaces = 9; ///< a last place further from the point is told in figures instead

QuantityId idOf(int vector, CasePart part) {
    const VectorId id = vectorId(vector);
    switch (part) {
    case CasePart::magnitude:
        return magnitudeId(id);
    case CasePart::direction:
        return directionId(id);
    case CasePart::x:
        return {What::x, id};
    case CasePart::y:
        break;
    }
    return {What::y, id};
}

std::string withSign(double value, std::string shown) {
    return value > 0 ? '+' + shown : shown;
}

/// To the last place in which the larger of the two is shown, so that it agrees with what is read.
std::string forceDifference(double from, double to, const Sketch& sketch) {
    const double larger = std::max(std::abs(from), std::abs(to)), difference = to - from;
    const std::string unit = ' ' + std::string(symbolOf(sketch.forceUnit));
    if (larger == 0 || std::abs(difference) <= kNoDifference * larger)
        return '0' + unit;
    const int last = static_cast<int>(std::floor(std::log10(larger))) + 1 - figuresOf(larger, sketch);
    if (std::abs(last) > kMostPlaces)
        return withSign(difference, significant(difference, sketch.figures)) + unit;
    const double place = std::pow(10.0, last), rounded = std::round(difference / place) * place;
    if (rounded == 0)
        return '0' + unit;
    return withSign(rounded, last < 0 ? fixedDecimals(rounded, -last) : fixedDecimals(rounded, 0)) + unit;
}

std::string angleDifference(double from, double to, const Sketch& sketch) {
    const double difference = normalized(to - from, sketch.angleUnit);
    if (std::abs(difference) <= kNoDifference * turnIn(sketch.angleUnit))
        return shownAngle(0, sketch);
    return withSign(difference, shownAngle(difference, sketch));
}

class Tables {
public:
    Tables(const Sketch& sketch, const std::vector<CaseState>& states, const Sentences* sentences)
        : m_sketch(sketch), m_states(states), m_sentences(sentences), m_voice(sentences),
          m_things(states.front().sketch), m_envelopes(envelopesOf(states)) {
        for (const CaseState& state : states)
            m_hasRanges = m_hasRanges || !state.ranges.empty();
    }

    std::vector<TableTold> all() {
        std::vector<TableTold> tables{given()};
        for (const Envelope& envelope : m_envelopes)
            if (envelope.answer.value_or(0) == 0 &&
                (envelope.part == CasePart::magnitude || envelope.part == CasePart::direction))
                tables.push_back(found(envelope.vector, envelope.part));
        if (!m_envelopes.empty())
            tables.push_back(envelope());
        tellRest(tables.back().remarks);
        return tables;
    }

private:
    Formula head(const Wording& wording) const { return inWords(m_voice.text(wording)); }
    std::string nameOf(const CaseAnswer& which) const {
        return tailpoint::nameOf(which, m_states, m_sentences);
    }

    TableTold given() const {
        TableTold out;
        out.heading = m_voice.text(SENTENCE("cases", "Cases"));
        out.table.hasTotal = false;
        out.table.head = {head(SENTENCE("cases", "case")), head(SENTENCE("cases", "given differently"))};
        for (const LoadCase& one : m_sketch.cases)
            out.table.rows.push_back({inWords(one.name), inWords(changesTold(one, m_sketch, m_sentences))});
        return out;
    }

    /// Value, where it lies within the tolerances, difference to what is drawn.
    TableTold found(int vector, CasePart part) const {
        TableTold out;
        const Formula symbol = m_things.formula(idOf(vector, part));
        out.heading = toText(m_voice.say(SENTENCE("cases", "{quantity} in each case"), "quantity", symbol));
        out.table.hasTotal = false;
        out.table.head = {head(SENTENCE("cases", "case")), symbol};
        if (m_hasRanges)
            out.table.head.push_back(head(SENTENCE("cases", "within the tolerances")));
        out.table.head.push_back(head(SENTENCE("cases", "difference")));
        for (std::size_t s = 0; s < m_states.size(); ++s)
            for (std::size_t a = 0; a < std::max<std::size_t>(1, m_states[s].solved.solutions.size()); ++a)
                out.table.rows.push_back(row({s, a}, vector, part));
        if (part == CasePart::magnitude)
            tellTurned(out.remarks, vector);
        return out;
    }

    /// Its line leaves the sense open, and in this case it acts in the other one than in the sketch as drawn.
    bool isTurnedIn(const CaseAnswer& which, int vector) const {
        const auto &drawn = m_states.front().solved.solutions, &own = m_states[which.state].solved.solutions;
        return which.answer < drawn.size() && which.answer < own.size() &&
               vectorIn(own[which.answer], vector).turned != vectorIn(drawn[which.answer], vector).turned;
    }

    void tellTurned(std::vector<Prose>& out, int vector) const {
        for (std::size_t s = 0; s < m_states.size(); ++s)
            for (std::size_t a = 0; a < m_states[s].solved.solutions.size(); ++a)
                if (isTurnedIn({s, a}, vector))
                    out.push_back(m_voice.say(
                        SENTENCE("cases", "In {case} {name} acts in the other sense of its line than in the "
                                          "sketch as drawn: what pulls in the one pushes in the other."),
                        "case", nameOf({s, a}), "name", vectorName(vector)));
    }

    std::vector<Formula> row(const CaseAnswer& which, int vector, CasePart part) const {
        const CaseState& state = m_states[which.state];
        if (which.answer >= state.solved.solutions.size()) {
            std::vector<Formula> cells{inWords(state.name), head(SENTENCE("cases", "no answer"))};
            cells.resize(m_hasRanges ? 4 : 3, inWords(kDash));
            return cells;
        }
        const SolvedForce& own = vectorIn(state.solved.solutions[which.answer], vector);
        Formula shown = value(own, part);
        if (part == CasePart::magnitude && isTurnedIn(which, vector))
            shown = inWords(toText(m_voice.say(SENTENCE("cases", "{value}, other sense"), "value", shown)));
        std::vector<Formula> cells{inWords(nameOf(which)), std::move(shown)};
        if (m_hasRanges)
            cells.push_back(inWords(rangeText(state, which.answer, vector, part)));
        cells.push_back(inWords(difference(which, own, vector, part)));
        return cells;
    }

    Formula value(const SolvedForce& vector, CasePart part) const {
        if (part == CasePart::magnitude)
            return numberWithUnit(vector.magnitude, shownForceWithUnit(vector.magnitude, m_sketch));
        return vector.direction ? numberWithUnit(*vector.direction, shownAngle(*vector.direction, m_sketch))
                                : head(SENTENCE("cases", "no direction"));
    }

    std::string rangeText(const CaseState& state, std::size_t answer, int vector, CasePart part) const {
        const auto* range = answer < state.ranges.size() ? state.ranges[answer].find(vector) : nullptr;
        if (!range)
            return kDash;
        return toText(part == CasePart::magnitude ? rangeTold(range->magnitude, m_sketch, m_voice)
                                                  : rangeTold(range->direction, m_sketch, m_voice));
    }

    /// To the answer of the same number of what is drawn.
    std::string difference(const CaseAnswer& which, const SolvedForce& own, int vector, CasePart part) const {
        const auto& drawn = m_states.front().solved.solutions;
        if (which.state == 0 || which.answer >= drawn.size())
            return kDash;
        const SolvedForce& base = vectorIn(drawn[which.answer], vector);
        if (part == CasePart::magnitude) // along the line, in the sense in which it is drawn
            return withMinusSigns(forceDifference(
                base.magnitude, own.turned == base.turned ? own.magnitude : -own.magnitude, m_sketch));
        return base.direction && own.direction
                   ? withMinusSigns(angleDifference(*base.direction, *own.direction, m_sketch))
                   : std::string(kDash);
    }

    TableTold envelope() const {
        TableTold out;
        out.heading = m_voice.text(SENTENCE("cases", "Envelope of the cases"));
        out.table.hasTotal = false;
        out.table.head = {inWords({}), head(SENTENCE("cases", "least, or from")),
                          head(SENTENCE("cases", "in")), head(SENTENCE("cases", "greatest, or to")),
                          head(SENTENCE("cases", "in"))};
        for (const Envelope& one : m_envelopes)
            out.table.rows.push_back(row(one));
        return out;
    }

    std::vector<Formula> row(const Envelope& one) const {
        const Formula symbol = m_things.formula(idOf(one.vector, one.part));
        Formula quantity = symbol;
        if (one.answer)
            quantity =
                inWords(toText(m_voice.say(SENTENCE("cases", "{quantity}, answer {number}"), "quantity",
                                           symbol, "number", std::to_string(*one.answer + 1))));
        if (one.anyDirection)
            return {quantity, head(SENTENCE("cases", "any direction")), inWords(kDash), inWords(kDash),
                    inWords(kDash)};
        return {quantity, end(one, false), inWords(governing(one.least.by)), end(one, true),
                inWords(governing(one.greatest.by))};
    }

    Formula end(const Envelope& one, bool isGreatest) const {
        const EnvelopeEnd& at = isGreatest ? one.greatest : one.least;
        if (at.by.empty())
            return head(SENTENCE("cases", "no direction"));
        if (!at.value)
            return head(SENTENCE("cases", "unbounded"));
        const bool isAngle = one.part == CasePart::direction;
        if (m_hasRanges)
            return numberWithUnit(*at.value, shownOutward(*at.value, isAngle, isGreatest, m_sketch));
        return numberWithUnit(*at.value, isAngle ? shownAngle(*at.value, m_sketch)
                                                 : shownForceWithUnit(*at.value, m_sketch));
    }

    /// "storm", "calm, storm"; "every case" where all have it.
    std::string governing(const std::vector<CaseAnswer>& by) const {
        std::size_t answers = 0, states = 0;
        for (const CaseState& state : m_states) {
            answers += state.solved.solutions.size();
            states += state.solved.solutions.empty() ? 0 : 1;
        }
        if (by.size() > 1 && (by.size() == answers || (areMatched(m_states) && by.size() == states)))
            return m_voice.text(SENTENCE("cases", "every case"));
        std::string names;
        for (const CaseAnswer& which : by)
            names += (names.empty() ? "" : ", ") +
                     (areMatched(m_states) ? m_states[which.state].name : nameOf(which));
        return names.empty() ? kDash : names;
    }

    /// The same within a sentence: "in storm", "in the sketch as drawn".
    std::string whereGoverned(const std::vector<CaseAnswer>& by) const {
        const std::string names = governing(by);
        return names == kAsDrawn ? m_voice.text(SENTENCE("cases", "the sketch as drawn")) : names;
    }

    void tellRest(std::vector<Prose>& out) const {
        for (const WorstUse& worst : worstUses(m_states))
            out.push_back(std::visit(
                [&](const auto& use) { return marked(use.verdict, told(use, worst.by)); }, worst.use));
        for (const CaseState& state : m_states)
            tellState(out, state);
        if (m_envelopes.empty())
            return;
        out.push_back(
            m_voice.say(SENTENCE("cases", "The sketch as drawn counts as a case of the envelope.")));
        if (m_hasRanges)
            out.push_back(
                m_voice.say(SENTENCE("cases", "Where values have tolerances the envelope goes to the "
                                              "ends of the ranges.")));
        tellMatching(out);
    }

    void tellMatching(std::vector<Prose>& out) const {
        const bool hasTwo = std::any_of(m_states.begin(), m_states.end(), [](const CaseState& state) {
            return state.solved.solutions.size() > 1;
        });
        if (areMatched(m_states))
            out.push_back(m_voice.say(SENTENCE("cases", "Of two answers each has an envelope of its own: the "
                                                        "cases' answers are matched by their order.")));
        else if (hasTwo)
            out.push_back(
                m_voice.say(SENTENCE("cases", "Not every case has two answers: the envelope is over "
                                              "all answers of all cases.")));
    }

    void tellState(std::vector<Prose>& out, const CaseState& state) const {
        if (state.solved.solutions.empty())
            out.push_back(m_voice.say(
                SENTENCE("cases", "The case '{case}' has nothing that counts in the envelope. {why}"), "case",
                state.name, "why", proseOf(state.solved.finding(), m_things)));
        for (const tolerance::AnswerRange& range : state.ranges)
            if (!range.everywhere) {
                out.push_back(
                    m_voice.say(SENTENCE("cases", "In the case '{case}' a part of the tolerances has "
                                                  "no answer: the range is of the part that has one."),
                                "case", state.name));
                return;
            }
    }

    Prose told(const LimitUse& use, const std::vector<CaseAnswer>& by) const {
        const std::string& name = vectorName(use.index);
        const std::string limit = shownAsTyped(*vectorOf(use.index).limit),
                          share = use.utilisation ? utilisationText(*use.utilisation)
                                                  : m_voice.text(SENTENCE("cases", "no upper bound"));
        switch (use.verdict) {
        case Bound::within:
            return m_voice.say(isJudgedInAll(vectorOf(use.index).magnitude.value.has_value())
                                   ? SENTENCE("cases", "{name} is within its limit in every case; most in "
                                                       "{case}: {share} of {limit}.")
                                   : SENTENCE("cases", "{name} is within its limit in every case that has an "
                                                       "answer; most in {case}: {share} of {limit}."),
                               "name", name, "case", whereGoverned(by), "share", share, "limit", limit);
        case Bound::over:
            return m_voice.say(SENTENCE("cases", "{name} is over its limit, most in {case}: {share} of "
                                                 "{limit}."),
                               "name", name, "case", whereGoverned(by), "share", share, "limit", limit);
        case Bound::straddles:
            break;
        }
        return m_voice.say(SENTENCE("cases",
                                    "{name} straddles its limit, a part of the tolerance is over; most "
                                    "in {case}: {share} of {limit}."),
                           "name", name, "case", whereGoverned(by), "share", share, "limit", limit);
    }

    Prose told(const DirectionUse& use, const std::vector<CaseAnswer>& by) const {
        const std::string off = withMinusSigns(shownAngle(use.off, m_sketch)),
                          axis = withMinusSigns(shownAngle(use.axis, m_sketch, Origin::typed)),
                          within = shownAngle(use.within, m_sketch, Origin::typed);
        return use.verdict == Bound::within
                   ? m_voice.say(isJudgedInAll(!isDirectionAsked(use.index))
                                     ? SENTENCE("cases",
                                                "The direction of {name} is permitted in every case; "
                                                "farthest in {case}: {off} off {axis}, {within} "
                                                "allowed.")
                                     : SENTENCE("cases", "The direction of {name} is permitted in every case "
                                                         "that has an answer; farthest in {case}: {off} off "
                                                         "{axis}, {within} allowed."),
                                 "name", vectorName(use.index), "case", whereGoverned(by), "off", off, "axis",
                                 axis, "within", within)
                   : m_voice.say(SENTENCE("cases", "The direction of {name} is not permitted, or not in all "
                                                   "of the tolerance; farthest in {case}: {off} off {axis}, "
                                                   "{within} allowed."),
                                 "name", vectorName(use.index), "case", whereGoverned(by), "off", off, "axis",
                                 axis, "within", within);
    }

    /// What is given is judged in a case without an answer, too.
    bool isJudgedInAll(bool isGiven) const {
        return isGiven || std::none_of(m_states.begin(), m_states.end(),
                                       [](const CaseState& state) { return state.solved.solutions.empty(); });
    }
    bool isDirectionAsked(int vector) const { return !unitVector(vectorOf(vector).direction, m_sketch); }
    const Force& vectorOf(int vector) const {
        return vector == kSumIndex ? m_sketch.sum : m_sketch.forces[static_cast<std::size_t>(vector)];
    }
    const std::string& vectorName(int vector) const { return vectorOf(vector).name; }

    const Sketch& m_sketch;
    const std::vector<CaseState>& m_states;
    const Sentences* m_sentences;
    Voice m_voice;
    Things m_things;
    std::vector<Envelope> m_envelopes;
    bool m_hasRanges = false;
};

} // namespace

std::string nameOf(const CaseAnswer& which, const std::vector<CaseState>& states,
                   const Sentences* sentences) {
    const CaseState& state = states[which.state];
    return state.solved.solutions.size() < 2
               ? state.name
               : toText(Voice(sentences).say(SENTENCE("cases", "{case}, answer {number}"), "case", state.name,
                                             "number", std::to_string(which.answer + 1)));
}

std::string changesTold(const LoadCase& one, const Sketch& sketch, const Sentences* sentences) {
    const Voice voice(sentences);
    std::string all;
    for (const CaseChange& change : one.changes) {
        const std::string magnitude = change.magnitude
                                          ? withMinusSigns(statedMagnitude(*change.magnitude, sketch))
                                          : "",
                          direction = change.direction
                                          ? withMinusSigns(statedDirection(*change.direction, sketch))
                                          : "";
        const Prose told = direction.empty() ? voice.say(SENTENCE("cases", "{name} = {magnitude}"), "name",
                                                         change.of, "magnitude", magnitude)
                           : magnitude.empty()
                               ? voice.say(SENTENCE("cases", "{name} at {direction}"), "name", change.of,
                                           "direction", direction)
                               : voice.say(SENTENCE("cases", "{name} = {magnitude} at {direction}"), "name",
                                           change.of, "magnitude", magnitude, "direction", direction);
        all += (all.empty() ? "" : "; ") + toText(told);
    }
    return all.empty() ? kDash : all;
}

std::vector<TableTold> casesTold(const Sketch& sketch, const std::vector<CaseState>& states,
                                 const Sentences* sentences) {
    return states.empty() ? std::vector<TableTold>() : Tables(sketch, states, sentences).all();
}

} // namespace tailpoint
