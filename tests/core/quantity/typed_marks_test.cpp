// SPDX-License-Identifier: MIT
// Points and commas in typed numbers: read where there is one way to read them, asked about where there are
// two.
#include "core/quantity/typed.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

using Readings = std::vector<std::string>;

template <class T>
TypedError refusalOf(const Typed<T>& typed, const char* text) {
    const auto* error = std::get_if<TypedError>(&typed);
    EXPECT_NE(error, nullptr) << text << " was read";
    return error != nullptr ? *error : TypedError{};
}

TEST(TypedMarks, AreReadWhereThereIsOneWayToReadThem) {
    struct Row {
        const char* text;
        double value;
    };
    const Row table[] = {{"1.234", 1.234}, // a point alone is the decimal mark: as we write numbers ourselves
                         {"12.345", 12.345},
                         {"1,5", 1.5},
                         {"1,23", 1.23},
                         {"1,2345", 1.2345},
                         {"1234,567", 1234.567}, // no head of four digits before grouped ones
                         {"0,125", 0.125},       // nobody writes a thousand as 0,125
                         {"-0,785", -0.785},
                         {"007,125", 7.125},
                         {",125", 0.125},
                         {"1 234,567", 1234.567}, // spaces part the thousands, so the comma doesn't
                         {"1,234 567", 1.234567},
                         {"1.234,5", 1234.5},
                         {"1.234,567", 1234.567},
                         {"1,234.5", 1234.5},
                         {"1,234.567", 1234.567},
                         {"1,234,567", 1234567},
                         {"1,234,567.8", 1234567.8},
                         {"1.234.567,8", 1234567.8},
                         {"-12,345,678", -12345678},
                         {"1,234,567e-3", 1234.567}};
    for (const Row& row : table) {
        const Typed<double> typed = parseNumber(row.text);
        ASSERT_TRUE(std::holds_alternative<double>(typed))
            << row.text << ": " << std::get<TypedError>(typed).message;
        EXPECT_EQ(std::get<double>(typed), row.value) << row.text;
    }
}

TEST(TypedMarks, ACommaThatMayPartThousandsIsAskedAbout) {
    struct Row {
        const char *text, *message;
        Readings readings;
    };
    const Row table[] = {
        {"1,234", "1,234 may be 1.234 or 1234: write one of these", {"1.234", "1234"}},
        {" 12,345", "12,345 may be 12.345 or 12345: write one of these", {" 12.345", " 12345"}},
        {"123,000", "123,000 may be 123.000 or 123000: write one of these", {"123.000", "123000"}},
        {"-1,234", "-1,234 may be -1.234 or -1234: write one of these", {"-1.234", "-1234"}},
        {"1,234e2", "1,234e2 may be 1.234e2 or 1234e2: write one of these", {"1.234e2", "1234e2"}}};
    for (const Row& row : table) {
        const TypedError error = refusalOf(parseNumber(row.text), row.text);
        EXPECT_EQ(error.message, row.message);
        EXPECT_EQ(error.readings, row.readings) << row.text;
    }
}

TEST(TypedMarks, OfMagnitudesAreAskedAboutWithTheRestOfTheTextKept) {
    struct Row {
        const char *text, *said;
        Readings readings;
    };
    const Row table[] = {{"1,200", "1,200 may be 1.200 or 1200", {"1.200", "1200"}},
                         {"1,200 N", "1,200 may be 1.200 or 1200", {"1.200 N", "1200 N"}},
                         {"340 \u00B1 1,200 N", "1,200 may be", {"340 \u00B1 1.200 N", "340 \u00B1 1200 N"}},
                         {"1,234 +- 1,5 kN", "1,234 may be", {"1.234 +- 1,5 kN", "1234 +- 1,5 kN"}}};
    for (const Row& row : table) {
        const TypedError error = refusalOf(parseMagnitude(row.text, ForceUnit::N), row.text);
        EXPECT_NE(error.message.find(row.said), std::string::npos) << error.message;
        EXPECT_EQ(error.readings, row.readings) << row.text;
    }
    EXPECT_EQ(std::get<TypedMagnitude>(parseMagnitude("1,234.5 N", ForceUnit::kN)).value, 1.2345);
}

TEST(TypedMarks, OfDirectionsAreAskedAboutInEveryForm) {
    struct Row {
        const char* text;
        Readings readings;
    };
    const Row table[] = {{"1,234", {"1.234", "1234"}},
                         {"25 \u00B1 1,500\u00B0", {"25 \u00B1 1.500\u00B0", "25 \u00B1 1500\u00B0"}},
                         {"1,500:4", {"1.500:4", "1500:4"}},
                         {"3 : 1,500", {"3 : 1.500", "3 : 1500"}},
                         {"N12,345E", {"N12.345E", "N12345E"}}};
    for (const Row& row : table) {
        const TypedError error = refusalOf(parseDirection(row.text, AngleUnit::deg), row.text);
        EXPECT_EQ(error.readings, row.readings) << error.message;
    }
}

TEST(TypedMarks, ThatMakeNoNumberAreRefusedWithoutReadings) {
    for (const char* text : {"1,2,3", "1.2.3", "1.234.567", "1,23.4", "12.34,5", "1234,567.8", "0,123,456",
                             "0.234,5", "1,234,56", "1,234.5.6", "1.234,5,6", "1 234,567.8", "1,234,567 890",
                             "1,234.", "1.234,", ",123,456", "1,,234"}) {
        const TypedError error = refusalOf(parseNumber(text), text);
        EXPECT_EQ(error.message.find('\n'), std::string::npos) << text;
        if (std::string_view(text) != "1,234.") { // there the comma is asked about before the stray point
            EXPECT_TRUE(error.readings.empty()) << text << ": " << error.message;
        }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
