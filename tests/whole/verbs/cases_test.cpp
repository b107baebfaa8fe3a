// SPDX-License-Identifier: MIT
// A sketch with cases on the command line. Numbers: P = 3 N at 0, Q = 4 N at 90 degrees: R = 5 N; with Q = 6
// N, root 45 = 6.708203932499369 N; with P = 8 N and Q = 6 N, 10 N (by hand).
#include "tests/whole/verbs/driver.h"

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

class Cases : public Verbs {
protected:
    QString file() const {
        return put(QStringLiteral("cases.json"),
                   sketch(force("P", "3", "0") + "," + force("Q", "4", "90"),
                          R"(, "cases": [{"name": "breeze", "changes": {"Q": {"magnitude": 6}}},
                              {"name": "storm", "changes": {"P": {"magnitude": 8}, "Q": {"magnitude": 6}}}])"));
    }
    Ran report(const QStringList& more) const {
        return run(QStringList{QStringLiteral("report"), file()} + more);
    }
};

TEST_F(Cases, AreToldInWordsWithTheirEnvelope) {
    const Ran ran = report({});
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    const QByteArray words = ran.out.simplified(); // columns are as wide as they need
    for (const char* part :
         {"Cases case given differently", "P = 8.00 N; Q = 6.00 N", "breeze 6.71 N +1.71 N",
          "Envelope of the cases", "R 5.00 N as drawn 10.0 N storm"})
        EXPECT_TRUE(words.contains(part)) << part << " is not in\n" << ran.out.toStdString();
}

TEST_F(Cases, AreInTheReportForScripts) {
    const QJsonObject told = reportOf(bytesOf(file()), 0);
    const QJsonArray cases = told[QLatin1String("cases")].toArray();
    ASSERT_EQ(cases.size(), 2);
    const QJsonObject breeze = cases[0].toObject();
    EXPECT_EQ(breeze[QLatin1String("name")].toString(), QStringLiteral("breeze"));
    const QJsonObject sum =
        breeze[QLatin1String("solutions")].toArray()[0].toObject()[QLatin1String("sum")].toObject();
    EXPECT_NEAR(sum[QLatin1String("magnitude")].toDouble(), 6.708203932499369, 1e-12);
    EXPECT_NEAR(sum[QLatin1String("difference")].toObject()[QLatin1String("magnitude")].toDouble(),
                1.708203932499369, 1e-12);
    const QJsonObject first = told[QLatin1String("envelope")].toArray()[0].toObject();
    EXPECT_EQ(first[QLatin1String("of")].toString(), QStringLiteral("R"));
    EXPECT_EQ(first[QLatin1String("quantity")].toString(), QStringLiteral("magnitude"));
    const QJsonObject greatest = first[QLatin1String("greatest")].toObject();
    EXPECT_NEAR(greatest[QLatin1String("value")].toDouble(), 10, 1e-12);
    EXPECT_EQ(greatest[QLatin1String("by")].toArray()[0].toObject()[QLatin1String("case")].toString(),
              QStringLiteral("storm"));
}

TEST_F(Cases, OneIsReportedAloneWithItsNameInTheTitle) {
    const Ran ran = report({QStringLiteral("--case"), QStringLiteral("storm")});
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(ran.out.contains("case: storm")) << ran.out.toStdString();
    EXPECT_TRUE(ran.out.contains("R = 10.0 N"));
    EXPECT_FALSE(ran.out.contains("Envelope"));
}

TEST_F(Cases, ABadNameListsThoseThatThereAre) {
    expectRefused(report({QStringLiteral("--case"), QStringLiteral("Storm")}),
                  {QStringLiteral("--case Storm"), QStringLiteral("breeze, storm")});
    const QString plain = put(QStringLiteral("plain.json"), sketch(force("P", "3", "0")));
    expectRefused(run({QStringLiteral("report"), plain, QStringLiteral("--case"), QStringLiteral("storm")}),
                  {QStringLiteral("no cases"), QStringLiteral("leave it out")});
    expectRefused(run({QStringLiteral("figure"), file(), QStringLiteral("--case"), QStringLiteral("gale"),
                       QStringLiteral("-o"), path(QStringLiteral("a.svg"))}),
                  {QStringLiteral("breeze, storm")});
}

TEST_F(Cases, AreRowsOfTheTable) {
    const Ran ran = report({QStringLiteral("--as"), QStringLiteral("csv")});
    EXPECT_EQ(ran.status, 0);
    const QList<QByteArray> rows = ran.out.trimmed().split('\n');
    ASSERT_EQ(rows.size(), 4);
    EXPECT_TRUE(rows[1].startsWith((file() + ",as drawn,unique,5,").toUtf8())) << rows[1].toStdString();
    EXPECT_TRUE(rows[2].startsWith((file() + ",breeze,unique,6.70820393249936").toUtf8()))
        << rows[2].toStdString();
    EXPECT_TRUE(rows[3].startsWith((file() + ",storm,unique,10,").toUtf8())) << rows[3].toStdString();
}

TEST_F(Cases, TheWorstOfThemIsTheExitStatus) {
    const QString none =
        put(QStringLiteral("none.json"), sketch(force("P", "8", "null") + "," + force("Q", "7", "null"),
                                                R"(, "sum": {"name": "R", "magnitude": 10, "direction": 0},
                                        "cases": [{"name": "far", "changes": {"R": {"magnitude": 20}}}])"));
    const Ran ran = run({QStringLiteral("report"), none});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(ran.out.contains("The case 'far' has nothing that counts")) << ran.out.toStdString();
}

TEST_F(Cases, AreDrawnOneByOneOrLaidOver) {
    const QString out = path(QStringLiteral("a.svg"));
    const auto draw = [&](const QStringList& more) {
        const Ran ran = run(QStringList{QStringLiteral("figure"), file(), QStringLiteral("-o"), out} + more);
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        return bytesOf(out);
    };
    EXPECT_FALSE(draw({}).contains("id=\"case-0\""));
    EXPECT_TRUE(draw({QStringLiteral("--with-cases")}).contains("id=\"case-0\""));
    const QByteArray storm = draw({QStringLiteral("--case"), QStringLiteral("storm")});
    EXPECT_TRUE(storm.contains("case: storm"));
    expectRefused(run({QStringLiteral("figure"), file(), QStringLiteral("-o"), out,
                       QStringLiteral("--with-cases"), QStringLiteral("--values"), QStringLiteral("hidden")}),
                  {QStringLiteral("--with-cases"), QStringLiteral("leave it out")});
}

TEST_F(Cases, AreInTheHandout) {
    for (const char* form : {"html", "latex"}) {
        const Ran ran = report({QStringLiteral("--as"), QLatin1String(form)});
        EXPECT_EQ(ran.status, 0);
        EXPECT_TRUE(ran.out.contains("Envelope of the cases")) << form;
        const Ran exercise =
            report({QStringLiteral("--as"), QLatin1String(form), QStringLiteral("--no-solution")});
        EXPECT_FALSE(exercise.out.contains("Envelope")) << form;
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
