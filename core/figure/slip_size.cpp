// SPDX-License-Identifier: MIT
#include "core/figure/slip_size.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {
namespace {

using Vector = Eigen::Vector2d;
using Kind = AttemptStroke::Kind;

constexpr double kOneSize = 1e-6; ///< relative: the same number by another way
constexpr double kFlat = 0.02;    ///< radians: a triangle as thin as a line

bool isClose(double a, double b) {
    return std::abs(a - b) <= kOneSize * std::max(std::abs(a), std::abs(b));
}

Vector turnedBy(const Vector& v, double radians) {
    const double c = std::cos(radians), s = std::sin(radians);
    return {c * v.x() - s * v.y(), s * v.x() + c * v.y()};
}

} // namespace

bool SlipSize::byTriangle() const {
    return std::none_of(m_slip.routes.begin(), m_slip.routes.end(),
                        [](const Route& route) { return route.way == Route::Way::components; });
}

void SlipSize::add(VectorId vector, double size) const {
    if (!addComponent(vector, size) && !addEndToEnd(vector, size) &&
        !(byTriangle() && (addOtherDiagonal(vector, size) || addTriangle(vector, size))))
        m_maker.add(Kind::circle, {0, 0}, {size, 0}, m_maker.yours(vector, size), vector);
}

/// Where each of the other two is one given vector.
std::optional<SlipSize::KnownSides> SlipSize::knownSides(VectorId sought) const {
    const auto sides = sidesOf(m_sketch);
    const std::size_t at = sides ? sides->indexOf(sought) : 3;
    if (at == 3)
        return std::nullopt;
    const auto [i, j] = Reduction::others(at);
    const VectorId one = sides->side[i], two = sides->side[j];
    for (const VectorId side : {one, two})
        if (side == kKnownVector || !m_numbers.isGivenWhole(side) || m_numbers.at(side).isChanged)
            return std::nullopt;
    const Vector a = m_numbers.at(one).vector(), b = m_numbers.at(two).vector();
    if (sides->loop || at == 2)
        return KnownSides{one, two, a, b, true, sides->loop};
    return KnownSides{two, one, b, -a, false, false}; // side 2 less the other
}

bool SlipSize::addComponent(VectorId vector, double size) const {
    const auto parts = m_numbers.components(vector);
    if (!parts || (!isClose(std::abs(parts->x()), size) && !isClose(std::abs(parts->y()), size)))
        return false;
    const bool isAlongX = isClose(std::abs(parts->x()), size);
    m_maker.add(Kind::arrow, {0, 0}, isAlongX ? Vector(parts->x(), 0) : Vector(0, parts->y()),
                m_maker.yours(vector, size), vector, 1);
    return true;
}

/// Magnitudes added, whatever their directions.
bool SlipSize::addEndToEnd(VectorId vector, double size) const {
    if (!isClose(size, m_numbers.scale()))
        return false;
    std::optional<Vector> along;
    double at = 0;
    m_numbers.forEachVector([&](VectorId each) {
        if (!m_numbers.isGivenWhole(each))
            return;
        const SlipVector one = m_numbers.at(each);
        if (along) // the first stands there
            m_maker.add(Kind::arrow, at * *along, (at + *one.size) * *along, m_maker.named(each), each);
        else
            along = Vector(std::cos(*one.radians), std::sin(*one.radians));
        at += *one.size;
    });
    if (along)
        m_maker.add(Kind::arrow, {0, 0}, size * *along, m_maker.yours(vector, size), vector, 1);
    return along.has_value();
}

bool SlipSize::addOtherDiagonal(VectorId vector, double size) const {
    const auto sides = knownSides(vector);
    if (!sides || !sides->areTails || !isClose((sides->a - sides->b).norm(), size))
        return false;
    m_maker.add(Kind::line, sides->b, sides->a, m_maker.yours(vector, size));
    return true;
}

bool SlipSize::addTriangle(VectorId vector, double size) const {
    const auto sides = knownSides(vector);
    const auto angle =
        sides ? angleFromSides(sides->a.norm(), sides->b.norm(), size) : std::optional<double>();
    if (!angle || sides->a.isZero() || sides->b.isZero())
        return false;
    const Vector back = -sides->a.normalized(), none(0, 0);
    const double sense = back.x() * sides->b.y() - back.y() * sides->b.x() < 0 ? -1 : 1;
    const Vector end = sides->a + sides->b.norm() * turnedBy(back, sense * *angle);
    const bool isFlat = *angle < kFlat || std::numbers::pi - *angle < kFlat;
    m_maker.add(Kind::arrow, sides->a, end, m_maker.named(sides->second), sides->second, isFlat ? 1 : 0);
    m_maker.add(Kind::arrow, sides->isLoop ? end : none, sides->isLoop ? none : end,
                m_maker.yours(vector, size), vector, isFlat ? 2 : 0);
    if (!isFlat)
        m_maker.addCorner(sides->a, back, end - sides->a);
    return true;
}

} // namespace tailpoint
