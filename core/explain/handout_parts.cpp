#include "core/explain/handout.h"

#include <algorithm>

namespace tailpoint {

namespace {

/// What a reader sees of it.
bool isSame(const Step& a, const Step& b) {
    return a.key == b.key && a.title == b.title && toText(a) == toText(b);
}

bool isShared(const Step& step, const std::vector<Worked>& answers) {
    return std::all_of(answers.begin(), answers.end(), [&](const Worked& worked) {
        return std::any_of(worked.steps.begin(), worked.steps.end(),
                           [&](const Step& other) { return isSame(step, other); });
    });
}

void add(std::vector<HandoutPart>& parts, HandoutPart part) {
    if (part.steps.empty())
        return;
    part.first = parts.empty() ? 1 : parts.back().first + parts.back().steps.size();
    parts.push_back(std::move(part));
}

HandoutPart everyStep(const Worked& worked) {
    HandoutPart part{"Solution", {}, 1};
    for (const Step& step : worked.steps)
        part.steps.push_back(&step);
    return part;
}

} // namespace

std::string titleOf(const Handout& handout) {
    return handout.title.empty() ? "Untitled sketch" : handout.title;
}

std::vector<HandoutPart> partsOf(const Handout& handout) {
    std::vector<HandoutPart> parts;
    const auto& answers = handout.answers;
    if (!handout.solution || answers.empty())
        return parts;
    if (answers.size() == 1) {
        add(parts, everyStep(answers.front()));
        return parts;
    }
    HandoutPart shared{"Solution", {}, 1};
    for (const Step& step : answers.front().steps)
        if (isShared(step, answers))
            shared.steps.push_back(&step);
    add(parts, std::move(shared));
    for (std::size_t i = 0; i < answers.size(); ++i) {
        HandoutPart own{"Answer " + std::to_string(i + 1) + " of " + std::to_string(answers.size()), {}, 1};
        for (const Step& step : answers[i].steps)
            if (!isShared(step, answers))
                own.steps.push_back(&step);
        add(parts, std::move(own));
    }
    return parts;
}

} // namespace tailpoint
