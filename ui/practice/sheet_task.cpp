// SPDX-License-Identifier: MIT
#include "ui/practice/sheet_task.h"

#include "core/practice/families.h"

#include <algorithm>

namespace tailpoint {

namespace {

Worked workedOf(const Sketch& sketch) {
    const Solved solved = solve(sketch);
    return explain(sketch, solved, construct(sketch, solved));
}

const Working& at(const Worked& worked, const WorkingPlace& place) {
    return worked.steps[place.step].workings[place.working];
}

void addFaded(const ProblemSheet& sheet, const SheetVariant& variant, TaskOnPage& task) {
    const Worked worked = workedOf(variant.problem.sketch);
    const auto lines = calculatedLines(worked);
    const std::size_t count = sheet.request.blank > 0
                                  ? sheet.request.blank
                                  : risingBlanks(variant.place, sheet.request.count, lines.size());
    task.faded = faded(worked, count);
    for (std::size_t i = lines.size() - std::min(count, lines.size()); i < lines.size(); ++i)
        task.blank.push_back(at(worked, lines[i]));
}

void addFlawed(const ProblemSheet& sheet, std::size_t index, TaskOnPage& task) {
    const Problem& problem = sheet.variants[index].problem;
    const FamilyEntry* family = familyNamed(problem.id.family);
    std::vector<std::string_view> likely;
    if (family != nullptr)
        likely = family->levels[static_cast<std::size_t>(problem.id.level - 1)].slips;
    task.flawed =
        flawedBySome(problem.sketch, likely, sheet.request.seed + static_cast<std::uint32_t>(index));
}

/// "(3) R"
Formula withNumber(std::size_t number, Formula subject) {
    return rowOf({inWords('(' + std::to_string(number) + ")\u2002"), std::move(subject)});
}

} // namespace

TaskOnPage taskOf(const ProblemSheet& sheet, std::size_t index) {
    TaskOnPage task;
    if (sheet.request.task == SheetTask::faded)
        addFaded(sheet, sheet.variants[index], task);
    if (sheet.request.task == SheetTask::findSlip)
        addFlawed(sheet, index, task);
    return task;
}

Worked shownOnPage(const TaskOnPage& task, bool isNumbered) {
    Worked shown = task.flawed ? task.flawed->worked : task.faded ? task.faded->worked : Worked{};
    if (isNumbered) {
        std::size_t number = 0;
        for (const WorkingPlace& place : calculatedLines(shown)) {
            Working& line = shown.steps[place.step].workings[place.working];
            line.subject = withNumber(++number, std::move(*line.subject));
        }
    }
    const auto isBlank = [](const Working& line) { return sidesOf(line).empty(); };
    std::erase_if(shown.steps, [&](Step& step) {
        const bool hadLines = !step.workings.empty();
        std::erase_if(step.workings, isBlank);
        return step.key == StepKey::given || (hadLines && step.workings.empty());
    });
    return shown;
}

std::size_t flawedLine(const FlawedSolution& flawed) {
    const auto lines = calculatedLines(flawed.worked);
    return static_cast<std::size_t>(std::find(lines.begin(), lines.end(), flawed.flaw) - lines.begin()) + 1;
}

const Working& workingOf(const FlawedSolution& flawed) {
    return at(flawed.worked, flawed.flaw);
}

std::string lineText(const Working& working) {
    std::string out = working.subject ? toText(*working.subject) : std::string();
    for (const Formula* side : sidesOf(working))
        out += (out.empty() ? "" : working.subject ? " = " : " ") + toText(*side);
    return out;
}

std::string taskWords(SheetTask task, bool bothAnswers) {
    if (task == SheetTask::faded)
        return bothAnswers
                   ? "This is how the first answer is found. Fill in what is missing, and find the second "
                     "answer by yourself."
                   : "This is how the answer is found. Fill in what is missing.";
    return "One of the numbered lines has a slip, and what follows from it carries its number on. Find "
           "that line, write it as it should be, and mend the answer.";
}

} // namespace tailpoint
