// The check by components: it needs neither the triangle nor its angles.
#include "core/explain/families.h"
#include "core/explain/quadrant.h"

#include "core/quantity/decimals.h"

#include <array>
#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr std::size_t kMostWritten = 4; ///< forces whose components are written out in the check
constexpr std::size_t kMostRows = 40;   ///< of a table

bool isLong(const Vector& vector) {
    return vector.direction && vector.magnitude > 0;
}

Formula component(const Board& board, double value) {
    return board.force(withoutNoise(value, board.carried.scale));
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

Eigen::Vector2d total(const Board& board) {
    Eigen::Vector2d added(0, 0);
    for (const Vector* force : foundForces(board))
        added += force->v;
    return added;
}

/// Under which ids x and y of a vector stand.
void appendComponents(std::vector<QuantityId>& out, const Standing& s) {
    for (const What what : {What::x, What::y})
        out.push_back({what, s.vector, {}, std::max(s.size.answer, s.way.answer), s.way.part});
}

/// Where the components of the rounded answer end in another digit, say so.
void remarkOnRoundedAnswer(const Board& board, Step& step, const Vector& sum, const Formula& x,
                           const Formula& y) {
    const double size = shownValue(sum.sizeNumber);
    const double axis = toRadians(board.sketch.reference.axisDegrees, AngleUnit::deg);
    const double turn = toRadians(shownValue(sum.wayNumber), board.sketch.angleUnit) *
                            (board.sketch.reference.sense == Sense::ccw ? 1 : -1) +
                        axis;
    const Formula roundedX = board.force(withoutNoise(size * std::cos(turn), size));
    const Formula roundedY = board.force(withoutNoise(size * std::sin(turn), size));
    if (roundedX.text == x.text && roundedY.text == y.text)
        return;
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "The components of the rounded answer, {size} at {direction}, come to {roundedX} and "
                 "{roundedY}: where their last digit differs from {x} and {y}, the rounding of the "
                 "answer is the reason, not a slip."),
        "size", sum.sizeNumber, "direction", sum.wayNumber, "roundedX", roundedX, "roundedY", roundedY, "x",
        x, "y", y));
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

    /// The angle from +x, where the sheet measures otherwise and no step has told it.
    void showFromX(const Vector& vector) {
        QuantityId fromX = vector.wayId;
        fromX.what = What::fromX;
        if (!isPlainReference(board.sketch) && (vector.turned || !isToldFromX(board, vector.id)) &&
            lines.find(fromX) != nullptr)
            show(fromX);
    }
};

void writeSumCheck(Check& check) {
    Board& board = check.board;
    const Vector& sum = board.found(kSumVector);
    const QuantityId size = magnitudeId(kSumVector), x{What::x, kSumVector}, y{What::y, kSumVector};
    check.components.clear();
    check.show(size);
    const bool same = check.step.workings.back().value->text == sum.sizeNumber.text;
    check.step.conclusion.push_back(agreesThere(board, sum, same));
    if (board.hasStep(StepKey::cosines))
        check.step.conclusion.push_back(board.say(
            SENTENCE("solution",
                     "That the angles of the triangle add up to {half} would be no check, since the third "
                     "of them comes from the other two."),
            "half", board.halfTurn()));
    if (!board.options.handRounding)
        remarkOnRoundedAnswer(board, check.step, sum, check.lines.number(x), check.lines.number(y));
}

/// Both sides of the equation along x and y.
void writeBalance(Check& check) {
    Board& board = check.board;
    const Vector& sum = board.found(kSumVector);
    if (isEquilibrium(board.sketch) || !isLong(sum)) {
        check.step.conclusion.push_back(board.say(
            board.options.handRounding
                ? SENTENCE("solution", "Both sums vanish but for what the rounding left over.")
                : SENTENCE("solution", "Both sums vanish: the forces hold one another in equilibrium.")));
        return;
    }
    check.showFromX(sum);
    check.components.clear();
    std::vector<QuantityId> components;
    appendComponents(components, {sum.id, sum.sizeId, sum.wayId});
    for (const QuantityId& component : components)
        check.show(component);
    check.step.conclusion.push_back(board.say(
        SENTENCE("solution", "Both ways lead to the same components of {sum}."), "sum", sum.vector));
}

void writeWrittenCheck(Board& board, Step& step) {
    Check check{board, step, checkLines(board, true)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Another way, without the triangle: components along the sheet's x and y.")));
    for (const Vector* force : foundForces(board))
        if (isLong(*force)) {
            check.showFromX(*force);
            appendComponents(check.components, {force->id, force->sizeId, force->wayId});
        }
    const bool asked = sumAsked(board);
    const QuantityId x = asked ? QuantityId{What::x, kSumVector} : QuantityId{What::gap, kNobody, {}, 0, 0};
    const QuantityId y = asked ? QuantityId{What::y, kSumVector} : QuantityId{What::gap, kNobody, {}, 0, 1};
    for (const QuantityId& sum : {x, y})
        if (check.lines.find(sum) != nullptr)
            check.show(sum);
    if (!asked)
        writeBalance(check);
    else if (board.sum().direction)
        writeSumCheck(check);
    else
        step.conclusion.push_back(
            board.say(SENTENCE("solution", "Both components vanish, and with them the resultant.")));
}

/// Along the sum and across it, in the sheet's sense.
std::array<double, 2> turned(const Board& board, const Eigen::Vector2d& v) {
    const Eigen::Vector2d along = board.sum().v / board.sum().magnitude;
    const double across = along.x() * v.y() - along.y() * v.x();
    return {v.dot(along), board.isCounterClockwise(1) ? across : 0 - across};
}

/// Each force in the turned axes, and their sums.
Table turnedTable(const Board& board) {
    const auto cell = [&](const Wording& wording) {
        return inWords(toText(board.say(wording, "sum", board.sum().vector)));
    };
    Table table;
    table.head = {cell(SENTENCE("table", "force")), cell(SENTENCE("table", "magnitude")),
                  cell(SENTENCE("table", "from {sum}")), cell(SENTENCE("table", "along {sum}")),
                  cell(SENTENCE("table", "across {sum}"))};
    for (const Vector* force : foundForces(board)) {
        if (!isLong(*force))
            continue;
        const auto [along, across] = turned(board, force->v);
        table.rows.push_back(
            {force->vector, force->sizeNumber,
             board.angle(normalized(*force->direction - *board.sum().direction, board.sketch.angleUnit)),
             component(board, along), component(board, across)});
    }
    const auto [along, across] = turned(board, total(board));
    table.rows.push_back(
        {inWords("ΣF"), inWords(""), inWords(""), component(board, along), component(board, across)});
    table.hasTotal = true;
    return table;
}

/// Many forces: turned axes, one along the sum, one across it.
void writeTurnedCheck(const Board& board, Step& step) {
    const Vector& sum = board.sum();
    if (!sum.direction)
        return;
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Turn the axes so that one lies along {sum}: each angle is counted from {sum}, and "
                 "the components are the magnitude times its cosine along {sum} and times its "
                 "sine across it."),
        "sum", sum.vector));
    if (board.forces().size() <= kMostRows)
        step.table = turnedTable(board);
    const auto [along, across] = turned(board, total(board));
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "Along {sum} they add up to {along}, where {size} was found, and across it to {across}."),
        "sum", sum.vector, "along", component(board, along), "size", equal(sum.size, sum.sizeNumber),
        "across", component(board, across)));
}

/// Many forces and no unknown sum: what both sides come to.
void writeClosing(const Board& board, Step& step) {
    const Eigen::Vector2d added = total(board), sum = board.found(kSumVector).v;
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Added up, the components of all the forces come to {x} along x and {y} along y; their "
                 "sum is to have {sumX} and {sumY}."),
        "x", component(board, added.x()), "y", component(board, added.y()), "sumX", component(board, sum.x()),
        "sumY", component(board, sum.y())));
}

void writeScale(const Board& board, Step& step) {
    const Vector* sought = board.sought();
    if (sought == nullptr || !board.options.division)
        return;
    const double length = board.found(sought->id).magnitude;
    if (length == 0)
        return;
    const double division = *board.options.division;
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "On the sheet {found} measures {count} divisions of {division}."), "found",
        sought->vector, "count", number(length / division, significant(length / division, 3)), "division",
        number(division, shortest(division), std::string(symbolOf(board.sketch.forceUnit)))));
}

} // namespace

Carried checkLines(const Board& board, bool inlined) {
    Carried lines(board.sketch, board.things, board.options.handRounding);
    lines.scale = board.carried.scale;
    std::vector<QuantityId> within;
    const auto give = [&](VectorId vector) {
        const Standing standing = standingOf(board.solved, vector, board.solution);
        const Vector& found = board.found(vector);
        lines.give(standing.size, board.carried, found.magnitude);
        lines.give(standing.way, board.carried, found.direction);
        if (inlined && vector != kSumVector)
            appendComponents(within, standing);
    };
    for (std::size_t i = 0; i < board.sketch.forces.size(); ++i)
        give(forceVector(i));
    give(kSumVector);
    lines.take(checkOf(board.sketch, board.solved, board.things, board.solution), {}, within);
    return lines;
}

void writeCheck(Board& board) {
    Step& step =
        board.step(StepKey::check, SENTENCE("solution", "Check by components"), Stage::all, Law::components);
    const bool byTable = sumAsked(board) && board.forces().size() > 2 && !board.hasStep(StepKey::pair);
    const bool many = byTable || board.forces().size() > kMostWritten;
    if (!many)
        for (const Vector& force : board.forces())
            step.parts.push_back(arrowPart(force.index));
    if (!many)
        writeWrittenCheck(board, step);
    else if (byTable)
        writeTurnedCheck(board, step);
    else
        writeClosing(board, step);
    writeScale(board, step);
}

} // namespace tailpoint::explaining
