#include "core/figure/labels.h"

#include <algorithm>
#include <array>

namespace tailpoint {
namespace {

/// Air between a label and any stroke or other label, points.
constexpr double kAir = 2;

struct Extent {
    double width, height, ascent;
};

Extent extentOf(const std::vector<Run>& runs, double size, const TextMeasure& measure) {
    const TextExtent e = measure.measure(runs, Face::serif, size);
    return {e.width, e.ascent + e.descent, e.ascent};
}

/// Middles of the places beside a shaft, best first; continuous in the shaft's ends.
void shaftPlaces(std::vector<Point>& places, const Shaft& shaft, double side, const Extent& e, double gap) {
    const Point unit = unitFrom(shaft.tail, shaft.tip), normal = leftOf(unit);
    const double size = length(shaft.tip - shaft.tail);
    const double off = reach(e.width, e.height, normal) + gap;
    for (const double at : {0.5, 0.62, 0.38, 0.76, 0.26})
        for (const double s : {side, -side})
            places.push_back(shaft.tail + (at * size) * unit + (s * off) * normal);
    places.push_back(shaft.tip + (reach(e.width, e.height, unit) + gap) * unit);
    for (const double s : {side, -side}) {
        const Point slant = unitFrom({0, 0}, unit + s * normal);
        places.push_back(shaft.tip + (reach(e.width, e.height, slant) + gap) * slant);
        places.push_back(shaft.tip + (s * (off + gap)) * normal);
    }
    for (const double at : {0.9, 0.12})
        for (const double s : {side, -side})
            places.push_back(shaft.tail + (at * size) * unit + (s * (off + gap)) * normal);
}

/// Inside the arc on the bisector, then outside it, then along it.
void sectorPlaces(std::vector<Point>& places, const Sector& sector, const Extent& e, double gap) {
    for (const double at : {0.5, 0.35, 0.65}) {
        const double degrees = sector.startDegrees + at * sector.sweepDegrees;
        const Point unit = onCircle({0, 0}, 1, degrees);
        const double r = reach(e.width, e.height, unit);
        places.push_back(sector.centre + (sector.radius + r + gap) * unit);
        places.push_back(sector.centre + (sector.radius - r - gap) * unit);
        places.push_back(sector.centre + (sector.radius + r + 4 * gap) * unit);
    }
    for (const double at : {0.0, 1.0}) {
        const double degrees = sector.startDegrees + at * sector.sweepDegrees;
        const double outward = (at > 0 ? 1 : -1) * (sector.sweepDegrees < 0 ? -1 : 1);
        const Point unit = onCircle({0, 0}, 1, degrees), normal = outward * leftOf(unit);
        const double r = reach(e.width, e.height, normal);
        for (const double along : {0.0, 1.0, -1.0})
            places.push_back(sector.centre + (sector.radius + along * e.width / 2) * unit +
                             (r + gap) * normal);
    }
}

void spotPlaces(std::vector<Point>& places, const Spot& spot, const Extent& e, double gap) {
    for (const int eighth : {1, 7, 3, 5, 0, 2, 6, 4}) {
        const Point unit = onCircle({0, 0}, 1, 45.0 * eighth);
        places.push_back(spot.at + (spot.clearance + reach(e.width, e.height, unit) + gap) * unit);
    }
}

/// Where a leader takes hold of the labelled thing.
Point gripOf(const Anchoring& anchor) {
    if (const auto* shaft = std::get_if<Shaft>(&anchor))
        return 0.5 * (shaft->tail + shaft->tip);
    if (const auto* sector = std::get_if<Sector>(&anchor))
        return onCircle(sector->centre, sector->radius, sector->startDegrees + 0.5 * sector->sweepDegrees);
    return std::get<Spot>(anchor).at;
}

/// End of the leader at the box: the point of its rim nearest to the grip, a little outside.
Point rimOf(const Box& box, Point grip) {
    const Box rim = grown(box, 1.2);
    return {std::clamp(grip.x, rim.left, rim.right()), std::clamp(grip.y, rim.top, rim.bottom())};
}

class Placer {
public:
    Placer(Obstacles& obstacles, const TextMeasure& measure, const Placement& previous, double factor)
        : m_obstacles(obstacles), m_measure(measure), m_previous(previous), m_factor(factor) {}

    std::optional<Placed> place(const LabelRequest& request) {
        const int held = heldBy(request.id);
        for (const auto* runs : {&request.full, &request.brief}) {
            if (runs->empty())
                continue;
            if (auto placed = beside(request, *runs, held))
                return placed;
            if (request.optional)
                continue;
            if (auto placed = led(request, *runs))
                return placed;
        }
        return std::nullopt;
    }

private:
    int heldBy(const std::string& id) const {
        const auto it = m_previous.find(id);
        return it == m_previous.end() ? -1 : it->second;
    }

    std::optional<Placed> beside(const LabelRequest& request, const std::vector<Run>& runs, int held) {
        const Extent e = extentOf(runs, request.size, m_measure);
        m_places.clear();
        const double gap = 4.5 * m_factor;
        if (const auto* shaft = std::get_if<Shaft>(&request.anchor))
            shaftPlaces(m_places, *shaft, request.side, e, gap);
        else if (const auto* sector = std::get_if<Sector>(&request.anchor))
            sectorPlaces(m_places, *sector, e, 0.8 * gap);
        else
            spotPlaces(m_places, std::get<Spot>(request.anchor), e, 0.5 * gap);
        if (held >= 0 && held < static_cast<int>(m_places.size()) && isFree(e, held))
            return finish(request, runs, e, held);
        for (int i = 0; i < static_cast<int>(m_places.size()); ++i)
            if (isFree(e, i))
                return finish(request, runs, e, i);
        return std::nullopt;
    }

    bool isFree(const Extent& e, int candidate) const {
        const Point middle = m_places[static_cast<std::size_t>(candidate)];
        return m_obstacles.isFree(grown(boxAround(middle, e.width, e.height), kAir * m_factor));
    }

    /// Rings of places further and further out; the leader must not cross a label.
    std::optional<Placed> led(const LabelRequest& request, const std::vector<Run>& runs) {
        const Extent e = extentOf(runs, request.size, m_measure);
        const Point grip = gripOf(request.anchor);
        m_places.clear();
        for (double ring = 22; ring < 420; ring += 12)
            for (int k = 0; k < 24; ++k) {
                const Point unit = onCircle({0, 0}, 1, 15.0 * ((k % 2 == 0 ? k : -k - 1) / 2) + 45);
                const double away = ring * m_factor + reach(e.width, e.height, unit);
                m_places.push_back(grip + away * unit);
                const int i = static_cast<int>(m_places.size()) - 1;
                const Box box = boxAround(m_places.back(), e.width, e.height);
                if (!isFree(e, i) || m_obstacles.crossesBox(grip, rimOf(box, grip)))
                    continue;
                return finishLed(request, runs, e, box, grip);
            }
        return std::nullopt;
    }

    std::optional<Placed> finishLed(const LabelRequest& request, const std::vector<Run>& runs,
                                    const Extent& e, const Box& box, Point grip) {
        Placed placed = *finish(request, runs, e, static_cast<int>(m_places.size()) - 1);
        Path leader;
        leader.role = Role::leader;
        leader.points = {grip, rimOf(box, grip)};
        leader.width = 0.6 * m_factor;
        m_obstacles.addSegment(leader.points[0], leader.points[1], leader.width / 2);
        placed.leader = leader;
        placed.candidate = -1;
        return placed;
    }

    std::optional<Placed> finish(const LabelRequest& request, const std::vector<Run>& runs, const Extent& e,
                                 int candidate) {
        Placed placed;
        placed.text = textAround(m_places[static_cast<std::size_t>(candidate)], runs, request.ink,
                                 request.size, Face::serif, m_measure);
        placed.text.halo = true;
        placed.candidate = candidate;
        placed.shortened = &runs == &request.brief;
        m_obstacles.addBox(boxAround(m_places[static_cast<std::size_t>(candidate)], e.width, e.height));
        return placed;
    }

    Obstacles& m_obstacles;
    const TextMeasure& m_measure;
    const Placement& m_previous;
    double m_factor;
    std::vector<Point> m_places;
};

} // namespace

void Obstacles::add(const Item& item) {
    if (const auto* path = std::get_if<Path>(&item)) {
        for (std::size_t i = 0; i + 1 < path->points.size(); ++i)
            addSegment(path->points[i], path->points[i + 1], path->width / 2);
        if (path->closed && path->points.size() > 2)
            addSegment(path->points.back(), path->points.front(), path->width / 2);
    } else if (const auto* arc = std::get_if<Arc>(&item)) {
        m_curves.push_back({arc->centre, arc->radius, arc->startDegrees, arc->sweepDegrees, arc->width / 2});
    } else if (const auto* disc = std::get_if<Disc>(&item)) {
        addBox(boxAround(disc->centre, 2 * disc->radius + disc->width, 2 * disc->radius + disc->width));
    } else {
        addBox(std::get<Text>(item).box);
    }
}

bool Obstacles::isFree(const Box& box) const {
    if (!inside(box, m_sheet))
        return false;
    for (const Box& other : m_boxes)
        if (overlap(box, other))
            return false;
    for (const Segment& s : m_segments)
        if (meets(grown(box, s.half), s.a, s.b))
            return false;
    for (const Curve& c : m_curves)
        if (meets(grown(box, c.half), c.centre, c.radius, c.start, c.sweep))
            return false;
    return true;
}

bool Obstacles::crossesBox(Point a, Point b) const {
    return std::any_of(m_boxes.begin(), m_boxes.end(),
                       [&](const Box& box) { return meets(grown(box, 1), a, b); });
}

Text textAround(Point middle, const std::vector<Run>& runs, Role ink, double size, Face face,
                const TextMeasure& measure) {
    const TextExtent e = measure.measure(runs, face, size);
    Text text;
    text.ink = ink;
    text.size = size;
    text.face = face;
    text.runs = runs;
    text.box = boxAround(middle, e.width, e.ascent + e.descent);
    text.baseline = {middle.x, text.box.top + e.ascent};
    text.anchor = Anchor::middle;
    return text;
}

std::vector<std::optional<Placed>> placeLabels(const std::vector<LabelRequest>& requests,
                                               Obstacles& obstacles, const TextMeasure& measure,
                                               const Placement& previous, double factor) {
    Placer placer(obstacles, measure, previous, factor);
    std::vector<std::optional<Placed>> out;
    out.reserve(requests.size());
    for (const LabelRequest& request : requests)
        out.push_back(placer.place(request));
    return out;
}

} // namespace tailpoint
