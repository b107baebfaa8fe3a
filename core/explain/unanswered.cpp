// Questions without an answer to work out: too few or too many unknowns, none, endlessly many.
#include "core/explain/families.h"

namespace tailpoint::explaining {

namespace {

bool isGivenThroughout(const Blackboard& board) {
    for (const Arrow& arrow : board.forces)
        if (!arrow.sizeGiven || !arrow.directionGiven)
            return false;
    return board.solved.family == Family::check && board.sum.sizeGiven &&
           (board.sum.directionGiven || isEquilibrium(board.sketch));
}

} // namespace

void writeWithoutAnswer(Blackboard& board) {
    writeGiven(board);
    writeCount(board);
    if (isGivenThroughout(board))
        writeComparison(board);
    if (board.solved.status == Status::none)
        writeWhyNone(board);
    Step& step = board.step("answer", "Answer", Stage::all);
    step.reasoning.push_back(say(withMinusSigns(board.solved.message)));
    board.worked.answer = step.reasoning.back();
}

} // namespace tailpoint::explaining
