// SPDX-License-Identifier: MIT
#include "core/mark/attempt.h"
#include "core/sketch/shown.h"
#include "tests/core/mark/marked.h"

#include <cmath>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Code = AttemptFault::Code;

Sketch two() {
    return sketch({force("P", 345, 30), force("Q", 220, -45)});
}

double directionOn(const Sketch& asked, const std::string& text) {
    const auto read = marking::readDirection(text, asked, false);
    const auto* number = std::get_if<GivenNumber>(&read);
    EXPECT_NE(number, nullptr) << text;
    return number ? number->readings.front().value : NAN;
}

TEST(MarkAttempt, ADirectionIsReadInEveryFormAndInTheWordsOfAReport) {
    const Sketch plain = two();
    // by hand: from +x, counter-clockwise
    for (const auto& [text, value] :
         std::vector<std::pair<std::string, double>>{{"12.3", 12.3},
                                                     {"-3.6°", -3.6},
                                                     {"\u22123.6 deg", -3.6},
                                                     {"\u20133.6", -3.6},
                                                     {"\u20133.6°", -3.6},
                                                     {"N30E", 60},
                                                     {"S 45 W", -135},
                                                     {"N", 90},
                                                     {"4:3", 36.86989764584402},
                                                     {"3.6° clockwise from +x", -3.6},
                                                     {"3.6° counter-clockwise from +x", 3.6},
                                                     {"along +x", 0},
                                                     {"opposite to +x", 180},
                                                     {"along -y", -90},
                                                     {"30 cw", -30},
                                                     {"30 ccw", 30},
                                                     {"12 above +x", 12},
                                                     {"12° below the +x-axis", -12},
                                                     {"12° above -x", 168},
                                                     {"12 below the negative x axis", -168},
                                                     {"10 left of +y", 100},
                                                     {"10 right of -y", -80},
                                                     {"20° clockwise from +y", 70},
                                                     {"0.2 rad", 11.459155902616465},
                                                     {"100 gon", 90}})
        EXPECT_NEAR(directionOn(plain, text), value, 1e-12) << text;
}

TEST(MarkAttempt, ADirectionIsReferredToTheSheetsAxisAndSense) {
    Sketch north = two();
    north.reference = {90, Sense::cw};
    // by hand: from north, clockwise
    EXPECT_NEAR(directionOn(north, "N30E"), 30, 1e-12);
    EXPECT_NEAR(directionOn(north, "40"), 40, 1e-12);
    EXPECT_NEAR(directionOn(north, "40 ccw"), -40, 1e-12);
    EXPECT_NEAR(directionOn(north, "40 cw"), 40, 1e-12);
    EXPECT_NEAR(directionOn(north, "along +x"), 90, 1e-12);
}

TEST(MarkAttempt, EveryDirectionThatAReportPrintsIsReadBack) {
    for (const double axis : {0.0, 90.0, 180.0, 270.0, 35.0})
        for (const Sense sense : {Sense::ccw, Sense::cw})
            for (int angle = -180; angle <= 180; angle += 15) {
                Sketch asked = two();
                asked.reference = {axis, sense};
                const std::string text = directionWords(angle, asked);
                const double off = std::remainder(directionOn(asked, text) - angle, 360);
                EXPECT_NEAR(off, 0, 1e-9) << text;
            }
}

TEST(MarkAttempt, AnAngleOfManyTurnsIsTheSameDirection) {
    EXPECT_EQ(verdictOf(marked(two(), {"theta_R = 722.1"}), "theta_R"), Verdict::right); // 2.13 + 720
    EXPECT_EQ(verdictOf(marked(two(), {"theta_R = -357.9"}), "theta_R"), Verdict::right);
}

TEST(MarkAttempt, TheLastDigitsWorthIsReadFromTheText) {
    const auto half = [](const std::string& text, int figures = 3) {
        Sketch asked = two();
        asked.figures = figures;
        return std::get<GivenNumber>(marking::readForce(text, asked)).readings.front().half;
    };
    // by hand: half a unit of the last digit, in newtons
    EXPECT_DOUBLE_EQ(half("455"), 0.5);
    EXPECT_DOUBLE_EQ(half("454.7"), 0.05);
    EXPECT_DOUBLE_EQ(half("0.455 kN"), 0.5);
    EXPECT_DOUBLE_EQ(half("4.55e2"), 0.5);
    EXPECT_DOUBLE_EQ(half("5200"), 5); // closing zeros beyond three figures are none
    EXPECT_DOUBLE_EQ(half("5200", 4), 0.5);
    EXPECT_DOUBLE_EQ(half("500"), 0.5);
    EXPECT_DOUBLE_EQ(half("1 234.5"), 0.05);
    EXPECT_DOUBLE_EQ(half("0.00"), 0.005);
}

TEST(MarkAttempt, ACommaBeforeThreeDigitsIsTriedBothWays) {
    const Sketch great = sketch({force("P", 345, 30), force("Q", 1220, -45)});
    // Python: 345 at 30 and 1220 at -45 make 1351.04
    const Marking thousands = marked(great, {"R = 1,351"});
    EXPECT_EQ(verdictOf(thousands, "R"), Verdict::right);
    EXPECT_EQ(quantity(thousands, "R").remarks.size(), 2U); // and a figure more than asked
    const Sketch small = sketch({force("P", 0.345, 30), force("Q", 1.220, -45)});
    EXPECT_EQ(verdictOf(marked(small, {"R = 1,351"}), "R"), Verdict::right);
    EXPECT_EQ(verdictOf(marked(great, {"R = 1.351"}), "R"), Verdict::unit); // a point is a decimal point
}

TEST(MarkAttempt, NamesMayBeWrittenWithGreekLettersAndLoweredDigits) {
    const Marker marker(two(), solve(two()));
    for (const char* name : {"theta_R", " theta_R ", "θ_R", "β", "beta", "R_x", "φ", "phi"})
        EXPECT_NE(marker.named(name), nullptr) << name;
    const Sketch many = sketch({force("F1", 100, 0), force("F2", 100, 50), force("X", kToFind, kToFind)},
                               force("R", 0, kToFind));
    const Marker other(many, solve(many));
    EXPECT_NE(other.named("F₁_x"), nullptr);
    EXPECT_EQ(marker.named("rho"), nullptr);
}

TEST(MarkAttempt, WhatIsAskedStandsInFrontOfTheNames) {
    const Marker marker(two(), solve(two()));
    ASSERT_GE(marker.quantities().size(), 2U);
    EXPECT_EQ(marker.quantities()[0].name, "R");
    EXPECT_EQ(marker.quantities()[1].name, "theta_R");
    EXPECT_TRUE(marker.quantities()[1].asked);
    EXPECT_FALSE(marker.quantities()[2].asked);
    EXPECT_EQ(marker.of(), 2);
}

TEST(MarkAttempt, FaultsAreToldInOneLineWithTheMend) {
    struct Case {
        std::vector<std::string> answers;
        Code code;
    };
    for (const Case& one : std::vector<Case>{{{"335"}, Code::noEqualsSign},
                                             {{"S = 335"}, Code::unknownName},
                                             {{"R = 335", "R = 336"}, Code::twice},
                                             {{"theta_R = 12", "θ_R = 12"}, Code::twice},
                                             {{"R ="}, Code::noValue},
                                             {{"R = about 300"}, Code::unreadable},
                                             {{"R = 335 furlongs"}, Code::unreadable},
                                             {{"R = 335 +- 5"}, Code::unreadable},
                                             {{"R = 12 deg"}, Code::wrongUnit},
                                             {{"theta_R = 12 N"}, Code::wrongUnit},
                                             {{"gamma = 4:3"}, Code::unreadable},
                                             {{"theta_R = sideways"}, Code::unreadable},
                                             {{"R = 335; 336"}, Code::manyValues}}) {
        const AttemptFault fault = faultOf(two(), one.answers);
        EXPECT_EQ(fault.code, one.code) << one.answers.front() << ": " << fault.message;
        EXPECT_FALSE(fault.message.empty());
        EXPECT_EQ(fault.message.find('\n'), std::string::npos);
    }
    EXPECT_NE(faultOf(two(), {"S = 1"}).message.find("R, theta_R"), std::string::npos);
}

TEST(MarkAttempt, AQuestionWithoutAnAnswerIsRefused) {
    const Sketch open = sketch({force("P", kToFind, kToFind), force("Q", kToFind, kToFind)});
    const Marker marker(open, solve(open));
    EXPECT_TRUE(marker.refusal());
    EXPECT_EQ(faultOf(open, {"R = 1"}).code, Code::noAnswer);
    const Sketch given = sketch({force("P", 10, 0)}, force("R", 10, 0));
    EXPECT_TRUE(Marker(given, solve(given)).refusal());
}

TEST(MarkAttempt, OneValueAndTwoDontGoTogether) {
    const Sketch ambiguous = sketch({force("P", kToFind, 0), force("Q", 6, kToFind)}, force("R", 8, 35));
    EXPECT_EQ(faultOf(ambiguous, {"P = 10.4; 2.69", "theta_Q = 130"}).code, Code::manyValues);
    EXPECT_EQ(faultOf(ambiguous, {"P = 1; 2; 3"}).code, Code::manyValues);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
