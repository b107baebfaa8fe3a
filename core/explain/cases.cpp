// SPDX-License-Identifier: MIT
#include "core/explain/cases.h"

#include "core/sketch/cases.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

/// Ends are the same within so much of the larger, or of a turn: what rounding on the way may make of it.
constexpr double kSame = 1e-12;

bool isSame(double a, double b) {
    return std::abs(a - b) <= kSame * std::max(std::abs(a), std::abs(b));
}

const tolerance::AnswerRange* rangeOf(const CaseState& state, std::size_t answer) {
    return answer < state.ranges.size() ? &state.ranges[answer] : nullptr;
}

/// What a quantity can be in one answer.
struct Extent {
    std::optional<double> least, greatest;
    bool marked = false;
};

double valueOf(const SolvedForce& vector, CasePart part) {
    return part == CasePart::x   ? vector.vector.x()
           : part == CasePart::y ? vector.vector.y()
                                 : vector.magnitude;
}

Extent extentOf(const CaseState& state, std::size_t answer, int vector, CasePart part) {
    const auto* all = rangeOf(state, answer);
    const auto* range = all ? all->find(vector) : nullptr;
    if (!range) {
        const double value = valueOf(vectorIn(state.solved.solutions[answer], vector), part);
        return {value, value, false};
    }
    const tolerance::Range& own = part == CasePart::x   ? range->x
                                  : part == CasePart::y ? range->y
                                                        : range->magnitude;
    return {own.least, own.greatest, own.marked};
}

/// Keeps the lower end of two; an end without a value lies below all.
void lower(EnvelopeEnd& end, std::optional<double> value, const CaseAnswer& by) {
    const bool isFirst = end.by.empty();
    const bool ties = !isFirst && (value && end.value ? isSame(*value, *end.value) : !value && !end.value);
    if (!ties && !isFirst && (!end.value || (value && *value > *end.value)))
        return;
    if (!ties)
        end = {value, {}};
    end.by.push_back(by);
}

void higher(EnvelopeEnd& end, std::optional<double> value, const CaseAnswer& by) {
    EnvelopeEnd turned{end.value ? std::optional(-*end.value) : std::nullopt, std::move(end.by)};
    lower(turned, value ? std::optional(-*value) : std::nullopt, by);
    end = {turned.value ? std::optional(0.0 - *turned.value) : std::nullopt, std::move(turned.by)};
}

struct Arc {
    double from = 0, to = 0; ///< from in (-half turn, half turn], to up to a turn above
    CaseAnswer by;
};

std::optional<tolerance::DirectionRange> arcOf(const CaseState& state, const CaseAnswer& which, int vector) {
    const auto& direction = vectorIn(state.solved.solutions[which.answer], vector).direction;
    if (!direction)
        return std::nullopt;
    const auto* all = rangeOf(state, which.answer);
    if (const auto* range = all ? all->find(vector) : nullptr)
        return range->direction;
    tolerance::DirectionRange own;
    own.from = own.to = *direction;
    return own;
}

/// The smallest arc that holds all of them is what the widest gap between them leaves.
void encircle(Envelope& envelope, std::vector<Arc> arcs, double turn) {
    std::stable_sort(arcs.begin(), arcs.end(), [](const Arc& a, const Arc& b) { return a.from < b.from; });
    double end = arcs.front().to;
    for (const Arc& arc : arcs)
        end = std::max(end, arc.to);
    end -= turn; // what wraps round covers the beginning
    double widest = 0, from = 0, to = 0;
    for (const Arc& arc : arcs) {
        if (arc.from - end > widest + kSame * turn) {
            widest = arc.from - end;
            from = arc.from;
            to = end + turn;
        }
        end = std::max(end, arc.to);
    }
    envelope.anyDirection = widest == 0;
    if (envelope.anyDirection)
        return;
    envelope.least.value = from;
    envelope.greatest.value = std::max(from, to > from + turn ? to - turn : to);
    const auto meets = [&](double a, double b) {
        return std::abs(std::remainder(a - b, turn)) <= kSame * turn;
    };
    for (const Arc& arc : arcs) {
        if (meets(arc.from, from))
            envelope.least.by.push_back(arc.by);
        if (meets(arc.to, to))
            envelope.greatest.by.push_back(arc.by);
    }
}

Envelope directionEnvelope(const std::vector<CaseState>& states, const std::vector<CaseAnswer>& answers,
                           int vector) {
    Envelope envelope{vector, CasePart::direction, {}, {}, {}, false, false};
    const AngleUnit unit = states.front().sketch.angleUnit;
    std::vector<Arc> arcs;
    for (const CaseAnswer& which : answers) {
        const auto arc = arcOf(states[which.state], which, vector);
        if (!arc)
            continue;
        envelope.marked = envelope.marked || arc->marked;
        if (arc->any)
            envelope.anyDirection = true;
        const double from = normalized(arc->from, unit);
        arcs.push_back({from, from + (arc->to - arc->from), which});
    }
    if (!envelope.anyDirection && !arcs.empty())
        encircle(envelope, std::move(arcs), turnIn(unit));
    return envelope;
}

Envelope envelopeOf(const std::vector<CaseState>& states, const std::vector<CaseAnswer>& answers, int vector,
                    CasePart part) {
    if (part == CasePart::direction)
        return directionEnvelope(states, answers, vector);
    Envelope envelope{vector, part, {}, {}, {}, false, false};
    for (const CaseAnswer& which : answers) {
        const Extent extent = extentOf(states[which.state], which.answer, vector, part);
        lower(envelope.least, extent.least, which);
        higher(envelope.greatest, extent.greatest, which);
        envelope.marked = envelope.marked || extent.marked;
    }
    return envelope;
}

/// All answers, or those with one number.
std::vector<CaseAnswer> answersOf(const std::vector<CaseState>& states,
                                  std::optional<std::size_t> number = {}) {
    std::vector<CaseAnswer> answers;
    for (std::size_t s = 0; s < states.size(); ++s)
        for (std::size_t a = 0; a < states[s].solved.solutions.size(); ++a)
            if (!number || a == *number)
                answers.push_back({s, a});
    return answers;
}

/// Calls `take(vector, part)` for what is found.
template <class Take>
void forEachFound(const Solution& solution, Take take) {
    const auto visit = [&](const SolvedForce& vector, int index) {
        if (vector.magnitudeFound)
            take(index, CasePart::magnitude);
        if (vector.directionFound)
            take(index, CasePart::direction);
        if (vector.magnitudeFound || vector.directionFound) {
            take(index, CasePart::x);
            take(index, CasePart::y);
        }
    };
    for (std::size_t i = 0; i < solution.forces.size(); ++i)
        visit(solution.forces[i], static_cast<int>(i));
    visit(solution.sum, kSumIndex);
}

/// How bad a use is, by what it is measured with: per cent of the limit, angle off the axis.
double badnessOf(const LimitUse& use) {
    return use.utilisation.value_or(HUGE_VAL);
}
double badnessOf(const DirectionUse& use) {
    return use.off;
}

Bound graver(Bound a, Bound b) {
    if (a == Bound::over || b == Bound::over)
        return Bound::over;
    return a == Bound::straddles || b == Bound::straddles ? Bound::straddles : Bound::within;
}

/// The verdict is the gravest of all, whichever case goes farthest.
template <class Use>
void addWorst(std::vector<WorstUse>& all, const Use& use, const CaseAnswer& by) {
    const auto known = std::find_if(all.begin(), all.end(), [&](const WorstUse& worst) {
        const Use* own = std::get_if<Use>(&worst.use);
        return own && own->index == use.index;
    });
    if (known == all.end()) {
        all.push_back({use, {by}});
        return;
    }
    const Use worst = std::get<Use>(known->use);
    const double before = badnessOf(worst), now = badnessOf(use);
    if (now == before || isSame(now, before))
        known->by.push_back(by);
    else if (now > before)
        *known = {use, {by}};
    std::get<Use>(known->use).verdict = graver(worst.verdict, use.verdict);
}

} // namespace

std::string_view nameOf(CasePart part) {
    constexpr std::string_view kNames[] = {"magnitude", "direction", "x", "y"};
    return kNames[static_cast<std::size_t>(part)];
}

std::vector<CaseState> caseStates(const Sketch& sketch) {
    std::vector<CaseState> states;
    if (sketch.cases.empty())
        return states;
    const auto add = [&](std::string_view name, Sketch state) {
        Solved solved = solve(state);
        states.push_back({std::string(name), std::move(state), std::move(solved), {}});
    };
    add(kAsDrawn, asDrawn(sketch));
    for (std::size_t i = 0; i < sketch.cases.size(); ++i)
        add(sketch.cases[i].name, inCase(sketch, i));
    return states;
}

std::vector<CaseState> withRanges(std::vector<CaseState> states, const tolerance::Effort& effort) {
    for (CaseState& state : states)
        state.ranges = tolerance::boxOf(state.sketch).hasTolerance
                           ? tolerance::rangesOf(state.sketch, state.solved, effort)
                           : tolerance::Ranges{};
    return states;
}

bool areMatched(const std::vector<CaseState>& states) {
    bool hasTwo = false;
    for (const CaseState& state : states) {
        const std::size_t count = state.solved.solutions.size();
        if (count == 1)
            return false;
        hasTwo = hasTwo || count == 2;
    }
    return hasTwo;
}

std::vector<Envelope> envelopesOf(const std::vector<CaseState>& states) {
    std::vector<Envelope> envelopes;
    const auto first = std::find_if(states.begin(), states.end(),
                                    [](const CaseState& state) { return !state.solved.solutions.empty(); });
    if (first == states.end())
        return envelopes;
    const auto add = [&](std::optional<std::size_t> number) {
        const std::vector<CaseAnswer> answers = answersOf(states, number);
        forEachFound(first->solved.solutions.front(), [&](int vector, CasePart part) {
            envelopes.push_back(envelopeOf(states, answers, vector, part));
            envelopes.back().answer = number;
        });
    };
    if (!areMatched(states)) {
        add({});
        return envelopes;
    }
    add(0);
    add(1);
    return envelopes;
}

std::vector<WorstUse> worstUses(const std::vector<CaseState>& states) {
    std::vector<WorstUse> all;
    for (std::size_t s = 0; s < states.size(); ++s) {
        const CaseState& state = states[s];
        if (!state.solved.solutions.empty())
            continue;
        const StatedAlone alone = statedAlone(state.sketch); // it binds without an answer, too
        for (const LimitUse& use : limitsOf(state.sketch, alone.solution, &alone.range))
            addWorst(all, use, {s, 0});
        for (const DirectionUse& use : permittedOf(state.sketch, alone.solution, &alone.range))
            addWorst(all, use, {s, 0});
    }
    for (const CaseAnswer& which : answersOf(states)) {
        const CaseState& state = states[which.state];
        const Solution& solution = state.solved.solutions[which.answer];
        for (const LimitUse& use : limitsOf(state.sketch, solution, rangeOf(state, which.answer)))
            addWorst(all, use, which);
        for (const DirectionUse& use : permittedOf(state.sketch, solution, rangeOf(state, which.answer)))
            addWorst(all, use, which);
    }
    return all;
}

} // namespace tailpoint
