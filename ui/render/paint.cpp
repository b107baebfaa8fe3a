// SPDX-License-Identifier: MIT
#include "ui/render/dashes.h"
#include "ui/render/fonts.h"
#include "ui/render/render.h"

#include <QPainterPath>
#include <QVarLengthArray>
#include <QVector>
#include <array>

namespace tailpoint {

std::span<const double> patternOf(Dash dash) {
    static constexpr std::array dashed{6.5, 4.0};
    static constexpr std::array chain{16.0, 3.5, 1.5, 3.5};
    static constexpr std::array chainTwoDots{13.0, 3.0, 1.5, 3.0, 1.5, 3.0};
    static constexpr std::array dotted{1.5, 3.0};
    switch (dash) {
    case Dash::solid:
        return {};
    case Dash::dashed:
        return dashed;
    case Dash::chain:
        return chain;
    case Dash::chainTwoDots:
        return chainTwoDots;
    case Dash::dotted:
        break;
    }
    return dotted;
}

namespace {

bool isBackground(Role role) {
    return role == Role::sheet || role == Role::grid || role == Role::titleblock;
}

class Brushwork {
public:
    Brushwork(QPainter& painter, const Theme& theme) : m_painter(painter), m_theme(theme) {
        m_pen.setCapStyle(Qt::FlatCap);
        m_pen.setJoinStyle(Qt::MiterJoin);
        m_pen.setMiterLimit(10);
    }

    void operator()(const Path& path) {
        stroke(path.role, path.width, path.dash);
        fill(path.filled ? path.role : Role::sheet, path.filled);
        if (path.points.size() == 2) {
            m_painter.drawLine(at(path.points[0]), at(path.points[1]));
            return;
        }
        m_points.clear();
        for (const Point p : path.points)
            m_points.append(at(p));
        if (path.closed)
            m_painter.drawPolygon(m_points.constData(), static_cast<int>(m_points.size()), Qt::WindingFill);
        else
            m_painter.drawPolyline(m_points.constData(), static_cast<int>(m_points.size()));
    }

    void operator()(const Arc& arc) {
        stroke(arc.role, arc.width, arc.dash);
        fill(Role::sheet, false);
        const QRectF square(arc.centre.x - arc.radius, arc.centre.y - arc.radius, 2 * arc.radius,
                            2 * arc.radius);
        m_path.clear();
        m_path.arcMoveTo(square, arc.startDegrees);
        m_path.arcTo(square, arc.startDegrees, arc.sweepDegrees);
        m_painter.drawPath(m_path);
    }

    void operator()(const Disc& disc) {
        stroke(disc.role, disc.width, Dash::solid);
        fill(disc.filledWithSheet ? Role::sheet : disc.role, true);
        m_painter.drawEllipse(at(disc.centre), disc.radius, disc.radius);
    }

    void operator()(const Text& text) {
        if (text.halo)
            m_painter.fillRect(QRectF(text.box.left, text.box.top, text.box.width, text.box.height)
                                   .marginsAdded({kHaloPad, kHaloPad, kHaloPad, kHaloPad}),
                               m_theme.colour(Role::halo));
        m_pen.setColor(m_theme.colour(text.ink));
        m_pen.setStyle(Qt::SolidLine);
        m_painter.setPen(m_pen);
        const QTransform before = m_painter.worldTransform();
        FontShelf& shelf = FontShelf::ofThread();
        int line = 0;
        double x = startOf(text, shelf, line);
        for (const Run& run : text.runs) {
            if (run.line != line) {
                line = run.line;
                x = startOf(text, shelf, line);
            }
            const double size = sizeOf(run, text.size), scale = size / FontShelf::kSize;
            m_painter.setTransform(
                QTransform(scale, 0, 0, scale, x, text.baseline.y + shiftOf(run, text.size)) * before);
            drawWords(m_painter, {0, 0}, QString::fromStdString(run.text), shelf.font(run, text.face));
            if (&run != &text.runs.back())
                x += size * shelf.extent(run, text.face).width;
        }
        m_painter.setTransform(before);
    }

private:
    static double startOf(const Text& text, FontShelf& shelf, int line) {
        double width = 0;
        for (const Run& run : text.runs)
            if (run.line == line)
                width += sizeOf(run, text.size) * shelf.extent(run, text.face).width;
        const double part = text.anchor == Anchor::start ? 0 : text.anchor == Anchor::middle ? 0.5 : 1;
        return text.baseline.x - part * width;
    }

    static QPointF at(Point p) { return {p.x, p.y}; }

    void stroke(Role role, double width, Dash dash) {
        if (width <= 0) {
            m_painter.setPen(Qt::NoPen);
            return;
        }
        m_pen.setColor(m_theme.colour(role));
        m_pen.setWidthF(width);
        const auto pattern = patternOf(dash);
        if (pattern.empty())
            m_pen.setStyle(Qt::SolidLine);
        else
            m_pen.setDashPattern(QVector<qreal>(pattern.begin(), pattern.end()));
        m_painter.setPen(m_pen);
    }

    void fill(Role role, bool filled) {
        if (filled)
            m_painter.setBrush(m_theme.colour(role));
        else
            m_painter.setBrush(Qt::NoBrush);
    }

    QPainter& m_painter;
    const Theme& m_theme;
    QPen m_pen;
    QPainterPath m_path;
    QVarLengthArray<QPointF, 16> m_points;
};

} // namespace

void paint(QPainter& painter, const DisplayList& list, const Theme& theme, Layer layer) {
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    Brushwork brushwork(painter, theme);
    for (const Group& group : list.groups) {
        if (layer != Layer::everything && isBackground(group.role) != (layer == Layer::background))
            continue;
        for (const Item& item : group.items)
            std::visit(brushwork, item);
    }
    painter.restore();
}

} // namespace tailpoint
