// SPDX-License-Identifier: MIT
// Rails beside a shaft: near and further off on both sides, and one around the tip.
#include "core/figure/rails.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kOtherSide = 1.2, kFurther = 1.6, kTip = 1.5; ///< than the preferred side, near the shaft

bool isLeft(Rail rail) {
    return rail == Rail::left || rail == Rail::farLeft || rail == Rail::furthestLeft;
}

/// What all places beside a shaft have in common.
struct Frame {
    Point tail, unit, off; ///< off: from the shaft's line to the middle of a text on its left
    double size, gap;
    Frame(const Shaft& shaft, const Extent& e, double wantedGap)
        : tail(shaft.tail), unit(unitFrom(shaft.tail, shaft.tip)), size(length(shaft.tip - shaft.tail)),
          gap(wantedGap) {
        const Point normal = leftOf(unit);
        off = (reach(e.width, e.height, normal) + gap) * normal;
        aside = gap * normal;
    }
    Point on(Rail rail, double position) const {
        const Point foot = tail + alongOf(position) * unit;
        const Point away = off + (rail >= Rail::furthestLeft ? 1.5 : rail >= Rail::farLeft ? 0.6 : 0) * aside;
        return isLeft(rail) ? foot + away : foot - away;
    }
    double alongOf(double position) const { return position * size / kRailSteps; }

private:
    Point aside;
};

/// Straight ahead of the tip, and as far round it as no text comes over the shaft.
constexpr double kTipSweep = 240;
constexpr double kOffTip = 2.4; ///< gaps

/// `ahead`: the shaft's direction, degrees.
Point besideTip(const Shaft& shaft, double ahead, const Extent& e, double gap, double position) {
    const double turn = (position - kRailSteps / 2) * kTipSweep / kRailSteps;
    const Point unit = onCircle({0, 0}, 1, ahead + turn);
    // The box, grown by the gap, has the tip on its rim.
    const double x = std::abs(unit.x), y = std::abs(unit.y);
    const double away =
        std::min((e.width / 2 + gap) / std::max(x, 1e-9), (e.height / 2 + gap) / std::max(y, 1e-9));
    return shaft.tip + away * unit;
}

void listTip(std::vector<Candidate>& places, const Shaft& shaft, const Extent& e, double gap, PlaceKind kind,
             double cost) {
    constexpr int steps = 8; // to either side
    const double ahead = degreesOf(shaft.tip - shaft.tail);
    for (int i = 0; i <= steps; ++i)
        for (const int side : {1, -1}) {
            if (i == 0 && side < 0)
                continue;
            const double position = kRailSteps / 2 + side * i * (kRailSteps / 2 - 1) / steps;
            const double other = side == (shaft.side > 0 ? 1 : -1) || i == 0 ? 0 : 0.4;
            places.push_back({besideTip(shaft, ahead, e, gap, position),
                              {kind, Rail::only, 0, position},
                              cost + 0.12 * i + other});
        }
}

/// From the middle outwards to both ends, and beyond the tip as far as the text still touches its line.
void listRail(std::vector<Candidate>& places, const Frame& frame, const Extent& e, Rail rail, double cost) {
    const double size = frame.size, ahead = reach(e.width, e.height, frame.unit);
    const double step = std::max(1.8 * frame.gap, size / 40), middle = size / 2;
    const double last = size + 0.6 * ahead, first = std::min(0.12 * size, middle);
    const double slope = 3 / std::max(size, 20 * frame.gap); // a short arrow's label is soon beyond its tip
    const auto add = [&](double along) {
        const double position = std::round(along / size * kRailSteps);
        if (position < -2 * kRailSteps || position >= 3 * kRailSteps)
            return;
        const double crowded = 4 * std::max(0.0, 0.3 - along / size); // all shafts meet there
        places.push_back({frame.on(rail, position),
                          {PlaceKind::besideShaft, rail, 0, position},
                          cost + slope * std::abs(along - middle) + crowded});
    };
    add(middle);
    for (double off = step; middle + off < last || middle - off > first; off += step) {
        if (middle + off < last)
            add(middle + off);
        if (middle - off > first)
            add(middle - off);
    }
}

} // namespace

std::optional<Point> besideShaft(const Shaft& shaft, const Extent& e, double gap, const Place& place) {
    if (place.kind == PlaceKind::besideShaft)
        return Frame(shaft, e, gap).on(place.rail, place.position);
    if (place.kind != PlaceKind::aroundTip && place.kind != PlaceKind::offTip)
        return std::nullopt;
    const double off = (place.kind == PlaceKind::offTip ? kOffTip : 1) * gap;
    return besideTip(shaft, degreesOf(shaft.tip - shaft.tail), e, off, place.position);
}

void listShaft(std::vector<Candidate>& places, const Shaft& shaft, const Extent& e, double gap) {
    const Frame frame(shaft, e, gap);
    if (frame.size < 1e-6)
        return;
    double further = 0;
    for (const auto& [left, right] : {std::pair(Rail::left, Rail::right),
                                      {Rail::farLeft, Rail::farRight},
                                      {Rail::furthestLeft, Rail::furthestRight}}) {
        listRail(places, frame, e, shaft.side > 0 ? left : right, further);
        listRail(places, frame, e, shaft.side > 0 ? right : left, further + kOtherSide);
        further += kFurther;
    }
    listTip(places, shaft, e, gap, PlaceKind::aroundTip, kTip);
    listTip(places, shaft, e, kOffTip * gap, PlaceKind::offTip, kTip + kFurther);
}

double listShaftFirst(std::vector<Candidate>& places, const Shaft& shaft, const Extent& e, double gap) {
    const Frame frame(shaft, e, gap);
    if (frame.size < 1e-6)
        return 1e9;
    const Rail preferred = shaft.side > 0 ? Rail::left : Rail::right;
    for (const Rail rail : {Rail::left, Rail::right}) {
        const Place middle{PlaceKind::besideShaft, rail, 0, kRailSteps / 2};
        places.push_back({frame.on(rail, middle.position), middle, rail == preferred ? 0 : kOtherSide});
    }
    return 0;
}

} // namespace tailpoint
