// SPDX-License-Identifier: MIT
#include "core/solve/sweep_bounds.h"

#include "core/solve/question.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>
#include <utility>

namespace tailpoint {
namespace {

/// Nothing is halved below this part of the range, nor oftener than so many times.
constexpr double kThinnest = 0x1p-40;
constexpr int kMostTried = 40'000;
/// A curve that moves by less than this part of all magnitudes, or of a radian, does not move.
constexpr double kStill = 1e-13;
constexpr Interval kTwo{2, 2};

/// What lies in both; they have something in common.
Interval both(Interval a, Interval b) {
    return {std::max(a.low, b.low), std::min(a.high, b.high)};
}

/// Whatever of several does not only move.
template <class Kind>
Kind all(std::initializer_list<Kind> kinds) {
    return std::max(kinds);
}

Interval point(double value) {
    return {value, value};
}

/// A unit vector known to the last bits.
IntervalVec nearly(double x, double y) {
    constexpr double kRoom = 0x1p-51;
    return {{x - kRoom, x + kRoom}, {y - kRoom, y + kRoom}};
}

Interval squareOf(IntervalVec vector) {
    return squared(vector.x) + squared(vector.y);
}
Interval lengthOf(IntervalVec vector) {
    return root(squareOf(vector));
}

double radiansIn(AngleUnit unit) {
    return toRadians(1, unit);
}

} // namespace

SweepBounds::SweepBounds(const Sketch& sketch, const SweepRange& range)
    : m_sketch(sketch), m_asked(asked(sketch)), m_varied(range.varied),
      m_span(std::fabs(range.to - range.from)) {
    m_scale = m_varied.isDirection ? 0 : std::max(range.from, range.to);
    for (int i = kSumIndex; i < static_cast<int>(sketch.forces.size()); ++i) {
        const Force& force = tailpoint::vectorAt(sketch, i);
        m_scale += force.magnitude.value.value_or(0);
        const auto [first, second] = m_asked.unknownVectors;
        if (i != first && i != second && i != m_varied.vector) {
            m_fixed = m_fixed + vectorAt(i, range.from, range.from).value;
        }
    }
}

// To second order about the middle: u = u0 + h left(u0) with |h| up to half the width, and h * h / 2 of room.
SweepBounds::Vector SweepBounds::unitAt(int index, double from, double to) const {
    const bool varies = m_varied == Scalar{index, true};
    Direction direction = tailpoint::vectorAt(m_sketch, index).direction;
    if (varies) {
        direction = Direction{AngleForm{from + (to - from) / 2}, {}};
    }
    const auto unit = unitVector(direction, m_sketch);
    if (!unit) {
        return {};
    }
    const IntervalVec middle = nearly(static_cast<double>(unit->cos), static_cast<double>(unit->sin));
    if (!varies) {
        return {middle, {}};
    }
    const double sense = m_sketch.reference.sense == Sense::cw ? -1 : 1;
    const double rate = radiansIn(m_sketch.angleUnit);
    const double half = (to - from) / 2 * rate * (1 + 0x1p-40), room = half * half / 2;
    const Interval off{-half, half}, square{-room, room};
    const IntervalVec value = middle + off * leftOf(middle) + IntervalVec{square, square};
    return {value, point(sense * rate) * leftOf(value)};
}

SweepBounds::Vector SweepBounds::vectorAt(int index, double from, double to) const {
    const Vector unit = unitAt(index, from, to);
    const bool varies = m_varied == Scalar{index, false};
    const Interval size =
        varies ? Interval{from, to} : point(tailpoint::vectorAt(m_sketch, index).magnitude.value.value_or(0));
    const double sign = index == kSumIndex ? -1 : 1;
    Vector made{point(sign) * (size * unit.value), point(sign) * (size * unit.slope)};
    if (varies) {
        made.slope = made.slope + point(sign) * unit.value;
    }
    return made;
}

// A varied vector's own share of the products is known: turned, it is square to its slope; stretched, in
// line.
SweepBounds::Rest SweepBounds::restAt(double from, double to) const {
    Rest rest;
    rest.value = -m_fixed;
    const auto [first, second] = m_asked.unknownVectors;
    if (m_varied.vector == first || m_varied.vector == second) {
        return rest;
    }
    const Vector varied = vectorAt(m_varied.vector, from, to);
    const IntervalVec fixed = rest.value;
    rest.value = fixed - varied.value;
    rest.slope = -varied.slope;
    rest.along = dot(fixed, rest.slope);
    rest.across = cross(fixed, rest.slope);
    if (m_varied.isDirection) {
        const double size = tailpoint::vectorAt(m_sketch, m_varied.vector).magnitude.value.value_or(0);
        const double sense = m_sketch.reference.sense == Sense::cw ? -1 : 1;
        rest.across = rest.across + squared(point(size)) * point(sense * radiansIn(m_sketch.angleUnit));
    } else {
        rest.along = rest.along + Interval{from, to};
    }
    return rest;
}

SweepBounds::Side SweepBounds::sideAt(int index, double from, double to) const {
    const Force& force = tailpoint::vectorAt(m_sketch, index);
    Side side;
    side.isLine = !isGiven(force.magnitude);
    side.unit = unitAt(index, from, to);
    if (index == kSumIndex) {
        side.unit = {-side.unit.value, -side.unit.slope};
    }
    const bool varies = m_varied == Scalar{index, false};
    side.radius = varies ? Interval{from, to} : point(force.magnitude.value.value_or(0));
    side.radiusSlope = point(varies ? 1 : 0);
    return side;
}

SweepBounds::Kind SweepBounds::slopeKind(Interval slope, double width, double scale) const {
    if (slope.farthest() * width <= kStill * scale) {
        return Kind::still;
    }
    return slope.has(0) ? Kind::turns : Kind::moves;
}

SweepBounds::Kind SweepBounds::marginKind(Interval margin) const {
    if (!margin.has(0)) {
        return Kind::moves;
    }
    return margin.farthest() <= kStill * m_scale ? Kind::still : Kind::turns;
}

SweepBounds::Kind SweepBounds::alone(const Rest& rest, double width) const {
    const Interval square = squareOf(rest.value);
    if (square.low <= 0) {
        return Kind::turns;
    }
    return all(
        {slopeKind(rest.along / root(square), width, m_scale), slopeKind(rest.across / square, width, 1)});
}

// Where a magnitude is zero, and where the larger of the two is the other one, says what is above the line of
// a fraction; it has no pole, and by its value in the middle and its slope what is level stays level.
SweepBounds::Kind SweepBounds::lines(const Place& whole, const Place& middle, double width) const {
    const Vector &a = whole.first.unit, &b = whole.second.unit;
    const Rest& rest = whole.rest;
    const Interval crossing = cross(a.value, b.value);
    if (crossing.has(0)) {
        return Kind::turns;
    }
    Kind worst = Kind::moves;
    const Interval half{-width / 2, width / 2};
    const auto look = [&](Interval one, Interval two) { // of one times a and two times b
        const IntervalVec value = one * a.value + two * b.value, slope = one * a.slope + two * b.slope;
        const IntervalVec at = one * middle.first.unit.value + two * middle.second.unit.value;
        const Interval change = cross(rest.slope, value) + cross(rest.value, slope);
        worst =
            all({worst,
                 marginKind(both(cross(rest.value, value), cross(middle.rest.value, at) + half * change))});
    };
    look(point(0), point(1));
    look(point(1), point(0));
    look(point(1), point(1));
    look(point(-1), point(1));
    const Interval one = cross(rest.value, b.value) / crossing, two = cross(a.value, rest.value) / crossing;
    const IntervalVec change = rest.slope - one * a.slope - two * b.slope;
    return all({worst, slopeKind(cross(change, b.value) / crossing, width, m_scale),
                slopeKind(cross(a.value, change) / crossing, width, m_scale)});
}

SweepBounds::Kind SweepBounds::circle(const Side& line, const Side& circle, const Rest& rest,
                                      double width) const {
    const IntervalVec a = line.unit.value;
    const Interval along = dot(rest.value, a), off = cross(rest.value, a);
    const Interval reach = squared(circle.radius) - squared(off);
    if (reach.high < 0) {
        return Kind::moves; // no answer
    }
    if (reach.low <= 0 || circle.radius.low <= 0) {
        return Kind::turns;
    }
    Kind worst = Kind::moves;
    for (const double sign : {-1.0, 1.0}) {
        const Interval size = along + point(sign) * root(reach);
        const IntervalVec other = rest.value - size * a;
        const Interval crossing = dot(a, other);
        if (size.has(0) || crossing.has(0)) {
            return Kind::turns;
        }
        const IntervalVec change =
            rest.slope - size * line.unit.slope - (circle.radiusSlope / circle.radius) * other;
        worst = all({worst, slopeKind(dot(change, other) / crossing, width, m_scale),
                     slopeKind(cross(a, change) / crossing, width, 1)});
    }
    return worst;
}

SweepBounds::Kind SweepBounds::circles(const Place& whole, double width) const {
    const auto& [first, second, rest] = whole;
    const Interval square = squareOf(rest.value);
    const Interval far = squared(first.radius + second.radius) - square,
                   near = square - squared(first.radius - second.radius);
    if (far.high < 0 || near.high < 0) {
        return Kind::moves; // no answer
    }
    if (far.low <= 0 || near.low <= 0 || square.low <= 0 || first.radius.low <= 0 || second.radius.low <= 0) {
        return Kind::turns;
    }
    const Interval along = (square + squared(first.radius) - squared(second.radius)) / (kTwo * square);
    Kind worst = Kind::moves;
    for (const double sign : {-1.0, 1.0}) {
        const Interval off = point(sign) * root(far * near) / (kTwo * square);
        const IntervalVec one = along * rest.value + off * leftOf(rest.value), two = rest.value - one;
        const Interval crossing = cross(one, two);
        if (crossing.has(0)) {
            return Kind::turns;
        }
        const IntervalVec change = rest.slope - (first.radiusSlope / first.radius) * one -
                                   (second.radiusSlope / second.radius) * two;
        worst = all({worst, slopeKind(dot(change, two) / crossing, width, 1),
                     slopeKind(dot(change, one) / crossing, width, 1)});
    }
    return worst;
}

// The smallest: the foot on a line, or all that is left where the line's force would have to push.
SweepBounds::Kind SweepBounds::foot(const Side& line, const Rest& rest, double width) const {
    const IntervalVec a = line.unit.value;
    const Interval along = dot(rest.value, a), off = cross(rest.value, a);
    if (along.has(0) || off.has(0)) {
        return Kind::turns;
    }
    return all({slopeKind(dot(rest.slope, a) + dot(rest.value, line.unit.slope), width, m_scale),
                slopeKind(cross(rest.slope, a) + cross(rest.value, line.unit.slope), width, m_scale),
                alone(rest, width)});
}

// One unknown for two equations: what is left over of them, which has an answer where it is next to nothing:
// across the line, or the length that the rest has beyond the circle. By its value in the middle and its
// slope what is level stays level.
SweepBounds::Kind SweepBounds::oneUnknown(const Place& whole, const Place& middle, double width) const {
    const Interval half{-width / 2, width / 2};
    const Vector& unit = whole.first.unit;
    const Rest& rest = whole.rest;
    if (whole.first.isLine) {
        const Interval change = cross(rest.slope, unit.value) + cross(rest.value, unit.slope);
        const Interval left = cross(middle.rest.value, middle.first.unit.value) + half * change;
        return all({marginKind(both(cross(rest.value, unit.value), left)), slopeKind(change, width, m_scale),
                    slopeKind(dot(rest.slope, unit.value) + dot(rest.value, unit.slope), width, m_scale)});
    }
    const Interval length = lengthOf(rest.value);
    if (length.low <= 0) {
        return Kind::turns;
    }
    const Interval change = rest.along / length - whole.first.radiusSlope;
    const Interval left = lengthOf(middle.rest.value) - middle.first.radius + half * change;
    return all({marginKind(both(length - whole.first.radius, left)), slopeKind(change, width, m_scale),
                slopeKind(rest.across / squared(length), width, 1)});
}

SweepBounds::Place SweepBounds::placeAt(double from, double to) const {
    const auto [first, second] = m_asked.unknownVectors;
    return {sideAt(first, from, to), second == kNoVector ? Side{} : sideAt(second, from, to),
            restAt(from, to)};
}

SweepBounds::Kind SweepBounds::kindOf(double from, double to) const {
    const double width = to - from, middle = from + width / 2;
    const Place place = placeAt(from, to);
    switch (m_asked.family) {
    case Family::closePolygon:
        return alone(place.rest, width);
    case Family::twoMagnitudes:
        return lines(place, placeAt(middle, middle), width);
    case Family::magnitudeAndDirection:
        return place.first.isLine ? circle(place.first, place.second, place.rest, width)
                                  : circle(place.second, place.first, place.rest, width);
    case Family::twoDirections:
        return circles(place, width);
    case Family::smallestForce:
    case Family::smallestSum:
        return foot(isGiven(tailpoint::vectorAt(m_sketch, m_asked.unknownVectors[0]).direction)
                        ? place.first
                        : place.second,
                    place.rest, width);
    case Family::oneUnknown:
        return oneUnknown(place, placeAt(middle, middle), width);
    default:
        return Kind::moves;
    }
}

// An answer of one unknown may exist at a single place, to the last bits of what is typed: to neighbouring
// doubles where what is left over changes its sign.
std::pair<double, double> SweepBounds::closedIn(double from, double to) const {
    if (m_asked.family != Family::oneUnknown) {
        return {from, to};
    }
    const auto isLeft = [&](double at) {
        const Place place = placeAt(at, at);
        const Interval over = place.first.isLine ? cross(place.rest.value, place.first.unit.value)
                                                 : lengthOf(place.rest.value) - place.first.radius;
        return over.low + over.high > 0;
    };
    const bool before = isLeft(from);
    while (before != isLeft(to)) {
        const double middle = from + (to - from) / 2;
        if (middle == from || middle == to) {
            break;
        }
        (isLeft(middle) == before ? from : to) = middle;
    }
    return {from, to};
}

SweepBounds::Turns SweepBounds::turns(const std::vector<double>& at) const {
    Turns turns;
    std::vector<double>& places = turns.places;
    if (m_asked.unknownVectors[0] == kNoVector) {
        return turns;
    }
    using Stretch = std::pair<double, double>;
    std::vector<Stretch> open, halves;
    for (std::size_t i = 1; i < at.size(); ++i) {
        if (kindOf(at[i - 1], at[i]) == Kind::turns) {
            open.emplace_back(at[i - 1], at[i]);
        }
    }
    for (int tried = 0; !open.empty(); std::swap(open, halves)) { // level by level
        halves.clear();
        for (const auto& [from, to] : open) {
            const double middle = from + (to - from) / 2;
            if (++tried > kMostTried) {
                turns.isAll = false;
                return turns;
            }
            if (to - from <= kThinnest * m_span || middle == from || middle == to) {
                const auto [before, behind] = closedIn(from, to);
                places.insert(places.end(), {before, behind});
                continue;
            }
            for (const Stretch& half : {Stretch(from, middle), Stretch(middle, to)}) {
                const Kind kind = kindOf(half.first, half.second);
                if (kind == Kind::turns) {
                    halves.push_back(half);
                } else if (kind == Kind::still) {
                    places.insert(places.end(), {half.first, half.second});
                }
            }
        }
    }
    return turns;
}

} // namespace tailpoint
