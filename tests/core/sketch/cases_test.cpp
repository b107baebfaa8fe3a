// SPDX-License-Identifier: MIT
#include "core/sketch/cases.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Magnitude newtons(double value) {
    return {value, {}};
}
Direction degrees(double value) {
    return {AngleForm{value}, {}};
}

/// P and Q given, R to find; a calm case without changes and a storm in which P is greater.
Sketch raft() {
    Sketch made = sketch({force("P", 340, 25), force("Q", 275, -40)});
    made.cases = {{"calm", {}}, {"storm", {{"P", newtons(500), {}}}}};
    return made;
}

TEST(ACase, IsTheSketchWithItsOtherValuesAndWithoutCases) {
    const Sketch storm = inCase(raft(), 1);
    EXPECT_EQ(storm.forces[0].magnitude, newtons(500));
    EXPECT_EQ(storm.forces[0].direction, degrees(25));
    EXPECT_EQ(storm.forces[1], raft().forces[1]);
    EXPECT_TRUE(storm.cases.empty());
    EXPECT_EQ(storm.inCase, "storm");
    Sketch plain = storm;
    plain.inCase.clear();
    plain.forces[0].magnitude = newtons(340);
    EXPECT_EQ(plain, asDrawn(raft()));
}

TEST(ACase, WithoutChangesIsTheSketchItself) {
    EXPECT_EQ(asDrawn(inCase(raft(), 0)), asDrawn(raft()));
}

TEST(ACase, IsFoundByItsNameAlone) {
    EXPECT_EQ(caseNamed(raft(), "storm"), 1u);
    EXPECT_EQ(caseNamed(raft(), "Storm"), std::nullopt);
    EXPECT_EQ(caseNamed(raft(), kAsDrawn), std::nullopt);
}

TEST(ANewCase, HasTheFirstFreeNumber) {
    Sketch made = raft();
    EXPECT_EQ(nextCaseName(made), "case 1");
    made.cases.push_back({"case 1", {}});
    made.cases.push_back({"case 3", {}});
    EXPECT_EQ(nextCaseName(made), "case 2");
}

TEST(AnEditInACase, PutsAGivenValueIntoTheCaseAlone) {
    Sketch after = inCase(raft(), 0);
    after.forces[1].magnitude = newtons(300);
    after.forces[1].direction = degrees(-50);
    const Sketch whole = editedInCase(raft(), 0, after);
    EXPECT_EQ(asDrawn(whole), asDrawn(raft()));
    EXPECT_EQ(whole.cases[1], raft().cases[1]);
    EXPECT_EQ(whole.cases[0].changes, (std::vector<CaseChange>{{"Q", newtons(300), degrees(-50)}}));
    EXPECT_EQ(inCase(whole, 0), after);
}

TEST(AnEditInACase, TakesAValueOutAgainThatIsTheSketchsOwn) {
    Sketch after = inCase(raft(), 1);
    after.forces[0].magnitude = newtons(340);
    EXPECT_TRUE(editedInCase(raft(), 1, after).cases[1].changes.empty());
}

TEST(AnEditInACase, ChangesWhatIsNoGivenValueInTheSketchItself) {
    Sketch after = inCase(raft(), 1);
    after.title = "Raft";
    after.figures = 4;
    after.forces[0].limit = TypedForce{600, ForceUnit::N, {}};
    after.forces[1].label = LabelPin{12, 8};
    const Sketch whole = editedInCase(raft(), 1, after);
    EXPECT_EQ(whole.title, "Raft");
    EXPECT_EQ(whole.figures, 4);
    EXPECT_EQ(whole.forces[0].limit, after.forces[0].limit);
    EXPECT_EQ(whole.forces[1].label, after.forces[1].label);
    EXPECT_EQ(whole.forces[0].magnitude, newtons(340));
    EXPECT_EQ(whole.cases, raft().cases);
    EXPECT_EQ(whole.inCase, "");
}

TEST(AnEditInACase, CarriesANewNameIntoEveryCase) {
    Sketch after = inCase(raft(), 0);
    after.forces[0].name = "bow";
    const Sketch whole = editedInCase(raft(), 0, after);
    EXPECT_EQ(whole.cases[1].changes[0].of, "bow");
    EXPECT_EQ(inCase(whole, 1).forces[0].magnitude, newtons(500));
    EXPECT_FALSE(firstFault(whole));
}

TEST(AnEditInACase, AsksForAValueInEveryCase) {
    Sketch after = inCase(raft(), 1);
    after.forces[0].magnitude = {};
    after.sum = force("R", 600, 0);
    const Sketch whole = editedInCase(raft(), 1, after);
    EXPECT_EQ(whole.forces[0].magnitude, Magnitude{});
    EXPECT_EQ(whole.sum, after.sum);
    EXPECT_TRUE(whole.cases[1].changes.empty());
    EXPECT_FALSE(firstFault(whole));
}

TEST(AnEditInACase, ThatSetsTheSumToZeroAsksAnotherQuestionInEveryCase) {
    Sketch base = raft();
    base.sum = force("R", 600, 10);
    base.forces[1] = force("Q", kToFind, kToFind);
    base.cases[0].changes = {{"R", newtons(700), {}}};
    Sketch after = inCase(base, 0);
    after.sum = force("R", 0, kToFind);
    const Sketch whole = editedInCase(base, 0, after);
    EXPECT_TRUE(isEquilibrium(whole));
    EXPECT_TRUE(whole.cases[0].changes.empty());
    EXPECT_FALSE(firstFault(whole));
}

TEST(AnEditInACase, AddsAndDropsForcesInEveryCase) {
    Sketch after = inCase(raft(), 0);
    after.forces.erase(after.forces.begin());
    after.forces.push_back(force("S", 10, 90));
    const Sketch whole = editedInCase(raft(), 0, after);
    ASSERT_EQ(whole.forces.size(), 2u);
    EXPECT_EQ(whole.forces[0].name, "Q");
    EXPECT_EQ(whole.forces[1], force("S", 10, 90));
    EXPECT_TRUE(whole.cases[1].changes.empty()) << "P has gone, and what a case made of it";
    EXPECT_FALSE(firstFault(whole));
}

TEST(AnEditInACase, KeepsTheOrderOfItsChanges) {
    Sketch base = raft();
    base.cases[0].changes = {{"Q", newtons(300), {}}, {"P", newtons(400), {}}};
    Sketch after = inCase(base, 0);
    after.forces[0].direction = degrees(30);
    const Sketch whole = editedInCase(base, 0, after);
    EXPECT_EQ(whole.cases[0].changes,
              (std::vector<CaseChange>{{"Q", newtons(300), {}}, {"P", newtons(400), degrees(30)}}));
}

TEST(SettledCases, KeepWhatStillHasItsPlace) {
    Sketch made = raft();
    made.cases[1].changes.push_back({"Q", newtons(300), degrees(-45)});
    made.forces[1].direction = {};
    settleCases(made);
    EXPECT_EQ(made.cases[1].changes,
              (std::vector<CaseChange>{{"P", newtons(500), {}}, {"Q", newtons(300), {}}}));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
