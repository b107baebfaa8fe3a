// SPDX-License-Identifier: MIT
// Triangles of trigonometry books as questions of two unknown scalars: the law of sines with two sides (line
// and circle), with two angles (two lines), three sides (two circles), two sides with their angle (the
// polygon closed).
#include "tests/support/printed.h"

#include "core/quantity/angle.h"

#include <algorithm>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

const char* const kPrecalculus = "OpenStax, Precalculus, 2e, ";

std::string precalculus(const char* place) {
    return kPrecalculus + std::string(place);
}

// --- two sides and an angle opposite to one of them ---

struct Found {
    const char *b, *c,
        *side; ///< angle opposite to the other side, third angle, third side; empty: not printed
};
struct SideSideAngle {
    std::string source;
    double angle, opposite, other;
    std::vector<Found> triangles;
};

const SideSideAngle kSideSideAngle[] = {
    {precalculus("example 8.1.2"), 35, 6, 8, {{"49.9", "95.1", "10.4"}, {"130.1", "14.9", "2.7"}}},
    {precalculus("example 8.1.3"), 85, 12, 9, {{"48.3", "46.7", "8.8"}}},
    {precalculus("example 8.1.4"), 50, 4, 10, {}},
    {precalculus("sec. 8.1, exercise 17"), 35, 12, 17, {{"54.3", "90.7", "20.9"}, {"125.7", "19.3", "6.9"}}},
    {precalculus("sec. 8.1, exercise 21"), 10, 5, 13, {{"26.8", "143.2", "17.3"}, {"153.2", "16.8", "8.3"}}},
    {precalculus("sec. 8.1, exercise 23"), 119, 8.2, 11.3, {}},
    {precalculus("sec. 8.1, exercise 39"), 22, 5, 13, {{"76.9", "", ""}, {"103.1", "", ""}}},
    {precalculus("sec. 8.1, exercise 43"), 93, 32.6, 24.1, {{"47.6", "39.4", "20.7"}}},
    {precalculus("sec. 8.2, exercise 15"), 50, 45, 105, {}},
    {"Sullivan, Precalculus, sec. 8.2, example 4", 40, 3, 2, {{"25.4", "114.6", ""}}},
    {"Sullivan, Precalculus, sec. 8.2, example 3", 50, 1, 2, {}},
};

// The other side lies along +x, the third side is the sum, the opposite side leads from tip to tip.
Sketch sideSideAngle(double angle, double opposite, double other) {
    return sketch({force("K", other, 0), force("Q", opposite, kToFind)}, force("R", kToFind, angle));
}

void expectTriangle(const Found& printed, const Solution& solution, double angle) {
    const double atTip = 180 - *solution.forces[1].direction;
    const auto expect = [](const char* what, double value, const std::string& text) {
        if (!text.empty()) {
            expectPrinted(what, value, text);
        }
    };
    expect("B", 180 - angle - atTip, printed.b);
    expect("C", atTip, printed.c);
    expect("c", solution.sum.magnitude, printed.side);
}

TEST(PublishedTriangles, FromTwoSidesAndAnOppositeAngleHaveTheirCountAndValues) {
    for (const SideSideAngle& row : kSideSideAngle) {
        SCOPED_TRACE(row.source);
        const Solved solved = solve(sideSideAngle(row.angle, row.opposite, row.other));
        ASSERT_EQ(solved.solutions.size(), row.triangles.size()) << solved.message().text();
        std::vector<Solution> byLength = solved.solutions;
        std::sort(byLength.begin(), byLength.end(),
                  [](const Solution& a, const Solution& b) { return a.sum.magnitude > b.sum.magnitude; });
        for (std::size_t i = 0; i < byLength.size(); ++i) {
            expectTriangle(row.triangles[i], byLength[i], row.angle);
        }
    }
}

// Derived here, not published: the third side is exactly 4 sqrt 3.
TEST(ATangentTriangle, HasItsRightAngle) {
    const Solved solved = solve(sideSideAngle(30, 4, 8));
    ASSERT_EQ(solved.status, Status::unique);
    EXPECT_TRUE(solved.tangent);
    expectTriangle({"90.0", "60.0", "6.928203"}, solved.solutions.at(0), 30);
}

// --- a side and two angles ---

struct SideAndAngles {
    std::string source;
    double side, first, second; ///< the side is opposite to the third angle
    const char *oppositeFirst, *oppositeSecond;
};

const SideAndAngles kSideAndAngles[] = {
    {precalculus("example 8.1.1"), 10, 30, 100, "6.5", "12.9"},
    {precalculus("sec. 8.1, exercise 7"), 20, 35, 72, "12.0", "19.9"},
    {precalculus("sec. 8.1, exercise 11"), 5, 49, 37, "3.78", ""},
    {precalculus("sec. 8.1, exercise 13"), 23, 21, 122, "13.70", ""},
};

TEST(PublishedTriangles, FromASideAndTwoAnglesHaveTheirSides) {
    for (const SideAndAngles& row : kSideAndAngles) {
        SCOPED_TRACE(row.source);
        const Solved solved = solve(sketch({force("U", kToFind, row.second), force("V", kToFind, -row.first)},
                                           force("R", row.side, 0)));
        ASSERT_EQ(solved.status, Status::unique) << solved.message().text();
        expectPrinted("side opposite to the first angle", solved.solutions[0].forces[0].magnitude,
                      row.oppositeFirst);
        if (*row.oppositeSecond != '\0') {
            expectPrinted("side opposite to the second", solved.solutions[0].forces[1].magnitude,
                          row.oppositeSecond);
        }
    }
}

// --- two sides and the angle between them ---

struct SidesAndAngle {
    std::string source;
    double first, second, between;
    const char *third, *oppositeFirst, *oppositeSecond;
};

const SidesAndAngle kSidesAndAngle[] = {
    {precalculus("example 8.2.1"), 10, 12, 30, "6.013", "56.3", "93.7"},
    {precalculus("sec. 8.2, exercise 7"), 6, 7, 120, "11.3", "", ""},
    {precalculus("sec. 8.2, exercise 21"), 8, 11, 35, "6.4", "45.9", "99.1"},
    {precalculus("sec. 8.2, exercise 35"), 30, 23, 65, "29.1", "", ""},
};

TEST(PublishedTriangles, FromTwoSidesAndTheirAngleHaveTheThirdSide) {
    for (const SidesAndAngle& row : kSidesAndAngle) {
        SCOPED_TRACE(row.source);
        // From the tip of the first side, which lies along +x, to the tip of the second.
        const Solved solved =
            solve(sketch({force("A", row.first, 180), force("B", row.second, row.between)}));
        const SolvedForce& third = solved.solutions.at(0).sum;
        expectPrinted("third side", third.magnitude, row.third);
        if (*row.oppositeFirst != '\0') {
            expectPrinted("angle opposite to the second", 180 - *third.direction, row.oppositeSecond);
            expectPrinted("angle opposite to the first", *third.direction - row.between, row.oppositeFirst);
        }
    }
}

// --- three sides ---

struct ThreeSides {
    std::string source;
    double a, b, c;
    const char* angle; ///< opposite to a
};

const ThreeSides kThreeSides[] = {
    {precalculus("example 8.2.2"), 20, 25, 18, "52.4"},
    {precalculus("sec. 8.2, exercise 19"), 13, 22, 28, "26.9"},
    {precalculus("sec. 8.2, exercise 39"), 125, 115, 100, "70.7"},
    {precalculus("example 8.2.3"), 2420, 5050, 6000, "23.3"},
    {precalculus("try it 8.2.2"), 5, 7, 10, "27.7"},
    {precalculus("try it 8.2.2"), 7, 5, 10, "40.5"},
    {precalculus("try it 8.2.2"), 10, 5, 7, "111.8"},
};

TEST(PublishedTriangles, FromThreeSidesHaveTheirAngles) {
    for (const ThreeSides& row : kThreeSides) {
        SCOPED_TRACE(row.source);
        const Solved solved =
            solve(sketch({force("C", row.c, kToFind), force("A", row.a, kToFind)}, force("B", row.b, 0)));
        ASSERT_EQ(solved.status, Status::two) << solved.message().text();
        expectPrinted("angle", *solved.solutions[0].forces[0].direction, row.angle);
        expectPrinted("angle", -*solved.solutions[1].forces[0].direction, row.angle);
    }
}

// Source: Hibbeler, Engineering Mechanics: Statics, 13e, prob. 2-21.
TEST(PublishedTriangles, OfTwoForcesAndTheirResultantHaveTheAngleBetween) {
    const Solved solved =
        solve(sketch({force("P", 400, kToFind), force("Q", 600, kToFind)}, force("R", 800, 0)));
    ASSERT_EQ(solved.status, Status::two);
    const auto& forces = solved.solutions[0].forces;
    const double between = *forces[0].direction - *forces[1].direction;
    expectPrinted("angle between", between, "75.52");
    expectPrinted("interior angle", 180 - between, "104.48");
}

// Source: R. K. Bansal, A Textbook of Engineering Mechanics, ex. 1.6, without its side condition: its answer
// kept.
TEST(PublishedTriangles, OfThe5_12_13FamilyCloseWithTheirAngle) {
    const Solved solved =
        solve(sketch({force("P", 75, 0), force("Q", 195, kToFind)}, force("R", kToFind, 90)));
    ASSERT_EQ(solved.status, Status::unique);
    expectPrinted("R", solved.solutions[0].sum.magnitude, "180");
    expectPrinted("angle between", *solved.solutions[0].forces[1].direction, "112.62");
}

// Source: OpenStax, Precalculus, 2e, sec. 8.2, exercise 53.
TEST(AParallelogram, OfSides11And17WithADiagonalOf22HasItsOtherDiagonal) {
    const Solved solved =
        solve(sketch({force("P", 11, kToFind), force("Q", 17, kToFind)}, force("R", 22, 0)));
    ASSERT_EQ(solved.status, Status::two);
    const Eigen::Vector2d other = solved.solutions[0].forces[0].vector - solved.solutions[0].forces[1].vector;
    expectPrinted("shorter diagonal", other.norm(), "18.3");
}

// Source: OpenStax, Precalculus, 2e, examples 8.8.15 and 8.8.16.
TEST(AnglesBetweenVectors, AgreeWithTheirPrint) {
    const auto degrees = [](Eigen::Vector2d a, Eigen::Vector2d b) {
        return std::fabs(fromRadians(signedAngle(a, b).value(), AngleUnit::deg));
    };
    expectPrinted("angle", degrees({-3, 4}, {5, 12}), "59.5");
    expectPrinted("angle", degrees({5, 2}, {3, 7}), "45");
    EXPECT_EQ(Eigen::Vector2d(5, 2).dot(Eigen::Vector2d(3, 7)), 29);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
