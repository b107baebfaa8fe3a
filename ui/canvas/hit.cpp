#include "ui/canvas/hit.h"

#include "core/construct/reduction.h"
#include "core/figure/hit.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/own_layer.h"

#include <QLineF>
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace tailpoint {

namespace {

constexpr double kLeastArrow = 2; // pixels; what is shorter has no tip of its own to take

/// Distance from a point to the piece a-b.
double distanceTo(QPointF p, QPointF a, QPointF b) {
    const QPointF along = b - a;
    const double square = QPointF::dotProduct(along, along);
    const double t = square > 0 ? std::clamp(QPointF::dotProduct(p - a, along) / square, 0.0, 1.0) : 0;
    return QLineF(p, a + t * along).length();
}

/// Calls `take(cell, vector, box)` for every text of the title block; they come in reading order.
template <class Take>
void forEachCell(const DisplayList& list, Take take) {
    constexpr std::array cells{Cell::title, Cell::scale, Cell::reference, Cell::figures};
    for (const Group& group : list.groups) {
        auto cell = cells.begin();
        for (const Item& item : group.items) {
            const Text* text = group.role == Role::titleblock ? std::get_if<Text>(&item) : nullptr;
            if (text != nullptr && cell != cells.end()) {
                take(*cell++, kNoVector, text->box);
            }
        }
    }
}

/// Calls `take(cell, vector, box in pixels)` for every text that can be typed into.
template <class Take>
void forEachLabel(const Scene& scene, Take take) {
    const DisplayList& list = scene.figure().list;
    const auto takeBox = [&](Cell cell, int vector, const Box& box) {
        take(cell, vector, scene.sheet().toPixels(box).adjusted(-4, -4, 4, 4));
    };
    for (const SheetLabel& label : labelsOn(list)) {
        const Cell cell = label.ofDirection   ? Cell::direction
                          : label.otherAnswer ? Cell::otherAnswer
                                              : Cell::magnitude;
        takeBox(cell, indexOf(label.vector), label.box);
    }
    forEachCell(list, takeBox);
}

/// What follows from the rest stands a pixel further off than it is: where it lies on something that can be
/// dragged, as the resultant of one force does, the latter is taken.
constexpr double kFoundIsFurther = 1;

/// A large figure has large heads and thick shafts.
double reachOf(const Scene& scene, double pixels) {
    return pixels * std::max(1.0, scene.options().style.factor / 1.5);
}

void nearestTip(Hit& best, const Scene& scene, const std::vector<DrawnVector>& drawn, QPointF at) {
    const SheetView& sheet = scene.sheet();
    const double reach = reachOf(scene, kTipReach);
    double least = QLineF(at, sheet.toPixels(Eigen::Vector2d(0, 0))).length();
    if (least <= reach) {
        best.kind = Hit::Kind::commonPoint;
    }
    for (const DrawnVector& d : drawn) {
        const QPointF tip = sheet.toPixels(d.tip);
        const double away = QLineF(at, tip).length();
        const double rank = away + (tipCanMove(scene.sketch(), d.vector) ? 0 : kFoundIsFurther);
        const bool lies = QLineF(sheet.toPixels(d.tail), tip).length() < kLeastArrow;
        if (!d.ghost && !lies && away <= reach && rank < least) {
            least = rank;
            best = {Hit::Kind::tip, d.vector, d, Cell::none, {}};
        }
    }
}

void nearestBody(Hit& best, const Scene& scene, const std::vector<DrawnVector>& drawn, QPointF at) {
    const SheetView& sheet = scene.sheet();
    const double reach = reachOf(scene, kBodyReach);
    double least = HUGE_VAL;
    for (const DrawnVector& d : drawn) {
        const double away = distanceTo(at, sheet.toPixels(d.tail), sheet.toPixels(d.tip));
        const double rank = away + (d.ghost || bodyCanTurn(scene.sketch(), d.vector) ? 0 : kFoundIsFurther);
        if (away <= reach && rank < least) {
            least = rank;
            best = {d.ghost ? Hit::Kind::otherAnswer : Hit::Kind::body, d.vector, d, Cell::none, {}};
        }
    }
}

/// A given tip that is as near comes first: the learner's own can be taken anywhere else.
void nearestOwnTip(Hit& best, const Scene& scene, QPointF at) {
    const SheetView& sheet = scene.sheet();
    double least = reachOf(scene, kTipReach);
    if (best.kind == Hit::Kind::tip) {
        least = std::min(least, QLineF(at, sheet.toPixels(best.drawn.tip)).length());
    }
    for (const OwnTip& own : ownTips(scene)) {
        const double away = QLineF(at, sheet.toPixels(own.tip)).length();
        if (away < least) {
            least = away;
            const int vector = tailpoint::indexOf(own.vector);
            best = {Hit::Kind::ownTip, vector, {vector, {0, 0}, own.tip, false}, Cell::none, {}};
        }
    }
}

} // namespace

Hit hitTest(const Scene& scene, QPointF at) {
    const std::vector<DrawnVector> drawn = drawnVectors(scene);
    Hit hit;
    nearestTip(hit, scene, drawn, at);
    nearestOwnTip(hit, scene, at);
    if (hit.kind == Hit::Kind::nothing) {
        hit = hitLabel(scene, at);
    }
    if (hit.kind == Hit::Kind::nothing) {
        nearestBody(hit, scene, drawn, at);
    }
    return hit;
}

Hit hitLabel(const Scene& scene, QPointF at) {
    Hit hit;
    forEachLabel(scene, [&](Cell cell, int vector, const QRectF& box) {
        if (box.contains(at)) {
            const Hit::Kind kind = cell == Cell::otherAnswer ? Hit::Kind::otherAnswer
                                   : vector == kNoVector     ? Hit::Kind::cell
                                                             : Hit::Kind::label;
            hit = {kind, vector, {}, cell, box};
        }
    });
    return hit;
}

std::optional<QRectF> labelBox(const Scene& scene, Cell cell, int vector) {
    std::optional<QRectF> found;
    forEachLabel(scene, [&](Cell other, int of, const QRectF& box) {
        if (other == cell && of == vector) {
            found = box;
        }
    });
    return found;
}

} // namespace tailpoint
