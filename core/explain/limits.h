// SPDX-License-Identifier: MIT
// Limits and permitted directions that a sketch states: whether its vectors keep to them, at the worst end of
// what they can be.
#pragma once

#include "core/explain/explain.h"
#include "core/explain/wording.h"
#include "core/solve/tolerance.h"

#include <optional>
#include <vector>

namespace tailpoint {

enum class Bound : std::uint8_t {
    within,
    over,
    straddles ///< a part of the tolerance is over
};
std::string_view nameOf(Bound bound); ///< "within", "over", "straddles"

/// Stands in front of every verdict that is not *within*, in the figure, on screen and in every output: one
/// mark, read without colour, that every font, terminal and typesetter has.
inline constexpr std::string_view kPassedMark = "!";
/// With the mark in front; as it is where all is within.
std::string marked(Bound verdict, const std::string& words);
Prose marked(Bound verdict, Prose told);

/// A magnitude beside its limit, from full values, never from shown ones.
struct LimitUse {
    int index = kSumIndex; ///< of the vector
    Bound verdict = Bound::within;
    double limit = 0;                  ///< sheet's force unit, > 0
    std::optional<double> utilisation; ///< per cent of the limit at the worst end; empty: no upper bound
    double leastUse = 0;               ///< per cent of the limit at the best end
};

/// A direction beside the permitted ones, told apart from the magnitude.
struct DirectionUse {
    int index = kSumIndex;
    Bound verdict = Bound::within;
    double axis = 0, within = 0; ///< as the sketch states them
    double off = 0;              ///< greatest angle from the axis, either way; sheet's angle unit
    double leastOff = 0;         ///< least angle from the axis
};

/// Of the vectors for which the sketch states a limit, forces in its order, the sum last. `range`: of that
/// answer; null where nothing has a tolerance.
std::vector<LimitUse> limitsOf(const Sketch& sketch, const Solution& solution,
                               const tolerance::AnswerRange* range);
/// The same of permitted directions; a vector without a direction has none. An end of a range that is at the
/// limit as typed is at it: what computing and rounding outward added is not over.
std::vector<DirectionUse> permittedOf(const Sketch& sketch, const Solution& solution,
                                      const tolerance::AnswerRange* range);

/// What is given alone, as an answer of its own with its tolerances: its limits bind where the sketch has no
/// answer, too. An asked magnitude is no number (NaN), an asked direction is none.
struct StatedAlone {
    Solution solution;
    tolerance::AnswerRange range;
};
StatedAlone statedAlone(const Sketch& sketch);

/// Of the answer with this number; of a sketch without one, of what is given. Precondition: `solved` is
/// solve(sketch). `ranges`: of all answers; empty where nothing has a tolerance.
std::vector<LimitUse> limitsOf(const Sketch& sketch, const Solved& solved, std::size_t answer,
                               const tolerance::Ranges& ranges);
std::vector<DirectionUse> permittedOf(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                      const tolerance::Ranges& ranges);

/// "101.3 %": one decimal, rounded up, so that what is over never reads 100.0 %.
std::string utilisationText(double percent);
/// "20.0°", "53.26°": a permitted direction's axis or half width as it was stated, with more decimals than
/// the sheet's angles where it has them.
std::string permittedText(double angle, const Sketch& sketch);
/// The greatest angle off the axis and what is permitted, with as many decimals as it takes to see which of
/// them is the greater: "53.31°", "53.30°".
struct OffText {
    std::string off, within;
};
OffText offText(const DirectionUse& use, const Sketch& sketch);
/// "101.3 %", "no upper bound".
std::string shareText(const LimitUse& use, const Voice& voice = Voice());

/// "R is over its limit: 101.3 % of 10 kN."
Prose limitTold(const LimitUse& use, const Sketch& sketch, const Voice& voice = Voice());
Prose limitTold(const DirectionUse& use, const Sketch& sketch, const Voice& voice = Voice());
/// Whose data they are.
Prose limitsRemark(const Voice& voice = Voice());

/// A sentence each, marked where it is not within, and whose data they are; nothing where no limit is stated.
std::vector<Prose> limitsTold(const Sketch& sketch, const Solution& solution,
                              const tolerance::AnswerRange* range, const Voice& voice = Voice());

/// Adds them to a worked solution, behind its answer; of a sketch without one, behind its last step, what is
/// said of what is given. `ranges`: of all answers; empty where nothing has a
/// tolerance.
void tellLimits(Worked& worked, const Sketch& sketch, const Solved& solved, std::size_t solution,
                const tolerance::Ranges& ranges, const Sentences* sentences = nullptr);

} // namespace tailpoint
