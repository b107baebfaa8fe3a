// SPDX-License-Identifier: MIT
// Every rule that a sketch must keep before it may be solved, each with its place and its mend.
#include "core/sketch/sketch.h"

#include "core/quantity/decimals.h"
#include "core/quantity/text.h"
#include "core/sketch/fault_parts.h"
#include "core/sketch/shown.h"
#include "core/sketch/title.h"

#include <algorithm>
#include <cmath>
#include <unordered_set>

namespace tailpoint {
namespace {

using Fault = std::optional<SketchFault>;

Fault magnitudeFault(double value, const char* place) {
    if (!std::isfinite(value)) {
        return SketchFault{FaultCode::notFinite, place, "is not a finite number; give a number such as 340"};
    }
    if (value < 0) {
        return SketchFault{FaultCode::negative, place,
                           shortest(value) + " is negative; turn the direction round instead"};
    }
    if (value > kLargestMagnitude || (value > 0 && value < kSmallestMagnitude)) {
        return SketchFault{FaultCode::magnitudeOutOfRange, place,
                           shortest(value) +
                               " is outside 1e-150 to 1e150; choose another force unit or give 0"};
    }
    return std::nullopt;
}

/// The key of a file that holds it.
std::string toleranceKey(const Tolerance& tolerance) {
    return tolerance.percent ? ".plusMinusPercent" : isEven(tolerance) ? ".plusMinus" : ".plus";
}

Fault toleranceFault(const Tolerance& tolerance, bool given, double largest, const std::string& value) {
    const std::string place = value + toleranceKey(tolerance);
    if (!given) {
        return SketchFault{FaultCode::toleranceWithoutValue, place,
                           "a tolerance needs a given value; give the value or leave the tolerance out"};
    }
    const double most = std::max(tolerance.plus, tolerance.minus);
    if (!(tolerance.plus >= 0 && tolerance.minus >= 0 && most > 0 && std::isfinite(most))) {
        return SketchFault{FaultCode::toleranceNotPositive, place,
                           "a tolerance is a number above 0; give one such as 5 or leave it out"};
    }
    if (most > largest) {
        return SketchFault{FaultCode::toleranceTooLarge, place,
                           shortest(most) + " is more than " + shortest(largest) +
                               "; give a smaller one or leave it out"};
    }
    if (tolerance.percent && !isEven(tolerance)) {
        return SketchFault{FaultCode::toleranceUneven, place,
                           "a percentage is the same both ways; give plus and minus as values instead"};
    }
    return std::nullopt;
}

Fault slopeFault(const SlopeForm& slope, const char* place) {
    for (const double part : {slope.run, slope.rise}) {
        if (!std::isfinite(part) || std::fabs(part) > kLargestMagnitude ||
            (part != 0 && std::fabs(part) < kSmallestMagnitude)) {
            return SketchFault{FaultCode::slopeOutOfRange, place,
                               "run and rise are numbers between 1e-150 and 1e150 in size, or 0; "
                               "give some such as [3, 4]"};
        }
    }
    if (slope.run == 0 && slope.rise == 0) {
        return SketchFault{FaultCode::slopeWithoutDirection, place,
                           "run and rise are both 0, which points nowhere; give one of them a value"};
    }
    return std::nullopt;
}

Fault bearingFault(const BearingForm& bearing, const char* place) {
    if ((bearing.from != 'N' && bearing.from != 'S') || (bearing.toward != 'E' && bearing.toward != 'W')) {
        return SketchFault{FaultCode::bearingLetters, place,
                           "a bearing goes from N or S toward E or W; give one such as N30E"};
    }
    if (!(bearing.degrees >= 0 && bearing.degrees <= 90)) {
        return SketchFault{FaultCode::bearingAngle, place,
                           "a bearing's angle is 0 to 90 degrees; count from the other pole beyond 90"};
    }
    return std::nullopt;
}

Fault angleFault(double angle, const char* place) {
    if (!std::isfinite(angle)) {
        return SketchFault{FaultCode::notFinite, place, "is not a finite number; give an angle such as 25"};
    }
    if (std::fabs(angle) > kLargestAngle) {
        return SketchFault{FaultCode::angleTooLarge, place,
                           shortest(angle) + " is beyond 1e10 either way; give an angle within a full turn"};
    }
    return std::nullopt;
}

Fault directionFault(const Direction& direction, const char* place) {
    if (const auto* angle = std::get_if<AngleForm>(&direction.form)) {
        return angleFault(angle->value, place);
    }
    if (const auto* slope = std::get_if<SlopeForm>(&direction.form)) {
        return slopeFault(*slope, place);
    }
    if (const auto* bearing = std::get_if<BearingForm>(&direction.form)) {
        return bearingFault(*bearing, place);
    }
    return std::nullopt;
}

Fault nameFault(const std::string& name, const char* place) {
    const std::optional<std::size_t> length = printableLength(name);
    if (!length) {
        return SketchFault{FaultCode::unprintable, place,
                           "has characters that can't be printed; use letters, digits and signs"};
    }
    if (*length == 0 || *length > kLongestName) {
        return SketchFault{FaultCode::nameLength, place,
                           "a name has 1 to 16 characters, this one has " + std::to_string(*length) +
                               "; give another such as P"};
    }
    if (name.find_first_not_of(' ') == std::string::npos) {
        return SketchFault{FaultCode::nameBlank, place, "is blank; give a name such as P"};
    }
    return std::nullopt;
}

Fault pinFault(const std::optional<LabelPin>& pin, const char* place) {
    const bool fits = !pin || (std::abs(pin->right) <= kFurthestPin && std::abs(pin->up) <= kFurthestPin);
    return fits ? Fault()
                : Fault(SketchFault{FaultCode::labelTooFar, place,
                                    "is further than 10000 points away; take it out, and "
                                    "the label finds its own place"});
}

// A value in a unit of its own and the same in the sheet's, which the sketch is solved with.
Fault typedFault(const Force& force, const Sketch& sketch) {
    const auto& size = force.magnitude.typed;
    if (size && force.magnitude != magnitudeOf(*size, sketch.forceUnit, sketch.gravity)) {
        return SketchFault{FaultCode::ownUnitDiffers, ".magnitude.unit",
                           shownAsTyped(*size) + " is not the value beside it in " +
                               std::string(symbolOf(sketch.forceUnit)) + "; leave one of them out"};
    }
    const auto* angle = std::get_if<AngleForm>(&force.direction.form);
    if (angle && angle->typed && force.direction != directionOf(*angle->typed, sketch.angleUnit)) {
        return SketchFault{FaultCode::ownUnitDiffers, ".direction.unit",
                           shownAsTyped(*angle->typed) + " is not the value beside it in " +
                               std::string(nameOf(sketch.angleUnit)) + "; leave one of them out"};
    }
    return std::nullopt;
}

Fault directionToleranceFault(const Direction& direction) {
    const Tolerance& tolerance = *direction.tolerance;
    if (tolerance.percent && isGiven(direction) && !std::holds_alternative<AngleForm>(direction.form)) {
        return SketchFault{FaultCode::toleranceOfNoNumber, ".direction" + toleranceKey(tolerance),
                           "a slope or a bearing has no percentage; give the tolerance as an angle"};
    }
    return toleranceFault(tolerance, isGiven(direction), kLargestAngle, ".direction");
}

Fault tolerancesFault(const Force& force) {
    const Magnitude& magnitude = force.magnitude;
    if (magnitude.tolerance) {
        if (Fault fault =
                toleranceFault(*magnitude.tolerance, isGiven(magnitude), kLargestMagnitude, ".magnitude")) {
            return fault;
        }
    }
    return force.direction.tolerance ? directionToleranceFault(force.direction) : Fault();
}

Fault limitFault(const Force& force, const Sketch& sketch) {
    const std::optional<double> limit = limitOf(force, sketch);
    if (!limit) {
        return std::nullopt;
    }
    if (!(force.limit->value > 0 && *limit >= kSmallestMagnitude && *limit <= kLargestMagnitude)) {
        return SketchFault{FaultCode::limitOutOfRange, ".limit",
                           "a limit is a force above 0, up to 1e150; give one such as 10 or leave it out"};
    }
    if (force.limit->tolerance) {
        return SketchFault{FaultCode::limitWithTolerance, ".limit",
                           "a limit has no tolerance; give the most that the force may be"};
    }
    return std::nullopt;
}

Fault permittedFault(const Force& force, const Sketch& sketch) {
    if (!force.permitted) {
        return std::nullopt;
    }
    if (Fault fault = angleFault(force.permitted->axis, ".permitted.axis")) {
        return fault;
    }
    const double half = turnIn(sketch.angleUnit) / 2;
    if (!(force.permitted->within > 0 && force.permitted->within <= half)) {
        return SketchFault{FaultCode::permittedOutOfRange, ".permitted.within",
                           "is not above 0 and up to a half turn (" + shownAngle(half, sketch) +
                               "); give how far the direction may lie off the axis, either way"};
    }
    return std::nullopt;
}

} // namespace

Fault vectorFault(const Force& force, const Sketch& sketch) {
    if (Fault fault = nameFault(force.name, ".name")) {
        return fault;
    }
    if (force.magnitude.value) {
        if (Fault fault = magnitudeFault(*force.magnitude.value, ".magnitude")) {
            return fault;
        }
    }
    if (Fault fault = directionFault(force.direction, ".direction")) {
        return fault;
    }
    if (Fault fault = tolerancesFault(force)) {
        return fault;
    }
    if (Fault fault = typedFault(force, sketch)) {
        return fault;
    }
    if (Fault fault = limitFault(force, sketch)) {
        return fault;
    }
    if (Fault fault = permittedFault(force, sketch)) {
        return fault;
    }
    if (Fault fault = pinFault(force.label, ".label")) {
        return fault;
    }
    return pinFault(force.directionLabel, ".directionLabel");
}

namespace {

Fault within(const std::string& vector, Fault fault) {
    fault->place = vector + fault->place;
    return fault;
}

Fault titleFault(const std::string& title) {
    const std::optional<std::size_t> length = printableLength(title);
    if (!length) {
        return SketchFault{FaultCode::unprintable, "title",
                           "has characters that can't be printed; take them out"};
    }
    if (*length > kLongestTitle) {
        return SketchFault{FaultCode::titleTooLong, "title",
                           "a title has up to 500 characters, this one has " + std::to_string(*length) +
                               "; shorten it"};
    }
    return std::nullopt;
}

Fault titleBlockFault(const TitleBlock& block) {
    const std::pair<const char*, const std::string*> entries[] = {
        {"drawn", &block.drawn}, {"checked", &block.checked}, {"revision", &block.revision}};
    for (const auto& [key, entry] : entries) {
        const std::optional<std::size_t> length = printableLength(*entry);
        if (!length) {
            return SketchFault{FaultCode::unprintable, key,
                               "has characters that can't be printed; take them out"};
        }
        if (*length > kLongestBlockEntry) {
            return SketchFault{FaultCode::titleTooLong, key,
                               "has up to 80 characters, this one has " + std::to_string(*length) +
                                   "; shorten it"};
        }
    }
    return std::nullopt;
}

Fault sheetFault(const Sketch& sketch) {
    if (Fault fault = titleFault(sketch.title)) {
        return fault;
    }
    if (Fault fault = titleBlockFault(sketch.titleBlock)) {
        return fault;
    }
    if (!std::isfinite(sketch.reference.axisDegrees)) {
        return SketchFault{FaultCode::notFinite, "reference.axis",
                           "is not a finite number; give degrees or +x, -x, +y, -y"};
    }
    if (std::fabs(sketch.reference.axisDegrees) > kLargestAngle) {
        return SketchFault{FaultCode::angleTooLarge, "reference.axis",
                           shortest(sketch.reference.axisDegrees) +
                               " is beyond 1e10 either way; give degrees within a full turn"};
    }
    if (sketch.figures < 1 || sketch.figures > kMostFigures) {
        return SketchFault{FaultCode::figuresOutOfRange, "figures",
                           std::to_string(sketch.figures) + " is outside 1 to 12; 3 is usual"};
    }
    if (sketch.angleDecimals < 0 || sketch.angleDecimals > kMostAngleDecimals) {
        return SketchFault{FaultCode::angleDecimalsOutOfRange, "angleDecimals",
                           std::to_string(sketch.angleDecimals) + " is outside 0 to 8; 1 is usual"};
    }
    if (!(sketch.gravity >= kLeastGravity && sketch.gravity <= kMostGravity)) {
        return SketchFault{FaultCode::gravityOutOfRange, "gravity",
                           shortest(sketch.gravity) + " is outside 0.01 to 100 m/s²; 9.80665 is the standard "
                                                      "one, 9.81 usual in class"};
    }
    return std::nullopt;
}

std::string placeOf(std::size_t index) {
    return "forces[" + std::to_string(index) + "]";
}

Fault forcesFault(const Sketch& sketch) {
    if (sketch.forces.size() > kMostForces) {
        return SketchFault{FaultCode::tooManyForces, "forces",
                           std::to_string(sketch.forces.size()) +
                               " forces are more than the 10000 that a sketch holds; add some up"};
    }
    std::unordered_set<std::string_view> names;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        if (const Fault fault = vectorFault(sketch.forces[i], sketch)) {
            return within(placeOf(i), fault);
        }
        if (!names.insert(sketch.forces[i].name).second) {
            return SketchFault{FaultCode::nameTaken, placeOf(i) + ".name",
                               "'" + sketch.forces[i].name + "' is taken; names are unique, give another"};
        }
    }
    if (const Fault fault = vectorFault(sketch.sum, sketch)) {
        return within("sum", fault);
    }
    if (names.count(sketch.sum.name) != 0) {
        return SketchFault{FaultCode::nameTaken, "sum.name",
                           "'" + sketch.sum.name + "' is the name of a force; give the sum another"};
    }
    if (sketch.smallest && names.count(*sketch.smallest) == 0 && *sketch.smallest != sketch.sum.name) {
        return SketchFault{FaultCode::smallestUnknown, "smallest",
                           "'" + oneLine(*sketch.smallest) +
                               "' is neither a force nor the sum; name one of them"};
    }
    return std::nullopt;
}

} // namespace

std::optional<SketchFault> firstFault(const Sketch& sketch) {
    if (Fault fault = sheetFault(sketch)) {
        return fault;
    }
    if (Fault fault = forcesFault(sketch)) {
        return fault;
    }
    return casesFault(sketch);
}

} // namespace tailpoint
