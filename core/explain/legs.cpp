// SPDX-License-Identifier: MIT
#include "core/explain/legs.h"

#include "core/construct/reduction.h"
#include "core/derive/chain.h"
#include "core/explain/caution.h"
#include "core/explain/limits.h"
#include "core/explain/listed.h"
#include "core/explain/tolerance.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "core/sketch/shown_digits.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {

namespace {

/// Of a degree, and of a sine: what a direction that was computed may be off an axis.
constexpr double kOnAxis = 1e-9;

struct Pull {
    VectorId vector;
    double degrees = 0; ///< counter-clockwise from +x, in (-180, 180]
    double magnitude = 0;
};

std::optional<Pull> pullOf(VectorId vector, const SolvedForce& solved, const Sketch& sketch) {
    if (!solved.direction || solved.magnitude == 0)
        return std::nullopt;
    return Pull{vector, absoluteDegrees(*solved.direction, sketch), solved.magnitude};
}

/// All given: what is given, where the equation holds.
bool holdsThroughout(const Solved& solved) {
    return solved.family == Family::check && (solved.messageCode() == MessageCode::equationHolds ||
                                              solved.messageCode() == MessageCode::equationHoldsShown);
}

std::vector<Pull> pullsOf(const Sketch& sketch, const Solved& solved, std::size_t solution) {
    std::vector<Pull> pulls;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        const SolvedForce force = holdsThroughout(solved) ? asGiven(sketch.forces[i], sketch)
                                                          : solved.solutions[solution].forces[i];
        if (const auto pull = pullOf(forceVector(i), force, sketch))
            pulls.push_back(*pull);
    }
    return pulls;
}

double upwards(const Pull& pull) {
    return std::sin(pull.degrees * std::numbers::pi / 180);
}

/// Straight down (-1), straight up (1), or neither.
int verticalSense(const Pull& pull) {
    return std::abs(std::abs(pull.degrees) - 90) > kOnAxis ? 0 : pull.degrees > 0 ? 1 : -1;
}

/// None of the others acts with the load, and one at least against it.
bool isLoad(const std::vector<Pull>& pulls, std::size_t at, int sense) {
    if (verticalSense(pulls[at]) != sense)
        return false;
    bool isCarried = false;
    for (std::size_t i = 0; i < pulls.size(); ++i) {
        const double against = -sense * upwards(pulls[i]);
        if (i != at && against < -kOnAxis)
            return false;
        isCarried = isCarried || (i != at && against > kOnAxis);
    }
    return isCarried;
}

std::optional<std::size_t> loadAmong(const std::vector<Pull>& pulls) {
    for (const int sense : {-1, 1})
        for (std::size_t i = 0; i < pulls.size(); ++i)
            if (isLoad(pulls, i, sense))
                return i;
    return std::nullopt;
}

/// The sum's opposite balances the forces: it is what they carry.
std::optional<Pull> loadOfSum(const Sketch& sketch, const Solved& solved, std::size_t solution) {
    const SolvedForce sum =
        holdsThroughout(solved) ? asGiven(sketch.sum, sketch) : solved.solutions[solution].sum;
    auto pull = pullOf(kSumVector, sum, sketch);
    if (pull)
        pull->degrees = normalized(pull->degrees + 180, AngleUnit::deg);
    return pull;
}

double inUnit(double degrees, AngleUnit unit) {
    return unit == AngleUnit::deg ? degrees : degrees / 360 * turnIn(unit);
}

/// Counter-clockwise from the load, in (0, 360).
double fromLoad(const Pull& pull, const Pull& load) {
    return std::fmod(pull.degrees - load.degrees + 720, 360);
}

Leg legOf(const Pull& pull, const Pull& load, AngleUnit unit) {
    const double size = std::abs(pull.degrees), flat = size > 90 ? 180 - size : size;
    Leg leg;
    leg.vector = pull.vector;
    leg.fromHorizontal = inUnit(flat, unit);
    leg.fromVertical = inUnit(90 - flat, unit);
    leg.tension = pull.magnitude;
    leg.overLoad = pull.magnitude / load.magnitude;
    leg.isLowAtMiddle = flat < kLowLeg - kOnAxis && flat > kOnAxis; // one that lies flat carries none of it
    leg.isLow = leg.isLowAtMiddle;
    return leg;
}

/// Degrees from the horizontal at the worst end of an arc that the sheet says as its directions.
double leastFromHorizontal(const tolerance::DirectionRange& arc, const Sketch& sketch) {
    const double from = absoluteDegrees(arc.from, sketch),
                 width = (arc.to - arc.from) / turnIn(sketch.angleUnit) * 360,
                 to = sketch.reference.sense == Sense::cw ? from - width : from + width;
    const double low = std::min(from, to), high = std::max(from, to);
    if (arc.any || std::floor(high / 180) >= std::ceil(low / 180))
        return 0;
    const auto flat = [](double degrees) { return std::abs(std::remainder(degrees, 180)); };
    return std::min(flat(low), flat(high));
}

void judgeAtWorst(Legs& legs, const Sketch& sketch, const tolerance::AnswerRange& range) {
    for (Leg& leg : legs.legs) {
        const bool carries = leg.fromHorizontal / turnIn(sketch.angleUnit) * 360 > kOnAxis;
        if (const auto* vector = range.find(indexOf(leg.vector)); vector != nullptr && carries)
            leg.isLow = leg.isLow || leastFromHorizontal(vector->direction, sketch) < kLowLeg - kOnAxis;
    }
}

Legs legsUnder(const Pull& load, std::vector<Pull> pulls, AngleUnit unit) {
    std::sort(pulls.begin(), pulls.end(),
              [&](const Pull& a, const Pull& b) { return fromLoad(a, load) < fromLoad(b, load); });
    Legs out{load.vector, load.magnitude, {}};
    for (std::size_t i = 0; i < pulls.size(); ++i) {
        Leg leg = legOf(pulls[i], load, unit);
        const auto beside = [&](std::size_t other) {
            const double apart = std::abs(fromLoad(pulls[other], load) - fromLoad(pulls[i], load));
            leg.neighbours.push_back({pulls[other].vector, inUnit(apart, unit)});
        };
        if (i > 0)
            beside(i - 1);
        if (i + 1 < pulls.size())
            beside(i + 1);
        out.legs.push_back(std::move(leg));
    }
    return out;
}

Formula shownAngleOf(double angle, const Sketch& sketch) {
    return numberWithUnit(angle, shownAngle(angle, sketch));
}

/// "70.0° to B".
Prose neighbourTold(const Voice& voice, const LegNeighbour& neighbour, const Sketch& sketch,
                    const Things& things) {
    return voice.say(SENTENCE("legs", "{angle} to {leg}"), "angle", shownAngleOf(neighbour.angle, sketch),
                     "leg", things.name(neighbour.vector));
}

/// Cells hold formulas: the words as they are read.
Formula neighboursTold(const Voice& voice, const Leg& leg, const Sketch& sketch, const Things& things) {
    Prose all;
    for (const LegNeighbour& neighbour : leg.neighbours) {
        Prose one = neighbourTold(voice, neighbour, sketch, things);
        all = all.pieces.empty() ? std::move(one)
                                 : voice.say(SENTENCE("list", "{before}, {next}"), "before", std::move(all),
                                             "next", std::move(one));
    }
    return inWords(all.pieces.empty() ? "\u2013" : toText(all));
}

} // namespace

namespace {

std::optional<Legs> legsAtMiddle(const Sketch& sketch, const Solved& solved, std::size_t solution) {
    const auto isOpen = [](const Force& force) { return force.lineOfActionOnly; };
    if ((solution >= solved.solutions.size() && !holdsThroughout(solved)) || isOpen(sketch.sum) ||
        std::any_of(sketch.forces.begin(), sketch.forces.end(), isOpen))
        return std::nullopt;
    std::vector<Pull> pulls = pullsOf(sketch, solved, solution);
    if (!isEquilibrium(sketch)) {
        const auto load = needsCaution(sketch) ? loadOfSum(sketch, solved, solution) : std::nullopt;
        if (!load || pulls.empty())
            return std::nullopt;
        std::vector<Pull> with = pulls;
        with.push_back(*load);
        const int sense = verticalSense(*load);
        return sense != 0 && isLoad(with, pulls.size(), sense)
                   ? std::optional(legsUnder(*load, std::move(pulls), sketch.angleUnit))
                   : std::nullopt;
    }
    const auto at = loadAmong(pulls);
    if (!at)
        return std::nullopt;
    const Pull load = pulls[*at];
    pulls.erase(pulls.begin() + static_cast<std::ptrdiff_t>(*at));
    return legsUnder(load, std::move(pulls), sketch.angleUnit);
}

/// Words that speak of no lift do not make it none.
Prose withCaution(Prose told, const Sketch& sketch) {
    if (!needsCaution(sketch))
        appendText(told, ' ' + std::string(cautionLine()));
    return told;
}

} // namespace

std::optional<Legs> legsOf(const Sketch& sketch, const Solved& solved, std::size_t solution,
                           const tolerance::AnswerRange* range) {
    auto legs = legsAtMiddle(sketch, solved, solution);
    if (legs && range != nullptr)
        judgeAtWorst(*legs, sketch, *range);
    else if (legs && holdsThroughout(solved))
        judgeAtWorst(*legs, sketch, statedAlone(sketch).range);
    return legs;
}

std::optional<Prose> lowLegsTold(const Legs& legs, const Sketch& sketch, const Sentences* sentences) {
    const Voice voice(sentences);
    const Things things(sketch);
    std::vector<Prose> low;
    for (const Leg& leg : legs.legs)
        if (leg.isLow)
            low.push_back(inProse(things.name(leg.vector)));
    if (low.empty())
        return std::nullopt;
    const bool one = low.size() == 1;
    const bool isCertain = std::none_of(legs.legs.begin(), legs.legs.end(),
                                        [](const Leg& leg) { return leg.isLow && !leg.isLowAtMiddle; });
    if (!isCertain)
        return withCaution(
            voice.say(SENTENCE("legs", "Within the tolerances {legs} can stand less than 30° from "
                                       "the horizontal: common codes advise against it. Ask the "
                                       "maker."),
                      "legs", explaining::listed(voice, std::move(low))),
            sketch);
    return withCaution(
        voice.say(one ? SENTENCE("legs", "{legs} stands less than 30° from the horizontal: common codes "
                                         "advise against it. Ask the maker.")
                      : SENTENCE("legs", "{legs} stand less than 30° from the horizontal: common codes "
                                         "advise against it. Ask the maker."),
                  "legs", explaining::listed(voice, std::move(low))),
        sketch);
}

LegsTold told(const Legs& legs, const Sketch& sketch, const Sentences* sentences) {
    const Voice voice(sentences);
    const Things things(sketch);
    LegsTold out;
    out.heading =
        toText(voice.say(SENTENCE("legs", "Legs that carry {load}"), "load", things.name(legs.load)));
    const auto head = [&](const Wording& wording) { return inWords(voice.text(wording)); };
    out.table.hasTotal = false;
    out.table.head = {head(SENTENCE("legs", "leg")), head(SENTENCE("legs", "from horizontal")),
                      head(SENTENCE("legs", "from vertical")), head(SENTENCE("legs", "to its neighbour")),
                      head(SENTENCE("legs", "tension over load"))};
    for (const Leg& leg : legs.legs)
        out.table.rows.push_back({inWords(things.name(leg.vector)), shownAngleOf(leg.fromHorizontal, sketch),
                                  shownAngleOf(leg.fromVertical, sketch),
                                  neighboursTold(voice, leg, sketch, things),
                                  number(leg.overLoad, significant(leg.overLoad, sketch.figures))});
    if (toleranceNote(sketch))
        out.remarks.push_back(voice.say(SENTENCE("legs", "At the middle of the tolerances.")));
    if (auto low = lowLegsTold(legs, sketch, sentences))
        out.remarks.push_back(std::move(*low));
    return out;
}

} // namespace tailpoint
