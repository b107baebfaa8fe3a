// SPDX-License-Identifier: MIT
#include "core/solve/one_unknown.h"

#include "core/sketch/shown.h"
#include "core/solve/answer.h"
#include "core/solve/rounding_room.h"
#include "core/solve/words.h"

namespace tailpoint {
namespace {

using kernel::Found;
using kernel::Target;

/// The value that leaves least over; `misses` says how much that is.
struct Best {
    Found found;
    long double misses = 0;
};

Best bestMagnitude(const kernel::Line& line, const Target& target) {
    const kernel::Root root = kernel::nearest(line, target);
    return {root.first, root.second.magnitude};
}

/// Empty where nothing is left for the vector to close: then no direction is better than another.
std::optional<Best> bestDirection(long double magnitude, const Target& target) {
    const long double size = kernel::length(target.vector);
    if (size == 0) {
        return std::nullopt;
    }
    const long double off = std::fabs(size - magnitude);
    return Best{{(1 / size) * target.vector, magnitude},
                off <= kernel::kTangentBand * target.scale ? 0 : off};
}

/// Whether both equations hold with it, exactly or within rounding.
bool holds(const Sketch& sketch, const UnknownVector& unknown, const Solution& solution, const Best& best) {
    if (best.misses == 0) {
        return true;
    }
    if (unknown.direction && best.misses >= best.found.magnitude) {
        return false;
    }
    const Sketch filled = filledIn(sketch, solution);
    return isRoundingGap(filled, questionOf(filled));
}

/// "W = 2.87 kN", "P at -90.0°".
Phrase valueWords(const Sketch& sketch, const UnknownVector& unknown, const SolvedForce& found) {
    return unknown.direction
               ? called(sketch, unknown.index) + " at " + shownAngle(found.direction.value_or(0), sketch)
               : calledMagnitude(sketch, unknown.index) + " = " + shown(found.magnitude, sketch);
}

Remarks holdsWords(const Phrase& value, const Best& best, const Sketch& sketch) {
    const Phrase start = "One unknown for two equations: with " + value + " both hold";
    if (best.misses == 0) {
        return {{MessageCode::holdsByChance, start + ", and nothing is left over."}};
    }
    return {{MessageCode::holdsWithinRounding, start + " within rounding; " + shown(best.misses, sketch) +
                                                   " is left over, no more than the rounding of the given "
                                                   "values may leave."}};
}

Remark missWords(const Sketch& sketch, const UnknownVector& unknown, const Phrase& value,
                 long double misses) {
    const Phrase of = called(sketch, unknown.index);
    const Phrase end = " makes the equation hold: the best, " + value + ", misses by " +
                       shown(misses, sketch) + ", more than the rounding of the given values may leave.";
    return unknown.direction ? Remark{MessageCode::noDirectionHolds, "No direction of " + of + end}
                             : Remark{MessageCode::noMagnitudeHolds, "No magnitude of " + of + end};
}

void sayMiss(Solved& solved, const Sketch& sketch, const UnknownVector& unknown, const Remark& miss) {
    const Phrase name =
        unknown.direction ? directionOf(sketch, unknown.index) : magnitudeOf(sketch, unknown.index);
    say(solved,
        {{{MessageCode::oneUnknown, "One unknown only, the " + name + ", but a plane gives two equations.",
           "Free one more: " + givenChoices(sketch, unknown.index) + "."},
          miss}});
}

/// Against its sense none is nearer than zero.
void sayMissOf(Solved& solved, const Sketch& sketch, const Question& question, const Solution& solution,
               const Best& best, bool against) {
    const UnknownVector& unknown = question.unknowns.front();
    const Phrase value = against ? calledMagnitude(sketch, unknown.index) + " = " + shown(0, sketch)
                                 : valueWords(sketch, unknown, vectorIn(solution, unknown.index));
    const long double misses = against ? kernel::length(question.target().vector) : best.misses;
    sayMiss(solved, sketch, unknown, missWords(sketch, unknown, value, misses));
}

} // namespace

void solveOneUnknown(Solved& solved, const Sketch& sketch, const Question& question) {
    const UnknownVector& unknown = question.unknowns.front();
    const Side side = sideOf(sketch, question, unknown);
    const auto* line = std::get_if<kernel::Line>(&side);
    const std::optional<Best> best =
        line != nullptr ? std::optional(bestMagnitude(*line, question.target()))
                        : bestDirection(std::get<kernel::Circle>(side).magnitude, question.target());
    solved.status = Status::overdetermined;
    if (!best) {
        return sayOf(question, [&] {
            sayMiss(solved, sketch, unknown,
                    {MessageCode::noDirectionHolds,
                     "No direction of " + called(sketch, unknown.index) +
                         " makes the equation hold: without it nothing is left over."});
        });
    }
    Solution solution =
        answered(givenPart(sketch, question), sketch, question, kernel::Root{best->found, {}});
    const bool against = line != nullptr && line->ray && best->found.magnitude < 0;
    if (!holds(sketch, unknown, solution, *best)) {
        return sayOf(question, [&] { sayMissOf(solved, sketch, question, solution, *best, against); });
    }
    if (against) {
        solved.status = Status::none;
        solved.reversed.push_back(std::move(solution));
        return sayOf(question, [&] { say(solved, {reversedWords(0, 1, {called(sketch, unknown.index)})}); });
    }
    solved.status = Status::unique;
    solved.solutions.push_back(std::move(solution));
    sayOf(question, [&] {
        const SolvedForce& found = vectorIn(solved.solutions.front(), unknown.index);
        say(solved, {holdsWords(valueWords(sketch, unknown, found), *best, sketch),
                     turnedWords(sketch, solved.solutions)});
    });
}

} // namespace tailpoint
