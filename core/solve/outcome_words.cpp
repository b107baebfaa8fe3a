// What is said of two loci that meet, touch or miss each other, and of the senses of what was found.
#include "core/solve/words.h"

#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint {
namespace {

using kernel::Line;
using kernel::Outcome;

/// An apposition ends with a comma, unless another mark follows.
std::string withoutComma(std::string words) {
    if (!words.empty() && words.back() == ',') {
        words.pop_back();
    }
    return words;
}

Sentence linesApart(const Sketch& sketch, const Question& question, const Force& first, const Force& second) {
    return {MessageCode::parallelLines,
            "No answer: " + first.name + " and " + second.name + " act along parallel lines, and " +
                closingWords(sketch, question) + " does not. Give one of them another direction."};
}

Sentence circlesApart(const Sketch& sketch, const Question& question, const Force& first,
                      const Force& second) {
    const long double a = *first.magnitude.value;
    const long double b = *second.magnitude.value;
    const long double size = kernel::length(question.target().vector);
    const std::string both = equals(first, sketch) + " and " + equals(second, sketch);
    if (size == 0) {
        return {MessageCode::unequalMagnitudes, "No answer: nothing else acts, so " + both +
                                                    " would have to be equal. Change one of the two."};
    }
    const long double excess = 2 * std::max({a, b, size}) - (a + b + size);
    return {MessageCode::noTriangle,
            "No answer: " + both + " close no triangle with " + withoutComma(closingWords(sketch, question)) +
                "; the longest is " + shown(excess, sketch) +
                " longer than the other two together. Shorten it or lengthen another."};
}

Sentence circleShortOfLine(const Sketch& sketch, const Question& question, const Force& onLine,
                           const Line& line, const Force& onCircle) {
    const long double distance = std::fabs(kernel::cross(line.unit, question.target().vector));
    return {MessageCode::circleMissesLine, "No answer: " + equals(onCircle, sketch) + " is " +
                                               shown(distance - *onCircle.magnitude.value, sketch) +
                                               " too short to reach the parallel to the line of action of " +
                                               onLine.name + ". Make " + onCircle.name + " larger, or give " +
                                               onLine.name + " another direction."};
}

Sentence apartWords(const Sketch& sketch, const Question& question) {
    const Force& first = vectorAt(sketch, question.unknowns[0].index);
    const Force& second = vectorAt(sketch, question.unknowns[1].index);
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

Sentence endlessWords(const Force& first, const Force& second, bool lines, bool withSum) {
    if (lines) {
        return {MessageCode::endlessMagnitudes,
                "Infinitely many answers: " + first.name + " and " + second.name +
                    " act along parallel lines, so that one magnitude fixes the other and none is fixed. "
                    "Give the " +
                    magnitudeOf(first) + " or the " + magnitudeOf(second) + "."};
    }
    return {MessageCode::endlessDirections, "Infinitely many answers: " + first.name + " and " + second.name +
                                                " are equal and nothing else acts, so any " +
                                                (withSum ? "common direction" : "two opposite directions") +
                                                " will do. Give the " + directionOfWords(first) + " or the " +
                                                directionOfWords(second) + "."};
}

Sentence touchOrCross(const Force& first, const Force& second, bool firstLine, bool secondLine, bool touch) {
    const std::string count = touch ? "One answer (tangent): " : "Two answers: ";
    if (!firstLine && !secondLine) {
        return {touch ? MessageCode::circlesTouch : MessageCode::circlesCross,
                count + "the circle of " + first.name + " and the circle of " + second.name +
                    (touch ? " touch." : " cross twice.")};
    }
    const Force& line = firstLine ? first : second;
    const Force& circle = firstLine ? second : first;
    return {touch ? MessageCode::circleTouchesLine : MessageCode::circleCutsLine,
            count + "the circle of possible tips of " + circle.name + (touch ? " touches" : " cuts") +
                " the parallel to the line of action of " + line.name + (touch ? "." : " twice.")};
}

} // namespace

Sentences outcomeWords(const Sketch& sketch, const Question& question, Outcome outcome) {
    const Force& first = vectorAt(sketch, question.unknowns[0].index);
    const Force& second = vectorAt(sketch, question.unknowns[1].index);
    const bool firstLine = !question.unknowns[0].direction;
    const bool secondLine = !question.unknowns[1].direction;
    switch (outcome) {
    case Outcome::one:
        return {};
    case Outcome::tangent:
        return {touchOrCross(first, second, firstLine, secondLine, true)};
    case Outcome::two:
        return {touchOrCross(first, second, firstLine, secondLine, false)};
    case Outcome::apart:
        return {apartWords(sketch, question)};
    case Outcome::against:
        return {{MessageCode::bothPointAway,
                 "No answer: " + first.name + " and " + second.name +
                     " both point away from where they would have to lead. Turn one of them round."}};
    case Outcome::endless:
        break;
    }
    return {endlessWords(first, second, firstLine, question.unknowns[1].index == kSumIndex)};
}

Sentences reversedWords(std::size_t admissible, std::size_t reversed, const std::vector<std::string>& names) {
    if (reversed == 0) {
        return {};
    }
    const std::string condition = " if " + listed(names) + " may act the other way.";
    if (admissible > 0) {
        return {{MessageCode::secondAnswerReversed, "There is a second answer" + condition}};
    }
    return {{MessageCode::noAnswerInSense, "No answer in the given sense of " + listed(names) + "; " +
                                               numberWord(reversed) +
                                               (reversed == 1 ? " answer" : " answers") + condition}};
}

Sentences turnedWords(const Sketch& sketch, const std::vector<Solution>& solutions) {
    Sentences sentences;
    for (std::size_t i = 0; i < solutions.size(); ++i) {
        const auto tell = [&](const SolvedForce& force) {
            if (force.turned) {
                const std::string which = solutions.size() < 2 ? ""
                                          : i == 0             ? "In the first, "
                                                               : "In the second, ";
                sentences.push_back({MessageCode::otherSense,
                                     which + force.name + " acts in the other sense of its line of action: " +
                                         shownAngle(*force.direction, sketch) + "."});
            }
        };
        std::for_each(solutions[i].forces.begin(), solutions[i].forces.end(), tell);
        tell(solutions[i].sum);
    }
    return sentences;
}

} // namespace tailpoint
