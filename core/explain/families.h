// The solutions by kind of question, and the steps that many of them share. Internal to explain/.
#pragma once

#include "core/construct/reduction.h"
#include "core/explain/moves.h"

namespace tailpoint::explaining {

// Shared first and last steps.
void writeGiven(Blackboard& board);
void writeCount(Blackboard& board); ///< and the directions, where they need words
void writeDirections(Blackboard& board);
void writeSenses(Blackboard& board); ///< lines of action found in the other sense; else nothing
/// `other`: the board of the other answer, where both hold.
void writeAnswer(Blackboard& board, const Blackboard* other = nullptr);
void writeCheck(Blackboard& board);        ///< by components, independent of the triangle
void writeRoundingCost(Blackboard& board); ///< nothing but with hand rounding

/// The vector of the first unknown; null where there is none.
Arrow* sought(Blackboard& board);
/// Component table of what K adds up, and K itself: the known forces, or the given sum less them.
Arrow addKnown(Blackboard& board, const Reduction& reduction);
/// All given: the components of the forces' sum beside those that the sum is to have.
void writeComparison(Blackboard& board);
/// Whether the sum is asked for whole.
bool sumWhollyUnknown(const Blackboard& board);

// Kinds of question.
void writeTwoForces(Blackboard& board); ///< resultant of two forces: parallelogram and triangle
void writeFlat(Blackboard& board);      ///< everything along one line, or nothing to add
bool writeMissing(Blackboard& board);   ///< one force unknown beside two known vectors; false: more of them
void writeLines(Blackboard& board);     ///< two magnitudes: oblique components, Lami
void writeAmbiguous(Blackboard& board); ///< a magnitude and a direction
void writeSides(Blackboard& board);     ///< two directions
void writeSmallest(Blackboard& board);  ///< smallest force, smallest sum
void writeAlongOneLine(Blackboard& board);    ///< any question whose triangle is flat
void writeTable(Blackboard& board);           ///< one vector unknown, by the component table
void writePolygonEstimate(Blackboard& board); ///< how long the resultant of many can be
bool writePairs(Blackboard& board);         ///< the same, parallelogram by parallelogram; false: it can't be
void writeWithoutAnswer(Blackboard& board); ///< none, endless, too few or too many unknowns
void writeWhyNone(Blackboard& board);       ///< two unknowns that no triangle joins: the drawing that fails

} // namespace tailpoint::explaining
