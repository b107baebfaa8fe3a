#include "core/solve/smallest.h"

#include "core/sketch/shown.h"
#include "core/solve/answer.h"
#include "core/solve/words.h"

#include <algorithm>

namespace tailpoint {
namespace {

using kernel::Line;
using kernel::Root;
using kernel::Target;

/// What stands between the sketch and the question.
struct Misfit {
    std::vector<Phrase> free, fix;
};

/// Of the vector that is to be the smallest.
int smallestIndex(const Sketch& sketch) {
    const auto force = std::find_if(sketch.forces.begin(), sketch.forces.end(),
                                    [&](const Force& each) { return each.name == *sketch.smallest; });
    return force == sketch.forces.end() ? kSumIndex : static_cast<int>(force - sketch.forces.begin());
}

// The smallest force: it is to be found whole, and of the sum the magnitude.
Misfit misfitOfForce(const Sketch& sketch, const Question& question) {
    Misfit misfit;
    const int smallest = smallestIndex(sketch);
    addGiven(misfit.free, sketch, smallest);
    if (isGiven(sketch.sum.magnitude)) {
        misfit.free.push_back(magnitudeOf(sketch, kSumIndex));
    }
    if (!isGiven(sketch.sum.direction)) {
        misfit.fix.push_back(directionOf(sketch, kSumIndex));
    }
    for (const UnknownVector& unknown : question.unknowns) {
        if (unknown.index != kSumIndex && unknown.index != smallest) {
            addUnknown(misfit.fix, sketch, unknown);
        }
    }
    return misfit;
}

// The smallest sum: it is to be found whole, and of one force the magnitude.
Misfit misfitOfSum(const Sketch& sketch, const Question& question) {
    Misfit misfit;
    addGiven(misfit.free, sketch, kSumIndex);
    bool hasForce = false;
    for (const UnknownVector& unknown : question.unknowns) {
        const bool fits = unknown.index != kSumIndex && unknown.magnitude && !unknown.direction;
        if (unknown.index != kSumIndex && (hasForce || !fits)) {
            addUnknown(misfit.fix, sketch, unknown);
        }
        hasForce = hasForce || fits;
    }
    if (!hasForce && misfit.fix.empty()) {
        misfit.free.emplace_back("magnitude of one force");
    }
    return misfit;
}

Remarks misfitWords(const Misfit& misfit, const Sketch& sketch, bool ofSum) {
    const Phrase name = called(sketch, smallestIndex(sketch));
    const Phrase rule = ofSum ? "The smallest " + name + " is found when " + name +
                                    " and the magnitude of one force are to be found"
                              : "The smallest " + name + " is found when " + name + " and the magnitude of " +
                                    called(sketch, kSumIndex) + " are to be found";
    const Phrase free = misfit.free.empty() ? "" : "free " + listed(withArticles(misfit.free));
    const Phrase fix = misfit.fix.empty() ? "" : "fix " + listed(withArticles(misfit.fix));
    return {{MessageCode::smallestNeedsOthers,
             rule + ": " + free + (free.empty() || fix.empty() ? "" : ", and ") + fix + "."}};
}

Remarks behindWords(const Sketch& sketch, const Solution& solution, const Target& target) {
    const std::string smallest = shown(kernel::length(target.vector), sketch);
    return {{MessageCode::smallestTurnsSum,
             "The smallest " + called(sketch, smallestIndex(sketch)) + " makes " + called(sketch, kSumIndex) +
                 " point the other way, " + shownAngle(*solution.sum.direction, sketch) +
                 ". In the given sense of " + called(sketch, kSumIndex) + " the smallest is " + smallest +
                 ", which leaves ΣF = 0."}};
}

Remarks notNeededWords(const Sketch& sketch) {
    return {{MessageCode::smallestNotNeeded, "The other forces lead along " + called(sketch, kSumIndex) +
                                                 " already: no " + called(sketch, smallestIndex(sketch)) +
                                                 " is needed."}};
}

void smallestForce(Solved& solved, const Sketch& sketch, const Question& question) {
    const Target target = question.target();
    const UnknownVector& sum = question.unknowns[1];
    const Line line = std::get<Line>(sideOf(sketch, question, sum));
    const Root nearest = kernel::nearest(line, target);
    const Solution solution =
        answered(givenPart(sketch, question), sketch, question, Root{nearest.second, nearest.first});
    const bool behind = nearest.first.magnitude < 0;
    solved.status = Status::unique;
    solved.solutions.push_back(solution);
    say(solved,
        {nearest.second.magnitude == 0 ? notNeededWords(sketch) : Remarks{},
         behind && line.ray ? behindWords(sketch, solution, target) : turnedWords(sketch, solved.solutions)});
}

Remarks resistingWords(const Sketch& sketch, const Solution& smaller, int index) {
    const Phrase force = called(sketch, index);
    const Phrase sum = called(sketch, kSumIndex);
    return {{MessageCode::smallestSumResisted, "In its given sense any " + force + " makes " + sum +
                                                   " larger, so " + force + " is zero. A smaller " + sum +
                                                   ", " + shown(smaller.sum.magnitude, sketch) + ", if " +
                                                   force + " may act the other way."}};
}

Remarks zeroSumWords(const Sketch& sketch) {
    return {{MessageCode::smallestSumZero,
             "ΣF = 0 then: " + called(sketch, kSumIndex) + " is zero and has no direction."}};
}

void smallestSum(Solved& solved, const Sketch& sketch, const Question& question) {
    const Target target = question.target();
    const UnknownVector& force = question.unknowns[0];
    const Line line = std::get<Line>(sideOf(sketch, question, force));
    const Root nearest = kernel::nearest(line, target);
    const Solution given = givenPart(sketch, question);
    const Solution perpendicular = answered(given, sketch, question, nearest);
    const bool lost = nearest.first.magnitude < 0 && line.ray;
    solved.status = Status::unique;
    if (lost) {
        const Root still{{line.unit, 0}, kernel::close(target)};
        solved.solutions.push_back(answered(given, sketch, question, still));
        solved.reversed.push_back(perpendicular);
    } else {
        solved.solutions.push_back(perpendicular);
    }
    const bool balanced = solved.solutions.front().sum.magnitude == 0;
    say(solved, {balanced ? zeroSumWords(sketch) : Remarks{},
                 lost ? resistingWords(sketch, perpendicular, force.index) : Remarks{},
                 turnedWords(sketch, solved.solutions)});
}

} // namespace

void solveSmallest(Solved& solved, const Sketch& sketch, const Question& question) {
    const bool ofSum = *sketch.smallest == sketch.sum.name;
    const Misfit misfit = ofSum ? misfitOfSum(sketch, question) : misfitOfForce(sketch, question);
    if (!misfit.free.empty() || !misfit.fix.empty()) {
        solved.status = misfit.fix.empty() ? Status::overdetermined : Status::underdetermined;
        say(solved, {misfitWords(misfit, sketch, ofSum)});
    } else if (ofSum) {
        smallestSum(solved, sketch, question);
    } else {
        smallestForce(solved, sketch, question);
    }
}

} // namespace tailpoint
