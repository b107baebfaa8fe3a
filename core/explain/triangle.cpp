#include "core/explain/triangle.h"
#include "core/construct/reduction.h"
#include "core/explain/families.h"

#include <cmath>
#include <numbers>

namespace tailpoint::explaining {

namespace {

constexpr double kFlat = 1e-12;  ///< sine of an angle below which a triangle has no height
constexpr double kRight = 1e-12; ///< cosine of an angle that counts as right

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
    const auto reduction = reductionOf(board.sketch, board.solved);
    const bool several = reduction && reduction->addsUp();
    if (!reduction || reduction->sought.empty() || (reduction->sought.size() == 1 && several))
        return false;
    if (several)
        question.made = addKnown(board, *reduction);
    question.triangle.loop = reduction->loop;
    for (std::size_t i = 0; i < 3; ++i) {
        const VectorId side = reduction->side[i];
        question.triangle.side[i] = side == kKnownVector ? &*question.made : &board.at(indexOf(side));
    }
    question.known = reduction->knownSide();
    question.sought.assign(reduction->sought.begin(), reduction->sought.end());
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
