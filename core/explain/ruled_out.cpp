// SPDX-License-Identifier: MIT
// A magnitude and a direction: the point of line and circle that is lost to a given sense, with the numbers
// that would hold there.
#include "core/explain/ambiguous.h"
#include "core/explain/quadrant.h"
#include "core/explain/trial.h"

#include "core/solve/solve.h"

#include <algorithm>
#include <cmath>
#include <memory>

namespace tailpoint::explaining {

namespace {

/// The same question with the sense left open: there the root that is lost is one of two answers.
class Opened {
public:
    explicit Opened(const Board& board) : m_sketch(board.sketch) {
        const Solution& lost = board.solved.reversed.front();
        for (std::size_t i = 0; i < lost.forces.size(); ++i)
            m_sketch.forces[i].lineOfActionOnly |= lost.forces[i].turned;
        m_sketch.sum.lineOfActionOnly |= lost.sum.turned;
        m_solved = solve(m_sketch);
        const auto& found = m_solved.solutions;
        const auto same = std::find_if(found.begin(), found.end(), [&](const Solution& solution) {
            return solution.sum.vector == lost.sum.vector &&
                   std::equal(
                       solution.forces.begin(), solution.forces.end(), lost.forces.begin(),
                       [](const SolvedForce& a, const SolvedForce& b) { return a.vector == b.vector; });
        });
        if (found.size() != 2 || same == found.end())
            return;
        const auto index = static_cast<std::size_t>(same - found.begin());
        m_construction = construct(m_sketch, m_solved, index);
        m_board = std::make_unique<Board>(m_sketch, m_solved, m_construction, index, board.options);
        m_board->follow(board.way);
        m_board->settle();
        printAs(board);
    }
    /// Null where the freer question has no such answer.
    const Board* board() const { return m_board.get(); }
    /// Its lines, printed with as many figures as the board's own. Precondition: there is a board.
    const Carried& lines() const { return *m_lines; }

private:
    void printAs(const Board& board) {
        m_lines.emplace(m_sketch, m_board->things,
                        board.options.handRounding ? Rounding::hand : Rounding::guarded);
        m_lines->scale = board.carried.scale;
        m_lines->take(groundOf(m_sketch, m_solved, m_board->things));
        m_lines->take(chainOf(m_sketch, m_solved, m_board->things, {board.way, kNobody}));
        for (const QuantityId& id : m_lines->quantities())
            if (const Decimal& printed = board.carried.decimal(id);
                m_lines->find(id) == nullptr && !printed.text.empty())
                m_lines->give(id, printed);
        m_lines->settleAt(board.carried.guard());
    }

    Sketch m_sketch;
    Solved m_solved;
    Construction m_construction;
    std::unique_ptr<Board> m_board;
    std::optional<Carried> m_lines;
};

void copyLine(const Opened& from, Step& step, const QuantityId& line) {
    if (from.lines().find(line) != nullptr)
        step.workings.push_back(from.lines().working(line));
}

/// The triangle there, from the angles that are known: what the direction of the vector on the circle
/// would be.
void writeTriangleThere(const Board& board, Step& step, const Ambiguous& q) {
    const Opened opened(board);
    if (opened.board() == nullptr)
        return;
    const Board& there = *opened.board();
    const auto answer = static_cast<std::uint8_t>(there.solution + 1);
    const Vector &u = there.found(q.r.side[q.u]), &v = there.found(q.r.side[q.v]);
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "What would hold there is written with primes: {u} points the other way, {known} is the "
                 "supplement of {before}, and {acute}, acute and with the same sine, equals {decided}. "
                 "The angle sum gives {third}, and with it the direction of {v}."),
        "u", u.vector, "known", there.symbolOf(q.in(answer, q.v)), "before", q.symbol(q.v), "acute",
        there.symbolOf(q.in(answer, q.k)), "decided", q.symbol(q.k), "third",
        there.symbolOf(q.in(answer, q.u)), "v", v.vector));
    copyLine(opened, step, u.wayId);
    copyLine(opened, step, q.in(answer, q.v));
    step.workings.push_back(
        {there.symbolOf(q.in(answer, q.k)), q.symbol(q.k), {}, board.number(q.angle(q.k))});
    copyLine(opened, step, q.in(answer, q.u));
    copyLine(opened, step, v.wayId);
}

constexpr QuantityId kChord{What::distance, {}, {}, 0, 1};

} // namespace

bool isOneLost(const Board& board) {
    return board.isAnswered() && board.solved.family == Family::magnitudeAndDirection &&
           !board.hasTwoAnswers() && !board.solved.tangent && !board.solved.reversed.empty();
}

std::vector<std::pair<QuantityId, Working>> linesToOtherPoint(const Board& board, const Ambiguous& q) {
    const Vector &k = q.side(q.k), &v = q.side(q.v);
    const QuantityId foot{What::along, k.id}, other{What::along, q.side(q.u).id}, across{What::distance};
    std::vector<std::pair<QuantityId, Working>> lines;
    const auto line = [&](const QuantityId& subject, Formula general, Formula numbers) {
        Working made = worked(board, board.symbolOf(subject), std::move(numbers));
        made.general = std::move(general);
        lines.emplace_back(subject, std::move(made));
        return *lines.back().second.value;
    };
    const Formula first = line(foot, product(k.size, apply("cos", q.symbol(q.v))),
                               product(k.sizeNumber, apply("cos", board.number(q.angle(q.v)))));
    const Formula half = line(kChord, root(sum(power(v.size, 2), negative(power(board.symbolOf(across), 2)))),
                              root(sum(power(v.sizeNumber, 2), negative(power(board.number(across), 2)))));
    line(other, sum(board.symbolOf(foot), negative(board.symbolOf(kChord))), sum(first, negative(half)));
    return lines;
}

void writeOtherPoint(Board& board, const Ambiguous& q) {
    if (!isOneLost(board))
        return;
    const Vector &k = q.side(q.k), &u = q.side(q.u), &v = q.side(q.v);
    const QuantityId foot{What::along, k.id}, other{What::along, u.id};
    const bool isTaken = -q.r.sign(q.k) * q.r.sign(q.u) < 0;
    Step& step = board.step(StepKey::quadratic, SENTENCE("solution", "The other point of line and circle"),
                            Stage::found);
    step.parts = {part(FigurePart::Kind::locus, u.index), part(FigurePart::Kind::locus, v.index)};
    step.reasoning.push_back(board.say(
        isTaken
            ? SENTENCE("solution",
                       "Let {foot} be the component of {known} along the line of {u}, the axis {axis}, but "
                       "positive against the sense of {u}: it leads to the foot of the distance "
                       "{distance}. From there the circle reaches {chord} to either side, by Pythagoras' "
                       "theorem; the point that is left gives {other}, the component of {u} there along "
                       "its own line, positive in its given sense.")
            : SENTENCE("solution",
                       "Let {foot} be the component of {known} along the line of {u}, the axis {axis}: it "
                       "leads to the foot of the distance {distance}. From there the circle reaches "
                       "{chord} to either side, by Pythagoras' theorem; the point that is left gives "
                       "{other}, the component of {u} there along the same axis."),
        "foot", board.symbolOf(foot), "known", k.vector, "u", u.vector, "axis", symbol("u"), "distance",
        board.symbolOf({What::distance}), "chord", board.symbolOf(kChord), "other", board.symbolOf(other)));
    for (auto& [id, line] : linesToOtherPoint(board, q))
        step.workings.push_back(std::move(line));
    const Formula last = *step.workings.back().value;
    writeTriangleThere(board, step, q);
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "{other} is negative: there {u} would have to act against its given sense. So this "
                 "is no answer."),
        "other", equal(board.symbolOf(other), last), "u", u.vector));
}

void writeOtherRoot(Board& board) {
    if (!isOneLost(board))
        return;
    const Ambiguous q(board);
    const Opened opened(board);
    if (opened.board() == nullptr)
        return;
    const Board& there = *opened.board();
    const Vector &u = there.found(q.r.side[q.u]), &v = there.found(q.r.side[q.v]);
    const auto answer = static_cast<std::uint8_t>(there.solution + 1);
    const QuantityId along{What::along, u.id, {}, answer};
    QuantityId fromX = v.wayId, acute = v.wayId;
    fromX.what = What::fromX;
    acute.what = What::acute;
    Step& step = board.step(StepKey::quadratic, SENTENCE("solution", "The root that is ruled out"),
                            Stage::found, Law::components);
    step.parts = {part(FigurePart::Kind::locus, u.index), part(FigurePart::Kind::locus, v.index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "What would hold with the other root is written with primes; {along} is the component "
                 "of {u} along its own line, the axis {axis}, positive in the given sense."),
        "along", there.symbolOf(along), "u", u.vector, "axis", symbol("u")));
    step.reasoning.push_back(board.say(SENTENCE("solution", "As the components below will show, {told}"),
                                       "told", liesBySigns(there, v)));
    if (opened.lines().find(acute) != nullptr)
        step.reasoning.push_back(
            board.say(SENTENCE("solution", "{acute} is the acute angle from the x axis."), "acute",
                      there.symbolOf(acute)));
    if (!isPlainReference(board.sketch))
        introduceFromX(board, step);
    for (const QuantityId& id : {along, u.sizeId, u.wayId, QuantityId{What::x, v.id, {}, answer},
                                 QuantityId{What::y, v.id, {}, answer}, acute, fromX, v.wayId})
        copyLine(opened, step, id);
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "{along} is negative: there {u} would have to act against its given sense. So "
                             "this is no answer."),
        "along", there.symbolOf(along), "u", u.vector));
}

namespace {

const SolvedForce& in(const Solution& solution, VectorId vector) {
    return vector == kSumVector ? solution.sum : solution.forces[vector.index];
}

/// The direction `from` turned by `by`, or by what that leaves of a half turn, to whichever side leads to
/// `target`; within half a turn.
std::optional<Working> turnedTo(const Board& board, const Vector& from, const Formula& by,
                                const Formula& numbers, double target) {
    const Formula half = board.halfTurn(), full = board.fullTurn();
    const auto turned = [&](const Formula& angle, const Formula& turn, bool isBack, int sign, int round) {
        Formula way = isBack ? sum(half, negative(turn)) : turn;
        std::vector<Formula> terms{angle, sign < 0 ? negative(std::move(way)) : std::move(way)};
        if (round != 0)
            terms.push_back(round < 0 ? negative(full) : full);
        return sumOf(std::move(terms));
    };
    for (const bool isBack : {false, true})
        for (const int sign : {1, -1})
            for (const int round : {0, 1, -1}) {
                const Formula inNumbers = turned(from.wayNumber, numbers, isBack, sign, round);
                const auto value = evaluate(inNumbers, board.sketch.angleUnit);
                if (!value || std::abs(static_cast<double>(*value) - target) > board.half() / 1000)
                    continue;
                return Working{{},
                               turned(from.theta, by, isBack, sign, round),
                               inNumbers,
                               board.carried.carried(*value, Dimension::angle)};
            }
    return std::nullopt;
}

} // namespace

void tellWaysBehind(const Board& board, Step& step, const Vector& line, const Vector& circle) {
    const QuantityId across{What::distance}, chord{What::distance, {}, {}, 0, 1};
    const auto quotient = [](Formula a, Formula b) {
        return apply("arctan", over(std::move(a), std::move(b)));
    };
    const Formula by = quotient(board.symbolOf(across), board.symbolOf(chord)),
                  numbers = quotient(board.number(across), board.number(chord));
    std::vector<Working> ways;
    for (const std::uint8_t answer : {std::uint8_t{1}, std::uint8_t{2}}) {
        const double size = std::abs(board.number({What::along, line.id, {}, answer}).value);
        const auto& lost = board.solved.reversed;
        const auto there =
            std::min_element(lost.begin(), lost.end(), [&](const Solution& a, const Solution& b) {
                return std::abs(in(a, line.id).magnitude - size) < std::abs(in(b, line.id).magnitude - size);
            });
        if (there == lost.end() || !in(*there, circle.id).direction)
            return;
        auto way = turnedTo(board, line, by, numbers, *in(*there, circle.id).direction);
        if (!way)
            return;
        way->subject = board.symbolOf({What::direction, circle.id, {}, answer});
        ways.push_back(std::move(*way));
    }
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "At either point {v} makes the angle {angle} with the line of {u}, which "
                             "gives its direction there."),
        "v", circle.vector, "angle", by, "u", line.vector));
    for (Working& way : ways)
        step.workings.push_back(std::move(way));
}

} // namespace tailpoint::explaining
