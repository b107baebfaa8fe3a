// SPDX-License-Identifier: MIT
#include "ui/practice/problem_file.h"

#include "tests/practiced/statement_reader.h"
#include "ui/files/sketch_json.h"
#include "ui/marking/mark_options.h"
#include "ui/practice/side_by_side.h"

#include <atomic>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

Sketch readBack(const QByteArray& bytes) {
    const auto read = readSketch(bytes);
    EXPECT_TRUE(std::holds_alternative<Sketch>(read)) << bytes.toStdString();
    return std::get<Sketch>(read);
}

TEST(ProblemFile, KeepsStatementAndCode) {
    for (const char* family : {"two-forces", "bearings", "slopes", "push-or-pull", "smallest-force"}) {
        const auto made = problem({family, 3, 77});
        ASSERT_TRUE(made);
        const Sketch read = readBack(writeProblem(*made));
        EXPECT_EQ(statementOf(read), made->statement);
        EXPECT_EQ(problemIdOf(read), made->id);
        EXPECT_TRUE(isSameQuestion(read, made->sketch)) << writeProblem(*made).toStdString();
        EXPECT_EQ(writeSketch(read), writeProblem(*made));
    }
}

TEST(ProblemFile, SaysThatBothAnswersAreWanted) {
    const Sketch two = readBack(writeProblem(*problem({"two-answers", 1, 3})));
    EXPECT_TRUE(std::get<MarkOptions>(markOptionsOf(two)).bothAnswers);
    const Sketch one = readBack(writeProblem(*problem({"two-forces", 1, 3})));
    EXPECT_FALSE(std::get<MarkOptions>(markOptionsOf(one)).bothAnswers);
}

TEST(ProblemFile, ItsStatementCanBeEdited) {
    const Sketch made = withPracticeKeys(*problem({"two-forces", 1, 3}));
    const Sketch edited = withStatement(made, "Two tugs pull.\nFind R.");
    EXPECT_EQ(statementOf(readBack(writeSketch(edited))), "Two tugs pull.\nFind R.");
    EXPECT_EQ(problemIdOf(edited), problemIdOf(made));
    const Sketch without = withStatement(edited, "");
    EXPECT_EQ(statementOf(without), "");
    EXPECT_FALSE(writeSketch(without).contains("statement"));
    EXPECT_EQ(withStatement(emptySketch(), ""), emptySketch());
}

TEST(ProblemFile, WithOtherNumbersItsStatementSaysThem) {
    const Sketch made = withPracticeKeys(*problem({"two-forces", 1, 3}));
    const auto other = withOtherNumbers(made, 1);
    ASSERT_TRUE(other);
    EXPECT_FALSE(problemIdOf(*other));
    EXPECT_EQ(testing::valuesIn(statementOf(*other)).vectors, testing::valuesOf(*other));
    EXPECT_NE(testing::valuesOf(*other), testing::valuesOf(made));
    const auto edited = withOtherNumbers(withStatement(made, "Two tugs pull with 340 N."), 1);
    ASSERT_TRUE(edited);
    EXPECT_EQ(statementOf(*edited), "");
    EXPECT_TRUE(isSameQuestion(*edited, *other));
}

TEST(ProblemFile, ACodeOfNoProblemIsNone) {
    Sketch made =
        readBack(R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"},
        "forces": [], "practice": {"code": "080006"}, "statement": 7})");
    EXPECT_FALSE(problemIdOf(made));
    EXPECT_EQ(statementOf(made), "");
}

TEST(SideBySide, EveryIndexIsTakenOnceAndACancelStopsIt) {
    std::vector<std::atomic<int>> times(1000);
    EXPECT_TRUE(sideBySide(times.size(), [&](std::size_t index) { ++times[index]; }));
    for (const auto& one : times)
        EXPECT_EQ(one, 1);
    std::atomic<int> done = 0;
    EXPECT_FALSE(sideBySide(
        1000, [&](std::size_t) { ++done; }, [&] { return done >= 10; }));
    EXPECT_LT(done, 1000);
    EXPECT_TRUE(sideBySide(0, [](std::size_t) { FAIL(); }));
}

TEST(ProblemFile, WordsOfOtherValuesAreNotThoseOfTheSketch) {
    Sketch sketch = withPracticeKeys(*problem({"two-forces", 1, 3}));
    EXPECT_EQ(wordsOf(sketch), statementOf(sketch));
    sketch.forces[0].magnitude.value = 1234;
    EXPECT_TRUE(wordsOf(sketch).empty()) << "as they were generated, for other values";
    sketch = withStatement(sketch, "Two boats pull. How hard?");
    EXPECT_EQ(wordsOf(sketch), "Two boats pull. How hard?") << "somebody wrote them";
    EXPECT_TRUE(wordsOf(Sketch()).empty());
}

TEST(ProblemFile, WordsInTurnAreThoseOfEachSketch) {
    const Sketch first = withPracticeKeys(*problem({"two-forces", 1, 3})),
                 second = withPracticeKeys(*problem({"two-ropes", 2, 5}));
    Sketch dragged = first, edited = withStatement(first, "Two boats pull. How hard?");
    dragged.forces[0].magnitude.value = 1234;
    ProblemWords words;
    for (const auto* sketch :
         std::initializer_list<const Sketch*>{&first, &dragged, &second, &dragged, &first, &edited})
        EXPECT_EQ(words.of(*sketch), wordsOf(*sketch));
    EXPECT_EQ(words.of(first), statementOf(first));
    EXPECT_TRUE(words.of(dragged).empty());
    EXPECT_TRUE(words.of(Sketch()).empty());
    EXPECT_EQ(words.of(second), statementOf(second));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
