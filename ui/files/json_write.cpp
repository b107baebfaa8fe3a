// SPDX-License-Identifier: MIT
// The tree as text: one way for sketches, reports and copies.
#include "core/quantity/decimals.h"
#include "core/quantity/utf8.h"
#include "ui/files/json_text.h"

namespace tailpoint {

namespace {

constexpr std::size_t kJsonColumns = 100; ///< into which what is `fitting` fits

void append(std::string& out, const JsonValue& value, std::size_t indent);

/// Begin and end of an object or a list, and what stands between two of its entries.
struct Frame {
    std::string begin, gap, end;
};

Frame frameOnALine(const JsonValue& value) {
    const bool isObject = value.kind == JsonValue::Kind::object;
    const std::string room = value.layout == JsonLayout::padded ? " " : "";
    return {(isObject ? "{" : "[") + room, ", ", room + (isObject ? "}" : "]")};
}

Frame frameOfLines(const JsonValue& value, std::size_t indent) {
    const bool isObject = value.kind == JsonValue::Kind::object;
    const std::string outer = '\n' + std::string(indent, ' '), inner = outer + "  ";
    return {(isObject ? "{" : "[") + inner, ',' + inner, outer + (isObject ? "}" : "]")};
}

template <class AppendInner>
void appendEntries(std::string& out, const JsonValue& value, const Frame& frame, AppendInner appendInner) {
    out += frame.begin;
    bool first = true;
    const auto part = [&](bool beside) { out += first ? "" : beside ? ", " : frame.gap, first = false; };
    for (const JsonMember& member : value.members) {
        part(member.beside);
        out += jsonString(member.key) + ": ";
        appendInner(member.value);
    }
    for (const JsonValue& item : value.items) {
        part(false);
        appendInner(item);
    }
    out += frame.end;
}

void appendScalar(std::string& out, const JsonValue& value) {
    switch (value.kind) {
    case JsonValue::Kind::boolean:
        out += value.truth ? "true" : "false";
        break;
    case JsonValue::Kind::number:
        out += value.text;
        break;
    case JsonValue::Kind::string:
        out += jsonString(value.text);
        break;
    default:
        out += "null";
    }
}

bool isScalar(const JsonValue& value) {
    return value.kind != JsonValue::Kind::object && value.kind != JsonValue::Kind::array;
}

void appendOnALine(std::string& out, const JsonValue& value) {
    if (isScalar(value))
        appendScalar(out, value);
    else
        appendEntries(out, value, frameOnALine(value),
                      [&](const JsonValue& inner) { appendOnALine(out, inner); });
}

void appendLines(std::string& out, const JsonValue& value, std::size_t indent) {
    appendEntries(out, value, frameOfLines(value, indent),
                  [&](const JsonValue& inner) { append(out, inner, indent + 2); });
}

bool fits(const JsonValue& value, std::size_t indent) {
    std::string line;
    appendOnALine(line, value);
    return characterCount(line) + indent <= kJsonColumns;
}

bool isOnLines(const JsonValue& value, std::size_t indent) {
    if (value.members.empty() && value.items.empty())
        return false;
    return value.layout == JsonLayout::lines || (value.layout == JsonLayout::fitting && !fits(value, indent));
}

void append(std::string& out, const JsonValue& value, std::size_t indent) {
    isOnLines(value, indent) ? appendLines(out, value, indent) : appendOnALine(out, value);
}

} // namespace

JsonValue jsonNumber(double value) {
    JsonValue json;
    json.kind = JsonValue::Kind::number;
    json.number = value;
    json.text = shortest(value);
    return json;
}

JsonValue jsonNumberOrNull(std::optional<double> value) {
    return value ? jsonNumber(*value) : JsonValue{};
}

JsonValue jsonText(std::string_view text) {
    JsonValue json;
    json.kind = JsonValue::Kind::string;
    json.text = text;
    return json;
}

JsonValue jsonTruth(bool truth) {
    JsonValue json;
    json.kind = JsonValue::Kind::boolean;
    json.truth = truth;
    return json;
}

JsonValue jsonObject(std::vector<JsonMember> members, JsonLayout layout) {
    JsonValue json;
    json.kind = JsonValue::Kind::object;
    json.members = std::move(members);
    json.layout = layout;
    return json;
}

JsonValue jsonList(std::vector<JsonValue> items, JsonLayout layout) {
    JsonValue json;
    json.kind = JsonValue::Kind::array;
    json.items = std::move(items);
    json.layout = layout;
    return json;
}

std::string writeJson(const JsonValue& value) {
    std::string out;
    append(out, value, 0);
    return out + '\n';
}

std::string jsonString(std::string_view text) {
    constexpr std::string_view hex = "0123456789abcdef";
    std::string out = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\')
            out += '\\', out += c;
        else if (c == '\n')
            out += "\\n";
        else if (c == '\t')
            out += "\\t";
        else if (byte < 0x20 || byte == 0x7F)
            out += "\\u00", out += hex[byte >> 4], out += hex[byte & 15];
        else
            out += c;
    }
    return out + '"';
}

} // namespace tailpoint
