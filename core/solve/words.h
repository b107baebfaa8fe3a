// What a result says in words, for people who learn: plain, short, with the mend. Used inside solve/ only.
#pragma once

#include "core/solve/question.h"

namespace tailpoint {

std::string magnitudeOf(const Force& force); ///< "magnitude of P"
std::string directionOfWords(const Force& force);
std::vector<std::string> withArticles(std::vector<std::string> words); ///< "the magnitude of P"
/// All that is to be found, in the order of the unknown vectors.
std::vector<std::string> unknownWords(const Sketch& sketch, const Question& question);

/// "a", "a and b", "a, b and c" ...
std::string listed(const std::vector<std::string>& words, const std::string& last = "and");
/// Sentences joined by spaces, empty ones left out.
std::string joined(std::initializer_list<std::string> sentences);

std::string tooManyUnknowns(const Sketch& sketch, const Question& question);
/// None or one unknown: whether the equation holds, and what to free.
std::string tooFewUnknowns(const Sketch& sketch, const Question& question);

/// The polygon closes by itself: the vector to be found is zero.
std::string closesAlready(const Sketch& sketch, const Question& question);
/// Two magnitudes that both come out as zero.
std::string bothZero(const Sketch& sketch, const Question& question);
/// Words for an outcome by its kind alone; empty for a plain single answer.
std::string outcomeWords(const Sketch& sketch, const Question& question, kernel::Outcome outcome);
/// "W = 100 N", or "the known forces together, 512 N": what the two unknown vectors close with.
std::string closingWords(const Sketch& sketch, const Question& question);
/// Roots that need a vector to act against its given sense. `forces`: names of those vectors.
std::string reversedWords(std::size_t admissible, std::size_t reversed,
                          const std::vector<std::string>& names);
/// Vectors given by their line of action that were found in the other sense.
std::string turnedWords(const Sketch& sketch, const std::vector<Solution>& solutions);
/// What a small turn or a small change of length does near parallelism and near tangency; empty elsewhere.
std::string sensitivityWords(const Sketch& sketch, const Question& question, const kernel::Roots& roots);

} // namespace tailpoint
