// Two directions of known magnitudes: three sides, so the law of cosines, the greatest angle first.
#include "core/explain/families.h"
#include "core/explain/triangle.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

namespace tailpoint::explaining {

namespace {

struct Sides {
    Question question;
    std::array<std::size_t, 3> bySize{0, 1, 2}; ///< greatest side first
    std::array<Term, 3> angles;
    const Triangle& triangle() const { return question.triangle; }
    const Arrow& at(std::size_t i) const { return *question.triangle.side[i]; }
    const Arrow& known() const { return at(question.known); }
};

void writeEstimate(Blackboard& board, const Sides& q) {
    Step& step = board.step("estimate", "Does the triangle close?", Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, q.at(q.question.sought[0]).index),
                  part(FigurePart::Kind::locus, q.at(q.question.sought[1]).index)};
    const Arrow &a = q.at(q.bySize[0]), &b = q.at(q.bySize[1]), &c = q.at(q.bySize[2]);
    step.reasoning.push_back(
        say("Three sides close a triangle if the greatest is shorter than the other two together:"));
    step.workings.push_back({{},
                             related(a.size, Relation::less, sum(b.size, c.size)),
                             {},
                             related(a.sizeNumber, Relation::less, board.force(b.magnitude + c.magnitude))});
    step.conclusion.push_back(
        say("Circles about the two ends of {}, with the two magnitudes as radii, meet in the "
            "missing corner: on one side of {}, and mirrored on the other.",
            q.known().vector, q.known().vector));
}

void writeGreatest(Blackboard& board, Sides& q) {
    const std::size_t i = q.bySize[0];
    const auto [a, b] = Triangle::others(i);
    Step& step =
        board.step("cosines", "Law of cosines for the greatest angle", Stage::triangle, Law::cosines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, q.at(i).index)};
    step.reasoning.push_back(namedAngles(board, q.triangle()));
    nameAngles(step, board, q.triangle());
    step.reasoning.push_back(
        say("Three sides and no angle: only the law of cosines can start. Take the greatest angle "
            "first, {}, opposite to {}; if any angle is obtuse it is this one, and the cosine "
            "tells so by its sign.",
            angleSymbol(board, i), q.at(i).size));
    q.angles[i] = writeCosinesForAngle(board, step, angleSymbol(board, i), sizeOf(q.at(a)), sizeOf(q.at(b)),
                                       sizeOf(q.at(i)), q.triangle().opposite(i));
}

void writeSecond(Blackboard& board, Sides& q) {
    const std::size_t i = q.bySize[1], greatest = q.bySize[0];
    Step& step = board.step("sines", "Law of sines for the second angle", Stage::triangle, Law::sines);
    step.triangleAlone = true;
    step.parts = {part(FigurePart::Kind::opposite, q.at(i).index)};
    step.reasoning.push_back(
        say("Now {} and {} are a whole pair, and the law of sines is quicker. The two angles left "
            "are acute, so the inverse sine's other value can't be meant.",
            q.at(greatest).size, q.angles[greatest].symbol));
    q.angles[i] = writeSinesForAngle(board, step, angleSymbol(board, i), sizeOf(q.at(i)),
                                     sizeOf(q.at(greatest)), q.angles[greatest], q.triangle().opposite(i));
    const std::size_t last = q.bySize[2];
    q.angles[last] = writeThird(board, step, angleSymbol(board, last), q.angles[greatest], q.angles[i],
                                q.triangle().opposite(last));
    remarkOnRounding(board, step, Quantity::angle);
    step.notes.push_back(
        say("Started with a smaller angle, the inverse sine could hide an obtuse one. That is why the "
            "greatest angle comes first."));
}

/// A direction sought, turned from the known vector; the triangle of solution `index`, mirrored or not.
void writeWay(Blackboard& board, Step& step, const Sides& q, std::size_t target, const char* prime,
              Blackboard& answer, const Triangle& mirrored) {
    Arrow& arrow = answer.at(q.at(target).index);
    Formula theta = arrow.theta;
    theta.text += prime;
    const std::size_t third = 3 - target - q.question.known;
    const Turn turn =
        writeSideDirection(board, step, mirrored, target, theta, q.question.known, q.angles[third]);
    remarkOnRounding(board, step, Quantity::angle);
    arrow.directionNumber = turn.number;
    arrow.theta = theta;
}

Triangle triangleIn(const Blackboard& board, const Sides& q) {
    Triangle triangle = q.triangle();
    for (const Arrow*& side : triangle.side)
        if (side->index != kNoVector)
            side = &board.at(side->index);
    return triangle;
}

/// From here on the board speaks of the answer chosen, in its own symbols.
void carryOver(Blackboard& board, const Blackboard& answer, const Sides& q) {
    for (std::size_t target : q.question.sought) {
        Arrow& arrow = board.at(q.at(target).index);
        arrow.directionNumber = answer.at(arrow.index).directionNumber;
        arrow.theta = answer.at(arrow.index).theta;
    }
}

/// Returns the answer's own board, with what was found in its symbols.
Blackboard writeWays(Blackboard& board, const Sides& q, std::size_t index) {
    const bool both = board.solved.solutions.size() > 1;
    Blackboard answer(board.sketch, board.solved, board.construction, index, board.options);
    const Triangle mirrored = triangleIn(answer, q);
    const char* prime = !both ? "" : index == 0 ? "′" : "″";
    Step& step = board.step(!both        ? "directions"
                            : index == 0 ? "first"
                                         : "second",
                            !both        ? "The directions from the axis"
                            : index == 0 ? "First answer: the directions from the axis"
                                         : "Second answer: the triangle mirrored",
                            Stage::all);
    step.reasoning.push_back(
        index == 0 ? say("Start from {}, whose direction is known, and turn by the angle between "
                         "the tails: an angle of the triangle where both tails meet, its "
                         "supplement where a tip meets a tail.",
                         q.known().vector)
                   : say("Mirrored in the line of {} the sides stay the same: every turn is taken "
                         "the other way.",
                         q.known().vector));
    for (std::size_t target : q.question.sought) {
        step.parts.push_back(part(FigurePart::Kind::direction, q.at(target).index));
        writeWay(board, step, q, target, prime, answer, mirrored);
    }
    return answer;
}

} // namespace

void writeSides(Blackboard& board) {
    writeGiven(board);
    writeCount(board);
    Sides q;
    buildQuestion(board, q.question);
    if (q.triangle().isFlat())
        return writeAlongOneLine(board);
    std::sort(q.bySize.begin(), q.bySize.end(),
              [&](std::size_t a, std::size_t b) { return q.at(a).magnitude > q.at(b).magnitude; });
    writeEstimate(board, q);
    writeGreatest(board, q);
    writeSecond(board, q);
    std::optional<Blackboard> chosen, other;
    for (std::size_t i = 0; i < board.solved.solutions.size(); ++i)
        (i == board.solution ? chosen : other).emplace(writeWays(board, q, i));
    carryOver(board, *chosen, q);
    writeAnswer(board, other ? &*other : nullptr);
    writeCheck(board);
    writeRoundingCost(board);
}

} // namespace tailpoint::explaining
