// SPDX-License-Identifier: MIT
// The cases of a sketch in its report: every one solved, and the envelope.
#include "core/explain/cases.h"
#include "core/sketch/cases.h"
#include "ui/files/report_json_parts.h"

namespace tailpoint {

namespace {

using States = std::vector<CaseState>;

const std::string& vectorName(const Sketch& sketch, int vector) {
    return vector == kSumIndex ? sketch.sum.name : sketch.forces[static_cast<std::size_t>(vector)].name;
}

/// What is given differently, in the sheet's units, as the sheet says directions.
JsonValue changesJson(const LoadCase& one, const Sketch& sketch) {
    std::vector<JsonMember> changes;
    for (const CaseChange& change : one.changes) {
        std::vector<JsonMember> values;
        if (change.magnitude)
            values.push_back({"magnitude", jsonNumberOrNull(change.magnitude->value)});
        if (change.direction)
            values.push_back({"direction", jsonNumberOrNull(referredDirection(*change.direction, sketch))});
        changes.push_back({change.of, jsonObject(std::move(values))});
    }
    return jsonObject(std::move(changes));
}

/// What was found, less what is found as drawn in the answer of the same number; null without such an answer.
JsonValue differenceJson(const SolvedForce& own, const Solution* drawn, int vector, AngleUnit unit) {
    JsonValue out = jsonObject({});
    const SolvedForce* base = drawn ? &vectorIn(*drawn, vector) : nullptr;
    if (own.magnitudeFound)
        out.members.push_back(
            {"magnitude", base ? jsonNumber(own.magnitude - base->magnitude) : JsonValue{}});
    if (own.directionFound)
        out.members.push_back(
            {"direction", base && base->direction && own.direction
                              ? jsonNumber(normalized(*own.direction - *base->direction, unit))
                              : JsonValue{}});
    return out;
}

JsonValue solutionJson(const CaseState& state, std::size_t answer, const CaseState& drawn) {
    const Sketch& sketch = state.sketch;
    const Solution& solution = state.solved.solutions[answer];
    const auto* ranges = answer < state.ranges.size() ? &state.ranges[answer] : nullptr;
    const Solution* base = answer < drawn.solved.solutions.size() ? &drawn.solved.solutions[answer] : nullptr;
    const auto vector = [&](const SolvedForce& solved, const Force& given, int index) {
        JsonValue out = vectorJson(solved, given, sketch, {ranges, nullptr}, index);
        if (solved.magnitudeFound || solved.directionFound)
            out.members.push_back({"difference", differenceJson(solved, base, index, sketch.angleUnit)});
        return out;
    };
    std::vector<JsonValue> forces;
    for (std::size_t i = 0; i < solution.forces.size(); ++i)
        forces.push_back(vector(solution.forces[i], sketch.forces[i], static_cast<int>(i)));
    return jsonObject(
        {{"sum", vector(solution.sum, sketch.sum, kSumIndex)}, {"forces", jsonList(std::move(forces))}});
}

JsonValue caseJson(const LoadCase& one, const CaseState& state, const CaseState& drawn) {
    std::vector<JsonValue> solutions;
    for (std::size_t i = 0; i < state.solved.solutions.size(); ++i)
        solutions.push_back(solutionJson(state, i, drawn));
    return jsonObject({{"name", jsonText(one.name)},
                       {"changes", changesJson(one, drawn.sketch)},
                       {"status", jsonText(nameOf(state.solved.status))},
                       {"message", jsonText(state.solved.message().text())},
                       {"solutions", jsonList(std::move(solutions))}});
}

/// The states that govern, each with the number of its answer where it has two.
JsonValue byJson(const std::vector<CaseAnswer>& by, const States& states) {
    std::vector<JsonValue> items;
    for (const CaseAnswer& which : by) {
        JsonValue one = jsonObject({{"case", jsonText(states[which.state].name)}});
        if (states[which.state].solved.solutions.size() > 1)
            one.members.push_back({"answer", jsonNumber(static_cast<double>(which.answer + 1))});
        items.push_back(std::move(one));
    }
    return jsonList(std::move(items));
}

JsonValue endJson(const EnvelopeEnd& end, const States& states) {
    return jsonObject({{"value", jsonNumberOrNull(end.value)}, {"by", byJson(end.by, states)}});
}

JsonValue envelopeJson(const Envelope& one, const States& states) {
    JsonValue out = jsonObject({{"of", jsonText(vectorName(states.front().sketch, one.vector))},
                                {"quantity", jsonText(nameOf(one.part))}});
    if (one.answer)
        out.members.push_back({"answer", jsonNumber(static_cast<double>(*one.answer + 1))});
    const bool isDirection = one.part == CasePart::direction;
    if (one.anyDirection) {
        out.members.push_back({"any", jsonTruth(true)});
    } else {
        out.members.push_back({isDirection ? "from" : "least", endJson(one.least, states)});
        out.members.push_back({isDirection ? "to" : "greatest", endJson(one.greatest, states)});
    }
    if (one.marked)
        out.members.push_back({"marked", jsonTruth(true)});
    return out;
}

JsonValue worstJson(const WorstUse& worst, const States& states) {
    const Sketch& sketch = states.front().sketch;
    JsonValue out;
    if (const auto* limit = std::get_if<LimitUse>(&worst.use))
        out = jsonObject({{"of", jsonText(vectorName(sketch, limit->index))},
                          {"limit", jsonNumber(limit->limit)},
                          {"utilisation", jsonNumberOrNull(limit->utilisation)},
                          {"verdict", jsonText(nameOf(limit->verdict))}});
    if (const auto* direction = std::get_if<DirectionUse>(&worst.use))
        out = jsonObject({{"of", jsonText(vectorName(sketch, direction->index))},
                          {"axis", jsonNumber(direction->axis)},
                          {"within", jsonNumber(direction->within)},
                          {"off", jsonNumber(direction->off)},
                          {"verdict", jsonText(nameOf(direction->verdict))}});
    out.members.push_back({"by", byJson(worst.by, states)});
    return out;
}

} // namespace

void addCases(JsonValue& report, const Sketch& sketch) {
    const States states = withRanges(caseStates(sketch));
    if (states.empty())
        return;
    std::vector<JsonValue> cases, envelope, worst;
    for (std::size_t i = 0; i < sketch.cases.size(); ++i)
        cases.push_back(caseJson(sketch.cases[i], states[i + 1], states.front()));
    for (const Envelope& one : envelopesOf(states))
        envelope.push_back(envelopeJson(one, states));
    for (const WorstUse& one : worstUses(states))
        worst.push_back(worstJson(one, states));
    report.members.push_back({"cases", jsonList(std::move(cases))});
    report.members.push_back({"envelope", jsonList(std::move(envelope))});
    if (!worst.empty())
        report.members.push_back({"worstUses", jsonList(std::move(worst))});
}

} // namespace tailpoint
