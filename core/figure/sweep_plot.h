// SPDX-License-Identifier: MIT
// The curves of a sweep on a sheet: magnitudes above, directions below them over the same axis, a key with
// least and greatest in words under both. A display list like any other figure.
#pragma once

#include "core/figure/display_list.h"
#include "core/solve/sweep.h"

#include <string>
#include <vector>

namespace tailpoint {

class Sentences;

struct SweepPlotOptions {
    double width = 720, height = 480; ///< points
    double textSize = 10;             ///< points
    bool title = true;                ///< what varies, above the curves
    bool key = true;                  ///< which line is which, with the extremes in words
    std::vector<std::string> feet{};  ///< lines under everything: the caution, where it comes from
    const Sentences* sentences = nullptr;
};

/// Where the curves stand, for whoever draws something over them.
struct SweepPanel {
    Box box;
    double low = 0, high = 1; ///< values at the foot and at the head
    bool areDirections = false;
};
struct SweepPlot {
    DisplayList list;
    std::vector<SweepPanel> panels; ///< none on a sheet that is too small, or of a sweep without curves
    double from = 0, to = 1;        ///< at the left and at the right, from < to

    double xOf(double at, const SweepPanel& panel) const {
        return panel.box.left + panel.box.width * ((at - from) / (to - from));
    }
    static double yOf(double value, const SweepPanel& panel) {
        return panel.box.bottom() - panel.box.height * ((value - panel.low) / (panel.high - panel.low));
    }
};

/// Curves differ by their dashes before their colours. A value far above the others (lines of action nearly
/// parallel) is cut off at the panel's head. Texts touch neither each other nor a curve: an extreme whose
/// label finds no room is only marked, and read in the key.
SweepPlot sweepPlot(const Sweep& sweep, const Sketch& sketch, const SweepPlotOptions& options,
                    const TextMeasure& measure);

/// A line at the present value of what varies with a dot on every curve; nothing outside the range.
DisplayList sweepMarker(const SweepPlot& plot, const Sweep& sweep, const Sketch& sketch, double present,
                        double textSize, const TextMeasure& measure);

/// Places of marks between `low` and `high`, about `wanted` of them, at 1, 2 or 5 times a power of ten; of
/// degrees at 1, 2, 5, 10, 15, 30, 45, 90 and so on.
std::vector<double> niceMarks(double low, double high, int wanted, bool areDegrees);

} // namespace tailpoint
