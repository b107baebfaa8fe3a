#include "core/explain/caution.h"
#include "core/explain/wording.h"

#include <algorithm>
#include <array>
#include <string>

namespace tailpoint {

namespace {

// Common practice, no source: the words by which such scenes are called.
constexpr std::array<std::string_view, 21> kSceneWords{
    "lift",    "hoist",   "sling",  "crane",   "derrick",  "anchor", "moor",
    "shackle", "rigging", "rigged", "eyebolt", "eye-bolt", "padeye", "winch",
    "tackle",  "suspen",  "cleat",  "bollard", "crate",    "hang",   "hung"};

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

std::string lowered(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return text;
}

bool hasWordBeginningWith(const std::string& text, std::string_view start) {
    for (auto at = text.find(start); at != std::string::npos; at = text.find(start, at + 1))
        if (at == 0 || !isLetter(text[at - 1]))
            return true;
    return false;
}

} // namespace

bool titleAsksCaution(const Sketch& sketch) {
    const std::string title = lowered(sketch.title);
    return std::any_of(kSceneWords.begin(), kSceneWords.end(),
                       [&](std::string_view word) { return hasWordBeginningWith(title, word); });
}

bool needsCaution(const Sketch& sketch) {
    return sketch.caution || titleAsksCaution(sketch);
}

std::string_view cautionLine() {
    return SENTENCE("caution", "A sketch check, not a design: rated loads, sling angles, dynamic effects and "
                               "factors of safety "
                               "follow local codes and the maker's data, and a licensed engineer or a "
                               "competent person decides.")
        .text;
}

} // namespace tailpoint
