// SPDX-License-Identifier: MIT
#include "ui/document/new_force.h"

#include "core/quantity/decimals.h"
#include "ui/document/sketch_document.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {

namespace {

using Vec = Eigen::Vector2d;

constexpr double kFirst = 25;                        // degrees
constexpr double kNear = 40, kFar = 110, kBest = 65; // degrees from the nearest neighbour
constexpr double kCovers = 12;                       // degrees: nearer than this one arrow hides the other
constexpr int kPlaces = 72;                          // directions tried round the turn
constexpr double kSizes[] = {0.75, 1.25, 1};         // of the others' mean: equal ones make a rhombus, last

struct Neighbours {
    std::vector<Vec> units;   ///< directions that are taken
    std::vector<Vec> forces;  ///< with their magnitudes
    double mean = 0;          ///< of the magnitudes that are known
    bool hasResultant = true; ///< the sum is to be found, and nothing else
};

double degreesBetween(const Vec& a, const Vec& b) {
    const double cross = a.x() * b.y() - a.y() * b.x();
    return std::abs(std::atan2(cross, a.dot(b))) * 180 / std::numbers::pi;
}

double nearestOf(const Vec& v, const std::vector<Vec>& others) {
    double least = 180;
    for (const Vec& other : others) {
        least = std::min(least, degreesBetween(v, other));
    }
    return least;
}

/// As found where there is an answer, else what is given of it.
SolvedForce asKnown(const Result& result, const Force& force, const SolvedForce* found) {
    if (found != nullptr) {
        return *found;
    }
    SolvedForce known;
    known.magnitude = force.magnitude.value.value_or(0);
    if (const auto unit = unitVector(force.direction, result.sketch)) {
        known.unit = Vec(static_cast<double>(unit->cos), static_cast<double>(unit->sin));
        known.vector = known.magnitude * known.unit;
    }
    return known;
}

Neighbours neighboursIn(const Result& result) {
    const Sketch& sketch = result.sketch;
    const Solution* answer =
        result.chosen < result.solved.solutions.size() ? &result.solved.solutions[result.chosen] : nullptr;
    Neighbours all;
    double total = 0, count = 0;
    for (std::size_t i = 0; i < sketch.forces.size(); ++i) {
        const Force& force = sketch.forces[i];
        const SolvedForce known = asKnown(result, force, answer != nullptr ? &answer->forces[i] : nullptr);
        if (known.unit.squaredNorm() > 0) {
            all.units.push_back(known.unit);
            all.forces.push_back(known.vector);
        }
        total += known.magnitude;
        count += known.magnitude > 0 ? 1 : 0;
        all.hasResultant = all.hasResultant && isGiven(force.magnitude) && isGiven(force.direction);
    }
    all.mean = count > 0 ? total / count : 0;
    const bool sumFound = !isGiven(sketch.sum.magnitude) && !isGiven(sketch.sum.direction);
    all.hasResultant = all.hasResultant && sumFound;
    if (const auto unit = unitVector(sketch.sum.direction, sketch)) {
        all.units.emplace_back(static_cast<double>(unit->cos), static_cast<double>(unit->sin));
    }
    return all;
}

/// What the new resultant lacks: clear of every force, not small, rather across the sheet than up or down it.
double resultantCost(const Neighbours& all, const Vec& added) {
    Vec resultant = added;
    for (const Vec& force : all.forces) {
        resultant += force;
    }
    if (!all.hasResultant || resultant.norm() < all.mean / 2) {
        return all.hasResultant ? 40 : 0;
    }
    std::vector<Vec> arrows = all.units;
    arrows.push_back(added);
    const double hidden = std::max(0.0, kCovers - nearestOf(resultant, arrows));
    const double steep =
        std::atan2(std::abs(resultant.y()), std::abs(resultant.x())) * 180 / std::numbers::pi;
    return 5 * hidden + 0.1 * steep + (resultant.x() < 0 ? 1 : 0) + (resultant.y() < 0 ? 0.5 : 0);
}

double cost(const Neighbours& all, const Vec& added) {
    if (all.units.empty()) {
        return degreesBetween(
            added, {std::cos(kFirst * std::numbers::pi / 180), std::sin(kFirst * std::numbers::pi / 180)});
    }
    const double apart = nearestOf(added, all.units);
    const double crowded = apart < kNear || apart > kFar ? 100 : 0;
    return std::abs(apart - kBest) + crowded + resultantCost(all, added);
}

double roundMagnitude(double magnitude, double division) {
    const double step = std::min(division / 2, std::pow(10, std::floor(std::log10(magnitude))) / 2);
    return std::round(magnitude / step) * step;
}

} // namespace

Sketch withNewForce(const Result& result, double division) {
    const Sketch& sketch = result.sketch;
    const Neighbours all = neighboursIn(result);
    const int decimals = sketch.angleDecimals + (sketch.angleUnit == AngleUnit::rad ? 2 : 0);
    Force best;
    best.name = nextForceName(sketch);
    double least = HUGE_VAL;
    for (int place = 0; place < kPlaces; ++place) {
        const double step = sketch.angleUnit == AngleUnit::gon ? 5 : turnIn(sketch.angleUnit) / kPlaces;
        const double referred = normalized(place * step, sketch.angleUnit);
        const Direction direction{AngleForm{roundedToDecimals(referred, decimals)}, {}};
        const auto unit = *unitVector(direction, sketch);
        const Vec way(static_cast<double>(unit.cos), static_cast<double>(unit.sin));
        for (const double size : kSizes) {
            const double wanted = all.mean > 0 ? size * all.mean : 4 * division;
            const double magnitude = roundedToFigures(roundMagnitude(wanted, division), sketch.figures);
            const double now = cost(all, magnitude * way) + (size == 1 ? 3 : 0);
            if (now < least) {
                least = now;
                best.magnitude.value = magnitude;
                best.direction = direction;
            }
        }
    }
    Sketch after = sketch;
    after.forces.push_back(std::move(best));
    return after;
}

} // namespace tailpoint
