// An angle's value stands between the legs of its own angle; else a leader ties it to its arc. An arrow's
// label is not nearer to another arrow than to its own, or is led. Told from what is drawn alone, by a
// geometry of the tests' own.
#include "tests/core/figure/any_figure.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace {

struct Wedge {
    Point corner;
    double start = 0, sweep = 0, radius = 0;
};

double degreesFrom(Point corner, Point p) {
    return std::atan2(corner.y - p.y, p.x - corner.x) * 180 / 3.14159265358979;
}

/// How far past `start`, in the sense of the sweep, 0 to 360.
double turnOf(const Wedge& wedge, Point p) {
    const double sense = wedge.sweep < 0 ? -1 : 1;
    return std::fmod(sense * (degreesFrom(wedge.corner, p) - wedge.start) + 1080, 360);
}

/// From the arc and its head, or from the square mark of a right angle.
std::optional<Wedge> wedgeOf(const Group& group) {
    std::optional<Wedge> wedge;
    for (const Item& item : group.items) {
        const auto* path = std::get_if<Path>(&item);
        if (const auto* arc = std::get_if<Arc>(&item); arc && !wedge)
            wedge = Wedge{arc->centre, arc->startDegrees, arc->sweepDegrees, arc->radius};
        else if (path && path->filled && wedge) // the head is where the arc ends
            wedge->sweep = (wedge->sweep < 0 ? -1 : 1) *
                           std::max(std::abs(wedge->sweep), turnOf(*wedge, path->points[0]));
        else if (path && path->points.size() == 3 && !wedge) {
            const auto& p = path->points;
            const Point corner{p[0].x + p[2].x - p[1].x, p[0].y + p[2].y - p[1].y};
            const double start = degreesFrom(corner, p[0]);
            const double turn = std::fmod(degreesFrom(corner, p[2]) - start + 1080, 360);
            wedge = Wedge{corner, start, turn > 180 ? turn - 360 : turn, 0};
        }
    }
    return wedge;
}

bool isAngle(const Group& group) {
    return group.id.starts_with("direction-") || group.id.starts_with("angle-") ||
           group.id.starts_with("opposite-");
}

constexpr double kSlack = 0.05; ///< degrees; a head's chord is a little shorter than its arc

bool standsIn(const Wedge& wedge, const Box& box) {
    for (const double x : {box.left, box.right()})
        for (const double y : {box.top, box.bottom()})
            if (const double turn = turnOf(wedge, {x, y});
                turn > std::abs(wedge.sweep) + kSlack && turn < 360 - kSlack)
                return false;
    return true;
}

bool isOnArc(const Wedge& wedge, Point p) {
    const double off = std::hypot(p.x - wedge.corner.x, p.y - wedge.corner.y) - wedge.radius;
    const double turn = turnOf(wedge, p);
    return std::abs(off) < 0.01 && (turn <= std::abs(wedge.sweep) + kSlack || turn >= 360 - kSlack);
}

constexpr std::uint64_t kSeed = 4711, kFigures = 10'000, kShares = 4;

class Angles : public ::testing::TestWithParam<std::uint64_t> {};

TEST_P(Angles, HaveTheirValuesBetweenTheirLegsOrLedToTheirArcs) {
    int inside = 0, led = 0;
    for (std::uint64_t i = GetParam(); i < kFigures; i += kShares) {
        const AnyFigure any = anyFigure(kSeed, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        for (const Group& group : d.figure.list.groups) {
            const Text* value = labelOf(group);
            const auto wedge = wedgeOf(group);
            if (!isAngle(group) || !value || !wedge)
                continue;
            if (const Path* leader = leaderOf(group)) {
                ++led;
                EXPECT_TRUE(wedge->radius == 0 || isOnArc(*wedge, leader->points[0]))
                    << "seed " << kSeed << " case " << i << ": the leader of " << group.id
                    << " misses its arc";
            } else {
                ++inside;
                EXPECT_TRUE(standsIn(*wedge, value->box))
                    << "seed " << kSeed << " case " << i << ": " << textOf(*value) << " of " << group.id;
            }
        }
    }
    EXPECT_GT(inside, 2 * led);
}

std::vector<const Group*> arrowsOf(const DisplayList& list) {
    std::vector<const Group*> arrows;
    for (const Group& group : list.groups)
        if ((group.role == Role::given || group.role == Role::sum) && group.ends &&
            !group.id.starts_with("other-"))
            arrows.push_back(&group);
    return arrows;
}

double distanceTo(const Box& box, const Group& arrow) {
    return testing::distanceTo(box, arrow.ends->front(), arrow.ends->back());
}

TEST_P(Angles, AndArrowsHaveTheirLabelsNearestToThemselvesOrLedToThem) {
    int beside = 0;
    for (std::uint64_t i = GetParam(); i < kFigures; i += kShares) {
        const AnyFigure any = anyFigure(kSeed, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        const auto arrows = arrowsOf(d.figure.list);
        for (const Group* own : arrows) {
            const Text* label = labelOf(*own);
            if (!label || leaderOf(*own))
                continue;
            ++beside;
            for (const Group* other : arrows)
                EXPECT_GT(distanceTo(label->box, *other),
                          distanceTo(label->box, *own) - 1.01 * any.options.style.factor)
                    << "seed " << kSeed << " case " << i << ": " << textOf(*label) << " is nearer to "
                    << other->id;
        }
    }
    EXPECT_GT(beside, 8'000);
}

INSTANTIATE_TEST_SUITE_P(ShareOfTenThousand, Angles, ::testing::Range<std::uint64_t>(0, kShares));

} // namespace
} // namespace tailpoint::testing
