// SPDX-License-Identifier: MIT
#include "core/figure/label_evaluation.h"

#include "core/figure/leader_rings.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kCrowdedCost = 0.5,
                 kCrowdedAtShaftCost = 1; ///< nearer to another stroke than kGoodClearance
constexpr double kAmbiguousCost = 0.8;    ///< at another angle, at another arrow
/// Points: so much nearer to another arrow than to its own a label needs a leader; and less near than so much
/// a name is left out that may be.
constexpr double kLeastNearerToOwn = -1, kLeastNearerIfOptional = 0.5;
constexpr double kOnRegionCost = 6;     ///< over the region of a tip: only where there is no room beside it
constexpr double kNearRegionCost = 0.5; ///< its halo cuts into it
constexpr double kPlainlyNearer = 10;   ///< points nearer to its own arc than to another
constexpr double kNearOther = 14;       ///< points from its arc
constexpr double kDisplacementCost = 0.02; ///< of a point's way from the place that it had, while dragging

constexpr double kStrokeCrossed = 0.6, kLeaderCrossed = 1.8;

/// Told quickly, by its whole circle: can the box be nearer to the arc than this?
bool canBeNearer(const Sector& arc, const Box& box, double distance) {
    const Point middle{box.left + box.width / 2, box.top + box.height / 2};
    return std::abs(length(middle - arc.centre) - arc.radius) - (box.width + box.height) / 2 < distance;
}

/// At the same corner, with the other's legs between its own.
bool holds(const Sector& angle, const Sector& other) {
    if (length(angle.centre - other.centre) > 1e-6)
        return false;
    const auto isBetween = [&](double part) {
        const Point at = onCircle(other.centre, 1, other.startDegrees + part * other.sweepDegrees);
        const double sense = angle.sweepDegrees < 0 ? -1 : 1;
        const double turn = turned(sense * (degreesOf(at - angle.centre) - angle.startDegrees));
        return turn <= std::abs(angle.sweepDegrees) + 1e-6 || turn >= 360 - 1e-6;
    };
    return isBetween(0) && isBetween(0.5) && isBetween(1);
}

} // namespace

bool isArrow(const LabelRequest& request) {
    return (request.ink == Role::given || request.ink == Role::sum) &&
           std::holds_alternative<Shaft>(request.anchor);
}

LabelEvaluation::LabelEvaluation(const LabelRequest& request, const std::vector<Run>& runs,
                                 const Surroundings& around, const TextMeasure& measure)
    : m_request(&request), m_runs(&runs), m_around(&around) {
    const TextExtent e = measure.measure(runs, Face::serif, request.size);
    m_extent = {e.width, e.ascent + e.descent, e.ascent};
    if (const auto* sector = std::get_if<Sector>(&request.anchor); sector && sector->angle)
        m_angle = sector;
    m_shaft = std::get_if<Shaft>(&request.anchor);
}

/// Without a leader an angle's value stands between its own legs.
bool LabelEvaluation::isInWedge(const Box& box) const {
    return !m_angle || standsBetweenLegs(box, *m_angle);
}

/// It had better stand at its own arc, too: while dragging it may keep its place when another comes nearer.
bool LabelEvaluation::isAtOwnArc(const Box& box) const {
    if (!m_angle)
        return true;
    const double own = gapToArc(box, *m_angle);
    return std::none_of(m_around->angles.begin(), m_around->angles.end(), [&](const Sector* other) {
        return other != m_angle && canBeNearer(*other, box, own) && gapToArc(box, *other) < own;
    });
}

/// An angle's value would stand in another angle: between its legs, and no further out than it would stand at
/// that one's arc; led away from its own corner it stands between no other legs there at all. An angle that
/// holds its own is no matter, whatever stands in the one stands in both; nor is one at the same corner where
/// the value is plainly at its own arc.
bool LabelEvaluation::standsInOther(const Box& box, bool isLed) const {
    if (!m_angle)
        return false;
    const Box spot{box.left + box.width / 2, box.top + box.height / 2, 0, 0};
    const double beyond = box.height + 2 * m_around->factor;
    return std::any_of(m_around->angles.begin(), m_around->angles.end(), [&](const Sector* other) {
        const bool sameCorner = length(other->centre - m_angle->centre) < 1e-6;
        const bool isFar = length(Point{spot.left, spot.top} - other->centre) >= other->radius + beyond;
        if (other == m_angle || (isFar && !(isLed && sameCorner)) || !standsBetweenLegs(spot, *other) ||
            holds(*other, *m_angle))
            return false;
        const bool inRows = other->startDegrees == m_angle->startDegrees;
        // Directions stand in rows from one axis: it is enough that no other arc is nearer (isAtOwnArc()).
        return isLed || !sameCorner ||
               (!inRows &&
                gapToArc(box, *m_angle) + kPlainlyNearer * m_around->factor > gapToArc(box, *other));
    });
}

/// It could be taken for another angle's value: at that one's arc, or beside it between that one's
/// legs. A wider angle at the same corner is no matter.
bool LabelEvaluation::isAmbiguous(Point middle) const {
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
double LabelEvaluation::nearerToOwn(const Box& box, double least) const {
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

bool LabelEvaluation::isUncrowded(Point middle) const {
    return m_around->obstacles.isClearOfOthers(boxAt(middle, kGoodClearance),
                                               static_cast<int>(m_request->group));
}

double LabelEvaluation::costOfRegions(Point middle) const {
    const Obstacles& obstacles = m_around->obstacles;
    return !obstacles.isOnRegion(boxAt(middle, kGoodClearance)) ? 0
           : obstacles.isOnRegion(boxAt(middle, 0))             ? kOnRegionCost
                                                                : kNearRegionCost;
}

LabelEvaluation::Evaluation LabelEvaluation::evaluate(const Candidate& place) const {
    Evaluation v;
    v.known = true;
    v.allowed = m_around->obstacles.isClearOfStrokes(boxAt(place.middle, kLeastClearance)) &&
                isInWedge(boxAt(place.middle, 0)) && isAtOwnArc(boxAt(place.middle, 0)) &&
                !standsInOther(boxAt(place.middle, 0), false);
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
                 (nearer < 1 ? kAmbiguousCost : 0) + costOfRegions(place.middle);
    return v;
}

double LabelEvaluation::displacementCost(Point middle, const std::optional<Point>& previousMiddle) const {
    return previousMiddle ? kDisplacementCost * length(middle - *previousMiddle) / m_around->factor : 0;
}

/// Outward, but not so that the leader seems to lengthen the arrow.
double LabelEvaluation::costOfDirection(const LeaderAnchor& anchor, Rail rail, int direction) const {
    const double ahead = dot(wayOf(direction), anchor.outward);
    return 0.2 * static_cast<double>(indexOf(rail)) + 0.6 * (1 - ahead) + (!m_angle && ahead > 0.97 ? 1 : 0);
}

/// Do strokes and texts leave room there for the label and its leader?
bool LabelEvaluation::isRingClear(signed char& crossed, const Box& box, Point anchorPoint) const {
    if (crossed == kUnknown)
        crossed = m_around->obstacles.isClearOfStrokes(grown(box, kLeastClearance * m_around->factor)) &&
                          !m_around->obstacles.crossesText(anchorPoint, rimOf(box, anchorPoint))
                      ? kNotCounted
                      : kNotClear;
    return crossed != kNotClear;
}

/// One of the two arrows between which the angle is: out of a small triangle there is no way but across a
/// leg.
bool LabelEvaluation::isOwnLeg(Point tail, Point tip) const {
    constexpr double kNear = 0.5; // points, degrees
    const bool begins = m_angle && length(tail - m_angle->centre) < kNear,
               ends = m_angle && length(tip - m_angle->centre) < kNear;
    if (begins == ends)
        return false;
    const double way = degreesOf(begins ? tip - tail : tail - tip);
    const auto isAlong = [&](double leg) { return std::abs(std::remainder(way - leg, 360)) < kNear; };
    return isAlong(m_angle->startDegrees) || isAlong(m_angle->startDegrees + m_angle->sweepDegrees);
}

/// On a shaft the leader takes hold of an arrow, on an arc of none.
bool LabelEvaluation::crossesForce(const LeaderCandidate& candidate) const {
    const Point grip = candidate.anchorPoint, from = grip + (m_shaft ? 0.08 : 0) * (candidate.rim - grip);
    return m_around->obstacles.crossesArrow(from, candidate.rim,
                                            [&](Point tail, Point tip) { return !isOwnLeg(tail, tip); });
}

std::optional<ChosenPlace> LabelEvaluation::choiceAt(const LeaderCandidate& candidate, signed char& crossed,
                                                     double cost, double most) const {
    const Obstacles& obstacles = m_around->obstacles;
    if (cost >= most || !isRingClear(crossed, candidate.box, candidate.anchorPoint))
        return std::nullopt;
    const Point from = candidate.anchorPoint + 0.08 * (candidate.rim - candidate.anchorPoint);
    if (!m_isHeld && (standsInOther(candidate.box, true) || (!m_mayCross && crossesForce(candidate))))
        return std::nullopt;
    cost += kLeaderCrossed * obstacles.leadersCrossed(from, candidate.rim);
    if (cost < most && crossed == kNotCounted)
        crossed = static_cast<signed char>(std::min(obstacles.strokesCrossed(from, candidate.rim), 100));
    cost += kStrokeCrossed * std::max<int>(crossed, 0);
    cost += cost < most && obstacles.isOnRegion(candidate.box) ? kOnRegionCost : 0;
    return cost < most ? std::optional(ChosenPlace{candidate.middle, candidate.place, cost,
                                                   candidate.anchorPoint, crossed})
                       : std::nullopt;
}

} // namespace tailpoint
