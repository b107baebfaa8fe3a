// SPDX-License-Identifier: MIT
// A value of a JSON file with its path, read as what is wanted of it or refused with its place and the mend.
// Used by the readers of sketches and of what they say of marking.
#pragma once

#include "ui/files/files.h"
#include "ui/files/json_text.h"
#include "ui/files/refused_keys.h"

#include <optional>

namespace tailpoint::reading {

/// Unwinds the readers; never leaves readSketch() or markOptionsOf().
struct Refusal {
    std::string path, message;
    std::size_t offset;
};

/// A value and its path in the file.
struct At {
    const JsonValue& value;
    std::string path;

    [[noreturn]] void refuse(std::string message) const {
        throw Refusal{path, std::move(message), value.offset};
    }
    std::string under(std::string_view key) const {
        return path.empty() ? std::string(key) : path + '.' + std::string(key);
    }
    /// Empty where the key is absent.
    std::optional<At> maybe(std::string_view key) const {
        const JsonValue* found = value.find(key);
        return found ? std::optional<At>(At{*found, under(key)}) : std::nullopt;
    }
    At require(std::string_view key, std::string_view mend) const {
        if (auto found = maybe(key))
            return *found;
        throw Refusal{under(key), "is missing; " + std::string(mend), value.offset};
    }
    bool is(JsonValue::Kind kind) const { return value.kind == kind; }
};

/// Of another kind than is wanted: "is a list; write a number".
[[noreturn]] void refuseKind(const At& at, std::string_view mend);
/// For messages: shortened, on one line.
std::string inQuotes(std::string_view text);

/// Each refuses what is of another kind, with `mend`; a number with "write a number" and what else may stand
/// there.
double numberIn(const At& at, std::string_view otherwise = "");
int integerIn(const At& at);
bool truthIn(const At& at);
const std::string& textIn(const At& at, std::string_view mend);
void requireObject(const At& at, std::string_view mend);

/// A key that looks as if it changed a number or a verdict, and does not, ends the reading.
void requireHarmlessKeys(const At& at, KeyPlace place);

/// What is wrong in a text, with line and column behind the path.
FileError located(std::string_view text, const std::string& path, std::size_t offset,
                  const std::string& message);

/// Byte of the innermost value on the way of a path such as forces[2].magnitude that is in the file.
std::size_t offsetOf(const JsonValue& root, std::string_view path);

} // namespace tailpoint::reading
