#include "tests/ui/render/render_support.h"

#include <cmath>

namespace tailpoint::testing {
namespace {

/// Source: WCAG 2.2 (W3C, 2023), definitions of relative luminance and contrast ratio.
double luminance(const QColor& colour) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double one = luminance(a), two = luminance(b);
    return (std::max(one, two) + 0.05) / (std::min(one, two) + 0.05);
}

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
        EXPECT_GE(contrast(theme().colour(role), theme().sheet), 3) << nameOf(role);
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

TEST_P(ThemeTest, GivenAndSumStayApartForEveryKindOfColourVision) {
    for (std::size_t kind = 0; kind < kDeficient.size(); ++kind) {
        const auto given = labOf(seenBy(kDeficient[kind], theme().given));
        const auto sum = labOf(seenBy(kDeficient[kind], theme().sum));
        // Ten is plainly seen; weight and head tell them apart besides.
        EXPECT_GT(std::hypot(given[0] - sum[0], given[1] - sum[1], given[2] - sum[2]), 10) << "kind " << kind;
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

} // namespace
} // namespace tailpoint::testing
