// The whole solution of that family: its steps on the board of one answer, the other told beside it.
#include "core/explain/ambiguous.h"

#include <algorithm>
#include <optional>

namespace tailpoint::explaining {

namespace {

void assign(Ambiguous& q) {
    q.k = q.question.known;
    const bool firstOnLine = !q.at(q.question.sought[0]).sizeGiven;
    q.u = q.question.sought[firstOnLine ? 0 : 1];
    q.v = q.question.sought[firstOnLine ? 1 : 0];
}

/// The numbers that were carried on `from`, as far as they belong to both.
void takeCarried(Blackboard& to, const Blackboard& from) {
    const auto take = [](Arrow& arrow, const Arrow& carried) {
        if (arrow.sizeGiven)
            arrow.sizeNumber = carried.sizeNumber;
        if (arrow.directionGiven && arrow.turned == carried.turned)
            arrow.directionNumber = carried.directionNumber;
    };
    for (std::size_t i = 0; i < to.forces.size(); ++i)
        take(to.forces[i], from.forces[i]);
    take(to.sum, from.sum);
}

Answer answerOf(const Blackboard& board, const Ambiguous& q, std::size_t index) {
    const bool both = board.solved.solutions.size() > 1;
    Answer answer{Blackboard(board.sketch, board.solved, board.construction, index, board.options),
                  q.triangle(),
                  !both        ? ""
                  : index == 0 ? "′"
                               : "″"};
    takeCarried(answer.board, board);
    return answer;
}

/// Points the triangle at the answer's own arrows; after the answer has come to rest.
void settleTriangle(Answer& answer) {
    for (const Arrow*& side : answer.triangle.side)
        if (side->index != kNoVector)
            side = &answer.board.at(side->index);
}

/// The answer's board speaks of what was found in the answer's own symbols.
void primeSymbols(Answer& answer, const Ambiguous& q) {
    Arrow &u = answer.board.at(q.at(q.u).index), &v = answer.board.at(q.at(q.v).index);
    u.size = primed(u.size, answer.prime);
    v.theta = primed(v.theta, answer.prime);
}

/// From here on the board speaks of the answer chosen, in its own symbols.
void carryOver(Blackboard& board, const Answer& answer, const Ambiguous& q) {
    for (const int index : {q.at(q.u).index, q.at(q.v).index}) {
        const Arrow& found = answer.board.at(index);
        Arrow& arrow = board.at(index);
        arrow.sizeNumber = found.sizeNumber;
        arrow.size = found.size;
        arrow.directionNumber = found.directionNumber;
        arrow.theta = found.theta;
    }
}

/// Of two answers the one on which both build: that in the sense drawn, where they differ in sense.
std::size_t baseOf(const Blackboard& board) {
    const auto& answers = board.solved.solutions;
    const auto isTurned = [](const Solution& answer) {
        return answer.sum.turned || std::any_of(answer.forces.begin(), answer.forces.end(),
                                                [](const SolvedForce& force) { return force.turned; });
    };
    if (answers.size() < 2)
        return board.solution;
    return isTurned(answers[0]) && !isTurned(answers[1]) ? 1 : 0;
}

/// All of it on the board of one answer, the other told beside it; `chosen` ends it.
void writeBoth(Blackboard& board, Blackboard& ending) {
    writeGiven(board);
    writeCount(board);
    Ambiguous q;
    buildQuestion(board, q.question);
    if (q.triangle().isFlat()) {
        writeAlongOneLine(board);
        ending.worked = std::move(board.worked);
        return;
    }
    assign(q);
    writeSenses(board);
    writeEstimate(board, q);
    const Term angle = writeKnownAngle(board, q);
    writeReach(board, q, angle);
    const Term acute = writeCandidates(board, q, angle);
    writeDecision(board, q, angle, acute);
    std::optional<Answer> chosen, other;
    for (std::size_t i = 0; i < board.solved.solutions.size(); ++i) {
        Answer answer = answerOf(board, q, i);
        settleTriangle(answer);
        writeRest(board, q, answer, angle, acute);
        primeSymbols(answer, q);
        (i == ending.solution ? chosen : other).emplace(std::move(answer));
    }
    if (&board != &ending)
        ending.worked = std::move(board.worked);
    takeCarried(ending, board);
    carryOver(ending, *chosen, q);
    writeAnswer(ending, other ? &other->board : nullptr);
    writeCheck(ending);
    writeRoundingCost(ending);
}

} // namespace

void writeAmbiguous(Blackboard& board) {
    const std::size_t base = baseOf(board);
    if (base == board.solution)
        return writeBoth(board, board);
    Blackboard first(board.sketch, board.solved, board.construction, base, board.options);
    writeBoth(first, board);
}

} // namespace tailpoint::explaining
