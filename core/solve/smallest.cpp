// SPDX-License-Identifier: MIT
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

/// What the smallest shares the question with: the vector whose magnitude is to be found along a given line.
enum class Partner { sum, force };

// A smallest force, where the sum is given or zero, stands beside another force.
Partner partnerOf(const Sketch& sketch, const Question& question) {
    if (*sketch.smallest == sketch.sum.name || question.find(kSumIndex) != nullptr) {
        return *sketch.smallest == sketch.sum.name ? Partner::force : Partner::sum;
    }
    const int smallest = smallestIndex(sketch);
    const bool hasOther = std::any_of(question.unknowns.begin(), question.unknowns.end(),
                                      [&](const UnknownVector& each) { return each.index != smallest; });
    return isEquilibrium(sketch) || hasOther ? Partner::force : Partner::sum;
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

// The smallest is to be found whole, and of one force beside it the magnitude.
Misfit misfitBesideForce(const Sketch& sketch, const Question& question) {
    Misfit misfit;
    const int smallest = smallestIndex(sketch);
    addGiven(misfit.free, sketch, smallest);
    bool hasForce = false;
    for (const UnknownVector& unknown : question.unknowns) {
        const bool fits = unknown.index != smallest && unknown.magnitude && !unknown.direction;
        if (unknown.index != smallest && (hasForce || !fits)) {
            addUnknown(misfit.fix, sketch, unknown);
        }
        hasForce = hasForce || fits;
    }
    if (!hasForce && misfit.fix.empty()) {
        misfit.free.emplace_back(smallest == kSumIndex ? "magnitude of one force"
                                                       : "magnitude of one other force");
    }
    return misfit;
}

Remarks misfitWords(const Misfit& misfit, const Sketch& sketch, Partner partner) {
    const int smallest = smallestIndex(sketch);
    const Phrase name = called(sketch, smallest);
    const Phrase one = smallest == kSumIndex ? "one force" : "one other force";
    const Phrase rule = partner == Partner::force
                            ? "The smallest " + name + " is found when " + name + " and the magnitude of " +
                                  one + " are to be found"
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

Remarks notNeededWords(const Sketch& sketch, int line) {
    const Phrase end = " already: no " + called(sketch, smallestIndex(sketch)) + " is needed.";
    return {{MessageCode::smallestNotNeeded,
             line == kSumIndex ? "The other forces lead along " + called(sketch, kSumIndex) + end
                               : "What is left to make up lies along " + called(sketch, line) + end}};
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
    sayOf(question, [&] {
        say(solved, {nearest.second.magnitude == 0 ? notNeededWords(sketch, kSumIndex) : Remarks{},
                     behind && line.ray ? behindWords(sketch, solution, target)
                                        : turnedWords(sketch, solved.solutions)});
    });
}

Remarks resistingWords(const Sketch& sketch, const Solution& smaller, int index) {
    const Phrase force = called(sketch, index);
    const int leg = smallestIndex(sketch);
    const double size =
        leg == kSumIndex ? smaller.sum.magnitude : smaller.forces[static_cast<std::size_t>(leg)].magnitude;
    const Phrase name = called(sketch, leg);
    return {{leg == kSumIndex ? MessageCode::smallestSumResisted : MessageCode::smallestForceResisted,
             "In its given sense any " + force + " makes " + name + " larger, so " + force +
                 " is zero. A smaller " + name + ", " + shown(size, sketch) + ", if " + force +
                 " may act the other way."}};
}

Remarks zeroSumWords(const Sketch& sketch) {
    return {{MessageCode::smallestSumZero,
             "ΣF = 0 then: " + called(sketch, kSumIndex) + " is zero and has no direction."}};
}

// Its two vectors in the order of the question's unknowns.
Root inOrder(const Question& question, int smallest, const kernel::Found& line, const kernel::Found& leg) {
    return question.unknowns[0].index == smallest ? Root{leg, line} : Root{line, leg};
}

void besideForce(Solved& solved, const Sketch& sketch, const Question& question) {
    const Target target = question.target();
    const int smallest = smallestIndex(sketch);
    const UnknownVector& force = question.unknowns[question.unknowns[0].index == smallest ? 1 : 0];
    const Line line = std::get<Line>(sideOf(sketch, question, force));
    const Root nearest = kernel::nearest(line, target);
    const Solution given = givenPart(sketch, question);
    const Solution perpendicular =
        answered(given, sketch, question, inOrder(question, smallest, nearest.first, nearest.second));
    const bool lost = nearest.first.magnitude < 0 && line.ray;
    solved.status = Status::unique;
    if (lost) {
        const Root still = inOrder(question, smallest, {line.unit, 0}, kernel::close(target));
        solved.solutions.push_back(answered(given, sketch, question, still));
        solved.reversed.push_back(perpendicular);
    } else {
        solved.solutions.push_back(perpendicular);
    }
    const bool vanishes = !lost && nearest.second.magnitude == 0;
    sayOf(question, [&] {
        say(solved, {!vanishes               ? Remarks{}
                     : smallest == kSumIndex ? zeroSumWords(sketch)
                                             : notNeededWords(sketch, force.index),
                     lost ? resistingWords(sketch, perpendicular, force.index) : Remarks{},
                     turnedWords(sketch, solved.solutions)});
    });
}

} // namespace

void solveSmallest(Solved& solved, const Sketch& sketch, const Question& question) {
    const Partner partner = partnerOf(sketch, question);
    const Misfit misfit =
        partner == Partner::force ? misfitBesideForce(sketch, question) : misfitOfForce(sketch, question);
    if (!misfit.free.empty() || !misfit.fix.empty()) {
        solved.status = misfit.fix.empty() ? Status::overdetermined : Status::underdetermined;
        sayOf(question, [&] { say(solved, {misfitWords(misfit, sketch, partner)}); });
    } else if (partner == Partner::force) {
        besideForce(solved, sketch, question);
    } else {
        smallestForce(solved, sketch, question);
    }
}

} // namespace tailpoint
