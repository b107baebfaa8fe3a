// The solutions by kind of question, and the steps that many of them share. Internal to explain/.
#pragma once

#include "core/explain/moves.h"

namespace tailpoint::explaining {

// Shared first and last steps.
void writeGiven(Blackboard& board);
void writeCount(Blackboard& board);
void writeAnswer(Blackboard& board);
void writeCheck(Blackboard& board);        ///< by components, independent of the triangle
void writeRoundingCost(Blackboard& board); ///< nothing but with hand rounding

/// The vector of the first unknown; null where there is none.
Arrow* sought(Blackboard& board);
/// Component table of the known forces, and the one force K that stands for them.
Arrow addKnown(Blackboard& board);

// Kinds of question.
void writeTwoForces(Blackboard& board);     ///< resultant of two forces: parallelogram and triangle
void writeFlat(Blackboard& board);          ///< everything along one line, or nothing to add
void writeTable(Blackboard& board);         ///< one vector unknown, by the component table
void writeWithoutAnswer(Blackboard& board); ///< none, endless, too few or too many unknowns

} // namespace tailpoint::explaining
