// SPDX-License-Identifier: MIT
// The words of the file format, in one place for reading and writing.
#pragma once

#include "core/sketch/sketch.h"

#include <array>
#include <string_view>
#include <utility>

namespace tailpoint {

inline constexpr std::string_view kSketchFormat = "tailpoint-sketch";

inline constexpr std::array<std::string_view, 17> kSketchKeys{
    "format", "version", "title",    "units", "reference", "figures", "moreAfterOne", "decimals", "gravity",
    "forces", "sum",     "smallest", "cases", "caution",   "drawn",   "checked",      "revision"};
inline constexpr std::array<std::string_view, 8> kForceKeys{
    "name", "magnitude", "direction", "sense", "limit", "permitted", "label", "directionLabel"};
inline constexpr std::array<std::string_view, 2> kLimitKeys{"value", "unit"};
inline constexpr std::array<std::string_view, 2> kPermittedKeys{"axis", "within"};
inline constexpr std::array<std::string_view, 2> kCaseKeys{"name", "changes"};
inline constexpr std::array<std::string_view, 2> kChangeKeys{"magnitude", "direction"};
inline constexpr std::array<std::string_view, 2> kUnitKeys{"force", "angle"};
inline constexpr std::array<std::string_view, 2> kReferenceKeys{"axis", "sense"};
inline constexpr std::array<std::string_view, 6> kMagnitudeKeys{"value", "plusMinus", "plusMinusPercent",
                                                                "plus",  "minus",     "unit"};
inline constexpr std::array<std::string_view, 8> kDirectionKeys{
    "value", "slope", "bearing", "plusMinus", "plusMinusPercent", "plus", "minus", "unit"};

/// Axes with a name; any other is a number of degrees counter-clockwise from +x.
inline constexpr std::array<std::pair<std::string_view, double>, 4> kNamedAxes{
    {{"+x", 0.0}, {"+y", 90.0}, {"-x", 180.0}, {"-y", 270.0}}};

} // namespace tailpoint
