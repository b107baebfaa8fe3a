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

void write(Blackboard& board) {
    if (board.solution >= board.solved.solutions.size())
        return explaining::writeWithoutAnswer(board);
    if (isResultantOfTwo(board))
        return isProper(board) ? explaining::writeTwoForces(board) : explaining::writeFlat(board);
    explaining::writeTable(board);
}

} // namespace

Worked explain(const Sketch& sketch, const Solved& solved, const Construction& construction,
               std::size_t solution, const ExplainOptions& options) {
    Blackboard board(sketch, solved, construction, solution, options);
    write(board);
    return std::move(board.worked);
}

} // namespace tailpoint
