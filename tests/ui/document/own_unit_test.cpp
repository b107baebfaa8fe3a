// SPDX-License-Identifier: MIT
// A value that a file states in a unit of its own: kept as it stands there until it is changed.
// NIST SP 811 (2008), B.8: 1 kgf = 9.80665 N, exact; so 850 kgf = 8335.6525 N.
#include "ui/canvas/force_edits.h"
#include "ui/document/given_edits.h"
#include "ui/document/sheet_edits.h"
#include "ui/document/sketch_document.h"
#include "ui/files/report.h"
#include "ui/files/sketch_json.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

const QByteArray kMagnitude = R"({ "value": 850, "plusMinus": 10, "unit": "kgf" })";
const QByteArray kDirection = R"({ "value": 50, "unit": "gon" })";

QByteArray fileWith(const QByteArray& magnitude, const QByteArray& direction) {
    return R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"},
               "forces": [{"name": "P", "magnitude": )" +
           magnitude + R"(, "direction": )" + direction + "}]}";
}
Sketch read(const QByteArray& text) {
    const auto result = readSketch(text);
    const auto* error = std::get_if<FileError>(&result);
    EXPECT_EQ(error, nullptr) << error->line().toStdString();
    return error ? emptySketch() : std::get<Sketch>(result);
}
Sketch anchored() {
    return read(fileWith(kMagnitude, kDirection));
}
double angleOf(const Sketch& sketch) {
    return std::get<AngleForm>(sketch.forces[0].direction.form).value;
}
bool writes(const Sketch& sketch, const QByteArray& part) {
    EXPECT_FALSE(firstFault(sketch)) << firstFault(sketch)->place << " " << firstFault(sketch)->message;
    EXPECT_EQ(read(writeSketch(sketch)), sketch);
    return writeSketch(sketch).contains(part);
}
Sketch typed(const Sketch& sketch, Entry cell, const char* text) {
    const Outcome outcome = typedInto(sketch, 0, cell, QString::fromUtf8(text));
    EXPECT_TRUE(std::holds_alternative<Accepted>(outcome));
    return std::get<Accepted>(outcome).sketch;
}

TEST(AUnitOfItsOwn, IsReadIntoTheSheetsAndWrittenAsItStood) {
    const Sketch sketch = anchored();
    EXPECT_EQ(sketch.forces[0].magnitude.value, 8335.6525);
    EXPECT_EQ(sketch.forces[0].magnitude.tolerance, plusMinus(98.0665));
    EXPECT_DOUBLE_EQ(angleOf(sketch), 45);
    EXPECT_TRUE(writes(sketch, R"("magnitude": )" + kMagnitude + R"(, "direction": )" + kDirection));
}

TEST(AUnitOfItsOwn, IsKeptWithUnknownKeysBesideIt) {
    const QByteArray noted = R"({ "value": 850, "unit": "kgf", "by": "scale" })";
    EXPECT_TRUE(writes(read(fileWith(noted, "25")), noted));
}

TEST(AUnitOfItsOwn, OfTheSumIsKeptToo) {
    const QByteArray sum =
        R"("sum": { "name": "R", "magnitude": { "value": 1, "unit": "kip" }, "direction": 0 })";
    QByteArray text = fileWith("null", "null");
    text.chop(1);
    const Sketch sketch = read(text + ", " + sum + "}");
    EXPECT_DOUBLE_EQ(*sketch.sum.magnitude.value, 4448.2216152605);
    EXPECT_TRUE(writes(sketch, sum));
}

TEST(AUnitOfItsOwn, StaysWhenTheSheetsUnitChangesAndTheForceIsKept) {
    Sketch sketch = anchored();
    for (const ForceUnit unit : {ForceUnit::kip, ForceUnit::kgf, ForceUnit::kN, ForceUnit::N}) {
        sketch = withForceUnit(sketch, unit, Numbers::convert);
        EXPECT_TRUE(writes(sketch, kMagnitude)) << symbolOf(unit);
        if (unit == ForceUnit::kgf) {
            EXPECT_EQ(sketch.forces[0].magnitude.value, 850);
        }
    }
    EXPECT_EQ(sketch, anchored()) << "there and back without dust";
    for (const AngleUnit unit : {AngleUnit::rad, AngleUnit::gon, AngleUnit::deg})
        sketch = withAngleUnit(sketch, unit, Numbers::convert);
    EXPECT_EQ(sketch, anchored());
}

TEST(AUnitOfItsOwn, GoesWhenTheSheetsUnitChangesAndTheNumberIsKept) {
    const Sketch force = withForceUnit(anchored(), ForceUnit::kN, Numbers::keep);
    EXPECT_EQ(force.forces[0].magnitude.value, 8335.6525);
    EXPECT_FALSE(writes(force, "kgf"));
    const Sketch angle = withAngleUnit(anchored(), AngleUnit::rad, Numbers::keep);
    EXPECT_DOUBLE_EQ(angleOf(angle), 45);
    EXPECT_FALSE(writes(angle, "gon"));
    EXPECT_TRUE(writes(angle, kMagnitude));
}

TEST(AUnitOfItsOwn, OfADirectionGoesWhereItIsReferredToAnotherAxis) {
    const Sketch sketch = withReference(anchored(), {90, Sense::cw}, Numbers::convert);
    EXPECT_NEAR(angleOf(sketch), 45, 1e-12) << "45 degrees from +x are 45 clockwise from +y";
    EXPECT_FALSE(writes(sketch, "gon"));
    EXPECT_TRUE(writes(withReference(anchored(), {90, Sense::cw}, Numbers::keep), kDirection));
}

TEST(AUnitOfItsOwn, GoesWithTheValueThatIsTyped) {
    const Sketch sketch = typed(anchored(), Entry::magnitude, "900");
    EXPECT_FALSE(writes(sketch, "kgf"));
    EXPECT_TRUE(writes(sketch, kDirection)) << "the other value keeps its own";
    EXPECT_FALSE(writes(typed(anchored(), Entry::direction, "45"), "gon"));
    EXPECT_FALSE(writes(typed(anchored(), Entry::magnitude, "?"), "kgf"));
    EXPECT_TRUE(writes(typed(anchored(), Entry::name, "A"), kMagnitude));
}

TEST(AUnitOfItsOwn, ThatIsTypedIsKeptAsInAFile) {
    const Sketch force = typed(anchored(), Entry::magnitude, "900 ± 5 kgf");
    EXPECT_DOUBLE_EQ(*force.forces[0].magnitude.value, 8825.985); // 900 x 9.80665
    EXPECT_TRUE(writes(force, R"("magnitude": { "value": 900, "plusMinus": 5, "unit": "kgf" })"));
    EXPECT_FALSE(writes(typed(anchored(), Entry::magnitude, "900 N"), R"("unit": "N")")) << "the sheet's own";
    const Sketch angle = typed(anchored(), Entry::direction, "30 gon +1/-0");
    EXPECT_DOUBLE_EQ(angleOf(angle), 27);
    EXPECT_TRUE(writes(angle, R"("direction": { "value": 30, "plus": 1, "minus": 0, "unit": "gon" })"));
}

TEST(AUnitOfItsOwn, GoesWithTheValueThatIsDraggedAndTheToleranceStays) {
    Sketch sketch = anchored();
    setShownMagnitude(sketch.forces[0], 8001, sketch);
    EXPECT_TRUE(writes(sketch, R"("magnitude": { "value": 8000, "plusMinus": 98.0665 })"));
    EXPECT_TRUE(writes(sketch, kDirection));
    setShownDirection(sketch.forces[0], 40.01, sketch);
    EXPECT_TRUE(writes(sketch, R"("direction": 40)"));
}

TEST(AUnitOfItsOwn, ComesBackByUndoAndWhereAValueIsGivenAgain) {
    SketchDocument document;
    document.replace(anchored(), {});
    const Sketch asked = toggled(document, 0, Entry::magnitude);
    ASSERT_FALSE(document.edit(asked, QStringLiteral("ask")));
    EXPECT_FALSE(writes(document.sketch(), "kgf"));
    EXPECT_TRUE(writes(toggled(document, 0, Entry::magnitude), kMagnitude));
    document.undo();
    EXPECT_EQ(document.sketch(), anchored());
}

TEST(AUnitOfItsOwn, IsSaidInTheReportQuietly) {
    const std::string report = reportText(resultOf(anchored())).toStdString();
    EXPECT_NE(report.find("8340 ± 98.1 N"), std::string::npos) << report;
    EXPECT_NE(report.find("P: 850 ± 10 kgf = 8340 ± 98.1 N, 50 gon = 45.0°"), std::string::npos) << report;
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
