// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_box.h"

#include <cmath>
#include <utility>

namespace tailpoint::tolerance {
namespace {

using kernel::Vec;

Span spanOf(const Magnitude& magnitude) {
    if (!magnitude.value) {
        return {};
    }
    const Margins margins = marginsOf(magnitude);
    const long double value = *magnitude.value;
    return {std::fmax(0.0L, value - margins.minus), value, value + margins.plus};
}

Vec turned(Vec unit, long double radians) {
    const long double cos = std::cos(radians);
    const long double sin = std::sin(radians);
    return {unit.x * cos - unit.y * sin, unit.x * sin + unit.y * cos};
}

long double radiansIn(AngleUnit unit) {
    switch (unit) {
    case AngleUnit::rad:
        return 1;
    case AngleUnit::gon:
        return kHalfTurn / 200;
    default:
        return kHalfTurn / 180;
    }
}

// `by` in the sheet's unit and sense. A typed angle is moved as the number that it is, so that 40 + 50 is a
// right angle to the last bit; what the sum of doubles drops is turned on afterwards.
Vec movedBy(const Direction& direction, double by, const Sketch& sketch) {
    const long double sense = sketch.reference.sense == Sense::cw ? -1.0L : 1.0L;
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    if (angle == nullptr) {
        return turned(kernel::vec(*unitVector(direction, sketch)), sense * by * radiansIn(sketch.angleUnit));
    }
    Direction moved;
    const double sum = angle->value + by;
    moved.form = AngleForm{sum};
    const double part = sum - angle->value;
    const double lost = (angle->value - (sum - part)) + (by - part);
    const Vec unit = kernel::vec(*unitVector(moved, sketch));
    return lost == 0 ? unit : turned(unit, sense * lost * radiansIn(sketch.angleUnit));
}

Arc arcOf(const Direction& direction, const Sketch& sketch) {
    if (!isGiven(direction)) {
        return wholeTurn(0);
    }
    const Vec unit = kernel::vec(*unitVector(direction, sketch));
    const long double nominal = std::atan2(unit.y, unit.x);
    Margins margins = marginsOf(direction, sketch);
    const long double inRadians = radiansIn(sketch.angleUnit);
    if (margins.plus + margins.minus >= turnIn(sketch.angleUnit)) {
        return wholeTurn(nominal);
    }
    Vec up = margins.plus == 0 ? unit : movedBy(direction, margins.plus, sketch);
    Vec down = margins.minus == 0 ? unit : movedBy(direction, -margins.minus, sketch);
    if (sketch.reference.sense == Sense::cw) {
        std::swap(margins.plus, margins.minus);
        std::swap(up, down);
    }
    return {nominal - margins.minus * inRadians, nominal, nominal + margins.plus * inRadians, down, unit, up};
}

BoxVector vectorOf(const Force& force, int index, const Sketch& sketch) {
    BoxVector made;
    made.index = index;
    made.magnitudeGiven = isGiven(force.magnitude);
    made.directionGiven = isGiven(force.direction);
    made.lineOfActionOnly = force.lineOfActionOnly;
    made.magnitude = spanOf(force.magnitude);
    made.direction = arcOf(force.direction, sketch);
    return made;
}

} // namespace

Arc wholeTurn(long double nominal) {
    const Vec behind{-std::cos(nominal), -std::sin(nominal)};
    return {nominal - kHalfTurn, nominal, nominal + kHalfTurn, behind, -behind, behind};
}

bool Arc::isWholeTurn() const {
    return to - from >= 2 * kHalfTurn * (1 - 0x1p-60L);
}

Vec Arc::unitAt(long double radians) const {
    if (radians == nominal) {
        return atNominal;
    }
    if (radians == from) {
        return atFrom;
    }
    return radians == to ? atTo : Vec{std::cos(radians), std::sin(radians)};
}

Box boxOf(const Sketch& sketch) {
    Box box;
    box.vectors.reserve(sketch.forces.size() + 1);
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        box.vectors.push_back(vectorOf(sketch.forces[i], static_cast<int>(i), sketch));
    }
    box.vectors.push_back(vectorOf(sketch.sum, kSumIndex, sketch));
    for (const BoxVector& vector : box.vectors) {
        box.hasTolerance = box.hasTolerance || (vector.magnitudeGiven && !vector.magnitude.isPoint()) ||
                           (vector.directionGiven && !vector.direction.isPoint());
    }
    return box;
}

} // namespace tailpoint::tolerance
