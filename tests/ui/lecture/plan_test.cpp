// SPDX-License-Identifier: MIT
#include "core/explain/caution.h"
#include "tests/support/sketches.h"
#include "tests/support/steps.h"
#include "tests/ui/lecture/lecture_support.h"
#include "ui/practice/problem_file.h"

#include <algorithm>

namespace tailpoint {
namespace TAILPOINT_FILE {

bool speaksOfArrow(const DisplayList& list, int vector) {
    return std::any_of(list.groups.begin(), list.groups.end(),
                       [&](const Group& g) { return vectorOf(g) == vectorId(vector); });
}

std::size_t stopNamed(const std::vector<Stop>& stops, const std::string& key) {
    const auto at = std::find_if(stops.begin(), stops.end(),
                                 [&](const Stop& s) { return testing::keyOf(s.step) == key; });
    EXPECT_NE(at, stops.end()) << key;
    return static_cast<std::size_t>(at - stops.begin());
}

TEST(LecturePlan, BeginsWithTheBareGivenForcesAndEndsWithTheAnswer) {
    for (const Sample& sample : allSamples()) {
        SCOPED_TRACE(sample.name);
        const auto stops = planOf(sample.result, {});
        ASSERT_GE(stops.size(), 2U);
        const Figure first = figureOf(sample.result, stops.front(), 0);
        for (const Group& group : first.list.groups) {
            EXPECT_NE(group.role, Role::arc) << group.id;
            EXPECT_NE(group.role, Role::construction) << group.id;
            EXPECT_NE(group.role, Role::locus) << group.id;
        }
        if (sample.result.solved.solutions.empty())
            continue;
        EXPECT_EQ(testing::keyOf(stops.back().step), "end");
        const std::size_t caution = needsCaution(sample.result.sketch) ? 1 : 0;
        EXPECT_EQ(stops.back().step.reasoning.size(), sample.result.solved.solutions.size() + caution);
        EXPECT_EQ(stops.back().after.stage, Stage::all);
    }
}

/// Results that are read out after this line.
NumbersRead laterThan(const std::vector<Stop>& stops, std::size_t s, std::size_t beat, Which which) {
    NumbersRead later = beat < stops[s].resultBeat ? resultsOf(stops[s].step, which) : NumbersRead();
    for (std::size_t after = s + 1; after < stops.size(); ++after)
        later.merge(resultsOf(stops[after].step, which));
    return later;
}

/// No result of a later step, and none of this step before it is read out, unless it was said or given
/// before.
TEST(LecturePlan, NothingOfALaterStepIsOnTheSheetBeforeItsTurn) {
    int looked = 0;
    auto samples = allSamples();
    Sample inPairs = {"five forces two at a time", sampleNamed("five-forces.json")};
    samples.push_back(inPairs);
    for (const Sample& sample : samples) {
        ExplainOptions options;
        options.parallelograms = sample.name == inPairs.name;
        const auto stops = planOf(sample.result, {}, options);
        NumbersRead said;
        const Figure bare = figureOf(sample.result, stops.front(), 0);
        said.merge(numbersOn(bare.list)); // what is given stands there from the first
        for (std::size_t s = 0; s < stops.size(); ++s)
            for (std::size_t beat = 0; beat < stops[s].beats.size(); ++beat) {
                addNumbers(said, stops[s], beat);
                const Figure figure = figureOf(sample.result, stops[s], beat);
                NumbersRead early;
                for (const Which which : {Which::directions, Which::others}) {
                    const NumbersRead later = laterThan(stops, s, beat, which);
                    for (const std::string& number : numbersOn(figure.list, which))
                        if (later.contains(number) && !said.contains(number))
                            early.insert(number);
                }
                EXPECT_TRUE(early.empty()) << sample.name << ", step '" << stops[s].step.title << "', line "
                                           << beat << " shows too early: " << listed(early);
                ++looked;
            }
    }
    EXPECT_GT(looked, 300);
}

/// In the third parallelogram γ is 13.8 degrees. The step before has named 13.8 degrees too, as what rounded
/// numbers would give for a direction: that reveals nothing of γ.
TEST(LecturePlan, AValueThatReadsLikeAnEarlierOneWaitsForItsOwnTurn) {
    const Result five = sampleNamed("five-forces.json");
    ExplainOptions options;
    options.parallelograms = true;
    const auto stops = planOf(five, {}, options);
    const Stop& stop = stops[stopNamed(stops, "pair3")];
    const QuantityId gamma = oppositeId(partialVector(3), 3);
    bool isRead = false, waited = false;
    for (std::size_t beat = 0; beat < stop.beats.size(); ++beat) {
        for (const BeatLine& line : stop.beats[beat]) {
            const Working* working =
                line.kind == BeatLine::Kind::working ? &stop.step.workings[line.index] : nullptr;
            isRead = isRead || (working && working->subject && working->subject->id == gamma &&
                                static_cast<std::size_t>(line.parts) == linesOf(*working).size());
        }
        for (const Group& group : figureOf(five, stop, beat).list.groups)
            for (const Item& item : group.items) {
                const auto* text = std::get_if<Text>(&item);
                if (text && text->part == FigurePart(gamma)) {
                    EXPECT_EQ(textOf(*text), isRead ? "γ3 = 13.8°" : "γ3") << "line " << beat;
                }
            }
        waited = waited || !isRead;
    }
    EXPECT_TRUE(isRead && waited);
}

/// The symbols that have been read out by a line, with their ids.
void addSymbols(std::set<QuantityId>& symbols, const Formula& formula) {
    QuantityId id = formula.id;
    id.answer = 0;
    symbols.insert(id);
    for (const Formula& part : formula.parts)
        addSymbols(symbols, part);
}

std::set<QuantityId> symbolsOf(const Stop& stop, std::size_t beat) {
    std::set<QuantityId> symbols;
    const auto add = [&](const Prose& prose) {
        for (const Piece& piece : prose.pieces)
            if (const auto* formula = std::get_if<Formula>(&piece))
                addSymbols(symbols, *formula);
    };
    for (const BeatLine& line : stop.beats[beat]) {
        if (line.kind == BeatLine::Kind::reasoning)
            add(stop.step.reasoning[line.index]);
        else if (line.kind == BeatLine::Kind::conclusion)
            add(stop.step.conclusion[line.index]);
        else if (line.kind == BeatLine::Kind::working) {
            const auto relations = linesOf(stop.step.workings[line.index]);
            for (std::size_t i = 0; i < std::min(relations.size(), static_cast<std::size_t>(line.parts)); ++i)
                addSymbols(symbols, relations[i]);
        }
    }
    return symbols;
}

TEST(LecturePlan, AnAnglesLetterComesWithTheLineThatNamesIt) {
    int looked = 0;
    for (const Sample& sample : allSamples()) {
        const auto stops = planOf(sample.result, {});
        std::set<QuantityId> said;
        for (const Stop& stop : stops)
            for (std::size_t beat = 0; beat < stop.beats.size(); ++beat) {
                said.merge(symbolsOf(stop, beat));
                const FigureOptions options = stop.figureAt(beat);
                for (const AngleName& name : stop.step.angles) {
                    const bool isSaid = std::any_of(said.begin(), said.end(), [&](const QuantityId& id) {
                        return isSame(id, name.angle);
                    });
                    const bool isShown = std::count(options.names.begin(), options.names.end(), name) > 0;
                    EXPECT_EQ(isSaid, isShown) << sample.name << ", '" << stop.step.title << "', line "
                                               << beat << ": " << name.symbol.base;
                    ++looked;
                }
            }
    }
    EXPECT_GT(looked, 100);
}

TEST(LecturePlan, EachOfSeveralParallelogramsIsOnTheSheetInItsTurn) {
    const Result five = sampleNamed("five-forces.json");
    ExplainOptions options;
    options.parallelograms = true;
    const auto stops = planOf(five, {}, options);
    for (int pair = 1; pair <= 4; ++pair) {
        const Stop& stop = stops[stopNamed(stops, "pair" + std::to_string(pair))];
        const Figure figure = figureOf(five, stop, 0);
        for (int other = 1; other <= 4; ++other)
            EXPECT_EQ(std::any_of(figure.list.groups.begin(), figure.list.groups.end(),
                                  [&](const Group& g) { return g.id == "pair-" + std::to_string(other); }),
                      other == pair);
    }
    EXPECT_EQ(stops.back().after.pair, 4);
}

TEST(LecturePlan, TheResultantsMagnitudeStandsOnTheSheetWithItsResultAndItsDirectionAfterIt) {
    const Result raft = sampleNamed("survey-raft.json");
    const auto stops = planOf(raft, {});
    const std::size_t cosines = stopNamed(stops, "cosines"), direction = stopNamed(stops, "direction");
    for (std::size_t s = 0; s < stops.size(); ++s)
        for (std::size_t beat = 0; beat < stops[s].beats.size(); ++beat) {
            const NumbersRead seen = numbersOn(figureOf(raft, stops[s], beat).list);
            const bool found = s > cosines || (s == cosines && beat >= stops[s].resultBeat);
            const bool referred = s > direction || (s == direction && beat >= stops[s].resultBeat);
            EXPECT_EQ(seen.contains("520 N"), found) << stops[s].step.title << " " << beat;
            EXPECT_EQ(seen.contains("3.6°"), referred) << stops[s].step.title << " " << beat;
        }
}

TEST(LecturePlan, TheForceTriangleStandsAloneWhileItIsSolved) {
    const Result raft = sampleNamed("survey-raft.json");
    const auto stops = planOf(raft, {});
    for (const char* key : {"triangle", "choice", "cosines", "sines"}) {
        const Stop& stop = stops[stopNamed(stops, key)];
        EXPECT_TRUE(stop.before.alone && stop.after.alone) << key;
        const Figure figure = figureOf(raft, stop, stop.lastBeat());
        for (const Group& group : figure.list.groups) {
            EXPECT_NE(group.role, Role::axis) << key;
            EXPECT_NE(group.id, "parallelogram") << key;
        }
    }
}

/// The step says which force begins; the figure begins with the same.
TEST(LecturePlan, TheHalfThatIsKeptBeginsWithTheGreaterForce) {
    Sketch sketch = sampleNamed("survey-raft.json").sketch;
    for (const bool swapped : {false, true}) {
        if (swapped)
            std::swap(sketch.forces[0].magnitude, sketch.forces[1].magnitude);
        const Result result = resultOf(sketch);
        const auto stops = planOf(result, {});
        const Figure figure = figureOf(result, stops[stopNamed(stops, "triangle")], 0);
        for (const Group& group : figure.list.groups)
            if (vectorOf(group) == forceVector(swapped ? 1 : 0)) {
                const Group& sum = *std::find_if(figure.list.groups.begin(), figure.list.groups.end(),
                                                 [](const Group& g) { return g.id == "sum"; });
                EXPECT_EQ((*group.ends)[0], (*sum.ends)[0]);
            }
    }
}

TEST(LecturePlan, BothAnswersAreWalkedEachWithItsOwnFigure) {
    const Result both = sampleNamed("two-answers.json");
    ASSERT_EQ(both.solved.solutions.size(), 2U);
    const auto stops = planOf(both, {});
    const Stop &first = stops[stopNamed(stops, "first")], &second = stops[stopNamed(stops, "second")];
    EXPECT_EQ(first.solution, 0U);
    EXPECT_EQ(second.solution, 1U);
    const NumbersRead one = numbersOn(figureOf(both, first, first.lastBeat()).list);
    const NumbersRead two = numbersOn(figureOf(both, second, second.lastBeat()).list);
    EXPECT_TRUE(one.contains("180 N")) << listed(one);
    EXPECT_FALSE(one.contains("513 N")) << listed(one);
    EXPECT_TRUE(two.contains("513 N")) << listed(two);
    const auto answers = std::count_if(stops.begin(), stops.end(),
                                       [](const Stop& s) { return s.step.key == StepKey::answer; });
    EXPECT_EQ(answers, 2);
}

TEST(LecturePlan, LinesComeOneByOneAndNoneIsLeftOut) {
    for (const Sample& sample : allSamples())
        for (const Stop& stop : planOf(sample.result, {})) {
            SCOPED_TRACE(sample.name + ": " + stop.step.title);
            std::vector<int> parts(stop.step.workings.size(), 0);
            std::size_t reasons = 0, conclusions = 0, tables = 0;
            for (const Beat& beat : stop.beats) {
                EXPECT_FALSE(beat.empty());
                for (const BeatLine& line : beat) {
                    reasons += line.kind == BeatLine::Kind::reasoning ? 1 : 0;
                    conclusions += line.kind == BeatLine::Kind::conclusion ? 1 : 0;
                    tables += line.kind == BeatLine::Kind::table ? 1 : 0;
                    if (line.kind == BeatLine::Kind::working) {
                        EXPECT_GT(line.parts, parts[line.index]);
                        parts[line.index] = line.parts;
                    }
                }
            }
            EXPECT_EQ(reasons, stop.step.reasoning.size());
            EXPECT_EQ(conclusions, stop.step.conclusion.size());
            EXPECT_EQ(tables, stop.step.table ? 1U : 0U);
            for (std::size_t i = 0; i < parts.size(); ++i)
                EXPECT_EQ(parts[i], static_cast<int>(linesOf(stop.step.workings[i]).size()));
        }
}

TEST(LecturePlan, WithoutNumbersNoNumberWithAUnitIsSaidButPartsOfTheTurn) {
    const NumbersRead turn{"180°", "360°", "90°", "200 gon", "400 gon", "100 gon"};
    int hidden = 0;
    for (const Sample& sample : allSamples())
        for (const Stop& stop : planOf(sample.result, {})) {
            Stop quiet = stop;
            quiet.step = withoutNumbers(stop.step);
            NumbersRead before, after;
            for (std::size_t beat = 0; beat < stop.beats.size(); ++beat) {
                addNumbers(before, stop, beat);
                addNumbers(after, quiet, beat);
            }
            for (const std::string& number : after)
                EXPECT_TRUE(turn.contains(number))
                    << sample.name << ", " << stop.step.title << ": " << number;
            hidden += static_cast<int>(before.size());
        }
    EXPECT_GT(hidden, 300);
}

TEST(LecturePlan, AGivenAngleThatReadsLikePartOfATurnIsHiddenToo) {
    Sketch sketch = emptySketch();
    sketch.forces = {testing::force("P", 340, 90), testing::force("Q", 275, 180),
                     testing::force("S", 100, 20)};
    const auto stops = planOf(resultOf(sketch), {});
    const Stop& table = stops[stopNamed(stops, "components")];
    Stop quiet = table;
    quiet.step = withoutNumbers(table.step);
    NumbersRead before, after;
    for (std::size_t beat = 0; beat < table.beats.size(); ++beat) {
        addNumbers(before, table, beat);
        addNumbers(after, quiet, beat);
    }
    EXPECT_TRUE(before.contains("180.0°") && before.contains("90.0°")) << listed(before);
    EXPECT_EQ(after, NumbersRead()) << listed(after);
}

TEST(LecturePlan, ShortenedParagraphsEndWithASentenceAndBeginAsTheyDid) {
    int cut = 0;
    for (const Sample& sample : allSamples())
        for (const Stop& stop : planOf(sample.result, {})) {
            const Step brief = shortened(stop.step);
            ASSERT_EQ(brief.reasoning.size(), stop.step.reasoning.size());
            EXPECT_EQ(brief.workings, stop.step.workings);
            for (std::size_t i = 0; i < brief.reasoning.size(); ++i) {
                const std::string whole = toText(stop.step.reasoning[i]), some = toText(brief.reasoning[i]);
                EXPECT_TRUE(whole.starts_with(some)) << some;
                if (some != whole) {
                    EXPECT_EQ(some.back(), '.') << some;
                    ++cut;
                }
            }
        }
    EXPECT_GT(cut, 5);
}

TEST(LecturePlan, WhyThereIsNoAnswerIsNotToldByTheFigure) {
    int looked = 0;
    for (const Sample& sample : allSamples()) {
        const std::string message = sample.result.solved.message().text().substr(0, 24);
        if (message.empty())
            continue;
        for (const Stop& stop : planOf(sample.result, {}))
            for (const Group& group : figureOf(sample.result, stop, stop.lastBeat()).list.groups)
                for (const Item& item : group.items)
                    if (const auto* text = std::get_if<Text>(&item)) {
                        EXPECT_EQ(textOf(*text).find(message), std::string::npos)
                            << sample.name << ", " << stop.step.title;
                        ++looked;
                    }
    }
    EXPECT_GT(looked, 100);
}

/// Nothing is drawn and taken back again: it would have been too early.
TEST(LecturePlan, TheFigureOnlyGrows) {
    for (const Sample& sample : allSamples()) {
        Stage stage = Stage::given;
        for (const Stop& stop : planOf(sample.result, {})) {
            EXPECT_LE(stage, stop.after.stage) << sample.name << ", " << stop.step.title;
            EXPECT_LE(stop.before.stage, stop.after.stage) << sample.name << ", " << stop.step.title;
            stage = stop.after.stage;
        }
    }
    const Result known = sampleNamed("ring-of-known-pulls.json");
    for (const Stop& stop : planOf(known, {}))
        if (stop.step.key == StepKey::magnitude || stop.step.key == StepKey::direction) {
            EXPECT_FALSE(speaksOfArrow(figureOf(known, stop, stop.lastBeat()).list, 2)) << "of K alone";
        }
}

/// Words of the file's own are read sentence by sentence, and none of them is cut short.
TEST(LecturePlan, TheQuestionIsReadAsTheFileWordsIt) {
    Sketch sketch = sampleNamed("survey-raft.json").sketch;
    const std::string first = "Two lines hold a survey raft against the ebb, one from each bank, and the "
                              "crew wants to know how hard and which way the two of them together pull at "
                              "the ring in its middle before anybody lets go of the third.",
                      second = "Find the resultant.", third = "State it in newtons.";
    sketch = withStatement(sketch, first + " " + second + "\n" + third);
    const Step opening = shortened(planOf(resultOf(sketch), {}).front().step);
    std::vector<std::string> lines;
    for (const Prose& line : opening.reasoning)
        lines.push_back(toText(line));
    EXPECT_EQ(lines, (std::vector{first, second, third}));
}

TEST(LecturePlan, TheQuestionIsSetWithTrueMinusSigns) {
    const std::string asked =
        toText(planOf(sampleNamed("all-given.json"), {}).front().step.reasoning.front());
    EXPECT_NE(asked.find("\u22123.6°"), std::string::npos) << asked;
}

TEST(LecturePlan, ArrowsToFindAreNotDrawnBeforeTheyAreFound) {
    for (const Sample& sample : allSamples()) {
        const Figure bare = figureOf(sample.result, planOf(sample.result, {}).front(), 0);
        for (std::size_t i = 0; i < sample.result.sketch.forces.size(); ++i) {
            const Force& force = sample.result.sketch.forces[i];
            if (!isGiven(force.magnitude) || !isGiven(force.direction)) {
                EXPECT_FALSE(speaksOfArrow(bare.list, static_cast<int>(i))) << sample.name << force.name;
            }
        }
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
