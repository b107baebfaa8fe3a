// SPDX-License-Identifier: MIT
// Figures for tests: a text measure that knows no font, and a second opinion on what touches what, written
// apart from the figure's own geometry.
#pragma once

#include "core/figure/compose.h"
#include "tests/support/sketches.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace tailpoint::testing {

/// Every character is equally wide.
class FixedMeasure : public TextMeasure {
public:
    TextExtent measure(const std::vector<Run>& runs, Face, double size) const override {
        double width = 0, line = 0;
        int lines = 0;
        for (const Run& run : runs) {
            line = run.line == lines ? line : 0;
            lines = run.line;
            line += letters(run.text) * (run.script == Script::normal ? 0.52 : 0.38) * size;
            width = std::max(width, line);
        }
        return {width, 0.7 * size, 0.22 * size + lines * kLineStep * size};
    }

private:
    static double letters(const std::string& text) {
        return static_cast<double>(std::count_if(text.begin(), text.end(), [](char c) {
            return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
        }));
    }
};

struct Drawn {
    Sketch sketch;
    Solved solved;
    Construction construction;
    View view;
    Figure figure;
};

inline Drawn drawn(const Sketch& sketch, const FigureOptions& options = {}, double width = 720,
                   double height = 480) {
    const FixedMeasure measure;
    Drawn out;
    out.sketch = sketch;
    out.solved = solve(sketch);
    out.construction = construct(sketch, out.solved, options.solution);
    out.view = fittedView(sketch, out.solved, out.construction, options, width, height, &measure);
    out.figure = compose(sketch, out.solved, out.construction, out.view, options, measure);
    return out;
}

inline const Group* groupOf(const Figure& figure, std::string_view id) {
    for (const Group& group : figure.list.groups)
        if (group.id == id)
            return &group;
    return nullptr;
}

inline std::string textOf(const Text& text) {
    std::string out;
    for (const Run& run : text.runs)
        out += run.text;
    return out;
}

inline std::vector<std::string> textsOf(const Group* group) {
    std::vector<std::string> out;
    for (const Item& item : group ? group->items : std::vector<Item>())
        if (const auto* text = std::get_if<Text>(&item))
            out.push_back(textOf(*text));
    return out;
}

/// The group's label and the leader to it; null where there is none.
inline const Text* labelOf(const Group& group) {
    for (const Item& item : group.items)
        if (const auto* text = std::get_if<Text>(&item))
            return text;
    return nullptr;
}

inline const Path* leaderOf(const Group& group) {
    for (const Item& item : group.items)
        if (const auto* path = std::get_if<Path>(&item); path && path->role == Role::leader)
            return path;
    return nullptr;
}

/// Least distance between a point and a box; 0 inside.
inline double distanceTo(const Box& box, Point p) {
    const double x = std::max({box.left - p.x, p.x - box.right(), 0.0});
    const double y = std::max({box.top - p.y, p.y - box.bottom(), 0.0});
    return std::hypot(x, y);
}

/// Sampled so closely that nothing wider than a hundredth of a point is missed near the box.
inline double distanceTo(const Box& box, Point a, Point b) {
    double low = 0, high = 1;
    const auto at = [&](double t) { return distanceTo(box, {a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)}); };
    for (int i = 0; i < 60; ++i) { // the distance to a convex box is a convex function along the segment
        const double one = low + (high - low) / 3, two = high - (high - low) / 3;
        (at(one) <= at(two) ? high : low) = at(one) <= at(two) ? two : one;
    }
    return at((low + high) / 2);
}

inline double distanceTo(const Box& box, const Arc& arc) {
    double least = 1e300;
    const int steps =
        std::max(8, static_cast<int>(std::abs(arc.sweepDegrees) / 180 * 3.1416 * arc.radius / 0.5));
    for (int i = 0; i <= steps; ++i) {
        const double t = (arc.startDegrees + arc.sweepDegrees * i / steps) * 3.14159265358979 / 180;
        least = std::min(least, distanceTo(box, {arc.centre.x + arc.radius * std::cos(t),
                                                 arc.centre.y - arc.radius * std::sin(t)}));
    }
    return std::max(0.0, least - 0.01);
}

/// Clear distance between a text's box and the ink of an item; below 0 they overlap.
inline double clearance(const Box& box, const Item& item) {
    if (const auto* path = std::get_if<Path>(&item)) {
        double least = 1e300;
        const auto& p = path->points;
        for (std::size_t i = 0; i + 1 < p.size() + (path->closed ? 1 : 0); ++i)
            least = std::min(least, distanceTo(box, p[i], p[(i + 1) % p.size()]) - path->width / 2);
        return least;
    }
    if (const auto* arc = std::get_if<Arc>(&item))
        return distanceTo(box, *arc) - arc->width / 2;
    if (const auto* disc = std::get_if<Disc>(&item))
        return distanceTo(box, disc->centre) - disc->radius - disc->width / 2;
    const Box& other = std::get<Text>(item).box;
    const double x = std::max(other.left - box.right(), box.left - other.right());
    const double y = std::max(other.top - box.bottom(), box.top - other.bottom());
    return std::max(x, y);
}

inline bool isGround(const Group& group, const Item& item) {
    const auto* path = std::get_if<Path>(&item);
    return group.role == Role::sheet || group.role == Role::grid || group.role == Role::highlight ||
           group.role == Role::region ||
           (path && path->role == Role::sheet);
}

/// Surely apart: told by plain bounds, before any distance is measured.
inline bool isFarFrom(const Box& box, const Item& item) {
    if (const auto* arc = std::get_if<Arc>(&item)) {
        const double near = distanceTo(box, arc->centre), half = arc->width / 2;
        const double far = std::max({std::hypot(box.left - arc->centre.x, box.top - arc->centre.y),
                                     std::hypot(box.right() - arc->centre.x, box.top - arc->centre.y),
                                     std::hypot(box.left - arc->centre.x, box.bottom() - arc->centre.y),
                                     std::hypot(box.right() - arc->centre.x, box.bottom() - arc->centre.y)});
        return near > arc->radius + half || far < arc->radius - half;
    }
    const auto* path = std::get_if<Path>(&item);
    if (!path)
        return false;
    const auto all = [&](auto beyond) {
        return std::all_of(path->points.begin(), path->points.end(), beyond);
    };
    const double half = path->width / 2;
    return all([&](Point p) { return p.x < box.left - half; }) ||
           all([&](Point p) { return p.x > box.right() + half; }) ||
           all([&](Point p) { return p.y < box.top - half; }) ||
           all([&](Point p) { return p.y > box.bottom() + half; });
}

/// Every text against every other thing and the sheet's edge; each entry names two that touch.
inline std::vector<std::string> collisions(const DisplayList& list) {
    std::vector<std::string> out;
    for (const Group& own : list.groups)
        for (const Item& item : own.items) {
            const auto* text = std::get_if<Text>(&item);
            if (!text)
                continue;
            const Box& box = text->box;
            if (box.left < 0 || box.top < 0 || box.right() > list.width || box.bottom() > list.height)
                out.push_back(textOf(*text) + " leaves the sheet");
            for (const Group& group : list.groups)
                for (const Item& other : group.items)
                    if (&other != &item && !isGround(group, other) && !isFarFrom(box, other) &&
                        clearance(box, other) < 0)
                        out.push_back(textOf(*text) + " of " + own.id + " touches " + group.id);
        }
    return out;
}

} // namespace tailpoint::testing
