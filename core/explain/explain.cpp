#include "core/explain/explain.h"
#include "core/explain/families.h"

#include <cmath>

namespace tailpoint {

namespace {

using explaining::Blackboard;

bool isResultantOfTwo(const Blackboard& board) {
    return board.solved.family == Family::closePolygon && board.forces.size() == 2 &&
           board.solved.unknownVectors[0] == kSumIndex;
}

/// Two forces that open a proper angle.
bool isProper(const Blackboard& board) {
    const Eigen::Vector2d &p = board.forces[0].v, &q = board.forces[1].v;
    const double cross = p.x() * q.y() - p.y() * q.x();
    return std::abs(cross) > 1e-13 * board.forces[0].magnitude * board.forces[1].magnitude;
}

void writeClosing(Blackboard& board) {
    if (isResultantOfTwo(board))
        return isProper(board) ? explaining::writeTwoForces(board) : explaining::writeFlat(board);
    if (board.options.parallelograms && explaining::writePairs(board))
        return;
    if (board.solved.unknownVectors[0] == kSumIndex || !explaining::writeMissing(board))
        explaining::writeTable(board);
}

void write(Blackboard& board) {
    if (board.solution >= board.solved.solutions.size())
        return explaining::writeWithoutAnswer(board);
    switch (board.solved.family) {
    case Family::closePolygon:
        return writeClosing(board);
    case Family::twoMagnitudes:
        return explaining::writeLines(board);
    case Family::magnitudeAndDirection:
        return explaining::writeAmbiguous(board);
    case Family::twoDirections:
        return explaining::writeSides(board);
    case Family::smallestForce:
    case Family::smallestSum:
        return explaining::writeSmallest(board);
    case Family::check:
    case Family::unclear:
        return explaining::writeWithoutAnswer(board);
    }
}

} // namespace

Worked explain(const Sketch& sketch, const Solved& solved, const Construction& construction,
               std::size_t solution, const ExplainOptions& options) {
    Blackboard board(sketch, solved, construction, solution, options);
    write(board);
    return std::move(board.worked);
}

} // namespace tailpoint
