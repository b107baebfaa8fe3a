// SPDX-License-Identifier: MIT
// JSON text as a tree: a strict parser with a place and a mend for what it refuses.
#include "core/quantity/utf8.h"
#include "ui/files/json_text.h"

#include <charconv>
#include <cmath>
#include <cstdint>
#include <unordered_set>

namespace tailpoint {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// Recursive descent over bytes already known to be UTF-8; a JsonFault is thrown and stays inside this file.
class Parser {
public:
    explicit Parser(std::string_view text) : m_text(text) {}

    JsonValue document() {
        if (m_text.starts_with(kByteOrderMark))
            m_at = kByteOrderMark.size();
        skipSpace();
        if (atEnd())
            fail("the file is empty; a sketch begins with {");
        JsonValue value = parseValue(0);
        skipSpace();
        if (!atEnd())
            fail("something follows the end of the sketch; take it out");
        return value;
    }

private:
    [[noreturn]] void fail(std::string message) const { throw JsonFault{m_at, std::move(message)}; }
    [[noreturn]] void failAt(std::size_t offset, std::string message) const {
        throw JsonFault{offset, std::move(message)};
    }
    bool atEnd() const { return m_at >= m_text.size(); }
    char peek() const { return atEnd() ? '\0' : m_text[m_at]; }

    void skipSpace() {
        while (!atEnd() && (peek() == ' ' || peek() == '\t' || peek() == '\n' || peek() == '\r'))
            ++m_at;
        if (peek() == '/' || peek() == '#')
            fail("JSON has no comments; take it out");
    }

    JsonValue parseValue(int depth) {
        if (depth > kDeepestNesting)
            fail("nested deeper than " + std::to_string(kDeepestNesting) + " levels; no sketch needs that");
        if (++m_values > kMostValues)
            fail("more than " + std::to_string(kMostValues) + " values; a sketch has at most 10000 forces");
        JsonValue value;
        value.offset = m_at;
        if (peek() == '{')
            parseObject(value, depth);
        else if (peek() == '[')
            parseArray(value, depth);
        else if (peek() == '"')
            value.kind = JsonValue::Kind::string, value.text = parseString();
        else if (peek() == '-' || isDigit(peek()))
            parseNumber(value);
        else
            parseWord(value);
        return value;
    }

    /// After a value: true if a comma says that another follows, false at `close`.
    bool another(char close) {
        skipSpace();
        if (peek() == close) {
            ++m_at;
            return false;
        }
        if (atEnd())
            fail(std::string("the file ends too early; ") + close + " is missing");
        if (peek() != ',')
            fail(std::string("a comma or ") + close + " is missing here");
        const std::size_t comma = m_at++;
        skipSpace();
        if (peek() == close)
            failAt(comma, std::string("a comma stands before ") + close + "; take it out");
        return true;
    }

    bool opensEmpty(char close) {
        ++m_at;
        skipSpace();
        if (peek() != close)
            return false;
        ++m_at;
        return true;
    }

    void parseObject(JsonValue& value, int depth) {
        value.kind = JsonValue::Kind::object;
        if (opensEmpty('}'))
            return;
        std::unordered_set<std::string> seen;
        do {
            skipSpace();
            const std::size_t at = m_at;
            if (peek() != '"')
                fail(atEnd() ? "the file ends too early; } is missing"
                             : "a key in double quotes is missing here");
            std::string key = parseString();
            if (!seen.insert(key).second)
                failAt(at, "the key " + jsonString(firstCharacters(key, 40)) + " stands twice; take one out");
            skipSpace();
            if (peek() != ':')
                fail("a colon is missing after the key " + jsonString(firstCharacters(key, 40)));
            ++m_at;
            skipSpace();
            JsonValue member = parseValue(depth + 1);
            value.members.push_back({std::move(key), std::move(member)});
        } while (another('}'));
    }

    void parseArray(JsonValue& value, int depth) {
        value.kind = JsonValue::Kind::array;
        if (opensEmpty(']'))
            return;
        do {
            skipSpace();
            value.items.push_back(parseValue(depth + 1));
        } while (another(']'));
    }

    void digits() {
        if (!isDigit(peek()))
            fail("a digit is missing here");
        while (isDigit(peek()))
            ++m_at;
    }

    void parseNumber(JsonValue& value) {
        const std::size_t start = m_at;
        if (peek() == '-')
            ++m_at;
        if (isLetter(peek()))
            failAt(start, notFinite());
        if (peek() == '0' && m_at + 1 < m_text.size() && isDigit(m_text[m_at + 1]))
            fail("a number does not begin with 0; take the zero out");
        digits();
        if (peek() == '.')
            ++m_at, digits();
        if (peek() == 'e' || peek() == 'E') {
            ++m_at;
            if (peek() == '+' || peek() == '-')
                ++m_at;
            digits();
        }
        value.kind = JsonValue::Kind::number;
        value.text = std::string(m_text.substr(start, m_at - start));
        const auto [end, error] = std::from_chars(m_text.data() + start, m_text.data() + m_at, value.number);
        if (error != std::errc{} || end != m_text.data() + m_at || !std::isfinite(value.number))
            failAt(start, value.text.substr(0, 40) +
                              " is beyond what a number can hold; write a number from 1e-150 to 1e150, or 0");
    }

    static std::string notFinite() {
        return "that is no finite number; write a number, or null if it is to be found";
    }

    void parseWord(JsonValue& value) {
        const std::size_t start = m_at;
        std::size_t end = m_at;
        while (end < m_text.size() && isLetter(m_text[end]))
            ++end;
        const std::string_view word = m_text.substr(start, end - start);
        if (word == "true" || word == "false") {
            value.kind = JsonValue::Kind::boolean;
            value.truth = word == "true";
        } else if (word != "null") {
            failWord(word);
        }
        m_at = end;
    }

    [[noreturn]] void failWord(std::string_view word) const {
        if (atEnd())
            fail("the file ends too early; a value is missing");
        if (word == "NaN" || word == "nan" || word == "Infinity" || word == "inf")
            fail(std::string(word) + " is no finite number; write a number, or null if it is to be found");
        if (!word.empty())
            fail(jsonString(firstCharacters(word, 40)) + " is no value; text stands in double quotes");
        if (peek() == '\'')
            fail("text stands in double quotes, not in single ones");
        if (peek() == '+' || peek() == '.')
            fail("a number begins with a digit or with -");
        fail("a value is missing here");
    }

    std::string parseString() {
        const std::size_t start = m_at++;
        std::string out;
        while (true) {
            if (atEnd())
                failAt(start, "this text has no closing double quote");
            const char c = m_text[m_at];
            if (c == '"')
                break;
            if (static_cast<unsigned char>(c) < 0x20)
                fail(c == '\n' || c == '\r' ? "the line ends inside a text; a closing double quote is missing"
                                            : "a control character stands in a text; write it as \\u00xx");
            if (c == '\\') {
                escape(out);
            } else {
                out += c;
                ++m_at;
            }
        }
        ++m_at;
        return out;
    }

    void escape(std::string& out) {
        constexpr std::string_view letters = "\"\\/bfnrt", meanings = "\"\\/\b\f\n\r\t";
        const std::size_t start = m_at++;
        const char c = peek();
        if (c == 'u') {
            ++m_at;
            appendUtf8(out, codePoint(start));
            return;
        }
        const auto index = letters.find(c);
        if (atEnd() || index == std::string_view::npos)
            failAt(start, "a backslash stands before a character that needs none; take it out");
        out += meanings[index];
        ++m_at;
    }

    std::uint32_t codePoint(std::size_t start) {
        const std::uint32_t first = hexQuad(start);
        if (first < 0xD800 || first > 0xDFFF)
            return first;
        if (first <= 0xDBFF && m_text.substr(m_at, 2) == "\\u") {
            m_at += 2;
            const std::uint32_t second = hexQuad(start);
            if (second >= 0xDC00 && second <= 0xDFFF)
                return 0x10000 + ((first - 0xD800) << 10) + (second - 0xDC00);
        }
        failAt(start, "half of a character pair stands alone; write both halves, or the character itself");
    }

    std::uint32_t hexQuad(std::size_t start) {
        const std::string_view hex = m_text.substr(m_at, 4);
        std::uint32_t code = 0;
        const auto [end, error] = std::from_chars(hex.data(), hex.data() + hex.size(), code, 16);
        if (hex.size() < 4 || error != std::errc{} || end != hex.data() + 4)
            failAt(start, "\\u wants four hexadecimal digits");
        m_at += 4;
        return code;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_values = 0;
};

} // namespace

std::variant<JsonValue, JsonFault> parseJson(std::string_view text) {
    if (const std::size_t bad = firstNonUtf8(text); bad != std::string_view::npos)
        return JsonFault{bad, "the file is not UTF-8 here; save it as UTF-8"};
    try {
        return Parser(text).document();
    } catch (const JsonFault& fault) {
        return fault;
    }
}

} // namespace tailpoint
