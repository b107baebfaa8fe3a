// What a result says in words, for people who learn: plain, short, with the mend. Used inside solve/ only.
#pragma once

#include "core/solve/question.h"

namespace tailpoint {

std::string magnitudeOf(const Force& force); ///< "magnitude of P"
std::string directionOfWords(const Force& force);
std::vector<std::string> withArticles(std::vector<std::string> words); ///< "the magnitude of P"
/// All that is to be found, in the order of the unknown vectors.
std::vector<std::string> unknownWords(const Sketch& sketch, const Question& question);

std::string numberWord(std::size_t number);                   ///< "two"; in figures beyond ten
std::string shown(long double value, const Sketch& sketch);   ///< a force with its unit
std::string equals(const Force& force, const Sketch& sketch); ///< "P = 340 N"

/// "a", "a and b", "a, b and c" ...
std::string listed(const std::vector<std::string>& words, const std::string& last = "and");
/// What is said, with its code; nothing where there is nothing to say.
struct Sentence {
    MessageCode code = MessageCode::none;
    std::string words;
};
using Sentences = std::vector<Sentence>;
/// Adds to the message, its words joined by spaces, and to its codes.
void say(Solved& solved, std::initializer_list<Sentences> parts);

Sentences tooManyUnknowns(const Sketch& sketch, const Question& question);
/// None or one unknown: whether the equation holds, and what to free.
Sentences tooFewUnknowns(const Sketch& sketch, const Question& question);

/// The polygon closes by itself: the vector to be found is zero.
Sentences closesAlready(const Sketch& sketch, const Question& question);
/// Two magnitudes that both come out as zero.
Sentences bothZero(const Sketch& sketch, const Question& question);
/// Words for an outcome by its kind alone; empty for a plain single answer.
Sentences outcomeWords(const Sketch& sketch, const Question& question, kernel::Outcome outcome);
/// "W = 100 N", or "the known forces together, 512 N": what the two unknown vectors close with.
std::string closingWords(const Sketch& sketch, const Question& question);
/// Roots that need a vector to act against its given sense. `forces`: names of those vectors.
Sentences reversedWords(std::size_t admissible, std::size_t reversed, const std::vector<std::string>& names);
/// Vectors given by their line of action that were found in the other sense.
Sentences turnedWords(const Sketch& sketch, const std::vector<Solution>& solutions);
/// What a small turn or a small change of length does near parallelism and near tangency; empty elsewhere.
Sentences sensitivityWords(const Sketch& sketch, const Question& question, const kernel::Roots& roots);

} // namespace tailpoint
