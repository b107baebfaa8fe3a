// SPDX-License-Identifier: MIT
// lecture/: the worked solution revealed step by step on a full screen, with the same figure and formulas as
// everywhere. Here the plan: which stops a lecture makes, what each shows of the figure, and in which order
// its lines appear. No widget, no number of its own.
#pragma once

#include "core/explain/explain.h"
#include "core/figure/compose.h"
#include "ui/document/sketch_document.h"

#include <algorithm>
#include <vector>

namespace tailpoint {

/// What one press adds to the lines of a stop.
struct BeatLine {
    enum class Kind { reasoning, table, working, conclusion };
    Kind kind = Kind::reasoning;
    std::size_t index = 0; ///< which of the step's, by kind
    int parts = 0;         ///< of a working: how many of symbols, substitution, result stand by now
    bool operator==(const BeatLine&) const = default;
};
using Beat = std::vector<BeatLine>;

struct Stop {
    Step step;
    std::size_t solution = 0; ///< the answer it speaks of
    std::vector<Beat> beats;  ///< at least one
    std::size_t resultBeat = 0;
    FigureOptions before, after; ///< what the sheet shows before the result is read out, and from then on

    std::vector<std::vector<QuantityId>> hidden; ///< by beat: later results, which the sheet keeps to itself
    std::vector<QuantityId> unnamed;             ///< angles that a later beat than the first names
    std::vector<std::size_t> namedAt;            ///< that beat, for each of them

    std::size_t lastBeat() const { return beats.size() - 1; }
    FigureOptions figureAt(std::size_t beat) const {
        FigureOptions options = beat < resultBeat ? before : after;
        options.hidden = hidden[beat];
        for (std::size_t i = 0; i < unnamed.size(); ++i)
            if (beat < namedAt[i])
                std::erase_if(options.names,
                              [&](const AngleName& name) { return isSame(name.angle, unnamed[i]); });
        return options;
    }
};

/// From the bare given forces through every step to the answer; where there are two answers, both are walked.
/// `figure` is what doesn't change on the way: construction, style. `words` of the question, where it has its
/// own (wordsOf() in ui/practice/problem_file.h, of which the second form asks).
std::vector<Stop> planOf(const Result& result, const FigureOptions& figure, const ExplainOptions& options,
                         const std::string& words);
std::vector<Stop> planOf(const Result& result, const FigureOptions& figure,
                         const ExplainOptions& options = {});

/// Lines by working where they are few; otherwise a working at once, so that nobody presses forever.
std::vector<Beat> beatsOf(const Step& step);

/// The step with its reasons in few words: of a long paragraph the first sentences, of a check the verdict.
Step shortened(const Step& step);

/// The step without its numbers, for asking the room first: symbols stay, values become "?".
Step withoutNumbers(const Step& step);

} // namespace tailpoint
