// SPDX-License-Identifier: MIT
// Students for property tests: honest ones, who round on the way, and such as make one slip of the table.
#pragma once

#include "core/mark/alternatives.h"
#include "core/sketch/shown.h"
#include "tests/core/explain/questions.h"

#include <cmath>
#include <map>
#include <memory>
#include <string>

namespace tailpoint::testing {

/// A question with an answer, its marker, and what the marker's parts know of it.
struct Set {
    Sketch sketch;
    std::unique_ptr<marking::Question> question;
    std::unique_ptr<marking::Alternatives> alternatives;
    std::unique_ptr<Marker> marker;
};

/// `withSlips`: the alternatives are made as well.
inline std::optional<Set> setOf(Dice& dice, std::uint64_t number, bool withSlips) {
    Set set;
    set.sketch = someQuestion(dice, static_cast<int>(number % kQuestionKinds));
    const Solved solved = solve(set.sketch);
    set.marker = std::make_unique<Marker>(set.sketch, solved);
    if (set.marker->refusal())
        return std::nullopt;
    set.question = std::make_unique<marking::Question>(set.sketch, solved, MarkOptions());
    if (withSlips)
        set.alternatives = std::make_unique<marking::Alternatives>(*set.question);
    return set;
}

/// How a student rounds: significant figures of forces, one more of squares and ratios; angles to a decimal
/// fewer two. 0: not at all.
struct Rounds {
    int figures = 0;
    bool tiesUp = false; ///< away from zero, else to even

    long double to(long double value, long double unit) const {
        const long double steps = value / unit;
        const long double whole =
            tiesUp ? std::copysign(std::floor(std::fabs(steps) + 0.5L), steps) : std::nearbyint(steps);
        return whole * unit;
    }
    long double operator()(What what, long double value, const Sketch& sketch) const {
        if (figures == 0 || value == 0)
            return value;
        if (dimensionOf(what) == Dimension::angle) {
            const int decimals = std::max(figures - 2, shownAngleDecimals(sketch));
            return to(value, std::pow(10.0L, -decimals));
        }
        const int own = figures + (dimensionOf(what) == Dimension::force ? 0 : 1);
        return to(value, std::pow(10.0L, std::floor(std::log10(std::fabs(value))) + 1 - own));
    }
};

/// A chain line by line, every line rounded.
inline Values worked(const Chain& chain, const Sketch& sketch, const std::vector<marking::Change>& changes,
                     const Rounds& rounds) {
    Values values = givenValues(chain, sketch);
    for (std::size_t i = 0; i < chain.lines.size(); ++i) {
        const Line* line = &chain.lines[i];
        for (const marking::Change& change : changes)
            if (change.line == i)
                line = &change.now;
        if (const auto value = evaluateLine(*line, chain.unit, values).second)
            values.set(line->subject, rounds(line->subject.what, *value, sketch));
    }
    return values;
}

/// As an answer is written down: to the asked figures.
inline std::string written(const marking::Question& question, std::size_t cell, double value, bool tiesUp) {
    const Sketch& sketch = question.sketch();
    const Rounds rounds{0, tiesUp};
    if (question.dimension(cell) == Dimension::angle) {
        const int decimals = shownAngleDecimals(sketch);
        return fixedDecimals(static_cast<double>(rounds.to(value, std::pow(10.0L, -decimals))), decimals);
    }
    if (value == 0)
        return "0";
    const int figures = figuresOf(value, sketch);
    const auto unit = std::pow(10.0L, std::floor(std::log10(std::fabs(value))) + 1 - figures);
    return significant(static_cast<double>(rounds.to(value, unit)), figures);
}

using Writing = std::function<std::string(std::size_t cell, double value)>;

/// What is asked, in one of the answers, from the values of a chain; where a chain has it not, it is left
/// out.
inline Attempt attemptOf(const Set& set, std::size_t answer,
                         const std::function<std::optional<double>(std::size_t)>& at,
                         const Writing& writing) {
    Attempt attempt;
    for (std::size_t quantity = 0; quantity < set.question->asked; ++quantity) {
        const std::size_t cell = set.question->cell(quantity, answer);
        const auto value = at(cell);
        if (!value || !std::isfinite(*value))
            continue;
        auto read = set.marker->read(set.question->quantities[quantity].name, writing(cell, *value));
        if (auto* given = std::get_if<GivenValue>(&read))
            attempt.values.push_back(std::move(*given));
    }
    return attempt;
}

inline Attempt attemptOf(const Set& set, std::size_t answer,
                         const std::function<std::optional<double>(std::size_t)>& at, bool tiesUp) {
    return attemptOf(set, answer, at, [&](std::size_t cell, double value) {
        return written(*set.question, cell, value, tiesUp);
    });
}

inline std::optional<double> valueIn(const marking::Question& question, const Values& values,
                                     std::size_t cell) {
    auto value = values.at(question.ownId(cell));
    if (!value)
        value = values.at(question.quantities[question.quantityOf(cell)].id);
    return value ? std::optional(static_cast<double>(*value)) : std::nullopt;
}

/// The answers of one who makes that slip. `rounds` counts where a chain is calculated.
inline Attempt slippingAttempt(const Set& set, const marking::Alternative& slip, std::size_t answer,
                               const Rounds& rounds) {
    const marking::SlipOrigin& origin = set.alternatives->origin(slip);
    const marking::Ways& ways = set.alternatives->ways(origin);
    if ((origin.rewrite || origin.reading) && rounds.figures > 0 && origin.way < ways.ways.size()) {
        const Chain& chain = ways.ways[origin.way].chain;
        const Values values =
            worked(chain, ways.sketch,
                   origin.rewrite ? origin.rewrite->changes : std::vector<marking::Change>(), rounds);
        return attemptOf(
            set, answer, [&](std::size_t cell) { return valueIn(*set.question, values, cell); },
            rounds.tiesUp);
    }
    return attemptOf(
        set, answer,
        [&](std::size_t cell) -> std::optional<double> {
            const double value = slip.numbers.value[cell];
            if (marking::isThere(value))
                return value;
            if (!origin.form && !origin.shortCut)
                return std::nullopt;
            return set.question->right().value[cell]; // what the slip says nothing of is right
        },
        [&](std::size_t cell, double value) { // in another unit, or with its point moved, by its digits
            const bool isScaled =
                set.alternatives->slip(slip).isScaled && marking::isThere(slip.numbers.value[cell]);
            return isScaled ? significant(value, std::max(3, set.sketch.figures))
                            : written(*set.question, cell, value, rounds.tiesUp);
        });
}

/// Rounding on the way moved what a slip gives by more than marking allows a slip.
inline bool isTooCoarse(const Set& set, const marking::Alternative& slip, std::size_t answer,
                        const Attempt& attempt) {
    return std::any_of(attempt.values.begin(), attempt.values.end(), [&](const GivenValue& value) {
        const std::size_t cell = set.question->cell(set.question->find(value.id), answer);
        const double full = slip.numbers.value[cell];
        return marking::isThere(full) &&
               set.question->apart(cell, value.numbers.front().readings.front().value, full) >
                   set.question->limit(cell, full, marking::kMostInSlip) +
                       value.numbers.front().readings.front().half;
    });
}

inline bool isWrong(const Marking& marking) {
    return std::any_of(marking.quantities.begin(), marking.quantities.end(), [](const MarkedQuantity& one) {
        return one.given && one.verdict != Verdict::right && one.verdict != Verdict::rounded;
    });
}

inline bool isNamedAt(const Finding& finding, std::string_view id) {
    return finding.id == id || finding.second == id ||
           std::find(finding.also.begin(), finding.also.end(), id) != finding.also.end();
}

struct Tally {
    std::uint64_t tried = 0, missed = 0;
    std::uint64_t tooCoarse = 0; ///< rounding alone moved them by more than the marking allows
    std::map<std::string, std::pair<std::uint64_t, std::uint64_t>> bySlip; ///< tried, missed
    std::vector<std::string> examples;

    void count(const std::string& id) {
        ++tried;
        ++bySlip[id].first;
    }
    /// The first three of a slip are kept.
    void miss(const std::string& id, const std::string& example) {
        ++missed;
        if (++bySlip[id].second <= 3)
            examples.push_back(example);
    }
    void add(const Tally& other) {
        tried += other.tried;
        missed += other.missed;
        tooCoarse += other.tooCoarse;
        for (const auto& [id, counts] : other.bySlip) {
            bySlip[id].first += counts.first;
            bySlip[id].second += counts.second;
        }
        examples.insert(examples.end(), other.examples.begin(), other.examples.end());
    }
    double share() const { return tried == 0 ? 0 : static_cast<double>(missed) / static_cast<double>(tried); }
};

inline std::string told(const Marking& marking) {
    std::string text;
    for (const MarkedQuantity& one : marking.quantities)
        text += one.name + "=" + one.givenText + " (" + one.expectedText + ", " +
                std::string(nameOf(one.verdict)) + ") ";
    for (const Finding& finding : marking.slips)
        text += "[" + finding.id + (finding.second.empty() ? "" : "+" + finding.second) + "]";
    return text;
}

/// Every so many of a row of questions: what one of several threads does.
struct Share {
    std::uint64_t first = 0, step = 1;
};

/// Seeded questions with an answer, until it says so. Each has dice of its own, whoever throws them.
template <class Until, class Work>
void forEachSet(std::uint64_t seed, bool withSlips, Until until, Work work, Share share = {}) {
    for (std::uint64_t number = share.first; !until(number); number += share.step) {
        Dice dice(seed + number * 0x9E3779B97F4A7C15U);
        if (const auto set = setOf(dice, number, withSlips))
            work(number, *set, dice);
    }
}

/// What came of one who makes a slip, rounding on the way or not.
struct Slipped {
    std::string id;
    std::size_t answer = 0;
    Rounds rounds;
    Attempt attempt;
    Marking marking;
};
/// Empty where nothing comes out wrong.
inline std::optional<Slipped> slipped(const Set& set, const marking::Alternative& slip, Dice& dice) {
    Slipped made;
    made.id = set.alternatives->slip(slip).id;
    made.rounds.figures = dice.toss() ? set.sketch.figures : 0;
    made.rounds.tiesUp = dice.toss();
    made.answer = dice.whole(set.question->answers);
    made.attempt = slippingAttempt(set, slip, made.answer, made.rounds);
    made.marking = set.marker->mark(made.attempt);
    return isWrong(made.marking) ? std::optional(std::move(made)) : std::nullopt;
}

inline std::string exampleOf(std::uint64_t number, const Slipped& made) {
    return "question " + std::to_string(number) + ", " + made.id +
           (made.rounds.figures > 0 ? " rounded: " : ": ") + told(made.marking);
}

/// Every slip that applies, of `questions` seeded questions: the share in which it isn't among those named,
/// where anything comes out wrong.
inline Tally namedSlips(std::uint64_t questions, std::uint64_t seed, Share share = {}) {
    Tally tally;
    const auto isDone = [&](std::uint64_t number) { return number >= questions; };
    forEachSet(
        seed, true, isDone,
        [&](std::uint64_t number, const Set& set, Dice& dice) {
            for (const marking::Alternative& slip : set.alternatives->singles()) {
                const auto made = slipped(set, slip, dice);
                if (!made)
                    continue;
                tally.count(made->id);
                const bool isNamed =
                    std::any_of(made->marking.slips.begin(), made->marking.slips.end(),
                                [&](const Finding& one) { return isNamedAt(one, made->id); });
                if (isNamed)
                    continue;
                if (isTooCoarse(set, slip, made->answer, made->attempt))
                    ++tally.tooCoarse;
                else
                    tally.miss(made->id, exampleOf(number, *made));
            }
        },
        share);
    return tally;
}

/// The alternatives of each slip, as often as the table says that it is made.
using Bag = std::vector<std::vector<const marking::Alternative*>>;
inline Bag bagOf(const Set& set) {
    std::map<std::size_t, std::vector<const marking::Alternative*>> bySlip;
    for (const marking::Alternative& slip : set.alternatives->singles())
        bySlip[slip.slip].push_back(&slip);
    Bag bag;
    for (const auto& [slip, forms] : bySlip)
        bag.insert(bag.end(), std::size_t{1} << (marking::catalogue()[slip].common - 1), forms);
    return bag;
}

/// A class that slips as often as the table says: the share in which another slip is named first.
inline Tally firstNamed(std::uint64_t students, std::uint64_t perQuestion, std::uint64_t seed) {
    Tally tally;
    const auto isDone = [&](std::uint64_t) { return tally.tried >= students; };
    forEachSet(seed, true, isDone, [&](std::uint64_t number, const Set& set, Dice& dice) {
        const Bag bag = bagOf(set); // first the slip by its frequency, then one of its forms
        for (std::uint64_t i = 0; i < perQuestion && !bag.empty(); ++i) {
            const auto& forms = bag[dice.whole(bag.size())];
            const auto made = slipped(set, *forms[dice.whole(forms.size())], dice);
            if (!made)
                continue;
            tally.count(made->id);
            if (made->marking.slips.empty() || !isNamedAt(made->marking.slips.front(), made->id))
                tally.miss(made->id, exampleOf(number, *made));
        }
    });
    return tally;
}

/// What rounding alone has moved by more than the marking allows, or has left without a value.
inline bool isMovedTooFar(const marking::Question& question, std::size_t answer,
                          const std::function<std::optional<double>(std::size_t)>& at) {
    for (std::size_t quantity = 0; quantity < question.asked; ++quantity) {
        const std::size_t cell = question.cell(quantity, answer);
        const auto value = at(cell);
        const double right = question.right().value[cell];
        if (!value ||
            question.apart(cell, *value, right) > question.limit(cell, right, marking::kMostRounded))
            return true;
    }
    return false;
}

/// Honestly right answers by every route, with as many figures kept as are asked or more: how many are called
/// wrong. Those that rounding alone puts farther off than the marking allows (1 per cent or 1 degree of
/// rounding on the way) are counted by themselves.
inline Tally honestAnswers(std::uint64_t answers, std::uint64_t seed) {
    Tally tally;
    const auto work = [&](std::uint64_t number, const Set& set, Dice& dice, const marking::Way& way,
                          const Rounds& rounds) {
        const Values values = worked(way.chain, set.sketch, {}, rounds);
        const std::size_t answer = dice.whole(set.question->answers);
        const auto at = [&](std::size_t cell) { return valueIn(*set.question, values, cell); };
        const Attempt attempt = attemptOf(set, answer, at, rounds.tiesUp);
        if (attempt.values.empty())
            return;
        ++tally.tried;
        const Marking marking = set.marker->mark(attempt);
        if (!isWrong(marking))
            return;
        const bool isCoarse = isMovedTooFar(*set.question, answer, at);
        ++(isCoarse ? tally.tooCoarse : tally.missed);
        if (!isCoarse && tally.examples.size() < 10)
            tally.examples.push_back("question " + std::to_string(number) + ", " +
                                     std::to_string(rounds.figures) + " figures: " + told(marking));
    };
    const auto isDone = [&](std::uint64_t) { return tally.tried >= answers; };
    forEachSet(seed, false, isDone, [&](std::uint64_t number, const Set& set, Dice& dice) {
        for (const marking::Way& way : set.question->own.ways)
            for (int figures = set.sketch.figures; figures <= std::max(5, set.sketch.figures); ++figures)
                for (const bool tiesUp : {false, true})
                    work(number, set, dice, way, {figures, tiesUp});
    });
    return tally;
}

/// Random wrong answers, half to double of the right magnitude and any direction: `missed` are those for
/// which a slip is named with strong evidence.
inline Tally randomAnswers(std::uint64_t answers, std::uint64_t perQuestion, std::uint64_t seed) {
    Tally tally;
    const auto isDone = [&](std::uint64_t) { return tally.tried >= answers; };
    forEachSet(seed, false, isDone, [&](std::uint64_t number, const Set& set, Dice& dice) {
        const auto any = [&](std::size_t cell) -> std::optional<double> {
            return set.question->isDirection(cell) ? set.question->turn() * dice.between(-0.5, 0.5)
                                                   : set.question->right().value[cell] * dice.between(0.5, 2);
        };
        for (std::uint64_t i = 0; i < perQuestion; ++i) {
            const Marking marking =
                set.marker->mark(attemptOf(set, dice.whole(set.question->answers), any, false));
            if (!isWrong(marking))
                continue;
            ++tally.tried;
            const bool isStrong = std::any_of(marking.slips.begin(), marking.slips.end(),
                                              [](const Finding& one) { return one.isStrong; });
            tally.missed += isStrong ? 1 : 0;
            if (isStrong && tally.examples.size() < 10)
                tally.examples.push_back("question " + std::to_string(number) + ": " + told(marking));
        }
    });
    return tally;
}

} // namespace tailpoint::testing
