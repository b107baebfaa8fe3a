// Questions without an answer to work out: too few or too many unknowns, none, endlessly many.
#include "core/explain/families.h"

namespace tailpoint::explaining {

void writeWithoutAnswer(Blackboard& board) {
    writeGiven(board);
    writeCount(board);
    Step& step = board.step("answer", "Answer", Stage::construction);
    step.reasoning.push_back(say(board.solved.message));
    board.worked.answer = say(board.solved.message);
}

} // namespace tailpoint::explaining
