// SPDX-License-Identifier: MIT
#include "tests/whole/window/sight.h"

#include "tests/whole/window/wait.h"

#include <QGuiApplication>
#include <QPixmap>
#include <QScreen>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace whole {

namespace {

constexpr int kSettledPolls = 8;      ///< about 120 ms without a change
constexpr int kTolerance = 24;        ///< of a colour, so that arcs and ink are not taken for given forces
constexpr double kGapPixels = 14;     ///< a shaft may be crossed by a ring, an arc or a halo
constexpr int kAsidePixels = 2;       ///< how far beside the line a pixel may lie
constexpr double kLargestRing = 14;   ///< radius of the common point's ring at most, pixels
constexpr double kShortestArrow = 60; ///< pixels; shorter finds are no arrow

int distance(QRgb a, QRgb b) {
    return std::max(
        {std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)), std::abs(qBlue(a) - qBlue(b))});
}

bool isNear(QRgb pixel, const QColor& colour) {
    return distance(pixel, colour.rgb()) <= kTolerance;
}

bool hasNear(const QImage& image, QPointF at, const QColor& colour) {
    for (int dy = -kAsidePixels; dy <= kAsidePixels; ++dy)
        for (int dx = -kAsidePixels; dx <= kAsidePixels; ++dx) {
            const QPoint pixel = at.toPoint() + QPoint(dx, dy);
            if (image.valid(pixel) && isNear(image.pixel(pixel), colour))
                return true;
        }
    return false;
}

std::optional<QPoint> leftmost(const QImage& image, const QRect& region, const QColor& colour) {
    const QRect inside = region & image.rect();
    for (int x = inside.left(); x <= inside.right(); ++x)
        for (int y = inside.top(); y <= inside.bottom(); ++y)
            if (isNear(image.pixel(x, y), colour))
                return QPoint(x, y);
    return {};
}

} // namespace

QImage screen() {
    return QGuiApplication::primaryScreen()->grabWindow(0).toImage().convertToFormat(QImage::Format_RGB32);
}

QImage settledScreen() {
    QImage last = screen();
    int same = 0;
    const bool settled = eventually([&] {
        QImage now = screen();
        same = now == last ? same + 1 : 0;
        last = std::move(now);
        return same >= kSettledPolls;
    });
    return settled ? last : QImage();
}

QImage screenWhere(const std::function<bool(const QImage&)>& condition) {
    QImage seen;
    const bool held = eventually([&] { return condition(seen = screen()); });
    return held ? seen : QImage();
}

int countNear(const QImage& image, const QRect& region, const QColor& colour) {
    int count = 0;
    const QRect inside = region & image.rect();
    for (int y = inside.top(); y <= inside.bottom(); ++y)
        for (int x = inside.left(); x <= inside.right(); ++x)
            count += isNear(image.pixel(x, y), colour) ? 1 : 0;
    return count;
}

int changedPixels(const QImage& before, const QImage& after, const QRect& region) {
    int count = 0;
    const QRect inside = region & before.rect() & after.rect();
    for (int y = inside.top(); y <= inside.bottom(); ++y)
        for (int x = inside.left(); x <= inside.right(); ++x)
            count += distance(before.pixel(x, y), after.pixel(x, y)) > 64 ? 1 : 0;
    return count;
}

double Arrow::length() const {
    return std::hypot(tip.x() - tail.x(), tip.y() - tail.y());
}

Arrow followed(const QImage& image, QPointF tail, double degrees, const QColor& colour) {
    double last = 0;
    for (double along = 0; along - last <= kGapPixels; along += 1)
        if (hasNear(image, placeAt(tail, degrees, along), colour))
            last = along;
    return {tail, placeAt(tail, degrees, last)};
}

std::optional<Raft> findRaft(const QImage& image, const QRect& region, double pDegrees, double qDegrees,
                             const QColor& colour) {
    const auto start = leftmost(image, region, colour);
    if (!start)
        return {};
    // The shafts start at the rim of the ring: the start is on the steeper one, or by a hair on the other.
    // Both can be followed from a few radii; the middle one is the ring's.
    const bool pIsSteeper = std::abs(pDegrees) > std::abs(qDegrees);
    std::vector<Raft> found;
    for (const double degrees : {pIsSteeper ? pDegrees : qDegrees, pIsSteeper ? qDegrees : pDegrees}) {
        for (double radius = 0; radius <= kLargestRing; radius += 0.5) {
            const QPointF tail = placeAt(*start, degrees, -radius);
            const Raft raft{followed(image, tail, pDegrees, colour), followed(image, tail, qDegrees, colour)};
            if (std::min(raft.p.length(), raft.q.length()) >= kShortestArrow)
                found.push_back(raft);
        }
        if (!found.empty())
            break;
    }
    if (found.empty())
        return {};
    return found[found.size() / 2];
}

QPointF placeAt(QPointF tail, double degrees, double length) {
    const double radians = degrees * std::numbers::pi / 180;
    return tail + length * QPointF(std::cos(radians), -std::sin(radians));
}

} // namespace whole
