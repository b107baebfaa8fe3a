// SPDX-License-Identifier: MIT
#include "core/construct/reduction.h"
#include "core/figure/labels.h"
#include "core/figure/words.h"
#include "tests/core/figure/figure_support.h"
#include "tests/support/cases.h"

#include <gtest/gtest.h>
#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

using Strings = std::vector<std::string>;

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40)});
}

Drawn atStage(const Sketch& given, Stage stage, ConstructionKind kind = ConstructionKind::parallelogram) {
    FigureOptions options;
    options.stage = stage;
    options.construction = kind;
    return drawn(given, options);
}

TEST(Figure, NamesAndValuesStandAtTheirVectors) {
    const Figure figure = drawn(raft()).figure;
    EXPECT_EQ(textsOf(groupOf(figure, "force-P")), Strings{"P = 340 N"});
    EXPECT_EQ(textsOf(groupOf(figure, "force-Q")), Strings{"Q = 275 N"});
    EXPECT_EQ(textsOf(groupOf(figure, "sum")), Strings{"R = 520 N"});
    EXPECT_EQ(textsOf(groupOf(figure, "axis")), Strings{"+x"});
}

TEST(Figure, AngleValuesStandAtTheirArcs) {
    const Figure figure = drawn(raft()).figure;
    EXPECT_EQ(textsOf(groupOf(figure, "angle-tails")), Strings{"65.0°"});
    EXPECT_EQ(textsOf(groupOf(figure, "angle-1")), Strings{"115.0°"});
    EXPECT_EQ(textsOf(groupOf(figure, "angle-2")), Strings{"65.0°"});
    EXPECT_EQ(textsOf(groupOf(figure, "direction-force-P")), Strings{"25.0°"});
    EXPECT_EQ(textsOf(groupOf(figure, "direction-force-Q")), Strings{"40.0°"});
    EXPECT_EQ(textsOf(groupOf(figure, "direction-sum")), Strings{"3.6°"});
}

/// Behind the common point the axis has a stub, and its name beside that would be that of the other way. The
/// sheet is moved up, so that less and less of the way ahead is on it.
TEST(Figure, TheAxisNameStandsAheadOfTheCommonPointOrNowhere) {
    Sketch given = sketch({force("P", 223, -176.5), force("Q", 120, 146)});
    given.reference = {90, Sense::cw};
    Drawn d = drawn(given);
    int named = 0, bare = 0;
    for (double top = 200; top > -30; top -= 5) {
        d.view.origin.y = top;
        const Figure figure = compose(d.sketch, d.solved, d.construction, d.view, {}, FixedMeasure());
        const Group* axis = groupOf(figure, "axis");
        const Text* name = axis != nullptr ? labelOf(*axis) : nullptr;
        named += name != nullptr ? 1 : 0;
        bare += name == nullptr ? 1 : 0;
        EXPECT_TRUE(name == nullptr || (name->box.top + name->box.bottom()) / 2 < top) << top;
    }
    EXPECT_GT(named, 10);
    EXPECT_GT(bare, 2);
}

TEST(Figure, TitleBlockSaysTitleScaleAxisAndFigures) {
    Sketch given = raft();
    given.title = "Survey raft on two lines";
    given.reference = {90, Sense::cw};
    given.figures = 4;
    EXPECT_EQ(textsOf(groupOf(drawn(given).figure, "titleblock")),
              (Strings{"Survey raft on two lines", "1 division = 50 N", "from +y, cw", "4 figures"}));
}

/// The side that the line of action of B runs along, and the one that nothing runs along.
TEST(Figure, ASideOfTheParallelogramIsNotLaidOverALineOfAction) {
    const auto dashesOf = [](const Sketch& given) {
        const Figure figure = drawn(given).figure;
        const Group* sides = groupOf(figure, "parallelogram");
        return sides ? std::count_if(sides->items.begin(), sides->items.end(),
                                     [](const Item& item) { return std::holds_alternative<Path>(item); })
                     : 0;
    };
    EXPECT_EQ(dashesOf(raft()), 2);
    EXPECT_EQ(dashesOf(sketch({force("A", kToFind, 50), force("B", kToFind, -15)}, force("R", 400, 20))), 1);
}

TEST(Figure, ShortensATitleThatIsTooLongForTheBlock) {
    Sketch given = raft();
    given.title = std::string(300, 'w');
    const Drawn d = drawn(given);
    const std::string title = textsOf(groupOf(d.figure, "titleblock")).at(0);
    EXPECT_LT(title.size(), 100U);
    EXPECT_EQ(title.substr(title.size() - 3), "…");
    EXPECT_EQ(collisions(d.figure.list), Strings{});
}

TEST(Figure, GroupsReadAsWords) {
    const Figure figure = drawn(raft()).figure;
    EXPECT_EQ(groupOf(figure, "force-P")->title.whole(), "Force P, 340 N at 25.0° counter-clockwise from +x");
    EXPECT_EQ(groupOf(figure, "sum")->title.whole(), "Resultant R, 520 N at 3.6° clockwise from +x");
    EXPECT_EQ(
        figure.list.description,
        "2 forces act on one point. Force P, 340 N at 25.0° counter-clockwise from +x. Force Q, 275 N at "
        "40.0° clockwise from +x. Resultant R, 520 N at 3.6° clockwise from +x.");
}

TEST(Figure, VectorGroupsSayWhoseTheyAreAndWhereTheyEnd) {
    const Drawn d = drawn(raft());
    const auto& answer = d.solved.solutions.at(0);
    for (const auto& [id, index, vector] : {std::tuple{"force-P", 0, answer.forces[0].vector},
                                            std::tuple{"force-Q", 1, answer.forces[1].vector},
                                            std::tuple{"sum", kSumIndex, answer.sum.vector}}) {
        const Group* group = groupOf(d.figure, id);
        ASSERT_TRUE(group && group->ends);
        EXPECT_EQ(vectorOf(*group), vectorId(index));
        EXPECT_EQ(group->ends->at(0), d.view.origin);
        EXPECT_EQ(group->ends->at(1), d.view.toSheet(vector));
    }
    EXPECT_EQ(groupOf(d.figure, "direction-force-Q")->part, FigurePart(directionId(forceVector(1))));
}

TEST(Figure, NamesWithDigitsHaveSubscripts) {
    EXPECT_EQ(symbolRuns(symbolOfName("F12")).size(), 2U);
    EXPECT_EQ(symbolRuns(symbolOfName("F12"))[1].text, "12");
    EXPECT_EQ(symbolRuns(symbolOfName("F12"))[1].script, Script::sub);
    EXPECT_FALSE(symbolRuns(symbolOfName("F12"))[1].italic);
    EXPECT_TRUE(symbolRuns(symbolOfName("F12"))[0].italic);
    EXPECT_EQ(symbolRuns(symbolOfName("F_max"))[1].text, "max");
    EXPECT_EQ(symbolRuns(symbolOfName("tow")).size(), 1U);
    EXPECT_EQ(symbolRuns(symbolOfName("12")).size(), 1U);
    EXPECT_EQ(symbolRuns(symbolOfName("_")).size(), 1U);
    EXPECT_EQ(plainText(symbolRuns(symbolOfName("line 2"))), "line 2");
}

/// What of it is italic, and what stands lower.
std::string symbolsOf(const Runs& runs) {
    std::string out;
    for (const Run& run : runs)
        if (run.italic || run.script == Script::sub)
            out += (run.script == Script::sub ? "_" : out.empty() ? "" : " ") + run.text;
    return out;
}

/// What the texts of a group set as symbols.
std::string symbolsIn(const Figure& figure, std::string_view id) {
    Runs runs;
    const Group* group = groupOf(figure, id);
    EXPECT_TRUE(group);
    for (const Item& item : group ? group->items : std::vector<Item>())
        if (const auto* line = std::get_if<Text>(&item))
            runs.insert(runs.end(), line->runs.begin(), line->runs.end());
    return symbolsOf(runs);
}
std::string symbolsInNote(const Sketch& some) {
    return symbolsIn(drawn(some).figure, "note");
}

/// A name is known by its id: not by its letters, which may be those of a unit, of an article or of a word.
TEST(Figure, TheNoteSetsNamesAsSymbolsAndNothingElse) {
    const auto parallel = [](const std::string& a, const std::string& b) {
        return sketch({force(a, kToFind, 25), force(b, kToFind, 25)}, force("R", 520, 0));
    };
    EXPECT_EQ(symbolsInNote(parallel("P", "F1")), "P F_1 R");
    EXPECT_EQ(symbolsInNote(parallel("A", "N")), "A N R") << "520 N has a unit";
    EXPECT_EQ(symbolsInNote(parallel("answer", "act")), "answer act R");
    EXPECT_EQ(symbolsInNote(parallel("T1", "T_1")), "T_1 T_1 R");
}

TEST(Figure, LinesBreakAtSpacesAndLeaveSymbolsAsTheyAre) {
    Runs text = plainRuns("the circle of ");
    for (const auto& run : symbolRuns({"F", "max"}))
        text.push_back(run);
    text.push_back(plainRuns(" touches twice, ").front());
    text.push_back(symbolRuns({"P", ""}).front());
    const auto lines = wrapped(text, 14, [](const Runs& runs) { return double(plainText(runs).size()); });
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(plainText(lines[0]), "the circle of");
    EXPECT_EQ(plainText(lines[1]), "Fmax touches");
    EXPECT_EQ(symbolsOf(lines[1]), "F_max");
    EXPECT_EQ(lines[1].size(), 3U);
    EXPECT_EQ(plainText(lines[2]), "twice, P");
    EXPECT_EQ(symbolsOf(lines[2]), "P");
    EXPECT_TRUE(wrapped({}, 14, [](const Runs&) { return 0.0; }).empty());
}

TEST(Figure, TitlesReadSubscriptsOut) {
    const Drawn d = drawn(sketch({force("F_max", 340, 25), force("F2", 275, -40)}));
    const Group* group = groupOf(d.figure, idOf("force", "F_max"));
    ASSERT_TRUE(group);
    EXPECT_EQ(group->title.whole(), "Force F sub max, 340 N at 25.0\u00b0 counter-clockwise from +x");
    EXPECT_NE(d.figure.list.description.find("Force F sub max, 340 N"), std::string::npos);
    EXPECT_NE(d.figure.list.description.find("Force F2, 275 N"), std::string::npos);
    EXPECT_EQ(spoken("_ and a_"), "_ and a_");
}

TEST(Figure, TheTitleBlocksAxisHasAnItalicLetter) {
    Sketch some = sketch({force("P", 340, 25), force("Q", 275, -40)});
    some.title = "from +x, ccw"; // a title is words
    const auto symbols = [&](double axisDegrees) {
        some.reference.axisDegrees = axisDegrees;
        return symbolsIn(drawn(some).figure, "titleblock");
    };
    EXPECT_EQ(symbols(0), "x");
    EXPECT_EQ(symbols(-90), "y");
    EXPECT_EQ(symbols(35), "");
}

TEST(Figure, WritesMinusAsMinus) {
    EXPECT_EQ(withMinusSigns("-3.6°"), "\u22123.6°");
    EXPECT_EQ(withMinusSigns("at -3.6\u00b0 counter-clockwise, -1.2e-7 N"),
              "at \u22123.6\u00b0 counter-clockwise, \u22121.2e\u22127 N");
    EXPECT_EQ(plainText(axisRuns({180, Sense::ccw})), "\u2212x");
}

TEST(Figure, IdsAreUniqueXmlNamesWhateverTheForcesAreCalled) {
    const Drawn d =
        drawn(sketch({force("P", 1, 0), force("P ", 1, 20), force("p", 1, 40), force("é", 1, 60),
                      force("<&>", 1, 80), force("1.2", 1, 100), force("-", 1, 120), force("P.20", 1, 140)}));
    std::set<std::string> seen;
    for (const Group& group : d.figure.list.groups) {
        EXPECT_TRUE(seen.insert(group.id).second) << group.id;
        EXPECT_TRUE(std::isalpha(static_cast<unsigned char>(group.id.front()))) << group.id;
        for (const char c : group.id)
            EXPECT_TRUE(std::isalnum(static_cast<unsigned char>(c)) || c == '-' || c == '.') << group.id;
    }
}

struct AtStage {
    Stage stage;
    std::set<std::string> there, missing;
};

TEST(Stages, ShowNothingOfALaterStage) {
    const AtStage table[] = {
        {Stage::given, {"force-P", "force-Q", "axis", "point", "titleblock"}, {"direction-force-P", "sum"}},
        {Stage::directions, {"direction-force-P", "direction-force-Q"}, {"angle-tails"}},
        {Stage::between, {"angle-tails"}, {"parallelogram"}},
        {Stage::construction, {"parallelogram"}, {"angle-1", "sum"}},
        {Stage::interior, {"angle-1", "angle-2", "angle-3"}, {"sum"}},
        {Stage::found, {"sum"}, {"direction-sum"}},
        {Stage::triangle, {"sum"}, {"direction-sum"}},
        {Stage::all, {"direction-sum"}, {}}};
    std::set<std::string> before;
    for (const AtStage& row : table) {
        const Figure figure = atStage(raft(), row.stage).figure;
        for (const std::string& id : row.there)
            EXPECT_TRUE(groupOf(figure, id)) << id << " at stage " << static_cast<int>(row.stage);
        for (const std::string& id : row.missing)
            EXPECT_FALSE(groupOf(figure, id)) << id << " at stage " << static_cast<int>(row.stage);
        for (const std::string& id : before)
            EXPECT_TRUE(groupOf(figure, id)) << id << " is gone at stage " << static_cast<int>(row.stage);
        before.clear();
        for (const Group& group : figure.list.groups)
            before.insert(group.id);
    }
}

/// P to find along 40°, Q = 260 N whichever way, R = 400 N at 10°: two answers, with P = 180 N and 513 N.
TEST(Stages, SayNothingOfAnAnswerBeforeItIsFound) {
    const Sketch two = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    for (const Stage stage :
         {Stage::given, Stage::directions, Stage::between, Stage::construction, Stage::interior}) {
        const Figure figure = atStage(two, stage).figure;
        const int number = static_cast<int>(stage);
        EXPECT_EQ(groupOf(figure, "note"), nullptr) << number;
        EXPECT_EQ(figure.list.description, "2 forces act on one point. Force P, 40.0° counter-clockwise from "
                                           "+x. Force Q, 260 N. Resultant R, "
                                           "400 N at 10.0° counter-clockwise from +x.")
            << number;
    }
    const Figure found = atStage(two, Stage::all).figure;
    EXPECT_NE(groupOf(found, "note"), nullptr);
    EXPECT_NE(found.list.description.find("180 N"), std::string::npos);
}

TEST(Stages, KeepTheCautionAndWhatIsLeftOut) {
    Sketch lift = raft();
    lift.caution = true;
    EXPECT_NE(groupOf(atStage(lift, Stage::given).figure, "note"), nullptr);
}

TEST(Stages, NameTheSumBeforeItsMagnitudeIsKnown) {
    EXPECT_EQ(textsOf(groupOf(atStage(raft(), Stage::found).figure, "sum")), Strings{"R"});
    EXPECT_EQ(textsOf(groupOf(atStage(raft(), Stage::magnitudes).figure, "sum")), Strings{"R = 520 N"});
}

TEST(Stages, ShowLociBeforeTheFoundVectors) {
    const Sketch given = sketch({force("A", kToFind, 50), force("B", kToFind, -15)}, force("R", 400, 20));
    const Figure loci = atStage(given, Stage::construction).figure;
    EXPECT_TRUE(groupOf(loci, "locus-force-A") && groupOf(loci, "locus-force-B") && groupOf(loci, "sum"));
    EXPECT_FALSE(groupOf(loci, "force-A") || groupOf(loci, "parallelogram") ||
                 groupOf(loci, "meeting-points"));
    const Figure found = atStage(given, Stage::found).figure;
    EXPECT_TRUE(groupOf(found, "force-A") && groupOf(found, "parallelogram") &&
                groupOf(found, "meeting-points"));
}

TEST(Stages, KeepTheTrianglesOtherAnglesForLast) {
    const auto kind = ConstructionKind::triangle;
    EXPECT_TRUE(groupOf(atStage(raft(), Stage::interior, kind).figure, "opposite-R"));
    EXPECT_FALSE(groupOf(atStage(raft(), Stage::magnitudes, kind).figure, "opposite-Q"));
    EXPECT_TRUE(groupOf(atStage(raft(), Stage::triangle, kind).figure, "opposite-Q"));
}

TEST(Triangle, IsDrawnTipToTail) {
    FigureOptions options;
    options.construction = ConstructionKind::triangle;
    for (const bool other : {false, true}) {
        options.otherOrder = other;
        const Drawn d = drawn(raft(), options);
        const auto& first = *groupOf(d.figure, other ? "force-Q" : "force-P")->ends;
        const auto& second = *groupOf(d.figure, other ? "force-P" : "force-Q")->ends;
        const auto& sum = *groupOf(d.figure, "sum")->ends;
        EXPECT_EQ(first[0], d.view.origin);
        EXPECT_EQ(first[1], second[0]);
        EXPECT_NEAR(second[1].x, sum[1].x, 1e-9);
        EXPECT_NEAR(second[1].y, sum[1].y, 1e-9);
        EXPECT_EQ(textsOf(groupOf(d.figure, "opposite-R")), Strings{"115.0°"});
        EXPECT_EQ(textsOf(groupOf(d.figure, "opposite-P")).size(), 1U);
    }
}

TEST(Triangle, AloneLeavesOutWhatIsNoPartOfIt) {
    FigureOptions options;
    options.construction = ConstructionKind::triangle;
    options.alone = true;
    const Figure figure = drawn(raft(), options).figure;
    EXPECT_FALSE(groupOf(figure, "axis") || groupOf(figure, "home-Q") ||
                 groupOf(figure, "direction-force-P"));
    EXPECT_TRUE(groupOf(figure, "force-P") && groupOf(figure, "force-Q") && groupOf(figure, "sum"));
}

TEST(Triangle, NamesTheSideOfTheKnownForces) {
    FigureOptions options;
    options.construction = ConstructionKind::triangle;
    const Figure figure = drawn(sketch({force("A", 120, 75), force("B", 90, 140), force("P", kToFind, 20),
                                        force("Q", kToFind, -60)},
                                       force("R", 350, 0)),
                                options)
                              .figure;
    EXPECT_EQ(textsOf(groupOf(figure, "knowns-K")), Strings{"K = R \u2212 A \u2212 B"});
}

TEST(Polygon, ChainsTheForcesAndTheSumClosesIt) {
    const Drawn d = drawn(sketch({force("P", 100, 0), force("Q", 80, 60), force("S", 90, 130)}));
    const Group* last = groupOf(d.figure, "polygon-S");
    ASSERT_TRUE(last);
    const Point tip = std::get<Path>(last->items.at(1)).points.front();
    EXPECT_NEAR(tip.x, groupOf(d.figure, "sum")->ends->at(1).x, 1e-9);
    EXPECT_NEAR(tip.y, groupOf(d.figure, "sum")->ends->at(1).y, 1e-9);
}

TEST(RightAngle, HasTheSquareMark) {
    const Figure figure = drawn(sketch({force("P", 340, 0), force("Q", 275, 90)})).figure;
    for (const char* id : {"angle-tails", "angle-1", "angle-2", "angle-3"}) {
        const auto* mark = std::get_if<Path>(&groupOf(figure, id)->items.at(0));
        ASSERT_TRUE(mark) << id;
        EXPECT_EQ(mark->points.size(), 3U);
        EXPECT_FALSE(mark->closed);
    }
}

TEST(RightAngle, StandsWhereTheSmallestForceReachesItsLine) {
    Sketch given = sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}, force("R", kToFind, 0));
    given.smallest = "Q";
    EXPECT_TRUE(groupOf(drawn(given).figure, "right-angle"));
}

TEST(Slope, IsDrawnWithItsRunAndRise) {
    const Figure figure = drawn(sketch({slope("P", 260, 12, 5), force("Q", 150, -50)})).figure;
    EXPECT_EQ(textsOf(groupOf(figure, "slope-force-P")), (Strings{"12", "5"}));
    EXPECT_FALSE(groupOf(figure, "slope-force-Q"));
}

TEST(TwoAnswers, AreBothDrawnAndTheChosenOneIsSolid) {
    const Sketch given = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    for (const std::size_t chosen : {0U, 1U}) {
        FigureOptions options;
        options.solution = chosen;
        const Drawn d = drawn(given, options);
        ASSERT_EQ(d.solved.solutions.size(), 2U);
        EXPECT_EQ(groupOf(d.figure, "force-P")->ends->at(1),
                  d.view.toSheet(d.solved.solutions[chosen].forces[0].vector));
        const Group* ghost = groupOf(d.figure, "other-force-P");
        ASSERT_TRUE(ghost);
        EXPECT_EQ(ghost->ends->at(1), d.view.toSheet(d.solved.solutions[1 - chosen].forces[0].vector));
        EXPECT_EQ(std::get<Path>(ghost->items.at(0)).dash, Dash::dotted);
        EXPECT_EQ(groupOf(d.figure, "meeting-points")->items.size(), 2U);
    }
}

/// Each force of the other answer is drawn at its own place in the triangle, not at the common point.
TEST(TwoAnswers, OfATriangleAreTwoTrianglesOnOneSum) {
    const Sketch given = sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10));
    for (const bool otherOrder : {false, true}) {
        FigureOptions options;
        options.construction = ConstructionKind::triangle;
        options.otherOrder = otherOrder;
        const Drawn d = drawn(given, options);
        const Group* first = groupOf(d.figure, otherOrder ? "other-force-Q" : "other-force-P");
        const Group* second = groupOf(d.figure, otherOrder ? "other-force-P" : "other-force-Q");
        ASSERT_TRUE(first && second);
        const auto near = [](Point a, Point b) { return std::hypot(a.x - b.x, a.y - b.y) < 1e-9; };
        EXPECT_TRUE(near((*first->ends)[0], d.view.origin));
        EXPECT_TRUE(near((*first->ends)[1], (*second->ends)[0]));
        EXPECT_TRUE(near((*second->ends)[1], (*groupOf(d.figure, "sum")->ends)[1]));
    }
}

TEST(Loci, HaveTheirOwnRoleAndLineType) {
    const Figure figure =
        drawn(sketch({force("P", kToFind, 40), force("Q", 260, kToFind)}, force("R", 400, 10))).figure;
    const auto& line = std::get<Path>(groupOf(figure, "locus-force-P")->items.at(0));
    const auto& circle = std::get<Arc>(groupOf(figure, "locus-force-Q")->items.at(0));
    EXPECT_EQ(line.role, Role::locus);
    EXPECT_EQ(line.dash, Dash::chainTwoDots);
    EXPECT_EQ(circle.dash, Dash::chainTwoDots);
    EXPECT_EQ(textsOf(groupOf(figure, "locus-force-P")), Strings{"parallel to P"});
    EXPECT_EQ(textsOf(groupOf(figure, "locus-force-Q")), Strings{"circle of possible tips of Q"});
}

TEST(Unanswered, DrawsWhatIsGivenAndSaysWhatIsMissing) {
    const Sketch given = sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}); // four unknowns
    const Drawn d = drawn(given);
    ASSERT_TRUE(d.solved.solutions.empty());
    EXPECT_TRUE(groupOf(d.figure, "force-P"));
    EXPECT_FALSE(groupOf(d.figure, "sum") || groupOf(d.figure, "force-Q"));
    std::string note;
    for (const std::string& line : textsOf(groupOf(d.figure, "note")))
        note += (note.empty() ? "" : " ") + line;
    EXPECT_EQ(note, withMinusSigns(d.solved.message().text()));
    EXPECT_FALSE(note.empty());
}

/// What is given of a vector with one unknown stands at its locus where no arrow can carry it.
TEST(Unanswered, SaysWhatIsGivenOfAForceWithOneUnknown) {
    const Drawn d = drawn(sketch({force("P", kToFind, 60), force("Q", 100, kToFind)}, force("R", 280, -50)));
    ASSERT_TRUE(d.solved.solutions.empty());
    EXPECT_EQ(textsOf(groupOf(d.figure, "locus-force-P")), Strings{"parallel to P, 60.0°"});
    EXPECT_EQ(textsOf(groupOf(d.figure, "locus-force-Q")), Strings{"circle of possible tips of Q, 100 N"});
}

TEST(Found, ForcesHaveTheHeadInOutlineAndGivenOnesFilled) {
    const Figure figure =
        drawn(sketch({force("P", 300, 40), force("Q", kToFind, kToFind)}, force("R", 400, 10))).figure;
    const auto headOf = [&](const char* id) { return std::get<Path>(groupOf(figure, id)->items.at(1)); };
    EXPECT_TRUE(headOf("force-P").filled);
    EXPECT_FALSE(headOf("force-Q").filled);
    EXPECT_TRUE(headOf("force-Q").closed);
    EXPECT_EQ(headOf("force-Q").points.size(), 4U); // notched: not the sum's plain triangle
    EXPECT_EQ(headOf("sum").points.size(), 3U);
}

TEST(Flat, ParallelogramsSaySo) {
    const Figure figure = drawn(sketch({force("P", 340, 30), force("Q", 275, 30)})).figure;
    EXPECT_EQ(textsOf(groupOf(figure, "note")).at(0),
              "The two forces are parallel: the parallelogram is flat.");
    EXPECT_FALSE(groupOf(figure, "parallelogram"));
}

TEST(ZeroForces, AreNamedAtTheCommonPoint) {
    const Drawn d = drawn(sketch({force("P", 340, 30), force("Q", 0, 90)}));
    EXPECT_EQ(textsOf(groupOf(d.figure, "force-Q")), Strings{"Q = 0 N"});
}

TEST(Equilibrium, DrawsNoSumAndSaysSo) {
    const Figure figure = drawn(balanced({force("P", 300, 0), force("Q", kToFind, kToFind)})).figure;
    EXPECT_FALSE(groupOf(figure, "sum"));
    EXPECT_EQ(textsOf(groupOf(figure, "note")).at(0), "Equilibrium: the sum of the forces is zero.");
}

TEST(Options, LeaveOutGridBlockAnglesAndValues) {
    FigureOptions options;
    options.grid = options.titleBlock = options.values = false;
    const Figure figure = drawn(raft(), options).figure;
    EXPECT_FALSE(groupOf(figure, "grid") || groupOf(figure, "titleblock"));
    EXPECT_EQ(textsOf(groupOf(figure, "force-P")), Strings{"P"});
    EXPECT_TRUE(textsOf(groupOf(figure, "angle-1")).empty());
    EXPECT_EQ(groupOf(figure, "angle-1")->items.size(), 2U); // equal angles by equal marks instead
    options.angles = false;
    EXPECT_FALSE(groupOf(drawn(raft(), options).figure, "direction-force-P"));
}

TEST(Options, HighlightLiesBehindItsVector) {
    FigureOptions options;
    options.highlighted = 1;
    const Drawn d = drawn(raft(), options);
    const auto& groups = d.figure.list.groups;
    const auto at = [&](const std::string& id) { return groupOf(d.figure, id) - groups.data(); };
    ASSERT_TRUE(groupOf(d.figure, "highlight"));
    EXPECT_EQ(groupOf(d.figure, "highlight")->part, FigurePart(forceVector(1)));
    EXPECT_LT(at("highlight"), at("force-Q"));
}

TEST(Style, FactorScalesWeightsAndSizesTogether) {
    FigureOptions large;
    large.style.factor = 2;
    const Figure one = drawn(raft()).figure, two = drawn(raft(), large, 1440, 960).figure;
    const auto& thin = std::get<Path>(groupOf(one, "force-P")->items.at(0));
    const auto& thick = std::get<Path>(groupOf(two, "force-P")->items.at(0));
    EXPECT_DOUBLE_EQ(thick.width, 2 * thin.width);
    EXPECT_DOUBLE_EQ(std::get<Text>(groupOf(two, "force-P")->items.at(2)).size,
                     2 * std::get<Text>(groupOf(one, "force-P")->items.at(2)).size);
}

bool isFinite(Point p) {
    return std::isfinite(p.x) && std::isfinite(p.y);
}

bool isFinite(const Item& item) {
    if (const auto* path = std::get_if<Path>(&item))
        return std::all_of(path->points.begin(), path->points.end(), [](Point p) { return isFinite(p); }) &&
               std::isfinite(path->width);
    if (const auto* arc = std::get_if<Arc>(&item))
        return isFinite(arc->centre) && std::isfinite(arc->radius) && std::isfinite(arc->startDegrees) &&
               std::isfinite(arc->sweepDegrees);
    if (const auto* disc = std::get_if<Disc>(&item))
        return isFinite(disc->centre) && std::isfinite(disc->radius);
    const auto& text = std::get<Text>(item);
    return isFinite(text.baseline) && std::isfinite(text.box.width);
}

TEST(Figure, HasNoNumberThatIsNone) {
    constexpr std::uint64_t seed = 31;
    Dice dice(seed);
    for (int i = 0; i < 1'500; ++i) {
        const Kind kind = kindOf(static_cast<std::uint64_t>(i));
        std::vector<Force> forces;
        const auto count = dice.whole(6);
        for (std::uint64_t f = 0; f < count; ++f)
            forces.push_back(force("F" + std::to_string(f),
                                   dice.whole(5) == 0 ? (dice.toss() ? std::optional<double>() : 0)
                                                      : anyMagnitude(dice, kind),
                                   dice.whole(6) == 0 ? std::optional<double>() : anyDegrees(dice)));
        FigureOptions options;
        options.construction = static_cast<ConstructionKind>(dice.whole(4));
        options.otherOrder = dice.toss();
        options.stage = static_cast<Stage>(dice.whole(9));
        const Drawn d = drawn(dice.toss() ? sketch(std::move(forces)) : balanced(std::move(forces)), options);
        for (const Group& group : d.figure.list.groups)
            for (const Item& item : group.items)
                ASSERT_TRUE(isFinite(item)) << group.id << " of seed " << seed << " case " << i;
    }
}

TEST(Figure, IsAFunctionOfItsArguments) {
    const Drawn d = drawn(raft());
    const Figure again = compose(d.sketch, d.solved, d.construction, d.view, {}, FixedMeasure());
    EXPECT_EQ(d.figure.list, again.list);
    EXPECT_EQ(d.figure.placement, again.placement);
}

TEST(Figure, OfTenThousandForcesStillHasItsSumAndSaysWhatIsLeftOut) {
    std::vector<Force> forces;
    for (int i = 0; i < 10'000; ++i)
        forces.push_back(force("F" + std::to_string(i), 1 + i % 7, 0.036 * i));
    const Drawn d = drawn(sketch(std::move(forces)));
    EXPECT_TRUE(groupOf(d.figure, "sum"));
    EXPECT_EQ(textsOf(groupOf(d.figure, "note")).at(0), "10000 forces: their names are left out.");
}

/// Forces of five sizes spread over a half turn.
Drawn fan(std::size_t count) {
    std::vector<Force> forces;
    for (std::size_t i = 0; i < count; ++i)
        forces.push_back(force("F" + std::to_string(i), 100 + 40 * static_cast<double>(i % 5),
                               180 * static_cast<double>(i) / static_cast<double>(count)));
    return drawn(sketch(std::move(forces)));
}

TEST(Figure, BeyondFortyForcesTheSumAloneIsNamedAndEveryStrokeStays) {
    for (const std::size_t count : {kMostLabelled, kMostLabelled + 1}) {
        const Drawn d = fan(count);
        std::size_t arrows = 0, named = 0, links = 0;
        for (const Group& group : d.figure.list.groups) {
            const bool isForce = group.role == Role::given && group.ends.has_value();
            arrows += isForce && !group.items.empty() ? 1 : 0;
            named += isForce && !textsOf(&group).empty() ? 1 : 0;
            links += group.id.starts_with("polygon-") && !group.items.empty() ? 1 : 0;
        }
        EXPECT_EQ(arrows, count);
        EXPECT_EQ(links, count - 1);
        EXPECT_EQ(named > 0, count <= kMostLabelled) << named << " of " << count;
        EXPECT_FALSE(textsOf(groupOf(d.figure, "sum")).empty());
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
