// SPDX-License-Identifier: MIT
#include "core/explain/table_slips.h"

#include "core/explain/slip.h"

namespace tailpoint::explaining {

namespace {

bool isAlongSlope(const Board& board, VectorId vector) {
    return std::holds_alternative<SlopeForm>(board.given(vector).direction.form) && !board.at(vector).turned;
}

/// The first vector with which the slip shows.
void noteSwapped(const Board& board, Step& step, const Entries& entries, const QuantityId& target) {
    for (const auto& [vector, sign] : entries) {
        const QuantityId x{What::x, vector}, y{What::y, vector};
        if (board.carried.find(x) == nullptr || board.carried.find(y) == nullptr)
            continue;
        const auto value =
            slipped(board, {{x, board.carried.formulaOf(y)}, {y, board.carried.formulaOf(x)}}, target);
        if (!value)
            continue;
        const Formula name = board.at(vector).vector, of = board.symbolOf(target);
        step.notes.push_back(
            isAlongSlope(board, vector)
                ? board.say(SENTENCE("solution", "The run goes with x and the rise with y: with the two of "
                                                 "{vector} exchanged {target} would come out as {value}."),
                            "vector", name, "target", of, "value", *value)
                : swappedTold(board, name, of, *value));
        return;
    }
}

void noteLostSign(const Board& board, Step& step, const Entries& entries, const QuantityId& target) {
    for (const auto& [vector, sign] : entries)
        for (const What what : {What::x, What::y}) {
            const QuantityId component{what, vector};
            const auto carried = board.carried.value(component);
            if (board.carried.find(component) == nullptr || !carried || *carried >= 0)
                continue;
            const auto value =
                slipped(board, {{component, absolute(board.carried.formulaOf(component))}}, target);
            if (!value)
                continue;
            step.notes.push_back(board.say(
                SENTENCE("solution", "{component} is negative: taken without its sign it would make {target} "
                                     "come out as {value}."),
                "component", board.symbolOf(component), "target", board.symbolOf(target), "value", *value));
            return;
        }
}

/// What is taken away is added.
Formula added(Formula formula) {
    if (formula.kind == FormulaKind::negative)
        return Formula(formula.parts.front());
    for (Formula& part : formula.parts)
        if (part.kind == FormulaKind::negative)
            part = Formula(part.parts.front());
    return formula;
}

} // namespace

Prose swappedTold(const Board& board, const Formula& vector, const Formula& target, const Formula& value) {
    return board.say(SENTENCE("solution",
                              "Counted from +x the cosine goes with x and the sine with y: with the two of "
                              "{vector} exchanged {target} would come out as {value}."),
                     "vector", vector, "target", target, "value", value);
}

void noteComponentSlips(const Board& board, Step& step, const Entries& entries, const QuantityId& target) {
    noteSwapped(board, step, entries, target);
    noteLostSign(board, step, entries, target);
}

void noteAddedInstead(const Board& board, Step& step, const Vector& sought, const Formula& known) {
    const QuantityId x{What::x, sought.id}, y{What::y, sought.id};
    const std::vector<Change> changes{{x, added(board.carried.formulaOf(x))},
                                      {y, added(board.carried.formulaOf(y))}};
    const bool atRest = isEquilibrium(board.sketch);
    const QuantityId& target = atRest ? sought.wayId : sought.sizeId;
    if (const auto value = slipped(board, changes, target))
        step.notes.push_back(board.say(
            atRest ? SENTENCE("solution", "{sought} is not {known} but what balances it: with the "
                                          "signs of {known} kept {target} would come out as {value}.")
                   : SENTENCE("solution",
                              "{known} is part of the sum already: added to the sum instead of "
                              "taken away from it, {known} would make {target} come out as {value}."),
            "sought", sought.vector, "known", known, "target", board.symbolOf(target), "value", *value));
}

} // namespace tailpoint::explaining
