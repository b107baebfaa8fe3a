#include "core/practice/faded.h"

#include "core/explain/wording.h"
#include "core/practice/silenced.h"

#include <algorithm>

namespace tailpoint {

using namespace practising;

namespace {

using Places = std::vector<WorkingPlace>;

/// Steps that look back: they compute the answer once more, or say what was computed.
bool looksBack(const Step& step) {
    return step.key == StepKey::check || step.key == StepKey::rounding || step.key == StepKey::answer ||
           step.key == StepKey::estimate;
}

bool isCalculated(const Working& working) {
    return working.subject && working.value && (working.general || working.substituted);
}

std::string_view lawQuestion() {
    return SENTENCE("practice", "Which law starts, and why?").text;
}

/// The law is the question here: nothing but what is given and asked stands.
FadedSolution onlyLaw(const Worked& worked) {
    FadedSolution out;
    for (const Step& step : worked.steps)
        if (step.key == StepKey::given || step.key == StepKey::count)
            out.worked.steps.push_back(step);
    out.onlyLaw = true;
    out.prompt = lawQuestion();
    return out;
}

/// A relation that nothing but blank lines follows would tell them: it goes. How far the blank lines move up.
std::size_t takeRelations(Step& step, std::size_t index, const Places& gone) {
    const auto first = std::find_if(gone.begin(), gone.end(),
                                    [&](const WorkingPlace& place) { return place.step == index; });
    const auto begin = step.workings.begin();
    const auto blank = begin + static_cast<std::ptrdiff_t>(first->working);
    auto from = blank;
    while (from != begin && !isCalculated(*std::prev(from)))
        --from;
    const auto count = static_cast<std::size_t>(blank - from);
    step.workings.erase(from, blank);
    return count;
}

} // namespace

std::string principlePrompt(const Step& step) {
    if (step.key == StepKey::direction || step.key == StepKey::directions)
        return std::string(
            SENTENCE("practice", "From which line is this angle turned off, and to which side?").text);
    if (step.law == Law::cosines || step.law == Law::sines)
        return std::string(
            SENTENCE("practice", "Which law gives this line, and why does it fit what is known here?").text);
    if (step.law == Law::components)
        return std::string(
            SENTENCE("practice", "Which components stand in this line, and with which signs?").text);
    return std::string(SENTENCE("practice", "Which relation gives this line, and why?").text);
}

void practising::silence(Step& step) {
    step.reasoning.clear();
    step.conclusion.clear();
    step.notes.clear();
    step.table.reset();
}

bool practising::isAmong(const Places& places, std::size_t step) {
    return std::any_of(places.begin(), places.end(),
                       [&](const WorkingPlace& place) { return place.step == step; });
}

Places calculatedLines(const Worked& worked) {
    Places places;
    for (std::size_t i = 0; i < worked.steps.size(); ++i)
        for (std::size_t j = 0; !looksBack(worked.steps[i]) && j < worked.steps[i].workings.size(); ++j)
            if (isCalculated(worked.steps[i].workings[j]))
                places.push_back({i, j});
    return places;
}

FadedSolution faded(const Worked& worked, std::size_t blank) {
    const Places lines = calculatedLines(worked);
    if (blank >= lines.size() && blank > 0)
        return onlyLaw(worked);
    FadedSolution out{worked, {}, false, {}};
    if (blank == 0)
        return out;
    const Places gone(lines.end() - static_cast<std::ptrdiff_t>(blank), lines.end());
    out.worked.steps.clear();
    out.worked.answer = {};
    for (std::size_t i = 0; i < worked.steps.size(); ++i) {
        if (i > gone.front().step && !isAmong(gone, i))
            continue;
        out.worked.steps.push_back(worked.steps[i]);
        Step& step = out.worked.steps.back();
        if (!isAmong(gone, i))
            continue;
        silence(step);
        const std::size_t shown = takeRelations(step, i, gone);
        for (const WorkingPlace& place : gone)
            if (place.step == i) {
                Working& line = step.workings[place.working - shown];
                line = Working{line.subject, {}, {}, {}};
                out.blank.push_back(
                    {{out.worked.steps.size() - 1, place.working - shown}, principlePrompt(step)});
            }
        step.title = SENTENCE("practice", "Your turn").text;
        step.law = Law::none;
    }
    return out;
}

std::size_t risingBlanks(std::size_t place, std::size_t count, std::size_t lines) {
    if (count < 2 || lines < 2)
        return 1;
    return 1 + ((place - 1) * (lines - 1) + (count - 1) / 2) / (count - 1); // to the nearest
}

} // namespace tailpoint
