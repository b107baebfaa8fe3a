// SPDX-License-Identifier: MIT
#include "core/quantity/typed.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace tailpoint {
namespace TAILPOINT_FILE {

template <class T>
std::string messageOf(const Typed<T>& typed) {
    const auto* error = std::get_if<TypedError>(&typed);
    return error != nullptr ? error->message : "";
}

struct NumberRow {
    const char* text;
    double value;
};

TEST(TypedNumbers, AreReadAsWritten) {
    const NumberRow table[] = {{"340", 340},
                               {"  340 ", 340},
                               {"+5", 5},
                               {"-3.6", -3.6},
                               {"- 3.6", -3.6},
                               {"\u22123,6", -3.6},
                               {"\u20133.6", -3.6}, // an en dash, as a word processor puts it
                               {"1.5", 1.5},
                               {"1,5", 1.5},
                               {".5", 0.5},
                               {",5", 0.5},
                               {"5.", 5},
                               {"1e3", 1000},
                               {"1.5E-3", 0.0015},
                               {"1.5e\u22123", 0.0015},
                               {"1.234", 1.234},
                               {"12 345", 12345},
                               {"1 234 567,891", 1234567.891},
                               {"12\u00A0345", 12345},
                               {"12\u202F345.5", 12345.5},
                               {"12\u2009345", 12345},
                               {"6.974 951 5", 6.9749515},
                               {"2.675", 2.675},
                               {"1e150", 1e150},
                               {"1e-150", 1e-150},
                               {"007", 7}};
    for (const NumberRow& row : table) {
        const Typed<double> typed = parseNumber(row.text);
        ASSERT_EQ(messageOf(typed), "") << row.text;
        EXPECT_EQ(std::get<double>(typed), row.value) << row.text;
    }
}

TEST(TypedNumbers, NeverComeOutAsMinusZero) {
    for (const char* text : {"-0", "\u22120,0", "0", "-0e5"}) {
        EXPECT_FALSE(std::signbit(std::get<double>(parseNumber(text)))) << text;
    }
}

TEST(TypedNumbers, AreRefusedWithAReasonWhenTheyCouldMeanTwoThings) {
    struct Row {
        const char* text;
        const char* reason;
    };
    const Row table[] = {{"", "can't be read"},
                         {"   ", "can't be read"},
                         {".", "can't be read"},
                         {"-", "can't be read"},
                         {"abc", "can't be read"},
                         {"nan", "can't be read"},
                         {"inf", "can't be read"},
                         {"-inf", "can't be read"},
                         {"1.2.3", "two decimal marks"},
                         {"1..2", "two decimal marks"},
                         {"1,2,3", "two decimal marks"},
                         {"1 23", "groups of three"},
                         {"1234 567", "groups of three"},
                         {"1 234 56", "groups of three"},
                         {"1.234 5678", "groups of three"},
                         {"1.23 456", "groups of three"},
                         {"1e999", "too large"},
                         {"-1e999", "too large"},
                         {"1e-999", "too small"},
                         {"12x", "goes on after"},
                         {"12 N", "goes on after"},
                         {"1e", "goes on after"},
                         {"1e+", "goes on after"},
                         {"0x10", "goes on after"},
                         {"1-2", "goes on after"},
                         {"1  234", "goes on after"},
                         {"\xFF\xFE", "UTF-8"},
                         {"\u0661", "can't be read"}};
    for (const Row& row : table) {
        const std::string message = messageOf(parseNumber(row.text));
        EXPECT_NE(message.find(row.reason), std::string::npos)
            << "'" << row.text << "' gave '" << message << "'";
        EXPECT_EQ(message.find('\n'), std::string::npos) << row.text;
    }
}

TEST(TypedNumbers, WithManyDigitsAreReadInFull) {
    EXPECT_EQ(std::get<double>(parseNumber("0.1000000000000000055511151231257827021181583404541015625")),
              0.1);
    EXPECT_EQ(std::get<double>(parseNumber(std::string(300, '9') + ".5")), 1e300);
    EXPECT_NE(messageOf(parseNumber(std::string(400, '9'))).find("too large"), std::string::npos);
}

struct MagnitudeRow {
    const char* text;
    ForceUnit sheet;
    double value;
    std::optional<Tolerance> tolerance;
};

Tolerance sides(double plus, double minus) {
    return {plus, minus, false};
}

TEST(TypedMagnitudes, AreConvertedToTheUnitOfTheSheet) {
    const MagnitudeRow table[] = {{"340", ForceUnit::N, 340, {}},
                                  {"340 N", ForceUnit::N, 340, {}},
                                  {"340N", ForceUnit::N, 340, {}},
                                  {"1.2 kN", ForceUnit::N, 1200, {}},
                                  {"1,2kN", ForceUnit::N, 1200, {}},
                                  {"75 lbf", ForceUnit::lbf, 75, {}},
                                  {"75 lb", ForceUnit::lbf, 75, {}},
                                  {"2 kip", ForceUnit::lbf, 2000, {}},
                                  {"1 lbf", ForceUnit::N, 4.4482216152605, {}},
                                  {"1 kgf", ForceUnit::N, 9.80665, {}},
                                  {"0", ForceUnit::kN, 0, {}},
                                  {"1.5e3 N", ForceUnit::kN, 1.5, {}},
                                  {"340 +- 5", ForceUnit::N, 340, plusMinus(5)},
                                  {"340 \u00B1 5", ForceUnit::N, 340, plusMinus(5)},
                                  {"340\u00B15N", ForceUnit::N, 340, plusMinus(5)},
                                  {"340 +/- 5 N", ForceUnit::N, 340, plusMinus(5)},
                                  {"340 +\u2212 5", ForceUnit::N, 340, plusMinus(5)},
                                  {"1.2 \u00B1 0.1 kN", ForceUnit::N, 1200, plusMinus(100)},
                                  {"1.2 kN \u00B1 0.1", ForceUnit::N, 1200, plusMinus(100)},
                                  {"1.2 kN \u00B1 50 N", ForceUnit::N, 1200, plusMinus(50)},
                                  {"340 \u00B1 5 %", ForceUnit::N, 340, plusMinusPercent(5)},
                                  {"340 +-5%", ForceUnit::N, 340, plusMinusPercent(5)},
                                  {"1.2 kN +/- 2.5 %", ForceUnit::N, 1200, plusMinusPercent(2.5)},
                                  {"340 +5/-0", ForceUnit::N, 340, sides(5, 0)},
                                  {"340 +5 -0", ForceUnit::N, 340, sides(5, 0)},
                                  {"340+5/\u22120", ForceUnit::N, 340, sides(5, 0)},
                                  {"340 +5/\u20130", ForceUnit::N, 340, sides(5, 0)},
                                  {"340 - 2 / + 5", ForceUnit::N, 340, sides(5, 2)},
                                  {"1.2 +0.1/-0.05 kN", ForceUnit::N, 1200, sides(100, 50)},
                                  {"1.2 kN +100 N/-0.05", ForceUnit::N, 1200, sides(100, 50)},
                                  {"1,2 kN +0,1/-0", ForceUnit::N, 1200, sides(100, 0)},
                                  {"10 daN", ForceUnit::N, 100, {}},
                                  {"1.5 tonf", ForceUnit::N, 14709.975, {}},
                                  {"2 short tonf", ForceUnit::kip, 4, {}},
                                  {"2 short   tonf \u00B1 1 %", ForceUnit::lbf, 4000, plusMinusPercent(1)}};
    for (const MagnitudeRow& row : table) {
        const Typed<TypedMagnitude> typed = parseMagnitude(row.text, row.sheet);
        ASSERT_EQ(messageOf(typed), "") << row.text;
        EXPECT_EQ(std::get<TypedMagnitude>(typed).value, row.value) << row.text;
        EXPECT_EQ(std::get<TypedMagnitude>(typed).tolerance, row.tolerance) << row.text;
    }
}

TEST(TypedLoads, KeepTheUnitInWhichTheyAreTyped) {
    struct Row {
        const char* text;
        TypedLoad load;
    };
    const Row table[] = {{"340", {340, ForceUnit::kN, {}}},
                         {"850 kg", {850, MassUnit::kg, {}}},
                         {"1t", {1, MassUnit::t, {}}},
                         {"100 daN", {100, ForceUnit::daN, {}}},
                         {"1.5 short tonf", {1.5, ForceUnit::shortTonf, {}}},
                         {"850 kg ± 5 %", {850, MassUnit::kg, plusMinusPercent(5)}},
                         {"1 t +50 kg/-0", {1, MassUnit::t, sides(0.05, 0)}},
                         {"1.2 ± 0.1 t", {1.2, MassUnit::t, plusMinus(0.1)}},
                         {"1.2 kN ± 50 N", {1.2, ForceUnit::kN, plusMinus(0.05)}}};
    for (const Row& row : table) {
        const Typed<TypedLoad> typed = parseLoad(row.text, ForceUnit::kN);
        ASSERT_EQ(messageOf(typed), "") << row.text;
        const auto& load = std::get<TypedLoad>(typed);
        EXPECT_EQ(load.value, row.load.value) << row.text;
        EXPECT_EQ(load.unit, row.load.unit) << row.text;
        EXPECT_EQ(load.tolerance, row.load.tolerance) << row.text;
    }
}

TEST(TypedMagnitudes, AreRefusedWithTheMend) {
    struct Row {
        const char* text;
        const char* reason;
    };
    const Row table[] = {{"-5", "turn the direction round"},
                         {"-5 kN", "turn the direction round"},
                         {"340 X", "is not a unit"},
                         {"340 newton", "is not a unit"},
                         {"340 kn", "is not a unit"},
                         {"340 N N", "goes on after"},
                         {"340 +- 0", "tolerance"},
                         {"340 +- -5", "tolerance"},
                         {"340 +- ", "can't be read"},
                         {"340 +-5%%", "goes on after"},
                         {"340 +5", "one side"},
                         {"340 -5", "one side"},
                         {"340 +5/+0", "one side"},
                         {"340 +5/", "one side"},
                         {"340 + -5/-0", "one side"},
                         {"340 +0/-0", "tolerance that is not above 0"},
                         {"340 +5 %/-0", "percentage of one side"},
                         {"340 +5/-0 %", "percentage of one side"},
                         {"0 \u00B1 5 %", "percentage of 0"},
                         {"850 kg", "is a mass; type a force, in N say"},
                         {"340 N \u00B1 1 kg", "a mass and a force"},
                         {"2 ton", "which ton? Type t for"},
                         {"2 short tons", "which short tons?"},
                         {"2 short", "'short ' is not a unit"},
                         {"N", "can't be read"},
                         {"1.2.3 kN", "two decimal marks"},
                         {"340 +- 5 +- 6", "goes on after"},
                         {"12 345 6 N", "groups of three"}};
    for (const Row& row : table) {
        const std::string message = messageOf(parseMagnitude(row.text, ForceUnit::N));
        EXPECT_NE(message.find(row.reason), std::string::npos)
            << "'" << row.text << "' gave '" << message << "'";
    }
}

TypedDirection directionFrom(const char* text, AngleUnit sheet = AngleUnit::deg) {
    const Typed<TypedDirection> typed = parseDirection(text, sheet);
    EXPECT_EQ(messageOf(typed), "") << text;
    return messageOf(typed).empty() ? std::get<TypedDirection>(typed) : TypedDirection{};
}

TEST(TypedDirections, CanBeAnglesInAnyUnit) {
    EXPECT_EQ(directionFrom("25").angle, 25);
    EXPECT_EQ(directionFrom("25°").angle, 25);
    EXPECT_EQ(directionFrom("25 °").angle, 25);
    EXPECT_EQ(directionFrom("25 deg").angle, 25);
    EXPECT_EQ(directionFrom("25 degrees").angle, 25);
    EXPECT_EQ(directionFrom("\u221240").angle, -40);
    EXPECT_EQ(directionFrom("0.4", AngleUnit::rad).angle, 0.4);
    EXPECT_EQ(directionFrom("0.4 rad", AngleUnit::rad).angle, 0.4);
    EXPECT_EQ(directionFrom("27.8 gon", AngleUnit::gon).angle, 27.8);
    EXPECT_EQ(directionFrom("100 gon").angle, 90);
    EXPECT_EQ(directionFrom("45 deg", AngleUnit::gon).angle, 50);
    EXPECT_NEAR(directionFrom("1 rad").angle, 57.29577951308232, 1e-14);
    EXPECT_EQ(directionFrom("25").form, TypedDirection::Form::angle);
}

TEST(TypedDirections, CanCarryATolerance) {
    EXPECT_EQ(directionFrom("25 ± 0.5").tolerance, plusMinus(0.5));
    EXPECT_EQ(directionFrom("25° +- 0.5°").tolerance, plusMinus(0.5));
    EXPECT_EQ(directionFrom("50 gon ± 10").tolerance, plusMinus(9));
    EXPECT_EQ(directionFrom("3:4 ± 1").tolerance, plusMinus(1));
    EXPECT_EQ(directionFrom("N30E +- 2").tolerance, plusMinus(2));
    EXPECT_EQ(directionFrom("25 \u00B1 5 %").tolerance, plusMinusPercent(5));
    EXPECT_EQ(directionFrom("25 +2/-0").tolerance, sides(2, 0));
    EXPECT_EQ(directionFrom("-40\u00B0 +2\u00B0/-1.5\u00B0").tolerance, sides(2, 1.5));
    EXPECT_EQ(directionFrom("50 gon -10 +0").tolerance, sides(0, 9));
    EXPECT_EQ(directionFrom("3:4 +2/-0").tolerance, sides(2, 0));
    EXPECT_EQ(directionFrom("N30E +2/\u22121").tolerance, sides(2, 1));
    EXPECT_FALSE(directionFrom("25").tolerance);
}

TEST(TypedDirections, CanBeSlopes) {
    for (const char* text : {"3:-4", "3 : -4", "3 :\u22124", " 3: -4 "}) {
        const TypedDirection slope = directionFrom(text);
        EXPECT_EQ(slope.form, TypedDirection::Form::slope) << text;
        EXPECT_EQ(slope.run, 3) << text;
        EXPECT_EQ(slope.rise, -4) << text;
    }
    EXPECT_EQ(directionFrom("-1,5:0").run, -1.5);
}

struct BearingRow {
    const char* text;
    char from;
    double degrees;
    char toward;
};

TEST(TypedDirections, CanBeBearings) {
    const BearingRow table[] = {
        {"N30E", 'N', 30, 'E'},    {"n30e", 'N', 30, 'E'}, {"S 12.5 W", 'S', 12.5, 'W'},
        {"N30°E", 'N', 30, 'E'},   {"N 0 W", 'N', 0, 'W'}, {"S90E", 'S', 90, 'E'},
        {"N", 'N', 0, 'E'},        {"S", 'S', 0, 'E'},     {"E", 'N', 90, 'E'},
        {"w", 'N', 90, 'W'},       {"NE", 'N', 45, 'E'},   {"S W", 'S', 45, 'W'},
        {"N12,5E", 'N', 12.5, 'E'}};
    for (const BearingRow& row : table) {
        const TypedDirection bearing = directionFrom(row.text);
        EXPECT_EQ(bearing.form, TypedDirection::Form::bearing) << row.text;
        EXPECT_EQ(bearing.from, row.from) << row.text;
        EXPECT_EQ(bearing.degrees, row.degrees) << row.text;
        EXPECT_EQ(bearing.toward, row.toward) << row.text;
    }
}

TEST(TypedDirections, AreRefusedWithTheMend) {
    struct Row {
        const char* text;
        const char* reason;
    };
    const Row table[] = {{"", "can't be read"},
                         {"25 x", "is not a unit"},
                         {"25 grad", "is not a unit"},
                         {"0:0", "points nowhere"},
                         {"3:", "can't be read"},
                         {":4", "can't be read"},
                         {"3:4:5", "goes on after"},
                         {"N120E", "no bearing"},
                         {"N30", "no bearing"},
                         {"N30N", "no bearing"},
                         {"E30N", "goes on after"},
                         {"NN", "no bearing"},
                         {"N30EE", "goes on after"},
                         {"25 ± 0", "tolerance"},
                         {"25 deg deg", "goes on after"},
                         {"25° :4", "goes on after"},
                         {"1e999", "too large"},
                         {"3:1e999", "too large"},
                         {"north", "goes on after"},
                         {"abc", "N30E"},
                         {"25 +2", "one side"},
                         {"3:4 \u00B1 5 %", "percentage of no angle"},
                         {"N30E +-5%", "percentage of no angle"},
                         {"0 \u00B1 5 %", "percentage of 0"}};
    for (const Row& row : table) {
        const std::string message = messageOf(parseDirection(row.text, AngleUnit::deg));
        EXPECT_NE(message.find(row.reason), std::string::npos)
            << "'" << row.text << "' gave '" << message << "'";
    }
}

template <class T>
std::optional<TypedCode> codeOf(const Typed<T>& typed) {
    const auto* error = std::get_if<TypedError>(&typed);
    return error ? std::optional(error->code) : std::nullopt;
}

TEST(TypedTexts, AreRefusedEachWithItsCode) {
    using enum TypedCode;
    enum class As { number, magnitude, direction };
    struct Row {
        TypedCode code;
        As as;
        const char* text;
    };
    const Row table[] = {{notUtf8, As::number, "\xFF"},
                         {notUtf8, As::magnitude, "\xFF"},
                         {notUtf8, As::direction, "\xFF"},
                         {unreadable, As::number, "much"},
                         {unreadable, As::magnitude, ""},
                         {unreadable, As::direction, "up"},
                         {severalMarks, As::number, "1.2.3"},
                         {severalMarks, As::number, "1234,567.8"},
                         {strayedSpaces, As::number, "1 23"},
                         {twoReadings, As::magnitude, "1,234"},
                         {tooLarge, As::number, "1e400"},
                         {tooSmall, As::number, "1e-400"},
                         {unknownUnit, As::magnitude, "340 oz"},
                         {unknownUnit, As::direction, "25 turns"},
                         {leftOver, As::number, "340 N"},
                         {leftOver, As::magnitude, "340 N !"},
                         {leftOver, As::direction, "N30E !"},
                         {negative, As::magnitude, "-340"},
                         {toleranceNotPositive, As::magnitude, "340 +- 0"},
                         {toleranceNotPositive, As::direction, "25 +- -1"},
                         {toleranceOneSided, As::magnitude, "340 +5"},
                         {tolerancePercent, As::magnitude, "340 +5/-0 %"},
                         {unitOfAnotherKind, As::magnitude, "850 kg"},
                         {bearing, As::direction, "N91E"},
                         {bearing, As::direction, "N30N"},
                         {pointsNowhere, As::direction, "0:0"}};
    std::set<TypedCode> met;
    for (const Row& row : table) {
        const auto code = row.as == As::number      ? codeOf(parseNumber(row.text))
                          : row.as == As::magnitude ? codeOf(parseMagnitude(row.text, ForceUnit::N))
                                                    : codeOf(parseDirection(row.text, AngleUnit::deg));
        EXPECT_EQ(code, row.code) << row.text;
        met.insert(row.code);
    }
    EXPECT_EQ(met.size(), kTypedCodes);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
