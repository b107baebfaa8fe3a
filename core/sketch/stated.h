// SPDX-License-Identifier: MIT
// What is given, as whole words: the value that was stated, what the sheet makes of it, and its tolerance.
// ASCII minus, as in shown.h.
#pragma once

#include "core/sketch/sketch.h"

#include <string>

namespace tailpoint {

/// "340 ± 5 N"; in a unit of its own "850 kgf = 8.34 kN"; of a mass "weight of 850 kg = 8.34 kN (g = 9.80665
/// m/s²)". Precondition: given.
std::string statedMagnitude(const Magnitude& given, const Sketch& sketch);
/// "25.0° ± 0.5°", "3 : 4", "50 gon = 45.0°". Precondition: given.
std::string statedDirection(const Direction& given, const Sketch& sketch);
/// The value alone in the unit in which it was stated, under the sheet's on a figure: "stated 850 ± 10 kgf",
/// "weight of 850 kg, g = 9.80665 m/s²", "stated 50 gon". Empty where it was stated in the sheet's.
std::string ownUnitWords(const Magnitude& given, const Sketch& sketch);
std::string ownUnitWords(const Direction& given);
/// A unit of its own, or a mass: more to say than the sheet's value.
bool hasOwnUnit(const Magnitude& magnitude);
bool hasOwnUnit(const Direction& direction);

/// The tolerance of a direction whose size alone is shown ("40.0° clockwise"), where it is negative on the
/// sheet: plus is away from the axis. Empty where there is none.
std::string toleranceOfSize(const Direction& given, double referred, const Sketch& sketch);

/// Behind other words: with a space in front, nothing for nothing.
inline std::string spaced(const std::string& words) {
    return words.empty() ? words : " " + words;
}

} // namespace tailpoint
