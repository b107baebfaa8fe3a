// SPDX-License-Identifier: MIT
// What is measured is what is painted: labels are kept apart by their measured boxes alone.
#include "core/figure/words.h"
#include "tests/core/figure/any_figure.h"
#include "tests/ui/render/render_support.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

constexpr double kPixels = 8; ///< a point; fine enough to see a tenth of a point

Text laidOut(const std::vector<Run>& runs, Face face, double size) {
    const TextExtent e = QtTextMeasure().measure(runs, face, size);
    Text text;
    text.face = face;
    text.size = size;
    text.runs = runs;
    text.baseline = {200, 60};
    text.box = {200 - e.width / 2, 60 - e.ascent, e.width, e.ascent + e.descent};
    return text;
}

/// Where the painted ink lies, in points; the faintest rim of a letter's antialiasing doesn't count.
Box inkOf(const Text& text, const Theme& theme) {
    DisplayList list;
    list.width = 400;
    list.height = 120;
    Group& group = list.groups.emplace_back();
    group.items.emplace_back(text);
    const QImage image = toImage(list, theme, kPixels);
    const int ground = qGray(theme.sheet.rgb()), ink = qGray(theme.colour(text.ink).rgb());
    int left = image.width(), right = -1, top = image.height(), bottom = -1;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (std::abs(qGray(image.pixel(x, y)) - ground) > std::abs(ink - ground) / 4) {
                left = std::min(left, x);
                right = std::max(right, x + 1);
                top = std::min(top, y);
                bottom = std::max(bottom, y + 1);
            }
    return {left / kPixels, top / kPixels, (right - left) / kPixels, (bottom - top) / kPixels};
}

class PaintTest : public ::testing::TestWithParam<ThemeName> {};

TEST_P(PaintTest, InkLiesWithinItsMeasuredBox) {
    const Theme& theme = themeOf(GetParam());
    const std::vector<Runs> labels{
        valueRuns(symbolOfName("P"), "340 N"), valueRuns(symbolOfName("F12"), "1.25 kN"),
        valueRuns(symbolOfName("f"), "7 N"),   valueRuns(symbolOfName("jy"), "99.9 lbf"),
        symbolRuns(symbolOfName("W")),         symbolRuns(symbolOfName("f")),
        symbolRuns(symbolOfName("T_max")),     plainRuns("115.0\u00B0"),
        plainRuns("\u221240.0\u00B0"),         symbolRuns(symbolOfName("\u00C4g")),
        plainRuns("line of action of Q")};
    constexpr double rim = 1.2 / kPixels; // the pixel that a letter's edge lies in
    for (const auto& runs : labels)
        for (const Face face : {Face::serif, Face::sans})
            for (const double size : {8.0, 9.5, 11.5, 14.0, 20.0, 28.0, 40.0}) {
                const Text text = laidOut(runs, face, size);
                const Box ink = inkOf(text, theme);
                ASSERT_GT(ink.width, 0);
                const Box& box = text.box;
                EXPECT_GE(ink.left, box.left - rim) << plainText(runs) << " at " << size;
                EXPECT_LE(ink.right(), box.right() + rim) << plainText(runs) << " at " << size;
                EXPECT_GE(ink.top, box.top - rim) << plainText(runs) << " at " << size;
                EXPECT_LE(ink.bottom(), box.bottom() + rim) << plainText(runs) << " at " << size;
                // And the box is no larger than a reader would draw it.
                EXPECT_LE(box.width - ink.width, 0.6 * size) << plainText(runs) << " at " << size;
            }
}

INSTANTIATE_TEST_SUITE_P(Themes, PaintTest,
                         ::testing::Values(ThemeName::paper, ThemeName::slate, ThemeName::contrast),
                         [](const auto& instance) { return nameOf(instance.param).toStdString(); });

/// What is drawn on the sheet with Qt's fonts, as the window draws it.
TEST(Labels, TouchNothingWithTheFontsThatPaint) {
    constexpr std::uint64_t seed = 4711;
    int figures = 0;
    for (std::uint64_t i = 0; i < 600; ++i) {
        const AnyFigure any = anyFigure(seed, i);
        const QtTextMeasure measure;
        const Solved solved = solve(any.sketch);
        const Construction built = construct(any.sketch, solved, any.options.solution);
        const View view = fittedView(any.sketch, solved, built, any.options, any.width, any.height, &measure);
        const DisplayList list = compose(any.sketch, solved, built, view, any.options, measure).list;
        for (const std::string& touching : collisions(list))
            ADD_FAILURE() << "seed " << seed << " case " << i << ": " << touching;
        ++figures;
    }
    EXPECT_EQ(figures, 600);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
