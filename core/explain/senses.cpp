// SPDX-License-Identifier: MIT
// Lines of action whose sense the answer decides.
#include "core/explain/families.h"

#include <algorithm>

namespace tailpoint::explaining {

Prose readSense(const Board& board, const Vector& vector) {
    return board.say(SENTENCE("solution",
                              "{vector} acts against the sense first drawn, with {size}: a bar drawn "
                              "as pulling pushes; a rope could not."),
                     "vector", vector.vector, "size", board.answered(vector.sizeNumber));
}

void writeSenses(Board& board) {
    std::vector<const Vector*> turned;
    for (const Vector& force : board.forces())
        if (force.turned)
            turned.push_back(&force);
    if (board.sum().turned)
        turned.push_back(&board.sum());
    if (turned.empty())
        return;
    Step& step =
        board.step(StepKey::senses, SENTENCE("solution", "Which sense along the line?"), Stage::construction);
    step.reasoning.push_back(board.say(
        board.hasTwoAnswers()
            ? SENTENCE("solution",
                       "A line of action leaves the sense open. The answer worked out here takes the sense "
                       "opposite to the one drawn.")
            : SENTENCE("solution",
                       "A line of action leaves the sense open. The triangle closes only with the sense "
                       "opposite to the one drawn: worked out in the drawn sense, the magnitude would "
                       "come out negative.")));
    for (const Vector* vector : turned) {
        board.show(step, vector->wayId);
        step.parts.push_back(arrowPart(vector->index));
    }
}

} // namespace tailpoint::explaining
