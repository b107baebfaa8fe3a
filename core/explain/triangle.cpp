// SPDX-License-Identifier: MIT
#include "core/explain/triangle.h"

#include <cmath>
#include <utility>

namespace tailpoint::explaining {

double Triangle::opposite(std::size_t i) const {
    const auto [a, b] = Reduction::others(i);
    const Eigen::Vector2d second = r.isOwnAngle(a, b) ? side(b).v : Eigen::Vector2d(-side(b).v);
    return std::abs(signedAngle(side(a).v, second).value_or(0));
}

Order::Order(const Triangle& t) : great(t.r.sought[0]), small(t.r.sought[1]) {
    constexpr double kAlike = 1e-9; // radians
    if (t.opposite(great) < t.opposite(small))
        std::swap(great, small);
    const double known = t.opposite(t.r.knownSide()), more = t.opposite(great) - known,
                 less = t.opposite(small) - known;
    alike = more - less < kAlike;
    if (std::abs(more) < kAlike || std::abs(less) < kAlike)
        place = Place::level;
    else if (more < 0)
        place = Place::below;
    else if (less > 0)
        place = Place::above;
}

Prose namedAngles(const Triangle& t) {
    return t.board.say(SENTENCE("solution", "In the triangle {alpha} lies opposite {first}, {beta} opposite "
                                            "{second}, {gamma} opposite {third}."),
                       "alpha", t.symbol(0), "first", t.side(0).size, "beta", t.symbol(1), "second",
                       t.side(1).size, "gamma", t.symbol(2), "third", t.side(2).size);
}

void nameAngles(Step& step, const Triangle& t) {
    for (std::size_t i = 0; i < 3; ++i)
        step.angles.push_back(named(part(FigurePart::Kind::opposite, t.side(i).index), t.symbol(i)));
}

Prose tailsNamed(const Board& board, const QuantityId& between) {
    return board.say(SENTENCE("solution", "{angle} is the angle between the tails of {first} and {second}."),
                     "angle", board.symbolOf(between), "first", board.at(between.of).vector, "second",
                     board.at(between.with).vector);
}

Prose facingNamed(const Triangle& t) {
    const auto facing = [&](std::size_t i) {
        const auto [a, b] = Reduction::others(i);
        return t.board.symbolOf({What::between, t.r.side[a], t.r.side[b]});
    };
    return t.board.say(
        SENTENCE("solution",
                 "Each angle between two tails is named after the force that it faces: {first} lies "
                 "between {b} and {c}, {second} between {a} and {c}, {third} between {a} and {b}."),
        "first", facing(0), "second", facing(1), "third", facing(2), "a", t.side(0).vector, "b",
        t.side(1).vector, "c", t.side(2).vector);
}

Formula overSine(const Vector& side, Formula angle) {
    return tailpoint::over(side.size, apply("sin", std::move(angle)));
}

} // namespace tailpoint::explaining
