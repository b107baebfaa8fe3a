// SPDX-License-Identifier: MIT
// Texts beside the curves of a sweep: extremes where there is room, names at the right. Used by sweepPlot().
#pragma once

#include "core/figure/sweep_plot.h"
#include "core/figure/words.h"

namespace tailpoint {

Text sweepText(Point baseline, Runs runs, Anchor anchor, Role ink, double size, const TextMeasure& measure);

class SweepLabels {
public:
    SweepLabels(const SweepPanel& panel, double size, const TextMeasure& measure)
        : m_panel(panel), m_size(size), m_measure(measure) {}

    void avoid(const Path& path) { m_strokes.push_back(path); }
    /// `isLast`: the others choose first.
    void extreme(Point at, Runs words, bool isLast);
    void name(Runs runs, Point end);
    /// What found a place: no two touch, and no extreme touches a curve.
    std::vector<Item> placed() const;

private:
    struct Wanted {
        Point at;
        Runs words;
    };
    bool isFree(const Box& box, const std::vector<Box>& taken) const;
    bool isNearOther(const Box& box, Point own) const;
    void placeExtremes(std::vector<Item>& items, std::vector<Box>& taken) const;
    void placeNames(std::vector<Item>& items, std::vector<Box>& taken) const;

    SweepPanel m_panel;
    double m_size;
    const TextMeasure& m_measure;
    std::vector<Path> m_strokes;
    std::vector<Wanted> m_extremes, m_names;
};

} // namespace tailpoint
