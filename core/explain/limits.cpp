#include "core/explain/limits.h"

#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

/// Calls with every vector: its index, as it is stated, as it was solved.
template <class Visit>
void forEachVector(const Sketch& sketch, const Solution& solution, Visit visit) {
    for (std::size_t i = 0; i < sketch.forces.size() && i < solution.forces.size(); ++i)
        visit(static_cast<int>(i), sketch.forces[i], solution.forces[i]);
    if (!isEquilibrium(sketch))
        visit(kSumIndex, sketch.sum, solution.sum);
}

Bound verdictOf(double least, std::optional<double> greatest, double most) {
    if (greatest && *greatest <= most)
        return Bound::within;
    return least > most ? Bound::over : Bound::straddles;
}

/// Least and greatest angle from an axis over an arc; all in the sheet's unit.
struct Off {
    double least = 0, greatest = 0;
};

Off offOver(const tolerance::DirectionRange& arc, double axis, double turn) {
    if (arc.any)
        return {0, turn / 2};
    // the arc's ends, counted from the axis; what the arc passes on its way: the axis, and the way opposite
    const double from = std::remainder(arc.from - axis, turn), to = from + (arc.to - arc.from);
    const auto passes = [&](double at) { return std::ceil((from - at) / turn) * turn + at <= to; };
    const auto off = [&](double at) { return std::abs(std::remainder(at, turn)); };
    return {passes(0) ? 0 : std::min(off(from), off(to)),
            passes(turn / 2) ? turn / 2 : std::max(off(from), off(to))};
}

Prose told(const LimitUse& use, const Sketch& sketch, const Voice& voice) {
    const Force& stated =
        use.index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(use.index)];
    const std::string limit = shownAsTyped(*stated.limit);
    if (!use.utilisation)
        return use.verdict == Bound::over
                   ? voice.say(
                         SENTENCE("limits", "{name} is over its limit of {limit}, without an upper bound."),
                         "name", stated.name, "limit", limit)
                   : voice.say(SENTENCE("limits",
                                        "{name} straddles its limit of {limit}: it has no upper bound "
                                        "within the tolerances."),
                               "name", stated.name, "limit", limit);
    const std::string share = utilisationText(*use.utilisation);
    switch (use.verdict) {
    case Bound::within:
        return voice.say(SENTENCE("limits", "{name} is within its limit: {share} of {limit}."), "name",
                         stated.name, "share", share, "limit", limit);
    case Bound::over:
        return voice.say(SENTENCE("limits", "{name} is over its limit: {share} of {limit}."), "name",
                         stated.name, "share", share, "limit", limit);
    case Bound::straddles:
        break;
    }
    return voice.say(SENTENCE("limits",
                              "{name} straddles its limit: a part of the tolerance is over, at worst "
                              "{share} of {limit}."),
                     "name", stated.name, "share", share, "limit", limit);
}

Prose told(const DirectionUse& use, const Sketch& sketch, const Voice& voice) {
    const Force& stated =
        use.index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(use.index)];
    const std::string within = shownAngle(use.within, sketch, Origin::typed),
                      axis = shownAngle(use.axis, sketch, Origin::typed), off = shownAngle(use.off, sketch);
    switch (use.verdict) {
    case Bound::within:
        return voice.say(SENTENCE("limits", "The direction of {name} is permitted: {off} off {axis} at most, "
                                            "{within} allowed."),
                         "name", stated.name, "off", off, "axis", axis, "within", within);
    case Bound::over:
        return voice.say(SENTENCE("limits",
                                  "The direction of {name} is not permitted: up to {off} off {axis}, "
                                  "{within} allowed."),
                         "name", stated.name, "off", off, "axis", axis, "within", within);
    case Bound::straddles:
        break;
    }
    return voice.say(SENTENCE("limits",
                              "The direction of {name} is not permitted in a part of the tolerance: up "
                              "to {off} off {axis}, {within} allowed."),
                     "name", stated.name, "off", off, "axis", axis, "within", within);
}

} // namespace

std::string_view nameOf(Bound bound) {
    return bound == Bound::within ? "within" : bound == Bound::over ? "over" : "straddles";
}

std::vector<LimitUse> limitsOf(const Sketch& sketch, const Solution& solution,
                               const tolerance::AnswerRange* range) {
    std::vector<LimitUse> all;
    forEachVector(sketch, solution, [&](int index, const Force& stated, const SolvedForce& solved) {
        const auto limit = limitOf(stated, sketch);
        if (!limit)
            return;
        double least = solved.magnitude;
        std::optional<double> greatest = solved.magnitude;
        if (const auto* vector = range != nullptr ? range->find(index) : nullptr) {
            least = vector->magnitude.least.value_or(0);
            greatest = vector->magnitude.greatest;
        }
        LimitUse use{index, verdictOf(least, greatest, *limit), *limit, {}};
        if (greatest)
            use.utilisation = 100 * *greatest / *limit;
        all.push_back(use);
    });
    return all;
}

std::vector<DirectionUse> permittedOf(const Sketch& sketch, const Solution& solution,
                                      const tolerance::AnswerRange* range) {
    const double turn = turnIn(sketch.angleUnit);
    std::vector<DirectionUse> all;
    forEachVector(sketch, solution, [&](int index, const Force& stated, const SolvedForce& solved) {
        if (!stated.permitted || !solved.direction)
            return;
        tolerance::DirectionRange arc;
        arc.from = arc.to = *solved.direction;
        if (const auto* vector = range != nullptr ? range->find(index) : nullptr)
            arc = vector->direction;
        const auto [axis, within] = *stated.permitted;
        const Off off = offOver(arc, axis, turn);
        all.push_back({index, verdictOf(off.least, off.greatest, within), axis, within, off.greatest});
    });
    return all;
}

std::string utilisationText(double percent) {
    return fixedDecimals(std::ceil(percent * 10) / 10, 1) + " %";
}

std::vector<Prose> limitsTold(const Sketch& sketch, const Solution& solution,
                              const tolerance::AnswerRange* range, const Voice& voice) {
    std::vector<Prose> all;
    for (const LimitUse& use : limitsOf(sketch, solution, range))
        all.push_back(told(use, sketch, voice));
    for (const DirectionUse& use : permittedOf(sketch, solution, range))
        all.push_back(told(use, sketch, voice));
    if (!all.empty())
        all.push_back(
            voice.say(SENTENCE("limits", "Limits and permitted directions are typed by the user, not "
                                         "rated data.")));
    return all;
}

void tellLimits(Worked& worked, const Sketch& sketch, const Solved& solved, std::size_t solution,
                const tolerance::Ranges& ranges, const Sentences* sentences) {
    if (solution >= solved.solutions.size() || worked.steps.empty())
        return;
    const auto* range = solution < ranges.size() ? &ranges[solution] : nullptr;
    const auto told = limitsTold(sketch, solved.solutions[solution], range, Voice(sentences));
    const auto answer = std::find_if(worked.steps.begin(), worked.steps.end(),
                                     [](const Step& each) { return each.key == StepKey::answer; });
    Step& step = answer == worked.steps.end() ? worked.steps.back() : *answer;
    step.conclusion.insert(step.conclusion.end(), told.begin(), told.end());
}

} // namespace tailpoint
