// SPDX-License-Identifier: MIT
// Nothing is used before it is told: every letter of a line stands in words before it, with what it is.
#include "core/explain/explain.h"
#include "tests/core/explain/questions.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

constexpr std::uint64_t kSeed = 20261130;
constexpr int kCases = 600;

/// Letters that no table of what is given brings along.
bool mustBeTold(const QuantityId& id) {
    switch (id.what) {
    case What::along:
    case What::distance:
    case What::between:
    case What::opposite:
        return true;
    case What::acute:
        return true;
    case What::gap:
        return id.part >= kDifferenceX;
    default:
        return false;
    }
}

/// Of two answers the letters are the same but for their primes.
std::string withoutPrimes(std::string letter) {
    for (const std::string_view prime : {"′", "″"})
        for (auto at = letter.find(prime); at != std::string::npos; at = letter.find(prime))
            letter.erase(at, prime.size());
    return letter;
}

void collect(const Formula& formula, std::set<std::string>& letters, bool all) {
    if (formula.kind == FormulaKind::symbol && (all || mustBeTold(formula.id)))
        letters.insert(withoutPrimes(formula.text + '_' + formula.sub));
    for (const Formula& part : formula.parts)
        collect(part, letters, all);
}

void collect(const std::vector<Prose>& prose, std::set<std::string>& letters) {
    for (const Prose& each : prose)
        for (const Piece& piece : each.pieces)
            if (const auto* formula = std::get_if<Formula>(&piece))
                collect(*formula, letters, true);
}

/// A component along an axis that has a name: the axis is enough.
bool isAlongAxis(const std::string& letter, const std::set<std::string>& told) {
    const auto endsIn = [&](const std::string& axis) {
        return (letter.ends_with(axis) || letter.ends_with(axis + ")")) && told.contains(axis + "_");
    };
    return endsIn("u") || endsIn("v");
}

/// Of one answer, or a letter that must be told.
void collectOwn(const Formula& formula, std::set<std::string>& letters) {
    const bool isOwn = formula.id.answer != 0 || mustBeTold(formula.id);
    if (formula.kind == FormulaKind::symbol && isOwn)
        letters.insert(formula.text + '_' + formula.sub);
    for (const Formula& part : formula.parts)
        collectOwn(part, letters);
}

void collectOwn(const std::vector<Prose>& prose, std::set<std::string>& letters) {
    for (const Prose& each : prose)
        for (const Piece& piece : each.pieces)
            if (const auto* formula = std::get_if<Formula>(&piece))
                collectOwn(*formula, letters);
}

/// The first letter that a trap takes and that neither words nor lines have had by the end of its step.
std::string untoldInNotes(const Worked& worked) {
    std::set<std::string> had;
    for (const Step& step : worked.steps) {
        collectOwn(step.reasoning, had);
        for (const Working& working : step.workings)
            for (const auto& formula : {working.subject, working.general})
                if (formula)
                    collectOwn(*formula, had);
        collectOwn(step.conclusion, had);
        std::set<std::string> used;
        collectOwn(step.notes, used);
        for (const std::string& letter : used)
            if (!had.contains(letter))
                return letter + " in a trap of step " + std::string(nameOf(step.key));
    }
    return {};
}

/// The first component along u of a step before which no words have said what axis that is.
std::string alongUntoldAxis(const Worked& worked) {
    std::set<std::string> told;
    for (const Step& step : worked.steps) {
        collect(step.reasoning, told);
        for (const Working& working : step.workings)
            if (working.subject && working.subject->id.what == What::along &&
                withoutPrimes(working.subject->sub).ends_with("u") && !told.contains("u_"))
                return toText(*working.subject) + " in step " + std::string(nameOf(step.key));
    }
    return {};
}

/// The first letter that a working takes and nothing has told; empty where there is none.
std::string untold(const Worked& worked) {
    std::set<std::string> told;
    for (const Step& step : worked.steps) {
        collect(step.reasoning, told);
        for (const Working& working : step.workings) {
            std::set<std::string> used;
            for (const auto& formula : {working.subject, working.general})
                if (formula)
                    collect(*formula, used, false);
            for (const std::string& letter : used)
                if (!told.contains(letter) && !isAlongAxis(letter, told))
                    return letter + " in step " + std::string(nameOf(step.key));
        }
        collect(step.conclusion, told);
    }
    return {};
}

TEST(Introduced, EveryLetterOfALineStandsInWordsBeforeIt) {
    Dice dice(kSeed);
    int asked = 0;
    std::set<std::string> found;
    for (int i = 0; i < kCases; ++i) {
        const Sketch question = someQuestion(dice, i % kQuestionKinds);
        const Solved solved = solve(question);
        for (const Method method : {Method::suited, Method::triangle, Method::components})
            for (std::size_t k = 0; k < std::max<std::size_t>(1, solved.solutions.size()); ++k) {
                ExplainOptions options;
                options.method = method;
                const Worked worked = explain(question, solved, construct(question, solved, k), k, options);
                for (const std::string& letter :
                     {untold(worked), untoldInNotes(worked), alongUntoldAxis(worked)})
                    if (found.insert(letter).second && !letter.empty()) // each once
                        ADD_FAILURE() << letter << ", seed " << kSeed << ", case " << i << ", kind "
                                      << i % kQuestionKinds << ", by " << nameOf(method);
                ++asked;
            }
    }
    EXPECT_GT(asked, 3 * kCases - 1);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
