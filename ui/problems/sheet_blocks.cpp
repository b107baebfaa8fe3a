// SPDX-License-Identifier: MIT
#include "ui/problems/sheet_blocks.h"

#include "core/explain/caution.h"
#include "core/explain/question.h"
#include "core/explain/statement.h"
#include "core/quantity/decimals.h"
#include "core/quantity/text.h"
#include "ui/handout/handout_blocks.h"
#include "ui/problems/set_text.h"

#include <QFontMetricsF>

namespace tailpoint {

namespace {

using Block = HandoutPages::Block;
using Kept = HandoutPages::Kept;

// Points.
constexpr double kHead = 8.5, kBlockHeading = 15, kStatement = 11;
constexpr double kLeastRoom = 5 * 72 / 2.54;        ///< 5 cm to work and draw in
constexpr double kNameLine = 210, kNameShare = 0.6; ///< a name takes no more of the column's width
constexpr double kCm = 72 / 2.54;

/// The sheet's title, and at the right a name or a line for it.
Setting headOf(const ProblemPlace& place, double width) {
    const double line = kNameLine * unitsInPoint();
    const bool isNamed = !place.student.isEmpty();
    Setting name = isNamed ? elided(place.student, kStatement, QFont::DemiBold, kNameShare * width)
                           : textOf(QStringLiteral("Name"), kHead);
    if (!isNamed)
        name.add(ruledLine(line), {name.width + 6 * unitsInPoint(), 0});
    const double room = width - name.width - 20 * unitsInPoint();
    Setting head = elided(place.title, kHead, QFont::Normal, room);
    head.add(name, {width - name.width, 0});
    return head;
}

/// "Answer   R = ______   θ_R = ______"
Setting answerLine(const std::string& head, const std::vector<Formula>& asked, TypeSize size, double width) {
    const double unit = unitsInPoint(), gap = 18 * unit;
    Setting line = textOf(QString::fromStdString(head), kHandoutText, QFont::DemiBold);
    const double begin = line.width + gap,
                 each = (width - begin - gap * static_cast<double>(asked.size() - 1)) /
                        static_cast<double>(asked.size());
    double x = begin;
    for (const Formula& symbol : asked) {
        Setting name = setFormula(symbol, size);
        name.add(textOf(QStringLiteral(" = "), kHandoutText), {name.width, 0});
        line.add(name, {x, 0});
        line.add(ruledLine(std::max(0.0, each - name.width)), {x + name.width, 0});
        x += each + gap;
    }
    return line;
}

} // namespace

void addGroups(std::vector<Kept>& groups, std::vector<Kept> more) {
    groups.insert(groups.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

std::string roomWords(const Problem& problem, const ExerciseFigure& figure, bool grid) {
    if (!grid)
        return "Room to work and draw";
    const std::string squares = "Room to work and draw. The squares are 1 cm wide";
    return figure.unitsPerCm > 0
               ? squares + "; at the figure's scale that is " + shortest(figure.unitsPerCm) + "\u00A0" +
                     std::string(symbolOf(problem.sketch.forceUnit)) + '.'
               : squares + '.';
}

std::string problemHeading(const Problem& problem, const ProblemPlace& place) {
    const std::string& title = problem.sketch.title;
    return "Problem " + std::to_string(place.number) + (title.empty() ? title : " \u00B7 " + title);
}

std::vector<std::string> answerHeads(const Problem& problem) {
    return problem.bothAnswers ? std::vector<std::string>{"First answer", "Second answer"}
                               : std::vector<std::string>{"Answer"};
}

std::vector<Formula> askedSymbols(const Sketch& sketch) {
    const Things things(sketch);
    std::vector<Formula> asked;
    const auto add = [&](const Force& vector, VectorId id) {
        if (!isGiven(vector.magnitude))
            asked.push_back(things.formula(magnitudeId(id)));
        if (!isGiven(vector.direction) && vector.magnitude.value != 0.0)
            asked.push_back(things.formula(directionId(id)));
    };
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        add(sketch.forces[i], forceVector(i));
    add(sketch.sum, kSumVector);
    return asked;
}

ExerciseFigure figureOf(const Problem& problem, const SheetLook& look, double width, double mostHeight) {
    const double points = width / unitsInPoint();
    return look.toScale ? exerciseFigure(problem.sketch, points, mostHeight)
                        : figureNotToScale(problem.sketch, points, mostHeight);
}

namespace {

/// To work in, and the lines for the answer.
void addRoom(GroupWriter& out, const Problem& problem, const ExerciseFigure& figure, bool grid) {
    out.begin(8);
    out.prose(inProse(roomWords(problem, figure, grid)), kHead, 0, 0).ink = HandoutPages::Ink::quiet;
    Block& room = out.add({}, 0, 4);
    room.height = kLeastRoom * unitsInPoint();
    room.fills = true;
    room.grid = grid ? kCm / 2 : 0;
    for (const std::string& head : answerHeads(problem))
        out.add(answerLine(head, askedSymbols(problem.sketch), out.typeSize(kBlockHeading - 2), out.width()),
                0, 16);
}

} // namespace

std::vector<Kept> problemGroups(const Problem& problem, const ProblemPlace& place,
                                const ExerciseFigure& figure, bool grid, double width,
                                std::vector<Kept> task) {
    GroupWriter out(width);
    out.begin(0);
    out.add(headOf(place, width), 0, 0);
    out.prose(inProse(problemHeading(problem, place)), kBlockHeading, 0, 16, QFont::DemiBold);
    if (problem.statement.empty()) {
        const Statement given = statement(problem.sketch);
        if (!given.sentence.pieces.empty())
            out.prose(given.sentence, kStatement, 0, 6);
        if (given.table)
            out.table(*given.table, 0);
        out.prose(proseOf(question(problem.sketch)), kStatement, 0, 4);
    } else {
        out.prose(inProse(keptTogether(problem.statement)), kStatement, 0, 6);
    }
    if (!figure.list.groups.empty())
        out.figure(figure.list);
    if (needsCaution(problem.sketch))
        out.caution(std::string(cautionLine()));
    auto groups = out.take();
    addGroups(groups, std::move(task));
    addRoom(out, problem, figure, grid);
    addGroups(groups, out.take());
    setCode(groups, problem.code);
    return groups;
}

} // namespace tailpoint
