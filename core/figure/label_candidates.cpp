// SPDX-License-Identifier: MIT
#include "core/figure/label_candidates.h"

#include "core/figure/rails.h"

#include <algorithm>

namespace tailpoint {
namespace {

Point besideSpot(const Spot& spot, const Extent& e, double gap, double eighth) {
    const Point unit = onCircle({0, 0}, 1, 45.0 * eighth);
    return spot.at + (spot.clearance + reach(e.width, e.height, unit) + gap) * unit;
}

void listSpot(std::vector<Candidate>& places, const Spot& spot, const Extent& e, double gap) {
    double cost = 0;
    for (const int eighth : {1, 7, 3, 5, 0, 2, 6, 4}) {
        places.push_back({besideSpot(spot, e, gap, eighth),
                          {PlaceKind::aroundPoint, Rail::only, 0, static_cast<double>(eighth)},
                          cost});
        cost += 0.2;
    }
}

constexpr int kEndSteps = 8;

/// 0: ahead of the end; then to both sides, step by step back.
Point besideEnd(const LineEnd& end, const Extent& e, double gap, double position) {
    const int number = static_cast<int>(position);
    const Point unit = unitFrom(end.from, end.to), normal = leftOf(unit);
    const double ahead = reach(e.width, e.height, unit), off = reach(e.width, e.height, normal) + gap;
    if (number == 0)
        return end.to + (ahead + gap) * unit;
    const int pair = (number - 1) / 2; // on both sides alike
    const double back = std::min(ahead + pair * 16.0, length(end.to - end.from));
    return end.to - back * unit + (number % 2 == 0 ? off : -off) * normal;
}

void listLineEnd(std::vector<Candidate>& places, const LineEnd& end, const Extent& e, double gap) {
    for (int number = 0; number <= 2 * kEndSteps; ++number) {
        const int pair = (number - 1) / 2;
        const double cost = number == 0 ? 0 : 1 + 0.5 * pair + (number % 2 == 0 ? 0.1 : 0);
        places.push_back({besideEnd(end, e, gap, number),
                          {PlaceKind::atLineEnd, Rail::only, 0, static_cast<double>(number)},
                          cost});
    }
}

/// Texts at an arc, at a point and at a line's end stand a little nearer than at a shaft.
double gapAt(const Feature& anchor, double gap) {
    return std::holds_alternative<Shaft>(anchor) ? gap
                                                 : (std::holds_alternative<Spot>(anchor) ? 0.6 : 0.9) * gap;
}

/// A rail goes on beyond its shaft, two lengths before the tail and beyond the tip.
bool isOnRail(const Place& place) {
    constexpr double longest = 5 * kRailSteps;
    const double before = place.kind == PlaceKind::besideShaft ? 2 * kRailSteps : 0;
    return place.position >= -before && place.position < longest - before;
}

constexpr std::size_t kUsualPlaces = 256;

void sortByCost(std::vector<Candidate>& places) {
    std::sort(places.begin(), places.end(), [](const Candidate& a, const Candidate& b) {
        return a.cost < b.cost || (a.cost == b.cost && a.place < b.place);
    });
}

} // namespace

void listPlaces(std::vector<Candidate>& places, const Feature& anchor, const Extent& text, double wanted) {
    const double gap = gapAt(anchor, wanted);
    places.clear();
    places.reserve(kUsualPlaces);
    if (const auto* shaft = std::get_if<Shaft>(&anchor))
        listShaft(places, *shaft, text, gap);
    else if (const auto* sector = std::get_if<Sector>(&anchor))
        listSector(places, *sector, text, gap);
    else if (const auto* spot = std::get_if<Spot>(&anchor))
        listSpot(places, *spot, text, gap);
    else
        listLineEnd(places, std::get<LineEnd>(anchor), text, gap);
    sortByCost(places);
}

double listFirstPlaces(std::vector<Candidate>& places, const Feature& anchor, const Extent& text,
                       double wanted) {
    const auto* shaft = std::get_if<Shaft>(&anchor);
    const auto* sector = std::get_if<Sector>(&anchor);
    if (!shaft && !(sector && sector->angle)) {
        listPlaces(places, anchor, text, wanted);
        return 1e9;
    }
    places.clear();
    const double gap = gapAt(anchor, wanted);
    const double rest =
        shaft ? listShaftFirst(places, *shaft, text, gap) : listSectorFirst(places, *sector, text, gap);
    sortByCost(places);
    return rest;
}

std::optional<Point> placeOf(const Feature& anchor, const Extent& text, double wanted, const Place& place) {
    const double gap = gapAt(anchor, wanted);
    if (const auto* shaft = std::get_if<Shaft>(&anchor))
        return besideShaft(*shaft, text, gap, place);
    if (const auto* sector = std::get_if<Sector>(&anchor))
        return besideArc(*sector, text, gap, place);
    if (const auto* spot = std::get_if<Spot>(&anchor))
        return place.kind == PlaceKind::aroundPoint
                   ? std::optional(besideSpot(*spot, text, gap, place.position))
                   : std::nullopt;
    return place.kind == PlaceKind::atLineEnd
               ? std::optional(besideEnd(std::get<LineEnd>(anchor), text, gap, place.position))
               : std::nullopt;
}

void listSlides(std::vector<Candidate>& places, const Feature& anchor, const Extent& text, double wanted,
                const Place& place) {
    places.clear();
    constexpr double step = 0.4, furthest = 14; // in gaps
    double perPosition = 0;                     // points
    if (const auto* shaft = std::get_if<Shaft>(&anchor))
        perPosition = length(shaft->tip - shaft->tail) / kRailSteps;
    else if (const auto* sector = std::get_if<Sector>(&anchor))
        perPosition = lengthOfArc(*sector) / kRailSteps;
    if (perPosition <= 0)
        return;
    for (int i = 1; step * i <= furthest; ++i) {
        const int positions = static_cast<int>(std::lround(std::min(step * i * wanted / perPosition, 1e6)));
        for (const int by : {positions, -positions}) {
            Place to = place;
            to.position += by;
            if (by == 0 || !isOnRail(to))
                continue;
            if (const auto middle = placeOf(anchor, text, wanted, to))
                places.push_back({*middle, to, 0});
        }
    }
}

void listLeaderAnchors(std::vector<LeaderAnchor>& grips, const Feature& anchor) {
    grips.clear();
    if (const auto* shaft = std::get_if<Shaft>(&anchor)) {
        const Point along = shaft->tip - shaft->tail, unit = unitFrom(shaft->tail, shaft->tip);
        grips.push_back({shaft->tail + 0.75 * along, unit});
        grips.push_back({shaft->tip, unit});
    } else if (const auto* sector = std::get_if<Sector>(&anchor)) {
        for (const double at : {0.5, 0.8}) {
            const double degrees = sector->startDegrees + at * sector->sweepDegrees;
            grips.push_back(
                {onCircle(sector->centre, sector->radius, degrees), onCircle({0, 0}, 1, degrees)});
        }
    } else if (const auto* end = std::get_if<LineEnd>(&anchor)) {
        grips.push_back({end->to, unitFrom(end->from, end->to)});
    } else {
        grips.push_back({std::get<Spot>(anchor).at, {0, 0}});
    }
}

} // namespace tailpoint
