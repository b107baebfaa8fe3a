// SPDX-License-Identifier: MIT
#include "core/figure/attempt_numbers.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {
namespace {

constexpr double kSameSize = 1e-6; ///< of a magnitude: no slip of ours changes less
constexpr double kOtherNumber =
    0.005; ///< of a magnitude, or 100 times that in degrees: told apart on a sheet

const Force& forceOf(const Sketch& sketch, VectorId vector) {
    return vector == kSumVector ? sketch.sum : sketch.forces[vector.index];
}

std::optional<double> radiansOf(const Direction& direction, const Sketch& sketch) {
    const auto unit = unitVector(direction, sketch);
    return unit ? std::optional(std::atan2(double(unit->sin), double(unit->cos))) : std::nullopt;
}

QuantityId commonId(QuantityId id) {
    id.answer = 0;
    return id;
}

bool isFound(const MarkedQuantity& one) {
    return one.given && (one.verdict == Verdict::right || one.verdict == Verdict::rounded ||
                         one.verdict == Verdict::follows);
}

/// What is right, of this or of another quantity of its kind, must not be seen before it is found.
bool tellsRight(const Marking& marking, What what, double value, const Sketch& sketch) {
    const bool isAngle = what == What::direction;
    const double turn = turnIn(sketch.angleUnit);
    return std::any_of(marking.quantities.begin(), marking.quantities.end(), [&](const MarkedQuantity& one) {
        if (one.id.what != what || !one.expected || isFound(one))
            return false;
        const double off = isAngle ? std::abs(std::remainder(value - *one.expected, turn))
                                   : std::abs(std::abs(value) - std::abs(*one.expected));
        return off <= kOtherNumber * (isAngle ? 100 * turn / 360 : std::abs(*one.expected));
    });
}

} // namespace

AttemptNumbers::AttemptNumbers(const Sketch& sketch, const Marking& marking)
    : m_sketch(sketch), m_marking(marking), m_slip(marking.slips.front()),
      m_scale(sketch.sum.magnitude.value.value_or(0)) {
    for (const Force& force : sketch.forces)
        m_scale += force.magnitude.value.value_or(0);
}

const Force& AttemptNumbers::given(VectorId vector) const {
    return forceOf(m_sketch, vector);
}

bool AttemptNumbers::isGivenWhole(VectorId vector) const {
    return isGiven(given(vector).magnitude) && isGiven(given(vector).direction);
}

std::optional<double> AttemptNumbers::number(const QuantityId& id) const {
    for (const auto& [quantity, value] : m_slip.numbers)
        if (quantity == id)
            return value;
    return std::nullopt;
}

/// The slip's number where it explains the learner's; his own where that is right; of a question that is read
/// wrongly also what would come out of it, unless that is right.
std::optional<double> AttemptNumbers::own(const QuantityId& id, bool& isExplained) const {
    for (const MarkedQuantity& one : m_marking.quantities) {
        if (commonId(one.id) != id)
            continue;
        const auto& names = m_slip.explains;
        isExplained = std::find(names.begin(), names.end(), one.name) != names.end();
        const auto value = number(id);
        if (isExplained && value)
            return value;
        isExplained = false;
        if (isFound(one))
            return one.given;
        const bool isWhole = m_slip.read != nullptr || m_slip.place == SlipPlace::shortCut;
        return isWhole && value && !tellsRight(m_marking, id.what, *value, m_sketch) ? value : std::nullopt;
    }
    return std::nullopt;
}

std::optional<Eigen::Vector2d> AttemptNumbers::components(VectorId vector) const {
    const auto x = number({What::x, vector}), y = number({What::y, vector});
    return x && y ? std::optional(Eigen::Vector2d(*x, *y)) : std::nullopt;
}

SlipVector AttemptNumbers::at(VectorId vector) const {
    const Force &own = given(vector), &read = m_slip.read ? forceOf(*m_slip.read, vector) : own;
    SlipVector out{read.magnitude.value, radiansOf(read.direction, m_sketch)};
    out.isChanged = (isGiven(own.magnitude) && read.magnitude.value != own.magnitude.value) ||
                    (isGiven(own.direction) && !(read.direction == own.direction));
    if (isGivenWhole(vector)) {
        if (!(read.direction == own.direction))
            out.referred = referredDirection(read.direction, m_sketch);
        const auto parts = m_slip.read || vector == kSumVector ? std::nullopt : components(vector);
        if (parts && (*parts - out.vector()).norm() > kSameSize * *out.size) {
            out.size = parts->norm();
            out.radians = std::atan2(parts->y(), parts->x());
            out.isChanged = true;
        }
        return out;
    }
    bool isTurned = false; // a negative magnitude: the arrow turned round
    if (!isGiven(own.magnitude)) {
        out.size = this->own(magnitudeId(vector), out.isWrongSize);
        isTurned = out.size && *out.size < 0;
        if (out.size)
            out.size = std::abs(*out.size);
    }
    if (!isGiven(own.direction)) {
        out.referred = this->own(directionId(vector), out.isWrongWay);
        if (out.referred)
            out.radians = radiansOf({AngleForm{*out.referred}, {}}, m_sketch);
    }
    if (isTurned && out.radians)
        out.radians = *out.radians + std::numbers::pi;
    return out;
}

} // namespace tailpoint
