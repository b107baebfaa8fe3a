// Painting: static layer, what lies under the figure, the figure, what belongs to the hand.
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/lit_parts.h"
#include "ui/canvas/overlay.h"
#include "ui/canvas/own_layer.h"
#include "ui/canvas/pointing_layer.h"

#include <QPaintEvent>
#include <QPainter>

namespace tailpoint {

const DisplayList& Canvas::Private::listNow() {
    if (!glide.running() && !reveal.running()) {
        return scene.figure().list;
    }
    const double part = clock.currentValue().toDouble();
    moving = glide.running() ? glide.at(part) : reveal.at(part);
    return moving;
}

void Canvas::Private::paintUnder(QPainter& painter) {
    const std::vector<DrawnVector> drawn = drawnVectors(scene);
    const Theme& look = themeOf(theme);
    const auto band = [&](int vector, const QColor& colour) {
        if (const DrawnVector* at = vector == kNoVector ? nullptr : drawnOf(drawn, vector)) {
            paintBand(painter, scene.sheet(), *at, colour);
        }
    };
    if (!gesture && hover.kind == Hit::Kind::body && canTurn(hover.vector)) {
        band(hover.vector, look.grid);
    }
    for (const FigurePart& part : litParts) {
        paintLit(painter, scene, part, look.highlight);
    }
    band(lit, look.highlight);
    band(selected, look.highlight);
}

void Canvas::Private::paintOver(QPainter& painter) {
    const Theme& look = themeOf(theme);
    const Feedback* feedback = gesture ? gesture->feedback() : nullptr;
    paintOwnAnswer(painter, scene, look, selected);
    paintPointable(painter, scene, look);
    if (feedback != nullptr && scene.options().values) {
        paintSnapMark(painter, scene.sheet(), *feedback, look);
        const QPointF tail = scene.sheet().toPixels(feedback->tail),
                      tip = scene.sheet().toPixels(feedback->tip);
        const QRectF bounds = QRectF(q.rect()).adjusted(4, 4, -4, -4);
        const std::optional<QRectF> label = labelBox(scene, Cell::magnitude, gesture->vector());
        const QRectF place = readoutPlace(readoutSize(*feedback, q.font()), pointer, tail, tip, bounds,
                                          label.value_or(QRectF()));
        paintReadout(painter, place, *feedback, look, q.font());
    } else if (hover.kind == Hit::Kind::tip && canMove(hover.vector)) {
        paintHandle(painter, scene.sheet(), hover.drawn, look, scene.options().style.factor);
    }
    if (q.hasFocus() && focusShown) {
        painter.setPen(QPen(look.given, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(q.rect().adjusted(1, 1, -1, -1));
    }
}

void Canvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const DisplayList& list = d->listNow();
    const Theme& look = themeOf(d->theme);
    d->below.paint(painter, list, look, pixelsPerPoint(), devicePixelRatioF());
    d->paintUnder(painter);
    painter.save();
    painter.scale(pixelsPerPoint(), pixelsPerPoint());
    paint(painter, list, look, Layer::foreground);
    painter.restore();
    d->above.paint(painter, list, look, pixelsPerPoint(), devicePixelRatioF());
    d->paintOver(painter);
}

} // namespace tailpoint
