// SPDX-License-Identifier: MIT
// An exercise is made from the sketch alone: whatever is known of the answer, its bytes are the same.
#include "core/construct/reduction.h"
#include "core/practice/faded.h"
#include "core/practice/families.h"
#include "tests/core/explain/questions.h"
#include "tests/ui/lecture/lecture_support.h"
#include "ui/handout/figure_job.h"
#include "ui/handout/handout_pages.h"
#include "ui/practice/problem_file.h"

#include <QImage>
#include <QPainter>

namespace tailpoint {
namespace TAILPOINT_FILE {

/// A vector that was found, found elsewhere.
void falsify(SolvedForce& force, double times, double turn) {
    if (!force.magnitudeFound && !force.directionFound)
        return;
    const double size = times * (force.magnitude + 1),
                 way = turn + std::atan2(force.vector.y(), force.vector.x());
    force.unit = {std::cos(way), std::sin(way)};
    force.vector = size * force.unit;
    force.magnitude = size;
    force.direction = 17 * turn;
}

/// What is given, and anything for what is not.
Solution anySolution(const Sketch& sketch) {
    Solution made;
    const auto taken = [&](const Force& force) {
        SolvedForce solved;
        solved.name = force.name;
        solved.magnitude = force.magnitude.value.value_or(0);
        solved.magnitudeFound = !isGiven(force.magnitude);
        solved.directionFound = !isGiven(force.direction);
        if (const auto unit = unitVector(force.direction, sketch))
            solved.unit = {static_cast<double>(unit->cos), static_cast<double>(unit->sin)};
        solved.vector = solved.magnitude * solved.unit;
        solved.direction = referredDirection(force.direction, sketch);
        return solved;
    };
    for (const Force& force : sketch.forces)
        made.forces.push_back(taken(force));
    made.sum = taken(sketch.sum);
    return made;
}

/// Another status, other numbers, another count of answers.
Result doctored(const Sketch& sketch, int how) {
    Solved solved = solve(sketch);
    solved.remarks = {{MessageCode::none, "It comes to 4711 and no more."}};
    solved.status = how == 0 ? Status::none : how == 1 ? Status::two : Status::unique;
    const Solution first = solved.solutions.empty() ? anySolution(sketch) : solved.solutions.front();
    solved.solutions.assign(static_cast<std::size_t>(how == 0 ? 0 : how == 1 ? 2 : 1), first);
    double times = how == 1 ? 9.5 : 0.3;
    for (Solution& solution : solved.solutions) {
        for (SolvedForce& force : solution.forces)
            falsify(force, times, 1.1 * times);
        falsify(solution.sum, times, 0.7 * times);
        times *= 2;
    }
    return Result(sketch, solved, solved.solutions.size() > 1 ? 1 : 0);
}

/// All that is made of a sketch without its answer, byte for byte. `turn` takes what is too much for each.
std::vector<std::string> exercisesOf(const Result& result, int turn, bool all) {
    std::vector<std::string> made;
    HandoutChoice choice;
    choice.solution = false;
    choice.construction = static_cast<ConstructionKind>(turn % 4);
    choice.parallelograms = turn % 3 == 0;
    if (all || turn % 2 == 0)
        made.push_back(handoutHtml(result, choice).toStdString());
    if (all || turn % 2 == 1)
        made.push_back(handoutLatex(result, choice).toStdString());
    FigureJob job;
    job.options.construction = static_cast<ConstructionKind>((turn + 1) % 4);
    job.options.solution = result.chosen;
    job.options.pair = turn % 5 == 0 ? kAllPairs : kNoPairs;
    job.options.values = turn % 3 != 0;
    job.names = turn % 7 != 0;
    job.givenOnly = turn % 11 == 0;
    if (turn % 4 == 1)
        job.view =
            View{640, 400, {100 + 10.0 * static_cast<double>(result.solved.solutions.size()), 200}, 1.5};
    for (int stage = all ? 0 : turn % 5; stage < static_cast<int>(Stage::found); stage += all ? 1 : 5) {
        job.options.stage = static_cast<Stage>(stage);
        for (const FigureForm form : {FigureForm::svg, FigureForm::tex})
            if (all || form == FigureForm::svg)
                made.push_back(
                    std::get<std::vector<FigureFile>>(figureFiles(result, job)).at(0).bytes.toStdString());
    }
    job.options.stage = Stage::all;
    job.options.values = job.stageAsked = false; // whoever hides values and names no stage wants an exercise
    for (const FigureForm form : {FigureForm::svg, FigureForm::tex})
        if (all || form == FigureForm::svg)
            made.push_back(
                std::get<std::vector<FigureFile>>(figureFiles(result, job)).at(0).bytes.toStdString());
    return made;
}

/// With a stage that has the answer they are no exercise: its arrows are there, without their values.
TEST(Exercises, HiddenValuesDrawWhatIsGivenUnlessAStageIsAskedFor) {
    FigureJob job;
    job.options.values = job.stageAsked = false;
    const Result raft = sampleNamed("survey-raft.json");
    const auto has = [&](const char* id) {
        const auto lists = std::get<std::vector<DisplayList>>(figuresOf(raft, job));
        return std::any_of(lists.at(0).groups.begin(), lists.at(0).groups.end(),
                           [&](const Group& group) { return group.id == id; });
    };
    EXPECT_TRUE(has("force-P") && has("force-Q"));
    EXPECT_FALSE(has("sum") || has("parallelogram"));
    job.stageAsked = true;
    EXPECT_TRUE(has("sum") && has("parallelogram"));
    job.options.stage = Stage::found;
    EXPECT_TRUE(has("sum"));
    job.stageAsked = false;
    job.options.values = true;
    job.options.stage = Stage::all;
    EXPECT_TRUE(has("sum")) << "what hides nothing is no exercise";
}

TEST(Exercises, OfEverySampleAreMadeFromTheSketchAlone) {
    int compared = 0;
    for (const Sample& sample : allSamples())
        for (int how = 0; how < 3; ++how)
            for (const int turn : {1, 2, 3, 5, 7, 11}) {
                const auto honest = exercisesOf(sample.result, turn, true);
                EXPECT_EQ(honest, exercisesOf(doctored(sample.result.sketch, how), turn, true))
                    << sample.name << ", doctored " << how << ", turn " << turn;
                compared += static_cast<int>(honest.size());
            }
    EXPECT_GT(compared, 5000);
}

TEST(Exercises, OfAnyQuestionAreMadeFromTheSketchAlone) {
    constexpr std::uint64_t seed = 20261129;
    testing::Dice dice(seed);
    for (int i = 0; i < 2000; ++i) {
        const Sketch sketch = testing::someQuestion(dice, i % testing::kQuestionKinds);
        ASSERT_EQ(exercisesOf(resultOf(sketch), i, false), exercisesOf(doctored(sketch, i % 3), i, false))
            << "seed " << seed << ", question " << i;
    }
}

/// Of every family and level; their own words stand in the handout.
TEST(Exercises, OfGeneratedProblemsAreMadeFromTheSketchAlone) {
    int compared = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const Sketch sketch = withPracticeKeys(*problem({std::string(family.id), level, 58}));
            const auto honest = exercisesOf(resultOf(sketch), level, true);
            EXPECT_NE(honest.front().find("class=\"statement\""), std::string::npos);
            for (int how = 0; how < 3; ++how)
                EXPECT_EQ(honest, exercisesOf(doctored(sketch, how), level, true))
                    << family.id << ' ' << level << ", doctored " << how;
            compared += static_cast<int>(honest.size());
        }
    EXPECT_GT(compared, 300);
}

Formula falseNumber() {
    Formula number;
    number.kind = FormulaKind::number;
    number.text = "4711";
    number.value = 4711;
    return number;
}

/// A solution whose last lines, what is said and written beside them, and all that follows are other than
/// they are.
Worked falsified(Worked worked, std::size_t lines) {
    const auto places = calculatedLines(worked);
    const std::size_t first = places.size() - lines;
    const Prose said = inProse("It comes to 4711 and no more.");
    for (std::size_t step = places[first].step; step < worked.steps.size(); ++step) {
        Step& one = worked.steps[step];
        one.title = "4711";
        one.reasoning = one.conclusion = one.notes = {said};
        one.table.reset();
        const bool follows = first > 0 && places[first - 1].step == step; // a line that stands before it
        const std::size_t from = follows ? places[first - 1].working + 1 : 0;
        for (std::size_t i = from; i < one.workings.size(); ++i) {
            Working& line = one.workings[i];
            const bool isLine =
                std::find(places.begin(), places.end(), WorkingPlace{step, i}) != places.end();
            line = isLine ? Working{line.subject, falseNumber(), falseNumber(), falseNumber(), falseNumber()}
                          : Working{{}, falseNumber(), falseNumber(), {}};
        }
    }
    worked.answer = said;
    return worked;
}

std::string textOf(const FadedSolution& faded) {
    std::string text = toText(faded.worked) + faded.prompt;
    for (const FadedLine& line : faded.blank)
        text += line.prompt;
    return text;
}

TEST(Exercises, ABlankLineIsToldByNothingThatStands) {
    int compared = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const Worked worked = *resultOf(problem({std::string(family.id), level, 58})->sketch).worked();
            const std::size_t lines = calculatedLines(worked).size();
            for (std::size_t blank = 1; blank <= lines; ++blank, ++compared) {
                const FadedSolution honest = faded(worked, blank),
                                    other = faded(falsified(worked, blank), blank);
                EXPECT_EQ(textOf(honest), textOf(other)) << family.id << ' ' << level << ", " << blank;
                EXPECT_EQ(honest.worked.answer, other.worked.answer);
            }
        }
    EXPECT_GT(compared, 200);
}

/// The right number of the line with the slip stands nowhere, nor what the right line leads to.
TEST(Exercises, ASlipIsNotToldByWhatIsRight) {
    int looked = 0;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level) {
            const auto made = problem({std::string(family.id), level, 58});
            for (const std::string_view slip : family.levels[static_cast<std::size_t>(level - 1)].slips)
                if (const auto one = flawed(made->sketch, slip, 3)) {
                    const std::string right = toText(*one->right.value), text = toText(one->worked);
                    if (toText(one->worked.steps.front()).find(" " + right) != std::string::npos)
                        continue; // given: a force along an axis is its own component
                    EXPECT_EQ(text.find(" " + right), std::string::npos) << slip << '\n' << text;
                    EXPECT_TRUE(one->worked.answer.pieces.empty());
                    ++looked;
                }
        }
    EXPECT_GT(looked, 30);
}

/// A falsified answer does show where an answer is drawn: else the tests above would see nothing.
TEST(Exercises, WhatIsNoExerciseFollowsTheAnswer) {
    const Result honest = sampleNamed("survey-raft.json"), other = doctored(honest.sketch, 2);
    HandoutChoice choice;
    EXPECT_NE(handoutHtml(honest, choice), handoutHtml(other, choice));
    FigureJob job;
    job.options.stage = Stage::found;
    EXPECT_NE(std::get<std::vector<FigureFile>>(figureFiles(honest, job)).at(0).bytes,
              std::get<std::vector<FigureFile>>(figureFiles(other, job)).at(0).bytes);
}

QImage pageOf(const HandoutPages& pages, int index) {
    QImage image(600, 850, QImage::Format_RGB32);
    image.fill(Qt::white);
    image.setDotsPerMeterX(qRound(HandoutPages::resolution() / 0.0254));
    image.setDotsPerMeterY(image.dotsPerMeterX());
    QPainter painter(&image);
    pages.paint(painter, index);
    return image;
}

TEST(Exercises, OnPaperTakeAsManyPagesAsTheSketchAloneAsksFor) {
    HandoutChoice choice;
    choice.solution = false;
    const auto pagesOf = [&](const Result& result) {
        const double height = handoutFigureHeight(result, choice);
        const HandoutPages pages(
            handoutOf(result, choice, handoutDivision(result, choice, kHandoutWidth, height)),
            handoutFigure(result, choice, kHandoutWidth, height), QSizeF(595, 842));
        std::vector<QImage> images;
        for (int page = 0; page < pages.count(); ++page)
            images.push_back(pageOf(pages, page));
        return images;
    };
    for (const Sample& sample : allSamples())
        for (int how = 0; how < 3; ++how)
            EXPECT_EQ(pagesOf(sample.result), pagesOf(doctored(sample.result.sketch, how))) << sample.name;
}

DisplayList exerciseAt(const Result& result, Stage stage) {
    FigureJob job;
    job.options.stage = stage;
    job.options.construction = ConstructionKind::parallelogram;
    return std::get<std::vector<DisplayList>>(figuresOf(result, job)).at(0);
}

const Group* groupOf(const DisplayList& list, const std::string& id) {
    for (const Group& group : list.groups)
        if (group.id == id)
            return &group;
    return nullptr;
}

std::string all(const DisplayList& list) {
    std::string text = list.title + list.description;
    for (const Group& group : list.groups) {
        text += group.title.whole() + "; ";
        for (const Item& item : group.items)
            if (const auto* label = std::get_if<Text>(&item))
                text += textOf(*label) + "; ";
    }
    return text;
}

int headsOf(const Group& group) {
    return static_cast<int>(std::count_if(group.items.begin(), group.items.end(), [](const Item& item) {
        const auto* path = std::get_if<Path>(&item);
        return path && path->closed;
    }));
}

TEST(Exercises, AGivenDirectionIsALineOfActionFromTheFirstStage) {
    using testing::force;
    const Result result = resultOf(testing::sketch(
        {force("P", testing::kToFind, 40), testing::either(force("Q", testing::kToFind, -35))},
        force("R", 400, 10)));
    for (const Stage stage : {Stage::given, Stage::directions, Stage::between}) {
        const DisplayList list = exerciseAt(result, stage);
        const Group *p = groupOf(list, "line-force-P"), *q = groupOf(list, "line-force-Q");
        ASSERT_TRUE(p && q);
        EXPECT_EQ(headsOf(*p), 1) << "its sense is given";
        EXPECT_EQ(headsOf(*q), 0) << "its sense is open";
        EXPECT_EQ(stage >= Stage::directions, groupOf(list, "direction-force-P") != nullptr);
        EXPECT_EQ(all(list).find("40.0") == std::string::npos, false) << all(list);
    }
    EXPECT_EQ(groupOf(exerciseAt(result, Stage::construction), "line-force-P"), nullptr)
        << "the locus is the same line";
}

TEST(Exercises, ASlopeAndABearingStandAsTheyAreGiven) {
    const Result result =
        resultOf(testing::sketch({testing::slope("P", 340, 4, 3), testing::bearing("Q", 275, 'N', 30, 'W'),
                                  testing::slope("S", testing::kToFind, 12, -5)},
                                 testing::force("R", 400, testing::kToFind)));
    const std::string text = all(exerciseAt(result, Stage::directions));
    for (const char* angle : {"36.9", "22.6", "120.0"})
        EXPECT_EQ(text.find(angle), std::string::npos) << text;
    for (const char* given : {"4; 3;", "12; 5;", "slope of 4 : 3"})
        EXPECT_NE(text.find(given), std::string::npos) << given << " in " << text;
}

TEST(Exercises, OfAllStagesTheFirstOnesAreThoseThatAreDrawnAlone) {
    for (const Sample& sample : allSamples()) {
        FigureJob job;
        job.allStages = true;
        const auto lists = std::get<std::vector<DisplayList>>(figuresOf(sample.result, job));
        job.allStages = false;
        for (int stage = 0; stage < static_cast<int>(Stage::found); ++stage) {
            job.options.stage = static_cast<Stage>(stage);
            EXPECT_EQ(lists[static_cast<std::size_t>(stage)],
                      std::get<std::vector<DisplayList>>(figuresOf(sample.result, job)).at(0))
                << sample.name << ", stage " << stage;
        }
    }
}

/// The letters of the exercise are those of the solution that follows it.
TEST(Exercises, AnglesHaveTheLettersOfTheSolution) {
    int common = 0;
    for (const Sample& sample : allSamples()) {
        const auto named = namesOfGiven(sample.result.sketch, Stage::interior);
        for (const Step& step : sample.result.worked()->steps)
            for (const AngleName& theirs : step.angles)
                for (const AngleName& ours : named)
                    if (isSame(ours.angle, theirs.angle)) {
                        EXPECT_EQ(ours.symbol, theirs.symbol) << sample.name;
                        ++common;
                    }
    }
    EXPECT_GT(common, 10);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
