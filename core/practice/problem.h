// SPDX-License-Identifier: MIT
// practice/: problems to be set. A family is a kind of question with scenes and three levels; a number picks
// one of its problems, the same on every machine: values are drawn by whole-number arithmetic alone and typed
// from integers. The table of families is families.h.
//
//   const auto made = problem({"two-forces", 2, 1234});     // empty: no such family, level or number
//   made->sketch, made->statement, made->code               // "GR4C2K"
//   const auto again = problem(*problemIdOf("GR4C2K"));
//   const auto sheet = problemSet({"two-forces", "slopes"}, 2, 30, 1);
#pragma once

#include "core/sketch/sketch.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tailpoint {

/// Of the generator: a problem is the same for the same version. Which numbers are drawn hangs on what the
/// slips give too, for those are to be told apart: whoever moves one of those raises kSlipVersion, whoever
/// changes what is drawn kDrawVersion, whoever words it otherwise kWordsVersion, which leaves the numbers of a
/// code as they are.
inline constexpr int kDrawVersion = 1, kSlipVersion = 0, kWordsVersion = 1,
                     kNumbersVersion = kDrawVersion + kSlipVersion,
                     kPracticeVersion = kNumbersVersion + kWordsVersion;
inline constexpr int kLevels = 3;
inline constexpr std::uint32_t kProblemNumbers = 1U << 18U;

/// Which problem of which kind.
struct ProblemId {
    std::string family;       ///< "two-forces"
    int level = 1;            ///< 1 to kLevels
    std::uint32_t number = 0; ///< below kProblemNumbers
    bool operator==(const ProblemId&) const = default;
};

/// Two likely slips of a problem's level whose numbers lie no farther apart than marking allows; an empty
/// `second`: the first one's lie so near to what is right.
struct AlikeSlips {
    std::string first, second;
    bool operator==(const AlikeSlips&) const = default;
};

struct Problem {
    ProblemId id;
    std::string code;  ///< of six letters and digits: problemCode(id)
    std::string scene; ///< id of the scene within its family
    Sketch sketch;     ///< has its title and, where the scene needs it, its caution
    /// The question in plain words, UTF-8 with U+2212 for a minus: every number of the sketch, what is asked,
    /// and last the form of the answer (unit, figures, axis, turning sense).
    std::string statement;
    bool bothAnswers = false;      ///< two answers are asked for: one pair alone is incomplete (MarkOptions)
    std::vector<AlikeSlips> alike; ///< empty: all likely slips of the level are told apart

    bool isSeparable() const { return alike.empty(); }
};

/// A millisecond or two, of five forces twenty. Empty where there is no such family, level or number.
std::optional<Problem> problem(const ProblemId& id);

/// The problem's words around other values of the same structure (otherNumbers()). Empty where there is no
/// such problem. Precondition: `sketch` has the problem's vectors with the same unknowns.
std::string statementFor(const ProblemId& id, const Sketch& sketch);

/// Problems of these families in turn, no two with the same given values in the same places: `count` of them,
/// or fewer where there are no more or a family or the level doesn't exist. The same arguments give the same
/// problems, and more begin with the same. `perSheet`: the families begin anew after so many (a sheet for
/// each of a class); 0: never. One after the other; in_turn.h has them side by side.
std::vector<Problem> problemSet(std::span<const std::string> families, int level, std::size_t count,
                                std::uint32_t seed, std::size_t perSheet = 0);

/// The number of a seed's problem; `index` counts from 0.
std::uint32_t problemNumber(std::uint32_t seed, std::size_t index);

/// Whether two questions are the same but for names of scenes: the same given values in the same places.
bool isSameQuestion(const Sketch& a, const Sketch& b);

/// A code of six characters to read aloud: capital letters and digits without I, L, O and U (the alphabet of
/// Crockford's base 32), the last one a check: one character misheard, or two neighbours exchanged, is never
/// another code. Precondition: `id` names a problem.
std::string problemCode(const ProblemId& id);
/// Small letters, and i, l, o for 1, 1, 0, are taken too; empty where it is no code.
std::optional<ProblemId> problemIdOf(std::string_view code);

} // namespace tailpoint
