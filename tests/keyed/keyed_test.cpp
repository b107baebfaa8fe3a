// SPDX-License-Identifier: MIT
// Printed lines compute: each is keyed into a calculator of fifty digits that knows nothing of core. The long
// run is keyed_million.
#include "tests/keyed/keyed_questions.h"
#include "tests/support/flat.h"

#include <gtest/gtest.h>

namespace tailpoint::keyed {
namespace TAILPOINT_FILE {

constexpr std::int64_t kLines = 50'000;
constexpr std::uint64_t kSeed = 20261129;

/// By python's decimal and mpmath: sin 30° = 0.5, 40·41 = 1640, √2 = 1.41421356…, arctan 1 = 45° = 50 gon.
TEST(Calculator, ReadsWhatThePageHas) {
    const auto value = [](std::string_view text, Angles angles = Angles::degrees, const Memory& memory = {}) {
        const Outcome out = keyIn(text, angles, memory);
        return out.kind == Outcome::Kind::value ? out.amount.value.convert_to<double>() : std::nan("");
    };
    EXPECT_DOUBLE_EQ(value("(40 N)(41 N)"), 1640);
    EXPECT_DOUBLE_EQ(value("-(40 N) sin(-30.0°)"), 20);
    EXPECT_DOUBLE_EQ(value("√((1.0 N)² + (1.0 N)²)"), 1.4142135623730951);
    EXPECT_DOUBLE_EQ(value("arctan((2 N) / (2 N))", Angles::gon), 50);
    EXPECT_DOUBLE_EQ(value("2π rad - π rad", Angles::radians), 3.141592653589793);
    EXPECT_DOUBLE_EQ(value("(260 N)(12/13)"), 240);
    EXPECT_DOUBLE_EQ(value("|-3.0 N|/|1.5 N|"), 2);
    EXPECT_DOUBLE_EQ(value("1.5 × 10⁻³ kN + 2 kN"), 2.0015);
    EXPECT_DOUBLE_EQ(
        value("2PQ_x cos γ", Angles::degrees, {{"P", {3, 1, 3}}, {"Q_x", {5, 1, 5}}, {"γ", {60, 0, 60}}}),
        15);
}

TEST(Calculator, SaysWhatItCannotRead) {
    for (const char* text : {"P + 1 N", "sin(3 N)", "1 N + 2", "√(2 N)", "30 rad", "(2 N", "2 N)", ""})
        EXPECT_EQ(keyIn(text, Angles::degrees).kind, Outcome::Kind::unread) << text;
    for (const char* text : {"arcsin(1.01)", "√(-(1 N)²)", "1 / 0"})
        EXPECT_EQ(keyIn(text, Angles::degrees).kind, Outcome::Kind::undefined) << text;
}

std::string raftText() {
    const Sketch raft = testing::sketch({testing::force("P", 340, 25), testing::force("Q", 275, -40)});
    const Solved solved = solve(raft);
    return toText(explain(raft, solved, construct(raft, solved)), Minus::ascii);
}

/// Whoever changes a digit of a result, or of what leads to it, is found out.
TEST(KeyedLines, ShowAChangedDigit) {
    const std::string text = raftText();
    ASSERT_TRUE(keyReport(text, {}).wrong.empty());
    for (const auto& [right, wrong] :
         {std::pair("= 519.86 N", "= 519.87 N"), std::pair("= 28.648", "= 28.649"),
          std::pair("cos 115.0", "cos 115.1"), std::pair("figures 520", "figures 521"),
          std::pair("decimal -3.6", "decimal -3.7"), std::pair("65.0 N ≤", "66.0 N ≤"),
          std::pair("β = 151.352°", "β = 151.353°"), std::pair("= 437 N", "= 438 N")}) {
        std::string changed = text;
        const auto at = changed.find(right);
        ASSERT_NE(at, std::string::npos) << right;
        changed.replace(at, std::string(right).size(), wrong);
        EXPECT_FALSE(keyReport(changed, {}).wrong.empty()) << right << " changed to " << wrong;
    }
}

TEST(KeyedLines, ComputeInEveryKindOfQuestion) {
    testing::Dice dice(kSeed);
    Tally tally;
    std::uint64_t cases = 0;
    for (; tally.lines < kLines && cases < kLines && !HasFailure(); ++cases) {
        const Keyed one = keyed(someQuestion(dice, cases));
        tally += one.tally;
        for (const std::string& line : one.wrong)
            ADD_FAILURE() << "seed " << kSeed << ", case " << cases << ": " << line;
    }
    RecordProperty("cases", std::to_string(cases));
    RecordProperty("lines", std::to_string(tally.lines));
    std::cout << cases << " cases, " << tally.lines << " lines of numbers keyed, " << tally.all()
              << " numbers in all\n";
    // Twelve lines and more a question, half of all lines with symbols as well, and in every form.
    EXPECT_GE(tally.lines, kLines);
    EXPECT_GE(tally.lines, 12 * static_cast<std::int64_t>(cases));
    EXPECT_GT(tally.symbolic, kLines / 2);
    EXPECT_GT(tally.rounded, kLines / 20);
    EXPECT_GT(tally.relations, kLines / 100);
    EXPECT_GT(tally.cells, kLines / 20);
    EXPECT_GT(tally.prose, kLines / 100);
    EXPECT_EQ(tally.unread, 0);
    EXPECT_LT(tally.excused, kLines / 1000);
}

/// What is left over of forces a hundred thousand times as great lies below the digits of a double.
TEST(KeyedLines, ComputeWhereHugeForcesAllButCancel) {
    Force u = testing::force("U", {}, {}), v = testing::force("V", {}, {});
    u.direction.form = SlopeForm{6.3769223574448315, -1};
    v.direction.form = SlopeForm{6.3774012594834835, -1};
    Question question{testing::sketch({testing::force("P", 507, -103.5), u, v}), {}};
    question.sketch.sum.magnitude.value = 0;
    question.sketch.figures = 6;
    question.sketch.angleDecimals = 2;
    const Keyed one = keyed(question);
    EXPECT_GT(one.tally.lines, 4);
    EXPECT_EQ(one.wrong, std::vector<std::string>());
}

/// Where no triangle has any height, and where there is no answer: on three kinds of sheet, by each way.
TEST(KeyedLines, ComputeWhereNothingIsATriangle) {
    std::vector<Sketch> sketches = testing::flatQuestions();
    for (Sketch& one : testing::unansweredQuestions())
        sketches.push_back(std::move(one));
    Tally tally;
    int number = 0;
    for (const Sketch& sketch : sketches)
        for (int sheet = 0; sheet < 3; ++sheet)
            for (const Method method : {Method::suited, Method::triangle, Method::components}) {
                Question question{testing::asOnAnotherSheet(sketch, sheet), {}};
                question.options.method = method;
                question.options.handRounding = number++ % 4 == 3;
                const Keyed one = keyed(question);
                tally += one.tally;
                for (const std::string& line : one.wrong)
                    ADD_FAILURE() << "question " << &sketch - sketches.data() << ", sheet " << sheet << ": "
                                  << line;
            }
    EXPECT_GT(tally.lines, 1500);
    EXPECT_EQ(tally.unread, 0);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::keyed
