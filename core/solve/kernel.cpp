// SPDX-License-Identifier: MIT
#include "core/solve/kernel.h"

#include <Eigen/LU>
#include <algorithm>
#include <optional>

namespace tailpoint::kernel {
namespace {

// A length within the band is zero.
long double settled(long double magnitude, long double band) {
    return std::fabs(magnitude) <= band ? 0.0L : magnitude;
}

Roots withoutRoots(Outcome outcome) {
    return {outcome, 0, {}, 0};
}

bool isZero(Vec v) {
    return v.x == 0 && v.y == 0;
}

Roots onParallelLines(const Line& first, const Line& second, const Target& target) {
    if (std::fabs(cross(first.unit, target.vector)) > kTangentBand * target.scale) {
        return withoutRoots(Outcome::apart);
    }
    const bool sameSense = dot(first.unit, second.unit) > 0;
    if (!first.ray || !second.ray || !sameSense) {
        return withoutRoots(Outcome::endless);
    }
    if (isZero(target.vector)) {
        return {Outcome::one, 1, {Root{{first.unit, 0}, {second.unit, 0}}, Root{}}, 0};
    }
    return withoutRoots(dot(first.unit, target.vector) > 0 ? Outcome::endless : Outcome::against);
}

// A target that lies on one of the lines, within the band, leaves nothing for the other: no sense is decided
// by rounding noise.
std::optional<Root> alongOneLine(const Line& first, const Line& second, const Target& target) {
    const long double band = kTangentBand * target.scale;
    const long double offFirst = std::fabs(cross(first.unit, target.vector));
    const long double offSecond = std::fabs(cross(second.unit, target.vector));
    if (std::fmin(offFirst, offSecond) > band) {
        return std::nullopt;
    }
    if (offFirst <= offSecond) {
        return Root{{first.unit, dot(first.unit, target.vector)}, {second.unit, 0}};
    }
    return Root{{first.unit, 0}, {second.unit, dot(second.unit, target.vector)}};
}

Roots touching(const Line& line, const Circle& circle, long double along, long double across,
               const Target& target) {
    const Vec left = leftOf(line.unit);
    const Found onLine{line.unit, settled(along, kTangentBand * target.scale)};
    const Found onCircle{across < 0 ? -left : left, circle.magnitude};
    return {Outcome::tangent, 1, {Root{onLine, onCircle}, Root{}}, 0};
}

// The root of smaller size by the product of both, so that nothing cancels. Near tangency `half` carries the
// error of a small difference; there only both roots from the same `half` close the polygon.
long double smallerRoot(long double along, long double half, long double r, long double size) {
    constexpr long double kNearTangency = 0x1p-8L;
    if (half < kNearTangency * r) {
        return along >= 0 ? along - half : along + half;
    }
    return (size - r) * ((size + r) / (along >= 0 ? along + half : along - half));
}

Roots swapped(Roots roots) {
    for (Root& root : roots.root) {
        std::swap(root.first, root.second);
    }
    return roots;
}

// Three sides with the sums "other two minus this one", formed from sorted sides so that nothing cancels
// twice.
struct Triangle {
    std::array<long double, 3> side, excess;
    long double perimeter = 0;
    std::size_t longest = 0;
};

Triangle triangleOf(long double first, long double second, long double third) {
    Triangle t{{first, second, third}, {}, 0, 0};
    std::array<std::size_t, 3> order{0, 1, 2};
    std::sort(order.begin(), order.end(),
              [&](std::size_t i, std::size_t j) { return t.side[i] > t.side[j]; });
    const long double a = t.side[order[0]];
    const long double b = t.side[order[1]];
    const long double c = t.side[order[2]];
    t.excess[order[0]] = c - (a - b);
    t.excess[order[1]] = c + (a - b);
    t.excess[order[2]] = a + (b - c);
    t.perimeter = a + (b + c);
    t.longest = order[0];
    return t;
}

// Cosine and sine of the angle opposite to `side`, from the tangent of its half: tan^2 = below / above.
CosSin angleOpposite(const Triangle& t, std::size_t side) {
    const long double below = t.excess[(side + 1) % 3] * t.excess[(side + 2) % 3];
    const long double above = t.perimeter * t.excess[side];
    const long double whole = above + below;
    return {(above - below) / whole, 2 * std::sqrt(above * below) / whole};
}

Roots inLine(const Triangle& t, Vec unit) {
    const Vec first = t.longest == 1 ? -unit : unit;
    const Vec second = t.longest == 0 ? -unit : unit;
    return {Outcome::tangent, 1, {Root{{first, t.side[0]}, {second, t.side[1]}}, Root{}}, 0};
}

} // namespace

Found close(const Target& target) {
    const long double size = length(target.vector);
    return size == 0 ? Found{{1, 0}, 0} : Found{(1 / size) * target.vector, size};
}

Roots meet(const Line& first, const Line& second, const Target& target) {
    const long double sine = std::fabs(cross(first.unit, second.unit));
    if (sine <= kParallelBand) {
        return onParallelLines(first, second, target);
    }
    Eigen::Matrix<long double, 2, 2> lines;
    lines << first.unit.x, second.unit.x, first.unit.y, second.unit.y;
    const Eigen::Matrix<long double, 2, 1> right{target.vector.x, target.vector.y};
    const Eigen::Matrix<long double, 2, 1> magnitudes = lines.fullPivLu().solve(right);
    const Root root = alongOneLine(first, second, target)
                          .value_or(Root{{first.unit, magnitudes[0]}, {second.unit, magnitudes[1]}});
    return {Outcome::one, 1, {root, Root{}}, sine};
}

Roots meet(const Line& first, const Circle& second, const Target& target) {
    const long double r = second.magnitude;
    const long double along = dot(first.unit, target.vector);
    const long double across = cross(first.unit, target.vector);
    const long double spare = r - std::fabs(across);
    if (spare < -kTangentBand * target.scale) {
        return withoutRoots(Outcome::apart);
    }
    if (spare <= kTangentBand * target.scale) {
        return touching(first, second, along, across, target);
    }
    const long double half = std::sqrt(spare * (r + std::fabs(across)));
    const long double size = length(target.vector);
    const long double large = along >= 0 ? along + half : along - half;
    const long double small = smallerRoot(along, half, r, size);
    const Vec left = (across / r) * leftOf(first.unit);
    const Vec forward = (half / r) * first.unit;
    Root far{{first.unit, along >= 0 ? large : small}, {left - forward, r}};
    Root near{{first.unit, along >= 0 ? small : large}, {left + forward, r}};
    if (std::fabs(size - r) <= kTangentBand * target.scale) {
        // The circle goes through the line's tail: nothing is left along the line.
        (along >= 0 ? near : far) = Root{{first.unit, 0}, {(1 / size) * target.vector, r}};
    }
    return {Outcome::two, 2, {far, near}, half / r};
}

Roots meet(const Circle& first, const Line& second, const Target& target) {
    return swapped(meet(second, first, target));
}

Roots meet(const Circle& first, const Circle& second, const Target& target) {
    const long double size = length(target.vector);
    const long double band = kTangentBand * target.scale;
    if (size == 0) {
        return withoutRoots(std::fabs(first.magnitude - second.magnitude) <= band ? Outcome::endless
                                                                                  : Outcome::apart);
    }
    const Triangle t = triangleOf(first.magnitude, second.magnitude, size);
    const Vec unit = (1 / size) * target.vector;
    if (t.excess[t.longest] < -band) {
        return withoutRoots(Outcome::apart);
    }
    if (t.excess[t.longest] <= band) {
        return inLine(t, unit);
    }
    const CosSin atTail = angleOpposite(t, 1);
    const CosSin atTip = angleOpposite(t, 0);
    const Vec left = leftOf(unit);
    const Vec firstLeft = atTail.sin * left;
    const Vec secondLeft = atTip.sin * left;
    const Vec firstAlong = atTail.cos * unit;
    const Vec secondAlong = atTip.cos * unit;
    const Root over{{firstAlong + firstLeft, first.magnitude}, {secondAlong - secondLeft, second.magnitude}};
    const Root under{{firstAlong - firstLeft, first.magnitude}, {secondAlong + secondLeft, second.magnitude}};
    return {Outcome::two, 2, {over, under}, angleOpposite(t, 2).sin};
}

Root nearest(const Line& first, const Target& target) {
    const long double band = kTangentBand * target.scale;
    const long double along = settled(dot(first.unit, target.vector), band);
    const long double across = settled(cross(first.unit, target.vector), band);
    const Vec left = leftOf(first.unit);
    return {{first.unit, along}, {across < 0 ? -left : left, std::fabs(across)}};
}

} // namespace tailpoint::kernel
