// SPDX-License-Identifier: MIT
#include "ui/canvas/lit_parts.h"

#include "core/construct/pairs.h"
#include "core/construct/reduction.h"
#include "core/figure/hit.h"
#include "ui/canvas/drawn.h"
#include "ui/canvas/hit.h"
#include "ui/canvas/overlay.h"

#include <QPainterPath>
#include <cmath>
#include <numbers>

namespace tailpoint {

namespace {

constexpr double kWedge = 46, kSide = 9, kReach = 6; ///< pixels

using Kind = FigureShape::Kind;
using Vector = Eigen::Vector2d;

double degrees(const Vector& v) {
    return std::atan2(v.y(), v.x()) * 180 / std::numbers::pi;
}

/// (-180, 180]
double turned(double angle) {
    angle = std::remainder(angle, 360.0);
    return angle <= -180 ? angle + 360 : angle;
}

class Lighter {
public:
    Lighter(QPainter& painter, const Scene& scene, Highlight marking, bool edges)
        : m_painter(painter), m_scene(scene), m_sheet(scene.sheet()),
          m_construction(scene.result().construction), m_drawn(scene.drawn()), m_marking(std::move(marking)),
          m_edges(edges) {}

    void operator()(VectorId vector) {
        if (const DrawnVector* drawn = drawnOf(m_drawn, indexOf(vector)))
            (m_edges ? paintBandEdge : paintBandGround)(m_painter, m_sheet, *drawn, m_marking);
    }

    void operator()(const QuantityId& quantity) {
        if (quantity.what == What::direction)
            direction(indexOf(quantity.of));
        else if (quantity.what == What::between)
            tails(indexOf(quantity.of), indexOf(quantity.with));
        else if (quantity.what == What::opposite)
            for (const ForceTriangle* triangle : triangles())
                opposite(*triangle, indexOf(quantity.of));
    }

    void operator()(const FigureShape& shape) {
        switch (shape.kind) {
        case Kind::parallelogram:
            return parallelogram(indexOf(shape.of));
        case Kind::triangle:
            if (const auto drawn = triangles(); !drawn.empty())
                chain({drawn.front()->corners.begin(), drawn.front()->corners.end()}, true);
            return;
        case Kind::polygon:
            return chain(m_construction.polygon.corners, false);
        case Kind::locus:
            return locus(indexOf(shape.of));
        case Kind::axis:
            return axis();
        }
    }

private:
    void wedge(const Vector& at, double from, double sweep) {
        const QPointF centre = m_sheet.toPixels(at);
        QPainterPath path(centre);
        path.arcTo(QRectF(centre.x() - kWedge, centre.y() - kWedge, 2 * kWedge, 2 * kWedge), from, sweep);
        path.closeSubpath();
        if (m_edges)
            m_painter.strokePath(path, QPen(m_marking.edge, 2 * m_marking.width));
        else
            m_painter.fillPath(path, m_marking.ground);
    }

    void wedge(const Vector& at, const Vector& u, const Vector& v) {
        if (u.norm() > 0 && v.norm() > 0)
            wedge(at, degrees(u), turned(degrees(v) - degrees(u)));
    }

    void direction(int vector) {
        const DrawnVector* drawn = drawnOf(m_drawn, vector);
        if (drawn == nullptr || drawn->tip == drawn->tail)
            return;
        const double from = m_scene.sketch().reference.axisDegrees;
        wedge(drawn->tail, from, turned(degrees(drawn->tip - drawn->tail) - from));
    }

    /// In the parallelogram at the common point; in the triangle where it is an angle of it.
    void tails(int a, int b) {
        const DrawnVector *one = drawnOf(m_drawn, a), *two = drawnOf(m_drawn, b);
        if (one == nullptr || two == nullptr)
            return;
        if (one->tail == two->tail)
            return wedge(one->tail, one->tip - one->tail, two->tip - two->tail);
        if (a != kSumIndex && b != kSumIndex)
            return;
        for (const ForceTriangle* triangle : triangles())
            for (const int vector : triangle->vectors)
                if (vector != a && vector != b)
                    opposite(*triangle, vector);
    }

    void opposite(const ForceTriangle& triangle, int vector) {
        for (std::size_t side = 0; side < 3; ++side) {
            if (triangle.vectors[side] != vector || !triangle.opposite[side])
                continue;
            const std::size_t at = ForceTriangle::cornerOpposite(side);
            const Vector& corner = triangle.corners[at];
            wedge(corner, triangle.corners[(at + 1) % 3] - corner, triangle.corners[(at + 2) % 3] - corner);
        }
    }

    /// Of two forces; of more, the one that adds this force to the sum so far.
    void parallelogram(int vector) {
        const auto outline = [this](const Parallelogram& p) {
            chain({p.corners.begin(), p.corners.end()}, true);
        };
        if (m_construction.parallelogram)
            return outline(*m_construction.parallelogram);
        const Result& r = m_scene.result();
        const auto pairs = pairsOf(r.sketch, r.solved, r.chosen);
        if (m_scene.options().pair != kNoPairs && vector >= 1 &&
            static_cast<std::size_t>(vector) <= pairs.size())
            outline(pairs[static_cast<std::size_t>(vector) - 1]);
    }

    /// Those that can be seen: both halves of a parallelogram, or the one that is drawn.
    std::vector<const ForceTriangle*> triangles() const {
        const FigureOptions options = m_scene.options();
        const bool halves =
            drawnKind(options.construction, m_construction) == ConstructionKind::parallelogram;
        std::vector<const ForceTriangle*> out;
        if (m_construction.triangle && (halves || !options.otherOrder))
            out.push_back(&*m_construction.triangle);
        if (m_construction.otherTriangle && (halves || options.otherOrder))
            out.push_back(&*m_construction.otherTriangle);
        return out;
    }

    void stroke(const QPainterPath& path) {
        m_painter.setBrush(Qt::NoBrush);
        const double width = kSide + (m_edges ? 2 * m_marking.width : 0);
        m_painter.setPen(QPen(m_edges ? m_marking.edge : m_marking.ground, width, Qt::SolidLine, Qt::RoundCap,
                              Qt::RoundJoin));
        m_painter.drawPath(path);
    }

    void chain(const std::vector<Vector>& corners, bool closed) {
        if (corners.size() < 2)
            return;
        QPainterPath path(m_sheet.toPixels(corners.front()));
        for (std::size_t i = 1; i < corners.size(); ++i)
            path.lineTo(m_sheet.toPixels(corners[i]));
        if (closed)
            path.closeSubpath();
        stroke(path);
    }

    void locus(int vector) {
        const DrawnLoci drawn = drawnLoci(m_scene.result().solved, m_construction, m_scene.options());
        for (const Locus& locus : drawn.loci)
            if (const auto* line = std::get_if<LineLocus>(&locus); line != nullptr && line->vector == vector)
                lineOf(*line);
            else if (const auto* circle = std::get_if<CircleLocus>(&locus);
                     circle != nullptr && circle->vector == vector)
                circleOf(*circle);
    }

    void lineOf(const LineLocus& line) {
        const double far = 4000 / m_sheet.pixelsPerUnit(); // pixels: beyond any sheet
        QPainterPath path(m_sheet.toPixels(Vector(line.through - (line.ray ? 0 : far) * line.unit)));
        path.lineTo(m_sheet.toPixels(Vector(line.through + far * line.unit)));
        stroke(path);
    }

    void circleOf(const CircleLocus& circle) {
        const double radius = circle.radius * m_sheet.pixelsPerUnit();
        QPainterPath path;
        path.addEllipse(m_sheet.toPixels(circle.centre), radius, radius);
        stroke(path);
    }

    void axis() {
        for (const Group& group : m_scene.figure().list.groups)
            if (group.part == FigurePart(FigureShape{Kind::axis, kNobody}))
                for (const Item& item : group.items)
                    if (const Path* path = std::get_if<Path>(&item);
                        path != nullptr && path->points.size() == 2) {
                        QPainterPath line(m_sheet.toPixels(path->points[0]));
                        line.lineTo(m_sheet.toPixels(path->points[1]));
                        stroke(line);
                    }
    }

    QPainter& m_painter;
    const Scene& m_scene;
    const SheetView& m_sheet;
    const Construction& m_construction;
    const std::vector<DrawnVector>& m_drawn;
    Highlight m_marking;
    bool m_edges; ///< else grounds
};

} // namespace

void paintLit(QPainter& painter, const Scene& scene, const std::vector<FigurePart>& parts,
              const Highlight& marking) {
    for (const bool edges : {true, false})
        for (const FigurePart& part : parts)
            std::visit(Lighter(painter, scene, marking, edges), part);
}

std::optional<FigurePart> partAt(const Scene& scene, QPointF at) {
    const Hit hit = hitTest(scene, at);
    if (hit.vector != kNoVector && hit.kind != Hit::Kind::otherAnswer)
        return hit.cell == Cell::direction ? FigurePart(directionId(vectorId(hit.vector)))
                                           : FigurePart(vectorId(hit.vector));
    const SheetView& sheet = scene.sheet();
    return partAt(scene.figure().list, sheet.toPoints(at), kReach / sheet.pixelsPerPoint());
}

} // namespace tailpoint
