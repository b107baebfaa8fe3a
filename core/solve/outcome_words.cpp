// SPDX-License-Identifier: MIT
// What is said of two loci that meet, touch or miss each other, and of the senses of what was found.
#include "core/solve/words.h"

#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint {
namespace {

using kernel::Line;
using kernel::Outcome;

Remark linesApart(const Sketch& sketch, const Question& question, int first, int second) {
    return {MessageCode::parallelLines,
            "No answer: " + called(sketch, first) + " and " + called(sketch, second) +
                " act along one line, and " + closingWords(sketch, question, true) +
                " does not lie along it.",
            "Give one of them another direction."};
}

Remark circlesApart(const Sketch& sketch, const Question& question, int first, int second) {
    const long double a = *vectorAt(sketch, first).magnitude.value;
    const long double b = *vectorAt(sketch, second).magnitude.value;
    const long double size = kernel::length(question.target().vector);
    const Phrase both = equals(sketch, first) + " and " + equals(sketch, second);
    if (size == 0) {
        return {MessageCode::unequalMagnitudes,
                "No answer: nothing else acts, so " + both + " would have to be equal.",
                "Change one of the two."};
    }
    const long double excess = 2 * std::max({a, b, size}) - (a + b + size);
    return {MessageCode::noTriangle,
            "No answer: " + both + " close no triangle with " + closingWords(sketch, question, false) +
                "; the greatest is " + shown(excess, sketch) + " greater than the other two together.",
            "Reduce it or increase another."};
}

Remark circleShortOfLine(const Sketch& sketch, const Question& question, int onLine, const Line& line,
                         int onCircle) {
    const long double distance = std::fabs(kernel::cross(line.unit, question.target().vector));
    return {MessageCode::circleMissesLine,
            "No answer: " + equals(sketch, onCircle) + " is " +
                shown(distance - *vectorAt(sketch, onCircle).magnitude.value, sketch) +
                " too short to reach the parallel to the line of action of " + called(sketch, onLine) + ".",
            "Make " + calledMagnitude(sketch, onCircle) + " larger, or give " + called(sketch, onLine) +
                " another direction."};
}

Remark apartWords(const Sketch& sketch, const Question& question) {
    const int first = question.unknowns[0].index;
    const int second = question.unknowns[1].index;
    const Side one = sideOf(sketch, question, question.unknowns[0]);
    const Side other = sideOf(sketch, question, question.unknowns[1]);
    const Line* firstLine = std::get_if<Line>(&one);
    const Line* secondLine = std::get_if<Line>(&other);
    if (firstLine != nullptr && secondLine != nullptr) {
        return linesApart(sketch, question, first, second);
    }
    if (firstLine != nullptr) {
        return circleShortOfLine(sketch, question, first, *firstLine, second);
    }
    return secondLine != nullptr ? circleShortOfLine(sketch, question, second, *secondLine, first)
                                 : circlesApart(sketch, question, first, second);
}

Remark endlessWords(const Sketch& sketch, int first, int second, bool lines) {
    if (lines) {
        return {MessageCode::endlessMagnitudes,
                "Infinitely many answers: " + called(sketch, first) + " and " + called(sketch, second) +
                    " act along one line, so that one equation is left for the two magnitudes.",
                "Give the " + magnitudeOf(sketch, first) + " or the " + magnitudeOf(sketch, second) + "."};
    }
    return {MessageCode::endlessDirections,
            "Infinitely many answers: " + calledMagnitude(sketch, first) + " and " +
                calledMagnitude(sketch, second) + " are equal and nothing else acts, so any " +
                (second == kSumIndex ? "common direction" : "two opposite directions") + " will do.",
            "Give the " + directionOf(sketch, first) + " or the " + directionOf(sketch, second) + "."};
}

Remark touchOrCross(const Sketch& sketch, const Question& question, bool touch) {
    const UnknownVector& first = question.unknowns[0];
    const UnknownVector& second = question.unknowns[1];
    const std::string count = touch ? "One answer (tangent): " : "Two answers: ";
    if (first.direction && second.direction) {
        return {touch ? MessageCode::circlesTouch : MessageCode::circlesCross,
                count + "the circle of " + called(sketch, first.index) + " and the circle of " +
                    called(sketch, second.index) + (touch ? " touch." : " cross twice.")};
    }
    const int line = first.direction ? second.index : first.index;
    const int circle = first.direction ? first.index : second.index;
    return {touch ? MessageCode::circleTouchesLine : MessageCode::circleCutsLine,
            count + "the circle of possible tips of " + called(sketch, circle) +
                (touch ? " touches" : " cuts") + " the parallel to the line of action of " +
                called(sketch, line) + (touch ? "." : " twice.")};
}

} // namespace

Remarks outcomeWords(const Sketch& sketch, const Question& question, Outcome outcome) {
    const int first = question.unknowns[0].index;
    const int second = question.unknowns[1].index;
    switch (outcome) {
    case Outcome::one:
        return {};
    case Outcome::tangent:
        return {touchOrCross(sketch, question, true)};
    case Outcome::two:
        return {touchOrCross(sketch, question, false)};
    case Outcome::apart:
        return {apartWords(sketch, question)};
    case Outcome::against:
        return {{MessageCode::bothPointAway,
                 "No answer: " + called(sketch, first) + " and " + called(sketch, second) +
                     " both point away from where they would have to lead.",
                 "Turn one of them round."}};
    case Outcome::endless:
        break;
    }
    return {endlessWords(sketch, first, second, !question.unknowns[0].direction)};
}

Remarks reversedWords(std::size_t admissible, std::size_t reversed, const std::vector<Phrase>& against) {
    if (reversed == 0) {
        return {};
    }
    const Phrase condition = " if " + listed(against) + " may act the other way.";
    if (admissible > 0) {
        return {{MessageCode::secondAnswerReversed, "There is a second answer" + condition}};
    }
    return {{MessageCode::noAnswerInSense, "No answer in the given sense of " + listed(against) + "; " +
                                               numberWord(reversed) +
                                               (reversed == 1 ? " answer" : " answers") + condition}};
}

Remarks turnedWords(const Sketch& sketch, const std::vector<Solution>& solutions) {
    Remarks sentences;
    for (std::size_t i = 0; i < solutions.size(); ++i) {
        const auto tell = [&](const SolvedForce& force, int index) {
            if (force.turned) {
                const std::string which = solutions.size() < 2 ? ""
                                          : i == 0             ? "In the first, "
                                                               : "In the second, ";
                sentences.push_back(
                    {MessageCode::otherSense, which + called(sketch, index) +
                                                  " acts in the other sense of its line of action: " +
                                                  shownAngle(*force.direction, sketch) + "."});
            }
        };
        for (std::size_t k = 0; k < solutions[i].forces.size(); ++k) {
            tell(solutions[i].forces[k], static_cast<int>(k));
        }
        tell(solutions[i].sum, kSumIndex);
    }
    return sentences;
}

} // namespace tailpoint
