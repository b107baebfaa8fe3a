// SPDX-License-Identifier: MIT
#include "ui/problems/key_blocks.h"

#include "core/explain/caution.h"
#include "core/sketch/shown.h"
#include "ui/handout/handout_blocks.h"
#include "ui/marking/class_output.h"
#include "ui/problems/set_text.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>

namespace tailpoint {

namespace {

using Kept = HandoutPages::Kept;

// Points.
constexpr double kHeading = 11.5, kAnswer = 12.5, kRow = 9.5, kRowHead = 8;

/// Where the margin's columns begin; numbers end at `number`.
struct Columns {
    double number = 62, symbol = 72, points = 118, slip = 168;
};

Setting row(const std::array<Setting, 4>& cells) {
    const Columns at;
    const double unit = unitsInPoint();
    Setting out;
    out.add(cells[0], {at.number * unit - cells[0].width, 0});
    out.add(cells[1], {at.symbol * unit, 0});
    out.add(cells[2], {at.points * unit, 0});
    out.add(cells[3], {at.slip * unit, 0});
    out.ascent = std::max(out.ascent, 9.4 * unit);
    out.descent = std::max(out.descent, 3.6 * unit); // as with a subscript
    return out;
}

Setting symbolCell(const MarginLine& line, TypeSize size) {
    Setting cell = setFormula(line.symbol, size);
    if (line.answer > 0)
        cell.add(textOf(inText(answerName(line.answer)), kRowHead), {cell.width, 0});
    return cell;
}

void addMargin(GroupWriter& out, const Scheme& scheme, double width) {
    const auto lines = marginOf(scheme);
    if (lines.empty())
        return;
    const QString of = QStringLiteral("of %1").arg(inText(pointsOf(scheme)));
    const auto head = [](const QString& text) { return textOf(text, kRowHead); };
    out.add(row({head(QStringLiteral("Number")), head(QStringLiteral("for")),
                 head(QStringLiteral("Points ") + of), head(QStringLiteral("Slip"))}),
            0, 7)
        .ink = HandoutPages::Ink::quiet;
    for (const MarginLine& line : lines) {
        const double room = width - Columns().slip * unitsInPoint();
        out.add(row({textOf(inText(withMinusSigns(line.number)), kRow),
                     symbolCell(line, out.typeSize(kRow + 1)), textOf(inText(line.points), kRow),
                     setProse(line.slip, handoutFont(kRow), out.typeSize(kRow), room)}),
                0, 1.5);
    }
    out.prose(inProse(marginNote(scheme)), kRowHead, 0, 3).ink = HandoutPages::Ink::quiet;
}

/// "N68.5°E"; forces and angles begin with a digit or a minus.
bool isBearing(const std::string& text) {
    return text.starts_with('N') || text.starts_with('S');
}

Formula stated(const SchemeAnswer& answer, std::size_t which) {
    const std::string& text = answer.texts[which];
    return equal(symbol(answer.symbol, QuantityId{}),
                 isBearing(text) ? inWords(text) : numberWithUnit(answer.values[which], text));
}

struct Ranked {
    int quadrant = 0; ///< of a bearing, 1 to 4; else 0
    double value = 0;
    MarginLine line;
};

Ranked ranked(const SlipNumber& number, const Scheme& scheme) {
    const auto answer = std::find_if(scheme.answers.begin(), scheme.answers.end(),
                                     [&](const SchemeAnswer& each) { return each.name == number.name; });
    Ranked made{0,
                number.value,
                {number.text, symbol(answer->symbol, QuantityId{}), number.answer, pointsText(number.points),
                 labelOf(number)}};
    if (isBearing(number.text)) {
        made.quadrant = 1 + (number.text.front() == 'S' ? 2 : 0) + (number.text.back() == 'W' ? 1 : 0);
        made.value = std::strtod(number.text.c_str() + 1, nullptr);
    }
    return made;
}

} // namespace

std::string answerName(int answer) {
    return answer == 0 ? std::string() : answer == 1 ? " (1st)" : " (2nd)";
}

std::string pointsOf(const Scheme& scheme) {
    return pointsText(scheme.of);
}

std::string marginNote(const Scheme& scheme) {
    const std::string points =
        "The points are those of the whole answer, where the rest follows from the slip.";
    if (!scheme.isSigned)
        return points;
    const bool hasOpen = std::any_of(scheme.numbers.begin(), scheme.numbers.end(),
                                     [](const SlipNumber& number) { return number.isEitherSense; });
    return points + " A right size with the wrong sign earns nothing for that value." +
           (hasOpen ? " \u00B1: the slip says nothing of the sign." : "");
}

std::vector<MarginLine> marginOf(const Scheme& scheme) {
    std::vector<Ranked> all;
    for (const SlipNumber& one : scheme.numbers)
        all.push_back(ranked(one, scheme));
    std::stable_sort(all.begin(), all.end(), [](const Ranked& a, const Ranked& b) {
        return std::tie(a.quadrant, a.value) < std::tie(b.quadrant, b.value);
    });
    std::vector<MarginLine> lines;
    for (Ranked& one : all) {
        const auto same = [&](const MarginLine& line) {
            return line.number == one.line.number && line.symbol == one.line.symbol &&
                   line.points == one.line.points && line.slip == one.line.slip;
        };
        const auto found = std::find_if(lines.begin(), lines.end(), same);
        if (found == lines.end())
            lines.push_back(std::move(one.line));
        else
            found->answer = 0; // whichever answer it stands for
    }
    return lines;
}

std::vector<Prose> answerLines(const Scheme& scheme) {
    const std::size_t answers = scheme.answers.empty() ? 0 : scheme.answers.front().values.size();
    std::vector<Prose> lines;
    for (std::size_t which = 0; which < answers; ++which) {
        Prose line;
        if (answers > 1)
            appendText(line, which == 0 ? "First answer: " : "Second answer: ");
        for (const SchemeAnswer& answer : scheme.answers) {
            if (&answer != &scheme.answers.front())
                appendText(line, ",  ");
            line.pieces.emplace_back(stated(answer, which));
            if (which < answer.ranges.size() && !answer.ranges[which].empty())
                appendText(line, " (" + withMinusSigns(answer.ranges[which]) + ")");
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

Prose pointsLine(const Scheme& scheme) {
    Prose line;
    appendText(line, pointsText(scheme.of) + (scheme.of == 1 ? " point" : " points"));
    if (scheme.answers.size() > 1)
        for (const SchemeAnswer& answer : scheme.answers) {
            appendText(line, &answer == &scheme.answers.front() ? ": " : ", ");
            line.pieces.emplace_back(symbol(answer.symbol, QuantityId{}));
            appendText(line, ' ' + pointsText(answer.points));
        }
    return line;
}

KeySolution keySolution(const Sketch& sketch, double room) {
    constexpr double least = 250; // points: below that labels crowd
    const Result result = resultOf(sketch);
    const HandoutChoice choice;
    const double wanted = handoutFigureHeight(result, choice),
                 height = room >= least ? std::min(wanted, room) : wanted;
    constexpr double none = 0; // the student's drawing has another scale than the key's figure
    return {handoutOf(result, choice, none), handoutFigure(result, choice, kHandoutWidth, height)};
}

std::vector<Kept> keyGroups(const Problem& problem, const ProblemPlace& place, const Scheme& scheme,
                            const TaskOnPage& task, double width) {
    GroupWriter out(width);
    out.begin(16);
    const Setting code = textOf(inText(problem.code), kHeading, QFont::DemiBold);
    const QString title = inText(problemHeading(problem, place));
    const double room = width - code.width - 20 * unitsInPoint();
    Setting heading =
        textOf(QFontMetricsF(handoutFont(kHeading, QFont::DemiBold)).elidedText(title, Qt::ElideRight, room),
               kHeading, QFont::DemiBold);
    heading.add(code, {width - code.width, 0});
    out.add(std::move(heading), 0, 0).rule = true;
    for (const Prose& line : answerLines(scheme))
        out.prose(line, kAnswer, 0, 4);
    out.prose(pointsLine(scheme), kRow, 0, 2).ink = HandoutPages::Ink::quiet;
    addTaskKey(out, task, width);
    if (!task.flawed)
        addMargin(out, scheme, width);
    auto groups = out.take();
    setCode(groups, problem.code);
    return groups;
}

std::vector<Kept> keyCaution(const Problem& problem, double width) {
    GroupWriter out(width);
    if (needsCaution(problem.sketch))
        out.caution(std::string(cautionLine()));
    auto groups = out.take();
    setCode(groups, problem.code);
    return groups;
}

std::vector<Kept> solutionGroups(const Problem& problem, const KeySolution& solution, double width) {
    GroupWriter out(width);
    out.begin(0);
    out.figure(solution.figure);
    out.parts(solution.handout);
    auto groups = out.take();
    setCode(groups, problem.code);
    return groups;
}

Kept keyHead(const QString& title, const QString& student, double width) {
    GroupWriter out(width);
    out.begin(student.isEmpty() ? 0 : 20);
    const QString words = student.isEmpty() ? QStringLiteral("Key \u00B7 ") + title : student;
    out.prose(inProse(words.toStdString()), student.isEmpty() ? 15 : 13, 0, 0, QFont::DemiBold);
    return std::move(out.take().front());
}

} // namespace tailpoint
