// SPDX-License-Identifier: MIT
// What every problem must keep: its statement says the sketch, its own answer is right in the form that the
// statement asks for, each likely slip is named unless the problem itself says that its numbers are as good as
// right, and its numbers are told apart.
#pragma once

#include "core/mark/slip_numbers.h"
#include "core/practice/families.h"
#include "core/practice/scheme.h"
#include "core/sketch/shown.h"
#include "tests/practiced/statement_reader.h"

#include <algorithm>
#include <set>

namespace tailpoint::testing {

struct PracticeCounts {
    std::uint64_t problems = 0, separable = 0, answers = 0, slips = 0, slipsFirst = 0;
    std::uint64_t asRight = 0;     ///< slips that the problem itself says marking lets pass for right
    std::uint64_t alikeSheets = 0; ///< variants of a sheet with the same values
    std::map<std::string, std::uint64_t> faults;
    std::vector<std::string> examples;

    void fault(const std::string& what, const std::string& where) {
        if (++faults[what] <= 3)
            examples.push_back(what + ": " + where);
    }
    /// What was counted of others; examples as if one had counted them all.
    void add(const PracticeCounts& other) {
        problems += other.problems;
        separable += other.separable;
        answers += other.answers;
        slips += other.slips;
        slipsFirst += other.slipsFirst;
        asRight += other.asRight;
        alikeSheets += other.alikeSheets;
        for (const std::string& example : other.examples)
            if (const std::string what = example.substr(0, example.find(": ")); ++shown[what] <= 3)
                examples.push_back(example);
        for (const auto& [what, times] : other.faults)
            faults[what] += times;
    }
    std::map<std::string, int> shown; ///< examples of each
};

inline std::string told(const Problem& problem) {
    return problem.id.family + ' ' + std::to_string(problem.id.level) + ' ' +
           std::to_string(problem.id.number) + ": " + problem.statement;
}

inline bool namesSlip(const Finding& finding, std::string_view id) {
    return finding.id == id || finding.second == id ||
           std::find(finding.also.begin(), finding.also.end(), id) != finding.also.end();
}

inline void checkStatement(const Problem& problem, PracticeCounts& counts) {
    const SaidValues said = valuesIn(problem.statement);
    if (said.vectors != valuesOf(problem.sketch))
        counts.fault("the statement says other values than the sketch", told(problem));
    if (said.rest.find_first_of("0123456789") != said.rest.npos)
        counts.fault("a number of the statement stands for nothing", told(problem));
    if (said.rest.find('{') != said.rest.npos || said.rest.find("  ") != said.rest.npos)
        counts.fault("a place of the statement was left open", told(problem));
}

/// The answers as the statement wants them, from the solver's components alone; `clockwise` other than said:
/// in the wrong sense.
inline std::vector<std::string> answersAsSaid(const Solved& solved, const SaidForm& form, bool otherSense) {
    std::vector<std::string> answers;
    const auto each = [&](const std::string& name, const auto& state) {
        std::string text;
        for (const Solution& solution : solved.solutions) {
            const SolvedForce* found = &solution.sum;
            for (const SolvedForce& force : solution.forces)
                if (force.name == name)
                    found = &force;
            text += (text.empty() ? "" : "; ") + state(*found);
        }
        return text;
    };
    for (const std::string& name : form.sizes)
        answers.push_back(name + " = " + each(name, [&](const SolvedForce& found) {
                              const double size = std::hypot(found.vector.x(), found.vector.y());
                              return toFigures(form.isSigned && found.turned ? -size : size, form.figures) +
                                     ' ' + form.unit;
                          }));
    for (const std::string& name : form.ways)
        answers.push_back("theta_" + name + " = " + each(name, [&](const SolvedForce& found) {
                              const double x = found.vector.x(), y = found.vector.y();
                              if (form.isBearing)
                                  return asBearing(otherSense ? -x : x, y, form.decimals);
                              char text[64];
                              std::snprintf(text, sizeof text, "%.*f", form.decimals,
                                            degreesFrom(form.axis, form.clockwise != otherSense, x, y));
                              return std::string(text);
                          }));
    return answers;
}

inline std::optional<Verdict> verdictOf(const Marker& marker, const std::vector<std::string>& answers) {
    const auto read = marker.read(answers);
    const auto* attempt = std::get_if<Attempt>(&read);
    return attempt ? std::optional(marker.mark(*attempt).verdict) : std::nullopt;
}

inline void checkAnswer(const Problem& problem, const Solved& solved, const Marker& marker,
                        PracticeCounts& counts) {
    const auto form = formIn(problem.statement);
    if (!form || form->isBoth != problem.bothAnswers)
        return counts.fault("the form of the answer can't be read", told(problem));
    ++counts.answers;
    if (verdictOf(marker, answersAsSaid(solved, *form, false)) != Verdict::right)
        counts.fault("the right answer in the form asked for is not right", told(problem));
    if (!form->ways.empty() && verdictOf(marker, answersAsSaid(solved, *form, true)) == Verdict::right)
        counts.fault("the other turning sense is right too", told(problem));
}

/// What who makes that slip states; what the slip says nothing of is right.
inline std::vector<std::string> slippingAnswers(const SlipTable& table, const SlipNumbers& slip,
                                                const Sketch& sketch) {
    std::vector<std::string> answers;
    for (std::size_t quantity = 0; quantity < table.asked.size(); ++quantity) {
        std::string text = table.asked[quantity].name + " = ";
        for (std::size_t i = 0; i < table.answers; ++i) {
            const std::size_t cell = quantity * table.answers + i;
            const double value = slip.numbers.values[cell].value_or(table.right.values[cell].value_or(0));
            text += (i > 0 ? "; " : "") + (table.asked[quantity].dimension == Dimension::angle
                                               ? fixedDecimals(value, sketch.angleDecimals)
                                               : significant(value, sketch.figures));
        }
        answers.push_back(std::move(text));
    }
    return answers;
}

inline void checkSlips(const Problem& problem, const Solved& solved, const Marker& marker,
                       PracticeCounts& counts) {
    const auto& likely =
        familyNamed(problem.id.family)->levels[static_cast<std::size_t>(problem.id.level - 1)].slips;
    const auto table = slipTable(problem.sketch, solved, likely);
    std::map<std::string, std::set<std::string>> printed; ///< by what is stated, the slips that state it
    if (!table)
        return counts.fault("nothing can be marked", told(problem));
    for (const SlipNumbers& slip : table->slips) {
        if (!slip.changes)
            continue;
        const auto answers = slippingAnswers(*table, slip, problem.sketch);
        std::string all;
        for (const std::string& answer : answers)
            all += answer + '\n';
        printed[all].insert(std::string(slip.id));
        const auto read = marker.read(answers);
        if (!std::holds_alternative<Attempt>(read)) {
            counts.fault("a slip's answer can't be read", told(problem) + all);
            continue;
        }
        const Marking marking = marker.mark(std::get<Attempt>(read));
        ++counts.slips;
        const bool isNamed = std::any_of(marking.slips.begin(), marking.slips.end(),
                                         [&](const Finding& one) { return namesSlip(one, slip.id); });
        counts.slipsFirst += !marking.slips.empty() && namesSlip(marking.slips.front(), slip.id) ? 1 : 0;
        const bool isAsRight = std::find(problem.alike.begin(), problem.alike.end(),
                                         AlikeSlips{std::string(slip.id), {}}) != problem.alike.end();
        counts.asRight += !isNamed && isAsRight ? 1 : 0;
        if (!isNamed && !isAsRight)
            counts.fault(std::string(slip.id) + " isn't named",
                         told(problem) + all + std::string(nameOf(marking.verdict)));
    }
    if (problem.isSeparable() &&
        std::any_of(printed.begin(), printed.end(), [](const auto& one) { return one.second.size() > 1; }))
        counts.fault("two slips of a separable problem state the same", told(problem));
}

/// `byAllSlips`: marked by the whole table of slips, as a class is; else by those of the level, which is ten
/// times as fast and leaves out only that another slip could be named in a likely one's place.
inline void checkProblem(const ProblemId& id, PracticeCounts& counts, bool byAllSlips = true) {
    const auto made = problem(id);
    ++counts.problems;
    if (!made)
        return counts.fault("no problem",
                            id.family + ' ' + std::to_string(id.level) + ' ' + std::to_string(id.number));
    counts.separable += made->isSeparable() ? 1 : 0;
    const Solved solved = solve(made->sketch);
    MarkOptions options = markOptionsFor(*made);
    if (!byAllSlips)
        for (const std::string_view slip :
             familyNamed(id.family)->levels[static_cast<std::size_t>(id.level - 1)].slips)
            options.onlySlips.emplace_back(slip);
    const Marker marker(made->sketch, solved, options);
    checkStatement(*made, counts);
    checkAnswer(*made, solved, marker, counts);
    checkSlips(*made, solved, marker, counts);
}

} // namespace tailpoint::testing
