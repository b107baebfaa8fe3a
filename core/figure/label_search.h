// SPDX-License-Identifier: MIT
// The search for one label with one of its texts: the place it had, one near that, the best beside its
// feature, the best at the end of a leader. Candidates and evaluations are kept over the rounds.
// Read label_evaluation before it; labels.cpp has the passes over all labels.
#pragma once

#include "core/figure/label_evaluation.h"

#include <array>

namespace tailpoint {

class LabelSearch : public LabelEvaluation {
public:
    LabelSearch(const LabelRequest& request, const std::vector<Run>& runs, const Surroundings& around,
                const TextMeasure& measure);

    std::optional<Point> middleOf(const Place& place);
    std::optional<ChosenPlace> keep(const Place& place);  ///< that very place, if it is free
    std::optional<ChosenPlace> slide(const Place& place); ///< the nearest free one on its rail
    /// The best ones beside the thing, and at the end of a leader. `previousMiddle`: while dragging a label
    /// goes as near as it can to where it was.
    std::optional<ChosenPlace> bestBesideFeature(const std::optional<Point>& previousMiddle);
    std::optional<ChosenPlace> bestOnLeader(const std::optional<Point>& previousMiddle);

private:
    enum class Generated { none, first, all };
    struct LeaderDirection { ///< a way out from an anchor
        Rail anchor;
        std::size_t turn;           ///< which of the coarse directions
        std::array<double, 2> cost; ///< on even and on odd rings, which lie a little further round
        std::array<Point, 2> way;
        std::array<double, 2> reach; ///< of the label, that way
        double least() const { return std::min(cost[0], cost[1]); }
    };
    const Evaluation& evaluated(std::size_t place);
    void prepareAnchors();
    Point ringed(const Place& place, Point& anchorPoint) const;
    signed char& crossedAt(const Place& place);
    std::optional<Point> leaderMiddle(const Place& place);
    std::optional<ChosenPlace> keepOnLeader(const Place& place);
    std::optional<ChosenPlace> moveRoundAnchor(const Place& place);
    std::optional<ChosenPlace> onLeaderAt(const Place& place, double cost,
                                          const std::optional<Point>& previousMiddle, double most);
    LeaderCandidate candidateAt(const Place& place) const;
    bool isBlockedBy(const Edges& label, const LeaderDirection& turn, std::size_t odd,
                     const LeaderCandidate& candidate) const;
    void gatherQuarters(Point anchorPoint);
    void searchRoundAnchor(std::size_t first, const std::optional<Point>& previousMiddle,
                           std::optional<ChosenPlace>& best);
    void searchAlongDirection(const LeaderDirection& turn, std::size_t odd, signed char* crossed,
                              const std::optional<Point>& previousMiddle, std::optional<ChosenPlace>& best);
    std::optional<ChosenPlace> bestCandidate(const std::optional<Point>& previousMiddle);

    Generated m_generated = Generated::none;
    double m_restFrom = 0; ///< least cost of the places that are not listed yet
    std::vector<Candidate> m_places, m_slides;
    std::vector<Evaluation> m_evaluations;
    bool m_anchorsKnown = false;
    std::vector<LeaderAnchor> m_anchors;
    std::vector<LeaderDirection> m_directions;
    std::array<std::vector<Edges>, 4> m_quarters; ///< right and left of the anchor in question, down and up
    std::vector<signed char> m_crossed;           ///< by coarse place: strokes crossed; see leader_search.cpp
    signed char m_crossedFine = 0;
};

} // namespace tailpoint
