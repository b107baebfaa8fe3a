// SPDX-License-Identifier: MIT
#include "ui/problems/task_blocks.h"

#include "core/quantity/text.h"
#include "ui/problems/set_text.h"

namespace tailpoint {

namespace {

constexpr double kIndent = 22, kAlone = 12.4, kQuiet = 9; ///< points: as a handout's steps have them

Handout solutionOnPage(const TaskOnPage& task) {
    Handout handout;
    handout.answers.push_back(shownOnPage(task, task.flawed.has_value()));
    return handout;
}

SheetTask kindOf(const TaskOnPage& task) {
    return task.flawed ? SheetTask::findSlip : SheetTask::faded;
}

bool isEmpty(const TaskOnPage& task) {
    return !task.flawed && !task.faded;
}

/// A line to fill in and the question for its principle; empty where the line before asks the same.
struct ToFillIn {
    Formula subject;
    std::string prompt;
};

std::vector<ToFillIn> toFillIn(const FadedSolution& faded) {
    std::vector<ToFillIn> lines;
    std::string last;
    for (const FadedLine& line : faded.blank) {
        const Working& blank = faded.worked.steps[line.place.step].workings[line.place.working];
        lines.push_back({*blank.subject, line.prompt == last ? std::string() : line.prompt});
        last = line.prompt;
    }
    return lines;
}

/// "R = ________"
Setting blankLine(const Formula& subject, TypeSize size, double width) {
    Setting line = setFormula(subject, size);
    line.add(textOf(QStringLiteral(" = "), kHandoutText), {line.width, 0});
    line.add(ruledLine(std::max(0.0, width - line.width)), {line.width, 0});
    return line;
}

/// "The numbered line with the slip: ________"
Setting wordsAndLine(const QString& words, double width) {
    Setting line = textOf(words + QLatin1Char(' '), kHandoutText, QFont::DemiBold);
    line.add(ruledLine(std::max(0.0, width - line.width)), {line.width, 0});
    return line;
}

void addFadedLines(GroupWriter& out, const FadedSolution& faded, double width) {
    const double unit = unitsInPoint(), room = width - kIndent * unit;
    if (faded.onlyLaw) {
        out.begin(9);
        out.prose(inProse(faded.prompt), kHandoutText, kIndent, 0, QFont::DemiBold);
        for (int line = 0; line < 2; ++line)
            out.add(ruledLine(room), kIndent, 18);
        return;
    }
    for (const ToFillIn& line : toFillIn(faded)) {
        out.begin(6);
        if (!line.prompt.empty())
            out.prose(inProse(line.prompt), kQuiet, kIndent, 3).ink = HandoutPages::Ink::quiet;
        out.add(blankLine(line.subject, out.typeSize(kAlone), room), kIndent, 14);
    }
}

void addLine(GroupWriter& out, const Working& line, double width) {
    out.add(setWorking(line, out.typeSize(kAlone), width - kIndent * unitsInPoint()), kIndent, 5);
}

std::string nameOfLine(const FlawedSolution& flawed) {
    return "Line (" + std::to_string(flawedLine(flawed)) + "): " + slipName(flawed.slip);
}

const char* const kLineWords = "Number of the line with the slip";
const char* const kMendWords = "As it should be";

} // namespace

std::vector<HandoutPages::Kept> taskGroups(const TaskOnPage& task, bool bothAnswers, double width) {
    if (isEmpty(task))
        return {};
    GroupWriter out(width);
    out.begin(12);
    out.prose(inProse(taskWords(kindOf(task), bothAnswers)), kHandoutText, 0, 0, QFont::DemiBold);
    out.parts(solutionOnPage(task));
    if (task.faded) {
        addFadedLines(out, *task.faded, width);
    } else {
        out.begin(16);
        out.add(wordsAndLine(QLatin1String(kLineWords), width / 2), 0, 0);
        out.add(wordsAndLine(QLatin1String(kMendWords), width), 0, 16);
    }
    return out.take();
}

void addTaskKey(GroupWriter& out, const TaskOnPage& task, double width) {
    if (task.faded) {
        out.prose(inProse("What was left out"), kQuiet, 0, 7).ink = HandoutPages::Ink::quiet;
        for (const Working& line : task.blank)
            addLine(out, line, width);
    }
    if (task.flawed) {
        out.prose(inProse(nameOfLine(*task.flawed)), kHandoutText, 0, 7, QFont::DemiBold);
        addLine(out, workingOf(*task.flawed), width);
        out.prose(inProse("As it should be"), kQuiet, 0, 5).ink = HandoutPages::Ink::quiet;
        addLine(out, task.flawed->right, width);
        out.prose(task.flawed->mend, kHandoutText, 0, 5);
    }
}

std::string taskHtml(const TaskOnPage& task, bool bothAnswers) {
    if (isEmpty(task))
        return {};
    const auto toFill = [](const std::string& head) {
        return "<p class=\"asked\"><span>" + head + "<i></i></span></p>\n";
    };
    std::string out = "<p><b>" + xmlEscaped(taskWords(kindOf(task), bothAnswers)) + "</b></p>\n";
    const Handout handout = solutionOnPage(task);
    for (const HandoutPart& part : partsOf(handout))
        out += toHtml(part);
    if (task.flawed)
        return out + toFill("<b>" + std::string(kLineWords) + "</b> ") +
               toFill("<b>" + std::string(kMendWords) + "</b> ");
    if (task.faded->onlyLaw)
        return out + "<p><b>" + xmlEscaped(task.faded->prompt) + "</b></p>\n" + toFill("") + toFill("");
    for (const ToFillIn& line : toFillIn(*task.faded)) {
        if (!line.prompt.empty())
            out += "<p class=\"quiet\">" + xmlEscaped(line.prompt) + "</p>\n";
        out += toFill(toMathml(line.subject) + " = ");
    }
    return out;
}

std::string taskKeyHtml(const TaskOnPage& task) {
    std::string out;
    if (task.faded) {
        out += "<p class=\"quiet\">What was left out</p>\n";
        for (const Working& line : task.blank)
            out += toHtml(line);
    }
    if (task.flawed)
        out += "<p><b>" + xmlEscaped(nameOfLine(*task.flawed)) + "</b></p>\n" +
               toHtml(workingOf(*task.flawed)) + "<p class=\"quiet\">As it should be</p>\n" +
               toHtml(task.flawed->right) + "<p>" + toHtml(task.flawed->mend) + "</p>\n";
    return out;
}

} // namespace tailpoint
