// SPDX-License-Identifier: MIT
#include "core/explain/caution.h"
#include "core/explain/wording.h"

#include <algorithm>
#include <array>
#include <string>

namespace tailpoint {

namespace {

// Common practice, no source: the words by which such scenes are called in English, the program's only
// language; another one adds its own words here. A word that ends in '*' also begins longer ones; the others
// stand alone, with or without the plural's s. A hyphen stands for one, or for a space.
constexpr auto kSceneWords = std::to_array<std::string_view>(
    {"lift*",    "hoist*",   "sling*",  "slung",    "crane",    "derrick", "davit",       "gantry",
     "jib",      "winch*",   "capstan", "tackle",   "spreader", "rigging", "rigged",      "rigger",
     "bridle",   "shackle*", "eyebolt", "eye-bolt", "padeye",   "pad-eye", "lifting-lug", "turnbuckle",
     "hang*",    "hung",     "suspen*", "crate",    "anchor*",  "moor",    "moored",      "mooring",
     "cleat",    "bollard",  "lash*",   "tie-down", "guy",      "guyed",   "guyline",     "guywire",
     "tow",      "towed",    "towing",  "towline",  "towrope",  "towbar",  "tug",         "tugboat",
     "forestay", "backstay", "lifeline"});

/// Games and figures of speech in which one of these words stands.
constexpr auto kNoScenes = std::to_array<std::string_view>({"tug-of-war"});

constexpr auto kRopes = std::to_array<std::string_view>(
    {"rope", "cable", "chain", "wire", "cord", "strap", "strop", "webbing", "leg"});
constexpr auto kLoads =
    std::to_array<std::string_view>({"load", "cargo", "weight", "mass", "payload", "counterweight"});

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

/// In small letters, one space for every run of what is no letter, one at both ends.
std::string inWordsAlone(std::string_view text) {
    std::string out = " ";
    for (char c : text) {
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
        if (isLetter(c))
            out += c;
        else if (out.back() != ' ')
            out += ' ';
    }
    return out.back() == ' ' ? out : out + ' ';
}

bool ends(const std::string& words, std::size_t at) {
    return words[at] == ' ' || (words[at] == 's' && words[at + 1] == ' ') ||
           (words[at] == 'e' && words[at + 1] == 's' && words[at + 2] == ' ');
}

/// `words` as inWordsAlone() has them.
bool has(const std::string& words, std::string_view word) {
    const bool begins = word.ends_with('*');
    if (begins)
        word.remove_suffix(1);
    std::string wanted = ' ' + std::string(word);
    std::replace(wanted.begin(), wanted.end(), '-', ' ');
    for (auto at = words.find(wanted); at != std::string::npos; at = words.find(wanted, at + 1))
        if (begins || ends(words, at + wanted.size()))
            return true;
    return false;
}

template <class Words>
bool hasOneOf(const std::string& words, const Words& wanted) {
    return std::any_of(wanted.begin(), wanted.end(), [&](std::string_view word) { return has(words, word); });
}

/// All that is written on the sheet and in its file, a name beside the next.
std::string writtenIn(const Sketch& sketch) {
    std::string all = sketch.title + '\n' + sketch.unknownKeys.words();
    const auto add = [&](const Force& force) {
        ((all += '\n') += force.name) += '\n';
        all += force.unknownKeys.words();
    };
    for (const Force& force : sketch.forces)
        add(force);
    add(sketch.sum);
    for (const LoadCase& one : sketch.cases)
        ((all += '\n') += one.name) += '\n' + one.unknownKeys.words();
    return all += sketch.inCase;
}

/// Tons-force: a sheet in them is no classroom's.
bool weighsHeavyLoads(ForceUnit unit) {
    return unit == ForceUnit::tonf || unit == ForceUnit::shortTonf;
}

/// Loads are weighed in it, value by value; a whole sheet in kgf may be a classroom's, as one in newtons,
/// pounds-force and kips is.
bool weighsLoads(const LoadUnit& unit) {
    const auto* force = std::get_if<ForceUnit>(&unit);
    return force == nullptr || *force == ForceUnit::kgf || weighsHeavyLoads(*force);
}

bool asks(const Force& force) {
    return force.limit || (force.magnitude.typed && weighsLoads(force.magnitude.typed->unit));
}

bool asks(const LoadCase& one) {
    return std::any_of(one.changes.begin(), one.changes.end(), [](const CaseChange& change) {
        return change.magnitude && change.magnitude->typed && weighsLoads(change.magnitude->typed->unit);
    });
}

} // namespace

bool speaksOfRigging(std::string_view text) {
    std::string words = inWordsAlone(text);
    for (const std::string_view name : kNoScenes) {
        const std::string phrase = inWordsAlone(name);
        for (auto at = words.find(phrase); at != std::string::npos; at = words.find(phrase))
            words.replace(at, phrase.size(), " ");
    }
    return hasOneOf(words, kSceneWords) || (hasOneOf(words, kRopes) && hasOneOf(words, kLoads));
}

bool sceneAsksCaution(const Sketch& sketch) {
    return weighsHeavyLoads(sketch.forceUnit) || asks(sketch.sum) ||
           std::any_of(sketch.forces.begin(), sketch.forces.end(),
                       [](const Force& force) { return asks(force); }) ||
           std::any_of(sketch.cases.begin(), sketch.cases.end(),
                       [](const LoadCase& one) { return asks(one); }) ||
           speaksOfRigging(writtenIn(sketch));
}

bool needsCaution(const Sketch& sketch) {
    return sketch.caution || sceneAsksCaution(sketch);
}

std::string_view cautionLine() {
    return SENTENCE("caution", "A sketch check, not a design. Not covered: dynamics, centre of mass off the "
                               "hook, stretch of legs, pulls out of the plane, ratings of fittings. Codes "
                               "and the maker's data rule; a licensed engineer or competent person decides.")
        .text;
}

} // namespace tailpoint
