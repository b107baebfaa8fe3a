// SPDX-License-Identifier: MIT
#include "ui/files/refused_keys.h"

#include "core/quantity/utf8.h"
#include "ui/files/json_text.h"
#include "ui/files/sketch_keys.h"

#include <algorithm>
#include <vector>

namespace tailpoint {

namespace {

struct RefusedKey {
    std::string_view key, what; ///< what it could change
};

/// Written as folded() leaves them.
constexpr RefusedKey kRefusedKeys[] = {{"sector", "a verdict"}, {"min", "a verdict"},
                                       {"max", "a verdict"},    {"load", "a number"},
                                       {"mass", "a number"},    {"tolerance", "a number"}};

/// Where a key of ours is looked for that stands in a force or in a value by mistake.
constexpr KeyPlace kPlacesOfValues[] = {KeyPlace::force,     KeyPlace::magnitude, KeyPlace::direction,
                                        KeyPlace::permitted, KeyPlace::units,     KeyPlace::reference};
/// Of the sheet's own keys those that say how a value is to be read, or what is asked of it.
constexpr std::string_view kSheetsKeys[] = {"units", "reference", "smallest", "gravity"};

/// Small letters alone: "plus_minus" and "PlusMinus" are "plusminus".
std::string folded(std::string_view key) {
    std::string out;
    for (const char c : key)
        if (c != '_' && c != '-' && c != ' ')
            out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return out;
}

/// The same but for at most one letter put in, left out or changed, or two neighbours swapped.
bool isNear(std::string_view a, std::string_view b) {
    if (a.size() > b.size())
        std::swap(a, b);
    if (b.size() - a.size() > 1)
        return false;
    const auto head =
        static_cast<std::size_t>(std::mismatch(a.begin(), a.end(), b.begin()).first - a.begin());
    a.remove_prefix(head);
    b.remove_prefix(head);
    if (a.size() < b.size())
        return a == b.substr(1);
    if (a.size() < 2)
        return true;
    return a.substr(1) == b.substr(1) || (a[0] == b[1] && a[1] == b[0] && a.substr(2) == b.substr(2));
}

bool isOfAForce(KeyPlace place) {
    return place == KeyPlace::force || place == KeyPlace::magnitude || place == KeyPlace::direction ||
           place == KeyPlace::limit || place == KeyPlace::permitted || place == KeyPlace::caseChange;
}

std::string doesNothing(std::string_view key, std::string_view what) {
    return jsonString(firstCharacters(key, 40)) + " could change " + std::string(what) +
           " and this version does not act on it";
}

std::optional<std::string> refusedWord(std::string_view key) {
    const std::string plain = folded(key);
    for (const RefusedKey& refused : kRefusedKeys)
        if (plain == refused.key || plain == std::string(refused.key) + 's')
            return doesNothing(key, refused.what) + ": take it out";
    return std::nullopt;
}

/// Keys of ours that a key at `place` may have been meant for, those of the place first.
std::vector<std::string_view> ownKeys(KeyPlace place) {
    const auto here = knownKeys(place);
    std::vector<std::string_view> keys(here.begin(), here.end());
    if (!isOfAForce(place))
        return keys;
    for (const KeyPlace other : kPlacesOfValues)
        keys.insert(keys.end(), knownKeys(other).begin(), knownKeys(other).end());
    keys.insert(keys.end(), std::begin(kSheetsKeys), std::end(kSheetsKeys));
    return keys;
}

bool isKnown(std::string_view key, KeyPlace place) {
    const auto known = knownKeys(place);
    return std::find(known.begin(), known.end(), key) != known.end();
}

/// Where a key of ours belongs that stands in a force or in a value by mistake.
std::string_view placeFor(std::string_view key) {
    if (isKnown(key, KeyPlace::magnitude) || isKnown(key, KeyPlace::direction))
        return "into the object of the magnitude or the direction";
    if (isKnown(key, KeyPlace::force))
        return "into the force";
    return key == "within" ? "into the object of permitted" : "where the sheet says it";
}

std::optional<std::string> nearMiss(std::string_view key, KeyPlace place) {
    const std::vector<std::string_view> keys = ownKeys(place);
    if (std::find(keys.begin(), keys.end(), key) != keys.end())
        return doesNothing(key, "a number") + " here: put it " + std::string(placeFor(key)) +
               ", or take it out";
    const std::string plain = folded(key);
    for (const std::string_view own : keys)
        if (isNear(plain, folded(own)))
            return doesNothing(key, "a number") + ": write " + jsonString(own) +
                   " if that is meant, or take it out";
    return std::nullopt;
}

} // namespace

std::span<const std::string_view> knownKeys(KeyPlace place) {
    switch (place) {
    case KeyPlace::sketch:
        return kSketchKeys;
    case KeyPlace::units:
        return kUnitKeys;
    case KeyPlace::reference:
        return kReferenceKeys;
    case KeyPlace::force:
        return kForceKeys;
    case KeyPlace::magnitude:
        return kMagnitudeKeys;
    case KeyPlace::limit:
        return kLimitKeys;
    case KeyPlace::permitted:
        return kPermittedKeys;
    case KeyPlace::loadCase:
        return kCaseKeys;
    case KeyPlace::caseChange:
        return kChangeKeys;
    case KeyPlace::direction:
        break;
    }
    return kDirectionKeys;
}

std::optional<std::string> keyFault(std::string_view key, KeyPlace place) {
    if (isKnown(key, place))
        return std::nullopt;
    if (isOfAForce(place))
        if (auto fault = refusedWord(key))
            return fault;
    return nearMiss(key, place);
}

} // namespace tailpoint
