// SPDX-License-Identifier: MIT
#include "core/quantity/utf8.h"

#include <gtest/gtest.h>

#include <string>

namespace tailpoint {
namespace TAILPOINT_FILE {

/// A code point and its bytes.
struct Row {
    char32_t c;
    std::string_view bytes;
};
// RFC 3629, sections 3 and 7: the limits of each length, and the RFC's own examples.
constexpr Row kRows[] = {{U'A', "A"},
                         {0x7F, "\x7F"},
                         {0x80, "\xC2\x80"},
                         {0x7FF, "\xDF\xBF"},
                         {0x800, "\xE0\xA0\x80"},
                         {0x2262, "\xE2\x89\xA2"},
                         {0x65E5, "\xE6\x97\xA5"},
                         {0xD7FF, "\xED\x9F\xBF"},
                         {0xE000, "\xEE\x80\x80"},
                         {0xFFFF, "\xEF\xBF\xBF"},
                         {0x10000, "\xF0\x90\x80\x80"},
                         {0x233B4, "\xF0\xA3\x8E\xB4"},
                         {0x10FFFF, "\xF4\x8F\xBF\xBF"}};

// RFC 3629, section 4: overlong forms, surrogates, beyond U+10FFFF, stray and missing bytes.
constexpr std::string_view kDamaged[] = {"\x80",         "\xBF",
                                         "\xC0\x80",     "\xC1\xBF",
                                         "\xC3",         "\xE0\x9F\xBF",
                                         "\xE2\x82",     "\xED\xA0\x80",
                                         "\xED\xBF\xBF", "\xF0\x8F\xBF\xBF",
                                         "\xF0\x9F\x8C", "\xF4\x90\x80\x80",
                                         "\xF5",         "\xF8\x88\x80\x80\x80",
                                         "\xFE",         "\xFF"};

TEST(Utf8, IsWrittenAndReadAsTheStandardSays) {
    for (const Row& row : kRows) {
        std::string out;
        appendUtf8(out, row.c);
        EXPECT_EQ(out, row.bytes);
        EXPECT_EQ(utf8Length(row.c), row.bytes.size());
        std::string_view text = row.bytes;
        EXPECT_EQ(nextCodePoint(text), row.c);
        EXPECT_TRUE(text.empty());
        EXPECT_EQ(codePoints(row.bytes), std::u32string(1, row.c));
    }
}

TEST(Utf8, IsTakenOneByOneAndStopsAtDamage) {
    std::string_view text = "aé\xFF";
    EXPECT_EQ(nextCodePoint(text), U'a');
    EXPECT_EQ(nextCodePoint(text), U'é');
    EXPECT_FALSE(nextCodePoint(text));
    EXPECT_EQ(text.size(), 1u);
    EXPECT_EQ(takeCodePoint(text), 0xFFFDu);
    EXPECT_TRUE(text.empty());
    EXPECT_FALSE(nextCodePoint(text));
}

TEST(Utf8, DamageIsFoundWhereItBegins) {
    for (const std::string_view damaged : kDamaged) {
        EXPECT_EQ(firstNonUtf8("né" + std::string(damaged)), 3u);
        EXPECT_EQ(firstNonUtf8(std::string(damaged) + "né"), 0u);
    }
    for (const Row& row : kRows)
        EXPECT_EQ(firstNonUtf8(row.bytes), std::string_view::npos);
    EXPECT_EQ(firstNonUtf8(""), std::string_view::npos);
}

TEST(Utf8, EveryByteThatBelongsToNoCharacterIsOneOfItsOwn) {
    for (const std::string_view damaged : kDamaged) {
        const std::string text = "né" + std::string(damaged) + "日";
        EXPECT_EQ(codePoints(text), U"né" + std::u32string(damaged.size(), 0xFFFD) + U"日");
        EXPECT_EQ(characterCount(text), 3 + damaged.size());
        EXPECT_EQ(characterBegins(text).size(), 3 + damaged.size());
        EXPECT_EQ(characterBegins(text).back(), 3 + damaged.size());
    }
}

TEST(Utf8, IsCutBetweenCharacters) {
    EXPECT_EQ(firstCharacters("Größe", 0), "");
    EXPECT_EQ(firstCharacters("Größe", 3), "Grö");
    EXPECT_EQ(firstCharacters("Größe", 9), "Größe");
    EXPECT_EQ(firstCharacters("日\xFFq", 2), "日\xFF");
    EXPECT_EQ(characterBegins("Gröq"), (std::vector<std::size_t>{0, 1, 2, 4}));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
