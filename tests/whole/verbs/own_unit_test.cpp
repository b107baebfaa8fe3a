// SPDX-License-Identifier: MIT
// A value with a unit of its own in a sketch: acted on, or refused in one line.
// Factors: NIST SP 811 (2008), B.8: 1 kgf = 9.80665 N, 1 lbf = 4.4482216152605 N, both exact.
#include "tests/whole/verbs/driver.h"

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

double magnitudeIn(const QByteArray& forces, const QByteArray& rest = {}) {
    const QJsonObject solution =
        reportOf(sketch(forces, rest), 0)[QStringLiteral("solutions")].toArray().at(0).toObject();
    const QJsonObject first = solution[QStringLiteral("forces")].toArray().at(0).toObject();
    return first[QStringLiteral("magnitude")].toDouble();
}

TEST(AUnitOfItsOwn, IsActedOn) {
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 850, "unit": "kgf"})", "0")), 8335.6525);
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 100, "unit": "lbf"})", "0")), 444.82216152605);
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 340, "unit": "N"})", "0")), 340);
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 340, "unit": null})", "0")), 340);
}

// SP 811 B.9: ton-force (2000 lbf) 8.896443 E+03; a tonne-force is 1000 kgf.
TEST(AUnitOfItsOwn, MayBeATonForceOrAMassWhoseWeightIsMeant) {
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 100, "unit": "daN"})", "0")), 1000);
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 1.5, "unit": "tonf"})", "0")), 14709.975);
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 1, "unit": "short tonf"})", "0")), 8896.443230521);
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 850, "unit": "kg"})", "0")), 8335.6525);
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", R"({"value": 1, "unit": "t"})", "0"), R"(, "gravity": 9.81)"),
                     9810);
}

TEST(AUnitOfItsOwn, OfAMassOrOfTwoWordsIsNoUnitOfTheSheet) {
    for (const char* unit : {"kg", "t", "short tonf"}) {
        QByteArray file = sketch(force("P", "1", "0"));
        file.replace(R"("force": "N")", QByteArray(R"("force": ")") + unit + '"');
        expectRefused(run({QStringLiteral("report"), QStringLiteral("-")}, file),
                      {QStringLiteral("units.force"), QStringLiteral("stands beside a value alone"),
                       QStringLiteral("write one of N, kN, daN, lbf, kip, kgf, tonf")});
    }
}

TEST(AMass, IsSaidWithItsWeightAndTheGThatMakesIt) {
    QByteArray file = sketch(force("W", R"({"value": 850, "unit": "kg"})", "-90"));
    file.replace(R"("force": "N")", R"("force": "kN")");
    for (const char* as : {"text", "html", "latex", "json"}) {
        const Ran ran = run(
            {QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"), QLatin1String(as)}, file);
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        EXPECT_TRUE(ran.out.contains("850")) << as;
        EXPECT_TRUE(ran.out.contains("9.80665")) << as;
    }
    EXPECT_TRUE(run({QStringLiteral("report"), QStringLiteral("-")}, file)
                    .out.contains("weight of 850 kg = 8.34 kN (g = 9.80665 m/s²)"));
}

TEST(AUnitOfItsOwn, OfTheSumIsActedOn) {
    const QByteArray sum =
        R"(, "sum": {"name": "R", "magnitude": {"value": 1, "unit": "kN"}, "direction": 0})";
    EXPECT_DOUBLE_EQ(magnitudeIn(force("P", "null", "null"), sum), 1000);
}

TEST(AUnitOfItsOwn, IsThatOfTheToleranceToo) {
    const Ran ran = run({QStringLiteral("report"), QStringLiteral("-")},
                        sketch(force("P", R"({"value": 850, "plusMinus": 10, "unit": "kgf"})", "0")));
    EXPECT_TRUE(ran.out.contains("8340 ± 98.1 N")) << ran.out.toStdString();
    EXPECT_TRUE(ran.out.contains("850 ± 10 kgf = 8340 ± 98.1 N")) << ran.out.toStdString();
}

TEST(AUnitOfItsOwn, OfADirectionIsActedOn) {
    const QJsonObject report = reportOf(sketch(force("P", "100", R"({"value": 50, "unit": "gon"})")), 0);
    const QJsonObject solution = report[QStringLiteral("solutions")].toArray().at(0).toObject();
    EXPECT_DOUBLE_EQ(solution[QStringLiteral("sum")].toObject()[QStringLiteral("direction")].toDouble(), 45);
}

TEST(AUnitOfItsOwn, ThatIsNotThereIsRefusedWithTheUnitsThereAre) {
    for (const char* unit : {"lb", "ton", "KN", "n", "deg", ""}) {
        const QByteArray value = QByteArray(R"({"value": 850, "unit": ")") + unit + "\"}";
        expectRefused(run({QStringLiteral("report"), QStringLiteral("-")}, sketch(force("P", value, "0"))),
                      {QStringLiteral("forces[0].magnitude.unit (line 1, column "),
                       QStringLiteral("\"%1\"").arg(QLatin1String(unit)),
                       QStringLiteral("N, kN, lbf, kip, kgf, daN, tonf, short tonf, kg, t")});
    }
    expectRefused(run({QStringLiteral("report"), QStringLiteral("-")},
                      sketch(force("P", "1", R"({"value": 25, "unit": "grad"})"))),
                  {QStringLiteral("forces[0].direction.unit"), QStringLiteral("deg, rad, gon")});
}

TEST(AUnitOfItsOwn, BesideNoNumberIsRefused) {
    for (const QByteArray& forces : {force("P", R"({"value": null, "unit": "kgf"})", "0"),
                                     force("P", "1", R"({"slope": [3, 4], "unit": "deg"})"),
                                     force("P", "1", R"({"value": null, "unit": "deg"})")})
        expectRefused(run({QStringLiteral("report"), QStringLiteral("-")}, sketch(forces)),
                      {QStringLiteral(".unit"), QStringLiteral("stands beside no number")});
    expectRefused(run({QStringLiteral("report"), QStringLiteral("-")},
                      sketch(force("P", R"({"value": 850, "unit": 3})", "0"))),
                  {QStringLiteral("forces[0].magnitude.unit"), QStringLiteral("is a number; write one of")});
}

TEST(AnAngleBeyondAllTurns, IsRefusedInOneShortLine) {
    const Ran ran = run({QStringLiteral("report"), QStringLiteral("-")}, sketch(force("P", "1", "1e300")));
    expectRefused(ran, {QStringLiteral("forces[0].direction"), QStringLiteral("1e+300 is beyond 1e10")});
    EXPECT_LT(ran.err.size(), 200);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
