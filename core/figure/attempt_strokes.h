// SPDX-License-Identifier: MIT
// What can be drawn of an answer that was marked: the construction that gives its number, and the right one.
// The former is made from the changed question or the changed chain (Finding::read, Finding::numbers), never
// from what is right: it tells no number that the learner hasn't found or that the slip doesn't lead to.
#pragma once

#include "core/figure/words.h"
#include "core/mark/mark.h"

namespace tailpoint {

/// Sketch coordinates: sheet's force unit, x right, y up, the common point at the origin.
struct AttemptStroke {
    enum class Kind : std::uint8_t {
        arrow,
        line,
        ray,    ///< from `from` through `to` and on
        circle, ///< about `from` through `to`
        arc     ///< about `from`, from the leg to `to` on by `sweep`; how large says who draws it
    };
    Kind kind = Kind::line;
    VectorId of{}; ///< whose it is; kNobody: a side or a leg
    Eigen::Vector2d from{0, 0}, to{0, 0};
    double sweep = 0;         ///< radians, counter-clockwise
    bool isDirection = false; ///< an arc from the axis: it has a head
    bool isRight = false;     ///< of the right construction
    int aside = 0; ///< steps off its line, to the left as seen along it: where strokes would lie on others
    Runs label{};  ///< empty: none
};

/// The construction of the likeliest finding; empty where there is none, and for more forces than could be
/// told apart.
std::vector<AttemptStroke> slipStrokes(const Sketch& sketch, const Marking& marking);
/// What was sought, in every answer, with the sides that lead to it.
std::vector<AttemptStroke> rightStrokes(const Sketch& sketch, const Solved& solved);

} // namespace tailpoint
