// SPDX-License-Identifier: MIT
// Sums of three and more vectors as printed in textbooks.
#include "tests/support/printed.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

const Example kExamples[] = {
    {"three displacements",
     "OpenStax, University Physics, vol. 1, example 2.9",
     sketch({force("A", 10.0, 35), force("B", 7.0, -110), force("C", 8.0, 30)}),
     {x("12.73"), y("3.15", "3.157916"), size("13.11"), direction("13.9")}},
    {"a difference of two of them",
     "OpenStax, University Physics, vol. 1, example 2.9",
     sketch({force("A", 10.0, 35), force("B", 7.0, 70)}),
     {x("10.58", "10.58566"), y("12.31"), size("16.23", "16.23827"), direction("49.3")}},
    {"a sum with a factor of three",
     "OpenStax, University Physics, vol. 1, example 2.9",
     sketch({force("A", 10.0, 35), force("B", 21.0, 70), force("C", 8.0, 30)}),
     {x("22.29", "22.30215"), y("29.47"), size("36.95", "36.95708"), direction("52.9")}},
    {"a combination of three",
     "OpenStax, University Physics, vol. 1, check your understanding 2.8",
     sketch({force("A", 10.00, 35), force("B", 14.00, -110), force("F", 20.00, -70)}),
     {x("10.25", "10.24364"), y("-26.22", "-26.21378"), size("28.15", "28.14418"),
      direction("-68.65", "-68.65578")}},
    {"seven legs",
     "OpenStax, University Physics, vol. 1, prob. 2.51",
     sketch({force("A", 2.50, 135), force("B", 4.70, -60), force("C", 1.30, 205), force("D", 5.10, 0),
             force("E", 1.70, 85), force("F", 7.20, 235), force("G", 2.80, 10)}),
     {x("3.3"), y("-6.6"), size("7.34"), direction("-63.5")}},
    {"five walks along blocks",
     "OpenStax, University Physics, vol. 1, prob. 2.55",
     sketch({force("A", 300, 0), force("B", 200, 90), force("C", 100, 0), force("D", 100, 90),
             force("E", 200, 180)}),
     {size("360.5", "360.5551"), direction("56.3")}},
    {"three pulls",
     "OpenStax, Precalculus, 2e, sec. 8.8, exercise 77",
     sketch({force("A", 10, 0), force("B", 25, -135), force("C", 5, 150)}),
     {size("19.35"), direction("231.54", "231.6508")}},
    {"five legs by compass points",
     "OpenStax, Precalculus, 2e, sec. 8.8, exercise 63",
     sketch({force("A", 4, 0), bearing("B", 2, 'S', 45, 'E'), force("C", 5, -90),
             bearing("D", 4, 'S', 45, 'W'), force("E", 2, 0)}),
     {size("10.318")}},
    {"four forces",
     "McLean & Nelson, Schaum's Outline of Engineering Mechanics, 5e (1997), prob. 3.1",
     sketch({force("A", 150, 30), force("B", 200, 150), force("C", 80, 240), force("D", 180, 315)}),
     {size("49"), direction("334")}},
    {"three forces",
     "McLean & Nelson, Schaum's Outline of Engineering Mechanics, 5e (1997), prob. 3.3",
     sketch({force("A", 70, 0), force("B", 100, 210), force("C", 125, 100)}),
     {size("82.5"), direction("118")}},
    {"four downward forces",
     "McLean & Nelson, Schaum's Outline of Engineering Mechanics, 5e (1997), prob. 3.10, force part",
     sketch({force("A", 100, -60), force("B", 80, 45), force("C", 120, -90), force("D", 150, -75)}),
     {size("329"), direction("-63.8")}},
    {"four upward forces",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 1.12",
     sketch({force("A", 10, 30), force("B", 15, 60), force("C", 20, 90), force("D", 40, 120)}),
     {size("72.73"), direction("93.03")}},
    {"four forces, third quadrant",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 2.8",
     sketch({force("A", 104, 10), force("B", 156, 114), force("C", 252, 183), force("D", 228, 261)}),
     {size("260.26"), direction("197.4")}},
    {"four forces on a bolt",
     "Beer & Johnston, Vector Mechanics for Engineers: Statics, sample problem 2.3 (from memory)",
     sketch({force("A", 150, 30), force("B", 80, 110), force("C", 110, 270), force("D", 100, -15)}),
     {x("199.1"), y("14.3"), size("199.6"), direction("4.1")}},
    {"components by angle and slopes",
     "Meriam & Kraige, Engineering Mechanics: Statics, sample problem 2/1 (from memory)",
     sketch({force("A", 600, 35), slope("B", 500, -4, 3), slope("C", 800, 0.2, -0.4)}),
     {xOf(0, "491"), yOf(0, "344"), xOf(1, "-400"), yOf(1, "300"), xOf(2, "358"), yOf(2, "-716")}},
    {"four forces on a mass of 4.0 kg",
     "OpenStax, University Physics, vol. 1, example 5.7",
     sketch({force("A", 10.0 / 4, 30), force("B", 40.0 / 4, 270), force("C", 5.0 / 4, 180),
             force("D", 2.0 / 4, 90)}),
     {x("0.92"), y("-8.3"), size("8.4", "8.300593"), direction("276")}},
    {"three forces by components",
     "OpenStax, University Physics, vol. 1, challenge prob. 5.107",
     sketch({components("A", -3, 2), components("B", 6, -4), components("C", 2, 5)}),
     {x("5.00"), y("3.00"),
      derived(
          "mass for 4.23 m/s2", [](const Solution& s) { return s.sum.magnitude / 4.23; }, "1.38")}},
};

TEST(PublishedResultants, OfManyForcesAgreeToHalfAUnitOfTheLastPlace) {
    for (const Example& example : kExamples) {
        expectExample(example);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
