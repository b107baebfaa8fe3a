// The check by components: it needs neither the triangle nor its angles.
#include "core/explain/components.h"
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr std::size_t kMostWritten = 4; ///< forces whose components are written out in the check

using Terms = std::vector<Term>; ///< angle from +x, one for each force; empty symbol: no direction

double scaleOf(const Blackboard& board) {
    double scale = board.sum.magnitude;
    for (const Arrow& arrow : board.forces)
        scale += arrow.magnitude;
    return scale;
}

bool isLong(const Arrow& arrow) {
    return arrow.direction && arrow.magnitude > 0;
}

Terms writeAngles(Blackboard& board, Step& step) {
    Terms angles;
    for (const Arrow& arrow : board.forces)
        angles.push_back(isLong(arrow) ? writeAbsolute(board, step, arrow) : Term{});
    return angles;
}

/// Σ F cos θ = what it comes to; returns that number.
Formula writeLeft(Blackboard& board, Step& step, const Terms& angles, char axis) {
    std::vector<Formula> general, numbers;
    double total = 0;
    for (std::size_t i = 0; i < board.forces.size(); ++i) {
        const Arrow& arrow = board.forces[i];
        if (!isLong(arrow))
            continue;
        Expression e = componentOf(arrow, angles[i], axis);
        general.push_back(std::move(e.general));
        numbers.push_back(std::move(e.numbers));
        total += axis == 'x' ? arrow.v.x() : arrow.v.y();
    }
    const bool rest = isEquilibrium(board.sketch);
    Formula subject =
        rest ? board.things.formula({What::gap, {}, {}, 0, static_cast<std::uint8_t>(axis == 'x' ? 0 : 1)})
             : board.component(board.sum, axis);
    if (general.empty())
        return componentNumber(board, 0, 1);
    Working working{std::move(subject), sumOf(std::move(general)), sumOf(std::move(numbers)), {}};
    const bool wholly = board.solved.family == Family::closePolygon && !board.sum.sizeGiven;
    double full = wholly ? (axis == 'x' ? board.sum.v.x() : board.sum.v.y()) : total;
    if (board.options.handRounding)
        full = static_cast<double>(evaluate(*working.substituted, board.sketch.angleUnit).value_or(full));
    working.value = componentNumber(board, full, scaleOf(board));
    Formula value = *working.value;
    step.workings.push_back(std::move(working));
    return value;
}

void writeRight(Blackboard& board, Step& step, const Term& angle, char axis) {
    Expression e = componentOf(board.sum, angle, axis);
    Working working{board.component(board.sum, axis), std::move(e.general), std::move(e.numbers), {}};
    double full = axis == 'x' ? board.sum.v.x() : board.sum.v.y();
    if (board.options.handRounding)
        full = static_cast<double>(evaluate(*working.substituted, board.sketch.angleUnit).value_or(full));
    working.value = componentNumber(board, full, board.sum.magnitude);
    step.workings.push_back(std::move(working));
}

/// Where the components of the rounded answer end in another digit, say so.
void remarkOnRoundedAnswer(Blackboard& board, Step& step, const Formula& x, const Formula& y) {
    const Arrow& r = board.sum;
    const double size = shownValue(r.sizeNumber);
    Formula angle = r.directionNumber;
    angle.value = shownValue(angle);
    const double axis = board.sketch.reference.axisDegrees;
    const double turn = toRadians(board.valueOf(angle), board.sketch.angleUnit) *
                            (board.sketch.reference.sense == Sense::ccw ? 1 : -1) +
                        toRadians(axis, AngleUnit::deg);
    const Formula roundedX = componentNumber(board, size * std::cos(turn), size);
    const Formula roundedY = componentNumber(board, size * std::sin(turn), size);
    if (roundedX.text == x.text && roundedY.text == y.text)
        return;
    step.conclusion.push_back(
        say("The components of the rounded answer, {} at {}, come to {} and {}: where their "
            "last digit differs from {} and {}, the rounding of the answer is the reason, not "
            "a slip.",
            r.sizeNumber, r.directionNumber, roundedX, roundedY, x, y));
}

void writeSumCheck(Blackboard& board, Step& step, const Formula& x, const Formula& y) {
    const Arrow& r = board.sum;
    const Formula xs = board.component(r, 'x'), ys = board.component(r, 'y');
    Working working{r.size, root(sum(power(xs, 2), power(ys, 2))), root(sum(power(x, 2), power(y, 2))), {}};
    board.settle(working, r.magnitude, Quantity::force);
    const bool same = working.value->text == r.sizeNumber.text;
    step.workings.push_back(std::move(working));
    step.conclusion.push_back(say(same ? "The same magnitude, and {} {}: the direction found agrees."
                                       : "The same magnitude but for the rounding, and {} {}, as found.",
                                  r.vector, inWords("lies " + quadrantWords(r.v))));
    if (board.hasStep("cosines"))
        step.conclusion.push_back(
            say("That the angles of the triangle add up to {} would be no check, since the third of "
                "them comes from the other two.",
                board.halfTurn()));
    if (!board.options.handRounding)
        remarkOnRoundedAnswer(board, step, x, y);
}

void writeScale(Blackboard& board, Step& step) {
    const Arrow* found = sought(board);
    if (found == nullptr || found->magnitude == 0)
        return;
    if (board.options.division) {
        const double divisions = found->magnitude / *board.options.division;
        step.conclusion.push_back(say("On the sheet {} measures {} divisions of {}.", found->vector,
                                      number(divisions, significant(divisions, 3)),
                                      number(*board.options.division, shortest(*board.options.division),
                                             std::string(symbolOf(board.sketch.forceUnit)))));
    }
    step.conclusion.push_back(
        say("Ruler and protractor on a sketch to scale give the same to about two figures."));
}

bool sumAsked(const Blackboard& board) {
    return board.solved.family == Family::closePolygon && !board.sum.sizeGiven;
}

/// Many forces: turned axes, one along the sum, one across it.
void writeTurnedCheck(Blackboard& board, Step& step) {
    const Arrow& r = board.sum;
    if (!r.direction)
        return;
    const Eigen::Vector2d along = r.v / r.magnitude;
    double with = 0, across = 0;
    for (const Arrow& arrow : board.forces) {
        with += arrow.v.dot(along);
        across += along.x() * arrow.v.y() - along.y() * arrow.v.x();
    }
    step.reasoning.push_back(
        say("Turn the axes so that one lies along {}. Added up along it the components must give "
            "{} again, across it nothing: {} and {}.",
            r.vector, r.size, componentNumber(board, with, scaleOf(board)),
            componentNumber(board, across, scaleOf(board))));
}

/// Many forces and no unknown sum: what both sides come to.
void writeClosing(Blackboard& board, Step& step) {
    Eigen::Vector2d total(0, 0);
    for (const Arrow& arrow : board.forces)
        total += arrow.v;
    const double scale = scaleOf(board);
    step.reasoning.push_back(
        say("Added up, the components of all the forces come to {} along x and {} along y; their "
            "sum is to have {} and {}.",
            componentNumber(board, total.x(), scale), componentNumber(board, total.y(), scale),
            componentNumber(board, board.sum.v.x(), scale), componentNumber(board, board.sum.v.y(), scale)));
}

/// Both sides of the equation along x and y.
void writeBalance(Blackboard& board, Step& step) {
    if (isEquilibrium(board.sketch) || !isLong(board.sum)) {
        step.conclusion.push_back(say(board.options.handRounding
                                          ? "Both sums vanish but for what the rounding left over."
                                          : "Both sums vanish: the forces hold one another in equilibrium."));
        return;
    }
    const Term angle = writeAbsolute(board, step, board.sum);
    writeRight(board, step, angle, 'x');
    writeRight(board, step, angle, 'y');
    step.conclusion.push_back(say("Both ways lead to the same components of {}.", board.sum.vector));
}

void writeWrittenCheck(Blackboard& board, Step& step) {
    step.reasoning.push_back(say("Another way, without the triangle: components along the sheet's x and y."));
    const Terms angles = writeAngles(board, step);
    const Formula x = writeLeft(board, step, angles, 'x'), y = writeLeft(board, step, angles, 'y');
    if (!sumAsked(board))
        writeBalance(board, step);
    else if (board.sum.direction)
        writeSumCheck(board, step, x, y);
    else
        step.conclusion.push_back(say("Both components vanish, and with them the resultant."));
}

} // namespace

void writeCheck(Blackboard& board) {
    Step& step = board.step("check", "Check by components", Stage::all, Law::components);
    const bool byTable = sumAsked(board) && board.forces.size() > 2 && !board.hasStep("pair1");
    const bool many = byTable || board.forces.size() > kMostWritten;
    for (const Arrow& arrow : board.forces)
        if (!many)
            step.parts.push_back(arrowPart(arrow.index));
    if (!many)
        writeWrittenCheck(board, step);
    else if (byTable)
        writeTurnedCheck(board, step);
    else
        writeClosing(board, step);
    writeScale(board, step);
}

} // namespace tailpoint::explaining
