// SPDX-License-Identifier: MIT
// JSON as a tree that remembers where each value stands, keeps the order of keys and the text of numbers,
// and refuses what would be lost silently: a key given twice, a number that no double holds.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace tailpoint {

struct JsonMember;

/// How an object or a list is written.
enum class JsonLayout {
    flat,   ///< on one line: {"a": 1}
    padded, ///< on one line with room: { "a": 1 }
    lines,  ///< on several lines, indented by two
    fitting ///< flat where that fits into a line of 100 columns, else on several
};

struct JsonValue {
    enum class Kind { null, boolean, number, string, array, object };
    Kind kind = Kind::null;
    bool truth = false;
    double number = 0;               ///< finite
    std::string text;                ///< string: decoded UTF-8; number: as it was written
    std::vector<JsonValue> items;    ///< array
    std::vector<JsonMember> members; ///< object: in the file's order, keys unique
    std::size_t offset = 0;          ///< byte where the value begins
    JsonLayout layout = JsonLayout::flat;

    const JsonValue* find(std::string_view key) const;
    /// The same value, wherever it stood and however it is laid out; numbers by their text.
    friend bool operator==(const JsonValue& a, const JsonValue& b);
};
struct JsonMember {
    std::string key;
    JsonValue value;
    bool beside = false; ///< in an object on several lines: on the line of the member before
    friend bool operator==(const JsonMember& a, const JsonMember& b);
};

/// Where a text is no JSON, what is wrong and the mend.
struct JsonFault {
    std::size_t offset = 0;
    std::string message;
};

inline constexpr int kDeepestNesting = 64;
inline constexpr std::size_t kMostValues = 500'000; ///< a sketch of 10,000 forces has about 80,000

inline constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

/// One JSON value (RFC 8259) and nothing after it. A UTF-8 byte order mark in front is passed over.
std::variant<JsonValue, JsonFault> parseJson(std::string_view text);

/// Values to build a tree from. Precondition: `value` is finite.
JsonValue jsonNumber(double value);
JsonValue jsonNumberOrNull(std::optional<double> value);
JsonValue jsonText(std::string_view text);
JsonValue jsonTruth(bool truth);
JsonValue jsonObject(std::vector<JsonMember> members, JsonLayout layout = JsonLayout::fitting);
JsonValue jsonList(std::vector<JsonValue> items, JsonLayout layout = JsonLayout::fitting);

/// The one way in which JSON is written: keys in their order, numbers as they were read or as shortest()
/// writes them, objects and lists by their layout, a line break at the end.
std::string writeJson(const JsonValue& value);

/// In double quotes, escaped; UTF-8 beyond ASCII stands as it is.
std::string jsonString(std::string_view text);

/// Counted from 1; the column in characters, as editors show it.
struct LineColumn {
    std::size_t line = 1, column = 1;
};
LineColumn lineColumn(std::string_view text, std::size_t offset);

} // namespace tailpoint
