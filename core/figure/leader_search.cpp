// SPDX-License-Identifier: MIT
// The search for a place at the end of a leader, and for the nearest one in a drag.
#include "core/figure/label_search.h"
#include "core/figure/leader_rings.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

/// No other anchor is tried for a leader that costs less, and crosses no arrow.
constexpr double kGoodEnough = 4;

} // namespace

std::optional<Point> LabelSearch::leaderMiddle(const Place& place) {
    prepareAnchors();
    if (indexOf(place.rail) >= m_anchors.size())
        return std::nullopt;
    Point anchorPoint;
    return ringed(place, anchorPoint);
}

/// A label on a leader that has to move goes to the nearest place around, on its own leader.
std::optional<ChosenPlace> LabelSearch::moveRoundAnchor(const Place& place) {
    prepareAnchors();
    if (indexOf(place.rail) >= m_anchors.size())
        return std::nullopt;
    constexpr int furthest = 9;
    constexpr double step = 3, kFurthestMove = 90; // points; further out it looks for another place
    const int ring = place.ring, direction = directionOf(place);
    const double away = kAways[static_cast<std::size_t>(ring)];
    const double reached = away + m_extent.width / 2 / m_around->factor;
    const int outward = std::max(1, static_cast<int>(std::lround(step / (away * (kRingGrowth - 1)))));
    const int round = std::max(
        1, static_cast<int>(std::lround(step * kLeaderDirections / (2 * std::numbers::pi * reached))));
    const auto at = [&](int out, int turn) -> std::optional<ChosenPlace> {
        const int to = ring + out * outward;
        if (to < 0 || to >= kRings || (out >= 0 && kAways[static_cast<std::size_t>(to)] > kFurthestMove))
            return std::nullopt;
        const int turned = (direction + turn * round + kLeaderDirections) % kLeaderDirections;
        return onLeaderAt(placeAt(place.rail, to, turned),
                          costOfAway(to) +
                              costOfDirection(m_anchors[indexOf(place.rail)], place.rail, turned),
                          std::nullopt, 1e9);
    };
    std::optional<ChosenPlace> best;
    const auto consider = [&](int out, int turn) {
        if (const auto choice = at(out, turn); choice && (!best || choice->cost < best->cost))
            best = choice;
    };
    for (int far = 1; far <= furthest && !best; ++far)
        for (int i = -far; i <= far; ++i) {
            consider(i, far);
            consider(i, -far);
            consider(far, i);
            consider(-far, i);
        }
    return best;
}

void LabelSearch::prepareAnchors() {
    if (m_anchorsKnown)
        return;
    m_anchorsKnown = true;
    listLeaderAnchors(m_anchors, m_request->anchor);
    std::erase_if(m_anchors, [&](const LeaderAnchor& anchorPoint) {
        return !m_around->obstacles.isOnSheet(anchorPoint.at);
    });
    m_directions.reserve(m_anchors.size() * kTurns);
    m_crossed.assign(m_anchors.size() * kTurns * kSteps, kUnknown);
    for (std::size_t i = 0; i < m_anchors.size(); ++i) {
        const Rail anchor = i == 0 ? Rail::firstAnchor : Rail::secondAnchor;
        for (int turn = 0; turn < kTurns; ++turn) {
            const int direction = turn * kEachDirection, further = direction + kEachDirection / 2;
            const Point way = wayOf(direction), onward = wayOf(further);
            m_directions.push_back({anchor,
                                    static_cast<std::size_t>(turn),
                                    {costOfDirection(m_anchors[i], anchor, direction),
                                     costOfDirection(m_anchors[i], anchor, further)},
                                    {way, onward},
                                    {reach(m_extent.width, m_extent.height, way),
                                     reach(m_extent.width, m_extent.height, onward)}});
        }
        std::sort(m_directions.end() - kTurns, m_directions.end(),
                  [](const LeaderDirection& a, const LeaderDirection& b) {
                      return a.least() < b.least() || (a.least() == b.least() && a.turn < b.turn);
                  });
    }
}

/// Where the strokes that a leader crosses are remembered; only for the coarse places.
signed char& LabelSearch::crossedAt(const Place& place) {
    if (isCoarse(place)) {
        const std::size_t ring =
            indexOf(place.rail) * kSteps + static_cast<std::size_t>(place.ring / kEachRing);
        return m_crossed[ring * kTurns + static_cast<std::size_t>(directionOf(place) / kEachDirection)];
    }
    m_crossedFine = kUnknown;
    return m_crossedFine;
}

/// Places around the thing: rings of directions, further and further out, for each anchor.
Point LabelSearch::ringed(const Place& place, Point& anchorPoint) const {
    const Point unit = wayOf(directionOf(place));
    anchorPoint = m_anchors[indexOf(place.rail)].at;
    const double away = kAways[static_cast<std::size_t>(place.ring)] * m_around->factor;
    return anchorPoint + (away + reach(m_extent.width, m_extent.height, unit)) * unit;
}

LabelEvaluation::LeaderCandidate LabelSearch::candidateAt(const Place& place) const {
    Point anchorPoint;
    const Point middle = ringed(place, anchorPoint);
    return leaderCandidate(place, anchorPoint, middle);
}

/// At that place of the rings, if it is free and costs less than `most`. `cost`: of its ring and direction.
std::optional<ChosenPlace> LabelSearch::onLeaderAt(const Place& place, double cost,
                                                   const std::optional<Point>& previousMiddle, double most) {
    signed char& crossed = crossedAt(place);
    if (crossed == kNotClear)
        return std::nullopt;
    const LeaderCandidate candidate = candidateAt(place);
    const std::vector<Edges>& labels = m_around->obstacles.labels();
    if (labelCrossed(labels, candidate.anchorPoint, candidate.rim) ||
        !m_around->obstacles.isClearOfLabels(labels, boxAt(candidate.middle, kLeastClearance)))
        return std::nullopt;
    return choiceAt(candidate, crossed, cost + displacementCost(candidate.middle, previousMiddle), most);
}

/// Further out in the same direction leaders turn steadily, and grow. So where this one runs into that label,
/// and so does as much of the last one, all between them do.
bool LabelSearch::isBlockedBy(const Edges& label, const LeaderDirection& turn, std::size_t odd,
                              const LeaderCandidate& candidate) const {
    const double furthest = kAways[(kSteps - 2 + odd) * kEachRing] * m_around->factor;
    const Box last = boxAt(candidate.anchorPoint + (furthest + turn.reach[odd]) * turn.way[odd], 0);
    const Point way = candidate.rim - candidate.anchorPoint,
                lastWay = rimOf(last, candidate.anchorPoint) - candidate.anchorPoint;
    const double part = std::sqrt(dot(way, way) / std::max(dot(lastWay, lastWay), 1e-9));
    return label.crossedBy(candidate.anchorPoint, candidate.anchorPoint + part * lastWay);
}

std::optional<ChosenPlace> LabelSearch::bestOnLeader(const std::optional<Point>& previousMiddle) {
    prepareAnchors();
    std::optional<ChosenPlace> best;
    const auto isGood = [](const ChosenPlace& choice) {
        return choice.cost < kGoodEnough && choice.crossed < kArrowWeight;
    };
    for (std::size_t first = 0; first < m_directions.size() && !(best && isGood(*best)); first += kTurns)
        searchRoundAnchor(first, previousMiddle, best);
    return best;
}

/// The labels that can be in the way to each quarter of the sheet about an anchor.
void LabelSearch::gatherQuarters(Point anchorPoint) {
    const double beside = 2 + kLeastClearance * m_around->factor, far = 1e5;
    const double left = anchorPoint.x - m_extent.width / 2 - beside,
                 right = anchorPoint.x + m_extent.width / 2 + beside;
    const double top = anchorPoint.y - m_extent.height / 2 - beside,
                 bottom = anchorPoint.y + m_extent.height / 2 + beside;
    for (std::size_t quarter = 0; quarter < m_quarters.size(); ++quarter)
        m_around->obstacles.listLabels(
            {quarter % 2 ? right - far : left, quarter < 2 ? top : bottom - far, far, far},
            m_quarters[quarter]);
}

/// From one anchor; `first` of its turns.
void LabelSearch::searchRoundAnchor(std::size_t first, const std::optional<Point>& previousMiddle,
                                    std::optional<ChosenPlace>& best) {
    gatherQuarters(m_anchors[first / kTurns].at);
    for (std::size_t i = first; i < first + kTurns; ++i)
        for (const std::size_t odd : {0U, 1U})
            searchAlongDirection(m_directions[i], odd, &m_crossed[first * kSteps + m_directions[i].turn],
                                 previousMiddle, best);
}

/// On one way out, on even or on odd rings. `crossed`: of the first ring of all.
void LabelSearch::searchAlongDirection(const LeaderDirection& turn, std::size_t odd, signed char* crossed,
                                       const std::optional<Point>& previousMiddle,
                                       std::optional<ChosenPlace>& best) {
    const Obstacles& obstacles = m_around->obstacles;
    const Point anchorPoint = m_anchors[indexOf(turn.anchor)].at, way = turn.way[odd];
    const std::vector<Edges>& near = m_quarters[(way.x < 0 ? 1U : 0U) + (way.y < 0 ? 2U : 0U)];
    for (std::size_t step = odd; step < kSteps; step += 2) {
        const int ring = static_cast<int>(step) * kEachRing;
        const double cost = costOfAway(ring) + turn.cost[odd];
        if (best && cost >= best->cost)
            return;
        signed char& there = crossed[step * kTurns];
        if (there == kNotClear)
            continue;
        const double away = kAways[static_cast<std::size_t>(ring)] * m_around->factor;
        const LeaderCandidate candidate = leaderCandidate(
            placeAt(turn.anchor, ring, static_cast<int>(turn.turn) * kEachDirection + shiftOf(ring)),
            anchorPoint, anchorPoint + (away + turn.reach[odd]) * way);
        if (obstacles.hasLeft(candidate.box, way))
            return;
        if (const Edges* label = labelCrossed(near, candidate.anchorPoint, candidate.rim)) {
            if (isBlockedBy(*label, turn, odd, candidate))
                return;
        } else if (obstacles.isClearOfLabels(near, boxAt(candidate.middle, kLeastClearance))) {
            if (auto choice =
                    choiceAt(candidate, there, cost + displacementCost(candidate.middle, previousMiddle),
                             best ? best->cost : 1e9))
                best = choice;
        }
    }
}

} // namespace tailpoint
