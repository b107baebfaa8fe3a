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

inline Prose inProse(std::string text) {
    return {{std::move(text)}};
}
/// Text right behind the last piece, of which it becomes a part where that is text too.
void appendText(Prose& prose, std::string_view text);

std::string toText(const Prose& prose, Minus minus = Minus::typographic);
std::string toLatex(const Prose& prose); ///< text mode, formulas in $...$
std::string toHtml(const Prose& prose);  ///< escaped text, formulas as <math>

} // namespace tailpoint
