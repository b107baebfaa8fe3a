#include "core/explain/quadrant.h"

#include <array>

namespace tailpoint::explaining {

namespace {

enum class Where : std::uint8_t { positiveX, negativeX, positiveY, negativeY, first, second, third, fourth };
using Row = std::array<Wording, 8>;

constexpr Row kLies{SENTENCE("solution", "{vector} lies on the axis +x."),
                    SENTENCE("solution", "{vector} lies on the axis −x."),
                    SENTENCE("solution", "{vector} lies on the axis +y."),
                    SENTENCE("solution", "{vector} lies on the axis −y."),
                    SENTENCE("solution", "{vector} lies in the first quadrant."),
                    SENTENCE("solution", "{vector} lies in the second quadrant."),
                    SENTENCE("solution", "{vector} lies in the third quadrant."),
                    SENTENCE("solution", "{vector} lies in the fourth quadrant.")};

constexpr Row kBySigns{SENTENCE("solution", "{x} and {y}: {vector} lies on the axis +x."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies on the axis −x."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies on the axis +y."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies on the axis −y."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies in the first quadrant."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies in the second quadrant."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies in the third quadrant."),
                       SENTENCE("solution", "{x} and {y}: {vector} lies in the fourth quadrant.")};

constexpr Row kAgrees{
    SENTENCE("solution", "The same magnitude, and {vector} lies on the axis +x: the direction found agrees."),
    SENTENCE("solution", "The same magnitude, and {vector} lies on the axis −x: the direction found agrees."),
    SENTENCE("solution", "The same magnitude, and {vector} lies on the axis +y: the direction found agrees."),
    SENTENCE("solution", "The same magnitude, and {vector} lies on the axis −y: the direction found agrees."),
    SENTENCE("solution",
             "The same magnitude, and {vector} lies in the first quadrant: the direction found agrees."),
    SENTENCE("solution",
             "The same magnitude, and {vector} lies in the second quadrant: the direction found agrees."),
    SENTENCE("solution",
             "The same magnitude, and {vector} lies in the third quadrant: the direction found agrees."),
    SENTENCE("solution",
             "The same magnitude, and {vector} lies in the fourth quadrant: the direction found agrees.")};

constexpr Row kAgreesRounded{
    SENTENCE("solution",
             "The same magnitude but for the rounding, and {vector} lies on the axis +x, as found."),
    SENTENCE("solution",
             "The same magnitude but for the rounding, and {vector} lies on the axis −x, as found."),
    SENTENCE("solution",
             "The same magnitude but for the rounding, and {vector} lies on the axis +y, as found."),
    SENTENCE("solution",
             "The same magnitude but for the rounding, and {vector} lies on the axis −y, as found."),
    SENTENCE("solution",
             "The same magnitude but for the rounding, and {vector} lies in the first quadrant, as found."),
    SENTENCE("solution",
             "The same magnitude but for the rounding, and {vector} lies in the second quadrant, as found."),
    SENTENCE("solution",
             "The same magnitude but for the rounding, and {vector} lies in the third quadrant, as found."),
    SENTENCE("solution",
             "The same magnitude but for the rounding, and {vector} lies in the fourth quadrant, as found.")};

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

Prose liesBySigns(const Board& board, const Vector& vector, Formula xSign, Formula ySign) {
    return board.say(of(kBySigns, withoutNoise(vector)), "x", std::move(xSign), "y", std::move(ySign),
                     "vector", vector.vector);
}

Prose agreesThere(const Board& board, const Vector& vector, bool same) {
    return board.say(of(same ? kAgrees : kAgreesRounded, vector.v), "vector", vector.vector);
}

} // namespace tailpoint::explaining
