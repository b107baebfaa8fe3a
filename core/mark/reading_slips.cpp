// SPDX-License-Identifier: MIT
// The question read wrongly: another sketch, solved as ever.
#include "core/mark/rewriting.h"

#include <algorithm>

namespace tailpoint::marking::reading_slips {

namespace {

using marking::vectorOf;

Force& vectorOf(Sketch& sketch, VectorId vector) {
    return vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
}
std::vector<VectorId> fullyGiven(const Sketch& sketch) {
    std::vector<VectorId> all;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        if (isGiven(sketch.forces[i].magnitude) && isGiven(sketch.forces[i].direction))
            all.push_back(forceVector(i));
    return all;
}

using ChangeOfDirection = std::optional<Direction> (*)(const Direction&, const Sketch&);

/// Each direction read otherwise.
std::vector<Reading> eachDirection(const Question& question, ChangeOfDirection change) {
    std::vector<Reading> all;
    for (const VectorId vector : vectorsOf(question.sketch()))
        if (const auto other = change(vectorOf(question.sketch(), vector).direction, question.sketch())) {
            Reading& reading = all.emplace_back(Reading{question.sketch(), vector, What::direction});
            vectorOf(reading.sketch, vector).direction = *other;
        }
    return all;
}

/// The same, and all of them at once.
std::vector<Reading> eachAndAll(const Question& question, ChangeOfDirection change) {
    auto all = eachDirection(question, change);
    if (all.size() < 2)
        return all;
    Reading whole{question.sketch(), kNobody, What::direction};
    for (const Reading& one : all)
        vectorOf(whole.sketch, one.of).direction = vectorOf(one.sketch, one.of).direction;
    all.push_back(std::move(whole));
    return all;
}

Direction angled(double angle) {
    Direction direction;
    direction.form = AngleForm{angle};
    return direction;
}

double degreesIn(double degrees, const Sketch& sketch) {
    return convert(degrees, AngleUnit::deg, sketch.angleUnit);
}

/// Counter-clockwise from +x, as the sheet says it.
Direction fromX(double degrees, const Sketch& sketch) {
    const double axis = sketch.reference.axisDegrees;
    return angled(degreesIn(
        normalized(sketch.reference.sense == Sense::ccw ? degrees - axis : axis - degrees, AngleUnit::deg),
        sketch));
}

std::optional<Direction> exchangedSlope(const Direction& given, const Sketch&) {
    const auto* slope = std::get_if<SlopeForm>(&given.form);
    if (!slope || slope->run == 0 || slope->rise == 0 || std::abs(slope->run) == std::abs(slope->rise))
        return std::nullopt;
    Direction other;
    other.form = SlopeForm{std::copysign(slope->rise, slope->run), std::copysign(slope->run, slope->rise)};
    return other;
}

std::optional<Direction> withSignTurned(const Direction& given, const Sketch&) {
    const auto* angle = std::get_if<AngleForm>(&given.form);
    return angle && angle->value != 0 ? std::optional(angled(-angle->value)) : std::nullopt;
}

std::optional<Direction> fromOtherAxis(const Direction& given, const Sketch& sketch) {
    const auto* angle = std::get_if<AngleForm>(&given.form);
    return angle ? std::optional(angled(turnIn(sketch.angleUnit) / 4 - angle->value)) : std::nullopt;
}

std::optional<Direction> turnedRound(const Direction& given, const Sketch& sketch) {
    if (const auto* angle = std::get_if<AngleForm>(&given.form))
        return angled(normalized(angle->value + turnIn(sketch.angleUnit) / 2, sketch.angleUnit));
    Direction other = given;
    if (auto* slope = std::get_if<SlopeForm>(&other.form))
        *slope = {-slope->run, -slope->rise};
    else if (auto* bearing = std::get_if<BearingForm>(&other.form))
        *bearing = {bearing->from == 'N' ? 'S' : 'N', bearing->degrees, bearing->toward == 'E' ? 'W' : 'E'};
    else
        return std::nullopt;
    return other;
}

std::optional<Direction> bearingFromX(const Direction& given, const Sketch& sketch) {
    const auto* bearing = std::get_if<BearingForm>(&given.form);
    if (!bearing)
        return std::nullopt;
    const double quadrant = bearing->toward == 'E' ? bearing->degrees : 180 - bearing->degrees;
    return fromX(bearing->from == 'N' ? quadrant : -quadrant, sketch);
}

std::optional<Direction> bearingBare(const Direction& given, const Sketch& sketch) {
    const auto* bearing = std::get_if<BearingForm>(&given.form);
    return bearing ? std::optional(angled(degreesIn(bearing->degrees, sketch))) : std::nullopt;
}

void scale(Force& force, double factor) {
    force.magnitude.value = *force.magnitude.value * factor;
    force.magnitude.typed.reset();
}

bool isMissingForce(const Question& question) {
    return question.own.solved.family == Family::closePolygon && isGiven(question.sketch().sum.magnitude);
}

/// Of given masses whose weight is meant.
std::vector<Reading> weights(const Question& question, double (*newtons)(double kilogrammes)) {
    Reading reading{question.sketch(), kNobody, What::magnitude};
    Sketch& sketch = reading.sketch;
    bool any = false;
    for (const VectorId vector : vectorsOf(sketch)) {
        Force& force = vectorOf(sketch, vector);
        const auto mass = massOf(force.magnitude, sketch);
        if (!mass)
            continue;
        force.magnitude.value = convert(newtons(*mass), ForceUnit::N, sketch.forceUnit);
        force.magnitude.typed.reset();
        reading.of = vector;
        any = true;
    }
    return any ? std::vector<Reading>{std::move(reading)} : std::vector<Reading>();
}

} // namespace

std::vector<Reading> slopeExchanged(const Question& question) {
    return eachDirection(question, exchangedSlope);
}

/// A minus that was lost before one that was made up.
std::vector<Reading> signOfDirection(const Question& question) {
    auto all = eachDirection(question, withSignTurned);
    std::stable_partition(all.begin(), all.end(), [&](const Reading& reading) {
        const auto* angle = std::get_if<AngleForm>(&vectorOf(question.sketch(), reading.of).direction.form);
        return angle != nullptr && angle->value < 0;
    });
    return all;
}

std::vector<Reading> signsOfDirections(const Question& question) {
    auto all = eachAndAll(question, withSignTurned);
    if (all.size() > 1) // all at once alone
        all.erase(all.begin(), all.end() - 1);
    else
        all.clear();
    return all;
}

std::vector<Reading> otherAxisRead(const Question& question) {
    return eachAndAll(question, fromOtherAxis);
}

std::vector<Reading> otherSenseRead(const Question& question) {
    auto all = eachDirection(question, turnedRound);
    std::erase_if(all, [&](const Reading& reading) { // along its line it makes no difference
        return vectorOf(question.sketch(), reading.of).lineOfActionOnly;
    });
    return all;
}

std::vector<Reading> bearingAsAngle(const Question& question) {
    auto all = eachAndAll(question, bearingFromX);
    for (Reading& bare : eachAndAll(question, bearingBare))
        all.push_back(std::move(bare));
    return all;
}

std::vector<Reading> magnitudesExchanged(const Question& question) {
    std::vector<VectorId> given;
    for (const VectorId vector : vectorsOf(question.sketch()))
        if (const auto& value = vectorOf(question.sketch(), vector).magnitude.value; value && *value != 0)
            given.push_back(vector);
    if (given.size() != 2)
        return {};
    Reading reading{question.sketch(), given[0], What::magnitude};
    std::swap(vectorOf(reading.sketch, given[0]).magnitude, vectorOf(reading.sketch, given[1]).magnitude);
    return {std::move(reading)};
}

std::vector<Reading> forceLeftOut(const Question& question) {
    std::vector<Reading> all;
    if (question.sketch().forces.size() < 3)
        return all;
    for (const VectorId vector : fullyGiven(question.sketch())) {
        Reading& reading = all.emplace_back(Reading{question.sketch(), vector, What::magnitude});
        scale(vectorOf(reading.sketch, vector), 0);
    }
    return all;
}

std::vector<Reading> forceCountedTwice(const Question& question) {
    std::vector<Reading> all;
    if (question.sketch().forces.size() < 3)
        return all;
    for (const VectorId vector : fullyGiven(question.sketch())) {
        Reading& reading = all.emplace_back(Reading{question.sketch(), vector, What::magnitude});
        scale(vectorOf(reading.sketch, vector), 2);
    }
    return all;
}

std::vector<Reading> resultantAsAForce(const Question& question) {
    if (!isMissingForce(question) || isEquilibrium(question.sketch()))
        return {};
    Reading reading{question.sketch(), kSumVector, What::direction}; // the sum and the known ones all added
    for (const VectorId vector : fullyGiven(question.sketch()))
        if (const auto other = turnedRound(vectorOf(reading.sketch, vector).direction, reading.sketch))
            vectorOf(reading.sketch, vector).direction = *other;
    return {std::move(reading)};
}

std::vector<Reading> gRounded(const Question& question) {
    return weights(question, [](double kilogrammes) { return 10 * kilogrammes; });
}

std::vector<Reading> massAsWeight(const Question& question) {
    return weights(question, [](double kilogrammes) { return kilogrammes; });
}

std::vector<Reading> differenceTaken(const Question& question) {
    const bool ofTwo = question.own.solved.family == Family::closePolygon &&
                       question.sketch().forces.size() == 2 && !isGiven(question.sketch().sum.magnitude);
    auto all = ofTwo ? otherSenseRead(question) : std::vector<Reading>();
    for (Reading& reading : all)
        reading.inPairs = false;
    return all;
}

} // namespace tailpoint::marking::reading_slips
