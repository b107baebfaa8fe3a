// SPDX-License-Identifier: MIT
#include "core/explain/statement.h"

#include "core/explain/listed.h"
#include "core/sketch/shown.h"
#include "core/sketch/things.h"

#include <algorithm>

namespace tailpoint {

namespace {

constexpr std::size_t kMostInSentence = 6; ///< forces; beyond, a table

struct StatementVoice : Voice {
    StatementVoice(const Sketch& theSketch, const Sentences* sentences)
        : Voice(sentences), sketch(theSketch), things(theSketch) {}
    const Sketch& sketch;
    const Things things;
};

/// "340 ± 5 N"; what stands in the file in a unit of its own before it: "850 kgf = 8340 N", a mass with the
/// g that makes it a weight.
std::string sizeShown(const StatementVoice& speaker, const Force& force) {
    const Magnitude& given = force.magnitude;
    const std::string shown = withMinusSigns(shownWithTolerance(given, speaker.sketch));
    if (!given.typed)
        return shown;
    const auto words = [](const std::string& text) { return Prose{{text}}; };
    const std::string typed = withMinusSigns(shownAsTyped(*given.typed));
    if (std::holds_alternative<ForceUnit>(given.typed->unit))
        return typed + " = " + shown;
    return toText(speaker.say(SENTENCE("statement", "weight of {mass} = {weight} (g = {gravity})"), "mass",
                              words(typed), "weight", words(shown), "gravity",
                              words(shownGravity(speaker.sketch))));
}

/// "25.0°", "3 : 4 (run : rise)", "N30°E"; an angle as a number.
Prose wayShown(const StatementVoice& speaker, const Direction& direction) {
    std::string shown = shownAsGiven(direction, speaker.sketch);
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    if (angle && !direction.tolerance && !angle->typed)
        return {{numberWithUnit(angle->value, shown)}};
    if (angle && angle->typed)
        shown = shownAsTyped(*angle->typed) + " = " + shown;
    Prose out{{withMinusSigns(shown)}};
    if (std::holds_alternative<SlopeForm>(direction.form))
        out = speaker.say(SENTENCE("statement", "{slope} (run : rise)"), "slope", std::move(out));
    if (direction.tolerance)
        out = speaker.say(SENTENCE("statement", "{angle} {tolerance}"), "angle", std::move(out), "tolerance",
                          Prose{{withMinusSigns(shownTolerance(direction, speaker.sketch))}});
    return out;
}

Wording wayWording(const Force& force) {
    if (force.lineOfActionOnly)
        return SENTENCE("statement", "{size} along the line at {angle} in either sense");
    return std::holds_alternative<SlopeForm>(force.direction.form)
               ? SENTENCE("statement", "{size} along {angle}")
               : SENTENCE("statement", "{size} at {angle}");
}

Prose inSentence(const StatementVoice& speaker, const Force& force) {
    const Symbol name = speaker.things.symbolNamed(force.name);
    const Prose size = force.magnitude.value
                           ? Prose{{equal(symbol(name, {}), inWords(sizeShown(speaker, force)))}}
                           : speaker.say(SENTENCE("statement", "{vector} of unknown magnitude"), "vector",
                                         vectorSymbol(name));
    if (isGiven(force.direction))
        return speaker.say(wayWording(force), "size", size, "angle", wayShown(speaker, force.direction));
    if (force.magnitude.value == 0.0)
        return size;
    return speaker.say(SENTENCE("statement", "{size} in an unknown direction"), "size", size);
}

/// All forces, where something is given of any.
std::vector<const Force*> stated(const Sketch& sketch) {
    const bool any = std::any_of(sketch.forces.begin(), sketch.forces.end(), [](const Force& force) {
        return isGiven(force.magnitude) || isGiven(force.direction);
    });
    std::vector<const Force*> out;
    for (const Force& force : sketch.forces)
        if (any)
            out.push_back(&force);
    return out;
}

Formula wayCell(const StatementVoice& speaker, const Force& force) {
    const auto cell = [](const Prose& prose) { return inWords(toText(prose)); };
    if (!isGiven(force.direction))
        return cell(speaker.say(force.magnitude.value == 0.0 ? SENTENCE("table", "none")
                                                             : SENTENCE("table", "to find")));
    Prose way = wayShown(speaker, force.direction);
    if (force.lineOfActionOnly)
        way = speaker.say(SENTENCE("table", "{angle}, either sense"), "angle", std::move(way));
    return cell(way);
}

Table tableOf(const StatementVoice& speaker, const std::vector<const Force*>& forces) {
    Table table;
    table.hasTotal = false;
    const auto cell = [&](const Wording& wording) { return inWords(speaker.text(wording)); };
    table.head = {cell(SENTENCE("table", "force")), cell(SENTENCE("table", "magnitude")),
                  cell(SENTENCE("table", "direction"))};
    for (const Force* force : forces)
        table.rows.push_back({vectorSymbol(speaker.things.symbolNamed(force->name)),
                              force->magnitude.value ? inWords(sizeShown(speaker, *force))
                                                     : cell(SENTENCE("table", "to find")),
                              wayCell(speaker, *force)});
    return table;
}

Wording introduction(bool table, bool counterClockwise) {
    if (table)
        return counterClockwise
                   ? SENTENCE("statement", "The forces in the table are given. Angles are measured from "
                                           "{axis}, counter-clockwise being positive.")
                   : SENTENCE("statement", "The forces in the table are given. Angles are measured from "
                                           "{axis}, clockwise being positive.");
    return counterClockwise
               ? SENTENCE("statement",
                          "{given}. Angles are measured from {axis}, counter-clockwise being positive.")
               : SENTENCE("statement", "{given}. Angles are measured from {axis}, clockwise being positive.");
}

bool isWhole(const Force* force) {
    return isGiven(force->magnitude) && isGiven(force->direction);
}

/// What is unknown in part is not said to be given.
Wording givenWording(const std::vector<const Force*>& forces) {
    const bool one = forces.size() == 1;
    if (std::all_of(forces.begin(), forces.end(), isWhole))
        return one ? SENTENCE("statement", "{forces} is given") : SENTENCE("statement", "{forces} are given");
    return one ? SENTENCE("statement", "{forces} is one of the forces")
               : SENTENCE("statement", "{forces} act together");
}

Prose givenTold(const StatementVoice& speaker, const std::vector<const Force*>& forces) {
    std::vector<Prose> items;
    items.reserve(forces.size());
    for (const Force* force : forces)
        items.push_back(inSentence(speaker, *force));
    return speaker.say(givenWording(forces), "forces", explaining::listed(speaker, std::move(items)));
}

} // namespace

Statement statement(const Sketch& sketch, const Sentences* sentences) {
    Statement out;
    const auto forces = stated(sketch);
    if (forces.empty())
        return out;
    const StatementVoice speaker(sketch, sentences);
    const bool table = forces.size() > kMostInSentence;
    if (table)
        out.table = tableOf(speaker, forces);
    out.sentence = speaker.say(introduction(table, sketch.reference.sense == Sense::ccw), "given",
                               table ? Prose{} : givenTold(speaker, forces), "axis",
                               Prose{{withMinusSigns(axisName(sketch.reference))}});
    return out;
}

} // namespace tailpoint
