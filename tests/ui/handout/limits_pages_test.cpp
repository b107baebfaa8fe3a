// SPDX-License-Identifier: MIT
// Limits on the pages of a handout: a bar, a word and a sentence each, as on the screen and in a browser.
#include "core/explain/limits.h"
#include "tests/support/sketches.h"
#include "ui/handout/handout_blocks.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

/// 6 kN at 75 and 6 kN at 140 degrees: 10.1207 kN, 101.21 per cent of 10 kN; 17.5 degrees off 90.
Result bridle() {
    Sketch sketch = testing::sketch({testing::force("P", 6, 75), testing::force("Q", 6, 140)});
    sketch.forceUnit = ForceUnit::kN;
    sketch.sum.limit = TypedForce{10, ForceUnit::kN, {}};
    sketch.sum.permitted = Permitted{90, 20};
    return resultOf(sketch);
}

const QSizeF kA4{595, 842};

TEST(LimitsOnPages, HaveABarAWordAndASentence) {
    std::vector<LimitShown> shown;
    const Handout handout = handoutOf(bridle(), {}, 0);
    for (const HandoutPages::Kept& group : handoutGroups(handout, {}, HandoutPages::columnWidth(kA4)))
        for (const HandoutPages::Block& block : group)
            if (block.limit)
                shown.push_back(*block.limit);
    ASSERT_EQ(shown.size(), 2U);
    EXPECT_EQ(verdictWord(shown[0].verdict), "! over");
    EXPECT_EQ(toText(shown[0].sentence), "R is over its limit: 101.3 % of 10 kN.");
    EXPECT_EQ(verdictWord(shown[1].verdict), "within");
}

/// Rows of pixels that are dark for most of the bar's width: it is painted, as far as the limit is used.
TEST(LimitsOnPages, AreSeenOnThePaper) {
    const Handout handout = handoutOf(bridle(), {}, 0);
    const HandoutPages pages(handout, {}, kA4);
    const double scale = HandoutPages::resolution() / 72.0;
    int barred = 0;
    for (int i = 0; i < pages.count(); ++i) {
        QImage page((kA4 * scale).toSize(), QImage::Format_RGB32);
        page.setDotsPerMeterX(qRound(HandoutPages::resolution() / 0.0254));
        page.setDotsPerMeterY(page.dotsPerMeterX());
        page.fill(Qt::white);
        QPainter painter(&page);
        pages.paint(painter, i);
        painter.end();
        const int left = qRound((kA4.width() - kHandoutWidth) / 2 * scale);
        for (int y = 0; y < page.height(); ++y) {
            int dark = 0;
            for (int x = left + 2; x < left + qRound(kLimitBar * scale); ++x)
                dark += page.pixelColor(x, y).lightness() < 140 ? 1 : 0;
            const int beyond = page.pixelColor(left + qRound((kLimitBar + 4) * scale), y).lightness();
            barred += dark > 0.7 * kLimitBar * scale && beyond > 200 ? 1 : 0;
        }
    }
    EXPECT_GE(barred, 8) << "two bars, each some pixels high";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
