// SPDX-License-Identifier: MIT
#include "core/figure/tolerated.h"

#include "core/explain/limits.h"
#include "core/explain/ranges.h"
#include "core/figure/drawing.h"
#include "core/sketch/stated.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

using tolerance::AnswerRange;
using tolerance::DirectionRange;
using tolerance::Range;

constexpr double kExact = 1e-12;        ///< by its size, or a full turn: no tolerance moves it
constexpr double kExactAsBound = 1e-11; ///< the same of a direction's outer bound

constexpr const char* kNotKnown = "range not known";

bool hasTolerance(const Sketch& sketch) {
    return tolerance::boxOf(sketch).hasTolerance;
}

const AnswerRange* rangeOf(const Tolerated* tolerated, std::size_t answer) {
    return tolerated != nullptr && answer < tolerated->ranges.size() ? &tolerated->ranges[answer] : nullptr;
}

/// An outer bound in few words: what is said of it holds, but is wider than need be.
std::string said(Range range, const Sketch& sketch) {
    if (range.least && range.greatest && *range.greatest - *range.least <= kExact * *range.greatest)
        return {};
    const bool isWithin = range.marked && range.least && range.greatest;
    range.marked = false;
    return (isWithin ? "within " : "") + toText(rangeTold(range, sketch));
}

std::string said(DirectionRange range, const Sketch& sketch) {
    const double exact = (range.marked ? kExactAsBound : kExact) * turnIn(sketch.angleUnit);
    if (!range.any && range.to - range.from <= exact)
        return {};
    const char* outer = !range.marked ? "" : range.any ? "perhaps " : "within ";
    range.marked = false;
    return outer + toText(rangeTold(range, sketch));
}

/// Moved by whole turns, so that it holds this direction.
DirectionRange holding(DirectionRange range, double referred, double turn) {
    const double by = turn * std::floor((referred - range.from) / turn + kExact);
    range.from += by;
    range.to += by;
    return range;
}

const SolvedForce* solvedForce(const Solved& solved, std::size_t answer, int index) {
    if (answer >= solved.solutions.size())
        return nullptr;
    const Solution& solution = solved.solutions[answer];
    return index == kSumIndex ? &solution.sum : &solution.forces.at(static_cast<std::size_t>(index));
}

const tolerance::Ranges& rangesOf(const Drawing& d) {
    static const tolerance::Ranges none;
    return d.tolerated != nullptr ? d.tolerated->ranges : none;
}

void addLimit(std::vector<Run>& lines, const Drawing& d, int index, std::size_t answer) {
    for (const LimitUse& use : limitsOf(d.sketch, d.solved, answer, rangesOf(d))) {
        if (use.index != index || use.verdict == Bound::within)
            continue;
        const std::string share = use.utilisation ? ", " + utilisationText(*use.utilisation) : std::string();
        const std::string words = use.verdict == Bound::over ? "over limit" : "straddles limit";
        lines.push_back(
            lowerLine(marked(use.verdict, words + share), static_cast<int>(lines.size()) + 1, true));
    }
}

void addPermitted(std::vector<Run>& lines, const Drawing& d, int index, std::size_t answer) {
    for (const DirectionUse& use : permittedOf(d.sketch, d.solved, answer, rangesOf(d)))
        if (use.index == index && use.verdict != Bound::within)
            lines.push_back(
                lowerLine(marked(use.verdict, use.verdict == Bound::over ? "direction not permitted"
                                                                         : "direction partly not permitted"),
                          static_cast<int>(lines.size()) + 1, true));
}

} // namespace

Run lowerLine(std::string text, int line, bool bold) {
    Run run;
    run.text = std::move(text);
    run.bold = bold;
    run.part = kLowerPart;
    run.line = line;
    return run;
}

bool warns(const std::vector<Run>& lines) {
    return std::any_of(lines.begin(), lines.end(), [](const Run& run) { return run.bold; });
}

RangesSaid rangesSaid(const Sketch& sketch, const Solved& solved, std::size_t answer,
                      const Tolerated* tolerated, int index) {
    const SolvedForce* found = solvedForce(solved, answer, index);
    if (found == nullptr || (!found->magnitudeFound && !found->directionFound) || !hasTolerance(sketch))
        return {};
    const AnswerRange* answers = rangeOf(tolerated, answer);
    const auto* range = answers != nullptr ? answers->find(index) : nullptr;
    RangesSaid all;
    if (found->magnitudeFound)
        all.magnitude = range != nullptr ? said(range->magnitude, sketch) : kNotKnown;
    if (found->directionFound)
        all.direction = range != nullptr ? said(range->direction, sketch) : kNotKnown;
    return all;
}

DirectionSaid directionSaid(const Drawing& d, int index, double referred) {
    const std::string size = shownAngle(std::abs(referred), d.sketch);
    if (!d.vectors.at(index).foundDirection)
        return {size + spaced(toleranceOfSize(d.forceAt(index).direction, referred, d.sketch)), {}};
    DirectionSaid all{size, rangesSaid(d.sketch, d.solved, d.options.solution, d.tolerated, index).direction};
    const AnswerRange* answers = rangeOf(d.tolerated, d.options.solution);
    const auto* range = answers != nullptr ? answers->find(index) : nullptr;
    if (all.range.empty() || range == nullptr || range->direction.any)
        return all;
    const DirectionRange held = holding(range->direction, referred, turnIn(d.sketch.angleUnit));
    DirectionRange sized = held;
    if (held.to <= 0 && referred < 0) {
        sized.from = -held.to;
        sized.to = -held.from;
    } else if (held.from < 0) {
        all.value = shownAngle(referred, d.sketch);
    }
    all.range = said(sized, d.sketch);
    return all;
}

std::vector<Run> linesBelow(const Drawing& d, int index, bool other) {
    const std::size_t answer = other ? 1 - d.options.solution : d.options.solution;
    std::vector<Run> lines;
    const PlainVector& vector = d.vectors.at(index);
    if (const std::string stated =
            vector.foundMagnitude ? std::string() : ownUnitWords(d.forceAt(index).magnitude, d.sketch);
        !stated.empty())
        lines.push_back(lowerLine(withMinusSigns(stated), 1));
    if (answer >= d.solved.solutions.size()) {
        addLimit(lines, d, index, answer); // what is given
        addPermitted(lines, d, index, answer);
        return lines;
    }
    const std::string range = rangesSaid(d.sketch, d.solved, answer, d.tolerated, index).magnitude;
    if (!range.empty())
        lines.push_back(lowerLine(range, static_cast<int>(lines.size()) + 1));
    addLimit(lines, d, index, answer);
    if ((!vector.foundDirection || d.shows(Stage::all)) && d.isRevealed(directionId(vectorId(index)), other))
        addPermitted(lines, d, index, answer);
    return lines;
}

std::vector<Run> toleranceLegend(const Sketch& sketch, const Solved& solved, const FigureOptions& options) {
    if (!options.legend || !tellsAnswer(options) || options.solution >= solved.solutions.size() ||
        !hasTolerance(sketch))
        return {};
    Runs runs;
    const auto add = [&](const Runs& more) { runs.insert(runs.end(), more.begin(), more.end()); };
    const Things things(sketch);
    if (options.regions && options.tolerated)
        for (const tolerance::TipRegion& region : options.tolerated->regions) {
            add(plainRuns(runs.empty() ? "Shaded: where the tip of " : " and of "));
            add(symbolRuns(things.symbol(vectorId(region.index))));
        }
    if (!runs.empty())
        add(plainRuns(" can lie. "));
    if (options.angles && options.interior && options.values)
        add(plainRuns("Angles between strokes are those of the stated values."));
    return runs;
}

} // namespace tailpoint
