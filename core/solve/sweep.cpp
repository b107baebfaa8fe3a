// SPDX-License-Identifier: MIT
#include "core/solve/sweep.h"

#include "core/sketch/shown.h"
#include "core/solve/question.h"
#include "core/solve/sweep_curves.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace tailpoint {
namespace {

Force& vectorOf(Sketch& sketch, int index) {
    return index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(index)];
}

void addVariable(std::vector<Scalar>& all, const Sketch& sketch, int vector) {
    const Force& force = vectorAt(sketch, vector);
    if (vector == kSumIndex && isEquilibrium(sketch)) {
        return;
    }
    if (isGiven(force.magnitude)) {
        all.push_back({vector, false});
    }
    if (isGiven(force.direction)) {
        all.push_back({vector, true});
    }
}

double stepAt(const SweepRange& range, std::size_t step) {
    const auto n = static_cast<double>(range.steps), i = static_cast<double>(step);
    return step == range.steps ? range.to : (range.from * (n - i) + range.to * i) / n;
}

} // namespace

std::vector<Scalar> variable(const Sketch& sketch) {
    std::vector<Scalar> all;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        addVariable(all, sketch, static_cast<int>(i));
    }
    addVariable(all, sketch, kSumIndex);
    return all;
}

std::string nameOf(const Scalar& scalar, const Sketch& sketch) {
    return (scalar.isDirection ? "direction of " : "magnitude of ") + vectorAt(sketch, scalar.vector).name;
}

std::optional<double> presentValue(const Sketch& sketch, const Scalar& scalar) {
    const Force& force = vectorAt(sketch, scalar.vector);
    if (!scalar.isDirection) {
        return force.magnitude.value;
    }
    if (const auto* angle = std::get_if<AngleForm>(&force.direction.form)) {
        return angle->value;
    }
    return isGiven(force.direction) ? referredDirection(force.direction, sketch) : std::nullopt;
}

Sketch withValue(const Sketch& sketch, const Scalar& scalar, double value) {
    Sketch varied = sketch;
    Force& force = vectorOf(varied, scalar.vector);
    if (scalar.isDirection) {
        force.direction = Direction{AngleForm{value}, {}};
    } else {
        force.magnitude = Magnitude{value, {}};
    }
    return varied;
}

std::optional<std::string> faultOf(const SweepRange& range, const Sketch& sketch) {
    const auto all = variable(sketch);
    if (std::find(all.begin(), all.end(), range.varied) == all.end()) {
        return "the " + nameOf(range.varied, sketch) + " is not given, so it can't be varied";
    }
    if (range.from == range.to) {
        return "from and to are the same value; give two";
    }
    if (range.steps < 1 || range.steps > kMostSweepSteps) {
        return "steps are a whole number from 1 to " + std::to_string(kMostSweepSteps);
    }
    for (const double end : {range.from, range.to}) {
        if (const auto fault = firstFault(withValue(sketch, range.varied, end))) {
            return fault->message;
        }
    }
    return std::nullopt;
}

bool Curve::isConstant() const {
    constexpr double kNothing = 1e-12; // of its value: rounding
    return least && greatest && !least->isUnbounded && !greatest->isUnbounded &&
           greatest->value - least->value <= kNothing * std::max(std::fabs(least->value), 1e-300);
}

std::optional<double> Curve::between(double at) const {
    for (const auto& piece : pieces) {
        if (at < piece.front().at || at > piece.back().at) {
            continue;
        }
        const auto next = std::lower_bound(piece.begin(), piece.end(), at,
                                           [](const CurvePoint& point, double x) { return point.at < x; });
        if (next == piece.begin() || next->at == at) {
            return next->value;
        }
        const CurvePoint& before = *std::prev(next);
        const double part = (at - before.at) / (next->at - before.at);
        return before.value + part * (next->value - before.value);
    }
    return std::nullopt;
}

bool Sweep::hasAnswer() const {
    return std::any_of(curves.begin(), curves.end(), [](const Curve& curve) { return curve.least; });
}

Sweep sweep(const Sketch& sketch, const SweepRange& range) {
    const SweepAnswers answers(sketch, range);
    Sweep made;
    made.range = range;
    for (std::size_t i = 0; i <= range.steps; ++i) {
        made.at.push_back(stepAt(range, i));
    }
    const SweepSamples samples(answers, SweepBounds(sketch, range), made.at);
    made.curves = curvesOf(answers, samples);
    made.gaps = samples.gaps();
    made.isProven = samples.isProven();
    return made;
}

} // namespace tailpoint
