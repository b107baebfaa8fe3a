// SPDX-License-Identifier: MIT
// Given tolerances, limits and units in every form of the report: none of them is dropped on the way.
#include "tests/whole/verbs/driver.h"

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kForces =
    R"({"name": "P", "magnitude": {"value": 340, "plusMinus": 5}, "direction": {"value": 25, "plus": 2, "minus": 0}},
       {"name": "Q", "magnitude": {"value": 28, "plusMinusPercent": 5, "unit": "kgf"}, "direction": -40,
        "limit": {"value": 50, "unit": "kgf"}, "permitted": {"axis": -45, "within": 10}})";

QByteArray reportAs(const char* form) {
    const Ran ran =
        run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"), QLatin1String(form)},
            sketch(kForces));
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    return ran.out;
}

// 28 kgf are 274.5862 N (SP 811, B.8).
TEST(GivenTolerances, AreInTheText) {
    const QByteArray text = reportAs("text");
    for (const char* part : {"340 ± 5 N", "25.0° +2°/-0°", "275 N ± 5 %", "28 kgf ± 5 % = 275 N ± 5 %",
                             "at most 50 kgf", "within 10.0° of -45.0°"}) {
        EXPECT_TRUE(text.contains(part)) << part << "\n" << text.toStdString();
    }
    EXPECT_TRUE(text.mid(text.indexOf("Worked solution")).contains("28 kgf ± 5 %")) << text.toStdString();
}

TEST(GivenTolerances, AreInThePagesAndInLatex) {
    for (const char* form : {"html", "latex"}) {
        const QByteArray page = reportAs(form);
        EXPECT_TRUE(page.contains("kgf")) << form;
        EXPECT_TRUE(page.contains("±") || page.contains("\\pm")) << form;
    }
}

TEST(GivenTolerances, ComeBackInJsonAsTheyWereGiven) {
    const QJsonObject report = reportOf(sketch(kForces), 0);
    const QJsonObject solution = report[QStringLiteral("solutions")].toArray().at(0).toObject();
    const QJsonArray forces = solution[QStringLiteral("forces")].toArray();
    const QJsonObject p = forces.at(0).toObject(), q = forces.at(1).toObject(),
                      r = solution[QStringLiteral("sum")].toObject();
    EXPECT_TRUE(p[QStringLiteral("given")].toBool());
    EXPECT_FALSE(r[QStringLiteral("given")].toBool(true));
    EXPECT_EQ(p[QStringLiteral("plusMinus")].toObject()[QStringLiteral("magnitude")].toDouble(), 5);
    EXPECT_EQ(p[QStringLiteral("plus")].toObject()[QStringLiteral("direction")].toDouble(), 2);
    EXPECT_EQ(p[QStringLiteral("minus")].toObject()[QStringLiteral("direction")].toDouble(-1), 0);
    EXPECT_EQ(q[QStringLiteral("plusMinusPercent")].toObject()[QStringLiteral("magnitude")].toDouble(), 5);
    const QJsonObject stated = q[QStringLiteral("stated")].toObject()[QStringLiteral("magnitude")].toObject();
    EXPECT_EQ(stated[QStringLiteral("value")].toDouble(), 28);
    EXPECT_EQ(stated[QStringLiteral("unit")].toString(), QStringLiteral("kgf"));
    EXPECT_FALSE(p.contains(QStringLiteral("stated")));
    int seen = 0;
    for (const QJsonValue& each : report[QStringLiteral("quantities")].toArray()) {
        const QJsonObject quantity = each.toObject();
        const QString name = quantity[QStringLiteral("name")].toString();
        EXPECT_EQ(quantity[QStringLiteral("given")].toBool(),
                  quantity[QStringLiteral("role")].toString() == QStringLiteral("given"));
        if (name == QStringLiteral("P") && ++seen > 0) {
            EXPECT_EQ(quantity[QStringLiteral("plusMinus")].toDouble(), 5);
        }
    }
    EXPECT_EQ(seen, 1);
    EXPECT_FALSE(report.contains(QStringLiteral("gravity")));
}

void expectEnds(const QJsonValue& ends, double least, double greatest, double within) {
    const QJsonObject object = ends.toObject();
    EXPECT_NEAR(object[QStringLiteral("least")].toDouble(), least, within);
    EXPECT_NEAR(object[QStringLiteral("greatest")].toDouble(), greatest, within);
    EXPECT_FALSE(object.contains(QStringLiteral("marked")));
}

// P 340 ± 5 at 25 ± 2 and Q 275 at -40: R 509.747 to 529.901 N, direction -5.0506 to -2.2263 degrees (own
// dense grid over all inputs, ends included, then zoomed).
TEST(GivenTolerances, MakeRangesInJson) {
    const QJsonObject report = reportOf(
        sketch(
            R"({"name": "P", "magnitude": {"value": 340, "plusMinus": 5}, "direction": {"value": 25, "plusMinus": 2}},
                  {"name": "Q", "magnitude": 275, "direction": -40})"),
        0);
    const QJsonObject solution = report[QStringLiteral("solutions")].toArray().at(0).toObject();
    const QJsonObject sum = solution[QStringLiteral("sum")].toObject(),
                      range = sum[QStringLiteral("range")].toObject(),
                      direction = range[QStringLiteral("direction")].toObject();
    expectEnds(range[QStringLiteral("magnitude")], 509.747, 529.901, 0.03);
    EXPECT_NEAR(direction[QStringLiteral("from")].toDouble(), -5.0506, 0.003);
    EXPECT_NEAR(direction[QStringLiteral("to")].toDouble(), -2.2263, 0.003);
    EXPECT_TRUE(range[QStringLiteral("everywhere")].toBool());
    EXPECT_EQ(sum[QStringLiteral("text")].toObject()[QStringLiteral("range")].toString(),
              QStringLiteral("509 to 530 N"));
    EXPECT_EQ(sum[QStringLiteral("text")].toObject()[QStringLiteral("magnitude")].toString(),
              QStringLiteral("520 N"));
    const QJsonObject p = solution[QStringLiteral("forces")].toArray().at(0).toObject();
    expectEnds(p[QStringLiteral("range")].toObject()[QStringLiteral("magnitude")], 335, 345, 1e-9);
    EXPECT_EQ(p[QStringLiteral("text")].toObject()[QStringLiteral("range")].toString(),
              QStringLiteral("335 to 345 N"));
}

// 12 down on two lines that rise by 1.5 ± 2 degrees: 12 / (2 sin 3.5) = 98.282 at the least, unbounded as
// they come level, and no answer beyond.
TEST(GivenTolerances, AnUnboundedRangeIsNullInJson) {
    const QJsonObject report = reportOf(
        R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "kN", "angle": "deg"},
            "sum": {"name": "R", "magnitude": 0}, "forces": [
            {"name": "W", "magnitude": 12, "direction": -90},
            {"name": "A", "magnitude": null, "direction": {"value": 1.5, "plusMinus": 2}},
            {"name": "B", "magnitude": null, "direction": {"value": 178.5, "plusMinus": 2}}]})",
        0);
    const QJsonObject solution = report[QStringLiteral("solutions")].toArray().at(0).toObject();
    const QJsonObject a = solution[QStringLiteral("forces")].toArray().at(1).toObject(),
                      range = a[QStringLiteral("range")].toObject(),
                      magnitude = range[QStringLiteral("magnitude")].toObject();
    EXPECT_TRUE(magnitude[QStringLiteral("greatest")].isNull());
    EXPECT_NEAR(magnitude[QStringLiteral("least")].toDouble(), 98.282, 0.1);
    EXPECT_FALSE(range[QStringLiteral("everywhere")].toBool(true));
}

TEST_F(Verbs, AFigureSaysTheTolerancesOfWhatIsGivenAndItsTooltipTheUnit) {
    const QString svg = path(QStringLiteral("a.svg"));
    ASSERT_EQ(run({QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"), svg}, sketch(kForces))
                  .status,
              0);
    const QByteArray drawn = bytesOf(svg);
    EXPECT_TRUE(drawn.contains("340 ± 5 N")) << "P's label";
    EXPECT_TRUE(drawn.contains("275 N ± 5 %")) << "Q's label";
    EXPECT_TRUE(drawn.contains("28 kgf ± 5 % = 275 N ± 5 %")) << "Q's title";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
