// SPDX-License-Identifier: MIT
// What of a sketch a view has to show, and what stands in its way: for the view that fits it and for the view
// that holds still.
#pragma once

#include "core/figure/drawing.h"

namespace tailpoint {

/// A division is a multiple of this length (points), so that the scale can be said and measured.
inline constexpr double kScaleStep = 72 / 25.4 * 1.25;

/// Sketch coordinates.
struct Content {
    std::vector<Eigen::Vector2d> points;
    std::vector<std::pair<Eigen::Vector2d, Eigen::Vector2d>> strokes;
    void stroke(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
        points.push_back(a);
        points.push_back(b);
        strokes.emplace_back(a, b);
    }
};

/// The vectors of every answer, the construction and the loci.
Content contentOf(const Sketch& sketch, const Solved& solved, const Construction& construction,
                  const FigureOptions& options);

/// How far the content reaches from the common point, force units: left and down <= 0 <= right and up.
struct Bounds {
    double left = 0, right = 0, down = 0, up = 0;
};
Bounds boundsOf(const Content& content);

/// The force triangle where it stands alone, without the other answer's; null otherwise.
const ForceTriangle* aloneIn(const Solved& solved, const Construction& construction,
                             const FigureOptions& options);

/// Down to a scale at which a division is a multiple of kScaleStep.
double niceScale(double most, double width, double height);

/// Title block and note, as they will stand at this scale.
std::vector<Box> bandOf(const Sketch& sketch, const Solved& solved, const Construction& construction,
                        const FigureOptions& options, const View& view, const TextMeasure* measure);

/// Does a stroke of the content run through the box?
bool crosses(const Content& content, const View& view, const Box& box);

} // namespace tailpoint
