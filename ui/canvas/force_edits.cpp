#include "ui/canvas/force_edits.h"

#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

/// A force by its index, the sum by kSumIndex; null beyond them. `all` is a sketch or a solution.
template <class All>
auto at(All& all, int vector) -> decltype(&all.sum) {
    if (vector == kSumIndex) {
        return &all.sum;
    }
    const bool inside = vector >= 0 && static_cast<std::size_t>(vector) < all.forces.size();
    return inside ? &all.forces[static_cast<std::size_t>(vector)] : nullptr;
}

BearingForm bearingAt(double degrees, int decimals) {
    const double a = normalized(degrees, AngleUnit::deg);
    BearingForm bearing;
    bearing.from = a >= 0 ? 'N' : 'S';
    bearing.toward = std::abs(a) <= 90 ? 'E' : 'W';
    bearing.degrees = roundedToDecimals(std::abs(90 - std::abs(a)), decimals);
    return bearing;
}

} // namespace

const Force* forceAt(const Sketch& sketch, int vector) {
    return at(sketch, vector);
}

Force* forceAt(Sketch& sketch, int vector) {
    return at(sketch, vector);
}

const SolvedForce* solvedAt(const Solution& solution, int vector) {
    return at(solution, vector);
}

bool tipCanMove(const Sketch& sketch, int vector) {
    const Force* force = forceAt(sketch, vector);
    return force != nullptr && (isGiven(force->magnitude) || isGiven(force->direction));
}

bool bodyCanTurn(const Sketch& sketch, int vector) {
    const Force* force = forceAt(sketch, vector);
    return force != nullptr && isGiven(force->direction);
}

Polar polarOf(const Eigen::Vector2d& v, const Sketch& sketch) {
    return {std::hypot(v.x(), v.y()), referredDirection(v.x(), v.y(), sketch).value_or(0)};
}

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
    return std::pow(10.0, decade - (sketch.figures - 1));
}

void setShownMagnitude(Force& force, double magnitude, const Sketch& sketch) {
    force.magnitude.value = roundedToFigures(magnitude, sketch.figures);
    force.magnitude.typed.reset();
}

void setShownDirection(Force& force, double referred, const Sketch& sketch) {
    if (std::holds_alternative<BearingForm>(force.direction.form)) {
        force.direction.form = bearingAt(absoluteDegrees(referred, sketch), sketch.angleDecimals);
        return;
    }
    const double shown = roundedAsShown(normalized(referred, sketch.angleUnit), sketch);
    // 180.04 rounds to 180.0, which is written as such, but -180.0 is the same direction.
    force.direction.form = AngleForm{normalized(shown, sketch.angleUnit)};
}

Sketch withForce(const Sketch& sketch, const Polar& polar) {
    Sketch after = sketch;
    Force force;
    force.name = nextForceName(sketch);
    setShownMagnitude(force, polar.magnitude, sketch);
    setShownDirection(force, polar.referred, sketch);
    after.forces.push_back(std::move(force));
    return after;
}

} // namespace tailpoint
