// SPDX-License-Identifier: MIT
// explain/: what is asked and how it is answered, in words.
// Here the question itself, as panel, report and handout put it.
#pragma once

#include "core/explain/prose.h"
#include "core/solve/solve.h"

#include <string>
#include <vector>

namespace tailpoint {

class Sentences;

/// A piece of a sentence; symbols are set in italics, quantities ("400 N") as numbers are.
struct Words {
    std::string text; ///< UTF-8, ASCII minus
    bool symbol = false, quantity = false;
    Symbol printed{}; ///< of a symbol: how it stands in print where that is not as symbolOfName() has it
    bool operator==(const Words&) const = default;
};
using Sentence = std::vector<Words>;

/// "Find the magnitude of P and the direction of Q so that R = 400 N at 10.0°." Speaks of what the sketch
/// leaves to find, whether it can be answered or not; with nothing to find it asks whether the equation
/// holds. Long lists of forces are counted ("the resultant R of the 5 forces"). `sentences`: of another
/// language.
Sentence question(const Sketch& sketch, const Sentences* sentences = nullptr);

/// The same with its symbols and quantities as formulas: "R = 400 N" is one.
Prose proseOf(const Sentence& sentence);

/// The sentence's text alone.
std::string plain(const Sentence& sentence);

} // namespace tailpoint
