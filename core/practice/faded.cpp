// SPDX-License-Identifier: MIT
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
    return step.key == StepKey::check || step.key == StepKey::lami || step.key == StepKey::rounding ||
           step.key == StepKey::answer || step.key == StepKey::estimate;
}

bool isCalculated(const Working& working) {
    return working.subject && working.value && (working.general || working.substituted);
}

std::string_view lawQuestion() {
    return SENTENCE("practice", "Which law starts, and why?").text;
}

/// The lines that are gone keep their subject; what leads to them, or on from them, goes: a law in letters
/// before a line, a ratio after it. Where the blank ones stand then.
std::vector<std::size_t> blankOut(Step& step, const std::vector<std::size_t>& gone) {
    std::size_t kept = gone.front();
    while (kept > 0 && !isCalculated(step.workings[kept - 1]))
        --kept;
    std::vector<Working> workings(step.workings.begin(),
                                  step.workings.begin() + static_cast<std::ptrdiff_t>(kept));
    std::vector<QuantityId> lines;
    const bool areParallel = step.lines.size() == step.workings.size();
    if (areParallel)
        lines.assign(step.lines.begin(), step.lines.begin() + static_cast<std::ptrdiff_t>(kept));
    std::vector<std::size_t> blank;
    for (const std::size_t line : gone) {
        blank.push_back(workings.size());
        workings.push_back(Working{step.workings[line].subject, {}, {}, {}});
        if (areParallel)
            lines.push_back(step.lines[line]);
    }
    step.workings = std::move(workings);
    if (areParallel)
        step.lines = std::move(lines);
    return blank;
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

namespace {

/// What the line gives, in words where its letter says nothing yet.
Prose comesNext(const Formula& subject, const Things& things) {
    const Voice voice;
    const QuantityId& id = subject.id;
    if (id.what == What::between)
        return voice.say(SENTENCE("practice", "The angle {angle} between {a} and {b} comes next."), "angle",
                         subject, "a", things.vectorFormula(id.of), "b", things.vectorFormula(id.with));
    if (id.what == What::opposite)
        return voice.say(
            SENTENCE("practice", "The angle {angle} of the triangle, opposite to {a}, comes next."), "angle",
            subject, "a", things.vectorFormula(id.of));
    return voice.say(SENTENCE("practice", "{what} comes next."), "what", subject);
}

} // namespace

Prose askedNext(const Step& step, const Formula& subject, const Things& things) {
    Prose asks = step.law == Law::none ? inProse(step.title + '.') : comesNext(subject, things);
    appendText(asks, ' ' + principlePrompt(step));
    return asks;
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
        std::vector<std::size_t> here;
        for (const WorkingPlace& place : gone)
            if (place.step == i)
                here.push_back(place.working);
        for (const std::size_t line : blankOut(step, here))
            out.blank.push_back({{out.worked.steps.size() - 1, line}, principlePrompt(step)});
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
