// SPDX-License-Identifier: MIT
#include "core/explain/handout.h"
#include "core/explain/wording.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// What a reader sees of it.
bool isSame(const Step& a, const Step& b) {
    return a.key == b.key && a.title == b.title && toText(a) == toText(b);
}

void add(std::vector<HandoutPart>& parts, HandoutPart part) {
    if (part.steps.empty())
        return;
    part.first = parts.empty() ? 1 : parts.back().first + parts.back().steps.size();
    parts.push_back(std::move(part));
}

HandoutPart solutionPart(const Handout& handout) {
    return {Voice(handout.sentences).text(SENTENCE("handout", "Solution")), {}, 1};
}

HandoutPart answerPart(const Handout& handout, std::size_t answer) {
    const auto shown = [](std::size_t number) { return count(static_cast<int>(number)); };
    return {toText(Voice(handout.sentences)
                       .say(SENTENCE("handout", "Answer {number} of {count}"), "number", shown(answer + 1),
                            "count", shown(handout.answers.size()))),
            {},
            1};
}

HandoutPart everyStep(const Handout& handout, const Worked& worked) {
    HandoutPart part = solutionPart(handout);
    for (const Step& step : worked.steps)
        part.steps.push_back(&step);
    return part;
}

} // namespace

std::size_t sharedSteps(const std::vector<Worked>& answers) {
    std::size_t count = 0; // what comes after a step that differs builds on it
    const auto& first = answers.front().steps;
    const auto sharesNext = [&](const Worked& worked) {
        return count < worked.steps.size() && isSame(first[count], worked.steps[count]);
    };
    while (count < first.size() && std::all_of(answers.begin(), answers.end(), sharesNext))
        ++count;
    return count;
}

std::string titleOf(const Handout& handout) {
    return handout.title.empty() ? Voice(handout.sentences).text(SENTENCE("handout", "Untitled sketch"))
                                 : handout.title;
}

std::string limitsHeading(const Handout& handout, std::size_t answer) {
    const Voice voice(handout.sentences);
    const std::size_t of = handout.limits.size();
    return of == 1 ? voice.text(SENTENCE("limits", "Limits"))
                   : toText(voice.say(SENTENCE("limits", "Limits, answer {number} of {all}"), "number",
                                      std::to_string(answer + 1), "all", std::to_string(of)));
}

std::vector<HandoutPart> partsOf(const Handout& handout) {
    std::vector<HandoutPart> parts;
    const auto& answers = handout.answers;
    if (!handout.solution || answers.empty())
        return parts;
    if (answers.size() == 1) {
        add(parts, everyStep(handout, answers.front()));
        return parts;
    }
    const std::size_t count = sharedSteps(answers);
    HandoutPart shared = solutionPart(handout);
    for (std::size_t i = 0; i < count; ++i)
        shared.steps.push_back(&answers.front().steps[i]);
    add(parts, std::move(shared));
    for (std::size_t i = 0; i < answers.size(); ++i) {
        HandoutPart own = answerPart(handout, i);
        for (std::size_t at = count; at < answers[i].steps.size(); ++at)
            own.steps.push_back(&answers[i].steps[at]);
        add(parts, std::move(own));
    }
    return parts;
}

} // namespace tailpoint
