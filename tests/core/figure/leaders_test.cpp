// Leaders cross arrows where there is hardly another way only.
#include "tests/core/figure/any_figure.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace {

double cross(Point from, Point a, Point b) {
    return (a.x - from.x) * (b.y - from.y) - (a.y - from.y) * (b.x - from.x);
}

bool segmentsCross(Point a, Point b, Point c, Point d) {
    return (cross(a, b, c) > 0) != (cross(a, b, d) > 0) && (cross(c, d, a) > 0) != (cross(c, d, b) > 0);
}

/// Shafts that the leader crosses; where it takes hold is no crossing.
int shaftsCrossed(const DisplayList& list, const Path& leader) {
    const Point end = leader.points[1], grip = leader.points[0];
    const Point from{grip.x + 0.08 * (end.x - grip.x), grip.y + 0.08 * (end.y - grip.y)};
    int crossed = 0;
    for (const Group& group : list.groups)
        if (group.ends && (group.role == Role::given || group.role == Role::sum))
            crossed += segmentsCross(from, end, group.ends->front(), group.ends->back()) ? 1 : 0;
    return crossed;
}

TEST(Leaders, CrossAnArrowLessOftenThanOneInEight) {
    int leaders = 0, crossed = 0;
    for (std::uint64_t i = 0; i < 10'000; i += 4) {
        const AnyFigure any = anyFigure(4711, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        for (const Group& group : d.figure.list.groups)
            if (const Path* leader = leaderOf(group)) {
                ++leaders;
                crossed += shaftsCrossed(d.figure.list, *leader);
            }
    }
    EXPECT_GT(leaders, 3'000);
    EXPECT_LT(8 * crossed, leaders) << crossed;
}

} // namespace
} // namespace tailpoint::testing
