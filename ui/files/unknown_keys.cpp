// SPDX-License-Identifier: MIT
#include "ui/files/unknown_keys.h"

#include <algorithm>

namespace tailpoint {

namespace {

using Members = UnknownKeys::Members;

Members notKnown(const JsonValue& object, KeyPlace place) {
    const auto known = knownKeys(place);
    Members rest;
    std::copy_if(object.members.begin(), object.members.end(), std::back_inserter(rest),
                 [&](const JsonMember& member) {
                     return std::find(known.begin(), known.end(), member.key) == known.end();
                 });
    return rest;
}

} // namespace

const Members& UnknownKeys::under(std::string_view key) const {
    static const Members none;
    const auto found = inside.find(key);
    return found == inside.end() ? none : found->second;
}

Opaque unknownKeysOf(const JsonValue& value, KeyPlace place, std::initializer_list<Inner> inner) {
    UnknownKeys keys{notKnown(value, place), {}};
    for (const auto& [key, placeInside] : inner) {
        const JsonValue* object = value.find(key);
        Members rest = object ? notKnown(*object, placeInside) : Members{};
        if (!rest.empty())
            keys.inside.emplace(key, std::move(rest));
    }
    return keys == UnknownKeys{} ? Opaque() : Opaque::of(std::move(keys));
}

std::string wordsIn(const UnknownKeys& keys) {
    std::string words;
    for (const JsonMember& member : keys.own) {
        if (member.key == "practice")
            return {};
        for (const std::string_view note : {"statement", "notes", "note", "comment", "description"})
            if (member.key == note && member.value.kind == JsonValue::Kind::string)
                words += member.value.text + '\n';
    }
    return words;
}

const UnknownKeys& unknownKeysIn(const Opaque& kept) {
    static const UnknownKeys none;
    const auto* keys = kept.as<UnknownKeys>();
    return keys ? *keys : none;
}

} // namespace tailpoint
