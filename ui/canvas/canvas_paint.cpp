// SPDX-License-Identifier: MIT
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
    const std::vector<DrawnVector>& drawn = scene.drawn();
    const Theme& look = themeOf(theme);
    const auto bands = [&](const Highlight& marking, std::initializer_list<int> vectors) {
        for (const auto paintPart : {paintBandEdge, paintBandGround}) {
            for (const int vector : vectors) {
                if (const DrawnVector* at = vector == kNoVector ? nullptr : drawnOf(drawn, vector)) {
                    paintPart(painter, scene.sheet(), *at, marking);
                }
            }
        }
    };
    if (!gesture && hover.kind == Hit::Kind::body && canTurn(hover.vector)) {
        bands(hoverHighlight(look), {hover.vector});
    }
    paintLit(painter, scene, litParts, selectedHighlight(look));
    bands(selectedHighlight(look), {lit, selected});
}

/// Where a drag from here would lead: along the arrow's line, or round its tail.
void Canvas::Private::paintHover(QPainter& painter) {
    const Theme& look = themeOf(theme);
    const DragEffect effect = effectOf(hover);
    if (hover.kind == Hit::Kind::tip && canMove(hover.vector)) {
        paintHandle(painter, scene.sheet(), hover.drawn, look, scene.options().style.factor);
    }
    if (effect == DragEffect::resizes || effect == DragEffect::turns) {
        Feedback way;
        way.tail = hover.drawn.tail;
        way.tip = hover.drawn.tip;
        way.mark.direction = effect == DragEffect::resizes;
        way.mark.magnitude = effect == DragEffect::turns;
        paintSnapMark(painter, scene.sheet(), way, look);
    }
    if (hover.unit && !staged) {
        painter.setPen(QPen(look.mark, 2));
        painter.drawLine(hover.unitBox.bottomLeft() + QPointF(0, 1.5),
                         hover.unitBox.bottomRight() + QPointF(0, 1.5));
    }
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
    } else if (!gesture) {
        paintHover(painter);
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
