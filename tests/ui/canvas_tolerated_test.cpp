// SPDX-License-Identifier: MIT
// Tolerances on the sheet: the region of a tip at rest, under a hand and while the hand rests.
#include "core/figure/tolerated.h"
#include "core/figure/words.h"
#include "tests/ui/canvas_fixture.h"
#include "ui/window/settings.h"

namespace tailpoint {

namespace TAILPOINT_FILE {

Sketch looseRaft() {
    Sketch sketch = raft();
    sketch.forces[0].magnitude.tolerance = plusMinus(5);
    sketch.forces[0].direction.tolerance = plusMinus(2);
    return sketch;
}

const Group* groupOf(const Canvas& canvas, std::string_view id) {
    for (const Group& group : canvas.figure().list.groups)
        if (group.id == id)
            return &group;
    return nullptr;
}

std::vector<tolerance::Outline> shadedBy(const Canvas& canvas) {
    const auto tolerated = canvas.figureOptions().tolerated;
    return tolerated && !tolerated->regions.empty() ? tolerated->regions.front().outlines
                                                    : std::vector<tolerance::Outline>();
}

std::vector<tolerance::Outline> exactOf(const Sketch& sketch) {
    return tolerance::tipRegions(sketch, solve(sketch), 0).front().outlines;
}

TEST_F(CanvasTest, TheTipsRegionIsShadedAndLeftOutOnDemand) {
    open(looseRaft());
    EXPECT_TRUE(groupOf(canvas, "region-R"));
    EXPECT_EQ(shadedBy(canvas), exactOf(document.sketch()));
    canvas.setShadesTips(false);
    EXPECT_FALSE(groupOf(canvas, "region-R"));
    canvas.setShadesTips(true);
    EXPECT_TRUE(groupOf(canvas, "region-R"));
    open(raft());
    EXPECT_FALSE(groupOf(canvas, "region-R"));
}

TEST_F(CanvasTest, TheTipsRegionIsTrueAgainOnceTheHandRests) {
    open(looseRaft());
    press(tipOf(0));
    move(polar(260, 35));
    ASSERT_TRUE(document.result().isMoving);
    const Snapshot moving = document.snapshot();
    EXPECT_EQ(shadedBy(canvas), moving->tolerated(0)->regions.front().outlines);
    EXPECT_TRUE(QTest::qWaitFor([&] { return shadedBy(canvas) == exactOf(document.sketch()); }, 3000));
    EXPECT_EQ(document.snapshot(), moving) << "the hand still holds it";
    EXPECT_TRUE(groupOf(canvas, "region-R"));
    move(polar(200, 40));
    EXPECT_EQ(shadedBy(canvas), document.result().tolerated(0)->regions.front().outlines)
        << "of what is on the sheet now";
    release(polar(200, 40));
    EXPECT_EQ(shadedBy(canvas), exactOf(document.sketch()));
}

TEST_F(CanvasTest, NothingIsShadedWhileTheAnswerIsWithheld) {
    open(looseRaft());
    document.withholdAnswer(true);
    settle();
    EXPECT_FALSE(groupOf(canvas, "region-R"));
    EXPECT_FALSE(canvas.figureOptions().tolerated);
    document.withholdAnswer(false);
    settle();
    EXPECT_TRUE(groupOf(canvas, "region-R"));
}

TEST(ToleratedSettings, ShadingIsOnAndRemembered) {
    Settings settings;
    EXPECT_TRUE(settings.shadesTips());
    settings.setShadesTips(false);
    EXPECT_FALSE(Settings().shadesTips());
    settings.setShadesTips(true);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
