// SPDX-License-Identifier: MIT
#include "ui/files/json_at.h"

#include "core/quantity/utf8.h"

#include <algorithm>
#include <charconv>

namespace tailpoint::reading {

using Kind = JsonValue::Kind;

namespace {

std::string_view wordFor(Kind kind) {
    switch (kind) {
    case Kind::null:
        return "is null";
    case Kind::boolean:
        return "is true or false";
    case Kind::number:
        return "is a number";
    case Kind::string:
        return "is text";
    case Kind::array:
        return "is a list";
    case Kind::object:
        return "is an object";
    }
    return {};
}

} // namespace

void refuseKind(const At& at, std::string_view mend) {
    at.refuse(std::string(wordFor(at.value.kind)) + "; " + std::string(mend));
}

std::string inQuotes(std::string_view text) {
    const std::string_view shown = firstCharacters(text, 40);
    return jsonString(std::string(shown) + (shown.size() < text.size() ? "..." : ""));
}

double numberIn(const At& at, std::string_view otherwise) {
    if (at.is(Kind::number))
        return at.value.number;
    if (at.is(Kind::string))
        at.refuse(at.value.text == "null" ? "is text; write null without quotes"
                                          : "is text; write the number without quotes");
    refuseKind(at, "write a number" + std::string(otherwise));
}

int integerIn(const At& at) {
    const double value = numberIn(at);
    if (value != static_cast<double>(static_cast<int>(std::clamp(value, -1e9, 1e9))))
        at.refuse("is not a whole number; write one");
    return static_cast<int>(value);
}

bool truthIn(const At& at) {
    if (!at.is(Kind::boolean))
        refuseKind(at, "write true or false without quotes");
    return at.value.truth;
}

const std::string& textIn(const At& at, std::string_view mend) {
    if (!at.is(Kind::string))
        refuseKind(at, mend);
    return at.value.text;
}

void requireObject(const At& at, std::string_view mend) {
    if (!at.is(Kind::object))
        refuseKind(at, mend);
}

void requireHarmlessKeys(const At& at, KeyPlace place) {
    if (!at.is(Kind::object))
        return;
    for (const JsonMember& member : at.value.members)
        if (auto fault = keyFault(member.key, place))
            throw Refusal{at.path, std::move(*fault), member.value.offset};
}

FileError located(std::string_view text, const std::string& path, std::size_t offset,
                  const std::string& message) {
    const LineColumn at = lineColumn(text, offset);
    const QString where = QStringLiteral("line %1, column %2").arg(at.line).arg(at.column);
    const QString place =
        path.empty() ? where : QStringLiteral("%1 (%2)").arg(QString::fromStdString(path), where);
    return {place, QString::fromStdString(message)};
}

std::size_t offsetOf(const JsonValue& root, std::string_view path) {
    const JsonValue* value = &root;
    while (!path.empty()) {
        const JsonValue* next = nullptr;
        std::size_t length = path.find_first_of(".[", 1);
        length = std::min(length, path.size());
        if (path.front() == '[') {
            std::size_t index = 0;
            std::from_chars(path.data() + 1, path.data() + length, index);
            next = index < value->items.size() ? &value->items[index] : nullptr;
        } else {
            next =
                value->find(path.substr(path.front() == '.' ? 1 : 0, length - (path.front() == '.' ? 1 : 0)));
        }
        if (!next)
            break;
        value = next;
        path.remove_prefix(length);
    }
    return value->offset;
}

} // namespace tailpoint::reading
