// SPDX-License-Identifier: MIT
#include "core/figure/pointable_angles.h"

#include "core/construct/reduction.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {
namespace {

using Vector = Eigen::Vector2d;

constexpr std::size_t kMostRays = 4; ///< without a triangle: of more the arcs would hide the figure
constexpr double kLeastAngle = 1e-6; ///< radians

struct PointedRay {
    VectorId vector;
    Vector unit{1, 0};
    std::optional<Vector> tip; ///< where it has one
};

const Force& pointedForce(const Sketch& sketch, VectorId vector) {
    return vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
}

std::vector<PointedRay> raysOf(const Sketch& sketch, const std::map<VectorId, Vector>& drawn) {
    std::vector<PointedRay> rays;
    const auto add = [&](VectorId vector) {
        const Force& force = pointedForce(sketch, vector);
        if (const auto own = drawn.find(vector); own != drawn.end() && own->second.norm() > 0) {
            rays.push_back({vector, own->second.normalized(), own->second});
        } else if (const auto unit = unitVector(force.direction, sketch)) {
            const Vector along(static_cast<double>(unit->cos), static_cast<double>(unit->sin));
            const auto& size = force.magnitude.value;
            rays.push_back({vector, along, size ? std::optional<Vector>(*size * along) : std::nullopt});
        }
    };
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        add(forceVector(i));
    add(kSumVector);
    return rays;
}

double sweepBetween(const Vector& a, const Vector& b) {
    return std::atan2(a.x() * b.y() - a.y() * b.x(), a.dot(b));
}

class Pointable {
public:
    explicit Pointable(const Sketch& sketch) : m_sketch(sketch), m_sides(sidesOf(sketch)) {}

    void addDirection(const PointedRay& ray) {
        const auto referred = referredDirection(ray.unit.x(), ray.unit.y(), m_sketch);
        if (!referred)
            return;
        const double axis = m_sketch.reference.axisDegrees * std::numbers::pi / 180;
        const double turn = *referred * 2 * std::numbers::pi / turnIn(m_sketch.angleUnit);
        add({directionId(ray.vector),
             ray.vector,
             kNobody,
             kNobody,
             Vector(0, 0),
             {std::cos(axis), std::sin(axis)},
             m_sketch.reference.sense == Sense::ccw ? turn : -turn,
             *referred});
    }

    void addPair(const PointedRay& a, const PointedRay& b) {
        const std::size_t i = m_sides ? m_sides->indexOf(a.vector) : 3,
                          j = m_sides ? m_sides->indexOf(b.vector) : 3;
        if (m_sides && (i == 3 || j == 3))
            return;
        const bool isOwn = m_sides && !m_sides->loop && (i == 2 || j == 2);
        const QuantityId opposite = m_sides ? oppositeId(m_sides->side[3 - i - j]) : QuantityId{};
        addBetween(isOwn ? opposite : betweenId(a.vector, b.vector), a.vector, b.vector, kNobody, {0, 0},
                   a.unit, b.unit);
        if (!m_sides || isOwn)
            return;
        if (a.tip)
            addBetween(opposite, a.vector, b.vector, a.vector, *a.tip, -a.unit, b.unit);
        if (b.tip)
            addBetween(opposite, b.vector, a.vector, b.vector, *b.tip, -b.unit, a.unit);
    }
    bool hasTriangle() const { return m_sides.has_value(); }
    std::vector<PointableAngle> take() { return std::move(m_all); }

private:
    void addBetween(const QuantityId& id, VectorId first, VectorId second, VectorId tip, const Vector& corner,
                    const Vector& from, const Vector& to) {
        const double sweep = sweepBetween(from, to);
        add({id, first, second, tip, corner, from, sweep,
             std::abs(sweep) * turnIn(m_sketch.angleUnit) / (2 * std::numbers::pi)});
    }
    void add(PointableAngle one) {
        if (std::abs(one.sweep) < kLeastAngle)
            return;
        one.row = static_cast<int>(std::count_if(
            m_all.begin(), m_all.end(), [&](const PointableAngle& other) { return other.tip == one.tip; }));
        m_all.push_back(std::move(one));
    }

    const Sketch& m_sketch;
    std::optional<Sides> m_sides;
    std::vector<PointableAngle> m_all;
};

} // namespace

std::vector<PointableAngle> pointableAngles(const Sketch& sketch, const std::map<VectorId, Vector>& drawn) {
    const std::vector<PointedRay> rays = raysOf(sketch, drawn);
    Pointable all(sketch);
    if (!all.hasTriangle() && rays.size() > kMostRays)
        return {};
    for (const PointedRay& ray : rays)
        all.addDirection(ray);
    for (std::size_t i = 0; i < rays.size(); ++i)
        for (std::size_t j = i + 1; j < rays.size(); ++j)
            all.addPair(rays[i], rays[j]);
    return all.take();
}

Sentence wordsOf(const PointableAngle& angle, const Sketch& sketch, const Things& things) {
    const auto name = [&](VectorId vector) {
        return Words{things.name(vector), true, false, things.symbol(vector)};
    };
    if (angle.second == kNobody)
        return {{"direction of "}, name(angle.first), {", from " + axisName(sketch.reference)}};
    if (angle.tip == kNobody)
        return {{"angle between "}, name(angle.first), {" and "}, name(angle.second)};
    return {{"angle at the tip of "}, name(angle.first), {", with "}, name(angle.second), {" laid on there"}};
}

} // namespace tailpoint
