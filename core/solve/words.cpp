// SPDX-License-Identifier: MIT
#include "core/solve/words.h"

#include "core/sketch/shown.h"
#include "core/solve/rounding_room.h"

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

Phrase oneOf(std::vector<Phrase> words) {
    if (words.size() > kMostListed) {
        const std::size_t more = words.size() - kMostListed;
        words.resize(kMostListed);
        words = withArticles(words);
        words.emplace_back(std::to_string(more) + " more");
        return listed(words, "or");
    }
    return listed(withArticles(words), "or");
}

// What is given and could be freed: the sum's two first, then the forces'.
std::vector<Phrase> givenWords(const Sketch& sketch, int leading) {
    std::vector<Phrase> words;
    if (leading != kNoVector) {
        addGiven(words, sketch, leading);
    }
    if (leading != kSumIndex && !isEquilibrium(sketch)) {
        addGiven(words, sketch, kSumIndex);
    }
    for (int i = 0; i < static_cast<int>(sketch.forces.size()); ++i) {
        if (i != leading) {
            addGiven(words, sketch, i);
        }
    }
    return words;
}

std::string withPlaces(double force, int more, const Sketch& sketch) {
    return more == 0 ? shown(force, sketch)
                     : significant(force, figuresOf(force, sketch) + more) + " " +
                           std::string(symbolOf(sketch.forceUnit));
}

std::string angleWithPlaces(double angle, int more, const Sketch& sketch) {
    Sketch finer = sketch;
    finer.angleDecimals = std::min(finer.angleDecimals + more, 8);
    return shownAngle(angle, finer);
}

// How many places more than the sheet shows it takes to tell one vector from the other.
int placesThatPart(const std::pair<double, double>& one, const std::pair<double, double>& other,
                   const Sketch& sketch) {
    constexpr int kMost = 6;
    for (int more = 0; more < kMost; ++more)
        if (withPlaces(one.first, more, sketch) != withPlaces(other.first, more, sketch) ||
            angleWithPlaces(one.second, more, sketch) != angleWithPlaces(other.second, more, sketch))
            return more;
    return kMost;
}

Remark fails(const Phrase& found, const Phrase& given, const std::string& gap) {
    return {MessageCode::equationFails, "Everything is given, and the equation does not hold: " + found +
                                            ", " + given + "; the gap is " + gap + "."};
}

Remark checkWords(const Sketch& sketch, const Question& question) {
    const bool equilibrium = isEquilibrium(sketch);
    const Phrase claim =
        equilibrium ? "the forces balance, ΣF = 0" : "the forces add up to " + called(sketch, kSumIndex);
    const long double gap = kernel::length(question.gap.settled());
    if (gap == 0) {
        return {MessageCode::equationHolds, "Everything is given, and the equation holds: " + claim + "."};
    }
    const std::string size = shown(gap, sketch);
    if (isRoundingGap(sketch, question)) {
        return {MessageCode::equationHoldsShown,
                "Everything is given, and the equation holds within rounding: " + claim + " but for " + size +
                    "."};
    }
    const kernel::Vec sum = question.forces.settled();
    const auto direction = referredDirection(sum.x, sum.y, sketch);
    const auto length = static_cast<double>(kernel::length(sum));
    if (equilibrium)
        return fails("ΣF = " + shown(length, sketch) + " at " + shownAngle(direction.value_or(0), sketch),
                     "not 0", size);
    const double claimed = *sketch.sum.magnitude.value;
    const double way = referredDirection(sketch.sum.direction, sketch).value_or(0);
    const int more = placesThatPart({length, direction.value_or(0)}, {claimed, way}, sketch);
    const auto told = [&](double magnitude, double angle) {
        return withPlaces(magnitude, more, sketch) + " at " + angleWithPlaces(angle, more, sketch);
    };
    return fails(direction ? "ΣF = " + told(length, *direction) : "ΣF = 0",
                 "not " + called(sketch, kSumIndex) + " = " + told(claimed, way), size);
}

} // namespace

// Of a sum along and across it.
bool isRoundingGap(const Sketch& sketch, const Question& question) {
    const RoundingRoom room = roundingRoom(sketch);
    const kernel::Vec gap = question.gap.settled();
    const auto unit = unitVector(sketch.sum.direction, sketch);
    if (isEquilibrium(sketch) || !unit)
        return isWithin(room, static_cast<double>(kernel::length(gap)), 0);
    return isWithin(room, static_cast<double>(gap.x * unit->cos + gap.y * unit->sin),
                    static_cast<double>(gap.y * unit->cos - gap.x * unit->sin));
}

std::string numberWord(std::size_t number) {
    constexpr std::array<std::string_view, 11> kWords{"no",  "one",   "two",   "three", "four", "five",
                                                      "six", "seven", "eight", "nine",  "ten"};
    return number < kWords.size() ? std::string(kWords[number]) : std::to_string(number);
}

std::string shown(long double value, const Sketch& sketch) {
    return shownForceWithUnit(static_cast<double>(value), sketch);
}

Phrase called(const Sketch& sketch, int index) {
    return Phrase::vector(vectorId(index), vectorAt(sketch, index).name);
}

Phrase calledMagnitude(const Sketch& sketch, int index) {
    return Phrase::quantity(magnitudeId(vectorId(index)), vectorAt(sketch, index).name);
}

Phrase equals(const Sketch& sketch, int index) {
    return calledMagnitude(sketch, index) + " = " +
           shownForceWithUnit(*vectorAt(sketch, index).magnitude.value, sketch, Origin::typed);
}

std::vector<Phrase> withArticles(std::vector<Phrase> words) {
    for (Phrase& word : words) {
        word = "the " + word;
    }
    return words;
}

Phrase magnitudeOf(const Sketch& sketch, int index) {
    return "magnitude of " + called(sketch, index);
}
Phrase directionOf(const Sketch& sketch, int index) {
    return "direction of " + called(sketch, index);
}

void addGiven(std::vector<Phrase>& words, const Sketch& sketch, int index) {
    const Force& vector = vectorAt(sketch, index);
    if (isGiven(vector.magnitude)) {
        words.push_back(magnitudeOf(sketch, index));
    }
    if (isGiven(vector.direction)) {
        words.push_back(directionOf(sketch, index));
    }
}

void addUnknown(std::vector<Phrase>& words, const Sketch& sketch, const UnknownVector& unknown) {
    if (unknown.magnitude) {
        words.push_back(magnitudeOf(sketch, unknown.index));
    }
    if (unknown.direction) {
        words.push_back(directionOf(sketch, unknown.index));
    }
}

std::vector<Phrase> unknownWords(const Sketch& sketch, const Question& question) {
    std::vector<Phrase> words;
    for (const UnknownVector& unknown : question.unknowns) {
        addUnknown(words, sketch, unknown);
    }
    return words;
}

Phrase listed(const std::vector<Phrase>& words, const std::string& last) {
    Phrase text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        text += i == 0 ? "" : i + 1 == words.size() ? " " + last + " " : ", ";
        text += words[i];
    }
    return text;
}

void say(Solved& solved, std::initializer_list<Remarks> parts) {
    for (const Remarks& part : parts) {
        solved.remarks.insert(solved.remarks.end(), part.begin(), part.end());
    }
}

namespace {

// Three magnitudes or more along given lines, all else given: three legs under one hook.
Remarks indeterminateWords(const Sketch& sketch, const Question& question) {
    std::vector<Phrase> names;
    for (const UnknownVector& unknown : question.unknowns) {
        if (unknown.direction || unknown.index == kSumIndex) {
            return {};
        }
        names.push_back(called(sketch, unknown.index));
    }
    if (names.size() > kMostListed) {
        names = {Phrase(numberWord(names.size()) + " of them")};
    }
    return {{MessageCode::indeterminate,
             "Statics alone can't share the load between " + listed(names) +
                 ": a stiffer or shorter one takes more, and of stiffness and length the equation says "
                 "nothing.",
             "Common practice counts on two of them alone."}};
}

} // namespace

Phrase givenChoices(const Sketch& sketch, int leading) {
    return oneOf(givenWords(sketch, leading));
}

Remarks tooManyUnknowns(const Sketch& sketch, const Question& question) {
    Remarks remarks{
        {MessageCode::tooManyUnknowns,
         capital(numberWord(question.scalars)) + " unknowns, but a plane gives only two equations.",
         "Fix " + numberWord(question.scalars - 2) + " of these: " + oneOf(unknownWords(sketch, question)) +
             "."}};
    const Remarks more = indeterminateWords(sketch, question);
    remarks.insert(remarks.end(), more.begin(), more.end());
    return remarks;
}

Remarks nothingUnknown(const Sketch& sketch, const Question& question) {
    return {checkWords(sketch, question),
            {MessageCode::freeTwo,
             "To make it a question, leave two of these unknown: " + givenChoices(sketch, kNoVector) + "."}};
}

Remarks closesAlready(const Sketch& sketch, const Question& question) {
    const int index = question.unknowns.front().index;
    const Phrase name = called(sketch, index);
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

Remarks bothZero(const Sketch& sketch, const Question& question) {
    const Phrase first = called(sketch, question.unknowns[0].index);
    const Phrase second = called(sketch, question.unknowns[1].index);
    return {{MessageCode::bothZero,
             "Nothing is left for them to balance: " + first + " and " + second + " are zero."}};
}

Phrase closingWords(const Sketch& sketch, const Question& question, bool goesOn) {
    const bool sumGiven = question.find(kSumIndex) == nullptr && !isEquilibrium(sketch);
    if (sumGiven && question.givenForces == 0) {
        return equals(sketch, kSumIndex);
    }
    if (!sumGiven && question.givenForces == 1) {
        return equals(sketch, question.onlyForce);
    }
    const std::string size = shown(kernel::length(question.gap.settled()), sketch);
    return (sumGiven ? "what is left of " + called(sketch, kSumIndex) + ", "
                     : "the sum of the known forces, ") +
           size + (goesOn ? "," : "");
}

} // namespace tailpoint
