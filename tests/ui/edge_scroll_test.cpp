// SPDX-License-Identifier: MIT
// What a drag at the sheet's edge does to the view, second by second.
#include "ui/canvas/edge_scroll.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

/// 960 x 660 pixels, a pixel a point, the common point in the middle, a pixel a newton.
SheetView sheetView() {
    SheetView sheet;
    sheet.resize({960, 660}, 1);
    sheet.set({960, 660, {480, 330}, 1});
    return sheet;
}

const QPointF kMiddle(500, 300);

/// Rests until something says stop, or for so many seconds; what happened on the way.
struct Rested {
    QPointF scrolled;
    int steps = 0;
    double firstStep = 0; ///< seconds
};
Rested rest(EdgeScroll& edge, SheetView& sheet, QPointF pointer, double seconds) {
    constexpr double kTick = 0.01;
    Rested all;
    for (double t = kTick; t < seconds + kTick / 2; t += kTick) {
        const EdgeScroll::Step step = edge.rest(sheet, pointer, kTick);
        sheet.panBy(step.scroll);
        all.scrolled += step.scroll;
        if (step.stepOut && all.steps++ == 0) {
            all.firstStep = t;
        }
    }
    return all;
}

TEST(EdgeScroll, PullsFasterTheFurtherThePointerIsOut) {
    EdgeScroll edge;
    SheetView sheet = sheetView();
    edge.begin(sheet, kMiddle, {});
    EXPECT_TRUE(edge.pull(sheet, kMiddle).isNull());
    EXPECT_TRUE(edge.pull(sheet, {941, 19}).isNull());
    EXPECT_EQ(edge.pull(sheet, {960, 300}), QPointF(-204, 0)) << "60 + 8 for each of 18 pixels";
    EXPECT_EQ(edge.pull(sheet, {0, 300}), QPointF(204, 0));
    EXPECT_EQ(edge.pull(sheet, {500, 670}), QPointF(0, -284)) << "28 pixels";
    EXPECT_EQ(edge.pull(sheet, {2000, -900}), QPointF(-900, 900)) << "no faster";
}

TEST(EdgeScroll, ADragThatBeginsAtTheEdgePullsOnlyWhereItGoesFurtherOrComesBack) {
    EdgeScroll edge;
    SheetView sheet = sheetView();
    edge.begin(sheet, {950, 300}, {});
    EXPECT_TRUE(edge.pull(sheet, {950, 300}).isNull());
    EXPECT_TRUE(edge.pull(sheet, {955, 400}).isNull());
    EXPECT_FALSE(edge.pull(sheet, {957, 400}).isNull()) << "seven pixels further";
    edge.begin(sheet, {950, 300}, {});
    EXPECT_TRUE(edge.pull(sheet, {900, 300}).isNull());
    EXPECT_FALSE(edge.pull(sheet, {950, 300}).isNull()) << "it has been away";
    EXPECT_FALSE(edge.pull(sheet, {500, 5}).isNull()) << "another edge";
}

TEST(EdgeScroll, ScrollsAtItsSpeedOnceItHasStartedGently) {
    EdgeScroll edge;
    SheetView sheet = sheetView();
    edge.begin(sheet, kMiddle, {});
    const Rested first = rest(edge, sheet, {960, 300}, 0.25);
    // Growing evenly over a quarter of a second: half of 0.25 s * 204 pixels/s, and half a tick more.
    EXPECT_NEAR(first.scrolled.x(), -25.5, 1.5);
    const Rested then = rest(edge, sheet, {960, 300}, 1);
    EXPECT_NEAR(then.scrolled.x(), -204, 0.01);
    EXPECT_EQ(then.scrolled.y(), 0);
    EXPECT_EQ(then.steps, 0);
}

TEST(EdgeScroll, TheCommonPointStaysOnTheSheetAndThenTheScaleStepsOut) {
    EdgeScroll edge;
    SheetView sheet = sheetView();
    edge.begin(sheet, kMiddle, {{0, 0}, {-100, 50}}); // the latter at 380 pixels: 356 to go
    const Rested all = rest(edge, sheet, {1100, 300}, 3);
    EXPECT_NEAR(all.scrolled.x(), -356, 1e-6) << "up to 24 pixels from the edge";
    EXPECT_GE(all.steps, 2);
    EXPECT_LE(all.steps, 5) << "three in two seconds";
    EXPECT_GT(all.firstStep, EdgeScroll::kStepTime) << "the first not at once";
}

TEST(EdgeScroll, HeldForLongTheScaleStepsOutThoughThereIsRoomToScroll) {
    EdgeScroll edge;
    SheetView sheet = sheetView();
    edge.begin(sheet, kMiddle, {{0, 0}});
    const Rested all = rest(edge, sheet, {943, 300}, 4); // 68 pixels a second: 456 pixels take longer
    EXPECT_LT(std::abs(all.scrolled.x()), 200);
    EXPECT_NEAR(all.firstStep, EdgeScroll::kLong + EdgeScroll::kStepTime, 0.05);
    edge.pull(sheet, kMiddle); // away from the edge it begins anew
    EXPECT_LT(rest(edge, sheet, {943, 300}, 1).scrolled.x(), -40);
}

TEST(EdgeScroll, WithoutTheCommonPointOnTheSheetItScrollsOnAndTheScaleStays) {
    EdgeScroll edge;
    SheetView sheet = sheetView();
    edge.begin(sheet, kMiddle, {});
    const Rested all = rest(edge, sheet, {480, 660}, 5);
    EXPECT_LT(all.scrolled.y(), -900);
    EXPECT_EQ(all.steps, 0);
}

TEST(EdgeScroll, TheScaleEndsSomewhere) {
    EdgeScroll edge;
    SheetView sheet = sheetView();
    edge.begin(sheet, kMiddle, {{0, 0}});
    sheet.set({960, 660, {480, 330}, 1.0 / EdgeScroll::kLeast});
    EXPECT_EQ(rest(edge, sheet, {1100, 300}, 6).steps, 0);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
