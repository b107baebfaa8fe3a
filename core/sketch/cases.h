// SPDX-License-Identifier: MIT
// Cases: the same question with other given values ("storm"), several in one sketch. All functions are pure.
#pragma once

#include "core/sketch/sketch.h"

#include <string_view>

namespace tailpoint {

/// What the sketch without a case is called; no case has this name.
inline constexpr std::string_view kAsDrawn = "as drawn";

/// The sketch as a case has it: without cases, `inCase` its name. Precondition: index < cases.size().
Sketch inCase(const Sketch& sketch, std::size_t index);
/// A vector as a change has it.
Force inCase(Force base, const CaseChange& change);
/// The sketch without its cases, as drawn.
Sketch asDrawn(Sketch sketch);

/// The title, behind it in which case the sketch is: "Survey raft (case: storm)". Empty where neither is
/// said.
std::string titleWithCase(const Sketch& sketch);

/// Empty: there is no such case.
std::optional<std::size_t> caseNamed(const Sketch& sketch, std::string_view name);
/// First free of "case 1", "case 2", ...
std::string nextCaseName(const Sketch& sketch);

/// A vector of the sketch got another name.
void renameInCases(Sketch& sketch, const std::string& from, const std::string& to);
/// Drops from the cases what an edit of the sketch has left without its place: changes of vectors that are
/// gone, of values that are to find, and of a sum that has become zero. Keeps the cases themselves.
void settleCases(Sketch& sketch);

/// `base` after an edit that was made on what `inCase(base, index)` shows. Where a value was given and is
/// given, it goes to the case, and leaves the case where it is the base's again; all else goes to the base:
/// names, limits, what is to find, forces that come and go, the sheet. Precondition: units, axis and g are
/// those of the base (whoever changes them changes the base and its cases at once).
Sketch editedInCase(const Sketch& base, std::size_t index, const Sketch& after);

} // namespace tailpoint
