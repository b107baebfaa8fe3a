// Running text with formulas set into it.
#pragma once

#include "core/formula/formula.h"

#include <variant>

namespace tailpoint {

using Piece = std::variant<std::string, Formula>;

struct Prose {
    std::vector<Piece> pieces;
    bool operator==(const Prose&) const = default;
};

void appendPieces(Prose& prose, std::string_view pattern, std::vector<Formula> formulas);

/// Each "{}" of `pattern` becomes the next formula: say("The angle {} is right.", gamma).
template <class... Formulas>
Prose say(std::string_view pattern, Formulas&&... formulas) {
    Prose prose;
    std::vector<Formula> list;
    list.reserve(sizeof...(formulas));
    (list.push_back(std::forward<Formulas>(formulas)), ...);
    appendPieces(prose, pattern, std::move(list));
    return prose;
}

void append(Prose& prose, const Prose& more); ///< with a space between, unless either is empty

std::string toText(const Prose& prose, Minus minus = Minus::typographic);
std::string toLatex(const Prose& prose); ///< text mode, formulas in $...$
std::string toHtml(const Prose& prose);  ///< escaped text, formulas as <math>

} // namespace tailpoint
