// SPDX-License-Identifier: MIT
#include "ui/files/report.h"

#include "core/construct/reduction.h"
#include "core/explain/caution.h"
#include "core/explain/explain.h"
#include "core/explain/legs.h"
#include "core/explain/limits.h"
#include "core/explain/question.h"
#include "core/explain/ranges.h"
#include "core/explain/tolerance.h"
#include "core/explain/uncertainty.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "ui/files/json_text.h"
#include "ui/files/report_json_parts.h"
#include "ui/files/report_values.h"
#include "ui/files/spread_json.h"
#include "ui/files/tolerance_json.h"
#include "ui/files/vectors.h"

#include <algorithm>

namespace tailpoint {

namespace {

JsonValue names(const std::vector<std::string>& texts) {
    std::vector<JsonValue> items;
    for (const std::string& text : texts)
        items.push_back(jsonText(text));
    return jsonList(std::move(items));
}

/// Of a direction as the report has it, in the sheet's sense, in which a bearing may not count.
std::optional<Tolerance> reportedTolerance(const Direction& given, const Sketch& sketch) {
    if (!given.tolerance || given.tolerance->percent)
        return given.tolerance;
    const Margins margins = marginsOf(given, sketch);
    return Tolerance{margins.plus, margins.minus, false};
}

/// "plusMinus": {"magnitude": 5, "direction": 0.5}, and the other keys alike.
void addTolerances(JsonValue& out, const Force& given, const Sketch& sketch) {
    for (const char* key : {"plusMinus", "plusMinusPercent", "plus", "minus"}) {
        std::vector<JsonMember> values;
        for (const auto& [name, tolerance] : {std::pair("magnitude", given.magnitude.tolerance),
                                              {"direction", reportedTolerance(given.direction, sketch)}})
            for (const JsonMember& member : toleranceMembers(tolerance))
                if (member.key == key)
                    values.push_back({name, member.value});
        if (!values.empty())
            out.members.push_back({key, jsonObject(std::move(values))});
    }
}

template <class Typed>
JsonValue statedJson(const Typed& typed, std::string_view unit) {
    std::vector<JsonMember> members{{"value", jsonNumber(typed.value)}};
    for (JsonMember& member : toleranceMembers(typed.tolerance))
        members.push_back(std::move(member));
    members.push_back({"unit", jsonText(unit)});
    return jsonObject(std::move(members));
}

/// What was stated in a unit of its own, as it stands in the file.
void addStated(JsonValue& out, const Force& given) {
    std::vector<JsonMember> values;
    if (const auto& typed = given.magnitude.typed)
        values.push_back({"magnitude", statedJson(*typed, symbolOf(typed->unit))});
    if (const auto* angle = std::get_if<AngleForm>(&given.direction.form); angle && angle->typed)
        values.push_back({"direction", statedJson(*angle->typed, nameOf(angle->typed->unit))});
    if (!values.empty())
        out.members.push_back({"stated", jsonObject(std::move(values))});
}

} // namespace

JsonValue vectorJson(const SolvedForce& solved, const Force& given, const Sketch& sketch,
                     const Spreads& spreads, int index) {
    JsonValue out =
        jsonObject({{"name", jsonText(solved.name)},
                    {"given", jsonTruth(!solved.magnitudeFound && !solved.directionFound)},
                    {"magnitude", jsonNumber(solved.magnitude)},
                    {"direction", jsonNumberOrNull(solved.direction)},
                    {"x", jsonNumber(solved.vector.x())},
                    {"y", jsonNumber(solved.vector.y())},
                    {"text", jsonObject({{"magnitude", jsonText(shownMagnitude(solved, given, sketch))},
                                         {"direction", jsonText(shownDirection(solved, given, sketch))}})}});
    addTolerances(out, given, sketch);
    addStated(out, given);
    if (const auto* range = spreads.ranges ? spreads.ranges->find(index) : nullptr)
        addRange(out, *range, spreads.ranges->everywhere, sketch);
    else if ((solved.magnitudeFound || solved.directionFound) && toleranceNote(sketch))
        addUnknownRange(out);
    if (spreads.uncertainty)
        for (const tolerance::VectorUncertainty& vector : *spreads.uncertainty)
            if (vector.index == index)
                addUncertainty(out, vector, sketch);
    return out;
}

namespace {

JsonValue triangleJson(const ForceTriangle& triangle, const Sketch& sketch) {
    std::vector<JsonMember> sides, angles;
    for (std::size_t i = 0; i < triangle.names.size(); ++i) {
        const auto& opposite = triangle.opposite[i];
        sides.push_back({triangle.names[i], jsonNumber(triangle.sides[i])});
        angles.push_back({triangle.names[i],
                          opposite ? jsonNumber(fromRadians(*opposite, sketch.angleUnit)) : JsonValue{}});
    }
    JsonValue out =
        jsonObject({{"sides", jsonObject(std::move(sides))}, {"angles", jsonObject(std::move(angles))}});
    if (!triangle.knowns.empty())
        out.members.push_back({"knowns", names(triangle.knowns)});
    return out;
}

JsonValue stepsJson(const Worked& worked) {
    std::vector<JsonValue> steps;
    for (const Step& step : worked.steps) {
        const StepFields fields = fieldsOf(step);
        steps.push_back(jsonObject({{"title", jsonText(fields.title)},
                                    {"law", jsonText(fields.law)},
                                    {"formula", jsonText(fields.formula)},
                                    {"substitution", jsonText(fields.substitution)},
                                    {"result", jsonText(fields.result)}}));
    }
    return jsonList(std::move(steps));
}

JsonValue neighbourJson(const LegNeighbour& neighbour, const Sketch& sketch, const Things& things) {
    return jsonObject({{"name", jsonText(things.name(neighbour.vector))},
                       {"angle", jsonNumber(neighbour.angle)},
                       {"text", jsonText(shownAngle(neighbour.angle, sketch))}});
}

JsonValue legJson(const Leg& leg, const Legs& legs, const Sketch& sketch, const Things& things) {
    std::vector<JsonValue> neighbours;
    for (const LegNeighbour& neighbour : leg.neighbours)
        neighbours.push_back(neighbourJson(neighbour, sketch, things));
    return jsonObject(
        {{"name", jsonText(things.name(leg.vector))},
         {"load", jsonText(things.name(legs.load))},
         {"fromHorizontal", jsonNumber(leg.fromHorizontal)},
         {"fromVertical", jsonNumber(leg.fromVertical)},
         {"neighbours", jsonList(std::move(neighbours))},
         {"tension", jsonNumber(leg.tension)},
         {"overLoad", jsonNumber(leg.overLoad)},
         {"low", jsonTruth(leg.isLow)},
         {"text", jsonObject({{"fromHorizontal", jsonText(shownAngle(leg.fromHorizontal, sketch))},
                              {"fromVertical", jsonText(shownAngle(leg.fromVertical, sketch))},
                              {"overLoad", jsonText(significant(leg.overLoad, sketch.figures))}})}});
}

/// Whether the vectors keep to the limits and directions that the sketch states, without an answer those that
/// are given; nothing where it states none.
void addLimits(JsonValue& to, const Sketch& sketch, const Solved& solved, std::size_t answer,
               const tolerance::Ranges& ranges) {
    const auto name = [&](int index) {
        return jsonText(index == kSumIndex ? sketch.sum.name
                                           : sketch.forces[static_cast<std::size_t>(index)].name);
    };
    std::vector<JsonValue> items;
    for (const LimitUse& use : limitsOf(sketch, solved, answer, ranges))
        items.push_back(jsonObject({{"of", name(use.index)},
                                    {"limit", jsonNumber(use.limit)},
                                    {"utilisation", jsonNumberOrNull(use.utilisation)},
                                    {"text", jsonText(use.utilisation ? utilisationText(*use.utilisation)
                                                                      : std::string("no upper bound"))},
                                    {"verdict", jsonText(nameOf(use.verdict))}}));
    for (const DirectionUse& use : permittedOf(sketch, solved, answer, ranges))
        items.push_back(jsonObject({{"of", name(use.index)},
                                    {"axis", jsonNumber(use.axis)},
                                    {"within", jsonNumber(use.within)},
                                    {"off", jsonNumber(use.off)},
                                    {"verdict", jsonText(nameOf(use.verdict))}}));
    if (items.empty())
        return;
    to.members.push_back({"limits", jsonList(std::move(items))});
    to.members.push_back({"limitsRemark", jsonText("typed by the user, not rated data")});
}

/// Nothing where there are no legs.
void addLegs(JsonValue& to, const Sketch& sketch, const Solved& solved, std::size_t solution,
             const tolerance::Ranges& ranges) {
    const auto legs =
        legsOf(sketch, solved, solution, solution < ranges.size() ? &ranges[solution] : nullptr);
    if (!legs)
        return;
    const Things things(sketch);
    std::vector<JsonValue> items;
    for (const Leg& leg : legs->legs)
        items.push_back(legJson(leg, *legs, sketch, things));
    to.members.push_back({"legs", jsonList(std::move(items))});
    if (const auto low = lowLegsTold(*legs, sketch))
        to.members.push_back({"legsRemark", jsonText(toText(*low, Minus::ascii))});
}

JsonValue solutionJson(const Answer& answer, const ExplainOptions& options, const tolerance::Ranges& ranges,
                       const tolerance::Uncertainties& uncertainties) {
    const Sketch& sketch = answer.sketch;
    const Solution& solution = answer.solution();
    const Construction construction = construct(sketch, answer.solved, answer.index);
    const Spreads spreads{answer.index < ranges.size() ? &ranges[answer.index] : nullptr,
                          answer.index < uncertainties.size() ? &uncertainties[answer.index] : nullptr};
    std::vector<JsonValue> forces;
    for (std::size_t i = 0; i < solution.forces.size(); ++i)
        forces.push_back(
            vectorJson(solution.forces[i], sketch.forces[i], sketch, spreads, static_cast<int>(i)));
    JsonValue out = jsonObject({{"sum", vectorJson(solution.sum, sketch.sum, sketch, spreads, kSumIndex)},
                                {"forces", jsonList(std::move(forces))}});
    if (construction.triangle)
        out.members.push_back({"triangle", triangleJson(*construction.triangle, sketch)});
    addLegs(out, sketch, answer.solved, answer.index, ranges);
    addLimits(out, sketch, answer.solved, answer.index, ranges);
    out.members.push_back({"residual", jsonNumber(solution.residual)});
    Worked worked = explain(sketch, answer.solved, construction, answer.index, options, ranges);
    if (options.uncertainty)
        tellUncertainty(worked, sketch, answer.solved, answer.index, uncertainties, *options.uncertainty,
                        options.sentences);
    tellLimits(worked, sketch, answer.solved, answer.index, ranges, options.sentences);
    out.members.push_back({"steps", stepsJson(worked)});
    if (const auto note = toleranceNote(sketch))
        out.members.push_back({"stepsRemark", jsonText(note->text)});
    return out;
}

JsonValue solutionsJson(const Result& result, const ExplainOptions& options,
                        const tolerance::Uncertainties& uncertainties) {
    std::vector<JsonValue> out;
    for (const Answer& answer : answersOf(result.sketch, result.solved))
        out.push_back(solutionJson(answer, options, result.ranges(), uncertainties));
    return jsonList(std::move(out));
}

JsonValue reversedJson(const Result& result, const ExplainOptions& options) {
    std::vector<JsonValue> out;
    for (const Answer& answer : reversedAnswersOf(result.sketch, result.solved))
        out.push_back(solutionJson(answer, options, rangesOfReversed(answer), {}));
    return jsonList(std::move(out));
}

std::string_view kindOf(const Thing& thing) {
    return thing.dimension == Dimension::angle ? "angle" : "force";
}

std::string_view nameOf(Thing::Role role) {
    switch (role) {
    case Thing::Role::given:
        return "given";
    case Thing::Role::asked:
        return "asked";
    case Thing::Role::onTheWay:
        break;
    }
    return "onTheWay";
}

/// A given value says so, and what it may be off.
void addGiven(JsonValue& out, const WorkedQuantity& quantity, const Sketch& sketch) {
    const QuantityId& id = quantity.thing.id;
    const bool isMagnitude = id.what == What::magnitude, isDirection = id.what == What::direction;
    const bool isGivenValue = quantity.thing.role == Thing::Role::given;
    out.members.push_back({"given", jsonTruth(isGivenValue)});
    if (!isGivenValue || (!isMagnitude && !isDirection))
        return;
    const int vector = indexOf(id.of);
    if (!hasVector(sketch, vector)) // known forces added up
        return;
    const Force& force = vectorOf(sketch, vector);
    for (JsonMember& member : toleranceMembers(isMagnitude ? force.magnitude.tolerance
                                                           : reportedTolerance(force.direction, sketch)))
        out.members.push_back(std::move(member));
}

/// What a vector's own quantity can be, as it is shown; empty for any other one.
std::optional<Prose> rangeOf(const WorkedQuantity& quantity, const Result& result) {
    const QuantityId& id = quantity.thing.id;
    const tolerance::AnswerRange* answer = result.rangeOf(id.answer == 0 ? 0 : id.answer - 1U);
    const auto* range =
        answer && hasVector(result.sketch, indexOf(id.of)) ? answer->find(indexOf(id.of)) : nullptr;
    if (!range)
        return std::nullopt;
    switch (id.what) {
    case What::magnitude:
        return rangeTold(range->magnitude, result.sketch);
    case What::direction:
        return rangeTold(range->direction, result.sketch);
    case What::x:
        return rangeTold(range->x, result.sketch);
    case What::y:
        return rangeTold(range->y, result.sketch);
    default:
        return std::nullopt;
    }
}

JsonValue quantityJson(const WorkedQuantity& quantity, const Result& result) {
    const Sketch& sketch = result.sketch;
    JsonValue out = jsonObject({{"name", jsonText(quantity.name)},
                                {"symbol", jsonText(inPrint(quantity.thing.symbol))},
                                {"kind", jsonText(kindOf(quantity.thing))},
                                {"role", jsonText(nameOf(quantity.thing.role))},
                                {"value", jsonNumber(quantity.value)},
                                {"text", jsonText(toText(quantity.number, Minus::ascii))}});
    if (const auto range = rangeOf(quantity, result))
        out.members.push_back({"range", jsonText(toText(*range, Minus::ascii))});
    addGiven(out, quantity, sketch);
    if (quantity.thing.id.answer != 0)
        out.members.push_back({"answer", jsonNumber(quantity.thing.id.answer)});
    return out;
}

JsonValue quantitiesJson(const Result& result, const ExplainOptions& options) {
    std::vector<JsonValue> items;
    const Construction construction = construct(result.sketch, result.solved, 0);
    for (const WorkedQuantity& quantity : quantitiesOf(result.sketch, result.solved, construction, options))
        items.push_back(quantityJson(quantity, result));
    return jsonList(std::move(items));
}

JsonValue codesJson(const std::vector<MessageCode>& codes) {
    std::vector<JsonValue> items;
    for (const MessageCode code : codes)
        items.push_back(jsonText(nameOf(code)));
    return jsonList(std::move(items));
}

/// What each tolerance was taken for.
JsonValue spreadJson(const tolerance::UncertaintyAsked& asked) {
    JsonValue out = jsonObject({{"distribution", jsonText(tailpoint::nameOf(asked.spread))}});
    if (asked.spread == tolerance::Spread::normal)
        out.members.push_back({"k", jsonNumber(asked.k)});
    out.members.push_back({"draws", jsonNumber(asked.draws)});
    return out;
}

JsonValue referenceJson(const Reference& reference) {
    return jsonObject({{"axis", jsonText(axisName(reference))},
                       {"degrees", jsonNumber(reference.axisDegrees)},
                       {"sense", jsonText(reference.sense == Sense::ccw ? "ccw" : "cw")}});
}

} // namespace

QByteArray reportJson(const Result& result, const ExplainOptions& options) {
    const Sketch& sketch = result.sketch;
    const Solved& solved = result.solved;
    const auto uncertainties =
        options.uncertainty ? result.uncertainties(*options.uncertainty) : tolerance::Uncertainties{};
    JsonValue report = jsonObject({{"format", jsonText("tailpoint-report")},
                                   {"version", jsonNumber(kReportVersion)},
                                   {"title", jsonText(sketch.title)},
                                   {"status", jsonText(nameOf(solved.status))},
                                   {"message", jsonText(solved.message().text())},
                                   {"messageCode", jsonText(nameOf(solved.messageCode()))},
                                   {"remarkCodes", codesJson(solved.remarkCodes())},
                                   {"find", jsonText(plain(question(sketch)))},
                                   {"unknowns", names(solved.unknowns)},
                                   {"quantities", quantitiesJson(result, options)},
                                   {"units", jsonObject({{"force", jsonText(symbolOf(sketch.forceUnit))},
                                                         {"angle", jsonText(nameOf(sketch.angleUnit))}})},
                                   {"reference", referenceJson(sketch.reference)},
                                   {"solutions", solutionsJson(result, options, uncertainties)},
                                   {"reversed", reversedJson(result, options)}});
    if (options.uncertainty)
        report.members.push_back({"uncertaintyOf", spreadJson(*options.uncertainty)});
    if (!sketch.inCase.empty())
        report.members.push_back({"case", jsonText(sketch.inCase)});
    addCases(report, sketch);
    if (solved.solutions.empty()) {
        addLegs(report, sketch, solved, 0, {});
        addLimits(report, sketch, solved, 0, {});
    }
    if (hasMass(sketch))
        report.members.push_back({"gravity", jsonNumber(sketch.gravity)});
    if (needsCaution(sketch))
        report.members.push_back({"caution", jsonText(cautionLine())});
    return QByteArray::fromStdString(writeJson(report));
}

} // namespace tailpoint
