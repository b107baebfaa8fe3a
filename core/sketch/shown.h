// SPDX-License-Identifier: MIT
// Values of a sketch as its sheet shows them: one place decides digits, units and words. All plain ASCII
// but for the degree sign; the window swaps '-' for U+2212.
#pragma once

#include "core/quantity/decimals.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string>

namespace tailpoint {

/// How many significant figures a force has on the sheet: those asked for, and where it is so set one more
/// where the first digit is a 1.
int figuresOf(double value, const Sketch& sketch);
/// "520" / "520 N": to the sheet's significant figures.
std::string shownForce(double value, const Sketch& sketch, Origin origin = Origin::computed);
std::string shownForceWithUnit(double value, const Sketch& sketch, Origin origin = Origin::computed);

/// Decimals of an angle on this sheet, wherever one is shown, typed or dragged: those asked for, two more in
/// radians. And the angle to that many.
int shownAngleDecimals(const Sketch& sketch);
double roundedAsShown(double angle, const Sketch& sketch);

/// Half of one in the last place to which a typed value is shown: in the sheet's figures or decimals, further
/// on where more was typed. 0 for a force of 0.
double halfOfLastPlace(double typedForce, const Sketch& sketch);
double halfOfLastPlace(const Direction& typed, const Sketch& sketch); ///< sheet's angle unit

/// "-3.6°", "0.44 rad", "27.8 gon": `value` in the sheet's angle unit, to its decimals.
std::string shownAngle(double value, const Sketch& sketch, Origin origin = Origin::computed);
/// The same for an angle in radians (computed).
std::string shownAngleFromRadians(double radians, const Sketch& sketch);

/// A direction as given: "25.0°", "25.25°", "3 : 4", "N30°E" — or "to find"; without its tolerance. Up to two
/// places more than the sheet's are there where they were typed, as of a magnitude below: who solves the
/// question from what is read has the numbers that it was solved with.
std::string shownAsGiven(const Direction& direction, const Sketch& sketch);

/// Whether what is shown of a given value is all of it.
bool isShownInFull(const Magnitude& given, const Sketch& sketch);
bool isShownInFull(const Direction& given, const Sketch& sketch);

/// A given value with its tolerance: "345.5 N", "340 ± 5 N", "340 N ± 5 %", "340 +5/-0 N"; "25.0° ± 0.5°",
/// "3 : 4 +2°/-0°". A tolerance is rounded with its value: to as many figures as it, or to its last place
/// where that is more; a percentage as it is. Precondition: given.
std::string shownWithTolerance(const Magnitude& given, const Sketch& sketch);
std::string shownWithTolerance(const Direction& given, const Sketch& sketch);
/// A tolerance alone, behind a number that is in words: "± 5 N", "± 5 %", "+2°/-0°"; empty where there is
/// none.
std::string shownTolerance(const Magnitude& given, const Sketch& sketch);
std::string shownTolerance(const Direction& given, const Sketch& sketch);

/// "850 kgf", "27.8 ± 0.5 gon": in full, in its own unit.
std::string shownAsTyped(const TypedForce& typed);
std::string shownAsTyped(const TypedAngle& typed);

/// "9.80665 m/s²".
std::string shownGravity(const Sketch& sketch);

/// "+x", "-y", "35.0° axis".
std::string axisName(const Reference& reference);

/// Hyphens that stand for a minus ("-3.6°", "-x", "1.2e-7") as U+2212; those in words stay.
std::string withMinusSigns(std::string_view text);
/// "from +x, counter-clockwise".
std::string referenceWords(const Reference& reference);

/// How a direction lies to the sheet's axis.
struct FromAxis {
    enum class Way { along, opposite, counterClockwise, clockwise };
    Way way = Way::along;
    std::string size{};    ///< "3.6°"; empty on the axis
    bool lessThan = false; ///< it would show as nothing: `size` is the smallest angle that is shown
};
/// `referred` as Sketch says it.
FromAxis fromAxis(double referred, const Sketch& sketch);

/// "3.6° clockwise from +x", "along +x", "opposite to +x", "no direction". `referred` as Sketch says it.
std::string directionWords(std::optional<double> referred, const Sketch& sketch);
/// "N68.5°E" of a found direction, in a sketch some of whose directions are given so; else empty.
std::string bearingWords(std::optional<double> referred, const Sketch& sketch);

} // namespace tailpoint
