// SPDX-License-Identifier: MIT
// The problem in words: the scene's text with its vectors put in, how directions are given, the question, and
// the form of the answer.
#include "core/practice/family.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint::practising {

namespace {

constexpr std::array<std::string_view, 13> kCounts{
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"};

std::string_view unitWord(ForceUnit unit) {
    switch (unit) {
    case ForceUnit::N:
        return "newtons";
    case ForceUnit::kN:
        return "kilonewtons";
    case ForceUnit::lbf:
        return "pounds-force";
    case ForceUnit::kip:
        return "kips";
    case ForceUnit::daN:
        return "decanewtons";
    case ForceUnit::tonf:
        return "metric tons-force";
    case ForceUnit::shortTonf:
        return "short tons-force";
    case ForceUnit::kgf:
        break;
    }
    return "kilograms-force";
}

std::string_view unitWord(AngleUnit unit) {
    return unit == AngleUnit::deg ? "degrees" : unit == AngleUnit::rad ? "radians" : "gon";
}

/// "at 25°", "along the slope 3 : −4 (run : rise)", "towards N30°E"; empty where it is to be found.
std::string wayOf(const Force& vector, const Sketch& sketch) {
    const Direction& direction = vector.direction;
    if (const auto* angle = std::get_if<AngleForm>(&direction.form))
        return "at " + shortest(angle->value) +
               (sketch.angleUnit == AngleUnit::deg ? "°" : ' ' + std::string(nameOf(sketch.angleUnit)));
    if (const auto* slope = std::get_if<SlopeForm>(&direction.form))
        return "along the slope " + shortest(slope->run) + " : " + shortest(slope->rise);
    if (const auto* bearing = std::get_if<BearingForm>(&direction.form))
        return "towards " + (bearing->from + shortest(bearing->degrees)) + "°" + bearing->toward;
    return {};
}

std::string sizeOf(const Force& vector, const Sketch& sketch) {
    return vector.magnitude.value ? vector.name + " = " + shortest(*vector.magnitude.value) + ' ' +
                                        std::string(symbolOf(sketch.forceUnit))
                                  : vector.name;
}

/// "P = 340 N at 25°", or as much of it as is given.
std::string givenOf(const Force& vector, const Sketch& sketch) {
    const std::string way = wayOf(vector, sketch);
    return sizeOf(vector, sketch) + (way.empty() ? "" : ' ' + way);
}

std::string listed(const std::vector<std::string>& items) {
    std::string out;
    for (std::size_t i = 0; i < items.size(); ++i)
        out += (i == 0 ? "" : i + 1 == items.size() ? " and " : ", ") + items[i];
    return out;
}

std::string place(std::string_view name, const Sketch& sketch) {
    if (name == "given") {
        std::vector<std::string> items;
        for (const Force& force : sketch.forces)
            items.push_back(givenOf(force, sketch));
        return listed(items);
    }
    const auto colon = name.find(':');
    const std::string_view vectorName = name.substr(0, colon),
                           part = colon == name.npos ? "" : name.substr(colon + 1);
    const auto found = std::find_if(sketch.forces.begin(), sketch.forces.end(),
                                    [&](const Force& force) { return force.name == vectorName; });
    const Force& vector = found == sketch.forces.end() ? sketch.sum : *found;
    return part == "name"   ? vector.name
           : part == "size" ? sizeOf(vector, sketch)
           : part == "at"   ? wayOf(vector, sketch)
           : part == "way"  ? wayOf(vector, sketch) + " (" + vector.name + ')'
                            : givenOf(vector, sketch);
}

std::string filled(std::string_view pattern, const Sketch& sketch) {
    std::string out;
    while (true) {
        const auto open = pattern.find('{'), close = pattern.find('}');
        if (open == pattern.npos)
            return out.append(pattern);
        out.append(pattern.substr(0, open));
        out += place(pattern.substr(open + 1, close - open - 1), sketch);
        pattern.remove_prefix(close + 1);
    }
}

template <class Form>
bool isGivenAs(const Sketch& sketch) {
    const auto has = [](const Force& force) { return std::holds_alternative<Form>(force.direction.form); };
    return std::any_of(sketch.forces.begin(), sketch.forces.end(), has) || has(sketch.sum);
}

struct Asked {
    std::vector<std::string> sizes, ways;
    bool isEitherSense = false;
};

Asked askedIn(const Sketch& sketch) {
    Asked asked;
    const auto add = [&](const Force& vector) {
        if (!isGiven(vector.magnitude))
            asked.sizes.push_back(vector.name);
        if (!isGiven(vector.direction) && vector.magnitude.value != 0.0)
            asked.ways.push_back(vector.name);
        asked.isEitherSense = asked.isEitherSense || vector.lineOfActionOnly;
    };
    for (const Force& force : sketch.forces)
        add(force);
    add(sketch.sum);
    return asked;
}

bool isByCompass(const Sketch& sketch) {
    return isGivenAs<BearingForm>(sketch) && !isGivenAs<AngleForm>(sketch);
}

std::string_view sense(const Sketch& sketch, bool other = false) {
    return (sketch.reference.sense == Sense::ccw) != other ? "counter-clockwise" : "clockwise";
}

/// "the +x axis"
std::string axis(const Sketch& sketch) {
    return "the " + axisName(sketch.reference) + " axis";
}

std::string whereX(const SceneRow& scene) {
    return "the +x axis, which points " + std::string(scene.x);
}

/// How directions are given.
std::string frame(const Sketch& sketch, const SceneRow& scene) {
    if (isByCompass(sketch))
        return "Bearings are counted from north or from south, towards east or towards west; +x is east and "
               "+y is north.";
    const bool isPlain = sketch.reference.axisDegrees == 0;
    std::string out;
    if (isGivenAs<SlopeForm>(sketch))
        out = "A slope is given as run : rise, the run along " + whereX(scene) +
              ", the rise along +y, a quarter turn counter-clockwise from it. ";
    else if (!isPlain)
        out = "The +x axis points " + std::string(scene.x) +
              ", the +y axis a quarter turn counter-clockwise from it. ";
    const bool needsAngles = isGivenAs<AngleForm>(sketch) || !askedIn(sketch).ways.empty();
    if (!needsAngles)
        return out.substr(0, out.size() - 1);
    return out + "Angles are measured " + std::string(sense(sketch)) + " from " +
           (out.empty() ? whereX(scene) : axis(sketch)) + "; a negative angle is " +
           std::string(sense(sketch, true)) + '.';
}

std::string decimalWords(const Sketch& sketch) {
    const int decimals = shownAngleDecimals(sketch);
    if (decimals == 0)
        return "to the nearest whole";
    return "to " + std::string(kCounts[static_cast<std::size_t>(decimals)]) +
           (decimals == 1 ? " decimal place" : " decimal places");
}

std::string wayForm(const Sketch& sketch, const Asked& asked) {
    const std::string what =
        asked.sizes == asked.ways ? "its direction" : "the direction of " + listed(asked.ways);
    if (isByCompass(sketch))
        return what + " as a bearing, its degrees " + decimalWords(sketch);
    return what + " in " + std::string(unitWord(sketch.angleUnit)) + ' ' + decimalWords(sketch) +
           ", measured " + std::string(sense(sketch)) + " from " + axis(sketch);
}

/// The last sentence: unit, figures, axis, turning sense.
std::string answerForm(const Sketch& sketch, const FamilyRow& family) {
    const Asked asked = askedIn(sketch);
    std::string out = family.answers == 2 ? "For each of the two, state " : "State ";
    out += listed(asked.sizes) + " in " + std::string(unitWord(sketch.forceUnit)) + " to " +
           std::string(kCounts[static_cast<std::size_t>(sketch.figures)]) + " significant figures";
    if (!asked.ways.empty())
        out += (asked.sizes.size() > 1 ? ", and " : " and ") + wayForm(sketch, asked);
    if (asked.isEitherSense)
        out += ", positive for a pull and negative for a push";
    return out + '.';
}

} // namespace

std::string worded(const Sketch& sketch, const FamilyRow& family, const SceneRow& scene) {
    return withMinusSigns(filled(scene.lead, sketch) + ' ' + frame(sketch, scene) + ' ' +
                          filled(family.question, sketch) + ' ' + answerForm(sketch, family));
}

} // namespace tailpoint::practising
