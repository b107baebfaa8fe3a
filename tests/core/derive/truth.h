// SPDX-License-Identifier: MIT
// What a quantity of a chain must be, from the solver's vectors alone: no line of the chain is used.
#pragma once

#include "core/derive/chain.h"

#include <cmath>
#include <numbers>

namespace tailpoint::testing {

class Truth {
public:
    Truth(const Sketch& sketch, const Solved& solved, std::size_t base)
        : m_sketch(sketch), m_solved(solved), m_reduction(reductionOf(sketch, solved)), m_base(base) {}

    double turn() const { return turnIn(m_sketch.angleUnit); }
    double scale() const {
        double scale = answer(m_base).sum.magnitude;
        for (const SolvedForce& force : answer(m_base).forces)
            scale += force.magnitude;
        return scale;
    }
    const std::optional<Reduction>& reduction() const { return m_reduction; }

    /// No side of the triangle vanishes in any answer: a vector without length has no angles to compare with.
    bool isWhole() const {
        for (std::size_t a = 0; m_reduction && a < m_solved.solutions.size(); ++a)
            for (const VectorId side : m_reduction->side)
                if (length(side, a) == 0)
                    return false;
        return true;
    }
    /// The narrowest angle of the triangle over all answers, radians; without a triangle how short the vector
    /// sought is beside all magnitudes.
    double narrowest() const {
        double least = std::numbers::pi;
        for (std::size_t i = 0; i < m_solved.solutions.size(); ++i)
            least = std::min(least, m_reduction ? narrowestOf(i) : shortness(i));
        return least;
    }
    /// How near to a right angle an angle comes that an inverse sine may have to give, radians.
    double steepest() const {
        double nearest = std::numbers::pi;
        if (m_solved.family == Family::twoMagnitudes || m_sketch.smallest)
            return nearest; // no inverse sine
        for (std::size_t a = 0; m_reduction && a < m_solved.solutions.size(); ++a)
            for (std::size_t i = 0; i < 3; ++i)
                nearest = std::min(nearest, std::abs(opposite(i, a) - std::numbers::pi / 2));
        return nearest;
    }

    double valueOf(const QuantityId& q, const Chain& chain) const {
        const std::size_t a = q.answer == 0 ? m_base : q.answer - 1U;
        const Eigen::Vector2d v = q.of == kNobody ? Eigen::Vector2d(0, 0) : vector(q.of, a);
        switch (q.what) {
        case What::magnitude:
            return length(q.of, a);
        case What::square:
            return std::pow(q.of == kNobody ? distance(q, a) : length(q.of, a), 2);
        case What::direction:
            return direction(q, a);
        case What::fromX: {
            const double sense = m_sketch.reference.sense == Sense::ccw ? 1 : -1;
            return m_sketch.reference.axisDegrees / 360 * turn() + sense * direction(q, a);
        }
        case What::x:
            return v.x();
        case What::y:
            return v.y();
        case What::between:
            return inUnit(angle(v, vector(q.with, a)));
        case What::opposite:
            return inUnit(oppositeOf(q.of, q.part, a));
        case What::acute: {
            const double whole = oppositeOf(q.of, 0, a);
            return inUnit(q.part == kOfInverseSine ? std::min(whole, std::numbers::pi - whole)
                                                   : std::atan2(std::abs(v.y()), std::abs(v.x())));
        }
        case What::ratio: {
            const double whole = q.part == kTangent ? 0 : oppositeOf(q.of, pairOf(q), a);
            return q.part == kTangent  ? std::abs(v.y()) / std::abs(v.x())
                   : q.part == kCosine ? std::cos(whole)
                                       : std::sin(whole);
        }
        case What::distance:
            return distance(q, a);
        case What::term: {
            const Eigen::Vector2d unit = drawn(q.of, a);
            return q.part == kCosine ? unit.x() : unit.y();
        }
        case What::along:
            return along(q, chain, a);
        case What::gap:
        case What::none:
            break;
        }
        return 0;
    }

private:
    const Solution& answer(std::size_t a) const { return m_solved.solutions[a]; }
    const SolvedForce& solvedForce(VectorId v, std::size_t a) const {
        return v == kSumVector ? answer(a).sum : answer(a).forces[v.index];
    }
    const Force& given(VectorId v) const { return v == kSumVector ? m_sketch.sum : m_sketch.forces[v.index]; }
    static double angle(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
        return std::abs(signedAngle(a, b).value_or(0));
    }
    double inUnit(double radians) const { return fromRadians(radians, m_sketch.angleUnit); }
    static std::uint8_t pairOf(const QuantityId& q) {
        return q.with.kind == VectorId::Kind::partial ? static_cast<std::uint8_t>(q.with.index)
                                                      : std::uint8_t{0};
    }

    Eigen::Vector2d vector(VectorId v, std::size_t a) const {
        Eigen::Vector2d total(0, 0);
        if (v.kind == VectorId::Kind::force || v == kSumVector)
            return solvedForce(v, a).vector;
        if (v.kind == VectorId::Kind::partial) {
            for (std::size_t i = 0; i <= v.index; ++i)
                total += answer(a).forces[i].vector;
            return total;
        }
        const bool fromSum = m_reduction && !m_reduction->loop && m_reduction->side[2] == kKnownVector;
        for (std::size_t i = 0; i < m_sketch.forces.size(); ++i)
            if (!isToFind(m_sketch.forces[i]))
                total += answer(a).forces[i].vector;
        return fromSum ? Eigen::Vector2d(answer(a).sum.vector - total) : total;
    }
    double length(VectorId v, std::size_t a) const {
        const bool own = v.kind == VectorId::Kind::force || v == kSumVector;
        return own ? solvedForce(v, a).magnitude : vector(v, a).norm();
    }
    double direction(const QuantityId& q, std::size_t a) const {
        if (q.of.kind != VectorId::Kind::force && q.of != kSumVector) {
            const Eigen::Vector2d v = vector(q.of, a);
            return referredDirection(static_cast<long double>(v.x()), static_cast<long double>(v.y()),
                                     m_sketch)
                .value_or(0);
        }
        if (q.part == 0 && isGiven(given(q.of).direction))
            return referredDirection(given(q.of).direction, m_sketch).value_or(0);
        return solvedForce(q.of, a).direction.value_or(0);
    }
    /// Unit vector of a line of action in the sense in which it is given.
    Eigen::Vector2d drawn(VectorId v, std::size_t) const {
        const auto unit = unitVector(given(v).direction, m_sketch);
        return {static_cast<double>(unit->cos), static_cast<double>(unit->sin)};
    }

    double opposite(std::size_t i, std::size_t a) const {
        const auto [one, two] = Reduction::others(i);
        const Eigen::Vector2d second = vector(m_reduction->side[two], a);
        return angle(vector(m_reduction->side[one], a),
                     m_reduction->isOwnAngle(one, two) ? second : Eigen::Vector2d(-second));
    }
    double oppositeOf(VectorId of, std::uint8_t pair, std::size_t a) const {
        if (pair == 0)
            return m_reduction ? opposite(m_reduction->indexOf(of), a) : 0;
        const VectorId next = forceVector(pair),
                       before = pair == 1 ? forceVector(0) : partialVector(pair - 1U);
        const bool last = pair + 1U == m_sketch.forces.size();
        const VectorId made = last ? kSumVector : partialVector(pair);
        if (of == made)
            return angle(vector(before, a), -vector(next, a));
        return angle(vector(of == before ? next : before, a), vector(made, a));
    }

    double narrowestOf(std::size_t a) const {
        double least = std::numbers::pi;
        for (std::size_t i = 0; i < 3; ++i)
            least = std::min(least, std::min(opposite(i, a), std::numbers::pi - opposite(i, a)));
        return least;
    }
    double shortness(std::size_t a) const {
        const VectorId sought = vectorId(m_solved.unknownVectors[0]);
        return length(sought, a) / scale();
    }

    VectorId onLine() const {
        for (const int index : m_solved.unknownVectors)
            if (const VectorId v = vectorId(index); isGiven(given(v).direction))
                return v;
        return kNobody;
    }
    VectorId known() const { return m_reduction->side[m_reduction->knownSide()]; }
    int leaves(VectorId from, VectorId to) const {
        return -m_reduction->sign(m_reduction->indexOf(from)) * m_reduction->sign(m_reduction->indexOf(to));
    }
    double distance(const QuantityId& q, std::size_t a) const {
        const Eigen::Vector2d k = vector(known(), a);
        if (m_solved.family == Family::twoDirections) {
            const Eigen::Vector2d u = vector(vectorId(m_solved.unknownVectors[0]), a);
            return std::abs(k.x() * u.y() - k.y() * u.x()) / k.norm();
        }
        const Eigen::Vector2d e = drawn(onLine(), a);
        const double across = e.x() * k.y() - e.y() * k.x();
        if (q.part == 0)
            return std::abs(across);
        const VectorId round = vectorId(m_solved.unknownVectors[0]) == onLine()
                                   ? vectorId(m_solved.unknownVectors[1])
                                   : vectorId(m_solved.unknownVectors[0]);
        return std::abs(vector(round, a).dot(e));
    }
    double along(const QuantityId& q, const Chain& chain, std::size_t a) const {
        if (chain.route.way == Route::Way::triangle) { // along one line, positive in the sense of the greater
            const Eigen::Vector2d p = vector(forceVector(0), a), other = vector(forceVector(1), a);
            return vector(q.of, a).dot((p.norm() >= other.norm() ? p : other).normalized());
        }
        if (m_solved.family == Family::twoDirections) {
            const VectorId u = vectorId(m_solved.unknownVectors[0]);
            return leaves(known(), u) * vector(u, a).dot(vector(known(), a)) / length(known(), a);
        }
        if (q.of == known())
            return leaves(known(), onLine()) * vector(q.of, a).dot(drawn(onLine(), a));
        return vector(q.of, a).dot(drawn(q.of, a));
    }

    const Sketch& m_sketch;
    const Solved& m_solved;
    std::optional<Reduction> m_reduction;
    std::size_t m_base;
};

} // namespace tailpoint::testing
