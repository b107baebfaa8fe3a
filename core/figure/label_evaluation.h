// SPDX-License-Identifier: MIT
// What a place costs one label with one of its texts, and what it touches there: strokes, texts, other
// labels' leaders, another angle's wedge. Nothing is decided here.
// Read label_candidates before it, label_search after it.
#pragma once

#include "core/figure/labels.h"

#include <algorithm>

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

/// End of the leader at the box: the point of its rim nearest to the anchor, a little outside.
inline Point rimOf(const Box& box, Point anchorPoint) {
    const Box rim = grown(box, 1.6);
    return {std::clamp(anchorPoint.x, rim.left, rim.right()),
            std::clamp(anchorPoint.y, rim.top, rim.bottom())};
}

class LabelEvaluation {
public:
    LabelEvaluation(const LabelRequest& request, const std::vector<Run>& runs, const Surroundings& around,
                    const TextMeasure& measure);

    const Extent& extent() const { return m_extent; }
    const std::vector<Run>& runs() const { return *m_runs; }
    void mayCrossArrows() { m_mayCross = true; } ///< with its leader, where nothing else is left

protected:
    struct Evaluation {
        bool known = false, allowed = false;
        double cost = 0;
    };
    struct LeaderCandidate { ///< a place at the end of a leader
        Place place;
        Point anchorPoint, middle, rim;
        Box box;
    };
    /// In place of the number of strokes that a leader crosses.
    static constexpr signed char kUnknown = -3, kNotCounted = -2, kNotClear = -1;

    Box boxAt(Point middle, double clearance) const {
        return grown(boxAround(middle, m_extent.width, m_extent.height), clearance * m_around->factor);
    }
    bool isInWedge(const Box& box) const;
    bool standsInOther(const Box& box, bool isLed) const;
    /// Of a candidate beside its feature, as far as placing other labels does not change it.
    Evaluation evaluate(const Candidate& place) const;
    /// While dragging: of the way from where the label was.
    double displacementCost(Point middle, const std::optional<Point>& previousMiddle) const;

    double costOfDirection(const LeaderAnchor& anchor, Rail rail, int direction) const;
    /// Here, for the loop over all rings calls it.
    LeaderCandidate leaderCandidate(const Place& place, Point anchorPoint, Point middle) const {
        const Box box = boxAt(middle, 0);
        return {place, anchorPoint, middle, rimOf(box, anchorPoint), box};
    }
    /// One that is known to be clear of labels, if it is free and costs less than `most`; in a crowd few get
    /// that far. `crossed` remembers what strokes say; `cost`: of its ring, direction and displacement.
    std::optional<ChosenPlace> choiceAt(const LeaderCandidate& candidate, signed char& crossed, double cost,
                                        double most) const;

    const LabelRequest* m_request;
    const std::vector<Run>* m_runs;
    const Surroundings* m_around;
    const Sector* m_angle = nullptr;
    const Shaft* m_shaft = nullptr;
    Extent m_extent;
    bool m_mayCross = false,
         m_isHeld = false; ///< held: in a drag it stays where it was, whatever moves there

private:
    bool isAtOwnArc(const Box& box) const;
    bool isOwnLeg(Point tail, Point tip) const;
    bool crossesForce(const LeaderCandidate& candidate) const;
    bool isAmbiguous(Point middle) const;
    bool isUncrowded(Point middle) const;
    double costOfRegions(Point middle) const;
    double nearerToOwn(const Box& box, double least) const;
    bool isRingClear(signed char& crossed, const Box& box, Point anchorPoint) const;
};

/// Is it the label of a force or the sum as an arrow?
bool isArrow(const LabelRequest& request);

} // namespace tailpoint
