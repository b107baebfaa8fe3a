#include "core/figure/places.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

void listShaft(std::vector<Place>& places, const Shaft& shaft, const Extent& e, double gap) {
    const Point unit = unitFrom(shaft.tail, shaft.tip), normal = leftOf(unit);
    const double size = length(shaft.tip - shaft.tail);
    const double off = reach(e.width, e.height, normal) + gap;
    const auto add = [&](double along, double across, double cost) {
        places.push_back(
            {shaft.tail + along * unit + across * normal, static_cast<int>(places.size()), cost});
    };
    const auto both = [&](double along, double away, double cost) {
        for (const double s : {1.0, -1.0})
            add(along, s * away, cost + (s == shaft.side ? 0 : 1.2));
    };
    for (const double at : {0.5, 0.6, 0.4, 0.72, 0.3, 0.84})
        both(at * size, off, 3 * std::abs(at - 0.5));
    add(size + reach(e.width, e.height, unit) + gap, 0, 1.4);
    const double ahead = 0.5 * reach(e.width, e.height, unit);
    both(size + ahead, off, 1.8);
    both(size, off + gap, 2.2);
    both(0.5 * size, off + 1.6 * gap, 2.6);
    both(0.75 * size, off + 1.6 * gap, 2.8);
    both(0.15 * size, off, 3);
}

constexpr int kPlacesInGap = 3, kPlacesAtEnds = 6;

/// Between two neighbouring strokes of the sector; `ray` is the first of them, 0 the leg where it starts.
void listGap(std::vector<Place>& places, const Sector& sector, double from, double to, int ray,
             const Extent& e, double gap) {
    const double bisector = (from + to) / 2, wide = std::abs(to - from);
    const Point unit = onCircle({0, 0}, 1, bisector);
    const double along = reach(e.width, e.height, unit);
    const double wedge = wedgeDistance(bisector, wide / 2, e, gap);
    const double narrow = 0.8 * (1 - wide / std::max(std::abs(sector.sweepDegrees), 1e-9));
    const double beyond = sector.radius + along + gap;
    // Not further out than this: it would seem to belong to nothing. Whether it is free there is seen later.
    const double out = std::min(std::max(beyond, wedge), beyond + 5 * gap), away = out - beyond;
    int number = kPlacesAtEnds + kPlacesInGap * ray;
    const auto add = [&](double distance, double cost) {
        places.push_back({sector.centre + distance * unit, number++, narrow + cost});
    };
    add(out, (sector.within ? 0.9 : 0) + 0.04 * away);
    const double in = std::max(insideDistance(bisector, sector.radius - gap, e), 0.0);
    add(in, in < wedge ? 1.2 : sector.within ? 0 : 0.7);
    add(out + 2.5 * gap, 1.7 + 0.04 * away);
}

/// Just outside the legs, beside the arc's ends: for angles too narrow to hold their value.
void listEnds(std::vector<Place>& places, const Sector& sector, const Extent& e, double gap) {
    const double sense = sector.sweepDegrees < 0 ? -1 : 1;
    const double wide = std::abs(sector.sweepDegrees) > 12 ? 2 : 0; // there it would seem to belong elsewhere
    int number = 0;
    for (const double at : {1.0, 0.0}) {
        const double degrees = sector.startDegrees + at * sector.sweepDegrees;
        const Point unit = onCircle({0, 0}, 1, degrees);
        const Point normal = ((at > 0 ? 1 : -1) * sense) * leftOf(unit);
        const double away = reach(e.width, e.height, normal) + gap;
        const double ahead = reach(e.width, e.height, unit);
        for (const double shift : {0.0, 0.8, -0.8})
            places.push_back({sector.centre + (sector.radius + shift * ahead) * unit + away * normal,
                              number++, 1.6 + wide + 0.4 * std::abs(shift) + (at > 0 ? 0 : 0.1)});
    }
}

void listSector(std::vector<Place>& places, const Sector& sector, const Extent& e, double gap) {
    double from = sector.startDegrees;
    int ray = 0;
    for (const Split& split : sector.splits) {
        listGap(places, sector, from, split.degrees, ray, e, gap);
        from = split.degrees;
        ray = split.ray;
    }
    listGap(places, sector, from, sector.startDegrees + sector.sweepDegrees, ray, e, gap);
    listEnds(places, sector, e, gap);
}

void listSpot(std::vector<Place>& places, const Spot& spot, const Extent& e, double gap) {
    for (const int eighth : {1, 7, 3, 5, 0, 2, 6, 4}) {
        const Point unit = onCircle({0, 0}, 1, 45.0 * eighth);
        const int number = static_cast<int>(places.size());
        places.push_back(
            {spot.at + (spot.clearance + reach(e.width, e.height, unit) + gap) * unit, number, 0.2 * number});
    }
}

void listLineEnd(std::vector<Place>& places, const LineEnd& end, const Extent& e, double gap) {
    const Point unit = unitFrom(end.from, end.to), normal = leftOf(unit);
    const double ahead = reach(e.width, e.height, unit), off = reach(e.width, e.height, normal) + gap;
    places.push_back({end.to + (ahead + gap) * unit, 0, 0});
    const double size = length(end.to - end.from);
    for (int step = 0; step < 8; ++step)
        for (const double s : {-1.0, 1.0})
            places.push_back({end.to - std::min(ahead + step * 16.0, size) * unit + (s * off) * normal,
                              static_cast<int>(places.size()), 1 + 0.5 * step + (s > 0 ? 0.1 : 0)});
}

} // namespace

double wedgeDistance(double bisectorDegrees, double half, const Extent& text, double air) {
    if (half >= 90)
        return 0;
    double least = 0;
    for (const double side : {1.0, -1.0}) {
        const Point normal = onCircle({0, 0}, 1, bisectorDegrees + side * half - side * 90);
        const double sine = std::sin(half * std::numbers::pi / 180);
        least = std::max(least, (reach(text.width, text.height, normal) + air) / std::max(sine, 1e-9));
    }
    return least;
}

double insideDistance(double bisectorDegrees, double radius, const Extent& text) {
    const Point unit = onCircle({0, 0}, 1, bisectorDegrees);
    const double along = reach(text.width, text.height, unit); // to the corner furthest along the bisector
    const double square = (text.width * text.width + text.height * text.height) / 4;
    const double rest = along * along - square + radius * radius;
    return radius > 0 && rest > 0 ? std::sqrt(rest) - along : -1;
}

void listPlaces(std::vector<Place>& places, const Anchoring& anchor, const Extent& text, double gap) {
    places.clear();
    if (const auto* shaft = std::get_if<Shaft>(&anchor))
        listShaft(places, *shaft, text, gap);
    else if (const auto* sector = std::get_if<Sector>(&anchor))
        listSector(places, *sector, text, 0.9 * gap);
    else if (const auto* spot = std::get_if<Spot>(&anchor))
        listSpot(places, *spot, text, 0.6 * gap);
    else
        listLineEnd(places, std::get<LineEnd>(anchor), text, 0.9 * gap);
}

void listGrips(std::vector<Grip>& grips, const Anchoring& anchor) {
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
