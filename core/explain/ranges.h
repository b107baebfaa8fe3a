// SPDX-License-Identifier: MIT
// Ranges in words: what an answer can be when the given values lie anywhere within their tolerances.
//
// Every number is rounded outward, a least one down and a greatest one up, so that what is shown holds.
#pragma once

#include "core/explain/explain.h"
#include "core/explain/wording.h"
#include "core/solve/tolerance.h"

namespace tailpoint {

/// "508 to 532 N", "at least 98.2 N", "unbounded"; "520 N" where both ends are the same. An outer bound says
/// that it is one. Sheet's unit and figures.
Prose rangeTold(const tolerance::Range& range, const Sketch& sketch, const Voice& voice = Voice());
/// "−5.1° to −2.2°", "170.0° to 190.0°", "any direction".
Prose rangeTold(const tolerance::DirectionRange& range, const Sketch& sketch, const Voice& voice = Voice());

/// The same within a sentence: "between 508 N and 532 N", "at least 98.2 N without an upper bound".
Prose betweenTold(const tolerance::Range& range, const Sketch& sketch, const Voice& voice = Voice());
Prose betweenTold(const tolerance::DirectionRange& range, const Sketch& sketch, const Voice& voice = Voice());

/// One end as it is shown, with its unit, rounded outward; of an angle in the sheet's angle unit.
std::string shownOutward(double value, bool isAngle, bool isGreatest, const Sketch& sketch);

/// Both ends as a table has them, UTF-8, ASCII minus: "508", "532"; "-5.1°", "-2.2°". Both the same where the
/// range is one value; empty: unbounded, or any direction.
struct EndsTold {
    std::string from, to;
    bool isOne = false;    ///< one value
    bool isMarked = false; ///< an outer bound
};
EndsTold endsTold(const tolerance::Range& range, const Sketch& sketch); ///< without the force unit
EndsTold endsTold(const tolerance::DirectionRange& range, const Sketch& sketch);
/// Nothing that is told of the vector can be other than it is.
bool isOneValue(const tolerance::VectorRange& range, const Sketch& sketch);

/// What is to be said of all ranges of an answer: that a part has no answer, a slack line, and last an outer
/// bound (not where that changes with every frame).
enum class OuterBounds { told, silent };
std::vector<Prose> rangeRemarks(const tolerance::AnswerRange& range, const Sketch& sketch,
                                const Voice& voice = Voice(), OuterBounds outer = OuterBounds::told);
/// Where there are tolerances and no range is known: "range not known".
std::string rangeUnknown(const Voice& voice = Voice());

} // namespace tailpoint
