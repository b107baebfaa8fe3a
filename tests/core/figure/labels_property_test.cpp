// SPDX-License-Identifier: MIT
// Ten thousand figures: no text touches another, a stroke (the grid excepted) or the sheet's edge. Measured
// on the very boxes, by a geometry of the tests' own. Eight cases, so that they run side by side.
#include "tests/core/figure/any_figure.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr std::uint64_t kSeed = 4711, kFigures = 10'000, kShares = 8;

class AnyFigures : public ::testing::TestWithParam<std::uint64_t> {};

TEST_P(AnyFigures, HaveLabelsThatTouchNothing) {
    for (std::uint64_t i = GetParam(); i < kFigures; i += kShares) {
        const AnyFigure any = anyFigure(kSeed, i);
        const Drawn d = drawn(any.sketch, any.options, any.width, any.height);
        for (const std::string& touching : collisions(d.figure.list))
            ADD_FAILURE() << "seed " << kSeed << " case " << i << ": " << touching;
    }
}

INSTANTIATE_TEST_SUITE_P(ShareOfTenThousand, AnyFigures, ::testing::Range<std::uint64_t>(0, kShares));

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
