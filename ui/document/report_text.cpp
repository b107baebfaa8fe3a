#include "ui/document/report.h"

#include "core/construct/reduction.h"
#include "core/explain/caution.h"
#include "core/explain/explain.h"
#include "core/explain/handout.h"
#include "core/explain/question.h"
#include "core/explain/tolerance.h"
#include "core/quantity/utf8.h"
#include "core/sketch/shown.h"
#include "ui/document/report_values.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr std::size_t kColumns = 78;

/// Rows of cells in columns; the first to the left, numbers to the right.
using Rows = std::vector<std::vector<std::string>>;

std::string table(const Rows& rows) {
    std::vector<std::size_t> widths;
    for (const auto& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i) {
            widths.resize(std::max(widths.size(), i + 1));
            widths[i] = std::max(widths[i], characterCount(row[i]));
        }
    std::string out;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string gap(widths[i] - characterCount(row[i]), ' ');
            line += i == 0 ? "  " + row[i] + gap : "   " + gap + row[i];
        }
        out += line.substr(0, line.find_last_not_of(' ') + 1) + '\n';
    }
    return out;
}

/// Where the word that begins at `at` ends; a unit stays with its number.
std::size_t wordEnd(const std::string& text, std::size_t at) {
    std::size_t end = std::min(text.find(' ', at), text.size());
    if (end == text.size() || end == at || text[end - 1] < '0' || text[end - 1] > '9')
        return end;
    const std::string_view next = std::string_view(text).substr(end + 1);
    const std::string_view word = next.substr(0, next.find_first_of(" .,;:)"));
    const bool unit = forceUnitFrom(word) || word == nameOf(AngleUnit::rad) || word == nameOf(AngleUnit::gon);
    return unit ? std::min(text.find(' ', end + 1), text.size()) : end;
}

/// Broken at spaces, each line behind two spaces.
std::string paragraph(const std::string& text) {
    std::string out, line;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = wordEnd(text, at);
        const std::string word = text.substr(at, end - at);
        if (!line.empty() && characterCount(line) + 1 + characterCount(word) > kColumns - 2) {
            out += "  " + line + '\n';
            line.clear();
        }
        line += (line.empty() ? "" : " ") + word;
        at = end + 1;
    }
    return line.empty() ? out : out + "  " + line + '\n';
}

std::string heading(const std::string& text) {
    return '\n' + text + '\n';
}

std::string titleText(const Sketch& sketch) {
    const std::string title = sketch.title.empty() ? "Untitled sketch" : sketch.title;
    return title + '\n' + std::string(std::min(characterCount(title), kColumns), '=') + '\n';
}

std::string givenMagnitude(const Force& force, const Sketch& sketch) {
    const Magnitude& magnitude = force.magnitude;
    if (!magnitude.value)
        return "to find";
    if (!magnitude.plusMinus)
        return shownForceWithUnit(*magnitude.value, sketch, Origin::typed);
    return shownForce(*magnitude.value, sketch, Origin::typed) + " \u00B1 " + shortest(*magnitude.plusMinus) +
           ' ' + std::string(symbolOf(sketch.forceUnit));
}

std::string_view angleSign(AngleUnit unit) {
    return unit == AngleUnit::deg ? "\u00B0" : unit == AngleUnit::rad ? " rad" : " gon";
}

std::string givenDirection(const Force& force, const Sketch& sketch) {
    if (force.magnitude.value == 0.0 && !isGiven(force.direction))
        return "no direction";
    std::string out = shownAsGiven(force.direction, sketch);
    if (const auto& plusMinus = force.direction.plusMinus)
        out.append(" \u00B1 ").append(shortest(*plusMinus)).append(angleSign(sketch.angleUnit));
    return out;
}

/// What else is to be said of a given force: nothing, or a unit of its own in the file, or that only its line
/// is meant.
std::string givenNote(const Force& force) {
    std::string note = force.magnitude.typed ? "given as " + shownAsTyped(*force.magnitude.typed) : "";
    const auto* angle = std::get_if<AngleForm>(&force.direction.form);
    if (angle && angle->typed)
        note += (note.empty() ? "given at " : " at ") + shownAsTyped(*angle->typed);
    if (force.lineOfActionOnly)
        note += note.empty() ? "line of action only" : ", line of action only";
    return note;
}

std::vector<std::string> givenRow(const Force& force, const Sketch& sketch) {
    return {force.name, givenMagnitude(force, sketch), givenDirection(force, sketch), givenNote(force)};
}

std::string givenText(const Sketch& sketch) {
    Rows rows;
    for (const Force& force : sketch.forces)
        rows.push_back(givenRow(force, sketch));
    const bool equilibrium = isEquilibrium(sketch);
    if (!equilibrium) {
        rows.push_back(givenRow(sketch.sum, sketch));
        rows.back()[0] += ", resultant";
    }
    return heading("Given") + paragraph("directions " + referenceWords(sketch.reference)) + table(rows) +
           (equilibrium ? paragraph("in equilibrium: ΣF = 0") : std::string());
}

bool isFound(const SolvedForce& force) {
    return force.magnitudeFound || force.directionFound;
}

/// "R = 520 N, 3.6° clockwise from +x".
std::string answerLine(const SolvedForce& solved, const Force& given, const Sketch& sketch) {
    std::string line = solved.name + " = " + shownMagnitude(solved, given, sketch);
    line += ", " + directionWords(solved.direction, sketch);
    return solved.turned ? line + " (in the other sense of its line of action)" : line;
}

std::vector<std::string> componentRow(const SolvedForce& force, const Sketch& sketch) {
    return {force.name, shownForce(force.vector.x(), sketch), shownForce(force.vector.y(), sketch)};
}

std::string componentsText(const Solution& solution, const Sketch& sketch) {
    Rows rows{{"", "x", "y"}};
    for (const SolvedForce& force : solution.forces)
        rows.push_back(componentRow(force, sketch));
    if (!isEquilibrium(sketch)) // that all of them add up to zero is for the check to show
        rows.push_back(componentRow(solution.sum, sketch));
    return heading("Components along x and y, in " + std::string(symbolOf(sketch.forceUnit))) + table(rows);
}

std::string shownOrNone(const std::optional<double>& radians, const Sketch& sketch) {
    return radians ? shownAngleFromRadians(*radians, sketch) : "none";
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

/// What the side that stands for several vectors adds up.
std::string knownsText(const Answer& answer) {
    const auto reduction = reductionOf(answer.sketch, answer.solved);
    if (!reduction || !reduction->addsUp())
        return {};
    const Things things(answer.sketch);
    std::string sum;
    for (const auto& [part, sign] : reduction->known)
        sum += (sum.empty() ? (sign < 0 ? "-" : "") : sign < 0 ? " - " : " + ") + things.name(part);
    return paragraph(things.name(kKnownVector) + " = " + sum + ": what is known, added up as vectors.");
}

/// Each angle is rounded by itself.
std::string angleSumText(const ForceTriangle& triangle, const Sketch& sketch) {
    double sum = 0;
    for (const auto& angle : triangle.opposite) {
        if (!angle)
            return {};
        sum += std::strtod(shownAngleFromRadians(*angle, sketch).c_str(), nullptr);
    }
    const std::string shown = shownAngle(sum, sketch);
    return shown == shownAngle(turnIn(sketch.angleUnit) / 2, sketch)
               ? std::string()
               : paragraph("Each angle is rounded by itself; as shown they add up to " + shown + ".");
}

std::string triangleText(const ForceTriangle& triangle, const Answer& answer) {
    const Sketch& sketch = answer.sketch;
    Rows rows{{"side", "length", "opposite angle"}};
    for (std::size_t i = 0; i < triangle.names.size(); ++i)
        rows.push_back({triangle.names[i], shownForceWithUnit(triangle.sides[i], sketch),
                        shownOrNone(triangle.opposite[i], sketch)});
    return heading("Force triangle") + table(rows) + angleSumText(triangle, sketch) + knownsText(answer);
}

/// To how many digits the equation holds, where these are few enough to see.
std::string agreement(const Solution& solution, double scale, const Sketch& sketch) {
    const double digits = std::floor(-std::log10(solution.residual / scale));
    return solution.residual == 0 || digits > sketch.figures
               ? std::string()
               : " to " + std::to_string(static_cast<int>(digits)) + " digits";
}

/// Where the solution checks it; that the equation holds to few digits only is said besides.
std::string checkText(const Solution& solution, const Sketch& sketch, const Worked* worked) {
    double scale = solution.sum.magnitude;
    for (const SolvedForce& force : solution.forces)
        scale = std::max(scale, force.magnitude);
    std::string out;
    const auto isCheck = [](const Step& step) { return step.key == StepKey::check; };
    if (worked != nullptr)
        if (const auto check = std::find_if(worked->steps.begin(), worked->steps.end(), isCheck);
            check != worked->steps.end())
            out += paragraph("Checked another way in step " +
                             std::to_string(check - worked->steps.begin() + 1) + ".");
    if (const std::string digits = agreement(solution, scale, sketch); !digits.empty())
        out += paragraph("Put back into the equation, both sides agree" + digits + " only.");
    return out.empty() ? out : heading("Check") + out;
}

std::string answersText(const Sketch& sketch, const Solution& solution) {
    std::string out;
    for (std::size_t i = 0; i < solution.forces.size(); ++i)
        if (isFound(solution.forces[i]))
            out += "  " + answerLine(solution.forces[i], sketch.forces[i], sketch) + '\n';
    if (isFound(solution.sum))
        out += "  " + answerLine(solution.sum, sketch.sum, sketch) + '\n';
    if (const auto note = toleranceNote(sketch))
        out += paragraph(note->text);
    return out;
}

std::string valuesText(const Answer& answer, const Construction& construction, const std::string& title,
                       const Worked* worked) {
    const Sketch& sketch = answer.sketch;
    std::string out = heading(title) + answersText(sketch, answer.solution());
    out += componentsText(answer.solution(), sketch);
    if (construction.parallelogram)
        out += parallelogramText(*construction.parallelogram, sketch);
    if (construction.triangle)
        out += triangleText(*construction.triangle, answer);
    return out + checkText(answer.solution(), sketch, worked);
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

/// By hand another digit may stand at the end than in the values.
std::string byHandText(const Worked& worked, const ExplainOptions& options) {
    return options.handRounding
               ? paragraph("Rounded by hand on the way: " + toText(worked.answer, Minus::ascii))
               : std::string();
}

std::string solutionsText(const std::vector<Answer>& answers, const ExplainOptions& options) {
    std::string out;
    std::vector<Worked> worked;
    for (std::size_t i = 0; i < answers.size(); ++i) {
        const Answer& answer = answers[i];
        const Construction construction = construct(answer.sketch, answer.solved, answer.index);
        worked.push_back(explain(answer.sketch, answer.solved, construction, answer.index, options));
        const std::string which = " " + std::to_string(i + 1) + " of " + std::to_string(answers.size());
        out +=
            valuesText(answer, construction, answers.size() == 1 ? "Answer" : "Answer" + which, &worked[i]);
        out += byHandText(worked[i], options);
        out += workedText(worked, i);
    }
    return out;
}

/// Values alone: the question leaves that sense no answer to work out.
std::string reversedText(const std::vector<Answer>& answers) {
    std::string out;
    for (const Answer& answer : answers)
        out += valuesText(answer, construct(answer.sketch, answer.solved, answer.index),
                          answers.size() == 1 ? std::string("In the other sense")
                                              : "In the other sense " + std::to_string(answer.index + 1) +
                                                    " of " + std::to_string(answers.size()),
                          nullptr);
    return out;
}

std::string unansweredText(const Result& result) {
    return heading("Worked solution") +
           toText(explain(result.sketch, result.solved, result.construction), Minus::ascii, kColumns);
}

} // namespace

QByteArray reportText(const Result& result, const ExplainOptions& options) {
    const Sketch& sketch = result.sketch;
    std::string out = titleText(sketch) + givenText(sketch);
    out += heading("Find") + paragraph(plain(question(sketch)));
    if (!result.solved.remarks.empty())
        out += heading("Note") + paragraph(result.solved.finding().text());
    out += solutionsText(answersOf(sketch, result.solved), options);
    out += reversedText(reversedAnswersOf(sketch, result.solved));
    if (result.solved.solutions.empty())
        out += unansweredText(result);
    if (needsCaution(sketch))
        out += heading("Caution") + paragraph(std::string(cautionLine()));
    return QByteArray::fromStdString(out);
}

} // namespace tailpoint
