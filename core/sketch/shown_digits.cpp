// SPDX-License-Identifier: MIT
#include "core/sketch/shown_digits.h"

#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"

#include <cmath>

namespace tailpoint {

namespace {

BearingForm bearingAt(double degrees, int decimals) {
    const double a = normalized(degrees, AngleUnit::deg);
    BearingForm bearing;
    bearing.from = a >= 0 ? 'N' : 'S';
    bearing.toward = std::abs(a) <= 90 ? 'E' : 'W';
    bearing.degrees = roundedToDecimals(std::abs(90 - std::abs(a)), decimals);
    return bearing;
}

} // namespace

double absoluteDegrees(double referred, const Sketch& sketch) {
    const double degrees =
        sketch.angleUnit == AngleUnit::deg ? referred : referred / turnIn(sketch.angleUnit) * 360;
    const double turned = sketch.reference.sense == Sense::ccw ? degrees : -degrees;
    return normalized(sketch.reference.axisDegrees + turned, AngleUnit::deg);
}

double referredFromAbsolute(double degrees, const Sketch& sketch) {
    const double turned = degrees - sketch.reference.axisDegrees;
    const double sensed = sketch.reference.sense == Sense::ccw ? turned : -turned;
    const double value =
        sketch.angleUnit == AngleUnit::deg ? sensed : sensed / 360 * turnIn(sketch.angleUnit);
    return normalized(value, sketch.angleUnit);
}

double lastDigitOfAngle(const Sketch& sketch) {
    return std::pow(10.0, -shownAngleDecimals(sketch));
}

double lastDigitOfMagnitude(double magnitude, const Sketch& sketch) {
    const double decade = magnitude > 0 ? std::floor(std::log10(magnitude)) : 0;
    return std::pow(10.0, decade - (figuresOf(magnitude, sketch) - 1));
}

void setShownMagnitude(Force& force, double magnitude, const Sketch& sketch) {
    force.magnitude.value = roundedToFigures(magnitude, figuresOf(magnitude, sketch));
    force.magnitude.typed.reset();
}

void setShownDirection(Force& force, double referred, const Sketch& sketch) {
    if (std::holds_alternative<BearingForm>(force.direction.form)) {
        force.direction.form = bearingAt(absoluteDegrees(referred, sketch), sketch.angleDecimals);
        return;
    }
    const double shown = roundedAsShown(normalized(referred, sketch.angleUnit), sketch);
    // 180.04 rounds to 180.0, which is written as such, but -180.0 is the same direction.
    double angle = normalized(shown, sketch.angleUnit);
    // Given beyond a half turn, a hand takes it on from there: 223 becomes 222.9 and not -137.1.
    const auto* before = std::get_if<AngleForm>(&force.direction.form);
    const double turn = turnIn(sketch.angleUnit);
    if (before != nullptr && std::abs(before->value) > turn / 2 && angle * before->value < 0)
        angle = roundedAsShown(angle + std::copysign(turn, before->value), sketch);
    force.direction.form = AngleForm{angle};
}

} // namespace tailpoint
