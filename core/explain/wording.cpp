#include "core/explain/wording.h"

#include <algorithm>

namespace tailpoint {

namespace {

void appendContent(Prose& prose, Prose&& content) {
    for (Piece& piece : content.pieces)
        if (const auto* words = std::get_if<std::string>(&piece))
            appendText(prose, *words);
        else
            prose.pieces.push_back(std::move(piece));
}

/// Whether the place comes again.
bool contains(std::string_view pattern, std::string_view name) {
    for (auto at = pattern.find(name); at != std::string_view::npos; at = pattern.find(name, at + 1))
        if (at > 0 && pattern[at - 1] == '{' && at + name.size() < pattern.size() &&
            pattern[at + name.size()] == '}')
            return true;
    return false;
}

} // namespace

void appendFilled(Prose& prose, std::string_view pattern, std::vector<Filling>& places) {
    prose.pieces.reserve(prose.pieces.size() + 2 * places.size() + 1);
    while (true) {
        const auto open = pattern.find('{');
        const auto close = open == std::string_view::npos ? open : pattern.find('}', open);
        if (close == std::string_view::npos)
            return appendText(prose, pattern);
        appendText(prose, pattern.substr(0, open));
        const std::string_view written = pattern.substr(open, close - open + 1);
        const std::string_view name = written.substr(1, written.size() - 2);
        pattern.remove_prefix(close + 1);
        const auto place = std::find_if(places.begin(), places.end(),
                                        [&](const Filling& candidate) { return candidate.name == name; });
        if (place == places.end())
            appendText(prose, written);
        else if (contains(pattern, name))
            appendContent(prose, Prose(place->content));
        else
            appendContent(prose, std::move(place->content));
    }
}

void Voice::fill(Prose& prose, const Wording& wording, std::vector<Filling>& places) const {
    if (m_sentences)
        appendFilled(prose, m_sentences->in(wording), places);
    else
        appendFilled(prose, wording.text, places);
}

} // namespace tailpoint
