// SPDX-License-Identifier: MIT
#include "core/explain/wording.h"

#include <algorithm>

namespace tailpoint {

namespace {

void append(Prose& prose, std::string&& text) {
    appendText(prose, text);
}
void append(Prose& prose, Formula&& formula) {
    prose.pieces.emplace_back(std::move(formula));
}
void append(Prose& prose, Prose&& content) {
    for (Piece& piece : content.pieces)
        std::visit([&](auto& one) { append(prose, std::move(one)); }, piece);
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

void appendFilled(Prose& prose, std::string_view pattern, std::span<Filling> places) {
    prose.pieces.reserve(prose.pieces.size() + 2 * places.size() + 1);
    while (true) {
        const auto open = pattern.find('{');
        const auto close = open == std::string_view::npos ? open : pattern.find('}', open);
        if (close == std::string_view::npos)
            return appendText(prose, pattern);
        appendText(prose, pattern.substr(0, open));
        const std::string_view name = pattern.substr(open + 1, close - open - 1);
        const std::string_view place = pattern.substr(open, close - open + 1);
        pattern.remove_prefix(close + 1);
        const auto filling = std::find_if(places.begin(), places.end(),
                                          [&](const Filling& candidate) { return candidate.name == name; });
        if (filling == places.end())
            appendText(prose, place);
        else if (pattern.find('{') != std::string_view::npos && contains(pattern, name))
            std::visit([&](auto content) { append(prose, std::move(content)); }, filling->content);
        else
            std::visit([&](auto& content) { append(prose, std::move(content)); }, filling->content);
    }
}

void Voice::fill(Prose& prose, const Wording& wording, std::span<Filling> places) const {
    if (m_sentences)
        appendFilled(prose, m_sentences->in(wording), places);
    else
        appendFilled(prose, wording.text, places);
}

} // namespace tailpoint
