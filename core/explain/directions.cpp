// Directions given by slope or bearing, or beyond half a turn, as the sheet measures them.
#include "core/explain/components.h"
#include "core/explain/families.h"

#include <algorithm>

#include <cmath>

namespace tailpoint::explaining {

namespace {

Formula quarterTurn(const Blackboard& board) {
    const double quarter = board.half() / 2;
    switch (board.sketch.angleUnit) {
    case AngleUnit::deg:
        return number(quarter, "90", "°");
    case AngleUnit::gon:
        return number(quarter, "100", "gon");
    case AngleUnit::rad:
        break;
    }
    return number(quarter, "π/2", "rad");
}

Formula plain(double value) {
    return number(value, shortest(value));
}

/// The angle from +x, counter-clockwise, of a slope: an inverse tangent and the quadrant.
Formula fromSlope(const Blackboard& board, const SlopeForm& slope) {
    if (slope.run == 0)
        return slope.rise > 0 ? quarterTurn(board) : negative(quarterTurn(board));
    if (slope.rise == 0)
        return slope.run > 0 ? board.angleInUnit(0) : board.halfTurn();
    Formula acute = apply("arctan", over(plain(std::abs(slope.rise)), plain(std::abs(slope.run))));
    if (slope.run > 0)
        return slope.rise > 0 ? acute : negative(std::move(acute));
    return slope.rise > 0 ? sum(board.halfTurn(), negative(std::move(acute)))
                          : sum(std::move(acute), negative(board.halfTurn()));
}

/// The same of a bearing: so far from north or south, towards east or west.
Formula fromBearing(const Blackboard& board, const BearingForm& bearing) {
    const double inUnit = fromRadians(toRadians(bearing.degrees, AngleUnit::deg), board.sketch.angleUnit);
    Formula turn = board.sketch.angleUnit == AngleUnit::deg
                       ? number(bearing.degrees, shortest(bearing.degrees), "°")
                       : board.angleInUnit(inUnit);
    // East and west themselves are told from north.
    const bool north = bearing.from == 'N' || bearing.degrees == 90, east = bearing.toward == 'E';
    if (north)
        return sum(quarterTurn(board), east ? negative(std::move(turn)) : std::move(turn));
    return east ? sum(std::move(turn), negative(quarterTurn(board)))
                : sum(negative(quarterTurn(board)), negative(std::move(turn)));
}

/// An angle typed beyond half a turn, brought back by full turns.
Formula fromLongWay(const Blackboard& board, double typed, double direction) {
    const double turns = std::round((direction - typed) / turnIn(board.sketch.angleUnit));
    Formula full = board.fullTurn();
    if (std::abs(turns) > 1)
        full = product(count(static_cast<int>(std::abs(turns))), std::move(full));
    const Formula start = board.angleInUnit(typed, Origin::typed);
    return turns > 0 ? sum(start, std::move(full)) : sum(start, negative(std::move(full)));
}

struct Writer {
    Blackboard& board;
    Step& step;

    void slopeOrBearing(Arrow& arrow, Formula expression) {
        const AngleUnit unit = board.sketch.angleUnit;
        const auto given = unitVector(formOf(arrow).direction, board.sketch);
        const double full = directionOf(given->cos, given->sin, unit).value_or(0);
        const bool isPlain = isPlainReference(board.sketch);
        Working working{
            isPlain ? arrow.theta : board.symbolOf(What::fromX, arrow), {}, std::move(expression), {}};
        Formula value = board.settle(working, full, Quantity::angle);
        const Formula subject = *working.subject;
        step.workings.push_back(std::move(working));
        if (isPlain)
            arrow.directionNumber = std::move(value);
        else
            writeReferred(board, step, arrow, {subject, std::move(value)});
    }

    void longWay(Arrow& arrow, double typed) {
        Working working{arrow.theta, {}, fromLongWay(board, typed, *arrow.direction), {}};
        arrow.directionNumber = board.settle(working, *arrow.direction, Quantity::angle);
        step.workings.push_back(std::move(working));
    }

    const Force& formOf(const Arrow& arrow) const {
        return arrow.index == kSumIndex ? board.sketch.sum
                                        : board.sketch.forces[static_cast<std::size_t>(arrow.index)];
    }

    /// How the forms at hand become angles, and nothing of other forms.
    void introduce(const std::vector<Arrow*>& arrows) {
        const auto any = [&](auto isForm) {
            return std::any_of(arrows.begin(), arrows.end(),
                               [&](const Arrow* a) { return isForm(formOf(*a).direction.form); });
        };
        const bool slopes = any([](const auto& f) { return std::holds_alternative<SlopeForm>(f); });
        const bool bearings = any([](const auto& f) { return std::holds_alternative<BearingForm>(f); });
        if (slopes)
            step.reasoning.push_back(say("A slope counts its run to the right and its rise upwards."));
        if (bearings)
            step.reasoning.push_back(say("A bearing counts from north or south, north being +y."));
        if ((slopes || bearings) && !isPlainReference(board.sketch))
            step.reasoning.push_back(say("The angle {} counts counter-clockwise from +x; from it follows the "
                                         "one that the sheet asks for.",
                                         symbol(board.things.fromXLetter())));
        if (any([](const auto& f) { return std::holds_alternative<AngleForm>(f); }))
            step.reasoning.push_back(
                say("Beyond half a turn, {}, the same direction is told by an angle a full turn of {} less "
                    "or more.",
                    board.halfTurn(), board.fullTurn()));
    }

    void write(Arrow& arrow) {
        const auto& form = formOf(arrow).direction.form;
        step.parts.push_back(part(FigurePart::Kind::direction, arrow.index));
        if (const auto* slope = std::get_if<SlopeForm>(&form))
            slopeOrBearing(arrow, fromSlope(board, *slope));
        else if (const auto* bearing = std::get_if<BearingForm>(&form))
            slopeOrBearing(arrow, fromBearing(board, *bearing));
        else if (const auto* angle = std::get_if<AngleForm>(&form))
            longWay(arrow, angle->value);
    }
};

bool needsWords(const Blackboard& board, const Arrow& arrow, const Force& given) {
    if (arrow.turned || !arrow.direction || !arrow.directionGiven)
        return false;
    const auto* angle = std::get_if<AngleForm>(&given.direction.form);
    return angle == nullptr || angle->value > board.half() || angle->value <= -board.half();
}

} // namespace

void writeDirections(Blackboard& board) {
    std::vector<Arrow*> arrows;
    for (std::size_t i = 0; i < board.forces.size(); ++i)
        if (needsWords(board, board.forces[i], board.sketch.forces[i]))
            arrows.push_back(&board.forces[i]);
    if (needsWords(board, board.sum, board.sketch.sum))
        arrows.push_back(&board.sum);
    constexpr std::size_t most = 8; // beyond, the component table shows the angles
    if (arrows.empty() || arrows.size() > most)
        return;
    Step& step = board.step("directions", "Directions as the sheet measures them", Stage::directions);
    Writer writer{board, step};
    writer.introduce(arrows);
    for (Arrow* arrow : arrows)
        writer.write(*arrow);
}

} // namespace tailpoint::explaining
