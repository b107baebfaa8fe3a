// SPDX-License-Identifier: MIT
#include "ui/canvas/canvas.h"

#include "core/construct/reduction.h"
#include "ui/canvas/accessible.h"
#include "ui/canvas/canvas_p.h"
#include "ui/canvas/words.h"
#include "ui/style/symbols.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QNativeGestureEvent>
#include <QScopedValueRollback>
#include <algorithm>

namespace tailpoint {

namespace {
constexpr double kZoomStep = 1.25;
constexpr int kRest = 300; // milliseconds without a move: assistive technology is told then
} // namespace

Canvas::Private::Private(Canvas& canvas, SketchDocument& document)
    : q(canvas), scene(document), nudges(document), editor(&canvas) {}

GestureContext Canvas::Private::context() {
    return {scene, snapping, [this](const Sentence& sentence) {
                const QScopedValueRollback<bool> quiet(isByPointer, true);
                say(sentence);
            }};
}

void Canvas::Private::say(const QString& text) {
    say(sentence(text));
}

void Canvas::Private::say(const Sentence& sentence) {
    const QString words = text(plain(sentence));
    emit q.hint(words, htmlOf(sentence));
    if (!isByPointer && !words.isEmpty()) {
        emit q.answered(words);
    }
}

Words Canvas::Private::symbolAt(int vector) const {
    return symbolWords(scene.result().things(), vectorId(vector));
}

void Canvas::Private::refresh() {
    scene.touch();
    glide.stop();
    reveal.stop();
    q.update();
    keepEditorOnLabel();
    const double now = divisionOf(scene.sheet().view());
    if (now != std::exchange(toldDivision, now)) {
        emit q.divisionChanged(now);
    }
}

void Canvas::Private::documentChanged() {
    if (!gesture && !ending) {
        scene.keepInSheet();
    }
    refresh();
    restingTips.follow(scene.document().snapshot());
    if (forceAt(scene.sketch(), selected) == nullptr) {
        q.select(kNoVector);
    }
    if (forceAt(scene.sketch(), lit) == nullptr) {
        lit = kNoVector;
    }
    if (!gesture) { // what was under a pointer at rest may have gone
        const Hit before = std::exchange(hover, pointerInside ? hitTest(scene, pointer) : Hit{});
        showCursor();
        if (before.vector != kNoVector && forceAt(scene.sketch(), before.vector) == nullptr) {
            sayHover(); // of a force that is no longer there nothing can be dragged
        }
    }
    announce();
}

/// Once for all changes of one turn of the event loop; while a hand is at it only when that rests.
void Canvas::Private::announce() {
    if (!QAccessible::isActive() || announcing) {
        return;
    }
    if (scene.document().isPreviewing()) {
        return rest.start();
    }
    announcing = true;
    QMetaObject::invokeMethod(
        &q,
        [this] {
            announcing = false;
            tellNewNames(q);
        },
        Qt::QueuedConnection);
}

void Canvas::Private::tellFocus() {
    if (QAccessible::isActive() && q.hasFocus() && selected != kNoVector) {
        tellNewNames(q); // first, so that nobody takes it by the name of who stood there before
        QAccessibleEvent event(&q, QAccessible::Focus);
        event.setChild(childOfVector(q, selected));
        QAccessible::updateAccessibility(&event);
    }
}

/// By an undo or a save in the middle of a drag, say: the hand holds nothing any more.
void Canvas::Private::previewEnded() {
    if (gesture && gesture->previews()) {
        pendingMove.reset();
        gesture.reset();
        edgeClock.stop();
        scene.setSteady(false);
        refresh();
        hoverAt(pointer, keys);
    }
}

void Canvas::Private::documentReplaced() {
    edgeClock.stop();
    pendingMove.reset();
    gesture.reset(); // its sketch is gone: nothing to take back
    scene.setSteady(false);
    editor.leave();
    q.select(kNoVector);
    lit = kNoVector;
    q.fit();
    beforeAnswer = {scene.look(), scene.sketch(), QSize()}; // nothing to come back to but a fit
}

Canvas::Canvas(SketchDocument& document, QWidget* parent)
    : QWidget(parent), d(std::make_unique<Private>(*this, document)) {
    installAccessibleCanvas();
    setObjectName(QStringLiteral("canvas"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Sheet"));
    d->clock.setStartValue(0.0);
    d->clock.setEndValue(1.0);
    connect(&document, &SketchDocument::changed, this, [this] { d->documentChanged(); });
    connect(&document, &SketchDocument::replaced, this, [this] { d->documentReplaced(); });
    connect(&document, &SketchDocument::previewEnded, this, [this] { d->previewEnded(); });
    connect(&d->restingTips, &RestingTips::made, this,
            [this](const Snapshot& of, const std::shared_ptr<const Tolerated>& tips) {
                d->scene.setRestingTips(of, tips);
                update();
            });
    d->rest.setSingleShot(true);
    d->rest.setInterval(kRest);
    connect(&d->rest, &QTimer::timeout, this, [this] { tellNewNames(*this); });
    connect(&d->editor, &LabelEditor::complained, this, &Canvas::answered);
    d->edgeClock.setInterval(16); // a frame
    d->edgeClock.setTimerType(Qt::PreciseTimer);
    connect(&d->edgeClock, &QTimer::timeout, this, [this] { d->restAtEdge(); });
    connect(&d->clock, &QVariantAnimation::valueChanged, this, qOverload<>(&QWidget::update));
    connect(&d->clock, &QVariantAnimation::finished, this, [this] {
        d->glide.stop();
        d->reveal.stop();
        update();
    });
}

Canvas::~Canvas() = default;

ConstructionKind Canvas::construction() const {
    return d->scene.options().construction;
}
ConstructionKind Canvas::drawnConstruction() const {
    return d->scene.drawnConstruction();
}
bool Canvas::parallelMarks() const {
    return d->scene.options().parallelMarks;
}
bool Canvas::shadesTips() const {
    return d->scene.options().regions;
}
bool Canvas::otherOrder() const {
    return d->scene.options().otherOrder;
}
bool Canvas::snapping() const {
    return d->snapping;
}
ThemeName Canvas::theme() const {
    return d->theme;
}
int Canvas::selected() const {
    return d->selected;
}
const View& Canvas::view() const {
    return d->scene.sheet().view();
}
double Canvas::pixelsPerPoint() const {
    return d->scene.sheet().pixelsPerPoint();
}
const Figure& Canvas::figure() const {
    return d->scene.figure();
}
FigureOptions Canvas::figureOptions() const {
    return d->scene.options();
}
SketchDocument& Canvas::document() const {
    return d->scene.document();
}

QRect Canvas::vectorRect(int vector) const {
    const std::vector<DrawnVector>& drawn = d->scene.drawn();
    const DrawnVector* at = drawnOf(drawn, vector);
    if (at == nullptr) {
        return {};
    }
    const SheetView& sheet = d->scene.sheet();
    const QRectF box = QRectF(sheet.toPixels(at->tail), sheet.toPixels(at->tip)).normalized();
    constexpr double near = kPointerReach.point;
    return box.adjusted(-near, -near, near, near).toAlignedRect();
}

bool Canvas::isGliding() const {
    return d->glide.running();
}
bool Canvas::isRevealing() const {
    return d->reveal.running();
}
bool Canvas::isDragging() const {
    return d->gesture != nullptr;
}
QSize Canvas::sizeHint() const {
    return {966, 670};
}
QSize Canvas::minimumSizeHint() const {
    return {240, 96};
}

void Canvas::editMagnitude(int vector) {
    d->openEditor(Cell::magnitude, vector);
}
void Canvas::editDirection(int vector) {
    d->openEditor(Cell::direction, vector);
}
void Canvas::rename(int vector) {
    d->openEditor(Cell::name, vector);
}
void Canvas::editTitle() {
    d->openEditor(Cell::title, kNoVector);
}
void Canvas::editReference() {
    d->openEditor(Cell::reference, kNoVector);
}
void Canvas::editFigures() {
    d->openEditor(Cell::figures, kNoVector);
}

void Canvas::setConstruction(ConstructionKind kind) {
    if (kind != construction()) {
        d->scene.setConstruction(kind);
        d->refresh();
        emit constructionChanged();
    }
}

void Canvas::setOtherOrder(bool other) {
    if (other != otherOrder()) {
        d->scene.setOtherOrder(other);
        d->refresh();
        emit constructionChanged();
    }
}

void Canvas::setParallelMarks(bool on) {
    d->scene.setParallelMarks(on);
    d->refresh();
}

void Canvas::setShadesTips(bool on) {
    d->scene.setShadesTips(on);
    d->refresh();
}

void Canvas::setByParallelograms(bool on) {
    d->scene.setByParallelograms(on);
    d->refresh();
    emit constructionChanged();
}

void Canvas::setSnapping(bool on) {
    if (on != d->snapping) {
        d->takeMove();
        d->snapping = on;
        if (d->gesture) {
            d->gesture->setSnapping(on);
            d->moveGesture(d->keys);
        }
        emit snappingChanged(on);
    }
}

void Canvas::setTheme(ThemeName name) {
    d->theme = name;
    update();
}

void Canvas::setAnimated(bool on) {
    d->animated = on;
}

bool Canvas::isStaged() const {
    return d->staged;
}

void Canvas::setStaged(bool on) {
    d->staged = on;
}

void Canvas::setFigure(const FigureOptions& options, bool moves) {
    const FigureOptions old = d->scene.options();
    d->scene.setOptions(options);
    if (!d->gesture) // the view stands while a hand drags
        d->scene.frame();
    DisplayList before;
    if (moves) { // as it was, in the view that it has now: only what is new moves
        d->scene.setOptions(old);
        before = d->scene.figure().list;
        d->scene.setOptions(options);
    }
    d->hover = {};
    d->refresh();
    if (moves && d->reveal.start(before, d->scene.figure().list)) {
        d->clock.setDuration(Reveal::kMilliseconds);
        d->clock.start();
    }
}

void Canvas::setKeepsForces(bool keeps) {
    d->keepsForces = keeps;
}

void Canvas::fit() {
    d->scene.fit();
    d->refresh();
}

void Canvas::zoomIn() {
    d->scene.zoomAbout(QRectF(rect()).center(), kZoomStep);
    d->refresh();
}

void Canvas::zoomOut() {
    d->scene.zoomAbout(QRectF(rect()).center(), 1 / kZoomStep);
    d->refresh();
}

void Canvas::takeOtherAnswer() {
    if (d->scene.result().solved.solutions.size() == 2) {
        tailpoint::takeOtherAnswer(d->scene.document());
    } else if (d->scene.document().withholdsAnswer()) {
        d->say(tr("What the answer is stays hidden until you show it."));
    } else {
        d->say(tr("There is no other answer to this question."));
    }
}

/// Qt tells of the sheet last, and after that it is told who on it has the keyboard.
void Canvas::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    QMetaObject::invokeMethod(
        this, [this] { d->tellFocus(); }, Qt::QueuedConnection);
}

void Canvas::select(int vector) {
    const int to = forceAt(d->scene.sketch(), vector) != nullptr ? vector : kNoVector;
    if (to != d->selected) {
        d->selected = to;
        d->nudges.end();
        update();
        d->tellFocus();
        emit selectionChanged(to);
    }
}

void Canvas::highlight(int vector) {
    if (vector != d->lit) {
        d->lit = vector;
        update();
    }
}

void Canvas::lightParts(const std::vector<FigurePart>& parts) {
    if (parts != d->litParts) {
        d->litParts = parts;
        update();
    }
}

/// The window is about to paint: what a hand did since the last frame comes first.
bool Canvas::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::UpdateRequest && watched == window()) {
        d->takeMove();
    }
    return QWidget::eventFilter(watched, event);
}

bool Canvas::event(QEvent* event) {
    switch (event->type()) {
    case QEvent::Show:
        window()->installEventFilter(this);
        break;
    case QEvent::ShortcutOverride: {
        d->takeMove(); // whatever the key does, it does it to what is under the hand
        const auto* pressed = static_cast<QKeyEvent*>(event);
        const bool snaps = pressed->key() == Qt::Key_S &&
                           !pressed->modifiers().testFlag(Qt::ControlModifier); // Ctrl+S saves
        if (d->gesture && (pressed->key() == Qt::Key_Escape || snaps)) {
            event->accept(); // the drag comes before whatever the window does with Escape
            return true;
        }
        break;
    }
    case QEvent::NativeGesture: {
        const auto* native = static_cast<QNativeGestureEvent*>(event);
        if (native->gestureType() == Qt::ZoomNativeGesture && !d->gesture) {
            d->scene.zoomAbout(native->position(), 1 + std::clamp(native->value(), -0.5, 0.5));
            d->refresh();
            return true;
        }
        break;
    }
    case QEvent::FocusIn:
    case QEvent::FocusOut: {
        d->takeMove();
        const Qt::FocusReason reason = static_cast<QFocusEvent*>(event)->reason();
        d->focusShown = reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason;
        d->spaceHeld = false;
        if (event->type() == QEvent::FocusOut) {
            d->nudges.keyReleased(); // that goes elsewhere
            d->nudges.end();
        }
        update();
        break;
    }
    default:
        break;
    }
    return QWidget::event(event);
}

void Canvas::resizeEvent(QResizeEvent*) {
    d->scene.resize(size(), logicalDpiY() / 72.0);
    d->refresh();
}

} // namespace tailpoint
