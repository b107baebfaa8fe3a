// SPDX-License-Identifier: MIT
#include "core/explain/trial.h"

#include <cstdlib>

namespace tailpoint::explaining {

namespace {

QuantityId trialGap(std::uint8_t part) {
    return {What::gap, kNobody, {}, 0, part};
}

/// The angle from +x.
Formula fromX(const Board& board, const Formula& way) {
    if (isPlainReference(board.sketch))
        return way;
    const double axis = board.sketch.reference.axisDegrees / 360 * turnIn(board.sketch.angleUnit),
                 sense = board.sketch.reference.sense == Sense::ccw ? 1 : -1;
    return board.carried.carried(normalized(axis + sense * way.value, board.sketch.angleUnit),
                                 Dimension::angle);
}

Formula alongTried(const Board& board, const std::vector<Tried>& tried, const char* function) {
    std::vector<Formula> terms;
    for (const int sign : {1, -1}) // what is taken away stands last
        for (const Tried& one : tried)
            if (one.sign == sign) {
                Formula term = product(one.size, apply(function, fromX(board, one.way)));
                terms.push_back(sign < 0 ? negative(std::move(term)) : std::move(term));
            }
    return sumOf(std::move(terms));
}

/// As symbols: a double falls short of the digits of a number like 43971628.10750.
Formula toBeRead(Formula formula) {
    if (formula.kind == FormulaKind::number)
        formula.kind = FormulaKind::symbol;
    else if (!formula.parts.empty())
        formula.parts = formula.parts.each(toBeRead);
    return formula;
}

long double readDigits(const Formula& number) {
    char* end = nullptr;
    const long double value = std::strtold(number.text.c_str(), &end);
    return !number.text.empty() && *end == '\0' ? value : number.value;
}

} // namespace

Working worked(const Board& board, Formula subject, Formula numbers) {
    const auto value = evaluate(toBeRead(numbers), board.sketch.angleUnit, readDigits);
    Formula result = board.carried.leftOver(value.value_or(0));
    return {std::move(subject), {}, std::move(numbers), std::move(result)};
}

Formula writeTrial(const Board& board, Step& step, const std::vector<Tried>& tried) {
    const Formula left = absolute(vectorSymbol("Δ"));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "{x} and {y} are what is left over along x and along y; by Pythagoras' theorem the two make "
                 "the magnitude {left} that is left over:"),
        "left", left, "x", board.symbolOf(trialGap(kDifferenceX)), "y",
        board.symbolOf(trialGap(kDifferenceY))));
    const Working x = worked(board, board.symbolOf(trialGap(kDifferenceX)), alongTried(board, tried, "cos")),
                  y = worked(board, board.symbolOf(trialGap(kDifferenceY)), alongTried(board, tried, "sin"));
    const Working whole = worked(board, left, root(sum(power(*x.value, 2), power(*y.value, 2))));
    for (const Working& working : {x, y, whole})
        step.workings.push_back(working);
    return *whole.value;
}

} // namespace tailpoint::explaining
