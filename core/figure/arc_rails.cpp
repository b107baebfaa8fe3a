// SPDX-License-Identifier: MIT
// Rails along an arc: beyond it, between it and its corner, and further out.
#include "core/figure/rails.h"

#include <algorithm>

namespace tailpoint {
namespace {

/// Between two neighbouring strokes of the sector: parts of the sweep from 0 to 1.
struct GapOfStrokes {
    double from = 0, to = 1;
};

double partOf(const Sector& sector, double degrees) {
    return (degrees - sector.startDegrees) / sector.sweepDegrees;
}

GapOfStrokes gapAround(const Sector& sector, double part) {
    GapOfStrokes gap;
    for (const double split : sector.splits) {
        const double at = partOf(sector, split);
        (at <= part ? gap.from : gap.to) = at;
        if (at > part)
            break;
    }
    return gap;
}

/// One side of a gap: the ray, and how far the text reaches towards it.
struct Side {
    double part = 0, reach = 0;
};

struct Flanks {
    std::array<Side, 2> side;
};

Flanks flanksOf(const Sector& sector, const GapOfStrokes& gap, const Extent& e) {
    const auto sideAt = [&](double part) {
        const Point ray = onCircle({0, 0}, 1, sector.startDegrees + part * sector.sweepDegrees);
        return Side{part, reach(e.width, e.height, leftOf(ray))};
    };
    return {{sideAt(gap.from), sideAt(gap.to)}};
}

/// Distance from the corner at which the text keeps its gap from the strokes to both sides.
double clearDistance(const Sector& sector, const Flanks& sides, double part, double air) {
    double least = 0;
    for (const Side& side : sides.side) {
        const double off = std::abs(side.part - part) * std::abs(sector.sweepDegrees);
        if (off < 90)
            least = std::max(least, (side.reach + air) / std::max(std::sin(off * kDegree), 1e-9));
    }
    return least;
}

/// The nearest part at which a text at this distance keeps its gap to both sides; the middle where there is
/// none.
double pushedFromSides(const Sector& sector, const Flanks& sides, double part, double distance, double air) {
    const auto room = [&](const Side& side) {
        const double sine = (side.reach + air) / std::max(distance, 1e-9);
        return (sine < 1 ? std::asin(sine) / kDegree : 90) / std::abs(sector.sweepDegrees);
    };
    const double low = sides.side[0].part + room(sides.side[0]),
                 high = sides.side[1].part - room(sides.side[1]);
    return low <= high ? std::clamp(part, low, high) : (sides.side[0].part + sides.side[1].part) / 2;
}

struct Spotted {
    Point middle;
    double away = 0;  ///< how much further out than asked
    bool fits = true; ///< the sides leave room
};

Point unitAt(const Sector& sector, double part) {
    return onCircle({0, 0}, 1, sector.startDegrees + part * sector.sweepDegrees);
}

/// On a rail: along it as far from the sides as they ask for, and only then further out. `unit`: at `part`.
Spotted spotOn(const Sector& sector, const Flanks& sides, PlaceKind kind, double part, Point unit,
               const Extent& e, double gap) {
    const auto wanted = [&](Point way) {
        if (kind == PlaceKind::inWedge)
            return std::max(insideDistance(way, sector.radius - gap, e), 0.0);
        return sector.radius + reach(e.width, e.height, way) + gap +
               (kind == PlaceKind::offArc ? 2.5 * gap : 0);
    };
    if (!sector.angle)
        return {sector.centre + wanted(unit) * unit, 0, true};
    const double pushed = pushedFromSides(sector, sides, part, wanted(unit), gap);
    if (pushed != part)
        unit = unitAt(sector, pushed);
    const double distance = wanted(unit), clear = clearDistance(sector, sides, pushed, gap);
    if (kind == PlaceKind::inWedge)
        return {sector.centre + distance * unit, 0, distance >= clear - 1e-9};
    // Not further out than this: it would seem to belong to nothing.
    const double away = std::clamp(clear - distance, 0.0, 5 * gap);
    return {sector.centre + (distance + away) * unit, away, true};
}

void addAt(std::vector<Candidate>& places, const Sector& sector, const Flanks& sides, double part,
           const Extent& e, double gap, double cost) {
    const double position = std::round(part * kRailSteps);
    if (position <= 0 || position >= kRailSteps)
        return;
    const double at = position / kRailSteps;
    const Point unit = unitAt(sector, at);
    const auto add = [&](PlaceKind kind, double more) {
        const Spotted spot = spotOn(sector, sides, kind, at, unit, e, gap);
        places.push_back({spot.middle,
                          {kind, Rail::only, 0, position},
                          cost + more + 0.04 * spot.away + (spot.fits ? 0 : 0.5)});
    };
    add(PlaceKind::beyondArc, sector.within ? 0.9 : 0);
    add(PlaceKind::inWedge, sector.within ? 0 : 0.7);
    add(PlaceKind::offArc, 1.7);
}

constexpr double kOffMiddle = 0.2;

double narrowness(const GapOfStrokes& gap) {
    return 0.8 * (1 - (gap.to - gap.from));
}

/// From the middle of the gap outwards.
void listGap(std::vector<Candidate>& places, const Sector& sector, const GapOfStrokes& between,
             const Extent& e, double gap) {
    const Flanks sides = flanksOf(sector, between, e);
    const double middle = (between.from + between.to) / 2, half = (between.to - between.from) / 2;
    const double cost = narrowness(between);
    const double step = std::max(2 * gap / std::max(lengthOfArc(sector), 1e-9), 1.0 / 36);
    addAt(places, sector, sides, middle, e, gap, cost);
    for (double off = step; off < half; off += step)
        for (const double side : {1.0, -1.0})
            addAt(places, sector, sides, middle + side * off, e, gap, cost + kOffMiddle + 0.5 * off / half);
}

template <class Take>
void forEachGap(const Sector& sector, Take take) {
    GapOfStrokes between{0, 0};
    for (const double split : sector.splits) {
        between = {between.to, partOf(sector, split)};
        take(between);
    }
    take(GapOfStrokes{between.to, 1});
}

/// The name of a circle may stand anywhere along it.
void listCircle(std::vector<Candidate>& places, const Sector& circle, const Extent& e, double gap) {
    constexpr int steps = 48;
    const Flanks sides = flanksOf(circle, {}, e);
    double cost = 0;
    for (const double quarter : {0.25, 0.75, 0.5}) { // above, below, to the left of a whole one
        addAt(places, circle, sides, quarter, e, gap, cost);
        cost += 0.1;
    }
    for (int i = 1; i < steps; ++i)
        if (i % (steps / 4) != 0)
            addAt(places, circle, sides, static_cast<double>(i) / steps, e, gap, 0.9);
}

} // namespace

double lengthOfArc(const Sector& sector) {
    return sector.radius * std::abs(sector.sweepDegrees) * kDegree;
}

std::optional<Point> besideArc(const Sector& sector, const Extent& e, double gap, const Place& place) {
    const bool ofArc = place.kind == PlaceKind::beyondArc || place.kind == PlaceKind::inWedge ||
                       place.kind == PlaceKind::offArc;
    if (!ofArc || place.position <= 0 || place.position >= kRailSteps)
        return std::nullopt;
    const double part = place.position / kRailSteps;
    const Flanks sides = flanksOf(sector, gapAround(sector, part), e);
    return spotOn(sector, sides, place.kind, part, unitAt(sector, part), e, gap).middle;
}

void listSector(std::vector<Candidate>& places, const Sector& sector, const Extent& e, double gap) {
    if (!sector.angle)
        return listCircle(places, sector, e, gap);
    forEachGap(sector, [&](const GapOfStrokes& between) { listGap(places, sector, between, e, gap); });
}

double listSectorFirst(std::vector<Candidate>& places, const Sector& sector, const Extent& e, double gap) {
    double rest = 1e9;
    forEachGap(sector, [&](const GapOfStrokes& between) {
        addAt(places, sector, flanksOf(sector, between, e), (between.from + between.to) / 2, e, gap,
              narrowness(between));
        rest = std::min(rest, narrowness(between) + kOffMiddle);
    });
    return rest;
}

} // namespace tailpoint
