// SPDX-License-Identifier: MIT
#include "core/explain/record.h"

#include "core/explain/caution.h"
#include "core/explain/wording.h"

#include <algorithm>

namespace tailpoint {
namespace {

/// Facts side by side, no sentence.
std::string listed(std::initializer_list<std::string> facts) {
    std::string all;
    for (const std::string& fact : facts) {
        if (!fact.empty()) {
            all += (all.empty() ? "" : "; ") + fact;
        }
    }
    return all;
}

std::string said(const Voice& voice, const Wording& wording, const std::string& who) {
    return who.empty() ? std::string() : toText(voice.say(wording, "who", who), Minus::ascii);
}

void add(std::vector<std::string>& lines, std::string line) {
    if (!line.empty()) {
        lines.push_back(std::move(line));
    }
}

/// Either sense of its line will do: a bar, say, that may push.
bool isOpen(const Force& force) {
    return force.lineOfActionOnly;
}

} // namespace

std::string assumptions(const Sketch& sketch, const Sentences* sentences) {
    const Voice voice(sentences);
    const bool atRest = isEquilibrium(sketch),
               mayPush =
                   isOpen(sketch.sum) || std::any_of(sketch.forces.begin(), sketch.forces.end(), isOpen);
    return voice.text(
        mayPush
            ? (atRest ? SENTENCE("record",
                                 "Assumed: all forces act at one point and in one plane; lines and bars "
                                 "are straight and without weight; everything is at rest.")
                      : SENTENCE("record",
                                 "Assumed: all forces act at one point and in one plane; lines and bars "
                                 "are straight and without weight."))
            : (atRest ? SENTENCE("record", "Assumed: all forces act at one point and in one plane; lines "
                                           "are taut, straight and without weight; everything is at rest.")
                      : SENTENCE("record", "Assumed: all forces act at one point and in one plane; lines "
                                           "are taut, straight and without weight.")));
}

std::vector<std::string> recordLines(const Sketch& sketch, const Provenance& from,
                                     const Sentences* sentences) {
    const Voice voice(sentences);
    const TitleBlock& block = sketch.titleBlock;
    std::vector<std::string> lines;
    add(lines, listed({from.file, from.date, from.program}));
    add(lines, listed({said(voice, SENTENCE("record", "drawn by {who}"), block.drawn),
                       said(voice, SENTENCE("record", "checked by {who}"), block.checked),
                       said(voice, SENTENCE("record", "revision {who}"), block.revision)}));
    add(lines, assumptions(sketch, sentences));
    return lines;
}

std::vector<std::string> closingLines(const Sketch& sketch, const Provenance& from, bool withRecord,
                                      const Sentences* sentences) {
    std::vector<std::string> lines;
    if (needsCaution(sketch))
        lines.emplace_back(cautionLine());
    if (withRecord)
        for (std::string& line : recordLines(sketch, from, sentences))
            lines.push_back(std::move(line));
    return lines;
}

} // namespace tailpoint
