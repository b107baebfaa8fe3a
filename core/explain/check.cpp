// SPDX-License-Identifier: MIT
// The check by components: it needs neither the triangle nor its angles.
#include "core/explain/agreement.h"
#include "core/explain/families.h"
#include "core/explain/table.h"
#include "core/explain/trial.h"

#include "core/quantity/decimals.h"
#include "core/solve/rounding_room.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace tailpoint::explaining {

namespace {

constexpr std::size_t kMostForcesWritten = 4; ///< forces whose components are written out in the check
constexpr std::size_t kMostTurned = 12;       ///< the same with turned axes

bool isLong(const Vector& vector) {
    return vector.direction && vector.magnitude > 0;
}

bool sumAsked(const Board& board) {
    return board.solved.family == Family::closePolygon && !board.sum().sizeGiven;
}

std::vector<const Vector*> foundForces(const Board& board) {
    std::vector<const Vector*> forces;
    forces.reserve(board.forces().size());
    for (const Vector& force : board.forces())
        forces.push_back(&board.found(force.id));
    return forces;
}

/// Under which ids x and y of a vector stand.
void appendComponents(std::vector<QuantityId>& out, const Standing& s) {
    for (const What what : {What::x, What::y})
        out.push_back({what, s.vector, {}, std::max(s.size.answer, s.way.answer), s.way.part});
}

/// What a check writes: its own lines, from the numbers of the answer.
struct Check {
    Board& board;
    Step& step;
    Carried lines;
    std::vector<QuantityId> components{}; ///< stand within the sums

    void show(const QuantityId& line) {
        step.workings.push_back(lines.working(line, components));
        step.lines.push_back(line);
    }
    void showFound(const QuantityId& line) {
        if (lines.find(line) != nullptr)
            show(line);
    }
    void showAcute(const QuantityId& acute) {
        if (lines.find(acute) == nullptr)
            return;
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "{acute} is the acute angle from the x axis."), "acute",
                      board.symbolOf(acute)));
        show(acute);
    }
    Formula number(const QuantityId& id) const {
        return lines.value(id) ? lines.number(id) : board.carried.leftOver(0);
    }

    /// The angle from +x, where the sheet measures otherwise and no step has told it.
    void showFromX(const Vector& vector) {
        QuantityId fromX = vector.wayId;
        fromX.what = What::fromX;
        if (isPlainReference(board.sketch) || (!vector.turned && isToldFromX(board, vector.id)) ||
            lines.find(fromX) == nullptr || isToldBefore(fromX))
            return;
        introduceFromX(board, step);
        show(fromX);
    }
    /// With the same digits.
    bool isToldBefore(const QuantityId& line) const {
        if (lines.decimal(line).text != board.carried.decimal(line).text)
            return false;
        return std::any_of(board.worked.steps.begin(), board.worked.steps.end(), [&](const Step& told) {
            return std::find(told.lines.begin(), told.lines.end(), line) != told.lines.end();
        });
    }
};

/// Magnitude and direction once more, from the components.
void writeSumCheck(Check& check) {
    Board& board = check.board;
    const Vector& sum = board.found(kSumVector);
    QuantityId fromX = sum.wayId, acute = sum.wayId;
    fromX.what = What::fromX;
    acute.what = What::acute;
    check.components.clear();
    check.show(sum.sizeId);
    if (board.sketch.angleUnit == AngleUnit::rad) // what is left of π has no end: the angle stands by itself
        check.showAcute(acute);
    else
        check.components = {acute};
    if (!isPlainReference(board.sketch))
        check.showFound(fromX);
    check.show(sum.wayId);
    check.step.conclusion.push_back(
        agreement(board, sum, check.lines.number(sum.sizeId), check.lines.number(sum.wayId)));
    if (board.hasStep(StepKey::cosines))
        check.step.conclusion.push_back(board.say(
            SENTENCE(
                "solution",
                "That the triangle's angles make {half} is no check: the third follows from the others."),
            "half", board.halfTurn()));
}

constexpr QuantityId kAlongX{What::gap, kNobody, {}, 0, 0}, kAlongY{What::gap, kNobody, {}, 0, 1},
    kAlongSum{What::gap, kNobody, {}, 0, 2}, kAcrossSum{What::gap, kNobody, {}, 0, 3};

/// Of one unknown: what both equations leave over is more than rounding on the way, and no more than the
/// rounding of what is given.
Prose leftOver(const Board& board, double x, double y) {
    const Sketch filled = filledIn(board.sketch, board.solved.solutions[board.solution]);
    const auto left = [&](double value) { return board.carried.leftOver(value); };
    return isEquilibrium(board.sketch)
               ? board.say(SENTENCE("solution",
                                    "{x} and {y} are left over, together {left}: no more than {room}, which "
                                    "the rounding of all that is given, as it is shown, may leave. Both "
                                    "equations hold within rounding."),
                           "x", left(x), "y", left(y), "left", left(std::hypot(x, y)), "room",
                           left(roundingRoom(filled).along))
               : board.say(SENTENCE("solution",
                                    "The sums differ from the components of {sum} by {x} and {y}, no more "
                                    "than the rounding of {sum}, as it is shown, may leave. Both equations "
                                    "hold within rounding."),
                           "x", left(x), "y", left(y), "sum", board.sum().vector);
}

/// Both sides of the equation along x and y.
void writeBalance(Check& check, bool isWritten) {
    Board& board = check.board;
    const Vector& sum = board.found(kSumVector);
    const Formula x = check.number(kAlongX), y = check.number(kAlongY);
    const bool isOff = board.solved.messageCode() == MessageCode::holdsWithinRounding;
    if (isEquilibrium(board.sketch) || !isLong(sum)) {
        if (isOff)
            return void(check.step.conclusion.push_back(leftOver(board, x.value, y.value)));
        check.step.conclusion.push_back(vanishing(board, x, y));
        return;
    }
    std::vector<QuantityId> components;
    appendComponents(components, {sum.id, sum.sizeId, sum.wayId});
    if (isWritten) {
        check.showFromX(sum);
        check.components.clear();
        for (const QuantityId& component : components)
            check.show(component);
    }
    if (isOff)
        return void(
            check.step.conclusion.push_back(leftOver(board, x.value - check.number(components[0]).value,
                                                     y.value - check.number(components[1]).value)));
    check.step.conclusion.push_back(
        sameComponents(board, sum, x, check.number(components[0]), y, check.number(components[1])));
}

/// Of the smallest: that it is at right angles to the line, which the sums alone don't test.
void writeRightAngle(Check& check) {
    Board& board = check.board;
    if (!board.sketch.smallest)
        return;
    const auto [first, second] = board.solved.unknownVectors;
    const bool firstIsLeg = board.things.name(vectorId(first)) == *board.sketch.smallest;
    const Vector &leg = board.found(vectorId(firstIsLeg ? first : second)),
                 &line = board.found(vectorId(firstIsLeg ? second : first));
    if (!isLong(leg) || !isLong(line) || leg.sizeNumber.value == 0 || line.sizeNumber.value == 0)
        return;
    std::vector<QuantityId> ofLeg, ofLine;
    appendComponents(ofLeg, {leg.id, leg.sizeId, leg.wayId});
    appendComponents(ofLine, {line.id, line.sizeId, line.wayId});
    check.components.clear();
    for (const QuantityId& component : leg.id == kSumVector ? ofLine : ofLeg) // the sum's are there
        check.show(component);
    std::vector<Formula> symbols, numbers;
    for (const std::size_t i : {0U, 1U}) {
        symbols.push_back(product(board.symbolOf(ofLeg[i]), board.symbolOf(ofLine[i])));
        numbers.push_back(product(check.number(ofLeg[i]), check.number(ofLine[i])));
    }
    const Formula component = board.symbolOf({What::along, leg.id});
    check.step.reasoning.push_back(board.say(
        SENTENCE("solution", "{component} is the component of {smallest} along {line}, the axis {axis}, by "
                             "the scalar product of the two."),
        "component", component, "smallest", leg.vector, "line", line.vector, "axis", symbol("u")));
    Working along = worked(board, component, over(sumOf(numbers), line.sizeNumber));
    along.general = over(sumOf(symbols), line.size);
    check.step.conclusion.push_back(rightAngle(board, leg, line, *along.value));
    check.step.workings.push_back(along);
}

/// How the components of a slope are had, where no step has said so.
void tellSlopes(const Board& board, Step& step) {
    if (board.hasStep(StepKey::resolved))
        return;
    std::vector<const Vector*> slopes;
    const auto look = [&](const Vector& vector) {
        if (isLong(vector) && !vector.turned &&
            std::holds_alternative<SlopeForm>(board.given(vector.id).direction.form))
            slopes.push_back(&vector);
    };
    for (const Vector& force : board.forces())
        look(force);
    look(board.sum());
    explaining::tellSlopes(board, step, slopes);
}

void writeWrittenCheck(Board& board, Step& step) {
    Check check{board, step, checkLines(board, true)};
    step.reasoning.push_back(board.say(
        board.way == Route::Way::components
            ? SENTENCE("solution", "Put what was found back into the equation, with all the forces of the "
                                   "question:")
        : board.hasStep(StepKey::line)
            ? SENTENCE("solution", "Another way: components along the sheet's x and y.")
            : SENTENCE("solution", "Another way, without the triangle: components along the sheet's x and "
                                   "y.")));
    tellSlopes(board, step);
    for (const Vector* force : foundForces(board))
        if (isLong(*force)) {
            check.showFromX(*force);
            appendComponents(check.components, {force->id, force->sizeId, force->wayId});
        }
    const bool asked = sumAsked(board);
    check.showFound(asked ? QuantityId{What::x, kSumVector} : kAlongX);
    check.showFound(asked ? QuantityId{What::y, kSumVector} : kAlongY);
    if (!asked) {
        writeBalance(check, true);
        return writeRightAngle(check);
    }
    if (board.sum().direction)
        return writeSumCheck(check);
    step.conclusion.push_back(
        vanishing(board, check.number({What::x, kSumVector}), check.number({What::y, kSumVector})));
}

/// Along the vector sought and across it.
struct TurnedSums {
    QuantityId along, across;
};
TurnedSums turnedSums(const Vector& sought) {
    return sought.id == kSumVector ? TurnedSums{kAlongSum, kAcrossSum}
                                   : TurnedSums{{What::along, sought.id}, {What::along, sought.id, {}, 0, 1}};
}

/// The angle from the turned axis, from the directions as they are printed.
Formula fromTurned(const Formula& way, const Formula& axis) {
    const double angle = way.value - axis.value;
    return number(angle, fixedDecimals(angle, std::max(decimalsOf(way), decimalsOf(axis))), way.sub);
}

/// The components along the turned axes, where they are too many for one line.
void writeTurnedTable(Check& check, const Vector& sought) {
    Board& board = check.board;
    const auto cell = [&](const Wording& wording) { return inWords(board.text(wording)); };
    Table table;
    table.hasTotal = false;
    table.head = {cell(SENTENCE("table", "force")), cell(SENTENCE("table", "magnitude")),
                  cell(SENTENCE("table", "from u")), inWords("u"), inWords("v")};
    const auto add = [&](const Vector& vector) {
        const QuantityId along{What::along, vector.id}, across{What::along, vector.id, {}, 0, 1};
        if (vector.id == sought.id || check.lines.find(along) == nullptr)
            return;
        const Formula way =
            check.lines.value(vector.wayId) ? check.lines.number(vector.wayId) : vector.wayNumber;
        table.rows.push_back({vector.vector, vector.sizeNumber, fromTurned(way, sought.wayNumber),
                              check.number(along), check.number(across)});
    };
    for (const Vector& force : board.forces())
        add(force);
    if (sought.id != kSumVector)
        add(board.sum());
    check.step.table = std::move(table);
}

/// One vector found by a table: turned axes, one along it, one across it.
void writeTurnedCheck(Board& board, Step& step) {
    const Vector& sought = board.found(board.sought()->id);
    if (!sought.direction)
        return;
    Check check{board, step, turnedLines(board)};
    const auto [along, across] = turnedSums(sought);
    step.reasoning.push_back(
        board.say(sought.id == kSumVector
                      ? SENTENCE("solution",
                                 "Turn the axes so that {u} lies along {sought} and {v} across it. Added up "
                                 "along {u} the components must give {size} again, along {v} zero.")
                      : SENTENCE("solution", "Another way: turn the axes so that {u} lies along {sought} "
                                             "and {v} across it. What the others leave to it must come "
                                             "out as {size} again along {u}, and along {v} zero."),
                  "u", symbol("u"), "sought", sought.vector, "v", symbol("v"), "size", sought.size));
    if (board.forces().size() <= kMostTurned) {
        const auto showWay = [&](const Vector& vector) { // along a slope no step has told the angle
            if (vector.id == sought.id || board.carried.find(directionId(vector.id)) != nullptr)
                return;
            check.showFound({What::fromX, vector.id});
            check.showFound(directionId(vector.id));
        };
        for (const Vector& force : board.forces())
            showWay(force);
        if (sought.id != kSumVector && isLong(board.sum()))
            showWay(board.sum());
        const bool isLong = board.forces().size() > kMostInLine;
        if (isLong)
            writeTurnedTable(check, sought);
        for (const QuantityId& sum : {along, across}) {
            check.showFound(sum);
            if (isLong) // what the terms are stands in the table
                step.workings.back().general.reset();
        }
    } else {
        step.conclusion.push_back(board.say(SENTENCE("solution", "They come to {along} and {across}."),
                                            "along", check.number(along), "across", check.number(across)));
    }
    step.conclusion.push_back(againAlong(board, sought, check.number(along), check.number(across)));
}

/// Many forces and no unknown sum: what both sides come to.
void writeClosing(Board& board, Step& step) {
    Check check{board, step, checkLines(board, true)};
    std::vector<QuantityId> components;
    const Vector& sum = board.found(kSumVector);
    appendComponents(components, {sum.id, sum.sizeId, sum.wayId});
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Added up, the components of all the forces come to {x} along x and {y} along y; their "
                 "sum is to have {sumX} and {sumY}."),
        "x", check.number(kAlongX), "y", check.number(kAlongY), "sumX", check.number(components[0]), "sumY",
        check.number(components[1])));
    writeBalance(check, false);
}

void writeScale(const Board& board, Step& step) {
    const Vector* sought = board.sought();
    if (sought == nullptr || !board.options.division)
        return;
    const double length = board.found(sought->id).sizeNumber.value;
    if (length == 0)
        return;
    const double division = *board.options.division;
    constexpr double kShortest = 0.5; ///< divisions: less can't be measured
    if (length < kShortest * division)
        return;
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "Compare with the drawing: on the sheet {found} must measure about {count} "
                             "divisions of {division}."),
        "found", sought->vector, "count", number(length / division, significant(length / division, 2)),
        "division", number(division, shortest(division), std::string(symbolOf(board.sketch.forceUnit)))));
}

/// As it was printed for the answer.
Decimal printedOf(const Board& board, const Formula& number) {
    Decimal out = board.carried.decimal(number.id);
    if (out.text.empty())
        out = {number.text, std::strtold(number.text.c_str(), nullptr), false}; // a double may fall short
    return out;
}

void giveAll(const Board& board, Carried& lines) {
    lines.scale = board.carried.scale;
    const auto give = [&](const Vector& found) {
        if (!found.sizeNumber.text.empty())
            lines.give(found.sizeId, printedOf(board, found.sizeNumber));
        if (found.direction)
            lines.give(found.wayId, printedOf(board, found.wayNumber));
    };
    for (const Vector* force : foundForces(board))
        give(*force);
    give(board.found(kSumVector));
}

Rounding roundingOf(const Board& board) {
    return board.options.handRounding ? Rounding::hand : Rounding::guarded;
}

} // namespace

Carried checkLines(const Board& board, bool inlined) {
    Carried lines(board.sketch, board.things, roundingOf(board));
    giveAll(board, lines);
    QuantityIndex within;
    std::vector<QuantityId> components;
    for (const Vector* force : foundForces(board))
        if (inlined)
            appendComponents(components, {force->id, force->sizeId, force->wayId});
    for (const QuantityId& component : components)
        within.add(component);
    lines.take(checkOf(board.sketch, board.solved, board.things, board.solution), within);
    lines.settleAt(board.carried.guard());
    return lines;
}

Carried turnedLines(const Board& board) {
    Carried lines(board.sketch, board.things, roundingOf(board));
    giveAll(board, lines);
    lines.take(turnedCheckOf(board.sketch, board.solved, board.things, board.solution));
    lines.settleAt(board.carried.guard());
    return lines;
}

void writeCheck(Board& board) {
    const bool byTable = board.solved.family == Family::closePolygon && board.hasStep(StepKey::components) &&
                         board.sought() != nullptr && board.found(board.sought()->id).direction;
    const bool isTurned = byTable || (sumAsked(board) && board.forces().size() > kMostForcesWritten);
    const bool many = isTurned || board.forces().size() > kMostForcesWritten;
    const auto title = [&] {
        if (isTurned)
            return SENTENCE("solution", "Check by turned axes");
        return board.way == Route::Way::components ? SENTENCE("solution", "Check with all the forces")
                                                   : SENTENCE("solution", "Check by components");
    }();
    Step& step = board.step(StepKey::check, title, Stage::all, Law::components);
    if (!many)
        for (const Vector& force : board.forces())
            step.parts.push_back(arrowPart(force.index));
    if (!many)
        writeWrittenCheck(board, step);
    else if (isTurned)
        writeTurnedCheck(board, step);
    else
        writeClosing(board, step);
    writeScale(board, step);
}

} // namespace tailpoint::explaining
