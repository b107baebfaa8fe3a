// SPDX-License-Identifier: MIT
#include "ui/canvas/hit.h"

#include "core/construct/reduction.h"
#include "core/figure/hit.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/own_layer.h"
#include "ui/canvas/unit_at.h"

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

/// Calls `take(cell, vector, text)` for every text of the title block; they come in reading order.
template <class Take>
void forEachCell(const DisplayList& list, Take take) {
    constexpr std::array cells{Cell::title, Cell::scale, Cell::reference, Cell::figures};
    for (const Group& group : list.groups) {
        auto cell = cells.begin();
        for (const Item& item : group.items) {
            const Text* text = group.role == Role::titleblock ? std::get_if<Text>(&item) : nullptr;
            if (text != nullptr && cell != cells.end()) {
                take(*cell++, kNoVector, *text);
            }
        }
    }
}

/// Calls `take(cell, vector, text)` for every text that can be typed into.
template <class Take>
void forEachLabel(const Scene& scene, Take take) {
    const DisplayList& list = scene.figure().list;
    for (const SheetLabel& label : labelsOn(list)) {
        const Cell cell = label.ofDirection   ? Cell::direction
                          : label.otherAnswer ? Cell::otherAnswer
                                              : Cell::magnitude;
        take(cell, indexOf(label.vector), *label.text);
    }
    forEachCell(list, take);
}

QRectF boxOf(const Scene& scene, const Text& text) {
    return scene.sheet().toPixels(text.box).adjusted(-4, -4, 4, 4);
}

/// As large as a target has to be.
QRectF targetOf(const QRectF& box, double side) {
    const double x = std::max(0.0, side - box.width()) / 2, y = std::max(0.0, side - box.height()) / 2;
    return box.adjusted(-x, -y, x, y);
}

double distanceTo(QPointF p, const QRectF& box) {
    const double x = std::max({box.left() - p.x(), p.x() - box.right(), 0.0});
    const double y = std::max({box.top() - p.y(), p.y() - box.bottom(), 0.0});
    return std::hypot(x, y);
}

bool hasUnit(Cell cell) {
    return cell == Cell::magnitude || cell == Cell::direction || cell == Cell::scale;
}

std::optional<UnitOnSheet> unitUnder(const Scene& scene, const Text& text, QPointF at, double side) {
    const QRectF near = scene.sheet().toPixels(text.box).adjusted(-side, -side, side, side);
    const std::optional<UnitOnSheet> unit = near.contains(at) ? unitOf(scene, text) : std::nullopt;
    return unit && unit->target(side).contains(at) ? unit : std::nullopt;
}

/// The unit of an angle or a side that can't be typed into.
void bareUnit(Hit& hit, const Scene& scene, QPointF at, double side) {
    for (const Group& group : scene.figure().list.groups) {
        const bool counts = group.part && (group.role == Role::arc || group.role == Role::construction);
        for (const Item& item : group.items) {
            const Text* text = counts ? std::get_if<Text>(&item) : nullptr;
            const auto unit = text != nullptr ? unitUnder(scene, *text, at, side) : std::nullopt;
            if (unit && hit.kind == Hit::Kind::nothing) {
                hit.kind = Hit::Kind::unit;
                hit.unit = unit->of;
                hit.unitBox = unit->box;
            }
        }
    }
}

/// What follows from the rest stands a pixel further off than it is: where it lies on something that can be
/// dragged, as the resultant of one force does, the latter is taken.
constexpr double kFoundIsFurther = 1;

/// A large figure has large heads and thick shafts.
double reachOf(const Scene& scene, double pixels) {
    return pixels * std::max(1.0, scene.options().style.factor / 1.5);
}

void nearestTip(Hit& best, const Scene& scene, const std::vector<DrawnVector>& drawn, QPointF at,
                double reach) {
    const SheetView& sheet = scene.sheet();
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
            best = {Hit::Kind::tip, d.vector, d, Cell::none, {}, {}, {}};
        }
    }
}

void nearestBody(Hit& best, const Scene& scene, const std::vector<DrawnVector>& drawn, QPointF at,
                 double reach) {
    const SheetView& sheet = scene.sheet();
    double least = HUGE_VAL;
    for (const DrawnVector& d : drawn) {
        const double away = distanceTo(at, sheet.toPixels(d.tail), sheet.toPixels(d.tip));
        const double rank = away + (d.ghost || bodyCanTurn(scene.sketch(), d.vector) ? 0 : kFoundIsFurther);
        if (away <= reach && rank < least) {
            least = rank;
            best = {d.ghost ? Hit::Kind::otherAnswer : Hit::Kind::body, d.vector, d, Cell::none, {}, {}, {}};
        }
    }
}

/// A given tip that is as near comes first: the learner's own can be taken anywhere else.
void nearestOwnTip(Hit& best, const Scene& scene, QPointF at, double least) {
    const SheetView& sheet = scene.sheet();
    if (best.kind == Hit::Kind::tip) {
        least = std::min(least, QLineF(at, sheet.toPixels(best.drawn.tip)).length());
    }
    for (const OwnTip& own : ownTips(scene)) {
        const double away = QLineF(at, sheet.toPixels(own.tip)).length();
        if (away < least) {
            least = away;
            const int vector = tailpoint::indexOf(own.vector);
            best = {Hit::Kind::ownTip, vector, {vector, {0, 0}, own.tip, false}, Cell::none, {}, {}, {}};
        }
    }
}

} // namespace

Hit hitTest(const Scene& scene, QPointF at, const Reach& reach) {
    const std::vector<DrawnVector>& drawn = scene.drawn();
    const double near = reachOf(scene, reach.point);
    Hit hit;
    nearestTip(hit, scene, drawn, at, near);
    nearestOwnTip(hit, scene, at, near);
    if (hit.kind == Hit::Kind::nothing) {
        hit = hitLabel(scene, at, reach);
    }
    if (hit.kind == Hit::Kind::nothing) {
        bareUnit(hit, scene, at, reach.side);
    }
    if (hit.kind == Hit::Kind::nothing) {
        nearestBody(hit, scene, drawn, at, near);
    }
    return hit;
}

/// Targets may overlap where boxes do not: the nearest box is meant.
Hit hitLabel(const Scene& scene, QPointF at, const Reach& reach) {
    Hit hit;
    double least = HUGE_VAL;
    forEachLabel(scene, [&](Cell cell, int vector, const Text& text) {
        const QRectF box = boxOf(scene, text);
        const auto unit = hasUnit(cell) ? unitUnder(scene, text, at, reach.side) : std::nullopt;
        const double away = distanceTo(at, box);
        if ((unit || targetOf(box, reach.side).contains(at)) && away < least) {
            least = away;
            const Hit::Kind kind = cell == Cell::otherAnswer ? Hit::Kind::otherAnswer
                                   : vector == kNoVector     ? Hit::Kind::cell
                                                             : Hit::Kind::label;
            hit = {kind, vector, {}, cell, box, {}, {}};
            if (unit) {
                hit.unit = unit->of;
                hit.unitBox = unit->box;
            }
        }
    });
    return hit;
}

std::optional<QRectF> labelBox(const Scene& scene, Cell cell, int vector) {
    std::optional<QRectF> found;
    forEachLabel(scene, [&](Cell other, int of, const Text& text) {
        if (other == cell && of == vector) {
            found = boxOf(scene, text);
        }
    });
    return found;
}

} // namespace tailpoint
