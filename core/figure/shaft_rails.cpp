// Rails beside a shaft: near and further off on both sides, and one around the tip.
#include "core/figure/rails.h"

#include <algorithm>

namespace tailpoint {
namespace {

enum ShaftRail { nearLeft, nearRight, farLeft, farRight, aroundTip, kShaftRails };

constexpr double kOtherSide = 1.2; ///< than the preferred one
constexpr int kBeforeTail =
    kRail / 2 - kPositions / 2; ///< position of the tail; the tip is kPositions further

double alongOf(int number, double size) {
    return (number % kRail - kBeforeTail) * size / kPositions;
}

/// Straight ahead of the tip, and as far round it as no text comes over the shaft.
constexpr double kTipSweep = 240;

Point besideTip(const Shaft& shaft, const Extent& e, double gap, int number) {
    const double turn = (number % kRail - kPositions / 2) * kTipSweep / kPositions;
    const Point along = shaft.tip - shaft.tail;
    const Point unit = onCircle({0, 0}, 1, degreesOf(along) + turn);
    // The box, grown by the gap, has the tip on its rim.
    const double x = std::abs(unit.x), y = std::abs(unit.y);
    const double away =
        std::min((e.width / 2 + gap) / std::max(x, 1e-9), (e.height / 2 + gap) / std::max(y, 1e-9));
    return shaft.tip + away * unit;
}

void listTip(std::vector<Place>& places, const Shaft& shaft, const Extent& e, double gap) {
    constexpr int steps = 8; // to either side
    for (int i = 0; i <= steps; ++i)
        for (const int side : {1, -1}) {
            if (i == 0 && side < 0)
                continue;
            const int number = aroundTip * kRail + kPositions / 2 + side * i * (kPositions / 2 - 1) / steps;
            const double other = side == (shaft.side > 0 ? 1 : -1) || i == 0 ? 0 : 0.4;
            places.push_back({besideTip(shaft, e, gap, number), number, 1.5 + 0.12 * i + other});
        }
}

/// From the middle outwards to both ends, and beyond the tip as far as the text still touches its line.
void listRail(std::vector<Place>& places, const Shaft& shaft, const Extent& e, double gap, int rail,
              double cost) {
    const double size = length(shaft.tip - shaft.tail);
    const double ahead = reach(e.width, e.height, unitFrom(shaft.tail, shaft.tip));
    const double step = std::max(1.8 * gap, size / 40), middle = size / 2;
    const double last = size + 0.6 * ahead, first = std::min(0.12 * size, middle);
    const double slope = 3 / std::max(size, 20 * gap); // a short arrow's label is soon beyond its tip
    const auto add = [&](double along) {
        const int position = kBeforeTail + static_cast<int>(std::lround(along / size * kPositions));
        if (position < 0 || position >= kRail)
            return;
        const int number = rail * kRail + position;
        const double crowded = 4 * std::max(0.0, 0.3 - along / size); // all shafts meet there
        if (const auto at = besideShaft(shaft, e, gap, number))
            places.push_back({*at, number, cost + slope * std::abs(along - middle) + crowded});
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
    const Point unit = unitFrom(shaft.tail, shaft.tip), normal = leftOf(unit);
    const int rail = number / kRail;
    if (rail == aroundTip)
        return besideTip(shaft, e, gap, number);
    if (rail < 0 || rail >= kShaftRails)
        return std::nullopt;
    const double away = reach(e.width, e.height, normal) + (rail >= farLeft ? 1.6 : 1) * gap;
    const bool left = rail == nearLeft || rail == farLeft;
    return shaft.tail + alongOf(number, length(shaft.tip - shaft.tail)) * unit +
           (left ? away : -away) * normal;
}

void listShaft(std::vector<Place>& places, const Shaft& shaft, const Extent& e, double gap) {
    const int preferred = shaft.side > 0 ? nearLeft : nearRight,
              other = shaft.side > 0 ? nearRight : nearLeft;
    if (length(shaft.tip - shaft.tail) < 1e-6)
        return;
    listRail(places, shaft, e, gap, preferred, 0);
    listRail(places, shaft, e, gap, other, kOtherSide);
    listRail(places, shaft, e, gap, preferred + farLeft, 1.6);
    listRail(places, shaft, e, gap, other + farLeft, 1.6 + kOtherSide);
    listTip(places, shaft, e, gap);
}

double listShaftFirst(std::vector<Place>& places, const Shaft& shaft, const Extent& e, double gap) {
    if (length(shaft.tip - shaft.tail) < 1e-6)
        return 1e9;
    const int rail = shaft.side > 0 ? nearLeft : nearRight, middle = kBeforeTail + kPositions / 2;
    for (const int number : {rail * kRail + middle, (1 - rail) * kRail + middle})
        places.push_back(
            {*besideShaft(shaft, e, gap, number), number, number / kRail == rail ? 0 : kOtherSide});
    return 0;
}

} // namespace tailpoint
