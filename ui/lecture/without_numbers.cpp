// SPDX-License-Identifier: MIT
// Asking the room first: a step whose numbers are hidden.
#include "ui/lecture/plan.h"

namespace tailpoint {

namespace {

const char* const kHidden = "?";

/// Parts of a turn belong to the theorems (180° − φ); they give nothing away.
Formula withoutNumbers(Formula f) {
    if (f.kind == FormulaKind::number && !f.sub.empty() && !f.isTurn)
        return inWords(kHidden);
    if (!f.parts.empty())
        f.parts = f.parts.each([](const Formula& part) { return withoutNumbers(part); });
    return f;
}

Prose withoutNumbers(Prose prose) {
    for (Piece& piece : prose.pieces)
        if (auto* formula = std::get_if<Formula>(&piece))
            *formula = withoutNumbers(std::move(*formula));
    return prose;
}

/// Symbols stay; where there are none the line asks for its value.
Working withoutNumbers(Working working) {
    if (working.general) {
        working.general = withoutNumbers(std::move(*working.general));
        working.substituted.reset();
        working.value.reset();
        working.told.reset();
        return working;
    }
    working.substituted.reset();
    working.told.reset();
    if (working.value)
        working.value = inWords(kHidden);
    return working;
}

} // namespace

Step withoutNumbers(const Step& step) {
    Step out = step;
    for (auto* list : {&out.reasoning, &out.conclusion, &out.notes})
        for (Prose& prose : *list)
            prose = withoutNumbers(std::move(prose));
    for (Working& working : out.workings)
        working = withoutNumbers(std::move(working));
    if (out.table)
        for (auto& row : out.table->rows)
            for (Formula& cell : row)
                cell = withoutNumbers(std::move(cell));
    return out;
}

} // namespace tailpoint
