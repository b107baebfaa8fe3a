// SPDX-License-Identifier: MIT
#include "core/figure/stroke_maker.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {
namespace {

constexpr double kLeastSweep = 0.035; ///< radians: a smaller arc isn't seen
constexpr double kLeastLeg = 0.01;    ///< of the vector

} // namespace

AttemptStroke& StrokeMaker::add(AttemptStroke::Kind kind, const Eigen::Vector2d& from,
                                const Eigen::Vector2d& to, Runs label, VectorId of, int aside) {
    AttemptStroke& stroke = m_strokes.emplace_back();
    stroke.kind = kind;
    stroke.of = of;
    stroke.from = from;
    stroke.to = to;
    stroke.aside = aside;
    stroke.label = std::move(label);
    return stroke;
}

void StrokeMaker::addArc(const Eigen::Vector2d& at, const Eigen::Vector2d& leg, double sweep, double value,
                         bool isDirection) {
    if (std::abs(sweep) < kLeastSweep)
        return;
    AttemptStroke& arc =
        add(AttemptStroke::Kind::arc, at, at + leg, plainRuns(withMinusSigns(shownAngle(value, m_sketch))));
    arc.sweep = sweep;
    arc.isDirection = isDirection;
}

void StrokeMaker::addCorner(const Eigen::Vector2d& at, const Eigen::Vector2d& leg,
                            const Eigen::Vector2d& other) {
    const double sweep = std::atan2(leg.x() * other.y() - leg.y() * other.x(), leg.dot(other));
    addArc(at, leg, sweep, std::abs(sweep) * turnIn(m_sketch.angleUnit) / (2 * std::numbers::pi), false);
}

void StrokeMaker::addDirection(double referred) {
    const double axis = m_sketch.reference.axisDegrees * std::numbers::pi / 180;
    const double sweep = referred * 2 * std::numbers::pi / turnIn(m_sketch.angleUnit);
    addArc({0, 0}, {std::cos(axis), std::sin(axis)}, m_sketch.reference.sense == Sense::ccw ? sweep : -sweep,
           referred, true);
}

void StrokeMaker::addLegs(VectorId vector, const Eigen::Vector2d& to) {
    if (std::min(std::abs(to.x()), std::abs(to.y())) <= kLeastLeg * to.norm())
        return;
    const Eigen::Vector2d corner(to.x(), 0);
    add(AttemptStroke::Kind::line, {0, 0}, corner, symbolRuns(m_things.symbol(QuantityId{What::x, vector})));
    add(AttemptStroke::Kind::line, corner, to, symbolRuns(m_things.symbol(QuantityId{What::y, vector})));
}

Runs StrokeMaker::named(VectorId vector, const std::optional<double>& size) const {
    const Symbol symbol = m_things.symbol(vector);
    return size ? valueRuns(symbol, shownForceWithUnit(*size, m_sketch)) : symbolRuns(symbol);
}

Runs StrokeMaker::yours(VectorId vector, const std::optional<double>& size) const {
    Runs runs = plainRuns("your ");
    const Runs name = named(vector, size);
    runs.insert(runs.end(), name.begin(), name.end());
    return runs;
}

} // namespace tailpoint
