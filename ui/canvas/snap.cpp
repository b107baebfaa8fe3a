// SPDX-License-Identifier: MIT
#include "ui/canvas/snap.h"

#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace tailpoint {

namespace {

Sentence sentenceOf(const char* text, const Words& symbol) {
    return sentence(QCoreApplication::translate("tailpoint::Canvas", text), symbol);
}

std::array<double, 3> tiers(AngleUnit unit) {
    switch (unit) {
    case AngleUnit::gon:
        return {1, 5, 25};
    case AngleUnit::rad:
        return {std::numbers::pi / 180, std::numbers::pi / 36, std::numbers::pi / 12};
    case AngleUnit::deg:
        break;
    }
    return {1, 5, 15};
}

double arcPixels(const SnapField& field, double magnitude, double angle, AngleUnit unit) {
    return toRadians(std::abs(angle), unit) * magnitude * field.pixelsPerUnit;
}

const SnapLine* nearestLine(const Polar& p, const SnapField& field, AngleUnit unit) {
    const SnapLine* best = nullptr;
    double least = kLineReach;
    for (const SnapLine& line : field.lines) {
        const double away = arcPixels(field, p.magnitude, normalized(p.referred - line.referred, unit), unit);
        if (away < least) {
            least = away;
            best = &line;
        }
    }
    return best;
}

bool isMultiple(double value, double step) {
    const double count = value / step;
    return std::abs(count - std::round(count)) < 1e-9 * std::max(1.0, std::abs(count));
}

void snapDirection(Snapped& to, const SnapField& field, AngleUnit unit) {
    if (const SnapLine* line = nearestLine(to.polar, field, unit)) {
        to.polar.referred = line->referred;
        to.mark.direction = true;
        to.mark.words = line->words;
        return;
    }
    const double step = angleStep(field, to.polar.magnitude, unit);
    to.polar.referred = normalized(std::round(to.polar.referred / step) * step, unit);
    to.mark.direction = isMultiple(to.polar.referred, tiers(unit).back());
}

void snapMagnitude(Snapped& to, const SnapField& field) {
    const double step = magnitudeStep(field);
    to.polar.magnitude = std::round(to.polar.magnitude / step) * step;
    to.mark.magnitude = to.polar.magnitude > 0 && isMultiple(to.polar.magnitude, field.division);
}

} // namespace

std::vector<SnapLine> snapLines(const Sketch& sketch, int but) {
    std::vector<SnapLine> lines;
    const double turn = turnIn(sketch.angleUnit);
    const Things things(sketch);
    const auto add = [&](const Force& force, VectorId id) {
        const std::optional<double> at = referredDirection(force.direction, sketch);
        if (!at) {
            return;
        }
        const auto line = [&](double by, const char* text) {
            lines.push_back(
                {normalized(*at + by, sketch.angleUnit), sentenceOf(text, symbolWords(things, id))});
        };
        line(0, QT_TRANSLATE_NOOP("tailpoint::Canvas", "along %1"));
        line(turn / 2, QT_TRANSLATE_NOOP("tailpoint::Canvas", "opposite to %1"));
        line(turn / 4, QT_TRANSLATE_NOOP("tailpoint::Canvas", "at right angles to %1"));
        line(-turn / 4, QT_TRANSLATE_NOOP("tailpoint::Canvas", "at right angles to %1"));
    };
    for (std::size_t i = 0; i < std::min(sketch.forces.size(), kMostLines); ++i) {
        if (static_cast<int>(i) != but) {
            add(sketch.forces[i], forceVector(i));
        }
    }
    if (but != kSumIndex) {
        add(sketch.sum, kSumVector);
    }
    return lines;
}

double magnitudeStep(const SnapField& field) {
    const double least = kFinestStep / field.pixelsPerUnit;
    const double decade = std::pow(10.0, std::floor(std::log10(least)));
    for (const double step : {1.0, 2.0, 5.0}) {
        if (step * decade >= least) {
            return step * decade;
        }
    }
    return 10 * decade;
}

double finestAngleStep(AngleUnit unit) {
    return tiers(unit).front();
}

double angleStep(const SnapField& field, double magnitude, AngleUnit unit) {
    const auto steps = tiers(unit);
    const auto fits = [&](double step) { return arcPixels(field, magnitude, step, unit) >= kFinestStep; };
    const auto found = std::find_if(steps.begin(), steps.end(), fits);
    return found != steps.end() ? *found : steps.back();
}

Snapped snap(const Polar& pointer, const SnapField& field, const Sketch& sketch, bool magnitudeFree,
             bool directionFree) {
    Snapped to{pointer, {}};
    if (field.on && directionFree) {
        snapDirection(to, field, sketch.angleUnit);
    }
    if (field.on && magnitudeFree) {
        snapMagnitude(to, field);
    }
    return to;
}

} // namespace tailpoint
