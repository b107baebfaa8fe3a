#include "core/explain/explain.h"
#include "core/explain/families.h"

namespace tailpoint {

namespace {

using explaining::Board;

bool isResultantOfTwo(const Board& board) {
    return board.solved.family == Family::closePolygon && board.sketch.forces.size() == 2 &&
           board.solved.unknownVectors[0] == kSumIndex;
}

void writeResultantOfTwo(Board& board) {
    board.follow(Route::Way::triangle);
    if (board.carried.find({What::opposite, kSumVector}) != nullptr)
        explaining::writeTwoForces(board);
    else
        explaining::writeFlat(board);
}

void writeClosing(Board& board) {
    if (isResultantOfTwo(board))
        return writeResultantOfTwo(board);
    if (board.options.parallelograms && board.follow(Route::Way::parallelograms))
        return explaining::writePairs(board);
    if (board.solved.unknownVectors[0] != kSumIndex && board.follow(Route::Way::triangle))
        return explaining::writeMissing(board);
    board.follow(Route::Way::components);
    explaining::writeTable(board);
}

void writeByTriangle(Board& board, void (*write)(Board&)) {
    if (board.follow(Route::Way::triangle))
        write(board);
    else
        explaining::writeAlongOneLine(board);
}

void write(Board& board) {
    if (!board.isAnswered())
        return explaining::writeWithoutAnswer(board);
    switch (board.solved.family) {
    case Family::closePolygon:
        return writeClosing(board);
    case Family::twoMagnitudes:
        return writeByTriangle(board, explaining::writeLines);
    case Family::magnitudeAndDirection:
        return writeByTriangle(board, explaining::writeAmbiguous);
    case Family::twoDirections:
        return writeByTriangle(board, explaining::writeSides);
    case Family::smallestForce:
    case Family::smallestSum:
        return writeByTriangle(board, explaining::writeSmallest);
    case Family::check:
    case Family::unclear:
        return explaining::writeWithoutAnswer(board);
    }
}

} // namespace

Worked explain(const Sketch& sketch, const Solved& solved, const Construction& construction,
               std::size_t solution, const ExplainOptions& options) {
    Board board(sketch, solved, construction, solution, options);
    write(board);
    return std::move(board.worked);
}

} // namespace tailpoint
