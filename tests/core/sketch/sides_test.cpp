// SPDX-License-Identifier: MIT
// Which three vectors make the triangle of a question, and which is opposite to which letter.
#include "core/sketch/sides.h"
#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

struct Row {
    const char* question;
    Sketch sketch;
    std::array<VectorId, 3> side;
    bool loop;
};

const VectorId p = forceVector(0), q = forceVector(1), s = forceVector(2), r = kSumVector, k = kKnownVector;

TEST(Sides, AreTheQuestionsOwn) {
    const Row rows[] = {
        {"resultant of two", sketch({force("P", 1, 0), force("Q", 1, 90)}), {p, q, r}, false},
        {"missing force, the first",
         sketch({force("P", kToFind, kToFind), force("Q", 1, 90)}, force("R", 2, 0)),
         {q, p, r},
         false},
        {"equilibrant",
         balanced({force("P", 1, 0), force("Q", kToFind, kToFind), force("S", 1, 90)}),
         {p, s, q},
         true},
        {"oblique components",
         sketch({force("P", kToFind, 0), force("Q", kToFind, 90)}, force("R", 2, 30)),
         {p, q, r},
         false},
        {"the same beside a known force",
         sketch({force("P", kToFind, 0), force("Q", 1, 45), force("S", kToFind, 90)}, force("R", 2, 30)),
         {p, s, k},
         false},
        {"two sought in equilibrium with one",
         balanced({force("P", kToFind, 0), force("Q", 1, 200), force("S", kToFind, 90)}),
         {p, s, q},
         true},
        {"a force and the sum",
         sketch({force("P", 1, 0), force("Q", kToFind, 90)}, force("R", kToFind, 30)),
         {p, q, r},
         false},
        {"all given", sketch({force("P", 1, 0), force("Q", 1, 90)}, force("R", 1.4, 45)), {p, q, r}, false},
        {"all given, in equilibrium",
         balanced({force("P", 1, 0), force("Q", 1, 120), force("S", 1, 240)}),
         {p, q, s},
         true},
    };
    for (const Row& row : rows) {
        const auto sides = sidesOf(row.sketch);
        ASSERT_TRUE(sides) << row.question;
        EXPECT_TRUE(sides->side == row.side) << row.question;
        EXPECT_EQ(sides->loop, row.loop) << row.question;
    }
}

TEST(Sides, AreNoneWhereNoTriangleJoinsThem) {
    const Sketch none[] = {
        sketch({force("P", 1, 0), force("Q", 1, 90), force("S", 1, 45)}),
        sketch({force("P", kToFind, kToFind)}, force("R", 1, 0)),
        balanced({force("P", 1, 0), force("Q", 1, 90), force("S", 1, 45), force("T", kToFind, kToFind)}),
        sketch({force("P", kToFind, 0), force("Q", kToFind, 90)}),
        sketch({}),
    };
    for (const Sketch& sketch : none)
        EXPECT_FALSE(sidesOf(sketch));
}

TEST(Sides, CountAZeroForceAsKnown) {
    EXPECT_FALSE(isToFind(force("P", 0, kToFind)));
    EXPECT_TRUE(isToFind(force("P", 1, kToFind)));
    EXPECT_TRUE(isToFind(force("P", kToFind, 10)));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
