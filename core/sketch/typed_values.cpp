// SPDX-License-Identifier: MIT
// Values that are stated in a unit of their own, their tolerances, and limits.
#include "core/sketch/shown.h"
#include "core/sketch/sketch.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

template <class Convert>
std::optional<Tolerance> converted(const std::optional<Tolerance>& tolerance, Convert convert) {
    return tolerance ? std::optional(convertedTolerance(*tolerance, convert)) : std::nullopt;
}

Margins marginsOf(const Tolerance& tolerance, double value) {
    const double size = std::fabs(value);
    return tolerance.percent ? Margins{size * tolerance.plus / 100, size * tolerance.minus / 100}
                             : Margins{tolerance.plus, tolerance.minus};
}

// Of a bearing that grows against the sheet's sense: N30°E and S30°W turn clockwise.
bool growsOtherWay(const BearingForm& bearing, const Sketch& sketch) {
    const bool clockwise = (bearing.from == 'N') == (bearing.toward == 'E');
    return clockwise == (sketch.reference.sense == Sense::ccw);
}

bool isMass(const std::optional<TypedForce>& typed) {
    return typed && std::holds_alternative<MassUnit>(typed->unit);
}

} // namespace

Magnitude magnitudeOf(const TypedForce& typed, ForceUnit sheet, double gravity) {
    const auto inSheets = [&](double value) { return convert(value, typed.unit, sheet, gravity); };
    return {inSheets(typed.value), converted(typed.tolerance, inSheets), typed};
}

Direction directionOf(const TypedAngle& typed, AngleUnit sheet) {
    const auto inSheets = [&](double value) { return convert(value, typed.unit, sheet); };
    return {AngleForm{inSheets(typed.value), typed}, converted(typed.tolerance, inSheets)};
}

std::optional<double> kilogrammesOf(const TypedForce& typed) {
    if (const auto* mass = std::get_if<MassUnit>(&typed.unit))
        return typed.value * kilogrammesPer(*mass);
    return std::get<ForceUnit>(typed.unit) == ForceUnit::kgf ? std::optional(typed.value) : std::nullopt;
}

Margins marginsOf(const Magnitude& magnitude) {
    return magnitude.value && magnitude.tolerance ? marginsOf(*magnitude.tolerance, *magnitude.value)
                                                  : Margins{};
}

Margins marginsOf(const Direction& direction, const Sketch& sketch) {
    if (!direction.tolerance)
        return {};
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    Margins margins = marginsOf(*direction.tolerance, angle ? angle->value : 0);
    const auto* bearing = std::get_if<BearingForm>(&direction.form);
    if (bearing && growsOtherWay(*bearing, sketch))
        std::swap(margins.plus, margins.minus);
    return margins;
}

std::optional<double> limitOf(const Force& force, const Sketch& sketch) {
    return force.limit ? std::optional(
                             convert(force.limit->value, force.limit->unit, sketch.forceUnit, sketch.gravity))
                       : std::nullopt;
}

bool hasMass(const Sketch& sketch) {
    const auto has = [](const Force& force) { return isMass(force.magnitude.typed) || isMass(force.limit); };
    const auto changes = [](const LoadCase& one) {
        return std::any_of(one.changes.begin(), one.changes.end(), [](const CaseChange& change) {
            return change.magnitude && isMass(change.magnitude->typed);
        });
    };
    return has(sketch.sum) || std::any_of(sketch.forces.begin(), sketch.forces.end(), has) ||
           std::any_of(sketch.cases.begin(), sketch.cases.end(), changes);
}

std::string shownAsTyped(const TypedForce& typed) {
    return withTolerance(shortest(typed.value), typed.tolerance, " " + std::string(symbolOf(typed.unit)));
}

std::string shownAsTyped(const TypedAngle& typed) {
    const bool degrees = typed.unit == AngleUnit::deg;
    return withTolerance(shortest(typed.value), typed.tolerance,
                         degrees ? "\u00B0" : " " + std::string(nameOf(typed.unit)));
}

} // namespace tailpoint
