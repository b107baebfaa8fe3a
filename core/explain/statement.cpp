#include "core/explain/statement.h"

#include "core/sketch/shown.h"
#include "core/sketch/things.h"

namespace tailpoint {

namespace {

constexpr std::size_t kMostInSentence = 6; ///< forces; beyond, a table

std::string_view angleSign(AngleUnit unit) {
    return unit == AngleUnit::deg ? "°" : unit == AngleUnit::rad ? " rad" : " gon";
}

std::string sizeWords(const Force& force, const Sketch& sketch) {
    if (!force.magnitude.plusMinus)
        return shownForceWithUnit(*force.magnitude.value, sketch, Origin::typed);
    return shownForce(*force.magnitude.value, sketch, Origin::typed) + " ± " +
           shortest(*force.magnitude.plusMinus) + ' ' + std::string(symbolOf(sketch.forceUnit));
}

/// "25.0°", "3 : 4 (run : rise)", "N30°E".
std::string wayWords(const Direction& direction, const Sketch& sketch) {
    std::string out = shownAsGiven(direction, sketch);
    if (std::holds_alternative<SlopeForm>(direction.form))
        out += " (run : rise)";
    if (direction.plusMinus)
        out.append(" ± ").append(shortest(*direction.plusMinus)).append(angleSign(sketch.angleUnit));
    return withMinusSigns(out);
}

std::string_view preposition(const Force& force) {
    if (force.lineOfActionOnly)
        return " along the line at ";
    return std::holds_alternative<SlopeForm>(force.direction.form) ? " along " : " at ";
}

/// " at 25.0°", an angle as a number.
void appendWay(Prose& out, const Force& force, const Sketch& sketch) {
    const std::string at(preposition(force));
    const auto* angle = std::get_if<AngleForm>(&force.direction.form);
    if (angle && !force.direction.plusMinus)
        appendPieces(out, at + "{}", {numberWithUnit(angle->value, shownAsGiven(force.direction, sketch))});
    else
        appendPieces(out, at + wayWords(force.direction, sketch), {});
}

Prose inSentence(const Force& force, const Sketch& sketch, const Things& things) {
    Prose out;
    if (force.magnitude.value)
        out = say("{}", equal(symbol(things.symbolNamed(force.name), {}), inWords(sizeWords(force, sketch))));
    else
        out = say("{} of unknown magnitude", vectorSymbol(things.symbolNamed(force.name)));
    if (isGiven(force.direction))
        appendWay(out, force, sketch);
    else if (force.magnitude.value != 0.0)
        appendPieces(out, " in an unknown direction", {});
    if (force.lineOfActionOnly)
        appendPieces(out, " in either sense", {});
    return out;
}

/// Forces of which something is given.
std::vector<const Force*> stated(const Sketch& sketch) {
    std::vector<const Force*> out;
    for (const Force& force : sketch.forces)
        if (isGiven(force.magnitude) || isGiven(force.direction))
            out.push_back(&force);
    return out;
}

Prose listed(const std::vector<Prose>& items) {
    Prose out = say(items.size() == 1 ? "Given is" : "Given are");
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i > 0)
            appendPieces(out, i + 1 == items.size() ? " and" : ",", {});
        append(out, items[i]);
    }
    return out;
}

Table tableOf(const std::vector<const Force*>& forces, const Sketch& sketch, const Things& things) {
    Table table;
    table.hasTotal = false;
    table.head = {inWords("force"), inWords("magnitude"), inWords("direction")};
    for (const Force* force : forces)
        table.rows.push_back(
            {vectorSymbol(things.symbolNamed(force->name)),
             inWords(force->magnitude.value ? sizeWords(*force, sketch) : "to find"),
             inWords(isGiven(force->direction) ? wayWords(force->direction, sketch) +
                                                     (force->lineOfActionOnly ? ", either sense" : "")
                     : force->magnitude.value == 0.0 ? "none"
                                                     : "to find")});
    return table;
}

std::string axisWords(const Sketch& sketch) {
    return "ngles are measured from " + withMinusSigns(axisName(sketch.reference)) + ", " +
           (sketch.reference.sense == Sense::ccw ? "counter-clockwise" : "clockwise") + " being positive.";
}

} // namespace

Statement statement(const Sketch& sketch) {
    Statement out;
    const auto forces = stated(sketch);
    if (forces.empty())
        return out;
    const Things things(sketch);
    if (forces.size() > kMostInSentence) {
        out.sentence = say("Given are the forces of the table. A" + axisWords(sketch));
        out.table = tableOf(forces, sketch, things);
        return out;
    }
    std::vector<Prose> items;
    items.reserve(forces.size());
    for (const Force* force : forces)
        items.push_back(inSentence(*force, sketch, things));
    out.sentence = listed(items);
    appendPieces(out.sentence, ". A" + axisWords(sketch), {});
    return out;
}

} // namespace tailpoint
