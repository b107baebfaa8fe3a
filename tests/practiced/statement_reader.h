// SPDX-License-Identifier: MIT
// Reads a problem's statement back: its numbers and the form that its answer is to have. A reader of its own,
// by regular expressions over the text alone.
#pragma once

#include "core/sketch/sketch.h"

#include <cmath>
#include <cstdio>
#include <map>
#include <optional>
#include <regex>
#include <string>
#include <vector>

namespace tailpoint::testing {

/// What a statement says of one vector.
struct SaidVector {
    std::optional<double> size;
    std::string unit;
    std::string way; ///< "25", "3 : -4", "N30E"; empty: nothing said
    bool operator==(const SaidVector&) const = default;
};

inline std::string withHyphens(std::string text) {
    for (auto at = text.find("\u2212"); at != text.npos; at = text.find("\u2212"))
        text.replace(at, 3, "-");
    return text;
}

inline const std::string kNumber = R"((-?\d+(?:\.\d+)?))";

/// "at -40°", "along the slope 3 : -4", "towards N30°E" with three groups' worth of captures.
inline const std::string kWay = "(?:at " + kNumber + "°|along the slope " + kNumber + " : " + kNumber +
                                "|towards ([NS])" + kNumber + "°([EW]))";

inline std::string wayIn(const std::smatch& match, std::size_t first) {
    if (match[first].matched)
        return match[first];
    if (match[first + 1].matched)
        return match[first + 1].str() + " : " + match[first + 2].str();
    return match[first + 3].matched ? match[first + 3].str() + match[first + 4].str() + match[first + 5].str()
                                    : "";
}

struct SaidValues {
    std::map<std::string, SaidVector> vectors;
    std::string rest; ///< the text without what was read
};

inline SaidValues valuesIn(const std::string& statement) {
    static const std::regex whole(R"(\b([A-Z]) = )" + kNumber +
                                  " (N|kN|lbf|kip|kgf)(?:,? (?:act(?:ing|s) straight down,? )?" + kWay +
                                  ")?"),
        behind(kWay + R"( \(([A-Z])\))"), line(R"(\b([A-Z]) )" + kWay);
    SaidValues said;
    said.rest = withHyphens(statement);
    std::smatch match;
    while (std::regex_search(said.rest, match, whole)) {
        SaidVector& vector = said.vectors[match[1]];
        vector.size = std::stod(match[2]);
        vector.unit = match[3];
        vector.way = wayIn(match, 4);
        said.rest = match.prefix().str() + "#" + match.suffix().str();
    }
    while (std::regex_search(said.rest, match, behind)) {
        said.vectors[match[7]].way = wayIn(match, 1);
        said.rest = match.prefix().str() + "#" + match.suffix().str();
    }
    while (std::regex_search(said.rest, match, line)) {
        said.vectors[match[1]].way = wayIn(match, 2);
        said.rest = match.prefix().str() + "#" + match.suffix().str();
    }
    return said;
}

inline std::string plainNumber(double value) {
    char text[64];
    std::snprintf(text, sizeof text, "%.10g", value);
    return text;
}

/// The same of a sketch.
inline std::map<std::string, SaidVector> valuesOf(const Sketch& sketch) {
    std::map<std::string, SaidVector> all;
    const auto add = [&](const Force& force) {
        SaidVector said;
        if (force.magnitude.value) {
            said.size = *force.magnitude.value;
            said.unit = symbolOf(sketch.forceUnit);
        }
        if (const auto* angle = std::get_if<AngleForm>(&force.direction.form))
            said.way = plainNumber(angle->value);
        if (const auto* slope = std::get_if<SlopeForm>(&force.direction.form))
            said.way = plainNumber(slope->run) + " : " + plainNumber(slope->rise);
        if (const auto* bearing = std::get_if<BearingForm>(&force.direction.form))
            said.way = bearing->from + plainNumber(bearing->degrees) + bearing->toward;
        if (said.size || !said.way.empty())
            all[force.name] = said;
    };
    for (const Force& force : sketch.forces)
        add(force);
    if (sketch.sum.magnitude.value != 0.0)
        add(sketch.sum);
    return all;
}

/// The form of the answer, from the last sentence.
struct SaidForm {
    std::vector<std::string> sizes, ways; ///< names
    std::string unit;                     ///< "N"
    int figures = 0, decimals = 0;
    bool isBearing = false, isSigned = false, isBoth = false;
    std::string axis; ///< "+x"
    bool clockwise = false;
};

inline std::vector<std::string> namesIn(const std::string& list) {
    static const std::regex name(R"(\b[A-Z]\b)");
    std::vector<std::string> names;
    for (std::sregex_iterator at(list.begin(), list.end(), name), end; at != end; ++at)
        names.push_back(at->str());
    return names;
}

inline std::optional<SaidForm> formIn(const std::string& statement) {
    static const std::regex form(
        R"((For each of the two, state|State) ([A-Z](?:(?:, | and )[A-Z])*) in (newtons|kilonewtons|pounds-force|kips|kilograms-force) to (\w+) significant figures)"
        R"((?:,? and (its direction|the direction of [A-Z]) (?:in degrees to (\w+) decimal places?, measured (counter-clockwise|clockwise) from the ([+-][xy]) axis|as a bearing, its degrees to (\w+) decimal places?))?(, positive for a pull and negative for a push)?\.$)");
    static const std::map<std::string, int> counts{{"one", 1}, {"two", 2}, {"three", 3}, {"four", 4}};
    static const std::map<std::string, std::string> units{{"newtons", "N"},
                                                          {"kilonewtons", "kN"},
                                                          {"pounds-force", "lbf"},
                                                          {"kips", "kip"},
                                                          {"kilograms-force", "kgf"}};
    const std::string text = withHyphens(statement);
    std::smatch match;
    if (!std::regex_search(text, match, form))
        return std::nullopt;
    SaidForm said;
    said.isBoth = match[1] != "State";
    said.sizes = namesIn(match[2]);
    said.unit = units.at(match[3]);
    said.figures = counts.at(match[4]);
    if (match[5].matched)
        said.ways = match[5] == "its direction" ? said.sizes : namesIn(match[5].str().substr(4));
    said.isBearing = match[9].matched;
    if (match[5].matched)
        said.decimals = counts.at(said.isBearing ? match[9] : match[6]);
    said.clockwise = match[7] == "clockwise";
    said.axis = match[8];
    said.isSigned = match[10].matched;
    return said;
}

/// To significant figures, by the C library.
inline std::string toFigures(double value, int figures) {
    char text[64];
    std::snprintf(text, sizeof text, "%.*e", figures - 1, value);
    return plainNumber(std::strtod(text, nullptr));
}

/// Degrees of (x, y) from an axis ("+x") in a sense, within half a turn.
inline double degreesFrom(const std::string& axis, bool clockwise, double x, double y) {
    static const std::map<std::string, double> axes{{"+x", 0}, {"+y", 90}, {"-x", 180}, {"-y", 270}};
    const double absolute = std::atan2(y, x) * 180 / std::acos(-1.0) - axes.at(axis);
    return std::remainder(clockwise ? -absolute : absolute, 360);
}

inline std::string asBearing(double x, double y, int decimals) {
    char text[64];
    std::snprintf(text, sizeof text, "%c%.*f%c", y >= 0 ? 'N' : 'S', decimals,
                  std::atan2(std::fabs(x), std::fabs(y)) * 180 / std::acos(-1.0), x >= 0 ? 'E' : 'W');
    return text;
}

} // namespace tailpoint::testing
