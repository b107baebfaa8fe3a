// SPDX-License-Identifier: MIT
#include "core/quantity/text.h"

#include <gtest/gtest.h>

#include <string>

namespace tailpoint {
namespace TAILPOINT_FILE {

TEST(PrintableText, IsCountedInCharactersNotBytes) {
    EXPECT_EQ(printableLength(""), 0u);
    EXPECT_EQ(printableLength("P"), 1u);
    EXPECT_EQ(printableLength("T1 left"), 7u);
    EXPECT_EQ(printableLength("Größe"), 5u);
    EXPECT_EQ(printableLength("Σα∥→"), 4u);
    EXPECT_EQ(printableLength("\U0001D439"), 1u);
}

TEST(PrintableText, HasNoControlsAndNoHiddenMarks) {
    for (const char* text : {"\n", "a\tb", "\x7F", "\u0085", "\u200B", "\u202E", "\u2028", "\uFEFF", "\u00AD",
                             "\uE000", "\uFFFE", "\uFDD0", "\U000E0041", "\U0010FFFF"}) {
        EXPECT_FALSE(printableLength(text)) << text;
    }
    EXPECT_FALSE(printableLength(std::string_view("a\0b", 3)));
}

TEST(PrintableText, IsSoundUtf8) {
    for (const char* text : {"\x80", "\xC0\x80", "\xC3", "\xE0\x80\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80",
                             "\xF8\x88\x80\x80\x80", "a\xFF", "\xE2\x82"}) {
        EXPECT_FALSE(printableLength(text));
    }
}

TEST(OneLine, ReplacesWhatWouldBreakOrHideIt) {
    EXPECT_EQ(oneLine("a\nb"), "a\uFFFDb");
    EXPECT_EQ(oneLine("a\xFF\u202E"), "a\uFFFD\uFFFD");
    EXPECT_EQ(oneLine("Größe", 4), "Größ...");
    EXPECT_EQ(oneLine("Größe", 5), "Größe");
}

TEST(KeptTogether, ALineEndsNeitherInAnEquationNorBeforeAUnit) {
    // ~ for the no-break space
    const auto kept = [](std::string_view text) {
        std::string out = keptTogether(text);
        for (std::size_t at = 0; (at = out.find("\u00A0", at)) != out.npos;)
            out.replace(at, 2, "~");
        return out;
    };
    EXPECT_EQ(kept("one with P = 68 kN at 16°, the other"), "one with P~=~68~kN at 16°, the other");
    EXPECT_EQ(kept("along the slope 3 : −4 (P), run : rise."), "along the slope 3~:~−4 (P), run~:~rise.");
    EXPECT_EQ(kept("Q = 2.5 kip, and R = 12 gon."), "Q~=~2.5~kip, and R~=~12~gon.");
    EXPECT_EQ(kept("P = 340 ± 5 N at 20° ± 2°, or 8 kN ± 5 %"), "P~=~340~±~5~N at 20°~±~2°, or 8~kN~±~5~%");
    EXPECT_EQ(kept("in 3 N steps; 4 boats, N of it"), "in 3~N steps; 4 boats, N of it");
    EXPECT_EQ(kept(" two  spaces "), " two  spaces ");
    EXPECT_EQ(kept(""), "");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
