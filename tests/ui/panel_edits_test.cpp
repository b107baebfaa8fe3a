// SPDX-License-Identifier: MIT
// What typing, toggling, pasting and changing units make of a sketch: no widgets.
#include "panel_support.h"

#include "core/quantity/decimals.h"
#include "tests/support/sketches.h"
#include "ui/document/given_edits.h"
#include "ui/document/sheet_edits.h"

namespace tailpoint::test {
namespace TAILPOINT_FILE {

Sketch taken(const Outcome& outcome) {
    const auto* accepted = std::get_if<Accepted>(&outcome);
    EXPECT_TRUE(accepted) << std::get<Refused>(outcome).message.toStdString();
    return accepted ? accepted->sketch : emptySketch();
}

QString reason(const Outcome& outcome) {
    const auto* refused = std::get_if<Refused>(&outcome);
    EXPECT_TRUE(refused);
    return refused ? refused->message : QString();
}

TEST(TypedIntoACell, AMagnitudeTakesTheSheetsUnitAPointOrAComma) {
    struct Case {
        const char* typed;
        double value;
    };
    for (const Case& each : {Case{"360", 360}, Case{" 360.5 ", 360.5}, Case{"360,5", 360.5},
                             Case{"1.2 kN", 1200}, Case{"1,2 kN", 1200}, Case{"0", 0}}) {
        const Sketch after = taken(typedInto(raft(), 0, Entry::magnitude, QString::fromUtf8(each.typed)));
        EXPECT_DOUBLE_EQ(*after.forces[0].magnitude.value, each.value) << each.typed;
    }
}

TEST(TypedIntoACell, AConvertedMagnitudeIsEchoedAndAPlainOneIsNot) {
    const Outcome pounds = typedInto(raft(), 0, Entry::magnitude, QStringLiteral("75 lbf"));
    EXPECT_EQ(std::get<Accepted>(pounds).understood, QStringLiteral("75 lbf = 334 N"));
    EXPECT_TRUE(std::get<Accepted>(typedInto(raft(), 0, Entry::magnitude, QStringLiteral("340")))
                    .understood.isEmpty());
}

TEST(TypedIntoACell, AGroupedNumberIsEchoedInFullAndAPlainOneIsNot) {
    const auto said = [](const char* typed) {
        return std::get<Accepted>(typedInto(raft(), 0, Entry::magnitude, QString::fromUtf8(typed)))
            .understood;
    };
    EXPECT_EQ(said("1,234,567"), QStringLiteral("1,234,567 = 1234567 N"));
    EXPECT_EQ(said("1.234,5"), QStringLiteral("1.234,5 = 1234.5 N"));
    EXPECT_EQ(said("1,234.5 kN"), QStringLiteral("1,234.5 kN = 1234500 N"));
    EXPECT_EQ(said("2,5"), QString());
    EXPECT_EQ(said("2.500"), QString());
    EXPECT_EQ(said("0,2501"), QString());
}

TEST(TypedIntoACell, ACommaThatMayPartThousandsIsRefusedWithBothReadings) {
    for (const Entry cell : {Entry::magnitude, Entry::direction}) {
        const Outcome outcome = typedInto(raft(), 0, cell, QStringLiteral("2,500"));
        EXPECT_EQ(reason(outcome), QStringLiteral("2,500 may be 2.500 or 2500: write one of these"));
        EXPECT_EQ(std::get<Refused>(outcome).readings,
                  (QStringList{QStringLiteral("2.500"), QStringLiteral("2500")}));
    }
    EXPECT_TRUE(
        std::get<Refused>(typedInto(raft(), 0, Entry::magnitude, QStringLiteral("x"))).readings.isEmpty());
}

TEST(TypedIntoACell, AnAngleOfManyDigitsIsRefusedInAShortLine) {
    for (const QString& typed :
         {QStringLiteral("1e300"), QString(300, u'9'), QString(200, u'9') + QStringLiteral(" gon")})
        EXPECT_LT(reason(typedInto(raft(), 0, Entry::direction, typed)).size(), 100) << typed.toStdString();
}

TEST(PastedLines, AHeadingLineIsPassedOverAndACommaThatMayPartThousandsIsRefused) {
    const QString heading = QStringLiteral("Force\tMagnitude\tDirection\n");
    const Outcome pasted = withLinesAdded(raft(), heading + QStringLiteral("A\t1200\t30\nB\t90\t10\n"));
    EXPECT_EQ(taken(pasted).forces.size(), 4u);
    EXPECT_EQ(taken(pasted).forces[2].magnitude.value, 1200);
    EXPECT_EQ(reason(withLinesAdded(raft(), heading + QStringLiteral("A\t1,200\t30\nB\t90\t10\n"))),
              QStringLiteral("Line 2: 1,200 may be 1.200 or 1200: write one of these"));
    EXPECT_EQ(reason(withLinesAdded(raft(), QStringLiteral("A 90 10\nB 1,200 N 30"))),
              QStringLiteral("Line 2: 1,200 may be 1.200 or 1200: write one of these"));
    EXPECT_TRUE(reason(withLinesAdded(raft(), QStringLiteral("A\t1\t2\nForce\tx\ty")))
                    .startsWith(QStringLiteral("Line 2")));
}

TEST(PastedLines, WhoseSpacesPartTheFieldsInTwoWaysAreRefused) {
    // 250 at N E (north-east), or 250 N at E
    EXPECT_TRUE(
        reason(withLinesAdded(raft(), QStringLiteral("A 250 N E"))).contains(QStringLiteral("two ways")));
    EXPECT_EQ(taken(withLinesAdded(raft(), QStringLiteral("A\t250 N\tE"))).forces[2].direction.form,
              (Form{BearingForm{'N', 90, 'E'}}));
    // a fourth column is no part of the angle
    EXPECT_TRUE(reason(withLinesAdded(raft(), QStringLiteral("A 340 25 100")))
                    .contains(QStringLiteral("two numbers")));
    const Sketch after = taken(withLinesAdded(raft(), QStringLiteral("A 1 234 567")));
    EXPECT_EQ(after.forces[2].magnitude.value, 1234);
    EXPECT_EQ(after.forces[2].direction.form, (Form{AngleForm{567}}));
}

TEST(TypedIntoACell, ADirectionIsAnAngleASlopeOrABearing) {
    const auto form = [](const char* typed) {
        return taken(typedInto(raft(), 1, Entry::direction, QString::fromUtf8(typed)))
            .forces[1]
            .direction.form;
    };
    EXPECT_EQ(form("-35.5"), (Form{AngleForm{-35.5}}));
    EXPECT_EQ(form("\u221235,5"), (Form{AngleForm{-35.5}}));
    EXPECT_EQ(form("3:4"), (Form{SlopeForm{3, 4}}));
    EXPECT_EQ(form("N30E"), (Form{BearingForm{'N', 30, 'E'}}));
}

TEST(TypedIntoACell, AQuestionMarkOrNothingMakesItOneToFind) {
    for (const char* typed : {"?", ""}) {
        const Sketch after = taken(typedInto(raft(), 0, Entry::magnitude, QString::fromUtf8(typed)));
        EXPECT_FALSE(isGiven(after.forces[0].magnitude)) << '"' << typed << '"';
    }
}

TEST(TypedIntoACell, BlanksAloneLeaveTheValue) {
    EXPECT_EQ(taken(typedInto(raft(), 0, Entry::magnitude, QStringLiteral("  "))), raft());
}

TEST(TypedIntoACell, WhatCantBeReadIsRefusedWithAReason) {
    for (const char* typed : {"12..5", "1.2.3", "abc", "-40", "1e999", "340 apples"}) {
        EXPECT_FALSE(reason(typedInto(raft(), 0, Entry::magnitude, QString::fromUtf8(typed))).isEmpty())
            << typed;
    }
    EXPECT_FALSE(reason(typedInto(raft(), 0, Entry::name, QStringLiteral("Q"))).isEmpty());
    EXPECT_FALSE(reason(typedInto(raft(), 0, Entry::name, QString())).isEmpty());
}

TEST(TypedIntoACell, ANameThatWouldPrintLikeAnotherThingIsRefusedWithTheReason) {
    const Sketch sketch = taken(typedInto(raft(), 0, Entry::name, QStringLiteral("T1")));
    for (const char* name : {"T_1", "R_x", "\u03b8_R", "R_y"}) {
        const QString typed = QString::fromUtf8(name);
        const QString why = reason(typedInto(sketch, 1, Entry::name, typed));
        EXPECT_TRUE(why.contains(typed) && why.contains(QStringLiteral("give another name"))) << name;
    }
    EXPECT_EQ(taken(typedInto(sketch, 1, Entry::name, QStringLiteral("T_2"))).forces[1].name, "T_2");
    Sketch alike = sketch; // as a file may hold it: told apart in print, and left alone
    alike.forces[1].name = "T_1";
    EXPECT_EQ(taken(typedInto(alike, 1, Entry::name, QStringLiteral("T_1"))), alike);
    const Sketch pasted = taken(withLinesAdded(sketch, QStringLiteral("R_x\t120\t45\n")));
    EXPECT_EQ(pasted.forces.back().name, "R_x");
}

TEST(TypedIntoACell, ARenamedForceStaysTheOneAskedToBeSmallest) {
    Sketch sketch = raft();
    sketch.forces[1].magnitude = {};
    sketch.forces[1].direction = {};
    sketch.sum.direction.form = AngleForm{0};
    sketch.smallest = sketch.forces[1].name;
    ASSERT_FALSE(firstFault(sketch));
    EXPECT_EQ(taken(typedInto(sketch, 1, Entry::name, QStringLiteral("T"))).smallest, "T");
}

TEST(Toggling, GivesTheFoundValueToTheShownDigitsAndTakesItBack) {
    const Sketch magnitude = toggled(resultOf(raft()), kSumIndex, Entry::magnitude);
    EXPECT_EQ(magnitude.sum.magnitude.value, 520);
    const Sketch both = toggled(resultOf(magnitude), kSumIndex, Entry::direction);
    EXPECT_EQ(both.sum.direction.form, (Form{AngleForm{-3.6}}));
    const Sketch direction = toggled(resultOf(both), kSumIndex, Entry::magnitude);
    EXPECT_FALSE(isGiven(direction.sum.magnitude));
}

TEST(PastedLines, TabsAndSpacesAndUnitsAreRead) {
    const QString lines = QStringLiteral("S\t1.2 kN\t30\r\nT 250 N -15\n\nU 1 250 N30E\nV ? 90\n");
    const Sketch after = taken(withLinesAdded(raft(), lines));
    ASSERT_EQ(after.forces.size(), 6u);
    EXPECT_EQ(after.forces[2].name, "S");
    EXPECT_DOUBLE_EQ(*after.forces[2].magnitude.value, 1200);
    EXPECT_DOUBLE_EQ(*after.forces[3].magnitude.value, 250);
    EXPECT_EQ(after.forces[3].direction.form, (Form{AngleForm{-15}}));
    EXPECT_DOUBLE_EQ(*after.forces[4].magnitude.value, 1250);
    EXPECT_EQ(after.forces[4].direction.form, (Form{BearingForm{'N', 30, 'E'}}));
    EXPECT_FALSE(isGiven(after.forces[5].magnitude));
}

TEST(PastedLines, AnErrorNamesItsLineAndNothingIsAdded) {
    struct Case {
        const char *lines, *line;
    };
    for (const Case& each : {Case{"S 100 0\nT 1.2.3 10\nU 5 5", "Line 2: "}, Case{"\n\nS 100", "Line 3: "},
                             Case{"P 100 0", "Line 1: "}, Case{"S 100 0\nS 200 0", "Line 2: "},
                             Case{"R 100 0", "Line 1: "}, Case{"S\t100\t0\t7", "Line 1: "}}) {
        const QString why = reason(withLinesAdded(raft(), QString::fromUtf8(each.lines)));
        EXPECT_TRUE(why.startsWith(QLatin1String(each.line))) << each.lines << ": " << why.toStdString();
    }
    EXPECT_FALSE(reason(withLinesAdded(raft(), QStringLiteral(" \n"))).isEmpty());
}

TEST(PastedLines, ComeOutAsTheyWentIn) {
    Sketch sketch = raft();
    sketch.forces[0].direction.form = SlopeForm{3, -4};
    sketch.forces[1].magnitude.value = 275.125;
    Sketch bare = raft();
    bare.forces.clear();
    const Sketch again = taken(withLinesAdded(bare, asLines(sketch, {0, 1})));
    EXPECT_EQ(again.forces, sketch.forces);
    EXPECT_EQ(asLines(sketch, {kSumIndex}), QStringLiteral("R\t?\t?\n"));
}

TEST(PastedLines, TenThousandAreTakenAndOneMoreIsRefused) {
    QString lines;
    for (int i = 1; i <= 10'000; ++i) {
        lines += QStringLiteral("F%1 %2 %3\n").arg(i).arg(i).arg(i % 360);
    }
    Sketch bare = raft();
    bare.forces.clear();
    EXPECT_EQ(taken(withLinesAdded(bare, lines)).forces.size(), 10'000u);
    EXPECT_FALSE(reason(withLinesAdded(bare, lines + QStringLiteral("G 1 1\n"))).isEmpty());
}

TEST(Units, AForceIsKeptAndComesBackWithoutDust) {
    for (ForceUnit unit : kSheetForceUnits) {
        const Sketch there = withForceUnit(raft(), unit, Numbers::convert);
        EXPECT_EQ(there.forceUnit, unit);
        EXPECT_NEAR(*there.forces[0].magnitude.value * newtonsPer(unit), 340, 1e-9);
        EXPECT_EQ(withForceUnit(there, ForceUnit::N, Numbers::convert), raft()) << symbolOf(unit);
    }
    const Sketch kept = withForceUnit(raft(), ForceUnit::kip, Numbers::keep);
    EXPECT_EQ(*kept.forces[0].magnitude.value, 340);
    EXPECT_EQ(kept.forceUnit, ForceUnit::kip);
}

TEST(Units, AnglesAreKeptAndComeBackWithoutDust) {
    Sketch sketch = raft();
    sketch.forces[0].direction.form = AngleForm{25.1};
    for (AngleUnit unit : kAngleUnits) {
        const Sketch there = withAngleUnit(sketch, unit, Numbers::convert);
        EXPECT_EQ(withAngleUnit(there, AngleUnit::deg, Numbers::convert), sketch) << nameOf(unit);
    }
}

TEST(Axis, AChangeKeepsTheForcesWhereTheyAre) {
    for (double degrees : {0.0, 90.0, 180.0, 270.0, 35.0}) {
        for (Sense sense : {Sense::ccw, Sense::cw}) {
            const Sketch there = withReference(raft(), {degrees, sense}, Numbers::convert);
            const auto before = unitVector(raft().forces[1].direction, raft());
            const auto after = unitVector(there.forces[1].direction, there);
            ASSERT_TRUE(before && after);
            EXPECT_NEAR(static_cast<double>(before->cos), static_cast<double>(after->cos), 1e-15);
            EXPECT_NEAR(static_cast<double>(before->sin), static_cast<double>(after->sin), 1e-15);
            EXPECT_EQ(withReference(there, raft().reference, Numbers::convert), raft()) << degrees;
        }
    }
    const Sketch north = withReference(raft(), {90, Sense::cw}, Numbers::convert);
    EXPECT_EQ(north.forces[0].direction.form, (Form{AngleForm{65}}));
    EXPECT_EQ(withReference(raft(), {90, Sense::cw}, Numbers::keep).forces[0].direction.form,
              (Form{AngleForm{25}}));
}

TEST(Questions, TheEquilibrantIsOneMoreForceAgainstTheResultant) {
    const Result balanced = resultOf(askingEquilibrant(resultOf(raft())));
    ASSERT_EQ(balanced.sketch.forces.size(), 3u);
    ASSERT_EQ(balanced.solved.status, Status::unique);
    const SolvedForce& found = balanced.solved.solutions[0].forces[2];
    EXPECT_EQ(roundedToFigures(found.magnitude, 3), 520);
    EXPECT_NEAR(*found.direction, 176.4, 0.05);
}

TEST(Questions, ResolvingAlongTwoLinesFindsTheForcesThatMadeTheResultant) {
    const auto asked = askingComponents(resultOf(raft()));
    ASSERT_TRUE(asked);
    const Result resolved = resultOf(*asked);
    ASSERT_EQ(resolved.solved.status, Status::unique);
    EXPECT_NEAR(resolved.solved.solutions[0].forces[0].magnitude, 340, 1);
    EXPECT_NEAR(resolved.solved.solutions[0].forces[1].magnitude, 275, 1);
    EXPECT_FALSE(askingComponents(resultOf(emptySketch())));
}

TEST(Questions, TheSmallestForceStandsAcrossTheResultant) {
    const auto asked = askingSmallest(resultOf(raft()), 1);
    ASSERT_TRUE(asked);
    ASSERT_FALSE(firstFault(*asked)) << firstFault(*asked)->message;
    const Result least = resultOf(*asked);
    ASSERT_EQ(least.solved.solutions.size(), 1u);
    EXPECT_NEAR(*least.solved.solutions[0].forces[1].direction, -93.6, 1e-9);
    EXPECT_FALSE(askingSmallest(resultOf(raft()), kSumIndex));
}

TEST(Questions, AtRestTheSmallestStandsBesideAForceThatHasOnlyItsMagnitudeToFind) {
    using namespace testing;
    const Sketch held = balanced({force("W", 12, -90), force("A", kToFind, 50), force("B", kToFind, 120)});
    const auto asked = askingSmallest(resultOf(held), 2);
    ASSERT_TRUE(asked);
    EXPECT_EQ(asked->smallest, "B");
    EXPECT_FALSE(isGiven(asked->forces[1].magnitude));
    const Solved solved = solve(*asked);
    ASSERT_EQ(solved.solutions.size(), 1U);
    EXPECT_NEAR(solved.solutions[0].forces[2].magnitude, 7.71345131623847187, 1e-14); // 12 cos 50
    EXPECT_FALSE(askingSmallest(resultOf(balanced({force("W", 12, -90), force("B", kToFind, kToFind)})), 1))
        << "no other force has a magnitude to find";
}

TEST(Questions, TheResultantIsAskedAgainWithTheFoundForceGiven) {
    const Result balanced = resultOf(askingEquilibrant(resultOf(raft())));
    const Sketch again = askingResultant(balanced);
    EXPECT_EQ(again.forces[2].magnitude.value, 520);
    EXPECT_FALSE(isGiven(again.sum.magnitude));
    EXPECT_FALSE(again.smallest);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
