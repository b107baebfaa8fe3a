// SPDX-License-Identifier: MIT
#include "tests/ui/render/contrast.h"
#include "tests/ui/render/render_support.h"
#include "ui/canvas/overlay.h"

#include <cmath>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

class ThemeTest : public ::testing::TestWithParam<ThemeName> {
protected:
    const Theme& theme() const { return themeOf(GetParam()); }
};

TEST_P(ThemeTest, TextStandsOutSevenToOne) {
    EXPECT_GE(contrast(theme().ink, theme().sheet), 7);
    EXPECT_GE(contrast(theme().given, theme().sheet), 7) << "labels of given forces";
    EXPECT_GE(contrast(theme().sum, theme().sheet), 7) << "the label of the sum";
    EXPECT_GE(contrast(theme().warning, theme().sheet), 7);
    EXPECT_GE(contrast(theme().ink, theme().highlight), 7) << "text on the highlight";
}

TEST_P(ThemeTest, TextOfTheWindowStandsOutToo) {
    for (const QColor& ground : {theme().panel, theme().bar, theme().accentGround}) {
        EXPECT_GE(contrast(theme().ink, ground), 7);
        EXPECT_GE(contrast(theme().sum, theme().panel), 7);
    }
    EXPECT_GE(contrast(theme().quietInk, theme().panel), 7);
    EXPECT_GE(contrast(theme().warning, theme().panel), 7);
}

TEST_P(ThemeTest, StrokesStandOutThreeToOne) {
    for (const Role role : {Role::axis, Role::given, Role::sum, Role::construction, Role::arc, Role::locus,
                            Role::leader, Role::titleblock, Role::point})
        for (const QColor& ground : {theme().sheet, theme().region})
            EXPECT_GE(contrast(theme().colour(role), ground), 3) << nameOf(role);
}

/// Edges of what is selected, lit or under the pointer, and the frame of the sheet that has the keys
/// (WCAG 2.2, 1.4.11): against the sheet, and where the edge runs over a tip's region.
TEST_P(ThemeTest, MarksOfTheHandStandOutThreeToOne) {
    for (const QColor& ground : {theme().sheet, theme().region}) {
        EXPECT_GE(contrast(selectedHighlight(theme()).edge, ground), 3);
        EXPECT_GE(contrast(hoverHighlight(theme()).edge, ground), 3);
    }
    EXPECT_GE(contrast(theme().given, theme().sheet), 3) << "the frame round the sheet";
}

TEST_P(ThemeTest, WhereATipCanLieIsSeenInGrey) {
    EXPECT_GE(contrast(theme().region, theme().sheet), 1.3);
}

TEST_P(ThemeTest, GridStaysQuiet) {
    EXPECT_LT(contrast(theme().grid, theme().sheet), 1.5);
}

/// Colour vision without one kind of cone, linear RGB.
/// Source: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, 'A Physiologically-based Model for Simulation
/// of Color Vision Deficiency', IEEE TVCG 15 (2009), matrices for severity 1.0 (from memory).
using Matrix = std::array<std::array<double, 3>, 3>;
constexpr std::array<Matrix, 3> kDeficient{{
    {{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}},
    {{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}},
    {{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}},
}};

std::array<double, 3> linearOf(const QColor& colour) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return {linear(colour.redF()), linear(colour.greenF()), linear(colour.blueF())};
}

std::array<double, 3> seenBy(const Matrix& m, const QColor& colour) {
    const auto rgb = linearOf(colour);
    std::array<double, 3> out{};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t k = 0; k < 3; ++k)
            out[i] += m[i][k] * rgb[k];
    return out;
}

/// CIE 1976 L*a*b*, white point D65. Source: CIE 15 (from memory).
std::array<double, 3> labOf(const std::array<double, 3>& rgb) {
    const double x = (0.4124564 * rgb[0] + 0.3575761 * rgb[1] + 0.1804375 * rgb[2]) / 0.95047;
    const double y = 0.2126729 * rgb[0] + 0.7151522 * rgb[1] + 0.0721750 * rgb[2];
    const double z = (0.0193339 * rgb[0] + 0.1191920 * rgb[1] + 0.9503041 * rgb[2]) / 1.08883;
    const auto f = [](double t) { return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116; };
    return {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
}

/// CIEDE2000. Source: G. Sharma, W. Wu, E. N. Dalal, 'The CIEDE2000 Color-Difference Formula: Implementation
/// Notes, Supplementary Test Data, and Mathematical Observations', Color Res. Appl. 30 (2005) 21-30.
double chromaWeight(double c) {
    const double seventh = std::pow(c, 7);
    return std::sqrt(seventh / (seventh + std::pow(25.0, 7)));
}

double difference(std::array<double, 3> one, std::array<double, 3> two) {
    constexpr double degree = M_PI / 180;
    const double g = 1.5 - 0.5 * chromaWeight((std::hypot(one[1], one[2]) + std::hypot(two[1], two[2])) / 2);
    one[1] *= g;
    two[1] *= g;
    const double c1 = std::hypot(one[1], one[2]), c2 = std::hypot(two[1], two[2]);
    const auto hue = [](const std::array<double, 3>& lab) {
        const double h = std::atan2(lab[2], lab[1]) / degree;
        return h < 0 ? h + 360 : h;
    };
    const double h1 = hue(one), h2 = hue(two);
    double turn = h2 - h1, middle = (h1 + h2) / 2;
    if (std::abs(turn) > 180) {
        turn += turn > 0 ? -360 : 360;
        middle += middle < 180 ? 180 : -180;
    }
    if (c1 * c2 == 0) {
        turn = 0;
        middle = h1 + h2;
    }
    const double light = (one[0] + two[0]) / 2 - 50, chroma = (c1 + c2) / 2;
    const double t = 1 - 0.17 * std::cos((middle - 30) * degree) + 0.24 * std::cos(2 * middle * degree) +
                     0.32 * std::cos((3 * middle + 6) * degree) - 0.20 * std::cos((4 * middle - 63) * degree);
    const double turned =
        -2 * chromaWeight(chroma) * std::sin(60 * degree * std::exp(-std::pow((middle - 275) / 25, 2)));
    const double l = (two[0] - one[0]) / (1 + 0.015 * light * light / std::sqrt(20 + light * light));
    const double c = (c2 - c1) / (1 + 0.045 * chroma);
    const double h = 2 * std::sqrt(c1 * c2) * std::sin(turn * degree / 2) / (1 + 0.015 * chroma * t);
    return std::sqrt(l * l + c * c + h * h + turned * c * h);
}

/// Source: Sharma, Wu, Dalal (2005), table 1, pairs 1, 4, 7, 17 and 25 (from memory).
TEST(ColourDifference, IsThatOfThePublishedPairs) {
    struct Pair {
        std::array<double, 3> one, two;
        double difference;
    };
    const Pair pairs[] = {{{50, 2.6772, -79.7751}, {50, 0, -82.7485}, 2.0425},
                          {{50, -1.3802, -84.2814}, {50, 0, -82.7485}, 1.0000},
                          {{50, 0, 0}, {50, -1, 2}, 2.3669},
                          {{50, 2.5, 0}, {73, 25, -18}, 27.1492},
                          {{60.2574, -34.0099, 36.2677}, {60.4626, -34.1751, 39.4387}, 1.2644}};
    for (const Pair& pair : pairs)
        EXPECT_NEAR(difference(pair.one, pair.two), pair.difference, 5e-5);
}

/// What has to be told apart at a glance. Arcs, axis and leaders are thin and neutral like the construction.
TEST_P(ThemeTest, RolesStayApartForEveryKindOfColourVision) {
    // High contrast is black with one accent by plan: there weight, dash and head tell the others apart.
    const bool black = GetParam() == ThemeName::contrast;
    const std::vector<Role> roles =
        black ? std::vector{Role::given, Role::sum}
              : std::vector{Role::given, Role::sum, Role::construction, Role::locus};
    constexpr double plainlySeen = 10; // CIEDE2000; about 1 is just noticeable side by side
    std::vector<Matrix> eyes(kDeficient.begin(), kDeficient.end());
    eyes.push_back({{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}});
    for (std::size_t i = 0; i < roles.size(); ++i)
        for (std::size_t k = i + 1; k < roles.size(); ++k)
            for (std::size_t eye = 0; eye < eyes.size(); ++eye)
                EXPECT_GT(difference(labOf(seenBy(eyes[eye], theme().colour(roles[i]))),
                                     labOf(seenBy(eyes[eye], theme().colour(roles[k])))),
                          plainlySeen)
                    << nameOf(roles[i]) << " and " << nameOf(roles[k]) << ", eye " << eye;
}

TEST_P(ThemeTest, EveryInkOfALabelStandsOutSevenToOne) {
    const Sketch given = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    for (const Sketch& any : {raft(), given})
        for (const Group& group : listOf(any).groups)
            for (const Item& item : group.items)
                if (const auto* text = std::get_if<Text>(&item)) {
                    EXPECT_GE(contrast(theme().colour(text->ink), theme().sheet), 7) << group.id;
                }
}

INSTANTIATE_TEST_SUITE_P(Themes, ThemeTest,
                         ::testing::Values(ThemeName::paper, ThemeName::slate, ThemeName::contrast),
                         [](const auto& instance) { return nameOf(instance.param).toStdString(); });

TEST(Themes, AreFoundByName) {
    for (const ThemeName name : {ThemeName::paper, ThemeName::slate, ThemeName::contrast})
        EXPECT_EQ(themeFrom(nameOf(name)), name);
    EXPECT_FALSE(themeFrom(QStringLiteral("Paper")));
    EXPECT_FALSE(themeFrom(QString()));
}

TEST(Roles, AreToldApartWithoutColourByWeightDashAndHead) {
    const Sketch given = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    const DisplayList list = listOf(given);
    struct Line {
        double width;
        Dash dash;
    };
    std::map<Role, Line> lines;
    for (const Group& group : list.groups)
        for (const Item& item : group.items)
            if (const auto* path = std::get_if<Path>(&item); path && path->points.size() == 2)
                lines.try_emplace(path->role, Line{path->width, path->dash});
    EXPECT_EQ(lines.at(Role::given).dash, Dash::dotted); // the other answer comes first
    EXPECT_EQ(lines.at(Role::sum).dash, Dash::solid);
    EXPECT_EQ(lines.at(Role::construction).dash, Dash::dashed);
    EXPECT_EQ(lines.at(Role::axis).dash, Dash::chain);
    EXPECT_EQ(lines.at(Role::locus).dash, Dash::chainTwoDots);
    EXPECT_GT(lines.at(Role::sum).width, 2 * lines.at(Role::construction).width);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
