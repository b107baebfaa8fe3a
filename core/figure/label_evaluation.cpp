#include "core/figure/label_search.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kCrowdedCost = 0.5,
                 kCrowdedAtShaftCost = 1; ///< nearer to another stroke than kGoodClearance
constexpr double kAmbiguousCost = 0.8;    ///< at another angle, at another arrow
/// Points: so much nearer to another arrow than to its own a label needs a leader; and less near than so much
/// a name is left out that may be.
constexpr double kLeastNearerToOwn = -1, kLeastNearerIfOptional = 0.5;
constexpr double kNearOther = 14;          ///< points from its arc
constexpr double kDisplacementCost = 0.02; ///< of a point's way from the place that it had, while dragging

/// Told quickly, by its whole circle: can the box be nearer to the arc than this?
bool canBeNearer(const Sector& arc, const Box& box, double distance) {
    const Point middle{box.left + box.width / 2, box.top + box.height / 2};
    return std::abs(length(middle - arc.centre) - arc.radius) - (box.width + box.height) / 2 < distance;
}

} // namespace

bool isArrow(const LabelRequest& request) {
    return (request.ink == Role::given || request.ink == Role::sum) &&
           std::holds_alternative<Shaft>(request.anchor);
}

LabelSearch::LabelSearch(const LabelRequest& request, const std::vector<Run>& runs,
                         const Surroundings& around, const TextMeasure& measure)
    : m_request(&request), m_runs(&runs), m_around(&around) {
    const TextExtent e = measure.measure(runs, Face::serif, request.size);
    m_extent = {e.width, e.ascent + e.descent, e.ascent};
    if (const auto* sector = std::get_if<Sector>(&request.anchor); sector && sector->angle)
        m_angle = sector;
    m_shaft = std::get_if<Shaft>(&request.anchor);
}

/// Without a leader an angle's value stands between its own legs.
bool LabelSearch::isInWedge(const Box& box) const {
    return !m_angle || standsBetweenLegs(box, *m_angle);
}

/// It had better stand at its own arc, too: while dragging it may keep its place when another comes nearer.
bool LabelSearch::isAtOwnArc(const Box& box) const {
    if (!m_angle)
        return true;
    const double own = gapToArc(box, *m_angle);
    return std::none_of(m_around->angles.begin(), m_around->angles.end(), [&](const Sector* other) {
        return other != m_angle && canBeNearer(*other, box, own) && gapToArc(box, *other) < own;
    });
}

/// It could be taken for another angle's value: at that one's arc, or beside it between that one's
/// legs. A wider angle at the same corner is no matter.
bool LabelSearch::isAmbiguous(Point middle) const {
    const Box spot{middle.x, middle.y, 0, 0};
    return std::any_of(m_around->angles.begin(), m_around->angles.end(), [&](const Sector* other) {
        const bool sameCorner = length(other->centre - m_angle->centre) < 1e-6;
        if (other == m_angle ||
            (sameCorner && std::abs(other->sweepDegrees) >= std::abs(m_angle->sweepDegrees)))
            return false;
        const double near = kNearOther * m_around->factor;
        return (sameCorner || canBeNearer(*other, boxAt(middle, 0), near)) &&
               standsBetweenLegs(spot, *other) && (sameCorner || gapToArc(boxAt(middle, 0), *other) < near);
    });
}

/// How much nearer it is to its own arrow than to any other, points; told up to one, and not further down
/// than `least`.
double LabelSearch::nearerToOwn(const Box& box, double least) const {
    const double own = distanceBetween(box, m_shaft->tail, m_shaft->tip);
    double other = own + m_around->factor;
    for (const Shaft* arrow : m_around->arrows) {
        if (other - own < least)
            break;
        if (arrow != m_shaft && meets(grown(box, other), arrow->tail, arrow->tip)) // no other is nearer
            other = std::min(other, distanceBetween(box, arrow->tail, arrow->tip));
    }
    return other - own;
}

bool LabelSearch::isUncrowded(Point middle) const {
    return m_around->obstacles.isClearOfOthers(boxAt(middle, kGoodClearance),
                                               static_cast<int>(m_request->group));
}

const LabelSearch::Evaluation& LabelSearch::evaluate(std::size_t i) {
    Evaluation& v = m_evaluations[i];
    if (v.known)
        return v;
    const Candidate& place = m_places[i];
    v.known = true;
    v.allowed = m_around->obstacles.isClearOfStrokes(boxAt(place.middle, kLeastClearance)) &&
                isInWedge(boxAt(place.middle, 0)) && isAtOwnArc(boxAt(place.middle, 0));
    const double least = m_request->optional ? kLeastNearerIfOptional : kLeastNearerToOwn;
    const double nearer =
        v.allowed && m_shaft
            ? nearerToOwn(boxAt(place.middle, 0), least * m_around->factor) / m_around->factor
            : 1e9;
    if (nearer < least)
        v.allowed = false;
    if (v.allowed)
        v.cost = place.cost +
                 (isUncrowded(place.middle) ? 0
                  : m_shaft                 ? kCrowdedAtShaftCost
                                            : kCrowdedCost) +
                 (m_angle && isAmbiguous(place.middle) ? kAmbiguousCost : 0) +
                 (nearer < 1 ? kAmbiguousCost : 0);
    return v;
}

double LabelSearch::displacementCost(Point middle, const std::optional<Point>& previousMiddle) const {
    return previousMiddle ? kDisplacementCost * length(middle - *previousMiddle) / m_around->factor : 0;
}

std::optional<ChosenPlace> LabelSearch::bestBesideFeature(const std::optional<Point>& previousMiddle) {
    if (m_generated == Generated::none) {
        m_restFrom = listFirstPlaces(m_places, m_request->anchor, m_extent, kLabelOffset * m_around->factor);
        m_evaluations.assign(m_places.size(), {});
        m_generated = Generated::first;
    }
    auto best = bestCandidate(previousMiddle);
    if (m_generated == Generated::all || (best && best->cost <= m_restFrom))
        return best;
    listPlaces(m_places, m_request->anchor, m_extent, kLabelOffset * m_around->factor);
    m_evaluations.assign(m_places.size(), {});
    m_generated = Generated::all;
    return bestCandidate(previousMiddle);
}

std::optional<ChosenPlace> LabelSearch::bestCandidate(const std::optional<Point>& previousMiddle) {
    std::optional<ChosenPlace> best;
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Candidate& place = m_places[i];
        if (best && place.cost >= best->cost)
            break; // they come in the order of their cost
        if ((m_evaluations[i].known && !m_evaluations[i].allowed) ||
            !m_around->obstacles.isClearOfLabels(boxAt(place.middle, kLeastClearance)) ||
            !evaluate(i).allowed)
            continue;
        const double cost = m_evaluations[i].cost + displacementCost(place.middle, previousMiddle);
        if (!best || cost < best->cost)
            best = ChosenPlace{place.middle, place.place, cost, {}};
    }
    return best;
}

std::optional<ChosenPlace> LabelSearch::slide(const Place& from) {
    if (from.kind == PlaceKind::onLeader)
        return moveRoundAnchor(from);
    listSlides(m_slides, m_request->anchor, m_extent, kLabelOffset * m_around->factor, from);
    for (const Candidate& place : m_slides)
        if (m_around->obstacles.isFree(boxAt(place.middle, kLeastClearance)) &&
            isInWedge(boxAt(place.middle, 0)))
            return ChosenPlace{place.middle, place.place, 0, {}};
    return std::nullopt;
}

std::optional<Point> LabelSearch::middleOf(const Place& place) {
    if (place.kind == PlaceKind::onLeader)
        return leaderMiddle(place);
    return placeOf(m_request->anchor, m_extent, kLabelOffset * m_around->factor, place);
}

std::optional<ChosenPlace> LabelSearch::keep(const Place& place) {
    const auto middle = middleOf(place);
    if (!middle)
        return std::nullopt;
    if (place.kind == PlaceKind::onLeader)
        return onLeaderAt(place, 0, std::nullopt, 1e9);
    if (!m_around->obstacles.isFree(boxAt(*middle, kLeastClearance)) || !isInWedge(boxAt(*middle, 0)))
        return std::nullopt;
    return ChosenPlace{*middle, place, 0, {}};
}

} // namespace tailpoint
