// SPDX-License-Identifier: MIT
// How much of its limit a vector uses, as a small bar that is read without colour: what holds throughout the
// tolerances is filled, what only a part of them reaches is hatched, and a stroke stands where the limit is.
#pragma once

#include "core/explain/limits.h"

#include <string>
#include <string_view>
#include <vector>

namespace tailpoint {

/// Places along the bar, 0 at its left end, 1 at its right one.
struct LimitBar {
    double certain = 0;  ///< filled up to here
    double possible = 0; ///< hatched from `certain` up to here
    double limit = 0;    ///< 100 per cent, always between 0 and 1
    bool isOpen = false; ///< goes on beyond the right end
};
/// A stated limit or sector as it is shown: the bar, what is read out for it, a word and a sentence.
struct LimitShown {
    Bound verdict = Bound::within;
    LimitBar bar;
    std::string spoken;
    Prose sentence;
};
/// Limits first, then permitted directions; empty where the sketch states none. `range` as in limitsOf().
std::vector<LimitShown> limitsShown(const Sketch& sketch, const Solution& solution,
                                    const tolerance::AnswerRange* range,
                                    const Sentences* sentences = nullptr);
/// Of the answer with this number, or of what is given where there is none.
std::vector<LimitShown> limitsShown(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                    const tolerance::Ranges& ranges,
                                    const Sentences* sentences = nullptr);
/// "within", "over", "straddles"; what is not within has a mark in front, so that it is seen at a glance.
std::string verdictWord(Bound verdict, const Sentences* sentences = nullptr);

LimitBar barOf(const LimitUse& use);
LimitBar barOf(const DirectionUse& use); ///< the angle off the axis, of the permitted one

/// Slanted strokes of a hatch within a box, `step` apart along x, y downwards; lengths in one unit, each > 0.
struct HatchStroke {
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
};
std::vector<HatchStroke> hatch(double left, double top, double width, double height, double step);

/// An SVG element to set into a page; `label` is what is read out for it. Its size in CSS pixels.
inline constexpr double kBarWidth = 160, kBarHeight = 12;
std::string barSvg(const LimitBar& bar, std::string_view label);

} // namespace tailpoint
