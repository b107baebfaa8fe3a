// What typing, toggling, pasting and changing units make of a sketch: no widgets.
#include "panel_support.h"

#include "core/quantity/decimals.h"
#include "ui/document/given_edits.h"
#include "ui/document/sheet_edits.h"

namespace tailpoint::test {
namespace {

Sketch taken(const Outcome& outcome) {
    const auto* accepted = std::get_if<Taken>(&outcome);
    EXPECT_TRUE(accepted) << std::get<NotTaken>(outcome).message.toStdString();
    return accepted ? accepted->sketch : emptySketch();
}

QString reason(const Outcome& outcome) {
    const auto* refused = std::get_if<NotTaken>(&outcome);
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
    EXPECT_EQ(std::get<Taken>(pounds).understood, QStringLiteral("75 lbf = 334 N"));
    EXPECT_TRUE(
        std::get<Taken>(typedInto(raft(), 0, Entry::magnitude, QStringLiteral("340"))).understood.isEmpty());
}

TEST(TypedIntoACell, ACommaThatLooksLikeGroupingIsEchoed) {
    const auto said = [](const char* typed) {
        return std::get<Taken>(typedInto(raft(), 0, Entry::magnitude, QString::fromUtf8(typed))).understood;
    };
    EXPECT_EQ(said("2,500"), QStringLiteral("2,500 = 2.50 N: a comma is the decimal mark"));
    EXPECT_EQ(said("2,5"), QString());
    EXPECT_EQ(said("2.500"), QString());
    EXPECT_EQ(said("0,2501"), QString());
}

TEST(PastedLines, AHeadingLineIsPassedOverAndAGroupingCommaIsTold) {
    const Outcome pasted =
        withLinesAdded(raft(), QStringLiteral("Force\tMagnitude\tDirection\nA\t1,200\t30\nB\t90\t10\n"));
    EXPECT_EQ(taken(pasted).forces.size(), 4u);
    EXPECT_EQ(taken(pasted).forces[2].magnitude.value, 1.2);
    EXPECT_EQ(std::get<Taken>(pasted).understood,
              QStringLiteral("2 forces added (1,200 = 1.20 N: a comma is the decimal mark)"));
    EXPECT_TRUE(reason(withLinesAdded(raft(), QStringLiteral("A\t1\t2\nForce\tx\ty")))
                    .startsWith(QStringLiteral("Line 2")));
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
    Result result = resultOf(raft());
    result = resultOf(toggled(result, kSumIndex, Entry::magnitude));
    EXPECT_EQ(result.sketch.sum.magnitude.value, 520);
    result = resultOf(toggled(result, kSumIndex, Entry::direction));
    EXPECT_EQ(result.sketch.sum.direction.form, (Form{AngleForm{-3.6}}));
    result = resultOf(toggled(result, kSumIndex, Entry::magnitude));
    EXPECT_FALSE(isGiven(result.sketch.sum.magnitude));
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
    for (ForceUnit unit : kForceUnits) {
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

TEST(Questions, TheResultantIsAskedAgainWithTheFoundForceGiven) {
    const Result balanced = resultOf(askingEquilibrant(resultOf(raft())));
    const Sketch again = askingResultant(balanced);
    EXPECT_EQ(again.forces[2].magnitude.value, 520);
    EXPECT_FALSE(isGiven(again.sum.magnitude));
    EXPECT_FALSE(again.smallest);
}

} // namespace
} // namespace tailpoint::test
