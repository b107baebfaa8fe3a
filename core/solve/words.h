// SPDX-License-Identifier: MIT
// What a result says in words, for people who learn: plain, short, with the mend. Used inside solve/ only.
#pragma once

#include "core/solve/question.h"

namespace tailpoint {

/// A vector by its index, and its magnitude, by its name.
Phrase called(const Sketch& sketch, int index);
Phrase calledMagnitude(const Sketch& sketch, int index);
Phrase magnitudeOf(const Sketch& sketch, int index); ///< "magnitude of P"
Phrase directionOf(const Sketch& sketch, int index); ///< "direction of P"
/// Of the two what is given; what is to be found.
void addGiven(std::vector<Phrase>& words, const Sketch& sketch, int index);
void addUnknown(std::vector<Phrase>& words, const Sketch& sketch, const UnknownVector& unknown);
std::vector<Phrase> withArticles(std::vector<Phrase> words); ///< "the magnitude of P"
/// All that is to be found, in the order of the unknown vectors.
std::vector<Phrase> unknownWords(const Sketch& sketch, const Question& question);

std::string numberWord(std::size_t number);                 ///< "two"; in figures beyond ten
std::string shown(long double value, const Sketch& sketch); ///< a force with its unit
Phrase equals(const Sketch& sketch, int index);             ///< "P = 340 N"

/// "a", "a and b", "a, b and c" ...
Phrase listed(const std::vector<Phrase>& words, const std::string& last = "and");
using Remarks = std::vector<Remark>;
void say(Solved& solved, std::initializer_list<Remarks> parts);
/// Nothing is made where the question is solved in silence.
template <class Make>
void sayOf(const Question& question, Make make) {
    if (!question.inSilence) {
        make();
    }
}

Remarks tooManyUnknowns(const Sketch& sketch, const Question& question);
/// Nothing unknown: whether the equation holds, and what to free.
Remarks nothingUnknown(const Sketch& sketch, const Question& question);
/// Whether the rounding of given values may leave the gap of an equation in which everything is given.
bool isRoundingGap(const Sketch& sketch, const Question& question);
/// "the magnitude of P, the direction of P or ...": what is given and could be freed, that of `leading`
/// first.
Phrase givenChoices(const Sketch& sketch, int leading);

/// The polygon closes by itself: the vector to be found is zero.
Remarks closesAlready(const Sketch& sketch, const Question& question);
/// Two magnitudes that both come out as zero.
Remarks bothZero(const Sketch& sketch, const Question& question);
/// Words for an outcome by its kind alone; empty for a plain single answer.
Remarks outcomeWords(const Sketch& sketch, const Question& question, kernel::Outcome outcome);
/// "W = 100 N", or "the sum of the known forces, 512 N": what the two unknown vectors close with. An
/// apposition ends with a comma where the sentence goes on.
Phrase closingWords(const Sketch& sketch, const Question& question, bool goesOn);
/// Roots that need a vector to act against its given sense. `against`: those vectors, by name.
Remarks reversedWords(std::size_t admissible, std::size_t reversed, const std::vector<Phrase>& against);
/// Vectors given by their line of action that were found in the other sense.
Remarks turnedWords(const Sketch& sketch, const std::vector<Solution>& solutions);
/// What a small turn or a small change of length does near parallelism and near tangency; empty elsewhere.
Remarks sensitivityWords(const Sketch& sketch, const Question& question, const kernel::Roots& roots);

} // namespace tailpoint
