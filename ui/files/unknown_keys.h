// SPDX-License-Identifier: MIT
// Keys of a file that this version doesn't know: kept beside the sketch or the force in which they stood
// (Sketch::unknownKeys, Force::unknownKeys), and written back there.
#pragma once

#include "core/sketch/opaque.h"
#include "ui/files/json_text.h"
#include "ui/files/refused_keys.h"

#include <initializer_list>
#include <map>

namespace tailpoint {

struct UnknownKeys {
    using Members = std::vector<JsonMember>;
    Members own;                                        ///< of the object itself, in the file's order
    std::map<std::string, Members, std::less<>> inside; ///< of the objects under its known keys

    const Members& under(std::string_view key) const; ///< of `inside`; none where nothing is there
    bool operator==(const UnknownKeys&) const = default;
};

/// Notes among them, one a line: "statement", "notes", "note", "comment", "description". None of a generated
/// problem (`"practice"`), whose scene says by itself whether it needs a caution.
std::string wordsIn(const UnknownKeys& keys);

/// An object inside another: the key under which it stands, and which keys are known in it.
using Inner = std::pair<std::string_view, KeyPlace>;

/// The unknown keys of an object that stands at `place` and of objects inside it; nothing where there are
/// none. Precondition: `value` is an object.
Opaque unknownKeysOf(const JsonValue& value, KeyPlace place, std::initializer_list<Inner> inner);

/// What unknownKeysOf kept; without keys where it kept nothing.
const UnknownKeys& unknownKeysIn(const Opaque& kept);

} // namespace tailpoint
