// SPDX-License-Identifier: MIT
// derive/: the chain of calculation. Who computes a quantity? A line: `subject = formula over earlier
// quantities`. No words here: explain/ puts them round the lines, mark/ rewrites a line and lets the rest be
// computed as usual. What is a quantity, and who names it: core/formula/ids.h, core/sketch/things.h.
//
//   const Things things(sketch);
//   const Chain chain = chainOf(sketch, solved, things, routesOf(sketch, solved).front());
//   const Values values = evaluate(chain, givenValues(chain, sketch));
//   values.at(magnitudeId(kSumVector))
//
// Extended precision throughout; angles in the sheet's unit. Where every angle of the triangle is 0.1° or
// more, each line is the solver's value to kLineError of the scale (the sum of all magnitudes; for angles a
// half turn; for squares the scale's square), below that to kLineError times the line's own condition. The
// exception is an inverse sine near a right angle, which loses half the digits: kSteepError there. An angle
// that is a half turn may come out as minus a half turn.
#pragma once

#include "core/construct/reduction.h"
#include "core/derive/values.h"
#include "core/sketch/things.h"

#include <vector>

namespace tailpoint {

inline constexpr double kLineError = 1e-12, kSteepError = 1e-9;

enum class LineKind : std::uint8_t {
    tails,      ///< an angle from two directions: between the tails, or its supplement
    supplement, ///< a half turn less another angle
    third,      ///< what two angles of the triangle leave of a half turn
    cosines,    ///< law of cosines: the square of a side, or the cosine of an angle
    root,       ///< of a square
    ratio,      ///< sine, cosine or tangent of an angle sought
    inverse,    ///< the angle from its sine or cosine, acute or obtuse
    sinesSide,  ///< law of sines for a side; in a right triangle a leg
    turn,    ///< a direction by turning from another, brought back by a full turn; the other sense of a line
    halving, ///< equal sides: half of an angle, or of what it leaves of a half turn
    component,   ///< magnitude times cosine or sine; along a line: the magnitude with its sign
    columnSum,   ///< components added up, each with its sign
    term,        ///< an unknown's factor in ΣFx or ΣFy
    elimination, ///< an unknown from ΣFx and ΣFy
    pythagoras,  ///< the square of a magnitude from its components
    arctangent,  ///< an acute angle from its tangent; a slope's direction
    quadrant,    ///< a direction from its acute angle and the signs of the components
    referral,    ///< from +x to the sheet's axis, or back; a bearing
    check        ///< what is left over when all vectors are put into ΣFx or ΣFy
};

/// One of the forms that a line can have. What a number decides (quadrant, acute or obtuse, a full turn more
/// or less) is decided anew wherever the line is evaluated.
struct Case {
    std::vector<Formula> when; ///< relations over earlier quantities, all of which must hold; none: always
    Formula formula;           ///< every symbol bears the id of an earlier quantity
};

struct Line {
    QuantityId subject;
    LineKind kind = LineKind::tails;
    std::vector<Case> cases; ///< the first that holds is taken
};

struct Route {
    enum class Way : std::uint8_t {
        triangle,      ///< laws of cosines and of sines
        components,    ///< ΣFx and ΣFy
        parallelograms ///< a resultant of three to six forces: two at a time
    };
    Way way = Way::triangle;
    VectorId begun; ///< triangle: the known side from which the direction sought is turned; kNobody: the
                    ///< question's own
    bool operator==(const Route&) const = default;
};

struct Chain {
    Route route;
    AngleUnit unit = AngleUnit::deg;
    std::vector<QuantityId> given; ///< what the lines start from; values: givenValues()
    std::vector<Line> lines;       ///< each over given quantities and earlier lines
};

/// Under which ids the magnitude and the direction of a vector are known in an answer.
struct Standing {
    VectorId vector;
    QuantityId size, way;
};
Standing standingOf(const Solved& solved, VectorId vector, std::size_t solution);

/// Index of the answer on which both of two build: that in the sense drawn, where they differ in sense.
std::size_t baseAnswer(const Solved& solved);

/// The ways that lead to the answer, the one that a lecturer would show first in front. A triangle of two
/// known sides can be begun at either of them. Empty where the question has no answer.
std::vector<Route> routesOf(const Sketch& sketch, const Solved& solved);

/// Both answers are in it, each under its number where there are two. Without lines where that way doesn't
/// lead to the answer. Precondition: `solved` and `things` belong to `sketch`.
Chain chainOf(const Sketch& sketch, const Solved& solved, const Things& things, Route route);

/// A vector without an answer: what is given of it, a line of action as one unit along it.
SolvedForce asGiven(const Force& force, const Sketch& sketch);

/// From north, north being +y, and clockwise: such a sheet has a bearing's angle without a detour over +x.
bool countsFromNorth(const Sketch& sketch);

/// What can be said before anything is found: directions given by a slope, a bearing or the long way round,
/// as the sheet measures them; the known vectors added up to K; where a circle misses a line the angle at its
/// centre and its distance. A question without an answer has no other chain.
Chain groundOf(const Sketch& sketch, const Solved& solved, const Things& things);

/// All vectors of an answer put into ΣFx and ΣFy: what the forces add up to (of a sum that is asked for its
/// components, its magnitude and its direction) and what a given sum is to have. Without that answer: what is
/// given. Starts from magnitudes and directions, found ones too, under the ids of standingOf().
Chain checkOf(const Sketch& sketch, const Solved& solved, const Things& things, std::size_t solution);

/// One vector sought: the forces of a resultant, or what a missing force must make up for, added up along its
/// direction and across it: the first must give its magnitude again, the second nothing. Precondition: it has
/// a direction.
/// Of more than kMostInLine forces each component has its line.
inline constexpr std::size_t kMostInLine = 4;
Chain turnedCheckOf(const Sketch& sketch, const Solved& solved, const Things& things, std::size_t solution);

/// Every given quantity's value as it was typed; a direction as the sheet says it.
Values givenValues(const Chain& chain, const Sketch& sketch);
/// The solver's values of what is asked, to be carried on in place of a line's own last digits.
Overrides solvedValues(const Sketch& sketch, const Solved& solved);

/// One line from the values before it: its case (kNoCase where none holds), its value.
std::pair<std::uint8_t, std::optional<long double>> evaluateLine(const Line& line, AngleUnit unit,
                                                                 const Values& values);
std::pair<std::uint8_t, std::optional<long double>> evaluateLine(const Line& line, AngleUnit unit,
                                                                 const SymbolLookup& lookUp);

/// Every line in order. A line without a value (a sine above 1, no case that holds, an earlier value missing)
/// has none. `overrides` stand in place of what their lines give, and are carried on.
Values evaluate(const Chain& chain, const Values& given, const Overrides& overrides = {});

} // namespace tailpoint
