// SPDX-License-Identifier: MIT
// A typed text, read character by character. For the parsers of this folder alone.
#pragma once

#include "core/quantity/utf8.h"

#include <optional>
#include <string>
#include <string_view>

namespace tailpoint::typing {

inline constexpr char32_t kMinusSign = 0x2212, kPlusMinusSign = 0xB1, kDegreeSign = 0xB0;
inline constexpr char32_t kEnDash = 0x2013; ///< what a word processor makes of a typed minus

inline bool isSpace(char32_t c) {
    return c == ' ' || c == '\t' || c == 0xA0 || (c >= 0x2000 && c <= 0x200A) || c == 0x202F;
}
inline bool isDigit(char32_t c) {
    return c >= '0' && c <= '9';
}
inline bool isLetter(char32_t c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
inline bool isMark(char32_t c) {
    return c == '.' || c == ',';
}
inline bool isSign(char32_t c) {
    return c == '+' || c == '-' || c == kMinusSign || c == kEnDash;
}

/// A text as code points with a reading position. Beyond the end it reads as 0.
class Reader {
public:
    explicit Reader(std::u32string text) : text_(std::move(text)) {}
    char32_t peek(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : 0; }
    char32_t take() { return at_ < text_.size() ? text_[at_++] : 0; }
    bool atEnd() const { return at_ >= text_.size(); }
    /// The bytes that its code points before the reading position take in UTF-8: a place in the text itself.
    std::size_t byteOffset() const {
        std::size_t bytes = 0;
        for (std::size_t i = 0; i < at_; ++i) {
            bytes += utf8Length(text_[i]);
        }
        return bytes;
    }
    void skipSpaces() {
        while (isSpace(peek())) {
            ++at_;
        }
    }
    bool takeIf(char32_t c) {
        const bool hit = peek() == c;
        at_ += hit ? 1 : 0;
        return hit;
    }
    std::string takeLetters() {
        std::string word;
        while (isLetter(peek())) {
            word += static_cast<char>(take());
        }
        return word;
    }

private:
    std::u32string text_;
    std::size_t at_ = 0;
};

/// Empty where the text is no UTF-8 or holds a NUL.
inline std::optional<std::u32string> soundCodePoints(std::string_view text) {
    const bool sound = firstNonUtf8(text) == text.npos && text.find('\0') == text.npos;
    return sound ? std::optional(codePoints(text)) : std::nullopt;
}

} // namespace tailpoint::typing
