// SPDX-License-Identifier: MIT
#include "core/figure/obstacles.h"

#include <algorithm>

namespace tailpoint {
namespace {

Box boundsOfPoints(const std::vector<Point>& points) {
    double left = points.front().x, right = left, top = points.front().y, bottom = top;
    for (const Point p : points) {
        left = std::min(left, p.x);
        right = std::max(right, p.x);
        top = std::min(top, p.y);
        bottom = std::max(bottom, p.y);
    }
    return {left, top, right - left, bottom - top};
}

bool segmentsCross(Point a, Point b, Point c, Point d) {
    const double one = cross(b - a, c - a), two = cross(b - a, d - a);
    const double three = cross(d - c, a - c), four = cross(d - c, b - c);
    return (one > 0) != (two > 0) && (three > 0) != (four > 0);
}

int cellsAlong(double length) {
    return std::clamp(static_cast<int>(std::ceil(length / kCell)), 1, 400);
}

} // namespace

Obstacles::Obstacles(const Box& sheet, const Box& room)
    : m_sheet(sheet), m_room(room), m_columns(cellsAlong(sheet.width)), m_rows(cellsAlong(sheet.height)) {}

void Obstacles::add(const Item& item, int owner, int weight) {
    addStrokes(item);
    m_owners.resize(m_strokes.size(), owner);
    m_weights.resize(m_strokes.size(), weight);
}

void Obstacles::addOutline(const Item& item) {
    if (const auto* path = std::get_if<Path>(&item); path && path->closed && !path->filled)
        m_outlines.push_back({boundsOfPoints(path->points), path->points});
}

bool Obstacles::isOnRegion(const Box& box) const {
    const Point middle{box.left + box.width / 2, box.top + box.height / 2};
    int turns = 0; // of all outlines about the middle of a box that crosses none
    for (const Outline& outline : m_outlines) {
        const auto& p = outline.points;
        for (std::size_t i = 0; overlap(grown(box, 1), outline.bounds) && i < p.size(); ++i) {
            const Point a = p[i], b = p[(i + 1) % p.size()];
            if (meets(box, a, b))
                return true;
            if ((a.y <= middle.y) != (b.y <= middle.y) &&
                (cross(b - a, middle - a) > 0) == (b.y > a.y)) // to the right of the middle
                turns += b.y > a.y ? 1 : -1;
        }
    }
    return turns != 0;
}

bool Obstacles::crossesArrow(Point a, Point b,
                             const std::function<bool(Point tail, Point tip)>& counts) const {
    return std::any_of(m_arrows.begin(), m_arrows.end(), [&](const std::array<Point, 2>& arrow) {
        return segmentsCross(a, b, arrow[0], arrow[1]) && counts(arrow[0], arrow[1]);
    });
}

void Obstacles::addLeader(Point a, Point b, double width) {
    const Box bounds = grown(boundsOfPoints({a, b}), width / 2);
    m_leaders.push_back({a, b, width / 2, {bounds.left, bounds.top, bounds.right(), bounds.bottom()}});
}

void Obstacles::addStrokes(const Item& item) {
    if (const auto* path = std::get_if<Path>(&item)) {
        if (path->filled) {
            m_strokes.emplace_back(Block{boundsOfPoints(path->points)});
            return;
        }
        for (std::size_t i = 0; i + 1 < path->points.size(); ++i)
            m_strokes.emplace_back(Segment{path->points[i], path->points[i + 1], path->width / 2});
        if (path->closed && path->points.size() > 2)
            m_strokes.emplace_back(Segment{path->points.back(), path->points.front(), path->width / 2});
    } else if (const auto* arc = std::get_if<Arc>(&item)) {
        m_strokes.emplace_back(
            Curve{ArcShape(arc->centre, arc->radius, arc->startDegrees, arc->sweepDegrees), arc->width / 2});
    } else if (const auto* disc = std::get_if<Disc>(&item)) {
        const double across = 2 * disc->radius + disc->width;
        m_strokes.emplace_back(Block{boxAround(disc->centre, across, across)});
    } else {
        m_texts.push_back(std::get<Text>(item).box);
        m_strokes.emplace_back(Block{m_texts.back()});
    }
}

bool Obstacles::touches(const Stroke& stroke, const Box& box) {
    if (const auto* s = std::get_if<Segment>(&stroke))
        return meets(grown(box, s->half), s->a, s->b);
    if (const auto* c = std::get_if<Curve>(&stroke))
        return c->arc.meets(grown(box, c->half));
    return overlap(box, std::get<Block>(stroke).box);
}

Box Obstacles::boundsOf(const Stroke& stroke) {
    if (const auto* s = std::get_if<Segment>(&stroke))
        return grown(boundsOfPoints({s->a, s->b}), s->half);
    if (const auto* c = std::get_if<Curve>(&stroke))
        return boxAround(c->arc.centre(), 2 * (c->arc.radius() + c->half), 2 * (c->arc.radius() + c->half));
    return std::get<Block>(stroke).box;
}

Obstacles::Ready Obstacles::readyOf(const Stroke& stroke, int owner, int weight) {
    const Box bounds = boundsOf(stroke);
    Ready ready{bounds.left, bounds.top, bounds.right(), bounds.bottom(), {}, {}, 0, owner, weight, false};
    if (const auto* s = std::get_if<Segment>(&stroke)) {
        ready.from = s->a;
        ready.along = s->b - s->a;
        ready.width = 2 * s->half;
        ready.straight = true;
    }
    return ready;
}

Box Obstacles::cellBox(int column, int row) const {
    return {m_sheet.left + kCell * column, m_sheet.top + kCell * row, kCell, kCell};
}

/// Of the cells round a stroke those of one row that it can touch: a long slanted stroke has many cells round
/// it and runs through few.
Obstacles::Range Obstacles::columnsIn(int row, const Stroke& stroke, const Range& cells) const {
    const auto* s = std::get_if<Segment>(&stroke);
    if (!s || s->a.y == s->b.y)
        return {cells.left, cells.right, row, row};
    constexpr double kRounding = 1; // points; far more than what is lost on the way
    const double reach = s->half + kRounding, top = cellBox(0, row).top;
    const auto xAt = [&](double y) {
        return s->a.x + std::clamp((y - s->a.y) / (s->b.y - s->a.y), 0.0, 1.0) * (s->b.x - s->a.x);
    };
    const double one = xAt(top - reach), other = xAt(top + kCell + reach);
    const Range near = cellsOf(grown({std::min(one, other), top, std::abs(one - other), kCell}, reach));
    return {std::max(cells.left, near.left), std::min(cells.right, near.right), row, row};
}

void Obstacles::settle() {
    m_ready.clear();
    m_ready.reserve(m_strokes.size());
    for (std::size_t i = 0; i < m_strokes.size(); ++i)
        m_ready.push_back(readyOf(m_strokes[i], m_owners[i], m_weights[i]));
    std::vector<std::pair<std::size_t, unsigned>> members; // cell, stroke
    members.reserve(8 * m_strokes.size());
    for (unsigned i = 0; i < m_strokes.size(); ++i) {
        const Box bounds = boundsOf(m_strokes[i]);
        if (!overlap(bounds, grown(m_sheet, 1)))
            continue;
        const Range cells = cellsOf(bounds);
        const bool small = cells.left == cells.right && cells.top == cells.bottom;
        for (int row = cells.top; row <= cells.bottom; ++row) {
            const Range in = columnsIn(row, m_strokes[i], cells);
            for (int column = in.left; column <= in.right; ++column)
                if (small || touches(m_strokes[i], cellBox(column, row)))
                    members.emplace_back(cellAt(column, row), i);
        }
    }
    m_first.assign(cellAt(0, m_rows) + 1, 0);
    for (const auto& [cell, stroke] : members)
        ++m_first[cell + 1];
    for (std::size_t cell = 0; cell + 1 < m_first.size(); ++cell)
        m_first[cell + 1] += m_first[cell];
    m_members.resize(members.size());
    std::vector<unsigned> next(m_first.begin(), m_first.end() - 1);
    for (const auto& [cell, stroke] : members)
        m_members[next[cell]++] = stroke;
}

bool Obstacles::isClearOfTexts(const Box& box) const {
    return inside(box, m_room) &&
           std::none_of(m_texts.begin(), m_texts.end(),
                        [&](const Box& text) { return overlap(box, text); }) &&
           std::none_of(m_labels.begin(), m_labels.end(),
                        [&](const Edges& label) { return label.overlaps(box); });
}

bool Obstacles::isClearOfOthers(const Box& box, int owner) const {
    return !touchesStroke(box, owner);
}

bool Obstacles::crossesText(Point a, Point b) const {
    return std::any_of(m_texts.begin(), m_texts.end(),
                       [&](const Box& box) { return meets(grown(box, kLeaderClearance), a, b); });
}

const Edges* labelCrossed(const std::vector<Edges>& labels, Point a, Point b) {
    const double left = std::min(a.x, b.x) - kLeaderClearance, right = std::max(a.x, b.x) + kLeaderClearance;
    const double top = std::min(a.y, b.y) - kLeaderClearance, bottom = std::max(a.y, b.y) + kLeaderClearance;
    for (const Edges& label : labels)
        if (left <= label.right && right >= label.left && top <= label.bottom && bottom >= label.top &&
            label.crossedBy(a, b))
            return &label;
    return nullptr;
}

void Obstacles::listLabels(const Box& area, std::vector<Edges>& labels) const {
    labels.clear();
    for (const Edges& label : m_labels)
        if (label.overlaps(area))
            labels.push_back(label);
}

int Obstacles::strokesCrossed(Point a, Point b) const {
    const Point along = b - a;
    int count = 0;
    for (const Ready& s : m_ready) {
        if (!s.straight)
            continue;
        const Point to = s.from - a;
        const double one = cross(along, to), other = cross(along, to + s.along);
        if ((one > 0) != (other > 0) && (cross(s.along, to) < 0) != (cross(s.along, along - to) > 0))
            count += s.weight;
    }
    return count;
}

int Obstacles::leadersCrossed(Point a, Point b) const {
    return static_cast<int>(std::count_if(m_leaders.begin(), m_leaders.end(), [&](const Leader& leader) {
        return segmentsCross(a, b, leader.a, leader.b);
    }));
}

void Obstacles::backTo(Mark mark) {
    m_labels.resize(mark.labels);
    m_leaders.resize(mark.leaders);
}

} // namespace tailpoint
