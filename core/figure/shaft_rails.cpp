// Rails beside a shaft: near and further off on both sides, and one around the tip.
#include "core/figure/rails.h"

#include <algorithm>

namespace tailpoint {
namespace {

enum ShaftRail {
    nearLeft,
    nearRight,
    farLeft,
    farRight,
    furthestLeft,
    furthestRight,
    aroundTip,
    offTip,
    kShaftRails
};

constexpr double kOtherSide = 1.2, kFurther = 1.6, kTip = 1.5; ///< than the preferred side, near the shaft
constexpr int kBeforeTail =
    kRail / 2 - kPositions / 2; ///< position of the tail; the tip is kPositions further

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
    Point on(int rail, int position) const {
        const Point foot = tail + alongOf(position) * unit;
        const Point away = off + (rail >= furthestLeft ? 1.5 : rail >= farLeft ? 0.6 : 0) * aside;
        return rail % 2 == nearLeft ? foot + away : foot - away;
    }
    double alongOf(int position) const { return (position - kBeforeTail) * size / kPositions; }

private:
    Point aside;
};

/// Straight ahead of the tip, and as far round it as no text comes over the shaft.
constexpr double kTipSweep = 240;

/// `ahead`: the shaft's direction, degrees.
Point besideTip(const Shaft& shaft, double ahead, const Extent& e, double gap, int number) {
    const int fromAhead = number % kRail - kPositions / 2;
    const double turn = fromAhead * kTipSweep / kPositions;
    const Point unit = onCircle({0, 0}, 1, ahead + turn);
    // The box, grown by the gap, has the tip on its rim.
    const double x = std::abs(unit.x), y = std::abs(unit.y);
    const double away =
        std::min((e.width / 2 + gap) / std::max(x, 1e-9), (e.height / 2 + gap) / std::max(y, 1e-9));
    return shaft.tip + away * unit;
}

void listTip(std::vector<Place>& places, const Shaft& shaft, const Extent& e, double gap, int rail,
             double cost) {
    constexpr int steps = 8; // to either side
    const double ahead = degreesOf(shaft.tip - shaft.tail);
    for (int i = 0; i <= steps; ++i)
        for (const int side : {1, -1}) {
            if (i == 0 && side < 0)
                continue;
            const int number = rail * kRail + kPositions / 2 + side * i * (kPositions / 2 - 1) / steps;
            const double other = side == (shaft.side > 0 ? 1 : -1) || i == 0 ? 0 : 0.4;
            places.push_back({besideTip(shaft, ahead, e, gap, number), number, cost + 0.12 * i + other});
        }
}

/// From the middle outwards to both ends, and beyond the tip as far as the text still touches its line.
void listRail(std::vector<Place>& places, const Frame& frame, const Extent& e, int rail, double cost) {
    const double size = frame.size, ahead = reach(e.width, e.height, frame.unit);
    const double step = std::max(1.8 * frame.gap, size / 40), middle = size / 2;
    const double last = size + 0.6 * ahead, first = std::min(0.12 * size, middle);
    const double slope = 3 / std::max(size, 20 * frame.gap); // a short arrow's label is soon beyond its tip
    const auto add = [&](double along) {
        const int position = kBeforeTail + static_cast<int>(std::lround(along / size * kPositions));
        if (position < 0 || position >= kRail)
            return;
        const double crowded = 4 * std::max(0.0, 0.3 - along / size); // all shafts meet there
        places.push_back({frame.on(rail, position), rail * kRail + position,
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

std::optional<Point> besideShaft(const Shaft& shaft, const Extent& e, double gap, int number) {
    const int rail = number / kRail;
    if (rail == aroundTip || rail == offTip)
        return besideTip(shaft, degreesOf(shaft.tip - shaft.tail), e, (rail == offTip ? 2.4 : 1) * gap,
                         number);
    if (rail < 0 || rail >= kShaftRails)
        return std::nullopt;
    return Frame(shaft, e, gap).on(rail, number % kRail);
}

void listShaft(std::vector<Place>& places, const Shaft& shaft, const Extent& e, double gap) {
    const int preferred = shaft.side > 0 ? nearLeft : nearRight,
              other = shaft.side > 0 ? nearRight : nearLeft;
    const Frame frame(shaft, e, gap);
    if (frame.size < 1e-6)
        return;
    listRail(places, frame, e, preferred, 0);
    listRail(places, frame, e, other, kOtherSide);
    listRail(places, frame, e, preferred + farLeft, kFurther);
    listRail(places, frame, e, other + farLeft, kFurther + kOtherSide);
    listRail(places, frame, e, preferred + furthestLeft, 2 * kFurther);
    listRail(places, frame, e, other + furthestLeft, 2 * kFurther + kOtherSide);
    listTip(places, shaft, e, gap, aroundTip, kTip);
    listTip(places, shaft, e, 2.4 * gap, offTip, kTip + kFurther);
}

double listShaftFirst(std::vector<Place>& places, const Shaft& shaft, const Extent& e, double gap) {
    const Frame frame(shaft, e, gap);
    if (frame.size < 1e-6)
        return 1e9;
    const int preferred = shaft.side > 0 ? nearLeft : nearRight, middle = kBeforeTail + kPositions / 2;
    for (const int rail : {preferred, 1 - preferred})
        places.push_back({frame.on(rail, middle), rail * kRail + middle, rail == preferred ? 0 : kOtherSide});
    return 0;
}

} // namespace tailpoint
