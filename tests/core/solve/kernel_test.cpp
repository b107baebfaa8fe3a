// SPDX-License-Identifier: MIT
#include "core/solve/kernel.h"

#include <gtest/gtest.h>

#include <atomic>
#include <cstdlib>
#include <new>

namespace {
std::atomic<std::size_t> allocations{0};
} // namespace

// Counts what this program allocates, so that a test can see that the kernel does not.
void* operator new(std::size_t size) {
    ++allocations;
    if (void* memory = std::malloc(size == 0 ? 1 : size)) {
        return memory;
    }
    throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}

namespace tailpoint::kernel {
namespace {

Vec at(double degrees) {
    return vec(cosSin(degrees, AngleUnit::deg));
}

TEST(Kernel, DoesNotAllocateForTwoForces) {
    const Target target{{5, 1}, 12};
    volatile long double sink = 0;
    const std::size_t before = allocations;
    const Line line{at(25), true};
    const Line other{at(-40), true};
    const Circle circle{4};
    sink = sink + meet(line, other, target).root[0].first.magnitude;
    sink = sink + meet(line, circle, target).root[0].first.magnitude;
    sink = sink + meet(circle, line, target).root[0].first.magnitude;
    sink = sink + meet(circle, Circle{3}, target).root[0].first.unit.x;
    sink = sink + nearest(line, target).second.magnitude;
    sink = sink + close(target).magnitude;
    EXPECT_EQ(allocations, before);
    EXPECT_GT(sink, 0);
}

TEST(CompensatedSum, KeepsWhatAPlainSumWouldDrop) {
    Sum sum;
    for (const long double term : {1e30L, 1.0L, -1e30L}) {
        sum.add(term);
    }
    EXPECT_EQ(sum.value(), 1);
}

TEST(SumOfVectors, SettlesToZeroWithinItsBandOnly) {
    VectorSum sum;
    sum.add({1, 0}, 1);
    sum.add({-1 - 14 * 0x1p-53L, 0}, 1);
    EXPECT_EQ(length(sum.settled()), 0);
    VectorSum more;
    more.add({1, 0}, 1);
    more.add({-1 - 18 * 0x1p-53L, 0}, 1);
    EXPECT_GT(length(more.settled()), 0);
}

TEST(LineAndLine, AreParallelWithinTheBandOnly) {
    const Target target{{0, 1}, 1};
    const auto outcome = [&](long double sine) {
        return meet(Line{{1, 0}, false}, Line{{std::sqrt(1 - sine * sine), sine}, false}, target).outcome;
    };
    EXPECT_EQ(outcome(15 * 0x1p-53L), Outcome::apart);
    EXPECT_EQ(outcome(17 * 0x1p-53L), Outcome::one);
}

TEST(CrossingAngles, AreToldWithTheRoots) {
    EXPECT_NEAR(static_cast<double>(meet(Line{at(0)}, Line{at(30)}, {{1, 1}, 1}).sine), 0.5, 1e-18);
    // A circle of 5 about a tip 3 beside the line: half the chord is 4.
    EXPECT_NEAR(static_cast<double>(meet(Line{at(0)}, Circle{5}, {{10, 3}, 15}).sine), 0.8, 1e-18);
    EXPECT_NEAR(static_cast<double>(meet(Circle{3}, Circle{4}, {{5, 0}, 12}).sine), 1, 1e-18);
}

TEST(LineAndCircle, PutTheFartherRootFirst) {
    const Roots roots = meet(Line{at(0)}, Circle{5}, {{10, 3}, 15});
    ASSERT_EQ(roots.count, 2);
    EXPECT_EQ(roots.root[0].first.magnitude, 14);
    EXPECT_EQ(roots.root[1].first.magnitude, 6);
    EXPECT_EQ(roots.root[0].second.magnitude, 5);
    const Roots mirrored = meet(Line{at(180)}, Circle{5}, {{10, 3}, 15});
    EXPECT_EQ(mirrored.root[0].first.magnitude, -6);
    EXPECT_EQ(mirrored.root[1].first.magnitude, -14);
}

} // namespace
} // namespace tailpoint::kernel
