// SPDX-License-Identifier: MIT
// The solutions by kind of question, and the steps that many of them share. Internal to explain/.
#pragma once

#include "core/explain/board.h"
#include "core/explain/triangle.h"

namespace tailpoint::explaining {

// Shared first and last steps.
void writeGiven(Board& board);
void writeFreeBody(Board& board);   ///< of forces in equilibrium; else nothing
void writeCount(Board& board);      ///< and the directions, where they need words
void writeDirections(Board& board); ///< given by slope, bearing or the long way round
/// Whether the step of directions says the vector's angle from +x: the way to the sheet's own leads over it.
bool isToldFromX(const Board& board, VectorId vector);
/// What ψ is, unless a step has told it.
void introduceFromX(const Board& board, Step& step);
/// What it means that a vector is found in the other sense of its line.
Prose readSense(const Board& board, const Vector& vector);
void writeSenses(Board& board); ///< lines of action found in the other sense; else nothing
void writeAnswer(Board& board);
/// "{size}, between 509 N and 530 N" where the magnitude has a range, else as it is; the same of a direction.
Prose withRange(const Board& board, std::size_t answer, const Vector& vector, Prose size);
Prose withRangeOfWay(const Board& board, std::size_t answer, const Vector& vector, Prose way);
/// Where the extremes lie, and what is to be said of the ranges. Nothing where there are none.
void writeExtremes(const Board& board, Step& step);
/// Beside every number of a written solution that was found, what it can be.
void tellRangesBeside(Board& board);
void writeCheck(Board& board);         ///< by the other way than the one that led to the answer
void writeTriangleCheck(Board& board); ///< of an answer by components. Precondition: the triangle leads there
void writeRoundingCost(Board& board);  ///< nothing but with hand rounding
void writeEnd(Board& board);           ///< answer, check and the rounding's cost
/// What came out beside what the estimate said: the check's last word.
void returnToEstimate(Board& board);

/// Component table of what K adds up, and K itself: the known forces, or the given sum less them. Nothing
/// where no side is K.
void writeKnown(Board& board);
void writeKnownComponents(Board& board); ///< the table alone
/// All given: the components of the forces' sum beside those that the sum is to have.
void writeComparison(Board& board);
/// What ruler and protractor give: said once, where it is drawn to scale.
void tellScale(const Board& board, Step& step);
/// How long the resultant of two can be, drawn to scale.
Prose betweenTheBounds(const Board& board, const Vector& sum);
/// What to expect of two forces' resultant. Precondition: neither is zero; of the second, both on one line.
void writePairEstimate(Board& board);
void writeLineEstimate(Board& board);
/// A vector that two others make, beside the hypotenuse of the two: the angle between them, as it is drawn,
/// narrows the bounds from `low` to `high` that the estimate gave.
void narrowByRightAngle(Board& board, Step& step, const Vector& sought, const Vector& a, const Vector& b,
                        double low, double high);
/// How long the resultant of many can be.
void writePolygonEstimate(Board& board);
/// Magnitude and direction from components, the quadrant decided by their signs.
void writePolar(Board& board, const Vector& vector);
/// Whether the force triangle leads to the answer too.
bool hasTriangle(const Board& board);
/// The direction alone, within a step.
/// `below`: its components are worked out in the same step.
void writeWayFromComponents(Board& board, Step& step, const Vector& vector, bool below = false);
/// The components of one known vector.
void showComponents(const Board& board, Step& step, VectorId vector);

/// The components that one vector sought must have, from those of the known ones.
void writeNeeded(Board& board, const Vector& sought);
/// What a magnitude with a sign is, where the line leaves the sense open. In a second answer it is known but
/// for its prime.
void introduceAlong(const Board& board, Step& step, const std::vector<const Vector*>& vectors,
                    bool isFirst = true);
/// A magnitude as the equations give it: with a sign where the line leaves the sense open.
void showMagnitude(const Board& board, Step& step, const Vector& vector);

// What to expect before anything is computed, by kind of question: no way is taken yet.
void writeLinesEstimate(Board& board);
void writeAmbiguousEstimate(Board& board);
void writeSidesEstimate(Board& board);
void writeSmallestEstimate(Board& board); ///< and why there is a right angle

/// Whether the sum is asked for whole.
bool sumWhollyUnknown(const Board& board);
/// The lines of the check by components, from the numbers of an answer as they are printed. `inlined`: the
/// components stand within the sums, and are not rounded.
Carried checkLines(const Board& board, bool inlined);
/// The same along and across the resultant.
Carried turnedLines(const Board& board);

// Kinds of question. Precondition: the board follows the way to their answer.
void writeTwoForces(Board& board);       ///< resultant of two forces: parallelogram and triangle
void writeFlat(Board& board);            ///< the same along one line, or with nothing to add
void writeMissing(Board& board);         ///< one force unknown beside two known vectors
void writeLines(Board& board);           ///< two magnitudes: oblique components, Lami
void writeAmbiguous(Board& board);       ///< a magnitude and a direction
void writeSides(Board& board);           ///< two directions
void writeSmallest(Board& board);        ///< smallest force, smallest sum
void writeAlongOneLine(Board& board);    ///< any question whose triangle is flat
void writeTable(Board& board);           ///< one vector unknown, by the component table
void writeOneUnknown(Board& board);      ///< one scalar for two equations
void writeTwoByComponents(Board& board); ///< two unknowns of two vectors, by the sums along x and y
void writePairs(Board& board);           ///< the same, parallelogram by parallelogram
void writeWithoutAnswer(Board& board);   ///< none, endless, too few or too many unknowns
/// Where both points of line and circle are lost to a given sense: the directions that would hold there.
void tellWaysBehind(const Board& board, Step& step, const Vector& line, const Vector& circle);
void writeOtherRoot(Board& board);    ///< by components, of a magnitude: lost to a given sense; else nothing
void writeOpenEstimate(Board& board); ///< a value too few is given: what the others bound
void writeWhyNone(Board& board);      ///< two unknowns that no triangle joins: the drawing that fails
void writeNearest(Board& board);      ///< the same: the nearest that can be done, as a check
void writeEndless(Board& board);      ///< infinitely many answers: what they have in common
void tryOneOfMany(Board& board);      ///< the same: one of them put into the equation

} // namespace tailpoint::explaining
