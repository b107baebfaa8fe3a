// SPDX-License-Identifier: MIT
// Leaders cross no force but their own, unless there is no other way at all.
#include "tests/core/figure/any_figure.h"
#include "tests/core/figure/wedges.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

TEST(Leaders, CrossAnotherForceLessOftenThanOneInTwoHundred) {
    int leaders = 0, crossed = 0;
    for (std::uint64_t i = 0; i < 10'000; i += 4) {
        const AnyFigure any = anyFigure(4711, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        for (const Group& group : d.figure.list.groups)
            if (const Path* leader = leaderOf(group)) {
                ++leaders;
                crossed += static_cast<int>(crossedBy(d.figure.list, group, *leader).size());
            }
    }
    EXPECT_GT(leaders, 3'000);
    EXPECT_LT(200 * crossed, leaders) << crossed;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
