// SPDX-License-Identifier: MIT
#include "core/practice/families.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

constexpr std::string_view kAlphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"; // Crockford's, without I, L, O, U

std::vector<ProblemId> someIds() {
    std::vector<ProblemId> ids;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level)
            for (const std::uint32_t number : {0U, 1U, 31U, 32U, 54'321U, kProblemNumbers - 1})
                ids.push_back({std::string(family.id), level, number});
    return ids;
}

TEST(PracticeCode, IsReadBack) {
    for (const ProblemId& id : someIds()) {
        const std::string code = problemCode(id);
        EXPECT_EQ(code.size(), 6U);
        EXPECT_EQ(code.find_first_not_of(kAlphabet), code.npos) << code;
        EXPECT_EQ(problemIdOf(code), id) << code;
    }
}

TEST(PracticeCode, IsTakenInSmallLettersAndWithLettersThatLookLikeDigits) {
    const std::string code = problemCode({"two-forces", 1, 33});
    ASSERT_NE(code.find('0'), code.npos);
    ASSERT_NE(code.find('1'), code.npos);
    std::string heard;
    for (const char c : code)
        heard += c == '0'   ? 'o'
                 : c == '1' ? 'l'
                            : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    EXPECT_EQ(problemIdOf(heard), (ProblemId{"two-forces", 1, 33}));
}

TEST(PracticeCode, OneCharacterMisheardOrTwoExchangedIsNeverAnotherCode) {
    for (const ProblemId& id : someIds()) {
        const std::string code = problemCode(id);
        for (std::size_t i = 0; i < code.size(); ++i) {
            for (const char other : kAlphabet) {
                std::string wrong = code;
                wrong[i] = other;
                EXPECT_TRUE(wrong == code || !problemIdOf(wrong)) << code << " " << wrong;
            }
            std::string exchanged = code;
            if (i + 1 < code.size())
                std::swap(exchanged[i], exchanged[i + 1]);
            EXPECT_TRUE(exchanged == code || !problemIdOf(exchanged)) << code << " " << exchanged;
        }
    }
}

TEST(PracticeCode, WhatIsNoCodeIsRefused) {
    for (const char* text : {"", "08000", "0800055", "08-005", "UUUUUU", "ZZZZZZ"})
        EXPECT_FALSE(problemIdOf(text)) << text;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
