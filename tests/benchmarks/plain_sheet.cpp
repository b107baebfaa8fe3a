// SPDX-License-Identifier: MIT
#include "tests/benchmarks/plain_sheet.h"

#include "ui/render/dashes.h"
#include "ui/render/fonts.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

namespace tailpoint::bench {

namespace {

bool isBackground(Role role) {
    return role == Role::sheet || role == Role::grid || role == Role::axis || role == Role::titleblock;
}

/// Turns the items of a display list into raw material once, outside the timing.
class Baker {
public:
    Baker(Strokes& into, const Theme& theme, double scale) : m_into(into), m_theme(theme), m_scale(scale) {}

    void operator()(const Path& path) {
        Strokes::Shape shape{pen(path.role, path.width, path.dash), Qt::NoBrush, {}, {}, path.closed};
        if (path.filled)
            shape.brush = m_theme.colour(path.role);
        for (const Point point : path.points)
            shape.points.push_back(at(point));
        m_into.items.emplace_back(std::move(shape));
    }

    void operator()(const Arc& arc) {
        Strokes::Shape shape{pen(arc.role, arc.width, arc.dash), Qt::NoBrush, {}, {}, false};
        const double r = m_scale * arc.radius;
        const QRectF square(at(arc.centre) - QPointF(r, r), QSizeF(2 * r, 2 * r));
        shape.path.arcMoveTo(square, arc.startDegrees);
        shape.path.arcTo(square, arc.startDegrees, arc.sweepDegrees);
        m_into.items.emplace_back(std::move(shape));
    }

    void operator()(const Disc& disc) {
        Strokes::Shape shape{pen(disc.role, disc.width, Dash::solid),
                             m_theme.colour(disc.filledWithSheet ? Role::sheet : disc.role),
                             {},
                             {},
                             true};
        shape.path.addEllipse(at(disc.centre), m_scale * disc.radius, m_scale * disc.radius);
        m_into.items.emplace_back(std::move(shape));
    }

    void operator()(const Text& text) {
        QRectF halo(text.box.left - 1, text.box.top - 1, text.box.width + 2, text.box.height + 2);
        halo = text.halo ? QRectF(m_scale * halo.topLeft(), m_scale * halo.size()) : QRectF();
        double x = m_scale * text.box.left;
        for (const Run& run : text.runs) {
            QFont font = FontShelf::ofThread().font(run, text.face);
            font.setPixelSize(std::max(1, qRound(m_scale * sizeOf(run, text.size))));
            const QString words = QString::fromStdString(run.text);
            const QPointF place(x, m_scale * (text.baseline.y + shiftOf(run, text.size)));
            m_into.items.emplace_back(Strokes::Words{place, font, m_theme.colour(text.ink), words, halo,
                                                     m_theme.colour(Role::halo)});
            x += QFontMetricsF(font).horizontalAdvance(words);
            halo = QRectF();
        }
    }

private:
    QPointF at(Point point) const { return {m_scale * point.x, m_scale * point.y}; }

    QPen pen(Role role, double width, Dash dash) const {
        if (width <= 0)
            return QPen(Qt::NoPen);
        QPen made(m_theme.colour(role), m_scale * width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
        const auto pattern = patternOf(dash);
        if (!pattern.empty())
            made.setDashPattern(QList<qreal>(pattern.begin(), pattern.end()));
        return made;
    }

    Strokes& m_into;
    const Theme& m_theme;
    double m_scale;
};

void draw(QPainter& painter, const Strokes::Shape& shape) {
    painter.setPen(shape.pen);
    painter.setBrush(shape.brush);
    const int count = static_cast<int>(shape.points.size());
    if (count == 0)
        painter.drawPath(shape.path);
    else if (shape.closed)
        painter.drawPolygon(shape.points.data(), count);
    else
        painter.drawPolyline(shape.points.data(), count);
}

void draw(QPainter& painter, const Strokes::Words& words) {
    if (!words.halo.isEmpty())
        painter.fillRect(words.halo, words.haloColour);
    painter.setPen(words.colour);
    painter.setFont(words.font);
    painter.drawText(words.at, words.text);
}

void draw(QPainter& painter, const Strokes& strokes) {
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    for (const auto& item : strokes.items)
        std::visit([&](const auto& thing) { draw(painter, thing); }, item);
}

} // namespace

Strokes strokesOf(const DisplayList& list, const Theme& theme, double pixelsPerPoint, bool background) {
    Strokes strokes;
    Baker baker(strokes, theme, pixelsPerPoint);
    for (const Group& group : list.groups)
        if (isBackground(group.role) == background)
            for (const Item& item : group.items)
                std::visit(baker, item);
    return strokes;
}

PlainSheet::PlainSheet(bool cached) : m_cached(cached) {
    setAttribute(Qt::WA_OpaquePaintEvent);
}

void PlainSheet::take(const Strokes& background, const Strokes& foreground, const QColor& sheet) {
    m_background = background;
    m_foreground = foreground;
    m_sheet = sheet;
}

void PlainSheet::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (m_cached && m_layer.size() != size()) {
        m_layer = QPixmap(size());
        m_layer.fill(m_sheet);
        QPainter under(&m_layer);
        draw(under, m_background);
    }
    if (m_cached) {
        painter.drawPixmap(0, 0, m_layer);
    } else {
        painter.fillRect(rect(), m_sheet);
        draw(painter, m_background);
    }
    draw(painter, m_foreground);
}

} // namespace tailpoint::bench
