// SPDX-License-Identifier: MIT
// JSON as it is written: one writer, and how it lays objects and lists out.
#include "ui/files/json_text.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

JsonValue pair(JsonLayout layout) {
    return jsonObject({{"a", jsonNumber(1)}, {"b", jsonList({jsonNumber(0.5), JsonValue{}})}}, layout);
}

TEST(WritingJson, LaysAnObjectOutAsItIsTold) {
    EXPECT_EQ(writeJson(pair(JsonLayout::flat)), "{\"a\": 1, \"b\": [0.5, null]}\n");
    EXPECT_EQ(writeJson(pair(JsonLayout::padded)), "{ \"a\": 1, \"b\": [0.5, null] }\n");
    EXPECT_EQ(writeJson(pair(JsonLayout::lines)), "{\n  \"a\": 1,\n  \"b\": [0.5, null]\n}\n");
    EXPECT_EQ(writeJson(pair(JsonLayout::fitting)), writeJson(pair(JsonLayout::flat)));
}

TEST(WritingJson, PutsAMemberBesideTheOneBefore) {
    const JsonValue object = jsonObject(
        {{"a", jsonNumber(1)}, {"b", jsonTruth(false), true}, {"c", jsonText("x")}}, JsonLayout::lines);
    EXPECT_EQ(writeJson(object), "{\n  \"a\": 1, \"b\": false,\n  \"c\": \"x\"\n}\n");
}

TEST(WritingJson, BreaksWhatDoesNotFitIntoALineOf100Characters) {
    const auto ofWidth = [](std::size_t width) { // "[" and "]" and two quotes are four of them
        std::string text;
        for (std::size_t i = 0; i < width - 4; ++i)
            text += "ö";
        return jsonList({jsonText(text)});
    };
    EXPECT_EQ(writeJson(ofWidth(100)).find('\n'), writeJson(ofWidth(100)).size() - 1);
    EXPECT_TRUE(writeJson(ofWidth(101)).starts_with("[\n  \""));
    EXPECT_TRUE(writeJson(ofWidth(101)).ends_with("\"\n]\n"));
}

TEST(WritingJson, LeavesAnEmptyObjectOrListOnItsLine) {
    EXPECT_EQ(writeJson(jsonObject({}, JsonLayout::lines)), "{}\n");
    EXPECT_EQ(writeJson(jsonList({}, JsonLayout::lines)), "[]\n");
}

TEST(WritingJson, GivesBackWhatWasReadWithItsNumbersAsTheyStood) {
    const std::string text = R"({"z": 1.50, "a": [1e3, -0.0, 12345678901234567890], "t": "\"ö\" \\ \u0007"})";
    const auto read = parseJson(text);
    ASSERT_TRUE(std::holds_alternative<JsonValue>(read)) << std::get<JsonFault>(read).message;
    EXPECT_EQ(writeJson(std::get<JsonValue>(read)), text + '\n');
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
