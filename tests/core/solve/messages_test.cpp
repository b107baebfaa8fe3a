// SPDX-License-Identifier: MIT
// What is said where there is no plain answer: always which quantity to fix, to free or to turn.
#include "core/solve/solve.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

void expectSaid(const Sketch& sketch, Status status, const std::string& message) {
    const Solved result = solve(sketch);
    EXPECT_EQ(nameOf(result.status), nameOf(status));
    EXPECT_EQ(result.message().text(), message);
    EXPECT_TRUE(result.solutions.empty());
}

TEST(TooManyUnknowns, AreListedToFix) {
    const Sketch three = sketch({force("P", kToFind, 25), force("Q", 4, kToFind)}, force("R", kToFind, 0));
    expectSaid(
        three, Status::underdetermined,
        "Three unknowns, but a plane gives only two equations. Fix one of these: the magnitude of P, the "
        "direction of Q or the magnitude of R.");
    const Sketch four = sketch({force("P", kToFind, kToFind)});
    expectSaid(
        four, Status::underdetermined,
        "Four unknowns, but a plane gives only two equations. Fix two of these: the magnitude of P, the "
        "direction of P, the magnitude of R or the direction of R.");
    EXPECT_EQ(solve(four).unknowns.size(), 4u);
    EXPECT_EQ(solve(four).family, Family::unclear);
}

TEST(TooManyUnknowns, AreNotListedWithoutEnd) {
    Sketch many = emptySketch();
    for (int i = 0; i < 50; ++i) {
        many.forces.push_back(force("F" + std::to_string(i), kToFind, kToFind));
    }
    const Solved result = solve(many);
    EXPECT_EQ(result.message().text(),
              "102 unknowns, but a plane gives only two equations. Fix 100 of these: the "
              "magnitude of F0, the direction of F0, the magnitude of F1, the direction of "
              "F1, the magnitude of F2, the direction of F2 or 96 more.");
}

TEST(OneUnknown, IsToldWhatToFreeAndByHowMuchItMisses) {
    // R - Q is (0.7082, 1.4311), 1.2466 along 25 degrees and 0.9976 across it.
    const Sketch cannot = sketch({force("P", kToFind, 25), force("Q", 4, 4)}, force("R", 5, 20));
    expectSaid(cannot, Status::overdetermined,
               "One unknown only, the magnitude of P, but a plane gives two equations. Free one more: the "
               "direction of P, the magnitude of R, the direction of R, the magnitude of Q or the direction "
               "of Q. No magnitude of P makes the equation hold: the best, P = 1.25 N, misses by 0.998 N, "
               "more than the rounding of the given values may leave.");
    const Sketch against = balanced({force("P", kToFind, 25), force("Q", 4, 60)});
    EXPECT_NE(solve(against).message().text().find("the best, P = 0 N, misses by 4.00 N"), std::string::npos)
        << solve(against).message().text();
}

TEST(NoUnknown, IsToldWhetherTheEquationHolds) {
    expectSaid(
        balanced({force("P", 340, 25), force("Q", 340, 205)}), Status::overdetermined,
        "Everything is given, and the equation holds: the forces balance, ΣF = 0. To make it a question, "
        "leave two of these unknown: the magnitude of P, the direction of P, the magnitude of Q or the "
        "direction of Q.");
    const std::string free = " To make it a question, leave two of these unknown: the magnitude of R, the "
                             "direction of R, the magnitude of P, "
                             "the direction of P, the magnitude of Q or the direction of Q.";
    const std::vector<Force> raft{force("P", 340, 25), force("Q", 275, -40)};
    expectSaid(sketch(raft, force("R", 520, -3.6)), Status::overdetermined,
               "Everything is given, and the equation holds within rounding: the forces add up to R but for "
               "0.457 N." +
                   free);
    expectSaid(sketch(raft, force("R", 500, 0)), Status::overdetermined,
               "Everything is given, and the equation does not hold: ΣF = 520 N at -3.6°, not R = 500 N at "
               "0.0°; the "
               "gap is 38.0 N." +
                   free);
    const Solved unbalanced = solve(balanced(raft));
    EXPECT_EQ(unbalanced.family, Family::check);
    EXPECT_NE(
        unbalanced.message().text().find("does not hold: ΣF = 520 N at -3.6°, not 0; the gap is 520 N."),
        std::string::npos);
}

TEST(ABalance, IsSaidToHaveNoDirection) {
    const Solved result = solve(sketch({force("P", 100, 25), force("Q", 100, 205)}));
    EXPECT_EQ(result.status, Status::unique);
    EXPECT_EQ(result.message().text(), "ΣF = 0 already: the forces balance, and R has no direction.");
    EXPECT_EQ(result.solutions.at(0).sum.magnitude, 0);
    EXPECT_FALSE(result.solutions[0].sum.direction);
    EXPECT_EQ(solve(balanced({force("P", 100, 25), force("Q", 100, 205), force("S", kToFind, kToFind)}))
                  .message()
                  .text(),
              "The other vectors close already: S is zero and has no direction.");
    EXPECT_EQ(solve(emptySketch()).message().text(), "No forces yet, so R is zero and has no direction.");
}

TEST(NoAnswer, IsToldWithItsReason) {
    expectSaid(sketch({force("P", kToFind, 25), force("Q", kToFind, 205)}, force("R", 520, 0)), Status::none,
               "No answer: P and Q act along one line, and R = 520 N does not lie along it. Give one of them "
               "another "
               "direction.");
    expectSaid(
        balanced({force("A", 3, 0), force("B", 4, 90), force("P", kToFind, 25), force("Q", kToFind, 205)}),
        Status::none,
        "No answer: P and Q act along one line, and the sum of the known forces, 5.00 N, does not lie along "
        "it. "
        "Give "
        "one of them another direction.");
    expectSaid(sketch({force("P", 100, kToFind), force("Q", 600, kToFind)}, force("R", 800, 10)),
               Status::none,
               "No answer: P = 100 N and Q = 600 N close no triangle with R = 800 N; the greatest is 100 N "
               "greater than "
               "the other two together. Reduce it or increase another.");
    expectSaid(
        balanced({force("P", 600, kToFind), force("Q", 601, kToFind)}), Status::none,
        "No answer: nothing else acts, so P = 600 N and Q = 601 N would have to be equal. Change one of the "
        "two.");
    expectSaid(
        sketch({force("P", kToFind, 25), force("Q", kToFind, 25)}, force("R", 520, 205)), Status::none,
        "No answer: P and Q both point away from where they would have to lead. Turn one of them round.");
}

TEST(NoAnswerInAGivenSense, NamesTheForcesThatWouldHaveToTurn) {
    EXPECT_EQ(solve(balanced({force("W", 100, 90), force("P", kToFind, 30), force("Q", kToFind, 150)}))
                  .message()
                  .text(),
              "No answer in the given sense of P and Q; one answer if P and Q may act the other way.");
    EXPECT_EQ(solve(sketch({force("P", kToFind, 25), force("Q", kToFind, 40)}, force("R", 520, 0)))
                  .message()
                  .text(),
              "No answer in the given sense of Q; one answer if Q may act the other way.");
}

TEST(EndlesslyMany, IsToldWhatToGive) {
    expectSaid(sketch({force("P", kToFind, 25), force("Q", kToFind, 205)}, force("R", 520, 25)),
               Status::endless,
               "Infinitely many answers: P and Q act along one line, so that one equation is left for "
               "the two magnitudes. Give the magnitude of P or the magnitude of Q.");
    expectSaid(balanced({force("P", 600, kToFind), force("Q", 600, kToFind)}), Status::endless,
               "Infinitely many answers: P and Q are equal and nothing else acts, so any two opposite "
               "directions will do. Give the direction of P or the direction of Q.");
    expectSaid(sketch({force("P", 600, kToFind)}, force("R", 600, kToFind)), Status::endless,
               "Infinitely many answers: P and R are equal and nothing else acts, so any common direction "
               "will do. Give the direction of P or the direction of R.");
}

TEST(NoTriangle, IsToldWithoutAStrayComma) {
    const std::string message =
        solve(sketch({force("A", 500, 0), force("P", 10, kToFind), force("Q", 10, kToFind)},
                     force("R", 20, 90)))
            .message()
            .text();
    EXPECT_NE(message.find("close no triangle with"), std::string::npos) << message;
    EXPECT_EQ(message.find(",;"), std::string::npos) << message;
}

TEST(TwoAnswers, AreToldByTheirLoci) {
    EXPECT_EQ(
        solve(sketch({force("P", 3, kToFind), force("Q", 4, kToFind)}, force("R", 5, 0))).message().text(),
        "Two answers: the circle of P and the circle of Q cross twice.");
    EXPECT_EQ(
        solve(sketch({force("K", 8, 0), force("Q", 6, kToFind)}, force("R", kToFind, 35))).message().text(),
        "Two answers: the circle of possible tips of Q cuts the parallel to the line of action of R twice.");
    EXPECT_EQ(solve(sketch({force("P", 200, kToFind), force("Q", 600, kToFind)}, force("R", 800, 10)))
                  .message()
                  .text(),
              "One answer (tangent): the circle of P and the circle of Q touch.");
}

TEST(NearlyParallelLines, AreToldHowFarATenthOfADegreeMovesTheAnswer) {
    const Solved near =
        solve(sketch({force("P", kToFind, 25), force("Q", kToFind, 24)}, force("R", 520, 24.5)));
    EXPECT_EQ(near.status, Status::unique);
    // P = 520 sin(0.5 deg) / sin(1 deg); with Q at 24.1 it is 520 sin(0.4 deg) / sin(0.9 deg), 28.9 N less.
    EXPECT_EQ(near.message().text(),
              "The lines of action are nearly parallel: the answer changes by 28.9 N for 0.1°.");
    EXPECT_EQ(solve(sketch({force("P", kToFind, 25), force("Q", kToFind, 20)}, force("R", 520, 24)))
                  .message()
                  .text(),
              "");
    EXPECT_EQ(solve(sketch({force("P", kToFind, 25), force("Q", kToFind, 24.95)}, force("R", 520, 24.97)))
                  .message()
                  .text(),
              "The lines of action are nearly parallel: a turn of 0.1° turns the answer round.");
}

TEST(NearTangency, IsToldToo) {
    const auto message = [](double side) {
        return solve(sketch({force("K", 8, 0), force("Q", side, kToFind)}, force("R", kToFind, 30)))
            .message()
            .text();
    };
    EXPECT_NE(message(4.0005).find("nearly tangent: a turn of 0.1° leaves no answer."), std::string::npos);
    EXPECT_EQ(message(4.5).find("nearly"), std::string::npos);
    const Solved steep =
        solve(sketch({force("K", 8, 0), force("Q", 8.0001, kToFind)}, either(force("R", kToFind, 91))));
    EXPECT_NE(steep.message().text().find("Line and circle are nearly tangent: the answer changes by "),
              std::string::npos);
    EXPECT_NE(steep.message().text().find(" for 0.1°."), std::string::npos);
    const Solved circles =
        solve(sketch({force("P", 200.01, kToFind), force("Q", 600, kToFind)}, force("R", 800, 10)));
    EXPECT_NE(circles.message().text().find(
                  "nearly tangent: a change of 0.1 % of the side they close with leaves no answer."),
              std::string::npos);
}

TEST(TheSmallest, IsToldWhatItNeeds) {
    expectSaid(smallest(sketch({force("P", 5, 0), force("Q", 3, 60)}, force("R", kToFind, 0)), "Q"),
               Status::overdetermined,
               "The smallest Q is found when Q and the magnitude of R are to be found: free the magnitude of "
               "Q and the direction of Q.");
    expectSaid(
        smallest(sketch({force("P", 5, 0), force("Q", kToFind, kToFind)}), "Q"), Status::underdetermined,
        "The smallest Q is found when Q and the magnitude of R are to be found: fix the direction of R.");
    expectSaid(
        smallest(sketch({force("P", 5, 0), force("Q", kToFind, kToFind)}, force("R", 5, 0)), "Q"),
        Status::overdetermined,
        "The smallest Q is found when Q and the magnitude of R are to be found: free the magnitude of R.");
    expectSaid(smallest(sketch({force("P", 5, 0)}), "R"), Status::overdetermined,
               "The smallest R is found when R and the magnitude of one force are to be found: free "
               "the magnitude of one force.");
    expectSaid(smallest(sketch({force("P", kToFind, 0), force("Q", kToFind, kToFind)}), "R"),
               Status::underdetermined,
               "The smallest R is found when R and the magnitude of one force are to be found: fix the "
               "magnitude of Q and the direction of Q.");
    expectSaid(
        smallest(sketch({force("P", kToFind, kToFind), force("Q", 5, 20)}, force("R", 5, kToFind)), "P"),
        Status::underdetermined,
        "The smallest P is found when P and the magnitude of R are to be found: free the magnitude of R, and "
        "fix the direction of R.");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
