// The check by components: it needs neither the triangle nor its angles.
#include "core/explain/agreement.h"
#include "core/explain/families.h"

#include "core/quantity/decimals.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr std::size_t kMostWritten = 4; ///< forces whose components are written out in the check
constexpr std::size_t kMostTurned = 12; ///< the same with turned axes, in two lines

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

    /// The angle from +x, where the sheet measures otherwise and no step has told it.
    void showFromX(const Vector& vector) {
        QuantityId fromX = vector.wayId;
        fromX.what = What::fromX;
        if (!isPlainReference(board.sketch) && (vector.turned || !isToldFromX(board, vector.id)))
            showFound(fromX);
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
        check.showFound(acute);
    else
        check.components = {acute};
    if (!isPlainReference(board.sketch))
        check.showFound(fromX);
    check.show(sum.wayId);
    check.step.conclusion.push_back(
        agreement(board, sum, check.lines.number(sum.sizeId), check.lines.number(sum.wayId)));
    if (board.hasStep(StepKey::cosines))
        check.step.conclusion.push_back(board.say(
            SENTENCE("solution",
                     "That the angles of the triangle add up to {half} would be no check, since the third "
                     "of them would be found from the other two."),
            "half", board.halfTurn()));
}

constexpr QuantityId kAlongX{What::gap, kNobody, {}, 0, 0}, kAlongY{What::gap, kNobody, {}, 0, 1},
    kAlongSum{What::gap, kNobody, {}, 0, 2}, kAcrossSum{What::gap, kNobody, {}, 0, 3};

/// Both sides of the equation along x and y.
void writeBalance(Check& check, bool isWritten) {
    Board& board = check.board;
    const Vector& sum = board.found(kSumVector);
    const long double x = check.lines.value(kAlongX).value_or(0), y = check.lines.value(kAlongY).value_or(0);
    if (isEquilibrium(board.sketch) || !isLong(sum)) {
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
    const auto compared = [&](const QuantityId& forces, const QuantityId& ofSum) {
        return Compared{check.lines.number(forces), check.lines.number(ofSum)};
    };
    check.step.conclusion.push_back(
        sameComponents(board, sum, compared(kAlongX, components[0]), compared(kAlongY, components[1])));
}

/// What its lines take for known that no step has told.
void introduce(const Board& board, Step& step) {
    const auto forces = foundForces(board);
    const bool bySlope = std::any_of(forces.begin(), forces.end(), [&](const Vector* force) {
        return std::holds_alternative<SlopeForm>(board.given(force->id).direction.form) && !force->turned;
    });
    if (bySlope && !board.hasStep(StepKey::components))
        step.reasoning.push_back(board.say(
            SENTENCE("solution", "Along a slope the components are to the magnitude as run and rise are to "
                                 "the length of both, by Pythagoras: no angle is needed.")));
    if (!isPlainReference(board.sketch))
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "{psi} is the angle from +x, counter-clockwise."), "psi",
                      symbol(board.things.fromXLetter())));
}

void writeWrittenCheck(Board& board, Step& step) {
    Check check{board, step, checkLines(board, true)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Another way, without the triangle: components along the sheet's x and y.")));
    introduce(board, step);
    for (const Vector* force : foundForces(board))
        if (isLong(*force)) {
            check.showFromX(*force);
            appendComponents(check.components, {force->id, force->sizeId, force->wayId});
        }
    const bool asked = sumAsked(board);
    check.showFound(asked ? QuantityId{What::x, kSumVector} : kAlongX);
    check.showFound(asked ? QuantityId{What::y, kSumVector} : kAlongY);
    if (!asked)
        return writeBalance(check, true);
    if (board.sum().direction)
        return writeSumCheck(check);
    step.conclusion.push_back(vanishing(board, check.lines.value({What::x, kSumVector}).value_or(0),
                                        check.lines.value({What::y, kSumVector}).value_or(0)));
}

/// The resultant of many, by a table: turned axes, one along the sum, one across it.
void writeTurnedCheck(Board& board, Step& step) {
    const Vector& sum = board.found(kSumVector);
    if (!sum.direction)
        return;
    Check check{board, step, turnedLines(board)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Turn the axes so that {u} lies along {sum} and {v} across it. Added up "
                             "along {u} the components must give {size} again, along {v} nothing."),
        "u", symbol("u"), "sum", sum.vector, "v", symbol("v"), "size", sum.size));
    if (board.forces().size() <= kMostTurned) {
        for (const Vector& force : board.forces()) // along a slope no step has told the angle
            if (board.carried.find(directionId(force.id)) == nullptr) {
                check.showFound({What::fromX, force.id});
                check.showFound(directionId(force.id));
            }
        check.showFound(kAlongSum);
        check.showFound(kAcrossSum);
    } else {
        step.conclusion.push_back(board.say(SENTENCE("solution", "They come to {along} and {across}."),
                                            "along", check.lines.number(kAlongSum), "across",
                                            check.lines.number(kAcrossSum)));
    }
    step.conclusion.push_back(againAlong(board, sum, check.lines.value(kAlongSum).value_or(0),
                                         check.lines.value(kAcrossSum).value_or(0)));
}

/// Many forces and no unknown sum: what both sides come to.
void writeClosing(Board& board, Step& step) {
    Check check{board, step, checkLines(board, true)};
    const auto number = [&](const QuantityId& id) {
        return check.lines.value(id) ? check.lines.number(id) : board.force(0);
    };
    std::vector<QuantityId> components;
    const Vector& sum = board.found(kSumVector);
    appendComponents(components, {sum.id, sum.sizeId, sum.wayId});
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Added up, the components of all the forces come to {x} along x and {y} along y; their "
                 "sum is to have {sumX} and {sumY}."),
        "x", number(kAlongX), "y", number(kAlongY), "sumX", number(components[0]), "sumY",
        number(components[1])));
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
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "On the sheet {found} measures {count} divisions of {division}."), "found",
        sought->vector, "count", number(length / division, significant(length / division, 3)), "division",
        number(division, shortest(division), std::string(symbolOf(board.sketch.forceUnit)))));
}

/// As it was printed for the answer.
Decimal printedOf(const Board& board, const Formula& number) {
    Decimal out = board.carried.decimal(number.id);
    if (out.text.empty())
        out = {number.text, static_cast<long double>(number.value), false};
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
    Step& step =
        board.step(StepKey::check, SENTENCE("solution", "Check by components"), Stage::all, Law::components);
    const bool byTable = sumAsked(board) && board.hasStep(StepKey::components);
    const bool many = byTable || board.forces().size() > kMostWritten;
    if (!many)
        for (const Vector& force : board.forces())
            step.parts.push_back(arrowPart(force.index));
    if (!many)
        writeWrittenCheck(board, step);
    else if (sumAsked(board))
        writeTurnedCheck(board, step);
    else
        writeClosing(board, step);
    writeScale(board, step);
}

} // namespace tailpoint::explaining
