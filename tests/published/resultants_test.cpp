// SPDX-License-Identifier: MIT
// Resultants of two forces as printed in textbooks.
#include "tests/support/printed.h"

#include "core/sketch/shown.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

const char* const kUniversityPhysics = "OpenStax, University Physics, vol. 1";
const char* const kCollegePhysics = "OpenStax, College Physics, 2e";
const char* const kCalculus = "OpenStax, Calculus, vol. 3";
const char* const kPrecalculus = "OpenStax, Precalculus, 2e";

std::string in(const char* book, const char* place) {
    return std::string(book) + ", " + place;
}

Answer fromVertical(std::string printed) {
    return derived(
        "angle from the vertical", [](const Solution& s) { return 90 - *s.sum.direction; },
        std::move(printed));
}
Answer fromForce(std::size_t i, std::string printed) {
    return derived(
        "angle from force " + std::to_string(i),
        [i](const Solution& s) {
            return std::fabs(std::remainder(*s.sum.direction - *s.forces.at(i).direction, 360));
        },
        std::move(printed));
}

const Example kExamples[] = {
    {"two forces at a right angle",
     in(kUniversityPhysics, "sec. 5.1"),
     sketch({force("P", 30.0, 0), force("Q", 40.0, 90)}),
     {size("50.0"), direction("53.1")}},
    {"two forces along one line",
     in(kUniversityPhysics, "prob. 5.19"),
     sketch({components("P", 2.0, 4.0), components("Q", 3.0, 6.0)}),
     {x("5.0"), y("10.0"), size("11"), direction("63")}},
    {"two tugs at 30 degrees",
     in(kUniversityPhysics, "prob. 5.21"),
     sketch({force("P", 400.0, 0), force("Q", 300.0, 30.0)}),
     {x("660.0", "659.8076"), y("150.0"), size("676.6"), direction("12.8")}},
    {"two equal forces about the vertical",
     in(kUniversityPhysics, "prob. 6.29"),
     sketch({force("P", 200, 70), force("Q", 200, 110)}),
     {size("376"), direction("90")}},
    {"two displacements by components",
     in(kCollegePhysics, "example 3.3"),
     sketch({force("A", 53.0, 20.0), force("B", 34.0, 63.0)}),
     {xOf(0, "49.8"), yOf(0, "18.1"), xOf(1, "15.4"), yOf(1, "30.3"), x("65.2"), y("48.4"), size("81.2"),
      direction("36.6")}},
    {"a walk of two legs",
     in(kCollegePhysics, "sec. 3.2, problems"),
     sketch({force("A", 12.0, 110), force("B", 20.0, 220)}),
     {size("19.5"), direction("184.65")}},
    {"the difference of the two legs",
     in(kCollegePhysics, "sec. 3.2, problems"),
     sketch({force("A", 12.0, 110), force("B", 20.0, 40)}),
     {size("26.6"), direction("65.1")}},
    {"two forces at 15 degrees",
     in(kCalculus, "example 2.9"),
     sketch({force("P", 300, 0), force("Q", 150, 15)}),
     {size("446.6"), direction("5")}},
    {"a direction in the second quadrant",
     "Baker & Haynes, Engineering Statics: Open and Interactive, ch. 2",
     sketch({force("A", 200, 45), force("B", 300, 160)}),
     {xOf(0, "141.4"), xOf(1, "-281.9"), yOf(1, "102.6"), x("-140.5"), y("244.0"), size("281.6"),
      direction("119.9")}},
    {"two legs with a turn of 20 degrees",
     in(kPrecalculus, "example 8.2.4"),
     sketch({force("A", 10, 0), force("B", 8, 20)}),
     {derived(
          "R squared", [](const Solution& s) { return s.sum.magnitude * s.sum.magnitude; }, "314.35"),
      size("17.7")}},
    {"a flight in a side wind",
     in(kPrecalculus, "sec. 8.8, exercise 67"),
     sketch({force("A", 600, 90), force("B", 80, 45)}),
     {fromVertical("4.924"), size("659")}},
    {"two bearings",
     in(kCalculus, "sec. 2.1, exercise 53"),
     sketch({bearing("A", 550, 'N', 43, 'E'), bearing("B", 25, 'N', 15, 'E')}),
     {size("572.19"), fromVertical("41.82")}},
    {"two forces on a bolt",
     "Beer & Johnston, Vector Mechanics for Engineers: Statics, 9e, sample problem 2.1",
     sketch({force("P", 40, 20), force("Q", 60, 45)}),
     {size("97.73"), direction("35.04"), fromForce(0, "15.04")}},
    {"two cables given by slopes",
     "Beer & Johnston, Vector Mechanics for Engineers: Statics, prob. 2.13",
     sketch({slope("P", 120, 8, 10), slope("Q", 40, -6, 10)}),
     {derived(
          "alpha", [](const Solution& s) { return 90 - *s.forces[0].direction; }, "38.66"),
      derived(
          "beta", [](const Solution& s) { return *s.forces[1].direction - 90; }, "30.96"),
      derived(
          "psi", [](const Solution& s) { return 180 - (*s.forces[1].direction - *s.forces[0].direction); },
          "110.38"),
      size("139.08"), fromForce(0, "15.64"), direction("66.98")}},
    {"50 N and 100 N at 30 degrees",
     "A. K. Tayal, Engineering Mechanics, ex. 2.1 and 2.2",
     sketch({force("P", 50, 15), force("Q", 100, 45)}),
     {size("145.47"), direction("35.1"), fromForce(0, "20.103909361")}},
    {"240 N and 200 N at 60 degrees",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 2.2",
     sketch({force("P", 240, 0), force("Q", 200, 60)}),
     {size("381.58"), fromForce(0, "26.996"), fromForce(1, "33.0")}},
    {"450 N and 700 N across the vertical",
     "Hibbeler, Engineering Mechanics: Statics, 14e, prob. 2-1",
     sketch({force("P", 450, 60), force("Q", 700, 195)}),
     {size("497.0138"), direction("155.19")}},
    {"two forces on a screw eye",
     "Hibbeler, Engineering Mechanics: Statics, example 2.1 (from memory)",
     sketch({force("P", 100, 15), force("Q", 150, 80)}),
     {size("213"), direction("54.8")}},
    {"a force and a cable to a mast",
     "Meriam & Kraige, Engineering Mechanics: Statics, sample problem 2/2 (from memory)",
     sketch({force("P", 800, 0), slope("T", 600, -6, -6 * std::sqrt(0.75))}),
     {derived(
          "alpha", [](const Solution& s) { return 180 + *s.forces[1].direction; }, "40.9"),
      size("524"), direction("-48.6")}},
    {"a sum in the third quadrant",
     in(kUniversityPhysics, "prob. 2.47"),
     sketch({components("A", -3, -2), components("B", -1, -4)}),
     {size("7.211"), direction("236")}},
    {"a difference in the second quadrant",
     in(kUniversityPhysics, "prob. 2.47"),
     sketch({components("A", -3, -2), components("B", 1, 4)}),
     {size("2.828"), direction("135")}},
    {"a force and its double at 225 degrees",
     in(kUniversityPhysics, "additional prob. 5.81"),
     sketch({force("A", 1, 0), force("B", 2, 225)}),
     {x("-0.41"), y("-1.41"), direction("254")}},
    {"forces with exponents",
     in(kUniversityPhysics, "example 6.2"),
     sketch({force("A", 2.7e5, 0), force("B", 3.6e5, 90)}),
     {size("4.5e5"), direction("53.1")}},
};

TEST(PublishedResultants, OfTwoForcesAgreeToHalfAUnitOfTheLastPlace) {
    for (const Example& example : kExamples) {
        expectExample(example);
    }
}

// Source: Beer & Johnston, Vector Mechanics for Engineers: Statics, 9e, sample problem 2.1 and prob. 2.13;
// Hibbeler, Engineering Mechanics: Statics, 14e, prob. 2-1: the answers as reported there.
TEST(PublishedResultants, AreShownAsTheBooksReportThem) {
    const auto shown = [](std::vector<Force> forces, int figures) {
        Sketch made = sketch(std::move(forces));
        made.figures = figures;
        const SolvedForce sum = solve(made).solutions.at(0).sum;
        return shownForce(sum.magnitude, made) + " at " + shownAngle(*sum.direction, made);
    };
    EXPECT_EQ(shown({force("P", 40, 20), force("Q", 60, 45)}, 3), "97.7 at 35.0°");
    EXPECT_EQ(shown({slope("P", 120, 8, 10), slope("Q", 40, -6, 10)}, 4), "139.1 at 67.0°");
    EXPECT_EQ(shown({force("P", 450, 60), force("Q", 700, 195)}, 3), "497 at 155.2°");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
