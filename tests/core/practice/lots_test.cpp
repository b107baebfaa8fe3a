// SPDX-License-Identifier: MIT
#include "core/practice/lots.h"

#include <gtest/gtest.h>

#include <array>

namespace tailpoint::practising {
namespace TAILPOINT_FILE {

TEST(PracticeLots, DrawsTheNumbersOfItsSource) {
    // SplitMix64 of 1234567: computed by Python from the constants in the paper's appendix
    Lots lots(1234567);
    for (const std::uint64_t expected :
         {6457827717110365317ULL, 3203168211198807973ULL, 9817491932198370423ULL})
        EXPECT_EQ(lots.next(), expected);
}

TEST(PracticeLots, EveryNumberBelowABoundIsDrawnAboutAsOften) {
    Lots lots(7);
    std::array<int, 7> drawn{};
    for (int i = 0; i < 70'000; ++i)
        ++drawn[lots.below(7)];
    for (const int times : drawn) // 10,000 each; five standard deviations are 463
        EXPECT_NEAR(times, 10'000, 463);
}

TEST(PracticeLots, BetweenReachesBothEnds) {
    Lots lots(8);
    std::array<int, 3> drawn{};
    for (int i = 0; i < 100; ++i)
        ++drawn[static_cast<std::size_t>(lots.between(-1, 1) + 1)];
    for (const int times : drawn)
        EXPECT_GT(times, 0);
}

TEST(PracticeLots, EachOfSeveralSeedsMatters) {
    EXPECT_NE(Lots(1, 2, 3).next(), Lots(1, 3, 2).next());
    EXPECT_NE(Lots(1, 2, 3).next(), Lots(2, 1, 3).next());
    EXPECT_NE(Lots(1, 2, 3).next(), Lots(1, 2, 4).next());
    EXPECT_EQ(Lots(1, 2, 3).next(), Lots(1, 2, 3).next());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::practising
