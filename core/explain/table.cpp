// One vector unknown: the component table, and from its sums the vector that closes the polygon.
#include "core/explain/components.h"
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr std::size_t kMostRows = 40;   ///< of a table; beyond, the first half of them and the rest summed up
constexpr std::size_t kMostWritten = 6; ///< terms of a written sum

using Arrows = std::vector<const Arrow*>;

/// A row of the table: a vector, or what it takes away.
struct Entry {
    const Arrow* arrow;
    int sign = 1;
};
using Entries = std::vector<Entry>;

Arrows knownForces(const Blackboard& board) {
    Arrows known;
    for (const Arrow& arrow : board.forces)
        if (arrow.sizeGiven && arrow.directionGiven)
            known.push_back(&arrow);
    return known;
}

Entries entriesOf(const Arrows& arrows, int sign = 1) {
    Entries entries;
    for (const Arrow* arrow : arrows)
        if (arrow->direction)
            entries.push_back({arrow, sign});
    return entries;
}

double scaleOf(const Entries& entries) {
    double scale = 0;
    for (const Entry& entry : entries)
        scale += entry.arrow->magnitude;
    return scale;
}

/// The angle from +x as the table shows it; no working is written.
Formula absoluteNumber(const Blackboard& board, const Arrow& arrow) {
    if (isPlainReference(board.sketch))
        return arrow.directionNumber;
    const double axis = board.sketch.reference.axisDegrees / 360 * turnIn(board.sketch.angleUnit);
    const double sign = board.sketch.reference.sense == Sense::ccw ? 1 : -1;
    return board.angleInUnit(normalized(axis + sign * arrow.directionNumber.value, board.sketch.angleUnit));
}

struct Sums {
    Formula x, y; ///< carried
};

struct TableWriter {
    Blackboard& board;
    const Entries& entries;
    double scale;
    Eigen::Vector2d carried{0, 0};
    Table table{};

    void row(const Entry& entry) {
        const Arrow& arrow = *entry.arrow;
        const Formula angle = absoluteNumber(board, arrow);
        const Formula x = component(entry, angle, 'x'), y = component(entry, angle, 'y');
        carried += Eigen::Vector2d(x.value, y.value);
        table.rows.push_back(
            {entry.sign < 0 ? negative(arrow.vector) : arrow.vector, arrow.sizeNumber, angle, x, y});
    }

    Formula component(const Entry& entry, const Formula& angle, char axis) const {
        const Arrow& arrow = *entry.arrow;
        double value = axis == 'x' ? arrow.v.x() : arrow.v.y();
        if (board.options.handRounding) {
            const CosSin unit = cosSin(board.valueOf(angle), board.sketch.angleUnit);
            value = static_cast<double>(arrow.sizeNumber.value * (axis == 'x' ? unit.cos : unit.sin));
        }
        return componentNumber(board, entry.sign * value, arrow.magnitude);
    }

    void rest(std::size_t from) {
        Eigen::Vector2d total(0, 0);
        for (std::size_t i = from; i < entries.size(); ++i)
            total += entries[i].sign * entries[i].arrow->v;
        carried += total;
        table.rows.push_back({inWords("the other " + std::to_string(entries.size() - from)), inWords(""),
                              inWords(""), componentNumber(board, total.x(), scale),
                              componentNumber(board, total.y(), scale)});
    }
};

Sums writeComponentTable(Blackboard& board, Step& step, const Entries& entries, const Formula& totalName,
                         const Eigen::Vector2d& total) {
    TableWriter writer{board, entries, scaleOf(entries)};
    const bool plain = isPlainReference(board.sketch);
    writer.table.head = {inWords("force"), inWords("magnitude"), inWords(plain ? "direction" : "from +x"),
                         inWords("x"), inWords("y")};
    const std::size_t shown = entries.size() <= kMostRows ? entries.size() : kMostRows / 2;
    for (std::size_t i = 0; i < shown; ++i)
        writer.row(entries[i]);
    if (shown < entries.size())
        writer.rest(shown);
    const Eigen::Vector2d sums = board.options.handRounding ? writer.carried : total;
    Sums result{componentNumber(board, sums.x(), writer.scale),
                componentNumber(board, sums.y(), writer.scale)};
    writer.table.rows.push_back({totalName, inWords(""), inWords(""), result.x, result.y});
    step.table = std::move(writer.table);
    return result;
}

void explainTable(Blackboard& board, Step& step) {
    step.reasoning.push_back(
        say("Resolve each force along the sheet's x and y: x = magnitude times cosine, y = "
            "magnitude times sine of its angle from +x, signs included. Then add each column."));
    if (!isPlainReference(board.sketch))
        step.reasoning.push_back(
            say("The sheet measures from {}, {}; in the table all angles are turned to +x, "
                "counter-clockwise.",
                board.axisWords(),
                inWords(board.sketch.reference.sense == Sense::ccw ? "counter-clockwise" : "clockwise")));
    step.notes.push_back(say("Magnitudes don't add up, components do, each with its sign."));
}

void writeManyEstimate(Blackboard& board, const Arrows& arrows) {
    Step& step =
        board.step("estimate", "Sketch to scale, and estimate before computing", Stage::construction);
    step.parts = {part(FigurePart::Kind::polygon)};
    step.reasoning.push_back(
        say("Set tip to tail, the forces make a polygon, in any order; the vector sought closes "
            "it. Its length and its direction can be read from a sketch to scale."));
    if (&board.sum == sought(board))
        step.workings.push_back(
            {{},
             {},
             {},
             related(board.sum.size, Relation::lessOrEqual, board.force(scaleOf(entriesOf(arrows))))});
    if (step.workings.empty())
        return;
    step.conclusion.push_back(say("It can't be longer than all the forces laid in one line."));
}

Formula columnSum(const Blackboard& board, const Entries& entries, char axis) {
    std::vector<Formula> terms;
    for (const Entry& entry : entries) {
        Formula term = board.component(*entry.arrow, axis);
        terms.push_back(entry.sign < 0 ? negative(std::move(term)) : std::move(term));
    }
    return sumOf(std::move(terms));
}

Formula columnNumbers(const Table& table, std::size_t column) {
    std::vector<Formula> terms;
    for (std::size_t row = 0; row + 1 < table.rows.size(); ++row)
        terms.push_back(table.rows[row][column]);
    return sumOf(std::move(terms));
}

/// R_x = P_x + Q_x + ... where the terms are few enough to be written.
void writeColumn(const Blackboard& board, Step& step, const Formula& subject, const Entries& entries,
                 char axis, const Formula& value) {
    Working working{subject, {}, {}, value};
    if (entries.size() <= kMostWritten) {
        working.general = columnSum(board, entries, axis);
        working.substituted = columnNumbers(*step.table, axis == 'x' ? 3 : 4);
    }
    step.workings.push_back(std::move(working));
}

/// The sum asked for: its components are the column sums.
void writeSumByTable(Blackboard& board, const Arrows& arrows) {
    Step& step = board.step("components", "Component table", Stage::construction, Law::components);
    explainTable(board, step);
    const Entries entries = entriesOf(arrows);
    const Sums sums = writeComponentTable(board, step, entries, board.sum.vector, board.sum.v);
    const Formula x = board.component(board.sum, 'x'), y = board.component(board.sum, 'y');
    writeColumn(board, step, x, entries, 'x', sums.x);
    writeColumn(board, step, y, entries, 'y', sums.y);
    if (board.sum.direction)
        return writePolar(board, board.sum, {x, sums.x}, {y, sums.y});
    step.conclusion.push_back(
        say("Both sums are zero: the forces hold one another in equilibrium, and {} has no "
            "direction.",
            board.sum.vector));
}

/// X_x = S_x − K_x, or −K_x where the sum is zero.
Term writeMissingComponent(Blackboard& board, Step& step, const Arrow& missing, const Formula& known,
                           char axis) {
    const bool rest = isEquilibrium(board.sketch);
    const double total = axis == 'x' ? board.sum.v.x() : board.sum.v.y();
    const Formula totalNumber = componentNumber(board, total, board.sum.magnitude);
    const Formula knownSymbol = board.things.formula({axis == 'x' ? What::x : What::y, kKnownVector});
    Formula subject = board.component(missing, axis);
    Working working{subject, {}, {}, {}};
    working.general =
        rest ? negative(knownSymbol) : sum(board.component(board.sum, axis), negative(knownSymbol));
    working.substituted = rest ? negative(known) : sum(totalNumber, negative(known));
    Formula value = board.settle(working, axis == 'x' ? missing.v.x() : missing.v.y(), Quantity::force);
    step.workings.push_back(std::move(working));
    return {std::move(subject), std::move(value)};
}

void writeTotalComponents(Blackboard& board, Step& step) {
    if (isEquilibrium(board.sketch))
        return;
    const Term angle = writeAbsolute(board, step, board.sum);
    for (char axis : {'x', 'y'}) {
        const Expression e = componentOf(board.sum, angle, axis);
        Working working{board.component(board.sum, axis), e.general, e.numbers, {}};
        board.settle(working, axis == 'x' ? board.sum.v.x() : board.sum.v.y(), Quantity::force);
        step.workings.push_back(std::move(working));
    }
}

void writeMissingByTable(Blackboard& board, const Arrows& arrows, Arrow& missing) {
    const Arrow known = board.madeArrow(kKnownVector, board.solved.knownSum);
    Step& table =
        board.step("components", "Component table of the known forces", Stage::construction, Law::components);
    explainTable(board, table);
    const Entries entries = entriesOf(arrows);
    const Sums sums = writeComponentTable(board, table, entries, known.vector, known.v);
    writeColumn(board, table, board.component(known, 'x'), entries, 'x', sums.x);
    writeColumn(board, table, board.component(known, 'y'), entries, 'y', sums.y);
    table.conclusion.push_back(say("{} stands for the known forces added up.", known.vector));
    Step& step = board.step("missing", "Components of the missing force", Stage::found, Law::components);
    step.parts = {arrowPart(missing.index)};
    step.reasoning.push_back(say("The missing force makes up the difference: {}.",
                                 equal(missing.vector, isEquilibrium(board.sketch)
                                                           ? negative(known.vector)
                                                           : sum(board.sum.vector, negative(known.vector)))));
    writeTotalComponents(board, step);
    const Term x = writeMissingComponent(board, step, missing, sums.x, 'x');
    const Term y = writeMissingComponent(board, step, missing, sums.y, 'y');
    if (missing.direction)
        writePolar(board, missing, x, y);
}

} // namespace

Arrow* sought(Blackboard& board) {
    const int index = board.solved.unknownVectors[0];
    return index == kNoVector ? nullptr : &board.at(index);
}

Arrow addKnown(Blackboard& board, const Reduction& reduction) {
    Entries entries;
    bool fromSum = false;
    for (const auto& [vector, sign] : reduction.known) {
        fromSum = fromSum || vector == kSumVector;
        if (const Arrow& arrow = board.at(indexOf(vector)); arrow.direction)
            entries.push_back({&arrow, sign});
    }
    Eigen::Vector2d total =
        fromSum ? Eigen::Vector2d(board.sum.v - board.solved.knownSum) : board.solved.knownSum;
    Arrow known = board.madeArrow(kKnownVector, total);
    Step& step = board.step("known", fromSum ? "What the known vectors leave" : "Add up the known forces",
                            Stage::construction, Law::components);
    explainTable(board, step);
    const Sums sums = writeComponentTable(board, step, entries, known.vector, known.v);
    const Formula x = board.component(known, 'x'), y = board.component(known, 'y');
    writeColumn(board, step, x, entries, 'x', sums.x);
    writeColumn(board, step, y, entries, 'y', sums.y);
    step.conclusion.push_back(say(fromSum ? "{} is what the forces sought must amount to."
                                          : "From here on the single force {} stands for them.",
                                  known.vector));
    if (known.magnitude > 0)
        writePolar(board, known, {x, sums.x}, {y, sums.y});
    return known;
}

void writeComparison(Blackboard& board) {
    const Entries entries = entriesOf(knownForces(board));
    Step& step = board.step("components", "Both sides by components", Stage::all, Law::components);
    explainTable(board, step);
    Eigen::Vector2d total(0, 0);
    for (const Entry& entry : entries)
        total += entry.arrow->v;
    const Sums sums = writeComponentTable(board, step, entries, inWords("ΣF"), total);
    const double scale = scaleOf(entries) + board.sum.magnitude;
    step.conclusion.push_back(
        say("The forces amount to {} along x and {} along y; their sum is to have {} and {}.", sums.x, sums.y,
            componentNumber(board, board.sum.v.x(), scale), componentNumber(board, board.sum.v.y(), scale)));
}

void writeTable(Blackboard& board) {
    const Arrows arrows = knownForces(board);
    writeGiven(board);
    writeCount(board);
    writeManyEstimate(board, arrows);
    Arrow* missing = sought(board);
    if (missing == nullptr || missing == &board.sum)
        writeSumByTable(board, arrows);
    else
        writeMissingByTable(board, arrows, *missing);
    writeAnswer(board);
    writeCheck(board);
    writeRoundingCost(board);
}

void writePolygonEstimate(Blackboard& board) {
    writeManyEstimate(board, knownForces(board));
}

} // namespace tailpoint::explaining
