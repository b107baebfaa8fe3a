// Lines of action whose sense the answer decides.
#include "core/explain/families.h"

namespace tailpoint::explaining {

void writeSenses(Blackboard& board) {
    const auto isTurned = [](const Arrow& arrow) { return arrow.turned; };
    bool any = isTurned(board.sum);
    for (const Arrow& arrow : board.forces)
        any = any || isTurned(arrow);
    if (!any)
        return;
    Step& step = board.step("senses", "Which sense along the line?", Stage::construction);
    step.reasoning.push_back(
        board.solved.solutions.size() > 1
            ? say("A line of action leaves the sense open. The answer worked out here takes the sense "
                  "opposite to the one "
                  "drawn.")
            : say("A line of action leaves the sense open. The triangle closes only with the sense opposite "
                  "to the one "
                  "drawn: worked out in the drawn sense, the magnitude would come out negative."));
    const auto write = [&](const Arrow& arrow, const Force& given) {
        if (!arrow.turned)
            return;
        const double drawn = referredDirection(given.direction, board.sketch).value_or(0);
        const Formula drawnNumber = board.angleInUnit(drawn);
        const bool back = drawn > 0;
        Working working{arrow.theta, {}, {}, {}};
        working.substituted =
            back ? sum(drawnNumber, negative(board.halfTurn())) : sum(drawnNumber, board.halfTurn());
        Formula value = board.settle(working, arrow.direction.value_or(0), Quantity::angle);
        step.workings.push_back(std::move(working));
        step.parts.push_back(arrowPart(arrow.index));
        board.at(arrow.index).directionNumber = std::move(value);
    };
    for (std::size_t i = 0; i < board.forces.size(); ++i)
        write(board.forces[i], board.sketch.forces[i]);
    write(board.sum, board.sketch.sum);
}

} // namespace tailpoint::explaining
