// SPDX-License-Identifier: MIT
#include "core/explain/limits.h"

#include "core/derive/chain.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

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

/// An end of a range beside what it may be: 9.9 + 0.1 is 10 as it was typed, not the bits above it.
constexpr double kTie = 1e-12;

double atMost(double end, double most) {
    return end > most && end <= most * (1 + kTie) ? most : end;
}

Bound verdictOf(double least, std::optional<double> greatest, double most) {
    if (greatest && *greatest <= most)
        return Bound::within;
    return least > most ? Bound::over : Bound::straddles;
}

void addGiven(StatedAlone& alone, const Force& force, const tolerance::BoxVector& box, const Sketch& sketch) {
    SolvedForce given = asGiven(force, sketch);
    if (!box.magnitudeGiven)
        given.magnitude = std::numeric_limits<double>::quiet_NaN();
    if (!box.directionGiven || (box.lineOfActionOnly && !box.magnitudeGiven))
        given.direction.reset();
    tolerance::VectorRange range;
    range.index = box.index;
    range.magnitude.least = static_cast<double>(box.magnitude.least);
    range.magnitude.greatest = static_cast<double>(box.magnitude.greatest);
    range.direction.any = box.direction.isWholeTurn();
    if (given.direction && !range.direction.any) {
        const double perRadian = turnIn(sketch.angleUnit) / (2 * std::numbers::pi);
        const long double before = box.direction.nominal - box.direction.from,
                          behind = box.direction.to - box.direction.nominal;
        const bool clockwise = sketch.reference.sense == Sense::cw;
        range.direction.from =
            *given.direction - static_cast<double>(clockwise ? behind : before) * perRadian;
        range.direction.to = *given.direction + static_cast<double>(clockwise ? before : behind) * perRadian;
    }
    alone.range.vectors.push_back(std::move(range));
    if (box.index == kSumIndex)
        alone.solution.sum = std::move(given);
    else
        alone.solution.forces.push_back(std::move(given));
}

bool statesBounds(const Sketch& sketch) {
    const auto isBound = [](const Force& force) { return force.limit || force.permitted; };
    return isBound(sketch.sum) || std::any_of(sketch.forces.begin(), sketch.forces.end(), isBound);
}

/// Calls with the answer and its range, or with what is given; that is not looked for in vain, since a figure
/// asks for every vector.
template <class Uses>
auto withAnswer(const Sketch& sketch, const Solved& solved, std::size_t answer,
                const tolerance::Ranges& ranges, Uses uses) {
    if (answer < solved.solutions.size())
        return uses(solved.solutions[answer], answer < ranges.size() ? &ranges[answer] : nullptr);
    const StatedAlone alone = statesBounds(sketch) ? statedAlone(sketch) : StatedAlone();
    return uses(alone.solution, &alone.range);
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

/// The sheet with as many decimals of angles as this one was stated with; its own for one that was computed.
Sketch withDecimalsOf(double angle, const Sketch& sketch) {
    constexpr int kMostTyped = 4;
    Sketch finer = sketch;
    for (; finer.angleDecimals <= kMostTyped; ++finer.angleDecimals)
        if (std::abs(roundedAsShown(angle, finer) - angle) <= 1e-12 * std::abs(angle))
            return finer;
    return sketch;
}

} // namespace

std::string_view nameOf(Bound bound) {
    return bound == Bound::within ? "within" : bound == Bound::over ? "over" : "straddles";
}

std::string marked(Bound verdict, const std::string& words) {
    return verdict == Bound::within ? words : std::string(kPassedMark) + ' ' + words;
}

Prose marked(Bound verdict, Prose told) {
    if (verdict == Bound::within)
        return told;
    Prose all = inProse(marked(verdict, std::string()));
    for (Piece& piece : told.pieces)
        all.pieces.push_back(std::move(piece));
    return all;
}

std::vector<LimitUse> limitsOf(const Sketch& sketch, const Solution& solution,
                               const tolerance::AnswerRange* range) {
    std::vector<LimitUse> all;
    forEachVector(sketch, solution, [&](int index, const Force& stated, const SolvedForce& solved) {
        const auto limit = limitOf(stated, sketch);
        if (!limit || std::isnan(solved.magnitude))
            return;
        double least = solved.magnitude;
        std::optional<double> greatest = solved.magnitude;
        if (const auto* vector = range != nullptr ? range->find(index) : nullptr) {
            least = atMost(vector->magnitude.least.value_or(0), *limit);
            if (greatest = vector->magnitude.greatest; greatest)
                greatest = atMost(*greatest, *limit);
        }
        // divided first: what is at its limit uses 100 per cent of it to the last bit
        LimitUse use{index, verdictOf(least, greatest, *limit), *limit, {}, 100 * (least / *limit)};
        if (greatest)
            use.utilisation = 100 * (*greatest / *limit);
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
        Off off = offOver(arc, axis, turn);
        if (range != nullptr)
            off = {atMost(off.least, within), atMost(off.greatest, within)};
        all.push_back(
            {index, verdictOf(off.least, off.greatest, within), axis, within, off.greatest, off.least});
    });
    return all;
}

StatedAlone statedAlone(const Sketch& sketch) {
    StatedAlone alone;
    for (const tolerance::BoxVector& vector : tolerance::boxOf(sketch).vectors)
        addGiven(alone,
                 vector.index == kSumIndex ? sketch.sum
                                           : sketch.forces[static_cast<std::size_t>(vector.index)],
                 vector, sketch);
    return alone;
}

std::vector<LimitUse> limitsOf(const Sketch& sketch, const Solved& solved, std::size_t answer,
                               const tolerance::Ranges& ranges) {
    return withAnswer(sketch, solved, answer, ranges, [&](const auto& solution, const auto* range) {
        return limitsOf(sketch, solution, range);
    });
}

std::vector<DirectionUse> permittedOf(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                      const tolerance::Ranges& ranges) {
    return withAnswer(sketch, solved, answer, ranges, [&](const auto& solution, const auto* range) {
        return permittedOf(sketch, solution, range);
    });
}

std::string utilisationText(double percent) {
    constexpr double kNoise = 1e-13; // what computing a tenth may have added; never taken off at the limit
    const double nearest = std::round(percent * 10) / 10;
    const bool isTenth = nearest != 100 && std::abs(percent - nearest) <= kNoise * percent;
    return fixedDecimals(isTenth ? nearest : std::ceil(percent * 10) / 10, 1) + " %";
}

std::string permittedText(double angle, const Sketch& sketch) {
    return shownAngle(angle, withDecimalsOf(angle, sketch), Origin::typed);
}

OffText offText(const DirectionUse& use, const Sketch& sketch) {
    Sketch finer = withDecimalsOf(use.within, sketch);
    const auto shown = [&](double angle) { return roundedToDecimals(angle, shownAngleDecimals(finer)); };
    const bool isOver = use.off > use.within;
    while (finer.angleDecimals < kMostAngleDecimals && (shown(use.off) > shown(use.within)) != isOver)
        ++finer.angleDecimals;
    return {shownAngle(use.off, finer), shownAngle(use.within, finer, Origin::typed)};
}

std::string shareText(const LimitUse& use, const Voice& voice) {
    return use.utilisation ? utilisationText(*use.utilisation)
                           : voice.text(SENTENCE("limits", "no upper bound"));
}

Prose limitTold(const LimitUse& use, const Sketch& sketch, const Voice& voice) {
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

Prose limitTold(const DirectionUse& use, const Sketch& sketch, const Voice& voice) {
    const Force& stated =
        use.index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(use.index)];
    const auto [off, within] = offText(use, sketch);
    const std::string axis = permittedText(use.axis, sketch);
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

Prose limitsRemark(const Voice& voice) {
    return voice.say(SENTENCE("limits", "Limits and permitted directions are typed by the user, not rated "
                                        "data."));
}

std::vector<Prose> limitsTold(const Sketch& sketch, const Solution& solution,
                              const tolerance::AnswerRange* range, const Voice& voice) {
    std::vector<Prose> all;
    for (const LimitUse& use : limitsOf(sketch, solution, range))
        all.push_back(marked(use.verdict, limitTold(use, sketch, voice)));
    for (const DirectionUse& use : permittedOf(sketch, solution, range))
        all.push_back(marked(use.verdict, limitTold(use, sketch, voice)));
    if (!all.empty())
        all.push_back(limitsRemark(voice));
    return all;
}

void tellLimits(Worked& worked, const Sketch& sketch, const Solved& solved, std::size_t solution,
                const tolerance::Ranges& ranges, const Sentences* sentences) {
    if (worked.steps.empty())
        return;
    const auto told = withAnswer(sketch, solved, solution, ranges, [&](const auto& one, const auto* range) {
        return limitsTold(sketch, one, range, Voice(sentences));
    });
    const auto answer = std::find_if(worked.steps.begin(), worked.steps.end(),
                                     [](const Step& each) { return each.key == StepKey::answer; });
    Step& step = answer == worked.steps.end() ? worked.steps.back() : *answer;
    step.conclusion.insert(step.conclusion.end(), told.begin(), told.end());
}

} // namespace tailpoint
