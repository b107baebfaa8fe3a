// SPDX-License-Identifier: MIT
// Letters of formulas: mathematical alphabets of Unicode, subscripts, relation signs.
#pragma once

#include "core/formula/formula.h"
#include "core/quantity/utf8.h"

#include <string>
#include <string_view>

namespace tailpoint {

enum class MathLetters { italic, boldItalic };

/// Latin and Greek letters as the mathematical alphabet of that style (U+1D434 ...), digits of the bold style
/// bold (U+1D7CE ...); other characters as they are, in the bold style with an arrow (U+20D7) after them.
/// Source: The Unicode Standard, block Mathematical Alphanumeric Symbols.
void appendMathLetters(std::string& out, std::string_view text, MathLetters style);

/// Appends a subscript as a line of plain text bears it: "12" as "₁₂", "R" as "_R", "K1" as "_K₁".
void appendSubscript(std::string& out, std::string_view sub);

/// An angle's letter, with its primes: a small Greek one.
bool isAngleLetter(std::string_view base);

std::string_view signOf(Relation relation);

} // namespace tailpoint
