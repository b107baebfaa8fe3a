// The places of one label with one of its texts, and which of them is best as the sheet is now. What strokes
// have to say of a place is asked once; only labels and leaders come and go.
#pragma once

#include "core/figure/labels.h"

#include <algorithm>
#include <array>

namespace tailpoint {

/// Air between a label and any stroke or other label: must be there, and had better be there.
inline constexpr double kLeastClearance = 2, kGoodClearance = 6;
inline constexpr double kLabelOffset = 4.5; ///< between a label and its own stroke

/// What all labels of a figure share.
struct Surroundings {
    const Obstacles& obstacles;
    std::vector<const Sector*> angles; ///< whose values are asked for
    std::vector<const Shaft*> arrows;  ///< whose labels are
    double factor;
};

struct ChosenPlace {
    Point middle;
    Place place;
    double cost = 0;
    std::optional<Point> anchorPoint{}; ///< of its leader
    int crossed = 0;                    ///< weight of the strokes that it crosses
};

class LabelSearch {
public:
    LabelSearch(const LabelRequest& request, const std::vector<Run>& runs, const Surroundings& around,
                const TextMeasure& measure);

    const Extent& extent() const { return m_extent; }
    const std::vector<Run>& runs() const { return *m_runs; }
    std::optional<Point> middleOf(const Place& place);
    std::optional<ChosenPlace> keep(const Place& place);  ///< that very place, if it is free
    std::optional<ChosenPlace> slide(const Place& place); ///< the nearest free one on its rail
    /// The best ones beside the thing, and led to it. `previousMiddle`: while dragging a label
    /// goes as near as it can to where it was.
    std::optional<ChosenPlace> bestBesideFeature(const std::optional<Point>& previousMiddle);
    std::optional<ChosenPlace> bestOnLeader(const std::optional<Point>& previousMiddle);

private:
    struct Evaluation {
        bool known = false, allowed = false;
        double cost = 0;
    };
    enum class Generated { none, first, all };
    struct LeaderDirection { ///< a way out from a anchor
        Rail anchor;
        std::size_t turn;           ///< which of the coarse directions
        std::array<double, 2> cost; ///< on even and on odd rings, which lie a little further round
        std::array<Point, 2> way;
        std::array<double, 2> reach; ///< of the label, that way
        double least() const { return std::min(cost[0], cost[1]); }
    };
    struct LeaderCandidate { ///< a place at the end of a leader
        Place place;
        Point anchorPoint, middle, rim;
        Box box;
    };

    Box boxAt(Point middle, double air) const {
        return grown(boxAround(middle, m_extent.width, m_extent.height), air * m_around->factor);
    }
    bool isInWedge(const Box& box) const;
    bool isAtOwnArc(const Box& box) const;
    bool isAmbiguous(Point middle) const;
    bool isUncrowded(Point middle) const;
    double nearerToOwn(const Box& box, double least) const;
    const Evaluation& evaluate(std::size_t place);
    double displacementCost(Point middle, const std::optional<Point>& previousMiddle) const;
    void prepareAnchors();
    Point ringed(const Place& place, Point& anchorPoint) const;
    double costOfDirection(Rail anchor, int direction) const;
    bool isRingClear(signed char& crossed, const Box& box, Point anchorPoint) const;
    signed char& crossedAt(const Place& place);
    std::optional<Point> leaderMiddle(const Place& place);
    std::optional<ChosenPlace> moveRoundAnchor(const Place& place);
    std::optional<ChosenPlace> onLeaderAt(const Place& place, double cost,
                                          const std::optional<Point>& previousMiddle, double most);
    LeaderCandidate leaderCandidate(const Place& place) const;
    LeaderCandidate leaderCandidate(const Place& place, Point anchorPoint, Point middle) const;
    std::optional<ChosenPlace> choiceAt(const LeaderCandidate& candidate, signed char& crossed, double cost,
                                        double most) const;
    bool isBlockedBy(const Edges& label, const LeaderDirection& turn, std::size_t odd,
                     const LeaderCandidate& candidate) const;
    void gatherQuarters(Point anchorPoint);
    void searchRoundAnchor(std::size_t first, const std::optional<Point>& previousMiddle,
                           std::optional<ChosenPlace>& best);
    void searchAlongDirection(const LeaderDirection& turn, std::size_t odd, signed char* crossed,
                              const std::optional<Point>& previousMiddle, std::optional<ChosenPlace>& best);
    std::optional<ChosenPlace> bestCandidate(const std::optional<Point>& previousMiddle);

    const LabelRequest* m_request;
    const std::vector<Run>* m_runs;
    const Surroundings* m_around;
    const Sector* m_angle = nullptr;
    const Shaft* m_shaft = nullptr;
    Extent m_extent;
    Generated m_generated = Generated::none;
    double m_restFrom = 0; ///< least cost of the places that are not listed yet
    std::vector<Candidate> m_places, m_slides;
    std::vector<Evaluation> m_evaluations;
    bool m_anchorsKnown = false;
    std::vector<LeaderAnchor> m_anchors;
    std::vector<LeaderDirection> m_directions;
    std::array<std::vector<Edges>, 4> m_quarters; ///< right and left of the anchor in question, down and up
    std::vector<signed char> m_crossed;           ///< by coarse place: strokes crossed; see led_choices.cpp
    signed char m_crossedFine = 0;
};

/// Is it the label of a force or the sum as an arrow?
bool isArrow(const LabelRequest& request);

/// End of the leader at the box: the point of its rim nearest to the anchor, a little outside.
inline Point rimOf(const Box& box, Point anchorPoint) {
    const Box rim = grown(box, 1.6);
    return {std::clamp(anchorPoint.x, rim.left, rim.right()),
            std::clamp(anchorPoint.y, rim.top, rim.bottom())};
}

} // namespace tailpoint
