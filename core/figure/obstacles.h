// SPDX-License-Identifier: MIT
// What a label must keep clear of, as the plain shapes that are drawn, found through a coarse grid of cells.
#pragma once

#include "core/figure/geometry.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <span>
#include <vector>

namespace tailpoint {

inline constexpr double kCell = 24; ///< points; about a label's half width

/// A leader keeps so far from texts, points.
inline constexpr double kLeaderClearance = 1.5;

/// How much worse an arrow is to cross for a leader than a thin line.
inline constexpr int kArrowWeight = 4;

/// The edges of a label's box, as the many tests want them.
struct Edges {
    double left, top, right, bottom;
    bool overlaps(const Box& box) const {
        return box.left < right && left < box.right() && box.top < bottom && top < box.bottom();
    }
    /// Does a leader from a to b come too near?
    bool crossedBy(Point a, Point b) const {
        return meets({left - kLeaderClearance, top - kLeaderClearance, right - left + 2 * kLeaderClearance,
                      bottom - top + 2 * kLeaderClearance},
                     a, b);
    }
};

/// The first of these labels that a leader from a to b comes too near to.
const Edges* labelCrossed(const std::vector<Edges>& labels, Point a, Point b);

class Obstacles {
public:
    /// `sheet` as drawn; labels may stand in `room`.
    Obstacles(const Box& sheet, const Box& room);

    /// A stroke with its width, a head's box, or a text's box. `owner`: whose it is; `weight`: how much worse
    /// it is to cross than a thin line.
    void add(const Item& item, int owner = -1, int weight = 1);
    /// A region that a text had better not cover, but may: by its unfilled closed paths, whose insides are
    /// told by non-zero winding.
    void addOutline(const Item& item);
    bool isOnRegion(const Box& box) const;
    /// From its tail to its exact tip: what no leader is to cross. Its strokes are added besides.
    void addArrow(Point tail, Point tip) { m_arrows.push_back({tail, tip}); }
    /// Does a leader from a to b cross one that counts?
    bool crossesArrow(Point a, Point b, const std::function<bool(Point tail, Point tip)>& counts) const;
    /// Call once after the last add(); labels and leaders may still come.
    void settle();
    void addLabel(const Box& box) { m_labels.push_back({box.left, box.top, box.right(), box.bottom()}); }
    void addLeader(Point a, Point b, double width);

    bool isOnSheet(Point p) const { return contains(m_sheet, p); }
    /// Has a box on its way in that direction left the room for good?
    bool hasLeft(const Box& box, Point way) const;
    /// Does the box stand in the room, clear of all texts? Strokes may run behind it.
    bool isClearOfTexts(const Box& box) const;
    /// Does the box stand in the room and touch nothing?
    bool isFree(const Box& box) const { return isClearOfLabels(box) && isClearOfStrokes(box); }
    /// The part of it that placing labels does not change: the room, strokes, and texts that don't move.
    bool isClearOfStrokes(const Box& box) const;
    /// The other part: labels and leaders.
    bool isClearOfLabels(const Box& box) const { return isClearOfLabels(m_labels, box); }
    /// The same where only those labels can be in the way.
    bool isClearOfLabels(const std::vector<Edges>& labels, const Box& box) const;
    const std::vector<Edges>& labels() const { return m_labels; }
    void listLabels(const Box& area, std::vector<Edges>& labels) const; ///< those in that area
    /// Does the box keep clear of all strokes but the owner's?
    bool isClearOfOthers(const Box& box, int owner) const;
    /// Would a leader from a to b run through a text that doesn't move; how many strokes would it cross, by
    /// weight?
    bool crossesText(Point a, Point b) const;
    int strokesCrossed(Point a, Point b) const;
    int leadersCrossed(Point a, Point b) const; ///< the same for leaders

    struct Mark {
        std::size_t labels, leaders;
    };
    Mark mark() const { return {m_labels.size(), m_leaders.size()}; }
    void backTo(Mark mark); ///< forgets labels and leaders added since

private:
    struct Segment {
        Point a, b;
        double half;
    };
    struct Leader {
        Point a, b;
        double half;
        Edges bounds;
    };
    struct Curve {
        ArcShape arc;
        double half;
    };
    struct Block { ///< a head, a ring or a text
        Box box;
    };
    using Stroke = std::variant<Segment, Curve, Block>;
    /// A stroke ready for the many tests: where it can be at all, and for a straight one its line.
    struct Ready {
        double left, top, right, bottom;
        Point from, along;
        double width;
        int owner, weight;
        bool straight;
        bool isOff(const Box& box) const {
            return box.left > right || box.top > bottom || box.left + box.width < left ||
                   box.top + box.height < top;
        }
    };
    struct Range { ///< of cells, ends included
        int left, right, top, bottom;
    };

    void addStrokes(const Item& item);
    static bool touches(const Stroke& stroke, const Box& box);
    static Ready readyOf(const Stroke& stroke, int owner, int weight);
    bool touchesReady(unsigned stroke, const Box& box) const;
    bool touchesStroke(const Box& box, int but) const;
    static Box boundsOf(const Stroke& stroke);
    Range cellsOf(const Box& box) const;
    Box cellBox(int column, int row) const;
    Range columnsIn(int row, const Stroke& stroke, const Range& cells) const;
    std::size_t cellAt(int column, int row) const;

    Box m_sheet, m_room;
    int m_columns, m_rows;
    std::vector<Stroke> m_strokes;
    std::vector<Ready> m_ready;           ///< the strokes again, after settle()
    std::vector<int> m_owners, m_weights; ///< of the strokes
    std::vector<unsigned> m_first;        ///< of each cell in m_members, one more at the end
    std::vector<unsigned> m_members;      ///< indices into m_strokes, cell by cell
    std::vector<Box> m_texts;
    std::vector<Edges> m_labels;
    std::vector<Leader> m_leaders;
    std::vector<std::array<Point, 2>> m_arrows;
    struct Outline {
        Box bounds;
        std::vector<Point> points;
    };
    std::vector<Outline> m_outlines;
};

// Asked thousands of times a figure, so within reach of those who ask.

inline bool Obstacles::touchesReady(unsigned stroke, const Box& box) const {
    const Ready& s = m_ready[stroke];
    if (s.isOff(box))
        return false;
    if (!s.straight)
        return touches(m_strokes[stroke], box);
    const Point toMiddle{box.left + box.width / 2 - s.from.x, box.top + box.height / 2 - s.from.y};
    return 2 * std::abs((s.along.x * toMiddle.y - s.along.y * toMiddle.x)) <=
           std::abs(s.along.y) * (box.width + s.width) + std::abs(s.along.x) * (box.height + s.width);
}

inline Obstacles::Range Obstacles::cellsOf(const Box& box) const {
    const auto at = [](double offset, int most) { // no floor: below zero it is the first cell anyway
        return static_cast<int>(std::clamp(offset * (1 / kCell), 0.0, static_cast<double>(most - 1)));
    };
    return {at(box.left - m_sheet.left, m_columns), at(box.right() - m_sheet.left, m_columns),
            at(box.top - m_sheet.top, m_rows), at(box.bottom() - m_sheet.top, m_rows)};
}

inline std::size_t Obstacles::cellAt(int column, int row) const {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(m_columns) +
           static_cast<std::size_t>(column);
}

inline bool Obstacles::touchesStroke(const Box& box, int but) const {
    const Range cells = cellsOf(box);
    for (int row = cells.top; row <= cells.bottom; ++row)
        for (int column = cells.left; column <= cells.right; ++column) {
            const std::size_t cell = cellAt(column, row);
            for (unsigned i = m_first[cell]; i < m_first[cell + 1]; ++i)
                if ((but < 0 || m_ready[m_members[i]].owner != but) && touchesReady(m_members[i], box))
                    return true;
        }
    return false;
}

inline bool Obstacles::isClearOfStrokes(const Box& box) const {
    return inside(box, m_room) && !touchesStroke(box, -1);
}

inline bool Obstacles::hasLeft(const Box& box, Point way) const {
    return (way.x >= 0 ? box.right() > m_room.right() : box.left < m_room.left) ||
           (way.y >= 0 ? box.bottom() > m_room.bottom() : box.top < m_room.top);
}

inline bool Obstacles::isClearOfLabels(const std::vector<Edges>& labels, const Box& box) const {
    return std::none_of(labels.begin(), labels.end(),
                        [&](const Edges& label) { return label.overlaps(box); }) &&
           std::none_of(m_leaders.begin(), m_leaders.end(), [&](const Leader& leader) {
               return leader.bounds.overlaps(box) && meets(grown(box, leader.half), leader.a, leader.b);
           });
}

/// The parts of a segment inside `room` and outside all of `out`, as parameters along it from 0 to 1.
std::vector<std::array<double, 2>> visibleParts(Point a, Point b, const Box& room, std::span<const Box> out);
/// The same for a full circle: start and sweep in degrees.
std::vector<std::array<double, 2>> visibleArcs(Point centre, double radius, const Box& room,
                                               std::span<const Box> out);

} // namespace tailpoint
