// SPDX-License-Identifier: MIT
// A solution read aloud: its formulas in words, as a screen reader is to say them.
#pragma once

#include "core/explain/explain.h"

namespace tailpoint {

/// "R equals square root of P squared plus Q squared, end of root": what a root, a fraction or parentheses
/// take in is said at their end wherever it is more than one sign. Units by name: "340 newtons".
std::string spoken(const Formula& formula, const Sentences* sentences = nullptr);
/// Text as it stands, its formulas in words.
std::string spoken(const Prose& prose, const Sentences* sentences = nullptr);
/// "R equals ...; equals ...; equals 520 newtons".
std::string spoken(const Working& working, const Sentences* sentences = nullptr);
/// A row a sentence, each cell behind the head of its column.
std::string spoken(const Table& table, const Sentences* sentences = nullptr);

/// What a step says, one entry a paragraph, in the order in which it is set: reasoning, table, lines of
/// calculation, conclusion, notes. Paragraphs without a word are left out.
std::vector<std::string> spokenLines(const Step& step, const Sentences* sentences = nullptr);

} // namespace tailpoint
