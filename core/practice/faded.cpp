#include "core/practice/faded.h"

#include "core/explain/wording.h"
#include "core/mark/slip_numbers.h"
#include "core/practice/lots.h"

#include <algorithm>
#include <array>

namespace tailpoint {

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

std::string_view promptFor(const Step& step) {
    if (step.key == StepKey::direction || step.key == StepKey::directions)
        return SENTENCE("practice", "From which line is this angle turned off, and to which side?").text;
    if (step.law == Law::cosines || step.law == Law::sines)
        return SENTENCE("practice", "Which law gives this line, and why does it fit what is known here?")
            .text;
    if (step.law == Law::components)
        return SENTENCE("practice", "Which components stand in this line, and with which signs?").text;
    return SENTENCE("practice", "Which relation gives this line, and why?").text;
}

bool isAmong(const Places& places, std::size_t step) {
    return std::any_of(places.begin(), places.end(),
                       [&](const WorkingPlace& place) { return place.step == step; });
}

/// What a step says beside its workings.
void silence(Step& step) {
    step.reasoning.clear();
    step.conclusion.clear();
    step.notes.clear();
    step.table.reset();
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

/// Whose subject prints alike.
std::optional<WorkingPlace> placeOf(const Worked& worked, const Formula& subject) {
    const std::string name = toText(subject);
    for (const WorkingPlace& place : calculatedLines(worked))
        if (toText(*worked.steps[place.step].workings[place.working].subject) == name)
            return place;
    return std::nullopt;
}

/// The answer of who makes that slip and states all that is asked.
Attempt attemptOf(const SlipTable& table, const SlipNumbers& slip) {
    Attempt attempt;
    for (std::size_t quantity = 0; quantity < table.asked.size(); ++quantity) {
        GivenValue value{table.asked[quantity].id, table.asked[quantity].name, {}};
        for (std::size_t i = 0; i < table.answers; ++i) {
            const std::size_t cell = quantity * table.answers + i;
            const auto& number =
                slip.numbers.values[cell] ? slip.numbers.values[cell] : table.right.values[cell];
            if (number)
                value.numbers.push_back({{}, {{*number, 0, 15}}, true, false});
        }
        attempt.values.push_back(std::move(value));
    }
    return attempt;
}

const Finding* findingOf(const Marking& marking, std::string_view slip) {
    const auto found = std::find_if(marking.slips.begin(), marking.slips.end(), [&](const Finding& one) {
        return one.id == slip && one.second.empty() && one.lines.size() == 1 && one.lines.front().right;
    });
    return found == marking.slips.end() ? nullptr : &*found;
}

/// What is given, and the lines that calculate, with nothing said about them.
Worked bare(const Worked& worked, WorkingPlace& flaw) {
    Worked out;
    const Places lines = calculatedLines(worked);
    for (std::size_t i = 0; i < worked.steps.size(); ++i) {
        const Step& step = worked.steps[i];
        if (!isAmong(lines, i) && step.key != StepKey::given)
            continue;
        if (i == flaw.step)
            flaw.step = out.steps.size();
        out.steps.push_back(step);
        if (step.key != StepKey::given)
            silence(out.steps.back());
    }
    return out;
}

} // namespace

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
        for (const WorkingPlace& place : gone)
            if (place.step == i) {
                step.workings[place.working] = Working{step.workings[place.working].subject, {}, {}, {}};
                out.blank.push_back(
                    {{out.worked.steps.size() - 1, place.working}, std::string(promptFor(step))});
            }
        step.title = SENTENCE("practice", "Your turn").text;
        step.law = Law::none;
    }
    return out;
}

std::optional<FlawedSolution> flawed(const Sketch& sketch, std::string_view slip, std::uint32_t seed) {
    const Solved solved = solve(sketch);
    const auto table = slipTable(sketch, solved, std::array{slip});
    if (!table)
        return std::nullopt;
    std::vector<const SlipNumbers*> ways;
    for (const SlipNumbers& one : table->slips)
        if (one.changes && one.lines.size() == 1)
            ways.push_back(&one);
    const Construction construction = construct(sketch, solved);
    const Worked right = explain(sketch, solved, construction);
    const Marker marker(sketch, solved);
    for (std::size_t i = 0; i < ways.size(); ++i) {
        const SlipNumbers& way = *ways[(seed + i) % ways.size()];
        const Marking marking = marker.mark(attemptOf(*table, way));
        const Finding* finding = findingOf(marking, slip);
        const auto place = finding ? placeOf(right, *finding->lines.front().right->subject) : std::nullopt;
        if (!place)
            continue;
        ExplainOptions options;
        options.changed = way.lines;
        FlawedSolution out{explain(sketch, solved, construction, 0, options), *place, std::string(slip),
                           right.steps[place->step].workings[place->working], finding->mend};
        if (placeOf(out.worked, *out.right.subject) != place)
            continue; // the wrong number makes it another solution
        out.worked.steps[place->step].workings[place->working] = finding->lines.front().changed;
        out.worked = bare(out.worked, out.flaw);
        return out;
    }
    return std::nullopt;
}

} // namespace tailpoint
