// SPDX-License-Identifier: MIT
#include "ui/canvas/edge_scroll.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tailpoint {

namespace {

constexpr double kSlowest = 60, kFaster = 8,
                 kFastest = 900; // pixels per second; faster by each pixel further
constexpr double kGently = 0.25; // seconds until the full speed
constexpr double kFurther = 6;   // pixels out from a press at the edge

/// How far a coordinate is in the band at the ends of 0..size, or beyond: negative at the low end.
double depthOf(double at, double size) {
    const double band = std::min(EdgeScroll::kBand, 0.1 * size);
    if (at < band) {
        return at - band;
    }
    return at > size - band ? at - (size - band) : 0;
}

QPointF depthsOf(const SheetView& sheet, QPointF pointer) {
    const double ppp = sheet.pixelsPerPoint();
    return {depthOf(pointer.x(), sheet.view().width * ppp), depthOf(pointer.y(), sheet.view().height * ppp)};
}

/// Of a step to higher (positive) or lower coordinates as much as leaves [low, high] inside the edges.
double within(double step, double low, double high, double size) {
    return step > 0 ? std::clamp(size - EdgeScroll::kKeep - high, 0.0, step)
                    : std::clamp(EdgeScroll::kKeep - low, step, 0.0);
}

double length(QPointF p) {
    return std::hypot(p.x(), p.y());
}

} // namespace

void EdgeScroll::begin(const SheetView& sheet, QPointF press, std::vector<Eigen::Vector2d> kept) {
    const QPointF depth = depthsOf(sheet, press);
    *this = {};
    m_kept = std::move(kept);
    m_x = {depth.x(), depth.x() == 0};
    m_y = {depth.y(), depth.y() == 0};
    m_leastScale = sheet.view().scale / kLeast;
}

double EdgeScroll::speed(Depth& began, double at) {
    began.free = began.free || at * began.at <= 0 || std::abs(at) > std::abs(began.at) + kFurther;
    if (at == 0 || !began.free) {
        return 0;
    }
    return std::copysign(std::min(kFastest, kSlowest + kFaster * std::abs(at)), at);
}

QPointF EdgeScroll::pull(const SheetView& sheet, QPointF pointer) {
    const QPointF depth = depthsOf(sheet, pointer);
    const QPointF pull(-speed(m_x, depth.x()), -speed(m_y, depth.y()));
    if (pull.isNull()) {
        m_rested = 0;
        m_stepping = false;
    }
    return pull;
}

QPointF EdgeScroll::allowed(const SheetView& sheet, QPointF step) const {
    if (m_kept.empty()) {
        return step;
    }
    QPointF low = sheet.toPixels(m_kept.front()), high = low;
    for (const Eigen::Vector2d& kept : m_kept) {
        const QPointF at = sheet.toPixels(kept);
        low = {std::min(low.x(), at.x()), std::min(low.y(), at.y())};
        high = {std::max(high.x(), at.x()), std::max(high.y(), at.y())};
    }
    const double ppp = sheet.pixelsPerPoint();
    return {within(step.x(), low.x(), high.x(), sheet.view().width * ppp),
            within(step.y(), low.y(), high.y(), sheet.view().height * ppp)};
}

EdgeScroll::Step EdgeScroll::rest(const SheetView& sheet, QPointF pointer, double seconds) {
    const QPointF pulled = pull(sheet, pointer);
    if (pulled.isNull()) {
        return {};
    }
    m_rested += seconds;
    const QPointF step = pulled * seconds * std::min(1.0, m_rested / kGently);
    const QPointF scroll = m_stepping ? QPointF() : allowed(sheet, step);
    constexpr double kHardly = 0.25; // of the way that it was to go
    const bool done = m_stepping || length(scroll) < kHardly * length(step) || m_rested > kLong;
    if (!done || m_kept.empty()) {
        return {scroll, false};
    }
    if (!std::exchange(m_stepping, true)) {
        m_untilStep = kStepTime;
    }
    m_untilStep -= seconds;
    if (m_untilStep > 0 || sheet.view().scale <= m_leastScale) {
        return {};
    }
    m_untilStep = kStepTime;
    return {{}, true};
}

} // namespace tailpoint
