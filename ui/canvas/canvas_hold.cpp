// SPDX-License-Identifier: MIT
// The sheet under a drag: it holds still, gives way at its edge, and shows afterwards what was drawn.
#include "ui/canvas/canvas_p.h"

namespace tailpoint {

namespace {

bool isOn(const SheetView& sheet, const Eigen::Vector2d& at) {
    const QPointF p = sheet.toPixels(at);
    const QRectF all(QPointF(0, 0), sheet.toPixels(Point{sheet.view().width, sheet.view().height}));
    return all.contains(p);
}

/// The common point and what is given besides the dragged vector, as far as it is on the sheet; nothing where
/// the common point is not.
std::vector<Eigen::Vector2d> keptIn(const Scene& scene, int dragged) {
    const Eigen::Vector2d common(0, 0);
    const SheetView& sheet = scene.sheet();
    if (!isOn(sheet, common)) {
        return {};
    }
    std::vector<Eigen::Vector2d> kept{common};
    for (const DrawnVector& drawn : scene.drawn()) {
        const Force* force = forceAt(scene.sketch(), drawn.vector);
        const bool given = force != nullptr && isGiven(force->magnitude) && isGiven(force->direction);
        if (given && drawn.vector != dragged && isOn(sheet, drawn.tip)) {
            kept.push_back(drawn.tip);
        }
    }
    return kept;
}

} // namespace

void Canvas::Private::moveGesture(Qt::KeyboardModifiers now) {
    keys = now;
    gesture->move({pointer, keys});
    followEdge();
    q.update();
}

void Canvas::Private::beginAtEdge() {
    edgeClock.stop();
    keys = {};
    lookBefore = scene.look();
    shownBefore = scene.shown();
    if (gesture) {
        edge.begin(scene.sheet(), pointer, keptIn(scene, gesture->vector()));
    }
}

void Canvas::Private::followEdge() {
    const bool pulls = !staged && gesture->reaches(keys) && !edge.pull(scene.sheet(), pointer).isNull();
    if (!pulls) {
        edgeClock.stop();
    } else if (!edgeClock.isActive()) {
        sinceTick.start();
        edgeClock.start();
    }
}

void Canvas::Private::restAtEdge() {
    takeMove();
    constexpr double kMostTick = 0.05; // seconds: a frame that came late moves the sheet no further
    const double seconds = std::min(kMostTick, static_cast<double>(sinceTick.restart()) / 1000);
    if (!gesture || !gesture->reaches(keys)) {
        return edgeClock.stop();
    }
    const EdgeScroll::Step step = edge.rest(scene.sheet(), pointer, seconds);
    if (step.scroll.isNull() && !step.stepOut) {
        return;
    }
    scene.scrollBy(step.scroll);
    if (step.stepOut) {
        scene.stepOut();
    }
    moveGesture(keys); // the tip stays under the pointer
    readPointer(pointer);
    refresh();
}

/// What was all to be seen is so again, around a common point that does not move; a tip that was let
/// go beyond the edge, faster than the sheet gave way, is brought in.
bool Canvas::Private::settle(const Gesture& ended) {
    const Feedback* drawn = ended.feedback();
    if (drawn == nullptr) {
        return true;
    }
    if (staged) {
        scene.keepInSheet(); // a stage has no command that fits it
        return true;
    }
    scene.holdStill();
    const auto shows = [this] { return scene.shown() >= shownBefore || scene.stepOutToWhole(); };
    bool whole = shows();
    if (ended.reaches(keys) && !isOn(scene.sheet(), drawn->tip)) {
        std::vector<Eigen::Vector2d> seen = keptIn(scene, ended.vector());
        seen.push_back(drawn->tip);
        scene.bringIn(seen);
        whole = shows();
    }
    return whole;
}

void Canvas::layCasesOver(bool on) {
    d->scene.layCasesOver(on);
    d->refresh();
}

} // namespace tailpoint
