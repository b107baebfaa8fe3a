// SPDX-License-Identifier: MIT
// Tolerances and limits in every output.
#include "core/figure/geometry.h"
#include "core/figure/tolerated.h"
#include "tests/support/loose.h"
#include "tests/ui/render/render_support.h"
#include "ui/render/tikz.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

FigureOptions knowing(const Sketch& given) {
    const Solved solved = solve(given);
    FigureOptions options;
    options.grid = false;
    options.tolerated = std::make_shared<const Tolerated>(
        Tolerated{tolerance::rangesOf(given, solved), tolerance::tipRegions(given, solved, 0)});
    return options;
}

/// R 509.747 to 529.901 by a dense grid over all inputs (Python), over 500 N.
Sketch overloaded() {
    Sketch made = sketch({loose(force("P", 340, 25), 5, 2), force("Q", 275, -40)});
    made.sum.limit = TypedForce{500, ForceUnit::N, {}};
    made.sum.permitted = Permitted{0, 10};
    return made;
}

TEST(ToleratedSvg, HasALabelsLinesInOneTextEachAnchoredLikeTheFirst) {
    const Sketch given = overloaded();
    const QByteArray svg = toSvg(listOf(given, knowing(given)), themeOf(ThemeName::paper), {});
    const auto elements = elementsOf(svg);
    int texts = 0;
    for (std::size_t i = 0; i < elements.size(); ++i) {
        if (elements[i].name != QLatin1String("text") ||
            !elements[i].text.startsWith(QStringLiteral("R = 520 N")))
            continue;
        ++texts;
        const auto x = elements[i].attributes.value(QLatin1String("x"));
        QStringList below;
        for (std::size_t j = i + 1; elements[j].name == QLatin1String("tspan"); ++j)
            if (elements[j].attributes.hasAttribute(QLatin1String("x"))) {
                EXPECT_EQ(elements[j].attributes.value(QLatin1String("x")), x);
                EXPECT_GT(elements[j].attributes.value(QLatin1String("dy")).toDouble(), 10);
                below << elements[j].text;
            }
        EXPECT_EQ(below,
                  (QStringList{QStringLiteral("509 to 530 N"), QStringLiteral("! over limit, 106.0 %")}));
        EXPECT_EQ(svg.count("font-weight=\"bold\" font-size"), 1);
    }
    EXPECT_EQ(texts, 1);
    EXPECT_TRUE(svg.contains("id=\"permitted-R\""));
    EXPECT_TRUE(svg.contains(">permitted<"));
}

TEST(ToleratedSvg, FillsTheTipsRegionAndDrawsItsOutline) {
    const Sketch given = overloaded();
    const Theme& paper = themeOf(ThemeName::paper);
    int filled = 0, outlined = 0;
    for (const Element& element : elementsOf(toSvg(listOf(given, knowing(given)), paper, {})))
        if (element.name == QLatin1String("polygon") && element.className == QLatin1String("region")) {
            ++filled;
            EXPECT_EQ(element.attributes.value(QLatin1String("fill")), paper.region.name());
        } else if (element.name == QLatin1String("polygon") && element.className == QLatin1String("sum") &&
                   element.attributes.value(QLatin1String("fill")) == QLatin1String("none") &&
                   element.attributes.value(QLatin1String("points")).count(QLatin1Char(' ')) > 3) {
            ++outlined;
        }
    EXPECT_EQ(filled, 1);
    EXPECT_EQ(outlined, 1);
}

TEST(ToleratedTikz, HasANodeALine) {
    const Sketch given = overloaded();
    const QByteArray tex = toTikz(listOf(given, knowing(given)), printTheme());
    EXPECT_EQ(tex.count("at ($(sum-label) + (0,-"), 2);
    EXPECT_TRUE(tex.contains("{509 to 530 N}"));
    EXPECT_TRUE(tex.contains("\\textbf{! over limit, 106.0 \\%}"));
    EXPECT_TRUE(tex.contains("\\definecolor{tp-region}"));
}

/// A ring from 90 to 110 N: outlines about its hollow middle, which is the sheet's own.
TEST(ToleratedPicture, LeavesAHollowMiddleHollow) {
    const Sketch given = sketch({loose(force("P", 100, 30), 10, 180)});
    const Solved solved = solve(given);
    const Construction construction = construct(given, solved, 0);
    const QtTextMeasure measure;
    FigureOptions options = knowing(given);
    std::vector<tolerance::Outline> ring(2);
    for (int i = 0; i < 72; ++i) {
        const double t = 5 * i * std::acos(-1.0) / 180;
        ring[0].emplace_back(110 * std::cos(t), 110 * std::sin(t));
        ring[1].emplace_back(90 * std::cos(t), -90 * std::sin(t));
    }
    options.tolerated =
        std::make_shared<const Tolerated>(Tolerated{options.tolerated->ranges, {{kSumIndex, ring, false}}});
    const View view = fittedView(given, solved, construction, options, 720, 480, &measure);
    const DisplayList list = compose(given, solved, construction, view, options, measure).list;
    for (const ThemeName name : {ThemeName::paper, ThemeName::slate, ThemeName::contrast}) {
        const Theme& theme = themeOf(name);
        const QImage image = toImage(list, theme, 2);
        const auto colourAt = [&](double newtons, double degrees) {
            const Point at = onCircle(view.origin, newtons * view.scale, degrees);
            return image.pixelColor(static_cast<int>(2 * at.x), static_cast<int>(2 * at.y));
        };
        for (const double degrees : {112.0, 248.0}) {
            EXPECT_EQ(colourAt(100, degrees), theme.region) << degrees;
            EXPECT_EQ(colourAt(84, degrees), theme.sheet) << degrees;
        }
        EXPECT_GT(std::abs(theme.region.lightnessF() - theme.sheet.lightnessF()), 0.1) << "seen in grey";
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
