// SPDX-License-Identifier: MIT
// What stands beside a right value where given ones have tolerances. Ranges by a dense grid over all inputs
// (Python), each end rounded outward.
#include "core/explain/caution.h"
#include "tests/core/mark/marked.h"
#include "tests/support/loose.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Ranged = MarkedQuantity::Ranged;

/// R from 509.747 to 529.901, its direction from -5.0506 to -2.2263; the angle between the forces has no
/// range of its own.
Sketch raft() {
    return sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)});
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

TEST(MarkedRanges, StandBesideWhatIsRightWhateverTheVerdict) {
    const Marking marking = marked(raft(), {"R = 335", "theta_R = -3.6", "phi = 65"});
    EXPECT_EQ(quantity(marking, "R").rangeText, "509 to 530 N");
    EXPECT_EQ(quantity(marking, "theta_R").rangeText, "-5.1° to -2.2°");
    EXPECT_EQ(quantity(marking, "phi").ranged, Ranged::ofStated);
    const std::string text = toText(marking, Minus::ascii, 400);
    EXPECT_TRUE(has(text, "R = 335 N: slip; right is 520 N, within the tolerances 509 to 530 N\n")) << text;
    EXPECT_TRUE(has(text, "theta_R = -3.6°: right; within the tolerances -5.1° to -2.2°\n")) << text;
    EXPECT_TRUE(has(text, "phi = 65°: right; of the stated values\n")) << text;
    EXPECT_TRUE(has(text, "marked against the stated values")) << text;
}

/// 520 lies within the tolerances, and so does 515, which is no right answer all the same.
TEST(MarkedRanges, MakeNoOtherAnswerRight) {
    EXPECT_EQ(verdictOf(marked(raft(), {"R = 520"}), "R"), Verdict::right);
    EXPECT_NE(verdictOf(marked(raft(), {"R = 515"}), "R"), Verdict::right);
}

TEST(MarkedRanges, AreNoneWithoutTolerances) {
    const Marking marking =
        marked(sketch({force("P", 340, 25), force("Q", 275, -40)}), {"R = 520", "theta_R = -3.6"});
    for (const MarkedQuantity& one : marking.quantities)
        EXPECT_EQ(one.ranged, Ranged::none) << one.name;
    EXPECT_FALSE(has(toText(marking), "tolerances"));
}

TEST(MarkedCaution, StandsWhereTheSceneAsksForIt) {
    Sketch lifted = raft();
    EXPECT_TRUE(marked(lifted, {"R = 520"}).caution.empty());
    lifted.title = "Engine on a bridle";
    const Marking marking = marked(lifted, {"R = 520"});
    EXPECT_EQ(marking.caution, cautionLine());
    EXPECT_TRUE(has(toText(marking, Minus::ascii, 4000), std::string(cautionLine())));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
