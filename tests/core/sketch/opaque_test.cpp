// SPDX-License-Identifier: MIT
#include "core/sketch/sketch.h"

#include <gtest/gtest.h>

#include <string>

namespace tailpoint {
namespace TAILPOINT_FILE {

TEST(AnOpaqueValue, IsSeenOnlyByWhoKnowsItsType) {
    const Opaque held = Opaque::of(std::string("note"));
    ASSERT_NE(held.as<std::string>(), nullptr);
    EXPECT_EQ(*held.as<std::string>(), "note");
    EXPECT_EQ(held.as<int>(), nullptr);
    EXPECT_EQ(Opaque().as<std::string>(), nullptr);
}

TEST(AnOpaqueValue, IsComparedByWhatItHolds) {
    EXPECT_EQ(Opaque(), Opaque());
    EXPECT_EQ(Opaque::of(3), Opaque::of(3));
    EXPECT_NE(Opaque::of(3), Opaque::of(4));
    EXPECT_NE(Opaque::of(3), Opaque::of(3L));
    EXPECT_NE(Opaque::of(0), Opaque());
    EXPECT_NE(Opaque(), Opaque::of(0));
}

TEST(AnOpaqueValue, IsSharedByCopies) {
    const Opaque held = Opaque::of(std::string("note"));
    const Opaque copy = held;
    EXPECT_EQ(copy, held);
    EXPECT_EQ(copy.as<std::string>(), held.as<std::string>());
}

TEST(AForce, IsAnotherWithOtherUnknownKeys) {
    Force one, other;
    EXPECT_EQ(one, other);
    one.unknownKeys = Opaque::of(1);
    EXPECT_NE(one, other);
    other.unknownKeys = Opaque::of(1);
    EXPECT_EQ(one, other);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
