// Values that a file states in a unit of their own.
#include "core/sketch/shown.h"
#include "core/sketch/sketch.h"

namespace tailpoint {
namespace {

template <class Unit>
std::optional<double> converted(std::optional<double> value, Unit from, Unit to) {
    return value ? std::optional(convert(*value, from, to)) : std::nullopt;
}

template <class Value>
std::string numbersOf(const Value& typed) {
    const std::string value = shortest(typed.value);
    return typed.plusMinus ? value + " \u00B1 " + shortest(*typed.plusMinus) : value;
}

} // namespace

Magnitude magnitudeOf(const TypedForce& typed, ForceUnit sheet) {
    return {convert(typed.value, typed.unit, sheet), converted(typed.plusMinus, typed.unit, sheet), typed};
}

Direction directionOf(const TypedAngle& typed, AngleUnit sheet) {
    return {AngleForm{convert(typed.value, typed.unit, sheet), typed},
            converted(typed.plusMinus, typed.unit, sheet)};
}

std::string shownAsTyped(const TypedForce& typed) {
    return numbersOf(typed) + " " + std::string(symbolOf(typed.unit));
}

std::string shownAsTyped(const TypedAngle& typed) {
    const bool degrees = typed.unit == AngleUnit::deg;
    return numbersOf(typed) + (degrees ? "\u00B0" : " " + std::string(nameOf(typed.unit)));
}

} // namespace tailpoint
