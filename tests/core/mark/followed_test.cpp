// SPDX-License-Identifier: MIT
// What follows from a wrong value, by whichever equation, and what a finding that something right speaks
// against is worth. Numbers by Python from the components of the vectors.
#include "tests/core/mark/marked.h"

#include <algorithm>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// Python: A = 253.15 N, B = 220.68 N; the triangle's angles 35° opposite to A, 30° to B.
Sketch oblique() {
    return sketch({force("A", kToFind, 50), force("B", kToFind, -15)}, force("R", 400, 20));
}
/// Python: P = 180.28 with theta_Q = -10.28, P = 512.54 with -89.72.
Sketch secondBoat() {
    return sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
}
/// Python: 519.86019 N at -3.64794°.
Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}
/// Python: theta_P = 49.84°, theta_Q = -30.99° (44.84° and 35.99° off R), or -39.84° and 40.99°.
Sketch twoDirections() {
    return sketch({force("P", 250, kToFind), force("Q", 300, kToFind)}, force("R", 420, 5));
}

bool isNamed(const Marking& marking, const std::string& id) {
    return std::any_of(marking.slips.begin(), marking.slips.end(), [&](const Finding& one) {
        return one.id == id || std::find(one.also.begin(), one.also.end(), id) != one.also.end();
    });
}

struct Followed {
    const char *name, *equation;
    Sketch sketch;
    std::vector<std::string> answers;
    std::string root, follower;
};

TEST(MarkFollowed, AWrongMagnitudeIsCarriedOnByEveryEquation) {
    const Followed all[] = {
        // (400 cos 20 - 200 cos 50) / cos 15 = 256.044
        {"B from A", "along x", oblique(), {"A = 200", "B = 256"}, "A", "B"},
        // (200 sin 50 - 400 sin 20) / sin 15 = 63.3679
        {"B from A", "along y", oblique(), {"A = 200", "B = 63.4"}, "A", "B"},
        // 200 sin 30 / sin 35 = 174.345
        {"B from A", "law of sines", oblique(), {"A = 200", "B = 174"}, "A", "B"},
        // atan2(400 sin 10 - 400 sin 40, 400 cos 10 - 400 cos 40) = -65
        {"theta_Q from P", "both sums", secondBoat(), {"P = 400", "theta_Q = -65.0"}, "P", "theta_Q"},
        // arccos((400 cos 10 - 400 cos 40) / 260) = 70.3326, below the axis
        {"theta_Q from P", "along x", secondBoat(), {"P = 400", "theta_Q = -70.3"}, "P", "theta_Q"},
        // arcsin((400 sin 10 - 400 sin 40) / 260) = -46.1994
        {"theta_Q from P", "along y", secondBoat(), {"P = 400", "theta_Q = -46.2"}, "P", "theta_Q"},
        // 10 - arcsin(400 sin 30 / 260) = 10 - 50.2849 = -40.2849
        {"theta_Q from P", "law of sines", secondBoat(), {"P = 400", "theta_Q = -40.3"}, "P", "theta_Q"},
        // 10 - arccos((260² + 400² - 400²) / (2 · 260 · 400)) = 10 - 71.0344 = -61.0344
        {"theta_Q from P", "law of cosines", secondBoat(), {"P = 400", "theta_Q = -61.0"}, "P", "theta_Q"},
        // arccos(518.80687 / 560) = 22.1134
        {"theta_R from R", "along x", raft(), {"R = 560", "theta_R = -22.1"}, "R", "theta_R"},
        // 518.80687 / cos 12.3 = 530.996: of two that go for each other the later one follows
        {"R or theta_R", "along x", raft(), {"R = 531", "theta_R = -12.3"}, "R", "theta_R"},
    };
    for (const Followed& one : all) {
        const Marking marking = marked(one.sketch, one.answers);
        EXPECT_EQ(verdictOf(marking, one.follower), Verdict::follows)
            << one.name << " " << one.equation << "\n"
            << toText(marking);
        EXPECT_NE(verdictOf(marking, one.root), Verdict::follows) << one.name << " " << one.equation;
        EXPECT_EQ(quantity(marking, one.follower).followsFrom, std::vector<std::string>{one.root});
        EXPECT_EQ(marking.points, 1) << one.name << " " << one.equation;
    }
}

TEST(MarkFollowed, OfTwoThatBalanceTheOneWithASlipIsTheFirst) {
    // Python: B with the other side's angle, 400 sin 35 / sin 115 = 253.149;
    // then A = (400 cos 20 - 253.149 cos 15) / cos 50 = 204.358
    const Marking marking = marked(oblique(), {"A = 204", "B = 253"});
    EXPECT_EQ(verdictOf(marking, "B"), Verdict::slip) << toText(marking);
    EXPECT_EQ(verdictOf(marking, "A"), Verdict::follows) << toText(marking);
    EXPECT_EQ(marking.points, 1);
}

TEST(MarkFollowed, ARightValueOfAnotherUnknownIsNotFollowed) {
    const Marking marking = marked(oblique(), {"A = 253", "B = 256"});
    EXPECT_NE(verdictOf(marking, "B"), Verdict::follows);
}

TEST(MarkFollowed, ASlipThatSpeaksAgainstSomethingRightStandsBehindAllOthers) {
    // by hand: all forces and the resultant added make K_x = -519, but then S would be wrong as well
    const Sketch missing =
        sketch({force("P", 340, 25), force("Q", 275, -40), force("S", kToFind, kToFind)}, force("R", 700, 0));
    const Marking marking = marked(missing, {"S = 184", "theta_S = 10.3", "K_x = -519"});
    ASSERT_FALSE(marking.slips.empty());
    EXPECT_EQ(marking.slips.front().id, "opposite") << toText(marking);
    EXPECT_FALSE(isNamed(marking, "resultant-as-a-force")) << toText(marking);
    // nothing else gives 335: it is told, and weakly
    const Marking alone = marked(raft(), {"R = 335", "theta_R = -3.6"});
    ASSERT_FALSE(alone.slips.empty());
    EXPECT_EQ(alone.slips.front().id, "supplement-in-cosines");
    EXPECT_FALSE(alone.slips.front().isStrong);
}

TEST(MarkFollowed, OneSlipInBothDirectionsCostsOnce) {
    // by hand: the triangle's angles stated as directions, 44.84° at P and 35.99° at Q
    const Marking both = marked(twoDirections(), {"theta_P = 44.8", "theta_Q = 36.0"});
    ASSERT_FALSE(both.slips.empty());
    EXPECT_EQ(both.slips.front().id, "referral-forgotten") << toText(both);
    EXPECT_EQ(both.slips.front().explains.size(), 2U) << toText(both);
    EXPECT_EQ(both.points, 1) << toText(both);
    // Python: sines stated as angles, in two lines: 5 + sin 44.8425° = 5.7052, 5 - sin 35.9893° = 4.4123
    const Marking twice = marked(twoDirections(), {"theta_P = 5.7", "theta_Q = 4.4"});
    EXPECT_EQ(verdictOf(twice, "theta_P"), Verdict::slip) << toText(twice);
    EXPECT_EQ(verdictOf(twice, "theta_Q"), Verdict::follows) << toText(twice);
    EXPECT_EQ(twice.points, 1);
}

TEST(MarkFollowed, FewerFiguresOrCutOffButNotBothAtOnce) {
    // by hand: 519.86 to two figures is 520; 519 is cut off; 510 is both
    EXPECT_EQ(verdictOf(marked(raft(), {"R = 519"}), "R"), Verdict::rounded);
    EXPECT_NE(verdictOf(marked(raft(), {"R = 510"}), "R"), Verdict::rounded);
    // 184.19: two figures are 180, cut off 184; 278.48: two figures are 280, cut off 278, both 270
    const Sketch five = sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 160, 118),
                                force("T", 210, -152.5), force("U", 95, 90)});
    for (const char* size : {"280", "278"})
        EXPECT_TRUE(marked(five, {std::string("R = ") + size, "theta_R = 22.4"}).isRight()) << size;
    EXPECT_FALSE(marked(five, {"R = 270", "theta_R = 22.4"}).isRight());
}

TEST(MarkFollowed, ValuesOnTheWayAreToldToo) {
    const auto told = [](const Sketch& asked, const std::string& answer, const std::string& id) {
        const Marking marking = marked(asked, {answer});
        EXPECT_TRUE(isNamed(marking, id)) << answer << "\n" << toText(marking);
    };
    told(oblique(), "gamma = 65", "supplement");
    told(oblique(), "beta = 50", "axis-angle-in-triangle");  // the direction of A in place of 50 - 20
    told(oblique(), "alpha = 15", "axis-angle-in-triangle"); // that of B in place of 20 + 15
    told(oblique(), "alpha = 30", "answers-exchanged");
    told(secondBoat(), "beta = 40", "axis-angle-in-triangle"); // 40 in place of 40 - 10
}

TEST(MarkFollowed, AReadingMayEndInANegativeMagnitude) {
    // Python: R at -20°: A = 400 sin(-5) / sin 65 = -38.466, B = 400 sin 70 / sin 65 = 414.734
    for (const char* size : {"A = -38.5", "A = 38.5"}) {
        const Marking marking = marked(oblique(), {size, "B = 415"});
        EXPECT_TRUE(isNamed(marking, "sign-of-direction")) << toText(marking);
        ASSERT_FALSE(marking.slips.empty());
        EXPECT_EQ(marking.slips.front().gives.front().first, "A");
        EXPECT_NEAR(marking.slips.front().gives.front().second, -38.466, 0.001);
    }
}

TEST(MarkFollowed, AFindingNamesItsNumbersAsTheyWereGiven) {
    const Marking marking = marked(raft(), {"R = -335", "theta_R = -23.1"});
    ASSERT_FALSE(marking.slips.empty());
    EXPECT_EQ(toText(marking.slips.front().about), "R = −335 N, θ_R = −23.1°");
    EXPECT_NE(toText(marking).find("  R = -335 N, θ_R = -23.1°:\n    "), std::string::npos)
        << toText(marking);
}

TEST(MarkFollowed, OnSlopesAnAngleInRadiansIsAMatterOfTheUnit) {
    // by hand: 260 N along 12 : 5 and 150 N along 3 : -4 make (330, -20): -3.468° = -0.060530 rad
    const Marking marking =
        marked(sketch({slope("P", 260, 12, 5), slope("Q", 150, 3, -4)}), {"R = 331", "theta_R = -0.0605"});
    EXPECT_EQ(verdictOf(marking, "theta_R"), Verdict::unit) << toText(marking);
    EXPECT_EQ(marking.slips.front().id, "radians-for-degrees");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
