// SPDX-License-Identifier: MIT
// The right answer in another form: from another axis, in another unit, its digits exchanged.
#include "core/mark/attempt.h"
#include "core/mark/match.h"
#include "core/mark/rewriting.h"

#include "core/formula/turns.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <numbers>

namespace tailpoint::marking::answer_forms {

namespace {

Formula symbolOf(const Question& question, std::size_t cell) {
    return question.things.formula(question.ownId(cell));
}

bool usesBearings(const Sketch& sketch) {
    const auto isBearing = [](const Force& force) {
        return std::holds_alternative<BearingForm>(force.direction.form);
    };
    return isBearing(sketch.sum) || std::any_of(sketch.forces.begin(), sketch.forces.end(), isBearing);
}

bool isMagnitude(const Question& question, std::size_t cell) {
    return question.quantities[question.quantityOf(cell)].id.what == What::magnitude;
}

Forms all(VectorId of, std::vector<Formula> formulas) {
    Forms forms;
    for (Formula& formula : formulas)
        forms.push_back({std::move(formula), of});
    return forms;
}

VectorId ofWhom(const Question& question, std::size_t cell) {
    return question.quantities[question.quantityOf(cell)].id.of;
}

/// A direction as sign · θ + from, in the sheet's unit.
struct Counted {
    int sign = 1;
    double from = 0;
};

/// That comes to the reversed arrow as well, which is no matter of the axis.
bool isReversed(const Question& question, std::size_t cell, double value, int sign, double from) {
    const double stated = sign * value + from, reversed = value + question.turn() / 2;
    return std::abs(std::remainder(stated - reversed, question.turn())) <= question.halfAsked(cell, value);
}

/// From every end of the axes of x and y and of those square to the sheet's, in both senses; but for the
/// sheet's own axis: there only the sense can be another.
std::vector<Counted> countedOtherwise(const Question& question) {
    const Sketch& sketch = question.sketch();
    const double turn = question.turn();
    const int sense = sketch.reference.sense == Sense::ccw ? 1 : -1;
    const double axis = convert(sketch.reference.axisDegrees, AngleUnit::deg, sketch.angleUnit);
    std::vector<Counted> all;
    const auto add = [&](int sign, double from) {
        from = normalized(from, sketch.angleUnit);
        const auto isThat = [&](const Counted& one) {
            return one.sign == sign && std::abs(std::remainder(one.from - from, turn)) < 1e-9 * turn;
        };
        const bool isOwn = isThat({sign, 0}) || isThat({1, turn / 2});
        if (!isOwn && std::none_of(all.begin(), all.end(), isThat))
            all.push_back({sign, from});
    };
    add(-1, turn / 4), add(1, -turn / 4), add(-1, turn / 2), add(1, turn / 4), add(-1, -turn / 4);
    for (int quarter = 0; quarter < 4; ++quarter) {
        add(sense, axis - quarter * turn / 4);
        add(-sense, quarter * turn / 4 - axis);
    }
    return all;
}

/// Above 1: between the sheet's unit and each other, and those that are kept in mind.
std::vector<double> unitFactors(ForceUnit own) {
    std::vector<double> factors;
    const auto add = [&](double factor) {
        factor = std::max(factor, 1 / factor);
        if (factor > 1 && std::none_of(factors.begin(), factors.end(), [&](double other) {
                return std::abs(other - factor) < 1e-9 * factor;
            }))
            factors.push_back(factor);
    };
    const double pound = newtonsPer(ForceUnit::lbf), kilogramme = newtonsPer(ForceUnit::kgf);
    for (const double factor : {1000.0, pound, kilogramme, kilogramme / pound})
        add(factor);
    for (const ForceUnit unit : {ForceUnit::N, ForceUnit::kN, ForceUnit::lbf, ForceUnit::kip, ForceUnit::kgf})
        add(newtonsPer(unit) / newtonsPer(own));
    return factors;
}

/// `angle` laid off from there: the turn in front of an angle that is taken away, else behind.
Formula turnedFrom(AngleUnit unit, double from, Formula angle) {
    const double turn = turnIn(unit);
    const auto is = [&](double size) { return std::abs(std::abs(from) - size) < 1e-9 * turn; };
    Formula size = is(turn / 4)   ? quarterTurn(unit)
                   : is(turn / 2) ? halfTurn(unit)
                                  : number(std::abs(from), shortest(std::abs(from)), halfTurn(unit).sub);
    if (from < 0)
        size = negative(std::move(size));
    return angle.kind == FormulaKind::negative ? sum(std::move(size), std::move(angle))
                                               : sum(std::move(angle), std::move(size));
}

} // namespace

Forms complement(const Question& question, std::size_t cell, double value) {
    if (!question.isDirection(cell) || isReversed(question, cell, value, -1, question.turn() / 4))
        return {};
    return all(ofWhom(question, cell),
               {less(quarterTurn(question.sketch().angleUnit), symbolOf(question, cell))});
}

Forms supplement(const Question& question, std::size_t cell, double value) {
    const bool isDirection = question.isDirection(cell);
    if (!isDirection && !isAngle(question.ownId(cell)))
        return {};
    if (isDirection && isReversed(question, cell, value, -1, question.turn() / 2))
        return {};
    return all(ofWhom(question, cell),
               {less(halfTurn(question.sketch().angleUnit), symbolOf(question, cell))});
}

Forms wrongAxis(const Question& question, std::size_t cell, double value) {
    if (!question.isDirection(cell))
        return {};
    std::vector<Formula> formulas;
    for (const Counted& one : countedOtherwise(question))
        if (!isReversed(question, cell, value, one.sign, one.from))
            formulas.push_back(
                turnedFrom(question.sketch().angleUnit, one.from,
                           one.sign > 0 ? symbolOf(question, cell) : negative(symbolOf(question, cell))));
    return all(ofWhom(question, cell), std::move(formulas));
}

Forms wrongTurn(const Question& question, std::size_t cell, double value) {
    if (!question.isDirection(cell))
        return {};
    Forms forms;
    if (!isReversed(question, cell, value, -1, 0))
        forms = all(ofWhom(question, cell), {negative(symbolOf(question, cell))});
    if (!usesBearings(question.sketch()) || countsFromNorth(question.sketch()))
        return forms;
    const Sketch& sketch = question.sketch(); // east for west: mirrored about the line from south to north
    const double mirror =
        normalized((sketch.reference.sense == Sense::ccw ? 1 : -1) * (180 - 2 * sketch.reference.axisDegrees),
                   AngleUnit::deg);
    const double inUnit = convert(mirror, AngleUnit::deg, sketch.angleUnit);
    if (!isReversed(question, cell, value, -1, inUnit))
        forms.push_back(
            {less(number(inUnit, shortest(inUnit), halfTurn(sketch.angleUnit).sub), symbolOf(question, cell)),
             ofWhom(question, cell)});
    return forms;
}

Forms opposite(const Question& question, std::size_t cell, double) {
    const What what = question.ownId(cell).what;
    if (what == What::x || what == What::y)
        return all(ofWhom(question, cell), {negative(symbolOf(question, cell))});
    if (!question.isDirection(cell))
        return {};
    return all(ofWhom(question, cell),
               {sum(symbolOf(question, cell), halfTurn(question.sketch().angleUnit))});
}

Forms senseTurned(const Question& question, std::size_t cell, double) {
    return isSignedBySense(question, cell) ? all(ofWhom(question, cell), {negative(symbolOf(question, cell))})
                                           : Forms();
}

Forms noSumTurned(const Question& question, std::size_t cell, double value) {
    const bool balancing =
        question.own.solved.family == Family::closePolygon && isEquilibrium(question.sketch());
    return balancing ? opposite(question, cell, value) : Forms();
}

/// From the full value, and from the one that is shown.
Forms unitConfused(const Question& question, std::size_t cell, double value) {
    if (!isMagnitude(question, cell))
        return {};
    const std::string shown = shownForceWithUnit(value, question.sketch());
    std::vector<Formula> formulas;
    for (const Formula& of : {symbolOf(question, cell), numberWithUnit(numberIn(shown), shown)})
        for (const double factor : unitFactors(question.sketch().forceUnit)) {
            // a tie away from zero, as by hand: 9.80665 is 9.8067
            const Formula rounded = number(factor, shortest(roundedToFigures(factor * (1 + 1e-12), 5)));
            formulas.push_back(product(of, rounded));
            formulas.push_back(over(of, rounded));
        }
    return all(ofWhom(question, cell), std::move(formulas));
}

Forms radiansForDegrees(const Question& question, std::size_t cell, double) {
    if (!question.isDirection(cell) || question.sketch().angleUnit == AngleUnit::gon)
        return {};
    const Formula symbol = symbolOf(question, cell), pi = number(std::numbers::pi, "π");
    return all(ofWhom(question, cell),
               {question.sketch().angleUnit == AngleUnit::rad ? over(product(symbol, count(180)), pi)
                                                              : over(product(symbol, pi), count(180))});
}

Forms gonsForDegrees(const Question& question, std::size_t cell, double) {
    if (!question.isDirection(cell) || question.sketch().angleUnit == AngleUnit::rad)
        return {};
    const bool isGon = question.sketch().angleUnit == AngleUnit::gon;
    return all(ofWhom(question, cell), {isGon ? product(plain(0.9), symbolOf(question, cell))
                                              : over(symbolOf(question, cell), plain(0.9))});
}

Forms decimalPoint(const Question& question, std::size_t cell, double) {
    std::vector<Formula> formulas;
    for (const double factor : {10.0, 100.0, 1000.0}) {
        formulas.push_back(product(symbolOf(question, cell), plain(factor)));
        formulas.push_back(over(symbolOf(question, cell), plain(factor)));
    }
    return all(ofWhom(question, cell), std::move(formulas));
}

Forms digitsExchanged(const Question& question, std::size_t cell, double value) {
    const bool isAngle = question.dimension(cell) == Dimension::angle;
    const Sketch& sketch = question.sketch();
    const std::string shown =
        isAngle ? fixedDecimals(value, shownAngleDecimals(sketch)) : shownForce(value, sketch);
    std::vector<Formula> formulas;
    std::optional<std::size_t> before;
    for (std::size_t i = 0; i < shown.size() && shown[i] != 'e'; ++i) {
        if (shown[i] < '0' || shown[i] > '9')
            continue;
        if (before && shown[*before] != shown[i]) {
            std::string other = shown;
            std::swap(other[*before], other[i]);
            formulas.push_back(number(std::strtod(other.c_str(), nullptr), other));
        }
        before = i;
    }
    return all(ofWhom(question, cell), std::move(formulas));
}

/// Of a parallelogram's diagonal.
Forms tipAtMidpoint(const Question& question, std::size_t cell, double) {
    const bool isDiagonal = isMagnitude(question, cell) && ofWhom(question, cell) == kSumVector &&
                            question.own.solved.family == Family::closePolygon &&
                            question.sketch().forces.size() == 2;
    return isDiagonal ? all(kSumVector, {over(symbolOf(question, cell), count(2))}) : Forms();
}

} // namespace tailpoint::marking::answer_forms
