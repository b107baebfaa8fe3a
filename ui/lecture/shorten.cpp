// SPDX-License-Identifier: MIT
// A lecturer speaks; the sheet says in few words what is spoken of.
#include "core/explain/caution.h"
#include "core/quantity/utf8.h"
#include "ui/lecture/plan.h"

namespace tailpoint {

namespace {

constexpr std::size_t kShort = 160; ///< letters of a paragraph, about five lines of the column

/// Where a sentence ends: piece, and letters of its text that belong to it.
struct End {
    std::size_t piece = 0, at = 0;
};

/// As many whole sentences as stay short; at least one.
Prose shortened(const Prose& prose) {
    std::size_t letters = 0;
    std::vector<std::pair<End, std::size_t>> ends;
    for (std::size_t i = 0; i < prose.pieces.size(); ++i) {
        const auto* text = std::get_if<std::string>(&prose.pieces[i]);
        if (text == nullptr) {
            letters += characterCount(toText(std::get<Formula>(prose.pieces[i])));
            continue;
        }
        for (std::size_t at = text->find(". "); at != std::string::npos; at = text->find(". ", at + 1))
            ends.push_back({{i, at + 1}, letters + characterCount(text->substr(0, at + 1))});
        letters += characterCount(*text);
    }
    if (letters <= kShort || ends.empty())
        return prose;
    End cut = ends.front().first;
    for (const auto& [end, length] : ends)
        if (length <= kShort)
            cut = end;
    Prose out;
    out.pieces.assign(prose.pieces.begin(), prose.pieces.begin() + static_cast<std::ptrdiff_t>(cut.piece));
    out.pieces.emplace_back(std::get<std::string>(prose.pieces[cut.piece]).substr(0, cut.at));
    return out;
}

} // namespace

Step shortened(const Step& step) {
    Step out = step;
    const Prose caution = inProse(std::string(cautionLine())); // whole wherever it stands
    const bool isWhole = step.key == StepKey::question || step.key == StepKey::end; // an answer has its range
    if (!isWhole)
        for (Prose& prose : out.reasoning)
            if (!(prose == caution))
                prose = shortened(prose);
    if (out.key == StepKey::check && out.conclusion.size() > 1)
        out.conclusion.resize(1);
    return out;
}

} // namespace tailpoint
