// SPDX-License-Identifier: MIT
// The report's contract with scripts, a line of the fine print a test.
#include "tests/whole/verbs/driver.h"

#include <cmath>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kRaft = sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"));

QJsonObject first(const QJsonObject& report) {
    return report[QStringLiteral("solutions")].toArray().at(0).toObject();
}
QJsonObject sumOf(const QJsonObject& report) {
    return first(report)[QStringLiteral("sum")].toObject();
}
QJsonObject forceOf(const QJsonObject& report, int i) {
    return first(report)[QStringLiteral("forces")].toArray().at(i).toObject();
}
double number(const QJsonObject& object, const char* key) {
    const QJsonValue value = object[QLatin1String(key)];
    EXPECT_TRUE(value.isDouble()) << key;
    return value.toDouble();
}
std::string text(const QJsonObject& vector, const char* key) {
    return vector[QLatin1String("text")].toObject()[QLatin1String(key)].toString().toStdString();
}
std::string words(const QJsonObject& report, const char* key) {
    return report[QLatin1String(key)].toString().toStdString();
}
int count(const QJsonObject& report, const char* key) {
    return static_cast<int>(report[QLatin1String(key)].toArray().size());
}
bool says(const QJsonObject& report, const char* part) {
    return words(report, "message").find(part) != std::string::npos;
}

TEST(Report, HasTheFormatItsVersionAndTheUnitsOfTheSheet) {
    const QJsonObject report = reportOf(kRaft, 0);
    EXPECT_EQ(words(report, "format"), "tailpoint-report");
    EXPECT_EQ(number(report, "version"), 1);
    const QJsonObject units = report[QLatin1String("units")].toObject();
    EXPECT_EQ(words(units, "force"), "N");
    EXPECT_EQ(words(units, "angle"), "deg");
}

TEST(Report, GivesTheSumByMagnitudeDirectionAndComponents) {
    const QJsonObject report = reportOf(kRaft, 0);
    const double degree = std::acos(-1.0) / 180;
    const double x = 340 * std::cos(25 * degree) + 275 * std::cos(40 * degree);
    const double y = 340 * std::sin(25 * degree) - 275 * std::sin(40 * degree);
    const QJsonObject sum = sumOf(report);
    EXPECT_EQ(words(sum, "name"), "R");
    EXPECT_NEAR(number(sum, "x"), x, 1e-10);
    EXPECT_NEAR(number(sum, "y"), y, 1e-10);
    EXPECT_NEAR(number(sum, "magnitude"), std::hypot(x, y), 1e-10);
    EXPECT_NEAR(number(sum, "direction"), std::atan2(y, x) / degree, 1e-12);
}

TEST(Report, GivesEveryForceInTheOrderOfTheSketch) {
    const QJsonObject report = reportOf(kRaft, 0);
    EXPECT_EQ(words(forceOf(report, 0), "name"), "P");
    EXPECT_EQ(words(forceOf(report, 1), "name"), "Q");
    EXPECT_EQ(number(forceOf(report, 1), "magnitude"), 275);
    EXPECT_EQ(number(forceOf(report, 1), "direction"), -40);
}

TEST(Report, TextIsAsShownWithAPlainSpaceAndAnAsciiMinus) {
    const QJsonObject report = reportOf(kRaft, 0);
    EXPECT_EQ(text(sumOf(report), "magnitude"), "520 N");
    EXPECT_EQ(text(sumOf(report), "direction"), "-3.6\u00B0");
    EXPECT_EQ(text(forceOf(report, 0), "direction"), "25.0\u00B0");
}

TEST(Report, TextHasNoGrouping) {
    const QJsonObject report = reportOf(sketch(force("P", "1234567", "0")), 0);
    EXPECT_EQ(text(sumOf(report), "magnitude"), "1230000 N");
}

TEST(Report, TextRoundsATypedValueAsTheDecimalThatWasTyped) {
    const QJsonObject report = reportOf(sketch(force("P", "2.675", "0.25")), 0);
    EXPECT_EQ(text(forceOf(report, 0), "magnitude"), "2.68 N");
    EXPECT_EQ(text(forceOf(report, 0), "direction"), "0.2\u00B0");
}

TEST(Report, APlainUniqueAnswerHasAnEmptyMessage) {
    const QJsonObject report = reportOf(kRaft, 0);
    EXPECT_EQ(words(report, "status"), "unique");
    EXPECT_EQ(words(report, "message"), "");
}

TEST(Report, DirectionsAreBroughtIntoTheHalfTurns) {
    const QByteArray forces = force("P", "1", "385") + "," + force("Q", "1", "-180") + "," +
                              force("S", "1", "180") + "," + force("T", "1", "-539.5");
    const QJsonObject report = reportOf(sketch(forces), 0);
    EXPECT_EQ(number(forceOf(report, 0), "direction"), 25);
    EXPECT_EQ(number(forceOf(report, 1), "direction"), 180);
    EXPECT_EQ(number(forceOf(report, 2), "direction"), 180);
    EXPECT_EQ(number(forceOf(report, 3), "direction"), -179.5);
}

QByteArray inUnits(const char* forceUnit, const char* angleUnit, const QByteArray& forces,
                   const QByteArray& rest = {}) {
    return QByteArray(R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": ")") + forceUnit +
           R"(", "angle": ")" + angleUnit + R"("}, "forces": [)" + forces + "]" + rest + "}";
}

TEST(Report, DirectionsInGonAndRadiansHaveTheirOwnHalfTurns) {
    const QJsonObject gon = reportOf(inUnits("kN", "gon", force("P", "1", "350")), 0);
    EXPECT_EQ(number(forceOf(gon, 0), "direction"), -50);
    EXPECT_EQ(text(forceOf(gon, 0), "direction"), "-50.0 gon");
    EXPECT_EQ(text(forceOf(gon, 0), "magnitude"), "1.00 kN");
    const QJsonObject rad = reportOf(inUnits("N", "rad", force("P", "1", "4")), 0);
    EXPECT_NEAR(number(forceOf(rad, 0), "direction"), 4 - 2 * std::acos(-1.0), 1e-15);
}

TEST(Report, DirectionsAreReferredToTheAxisInItsSenseButComponentsAreNot) {
    const QByteArray reference = R"(, "reference": {"axis": "+y", "sense": "cw"})";
    const QJsonObject report = reportOf(sketch(force("P", "100", "30"), reference), 0);
    EXPECT_EQ(number(forceOf(report, 0), "direction"), 30);
    EXPECT_NEAR(number(forceOf(report, 0), "x"), 50, 1e-12);
    EXPECT_NEAR(number(forceOf(report, 0), "y"), 86.60254037844386, 1e-12);
    EXPECT_EQ(number(sumOf(report), "direction"), 30);
}

TEST(Report, TheAxisMayStandAtAnyNumberOfDegrees) {
    const QJsonObject report =
        reportOf(sketch(force("P", "100", "30"), R"(, "reference": {"axis": 30, "sense": "ccw"})"), 0);
    EXPECT_NEAR(number(forceOf(report, 0), "x"), 50, 1e-12);
    EXPECT_NEAR(number(sumOf(report), "direction"), 30, 1e-13);
}

TEST(Report, SlopesAndBearingsAreAbsolute) {
    const QByteArray reference = R"(, "reference": {"axis": "-x", "sense": "cw"})";
    const QByteArray forces =
        force("P", "5", R"({"slope": [-3, -4]})") + "," + force("Q", "2", R"({"bearing": "S30E"})");
    const QJsonObject report = reportOf(sketch(forces, reference), 0);
    EXPECT_NEAR(number(forceOf(report, 0), "x"), -3, 1e-15);
    EXPECT_NEAR(number(forceOf(report, 0), "y"), -4, 1e-15);
    EXPECT_NEAR(number(forceOf(report, 1), "x"), 1, 1e-15);
    EXPECT_NEAR(number(forceOf(report, 1), "y"), -1.7320508075688772, 1e-15);
    // From -x clockwise, due north stands at 90 degrees and due east at 180.
    EXPECT_NEAR(number(forceOf(report, 1), "direction"), -120, 1e-12);
}

TEST(Report, TheSumIsNamedRUnlessTheFileNamesItOrAForceHasThatName) {
    EXPECT_EQ(words(sumOf(reportOf(sketch(force("R", "1", "0")), 0)), "name"), "S");
    const QByteArray named = R"(, "sum": {"name": "Pull", "magnitude": null, "direction": null})";
    EXPECT_EQ(words(sumOf(reportOf(sketch(force("P", "1", "0"), named), 0)), "name"), "Pull");
}

TEST(Report, AZeroSumWithoutADirectionIsNoUnknown) {
    const QByteArray forces =
        force("P", "300", "20") + "," + force("Q", "null", "135") + "," + force("S", "null", "-100");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 0})"), 0);
    EXPECT_EQ(words(report, "status"), "unique");
    EXPECT_EQ(number(sumOf(report), "magnitude"), 0);
    EXPECT_TRUE(sumOf(report)[QLatin1String("direction")].isNull());
    EXPECT_EQ(text(sumOf(report), "direction"), "no direction");
}

TEST(Report, AZeroResultantHasNoDirectionInWordsToo) {
    const QJsonObject report = reportOf(sketch(force("P", "250", "30") + "," + force("Q", "250", "-150")), 0);
    EXPECT_EQ(number(sumOf(report), "magnitude"), 0);
    EXPECT_TRUE(sumOf(report)[QLatin1String("direction")].isNull());
    EXPECT_EQ(text(sumOf(report), "direction"), "no direction");
    EXPECT_EQ(text(sumOf(report), "magnitude"), "0 N");
    const QJsonObject angles =
        first(report)[QLatin1String("triangle")].toObject()[QLatin1String("angles")].toObject();
    ASSERT_EQ(angles.size(), 3);
    EXPECT_TRUE(angles[QLatin1String("P")].isNull() || angles[QLatin1String("Q")].isNull());
}

TEST(Report, AZeroForceIsAllowed) {
    const QJsonObject report = reportOf(sketch(force("P", "0", "10") + "," + force("Q", "5", "20")), 0);
    EXPECT_EQ(number(forceOf(report, 0), "magnitude"), 0);
    EXPECT_EQ(number(sumOf(report), "magnitude"), 5);
}

TEST(Report, AllGivenIsOverdeterminedAndSaysWhetherItHolds) {
    const QByteArray forces = force("P", "3", "0") + "," + force("Q", "4", "90");
    const auto stated = [&](const char* direction) {
        return reportOf(
            sketch(forces, QByteArray(R"(, "sum": {"magnitude": 5, "direction": )") + direction + "}"), 1);
    };
    const QJsonObject holds = stated(R"({"slope": [3, 4]})"), fails = stated("10");
    EXPECT_EQ(words(holds, "status"), "overdetermined");
    EXPECT_EQ(words(fails, "status"), "overdetermined");
    EXPECT_TRUE(says(holds, "holds")) << words(holds, "message");
    EXPECT_TRUE(says(fails, "not hold")) << words(fails, "message");
}

TEST(Report, TooManyUnknownsAreUnderdeterminedAndNamedInWords) {
    const QByteArray forces = force("P", "null", "25") + "," + force("Q", "null", "null");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 400, "direction": 10})"), 1);
    EXPECT_EQ(words(report, "status"), "underdetermined");
    EXPECT_EQ(count(report, "solutions"), 0);
    EXPECT_TRUE(says(report, "P") || says(report, "Q")) << words(report, "message");
    EXPECT_EQ(count(report, "unknowns"), 3);
}

QJsonObject quantityOf(const QJsonObject& report, const char* name, int answer = 0) {
    for (const QJsonValue& value : report[QLatin1String("quantities")].toArray()) {
        const QJsonObject quantity = value.toObject();
        if (words(quantity, "name") == name && quantity[QLatin1String("answer")].toInt(0) == answer)
            return quantity;
    }
    ADD_FAILURE() << "no quantity " << name << ", answer " << answer;
    return {};
}

TEST(Report, ListsEveryQuantityThatTheSolutionPassesThrough) {
    const QJsonObject report = reportOf(sketch(force("P", "340", "25") + "," + force("Q", "275", "-40")), 0);
    const QJsonObject size = quantityOf(report, "R"), way = quantityOf(report, "theta_R"),
                      inner = quantityOf(report, "gamma"), given = quantityOf(report, "theta_Q");
    EXPECT_EQ(number(size, "value"), number(sumOf(report), "magnitude"));
    EXPECT_EQ(words(size, "role"), "asked");
    EXPECT_EQ(words(size, "kind"), "force");
    EXPECT_EQ(words(size, "text"), "520 N");
    EXPECT_EQ(number(way, "value"), number(sumOf(report), "direction"));
    EXPECT_EQ(words(way, "symbol"), "θ_R");
    EXPECT_EQ(words(way, "kind"), "angle");
    EXPECT_NEAR(number(inner, "value"), 115, 1e-12); // 180° − (25° + 40°)
    EXPECT_EQ(words(inner, "role"), "onTheWay");
    EXPECT_EQ(number(given, "value"), -40);
    EXPECT_EQ(words(given, "role"), "given");
}

TEST(Report, QuantitiesOfTwoAnswersBearTheirAnswer) {
    const QByteArray forces = force("P", "null", "40") + "," + force("Q", "260", "null");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 400, "direction": 10})"), 0);
    const QJsonArray solutions = report[QLatin1String("solutions")].toArray();
    for (const int answer : {1, 2}) {
        const QJsonObject solution = solutions[answer - 1].toObject();
        const QJsonObject p = solution[QLatin1String("forces")].toArray()[0].toObject();
        EXPECT_EQ(number(quantityOf(report, "P", answer), "value"), number(p, "magnitude"));
    }
    EXPECT_EQ(words(quantityOf(report, "Q"), "role"), "given");
}

TEST(Report, TooFewUnknownsAreOverdetermined) {
    const QByteArray forces = force("P", "null", "25") + "," + force("Q", "275", "-40");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 400, "direction": 10})"), 1);
    EXPECT_EQ(words(report, "status"), "overdetermined");
    EXPECT_NE(words(report, "message"), "");
}

TEST(Report, SmallestNullIsAsAbsent) {
    EXPECT_EQ(reportOf(sketch(force("P", "3", "0"), R"(, "smallest": null)"), 0),
              reportOf(sketch(force("P", "3", "0")), 0));
}

TEST(Report, TheSmallestForceStandsPerpendicularToTheSum) {
    const QByteArray forces = force("P", "340", "25") + "," + force("Q", "null", "null");
    const QJsonObject report =
        reportOf(sketch(forces, R"(, "sum": {"magnitude": null, "direction": 0}, "smallest": "Q")"), 0);
    EXPECT_NEAR(number(forceOf(report, 1), "magnitude"), 340 * std::sin(25 * std::acos(-1.0) / 180), 1e-12);
    EXPECT_NEAR(number(forceOf(report, 1), "direction"), -90, 1e-12);
}

TEST(Report, TheSmallestSumStandsPerpendicularToTheForceOfUnknownMagnitude) {
    const QByteArray forces = force("P", "340", "25") + "," + force("Q", "null", "160");
    const QJsonObject report =
        reportOf(sketch(forces, R"(, "sum": {"magnitude": null, "direction": null}, "smallest": "R")"), 0);
    EXPECT_NEAR(number(sumOf(report), "magnitude"), 340 * std::sin(45 * std::acos(-1.0) / 180), 1e-12);
    EXPECT_NEAR(number(sumOf(report), "direction"), 70, 1e-12);
}

const QByteArray kLineMeetsCircle = R"(, "sum": {"magnitude": 400, "direction": 10})";

TEST(Report, TwoAnswersAreExactlyTwoAndTheCounterClockwiseOneComesFirst) {
    const QByteArray forces = force("P", "250", "null") + "," + force("Q", "300", "null");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 420, "direction": 5})"), 0);
    EXPECT_EQ(words(report, "status"), "two");
    ASSERT_EQ(count(report, "solutions"), 2);
    EXPECT_NE(words(report, "message"), "");
    const QJsonArray solutions = report[QLatin1String("solutions")].toArray();
    const auto direction = [&](int i) {
        return number(solutions.at(i).toObject()[QLatin1String("forces")].toArray().at(0).toObject(),
                      "direction");
    };
    EXPECT_GT(direction(0), 5);
    EXPECT_LT(direction(1), 5);
}

TEST(Report, ATangentAnswerIsUniqueAndSaysSo) {
    const QByteArray forces = force("P", "null", "40") + "," + force("Q", "200", "null");
    const QJsonObject report = reportOf(sketch(forces, kLineMeetsCircle), 0);
    EXPECT_EQ(words(report, "status"), "unique");
    EXPECT_EQ(count(report, "solutions"), 1);
    EXPECT_TRUE(says(report, "tangent") || says(report, "touch")) << words(report, "message");
}

TEST(Report, NoAnswerSaysWhyAndExitsWith1) {
    const QByteArray forces = force("P", "null", "40") + "," + force("Q", "150", "null");
    const QJsonObject report = reportOf(sketch(forces, kLineMeetsCircle), 1);
    EXPECT_EQ(words(report, "status"), "none");
    EXPECT_EQ(count(report, "solutions"), 0);
    EXPECT_NE(words(report, "message"), "");
}

TEST(Report, EndlesslyManyAnswersSaySoAndExitWith1) {
    const QByteArray forces = force("P", "null", "35") + "," + force("Q", "null", "35");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 300, "direction": 35})"), 1);
    EXPECT_EQ(words(report, "status"), "endless");
    EXPECT_NE(words(report, "message"), "");
}

TEST(Report, RootsLostToASenseAreToldAndListedUnderReversed) {
    const QByteArray forces = force("P", "null", "115") + "," + force("Q", "320", "null");
    const QByteArray sum = R"(, "sum": {"magnitude": 300, "direction": 10})";
    const QJsonObject report = reportOf(sketch(forces, sum), 0);
    EXPECT_EQ(words(report, "status"), "unique");
    ASSERT_EQ(count(report, "solutions"), 1);
    ASSERT_EQ(count(report, "reversed"), 1);
    EXPECT_TRUE(says(report, "P") && says(report, "other way")) << words(report, "message");
    const QJsonObject lost = report[QLatin1String("reversed")].toArray().at(0).toObject();
    EXPECT_EQ(lost.keys(), first(report).keys());
}

TEST(Report, EitherSenseMakesALostRootAnAnswerWithAPositiveMagnitude) {
    const QByteArray forces = R"({"name": "P", "magnitude": null, "direction": 115, "sense": "either"},)" +
                              force("Q", "320", "null");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 300, "direction": 10})"), 0);
    EXPECT_EQ(words(report, "status"), "two");
    EXPECT_EQ(count(report, "reversed"), 0);
    for (const QJsonValue& solution : report[QLatin1String("solutions")].toArray())
        EXPECT_GT(
            number(solution.toObject()[QLatin1String("forces")].toArray().at(0).toObject(), "magnitude"), 0);
}

QJsonObject triangleOf(const QJsonObject& report) {
    return first(report)[QLatin1String("triangle")].toObject();
}

TEST(Report, TheTriangleOfTwoForcesKeysEachAngleByTheSideOpposite) {
    const QJsonObject triangle = triangleOf(reportOf(kRaft, 0));
    const QJsonObject sides = triangle[QLatin1String("sides")].toObject();
    const QJsonObject angles = triangle[QLatin1String("angles")].toObject();
    EXPECT_EQ(sides.keys(), (QStringList{QStringLiteral("P"), QStringLiteral("Q"), QStringLiteral("R")}));
    EXPECT_EQ(angles.keys(), sides.keys());
    EXPECT_FALSE(triangle.contains(QLatin1String("knowns")));
    EXPECT_EQ(number(sides, "P"), 340);
    EXPECT_NEAR(number(angles, "R"), 115, 1e-12);
    EXPECT_NEAR(number(angles, "P") + number(angles, "Q") + number(angles, "R"), 180, 1e-12);
    const double ratio = number(sides, "R") / std::sin(number(angles, "R") * std::acos(-1.0) / 180);
    EXPECT_NEAR(number(sides, "Q") / std::sin(number(angles, "Q") * std::acos(-1.0) / 180), ratio, 1e-9);
}

TEST(Report, TriangleAnglesAreInTheAngleUnitOfTheSheet) {
    const QJsonObject report =
        reportOf(inUnits("N", "gon", force("P", "3", "0") + "," + force("Q", "4", "100")), 0);
    EXPECT_NEAR(number(triangleOf(report)[QLatin1String("angles")].toObject(), "R"), 100, 1e-12);
}

TEST(Report, KnownForcesAddedUpBeforehandMakeOneSideNamedK) {
    const QByteArray forces = force("A", "120", "75") + "," + force("B", "90", "140") + "," +
                              force("P", "null", "20") + "," + force("Q", "null", "-60");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 0})"), 1);
    // A ring that can't be held by these two ropes pulling; with both lines of action alone it can.
    EXPECT_NE(words(report, "message"), "");
    QByteArray either = forces;
    either.replace("\"direction\": 20", "\"direction\": 20, \"sense\": \"either\"");
    either.replace("\"direction\": -60", "\"direction\": -60, \"sense\": \"either\"");
    const QJsonObject triangle = triangleOf(reportOf(sketch(either, R"(, "sum": {"magnitude": 0})"), 0));
    EXPECT_EQ(triangle[QLatin1String("sides")].toObject().keys(),
              (QStringList{QStringLiteral("K"), QStringLiteral("P"), QStringLiteral("Q")}));
    EXPECT_EQ(triangle[QLatin1String("knowns")].toArray(),
              (QJsonArray{QStringLiteral("A"), QStringLiteral("B")}));
}

TEST(Report, EquilibriumOfThreeForcesHasTheirTriangle) {
    const QByteArray forces =
        force("P", "300", "20") + "," + force("Q", "null", "135") + "," + force("S", "null", "-100");
    const QJsonObject report = reportOf(sketch(forces, R"(, "sum": {"magnitude": 0})"), 0);
    EXPECT_EQ(triangleOf(report)[QLatin1String("sides")].toObject().keys(),
              (QStringList{QStringLiteral("P"), QStringLiteral("Q"), QStringLiteral("S")}));
}

TEST(Report, AResultantOfFiveForcesHasNoTriangle) {
    QByteArray forces = force("P", "1", "0");
    for (const char* name : {"Q", "S", "T", "U"})
        forces += "," + force(name, "2", "40");
    EXPECT_FALSE(first(reportOf(sketch(forces), 0)).contains(QLatin1String("triangle")));
}

TEST(Report, EverySolutionHasSteps) {
    EXPECT_TRUE(first(reportOf(kRaft, 0))[QLatin1String("steps")].isArray());
}

TEST(Report, EveryNumberReadsBackAsTheVeryDouble) {
    const QJsonObject report = reportOf(sketch(force("P", "0.1", "0.30000000000000004")), 0);
    EXPECT_EQ(number(forceOf(report, 0), "magnitude"), 0.1);
    EXPECT_EQ(number(forceOf(report, 0), "direction"), 0.30000000000000004);
}

TEST(Report, ATitleThatSpeaksOfLiftingTowingOrAnchoringCarriesTheCaution) {
    EXPECT_TRUE(reportOf(sketch(force("P", "1", "0"), R"(, "title": "Hoisting the raft")"), 0)
                    .contains(QLatin1String("caution")));
    EXPECT_TRUE(reportOf(sketch(force("P", "1", "0"), R"(, "title": "Towing the raft")"), 0)
                    .contains(QLatin1String("caution")));
    EXPECT_FALSE(reportOf(sketch(force("P", "1", "0"), R"(, "title": "Tower above the raft")"), 0)
                     .contains(QLatin1String("caution")));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
