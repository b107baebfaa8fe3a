// SPDX-License-Identifier: MIT
#include "ui/handout/handout_document.h"

#include "core/explain/cases.h"
#include "core/explain/caution.h"
#include "core/sketch/cases.h"
#include "ui/practice/problem_file.h"
#include "ui/render/render.h"
#include "ui/render/tikz.h"

namespace tailpoint {

namespace {

/// An exercise is made from the sketch alone.
Result sourceOf(const Result& result, const HandoutChoice& choice) {
    return choice.solution ? result : unanswered(result.sketch);
}

ExplainOptions explainOptionsOf(const HandoutChoice& choice) {
    ExplainOptions options;
    options.handRounding = choice.handRounding;
    options.parallelograms = choice.parallelograms;
    options.method = choice.method;
    options.uncertainty = choice.uncertainty;
    return options;
}

FigureOptions optionsOf(const Result& result, const HandoutChoice& choice) {
    FigureOptions options;
    const bool byTwo = addsByParallelograms(explainOptionsOf(choice));
    const bool pairs = byTwo || result.construction.parallelogram;
    options.construction =
        choice.construction.value_or(pairs ? ConstructionKind::parallelogram : ConstructionKind::polygon);
    options.pair = byTwo ? kAllPairs : kNoPairs;
    options.otherOrder = choice.otherOrder;
    options.parallelMarks = choice.parallelMarks;
    options.solution = result.chosen;
    options.bearings = true;
    options.caution = false; // told in the text beside the figure
    if (!choice.solution) {
        options.stage = Stage::directions;
        options.asGiven = true;
    } else {
        options.names = result.angleNames(options.solution, byTwo);
        options.tolerated = result.tolerated(options.solution);
    }
    return options;
}

View viewOf(const Result& result, const HandoutChoice& choice, double width, double height) {
    const Result source = sourceOf(result, choice);
    return fittedView(source.sketch, source.solved, source.construction, optionsOf(source, choice), width,
                      height);
}

/// Each answer in its turn; where there is none, why.
std::vector<Worked> workedAnswers(const Result& result, const ExplainOptions& options) {
    std::vector<Worked> answers;
    const std::size_t count = std::max<std::size_t>(1, result.solved.solutions.size());
    for (std::size_t i = 0; i < count; ++i)
        answers.push_back(*result.worked(options, i));
    return answers;
}

std::vector<LegsTold> legsOfAnswers(const Result& result) {
    std::vector<LegsTold> all;
    for (std::size_t i = 0; i < std::max<std::size_t>(1, result.solved.solutions.size()); ++i)
        if (const auto legs = legsOf(result.sketch, result.solved, i, result.rangeOf(i)))
            all.push_back(told(*legs, result.sketch));
    return all;
}

/// Of each answer, without one of what is given; nothing where no limit is stated.
std::vector<std::vector<LimitShown>> limitsOfAnswers(const Result& result) {
    std::vector<std::vector<LimitShown>> all;
    for (std::size_t i = 0; i < std::max<std::size_t>(1, result.solved.solutions.size()); ++i)
        if (auto limits = limitsShown(result.sketch, result.solved, i, result.ranges()); !limits.empty())
            all.push_back(std::move(limits));
    return all;
}

/// `figureText` makes the output's own form of the figure.
template <class FigureText>
Handout handoutWith(const Result& result, const HandoutChoice& choice, FigureText figureText) {
    const double height = handoutFigureHeight(result, choice);
    const DisplayList figure = handoutFigure(result, choice, kHandoutWidth, height);
    Handout handout = handoutOf(result, choice, handoutDivision(result, choice, kHandoutWidth, height));
    handout.figure = figureText(figure).toStdString();
    return handout;
}

} // namespace

DisplayList handoutFigure(const Result& result, const HandoutChoice& choice, double width, double height) {
    const Result source = sourceOf(result, choice);
    DisplayList figure =
        compose(source.sketch, source.solved, source.construction, viewOf(source, choice, width, height),
                optionsOf(source, choice), QtTextMeasure{})
            .list;
    if (!choice.solution) // what is read aloud gives nothing away either
        figure.description = plain(question(result.sketch));
    return figure;
}

double handoutFigureHeight(const Result& result, const HandoutChoice& choice) {
    constexpr double step = 30, enough = 0.97; // of the scale that the most height would give
    const auto scaleAt = [&](double height) { return viewOf(result, choice, kHandoutWidth, height).scale; };
    const double most = scaleAt(kMostFigureHeight);
    double height = kLeastFigureHeight;
    while (height < kMostFigureHeight && scaleAt(height) < enough * most)
        height += step;
    return std::min(height, kMostFigureHeight);
}

double handoutDivision(const Result& result, const HandoutChoice& choice, double width, double height) {
    return divisionOf(viewOf(result, choice, width, height));
}

Handout handoutOf(const Result& result, const HandoutChoice& choice, double division) {
    ExplainOptions options = explainOptionsOf(choice);
    if (division > 0)
        options.division = division;
    Handout handout;
    handout.title = titleWithCase(result.sketch);
    if (const std::string words = choice.ownWords ? wordsOf(result.sketch) : std::string(); !words.empty()) {
        handout.given.sentence = inProse(words);
    } else {
        handout.given = statement(result.sketch);
        handout.question = question(result.sketch);
    }
    if (choice.solution) {
        handout.answers = workedAnswers(result, options);
        handout.legs = legsOfAnswers(result);
        handout.limits = limitsOfAnswers(result);
        handout.tables = casesTold(result.sketch, withRanges(caseStates(result.sketch)));
    }
    handout.solution = choice.solution;
    if (needsCaution(result.sketch))
        handout.caution = cautionLine();
    if (choice.from && choice.solution)
        handout.record = recordLines(result.sketch, *choice.from);
    return handout;
}

QByteArray handoutHtml(const Result& result, const HandoutChoice& choice) {
    return QByteArray::fromStdString(toHtml(handoutWith(
        result, choice, [](const DisplayList& figure) { return toSvg(figure, printTheme(), {}); })));
}

QByteArray handoutLatex(const Result& result, const HandoutChoice& choice) {
    return QByteArray::fromStdString(toLatex(
        handoutWith(result, choice, [](const DisplayList& figure) { return toTikz(figure, printTheme()); })));
}

} // namespace tailpoint
