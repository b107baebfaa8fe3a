// SPDX-License-Identifier: MIT
#include "core/mark/match.h"

#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint::marking {

namespace {

constexpr double kBit = 1e-9; ///< of a unit: what binary digits are off
constexpr int kLeastFigures = 2;
constexpr double kMostTurns = 1000; ///< a number of more has no binary digits left for decimals

double unitOf(double value, int figures) {
    return std::pow(10.0, std::floor(std::log10(std::abs(value))) + 1 - figures);
}

/// `given` is what `right` becomes when it is rounded to that unit, a tie either way, or cut off there.
bool isRoundedTo(double given, double right, double unit, bool mayBeCut) {
    const double steps = given / unit;
    if (std::abs(steps - std::round(steps)) > 1e-6 * std::max(1.0, std::abs(steps)))
        return false;
    const bool isRounded = std::abs(given - right) <= unit * (0.5 + kBit);
    const bool isCut = mayBeCut && std::abs(given) <= std::abs(right) * (1 + kBit) &&
                       std::abs(right) - std::abs(given) < unit * (1 + kBit) && given * right >= 0;
    return isRounded || isCut;
}

/// Both become the same number of units, a tie going either way.
bool roundAlike(double a, double b, double unit) {
    const double room = 0.5 + kBit;
    return std::max(std::ceil(a / unit - room), std::ceil(b / unit - room)) <=
           std::min(std::floor(a / unit + room), std::floor(b / unit + room));
}

/// Decimals that were written say that it was not rounded to a coarser unit: 23.0 is no 22.7 to two figures.
bool isFinerThan(const GivenReading& given, double unit) {
    return given.half < 0.5 && 2 * given.half < unit * (1 - kBit);
}

bool isShorter(const Question& question, std::size_t cell, const GivenReading& stated, double given,
               double right) {
    const int digits = stated.figures;
    if (question.dimension(cell) == Dimension::angle) {
        const int asked = shownAngleDecimals(question.sketch());
        const int least = question.sketch().angleUnit == AngleUnit::rad ? 2 : 0; // whole degrees at least
        for (int decimals = least; decimals <= std::max(asked, std::min(digits, 8)); ++decimals)
            if (const double unit = std::pow(10.0, -decimals);
                !isFinerThan(stated, unit) && isRoundedTo(given, right, unit, true))
                return true;
        return false;
    }
    const int asked = figuresOf(right, question.sketch());
    for (int figures = std::min(kLeastFigures, asked);
         right != 0 && figures <= std::max(asked, std::min(digits, 12)); ++figures)
        if (const double unit = unitOf(right, figures);
            !isFinerThan(stated, unit) &&
            isRoundedTo(given, right, unit, figures >= asked)) // fewer, and cut, is too much
            return true;
    return false;
}

/// As fine as is asked, and not what is right to fewer figures: 449 for 448, where 450 has two.
bool hasAllFigures(const Question& question, std::size_t cell, const GivenReading& given, double right) {
    if (given.half > question.halfAsked(cell, right) * (1 + kBit))
        return false;
    if (question.dimension(cell) == Dimension::angle)
        return true; // written decimals are figures
    const int asked = figuresOf(right, question.sketch());
    for (int figures = std::min(kLeastFigures, asked); right != 0 && figures < asked; ++figures)
        if (isRoundedTo(given.value, right, unitOf(right, figures), false))
            return false;
    return true;
}

/// Whole degrees are as coarse as an angle may be, and two figures a nought of a magnitude: "1e2" may mean
/// any angle from 50° to 150°, "0e3" anything up to 500.
bool isTooCoarse(const Question& question, const Given& given, const GivenReading& reading) {
    if (question.dimension(given.cell) == Dimension::angle)
        return reading.half > question.degree() / 2 * (1 + kBit);
    const double right = rightFor(question, given);
    return reading.value == 0 && isThere(right) && right != 0 &&
           reading.half > unitOf(right, kLeastFigures) / 2 * (1 + kBit);
}

/// In the unit in which it is written: there its figures count.
GivenReading asWritten(const GivenReading& given) {
    return {given.value / given.unit, given.half / given.unit, given.figures};
}

/// What is right in one cell.
struct Right {
    double value = kNone, tolerance = 0;
};

Likeness likenessTo(const Question& question, const Right& wanted, std::size_t cell,
                    const GivenReading& stated, bool drawn) {
    if (!isThere(wanted.value))
        return Likeness::none;
    const GivenReading given = asWritten(stated);
    const double right = wanted.value / stated.unit;
    const double off = question.apart(cell, given.value, right);
    // counted in as many whole turns as the given direction is
    const double there = question.isDirection(cell)
                             ? given.value - std::remainder(given.value - right, question.turn())
                             : right;
    const double bit = kBit * std::max(std::abs(right), question.halfAsked(cell, right));
    if (drawn)
        return off <= given.half + bit ? Likeness::right : Likeness::none;
    const double asked = question.halfAsked(cell, right);
    const bool isFine = given.half <= asked * (1 + kBit);
    if (right == 0 && asked == 0)
        return given.value == 0 ? Likeness::right : Likeness::none;
    if (roundAlike(given.value, there, 2 * asked) || (isFine && off <= given.half + bit))
        return Likeness::right;
    if (isShorter(question, cell, given, given.value, there))
        return Likeness::rounded;
    if (question.isDirection(cell) && given.value * there < 0 && roundAlike(-given.value, there, 2 * asked))
        return Likeness::none; // near zero too a lost sign is no rounding
    const double coarse =
        question.dimension(cell) == Dimension::angle ? question.degree() : unitOf(right, kLeastFigures);
    const double room =
        std::min(given.half, coarse / 2) + wanted.tolerance / stated.unit; // which is limited by itself
    return off <= room + bit ? Likeness::rounded : Likeness::none;
}

std::size_t indexOf(const std::vector<Given>& givens, const QuantityId& id) {
    for (std::size_t i = 0; i < givens.size(); ++i)
        if (givens[i].value->id == id)
            return i;
    return givens.size();
}

Verdict verdictOf(Likeness likeness) {
    return likeness == Likeness::right     ? Verdict::right
           : likeness == Likeness::rounded ? Verdict::rounded
                                           : Verdict::other;
}

/// Of several readings the one that is nearest to right.
void judge(const Question& question, Given& given) {
    Likeness best = Likeness::none;
    given.reading = given.number->readings.front();
    given.reading.value *= given.sense;
    for (GivenReading reading : given.number->readings) {
        reading.value *= given.sense;
        GivenReading taken = reading;
        if (!given.number->drawn && isTooCoarse(question, given, reading))
            taken.half = 0; // its value itself may be right
        const Likeness one = likeness(question, given, taken);
        if (one <= best)
            continue;
        best = one;
        given.reading = reading;
    }
    given.isTooCoarse = !given.number->drawn && isTooCoarse(question, given, given.reading);
    given.isOtherReading = given.number->readings.size() > 1 && best != Likeness::none;
    given.verdict = verdictOf(best);
}

/// A negative magnitude on the opposite direction is the same vector; so is one along a line that leaves the
/// sense open.
void turnRound(const Question& question, std::vector<Given>& givens) {
    for (Given& size : givens) {
        const QuantityId& id = size.value->id;
        if (id.what != What::magnitude || size.reading.value >= 0 || size.isGood())
            continue;
        Given other = size;
        other.reading.value = -size.reading.value;
        const Likeness sizeLikeness = likeness(question, size, other.reading);
        if (sizeLikeness == Likeness::none)
            continue;
        const std::size_t at = indexOf(givens, directionId(id.of));
        if (at == givens.size()) {
            if (hasFreeSense(question, id.of)) {
                size.verdict = verdictOf(sizeLikeness);
                size.isTurned = true;
            }
            continue;
        }
        Given& way = givens[at];
        GivenReading opposite = way.reading;
        opposite.value += question.turn() / 2;
        const Likeness wayLikeness = likeness(question, way, opposite);
        if (wayLikeness == Likeness::none)
            continue;
        size.verdict = verdictOf(sizeLikeness);
        way.verdict = verdictOf(wayLikeness);
        size.isTurned = true;
    }
}

/// Where the sign counts, a right size with the other sign is wrong.
void holdSenses(const Question& question, std::vector<Given>& givens) {
    for (Given& size : givens) {
        const QuantityId& id = size.value->id;
        if (id.what != What::magnitude || !size.isGood() || size.reading.value == 0 ||
            !hasFreeSense(question, id.of) || indexOf(givens, directionId(id.of)) < givens.size())
            continue;
        if (size.reading.value < 0) {
            size.verdict = Verdict::other;
            size.isWrongSense = true;
        }
    }
}

} // namespace

bool hasFreeSense(const Question& question, VectorId vector) {
    const Sketch& sketch = question.sketch();
    if (vector != kSumVector && vector.kind != VectorId::Kind::force)
        return false;
    return vector == kSumVector ? sketch.sum.lineOfActionOnly : sketch.forces[vector.index].lineOfActionOnly;
}

bool isSignedBySense(const Question& question, std::size_t cell) {
    const QuantityId& id = question.quantities[question.quantityOf(cell)].id;
    return question.options.signedSenses && id.what == What::magnitude && hasFreeSense(question, id.of);
}

bool isNegativeBySense(const Question& question, std::size_t cell) {
    if (!isSignedBySense(question, cell))
        return false;
    const QuantityId& id = question.quantities[question.quantityOf(cell)].id;
    const Solution& solution = question.own.solved.solutions[question.answerOf(cell)];
    return id.of == kSumVector ? solution.sum.turned : solution.forces[id.of.index].turned;
}

double rightFor(const Question& question, const Given& given) {
    return given.ofLine.value_or(question.right().value[given.cell]);
}

Likeness likeness(const Question& question, const Given& given, const GivenReading& stated) {
    const std::size_t cell = given.cell;
    const bool drawn = given.number->drawn;
    GivenReading reading = stated;
    if (question.isDirection(cell) && std::abs(reading.value) > kMostTurns * question.turn())
        reading.value = std::remainder(reading.value, question.turn());
    if (given.ofLine)
        return likenessTo(question, {*given.ofLine, question.right().tolerance[cell]}, cell, reading, drawn);
    Likeness best = Likeness::none;
    for (const Numbers& rights : question.rights)
        best = std::max(
            best, likenessTo(question, {rights.value[cell], rights.tolerance[cell]}, cell, reading, drawn));
    return best;
}

bool fits(const Question& question, std::size_t cell, const GivenReading& given, double value,
          double tolerance) {
    if (!isThere(value))
        return false;
    const QuantityId& id = question.quantities[question.quantityOf(cell)].id;
    const bool bySize = id.what == What::magnitude;
    const double off =
        bySize ? std::abs(std::abs(given.value) - std::abs(value)) : question.apart(cell, given.value, value);
    return off <= (given.half + tolerance) * (1 + kBit) + kBit * std::abs(value) * 1e-3;
}

bool fitsScaled(const Question& question, std::size_t cell, const GivenReading& given, double value,
                double tolerance) {
    if (!isThere(value) || given.value == 0 || value == 0)
        return false;
    const double turnless = question.isDirection(cell) ? std::abs(given.value - value) : 0;
    const double unit = 2 * given.half, off = std::abs(std::abs(given.value) - std::abs(value));
    const bool sharesFigures =
        unit <= unitOf(given.value, kLeastFigures) * (1 + kBit) && off < unitOf(value, kLeastFigures);
    const bool isNear = fits(question, cell, given, value, 0) && unit <= std::abs(value);
    return turnless < question.turn() / 2 && fits(question, cell, given, value, tolerance) &&
           (sharesFigures || isNear);
}

std::vector<Given> givenIn(const Question& question, const Attempt& attempt, std::size_t answer,
                           std::size_t position) {
    std::vector<Given> givens;
    for (const GivenValue& value : attempt.values) {
        const std::size_t quantity = question.find(value.id);
        if (quantity == question.quantities.size() || value.numbers.empty())
            continue;
        Given given;
        given.cell = question.cell(quantity, answer);
        given.value = &value;
        given.number = &value.numbers[std::min(position, value.numbers.size() - 1)];
        given.ofLine = value.line ? question.ofLine(*value.line) : std::nullopt;
        const bool hasWay = std::any_of(attempt.values.begin(), attempt.values.end(), [&](const auto& other) {
            return other.id == directionId(value.id.of);
        });
        given.sense = !hasWay && isNegativeBySense(question, given.cell) ? -1 : 1;
        judge(question, given);
        const double right = rightFor(question, given);
        given.isMoreThanAsked =
            given.verdict == Verdict::right && !given.number->drawn && isThere(right) &&
            asWritten(given.reading).half < 0.4 * question.halfAsked(given.cell, right / given.reading.unit);
        given.isLastFigure =
            given.verdict == Verdict::rounded && !given.number->drawn && isThere(right) &&
            hasAllFigures(question, given.cell, asWritten(given.reading), right / given.reading.unit);
        givens.push_back(std::move(given));
    }
    turnRound(question, givens);
    if (question.options.signedSenses)
        holdSenses(question, givens);
    for (Given& given : givens)
        if (given.number->isMass && given.isGood())
            given.verdict = Verdict::unit;
    for (Given& given : givens)
        if (question.options.unitRequired && given.isGood() && !given.number->hasUnit &&
            question.dimension(given.cell) == Dimension::force)
            given.verdict = Verdict::unit;
    return givens;
}

} // namespace tailpoint::marking
