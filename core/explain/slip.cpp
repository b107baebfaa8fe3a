// SPDX-License-Identifier: MIT
#include "core/explain/slip.h"

#include "core/explain/agreement.h"

#include <algorithm>
#include <utility>

namespace tailpoint::explaining {

namespace {

bool holds(const Formula& formula, const QuantityId& quantity) {
    return formula.id == quantity || std::any_of(formula.parts.begin(), formula.parts.end(),
                                                 [&](const Formula& part) { return holds(part, quantity); });
}

} // namespace

Formula exchanged(Formula formula, const QuantityId& right, const Formula& wrong) {
    if (formula.id == right)
        return wrong;
    if (holds(std::as_const(formula), right))
        formula.parts =
            formula.parts.each([&](const Formula& part) { return exchanged(part, right, wrong); });
    return formula;
}

Formula withFunction(Formula formula, std::string_view right, std::string_view wrong) {
    if (formula.kind == FormulaKind::function && formula.text == right)
        formula.text = wrong;
    if (!formula.parts.empty())
        formula.parts =
            formula.parts.each([&](const Formula& part) { return withFunction(part, right, wrong); });
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

/// As an answer shows it; empty where that is what is right, or so near that rounding alone could lead there.
std::optional<Formula> shownSlip(const Board& board, const QuantityId& of, long double value) {
    const bool angle = dimensionOf(of.what) == Dimension::angle;
    Formula shown = angle ? board.angle(normalized(static_cast<double>(value), board.sketch.angleUnit))
                          : board.force(withoutNoise(static_cast<double>(value), board.carried.scale));
    return isWithinOnePlace(board, shown, board.answered(board.number(of))) ? std::nullopt
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

/// What a change moves: the lines changed, and those to which they lead.
struct Moved {
    std::vector<std::pair<QuantityId, std::optional<long double>>> values{};

    const std::pair<QuantityId, std::optional<long double>>* find(const QuantityId& quantity) const {
        for (const auto& value : values)
            if (value.first == quantity)
                return &value;
        return nullptr;
    }
    bool holds(const Formula& formula) const {
        return (formula.id.what != What::none && find(formula.id) != nullptr) ||
               std::any_of(formula.parts.begin(), formula.parts.end(),
                           [&](const Formula& part) { return holds(part); });
    }
    bool leadsTo(const Line& line) const {
        const auto any = [&](const Formula& formula) { return holds(formula); };
        return !values.empty() && std::any_of(line.cases.begin(), line.cases.end(), [&](const Case& one) {
            return holds(one.formula) || std::any_of(one.when.begin(), one.when.end(), any);
        });
    }
};

} // namespace

std::optional<Formula> slipped(const Board& board, const QuantityId& line, Formula formula) {
    return slipped(board, {{line, std::move(formula)}}, line);
}

std::optional<Formula> slipped(const Board& board, const std::vector<Change>& changes,
                               const QuantityId& target) {
    const Carried& carried = board.carried;
    Moved moved;
    const SymbolLookup lookUp = [&](const Formula& symbol) {
        const auto* own = moved.find(symbol.id);
        return own != nullptr ? own->second : carried.value(symbol.id);
    };
    for (const QuantityId& quantity : carried.quantities()) {
        const Line* line = carried.find(quantity);
        const Change* change = changeOf(changes, quantity);
        if (line == nullptr || (change == nullptr && !moved.leadsTo(*line)))
            continue; // stands as it is printed
        const auto value = change != nullptr ? evaluate(change->formula, board.sketch.angleUnit, lookUp)
                                             : evaluateLine(*line, board.sketch.angleUnit, lookUp).second;
        if (quantity == target)
            return value ? shownSlip(board, target, *value) : std::nullopt;
        if (!value && change != nullptr)
            return std::nullopt;
        if (value)
            moved.values.emplace_back(quantity, onTheWay(board, quantity, *value));
    }
    return std::nullopt;
}

} // namespace tailpoint::explaining
