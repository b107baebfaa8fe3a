#include "core/explain/slip.h"

#include <utility>

namespace tailpoint::explaining {

Formula exchanged(Formula formula, const QuantityId& right, const Formula& wrong) {
    if (formula.id == right)
        return wrong;
    for (Formula& part : formula.parts)
        part = exchanged(std::move(part), right, wrong);
    return formula;
}

Formula withFunction(Formula formula, std::string_view right, std::string_view wrong) {
    if (formula.kind == FormulaKind::function && formula.text == right)
        formula.text = wrong;
    for (Formula& part : formula.parts)
        part = withFunction(std::move(part), right, wrong);
    return formula;
}

Formula turnedBack(Formula formula) {
    if (formula.parts.size() < 2)
        return formula;
    Formula& angle = formula.parts[1];
    angle = angle.kind == FormulaKind::negative ? Formula(angle.parts.front()) : negative(angle);
    return formula;
}

namespace {

Values carriedValues(const Board& board) {
    Values values;
    for (const QuantityId& quantity : board.carried.quantities())
        if (const auto value = board.carried.value(quantity))
            values.set(quantity, *value);
    return values;
}

} // namespace

std::optional<Formula> slipped(const Board& board, const QuantityId& line, Formula formula) {
    Line changed = *board.carried.find(line);
    changed.cases = {{{}, std::move(formula)}};
    const AngleUnit unit = board.sketch.angleUnit;
    const auto value = evaluateLine(changed, unit, carriedValues(board)).second;
    if (!value)
        return std::nullopt;
    const bool angle = dimensionOf(line.what) == Dimension::angle;
    Formula shown = angle ? board.angle(normalized(static_cast<double>(*value), unit))
                          : board.force(static_cast<double>(*value));
    return shown.text == board.answered(board.number(line)).text ? std::nullopt
                                                                 : std::optional(std::move(shown));
}

} // namespace tailpoint::explaining
