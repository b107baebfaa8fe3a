// SPDX-License-Identifier: MIT
// What a sketch file may say, and what happens to one that says something else.
#include "ui/files/sketch_json.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

/// A whole sketch with `forces` and whatever else stands behind the sum.
std::string sketchWith(const std::string& forces, const std::string& rest = "") {
    return R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"}, "forces": [)" +
           forces + "]" + rest + "}";
}
const std::string kForceP = R"({"name": "P", "magnitude": 340, "direction": 25})";

Sketch read(const std::string& text) {
    const auto result = readSketch(QByteArray::fromStdString(text));
    if (const auto* error = std::get_if<FileError>(&result)) {
        ADD_FAILURE() << error->line().toStdString() << "\nin " << text;
        return emptySketch();
    }
    return std::get<Sketch>(result);
}

/// The one line of a refusal.
std::string refusal(const std::string& text) {
    const auto result = readSketch(QByteArray::fromStdString(text));
    const auto* error = std::get_if<FileError>(&result);
    return error ? error->line().toStdString() : "was read";
}

void expectIn(const std::string& part, const std::string& whole) {
    EXPECT_NE(whole.find(part), std::string::npos) << "'" << part << "' is not in '" << whole << "'";
}

TEST(ReadingASketch, TakesTheExampleOfTheFormat) {
    const Sketch sketch = read(R"({
  "format": "tailpoint-sketch", "version": 1,
  "title": "Survey raft on two lines",
  "units": { "force": "N", "angle": "deg" },
  "reference": { "axis": "+x", "sense": "ccw" },
  "figures": 3,
  "forces": [
    { "name": "P", "magnitude": 340, "direction": 25 },
    { "name": "Q", "magnitude": 275, "direction": -40 }
  ],
  "sum": { "name": "R", "magnitude": null, "direction": null }
})");
    EXPECT_EQ(sketch.title, "Survey raft on two lines");
    ASSERT_EQ(sketch.forces.size(), 2u);
    EXPECT_EQ(sketch.forces[1].name, "Q");
    EXPECT_EQ(sketch.forces[1].magnitude.value, 275.0);
    EXPECT_EQ(std::get<AngleForm>(sketch.forces[1].direction.form).value, -40.0);
    EXPECT_EQ(sketch.sum.name, "R");
    EXPECT_FALSE(isGiven(sketch.sum.magnitude));
    EXPECT_FALSE(isGiven(sketch.sum.direction));
}

TEST(ReadingASketch, AnAbsentSumIsAnUnknownResultantNamedR) {
    const Sketch sketch = read(sketchWith(kForceP));
    EXPECT_EQ(sketch.sum.name, "R");
    EXPECT_FALSE(isGiven(sketch.sum.magnitude));
    EXPECT_FALSE(isGiven(sketch.sum.direction));
}

TEST(ReadingASketch, TheSumTakesTheFirstFreeOfRST) {
    const auto named = [](const std::string& name) {
        return R"({"name": ")" + name + R"(", "magnitude": 1, "direction": 0})";
    };
    EXPECT_EQ(read(sketchWith(named("R"))).sum.name, "S");
    EXPECT_EQ(read(sketchWith(named("R") + "," + named("S"))).sum.name, "T");
    EXPECT_EQ(read(sketchWith(named("R"), R"(, "sum": {"magnitude": 0})")).sum.name, "S");
}

TEST(ReadingASketch, AZeroSumNeedsNoDirectionAndIsEquilibrium) {
    EXPECT_TRUE(isEquilibrium(read(sketchWith(kForceP, R"(, "sum": {"magnitude": 0})"))));
}

TEST(ReadingASketch, AnySumButZeroNeedsItsDirection) {
    const std::string line = refusal(sketchWith(kForceP, R"(, "sum": {"magnitude": 5})"));
    expectIn("sum.direction (line 1, column", line);
    expectIn("is missing", line);
    expectIn("is missing", refusal(sketchWith(kForceP, R"(, "sum": {"magnitude": null})")));
}

TEST(ReadingASketch, ADirectionMayBeASlopeOfRunAndRise) {
    const Sketch sketch =
        read(sketchWith(R"({"name": "P", "magnitude": 1, "direction": {"slope": [-3, 4]}})"));
    EXPECT_EQ(std::get<SlopeForm>(sketch.forces[0].direction.form), (SlopeForm{-3, 4}));
}

TEST(ReadingASketch, ADirectionMayBeABearing) {
    const auto bearing = [](const std::string& text) {
        const Sketch sketch =
            read(sketchWith(R"({"name": "P", "magnitude": 1, "direction": {"bearing": ")" + text + R"("}})"));
        const auto* form = std::get_if<BearingForm>(&sketch.forces.at(0).direction.form);
        return form ? *form : BearingForm{'?', 0, '?'};
    };
    EXPECT_EQ(bearing("N30E"), (BearingForm{'N', 30, 'E'}));
    EXPECT_EQ(bearing("S 12.5 W"), (BearingForm{'S', 12.5, 'W'}));
    EXPECT_EQ(bearing("N"), (BearingForm{'N', 0, 'E'}));
    EXPECT_EQ(bearing("S"), (BearingForm{'S', 0, 'E'}));
}

TEST(ReadingASketch, ValuesMayCarryATolerance) {
    const Sketch sketch = read(sketchWith(
        R"({"name": "P", "magnitude": {"value": 340, "plusMinus": 5}, "direction": {"slope": [3, 4], "plusMinus": 0.5}})"));
    EXPECT_EQ(sketch.forces[0].magnitude.value, 340.0);
    EXPECT_EQ(sketch.forces[0].magnitude.tolerance, plusMinus(5.0));
    EXPECT_EQ(sketch.forces[0].direction.tolerance, plusMinus(0.5));
}

TEST(ReadingASketch, NullIsAnUnknown) {
    const Sketch sketch = read(sketchWith(
        R"({"name": "P", "magnitude": null, "direction": 25}, {"name": "Q", "magnitude": 4, "direction": null})"));
    EXPECT_FALSE(isGiven(sketch.forces[0].magnitude));
    EXPECT_TRUE(isGiven(sketch.forces[0].direction));
    EXPECT_FALSE(isGiven(sketch.forces[1].direction));
}

TEST(ReadingASketch, EitherSenseIsALineOfActionAlone) {
    const Sketch sketch =
        read(sketchWith(R"({"name": "P", "magnitude": 1, "direction": 5, "sense": "either"})",
                        R"(, "sum": {"magnitude": null, "direction": 3, "sense": "either"})"));
    EXPECT_TRUE(sketch.forces[0].lineOfActionOnly);
    EXPECT_TRUE(sketch.sum.lineOfActionOnly);
}

TEST(ReadingASketch, TheCautionIsTrueOrNotAskedFor) {
    EXPECT_TRUE(read(sketchWith(kForceP, R"(, "caution": true)")).caution);
    EXPECT_FALSE(read(sketchWith(kForceP, R"(, "caution": false)")).caution);
    EXPECT_FALSE(read(sketchWith(kForceP)).caution);
    expectIn("caution (line 1, column", refusal(sketchWith(kForceP, R"(, "caution": "yes")")));
}

TEST(ReadingASketch, SmallestNamesAForceOrTheSumAndNullIsAsAbsent) {
    EXPECT_EQ(read(sketchWith(kForceP, R"(, "smallest": "P")")).smallest, "P");
    EXPECT_EQ(read(sketchWith(kForceP, R"(, "smallest": "R")")).smallest, "R");
    EXPECT_FALSE(read(sketchWith(kForceP, R"(, "smallest": null)")).smallest);
    expectIn("smallest (line 1, column", refusal(sketchWith(kForceP, R"(, "smallest": "X")")));
}

TEST(ReadingASketch, TheAxisHasANameOrIsANumberOfDegrees) {
    const auto axis = [](const std::string& text) {
        return read(sketchWith(kForceP, R"(, "reference": {"axis": )" + text + R"(, "sense": "cw"})"))
            .reference;
    };
    EXPECT_EQ(axis(R"("+x")"), (Reference{0, Sense::cw}));
    EXPECT_EQ(axis(R"("+y")"), (Reference{90, Sense::cw}));
    EXPECT_EQ(axis(R"("-x")"), (Reference{180, Sense::cw}));
    EXPECT_EQ(axis(R"("-y")"), (Reference{270, Sense::cw}));
    EXPECT_EQ(axis("33.5"), (Reference{33.5, Sense::cw}));
    expectIn("reference.axis", refusal(sketchWith(kForceP, R"(, "reference": {"axis": "x"})")));
}

TEST(ReadingASketch, AnyFiniteAngleIsTakenAsItStands) {
    const Sketch sketch = read(sketchWith(R"({"name": "P", "magnitude": 1, "direction": 7225.5})"));
    EXPECT_EQ(std::get<AngleForm>(sketch.forces[0].direction.form).value, 7225.5);
}

TEST(ReadingASketch, ZeroForcesAreAllowed) {
    EXPECT_EQ(read(sketchWith(R"({"name": "P", "magnitude": 0, "direction": 10})")).forces[0].magnitude.value,
              0.0);
    EXPECT_TRUE(read(sketchWith("")).forces.empty());
}

TEST(ReadingASketch, NamesHave1To16PrintableCharacters) {
    const auto named = [](const std::string& name) {
        return sketchWith(R"({"name": ")" + name + R"(", "magnitude": 1, "direction": 0})");
    };
    EXPECT_EQ(read(named("sixteen letters!")).forces[0].name, "sixteen letters!");
    EXPECT_EQ(read(named("äöüäöüäöüäöüäöüß")).forces[0].name, "äöüäöüäöüäöüäöüß");
    expectIn("forces[0].name", refusal(named("seventeen letters")));
    expectIn("forces[0].name", refusal(named("")));
    expectIn("forces[0].name", refusal(named("a\\u0007b")));
}

TEST(ReadingASketch, AByteOrderMarkIsPassedOver) {
    EXPECT_EQ(read("\xEF\xBB\xBF" + sketchWith(kForceP)).forces.size(), 1u);
    expectIn("line 1, column 2:", refusal("\xEF\xBB\xBF{x}"));
}

TEST(ReadingASketch, OneFigureMoreAfterAOneCanBeSet) {
    EXPECT_FALSE(read(sketchWith(kForceP)).moreAfterOne);
    EXPECT_TRUE(read(sketchWith(kForceP, R"(, "moreAfterOne": true)")).moreAfterOne);
    expectIn("moreAfterOne (line", refusal(sketchWith(kForceP, R"(, "moreAfterOne": 4)")));
}

TEST(ReadingASketch, DecimalsOfAnglesCanBeSet) {
    EXPECT_EQ(read(sketchWith(kForceP, R"(, "decimals": 3)")).angleDecimals, 3);
    expectIn("decimals (line", refusal(sketchWith(kForceP, R"(, "decimals": 99)")));
}

/// One refused file a row: what is wrong with it, its text, and what its line must say.
/// A sketch of P alone with a list of cases.
std::string withCases(const std::string& cases) {
    return sketchWith(kForceP, R"(, "cases": [)" + cases + "]");
}

TEST(ReadingASketch, ACaseGivesOtherValuesInEveryForm) {
    const Sketch sketch = read(withCases(
        R"({"name": "storm", "changes": {"P": {"magnitude": {"value": 60, "unit": "kg"}, "direction": {"slope": [3, 4]}}}})"));
    ASSERT_EQ(sketch.cases.size(), 1u);
    EXPECT_EQ(sketch.cases[0].name, "storm");
    ASSERT_EQ(sketch.cases[0].changes.size(), 1u);
    EXPECT_EQ(sketch.cases[0].changes[0].of, "P");
    // 60 kg at 9.80665 m/s2, by hand
    EXPECT_NEAR(sketch.cases[0].changes[0].magnitude->value.value(), 588.399, 1e-9);
    EXPECT_EQ(std::get<SlopeForm>(sketch.cases[0].changes[0].direction->form), (SlopeForm{3, 4}));
}

TEST(ReadingASketch, NoCasesAreNullOrAnEmptyList) {
    EXPECT_TRUE(read(withCases("")).cases.empty());
    EXPECT_TRUE(read(sketchWith(kForceP, R"(, "cases": null)")).cases.empty());
}

TEST(ReadingASketch, ACaseIsRefusedInOneLineThatSaysWhere) {
    const auto of = [](const std::string& changes) {
        return refusal(withCases(R"({"name": "storm", "changes": )" + changes + "}"));
    };
    expectIn("cases[0].changes.Z (line 1, column", of(R"({"Z": {"magnitude": 5}})"));
    expectIn("'Z' is neither a force nor the sum", of(R"({"Z": {"magnitude": 5}})"));
    expectIn("cases[0].changes.P.magnitude (line 1, column", of(R"({"P": {"magnitude": null}})"));
    expectIn("a case changes what is given alone", of(R"({"P": {"magnitude": null}})"));
    expectIn("cases[0].changes.R.magnitude (line 1, column", of(R"({"R": {"magnitude": 5}})"));
    expectIn("to find in the sketch", of(R"({"R": {"magnitude": 5}})"));
    expectIn("changes nothing", of(R"({"P": {}})"));
    expectIn("is a number; write what is other in the case", of(R"({"P": 5})"));
    expectIn("is a list; write what is other in the case", of(R"([])"));
    expectIn("\"direction\"", of(R"({"P": {"magnitude": 5, "directoin": 5}})"));
    expectIn("could change a number", of(R"({"P": {"magnitude": 5, "load": 5}})"));
    expectIn("write a list of cases", refusal(sketchWith(kForceP, R"(, "cases": {})")));
    expectIn("cases[0].name", refusal(withCases(R"({"changes": {}})")));
    expectIn("write what is other in the case, {} if nothing is", refusal(withCases(R"({"name": "storm"})")));
    expectIn("write \"changes\"", refusal(withCases(R"({"name": "storm", "change": {}})")));
    expectIn("cases[1].name (line 1",
             refusal(withCases(R"({"name": "a", "changes": {}}, {"name": "a", "changes": {}})")));
}

struct Refused {
    const char* name;
    std::string text, place, mend;
};

void PrintTo(const Refused& refused, std::ostream* out) {
    *out << refused.name;
}

class ARefusedSketch : public ::testing::TestWithParam<Refused> {};

TEST_P(ARefusedSketch, IsRefusedWithPlaceAndMendOnOneLine) {
    const std::string line = refusal(GetParam().text);
    expectIn(GetParam().place, line);
    expectIn(GetParam().mend, line);
    EXPECT_EQ(line.find('\n'), std::string::npos);
}

std::string force(const std::string& magnitude, const std::string& direction) {
    return sketchWith(R"({"name": "P", "magnitude": )" + magnitude + R"(, "direction": )" + direction + "}");
}

const Refused kRefused[] = {
    {"NotJson", "once upon a time", "line 1, column 1", "is no value"},
    {"Empty", "", "line 1, column 1", "empty"},
    {"OnlySpace", " \n ", "line 2, column 2", "empty"},
    {"BrokenOff", "{\n  \"format\": \"tailpoint-sketch\",\n  \"vers", "line 3, column 3",
     "no closing double quote"},
    {"BrokenOffAtComma", "{\"a\": 1,", "line 1, column 9", "ends too early"},
    {"CommaBeforeBrace", "{\n \"a\": 1,\n}", "line 2, column 8", "take it out"},
    {"CommaMissing", "{\"a\": 1 \"b\": 2}", "line 1, column 9", "a comma"},
    {"ColonMissing", "{\"a\" 1}", "line 1, column 6", "colon"},
    {"SingleQuotes", "{'a': 1}", "line 1, column 2", "double quotes"},
    {"Comment", "// mine\n{}", "line 1, column 1", "no comments"},
    {"TwoValues", "{} {}", "line 1, column 4", "follows the end"},
    {"NotANumber", force("NaN", "25"), "line 1, column 125", "no finite number"},
    {"MinusInfinity", force("-Infinity", "25"), "line 1, column 125", "no finite number"},
    {"TooLargeForADouble", force("1e999", "25"), "line 1, column 125", "beyond what a number can hold"},
    {"TooSmallForADouble", force("1e-999", "25"), "line 1, column 125", "beyond what a number can hold"},
    {"TooLargeForASketch", force("1e200", "25"), "forces[0].magnitude", "1e150"},
    {"LeadingZero", force("007", "25"), "line 1, column", "take the zero out"},
    {"DecimalComma", force("3,5", "25"), "line 1, column", "key in double quotes"},
    {"NumberAsText", force("\"340\"", "25"), "forces[0].magnitude (line 1, column 125)", "without quotes"},
    {"DirectionAsText", force("340", "\"25\""), "forces[0].direction", "without quotes"},
    {"NullAsText", force("\"null\"", "25"), "forces[0].magnitude", "null without quotes"},
    {"MagnitudeIsList", force("[340]", "25"), "forces[0].magnitude", "is a list; write a number"},
    {"MagnitudeIsTruth", force("true", "25"), "forces[0].magnitude", "is true or false; write a number"},
    {"NegativeMagnitude", force("-340", "25"), "forces[0].magnitude", "turn the direction round instead"},
    {"SlopeOfThree", force("1", R"({"slope": [1, 2, 3]})"), "forces[0].direction.slope", "[3, 4]"},
    {"SlopeOfText", force("1", R"({"slope": ["1", 2]})"), "forces[0].direction.slope[0]", "without quotes"},
    {"SlopeOfNothing", force("1", R"({"slope": [0, 0]})"), "forces[0].direction", "points nowhere"},
    {"BearingBeyond90", force("1", R"({"bearing": "N95E"})"), "forces[0].direction.bearing", "N30E"},
    {"BearingIsAnAngle", force("1", R"({"bearing": "25"})"), "forces[0].direction.bearing", "N30E"},
    {"TwoDirections", force("1", R"({"slope": [3, 4], "bearing": "N30E"})"), "forces[0].direction",
     "keep one"},
    {"NoDirection", force("1", R"({"plusMinus": 2})"), "forces[0].direction", "says no direction"},
    {"NegativeTolerance", force(R"({"value": 1, "plusMinus": -2})", "1"), "forces[0].magnitude.plusMinus",
     "above 0"},
    {"ToleranceOfUnknown", force(R"({"value": null, "plusMinus": 2})", "1"), "forces[0].magnitude.plusMinus",
     "give the value"},
    {"ValueMissing", force(R"({"plusMinus": 2})", "1"), "forces[0].magnitude.value", "is missing"},
    {"UnknownSense", sketchWith(R"({"name": "P", "magnitude": 1, "direction": 2, "sense": "both"})"),
     "forces[0].sense", "either"},
    {"NameMissing", sketchWith(R"({"magnitude": 1, "direction": 2})"), "forces[0].name", "is missing"},
    {"MagnitudeMissing", sketchWith(kForceP + R"(, {"name": "Q", "direction": 2})"), "forces[1].magnitude",
     "is missing"},
    {"DirectionMissing", sketchWith(R"({"name": "Q", "magnitude": 2})"), "forces[0].direction", "is missing"},
    {"TwoForcesOfOneName", sketchWith(kForceP + ", " + kForceP), "forces[1].name", "names are unique"},
    {"SumNamedAsAForce", sketchWith(kForceP, R"(, "sum": {"name": "P", "magnitude": 0})"), "sum.name",
     "another"},
    {"ForcesAreAnObject", R"({"format": "tailpoint-sketch", "version": 1,
       "units": {"force": "N", "angle": "deg"}, "forces": {}})",
     "forces (line 2, column 59)", "is an object"},
    {"ForceIsANumber", sketchWith("5"), "forces[0]", "is a number"},
    {"ForcesMissing",
     R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"}})", "forces",
     "is missing"},
    {"UnitsMissing", R"({"format": "tailpoint-sketch", "version": 1, "forces": []})", "units", "is missing"},
    {"UnknownForceUnit",
     R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "stone", "angle": "deg"}, "forces": []})",
     "units.force", "N, kN, daN, lbf, kip, kgf, tonf"},
    {"UnknownAngleUnit",
     R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "grad"}, "forces": []})",
     "units.angle", "deg, rad, gon"},
    {"UnitIsANumber",
     R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": 1, "angle": "deg"}, "forces": []})",
     "units.force", "is a number"},
    {"FormatMissing", R"({"version": 1})", "format", "is missing"},
    {"OtherFormat", R"({"format": "tailpoint-report", "version": 1})", "format", "open a sketch"},
    {"VersionMissing", R"({"format": "tailpoint-sketch"})", "version", "is missing"},
    {"NewerVersion", R"({"format": "tailpoint-sketch", "version": 7})", "version",
     "written by a newer Tailpoint"},
    {"VersionZero", R"({"format": "tailpoint-sketch", "version": 0})", "version", "write 1"},
    {"VersionAsText", R"({"format": "tailpoint-sketch", "version": "1"})", "version", "without quotes"},
    {"FiguresTooMany", sketchWith(kForceP, R"(, "figures": 40)"), "figures", "1 to 12"},
    {"FiguresBroken", sketchWith(kForceP, R"(, "figures": 2.5)"), "figures", "whole number"},
    {"FiguresHuge", sketchWith(kForceP, R"(, "figures": 1e300)"), "figures", "whole number"},
    {"AList", "[1, 2]", "line 1, column 1", "begins with {"},
    {"KeyTwice", R"({"format": "tailpoint-sketch", "version": 1, "title": "a", "title": "b"})",
     "line 1, column 60", "stands twice"},
    {"NotUtf8", "{\"title\": \"caf\xE9\"}", "line 1, column 15", "UTF-8"},
    {"OverlongUtf8", "{\"title\": \"\xC0\xAF\"}", "line 1, column 12", "UTF-8"},
    {"Utf16", std::string("\xFF\xFE{\0}\0", 6), "line 1, column 1", "UTF-16"},
    {"HalfAPair", R"({"title": "\ud800"})", "line 1, column 12", "both halves"},
    {"NestedTooDeep", std::string(5000, '[') + std::string(5000, ']'), "line 1, column 66", "nested deeper"},
    {"TooManyValues",
     "[" +
         [] {
             std::string s;
             for (int i = 0; i < 600'000; ++i)
                 s += "1,";
             return s;
         }() +
         "1]",
     "line 1, column", "values"},
    {"TooManyForces", sketchWith([] {
         std::string s;
         for (int i = 0; i <= 10'000; ++i)
             s += (i ? "," : "") + std::string(R"({"name": "F)") + std::to_string(i) +
                  R"(", "magnitude": 1, "direction": 1})";
         return s;
     }()),
     "forces", "10000"},
    {"PictureWithoutASketch", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "line 1, column 1",
     "only a picture"},
};

INSTANTIATE_TEST_SUITE_P(ReadingASketch, ARefusedSketch, ::testing::ValuesIn(kRefused),
                         [](const auto& row) { return std::string(row.param.name); });

} // namespace TAILPOINT_FILE
} // namespace tailpoint
