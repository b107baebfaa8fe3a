// SPDX-License-Identifier: MIT
// Missing forces, equilibrants, smallest forces and bodies held by two forces, as printed in textbooks.
#include "tests/support/printed.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

const Force kWhole = force("F", kToFind, kToFind);

// The knot before the pulley: C / sqrt 65 + 8 C / sqrt 65 = 100.
const double kCord = 100 * std::sqrt(65.0) / 9;

const Example kMissing[] = {
    {"a third force by components",
     "OpenStax, University Physics, vol. 1, prob. 6.27",
     balanced({components("A", 3, 5), components("B", 4, -7), kWhole}),
     {xOf(2, "-7"), yOf(2, "2")}},
    {"a fourth pull in a tug of war",
     "OpenStax, University Physics, vol. 1, example 2.10",
     balanced({force("A", 160.0, -55), force("B", 200.0, 30), force("C", 140.0, 145), kWhole}),
     {xOf(3, "-150.3"), yOf(3, "-49.2"), sizeOf(3, "158.1", "158.1554"), directionOf(3, "198.1")}},
    {"a force for a vertical resultant",
     "Hibbeler, Engineering Mechanics: Statics, 14e, prob. 2-2",
     sketch({force("A", 700, 195), kWhole}, force("R", 500, 90)),
     {sizeOf(1, "959.78"), directionOf(1, "45.2"), sizeOf(1, "960")}},
    {"a fourth force for a vertical resultant",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 2.9",
     sketch({force("A", 10, 30), force("B", 20, 90), force("C", 40, 120), kWhole}, force("R", 72, 90)),
     {sizeOf(3, "16.77"), directionOf(3, "47.46")}},
    {"a balancing force",
     "OpenStax, Precalculus, 2e, sec. 8.8, exercise 79",
     balanced({force("A", 3, 180), force("B", 4, 90), force("C", 2, 30), kWhole}),
     {sizeOf(3, "5.1583"), directionOf(3, "284.2")}},
    {"a vector equation",
     "OpenStax, University Physics, vol. 1, prob. 2.53",
     sketch({force("D", 20.0, 143), kWhole}, force("S", 20.0, 210)),
     {xOf(1, "-1.35"), yOf(1, "-22.04")}},
    {"a vector equation with factors, divided by five",
     "OpenStax, University Physics, vol. 1, prob. 2.53",
     sketch({force("C", 12.0 / 5, -60), force("D", 40.0 / 5, -37), kWhole}, force("S", 60.0 / 5, 210)),
     {xOf(2, "-17.98"), yOf(2, "0.89")}},
    {"2000 N down and 4000 N to the right",
     "OpenStax, University Physics, vol. 1, prob. 12.27, force part",
     balanced({force("A", 2000, -90), force("B", 4000, 0), kWhole}),
     {sizeOf(2, "4472"), directionOf(2, "153.4")}},
    {"the pulley of two hanging weights",
     "Baker & Haynes, Engineering Statics: Open and Interactive, ch. 3",
     balanced({slope("C", kCord, 8, -1), slope("E", kCord, -1, 2), kWhole}),
     {sizeOf(2, "84.5"), directionOf(2, "234.7"), xOf(2, "-48.8"), yOf(2, "-69.0")}},
};

TEST(PublishedMissingForces, AgreeToHalfAUnitOfTheLastPlace) {
    for (const Example& example : kMissing) {
        expectExample(example);
    }
}

const double kStepRun =
    std::sqrt(40.0 * 40 - 20 * 20); // the edge of a step of 20 under a roller of radius 40

const Example kTwoMagnitudes[] = {
    {"a trolley with a vertical resultant",
     "Beer & Johnston, Vector Mechanics for Engineers: Statics, prob. 2.9",
     sketch({force("A", 1600, 15), force("P", kToFind, 115)}, force("R", kToFind, 90)),
     {sizeOf(1, "3.66e3"), size("3.73e3")}},
    {"a hook with a vertical resultant",
     "Beer & Johnston, Vector Mechanics for Engineers: Statics, prob. 2.8",
     sketch({force("P", 75, 110), force("Q", kToFind, 55)}, force("R", kToFind, 90)),
     {sizeOf(1, "44.7"), size("107.1")}},
    {"a barge and two tugs",
     "Beer & Johnston, Vector Mechanics for Engineers: Statics, sample problem 2.2 a (from memory)",
     sketch({force("A", kToFind, 30), force("B", kToFind, -45)}, force("R", 5000, 0)),
     {sizeOf(0, "3.66e3"), sizeOf(1, "2.59e3")}},
    {"a roller pulled at its top over a step",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 4.17",
     balanced({force("W", 3000, -90), force("P", kToFind, 0), slope("B", kToFind, -kStepRun, 60)}),
     {sizeOf(1, "1732.05"), sizeOf(2, "3464.1")}},
    {"the same roller pulled at its centre",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 4.18",
     balanced({force("W", 3000, -90), force("P", kToFind, 0), slope("B", kToFind, -kStepRun, 20)}),
     {sizeOf(1, "5196.15")}},
    {"15.0 kg on two wires",
     "OpenStax, University Physics, vol. 1, example 6.1",
     balanced({force("W", 15.0 * 9.80, -90), force("A", kToFind, 150), force("B", kToFind, 45)}),
     {sizeOf(1, "108"), sizeOf(2, "132")}},
    {"a thread sagging by 12 degrees",
     "OpenStax, University Physics, vol. 1, prob. 5.59",
     balanced({force("W", 2.00e-5 * 9.80, -90), force("A", kToFind, 168), force("B", kToFind, 12)}),
     {sizeOf(1, "4.71e-4"), sizeOf(2, "4.71e-4"),
      derived(
          "tension over weight",
          [](const Solution& s) { return s.forces[1].magnitude / s.forces[0].magnitude; }, "2.40")}},
    {"a rope pushed at its middle",
     "OpenStax, University Physics, vol. 1, check your understanding 5.9",
     balanced({force("F", 200.0, -90), slope("A", kToFind, -std::sqrt(1.5 * 1.5 - 0.25 * 0.25), 0.25),
               slope("B", kToFind, std::sqrt(1.5 * 1.5 - 0.25 * 0.25), 0.25)}),
     {sizeOf(1, "6.0e2")}},
    {"76.0 kg on two ropes",
     "OpenStax, College Physics, 2e, sec. 4.7",
     balanced({force("W", 76.0 * 9.80, -90), force("A", kToFind, 105), force("B", kToFind, 10)}),
     {sizeOf(1, "736"), sizeOf(2, "194")}},
    {"a weight on a frictionless incline",
     "Baker & Haynes, Engineering Statics: Open and Interactive, ch. 3",
     balanced({force("W", 100, -90), force("P", kToFind, 10), force("N", kToFind, 115)}),
     {sizeOf(1, "43.8"), sizeOf(2, "102")}},
    {"the knot of two hanging weights",
     "Baker & Haynes, Engineering Statics: Open and Interactive, ch. 3",
     balanced({force("W", 100, -90), slope("C", kToFind, -8, 1), slope("D", kToFind, 1, 1)}),
     {sizeOf(1, "89.6"), sizeOf(2, "125.7"),
      derived(
          "beta", [](const Solution& s) { return 180 - *s.forces[1].direction; }, "7.13")}},
    {"a utility pole and its guy",
     "Baker & Haynes, Engineering Statics: Open and Interactive, ch. 3",
     balanced({force("A", 10.0, 76), force("B", 10.0, -76), force("C", 10.0, 76.0), force("D", 10.0, -76),
               force("E", 10.0, 76), force("F", 10.0, -76), force("G", kToFind, -128),
               force("V", kToFind, 90)}),
     {sizeOf(6, "23.6"),
      derived(
          "horizontal part", [](const Solution& s) { return -s.forces[6].vector.x(); }, "14.5")}},
    {"900 N on strings of 4 m and 3 m",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 1.8",
     balanced({force("W", 900, -90), slope("A", kToFind, -4, 3), slope("B", kToFind, 3, 4)}),
     {sizeOf(1, "540"), sizeOf(2, "720")}},
    {"a lamp on a chain and a cord",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 4.6",
     balanced({force("W", 5, -90), force("A", kToFind, 120), force("B", kToFind, 0)}),
     {sizeOf(1, "5.77"), sizeOf(2, "2.89")}},
    {"a ball in a groove",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 4.11",
     balanced({force("W", 120, -90), force("A", kToFind, 150), force("C", kToFind, 60)}),
     {sizeOf(1, "60"), sizeOf(2, "103.92")}},
    {"a joint of a regular octagon",
     "A. K. Tayal, Engineering Mechanics, ex. 2.16",
     balanced({force("A", 1000, 0), force("B", kToFind, 180 - 67.5), force("C", kToFind, 180 + 67.5)}),
     {sizeOf(1, "1306.6"), sizeOf(2, "1306.6")}},
    {"the next joint of the octagon",
     "A. K. Tayal, Engineering Mechanics, ex. 2.16",
     balanced({force("A", 500 / std::sin(std::acos(-1) / 8), 67.5), force("B", kToFind, -67.5),
               force("C", kToFind, 180)}),
     {sizeOf(2, "1.000e3")}},
    {"250 kg on a cable at 30 degrees",
     "Hibbeler, Engineering Mechanics: Statics, 12e, example 3.2",
     balanced({force("W", 2.452, -90), force("B", kToFind, 30), force("D", kToFind, 180)}),
     {sizeOf(1, "4.9"), sizeOf(2, "4.25")}},
    {"a lamp on a cable and a spring",
     "Hibbeler, Engineering Mechanics: Statics, 12e, example 3.4 (answer from memory)",
     balanced({force("W", 78.5, -90), force("A", kToFind, 150), force("B", kToFind, 0)}),
     {sizeOf(1, "157.0"), sizeOf(2, "136.0")}},
    {"50 lb on two braces",
     "Stitz & Zeager, College Trigonometry (2011), example 11.8.6 (final values from memory)",
     balanced({force("W", 50, -90), force("A", kToFind, 60), force("B", kToFind, 150)}),
     {sizeOf(1, "43.30"), sizeOf(2, "25")}},
    {"2000 lb on cables at 30 and 130 degrees",
     "Larson, Calculus, sec. 10.1, exercise 87",
     balanced({force("W", 2000, -90), force("U", kToFind, 30), force("V", kToFind, 130)}),
     {sizeOf(1, "1305.5", "1305.407"), sizeOf(2, "1758.8")}},
    {"a boat hull in a channel",
     "Beer & Johnston, Vector Mechanics for Engineers: Statics, sample problem 2.6 (from memory)",
     balanced(
         {slope("B", 40, -7, 4), force("E", 60, -90), slope("C", kToFind, 1.5, 4), force("D", kToFind, 0)}),
     {sizeOf(2, "42.9"), sizeOf(3, "19.66", "19.67181"),
      derived(
          "alpha", [](const Solution& s) { return *s.forces[0].direction - 90; }, "60.26"),
      derived(
          "beta", [](const Solution& s) { return 90 - *s.forces[2].direction; }, "20.56")}},
};

TEST(PublishedPairsOfMagnitudes, AgreeToHalfAUnitOfTheLastPlace) {
    for (const Example& example : kTwoMagnitudes) {
        expectExample(example);
    }
}

const Example kSmallest[] = {
    {"the smallest force for a sum on a given line",
     "Paulson (Madison College), Statics notebooks (2020), notebook 2, example D",
     smallest(sketch({force("A", 3.7, 240), force("B", 2.0, 150), kWhole}, force("R", kToFind, 180)), "F"),
     {sizeOf(2, "2.2042939940024224")}},
    // The towing line takes the place of the sum: barge's resistance and second rope together lie along the
    // first.
    {"the smallest second tug",
     "Beer & Johnston, Vector Mechanics for Engineers: Statics, sample problem 2.2 b (from memory)",
     smallest(sketch({force("A", 5000, 0), kWhole}, force("T", kToFind, 30)), "F"),
     {sizeOf(1, "2.50e3"), size("4.33e3"), directionOf(1, "120")}},
    {"the smallest force for a horizontal sum",
     "Hibbeler, Engineering Mechanics: Statics, example 2.4 (from memory)",
     smallest(sketch({force("A", 800, 60), kWhole}, force("R", kToFind, 0)), "F"),
     {sizeOf(1, "693"), size("400"), directionOf(1, "-90")}},
    {"the least pull over a step",
     "R. K. Bansal, A Textbook of Engineering Mechanics, ex. 4.18",
     smallest(sketch({force("W", 3000, -90), kWhole}, slope("R", kToFind, kStepRun, -20)), "F"),
     {sizeOf(1, "2598.08")}},
    {"the force that leaves the smallest sum",
     "Hibbeler, Engineering Mechanics: Statics, 11e, prob. 2-51 (answer from memory)",
     smallest(sketch({force("A", 5, 0), force("B", 4, 270), force("F", kToFind, 120)}), "R"),
     {sizeOf(2, "5.96"), size("2.33")}},
};

TEST(PublishedSmallestForces, AgreeToHalfAUnitOfTheLastPlace) {
    for (const Example& example : kSmallest) {
        expectExample(example);
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
