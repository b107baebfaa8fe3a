// SPDX-License-Identifier: MIT
// A number that is given for one line of a solution: right is what that line has, in its answer and by its
// route.
#include "tests/core/mark/marked.h"

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

/// P along 37° and Q of 269 N make 335 N at 78°: P = 97.7 N or 407.9 N (Python: 335 cos 41° ± √(269² − (335
/// sin 41°)²)).
Sketch ofTwoAnswers() {
    return sketch({force("P", kToFind, 37), force("Q", 269, kToFind)}, force("R", 335, 78));
}

Verdict verdictFor(const Marker& marker, std::string_view typed, std::uint8_t answer, const Route& route) {
    auto read = marker.read("P", typed);
    auto& given = std::get<GivenValue>(read);
    given.line = GivenLine{magnitudeId(forceVector(0), answer), route};
    return verdictOf(marker.mark({{given}}), "P");
}

TEST(MarkedLine, OfTwoAnswersIsRightInItsOwnAlone) {
    const Sketch question = ofTwoAnswers();
    const Solved solved = solve(question);
    const Marker marker(question, solved);
    for (const Route& route : routesOf(question, solved)) {
        EXPECT_EQ(verdictFor(marker, "408", 1, route), Verdict::right) << "the greater one is the first";
        EXPECT_EQ(verdictFor(marker, "97.7", 2, route), Verdict::right);
        EXPECT_NE(verdictFor(marker, "97.7", 1, route), Verdict::right);
        EXPECT_NE(verdictFor(marker, "408", 2, route), Verdict::right);
    }
    EXPECT_EQ(verdictOf(marked(question, {"P = 408"}), "P"), Verdict::right) << "an answer may be either";
}

TEST(MarkedLine, HasNoWordForASecondAnswer) {
    const Sketch question = ofTwoAnswers();
    const Solved solved = solve(question);
    MarkOptions both;
    both.bothAnswers = true;
    const Marker marker(question, solved, both);
    auto read = marker.read("P", "408");
    auto& given = std::get<GivenValue>(read);
    given.line = GivenLine{magnitudeId(forceVector(0), 2), routesOf(question, solved).front()};
    EXPECT_TRUE(marker.mark({{given}}).remarks.empty());
    given.line.reset();
    EXPECT_FALSE(marker.mark({{given}}).remarks.empty() &&
                 marker.mark({{given}}).verdict != Verdict::incomplete);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
