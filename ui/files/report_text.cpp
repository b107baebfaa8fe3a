// SPDX-License-Identifier: MIT
#include "ui/files/report.h"

#include "core/construct/reduction.h"
#include "core/explain/cases.h"
#include "core/explain/caution.h"
#include "core/explain/explain.h"
#include "core/explain/handout.h"
#include "core/explain/legs.h"
#include "core/explain/limits.h"
#include "core/explain/question.h"
#include "core/explain/ranges.h"
#include "core/explain/tolerance.h"
#include "core/explain/uncertainty.h"
#include "core/quantity/utf8.h"
#include "core/sketch/cases.h"
#include "core/sketch/shown.h"
#include "ui/files/report_lines.h"
#include "ui/files/report_values.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace tailpoint {

namespace {

using report::givenText;
using report::heading;
using report::kColumns;
using report::paragraph;
using report::Rows;
using report::table;
using report::titleText;

bool isFound(const SolvedForce& force) {
    return force.magnitudeFound || force.directionFound;
}

/// "R = 520 N, 3.6° clockwise from +x"; with ranges "R = 520 N, between 509 N and 530 N; 3.6° clockwise from
/// +x, between -5.1° and -2.2°".
std::string answerLine(const SolvedForce& solved, const Force& given, const Sketch& sketch,
                       const tolerance::VectorRange* range) {
    std::string line = solved.name + " = " + shownMagnitude(solved, given, sketch);
    if (range && !endsTold(range->magnitude, sketch).isOne)
        line += ", " + toText(betweenTold(range->magnitude, sketch), Minus::ascii);
    if (range)
        line += ';';
    line += (range ? " " : ", ") + directionWords(solved.direction, sketch);
    if (const std::string bearing = bearingWords(solved.direction, sketch); !bearing.empty())
        line += ", bearing " + bearing;
    if (range && !endsTold(range->direction, sketch).isOne)
        line += ", " + toText(betweenTold(range->direction, sketch), Minus::ascii);
    return solved.turned ? line + " (in the other sense of its line of action)" : line;
}

/// A vector's components, and under them the ends of what they can be.
void addComponents(Rows& rows, const SolvedForce& force, const Sketch& sketch,
                   const tolerance::VectorRange* range) {
    rows.push_back({force.name, shownForce(force.vector.x(), sketch), shownForce(force.vector.y(), sketch)});
    if (!range)
        return;
    const EndsTold x = endsTold(range->x, sketch), y = endsTold(range->y, sketch);
    if (x.isOne && y.isOne)
        return;
    const auto end = [](const std::string& shown) { return shown.empty() ? "unbounded" : shown; };
    rows.push_back({"  from", end(x.from), end(y.from)});
    rows.push_back({"  to", end(x.to), end(y.to)});
}

/// As who adds up the numbers that are shown.
double asShown(double value, const Sketch& sketch) {
    return std::strtod(shownForce(value, sketch).c_str(), nullptr);
}

/// The forces as shown add up to something else than the sum as shown.
bool missesSum(const Solution& solution, const Sketch& sketch, Eigen::Index axis) {
    double left = -asShown(solution.sum.vector[axis], sketch), scale = std::abs(left);
    for (const SolvedForce& force : solution.forces) {
        left += asShown(force.vector[axis], sketch);
        scale = std::max(scale, std::abs(force.vector[axis]));
    }
    return std::abs(left) > 1e-9 * scale;
}

std::string componentsText(const Solution& solution, const Sketch& sketch,
                           const tolerance::AnswerRange* ranges) {
    Rows rows{{"", "x", "y"}};
    const auto rangeOf = [&](int index) { return ranges ? ranges->find(index) : nullptr; };
    for (std::size_t i = 0; i < solution.forces.size(); ++i)
        addComponents(rows, solution.forces[i], sketch, rangeOf(static_cast<int>(i)));
    if (!isEquilibrium(sketch))
        addComponents(rows, solution.sum, sketch, rangeOf(kSumIndex));
    const bool misses = missesSum(solution, sketch, 0) || missesSum(solution, sketch, 1);
    return heading("Components along x and y, in " + std::string(symbolOf(sketch.forceUnit))) + table(rows) +
           (misses ? paragraph("Each is rounded by itself: added up as shown, a column can be off in the "
                               "last digit.")
                   : std::string());
}

std::string shownOrNone(const std::optional<double>& radians, const Sketch& sketch) {
    return radians ? shownAngleFromRadians(*radians, sketch) : "undefined";
}

std::string parallelogramText(const Parallelogram& figure, const Sketch& sketch) {
    std::string out = heading("Interior angles of the parallelogram");
    if (figure.shape != Shape::proper)
        return out + paragraph(std::string(wordsFor(figure.shape)));
    const std::array<std::string, 4> places{"at the common point", "at the tip of " + figure.first,
                                            "at the far corner", "at the tip of " + figure.second};
    Rows rows;
    for (std::size_t i = 0; i < places.size(); ++i)
        rows.push_back({places[i], shownOrNone(figure.interior[i], sketch)});
    return out + table(rows);
}

/// "K = R - A - B: what the forces sought must amount to."
std::string knownsText(const Sketch& sketch, const Solved& solved) {
    const auto reduction = reductionOf(sketch, solved);
    if (!reduction || !reduction->addsUp())
        return {};
    const Things things(sketch);
    std::string sum;
    bool isDifference = false;
    const auto add = [&](const std::pair<VectorId, int>& known) {
        isDifference = isDifference || known.second < 0;
        sum += known.second < 0 ? " - " : sum.empty() ? " " : " + ";
        sum += things.name(known.first);
    };
    for (const auto& known : reduction->known) // what is counted as it is, in front
        if (known.second > 0)
            add(known);
    for (const auto& known : reduction->known)
        if (known.second < 0)
            add(known);
    return paragraph(things.name(kKnownVector) + " =" + sum +
                     (isDifference ? ": what the forces sought amount to." : ": the known forces added up."));
}

/// The three angles as shown don't make a half turn.
std::string angleSumNote(const ForceTriangle& triangle, const Sketch& sketch) {
    double sum = 0;
    for (const auto& angle : triangle.opposite)
        sum += angle ? std::strtod(shownAngleFromRadians(*angle, sketch).c_str(), nullptr) : 0;
    const double turn = turnIn(sketch.angleUnit), left = sum - turn / 2;
    const bool isSmall = std::abs(left) < turn / 100; // an angle that has none is not for adding up
    return isSmall && std::abs(left) > 1e-9 * turn
               ? paragraph("Each angle is rounded by itself: as shown they add up to " +
                           shownAngle(sum, sketch) + '.')
               : std::string();
}

/// "520 N (505 to 539 N)" where the side was found; `ranges`: null where there are none.
std::string lengthText(const ForceTriangle& triangle, std::size_t side, const Sketch& sketch,
                       const tolerance::AnswerRange* ranges) {
    const std::string length = shownForceWithUnit(triangle.sides[side], sketch);
    const auto* range = ranges ? ranges->find(triangle.vectors[side]) : nullptr;
    return range && range->magnitudeFound && !endsTold(range->magnitude, sketch).isOne
               ? length + " (" + toText(rangeTold(range->magnitude, sketch), Minus::ascii) + ')'
               : length;
}

std::string triangleText(const ForceTriangle& triangle, const Sketch& sketch, const Solved& solved,
                         const tolerance::AnswerRange* ranges) {
    Rows rows{{"side", "length", "opposite angle"}};
    for (std::size_t i = 0; i < triangle.names.size(); ++i)
        rows.push_back({triangle.names[i], lengthText(triangle, i, sketch, ranges),
                        shownOrNone(triangle.opposite[i], sketch)});
    return heading("Force triangle") + table(rows) + angleSumNote(triangle, sketch) +
           knownsText(sketch, solved);
}

/// Where in the solution two ways are compared.
std::string checkText(const Worked& worked) {
    const auto check = std::find_if(worked.steps.rbegin(), worked.steps.rend(),
                                    [](const Step& step) { return step.key == StepKey::check; });
    return check == worked.steps.rend()
               ? std::string()
               : heading("Check") + paragraph("Worked another way in step " +
                                              std::to_string(worked.steps.rend() - check) + '.');
}

std::string paragraphs(const std::vector<Prose>& told) {
    std::string out;
    for (const Prose& each : told)
        out += paragraph(toText(each, Minus::ascii));
    return out;
}

/// `ranges`: null where there are none.
std::string remarksText(const Sketch& sketch, const tolerance::AnswerRange* ranges) {
    if (ranges)
        return paragraphs(rangeRemarks(*ranges, sketch));
    const auto note = toleranceNote(sketch);
    return note ? paragraph(note->text) : std::string();
}

/// `ranges`: null where there are none.
std::string answersText(const Sketch& sketch, const Solution& solution,
                        const tolerance::AnswerRange* ranges) {
    std::string out;
    const bool isRangeUnknown = !ranges && tolerance::boxOf(sketch).hasTolerance;
    const auto add = [&](const SolvedForce& solved, const Force& given, int index) {
        const auto* range = ranges ? ranges->find(index) : nullptr;
        std::string line = answerLine(solved, given, sketch, range);
        if (isRangeUnknown)
            line += "; " + rangeUnknown();
        if (isFound(solved))
            out += range || isRangeUnknown ? paragraph(line) : "  " + line + '\n';
    };
    for (std::size_t i = 0; i < solution.forces.size(); ++i)
        add(solution.forces[i], sketch.forces[i], static_cast<int>(i));
    add(solution.sum, sketch.sum, kSumIndex);
    return out;
}

/// Rounded on the way the solution may come to another last digit.
std::string byHandText(const Worked& worked, const Worked& full) {
    const std::string told = toText(worked.answer, Minus::ascii);
    return told == toText(full.answer, Minus::ascii)
               ? std::string()
               : paragraph("Rounded by hand on the way, the solution gives instead: " + told +
                           " Its last step says what that costs.");
}

std::string withAsciiMinus(std::string text) {
    const std::string sign = "\u2212";
    for (auto at = text.find(sign); at != std::string::npos; at = text.find(sign, at + 1))
        text.replace(at, sign.size(), "-");
    return text;
}

/// A table under its heading, and what is remarked.
std::string toldText(const TableTold& told) {
    Rows rows;
    const auto add = [&](const std::vector<Formula>& cells) {
        auto& row = rows.emplace_back();
        for (const Formula& cell : cells)
            row.push_back(withAsciiMinus(toText(cell, Minus::ascii)));
    };
    add(told.table.head);
    for (const auto& row : told.table.rows)
        add(row);
    std::string out = heading(told.heading) + table(rows);
    for (const Prose& remark : told.remarks)
        out += paragraph(withAsciiMinus(toText(remark, Minus::ascii)));
    return out;
}

std::string legsText(const Sketch& sketch, const Solved& solved, std::size_t solution,
                     const tolerance::AnswerRange* range = nullptr) {
    const auto legs = legsOf(sketch, solved, solution, range);
    if (!legs)
        return {};
    return toldText(tailpoint::told(*legs, sketch));
}

/// The sketch's cases, where it has some.
std::string casesText(const Sketch& sketch) {
    std::string out;
    for (const TableTold& told : casesTold(sketch, withRanges(caseStates(sketch))))
        out += toldText(told);
    return out;
}

std::string valuesText(const Answer& answer, const Construction& construction, const std::string& title,
                       const std::string& remark, const tolerance::AnswerRange* ranges,
                       const std::vector<Prose>& uncertainty) {
    const Sketch& sketch = answer.sketch;
    std::string out = heading(title) + answersText(sketch, answer.solution(), ranges) +
                      remarksText(sketch, ranges) + paragraphs(uncertainty) +
                      paragraphs(limitsTold(sketch, answer.solution(), ranges)) + remark;
    out += componentsText(answer.solution(), sketch, ranges);
    if (construction.parallelogram)
        out += parallelogramText(*construction.parallelogram, sketch);
    if (construction.triangle)
        out += triangleText(*construction.triangle, sketch, answer.solved, ranges);
    if ((construction.parallelogram || construction.triangle) && toleranceNote(sketch))
        out += paragraph("Sides and angles of the figure at the middle of the tolerances.");
    return out + legsText(sketch, answer.solved, answer.index, ranges);
}

std::string sharedText(std::size_t steps) {
    const std::string which = steps == 1 ? "Step 1 is" : "Steps 1 to " + std::to_string(steps) + " are";
    return paragraph(which + " the same as in the first answer.") + '\n';
}

/// What the second of two answers shares with the first is told once.
std::string workedText(const std::vector<Worked>& worked, std::size_t answer) {
    const std::size_t shared = answer == 0 ? 0 : sharedSteps(worked);
    return heading("Worked solution") + (shared == 0 ? std::string() : sharedText(shared)) +
           toText(worked[answer], Minus::ascii, kColumns, shared);
}

std::string solutionsText(const std::vector<Answer>& answers, const ExplainOptions& options,
                          const Result& result) {
    std::string out;
    std::vector<Worked> worked;
    const tolerance::Ranges& ranges = result.ranges();
    tolerance::Uncertainties uncertainties;
    if (options.uncertainty)
        uncertainties = result.uncertainties(*options.uncertainty);
    ExplainOptions guarded = options;
    guarded.handRounding = false;
    for (std::size_t i = 0; i < answers.size(); ++i) {
        const Answer& answer = answers[i];
        const Construction construction = construct(answer.sketch, answer.solved, answer.index);
        const auto told = [&](const ExplainOptions& by) {
            return explain(answer.sketch, answer.solved, construction, answer.index, by, ranges);
        };
        worked.push_back(told(options));
        const std::string remark =
            options.handRounding ? byHandText(worked.back(), told(guarded)) : std::string();
        std::vector<Prose> uncertainty;
        if (options.uncertainty) {
            uncertainty = uncertaintyTold(answer.sketch, answer.solved, answer.index, uncertainties,
                                          *options.uncertainty);
            tellUncertainty(worked.back(), answer.sketch, answer.solved, answer.index, uncertainties,
                            *options.uncertainty, options.sentences);
        }
        tellLimits(worked.back(), answer.sketch, answer.solved, answer.index, ranges, options.sentences);
        const std::string which = " " + std::to_string(i + 1) + " of " + std::to_string(answers.size());
        out += valuesText(answer, construction, answers.size() == 1 ? "Answer" : "Answer" + which, remark,
                          i < ranges.size() ? &ranges[i] : nullptr, uncertainty);
        out += checkText(worked.back());
        out += workedText(worked, i);
    }
    return out;
}

/// Names of the vectors that a root turns round.
std::string turnedNames(const Solution& lost) {
    std::string names;
    const auto add = [&](const SolvedForce& vector) {
        if (vector.turned)
            names += (names.empty() ? "" : " and ") + vector.name;
    };
    for (const SolvedForce& force : lost.forces)
        add(force);
    add(lost.sum);
    return names;
}

/// What a given sense rules out: values alone, for the question leaves it nothing to work out.
std::string reversedText(const Sketch& sketch, const Solved& solved) {
    const auto answers = reversedAnswersOf(sketch, solved);
    if (answers.empty())
        return {};
    std::string out = heading("In the other sense");
    for (const Answer& answer : answers) {
        const tolerance::Ranges ranges = rangesOfReversed(answer);
        const auto* range = answer.index < ranges.size() ? &ranges[answer.index] : nullptr;
        out += answersText(answer.sketch, answer.solution(), range) + remarksText(answer.sketch, range);
    }
    return out + paragraph("There " + turnedNames(answers.front().solution()) +
                           " would act against the given sense, so it is no answer here.");
}

std::string unansweredText(const Result& result, const ExplainOptions& options) {
    Worked worked = explain(result.sketch, result.solved, result.construction, 0, options);
    tellLimits(worked, result.sketch, result.solved, 0, {}, options.sentences);
    return heading("Worked solution") + toText(worked, Minus::ascii, kColumns);
}

} // namespace

QByteArray reportText(const Result& result, const ExplainOptions& options,
                      const std::optional<Provenance>& from) {
    const Sketch& sketch = result.sketch;
    std::string out = titleText(sketch) + givenText(sketch);
    out += heading("Find") + paragraph(plain(question(sketch)));
    const bool isToldAtItsAnswer = !result.solved.solutions.empty(); // in the step of that name
    if (!result.solved.remarks.empty() && !isToldAtItsAnswer)
        out += heading("Note") + paragraph(result.solved.finding().text());
    out += solutionsText(answersOf(sketch, result.solved), options, result);
    out += reversedText(sketch, result.solved);
    if (result.solved.solutions.empty()) {
        out += legsText(sketch, result.solved, 0);
        out += unansweredText(result, options);
    }
    out += casesText(sketch);
    if (needsCaution(sketch))
        out += heading("Caution") + paragraph(std::string(cautionLine()));
    if (from) {
        out += heading("Record");
        for (const std::string& line : recordLines(sketch, *from))
            out += paragraph(line);
    }
    return QByteArray::fromStdString(out);
}

} // namespace tailpoint
