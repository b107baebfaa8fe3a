#include "ui/document/report_values.h"

#include "core/sketch/shown.h"

namespace tailpoint {

std::string shownMagnitude(const SolvedForce& solved, const Force& given, const Sketch& sketch) {
    const bool typed = given.magnitude.value == solved.magnitude;
    return shownForceWithUnit(solved.magnitude, sketch, typed ? Origin::typed : Origin::computed);
}

std::string shownDirection(const SolvedForce& solved, const Force& given, const Sketch& sketch) {
    if (!solved.direction)
        return "no direction";
    const auto* angle = std::get_if<AngleForm>(&given.direction.form);
    const bool typed = angle && normalized(angle->value, sketch.angleUnit) == *solved.direction;
    return shownAngle(*solved.direction, sketch, typed ? Origin::typed : Origin::computed);
}

Solved withReversedOnly(const Solved& solved) {
    Solved reversed = solved;
    reversed.solutions = std::move(reversed.reversed);
    reversed.reversed.clear();
    return reversed;
}

} // namespace tailpoint
