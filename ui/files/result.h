// SPDX-License-Identifier: MIT
// Everything that follows from one sketch, made as a whole and never changed.
#pragma once

#include "core/construct/construct.h"
#include "core/construct/figure_part.h"
#include "core/sketch/things.h"
#include "core/solve/solve.h"
#include "core/solve/tolerance.h"
#include "core/solve/tolerance_uncertainty.h"

#include <memory>
#include <vector>

namespace tailpoint {

struct ExplainOptions; // core/explain/explain.h
struct Worked;
struct Tolerated; // core/figure/tolerated.h

/// An immutable snapshot: whoever is handed one may keep it as long as he likes, on any thread. Copies share
/// what was made on demand.
class Result {
public:
    /// Solved and constructed here. `chosen` beyond the answers becomes 0. `isMoving`: a hand is at it.
    explicit Result(const Sketch& sketch, std::size_t chosen = 0, bool isMoving = false);
    /// With what is known of its answer already; asked(sketch): nothing.
    Result(const Sketch& sketch, const Solved& solved, std::size_t chosen, bool isWithheld = false,
           bool isMoving = false);

    const Sketch sketch;
    const Solved solved;
    const std::size_t chosen;        ///< which of two answers is shown
    const Construction construction; ///< of the chosen answer
    const bool isWithheld = false;   ///< nobody may work out the answer from it either: see unanswered()
    const bool isMoving = false;     ///< soon to be followed by another: its ranges are outer bounds

    /// The construction of any answer.
    Construction constructionOf(std::size_t solution) const;

    /// What its vectors and quantities are called: made when it is first asked for.
    const Things& things() const;

    /// What each answer can be within the given tolerances, in the order of the answers: made when it is
    /// first asked for. Empty: no tolerance is given, or there is no answer that has a range.
    const tolerance::Ranges& ranges() const;
    /// Of one answer; null: no range is known.
    const tolerance::AnswerRange* rangeOf(std::size_t answer) const;
    /// A given value has a tolerance: then no found one stands alone. False while the answer is withheld.
    bool hasTolerances() const;

    /// First order's part of them, as it is asked for: made when it is first asked for, the last kept. Empty
    /// while a hand is at it, for it is held against the exact ranges.
    tolerance::Uncertainties uncertainties(const tolerance::UncertaintyAsked& asked) const;

    /// The ranges for a figure of this answer, with the regions in which its tips can lie; while a hand is at
    /// it outer ones, or none where these are slow. Null where ranges() is empty.
    std::shared_ptr<const Tolerated> tolerated(std::size_t solution) const;

    /// The symbols that an answer's angles have, in its figure as in its worked solution.
    std::vector<AngleName> angleNames(std::size_t solution, bool byParallelograms) const;

    /// The worked solution of an answer (of `chosen` without one): made when it is first asked for, then kept
    /// for whoever asks next; the few last asked for are remembered.
    std::shared_ptr<const Worked> worked(const ExplainOptions& options, std::size_t solution) const;
    std::shared_ptr<const Worked> worked(const ExplainOptions& options) const;
    std::shared_ptr<const Worked> worked() const;

private:
    class Memory;
    std::shared_ptr<Memory> m_memory;
};

using Snapshot = std::shared_ptr<const Result>;

Result resultOf(const Sketch& sketch, std::size_t chosen = 0);
/// The question without its answer: all that an exercise is made from.
Result unanswered(const Sketch& sketch);

} // namespace tailpoint
