// SPDX-License-Identifier: MIT
// Names, numbers and units as the panel sets them: symbols in serif italic with a real subscript, digits and
// units upright, U+2212 for the minus.
#pragma once

#include "core/explain/question.h"
#include "core/sketch/things.h"

#include <QString>
#include <string>
#include <string_view>

namespace tailpoint {

/// Rich text for labels, tooltips and the hint line. The symbol is one of the table of things
/// (core/sketch/things.h), so that two vectors never print alike; symbolRuns() (core/figure/words.h) says how
/// it is set, on the sheet and here. Escaped.
QString symbolHtml(const Symbol& symbol);
/// The same within a text that is set in the serif font already.
QString symbolInSerif(const Symbol& symbol);

/// A vector in a sentence: its plain name, and its symbol as the table of things has it.
Words symbolWords(const Things& things, VectorId vector);
Words symbolWords(const Things& things, const std::string& name);
/// A text of the window's, each "%1" of it being the symbol.
Sentence sentence(const QString& text);
Sentence sentence(const QString& pattern, const Words& symbol);
QString htmlOf(const Sentence& sentence);
/// A sentence of the worked solution: symbols as such, vectors in bold, numbers and all else in one line.
QString htmlOf(const Prose& prose);
/// A sentence of the solver's.
QString phraseHtml(const Phrase& phrase, const Things& things);

/// Shown values and words (ASCII) as the window writes them: a sign '-' becomes U+2212, a hyphen stays.
QString onScreen(std::string_view shown);
QString onScreen(const QString& shown);

/// Core's text as it is.
QString text(std::string_view utf8);

} // namespace tailpoint
