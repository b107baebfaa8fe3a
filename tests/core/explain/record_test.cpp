// SPDX-License-Identifier: MIT
// What a sheet says of itself, so that it can be traced.
#include "core/explain/record.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Lines = std::vector<std::string>;
const std::string kAssumed =
    "Assumed: all forces act at one point and in one plane; lines are taut, straight "
    "and without weight";

TEST(ARecord, SaysFileDayAndProgramThenWhoThenWhatIsAssumed) {
    Sketch sketch = testing::sketch({force("P", 340, 25)});
    sketch.titleBlock = {"A. Moss", "B. Rell", "C"};
    EXPECT_EQ(recordLines(sketch, {"raft.json", "2026-11-29", "Tailpoint 0.1.0"}),
              (Lines{"raft.json; 2026-11-29; Tailpoint 0.1.0",
                     "drawn by A. Moss; checked by B. Rell; revision C", kAssumed + "."}));
}

TEST(ARecord, LeavesOutWhatIsNotGiven) {
    Sketch sketch = testing::sketch({force("P", 340, 25)});
    EXPECT_EQ(recordLines(sketch, {}), (Lines{kAssumed + "."}));
    sketch.titleBlock.checked = "B. Rell";
    EXPECT_EQ(recordLines(sketch, {"", "2026-11-29", ""}),
              (Lines{"2026-11-29", "checked by B. Rell", kAssumed + "."}));
}

TEST(ARecord, OfEquilibriumAssumesRest) {
    const Sketch sketch =
        testing::sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", 0, kToFind));
    EXPECT_EQ(assumptions(sketch), kAssumed + "; everything is at rest.");
}

TEST(ATitleBlock, IsRefusedWhereItCantBePrintedOrIsTooLong) {
    Sketch sketch = testing::sketch({force("P", 340, 25)});
    sketch.titleBlock.drawn = "a\nb";
    ASSERT_TRUE(firstFault(sketch));
    EXPECT_EQ(firstFault(sketch)->place, "drawn");
    EXPECT_EQ(firstFault(sketch)->code, FaultCode::unprintable);
    sketch.titleBlock = {"", "", std::string(81, 'x')};
    ASSERT_TRUE(firstFault(sketch));
    EXPECT_EQ(firstFault(sketch)->place, "revision");
    sketch.titleBlock.revision.pop_back();
    EXPECT_FALSE(firstFault(sketch));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
