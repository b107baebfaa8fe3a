// SPDX-License-Identifier: MIT
// The traps' notes: in each family at least two, with the number that the slip would give there. The numbers
// are worked out here with sines and cosines of the given angles.
#include "core/explain/explain.h"
#include "core/quantity/decimals.h"
#include "tests/support/flat.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace tailpoint {
namespace TAILPOINT_FILE {

using namespace testing;

double rad(double degrees) {
    return degrees * std::numbers::pi / 180;
}
double sinOf(double degrees) {
    return std::sin(rad(degrees));
}
double cosOf(double degrees) {
    return std::cos(rad(degrees));
}
double arcsinOf(double ratio) {
    return std::asin(ratio) * 180 / std::numbers::pi;
}

std::string newtons(double force) {
    return significant(force, 3) + " N";
}
std::string degrees(double angle) {
    return fixedDecimals(angle, 1) + "°";
}

struct Family {
    const char* name;
    Sketch sketch;
    std::vector<std::string> slips;
    Method method = Method::suited;
};

std::vector<Family> families() {
    const Force r = force("R", 400, 10), p = force("P", kToFind, 40);
    const double gamma = arcsinOf(300 * sinOf(105) / 320);
    return {
        {"resultant of two",
         sketch({force("P", 340, 25), force("Q", 275, -40)}),
         {newtons(std::sqrt(340 * 340 + 275 * 275 - 2 * 340 * 275 * cosOf(65)))}},
        {"missing force",
         sketch({force("P", 700, 195), force("X", kToFind, kToFind)}, force("R", 500, 90)),
         {newtons(std::sqrt(700 * 700 + 500 * 500 - 2 * 700 * 500 * cosOf(75)))}},
        {"two magnitudes",
         sketch({force("A", kToFind, 50), force("B", kToFind, -15)}, force("R", 400, 20)),
         {newtons(400 * sinOf(30) / sinOf(115)), newtons(400 * cosOf(30))}},
        {"ring at rest",
         balanced({force("P", 300, 20), force("Q", kToFind, 135), force("S", kToFind, -100)}),
         {newtons(300 * sinOf(115) / sinOf(125)), newtons(300 * -cosOf(115))},
         Method::triangle},
        {"ring at rest by components", // a cosine without its sign; sine and cosine of S exchanged
         balanced({force("P", 300, 20), force("Q", kToFind, 135), force("S", kToFind, -100)}),
         {newtons(300 * (cosOf(20) * sinOf(100) + sinOf(20) * cosOf(100)) /
                  (-cosOf(45) * sinOf(100) - sinOf(135) * cosOf(100))),
          newtons(300 * (-cosOf(20) * cosOf(100) - sinOf(20) * sinOf(100)) /
                  (cosOf(135) * cosOf(100) + sinOf(135) * sinOf(100)))}},
        {"smallest force",
         smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0)), "Q"),
         {newtons(340 * cosOf(25)), newtons(340 * sinOf(25) / cosOf(25))}},
        {"smallest sum",
         smallest(sketch({force("P", 340, 25), force("Q", kToFind, 160)}, force("R", kToFind, kToFind)), "R"),
         {newtons(340), degrees(160 + 90 - 360)}},
        {"two directions", // 3, 4, 5: beside R the angles arcsin 0.8 and arcsin 0.6
         sketch({force("P", 300, kToFind), force("Q", 400, kToFind)}, force("R", 500, 0)),
         {degrees(arcsinOf(0.6))}},
        {"missing force by components", // of P and Q on the axes what is left lies in the third quadrant
         balanced({force("P", 30, 0), force("Q", 20, 90), force("S", 10, 0), force("X", kToFind, kToFind)}),
         {degrees(std::atan(0.5) * 180 / std::numbers::pi)}},
        {"two answers",
         sketch({p, force("Q", 260, kToFind)}, r),
         {newtons(400), degrees(10 + arcsinOf(400 * sinOf(30) / 260) - 30)}},
        {"tangent", sketch({p, force("Q", 200, kToFind)}, r), {newtons(400), degrees(10 + 60)}},
        {"either sense",
         sketch({either(force("P", kToFind, 115)), force("Q", 320, kToFind)}, force("R", 300, 10)),
         {newtons(300), degrees(10 + 75 - gamma)}},
    };
}

std::vector<std::string> notesOf(const Worked& worked) {
    std::vector<std::string> notes;
    for (const Step& step : worked.steps)
        for (const Prose& note : step.notes)
            notes.push_back(toText(note, Minus::ascii));
    return notes;
}

TEST(Slips, HaveTheNumberThatTheyWouldGive) {
    for (const Family& family : families()) {
        const Solved solved = solve(family.sketch);
        ExplainOptions options;
        options.method = family.method;
        const auto notes =
            notesOf(explain(family.sketch, solved, construct(family.sketch, solved, 0), 0, options));
        EXPECT_GE(notes.size(), 2U) << family.name;
        for (const std::string& number : family.slips)
            EXPECT_TRUE(
                std::any_of(notes.begin(), notes.end(),
                            [&](const std::string& note) { return note.find(number) != std::string::npos; }))
                << family.name << ": " << number;
    }
}

bool hasNumber(const std::string& note) {
    return note.find_first_of("0123456789") != std::string::npos;
}

std::size_t numbersIn(const Sketch& sketch, const ExplainOptions& options) {
    const Solved solved = solve(sketch);
    const auto notes = notesOf(explain(sketch, solved, construct(sketch, solved), 0, options));
    return static_cast<std::size_t>(std::count_if(notes.begin(), notes.end(), hasNumber));
}

/// All the same where no triangle has any height, and where there is no answer; but not where nothing acts.
TEST(Slips, AreToldWhereNothingIsATriangle) {
    std::vector<Sketch> sketches = testing::flatQuestions();
    for (Sketch& one : testing::unansweredQuestions())
        sketches.push_back(std::move(one));
    for (const Sketch& one : sketches) {
        double known = one.sum.magnitude.value.value_or(0);
        for (const Force& force : one.forces)
            known += force.magnitude.value.value_or(0);
        const bool isIdle = known == 0 || solve(one).messageCode() == MessageCode::bothZero ||
                            solve(one).messageCode() == MessageCode::unequalMagnitudes;
        EXPECT_TRUE(isIdle || numbersIn(one, {}) >= 2) << "question " << &one - sketches.data();
    }
}

/// Two numbers at least in every family, by every way, wherever the slips give other digits than what is
/// right.
TEST(Slips, HaveTwoNumbersByEveryWay) {
    for (const Family& family : families())
        for (const Method method : {Method::triangle, Method::components}) {
            ExplainOptions options;
            options.method = method;
            EXPECT_GE(numbersIn(family.sketch, options), 2U) << family.name << ", " << nameOf(method);
        }
    ExplainOptions byTwo;
    byTwo.parallelograms = true;
    EXPECT_GE(numbersIn(sketch({force("P", 30, 0), force("Q", 40, 90), force("S", 20, 200)}), byTwo), 2U);
}

/// Where the slip shows the same digits there is nothing to warn of.
TEST(Slips, AreNotToldWhereTheyGiveWhatIsRight) {
    const Sketch square =
        sketch({force("A", kToFind, 65), force("B", kToFind, -25)}, force("R", 400, 20)); // both at 45°
    const Solved solved = solve(square);
    EXPECT_TRUE(notesOf(explain(square, solved, construct(square, solved, 0))).empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
