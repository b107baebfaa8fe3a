// SPDX-License-Identifier: MIT
#include "core/explain/ranges.h"

#include "core/explain/listed.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

using tolerance::AnswerRange;
using tolerance::DirectionRange;
using tolerance::Range;
using tolerance::VectorRange;

enum class Toward { least, greatest };

/// Of a value's size: what rounding may have moved an end outward (tolerance.h), and less than is ever shown.
constexpr double kNoise = 1e-12;
/// An outer bound of a direction that nothing moves may be so much wider than that.
constexpr double kNoiseOfBound = 1e-11;
/// An end so near to zero beside the other one is zero.
constexpr double kNothing = 1e-12;

/// Half to even has taken it to the inner side of `value`.
bool isInward(double shown, double value, Toward end) {
    const double noise = kNoise * std::abs(value);
    return end == Toward::least ? shown > value + noise : shown < value - noise;
}

double outward(double value, int figures, Toward end) {
    const double rounded = roundedToFigures(value, figures);
    if (!isInward(rounded, value, end))
        return rounded;
    const double place = std::pow(10.0, std::floor(std::log10(std::abs(value))) + 1 - figures);
    return roundedToFigures(end == Toward::least ? rounded - place : rounded + place, figures);
}

std::string forceOutward(double value, const Sketch& sketch, Toward end) {
    if (value == 0)
        return shownForce(value, sketch);
    if (sketch.moreAfterOne) // the end that is shown decides
        if (const double finer = outward(value, sketch.figures + 1, end);
            figuresOf(finer, sketch) > sketch.figures)
            return shownForce(finer, sketch);
    return shownForce(outward(value, sketch.figures, end), sketch);
}

std::string angleOutward(double value, const Sketch& sketch, Toward end) {
    const int decimals = shownAngleDecimals(sketch);
    const double rounded = roundedToDecimals(value, decimals);
    // An angle's noise is of a full turn.
    const double noise = kNoise * turnIn(sketch.angleUnit), place = std::pow(10.0, -decimals);
    const bool isInside = end == Toward::least ? rounded > value + noise : rounded < value - noise;
    return shownAngle(!isInside ? rounded : end == Toward::least ? rounded - place : rounded + place, sketch);
}

Formula forceEnd(double value, const Sketch& sketch, Toward end, bool withUnit = true) {
    return number(value, forceOutward(value, sketch, end),
                  withUnit ? std::string(symbolOf(sketch.forceUnit)) : std::string());
}

Formula angleEnd(double value, const Sketch& sketch, Toward end) {
    return numberWithUnit(value, angleOutward(value, sketch, end));
}

struct Ends {
    double least = 0, greatest = 0;
    bool areOne() const { return greatest - least <= kNoise * std::max(std::abs(least), std::abs(greatest)); }
};

std::optional<Ends> endsOf(const Range& range) {
    if (!range.least || !range.greatest)
        return std::nullopt;
    Ends ends{*range.least, *range.greatest};
    if (std::abs(ends.least) < kNothing * std::abs(ends.greatest))
        ends.least = 0;
    if (std::abs(ends.greatest) < kNothing * std::abs(ends.least))
        ends.greatest = 0;
    return ends;
}

bool areOne(const DirectionRange& range, const Sketch& sketch) {
    return range.to - range.from <= (range.marked ? kNoiseOfBound : kNoise) * turnIn(sketch.angleUnit);
}

Prose marked(Prose told, bool isMarked, const Voice& voice) {
    return isMarked ? voice.say(SENTENCE("solution", "{range} (an outer bound)"), "range", std::move(told))
                    : told;
}

Prose boundedOnOneSide(const Range& range, const Sketch& sketch, const Voice& voice) {
    if (range.least)
        return voice.say(SENTENCE("solution", "at least {least}"), "least",
                         forceEnd(*range.least, sketch, Toward::least));
    if (range.greatest)
        return voice.say(SENTENCE("solution", "at most {greatest}"), "greatest",
                         forceEnd(*range.greatest, sketch, Toward::greatest));
    return voice.say(SENTENCE("solution", "unbounded"));
}

Prose oneForce(double value, const Sketch& sketch) {
    return {{numberWithUnit(value, shownForceWithUnit(value, sketch))}};
}

Prose oneAngle(double value, const Sketch& sketch) {
    return {{numberWithUnit(value, shownAngle(value, sketch))}};
}

} // namespace

std::string shownOutward(double value, bool isAngle, bool isGreatest, const Sketch& sketch) {
    const Toward end = isGreatest ? Toward::greatest : Toward::least;
    return isAngle ? angleOutward(value, sketch, end)
                   : forceOutward(value, sketch, end) + ' ' + std::string(symbolOf(sketch.forceUnit));
}

Prose rangeTold(const Range& range, const Sketch& sketch, const Voice& voice) {
    const auto ends = endsOf(range);
    if (!ends)
        return marked(boundedOnOneSide(range, sketch, voice), range.marked, voice);
    if (ends->areOne())
        return oneForce(ends->least, sketch);
    return marked(voice.say(SENTENCE("solution", "{least} to {greatest}"), "least",
                            forceEnd(ends->least, sketch, Toward::least, false), "greatest",
                            forceEnd(ends->greatest, sketch, Toward::greatest)),
                  range.marked, voice);
}

Prose rangeTold(const DirectionRange& range, const Sketch& sketch, const Voice& voice) {
    if (range.any)
        return marked(voice.say(SENTENCE("solution", "any direction")), range.marked, voice);
    if (areOne(range, sketch))
        return oneAngle(range.from, sketch);
    return marked(voice.say(SENTENCE("solution", "{least} to {greatest}"), "least",
                            angleEnd(range.from, sketch, Toward::least), "greatest",
                            angleEnd(range.to, sketch, Toward::greatest)),
                  range.marked, voice);
}

Prose betweenTold(const Range& range, const Sketch& sketch, const Voice& voice) {
    const auto ends = endsOf(range);
    if (!ends && range.least)
        return marked(voice.say(SENTENCE("solution", "at least {least} without an upper bound"), "least",
                                forceEnd(*range.least, sketch, Toward::least)),
                      range.marked, voice);
    if (!ends || ends->areOne())
        return rangeTold(range, sketch, voice);
    return marked(voice.say(SENTENCE("solution", "between {least} and {greatest}"), "least",
                            forceEnd(ends->least, sketch, Toward::least), "greatest",
                            forceEnd(ends->greatest, sketch, Toward::greatest)),
                  range.marked, voice);
}

Prose betweenTold(const DirectionRange& range, const Sketch& sketch, const Voice& voice) {
    if (range.any || areOne(range, sketch))
        return rangeTold(range, sketch, voice);
    return marked(voice.say(SENTENCE("solution", "between {least} and {greatest}"), "least",
                            angleEnd(range.from, sketch, Toward::least), "greatest",
                            angleEnd(range.to, sketch, Toward::greatest)),
                  range.marked, voice);
}

EndsTold endsTold(const Range& range, const Sketch& sketch) {
    EndsTold told;
    told.isMarked = range.marked;
    if (const auto ends = endsOf(range)) {
        told.isOne = ends->areOne();
        told.from =
            told.isOne ? shownForce(ends->least, sketch) : forceOutward(ends->least, sketch, Toward::least);
        told.to = told.isOne ? told.from : forceOutward(ends->greatest, sketch, Toward::greatest);
        return told;
    }
    if (range.least)
        told.from = forceOutward(*range.least, sketch, Toward::least);
    if (range.greatest)
        told.to = forceOutward(*range.greatest, sketch, Toward::greatest);
    return told;
}

EndsTold endsTold(const DirectionRange& range, const Sketch& sketch) {
    if (range.any)
        return {{}, {}, false, range.marked};
    if (areOne(range, sketch))
        return {shownAngle(range.from, sketch), shownAngle(range.from, sketch), true, range.marked};
    return {angleOutward(range.from, sketch, Toward::least), angleOutward(range.to, sketch, Toward::greatest),
            false, range.marked};
}

bool isOneValue(const VectorRange& range, const Sketch& sketch) {
    return endsTold(range.magnitude, sketch).isOne && endsTold(range.direction, sketch).isOne &&
           endsTold(range.x, sketch).isOne && endsTold(range.y, sketch).isOne;
}

std::string rangeUnknown(const Voice& voice) {
    return voice.text(SENTENCE("solution", "range not known"));
}

std::vector<Prose> rangeRemarks(const AnswerRange& range, const Sketch& sketch, const Voice& voice,
                                OuterBounds outer) {
    std::vector<Prose> remarks;
    const Things things(sketch);
    for (const VectorRange& vector : range.vectors)
        if (vector.slack)
            remarks.push_back(
                vector.index == kSumIndex
                    ? voice.say(SENTENCE("solution", "{vector} comes down to zero at one end of its range."),
                                "vector", things.vectorFormula(vectorId(vector.index)))
                    : voice.say(SENTENCE("solution", "{vector} is slack at one end of its range."), "vector",
                                things.vectorFormula(vectorId(vector.index))));
    if (!range.everywhere)
        remarks.push_back(voice.say(SENTENCE("solution", "A part of the tolerances has no such answer: the "
                                                         "range is of the part that has one.")));
    const auto tellsBound = [&](const VectorRange& vector) {
        const auto isTold = [&](const auto& ends) { return ends.marked && !endsTold(ends, sketch).isOne; };
        return (vector.magnitudeFound || vector.directionFound) &&
               (isTold(vector.magnitude) || isTold(vector.direction) || isTold(vector.x) || isTold(vector.y));
    };
    if (outer == OuterBounds::told && std::any_of(range.vectors.begin(), range.vectors.end(), tellsBound))
        remarks.push_back(voice.say(SENTENCE("solution", "An outer bound is wider than the range itself, "
                                                         "which lies within it.")));
    return remarks;
}

} // namespace tailpoint
