// SPDX-License-Identifier: MIT
#include "ui/canvas/unit_at.h"

#include "core/sketch/shown.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// How a unit stands behind a number: " N", "°", " gon".
std::string behindNumber(UnitOf of, const Sketch& sketch) {
    if (of == UnitOf::force) {
        return " " + std::string(symbolOf(sketch.forceUnit));
    }
    return sketch.angleUnit == AngleUnit::deg ? "°" : " " + std::string(nameOf(sketch.angleUnit));
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Behind the last number that has it: "340 ± 5 N", "340 N ± 5 %".
std::optional<std::size_t> placeOf(const std::string& unit, const std::string& text) {
    const std::size_t at = text.rfind(unit);
    const bool follows = at != std::string::npos && at > 0 && isDigit(text[at - 1]);
    const std::size_t end = at + unit.size();
    return follows && (end == text.size() || text[end] == ' ') ? std::optional(at) : std::nullopt;
}

std::vector<Run> firstLine(const Text& text) {
    std::vector<Run> line;
    std::copy_if(text.runs.begin(), text.runs.end(), std::back_inserter(line),
                 [](const Run& run) { return run.line == 0; });
    return line;
}

double startOf(const Text& text, double width) {
    switch (text.anchor) {
    case Anchor::start:
        return text.baseline.x;
    case Anchor::end:
        return text.baseline.x - width;
    case Anchor::middle:
        break;
    }
    return text.baseline.x - width / 2;
}

} // namespace

QRectF UnitOnSheet::target(double side) const {
    constexpr double kAir = 3; // at its left: a space parts it from the number
    const double left = box.left() - (of == UnitOf::force ? kAir : 0);
    const double right = std::max(box.right() + kAir, left + side);
    const double height = std::max(box.height() + 2 * kAir, side);
    return {left, box.center().y() - height / 2, right - left, height};
}

std::optional<UnitOnSheet> unitOf(const Scene& scene, const Text& text) {
    std::vector<Run> line = firstLine(text);
    if (line.empty()) {
        return std::nullopt;
    }
    const auto measured = [&](const std::vector<Run>& runs) {
        return scene.measure().measure(runs, text.face, text.size);
    };
    const TextExtent whole = measured(line);
    for (const UnitOf of : {UnitOf::force, UnitOf::angle}) {
        const std::string unit = behindNumber(of, scene.sketch()), last = line.back().text;
        const auto at = placeOf(unit, last);
        if (!at) {
            continue;
        }
        const double start = startOf(text, whole.width);
        line.back().text = last.substr(0, *at + (unit.front() == ' ' ? 1 : 0));
        const double from = measured(line).width;
        line.back().text = last.substr(0, *at + unit.size());
        const double to = measured(line).width;
        return UnitOnSheet{of, scene.sheet().toPixels(Box{start + from, text.baseline.y - whole.ascent,
                                                          to - from, whole.ascent + whole.descent})};
    }
    return std::nullopt;
}

} // namespace tailpoint
