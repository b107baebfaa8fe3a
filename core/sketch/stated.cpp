// SPDX-License-Identifier: MIT
#include "core/sketch/stated.h"

#include "core/sketch/shown.h"

#include <utility>

namespace tailpoint {

std::string statedMagnitude(const Magnitude& given, const Sketch& sketch) {
    const std::string shown = shownWithTolerance(given, sketch);
    if (!given.typed)
        return shown;
    const std::string typed = shownAsTyped(*given.typed);
    return std::holds_alternative<MassUnit>(given.typed->unit)
               ? "weight of " + typed + " = " + shown + " (g = " + shownGravity(sketch) + ")"
               : typed + " = " + shown;
}

std::string statedDirection(const Direction& given, const Sketch& sketch) {
    const std::string shown = shownWithTolerance(given, sketch);
    const auto* angle = std::get_if<AngleForm>(&given.form);
    return angle && angle->typed ? shownAsTyped(*angle->typed) + " = " + shown : shown;
}

std::string ownUnitWords(const Magnitude& given, const Sketch& sketch) {
    if (!given.value || !given.typed)
        return {};
    const std::string typed = shownAsTyped(*given.typed);
    return std::holds_alternative<MassUnit>(given.typed->unit)
               ? "weight of " + typed + ", g = " + shownGravity(sketch)
               : "stated " + typed;
}

std::string ownUnitWords(const Direction& given) {
    const auto* angle = std::get_if<AngleForm>(&given.form);
    return angle && angle->typed ? "stated " + shownAsTyped(*angle->typed) : std::string();
}

bool hasOwnUnit(const Magnitude& magnitude) {
    return magnitude.typed.has_value();
}

bool hasOwnUnit(const Direction& direction) {
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    return angle && angle->typed;
}

std::string toleranceOfSize(const Direction& given, double referred, const Sketch& sketch) {
    Direction sized = given;
    if (sized.tolerance && referred < 0)
        std::swap(sized.tolerance->plus, sized.tolerance->minus);
    return shownTolerance(sized, sketch);
}

} // namespace tailpoint
