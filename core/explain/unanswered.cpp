// SPDX-License-Identifier: MIT
// Questions without an answer to work out: too few or too many unknowns, none, infinitely many.
#include "core/explain/families.h"
#include "core/explain/listed.h"

#include <algorithm>

namespace tailpoint::explaining {

namespace {

bool isGivenThroughout(const Board& board) {
    for (const Vector& force : board.forces())
        if (!force.sizeGiven || !force.wayGiven)
            return false;
    return board.solved.family == Family::check && board.sum().sizeGiven &&
           (board.sum().wayGiven || isEquilibrium(board.sketch));
}

/// What is found, and of too many unknowns what it comes to.
Prose answerTold(const Board& board) {
    constexpr QuantityId kGap{What::gap, kNobody, {}, 0, kDifference};
    const auto more = static_cast<int>(board.solved.unknowns.size()) - 2;
    if (board.options.handRounding && board.solved.messageCode() == MessageCode::equationHoldsShown &&
        board.carried.find(kGap) != nullptr)
        return board.say(SENTENCE("solution", "The equation holds within rounding: {gap} is left over."),
                         "gap", board.number(kGap));
    if (more <= 0)
        return board.message();
    return board.say(more == 1 ? SENTENCE("solution", "{found} So there is no single answer: one more value "
                                                      "must be given.")
                               : SENTENCE("solution", "{found} So there is no single answer: {count} more "
                                                      "values must be given."),
                     "found", board.message(), "count", counted(board, more));
}

/// Of endlessly many magnitudes which they are, as the drawing's step found.
void repeatChoices(Board& board) {
    if (board.solved.messageCode() != MessageCode::endlessMagnitudes)
        return;
    std::vector<Step>& steps = board.worked.steps;
    const auto found = std::find_if(steps.begin(), steps.end(),
                                    [](const Step& step) { return step.key == StepKey::estimate; });
    if (found == steps.end() || found->workings.empty() || found->conclusion.empty())
        return;
    steps.back().workings.push_back(found->workings.back());
    steps.back().conclusion.push_back(found->conclusion.back());
}

/// The answer stands before what checks it, as everywhere; a comparison is no check but the calculation.
void setAnswerBeforeCheck(Board& board) {
    std::vector<Step>& steps = board.worked.steps;
    const auto check =
        std::find_if(steps.begin(), steps.end(), [](const Step& step) { return step.key == StepKey::check; });
    if (check == steps.end() || board.solved.family == Family::check)
        return;
    steps.back().stage = check->stage;
    std::rotate(check, steps.end() - 1, steps.end());
}

} // namespace

void writeWithoutAnswer(Board& board) {
    writeGiven(board);
    writeCount(board);
    if (isGivenThroughout(board))
        writeComparison(board);
    if (board.solved.unknowns.size() > 2)
        writeOpenEstimate(board);
    if (board.solved.status == Status::none)
        writeWhyNone(board);
    if (board.solved.status == Status::endless)
        writeEndless(board);
    writeNearest(board);
    if (board.solved.status == Status::endless)
        tryOneOfMany(board);
    Step& step = board.step(StepKey::answer, SENTENCE("solution", "Answer"), Stage::all);
    step.reasoning.push_back(answerTold(board));
    board.worked.answer = step.reasoning.back();
    repeatChoices(board);
    setAnswerBeforeCheck(board);
    writeRoundingCost(board);
}

} // namespace tailpoint::explaining
