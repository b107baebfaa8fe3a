// SPDX-License-Identifier: MIT
#include "core/sketch/sketch.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>
#include <set>

namespace tailpoint::testing {
namespace TAILPOINT_FILE {

Sketch raft() {
    return sketch({force("P", 340, 25), force("Q", 275, -40), force("S", 100, 90)});
}

TEST(ASoundSketch, HasNoFault) {
    EXPECT_FALSE(firstFault(emptySketch()));
    EXPECT_FALSE(firstFault(raft()));
    EXPECT_FALSE(firstFault(
        balanced({slope("P", 3, 3, -4), bearing("Q", kToFind, 'S', 90, 'W'), force("Größe", 0, 0)})));
    EXPECT_FALSE(firstFault(smallest(sketch({force("P", 340, 25), force("Q", kToFind, kToFind)}), "Q")));
    EXPECT_FALSE(firstFault(sketch({force("P", 1e150, 1e10), force("Q", 1e-150, -1e10)})));
}

using enum FaultCode;

struct Row {
    FaultCode code;
    const char* place;
    const char* words; ///< a part of the message: what is wrong, or the mend
    std::function<void(Sketch&)> damage;
};

const double kInfinite = std::numeric_limits<double>::infinity();
const double kNoNumber = std::numeric_limits<double>::quiet_NaN();

void putCase(Sketch& s, std::string name, std::vector<CaseChange> changes = {}) {
    s.cases.push_back({std::move(name), std::move(changes)});
}
CaseChange size(std::string of, std::optional<double> magnitude) {
    return {std::move(of), Magnitude{magnitude, {}}, {}};
}

const Row kRows[] = {
    {negative, "forces[2].magnitude", "turn the direction round",
     [](Sketch& s) { s.forces[2].magnitude.value = -5; }},
    {notFinite, "forces[2].magnitude", "finite", [](Sketch& s) { s.forces[2].magnitude.value = kNoNumber; }},
    {notFinite, "forces[0].magnitude", "finite", [](Sketch& s) { s.forces[0].magnitude.value = kInfinite; }},
    {magnitudeOutOfRange, "forces[0].magnitude", "1e150",
     [](Sketch& s) { s.forces[0].magnitude.value = 1.1e150; }},
    {magnitudeOutOfRange, "forces[0].magnitude", "1e-150",
     [](Sketch& s) { s.forces[0].magnitude.value = 9e-151; }},
    {magnitudeOutOfRange, "forces[1].magnitude", "1e-150",
     [](Sketch& s) { s.forces[1].magnitude.value = 4e-324; }},
    {negative, "sum.magnitude", "turn the direction round", [](Sketch& s) { s.sum.magnitude.value = -1; }},
    {notFinite, "forces[1].direction", "finite",
     [](Sketch& s) { s.forces[1].direction.form = AngleForm{kNoNumber}; }},
    {slopeWithoutDirection, "forces[1].direction", "points nowhere",
     [](Sketch& s) {
         s.forces[1].direction.form = SlopeForm{0, 0};
     }},
    {slopeOutOfRange, "forces[1].direction", "run and rise",
     [](Sketch& s) {
         s.forces[1].direction.form = SlopeForm{kInfinite, 1};
     }},
    {slopeOutOfRange, "forces[1].direction", "run and rise",
     [](Sketch& s) {
         s.forces[1].direction.form = SlopeForm{1, 1e151};
     }},
    {bearingAngle, "forces[1].direction", "0 to 90",
     [](Sketch& s) {
         s.forces[1].direction.form = BearingForm{'N', 91, 'E'};
     }},
    {bearingAngle, "forces[1].direction", "0 to 90",
     [](Sketch& s) {
         s.forces[1].direction.form = BearingForm{'N', kNoNumber, 'E'};
     }},
    {bearingLetters, "forces[1].direction", "N30E",
     [](Sketch& s) {
         s.forces[1].direction.form = BearingForm{'E', 30, 'N'};
     }},
    {angleTooLarge, "forces[0].direction", "1e+300 is beyond 1e10",
     [](Sketch& s) { s.forces[0].direction.form = AngleForm{1e300}; }},
    {toleranceTooLarge, "forces[0].direction.plusMinus", "more than 10000000000",
     [](Sketch& s) { s.forces[0].direction.tolerance = plusMinus(1e11); }},
    {angleTooLarge, "reference.axis", "-1e+300 is beyond 1e10",
     [](Sketch& s) { s.reference.axisDegrees = -1e300; }},
    {notFinite, "sum.direction", "finite", [](Sketch& s) { s.sum.direction.form = AngleForm{-kInfinite}; }},
    {toleranceNotPositive, "forces[0].magnitude.plusMinus", "above 0",
     [](Sketch& s) { s.forces[0].magnitude.tolerance = plusMinus(0); }},
    {toleranceNotPositive, "forces[0].magnitude.plus", "above 0",
     [](Sketch& s) { s.forces[0].magnitude.tolerance = plusMinus(kNoNumber); }},
    {toleranceNotPositive, "forces[0].direction.plusMinus", "above 0",
     [](Sketch& s) { s.forces[0].direction.tolerance = plusMinus(-1); }},
    {toleranceWithoutValue, "sum.magnitude.plusMinus", "needs a given value",
     [](Sketch& s) { s.sum.magnitude.tolerance = plusMinus(5); }},
    {toleranceWithoutValue, "sum.direction.plusMinus", "needs a given value",
     [](Sketch& s) { s.sum.direction.tolerance = plusMinus(5); }},
    {toleranceNotPositive, "forces[0].magnitude.plus", "above 0",
     [](Sketch& s) {
         s.forces[0].magnitude.tolerance = Tolerance{5, -1, false};
     }},
    {toleranceTooLarge, "forces[0].magnitude.plus", "more than 1e+150",
     [](Sketch& s) {
         s.forces[0].magnitude.tolerance = Tolerance{1e151, 0, false};
     }},
    {toleranceUneven, "forces[0].magnitude.plusMinusPercent", "the same both ways",
     [](Sketch& s) {
         s.forces[0].magnitude.tolerance = Tolerance{5, 0, true};
     }},
    {toleranceOfNoNumber, "forces[0].direction.plusMinusPercent", "no percentage",
     [](Sketch& s) {
         s.forces[0].direction = {SlopeForm{3, 4}, plusMinusPercent(5)};
     }},
    {toleranceOfNoNumber, "forces[0].direction.plusMinusPercent", "no percentage",
     [](Sketch& s) {
         s.forces[0].direction = {BearingForm{'N', 30, 'E'}, plusMinusPercent(5)};
     }},
    {limitOutOfRange, "forces[0].limit", "above 0",
     [](Sketch& s) {
         s.forces[0].limit = TypedForce{0, ForceUnit::kN, {}};
     }},
    {limitOutOfRange, "sum.limit", "above 0",
     [](Sketch& s) {
         s.sum.limit = TypedForce{-1, MassUnit::t, {}};
     }},
    {limitOutOfRange, "forces[0].limit", "up to 1e150",
     [](Sketch& s) {
         s.forces[0].limit = TypedForce{1e149, ForceUnit::kN, {}};
     }},
    {limitOutOfRange, "forces[0].limit", "above 0",
     [](Sketch& s) {
         s.forces[0].limit = TypedForce{kNoNumber, ForceUnit::N, {}};
     }},
    {limitWithTolerance, "forces[0].limit", "no tolerance",
     [](Sketch& s) {
         s.forces[0].limit = TypedForce{10, ForceUnit::N, plusMinus(1)};
     }},
    {permittedOutOfRange, "forces[1].permitted.within", "above 0",
     [](Sketch& s) {
         s.forces[1].permitted = Permitted{90, 0};
     }},
    {permittedOutOfRange, "forces[1].permitted.within", "up to a half turn (180.0°)",
     [](Sketch& s) {
         s.forces[1].permitted = Permitted{90, 180.5};
     }},
    {angleTooLarge, "forces[1].permitted.axis", "beyond 1e10",
     [](Sketch& s) {
         s.forces[1].permitted = Permitted{1e11, 20};
     }},
    {gravityOutOfRange, "gravity", "0 is outside 0.01 to 100", [](Sketch& s) { s.gravity = 0; }},
    {gravityOutOfRange, "gravity", "101 is outside", [](Sketch& s) { s.gravity = 101; }},
    {gravityOutOfRange, "gravity", "9.80665 is the standard", [](Sketch& s) { s.gravity = kNoNumber; }},
    {nameLength, "forces[0].name", "1 to 16 characters", [](Sketch& s) { s.forces[0].name = ""; }},
    {nameLength, "forces[0].name", "this one has 17",
     [](Sketch& s) { s.forces[0].name = "12345678901234567"; }},
    {unprintable, "forces[0].name", "printed", [](Sketch& s) { s.forces[0].name = "a\nb"; }},
    {unprintable, "forces[0].name", "printed", [](Sketch& s) { s.forces[0].name = "\xFF"; }},
    {nameBlank, "forces[0].name", "blank", [](Sketch& s) { s.forces[0].name = "  "; }},
    {nameTaken, "forces[2].name", "'P' is taken", [](Sketch& s) { s.forces[2].name = "P"; }},
    {nameTaken, "sum.name", "'Q' is the name of a force", [](Sketch& s) { s.sum.name = "Q"; }},
    {nameLength, "sum.name", "1 to 16 characters", [](Sketch& s) { s.sum.name = ""; }},
    {smallestUnknown, "smallest", "'Z' is neither a force nor the sum", [](Sketch& s) { s.smallest = "Z"; }},
    {unprintable, "title", "printed", [](Sketch& s) { s.title = "a\x01"; }},
    {titleTooLong, "title", "up to 500 characters, this one has 501",
     [](Sketch& s) { s.title.assign(501, 'a'); }},
    {notFinite, "reference.axis", "finite", [](Sketch& s) { s.reference.axisDegrees = kInfinite; }},
    {figuresOutOfRange, "figures", "1 to 12", [](Sketch& s) { s.figures = 0; }},
    {figuresOutOfRange, "figures", "1 to 12", [](Sketch& s) { s.figures = 13; }},
    {angleDecimalsOutOfRange, "angleDecimals", "0 to 8", [](Sketch& s) { s.angleDecimals = -1; }},
    {angleDecimalsOutOfRange, "angleDecimals", "0 to 8", [](Sketch& s) { s.angleDecimals = 9; }},
    {labelTooFar, "forces[0].label", "further than 10000",
     [](Sketch& s) {
         s.forces[0].label = LabelPin{20000, 0};
     }},
    {ownUnitDiffers, "forces[0].magnitude.unit", "is not the value beside it",
     [](Sketch& s) {
         s.forces[0].magnitude.typed = TypedForce{5, ForceUnit::kN, {}};
     }},
    {ownUnitDiffers, "forces[0].direction.unit", "is not the value beside it",
     [](Sketch& s) {
         s.forces[0].direction.form = AngleForm{25, TypedAngle{25, AngleUnit::gon, {}}};
     }},
    {nameLength, "cases[0].name", "1 to 24 characters, this one has 25",
     [](Sketch& s) { putCase(s, std::string(25, 'a')); }},
    {nameLength, "cases[1].name", "this one has 0",
     [](Sketch& s) {
         putCase(s, "calm");
         putCase(s, "");
     }},
    {nameBlank, "cases[0].name", "storm", [](Sketch& s) { putCase(s, "  "); }},
    {unprintable, "cases[0].name", "printed", [](Sketch& s) { putCase(s, "a\tb"); }},
    {caseNameTaken, "cases[1].name", "'calm' is taken",
     [](Sketch& s) {
         putCase(s, "calm");
         putCase(s, "calm");
     }},
    {caseNameTaken, "cases[0].name", "the sketch without a case", [](Sketch& s) { putCase(s, "as drawn"); }},
    {caseOfUnknown, "cases[0].changes.Z", "'Z' is neither a force nor the sum",
     [](Sketch& s) { putCase(s, "storm", {size("Z", 5)}); }},
    {caseChangesTwice, "cases[0].changes.P", "keep one of the two",
     [](Sketch& s) {
         putCase(s, "storm", {size("P", 5), size("Q", 5), size("P", 6)});
     }},
    {caseChangesNothing, "cases[0].changes.P", "give a magnitude or a direction",
     [](Sketch& s) {
         putCase(s, "storm", {{"P", {}, {}}});
     }},
    {caseChangesToFind, "cases[0].changes.R.magnitude", "to find in the sketch",
     [](Sketch& s) { putCase(s, "storm", {size("R", 5)}); }},
    {caseChangesToFind, "cases[0].changes.P.magnitude", "to find in this case",
     [](Sketch& s) { putCase(s, "storm", {size("P", std::nullopt)}); }},
    {caseMovesRest, "cases[0].changes.R.magnitude", "in every case or in none",
     [](Sketch& s) {
         s.sum = force("R", 0, 0);
         putCase(s, "storm", {size("R", 5)});
     }},
    {negative, "cases[0].changes.P.magnitude", "turn the direction round",
     [](Sketch& s) { putCase(s, "storm", {size("P", -5)}); }},
    {tooManyCases, "cases", "101 cases",
     [](Sketch& s) {
         for (int i = 0; i < 101; ++i)
             putCase(s, "case " + std::to_string(i));
     }},
    {tooManyForces, "forces", "10001 forces",
     [](Sketch& s) { s.forces.assign(kMostForces + 1, s.forces[0]); }},
};

TEST(EveryFault, IsNamedWithItsPlaceAndItsMendInOneLine) {
    for (const Row& row : kRows) {
        Sketch damaged = raft();
        row.damage(damaged);
        const std::optional<SketchFault> fault = firstFault(damaged);
        ASSERT_TRUE(fault) << row.place << ": " << row.words;
        EXPECT_EQ(fault->code, row.code) << row.place << ": " << row.words;
        EXPECT_EQ(fault->place, row.place);
        EXPECT_NE(fault->message.find(row.words), std::string::npos) << fault->message;
        EXPECT_EQ(fault->message.find('\n'), std::string::npos);
    }
}

TEST(EveryFault, IsMet) {
    std::set<FaultCode> met;
    for (const Row& row : kRows)
        met.insert(row.code);
    EXPECT_EQ(met.size(), kFaultCodes);
}

TEST(AName, MayHave16CharactersOfSeveralBytesEach) {
    Sketch named = raft();
    named.forces[0].name = "αβγδεζηθικλμνξοπ";
    EXPECT_FALSE(firstFault(named));
    named.forces[0].name += "ρ";
    EXPECT_TRUE(firstFault(named));
}

TEST(TenThousandForces, AreCheckedAndTaken) {
    Sketch many = emptySketch();
    for (std::size_t i = 0; i < kMostForces; ++i) {
        many.forces.push_back(force("F" + std::to_string(i), 1, static_cast<double>(i)));
    }
    EXPECT_FALSE(firstFault(many));
    many.forces.back().name = "F0";
    ASSERT_TRUE(firstFault(many));
    EXPECT_EQ(firstFault(many)->place, "forces[9999].name");
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::testing
