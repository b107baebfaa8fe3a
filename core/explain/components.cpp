#include "core/explain/components.h"
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr double kNoise = 1e-13; ///< of the scale: below it a component is a true zero that was rounded

double axisInUnit(const Sketch& sketch) {
    return sketch.reference.axisDegrees / 360 * turnIn(sketch.angleUnit);
}

double quiet(double value, double scale) {
    return std::abs(value) <= kNoise * scale ? 0 : value;
}

/// −angle; a zero stays as it is.
Formula turnedRound(const Formula& angle) {
    return angle.kind == FormulaKind::number && angle.value == 0 ? angle : negative(angle);
}

Formula axisAngle(const Blackboard& board) {
    return board.angleInUnit(axisInUnit(board.sketch));
}

} // namespace

bool isPlainReference(const Sketch& sketch) {
    return sketch.reference.sense == Sense::ccw &&
           normalized(sketch.reference.axisDegrees, AngleUnit::deg) == 0;
}

Term writeAbsolute(Blackboard& board, Step& step, const Arrow& arrow) {
    if (isPlainReference(board.sketch))
        return thetaOf(arrow);
    const bool ccw = board.sketch.reference.sense == Sense::ccw;
    Formula symbolPsi = board.symbolOf(What::fromX, arrow);
    const Formula axis = axisAngle(board);
    const auto turned = [&](const Formula& angle) {
        if (axis.value == 0)
            return ccw ? angle : turnedRound(angle);
        return ccw ? sum(axis, angle) : sum(axis, negative(angle));
    };
    Working working{symbolPsi, turned(arrow.theta), turned(arrow.directionNumber), {}};
    const double full = axisInUnit(board.sketch) + (ccw ? 1 : -1) * arrow.directionNumber.value;
    Formula value = board.settle(working, full, Quantity::angle);
    step.workings.push_back(std::move(working));
    return {std::move(symbolPsi), std::move(value)};
}

Expression componentOf(const Arrow& arrow, const Term& angle, char axis) {
    const char* function = axis == 'x' ? "cos" : "sin";
    return {product(arrow.size, apply(function, angle.symbol)),
            product(arrow.sizeNumber, apply(function, angle.number))};
}

Formula componentNumber(const Blackboard& board, double value, double scale) {
    return board.force(quiet(value, scale));
}

namespace {

void writePythagoras(Blackboard& board, Arrow& arrow, const Term& x, const Term& y) {
    Step& step = board.step("magnitude", "Magnitude from the components", Stage::magnitudes, Law::components);
    step.parts = {arrowPart(arrow.index)};
    step.reasoning.push_back(
        say("The components stand at right angles to each other, so the magnitude follows "
            "from the theorem of Pythagoras."));
    Working working{arrow.size,
                    root(sum(power(x.symbol, 2), power(y.symbol, 2))),
                    root(sum(power(x.number, 2), power(y.number, 2))),
                    {}};
    arrow.sizeNumber = board.settle(working, arrow.magnitude, Quantity::force);
    step.workings.push_back(std::move(working));
}

Formula sizeWithoutSign(const Formula& number) {
    Formula positive = number;
    positive.value = std::abs(positive.value);
    if (positive.text.starts_with('-'))
        positive.text.erase(0, 1);
    return positive;
}

/// ψ from the acute angle: α, 180° − α, α − 180° or −α, by the quadrant.
Term writeQuadrant(Blackboard& board, Step& step, Formula symbolPsi, const Term& acute,
                   const Eigen::Vector2d& v, double full) {
    const auto build = [&](const Formula& a) {
        if (v.x() > 0)
            return v.y() > 0 ? a : negative(a);
        return v.y() > 0 ? sum(board.halfTurn(), negative(a)) : sum(a, negative(board.halfTurn()));
    };
    Working working{symbolPsi, build(acute.symbol), build(acute.number), {}};
    Formula value = board.settle(working, full, Quantity::angle);
    step.workings.push_back(std::move(working));
    return {std::move(symbolPsi), std::move(value)};
}

Term writeAbsoluteDirection(Blackboard& board, Step& step, const Arrow& arrow, const Term& x, const Term& y) {
    const AngleUnit unit = board.sketch.angleUnit;
    const double full =
        directionOf(static_cast<long double>(arrow.v.x()), static_cast<long double>(arrow.v.y()), unit)
            .value_or(0);
    Formula target = isPlainReference(board.sketch) ? arrow.theta : board.symbolOf(What::fromX, arrow);
    if (quiet(arrow.v.x(), arrow.magnitude) == 0 || quiet(arrow.v.y(), arrow.magnitude) == 0) {
        const Formula value = board.angleInUnit(full);
        step.workings.push_back({target, {}, {}, value});
        return {std::move(target), value};
    }
    const bool first = arrow.v.x() > 0 && arrow.v.y() > 0; // there the acute angle is the answer itself
    Working working{first ? target : board.symbolOf(What::acute, arrow),
                    apply("arctan", over(absolute(y.symbol), absolute(x.symbol))),
                    apply("arctan", over(sizeWithoutSign(y.number), sizeWithoutSign(x.number))),
                    {}};
    const double acute = std::atan2(std::abs(arrow.v.y()), std::abs(arrow.v.x()));
    const Term alpha{board.symbolOf(What::acute, arrow),
                     board.settle(working, fromRadians(acute, unit), Quantity::angle)};
    step.workings.push_back(std::move(working));
    if (first)
        return {std::move(target), alpha.number};
    return writeQuadrant(board, step, std::move(target), alpha, arrow.v, full);
}

Formula signWords(const Term& component, double value) {
    const Relation sign = value < 0 ? Relation::less : value > 0 ? Relation::greater : Relation::equal;
    return related(component.symbol, sign, count(0));
}

} // namespace

void writeReferred(Blackboard& board, Step& step, Arrow& arrow, const Term& psi) {
    const bool ccw = board.sketch.reference.sense == Sense::ccw;
    const Formula axis = axisAngle(board);
    const auto difference = [&](const Formula& angle) {
        if (axis.value == 0)
            return ccw ? sum(angle) : sum(turnedRound(angle));
        return ccw ? sum(angle, negative(axis)) : sum(axis, negative(angle));
    };
    Working working{arrow.theta, difference(psi.symbol), difference(psi.number), {}};
    const double raw = (ccw ? 1 : -1) * (psi.number.value - axis.value);
    if (raw > board.half() || raw <= -board.half()) {
        const Formula turn = raw > 0 ? negative(board.fullTurn()) : board.fullTurn();
        working.general->parts.push_back(turn);
        working.substituted->parts.push_back(turn);
    }
    arrow.directionNumber = board.settle(working, arrow.direction.value_or(0), Quantity::angle);
    step.workings.push_back(std::move(working));
}

void writePolar(Blackboard& board, Arrow& arrow, const Term& x, const Term& y) {
    writePythagoras(board, arrow, x, y);
    if (!arrow.direction)
        return;
    Step& step =
        board.step("direction", "Direction, its quadrant from the signs", Stage::all, Law::components);
    step.parts = {part(FigurePart::Kind::direction, arrow.index), part(FigurePart::Kind::axis)};
    step.reasoning.push_back(say(
        "{} and {}: {} lies {}.", signWords(x, quiet(arrow.v.x(), arrow.magnitude)),
        signWords(y, quiet(arrow.v.y(), arrow.magnitude)), arrow.vector,
        inWords(quadrantWords({quiet(arrow.v.x(), arrow.magnitude), quiet(arrow.v.y(), arrow.magnitude)}))));
    const Term psi = writeAbsoluteDirection(board, step, arrow, x, y);
    if (isPlainReference(board.sketch))
        arrow.directionNumber = psi.number;
    else
        writeReferred(board, step, arrow, psi);
    step.notes.push_back(
        say("The inverse tangent of a quotient knows only the first and the fourth quadrant: let "
            "the signs of both components decide."));
}

} // namespace tailpoint::explaining
