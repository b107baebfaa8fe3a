// SPDX-License-Identifier: MIT
// Running text with formulas set into it.
#pragma once

#include "core/sketch/phrase.h"
#include "core/sketch/things.h"

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

/// What the solver says, each name in it as the table's symbol, a vector's in bold; with minus signs.
Prose proseOf(const Phrase& phrase, const Things& things);

std::string toText(const Prose& prose, Minus minus = Minus::typographic);
std::string toLatex(const Prose& prose); ///< text mode, formulas in $...$
std::string toHtml(const Prose& prose);  ///< escaped text, formulas as <math>

} // namespace tailpoint
