// SPDX-License-Identifier: MIT
#include "core/explain/quadrant.h"

#include <algorithm>
#include <array>

namespace tailpoint::explaining {

namespace {

enum class Where : std::uint8_t { positiveX, negativeX, positiveY, negativeY, first, second, third, fourth };
using Row = std::array<Wording, 8>;

constexpr Row kLies{SENTENCE("solution", "{vector} points along the positive x axis."),
                    SENTENCE("solution", "{vector} points along the negative x axis."),
                    SENTENCE("solution", "{vector} points along the positive y axis."),
                    SENTENCE("solution", "{vector} points along the negative y axis."),
                    SENTENCE("solution", "{vector} lies in the first quadrant."),
                    SENTENCE("solution", "{vector} lies in the second quadrant."),
                    SENTENCE("solution", "{vector} lies in the third quadrant."),
                    SENTENCE("solution", "{vector} lies in the fourth quadrant.")};

constexpr Row kBySigns{SENTENCE("solution", "{x} and {y}: {vector} points along the positive x axis."),
                       SENTENCE("solution", "{x} and {y}: {vector} points along the negative x axis."),
                       SENTENCE("solution", "{x} and {y}: {vector} points along the positive y axis."),
                       SENTENCE("solution", "{x} and {y}: {vector} points along the negative y axis."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies in the first quadrant."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies in the second quadrant."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies in the third quadrant."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies in the fourth quadrant.")};

Where whereIs(const Eigen::Vector2d& v) {
    if (v.y() == 0)
        return v.x() > 0 ? Where::positiveX : Where::negativeX;
    if (v.x() == 0)
        return v.y() > 0 ? Where::positiveY : Where::negativeY;
    if (v.y() > 0)
        return v.x() > 0 ? Where::first : Where::second;
    return v.x() > 0 ? Where::fourth : Where::third;
}

const Wording& of(const Row& row, const Eigen::Vector2d& v) {
    return row[static_cast<std::size_t>(whereIs(v))];
}

} // namespace

Prose liesThere(const Board& board, const Vector& vector) {
    return board.say(of(kLies, vector.v), "vector", vector.vector);
}

Prose liesBySigns(const Board& board, const Vector& vector) {
    const Eigen::Vector2d signs = withoutNoise(vector);
    const auto sign = [&](What what, double value) {
        QuantityId component = vector.sizeId;
        component.answer = std::max(vector.sizeId.answer, vector.wayId.answer);
        component.what = what;
        const Relation relation = value < 0   ? Relation::less
                                  : value > 0 ? Relation::greater
                                              : Relation::equal;
        return related(board.symbolOf(component), relation, count(0));
    };
    return board.say(of(kBySigns, signs), "x", sign(What::x, signs.x()), "y", sign(What::y, signs.y()),
                     "vector", vector.vector);
}

} // namespace tailpoint::explaining
