// SPDX-License-Identifier: MIT
#include "ui/practice/problem_sheet.h"

#include "core/explain/caution.h"
#include "core/practice/families.h"
#include "core/quantity/decimals.h"
#include "ui/files/csv.h"
#include "ui/files/json_text.h"
#include "ui/practice/sheet_task.h"
#include "ui/practice/side_by_side.h"

#include <algorithm>
#include <array>

namespace tailpoint {

namespace {

std::string fourDigits(std::size_t number) {
    const std::string digits = std::to_string(number);
    return std::string(digits.size() < 4 ? 4 - digits.size() : 0, '0') + digits;
}

std::string whoOf(const ProblemSheet& sheet, std::size_t index) {
    const SheetVariant& variant = sheet.variants[index];
    if (variant.who.empty())
        return fourDigits(index + 1);
    return sheet.request.count == 1 ? variant.who : variant.who + ", " + std::to_string(variant.place);
}

/// Names of what is asked, as they first come.
std::vector<std::string> columnsOf(const ProblemSheet& sheet) {
    std::vector<std::string> columns;
    for (const SheetVariant& variant : sheet.variants)
        for (const SchemeAnswer& answer : variant.scheme.answers)
            if (std::find(columns.begin(), columns.end(), answer.name) == columns.end())
                columns.push_back(answer.name);
    return columns;
}

std::string joined(const std::vector<std::string>& texts, std::string_view between) {
    std::string out;
    for (const std::string& text : texts)
        out += (out.empty() ? "" : std::string(between)) + text;
    return out;
}

template <class Items, class Make>
JsonValue listJson(const Items& items, Make make, JsonLayout layout = JsonLayout::fitting) {
    std::vector<JsonValue> values;
    for (const auto& item : items)
        values.push_back(make(item));
    return jsonList(std::move(values), layout);
}

JsonValue textsJson(const std::vector<std::string>& texts) {
    return listJson(texts, [](const std::string& text) { return jsonText(text); });
}

/// Computed values to ten figures: the last bits of a double are the machine's.
JsonValue valueJson(double value) {
    return jsonNumber(roundedToFigures(value, 10));
}

JsonValue answerJson(const SchemeAnswer& answer) {
    std::vector<JsonMember> members{{"name", jsonText(answer.name)},
                                    {"points", jsonNumber(answer.points)},
                                    {"values", listJson(answer.values, valueJson)},
                                    {"texts", textsJson(answer.texts)}};
    if (!answer.ranges.empty())
        members.push_back({"ranges", textsJson(answer.ranges)});
    return jsonObject(std::move(members));
}

JsonValue numberJson(const SlipNumber& number) {
    std::vector<JsonMember> members{{"name", jsonText(number.name)},
                                    {"value", valueJson(number.value)},
                                    {"text", jsonText(number.text)},
                                    {"slips", textsJson(number.slips)},
                                    {"label", jsonText(toText(labelOf(number)))},
                                    {"points", jsonNumber(number.points)}};
    if (number.answer != 0)
        members.push_back({"answer", jsonNumber(number.answer)});
    return jsonObject(std::move(members));
}

JsonValue alikeJson(const AlikeSlips& alike) {
    return textsJson(alike.second.empty() ? std::vector<std::string>{alike.first}
                                          : std::vector<std::string>{alike.first, alike.second});
}

JsonValue linesJson(const Worked& worked) {
    std::vector<JsonValue> lines;
    for (const WorkingPlace& place : calculatedLines(worked))
        lines.push_back(jsonText(lineText(worked.steps[place.step].workings[place.working])));
    return jsonList(std::move(lines), JsonLayout::lines);
}

/// The lines that stand there, and what is blank: what it is of, the question for its principle, the line.
JsonValue fadedJson(const TaskOnPage& task) {
    std::vector<JsonValue> blank;
    for (std::size_t i = 0; i < task.blank.size(); ++i) {
        const auto& prompts = task.faded->blank;
        blank.push_back(
            jsonObject({{"of", jsonText(toText(*task.blank[i].subject))},
                        {"prompt", jsonText(i < prompts.size() ? prompts[i].prompt : task.faded->prompt)},
                        {"line", jsonText(lineText(task.blank[i]))}},
                       JsonLayout::lines));
    }
    return jsonObject(
        {{"lines", linesJson(task.faded->worked)}, {"blank", jsonList(std::move(blank), JsonLayout::lines)}},
        JsonLayout::lines);
}

JsonValue flawedJson(const FlawedSolution& flawed) {
    return jsonObject({{"lines", linesJson(flawed.worked)},
                       {"line", jsonNumber(static_cast<double>(flawedLine(flawed)))},
                       {"slip", jsonText(flawed.slip)},
                       {"name", jsonText(slipName(flawed.slip))},
                       {"wrong", jsonText(lineText(workingOf(flawed)))},
                       {"right", jsonText(lineText(flawed.right))},
                       {"mend", jsonText(toText(flawed.mend))}},
                      JsonLayout::lines);
}

/// Empty: a slip is to be found, and there is none.
std::optional<JsonValue> variantJson(const ProblemSheet& sheet, std::size_t index) {
    const SheetVariant& variant = sheet.variants[index];
    const Problem& problem = variant.problem;
    std::vector<JsonMember> members{{"sketch", jsonText(sketchName(index))}};
    if (!variant.who.empty())
        members.push_back({"who", jsonText(variant.who)});
    members.insert(members.end(), {{"place", jsonNumber(static_cast<double>(variant.place))},
                                   {"code", jsonText(problem.code)}});
    if (!problem.id.family.empty()) // else a sketch of the user's
        members.insert(members.end(), {{"family", jsonText(problem.id.family)},
                                       {"level", jsonNumber(problem.id.level)},
                                       {"number", jsonNumber(problem.id.number)},
                                       {"scene", jsonText(problem.scene)}});
    members.insert(members.end(),
                   {{"title", jsonText(problem.sketch.title)}, {"statement", jsonText(problem.statement)}});
    if (needsCaution(problem.sketch))
        members.push_back({"caution", jsonText(cautionLine())});
    members.insert(members.end(),
                   {{"of", jsonNumber(variant.scheme.of)},
                    {"answers", listJson(variant.scheme.answers, answerJson, JsonLayout::lines)},
                    {"slips", listJson(variant.scheme.numbers, numberJson, JsonLayout::lines)}});
    if (!problem.isSeparable())
        members.push_back({"alike", listJson(problem.alike, alikeJson)});
    const TaskOnPage task = taskOf(sheet, index);
    if (task.faded)
        members.push_back({"faded", fadedJson(task)});
    if (task.flawed)
        members.push_back({"flawed", flawedJson(*task.flawed)});
    else if (sheet.request.task == SheetTask::findSlip)
        return std::nullopt;
    return jsonObject(std::move(members), JsonLayout::lines);
}

JsonValue levelJson(const LevelEntry& level, int number) {
    return jsonObject({{"level", jsonNumber(number)},
                       {"numbers", jsonText(level.numbers)},
                       {"reference", jsonText(level.reference)},
                       {"traps", jsonText(level.traps)},
                       {"slips", listJson(level.slips, [](std::string_view slip) { return jsonText(slip); })},
                       {"separable", jsonNumber(level.separable)}},
                      JsonLayout::lines);
}

JsonValue familyJson(const FamilyEntry& family) {
    int number = 0;
    return jsonObject(
        {{"id", jsonText(family.id)},
         {"title", jsonText(family.title)},
         {"asks", jsonText(family.asks)},
         {"levels", listJson(
                        family.levels, [&](const LevelEntry& level) { return levelJson(level, ++number); },
                        JsonLayout::lines)},
         {"scenes", listJson(
                        family.scenes,
                        [](const SceneEntry& scene) {
                            return jsonObject({{"id", jsonText(scene.id)},
                                               {"title", jsonText(scene.title)},
                                               {"caution", jsonTruth(scene.caution)}});
                        },
                        JsonLayout::lines)}},
        JsonLayout::lines);
}

} // namespace

ProblemSheet sheetToDraw(const SheetRequest& request) {
    const std::size_t sheets = std::max<std::size_t>(1, request.roster.size());
    ProblemSheet sheet{
        request, std::vector<SheetVariant>(request.count * sheets),
        std::make_shared<ProblemsInTurn>(request.families, request.level, request.seed, request.count)};
    for (std::size_t index = 0; index < sheet.variants.size(); ++index) {
        SheetVariant& variant = sheet.variants[index];
        if (!request.roster.empty())
            variant.who = request.roster[index / request.count];
        variant.place = index % request.count + 1;
    }
    return sheet;
}

bool completed(ProblemSheet& sheet, std::size_t index, const std::function<bool()>& isCancelled) {
    SheetVariant& variant = sheet.variants[index];
    if (!sheet.toDraw || !variant.scheme.answers.empty())
        return true;
    auto drawn = sheet.toDraw->at(index, isCancelled);
    if (!drawn)
        return false;
    variant.scheme = schemeOf(*drawn);
    variant.problem = std::move(drawn->problem);
    return true;
}

bool completed(ProblemSheet& sheet, const std::function<bool()>& isCancelled) {
    std::atomic<std::size_t> there = sheet.variants.size();
    const bool isDone = sideBySide(
        sheet.variants.size(),
        [&](std::size_t index) {
            if (!completed(sheet, index, isCancelled)) {
                std::size_t least = there;
                while (index < least && !there.compare_exchange_weak(least, index)) {
                }
            }
        },
        isCancelled);
    const bool isWhole = isDone && there == sheet.variants.size();
    sheet.variants.resize(there);
    return isWhole;
}

std::string sketchName(std::size_t index) {
    return "sketches/" + fourDigits(index + 1) + ".json";
}

std::string answersCsv(const ProblemSheet& sheet) {
    const std::vector<std::string> columns = columnsOf(sheet);
    std::vector<std::string> head{"who"};
    head.insert(head.end(), columns.begin(), columns.end());
    std::string out = csvLine(head, {});
    for (std::size_t index = 0; index < sheet.variants.size(); ++index) {
        std::vector<std::string> cells{whoOf(sheet, index)};
        for (const std::string& column : columns) {
            const auto& answers = sheet.variants[index].scheme.answers;
            const auto found = std::find_if(answers.begin(), answers.end(),
                                            [&](const SchemeAnswer& one) { return one.name == column; });
            cells.push_back(found == answers.end() ? std::string() : joined(found->numbers, "; "));
        }
        out += csvLine(cells, {});
    }
    return out;
}

std::variant<std::string, std::size_t> sheetJson(const ProblemSheet& sheet) {
    constexpr bool beside = true;
    std::vector<std::optional<JsonValue>> made(sheet.variants.size());
    sideBySide(made.size(), [&](std::size_t index) { made[index] = variantJson(sheet, index); });
    std::vector<JsonValue> problems;
    for (std::size_t index = 0; index < made.size(); ++index) {
        if (!made[index])
            return index;
        problems.push_back(std::move(*made[index]));
    }
    return writeJson(jsonObject({{"format", jsonText("tailpoint-problems")},
                                 {"version", jsonNumber(1), beside},
                                 {"generator", jsonNumber(kPracticeVersion)},
                                 {"families", textsJson(sheet.request.families)},
                                 {"level", jsonNumber(sheet.request.level)},
                                 {"count", jsonNumber(static_cast<double>(sheet.request.count))},
                                 {"seed", jsonNumber(sheet.request.seed)},
                                 {"task", jsonText(nameOf(sheet.request.task))},
                                 {"problems", jsonList(std::move(problems), JsonLayout::lines)}},
                                JsonLayout::lines));
}

std::string_view nameOf(SheetTask task) {
    static constexpr std::array<std::string_view, 3> names{"questions", "faded", "find-slip"};
    return names[static_cast<std::size_t>(task)];
}

std::string familiesText() {
    std::string out;
    for (const FamilyEntry& family : problemFamilies()) {
        out += std::string(family.id) + ": " + std::string(family.title) + "\n  " + std::string(family.asks) +
               '\n';
        int number = 0;
        for (const LevelEntry& level : family.levels) {
            out += "  level " + std::to_string(++number) + '\n';
            for (const auto& [what, words] :
                 {std::pair{"numbers", level.numbers}, std::pair{"reference", level.reference},
                  std::pair{"traps", level.traps}})
                out += "    " + std::string(what) + ": " + std::string(words) + '\n';
            out += "    slips told apart: in " + std::to_string(level.separable) + " % of the problems\n";
        }
        out += '\n';
    }
    out.pop_back();
    return out;
}

std::string familiesJson() {
    constexpr bool beside = true;
    return writeJson(jsonObject({{"format", jsonText("tailpoint-families")},
                                 {"version", jsonNumber(1), beside},
                                 {"generator", jsonNumber(kPracticeVersion)},
                                 {"families", listJson(problemFamilies(), familyJson, JsonLayout::lines)}},
                                JsonLayout::lines));
}

} // namespace tailpoint
