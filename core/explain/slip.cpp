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

/// As an answer shows it; empty where that is what is right.
std::optional<Formula> shownSlip(const Board& board, const QuantityId& of, long double value) {
    const bool angle = dimensionOf(of.what) == Dimension::angle;
    Formula shown = angle ? board.angle(normalized(static_cast<double>(value), board.sketch.angleUnit))
                          : board.force(withoutNoise(static_cast<double>(value), board.carried.scale));
    return shown.text == board.answered(board.number(of)).text ? std::nullopt
                                                               : std::optional(std::move(shown));
}

const Change* changeOf(const std::vector<Change>& changes, const QuantityId& line) {
    for (const Change& change : changes)
        if (change.line == line)
            return &change;
    return nullptr;
}

/// By hand every value that stands in a line of its own is rounded as it is shown.
long double onTheWay(const Board& board, const QuantityId& quantity, long double value) {
    if (!board.options.handRounding || board.carried.decimal(quantity).text.empty())
        return value;
    const Dimension dimension = dimensionOf(quantity.what);
    return dimension == Dimension::force || dimension == Dimension::angle
               ? static_cast<long double>(board.carried.shown(static_cast<double>(value), dimension).value)
               : value;
}

} // namespace

std::optional<Formula> slipped(const Board& board, const QuantityId& line, Formula formula) {
    return slipped(board, {{line, std::move(formula)}}, line);
}

std::optional<Formula> slipped(const Board& board, const std::vector<Change>& changes,
                               const QuantityId& target) {
    Values values = board.carried.values();
    bool isChanged = false; // lines before the first change stand as they are printed
    for (const QuantityId& quantity : board.carried.quantities()) {
        const Line* line = board.carried.find(quantity);
        const Change* change = changeOf(changes, quantity);
        isChanged = isChanged || change != nullptr;
        if (line == nullptr || !isChanged)
            continue;
        Line changed;
        if (change != nullptr)
            changed = {line->subject, line->kind, {{{}, change->formula}}};
        const auto value =
            evaluateLine(change != nullptr ? changed : *line, board.sketch.angleUnit, values).second;
        if (quantity == target)
            return value ? shownSlip(board, target, *value) : std::nullopt;
        if (!value && change != nullptr)
            return std::nullopt;
        if (value)
            values.set(quantity, onTheWay(board, quantity, *value));
    }
    return std::nullopt;
}

} // namespace tailpoint::explaining
