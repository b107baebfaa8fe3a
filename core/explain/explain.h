// SPDX-License-Identifier: MIT
// The worked solution of a question: steps chosen by the question, with the numbers that drew its figure.
//
// How to use it:
//   const Worked worked = explain(sketch, solved, construction, solution);
//   report --as text   toText(worked)                     (ASCII minus, as in every report)
//   report --as json   for (step : worked.steps) fieldsOf(step): title, law, formula, substitution, result
//   report --as html   toHtml(handout)                    core/explain/handout.h
//   report --as latex  toLatex(handout)                   core/explain/handout.h
//   panel, lecture     the trees themselves: Step::reasoning, workings, table, notes
#pragma once

#include "core/construct/construct.h"
#include "core/construct/figure_part.h"
#include "core/construct/stage.h"
#include "core/derive/values.h"
#include "core/explain/prose.h"
#include "core/explain/step_key.h"
#include "core/sketch/things.h"
#include "core/solve/tolerance.h"
#include "core/solve/tolerance_spread.h"

namespace tailpoint {

class Sentences;

enum class Law { none, cosines, sines, components };
std::string_view nameOf(Law law); ///< "none", "cosines", "sines", "components"

/// One line of calculation: subject = general = substituted = value. Without a subject the lines stand for
/// themselves (an inequality, an implication). `subject` may be a relation's left side such as R².
struct Working {
    std::optional<Formula> subject, general, substituted, value;
    std::optional<Formula> told{}; ///< the value with words behind it, where it is not told alone
    bool operator==(const Working&) const = default;
};

/// Component table: one row a force, numbers aligned at the right; the last row is the sum where `hasTotal`.
struct Table {
    std::vector<Formula> head;
    std::vector<std::vector<Formula>> rows;
    bool hasTotal = true;
    bool operator==(const Table&) const = default;
};

struct Step {
    StepKey key = StepKey::given;
    std::string title; ///< plain text, no formula
    std::vector<Prose> reasoning;
    Law law = Law::none;
    std::optional<Table> table; ///< set before the workings
    std::vector<Working> workings;
    std::vector<QuantityId> lines; ///< of the chain (core/derive) that the workings tell, in their order
    std::vector<Prose>
        conclusion;           ///< what the numbers say: comparison with the estimate, which root, and why
    std::vector<Prose> notes; ///< the usual traps, set in the margin
    std::vector<FigurePart> parts;
    std::vector<AngleName> angles; ///< that the step gives a symbol
    Stage stage = Stage::given;    ///< of the figure by the time of the step
    bool triangleAlone = false;    ///< the figure is the force triangle by itself
    int pair = 0; ///< which of the successive parallelograms (pairsOf) the figure shows, from 1; 0: none
    bool operator==(const Step&) const = default;
};

/// Which step of a solution: its key, and which of several parallelograms.
struct StepPlace {
    StepKey key = StepKey::given;
    int pair = 0;
    bool operator==(const StepPlace&) const = default;
};
inline StepPlace placeOf(const Step& step) {
    return {step.key, step.pair};
}

struct Worked {
    std::vector<Step> steps;
    Prose answer; ///< one sentence: magnitude, unit, direction, sense, axis; or why there is none
    bool operator==(const Worked&) const = default;
};

/// The way to an answer.
enum class Method {
    suited,    ///< the one that a lecturer would show for that question
    triangle,  ///< force triangle, laws of cosines and sines
    components ///< the sums along x and y
};

std::string_view nameOf(Method method);   ///< "suited", "triangle", "components"
Method methodFrom(std::string_view name); ///< what is no name of one: suited

struct ExplainOptions {
    Method method = Method::suited; ///< the other one is the check; where there is but one way, that is taken
                                    ///< and the count of unknowns says why
    bool handRounding = false;      ///< no guard figures on the way, and what it costs is told
    bool parallelograms = false; ///< a resultant of three to six forces: two at a time instead of a component
                                 ///< table, where no two are in line on the way
    std::optional<double>
        division; ///< force units in one division of the sheet: how long the answer measures
    Overrides
        changed; ///< numbers put in place of what their lines give, and carried on: what a slip leads to
    /// Standard uncertainties beside the ranges, where tolerances are given: told as these are, not by
    /// explain().
    std::optional<tolerance::UncertaintyAsked> uncertainty;
    const Sentences* sentences = nullptr; ///< of another language; null: as they are written here
    bool operator==(const ExplainOptions&) const = default;
};

/// Whether a resultant of several forces is told two at a time, where no two are in line on the way: what
/// draws beside the text asks this.
bool addsByParallelograms(const ExplainOptions& options);

/// Precondition: `solved` and `construction` belong to `sketch`, and to `solution` where there is one.
/// A question without an answer is explained too: which quantity to fix or to free, or why the loci don't
/// meet. `ranges` of its answers, where there are tolerances: then no magnitude or direction found stands
/// without its own. Under 0.1 ms for two forces.
Worked explain(const Sketch& sketch, const Solved& solved, const Construction& construction,
               std::size_t solution = 0, const ExplainOptions& options = {},
               const tolerance::Ranges& ranges = {});

/// A quantity of a worked solution: given, asked or on the way.
struct WorkedQuantity {
    std::string
        name; ///< as a script writes it; of two answers the same in both, told apart by thing.id.answer
    Thing thing;
    double value = 0; ///< in the sheet's units; with hand rounding the rounded one
    Formula number;   ///< as it is shown
};
/// Every force and every angle that the solution passes through: what is given first, then the lines in their
/// order, those of both answers where there are two. Without an answer what can be said without one.
std::vector<WorkedQuantity> quantitiesOf(const Sketch& sketch, const Solved& solved,
                                         const Construction& construction,
                                         const ExplainOptions& options = {});

/// A step in the words of a report; several workings are joined by "; ".
struct StepFields {
    std::string title, law, formula, substitution, result;
};
StepFields fieldsOf(const Step& step, Minus minus = Minus::ascii);

/// What stands behind the signs of equality, one below the other.
std::vector<const Formula*> sidesOf(const Working& working);
/// A working as relations ready to be set: "R = √(…)", "= √(…)", "= 520 N".
std::vector<Formula> linesOf(const Working& working);

/// The whole solution as plain text, wrapped at `width` columns; or from the step `from` (counted from 0) on,
/// under the same numbers.
std::string toText(const Worked& worked, Minus minus = Minus::ascii, std::size_t width = 96,
                   std::size_t from = 0);
std::string toText(const Step& step, Minus minus = Minus::ascii, std::size_t width = 96);

} // namespace tailpoint
