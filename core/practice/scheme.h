// SPDX-License-Identifier: MIT
// How a problem is marked by hand: its answers, the points, and the numbers that the common slips would give.
#pragma once

#include "core/mark/mark.h"
#include "core/practice/problem.h"

namespace tailpoint {

struct DrawnProblem; // in_turn.h

/// What is asked, with its right answer.
struct SchemeAnswer {
    std::string name;                 ///< "theta_R", as `mark` reads it
    Symbol symbol;                    ///< as it is printed
    double points = 0;                ///< of the whole
    std::vector<double> values;       ///< one, or one for each of two answers; in the sheet's units, negative
                                      ///< against the given sense of a line whose sense is open
    std::vector<std::string> texts;   ///< as an answer states them: "520 N", "-3.6°"
    std::vector<std::string> numbers; ///< the same without a unit
    /// What each can be, in words (rangeWords()), where given values have tolerances; else empty.
    std::vector<std::string> ranges{};
};

/// A slip for a list in the margin, and the force, the component or the angle at which it is made; `place` is
/// empty where that is no one place.
struct SlipLabel {
    std::string slip; ///< id
    Prose place;
    bool operator==(const SlipLabel&) const = default;
};

/// A number that a slip gives for one of the asked quantities.
struct SlipNumber {
    std::string name;               ///< of the quantity
    double value = 0;               ///< signed as the answer is; where isEitherSense its size
    std::string text;               ///< "335 N"; "\u00B1200 N" where isEitherSense
    std::vector<std::string> slips; ///< ids: "supplement-in-cosines"; several where they print alike
    std::vector<SlipLabel> labels;
    int answer = 0;             ///< 1, 2: of which of two answers; 0: there is but one
    double points = 0;          ///< that the whole answer earns where this slip alone was made
    bool isEitherSense = false; ///< the answer has a sign, and the slip says nothing of it
};

/// Its labels, with slipName()s: "a force left out: P or Q or sign of a component: P_x".
Prose labelOf(const SlipNumber& number);

struct Scheme {
    std::vector<SchemeAnswer> answers;
    double of = 0; ///< all points
    /// By quantity in the order of `answers`, within it ascending; what prints alike and earns the same is
    /// one entry.
    std::vector<SlipNumber> numbers;
    bool isSigned = false; ///< magnitudes along a line whose sense is open are stated with its sign
};

/// As `mark` reads them: {"R = 520", "theta_R = -3.6"}, of two answers both in order ("P = 308; 872").
std::vector<std::string> rightAnswers(const Scheme& scheme);

/// Whether a magnitude is stated with its sign: a line of action leaves its sense open.
bool isSigned(const Sketch& sketch);

/// How the problem is marked: the points (one for each asked quantity) and whether both answers are wanted.
MarkOptions markOptionsFor(const Problem& problem);

Scheme schemeOf(const Problem& problem);
Scheme schemeOf(const DrawnProblem& drawn); ///< the same, for less
/// Of any sketch that has an answer, for the slips named; empty ids: those of the table that are common
/// (a prior of 4 and more; of reading the question and short cuts 3). Without entries where nothing can be
/// marked.
Scheme schemeOf(const Sketch& sketch, const MarkOptions& options,
                std::span<const std::string_view> slips = {});

} // namespace tailpoint
