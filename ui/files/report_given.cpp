// SPDX-License-Identifier: MIT
// The head of a report in plain text: the title, and what is given.
#include "core/explain/limits.h"
#include "core/quantity/utf8.h"
#include "core/sketch/cases.h"
#include "core/sketch/shown.h"
#include "core/sketch/stated.h"
#include "ui/files/report_lines.h"

#include <algorithm>

namespace tailpoint::report {

namespace {

std::string givenMagnitude(const Force& force, const Sketch& sketch) {
    return force.magnitude.value ? shownWithTolerance(force.magnitude, sketch) : "to find";
}

std::string givenDirection(const Force& force, const Sketch& sketch) {
    return force.magnitude.value == 0.0 && !isGiven(force.direction)
               ? "no direction"
               : shownWithTolerance(force.direction, sketch);
}

std::vector<std::string> givenRow(const Force& force, const Sketch& sketch) {
    return {force.name, givenMagnitude(force, sketch), givenDirection(force, sketch),
            force.lineOfActionOnly ? "line of action only" : ""};
}

/// What there is no room for in a row: what was stated in a unit of its own, and what bounds the vector.
std::string givenNotes(const Force& force, const Sketch& sketch) {
    std::string notes;
    const auto add = [&](const std::string& what) { notes += (notes.empty() ? "" : ", ") + what; };
    if (hasOwnUnit(force.magnitude))
        add(statedMagnitude(force.magnitude, sketch));
    if (hasOwnUnit(force.direction))
        add(statedDirection(force.direction, sketch));
    if (force.limit)
        add("at most " + shownAsTyped(*force.limit));
    if (force.permitted)
        add("within " + permittedText(force.permitted->within, sketch) + " of " +
            permittedText(force.permitted->axis, sketch));
    return notes.empty() ? notes : paragraph(force.name + ": " + notes);
}

} // namespace

std::string titleText(const Sketch& sketch) {
    const std::string named = titleWithCase(sketch), title = named.empty() ? "Untitled sketch" : named;
    return title + '\n' + std::string(std::min(characterCount(title), kColumns), '=') + '\n';
}

std::string givenText(const Sketch& sketch) {
    Rows rows;
    for (const Force& force : sketch.forces)
        rows.push_back(givenRow(force, sketch));
    const bool equilibrium = isEquilibrium(sketch);
    if (!equilibrium) {
        rows.push_back(givenRow(sketch.sum, sketch));
        rows.back()[0] += ", resultant";
    }
    std::string notes;
    for (const Force& force : sketch.forces)
        notes += givenNotes(force, sketch);
    notes += givenNotes(sketch.sum, sketch);
    return heading("Given") + paragraph("directions " + referenceWords(sketch.reference)) + table(rows) +
           notes + (equilibrium ? paragraph("in equilibrium: ΣF = 0") : std::string());
}

} // namespace tailpoint::report
