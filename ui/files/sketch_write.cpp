// SPDX-License-Identifier: MIT
#include "core/quantity/decimals.h"
#include "ui/files/sketch_json.h"
#include "ui/files/sketch_keys.h"
#include "ui/files/tolerance_json.h"
#include "ui/files/unknown_keys.h"

namespace tailpoint {

namespace {

using Members = UnknownKeys::Members;

Members operator+(Members first, const Members& rest) {
    first.insert(first.end(), rest.begin(), rest.end());
    return first;
}

JsonValue padded(Members members) {
    return jsonObject(std::move(members), JsonLayout::padded);
}

/// A value in a unit of its own, as it stood in the file.
template <class Typed>
JsonValue typedJson(const Typed& typed, std::string_view unit, const Members& extra) {
    return padded(Members{{"value", jsonNumber(typed.value)}} + toleranceMembers(typed.tolerance) +
                  Members{{"unit", jsonText(unit)}} + extra);
}

JsonValue valueJson(std::optional<double> number, const std::optional<Tolerance>& tolerance,
                    const Members& extra) {
    JsonValue value = jsonNumberOrNull(number);
    return !tolerance && extra.empty()
               ? value
               : padded(Members{{"value", std::move(value)}} + toleranceMembers(tolerance) + extra);
}

JsonValue magnitudeJson(const Magnitude& magnitude, const Members& extra) {
    return magnitude.typed ? typedJson(*magnitude.typed, symbolOf(magnitude.typed->unit), extra)
                           : valueJson(magnitude.value, magnitude.tolerance, extra);
}

std::string bearingText(const BearingForm& bearing) {
    if (bearing.degrees == 0 && bearing.toward == 'E')
        return std::string(1, bearing.from);
    return bearing.from + shortest(bearing.degrees) + bearing.toward;
}

JsonValue pairJson(double first, double second) {
    return jsonList({jsonNumber(first), jsonNumber(second)}, JsonLayout::flat);
}

JsonValue directionJson(const Direction& direction, const Members& extra) {
    const Members rest = toleranceMembers(direction.tolerance) + extra;
    if (const auto* slope = std::get_if<SlopeForm>(&direction.form))
        return padded(Members{{"slope", pairJson(slope->run, slope->rise)}} + rest);
    if (const auto* bearing = std::get_if<BearingForm>(&direction.form))
        return padded(Members{{"bearing", jsonText(bearingText(*bearing))}} + rest);
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    if (angle && angle->typed)
        return typedJson(*angle->typed, nameOf(angle->typed->unit), extra);
    return valueJson(angle ? std::optional(angle->value) : std::nullopt, direction.tolerance, extra);
}

Members pinMembers(const char* key, const std::optional<LabelPin>& pin) {
    return pin ? Members{{key, pairJson(pin->right, pin->up)}} : Members{};
}

JsonValue limitJson(const TypedForce& limit, ForceUnit sheet, const Members& extra) {
    return limit.unit == LoadUnit(sheet) && extra.empty() ? jsonNumber(limit.value)
                                                          : typedJson(limit, symbolOf(limit.unit), extra);
}

Members bounds(const Force& force, ForceUnit sheet, const UnknownKeys& unknown) {
    Members members;
    if (force.limit)
        members.push_back({"limit", limitJson(*force.limit, sheet, unknown.under("limit"))});
    if (force.permitted)
        members.push_back({"permitted", padded(Members{{"axis", jsonNumber(force.permitted->axis)},
                                                       {"within", jsonNumber(force.permitted->within)}} +
                                               unknown.under("permitted"))});
    return members;
}

JsonValue forceJson(const Force& force, ForceUnit sheet, bool directionNeeded = true) {
    const UnknownKeys& unknown = unknownKeysIn(force.unknownKeys);
    const Members extra = unknown.under("direction");
    Members members{{"name", jsonText(force.name)},
                    {"magnitude", magnitudeJson(force.magnitude, unknown.under("magnitude"))}};
    if (directionNeeded || isGiven(force.direction) || !extra.empty())
        members.push_back({"direction", directionJson(force.direction, extra)});
    if (force.lineOfActionOnly)
        members.push_back({"sense", jsonText("either")});
    return padded(std::move(members) + bounds(force, sheet, unknown) + pinMembers("label", force.label) +
                  pinMembers("directionLabel", force.directionLabel) + unknown.own);
}

JsonValue changeJson(const CaseChange& change) {
    const UnknownKeys& unknown = unknownKeysIn(change.unknownKeys);
    Members members;
    if (change.magnitude)
        members.push_back({"magnitude", magnitudeJson(*change.magnitude, unknown.under("magnitude"))});
    if (change.direction)
        members.push_back({"direction", directionJson(*change.direction, unknown.under("direction"))});
    return padded(std::move(members) + unknown.own);
}

JsonValue caseJson(const LoadCase& one) {
    Members changes;
    for (const CaseChange& change : one.changes)
        changes.push_back({change.of, changeJson(change)});
    return padded(Members{{"name", jsonText(one.name)},
                          {"changes",
                           changes.empty() ? jsonObject({}, JsonLayout::flat) : padded(std::move(changes))}} +
                  unknownKeysIn(one.unknownKeys).own);
}

JsonValue casesJson(const std::vector<LoadCase>& cases) {
    std::vector<JsonValue> items;
    for (const LoadCase& one : cases)
        items.push_back(caseJson(one));
    return jsonList(std::move(items), JsonLayout::lines);
}

JsonValue axisJson(double degrees) {
    for (const auto& [name, value] : kNamedAxes)
        if (degrees == value)
            return jsonText(name);
    return jsonNumber(degrees);
}

JsonValue forcesJson(const std::vector<Force>& forces, ForceUnit sheet) {
    std::vector<JsonValue> items;
    items.reserve(forces.size());
    for (const Force& force : forces)
        items.push_back(forceJson(force, sheet));
    return jsonList(std::move(items), JsonLayout::lines);
}

JsonValue unitsJson(const Sketch& sketch, const Members& extra) {
    return padded(Members{{"force", jsonText(symbolOf(sketch.forceUnit))},
                          {"angle", jsonText(nameOf(sketch.angleUnit))}} +
                  extra);
}

JsonValue referenceJson(const Reference& reference, const Members& extra) {
    return padded(Members{{"axis", axisJson(reference.axisDegrees)},
                          {"sense", jsonText(reference.sense == Sense::ccw ? "ccw" : "cw")}} +
                  extra);
}

Members head(const Sketch& sketch, const UnknownKeys& unknown) {
    constexpr bool beside = true;
    Members members{{"format", jsonText(kSketchFormat)},
                    {"version", jsonNumber(kSketchVersion), beside},
                    {"title", jsonText(sketch.title)},
                    {"units", unitsJson(sketch, unknown.under("units"))},
                    {"reference", referenceJson(sketch.reference, unknown.under("reference"))},
                    {"figures", jsonNumber(sketch.figures)}};
    if (sketch.moreAfterOne)
        members.push_back({"moreAfterOne", jsonTruth(true), beside});
    if (sketch.angleDecimals != Sketch{}.angleDecimals)
        members.push_back({"decimals", jsonNumber(sketch.angleDecimals), beside});
    if (sketch.gravity != kStandardGravity)
        members.push_back({"gravity", jsonNumber(sketch.gravity)});
    return members;
}

Members questionMembers(const Sketch& sketch) {
    Members members{{"forces", forcesJson(sketch.forces, sketch.forceUnit)},
                    {"sum", forceJson(sketch.sum, sketch.forceUnit, sketch.sum.magnitude.value != 0.0)}};
    if (sketch.smallest)
        members.push_back({"smallest", jsonText(*sketch.smallest)});
    if (!sketch.cases.empty())
        members.push_back({"cases", casesJson(sketch.cases)});
    if (sketch.caution)
        members.push_back({"caution", jsonTruth(true)});
    const TitleBlock& block = sketch.titleBlock;
    for (const auto& [key, entry] : {std::pair{"drawn", &block.drawn}, std::pair{"checked", &block.checked},
                                     std::pair{"revision", &block.revision}})
        if (!entry->empty())
            members.push_back({key, jsonText(*entry)});
    return members;
}

} // namespace

QByteArray writeSketch(const Sketch& sketch) {
    const UnknownKeys& unknown = unknownKeysIn(sketch.unknownKeys);
    return QByteArray::fromStdString(writeJson(
        jsonObject(head(sketch, unknown) + questionMembers(sketch) + unknown.own, JsonLayout::lines)));
}

} // namespace tailpoint
