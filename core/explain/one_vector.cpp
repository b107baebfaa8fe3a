// SPDX-License-Identifier: MIT
// One vector unknown: the component table, and from its sums the vector that closes the polygon.
#include "core/explain/agreement.h"
#include "core/explain/families.h"
#include "core/explain/listed.h"
#include "core/explain/table_slips.h"

#include <algorithm>
#include <numeric>

namespace tailpoint::explaining {

namespace {

Entries knownForces(const Board& board) {
    Entries known;
    for (const Vector& force : board.forces())
        if (force.sizeGiven && force.wayGiven && force.magnitude > 0)
            known.emplace_back(force.id, 1);
    return known;
}

/// The sum asked for: its components are the column sums.
Step& writeSumComponents(Board& board) {
    const Vector& sum = board.sum();
    const Entries entries = knownForces(board);
    const Total total = totalOf(sum);
    writeComponents(board, board.carried, entries);
    Step& step = board.step(StepKey::components, SENTENCE("solution", "Component table"), Stage::construction,
                            Law::components);
    writeComponentTable(board, step, board.carried, entries, total);
    writeColumns(board, step, entries, total);
    noteComponentSlips(board, step, entries, sum.sizeId);
    return step;
}

void writeSumByTable(Board& board) {
    const Vector& sum = board.sum();
    const Total total = totalOf(sum);
    Step& step = writeSumComponents(board);
    if (sum.direction)
        return writePolar(board, sum);
    step.conclusion.push_back(vanishing(board, board.carried.number(total.x), board.carried.number(total.y)));
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "So {sum} is zero and has no direction."), "sum", sum.vector));
}

/// Several known forces become K; a single one stands for itself.
void writeKnownForces(Board& board, const Entries& entries, const Vector& missing) {
    if (entries.empty())
        return;
    const bool several = board.carried.find({What::x, kKnownVector}) != nullptr;
    writeComponents(board, board.carried, entries);
    Step& step = board.step(StepKey::components, SENTENCE("solution", "Component table of the known forces"),
                            Stage::construction, Law::components);
    noteComponentSlips(board, step, entries, missing.sizeId);
    if (!several)
        return writeComponentTable(board, step, board.carried, entries, std::nullopt);
    const Vector& known = board.at(kKnownVector);
    const Total total = totalOf(known);
    step.reasoning.push_back(board.say(SENTENCE("solution", "{known} stands for the known forces added up."),
                                       "known", known.vector));
    writeComponentTable(board, step, board.carried, entries, total);
    writeColumns(board, step, entries, total);
}

/// X = S − K, X = −K where the sum is zero.
Formula missingEquation(const Board& board, const Vector& missing, const Entries& entries) {
    std::vector<Formula> terms;
    if (!isEquilibrium(board.sketch))
        terms.push_back(board.sum().vector);
    if (board.carried.find({What::x, kKnownVector}) != nullptr)
        terms.push_back(negative(board.at(kKnownVector).vector));
    else if (!entries.empty())
        terms.push_back(negative(board.at(entries.front().first).vector));
    return equal(missing.vector, terms.empty() ? inWords("0") : sumOf(std::move(terms)));
}

void writeMissingComponents(Board& board, const Vector& missing) {
    const Entries entries = knownForces(board);
    writeKnownForces(board, entries, missing);
    Step& step = board.step(StepKey::missing, SENTENCE("solution", "Components of the missing force"),
                            Stage::found, Law::components);
    step.parts = {arrowPart(missing.index)};
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "The missing force makes up the difference: {equation}."), "equation",
                  missingEquation(board, missing, entries)));
    if (!isEquilibrium(board.sketch) && board.carried.find({What::x, kSumVector}) != nullptr)
        showComponents(board, step, kSumVector);
    board.show(step, {What::x, missing.id});
    board.show(step, {What::y, missing.id});
    if (!entries.empty())
        noteAddedInstead(board, step, missing,
                         board.carried.find({What::x, kKnownVector}) != nullptr
                             ? board.at(kKnownVector).vector
                             : board.at(entries.front().first).vector);
}

void writeMissingByTable(Board& board, const Vector& missing) {
    writeMissingComponents(board, missing);
    if (missing.direction)
        writePolar(board, missing);
}

} // namespace

namespace {

constexpr std::size_t kMostEntriesWritten = 6; ///< magnitudes of a bound that is written out

/// All that is known beside the vector sought, the greatest first.
std::vector<const Vector*> knownVectors(const Board& board) {
    std::vector<const Vector*> known;
    for (const auto& [force, sign] : knownForces(board))
        known.push_back(&board.at(force));
    if (&board.sum() != board.sought() && board.sum().sizeNumber.value > 0)
        known.push_back(&board.sum());
    const auto greatest = std::max_element(known.begin(), known.end(), [](const Vector* a, const Vector* b) {
        return a->sizeNumber.value < b->sizeNumber.value;
    });
    if (greatest != known.end())
        std::rotate(known.begin(), greatest, greatest + 1);
    return known;
}

/// A + B + C; the greatest less the others: A − (B + C).
Formula bound(const std::vector<const Vector*>& known, bool most) {
    std::vector<Formula> others;
    for (std::size_t i = 1; i < known.size(); ++i)
        others.push_back(known[i]->size);
    if (others.empty())
        return known.front()->size;
    if (!most)
        return sum(known.front()->size, negative(sumOf(std::move(others))));
    others.insert(others.begin(), known.front()->size);
    return sumOf(std::move(others));
}

/// Between the greatest less all others and all together. Precondition: there is one.
void writePolygonBounds(Board& board, Step& step, const Vector& sought,
                        const std::vector<const Vector*>& known) {
    const double all = std::accumulate(known.begin(), known.end(), 0.0, [](double sum, const Vector* one) {
        return sum + one->sizeNumber.value;
    });
    const double least = 2 * known.front()->sizeNumber.value - all;
    const bool hasLeast = least > 0;
    const auto bounds = [&](Formula from, Formula to) {
        return hasLeast ? related(std::move(from), Relation::lessOrEqual, sought.size, Relation::lessOrEqual,
                                  std::move(to))
                        : related(sought.size, Relation::lessOrEqual, std::move(to));
    };
    const Formula low = board.bound(std::max(least, 0.0)), high = board.bound(all);
    Working working{{}, {}, {}, bounds(low, high)};
    if (known.size() <= kMostEntriesWritten)
        working.general = bounds(bound(known, false), bound(known, true));
    step.workings.push_back(std::move(working));
    board.expected = {sought.sizeId, hasLeast ? std::optional(low) : std::nullopt, high};
    step.conclusion.push_back(board.say(
        known.size() == 2
            ? (hasLeast
                   ? SENTENCE("solution",
                              "It can't be longer than the two known vectors laid end to end, nor shorter "
                              "than the greater of them less the other.")
                   : SENTENCE("solution", "It can't be longer than the two known vectors laid end to end "
                                          "in one line."))
        : hasLeast
            ? SENTENCE("solution",
                       "It can't be longer than all the known vectors laid end to end, nor shorter than "
                       "the greatest of them less all the others.")
            : SENTENCE("solution", "It can't be longer than all the known vectors laid end to end in "
                                   "one line.")));
}

/// Of the known vectors those two that act against each other most nearly; none where all are within 120°.
std::optional<std::pair<const Vector*, const Vector*>> opposedMost(const std::vector<const Vector*>& known) {
    double least = -0.5;
    std::optional<std::pair<const Vector*, const Vector*>> opposed;
    for (std::size_t i = 0; i < known.size(); ++i)
        for (std::size_t k = i + 1; k < known.size(); ++k) {
            const double lengths = known[i]->magnitude * known[k]->magnitude;
            const double cosine = lengths > 0 ? known[i]->v.dot(known[k]->v) / lengths : 0;
            if (cosine < least) {
                least = cosine;
                opposed = {known[i], known[k]};
            }
        }
    return opposed;
}

/// An upper bound alone says little where vectors all but cancel.
void sayBoundIsWide(const Board& board, Step& step, const std::vector<const Vector*>& known) {
    const auto opposed = opposedMost(known);
    if (known.size() < 3 || !opposed)
        return;
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "The bound is wide: vectors that act largely against each other, such as {one} "
                             "and {other}, take from the length. Measure it on the sketch."),
        "one", opposed->first->vector, "other", opposed->second->vector));
}

} // namespace

void writePolygonEstimate(Board& board) {
    Step& step =
        board.step(StepKey::estimate, SENTENCE("solution", "Sketch to scale, and estimate before computing"),
                   Stage::construction);
    step.parts = {part(FigurePart::Kind::polygon)};
    step.reasoning.push_back(board.say(SENTENCE(
        "solution", "Set tip to tail in any order, the forces make a polygon; the vector sought closes "
                    "it. Its length and its direction can be read from a sketch to scale.")));
    const std::vector<const Vector*> known = knownVectors(board);
    const Vector* sought = board.sought();
    if (sought == nullptr || known.empty())
        return;
    writePolygonBounds(board, step, *sought, known);
    sayBoundIsWide(board, step, known);
    if (known.size() == 2)
        narrowByRightAngle(board, step, *sought, *known[0], *known[1],
                           known[0]->sizeNumber.value - known[1]->sizeNumber.value,
                           known[0]->sizeNumber.value + known[1]->sizeNumber.value);
    tellScale(board, step);
}

/// Why two vectors are not solved by their triangle.
void writeWayAround(Board& board) {
    if (board.lost < kMostLost)
        return;
    Step& step = board.step(StepKey::choice, SENTENCE("solution", "Which way?"), Stage::construction);
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "The vector sought is so short beside the others that in the law of cosines {count} "
                 "leading digits of the squares would cancel. Components lose only half as many: add "
                 "those."),
        "count", counted(board, board.lost)));
}

namespace {

/// Two forces are expected as they are where the triangle is solved.
void writeTableEstimate(Board& board) {
    constexpr double kOneLine = 1e-12;
    const auto& forces = board.forces();
    const bool isPair = forces.size() == 2 && board.sought() == &board.sum();
    const double lengths = isPair ? forces[0].magnitude * forces[1].magnitude : 0;
    if (lengths == 0)
        writePolygonEstimate(board);
    else if (std::abs(forces[0].v.x() * forces[1].v.y() - forces[0].v.y() * forces[1].v.x()) <
             kOneLine * lengths)
        writeLineEstimate(board);
    else
        writePairEstimate(board);
}

} // namespace

void writeTable(Board& board) {
    writeGiven(board);
    writeCount(board);
    writeTableEstimate(board);
    writeWayAround(board);
    const Vector* missing = board.sought();
    if (missing == nullptr || missing == &board.sum())
        writeSumByTable(board);
    else
        writeMissingByTable(board, *missing);
    writeEnd(board);
}

void writeNeeded(Board& board, const Vector& sought) {
    if (sought.id == kSumVector)
        writeSumComponents(board);
    else
        writeMissingComponents(board, sought);
}

void showComponents(const Board& board, Step& step, VectorId vector) {
    if (!isPlainReference(board.sketch) && !isToldFromX(board, vector))
        board.show(step, {What::fromX, vector});
    board.show(step, {What::x, vector});
    board.show(step, {What::y, vector});
}

void writeKnownComponents(Board& board) {
    if (!board.reduction || !board.reduction->addsUp() ||
        board.carried.find({What::x, kKnownVector}) == nullptr)
        return;
    Entries entries;
    bool fromSum = false;
    for (const auto& [vector, sign] : board.reduction->known) {
        fromSum = fromSum || vector == kSumVector;
        if (board.at(vector).magnitude > 0)
            entries.emplace_back(vector, sign);
    }
    const Vector& known = board.at(kKnownVector);
    const Total total = totalOf(known);
    double all = 0;
    for (const auto& [vector, sign] : entries)
        all += board.at(vector).sizeNumber.value;
    board.worked.steps.back().conclusion.push_back(board.say(
        SENTENCE("solution",
                 "First the known vectors are added up to one, {known}; it can't be longer than all "
                 "of them laid end to end, {all}."),
        "known", known.vector, "all", board.bound(all)));
    writeComponents(board, board.carried, entries);
    Step& step = board.step(StepKey::known,
                            fromSum ? SENTENCE("solution", "What the known vectors leave")
                                    : SENTENCE("solution", "Add up the known forces"),
                            Stage::construction, Law::components);
    step.reasoning.push_back(board.say(
        fromSum ? SENTENCE("solution",
                           "{known} is what the forces sought must amount to: the sum less the known forces.")
                : SENTENCE("solution", "From here on the single force {known} stands for the known forces."),
        "known", known.vector));
    writeComponentTable(board, step, board.carried, entries, total);
    writeColumns(board, step, entries, total);
    noteComponentSlips(board, step, entries,
                       board.carried.find(known.sizeId) != nullptr ? known.sizeId : total.x);
}

void writeKnown(Board& board) {
    writeKnownComponents(board);
    if (board.hasStep(StepKey::known) && board.at(kKnownVector).magnitude > 0)
        writePolar(board, board.at(kKnownVector));
}

} // namespace tailpoint::explaining
