// SPDX-License-Identifier: MIT
// The vector equation once more, naively but in many digits: what the core's answers are measured against.
// Real is a Boost.Multiprecision number of 33 or more digits. Nothing here calls into core/.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include <boost/math/constants/constants.hpp>

namespace tailpoint::oracle {

template <class Real>
struct Vec {
    Real x = 0, y = 0;
};
template <class Real>
Vec<Real> operator+(const Vec<Real>& a, const Vec<Real>& b) {
    return {a.x + b.x, a.y + b.y};
}
template <class Real>
Vec<Real> operator-(const Vec<Real>& a, const Vec<Real>& b) {
    return {a.x - b.x, a.y - b.y};
}
template <class Real>
Vec<Real> operator*(const Real& s, const Vec<Real>& v) {
    return {s * v.x, s * v.y};
}
template <class Real>
Real dot(const Vec<Real>& a, const Vec<Real>& b) {
    return a.x * b.x + a.y * b.y;
}
template <class Real>
Real cross(const Vec<Real>& a, const Vec<Real>& b) {
    return a.x * b.y - a.y * b.x;
}
template <class Real>
Real length(const Vec<Real>& v) {
    return sqrt(v.x * v.x + v.y * v.y);
}
template <class Real>
Vec<Real> leftOf(const Vec<Real>& v) {
    return {-v.y, v.x};
}

/// Unit vector at `degrees`, exactly zero in a component at multiples of 90.
template <class Real>
Vec<Real> unitAt(const Real& degrees) {
    const Real quarters = floor(degrees / 90);
    const Real rest = degrees - 90 * quarters;
    Vec<Real> unit{Real(1), Real(0)};
    if (rest != 0) {
        const Real radians = rest * boost::math::constants::pi<Real>() / 180;
        unit = {cos(radians), sin(radians)};
    }
    const int turns = static_cast<int>(quarters) % 4;
    for (int i = (turns + 4) % 4; i > 0; --i) {
        unit = leftOf(unit);
    }
    return unit;
}

template <class Real>
Real degreesOf(const Vec<Real>& v) {
    return atan2(v.y, v.x) * 180 / boost::math::constants::pi<Real>();
}

/// One answer: both vectors with their signed magnitudes along given directions (positive otherwise).
template <class Real>
struct Answer {
    Vec<Real> first, second;
    Real firstMagnitude = 0, secondMagnitude = 0;
};

/// a u + b v = t.
template <class Real>
Answer<Real> lines(const Vec<Real>& u, const Vec<Real>& v, const Vec<Real>& t) {
    const Real det = cross(u, v);
    const Real a = cross(t, v) / det;
    const Real b = cross(u, t) / det;
    return {a * u, b * v, a, b};
}

/// a u + V = t with |V| = r, both roots, the one farther along u first. Precondition: the line reaches the
/// circle.
template <class Real>
std::array<Answer<Real>, 2> lineAndCircle(const Vec<Real>& u, const Real& r, const Vec<Real>& t) {
    const Real along = dot(u, t);
    const Real across = cross(u, t);
    const Real half = sqrt(r * r - across * across);
    std::array<Answer<Real>, 2> answers;
    for (int i = 0; i < 2; ++i) {
        const Real a = i == 0 ? Real(along + half) : Real(along - half);
        answers[static_cast<std::size_t>(i)] = {a * u, t - a * u, a, r};
    }
    return answers;
}

/// V + W = t with |V| = r, |W| = q, the root with V counter-clockwise of t first. Precondition: a proper
/// triangle.
template <class Real>
std::array<Answer<Real>, 2> circles(const Real& r, const Real& q, const Vec<Real>& t) {
    const Real size = length(t);
    const Real along = (size * size + r * r - q * q) / (2 * size);
    const Real across = sqrt(r * r - along * along);
    const Vec<Real> unit = Real(1 / size) * t;
    std::array<Answer<Real>, 2> answers;
    for (int i = 0; i < 2; ++i) {
        const Real side = i == 0 ? across : Real(-across);
        const Vec<Real> first = along * unit + side * leftOf(unit);
        answers[static_cast<std::size_t>(i)] = {first, t - first, r, q};
    }
    return answers;
}

} // namespace tailpoint::oracle
