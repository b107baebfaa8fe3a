// Asking the room first: a step whose numbers are not yet said.
#include "ui/lecture/plan.h"

#include <cmath>

namespace tailpoint {

namespace {

const char* const kUnsaid = "?";

/// Parts of a turn belong to the theorems (180° − φ); they give nothing away.
bool isPartOfTurn(const Formula& number) {
    return number.text == "180" || number.text == "360" || number.text == "90" || number.text == "200" ||
           number.text == "400" || number.text == "100" || number.text.find("π") != std::string::npos;
}

Formula hushed(Formula f) {
    const bool angle = f.sub == "°" || f.sub == "gon" || f.sub == "rad";
    if (f.kind == FormulaKind::number && !f.sub.empty() && !(angle && isPartOfTurn(f)))
        return inWords(kUnsaid);
    for (Formula& part : f.parts)
        part = hushed(std::move(part));
    return f;
}

Prose hushed(Prose prose) {
    for (Piece& piece : prose.pieces)
        if (auto* formula = std::get_if<Formula>(&piece))
            *formula = hushed(std::move(*formula));
    return prose;
}

/// Symbols stay; where there are none the line asks for its value.
Working hushed(Working working) {
    if (working.general) {
        working.general = hushed(std::move(*working.general));
        working.substituted.reset();
        working.value.reset();
        return working;
    }
    working.substituted.reset();
    if (working.value)
        working.value = inWords(kUnsaid);
    return working;
}

} // namespace

Step hushed(const Step& step) {
    Step out = step;
    for (auto* list : {&out.reasoning, &out.conclusion, &out.notes})
        for (Prose& prose : *list)
            prose = hushed(std::move(prose));
    for (Working& working : out.workings)
        working = hushed(std::move(working));
    if (out.table)
        for (auto& row : out.table->rows)
            for (Formula& cell : row)
                cell = hushed(std::move(cell));
    return out;
}

} // namespace tailpoint
