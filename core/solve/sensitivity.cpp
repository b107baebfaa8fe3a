// SPDX-License-Identifier: MIT
// How far a small turn, or a small change of length, moves an answer near parallelism and near tangency.
#include "core/solve/words.h"

#include "core/sketch/shown.h"

#include <algorithm>
#include <numbers>
#include <optional>

namespace tailpoint {
namespace {

using kernel::Circle;
using kernel::Line;
using kernel::Roots;
using kernel::Target;
using kernel::Vec;

constexpr long double kDegree = std::numbers::pi_v<long double> / 180;
// Loci that cross at less than this angle are called nearly parallel, or nearly tangent: there a tenth of a
// degree moves the answer by a twentieth and more.
constexpr long double kNearAngle = 2 * kDegree;
constexpr long double kTurn = 0.1L * kDegree;
constexpr long double kPart = 0.001L; // of a length, where no direction is given that could be turned

Vec turned(Vec v, long double angle) {
    return std::cos(angle) * v + std::sin(angle) * kernel::leftOf(v);
}

long double angleBetween(Vec a, Vec b) {
    return std::fabs(std::atan2(kernel::cross(a, b), kernel::dot(a, b)));
}

/// Largest change of a magnitude and of a direction (radians) from one set of roots to another.
struct Change {
    long double magnitude = 0, angle = 0;
};

Change changeBetween(const Roots& before, const Roots& after) {
    Change change;
    for (int i = 0; i < before.count; ++i) {
        const auto index = static_cast<std::size_t>(i);
        const auto compare = [&](const kernel::Found& a, const kernel::Found& b) {
            change.magnitude = std::max(change.magnitude, std::fabs(a.magnitude - b.magnitude));
            change.angle = std::max(change.angle, angleBetween(a.unit, b.unit));
        };
        compare(before.root[index].first, after.root[index].first);
        compare(before.root[index].second, after.root[index].second);
    }
    return change;
}

/// The larger change of two trials; empty where one of them loses an answer.
std::optional<Change> worst(const Roots& before, const Roots& less, const Roots& more) {
    if (less.count != before.count || more.count != before.count) {
        return std::nullopt;
    }
    const Change a = changeBetween(before, less);
    const Change b = changeBetween(before, more);
    return Change{std::max(a.magnitude, b.magnitude), std::max(a.angle, b.angle)};
}

std::string angle(long double radians, const Sketch& sketch) {
    return shownAngleFromRadians(static_cast<double>(radians), sketch);
}

Remark nearlyParallel(const Sketch& sketch, const Line& first, const Line& second, const Target& target,
                      const Roots& roots) {
    const auto turnedBy = [&](long double by) {
        return kernel::meet(first, Line{turned(second.unit, by), second.ray}, target);
    };
    const std::optional<Change> change = worst(roots, turnedBy(-kTurn), turnedBy(kTurn));
    if (!change || roots.sine <= std::sin(kTurn)) {
        return {MessageCode::nearlyParallel,
                "The lines of action are nearly parallel: a turn of 0.1° turns the answer round."};
    }
    return {MessageCode::nearlyParallel, "The lines of action are nearly parallel: the answer changes by " +
                                             shown(change->magnitude, sketch) + " for 0.1°."};
}

Remark nearlyTangent(const Sketch& sketch, const Line& line, const Circle& circle, const Target& target) {
    const auto turnedBy = [&](long double by) {
        return kernel::meet(Line{turned(line.unit, by), line.ray}, circle, target);
    };
    const std::optional<Change> change = worst(turnedBy(0), turnedBy(-kTurn), turnedBy(kTurn));
    if (!change) {
        return {MessageCode::nearlyTangent,
                "Line and circle are nearly tangent: a turn of 0.1° leaves no answer."};
    }
    return {MessageCode::nearlyTangent, "Line and circle are nearly tangent: the answer changes by " +
                                            shown(change->magnitude, sketch) + " and " +
                                            angle(change->angle, sketch) + " for 0.1°."};
}

Remark nearlyTangent(const Sketch& sketch, const Circle& first, const Circle& second, const Target& target) {
    const auto changedBy = [&](long double part) {
        return kernel::meet(first, second, Target{(1 + part) * target.vector, target.scale});
    };
    const std::optional<Change> change = worst(changedBy(0), changedBy(-kPart), changedBy(kPart));
    const std::string cause = " 0.1 % of the side they close with";
    if (!change) {
        return {MessageCode::nearlyTangent,
                "The circles are nearly tangent: a change of" + cause + " leaves no answer."};
    }
    return {MessageCode::nearlyTangent, "The circles are nearly tangent: the answer changes by " +
                                            angle(change->angle, sketch) + " for" + cause + "."};
}

} // namespace

Remarks sensitivityWords(const Sketch& sketch, const Question& question, const Roots& roots) {
    const bool single = roots.outcome == kernel::Outcome::one || roots.outcome == kernel::Outcome::two;
    const Target target = question.target();
    if (!single || roots.sine >= std::sin(kNearAngle) || roots.sine == 0 ||
        kernel::length(target.vector) == 0) {
        return {};
    }
    const Side first = sideOf(sketch, question, question.unknowns[0]);
    const Side second = sideOf(sketch, question, question.unknowns[1]);
    const auto* firstLine = std::get_if<Line>(&first);
    const auto* secondLine = std::get_if<Line>(&second);
    if (firstLine != nullptr && secondLine != nullptr) {
        return {nearlyParallel(sketch, *firstLine, *secondLine, target, roots)};
    }
    if (firstLine != nullptr) {
        return {nearlyTangent(sketch, *firstLine, std::get<Circle>(second), target)};
    }
    if (secondLine != nullptr) {
        return {nearlyTangent(sketch, *secondLine, std::get<Circle>(first), target)};
    }
    return {nearlyTangent(sketch, std::get<Circle>(first), std::get<Circle>(second), target)};
}

} // namespace tailpoint
