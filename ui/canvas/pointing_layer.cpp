// SPDX-License-Identifier: MIT
#include "ui/canvas/pointing_layer.h"

#include "ui/marking/own_answer.h"

#include <QLineF>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace tailpoint {

namespace {

constexpr double kFirst = 34, kStep = 24; // pixels: radius of a corner's first arc, and from one to the next
constexpr double kPointedReach = 12, kDisc = 5;  // pixels
constexpr double kStub = 26;                     // pixels that a leg that is laid on runs beyond the arc
constexpr double kThinPointed = 1.2, kMeant = 3; // pixels
constexpr double kDegrees = 180 / std::numbers::pi;

struct ArcOnSheet {
    QPointF corner;
    double radius = 0, start = 0, sweep = 0; ///< radians counter-clockwise as seen

    QPointF at(double radians, double distance) const {
        return corner + distance * QPointF(std::cos(radians), -std::sin(radians));
    }
    QPointF middle() const { return at(start + sweep / 2, radius); }
    double away(QPointF from) const {
        const QPointF d = from - corner;
        const double turn =
            std::remainder(std::atan2(-d.y(), d.x()) - (start + sweep / 2), 2 * std::numbers::pi);
        const double onArc =
            std::abs(turn) <= std::abs(sweep) / 2 ? std::abs(std::hypot(d.x(), d.y()) - radius) : HUGE_VAL;
        return std::min(onArc, QLineF(from, middle()).length());
    }
};

ArcOnSheet arcOf(const Scene& scene, const PointableAngle& angle) {
    return {scene.sheet().toPixels(angle.corner), kFirst + kStep * angle.row,
            std::atan2(angle.leg.y(), angle.leg.x()), angle.sweep};
}

void paintOne(QPainter& painter, const ArcOnSheet& arc, const PointableAngle& angle, bool isMeant,
              const Theme& theme) {
    const QRectF box(arc.corner - QPointF(arc.radius, arc.radius), QSizeF(2 * arc.radius, 2 * arc.radius));
    painter.setBrush(Qt::NoBrush);
    if (angle.tip != kNobody || angle.second != kNobody) { // the legs as far as they are needed
        painter.setPen(QPen(theme.construction, kThinPointed, Qt::DotLine));
        painter.drawLine(arc.corner, arc.at(arc.start + arc.sweep, arc.radius + kStub));
    }
    QPainterPath path;
    path.arcMoveTo(box, arc.start * kDegrees);
    path.arcTo(box, arc.start * kDegrees, arc.sweep * kDegrees);
    painter.setPen(QPen(isMeant ? theme.sum : theme.arc, isMeant ? kMeant : kThinPointed));
    painter.drawPath(path);
    painter.setBrush(isMeant ? theme.sum : theme.sheet);
    painter.drawEllipse(arc.middle(), kDisc, kDisc);
}

} // namespace

void paintPointable(QPainter& painter, const Scene& scene, const Theme& theme) {
    const OwnAnswer* answer = scene.ownAnswer();
    if (answer == nullptr || answer->pointing().empty())
        return;
    const auto& all = answer->pointable();
    const auto paint = [&](std::size_t i, bool isMeant) {
        paintOne(painter, arcOf(scene, all[i]), all[i], isMeant, theme);
    };
    for (std::size_t i = 0; i < all.size(); ++i)
        if (answer->pointsAt() != i)
            paint(i, false);
    if (answer->pointsAt())
        paint(*answer->pointsAt(), true);
}

std::optional<std::size_t> pointableAt(const Scene& scene, QPointF at) {
    const OwnAnswer* answer = scene.ownAnswer();
    std::optional<std::size_t> best;
    double least = kPointedReach;
    for (std::size_t i = 0; answer != nullptr && i < answer->pointable().size(); ++i)
        if (const double away = arcOf(scene, answer->pointable()[i]).away(at); away <= least) {
            least = away;
            best = i;
        }
    return best;
}

} // namespace tailpoint
