// SPDX-License-Identifier: MIT
#include "core/figure/label_search.h"

namespace tailpoint {

LabelSearch::LabelSearch(const LabelRequest& request, const std::vector<Run>& runs,
                         const Surroundings& around, const TextMeasure& measure)
    : LabelEvaluation(request, runs, around, measure) {}

/// Strokes don't change between the rounds, so it is asked once.
const LabelEvaluation::Evaluation& LabelSearch::evaluated(std::size_t i) {
    Evaluation& evaluation = m_evaluations[i];
    if (!evaluation.known)
        evaluation = evaluate(m_places[i]);
    return evaluation;
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
            !evaluated(i).allowed)
            continue;
        const double cost = m_evaluations[i].cost + displacementCost(place.middle, previousMiddle);
        if (!best || cost < best->cost)
            best = ChosenPlace{place.middle, place.place, cost, {}};
    }
    return best;
}

std::optional<ChosenPlace> LabelSearch::slide(const Place& from) {
    if (from.kind == PlaceKind::onLeader) {
        m_isHeld = true;
        const auto moved = moveRoundAnchor(from);
        m_isHeld = false;
        return moved;
    }
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

std::optional<ChosenPlace> LabelSearch::keepOnLeader(const Place& place) {
    m_isHeld = true;
    const auto kept = onLeaderAt(place, 0, std::nullopt, 1e9);
    m_isHeld = false;
    return kept;
}

std::optional<ChosenPlace> LabelSearch::keep(const Place& place) {
    const auto middle = middleOf(place);
    if (!middle)
        return std::nullopt;
    if (place.kind == PlaceKind::onLeader)
        return keepOnLeader(place);
    if (!m_around->obstacles.isFree(boxAt(*middle, kLeastClearance)) || !isInWedge(boxAt(*middle, 0)))
        return std::nullopt;
    return ChosenPlace{*middle, place, 0, {}};
}

} // namespace tailpoint
