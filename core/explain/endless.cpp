// SPDX-License-Identifier: MIT
// Infinitely many answers: what they have in common, and one of them put into the equation.
#include "core/explain/families.h"
#include "core/explain/trial.h"

#include <array>
#include <cmath>

namespace tailpoint::explaining {

namespace {

constexpr QuantityId kLack{What::gap, kNobody, {}, 0, kDifference};

/// All on one line, positive in the sense of u: U = K − V, or U = V ± K.
struct OneLine : Triangle {
    explicit OneLine(const Board& theBoard) : Triangle(theBoard), k(r.knownSide()) {
        const Eigen::Vector2d axis = sought(0).v;
        for (std::size_t i = 0; i < 3; ++i)
            sense[i] = side(i).v.dot(axis) < 0 ? -1 : 1;
        const std::size_t u = r.sought[0], v = r.sought[1];
        ofOther = -r.sign(u) * r.sign(v) * sense[v];
        ofKnown = side(k).magnitude == 0 ? 0 : -r.sign(u) * r.sign(k) * sense[k];
    }
    std::size_t k;
    std::array<int, 3> sense{1, 1, 1};
    int ofOther = 1, ofKnown = 0; ///< U = ofOther·V + ofKnown·K

    Formula along(std::size_t i, bool inNumbers) const {
        const Formula size = inNumbers && i == k ? side(i).sizeNumber : side(i).size;
        return sense[i] < 0 ? negative(size) : size;
    }
    Formula balance(bool inNumbers) const {
        std::vector<Formula> forces;
        for (std::size_t i = 0; i < (r.loop ? 3U : 2U); ++i)
            if (i != k || ofKnown != 0)
                forces.push_back(along(i, inNumbers));
        const bool isZero = r.loop || (k == 2 && ofKnown == 0);
        return equal(sumOf(std::move(forces)), isZero ? count(0) : along(2, inNumbers));
    }
    /// U by V.
    Formula first(bool inNumbers) const {
        std::vector<Formula> terms;
        const Formula size = inNumbers ? side(k).sizeNumber : side(k).size, &other = sought(1).size;
        const Formula known = ofKnown < 0 ? negative(size) : size, by = ofOther < 0 ? negative(other) : other;
        if (ofKnown > 0)
            terms = {known, by};
        else if (ofKnown < 0)
            terms = {by, known};
        else
            terms = {by};
        return equal(sought(0).size, sumOf(std::move(terms)));
    }
    bool isShared() const { return ofOther < 0; }
};

Prose range(const Board& board, const OneLine& t) {
    const Formula &u = t.sought(0).size, &v = t.sought(1).size, &known = t.side(t.k).sizeNumber;
    if (t.isShared())
        return board.say(SENTENCE("solution",
                                  "Every {v} from {none} to {known}, with that {u}, is an answer: "
                                  "infinitely many."),
                         "v", v, "none", board.force(0), "known", known, "u", u);
    if (t.ofKnown < 0)
        return board.say(SENTENCE("solution", "Every {v} of at least {known}, with that {u}, is an answer: "
                                              "infinitely many."),
                         "v", v, "known", known, "u", u);
    return board.say(SENTENCE("solution", "Every {v}, with that {u}, is an answer: infinitely many."), "v", v,
                     "u", u);
}

void noteOneOfMany(const Board& board, Step& step, const OneLine& t) {
    const Formula &u = t.sought(0).size, &v = t.sought(1).size;
    const double known = t.side(t.k).sizeNumber.value;
    if (known == 0)
        return;
    if (t.isShared()) {
        step.notes.push_back(board.say(SENTENCE("solution", "{halves} is one answer, not the answer."),
                                       "halves", equal(u, v, board.bound(known / 2))));
        step.notes.push_back(
            board.say(SENTENCE("solution",
                               "{hypotenuse} holds for forces at right angles: {each} each would make {both} "
                               "here."),
                      "hypotenuse", equal(root(sum(power(u, 2), power(v, 2))), t.side(t.k).size), "each",
                      board.force(known / std::sqrt(2.0)), "both", board.force(known * std::sqrt(2.0))));
        return;
    }
    const bool isFirst = t.ofKnown > 0;
    step.notes.push_back(board.say(SENTENCE("solution", "{one} with {other} is one answer, not the answer."),
                                   "one", equal(isFirst ? u : v, t.side(t.k).sizeNumber), "other",
                                   equal(isFirst ? v : u, board.force(0))));
    step.notes.push_back(board.say(
        SENTENCE("solution", "The two act against each other: shared out as {half} each they would leave "
                             "{known} unbalanced."),
        "half", board.bound(known / 2), "known", t.side(t.k).sizeNumber));
}

void writeOneLine(Board& board) {
    const OneLine t(board);
    const Vector &u = t.sought(0), &v = t.sought(1), &known = t.side(t.k);
    Step& step = board.step(StepKey::estimate, SENTENCE("solution", "Draw it to scale: one line"),
                            Stage::construction);
    for (const std::size_t i : t.r.sought)
        step.parts.push_back(part(FigurePart::Kind::locus, t.side(i).index));
    step.reasoning.push_back(
        t.ofKnown == 0
            ? board.say(SENTENCE("solution",
                                 "{u} and {v} act along one line, and nothing else acts: drawn to "
                                 "scale, any length of the one closes with the other."),
                        "u", u.vector, "v", v.vector)
            : board.say(SENTENCE("solution", "{u}, {v} and {known} act along one line: drawn to scale, the "
                                             "parallels through the ends of {known} are one line, and any "
                                             "point of it will do."),
                        "u", u.vector, "v", v.vector, "known", known.vector));
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Across the line both sides of the equation are zero; along it one equation is "
                             "left for two unknowns:")));
    step.workings.push_back({{}, t.balance(false), {}, {}});
    if (t.ofKnown != 0)
        step.workings.push_back({{}, t.balance(true), {}, {}});
    step.workings.push_back({{}, t.first(false), {}, {}});
    if (t.ofKnown != 0)
        step.workings.push_back({{}, t.first(true), {}, {}});
    step.conclusion.push_back(range(board, t));
    noteOneOfMany(board, step, t);
}

/// Two forces hold each other; or a force is the whole sum.
struct OneCircle {
    explicit OneCircle(const Board& board) {
        for (const int index : board.solved.unknownVectors)
            (first == nullptr ? first : second) = &board.at(vectorId(index));
        isOpposed = first->id != kSumVector && second->id != kSumVector;
    }
    const Vector *first = nullptr, *second = nullptr;
    bool isOpposed = true;
};

void writeOneCircle(Board& board) {
    const OneCircle two(board);
    const Vector &u = *two.first, &v = *two.second;
    Step& step = board.step(StepKey::estimate, SENTENCE("solution", "Draw it to scale: one circle"),
                            Stage::construction);
    step.parts = {part(FigurePart::Kind::locus, u.index), part(FigurePart::Kind::locus, v.index)};
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Nothing but {u} and {v} acts, so the circles of their possible tips "
                             "have one centre; and their radii are equal, for {lack}, their difference, is "
                             "zero:"),
        "u", u.vector, "v", v.vector, "lack", board.symbolOf(kLack)));
    const double off = std::abs(u.sizeNumber.value - v.sizeNumber.value);
    step.workings.push_back({board.symbolOf(kLack), sum(u.size, negative(v.size)),
                             sum(u.sizeNumber, negative(v.sizeNumber)), board.bound(off)});
    step.conclusion.push_back(
        two.isOpposed
            ? board.say(SENTENCE("solution", "Whatever the direction of {u}, {v} balances it in the "
                                             "opposite one: infinitely many answers."),
                        "u", u.vector, "v", v.vector)
            : board.say(SENTENCE("solution",
                                 "Whatever the direction of {u}, {v} has the same: infinitely many "
                                 "answers."),
                        "u", u.vector, "v", v.vector));
    const double size = u.sizeNumber.value;
    step.notes.push_back(board.say(
        two.isOpposed ? SENTENCE("solution", "In one common direction they would make {both}, not zero.")
                      : SENTENCE("solution", "In opposite directions they would differ by {both}."),
        "both", board.force(2 * size)));
}

} // namespace

void writeEndless(Board& board) {
    if (board.solved.family == Family::twoMagnitudes && board.reduction) {
        writeKnown(board);
        writeOneLine(board);
    } else if (board.solved.family == Family::twoDirections) {
        writeOneCircle(board);
    }
}

namespace {

Step& checkStep(Board& board) {
    return board.step(StepKey::check, SENTENCE("solution", "Check with one of them"), Stage::construction,
                      Law::components);
}

void tryOnLine(Board& board) {
    const OneLine t(board);
    const Vector &u = t.sought(0), &v = t.sought(1), &known = t.side(t.k);
    const double size = known.sizeNumber.value;
    if (t.ofKnown == 0)
        return;
    const double other = t.isShared()    ? size / 2
                         : t.ofKnown > 0 ? size
                                         : 2 * size,
                 one = t.ofOther * other + t.ofKnown * size;
    const Formula first = board.bound(one), second = board.bound(other);
    Step& step = checkStep(board);
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Put {v} and with it {u} into the equation, by components."), "v",
                  equal(v.size, second), "u", equal(u.size, first)));
    const Formula left = writeTrial(board, step,
                                    {{known.sizeNumber, known.wayNumber, t.r.sign(t.k)},
                                     {first, u.wayNumber, t.r.sign(t.r.sought[0])},
                                     {second, v.wayNumber, t.r.sign(t.r.sought[1])}});
    step.conclusion.push_back(
        t.isShared()
            ? board.say(SENTENCE("solution", "{left} is left over: this is one of the answers found above, "
                                             "{v} from {none} to {most}."),
                        "left", left, "v", v.size, "none", board.force(0), "most", known.sizeNumber)
            : board.say(SENTENCE("solution", "{left} is left over: this is one of the answers found above."),
                        "left", left));
}

void tryOnCircle(Board& board) {
    const OneCircle two(board);
    const double turn = board.half() / 6;
    const Formula first = board.angle(turn),
                  second = two.isOpposed ? board.angle(turn - board.half()) : first;
    Step& step = checkStep(board);
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Put {u} and {v} into the equation, by components."), "u",
                  equal(two.first->theta, first), "v", equal(two.second->theta, second)));
    const Formula left = writeTrial(
        board, step,
        {{two.first->sizeNumber, first, 1}, {two.second->sizeNumber, second, two.isOpposed ? 1 : -1}});
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "{left} is left over: this is one answer of infinitely many."), "left", left));
    step.notes.push_back(board.say(
        SENTENCE("solution", "Turned round and mirrored are not the same: at {one} and {other}, mirrored in "
                             "the axis, they would leave {left}."),
        "one", board.angle(board.half() / 6), "other", board.angle(-board.half() / 6), "left",
        board.force(2 * two.first->sizeNumber.value * (two.isOpposed ? std::cos(0.5235987755982988) : 0.5))));
}

} // namespace

void tryOneOfMany(Board& board) {
    if (!board.hasStep(StepKey::estimate))
        return;
    if (board.solved.family == Family::twoMagnitudes)
        tryOnLine(board);
    else
        tryOnCircle(board);
}

} // namespace tailpoint::explaining
