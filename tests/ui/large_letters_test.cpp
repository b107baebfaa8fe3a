// SPDX-License-Identifier: MIT
// The sheet of a window of 1366 by 768 (and of 800 by 600) pixels with letters of twice the size: Qt then
// makes everything twice as large, so that a canvas of half as many pixels is left beside the panel.
#include "tests/core/figure/wedges.h"
#include "tests/ui/lecture/lecture_support.h"
#include "ui/canvas/canvas.h"

namespace tailpoint {

namespace TAILPOINT_FILE {

namespace drawn = tailpoint::testing;

class LargeLetters : public ::testing::TestWithParam<QSize> {};

TEST_P(LargeLetters, LeaveEveryAnglesValueBetweenItsLegsOrLedToItsArc) {
    int inside = 0, led = 0;
    for (const Sample& sample : allSamples()) {
        SketchDocument document;
        document.replace(sample.result.sketch, {});
        Canvas canvas(document);
        canvas.setAnimated(false);
        canvas.resize(GetParam());
        canvas.show();
        canvas.fit();
        for (const Group& group : canvas.figure().list.groups) {
            const Text* value = drawn::labelOf(group);
            const auto wedge = drawn::wedgeOf(group);
            if (!drawn::isAngle(group) || !value || !wedge)
                continue;
            if (const Path* leader = drawn::leaderOf(group)) {
                ++led;
                EXPECT_TRUE(wedge->radius == 0 || drawn::isOnArc(*wedge, leader->points[0]))
                    << sample.name << ": the leader of " << group.id << " misses its arc";
            } else {
                ++inside;
                EXPECT_TRUE(drawn::standsIn(*wedge, value->box))
                    << sample.name << ": the value of " << group.id;
            }
        }
    }
    EXPECT_GT(inside, 20);
    EXPECT_GT(inside + led, 100); // there is room between the legs for some of them alone
}

INSTANTIATE_TEST_SUITE_P(Windows, LargeLetters, ::testing::Values(QSize(383, 292), QSize(280, 208)));

} // namespace TAILPOINT_FILE

} // namespace tailpoint
