// SPDX-License-Identifier: MIT
#include "ui/canvas/overlay.h"

#include "ui/style/painted_sentence.h"

#include <QLineF>
#include <algorithm>
#include <array>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kPad = 7;
constexpr double kOffset = 18; // from the pointer to the readout's nearest corner
constexpr double kClear = 10;  // kept free around the tip

constexpr double kSymbol = 1.12; // its letters beside the readout's

QFont smaller(const QFont& font) {
    QFont small = font;
    small.setPointSizeF(font.pointSizeF() * 0.88);
    return small;
}

double nameWidth(const Feedback& feedback, const QFont& font) {
    return feedback.name.empty() ? 0 : PaintedSentence(font, kSymbol).width(feedback.name) + kPad;
}

/// How much of the segment a-b lies inside the box, 0..1, by sampling.
double covered(const QRectF& box, QPointF a, QPointF b) {
    constexpr int kSamples = 24;
    int inside = 0;
    for (int i = 0; i <= kSamples; ++i) {
        inside += box.contains(a + (b - a) * (double(i) / kSamples)) ? 1 : 0;
    }
    return double(inside) / kSamples;
}

QRectF movedInside(QRectF box, const QRectF& bounds) {
    box.moveLeft(std::max(bounds.left(), std::min(box.left(), bounds.right() - box.width())));
    box.moveTop(std::max(bounds.top(), std::min(box.top(), bounds.bottom() - box.height())));
    return box;
}

} // namespace

namespace {

constexpr double kBand = 11;

void paintStrip(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn, const QColor& colour,
                double width) {
    const QPointF tail = sheet.toPixels(drawn.tail), tip = sheet.toPixels(drawn.tip);
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap)); // round caps would make it a path: slow
    painter.drawLine(tail, tip);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    for (const QPointF& end : {tail, tip})
        painter.drawEllipse(end, width / 2, width / 2);
}

} // namespace

Highlight selectedHighlight(const Theme& theme) {
    return {theme.highlight, theme.mark};
}

Highlight hoverHighlight(const Theme& theme) {
    return {theme.grid, theme.construction, 1.2};
}

void paintBandEdge(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn,
                   const Highlight& marking) {
    paintStrip(painter, sheet, drawn, marking.edge, kBand + 2 * marking.width);
}

void paintBandGround(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn,
                     const Highlight& marking) {
    paintStrip(painter, sheet, drawn, marking.ground, kBand);
}

void paintHandle(QPainter& painter, const SheetView& sheet, const DrawnVector& drawn, const Theme& theme,
                 double factor) {
    factor = std::max(1.0, factor);
    painter.setPen(QPen(theme.colour(drawn.vector == kSumIndex ? Role::sum : Role::given), 1.6 * factor));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(sheet.toPixels(drawn.tip), 9 * factor, 9 * factor);
}

void paintSnapMark(QPainter& painter, const SheetView& sheet, const Feedback& feedback, const Theme& theme) {
    const QPointF tail = sheet.toPixels(feedback.tail), tip = sheet.toPixels(feedback.tip);
    const QLineF shaft(tail, tip);
    if (shaft.length() < 1) {
        return;
    }
    QPen pen(theme.construction, 1, Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({1, 3});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    if (feedback.mark.direction) {
        QLineF beyond(tip, tip + (tip - tail));
        beyond.setLength(64);
        painter.drawLine(beyond.pointAt(0.25), beyond.p2());
    }
    if (feedback.mark.magnitude) {
        const double r = shaft.length();
        const double half = std::min(60.0, 34 / r * 57.3); // degrees either side: about 34 pixels of arc
        const QRectF circle(tail.x() - r, tail.y() - r, 2 * r, 2 * r);
        painter.drawArc(circle, int((shaft.angle() - half) * 16), int(2 * half * 16));
    }
}

QSizeF readoutSize(const Feedback& feedback, const QFont& font) {
    const QFontMetricsF large(font), small(smaller(font));
    const double second = feedback.mark.words.empty() ? 0 : small.height();
    const double first = nameWidth(feedback, font) + large.horizontalAdvance(feedback.readout);
    const double width = std::max(first, PaintedSentence(smaller(font), kSymbol).width(feedback.mark.words));
    return {std::ceil(width + 2 * kPad), std::ceil(large.height() + second + kPad)};
}

QRectF readoutPlace(QSizeF size, QPointF pointer, QPointF tail, QPointF tip, const QRectF& bounds,
                    const QRectF& label) {
    const QRectF tipBox(tip.x() - kClear, tip.y() - kClear, 2 * kClear, 2 * kClear);
    const double w = size.width(), h = size.height();
    const std::array<QPointF, 4> corners{QPointF(kOffset, -kOffset - h), QPointF(kOffset, kOffset),
                                         QPointF(-kOffset - w, -kOffset - h), QPointF(-kOffset - w, kOffset)};
    QRectF best;
    double least = HUGE_VAL;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const QRectF wanted(pointer + corners[i], size);
        const QRectF box = movedInside(wanted, bounds);
        const double cost = (box.intersects(tipBox) ? 100 : 0) + (box.intersects(label) ? 50 : 0) +
                            20 * covered(box, tail, tip) +
                            QLineF(box.topLeft(), wanted.topLeft()).length() / 10 + 0.01 * double(i);
        if (cost < least) {
            least = cost;
            best = box;
        }
    }
    return best;
}

void paintReadout(QPainter& painter, const QRectF& place, const Feedback& feedback, const Theme& theme,
                  const QFont& font) {
    painter.setPen(QPen(theme.hairline, 1));
    painter.setBrush(theme.panel);
    painter.drawRoundedRect(place.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    const QFontMetricsF large(font), small(smaller(font));
    const double x = place.left() + kPad;
    double y = place.top() + kPad / 2 + large.ascent();
    painter.setPen(theme.ink);
    PaintedSentence(font, kSymbol).draw(painter, {x, y}, feedback.name);
    painter.setFont(font);
    painter.drawText(QPointF(x + nameWidth(feedback, font), y), feedback.readout);
    if (!feedback.mark.words.empty()) {
        y += large.descent() + small.ascent();
        painter.setPen(theme.quietInk);
        PaintedSentence(smaller(font), kSymbol).draw(painter, {x, y}, feedback.mark.words);
    }
}

} // namespace tailpoint
