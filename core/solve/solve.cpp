// SPDX-License-Identifier: MIT
#include "core/solve/solve.h"

#include "core/solve/answer.h"
#include "core/solve/one_unknown.h"
#include "core/solve/smallest.h"
#include "core/solve/words.h"

#include <algorithm>

namespace tailpoint {
namespace {

using kernel::Outcome;
using kernel::Root;
using kernel::Roots;
using kernel::Vec;

Eigen::Vector2d doubles(Vec v) {
    return {static_cast<double>(v.x) + 0.0, static_cast<double>(v.y) + 0.0};
}

void close(Solved& solved, const Sketch& sketch, const Question& question) {
    solved.status = Status::unique;
    const Root root{kernel::close(question.target()), {}};
    solved.solutions.push_back(answered(givenPart(sketch, question), sketch, question, root));
    if (root.first.magnitude == 0) {
        sayOf(question, [&] { say(solved, {closesAlready(sketch, question)}); });
    }
}

Family familyOfTwo(const Question& question) {
    const bool firstCircle = question.unknowns[0].direction;
    const bool secondCircle = question.unknowns[1].direction;
    if (firstCircle != secondCircle) {
        return Family::magnitudeAndDirection;
    }
    return firstCircle ? Family::twoDirections : Family::twoMagnitudes;
}

Family familyOf(const Sketch& sketch, const Question& question) {
    if (sketch.smallest) {
        return *sketch.smallest == sketch.sum.name ? Family::smallestSum : Family::smallestForce;
    }
    if (question.scalars < 2) {
        return question.scalars == 0 ? Family::check : Family::oneUnknown;
    }
    if (question.scalars > 2) {
        return Family::unclear;
    }
    return question.unknowns.size() == 1 ? Family::closePolygon : familyOfTwo(question);
}

Solved unsolved(const Sketch& sketch, const Question& question) {
    Solved solved;
    sayOf(question, [&] {
        for (const Phrase& unknown : unknownWords(sketch, question)) {
            solved.unknowns.push_back(unknown.text());
        }
    });
    for (std::size_t i = 0; i < std::min<std::size_t>(2, question.unknowns.size()); ++i) {
        solved.unknownVectors[i] = question.unknowns[i].index;
    }
    solved.knownSum = doubles(question.forces.value());
    solved.family = familyOf(sketch, question);
    return solved;
}

bool isAgainst(const Sketch& sketch, const UnknownVector& unknown, const kernel::Found& found) {
    return found.magnitude < 0 && !vectorAt(sketch, unknown.index).lineOfActionOnly;
}

// The vectors that would have to act against their given sense, by name.
std::vector<Phrase> againstSense(const Sketch& sketch, const Question& question, const Root& root) {
    std::vector<Phrase> names;
    const auto add = [&](const UnknownVector& unknown, const kernel::Found& found) {
        if (isAgainst(sketch, unknown, found)) {
            names.push_back(question.inSilence ? Phrase() : called(sketch, unknown.index));
        }
    };
    add(question.unknowns[0], root.first);
    add(question.unknowns[1], root.second);
    return names;
}

// Counter-clockwise angle from `from` to the found vector as it acts, rounded so that equal ones compare
// equal.
double turnFrom(Vec from, const kernel::Found& found, int index) {
    const Vec acting = (signOf(index) * (found.magnitude < 0 ? -1.0L : 1.0L)) * found.unit;
    return static_cast<double>(std::atan2(kernel::cross(from, acting), kernel::dot(from, acting)));
}

// The closing side as it is drawn: the known forces' sum where the sum S is to be found, else S minus them.
Vec closingSide(const Question& question) {
    const Vec gap = question.target().vector;
    return question.find(kSumIndex) == nullptr ? gap : -gap;
}

bool comesFirst(const Question& question, const Root& a, const Root& b) {
    constexpr double kSameTurn = 1e-12;
    const Vec side = closingSide(question);
    const double difference = turnFrom(side, a.first, question.unknowns[0].index) -
                              turnFrom(side, b.first, question.unknowns[0].index);
    if (std::fabs(difference) > kSameTurn) {
        return difference > 0;
    }
    return turnFrom(side, a.second, question.unknowns[1].index) >
           turnFrom(side, b.second, question.unknowns[1].index);
}

void putInOrder(Roots& roots, const Question& question) {
    if (roots.count == 2 && comesFirst(question, roots.root[1], roots.root[0])) {
        std::swap(roots.root[0], roots.root[1]);
    }
}

Status statusOf(Outcome outcome, std::size_t admissible) {
    if (outcome == Outcome::endless) {
        return Status::endless;
    }
    return admissible == 0 ? Status::none : admissible == 1 ? Status::unique : Status::two;
}

void merge(std::vector<Phrase>& names, const std::vector<Phrase>& more) {
    for (const Phrase& name : more) {
        if (std::find(names.begin(), names.end(), name) == names.end()) {
            names.push_back(name);
        }
    }
}

// Sorts the roots into answers and those lost to a sense; returns the names that lost them.
std::vector<Phrase> sortOut(Solved& solved, const Sketch& sketch, const Question& question,
                            const Roots& roots) {
    std::vector<Phrase> lost;
    const Solution given = givenPart(sketch, question);
    for (int i = 0; i < roots.count; ++i) {
        const Root& root = roots.root[static_cast<std::size_t>(i)];
        const std::vector<Phrase> names = againstSense(sketch, question, root);
        merge(lost, names);
        (names.empty() ? solved.solutions : solved.reversed)
            .push_back(answered(given, sketch, question, root));
    }
    return lost;
}

Remarks bothZeroWords(const Sketch& sketch, const Question& question, const Roots& roots) {
    const bool zero = roots.outcome == Outcome::one && roots.root[0].first.magnitude == 0 &&
                      roots.root[0].second.magnitude == 0;
    return zero ? bothZero(sketch, question) : Remarks{};
}

void meetTwo(Solved& solved, const Sketch& sketch, const Question& question) {
    Roots roots = meet(sideOf(sketch, question, question.unknowns[0]),
                       sideOf(sketch, question, question.unknowns[1]), question.target());
    putInOrder(roots, question);
    const std::vector<Phrase> lost = sortOut(solved, sketch, question, roots);
    const std::size_t count = solved.solutions.size();
    solved.status = statusOf(roots.outcome, count);
    solved.tangent = roots.outcome == Outcome::tangent && count == 1;
    const bool countStands = solved.reversed.empty();
    sayOf(question, [&] {
        say(solved,
            {countStands ? outcomeWords(sketch, question, roots.outcome) : Remarks{},
             bothZeroWords(sketch, question, roots), reversedWords(count, solved.reversed.size(), lost),
             turnedWords(sketch, solved.solutions), sensitivityWords(sketch, question, roots)});
    });
}

} // namespace

std::string_view nameOf(Status status) {
    switch (status) {
    case Status::unique:
        return "unique";
    case Status::two:
        return "two";
    case Status::none:
        return "none";
    case Status::endless:
        return "endless";
    case Status::overdetermined:
        return "overdetermined";
    case Status::underdetermined:
        break;
    }
    return "underdetermined";
}

namespace {

void append(Phrase& all, const Phrase& sentence) {
    if (!sentence.empty()) {
        all += (all.empty() ? "" : " ") + sentence;
    }
}

} // namespace

Phrase Solved::message() const {
    Phrase all;
    for (const Remark& remark : remarks) {
        append(all, remark.words);
        append(all, remark.advice);
    }
    return all;
}

Phrase Solved::finding() const {
    Phrase all;
    for (const Remark& remark : remarks) {
        if (remark.code != MessageCode::freeTwo) {
            append(all, remark.words);
            append(all, remark.advice);
        }
    }
    return all;
}

MessageCode Solved::messageCode() const {
    return remarks.empty() ? MessageCode::none : remarks.front().code;
}

std::vector<MessageCode> Solved::remarkCodes() const {
    std::vector<MessageCode> codes;
    for (std::size_t i = 1; i < remarks.size(); ++i) {
        codes.push_back(remarks[i].code);
    }
    return codes;
}

VectorId vectorId(int index) {
    if (index == kSumIndex) {
        return kSumVector;
    }
    return index == kNoVector ? kNobody : forceVector(static_cast<std::size_t>(index));
}

namespace {

Solved solvedOf(const Sketch& sketch, const Question& question) {
    Solved solved = unsolved(sketch, question);
    if (sketch.smallest) {
        solveSmallest(solved, sketch, question);
    } else if (question.scalars > 2) {
        sayOf(question, [&] { say(solved, {tooManyUnknowns(sketch, question)}); });
    } else if (question.scalars == 0) {
        solved.status = Status::overdetermined;
        sayOf(question, [&] { say(solved, {nothingUnknown(sketch, question)}); });
    } else if (question.scalars == 1) {
        solveOneUnknown(solved, sketch, question);
    } else if (question.unknowns.size() == 1) {
        close(solved, sketch, question);
    } else {
        meetTwo(solved, sketch, question);
    }
    return solved;
}

} // namespace

Solved solve(const Sketch& sketch) {
    return solvedOf(sketch, questionOf(sketch));
}

Solved solveInSilence(const Sketch& sketch) {
    Question question = questionOf(sketch);
    question.inSilence = true;
    return solvedOf(sketch, question);
}

Solved asked(const Sketch& sketch) {
    return unsolved(sketch, questionOf(sketch));
}

SolvedForce equilibrant(const SolvedForce& sum, const Sketch& sketch) {
    SolvedForce opposite = sum;
    opposite.name = "equilibrant";
    opposite.vector = Eigen::Vector2d(0, 0) - sum.vector;
    opposite.unit = Eigen::Vector2d(0, 0) - sum.unit;
    if (sum.direction) {
        opposite.direction = halfTurned(*sum.direction, sketch.angleUnit);
    }
    return opposite;
}

} // namespace tailpoint
