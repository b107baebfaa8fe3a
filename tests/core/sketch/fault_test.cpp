#include "core/sketch/sketch.h"

#include "tests/support/sketches.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>

namespace tailpoint::testing {
namespace {

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

struct Row {
    const char* place;
    const char* words; ///< a part of the message: what is wrong, or the mend
    std::function<void(Sketch&)> damage;
};

const double kInfinite = std::numeric_limits<double>::infinity();
const double kNoNumber = std::numeric_limits<double>::quiet_NaN();

const Row kRows[] = {
    {"forces[2].magnitude", "turn the direction round", [](Sketch& s) { s.forces[2].magnitude.value = -5; }},
    {"forces[2].magnitude", "finite", [](Sketch& s) { s.forces[2].magnitude.value = kNoNumber; }},
    {"forces[0].magnitude", "finite", [](Sketch& s) { s.forces[0].magnitude.value = kInfinite; }},
    {"forces[0].magnitude", "1e150", [](Sketch& s) { s.forces[0].magnitude.value = 1.1e150; }},
    {"forces[0].magnitude", "1e-150", [](Sketch& s) { s.forces[0].magnitude.value = 9e-151; }},
    {"forces[1].magnitude", "1e-150", [](Sketch& s) { s.forces[1].magnitude.value = 4e-324; }},
    {"sum.magnitude", "turn the direction round", [](Sketch& s) { s.sum.magnitude.value = -1; }},
    {"forces[1].direction", "finite", [](Sketch& s) { s.forces[1].direction.form = AngleForm{kNoNumber}; }},
    {"forces[1].direction", "points nowhere",
     [](Sketch& s) {
         s.forces[1].direction.form = SlopeForm{0, 0};
     }},
    {"forces[1].direction", "run and rise",
     [](Sketch& s) {
         s.forces[1].direction.form = SlopeForm{kInfinite, 1};
     }},
    {"forces[1].direction", "run and rise",
     [](Sketch& s) {
         s.forces[1].direction.form = SlopeForm{1, 1e151};
     }},
    {"forces[1].direction", "0 to 90",
     [](Sketch& s) {
         s.forces[1].direction.form = BearingForm{'N', 91, 'E'};
     }},
    {"forces[1].direction", "0 to 90",
     [](Sketch& s) {
         s.forces[1].direction.form = BearingForm{'N', kNoNumber, 'E'};
     }},
    {"forces[1].direction", "N30E",
     [](Sketch& s) {
         s.forces[1].direction.form = BearingForm{'E', 30, 'N'};
     }},
    {"forces[0].direction", "1e+300 is beyond 1e10",
     [](Sketch& s) { s.forces[0].direction.form = AngleForm{1e300}; }},
    {"forces[0].direction.plusMinus", "more than 10000000000",
     [](Sketch& s) { s.forces[0].direction.plusMinus = 1e11; }},
    {"reference.axis", "-1e+300 is beyond 1e10", [](Sketch& s) { s.reference.axisDegrees = -1e300; }},
    {"sum.direction", "finite", [](Sketch& s) { s.sum.direction.form = AngleForm{-kInfinite}; }},
    {"forces[0].magnitude.plusMinus", "above 0", [](Sketch& s) { s.forces[0].magnitude.plusMinus = 0; }},
    {"forces[0].magnitude.plusMinus", "above 0",
     [](Sketch& s) { s.forces[0].magnitude.plusMinus = kNoNumber; }},
    {"forces[0].direction.plusMinus", "above 0", [](Sketch& s) { s.forces[0].direction.plusMinus = -1; }},
    {"sum.magnitude.plusMinus", "needs a given value", [](Sketch& s) { s.sum.magnitude.plusMinus = 5; }},
    {"sum.direction.plusMinus", "needs a given value", [](Sketch& s) { s.sum.direction.plusMinus = 5; }},
    {"forces[0].name", "1 to 16 characters", [](Sketch& s) { s.forces[0].name = ""; }},
    {"forces[0].name", "this one has 17", [](Sketch& s) { s.forces[0].name = "12345678901234567"; }},
    {"forces[0].name", "printed", [](Sketch& s) { s.forces[0].name = "a\nb"; }},
    {"forces[0].name", "printed", [](Sketch& s) { s.forces[0].name = "\xFF"; }},
    {"forces[0].name", "blank", [](Sketch& s) { s.forces[0].name = "  "; }},
    {"forces[2].name", "'P' is taken", [](Sketch& s) { s.forces[2].name = "P"; }},
    {"sum.name", "'Q' is the name of a force", [](Sketch& s) { s.sum.name = "Q"; }},
    {"sum.name", "1 to 16 characters", [](Sketch& s) { s.sum.name = ""; }},
    {"smallest", "'Z' is neither a force nor the sum", [](Sketch& s) { s.smallest = "Z"; }},
    {"title", "printed", [](Sketch& s) { s.title = "a\x01"; }},
    {"title", "up to 500 characters, this one has 501", [](Sketch& s) { s.title.assign(501, 'a'); }},
    {"reference.axis", "finite", [](Sketch& s) { s.reference.axisDegrees = kInfinite; }},
    {"figures", "1 to 12", [](Sketch& s) { s.figures = 0; }},
    {"figures", "1 to 12", [](Sketch& s) { s.figures = 13; }},
    {"angleDecimals", "0 to 8", [](Sketch& s) { s.angleDecimals = -1; }},
    {"angleDecimals", "0 to 8", [](Sketch& s) { s.angleDecimals = 9; }},
    {"forces", "10001 forces", [](Sketch& s) { s.forces.assign(kMostForces + 1, s.forces[0]); }},
};

TEST(EveryFault, IsNamedWithItsPlaceAndItsMendInOneLine) {
    for (const Row& row : kRows) {
        Sketch damaged = raft();
        row.damage(damaged);
        const std::optional<SketchFault> fault = firstFault(damaged);
        ASSERT_TRUE(fault) << row.place << ": " << row.words;
        EXPECT_EQ(fault->place, row.place);
        EXPECT_NE(fault->message.find(row.words), std::string::npos) << fault->message;
        EXPECT_EQ(fault->message.find('\n'), std::string::npos);
    }
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

} // namespace
} // namespace tailpoint::testing
