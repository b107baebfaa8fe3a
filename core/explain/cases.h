// SPDX-License-Identifier: MIT
// What the cases of a sketch come to: every state solved, what is given differently, the differences to what
// is drawn, and the envelope: the least and the greatest of each found quantity, and which case governs it.
#pragma once

#include "core/explain/limits.h"
#include "core/explain/table_told.h"
#include "core/solve/solve.h"
#include "core/solve/tolerance.h"

#include <optional>
#include <string>
#include <vector>

namespace tailpoint {

/// The sketch as drawn, or as one case has it.
struct CaseState {
    std::string name; ///< kAsDrawn, or the case's
    Sketch sketch;
    Solved solved;
    tolerance::Ranges ranges; ///< of its answers; empty where nothing has a tolerance
};
/// As drawn first, then the cases in their order, without ranges; empty where the sketch has no cases.
/// Precondition: firstFault(sketch) is empty.
std::vector<CaseState> caseStates(const Sketch& sketch);
/// The same with their ranges.
std::vector<CaseState> withRanges(std::vector<CaseState> states,
                                  const tolerance::Effort& effort = tolerance::kExact);

/// One answer of one state.
struct CaseAnswer {
    std::size_t state = 0, answer = 0;
    bool operator==(const CaseAnswer&) const = default;
};

enum class CasePart : std::uint8_t { magnitude, direction, x, y };
std::string_view nameOf(CasePart part); ///< "magnitude", "direction", "x", "y"

/// An end of an envelope. An empty value: without a bound. `by`: the answers that reach it, in their order.
struct EnvelopeEnd {
    std::optional<double> value;
    std::vector<CaseAnswer> by;
};

/// A found quantity over all states: sheet's units, x and y along the sheet's. A direction goes unbroken from
/// `least` counter-clockwise in the sheet's sense to `greatest`, by the smallest arc that holds all of them;
/// least in (-half turn, half turn], greatest from it to a full turn above.
struct Envelope {
    int vector = kSumIndex;
    CasePart part = CasePart::magnitude;
    std::optional<std::size_t> answer; ///< of two answers that are matched by their order
    EnvelopeEnd least, greatest;
    bool anyDirection = false; ///< the ends mean nothing
    bool marked = false;       ///< an end is an outer bound
};

/// The answer in which a limit, or a permitted direction, is used most.
struct WorstUse {
    std::variant<LimitUse, DirectionUse> use;
    std::vector<CaseAnswer> by;
};

/// Where every state that has an answer has two, one envelope for each, matched by their order; else one over
/// all answers of all states.
bool areMatched(const std::vector<CaseState>& states);
/// Ranges count by their ends. Of the vectors with something to find, in the sketch's order, the sum last;
/// nothing where no state has an answer.
std::vector<Envelope> envelopesOf(const std::vector<CaseState>& states);
/// Of every vector for which a limit or permitted directions are stated.
std::vector<WorstUse> worstUses(const std::vector<CaseState>& states);

/// "storm", "storm, answer 2".
std::string nameOf(const CaseAnswer& which, const std::vector<CaseState>& states,
                   const Sentences* sentences = nullptr);

/// What a case gives differently: "P = 500 N at 30.0°, Q at S12.5°W"; a dash where it changes nothing.
std::string changesTold(const LoadCase& one, const Sketch& sketch, const Sentences* sentences = nullptr);

/// In words and tables: what is given, what is found and by how much it differs from what is drawn, the
/// envelope with what governs, and what is to be said of it. Empty where there are no cases.
std::vector<TableTold> casesTold(const Sketch& sketch, const std::vector<CaseState>& states,
                                 const Sentences* sentences = nullptr);

} // namespace tailpoint
