#include "core/solve/words.h"

#include "core/sketch/shown.h"

#include <algorithm>
#include <array>

namespace tailpoint {
namespace {

using kernel::Line;

constexpr std::size_t kMostListed = 6; // longer lists help nobody

std::string capital(std::string text) {
    text.front() =
        static_cast<char>(text.front() >= 'a' && text.front() <= 'z' ? text.front() - 32 : text.front());
    return text;
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

Sentence checkWords(const Sketch& sketch, const Question& question) {
    const bool equilibrium = isEquilibrium(sketch);
    const std::string claim =
        equilibrium ? "the forces balance, ΣF = 0" : "the forces add up to " + sketch.sum.name;
    const long double gap = kernel::length(question.gap.settled());
    if (gap == 0) {
        return {MessageCode::equationHolds, "Everything is given, and the equation holds: " + claim + "."};
    }
    const std::string size = shown(gap, sketch);
    if (gap <= shownDigitOf(sketch)) {
        return {MessageCode::equationHoldsShown,
                "Everything is given, and the equation holds within rounding: " + claim + " but for " + size +
                    "."};
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
    return {MessageCode::equationFails, "Everything is given, and the equation does not hold: " + found +
                                            ", " + given + "; the gap is " + size + "."};
}

Sentence closesWithDirection(const Sketch& sketch, const Question& question) {
    const UnknownVector& unknown = question.unknowns.front();
    const Force& force = vectorAt(sketch, unknown.index);
    const kernel::Target target = question.target();
    const long double band = kernel::kTangentBand * target.scale;
    const auto direction = std::fabs(kernel::length(target.vector) - *force.magnitude.value) <= band
                               ? referredDirection(signOf(unknown.index) * target.vector.x,
                                                   signOf(unknown.index) * target.vector.y, sketch)
                               : std::nullopt;
    if (!direction) {
        return {MessageCode::noDirectionHolds, "No direction of " + force.name + " makes the equation hold."};
    }
    return {MessageCode::holdsByChance,
            "It happens to hold with " + force.name + " at " + shownAngle(*direction, sketch) + "."};
}

Sentence closesWithMagnitude(const Sketch& sketch, const Question& question) {
    const UnknownVector& unknown = question.unknowns.front();
    const std::string& name = vectorAt(sketch, unknown.index).name;
    const kernel::Root root =
        kernel::nearest(std::get<Line>(sideOf(sketch, question, unknown)), question.target());
    if (root.second.magnitude != 0 || root.first.magnitude < 0) {
        return {MessageCode::noMagnitudeHolds, "No magnitude of " + name + " makes the equation hold."};
    }
    return {MessageCode::holdsByChance,
            "It happens to hold with " + name + " = " + shown(root.first.magnitude, sketch) + "."};
}

// Whether one unknown alone can close the gap, and with which value.
Sentence closesWithOne(const Sketch& sketch, const Question& question) {
    return question.unknowns.front().direction ? closesWithDirection(sketch, question)
                                               : closesWithMagnitude(sketch, question);
}

} // namespace

std::string numberWord(std::size_t number) {
    constexpr std::array<std::string_view, 11> kWords{"no",  "one",   "two",   "three", "four", "five",
                                                      "six", "seven", "eight", "nine",  "ten"};
    return number < kWords.size() ? std::string(kWords[number]) : std::to_string(number);
}

std::string shown(long double value, const Sketch& sketch) {
    return shownForceWithUnit(static_cast<double>(value), sketch);
}

std::string equals(const Force& force, const Sketch& sketch) {
    return force.name + " = " + shownForceWithUnit(*force.magnitude.value, sketch, Origin::typed);
}

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

void say(Solved& solved, std::initializer_list<Sentences> parts) {
    for (const Sentences& part : parts) {
        for (const Sentence& sentence : part) {
            if (solved.message.empty()) {
                solved.messageCode = sentence.code;
            } else {
                solved.remarkCodes.push_back(sentence.code);
            }
            solved.message += (solved.message.empty() ? "" : " ") + sentence.words;
        }
    }
}

Sentences tooManyUnknowns(const Sketch& sketch, const Question& question) {
    return {{MessageCode::tooManyUnknowns, capital(numberWord(question.scalars)) +
                                               " unknowns, and a plane gives two equations: fix " +
                                               numberWord(question.scalars - 2) +
                                               " of these: " + oneOf(unknownWords(sketch, question)) + "."}};
}

Sentences tooFewUnknowns(const Sketch& sketch, const Question& question) {
    if (question.scalars == 0) {
        return {checkWords(sketch, question),
                {MessageCode::freeTwo, "To make it a question, leave two of these unknown: " +
                                           oneOf(givenWords(sketch, kNoVector)) + "."}};
    }
    const std::string unknown = unknownWords(sketch, question).front();
    return {{MessageCode::oneUnknown, "One unknown only, the " + unknown +
                                          ", and a plane gives two equations: free one more, " +
                                          oneOf(givenWords(sketch, question.unknowns.front().index)) + "."},
            closesWithOne(sketch, question)};
}

Sentences closesAlready(const Sketch& sketch, const Question& question) {
    const int index = question.unknowns.front().index;
    const std::string& name = vectorAt(sketch, index).name;
    if (index != kSumIndex) {
        return {{MessageCode::othersClose,
                 "The other vectors close already: " + name + " is zero and has no direction."}};
    }
    if (sketch.forces.empty()) {
        return {{MessageCode::noForces, "No forces yet, so " + name + " is zero and has no direction."}};
    }
    return {{MessageCode::forcesBalance,
             "ΣF = 0 already: the forces balance, and " + name + " has no direction."}};
}

Sentences bothZero(const Sketch& sketch, const Question& question) {
    const std::string first = vectorAt(sketch, question.unknowns[0].index).name;
    const std::string second = vectorAt(sketch, question.unknowns[1].index).name;
    return {{MessageCode::bothZero,
             "Nothing is left for them to balance: " + first + " and " + second + " are zero."}};
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

} // namespace tailpoint
