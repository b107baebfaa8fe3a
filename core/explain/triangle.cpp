#include "core/explain/triangle.h"
#include "core/explain/families.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

constexpr double kFlat = 1e-12;  ///< sine of an angle below which a triangle has no height
constexpr double kRight = 1e-12; ///< cosine of an angle that counts as right

bool isKnown(const Arrow& arrow) {
    return arrow.sizeGiven && arrow.directionGiven;
}

std::vector<const Arrow*> knownForces(const Blackboard& board) {
    std::vector<const Arrow*> known;
    for (const Arrow& arrow : board.forces)
        if (isKnown(arrow))
            known.push_back(&arrow);
    return known;
}

std::vector<const Arrow*> unknownVectors(const Blackboard& board) {
    std::vector<const Arrow*> unknown;
    for (int index : board.solved.unknownVectors)
        if (index != kNoVector)
            unknown.push_back(&board.at(index));
    return unknown;
}

bool sumIs(const Blackboard& board, const Arrow* arrow) {
    return arrow == &board.sum;
}

/// Two vectors with unknowns, one or no known vector beside them, or many that become K.
void buildTwo(Blackboard& board, Question& q, const Arrow& u, const Arrow& v) {
    const bool sumSought = sumIs(board, &u) || sumIs(board, &v);
    const auto known = knownForces(board);
    const bool rest = isEquilibrium(board.sketch);
    const Arrow* k = known.empty() ? nullptr : known.front();
    if (sumSought) {
        const Arrow& force = sumIs(board, &u) ? v : u;
        if (known.size() != 1)
            k = &q.made.emplace(addKnown(board, false));
        q.triangle = {{k, &force, &board.sum}, false};
        q.known = 0;
        return;
    }
    q.known = 2;
    if (rest) {
        if (known.size() != 1)
            k = &q.made.emplace(addKnown(board, false));
        q.triangle = {{&u, &v, k}, true};
        return;
    }
    if (!known.empty())
        k = &q.made.emplace(addKnown(board, true));
    else
        k = &board.sum;
    q.triangle = {{&u, &v, k}, false};
}

/// One vector wholly unknown beside two known ones.
bool buildOne(Blackboard& board, Question& q, const Arrow& unknown) {
    const auto known = knownForces(board);
    const bool rest = isEquilibrium(board.sketch);
    if (sumIs(board, &unknown)) {
        if (known.size() != 2)
            return false;
        q.triangle = {{known[0], known[1], &board.sum}, false};
    } else if (rest) {
        if (known.size() != 2)
            return false;
        q.triangle = {{known[0], known[1], &unknown}, true};
    } else {
        if (known.size() != 1)
            return false;
        q.triangle = {{known[0], &unknown, &board.sum}, false};
    }
    return true;
}

} // namespace

std::array<std::size_t, 2> Triangle::others(std::size_t i) {
    return {i == 0 ? 1U : 0U, i == 2 ? 1U : 2U};
}

double Triangle::opposite(std::size_t i) const {
    const auto [a, b] = others(i);
    const Eigen::Vector2d second = isOwnAngle(a, b) ? side[b]->v : Eigen::Vector2d(-side[b]->v);
    return std::abs(signedAngle(side[a]->v, second).value_or(0));
}

std::size_t Triangle::indexOf(const Arrow& arrow) const {
    return side[0] == &arrow ? 0 : side[1] == &arrow ? 1 : 2;
}

bool Triangle::isFlat() const {
    for (std::size_t i = 0; i < 3; ++i)
        if (side[i]->magnitude == 0 || std::sin(opposite(i)) < kFlat)
            return true;
    return false;
}

bool Triangle::isRight() const {
    for (std::size_t i = 0; i < 3; ++i)
        if (std::abs(std::cos(opposite(i))) < kRight)
            return true;
    return false;
}

bool buildQuestion(Blackboard& board, Question& question) {
    const auto unknown = unknownVectors(board);
    if (unknown.size() == 2)
        buildTwo(board, question, *unknown[0], *unknown[1]);
    else if (unknown.size() != 1 || !buildOne(board, question, *unknown[0]))
        return false;
    for (const Arrow* arrow : unknown)
        question.sought.push_back(question.triangle.indexOf(*arrow));
    return true;
}

const Formula& angleSymbol(const Blackboard& board, std::size_t i) {
    return i == 0 ? board.alpha : i == 1 ? board.beta : board.gamma;
}

Term writeAngleFromDirections(Blackboard& board, Step& step, const Triangle& triangle, std::size_t i) {
    const auto [a, b] = Triangle::others(i);
    const Formula& symbol = angleSymbol(board, i);
    if (triangle.isOwnAngle(a, b))
        return writeTails(board, step, *triangle.side[a], *triangle.side[b], symbol);
    return writeExterior(board, step, *triangle.side[a], *triangle.side[b], symbol);
}

Turn writeSideDirection(Blackboard& board, Step& step, const Triangle& triangle, std::size_t target,
                        const Formula& theta, std::size_t base, const Term& oppositeThird) {
    Term angle = oppositeThird;
    if (!triangle.isOwnAngle(target, base)) {
        const double supplement = board.half() - board.valueOf(angle.number);
        angle.symbol = sum(board.halfTurn(), negative(oppositeThird.symbol));
        angle.number = sum(board.halfTurn(), negative(oppositeThird.number));
        angle.number.value = supplement;
    }
    const Arrow& from = *triangle.side[base];
    return writeTurn(board, step, theta, {from.theta, from.directionNumber}, angle,
                     triangle.side[target]->direction.value_or(0));
}

Prose namedAngles(const Blackboard& board, const Triangle& triangle) {
    return say("In the triangle {} lies opposite to {}, {} opposite to {}, {} opposite to {}.", board.alpha,
               triangle.side[0]->size, board.beta, triangle.side[1]->size, board.gamma,
               triangle.side[2]->size);
}

void nameAngles(Step& step, const Blackboard& board, const Triangle& triangle, const std::string& prime) {
    for (std::size_t i = 0; i < 3; ++i) {
        step.angles.push_back(
            named(part(FigurePart::Kind::opposite, triangle.side[i]->index), angleSymbol(board, i)));
        step.angles.back().letter += prime;
    }
}

} // namespace tailpoint::explaining
