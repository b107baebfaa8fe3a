// SPDX-License-Identifier: MIT
// Lifting scenes in the report: one unknown, the smallest at rest, legs, the caution. Numbers by mpmath.
#include "tests/whole/verbs/driver.h"

#include <cmath>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kAtRest = R"(, "sum": {"name": "R", "magnitude": 0})";

QJsonObject first(const QJsonObject& report) {
    return report[QStringLiteral("solutions")].toArray().at(0).toObject();
}
QJsonObject forceOf(const QJsonObject& report, int i) {
    return first(report)[QStringLiteral("forces")].toArray().at(i).toObject();
}
std::string words(const QJsonObject& object, const char* key) {
    return object[QLatin1String(key)].toString().toStdString();
}

TEST(LegsReport, OneUnknownThatHoldsIsAnswered) {
    const QByteArray legs = force("A", "2.5", "35") + "," + force("B", "2.5", "145") + ",";
    const QJsonObject report = reportOf(sketch(legs + force("W", "null", "-90"), kAtRest), 0);
    EXPECT_EQ(words(report, "status"), "unique");
    EXPECT_NEAR(forceOf(report, 2)[QStringLiteral("magnitude")].toDouble(), 2.86788218175523048, 1e-14);
    EXPECT_LT(first(report)[QStringLiteral("residual")].toDouble(), 1e-14);
    EXPECT_NE(words(report, "message").find("nothing is left over"), std::string::npos);
    const QJsonObject off = reportOf(
        sketch(force("A", "2.5", "35") + "," + force("B", "2.6", "145") + "," + force("W", "null", "-90"),
               kAtRest),
        1);
    EXPECT_EQ(words(off, "status"), "overdetermined");
    EXPECT_NE(words(off, "message").find("misses by 0.0819 N"), std::string::npos) << words(off, "message");
}

TEST(LegsReport, TheSmallestAtRestIsAnswered) {
    const QByteArray forces =
        force("W", "12", "-90") + "," + force("A", "null", "50") + "," + force("B", "null", "null");
    const QJsonObject report = reportOf(sketch(forces, kAtRest + R"(, "smallest": "B")"), 0);
    EXPECT_EQ(words(report, "status"), "unique");
    EXPECT_NEAR(forceOf(report, 2)[QStringLiteral("magnitude")].toDouble(), 7.71345131623847187, 1e-13);
    EXPECT_NEAR(forceOf(report, 2)[QStringLiteral("direction")].toDouble(), 140, 1e-12);
}

TEST(LegsReport, EveryLegHasItsAngles) {
    const QByteArray forces =
        force("W", "10", "-90") + "," + force("A", "null", "25") + "," + force("B", "null", "120");
    const QJsonObject report = reportOf(sketch(forces, kAtRest), 0);
    const QJsonArray legs = first(report)[QStringLiteral("legs")].toArray();
    ASSERT_EQ(legs.size(), 2);
    const QJsonObject a = legs[0].toObject();
    EXPECT_EQ(words(a, "name"), "A");
    EXPECT_EQ(words(a, "load"), "W");
    EXPECT_EQ(a[QStringLiteral("fromHorizontal")].toDouble(), 25);
    EXPECT_EQ(a[QStringLiteral("fromVertical")].toDouble(), 65);
    EXPECT_EQ(a[QStringLiteral("neighbours")].toArray()[0].toObject()[QStringLiteral("angle")].toDouble(),
              95);
    EXPECT_NEAR(a[QStringLiteral("overLoad")].toDouble(), 0.501909918772, 1e-11); // sin 30 / sin 95
    EXPECT_TRUE(a[QStringLiteral("low")].toBool());
    EXPECT_NE(words(first(report), "legsRemark").find("less than 30"), std::string::npos);
    EXPECT_FALSE(first(reportOf(sketch(force("P", "3", "0")), 0)).contains(QLatin1String("legs")));
}

TEST(LegsReport, ThreeTensionsAreToldWhyStaticsCantShareTheLoad) {
    const QByteArray forces = force("W", "10", "-90") + "," + force("A", "null", "45") + "," +
                              force("B", "null", "90") + "," + force("C", "null", "135");
    const QJsonObject report = reportOf(sketch(forces, kAtRest), 1);
    EXPECT_EQ(words(report, "status"), "underdetermined");
    EXPECT_NE(words(report, "message").find("Statics alone can't share the load between A, B and C"),
              std::string::npos);
}

TEST(LegsReport, TheCautionStandsByNamesAndNotesToo) {
    const auto has = [](const QByteArray& file) {
        return reportOf(file, 0).contains(QLatin1String("caution"));
    };
    EXPECT_TRUE(has(sketch(force("Sling", "1", "0"))));
    EXPECT_TRUE(has(sketch(force("P", "1", "0"), R"(, "statement": "A davit holds the boat.")")));
    EXPECT_TRUE(has(sketch(force("P", "1", "0"), R"(, "notes": "from the mooring")")));
    EXPECT_FALSE(has(sketch(force("P", "1", "0"), R"(, "statement": "Two boats.", "other": "a davit")")));
    EXPECT_FALSE(
        has(sketch(force("P", "1", "0"), R"(, "statement": "A rope tows it.", "practice": {"code": "x"})")));
}

TEST(LegsReport, SaysLegsAndCautionInEveryForm) {
    const QString file = QStringLiteral(TAILPOINT_SAMPLES "/bridle.json");
    for (const char* form : {"text", "html", "latex", "json"}) {
        const Ran ran =
            run({QStringLiteral("report"), file, QStringLiteral("--as"), QString::fromLatin1(form)});
        EXPECT_EQ(ran.status, 0) << form;
        EXPECT_TRUE(ran.out.simplified().contains("centre of mass")) << form;
        EXPECT_TRUE(ran.out.contains("35.0")) << form;
        const bool isJson = form == std::string("json");
        EXPECT_TRUE(ran.out.contains(isJson ? "fromHorizontal" : "from horizontal")) << form;
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
