// SPDX-License-Identifier: MIT
// Snapping: where a dragged tip or body comes to rest. Pure arithmetic, no widget.
#pragma once

#include "core/explain/question.h"
#include "ui/canvas/force_edits.h"

#include <vector>

namespace tailpoint {

/// A direction that a drag may catch: the line of another force, its opposite, its perpendicular.
struct SnapLine {
    double referred = 0;
    Sentence words; ///< "along P", "opposite to P", "at right angles to P"
};

/// The lines are taken at the start of a drag; the rest goes with the scale.
struct SnapField {
    double pixelsPerUnit = 1;
    double division = 50; ///< force units in one division of the grid
    std::vector<SnapLine> lines;
    bool on = true;
};

/// The lines of the given directions but that of `but`; of the first kMostLines forces, since more would
/// catch everywhere.
inline constexpr std::size_t kMostLines = 100;
std::vector<SnapLine> snapLines(const Sketch& sketch, int but);

/// The finest of 1, 2, 5 times a power of ten that is at least kFinestStep pixels apart.
double magnitudeStep(const SnapField& field);
/// The finest of the tiers (1, 5, 15 degrees; 1, 5, 25 gon; the same parts of a turn as degrees in radians)
/// that is at least kFinestStep pixels apart at this magnitude.
double angleStep(const SnapField& field, double magnitude, AngleUnit unit);
double finestAngleStep(AngleUnit unit);
inline constexpr double kFinestStep = 4;  ///< pixels
inline constexpr double kLineReach = 6;   ///< pixels across a line
inline constexpr double kOriginReach = 6; ///< pixels: nearer to the tail a drag makes nothing

/// What a drag has snapped to, for the quiet mark.
struct SnapMark {
    bool direction = false; ///< a line or a multiple of the coarsest tier: mark the ray
    bool magnitude = false; ///< a whole number of divisions: mark the circle
    Sentence words;         ///< empty where the readout's own numbers say it
};

struct Snapped {
    Polar polar;
    SnapMark mark;
};

/// Snaps both, or only what is not held.
Snapped snap(const Polar& pointer, const SnapField& field, const Sketch& sketch, bool magnitudeFree = true,
             bool directionFree = true);

} // namespace tailpoint
