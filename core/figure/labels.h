// Where labels stand. A label is put only where it meets no stroke, no other label and not the sheet's edge;
// where its full text finds no such place it is shortened, then led by a leader line, then left to the key
// table.
#pragma once

#include "core/figure/compose.h"
#include "core/figure/geometry.h"

#include <optional>

namespace tailpoint {

/// Everything that a label must keep clear of.
class Obstacles {
public:
    explicit Obstacles(const Box& sheet) : m_sheet(sheet) {}
    void add(const Item& item);
    void addBox(const Box& box) { m_boxes.push_back(box); }
    void addSegment(Point a, Point b, double half) { m_segments.push_back({a, b, half}); }
    bool isFree(const Box& box) const;
    /// Does a leader from a to b cross a label?
    bool crossesBox(Point a, Point b) const;
    const Box& sheet() const { return m_sheet; }

private:
    struct Segment {
        Point a, b;
        double half;
    };
    struct Curve {
        Point centre;
        double radius, start, sweep, half;
    };
    Box m_sheet;
    std::vector<Segment> m_segments;
    std::vector<Curve> m_curves;
    std::vector<Box> m_boxes;
};

/// What a label belongs to.
struct Shaft {
    Point tail, tip;
};
struct Sector {
    Point centre;
    double radius, startDegrees, sweepDegrees;
};
struct Spot {
    Point at;
    double clearance;
};
using Anchoring = std::variant<Shaft, Sector, Spot>;

struct LabelRequest {
    std::size_t group = 0; ///< index into DisplayList::groups
    std::string id;
    Anchoring anchor;
    Role ink = Role::label;
    double size = 12;
    std::vector<Run> full, brief; ///< brief: what is left when the full text has no room; may be empty
    double side = 1;              ///< shafts: preferred side, +1 left as seen from tail to tip
    bool optional = false;        ///< left out rather than led by a leader
};

struct Placed {
    Text text;
    std::optional<Path> leader;
    int candidate = -1;
    bool shortened = false;
};

/// Places the labels in order; an empty entry found no place. Deterministic.
std::vector<std::optional<Placed>> placeLabels(const std::vector<LabelRequest>& requests,
                                               Obstacles& obstacles, const TextMeasure& measure,
                                               const Placement& previous, double factor);

/// A text whose measured box has its middle here.
Text textAround(Point middle, const std::vector<Run>& runs, Role ink, double size, Face face,
                const TextMeasure& measure);

} // namespace tailpoint
