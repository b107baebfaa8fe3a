// SPDX-License-Identifier: MIT
// Keys that look as if they changed a number or a verdict end in one line; other unknown keys are kept.
#include "tests/whole/verbs/driver.h"

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kP = force("P", "340", "25");

/// A key, the place that the line must name, and the sketch that has it there.
struct Row {
    const char* key;
    QString place;
    QByteArray bytes;
};

QByteArray member(const char* key) {
    return QByteArray(", \"") + key + "\": 5";
}
QByteArray inForce(const char* key) {
    return sketch(kP + R"(, {"name": "Q", "magnitude": 275, "direction": -40)" + member(key) + "}");
}
QByteArray inSum(const char* key) {
    return sketch(kP, R"(, "sum": {"name": "R", "magnitude": null, "direction": null)" + member(key) + "}");
}
QByteArray inMagnitude(const char* key) {
    return sketch(force("P", R"({"value": 340)" + member(key) + "}", "25"));
}
QByteArray inDirection(const char* key) {
    return sketch(force("P", "340", R"({"value": 25)" + member(key) + "}"));
}
QByteArray atTop(const char* key) {
    return sketch(kP, member(key));
}

void expectNamed(const Row& row) {
    expectRefused(run({QStringLiteral("report"), QStringLiteral("-")}, row.bytes),
                  {QLatin1Char('"') + QString::fromUtf8(row.key) + QStringLiteral("\" could change a "),
                   row.place, QStringLiteral("and this version does not act on it"),
                   QStringLiteral("take it out")});
}

TEST(RefusedKeys, InAForceTheSumOrAValueAreNamedInOneLineWithTheirPlace) {
    for (const char* key :
         {"sector", "tolerance", "min", "max", "mass", "load", "Sector", "sectors", "tolerances", "MASS"}) {
        SCOPED_TRACE(key);
        expectNamed({key, QStringLiteral("forces[1] (line 1, column "), inForce(key)});
        expectNamed({key, QStringLiteral("sum (line 1, column "), inSum(key)});
        expectNamed({key, QStringLiteral("forces[0].magnitude (line 1, column "), inMagnitude(key)});
        expectNamed({key, QStringLiteral("forces[0].direction (line 1, column "), inDirection(key)});
    }
}

TEST(RefusedKeys, AreThoseThatAreOursButForOneLetter) {
    for (const char* key : {"magnitde", "Magnitude", "magnitudee", "mangitude", "magnitudo", "directon",
                            "nam", "snese", "lable", "DirectionLabel", "direction_label", "plusminus",
                            "Limit", "limits", "permited", "plus_minus_percent"})
        expectNamed({key, QStringLiteral("forces[1]"), inForce(key)});
    for (const char* key : {"valeu", "Value", "plusminus", "PlusMinus", "plusMinu", "units", "Unit"})
        expectNamed({key, QStringLiteral("forces[0].magnitude"), inMagnitude(key)});
    for (const char* key : {"slop", "bearings", "plusMins"})
        expectNamed({key, QStringLiteral("forces[0].direction"), inDirection(key)});
}

TEST(RefusedKeys, AreThoseOfOursThatDoNothingWhereTheyStand) {
    for (const char* key : {"plusMinus", "unit", "value", "slope", "bearing", "units", "reference", "angle",
                            "axis", "smallest"})
        expectNamed({key, QStringLiteral("forces[1]"), inForce(key)});
    expectNamed({"sense", QStringLiteral("forces[0].direction"), inDirection("sense")});
    for (const char* key : {"plus", "minus", "plusMinusPercent", "within"})
        expectNamed({key, QStringLiteral("forces[1]"), inForce(key)});
    for (const char* key : {"limit", "permitted", "gravity"})
        expectNamed({key, QStringLiteral("forces[0].magnitude"), inMagnitude(key)});
}

TEST(RefusedKeys, AtTheTopAndInUnitsAndReferenceAreNearMissesOfWhatStandsThere) {
    for (const char* key : {"refrence", "unit", "force", "sums", "figure", "smalest", "Caution", "decimal",
                            "gravty", "Gravity"})
        expectNamed({key, QStringLiteral("line 1, column "), atTop(key)});
    expectNamed({"axsi", QStringLiteral("reference (line 1, column "),
                 sketch(kP, R"(, "reference": {"axsi": "+y"})")});
    const QByteArray units =
        R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg", "forces": "kN"}, "forces": []})";
    expectNamed({"forces", QStringLiteral("units (line 1, column "), units});
}

TEST(RefusedKeys, AreNotThoseThatCanChangeNothing) {
    for (const char* key : {"note", "id", "colour", "comment", "by", "n", "source", "layer", "x-mine"}) {
        for (const QByteArray& bytes :
             {inForce(key), inSum(key), inMagnitude(key), inDirection(key), atTop(key)}) {
            const Ran ran = run({QStringLiteral("report"), QStringLiteral("-")}, bytes);
            EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        }
    }
    for (const char* key : {"limit", "mass", "tolerance", "magnitude"}) // these in no force and no value
        EXPECT_EQ(run({QStringLiteral("report"), QStringLiteral("-")}, atTop(key)).status, 0) << key;
    const QByteArray inside =
        sketch(R"({"name": "P", "magnitude": 340, "direction": 25, "note": {"limit": 3, "magnitde": 4}})");
    EXPECT_EQ(run({QStringLiteral("report"), QStringLiteral("-")}, inside).status, 0);
}

TEST_F(Verbs, NoFigureIsDrawnOfASketchWithARefusedKey) {
    const QString file = put(QStringLiteral("a.json"), inForce("sector"));
    expectRefused(
        run({QStringLiteral("figure"), file, QStringLiteral("-o"), path(QStringLiteral("a.svg"))}),
        {file, QStringLiteral("\"sector\" could change a verdict and this version does not act on it: "
                              "take it out")});
    EXPECT_EQ(everything(), QStringList{QStringLiteral("a.json")});
}

TEST_F(Verbs, EveryKeyThatIsWrittenIsReadAgainFromASketchAndFromAFigure) {
    const QByteArray all =
        R"({"format": "tailpoint-sketch", "version": 1, "title": "t", "units": {"force": "N", "angle": "deg"},
            "reference": {"axis": "+y", "sense": "cw"}, "figures": 4, "moreAfterOne": true, "decimals": 2,
            "gravity": 9.81,
            "forces": [{"name": "P", "magnitude": {"value": 85, "plusMinus": 1, "unit": "kgf"},
                        "direction": {"value": 25, "plusMinus": 1, "unit": "gon"}, "label": [1, 2],
                        "directionLabel": [3, 4]},
                       {"name": "Q", "magnitude": null, "direction": {"slope": [3, 4], "plusMinus": 1},
                        "sense": "either"},
                       {"name": "S", "magnitude": null, "direction": {"bearing": "N30E", "plus": 1, "minus": 0},
                        "limit": {"value": 1, "unit": "t"}, "permitted": {"axis": 90, "within": 20}}],
            "sum": {"name": "R", "magnitude": {"value": 900, "plusMinusPercent": 5}, "direction": 10, "limit": 950}, "caution": true})";
    const QString svg = path(QStringLiteral("a.svg")), again = path(QStringLiteral("b.svg"));
    ASSERT_EQ(run({QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"), svg}, all).status, 0);
    const Ran ran = run({QStringLiteral("figure"), svg, QStringLiteral("-o"), again});
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_EQ(bytesOf(again), bytesOf(svg));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
