// SPDX-License-Identifier: MIT
#include "core/explain/rows.h"

#include "core/quantity/utf8.h"

namespace tailpoint::explaining {

namespace {

std::size_t widthOf(const Formula& term) {
    return characterCount(toText(term));
}

/// In those after the first an empty term leads, so that the sign of the next one shows.
Formula nextRow(bool isFirst) {
    Formula row;
    row.kind = FormulaKind::sum;
    if (!isFirst)
        row.parts.push_back(inWords({}));
    return row;
}

} // namespace

std::vector<Formula> rowsOf(const Formula& formula, std::size_t columns) {
    std::vector<Formula> rows;
    if (formula.kind != FormulaKind::sum || widthOf(formula) <= columns) {
        rows.push_back(formula);
        return rows;
    }
    constexpr std::size_t kSign = 3;
    std::size_t width = 0;
    for (const Formula& term : formula.parts) {
        const std::size_t more = widthOf(term) + (rows.empty() ? 0 : kSign);
        if (rows.empty() || width + more > columns) {
            rows.push_back(nextRow(rows.empty()));
            width = 0;
        }
        rows.back().parts.push_back(term);
        width += more;
    }
    return rows;
}

std::vector<Formula> textRowsOf(const Formula& formula, std::size_t columns) {
    if (formula.kind != FormulaKind::fraction || widthOf(formula) <= columns)
        return rowsOf(formula, columns);
    return {rowOf({inWords("("), formula.parts[0], inWords(")")}),
            rowOf({inWords("   / ("), formula.parts[1], inWords(")")})};
}

} // namespace tailpoint::explaining
