// SPDX-License-Identifier: MIT
// Tolerances, limits, permitted directions and g in files, and through what is done to the whole sheet.
#include "core/sketch/shown_digits.h"
#include "ui/document/sheet_edits.h"
#include "ui/document/sketch_document.h"
#include "ui/files/report.h"
#include "ui/files/sketch_json.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

QByteArray fileOf(const QByteArray& force, const QByteArray& rest = {}) {
    return R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "kN", "angle": "deg"}, "forces": [)" +
           force + "]" + rest + "}";
}
QByteArray withValues(const QByteArray& magnitude, const QByteArray& direction) {
    return fileOf(R"({"name": "P", "magnitude": )" + magnitude + R"(, "direction": )" + direction + "}");
}
Sketch read(const QByteArray& text) {
    const auto result = readSketch(text);
    const auto* error = std::get_if<FileError>(&result);
    EXPECT_EQ(error, nullptr) << error->line().toStdString();
    return error ? emptySketch() : std::get<Sketch>(result);
}
std::string refusalOf(const QByteArray& text) {
    const auto result = readSketch(text);
    const auto* error = std::get_if<FileError>(&result);
    EXPECT_NE(error, nullptr) << text.toStdString();
    return error ? error->line().toStdString() : std::string();
}
Tolerance sides(double plus, double minus) {
    return {plus, minus, false};
}
const std::optional<Tolerance>& ofDirection(const Sketch& sketch) {
    return sketch.forces[0].direction.tolerance;
}
Sketch pointing(const Direction& direction) {
    Sketch sketch = emptySketch();
    Force force;
    force.name.assign(1, 'P');
    force.magnitude.value = 340;
    force.direction = direction;
    sketch.forces = {force};
    return sketch;
}
void expectMargins(const Sketch& sketch, double plus, double minus) {
    EXPECT_FALSE(firstFault(sketch));
    const Margins margins = marginsOf(sketch.forces[0].direction, sketch);
    EXPECT_NEAR(margins.plus, plus, 1e-12);
    EXPECT_NEAR(margins.minus, minus, 1e-12);
}

TEST(ToleranceFiles, EveryFormIsReadAndWrittenAsItStood) {
    for (const char* value :
         {R"({ "value": 340, "plusMinus": 5 })", R"({ "value": 340, "plusMinusPercent": 5 })",
          R"({ "value": 340, "plus": 5, "minus": 0 })",
          R"({ "value": 850, "plusMinusPercent": 2.5, "unit": "kg" })",
          R"({ "value": 1.5, "plus": 0, "minus": 0.1, "unit": "short tonf" })"}) {
        const Sketch sketch = read(withValues(value, "25"));
        EXPECT_TRUE(sketch.forces[0].magnitude.tolerance) << value;
        EXPECT_TRUE(writeSketch(sketch).contains(value)) << writeSketch(sketch).toStdString();
        EXPECT_EQ(read(writeSketch(sketch)), sketch);
    }
    const Sketch plain = read(withValues(R"({"value": 340, "plus": 5, "minus": 5})", "25"));
    EXPECT_EQ(plain.forces[0].magnitude.tolerance, plusMinus(5));
    EXPECT_FALSE(read(withValues(R"({"value": 340, "plus": null, "minus": null, "plusMinus": null})", "25"))
                     .forces[0]
                     .magnitude.tolerance);
    const Sketch bearing = read(withValues("340", R"({"bearing": "N30E", "plus": 2, "minus": 0})"));
    EXPECT_EQ(ofDirection(bearing), sides(2, 0));
}

TEST(ToleranceFiles, WhatCannotBeATolerance) {
    struct Row {
        const char *value, *place, *words;
    };
    const Row table[] = {
        {R"({"value": 1, "plus": 5})", "magnitude.plus", "no \"minus\" beside it; write both"},
        {R"({"value": 1, "minus": 5})", "magnitude.minus", "no \"plus\" beside it; write both"},
        {R"({"value": 1, "plus": -5, "minus": 1})", "magnitude.plus", "below 0"},
        {R"({"value": 1, "plus": 5, "minus": -1})", "magnitude.minus", "below 0"},
        {R"({"value": 1, "plus": 0, "minus": 0})", "magnitude.plus", "both 0"},
        {R"({"value": 1, "plus": 5, "minus": 1, "plusMinus": 5})", "magnitude.plusMinus",
         "one tolerance of two"},
        {R"({"value": 1, "plusMinusPercent": 5, "plusMinus": 5})", "magnitude.plusMinus",
         "one tolerance of two"},
        {R"({"value": 1, "plusMinusPercent": 0})", "magnitude.plusMinusPercent", "above 0"},
        {R"({"value": 1, "plusMinusPercent": "5 %"})", "magnitude.plusMinusPercent",
         "is text; write the number without quotes"},
        {R"({"value": null, "plusMinusPercent": 5})", "magnitude.plusMinusPercent", "stands beside nothing"},
        {R"({"value": null, "plus": 5, "minus": 0})", "magnitude.plus", "stands beside nothing"}};
    for (const Row& row : table) {
        const std::string line = refusalOf(withValues(row.value, "25"));
        EXPECT_NE(line.find(row.place), std::string::npos) << line;
        EXPECT_NE(line.find(row.words), std::string::npos) << line;
    }
    EXPECT_NE(refusalOf(withValues("1", R"({"slope": [3, 4], "plusMinusPercent": 5})")).find("no percentage"),
              std::string::npos);
}

TEST(LimitFiles, AreReadAndWrittenInTheirOwnUnit) {
    const Sketch plain = read(fileOf(R"({"name": "P", "magnitude": 340, "direction": 25, "limit": 10})"));
    EXPECT_EQ(plain.forces[0].limit, (TypedForce{10, ForceUnit::kN, {}}));
    EXPECT_TRUE(writeSketch(plain).contains(R"("limit": 10 })"));
    const Sketch own = read(fileOf(
        R"({"name": "P", "magnitude": 340, "direction": 25, "limit": {"value": 1, "unit": "t"},
            "permitted": {"axis": 90, "within": 20, "by": "the maker"}})"));
    EXPECT_EQ(own.forces[0].limit, (TypedForce{1, MassUnit::t, {}}));
    EXPECT_EQ(own.forces[0].permitted, (Permitted{90, 20}));
    EXPECT_TRUE(writeSketch(own).contains(
        R"("limit": { "value": 1, "unit": "t" }, "permitted": { "axis": 90, "within": 20, "by": "the maker" })"))
        << writeSketch(own).toStdString();
    EXPECT_EQ(read(writeSketch(own)), own);
    const Sketch sum = read(fileOf({}, R"(, "sum": {"magnitude": null, "direction": null, "limit": 10})"));
    EXPECT_EQ(limitOf(sum.sum, sum), 10);
}

TEST(LimitFiles, WhatCannotBeALimit) {
    const auto bounded = [](const char* member) {
        return fileOf(QByteArray(R"({"name": "P", "magnitude": 1, "direction": 2, )") + member + "}");
    };
    const std::pair<const char*, const char*> table[] = {
        {R"("limit": 0)", "forces[0].limit"},
        {R"("limit": "10 kN")", R"(is text; write a number, or {"value": 10, "unit": "kN"})"},
        {R"("limit": {"unit": "kN"})", "forces[0].limit.value"},
        {R"("limit": {"value": 1, "unit": "ton"})", "is no unit known here"},
        {R"("limit": {"value": 1, "plusMinus": 1})", "\"plusMinus\" could change"},
        {R"("permitted": 90)", "write an axis and how far off it"},
        {R"("permitted": {"axis": 90})", "forces[0].permitted.within"},
        {R"("permitted": {"axis": 90, "within": 0})", "up to a half turn (180.0°)"},
        {R"("permitted": {"axis": 90, "with": 20, "withn": 2})", "write \"within\" if that is meant"}};
    for (const auto& [member, words] : table) {
        EXPECT_NE(refusalOf(bounded(member)).find(words), std::string::npos) << refusalOf(bounded(member));
    }
}

TEST(GravityInAFile, TurnsItsMassesIntoForcesAndIsWrittenWhereItIsNotTheStandardOne) {
    const QByteArray mass = R"({"name": "W", "magnitude": {"value": 850, "unit": "kg"}, "direction": -90})";
    EXPECT_FALSE(writeSketch(read(fileOf(mass))).contains("gravity"));
    const Sketch class9 = read(fileOf(mass, R"(, "gravity": 9.81)"));
    EXPECT_EQ(class9.forces[0].magnitude.value, 8.3385); // 850 x 9.81 N
    EXPECT_TRUE(writeSketch(class9).contains(R"("gravity": 9.81)"));
    EXPECT_EQ(read(writeSketch(class9)), class9);
    EXPECT_NE(refusalOf(fileOf(mass, R"(, "gravity": 0)")).find("outside 0.01 to 100 m/s²"),
              std::string::npos);
    EXPECT_NE(refusalOf(fileOf(mass, R"(, "gravity": "9.81")")).find("is text; write the number"),
              std::string::npos);
}

TEST(AChangeOfG, ChangesTheWeightOfMassesAndNothingElse) {
    Sketch sketch = read(fileOf(
        R"({"name": "W", "magnitude": {"value": 1, "plusMinus": 0.1, "unit": "t"}, "direction": -90},
           {"name": "P", "magnitude": {"value": 850, "unit": "kgf"}, "direction": 25},
           {"name": "Q", "magnitude": 3, "direction": 40})"));
    const Sketch after = withGravity(sketch, 9.81);
    EXPECT_FALSE(firstFault(after));
    EXPECT_EQ(after.forces[0].magnitude.value, 9.81);
    EXPECT_DOUBLE_EQ(after.forces[0].magnitude.tolerance->plus, 0.981);
    EXPECT_EQ(after.forces[1], sketch.forces[1]);
    EXPECT_EQ(after.forces[2], sketch.forces[2]);
    EXPECT_EQ(withGravity(after, kStandardGravity), sketch);
}

TEST(ToleranceThroughTheSheet, FollowsAChangeOfUnitAndAPercentageStays) {
    Sketch sketch = pointing({AngleForm{45}, sides(9, 0)});
    sketch.forces[0].magnitude.tolerance = sides(50, 10);
    sketch.sum.magnitude = {500, plusMinusPercent(5)};
    sketch.sum.direction = {AngleForm{90}, plusMinusPercent(10)};
    const Sketch kilo = withForceUnit(sketch, ForceUnit::kN, Numbers::convert);
    EXPECT_EQ(kilo.forces[0].magnitude, (Magnitude{0.34, sides(0.05, 0.01)}));
    EXPECT_EQ(kilo.sum.magnitude, (Magnitude{0.5, plusMinusPercent(5)}));
    EXPECT_EQ(withForceUnit(kilo, ForceUnit::N, Numbers::convert), sketch);
    const Sketch gons = withAngleUnit(sketch, AngleUnit::gon, Numbers::convert);
    EXPECT_EQ(ofDirection(gons), sides(10, 0));
    EXPECT_EQ(gons.sum.direction, (Direction{AngleForm{100}, plusMinusPercent(10)}));
    EXPECT_EQ(withAngleUnit(gons, AngleUnit::deg, Numbers::convert), sketch);
}

// 40 degrees from +x are 50 clockwise from +y: what was 2 more there is 2 less here.
TEST(ToleranceThroughTheSheet, KeepsItsSideWhereTheSenseTurnsRound) {
    const Sketch mirrored =
        withReference(pointing({AngleForm{40}, sides(2, 0.5)}), {90, Sense::cw}, Numbers::convert);
    EXPECT_EQ(ofDirection(mirrored), sides(0.5, 2));
    expectMargins(mirrored, 0.5, 2);
    const Sketch slope =
        withReference(pointing({SlopeForm{3, 4}, sides(2, 0.5)}), {0, Sense::cw}, Numbers::convert);
    expectMargins(slope, 0.5, 2);
}

TEST(ToleranceThroughTheSheet, OfABearingIsItsOwnWhateverTheSheetsSense) {
    const Sketch before = pointing({BearingForm{'N', 30, 'E'}, sides(2, 0.5)});
    expectMargins(before, 0.5, 2);
    const Sketch after = withReference(before, {90, Sense::cw}, Numbers::convert);
    EXPECT_EQ(ofDirection(after), sides(2, 0.5));
    expectMargins(after, 2, 0.5);
}

// 5 % of 40 degrees are 2 degrees, of 50 they would be 2.5.
TEST(ToleranceThroughTheSheet, OfAShareBecomesAnAngleWhereTheAngleIsAnother) {
    const Sketch turned =
        withReference(pointing({AngleForm{40}, plusMinusPercent(5)}), {90, Sense::cw}, Numbers::convert);
    EXPECT_EQ(ofDirection(turned), plusMinus(2));
    const Sketch gons =
        withAngleUnit(pointing({AngleForm{350}, plusMinusPercent(2)}), AngleUnit::gon, Numbers::convert);
    expectMargins(gons, 70.0 / 9, 70.0 / 9); // 7 degrees; -10 degrees would make 0.2
}

TEST(ToleranceThroughTheSheet, StaysInADragAndAShareFollowsTheValue) {
    Sketch sketch = pointing({AngleForm{40}, sides(2, 0.5)});
    sketch.forces[0].magnitude.tolerance = plusMinusPercent(5);
    setShownMagnitude(sketch.forces[0], 400.3, sketch);
    setShownDirection(sketch.forces[0], 50, sketch);
    EXPECT_DOUBLE_EQ(marginsOf(sketch.forces[0].magnitude).plus, 20); // 5 % of 400
    EXPECT_EQ(ofDirection(sketch), sides(2, 0.5));
}

TEST(BoundsThroughTheSheet, ALimitKeepsItsUnitAndAnAxisItsPlace) {
    Sketch sketch = pointing({AngleForm{40}, {}});
    sketch.forces[0].limit = TypedForce{400, ForceUnit::N, {}};
    sketch.forces[0].permitted = Permitted{40, 18};
    Sketch kilo = withForceUnit(sketch, ForceUnit::kN, Numbers::convert);
    EXPECT_EQ(kilo.forces[0].limit, sketch.forces[0].limit);
    EXPECT_EQ(limitOf(kilo.forces[0], kilo), 0.4);
    kilo = withForceUnit(sketch, ForceUnit::kN, Numbers::keep);
    EXPECT_EQ(limitOf(kilo.forces[0], kilo), 400) << "numbers stay, and this was one of the sheet's";
    const Sketch gons = withAngleUnit(sketch, AngleUnit::gon, Numbers::convert);
    EXPECT_DOUBLE_EQ(gons.forces[0].permitted->axis, 400.0 / 9);
    EXPECT_DOUBLE_EQ(gons.forces[0].permitted->within, 20);
    const Sketch turned = withReference(sketch, {90, Sense::cw}, Numbers::convert);
    EXPECT_DOUBLE_EQ(turned.forces[0].permitted->axis, 50);
    EXPECT_DOUBLE_EQ(turned.forces[0].permitted->within, 18);
}

TEST(ReportOfGivenValues, CarriesTheirTolerancesBack) {
    Sketch sketch = pointing({AngleForm{25}, plusMinus(0.5)});
    sketch.forces[0].magnitude.tolerance = sides(5, 0);
    const QByteArray json = reportJson(resultOf(sketch), {});
    EXPECT_TRUE(json.contains(R"("given": true)")) << json.toStdString();
    EXPECT_TRUE(json.contains(R"("plusMinus")"));
    const std::string text = reportText(resultOf(sketch)).toStdString();
    EXPECT_NE(text.find("340 +5/-0 N"), std::string::npos) << text;
    EXPECT_NE(text.find("25.0° ± 0.5°"), std::string::npos) << text;
}

/// A hand is at it: outer bounds. At rest the ranges are to the full, with one more change told, and none
/// where nothing has a tolerance.
TEST(Ranges, OfADragAreMadeAnewWhenItEnds) {
    Sketch loose = pointing({AngleForm{25}, {}});
    loose.forces[0].magnitude.tolerance = plusMinus(5);
    for (const bool isLoose : {true, false}) {
        SketchDocument document;
        int changes = 0;
        QObject::connect(&document, &SketchDocument::changed, [&] { ++changes; });
        ASSERT_FALSE(
            document.preview(isLoose ? loose : pointing({AngleForm{25}, {}}), QStringLiteral("drag")));
        EXPECT_TRUE(document.result().isMoving);
        EXPECT_EQ(changes, 1);
        document.commit();
        EXPECT_EQ(changes, isLoose ? 2 : 1);
        EXPECT_EQ(document.result().ranges().size(), isLoose ? 1u : 0u);
        EXPECT_EQ(document.result().isMoving, !isLoose);
    }
}

TEST(Ranges, OfAQuestionWithoutItsAnswerAreNotTold) {
    Sketch loose = pointing({AngleForm{25}, {}});
    loose.forces[0].magnitude.tolerance = plusMinus(5);
    EXPECT_EQ(resultOf(loose).ranges().size(), 1u);
    EXPECT_TRUE(unanswered(loose).ranges().empty());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
