// SPDX-License-Identifier: MIT
// `report FILE... --as csv`: several sketches in one table.
#include "tests/whole/verbs/driver.h"

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

class ReportTable : public Verbs {
protected:
    Ran table(QStringList files) const {
        return run(QStringList{QStringLiteral("report")} + files +
                   QStringList{QStringLiteral("--as"), QStringLiteral("csv")});
    }
    /// 3-4-5: R = 5 N at atan(4/3) = 53.13010235415598 degrees.
    QString right() const {
        return put(QStringLiteral("right.json"), sketch(force("P", "3", "0") + "," + force("Q", "4", "90")));
    }
    /// 340 cos 25 +- the root of 275^2 - (340 sin 25)^2 = 308.1446475924610 +- 234.4750268155 (mpmath).
    QString two() const {
        return put(QStringLiteral("two.json"),
                   sketch(force("P", "340", "25") + "," + force("Q", "275", "null"),
                          R"(, "sum": {"name": "R", "magnitude": null, "direction": 0})"));
    }
    QString none() const {
        return put(QStringLiteral("none.json"),
                   sketch(force("P", "340", "25") + "," + force("Q", "100", "null"),
                          R"(, "sum": {"name": "R", "magnitude": null, "direction": 0})"));
    }
    QString bad() const { return put(QStringLiteral("bad.json"), "{"); }
};

QList<QByteArray> lines(const QByteArray& text) {
    return text.trimmed().split('\n');
}

TEST_F(ReportTable, HasARowAFileAndSolution) {
    const Ran ran = table({right(), two()});
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err, "");
    const auto rows = lines(ran.out);
    ASSERT_EQ(rows.size(), 4);
    EXPECT_EQ(rows[0],
              "file,case,status,R,R low,R high,R utilisation,R unit,theta_R,theta_R low,theta_R high,"
              "theta_R utilisation,theta_R unit,theta_Q,theta_Q low,theta_Q high,"
              "theta_Q utilisation,theta_Q unit,solution,message");
    EXPECT_EQ(rows[1], (right() + ",,unique,5,,,,N,53.13010235415598,,,,deg,,,,,,1,").toUtf8());
    EXPECT_TRUE(rows[2].startsWith((two() + ",,two,").toUtf8()));
    EXPECT_TRUE(rows[3].startsWith((two() + ",,two,").toUtf8()));
    EXPECT_EQ(rows[2].split(',').size(), rows[0].split(',').size());
}

/// P 340 +- 5 at 25 +- 2, Q 275 at -40: R from 509.747 to 529.901, its direction from -5.0506 to -2.2263
/// (dense grid over all inputs and a local zoom).
TEST_F(ReportTable, HasLowAndHighWhereThereAreTolerances) {
    const QString file =
        put(QStringLiteral("tolerant.json"),
            sketch(force("P", R"({"value": 340, "plusMinus": 5})", R"({"value": 25, "plusMinus": 2})") + "," +
                   force("Q", "275", "-40")));
    const Ran ran = table({file});
    EXPECT_EQ(ran.status, 0);
    const QList<QByteArray> cells = lines(ran.out).value(1).split(',');
    ASSERT_GE(cells.size(), 13);
    EXPECT_NEAR(cells[3].toDouble(), 519.860, 5e-4);
    EXPECT_NEAR(cells[4].toDouble(), 509.747, 5e-4 + 0.02); // outward by at most 0.1 % of the width
    EXPECT_NEAR(cells[5].toDouble(), 529.901, 5e-4 + 0.02);
    EXPECT_LE(cells[4].toDouble(), 509.7475);
    EXPECT_GE(cells[5].toDouble(), 529.9005);
    EXPECT_EQ(cells[6], "");
    EXPECT_NEAR(cells[9].toDouble(), -5.0506, 5e-5 + 0.003);
    EXPECT_NEAR(cells[10].toDouble(), -2.2263, 5e-5 + 0.003);
}

/// 6 at 75 and 6 at 140 degrees: 12 cos 32.5 = 10.1207, 101.207 per cent of 10; 17.5 degrees off 90.
TEST_F(ReportTable, HasWhatALimitIsUsedAndEveryReportSaysIt) {
    const QString file = put(
        QStringLiteral("limited.json"),
        sketch(
            force("P", "6", "75") + "," + force("Q", "6", "140"),
            R"(, "sum": {"name": "R", "magnitude": null, "direction": null, "limit": 10, "permitted": {"axis": 90, "within": 20}})"));
    const Ran ran = table({file});
    EXPECT_EQ(ran.status, 0);
    EXPECT_NEAR(lines(ran.out).value(1).split(',').value(6).toDouble(), 101.20697, 5e-5);
    const QByteArray text = run({QStringLiteral("report"), file}).out.simplified();
    EXPECT_TRUE(text.contains("R is over its limit: 101.3 % of 10 N.")) << text.toStdString();
    EXPECT_TRUE(text.contains("The direction of R is permitted: 17.5\u00B0 off 90.0\u00B0 at most"));
    EXPECT_TRUE(text.contains("typed by the user, not rated data."));
    EXPECT_TRUE(text.contains("A sketch check, not a design."));
    const QByteArray json =
        run({QStringLiteral("report"), file, QStringLiteral("--as"), QStringLiteral("json")}).out;
    EXPECT_TRUE(json.contains("\"verdict\": \"over\"") || json.contains("\"verdict\":\"over\""))
        << json.toStdString();
    EXPECT_TRUE(json.contains("101.3 %"));
    EXPECT_TRUE(run({QStringLiteral("report"), file, QStringLiteral("--as"), QStringLiteral("html")})
                    .out.contains("is over its limit"));
}

TEST_F(ReportTable, SaysOfABadFileThatItIsOneAndGoesOn) {
    const Ran ran = table({bad(), path(QStringLiteral("absent.json")), right()});
    EXPECT_EQ(ran.status, 2);
    const auto rows = lines(ran.out);
    ASSERT_EQ(rows.size(), 4);
    EXPECT_TRUE(rows[1].startsWith((bad() + ",,bad,").toUtf8())) << rows[1].toStdString();
    EXPECT_TRUE(rows[2].contains("absent.json,,bad,")) << rows[2].toStdString();
    EXPECT_TRUE(rows[3].contains(",unique,5,"));
    EXPECT_EQ(lines(ran.err).size(), 2);
}

TEST_F(ReportTable, HasTheWorstStatus) {
    EXPECT_EQ(table({right(), none()}).status, 1);
    EXPECT_EQ(table({none(), bad(), right()}).status, 2);
    const auto rows = lines(table({none()}).out);
    ASSERT_EQ(rows.size(), 2);
    EXPECT_EQ(rows[0], "file,case,status,solution,message");
    EXPECT_TRUE(rows[1].contains(",,none,,"));
}

TEST_F(ReportTable, RefusesWhatHasNoSayAndItsOwnSketch) {
    expectRefused(run({QStringLiteral("report"), right(), QStringLiteral("--as"), QStringLiteral("csv"),
                       QStringLiteral("--rounding"), QStringLiteral("hand")}),
                  {QStringLiteral("--rounding")});
    expectRefused(run({QStringLiteral("report"), two(), right(), QStringLiteral("--as"),
                       QStringLiteral("csv"), QStringLiteral("-o"), right()}),
                  {QStringLiteral("one of the sketches")});
    expectRefused(run({QStringLiteral("report"), two(), right()}),
                  {QStringLiteral("want a folder for an output each")});
    expectRefused(run({QStringLiteral("report"), QStringLiteral("--as"), QStringLiteral("csv")}),
                  {QStringLiteral("FILE")});
}

TEST_F(ReportTable, CarriesTheCautionInAColumnOfItsOwn) {
    const QString lift =
        put(QStringLiteral("lift.json"),
            sketch(force("P", "3", "0") + "," + force("Q", "4", "90"), R"(, "title": "Lifting a crate")"));
    const auto rows = lines(table({right(), lift}).out);
    EXPECT_TRUE(rows[0].endsWith(",message,caution"));
    EXPECT_TRUE(rows[1].endsWith(",1,,")) << "this one lifts nothing";
    EXPECT_TRUE(rows[2].contains("A sketch check, not a design."));
    EXPECT_TRUE(rows[2].contains("Not covered: dynamics"));
    EXPECT_FALSE(lines(table({right()}).out)[0].contains("caution"));
}
} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
