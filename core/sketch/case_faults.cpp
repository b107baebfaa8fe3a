// SPDX-License-Identifier: MIT
// Every rule that the cases of a sketch must keep.
#include "core/quantity/text.h"
#include "core/sketch/cases.h"
#include "core/sketch/fault_parts.h"

#include <unordered_map>
#include <unordered_set>

namespace tailpoint {
namespace {

using Fault = std::optional<SketchFault>;
using Vectors = std::unordered_map<std::string_view, const Force*>;

Fault caseNameFault(const std::string& name, const std::string& place) {
    const std::optional<std::size_t> length = printableLength(name);
    if (!length) {
        return SketchFault{FaultCode::unprintable, place,
                           "has characters that can't be printed; use letters, digits and signs"};
    }
    if (*length == 0 || *length > kLongestCaseName) {
        return SketchFault{FaultCode::nameLength, place,
                           "a case's name has 1 to 24 characters, this one has " + std::to_string(*length) +
                               "; give another such as storm"};
    }
    if (name.find_first_not_of(' ') == std::string::npos) {
        return SketchFault{FaultCode::nameBlank, place, "is blank; give a name such as storm"};
    }
    if (name == kAsDrawn) {
        return SketchFault{FaultCode::caseNameTaken, place,
                           "'as drawn' is the sketch without a case; give another name such as storm"};
    }
    return std::nullopt;
}

/// Magnitude or direction of one vector: given in the sketch and in the case.
template <class Value>
Fault givenFault(const std::optional<Value>& changed, const Value& base, const std::string& place) {
    if (!changed || (isGiven(*changed) && isGiven(base))) {
        return std::nullopt;
    }
    return isGiven(base)
               ? SketchFault{FaultCode::caseChangesToFind, place,
                             "is to find in this case and given in the sketch; give a value, or take it out"}
               : SketchFault{
                     FaultCode::caseChangesToFind, place,
                     "is to find in the sketch, so no case gives it; take it out, or give the sketch a "
                     "value"};
}

Fault restFault(const Force& base, const Force& changed, const std::string& place) {
    if ((base.magnitude.value == 0.0) == (changed.magnitude.value == 0.0)) {
        return std::nullopt;
    }
    return SketchFault{FaultCode::caseMovesRest, place + ".magnitude",
                       "a sum is 0 in every case or in none, since that is another question; give it so, or "
                       "draw another sketch"};
}

Fault changeFault(const CaseChange& change, const Sketch& sketch, const Vectors& vectors,
                  const std::string& place) {
    const auto known = vectors.find(change.of);
    if (known == vectors.end()) {
        return SketchFault{FaultCode::caseOfUnknown, place,
                           "'" + oneLine(change.of) + "' is neither a force nor the sum; name one of them"};
    }
    const Force& base = *known->second;
    if (!change.magnitude && !change.direction) {
        return SketchFault{FaultCode::caseChangesNothing, place,
                           "changes nothing; give a magnitude or a direction, or take it out"};
    }
    if (Fault fault = givenFault(change.magnitude, base.magnitude, place + ".magnitude")) {
        return fault;
    }
    if (Fault fault = givenFault(change.direction, base.direction, place + ".direction")) {
        return fault;
    }
    const Force changed = inCase(base, change);
    if (Fault fault = vectorFault(changed, sketch)) {
        fault->place = place + fault->place;
        return fault;
    }
    return known->second == &sketch.sum ? restFault(base, changed, place) : Fault();
}

Fault changesFault(const LoadCase& one, const Sketch& sketch, const Vectors& vectors,
                   const std::string& place) {
    std::unordered_set<std::string_view> changed;
    for (const CaseChange& change : one.changes) {
        const std::string at = place + ".changes." + oneLine(change.of);
        if (!changed.insert(change.of).second) {
            return SketchFault{FaultCode::caseChangesTwice, at,
                               "is changed twice in this case; keep one of the two"};
        }
        if (Fault fault = changeFault(change, sketch, vectors, at)) {
            return fault;
        }
    }
    return std::nullopt;
}

} // namespace

Fault casesFault(const Sketch& sketch) {
    if (sketch.cases.empty()) {
        return std::nullopt;
    }
    if (sketch.cases.size() > kMostCases) {
        return SketchFault{FaultCode::tooManyCases, "cases",
                           std::to_string(sketch.cases.size()) +
                               " cases are more than the 100 that a sketch holds; take some out"};
    }
    Vectors vectors{{sketch.sum.name, &sketch.sum}};
    for (const Force& force : sketch.forces) {
        vectors.emplace(force.name, &force);
    }
    std::unordered_set<std::string_view> names;
    for (std::size_t i = 0; i < sketch.cases.size(); ++i) {
        const LoadCase& one = sketch.cases[i];
        const std::string place = "cases[" + std::to_string(i) + "]";
        if (Fault fault = caseNameFault(one.name, place + ".name")) {
            return fault;
        }
        if (!names.insert(one.name).second) {
            return SketchFault{FaultCode::caseNameTaken, place + ".name",
                               "'" + one.name + "' is taken; the names of cases are unique, give another"};
        }
        if (Fault fault = changesFault(one, sketch, vectors, place)) {
            return fault;
        }
    }
    return std::nullopt;
}

} // namespace tailpoint
