#include "core/explain/moves.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

double inUnit(const Blackboard& board, double rad) {
    return fromRadians(rad, board.sketch.angleUnit);
}

/// θhigh − θlow as symbols and as numbers, and whether it goes beyond a half turn.
struct Difference {
    Formula general, substituted;
    bool beyond = false;
};

Difference differenceOf(const Blackboard& board, const Arrow& a, const Arrow& b) {
    const bool ordered = a.directionNumber.value >= b.directionNumber.value;
    const Arrow& high = ordered ? a : b;
    const Arrow& low = ordered ? b : a;
    return {sum(high.theta, negative(low.theta)), sum(high.directionNumber, negative(low.directionNumber)),
            high.directionNumber.value - low.directionNumber.value > board.half()};
}

Term settled(Blackboard& board, Step& step, Working working, Formula symbol, double full, Quantity quantity) {
    Formula value = board.settle(working, full, quantity);
    step.workings.push_back(std::move(working));
    return {std::move(symbol), std::move(value)};
}

Term settledAngle(Blackboard& board, Step& step, Working working, Formula symbol, double rad) {
    return settled(board, step, std::move(working), std::move(symbol), inUnit(board, rad), Quantity::angle);
}

Formula squares(const Formula& a, const Formula& b, const Formula& third) {
    return sum(power(a, 2), power(b, 2), negative(third));
}

Formula cosineLaw(const Formula& a, const Formula& b, const Formula& included) {
    return squares(a, b, product(count(2), a, b, apply("cos", included)));
}

} // namespace

double tailsBetween(const Arrow& a, const Arrow& b) {
    return std::abs(signedAngle(a.v, b.v).value_or(0));
}

Term writeTails(Blackboard& board, Step& step, const Arrow& a, const Arrow& b, Formula symbol) {
    Difference d = differenceOf(board, a, b);
    if (d.beyond) {
        d.general = sum(board.fullTurn(), negative(std::move(d.general)));
        d.substituted = sum(board.fullTurn(), negative(std::move(d.substituted)));
    }
    return settledAngle(board, step, {symbol, std::move(d.general), std::move(d.substituted), {}}, symbol,
                        tailsBetween(a, b));
}

Term writeSupplement(Blackboard& board, Step& step, Formula symbol, const Term& angle, double rad) {
    return settledAngle(board, step,
                        {symbol,
                         sum(board.halfTurn(), negative(angle.symbol)),
                         sum(board.halfTurn(), negative(angle.number)),
                         {}},
                        symbol, rad);
}

Term writeExterior(Blackboard& board, Step& step, const Arrow& a, const Arrow& b, Formula symbol) {
    Difference d = differenceOf(board, a, b);
    const double rad = std::abs(signedAngle(a.v, -b.v).value_or(0));
    Working working{symbol, {}, {}, {}};
    if (d.beyond) { // 180° − (360° − difference)
        working.general = sum(std::move(d.general), negative(board.halfTurn()));
        working.substituted = sum(std::move(d.substituted), negative(board.halfTurn()));
    } else {
        working.general = sum(board.halfTurn(), negative(std::move(d.general)));
        working.substituted = sum(board.halfTurn(), negative(std::move(d.substituted)));
    }
    return settledAngle(board, step, std::move(working), symbol, rad);
}

Term writeThird(Blackboard& board, Step& step, Formula symbol, const Term& a, const Term& b, double rad) {
    return settledAngle(board, step,
                        {symbol,
                         sum(board.halfTurn(), negative(a.symbol), negative(b.symbol)),
                         sum(board.halfTurn(), negative(a.number), negative(b.number)),
                         {}},
                        symbol, rad);
}

Term writeCosinesForSide(Blackboard& board, Step& step, Formula symbol, const Term& a, const Term& b,
                         const Term& included, double full) {
    return settled(board, step,
                   {symbol,
                    root(cosineLaw(a.symbol, b.symbol, included.symbol)),
                    root(cosineLaw(a.number, b.number, included.number)),
                    {}},
                   symbol, full, Quantity::force);
}

Term writeCosinesForAngle(Blackboard& board, Step& step, Formula symbol, const Term& a, const Term& b,
                          const Term& opposite, double rad) {
    const auto angleOf = [](const Formula& x, const Formula& y, const Formula& z) {
        return apply("arccos", over(squares(x, y, power(z, 2)), product(count(2), x, y)));
    };
    return settledAngle(board, step,
                        {symbol,
                         angleOf(a.symbol, b.symbol, opposite.symbol),
                         angleOf(a.number, b.number, opposite.number),
                         {}},
                        symbol, rad);
}

Term writeSinesForSide(Blackboard& board, Step& step, Formula symbol, const Term& angle, const Term& known,
                       const Term& knownAngle, double full) {
    const auto sideOf = [](const Formula& a, const Formula& side, const Formula& k) {
        return over(product(side, apply("sin", a)), apply("sin", k));
    };
    return settled(board, step,
                   {symbol,
                    sideOf(angle.symbol, known.symbol, knownAngle.symbol),
                    sideOf(angle.number, known.number, knownAngle.number),
                    {}},
                   symbol, full, Quantity::force);
}

Term writeSinesForAngle(Blackboard& board, Step& step, Formula symbol, const Term& side, const Term& known,
                        const Term& knownAngle, double rad) {
    const auto angleOf = [](const Formula& a, const Formula& k, const Formula& side2) {
        return apply("arcsin", over(product(a, apply("sin", k)), side2));
    };
    return settledAngle(board, step,
                        {symbol,
                         angleOf(side.symbol, knownAngle.symbol, known.symbol),
                         angleOf(side.number, knownAngle.number, known.number),
                         {}},
                        symbol, rad);
}

Turn writeTurn(Blackboard& board, Step& step, Formula symbol, const Term& from, const Term& angle,
               double direction) {
    const AngleUnit unit = board.sketch.angleUnit;
    const double start = from.number.value;
    const double a = board.valueOf(angle.number);
    const auto missed = [&](double sign) { return std::abs(normalized(start + sign * a - direction, unit)); };
    const int sign = missed(1) <= missed(-1) ? 1 : -1;
    const double raw = start + sign * a;
    Formula general = sign > 0 ? sum(from.symbol, angle.symbol) : sum(from.symbol, negative(angle.symbol));
    Formula numbers = sign > 0 ? sum(from.number, angle.number) : sum(from.number, negative(angle.number));
    if (raw > board.half() * (1 + 1e-12)) {
        general.parts.push_back(negative(board.fullTurn()));
        numbers.parts.push_back(negative(board.fullTurn()));
    } else if (raw <= -board.half() * (1 - 1e-12)) {
        general.parts.push_back(board.fullTurn());
        numbers.parts.push_back(board.fullTurn());
    }
    Working working{std::move(symbol), std::move(general), std::move(numbers), {}};
    Formula value = board.settle(working, direction, Quantity::angle);
    step.workings.push_back(std::move(working));
    return {std::move(value), sign};
}

std::string_view wayOf(int sign, const Sketch& sketch) {
    return (sign > 0) == (sketch.reference.sense == Sense::ccw) ? "counter-clockwise" : "clockwise";
}

Term sizeOf(const Arrow& arrow) {
    return {arrow.size, arrow.sizeNumber};
}
Term thetaOf(const Arrow& arrow) {
    return {arrow.theta, arrow.directionNumber};
}

std::string quadrantWords(const Eigen::Vector2d& v) {
    if (v.y() == 0)
        return v.x() > 0 ? "on the axis +x" : "on the axis −x";
    if (v.x() == 0)
        return v.y() > 0 ? "on the axis +y" : "on the axis −y";
    if (v.y() > 0)
        return v.x() > 0 ? "in the first quadrant" : "in the second quadrant";
    return v.x() > 0 ? "in the fourth quadrant" : "in the third quadrant";
}

namespace {

/// The same tree with the shown digits as values.
Formula asShown(const Formula& formula) {
    Formula copy = formula;
    if (copy.kind == FormulaKind::number)
        copy.value = shownValue(copy);
    for (Formula& part : copy.parts)
        part = asShown(part);
    return copy;
}

} // namespace

void remarkOnRounding(Blackboard& board, Step& step, Quantity quantity) {
    if (board.options.handRounding || step.workings.empty())
        return;
    const Working& working = step.workings.back();
    const auto shown =
        working.substituted ? evaluate(asShown(*working.substituted), board.sketch.angleUnit) : std::nullopt;
    if (!shown || !working.value)
        return;
    const auto value = static_cast<double>(*shown);
    const Formula other = quantity == Quantity::angle ? board.angleInUnit(value) : board.force(value);
    if (other.text != working.value->text)
        step.conclusion.push_back(
            say("With the rounded numbers shown one would get {}; the full values give {}.", other,
                *working.value));
}

} // namespace tailpoint::explaining
