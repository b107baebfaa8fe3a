#include "core/solve/words.h"

#include "core/sketch/shown.h"

#include <algorithm>
#include <array>

namespace tailpoint {
namespace {

using kernel::Circle;
using kernel::Line;
using kernel::Outcome;

constexpr std::size_t kMostListed = 6; // longer lists help nobody

std::string numberWord(std::size_t number) {
    constexpr std::array<std::string_view, 11> kWords{"no",  "one",   "two",   "three", "four", "five",
                                                      "six", "seven", "eight", "nine",  "ten"};
    return number < kWords.size() ? std::string(kWords[number]) : std::to_string(number);
}

std::string capital(std::string text) {
    text.front() =
        static_cast<char>(text.front() >= 'a' && text.front() <= 'z' ? text.front() - 32 : text.front());
    return text;
}

/// An apposition ends with a comma, unless another mark follows.
std::string withoutComma(std::string words) {
    if (!words.empty() && words.back() == ',') {
        words.pop_back();
    }
    return words;
}

std::string oneOf(std::vector<std::string> words) {
    if (words.size() > kMostListed) {
        const std::size_t more = words.size() - kMostListed;
        words.resize(kMostListed);
        words = withArticles(words);
        words.push_back(std::to_string(more) + " more");
        return listed(words, "or");
    }
    return listed(withArticles(words), "or");
}

std::string shown(long double value, const Sketch& sketch) {
    return shownForceWithUnit(static_cast<double>(value), sketch);
}

std::string equals(const Force& force, const Sketch& sketch) {
    return force.name + " = " + shownForceWithUnit(*force.magnitude.value, sketch, Origin::typed);
}

// What is given and could be freed: the sum's two first, then the forces'.
std::vector<std::string> givenWords(const Sketch& sketch, int leading) {
    std::vector<std::string> words;
    const auto add = [&](const Force& force) {
        if (isGiven(force.magnitude)) {
            words.push_back(magnitudeOf(force));
        }
        if (isGiven(force.direction)) {
            words.push_back(directionOfWords(force));
        }
    };
    if (leading != kNoVector) {
        add(vectorAt(sketch, leading));
    }
    if (leading != kSumIndex && !isEquilibrium(sketch)) {
        add(sketch.sum);
    }
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        if (static_cast<int>(i) != leading) {
            add(sketch.forces[i]);
        }
    }
    return words;
}

// Half a unit of the last shown figure of the largest given magnitude.
double shownDigitOf(const Sketch& sketch) {
    double largest = sketch.sum.magnitude.value.value_or(0.0);
    for (const Force& force : sketch.forces) {
        largest = std::max(largest, force.magnitude.value.value_or(0.0));
    }
    return largest > 0 ? 0.5 * std::pow(10.0, std::floor(std::log10(largest)) + 1 - sketch.figures) : 0.0;
}

std::string checkWords(const Sketch& sketch, const Question& question) {
    const bool equilibrium = isEquilibrium(sketch);
    const std::string claim =
        equilibrium ? "the forces balance, ΣF = 0" : "the forces add up to " + sketch.sum.name;
    const long double gap = kernel::length(question.gap.settled());
    if (gap == 0) {
        return "Everything is given, and the equation holds: " + claim + ".";
    }
    const std::string size = shown(gap, sketch);
    if (gap <= shownDigitOf(sketch)) {
        return "Everything is given, and the equation holds to the shown digits: " + claim + " but for " +
               size + ".";
    }
    const kernel::Vec sum = question.forces.settled();
    const auto direction = referredDirection(sum.x, sum.y, sketch);
    const std::string found =
        direction ? "ΣF = " + shown(kernel::length(sum), sketch) + " at " + shownAngle(*direction, sketch)
                  : "ΣF = 0";
    const std::string given =
        equilibrium ? "not 0"
                    : "not " + equals(sketch.sum, sketch) +
                          (isGiven(sketch.sum.direction)
                               ? " at " + shownAngle(*referredDirection(sketch.sum.direction, sketch), sketch)
                               : "");
    return "Everything is given, and the equation does not hold: " + found + ", " + given + "; the gap is " +
           size + ".";
}

// Whether one unknown alone can close the gap, and with which value.
std::string closesWithOne(const Sketch& sketch, const Question& question) {
    const UnknownVector& unknown = question.unknowns.front();
    const Force& force = vectorAt(sketch, unknown.index);
    const kernel::Target target = question.target();
    const long double band = kernel::kTangentBand * target.scale;
    const long double size = kernel::length(target.vector);
    if (unknown.direction) {
        const auto direction = std::fabs(size - *force.magnitude.value) <= band
                                   ? referredDirection(signOf(unknown.index) * target.vector.x,
                                                       signOf(unknown.index) * target.vector.y, sketch)
                                   : std::nullopt;
        return direction
                   ? "It happens to hold with " + force.name + " at " + shownAngle(*direction, sketch) + "."
                   : "No direction of " + force.name + " makes the equation hold.";
    }
    const kernel::Root root = kernel::nearest(std::get<Line>(sideOf(sketch, question, unknown)), target);
    if (root.second.magnitude != 0 || root.first.magnitude < 0) {
        return "No magnitude of " + force.name + " makes the equation hold.";
    }
    return "It happens to hold with " + force.name + " = " + shown(root.first.magnitude, sketch) + ".";
}

std::string apartWords(const Sketch& sketch, const Question& question) {
    const Force& first = vectorAt(sketch, question.unknowns[0].index);
    const Force& second = vectorAt(sketch, question.unknowns[1].index);
    const Side one = sideOf(sketch, question, question.unknowns[0]);
    const Side other = sideOf(sketch, question, question.unknowns[1]);
    const kernel::Target target = question.target();
    if (std::holds_alternative<Line>(one) && std::holds_alternative<Line>(other)) {
        return "No answer: " + first.name + " and " + second.name + " act along parallel lines, and " +
               closingWords(sketch, question) + " does not. Give one of them another direction.";
    }
    if (std::holds_alternative<Circle>(one) && std::holds_alternative<Circle>(other)) {
        const long double a = std::get<Circle>(one).magnitude;
        const long double b = std::get<Circle>(other).magnitude;
        const long double size = kernel::length(target.vector);
        if (size == 0) {
            return "No answer: nothing else acts, so " + equals(first, sketch) + " and " +
                   equals(second, sketch) + " would have to be equal. Change one of the two.";
        }
        const long double excess = 2 * std::max({a, b, size}) - (a + b + size);
        return "No answer: " + equals(first, sketch) + " and " + equals(second, sketch) +
               " close no triangle with " + withoutComma(closingWords(sketch, question)) +
               "; the longest is " + shown(excess, sketch) +
               " longer than the other two together. Shorten it or lengthen another.";
    }
    const bool lineFirst = std::holds_alternative<Line>(one);
    const Line& line = std::get<Line>(lineFirst ? one : other);
    const Circle& circle = std::get<Circle>(lineFirst ? other : one);
    const long double distance = std::fabs(kernel::cross(line.unit, target.vector));
    const Force& onCircle = lineFirst ? second : first;
    const Force& onLine = lineFirst ? first : second;
    return "No answer: " + equals(onCircle, sketch) + " is " + shown(distance - circle.magnitude, sketch) +
           " too short to reach the line of action of " + onLine.name + ". Make " + onCircle.name +
           " larger, or give " + onLine.name + " another direction.";
}

std::string endlessWords(const Force& first, const Force& second, bool lines, bool withSum) {
    if (lines) {
        return "Endlessly many answers: " + first.name + " and " + second.name +
               " act along parallel lines, so that one magnitude fixes the other and none is fixed. Give "
               "the " +
               magnitudeOf(first) + " or the " + magnitudeOf(second) + ".";
    }
    return "Endlessly many answers: " + first.name + " and " + second.name +
           " are equal and nothing else acts, so any " +
           (withSum ? "common direction" : "two opposite directions") + " will do. Give the " +
           directionOfWords(first) + " or the " + directionOfWords(second) + ".";
}

std::string touchOrCross(const Force& first, const Force& second, bool firstLine, bool secondLine,
                         bool touch) {
    const std::string count = touch ? "One answer (tangent): " : "Two answers: ";
    if (!firstLine && !secondLine) {
        return count + "the circle of " + first.name + " and the circle of " + second.name +
               (touch ? " touch." : " cross twice.");
    }
    const Force& line = firstLine ? first : second;
    const Force& circle = firstLine ? second : first;
    return count + "the circle of possible tips of " + circle.name + (touch ? " touches" : " cuts") +
           " the line of action of " + line.name + (touch ? "." : " twice.");
}

} // namespace

std::vector<std::string> withArticles(std::vector<std::string> words) {
    for (std::string& word : words) {
        word.insert(0, "the ");
    }
    return words;
}

std::string magnitudeOf(const Force& force) {
    return "magnitude of " + force.name;
}
std::string directionOfWords(const Force& force) {
    return "direction of " + force.name;
}

std::vector<std::string> unknownWords(const Sketch& sketch, const Question& question) {
    std::vector<std::string> words;
    for (const UnknownVector& unknown : question.unknowns) {
        const Force& force = vectorAt(sketch, unknown.index);
        if (unknown.magnitude) {
            words.push_back(magnitudeOf(force));
        }
        if (unknown.direction) {
            words.push_back(directionOfWords(force));
        }
    }
    return words;
}

std::string listed(const std::vector<std::string>& words, const std::string& last) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        text += i == 0 ? "" : i + 1 == words.size() ? " " + last + " " : ", ";
        text += words[i];
    }
    return text;
}

std::string joined(std::initializer_list<std::string> sentences) {
    std::string text;
    for (const std::string& sentence : sentences) {
        text += text.empty() || sentence.empty() ? "" : " ";
        text += sentence;
    }
    return text;
}

std::string tooManyUnknowns(const Sketch& sketch, const Question& question) {
    return capital(numberWord(question.scalars)) + " unknowns, and a plane gives two equations: fix " +
           numberWord(question.scalars - 2) + " of these: " + oneOf(unknownWords(sketch, question)) + ".";
}

std::string tooFewUnknowns(const Sketch& sketch, const Question& question) {
    if (question.scalars == 0) {
        return joined({checkWords(sketch, question),
                       "To ask something, free two of these: " + oneOf(givenWords(sketch, kNoVector)) + "."});
    }
    const std::string unknown = unknownWords(sketch, question).front();
    return joined({"One unknown only, the " + unknown + ", and a plane gives two equations: free one more, " +
                       oneOf(givenWords(sketch, question.unknowns.front().index)) + ".",
                   closesWithOne(sketch, question)});
}

std::string closesAlready(const Sketch& sketch, const Question& question) {
    const int index = question.unknowns.front().index;
    const std::string& name = vectorAt(sketch, index).name;
    if (index != kSumIndex) {
        return "The other vectors close already: " + name + " is zero and has no direction.";
    }
    return sketch.forces.empty() ? "No forces yet, so " + name + " is zero and has no direction."
                                 : "ΣF = 0 already: the forces balance, and " + name + " has no direction.";
}

std::string bothZero(const Sketch& sketch, const Question& question) {
    const std::string first = vectorAt(sketch, question.unknowns[0].index).name;
    const std::string second = vectorAt(sketch, question.unknowns[1].index).name;
    return "Nothing is left for them to balance: " + first + " and " + second + " are zero.";
}

std::string closingWords(const Sketch& sketch, const Question& question) {
    const bool sumGiven = question.find(kSumIndex) == nullptr && !isEquilibrium(sketch);
    if (sumGiven && question.givenForces == 0) {
        return equals(sketch.sum, sketch);
    }
    if (!sumGiven && question.givenForces == 1) {
        return equals(vectorAt(sketch, question.onlyForce), sketch);
    }
    const std::string size = shown(kernel::length(question.gap.settled()), sketch);
    return (sumGiven ? "what is left of " + sketch.sum.name + ", " : "the sum of the known forces, ") + size +
           ",";
}

std::string outcomeWords(const Sketch& sketch, const Question& question, Outcome outcome) {
    const Force& first = vectorAt(sketch, question.unknowns[0].index);
    const Force& second = vectorAt(sketch, question.unknowns[1].index);
    const bool firstLine = !question.unknowns[0].direction;
    const bool secondLine = !question.unknowns[1].direction;
    switch (outcome) {
    case Outcome::one:
        return "";
    case Outcome::tangent:
        return touchOrCross(first, second, firstLine, secondLine, true);
    case Outcome::two:
        return touchOrCross(first, second, firstLine, secondLine, false);
    case Outcome::apart:
        return apartWords(sketch, question);
    case Outcome::against:
        return "No answer: " + first.name + " and " + second.name +
               " both point away from where they would have to lead. Turn one of them round.";
    case Outcome::endless:
        break;
    }
    return endlessWords(first, second, firstLine, question.unknowns[1].index == kSumIndex);
}

std::string reversedWords(std::size_t admissible, std::size_t reversed,
                          const std::vector<std::string>& names) {
    if (reversed == 0) {
        return "";
    }
    const std::string condition = " if " + listed(names) + " may act the other way.";
    if (admissible > 0) {
        return "A second answer" + condition;
    }
    return "No answer in the given sense of " + listed(names) + "; " + numberWord(reversed) +
           (reversed == 1 ? " answer" : " answers") + condition;
}

std::string turnedWords(const Sketch& sketch, const std::vector<Solution>& solutions) {
    std::string text;
    for (std::size_t i = 0; i < solutions.size(); ++i) {
        const auto tell = [&](const SolvedForce& force) {
            if (force.turned) {
                const std::string which = solutions.size() < 2 ? ""
                                          : i == 0             ? "In the first, "
                                                               : "In the second, ";
                text = joined({text, which + force.name + " acts in the other sense of its line of action: " +
                                         shownAngle(*force.direction, sketch) + "."});
            }
        };
        std::for_each(solutions[i].forces.begin(), solutions[i].forces.end(), tell);
        tell(solutions[i].sum);
    }
    return text;
}

} // namespace tailpoint
