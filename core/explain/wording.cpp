#include "core/explain/wording.h"

#include <algorithm>

namespace tailpoint {

namespace {

void appendContent(Prose& prose, const Prose& content) {
    for (const Piece& piece : content.pieces)
        if (const auto* words = std::get_if<std::string>(&piece))
            appendText(prose, *words);
        else
            prose.pieces.push_back(piece);
}

} // namespace

void appendFilled(Prose& prose, std::string_view pattern, std::vector<Filling>& places) {
    while (true) {
        const auto open = pattern.find('{');
        const auto close = open == std::string_view::npos ? open : pattern.find('}', open);
        if (close == std::string_view::npos)
            return appendText(prose, pattern);
        appendText(prose, pattern.substr(0, open));
        const std::string_view name = pattern.substr(open + 1, close - open - 1);
        const auto place = std::find_if(places.begin(), places.end(),
                                        [&](const Filling& candidate) { return candidate.name == name; });
        if (place != places.end())
            appendContent(prose, place->content);
        else
            appendText(prose, pattern.substr(open, close - open + 1));
        pattern.remove_prefix(close + 1);
    }
}

void Voice::fill(Prose& prose, const Wording& wording, std::vector<Filling>& places) const {
    if (m_sentences)
        appendFilled(prose, m_sentences->in(wording), places);
    else
        appendFilled(prose, wording.text, places);
}

} // namespace tailpoint
