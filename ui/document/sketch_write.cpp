#include "core/quantity/decimals.h"
#include "ui/document/json_text.h"
#include "ui/document/sketch_json.h"
#include "ui/document/sketch_keys.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// The keys that the file had and this version doesn't know.
class Carried {
public:
    explicit Carried(const std::string& text) {
        if (text.empty())
            return;
        auto parsed = parseJson(text);
        if (auto* value = std::get_if<JsonValue>(&parsed))
            m_object = std::move(*value);
    }
    /// `, "key": value` for each unknown key inside the object under the known key `key`.
    std::string inside(std::string_view key) const {
        const JsonValue* object = m_object.find(key);
        return object ? members(*object, {}, ", ") : std::string();
    }
    /// The same for the object's own unknown keys.
    template <class Known>
    std::string own(const Known& known, std::string_view gap) const {
        return members(m_object, {known.begin(), known.end()}, gap);
    }

private:
    static std::string members(const JsonValue& object, const std::vector<std::string_view>& skipped,
                               std::string_view gap) {
        std::string out;
        for (const JsonMember& member : object.members)
            if (std::find(skipped.begin(), skipped.end(), member.key) == skipped.end())
                out += std::string(gap) + jsonString(member.key) + ": " + compactJson(member.value);
        return out;
    }
    JsonValue m_object;
};

std::string toleranceText(std::optional<double> plusMinus) {
    return plusMinus ? ", \"plusMinus\": " + shortest(*plusMinus) : "";
}

/// A value in a unit of its own, as it stood in the file.
template <class Typed>
std::string typedText(const Typed& typed, std::string_view unit, const std::string& extra) {
    return "{ \"value\": " + shortest(typed.value) + toleranceText(typed.plusMinus) +
           ", \"unit\": " + jsonString(unit) + extra + " }";
}

std::string valueText(std::optional<double> number, std::optional<double> plusMinus,
                      const std::string& extra) {
    const std::string value = number ? shortest(*number) : "null";
    return !plusMinus && extra.empty() ? value
                                       : "{ \"value\": " + value + toleranceText(plusMinus) + extra + " }";
}

std::string magnitudeText(const Magnitude& magnitude, const std::string& extra) {
    return magnitude.typed ? typedText(*magnitude.typed, symbolOf(magnitude.typed->unit), extra)
                           : valueText(magnitude.value, magnitude.plusMinus, extra);
}

std::string bearingText(const BearingForm& bearing) {
    if (bearing.degrees == 0 && bearing.toward == 'E')
        return std::string(1, bearing.from);
    return bearing.from + shortest(bearing.degrees) + bearing.toward;
}

std::string directionText(const Direction& direction, const std::string& extra) {
    const std::string tolerance = toleranceText(direction.plusMinus);
    if (const auto* slope = std::get_if<SlopeForm>(&direction.form))
        return "{ \"slope\": [" + shortest(slope->run) + ", " + shortest(slope->rise) + "]" + tolerance +
               extra + " }";
    if (const auto* bearing = std::get_if<BearingForm>(&direction.form))
        return "{ \"bearing\": " + jsonString(bearingText(*bearing)) + tolerance + extra + " }";
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    if (angle && angle->typed)
        return typedText(*angle->typed, nameOf(angle->typed->unit), extra);
    return valueText(angle ? std::optional(angle->value) : std::nullopt, direction.plusMinus, extra);
}

std::string pinText(const char* key, const std::optional<LabelPin>& pin) {
    return pin ? ", \"" + std::string(key) + "\": [" + shortest(pin->right) + ", " + shortest(pin->up) + "]"
               : "";
}

std::string forceText(const Force& force, bool directionNeeded = true) {
    const Carried carried(force.carried);
    const std::string extra = carried.inside("direction");
    std::string out = "{ \"name\": " + jsonString(force.name);
    out += ", \"magnitude\": " + magnitudeText(force.magnitude, carried.inside("magnitude"));
    if (directionNeeded || isGiven(force.direction) || !extra.empty())
        out += ", \"direction\": " + directionText(force.direction, extra);
    if (force.lineOfActionOnly)
        out += ", \"sense\": \"either\"";
    out += pinText("label", force.label) + pinText("directionLabel", force.directionLabel);
    return out + carried.own(kForceKeys, ", ") + " }";
}

std::string axisText(double degrees) {
    for (const auto& [name, value] : kNamedAxes)
        if (degrees == value)
            return jsonString(name);
    return shortest(degrees);
}

std::string forcesText(const std::vector<Force>& forces) {
    std::string out;
    for (const Force& force : forces)
        out += (out.empty() ? "\n    " : ",\n    ") + forceText(force);
    return forces.empty() ? "[]" : "[" + out + "\n  ]";
}

std::string headText(const Sketch& sketch, const Carried& carried) {
    std::string out = "  \"format\": " + jsonString(kSketchFormat);
    out += ", \"version\": " + std::to_string(kSketchVersion) + ",\n";
    out += "  \"title\": " + jsonString(sketch.title) + ",\n";
    out += "  \"units\": { \"force\": " + jsonString(symbolOf(sketch.forceUnit)) +
           ", \"angle\": " + jsonString(nameOf(sketch.angleUnit)) + carried.inside("units") + " },\n";
    out += "  \"reference\": { \"axis\": " + axisText(sketch.reference.axisDegrees) + ", \"sense\": \"" +
           (sketch.reference.sense == Sense::ccw ? "ccw" : "cw") + "\"" + carried.inside("reference") +
           " },\n";
    out += "  \"figures\": " + std::to_string(sketch.figures);
    if (sketch.angleDecimals != Sketch{}.angleDecimals)
        out += ", \"decimals\": " + std::to_string(sketch.angleDecimals);
    return out + ",\n";
}

} // namespace

QByteArray writeSketch(const Sketch& sketch) {
    const Carried carried(sketch.carried);
    std::string out = "{\n" + headText(sketch, carried);
    out += "  \"forces\": " + forcesText(sketch.forces) + ",\n";
    out += "  \"sum\": " + forceText(sketch.sum, sketch.sum.magnitude.value != 0.0);
    if (sketch.smallest)
        out += ",\n  \"smallest\": " + jsonString(*sketch.smallest);
    if (sketch.caution)
        out += ",\n  \"caution\": true";
    out += carried.own(kSketchKeys, ",\n  ") + "\n}\n";
    return QByteArray::fromStdString(out);
}

} // namespace tailpoint
