// SPDX-License-Identifier: MIT
#include "ui/files/force_read.h"

#include "core/quantity/typed.h"
#include "ui/files/unknown_keys.h"

namespace tailpoint::reading {

using Kind = JsonValue::Kind;

namespace {

/// The units there are, from the table of units, for messages.
template <class Units, class Name>
std::string listed(const Units& units, Name name) {
    std::string list;
    for (const auto unit : units)
        list += (list.empty() ? "" : ", ") + std::string(name(unit));
    return list;
}

bool isThere(const std::optional<At>& at) {
    return at && !at->is(Kind::null);
}

/// "plus" and "minus", both or neither.
std::optional<Tolerance> sidesIn(const std::optional<At>& plus, const std::optional<At>& minus) {
    if (!isThere(plus) && !isThere(minus))
        return std::nullopt;
    if (!isThere(plus))
        minus->refuse("has no \"plus\" beside it; write both, 0 for a side that has none");
    if (!isThere(minus))
        plus->refuse("has no \"minus\" beside it; write both, 0 for a side that has none");
    const Tolerance sides{numberIn(*plus), numberIn(*minus), false};
    if (sides.plus < 0 || sides.minus < 0)
        (sides.plus < 0 ? plus : minus)->refuse("is below 0; give how far the value may be off, 0 or more");
    if (sides.plus == 0 && sides.minus == 0)
        plus->refuse("and \"minus\" are both 0; give one of them above 0, or take both out");
    return sides;
}

std::optional<Tolerance> toleranceIn(const At& at, bool given) {
    const auto even = at.maybe("plusMinus"), percent = at.maybe("plusMinusPercent"), plus = at.maybe("plus"),
               minus = at.maybe("minus");
    const auto& any = isThere(even) ? even : isThere(percent) ? percent : isThere(plus) ? plus : minus;
    if (!isThere(any))
        return std::nullopt;
    if (!given)
        any->refuse("stands beside nothing; give the value, or take the tolerance out");
    const auto sides = sidesIn(plus, minus);
    if (int{isThere(even)} + int{isThere(percent)} + int{sides.has_value()} > 1)
        any->refuse("is one tolerance of two; keep plusMinus, plusMinusPercent, or plus and minus");
    return isThere(even)      ? plusMinus(numberIn(*even))
           : isThere(percent) ? plusMinusPercent(numberIn(*percent))
                              : *sides;
}

/// The unit of its own that a value has, if any.
template <class Unit>
std::optional<Unit> unitIn(const At& at, bool given, std::optional<Unit> (*read)(std::string_view),
                           const std::string& units) {
    const auto unit = at.maybe("unit");
    if (!unit || unit->is(Kind::null))
        return std::nullopt;
    const auto found = read(textIn(*unit, "write one of " + units + " in double quotes"));
    if (!found)
        unit->refuse(inQuotes(unit->value.text) + " is no unit known here; write one of " + units);
    if (!given)
        unit->refuse("stands beside no number; give the value, or take the unit out");
    return found;
}

SlopeForm readSlope(const At& at) {
    if (!at.is(Kind::array) || at.value.items.size() != 2)
        at.refuse("is no slope; write run and rise, as [3, 4]");
    return {numberIn({at.value.items[0], at.path + "[0]"}), numberIn({at.value.items[1], at.path + "[1]"})};
}

BearingForm readBearing(const At& at) {
    const std::string& text = textIn(at, "write a bearing, as \"N30E\"");
    const auto typed = parseDirection(text, AngleUnit::deg);
    const auto* direction = std::get_if<TypedDirection>(&typed);
    if (!direction || direction->form != TypedDirection::Form::bearing)
        at.refuse(inQuotes(text) + " is no bearing; write N or S, 0 to 90 degrees, E or W, as \"N30E\"");
    return {direction->from, direction->degrees, direction->toward};
}

Direction readDirectionObject(const At& at, AngleUnit sheet) {
    requireHarmlessKeys(at, KeyPlace::direction);
    const auto value = at.maybe("value"), slope = at.maybe("slope"), bearing = at.maybe("bearing");
    const int forms = (value ? 1 : 0) + (slope ? 1 : 0) + (bearing ? 1 : 0);
    if (forms != 1)
        at.refuse(forms == 0 ? "says no direction; write \"value\", \"slope\" or \"bearing\" in it"
                             : "says its direction twice; keep one of value, slope, bearing");
    Direction direction;
    if (slope)
        direction.form = readSlope(*slope);
    else if (bearing)
        direction.form = readBearing(*bearing);
    else if (!value->is(Kind::null))
        direction.form = AngleForm{numberIn(*value, ", or null if it is to be found")};
    direction.tolerance = toleranceIn(at, isGiven(direction));
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    const auto unit = unitIn(at, angle != nullptr, angleUnitFrom, angleUnitNames());
    return unit ? directionOf({angle->value, *unit, direction.tolerance}, sheet) : direction;
}

bool readEither(const At& force) {
    const auto sense = force.maybe("sense");
    if (!sense || sense->is(Kind::null))
        return false;
    if (textIn(*sense, "write \"either\", or leave it out") != "either")
        sense->refuse(inQuotes(sense->value.text) + " is no sense here; write \"either\", or leave it out");
    return true;
}

Opaque unknownKeysOfForce(const At& force) {
    return unknownKeysOf(force.value, KeyPlace::force,
                         {{"magnitude", KeyPlace::magnitude},
                          {"direction", KeyPlace::direction},
                          {"limit", KeyPlace::limit},
                          {"permitted", KeyPlace::permitted}});
}

/// Two numbers: points to the right and up.
std::optional<LabelPin> readPin(const At& force, std::string_view key) {
    const auto at = force.maybe(key);
    if (!at || at->is(Kind::null))
        return std::nullopt;
    constexpr const char* mend = "write points to the right and up, as [12, -8]";
    if (!at->is(Kind::array))
        refuseKind(*at, mend);
    if (at->value.items.size() != 2)
        at->refuse(std::string("has not two numbers; ") + mend);
    const double right = numberIn({at->value.items[0], at->path + "[0]"});
    return LabelPin{right, numberIn({at->value.items[1], at->path + "[1]"})};
}

void readPins(const At& at, Force& force) {
    force.label = readPin(at, "label");
    force.directionLabel = readPin(at, "directionLabel");
}

/// A number in the sheet's unit, or in one of its own.
std::optional<TypedForce> readLimit(const At& force, const Sketch& sheet) {
    const auto at = force.maybe("limit");
    if (!isThere(at))
        return std::nullopt;
    if (!at->is(Kind::object) && !at->is(Kind::number))
        refuseKind(*at, "write a number, or {\"value\": 10, \"unit\": \"kN\"}");
    if (at->is(Kind::number))
        return TypedForce{numberIn(*at), sheet.forceUnit, {}};
    requireHarmlessKeys(*at, KeyPlace::limit);
    const double value = numberIn(at->require("value", "write the most that the force may be"));
    const auto unit = unitIn(*at, true, loadUnitFrom, loadUnitNames());
    return TypedForce{value, unit.value_or(sheet.forceUnit), {}};
}

std::optional<Permitted> readPermitted(const At& force) {
    const auto at = force.maybe("permitted");
    if (!isThere(at))
        return std::nullopt;
    requireObject(*at, "write an axis and how far off it, as {\"axis\": 90, \"within\": 20}");
    requireHarmlessKeys(*at, KeyPlace::permitted);
    const double axis = numberIn(at->require("axis", "write the middle of the permitted directions"));
    return Permitted{axis, numberIn(at->require("within", "write how far off the axis, either way"))};
}

/// What a vector of either kind may have besides magnitude and direction.
void readRest(const At& at, const Sketch& sheet, Force& force) {
    force.lineOfActionOnly = readEither(at);
    force.limit = readLimit(at, sheet);
    force.permitted = readPermitted(at);
    readPins(at, force);
    force.unknownKeys = unknownKeysOfForce(at);
}

Force readForce(const At& at, const Sketch& sheet) {
    requireObject(at, "write a force, as {\"name\": \"P\", \"magnitude\": 340, \"direction\": 25}");
    requireHarmlessKeys(at, KeyPlace::force);
    Force force;
    force.name = textIn(at.require("name", "give the force a name"), "write a name in double quotes");
    force.magnitude =
        readMagnitude(at.require("magnitude", "write a number, or null if it is to be found"), sheet);
    force.direction = readDirection(at.require("direction", "write a number, or null if it is to be found"),
                                    sheet.angleUnit);
    readRest(at, sheet, force);
    return force;
}

} // namespace

Magnitude readMagnitude(const At& at, const Sketch& sheet) {
    Magnitude magnitude;
    if (at.is(Kind::null))
        return magnitude;
    if (!at.is(Kind::object)) {
        magnitude.value = numberIn(at, ", or null if it is to be found");
        return magnitude;
    }
    requireHarmlessKeys(at, KeyPlace::magnitude);
    const At value = at.require("value", "write a number, or null if it is to be found");
    if (!value.is(Kind::null))
        magnitude.value = numberIn(value, ", or null if it is to be found");
    magnitude.tolerance = toleranceIn(at, magnitude.value.has_value());
    const auto unit = unitIn(at, magnitude.value.has_value(), loadUnitFrom, loadUnitNames());
    return unit ? magnitudeOf({*magnitude.value, *unit, magnitude.tolerance}, sheet.forceUnit, sheet.gravity)
                : magnitude;
}

Direction readDirection(const At& at, AngleUnit sheet) {
    if (at.is(Kind::object))
        return readDirectionObject(at, sheet);
    if (at.is(Kind::null))
        return {};
    return {AngleForm{numberIn(at, ", a slope or a bearing, or null if it is to be found")}, {}};
}

std::string forceUnitNames() {
    return listed(kSheetForceUnits, [](ForceUnit unit) { return symbolOf(unit); });
}
std::string loadUnitNames() {
    return listed(kForceUnits, [](ForceUnit unit) { return symbolOf(unit); }) + ", " +
           listed(kMassUnits, [](MassUnit unit) { return symbolOf(unit); });
}
std::string angleUnitNames() {
    return listed(kAngleUnits, [](AngleUnit unit) { return nameOf(unit); });
}

Force readSum(const std::optional<At>& at, const Sketch& sheet) {
    Force sum;
    sum.name = defaultSumName(sheet.forces);
    if (!at || at->is(Kind::null))
        return sum;
    requireObject(*at, "write the sum, as {\"name\": \"R\", \"magnitude\": null, \"direction\": null}");
    requireHarmlessKeys(*at, KeyPlace::force);
    if (const auto name = at->maybe("name"); name && !name->is(Kind::null))
        sum.name = textIn(*name, "write a name in double quotes");
    sum.magnitude =
        readMagnitude(at->require("magnitude", "write a number, or null if it is to be found"), sheet);
    const auto direction = at->maybe("direction");
    if (direction)
        sum.direction = readDirection(*direction, sheet.angleUnit);
    else if (sum.magnitude.value != 0.0)
        at->require("direction", "write a number, or null if it is to be found (only a zero sum needs none)");
    readRest(*at, sheet, sum);
    return sum;
}

std::vector<Force> readForces(const At& at, const Sketch& sheet) {
    if (!at.is(Kind::array))
        refuseKind(at,
                   "write a list of forces, as [{\"name\": \"P\", \"magnitude\": 340, \"direction\": 25}]");
    std::vector<Force> forces;
    forces.reserve(at.value.items.size());
    for (const JsonValue& item : at.value.items)
        forces.push_back(readForce({item, at.path + '[' + std::to_string(forces.size()) + ']'}, sheet));
    return forces;
}

} // namespace tailpoint::reading
