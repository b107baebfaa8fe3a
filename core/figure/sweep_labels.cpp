// SPDX-License-Identifier: MIT
#include "core/figure/sweep_labels.h"

#include "core/explain/swept.h"
#include "core/figure/geometry.h"

#include <algorithm>
#include <array>

namespace tailpoint {

Text sweepText(Point baseline, Runs runs, Anchor anchor, Role ink, double size, const TextMeasure& measure) {
    const TextExtent extent = measure.measure(runs, Face::sans, size);
    const double part = anchor == Anchor::start ? 0 : anchor == Anchor::middle ? 0.5 : 1;
    Text text;
    text.role = Role::label;
    text.ink = ink;
    text.baseline = baseline;
    text.anchor = anchor;
    text.face = Face::sans;
    text.size = size;
    text.runs = std::move(runs);
    text.box = {baseline.x - part * extent.width, baseline.y - extent.ascent, extent.width,
                extent.ascent + extent.descent};
    return text;
}

void SweepLabels::extreme(Point at, Runs words, bool isLast) {
    m_extremes.insert(isLast ? m_extremes.end() : m_extremes.begin(), {at, std::move(words)});
}

void SweepLabels::name(Runs runs, Point end) {
    m_names.push_back({end, std::move(runs)});
}

bool SweepLabels::isFree(const Box& box, const std::vector<Box>& taken) const {
    if (!inside(box, m_panel.box) ||
        std::any_of(taken.begin(), taken.end(), [&](const Box& other) { return overlap(box, other); })) {
        return false;
    }
    for (const Path& path : m_strokes) {
        const Box around = grown(box, 1 + path.width / 2);
        for (std::size_t i = 1; i < path.points.size(); ++i) {
            if (meets(around, path.points[i - 1], path.points[i])) {
                return false;
            }
        }
    }
    return true;
}

/// Whether a mark of another extreme lies so near that the words could be taken for its own.
bool SweepLabels::isNearOther(const Box& box, Point own) const {
    return std::any_of(m_extremes.begin(), m_extremes.end(), [&](const Wanted& other) {
        return length(other.at - own) > 1 && contains(grown(box, 1.2 * m_size), other.at);
    });
}

void SweepLabels::placeExtremes(std::vector<Item>& items, std::vector<Box>& taken) const {
    for (const Wanted& wanted : m_extremes) {
        taken.push_back(boxAround(wanted.at, m_size, m_size));
    }
    // Below or above its mark, then aside, then farther off.
    static constexpr std::array sideways{0.0, -0.5, 0.5};
    static constexpr std::array upward{1.3, -0.9, 0.0, 2.2, -1.8};
    for (const Wanted& wanted : m_extremes) {
        const double width = m_measure.measure(wanted.words, Face::sans, m_size).width;
        const auto place = [&] {
            for (const double up : upward) {
                for (const double side : sideways) {
                    const Point at{wanted.at.x + side * (width + 1.6 * m_size),
                                   wanted.at.y + up * m_size + 0.3 * m_size};
                    Text text = sweepText(at, wanted.words, Anchor::middle, Role::label, m_size, m_measure);
                    if (isFree(text.box, taken) && !isNearOther(text.box, wanted.at)) {
                        taken.push_back(grown(text.box, 2));
                        items.emplace_back(std::move(text));
                        return;
                    }
                }
            }
        };
        place();
    }
}

/// Beside their curves' ends, parted where they would touch; at the panel's right where another curve runs.
void SweepLabels::placeNames(std::vector<Item>& items, std::vector<Box>& taken) const {
    const double step = 0.7 * m_size;
    for (const Wanted& name : m_names) {
        const auto textAt = [&](double x, double y) {
            return sweepText({x, y + 0.35 * m_size}, name.words, Anchor::start, Role::label, m_size,
                             m_measure);
        };
        const auto place = [&](double x, bool mayTouch) {
            for (int i = 0; i < 12; ++i) {
                const double y = name.at.y + (i % 2 == 1 ? 1 : -1) * ((i + 1) / 2) * step;
                Text text = textAt(x, std::clamp(y, m_panel.box.top, m_panel.box.bottom()));
                const bool touches = std::any_of(taken.begin(), taken.end(),
                                                 [&](const Box& box) { return overlap(box, text.box); });
                if (!touches && (mayTouch || isFree(text.box, taken))) {
                    taken.push_back(text.box);
                    items.emplace_back(std::move(text));
                    return true;
                }
            }
            return false;
        };
        const double beside = name.at.x + 0.8 * m_size, right = m_panel.box.right() + 0.8 * m_size;
        if (beside >= right || !place(beside, false)) {
            place(right, true);
        }
    }
}

std::vector<Item> SweepLabels::placed() const {
    std::vector<Item> items;
    std::vector<Box> taken;
    placeNames(items, taken);
    placeExtremes(items, taken);
    return items;
}

DisplayList sweepMarker(const SweepPlot& plot, const Sweep& sweep, const Sketch& sketch, double present,
                        double textSize, const TextMeasure& measure) {
    DisplayList list;
    list.width = plot.list.width;
    list.height = plot.list.height;
    if (present < plot.from || present > plot.to || plot.panels.empty()) {
        return list;
    }
    Group group;
    group.role = Role::construction;
    group.id = "marker";
    for (const SweepPanel& panel : plot.panels) {
        const double x = plot.xOf(present, panel);
        group.items.emplace_back(Path{
            Role::label, {{x, panel.box.top}, {x, panel.box.bottom()}}, false, false, 0.85, Dash::dashed});
        for (const Curve& curve : sweep.curves) {
            if ((curve.of.kind == Swept::Kind::direction) != panel.areDirections ||
                curve.of.kind == Swept::Kind::larger) {
                continue;
            }
            if (const auto value = curve.between(present); value && *value <= panel.high) {
                group.items.emplace_back(
                    Disc{Role::label, {x, SweepPlot::yOf(*value, panel)}, 0.28 * textSize, 1, false});
            }
        }
    }
    const SweepPanel& first = plot.panels.front();
    const std::string words = sweptValue(present, sweep.range.varied.isDirection, sketch);
    Text text = sweepText({plot.xOf(present, first), first.box.top - 0.6 * textSize},
                          plainRuns(withMinusSigns(words)), Anchor::middle, Role::label, textSize, measure);
    text.halo = true;
    group.items.emplace_back(std::move(text));
    list.groups.push_back(std::move(group));
    return list;
}

} // namespace tailpoint
