// SPDX-License-Identifier: MIT
// Limits in every form of the report: rounding hides none, and none hangs on colour.
#include "tests/whole/verbs/driver.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QXmlStreamReader>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

/// 10.04 reads 10.0 to three figures, and is 100.4 per cent of 10; atan(8.05/6) = 53.3013 degrees reads 53.3.
const QByteArray kOver = sketch(force("P", "6", "0") + "," + force("Q", "8.05", "90"),
                                R"(, "sum": {"name": "R", "magnitude": null, "direction": null, "limit": 10,
               "permitted": {"axis": 0, "within": 53.3}})");

QString reported(const char* form) {
    const Ran ran = run(
        {QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"), QLatin1String(form)}, kOver);
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    return QString::fromUtf8(ran.out).simplified();
}

TEST(LimitsReport, NoRoundingHidesOne) {
    for (const char* form : {"text", "html", "latex"}) {
        SCOPED_TRACE(form);
        QString told = reported(form);
        told.replace(QStringLiteral("\\%"), QStringLiteral("%")).replace(QChar(0xa0), u' ');
        EXPECT_TRUE(told.contains(QStringLiteral("R is over its limit: 100.5 % of 10 N.")))
            << told.toStdString();
        EXPECT_TRUE(told.contains(QStringLiteral("The direction of R is not permitted: up to 53.301")));
        EXPECT_TRUE(told.contains(QStringLiteral("53.300")));
        EXPECT_TRUE(told.contains(QStringLiteral("not rated data")));
        EXPECT_FALSE(told.contains(QStringLiteral("R is within")));
    }
}

TEST(LimitsReport, TheAnswerSaysItWhereItStands) {
    const QString told = reported("text");
    const qsizetype answer = told.indexOf(QStringLiteral("Answer R = 10.0 N")),
                    over = told.indexOf(QStringLiteral("R is over its limit"));
    ASSERT_GE(answer, 0) << told.toStdString();
    EXPECT_GT(over, answer);
    EXPECT_LT(over, told.indexOf(QStringLiteral("Components along x and y")));
}

/// 10.0400448 of 10 (Python: hypot(6, 8.05)).
TEST(LimitsReport, ScriptsGetTheFullShareAndTheVerdict) {
    const auto all = QJsonDocument::fromJson(reported("json").toUtf8()).object();
    const QJsonArray limits = all[QStringLiteral("solutions")][0][QStringLiteral("limits")].toArray();
    ASSERT_EQ(limits.size(), 2);
    EXPECT_NEAR(limits[0][QStringLiteral("utilisation")].toDouble(), 100.400448206, 1e-8);
    EXPECT_EQ(limits[0][QStringLiteral("text")].toString(), QStringLiteral("100.5 %"));
    EXPECT_EQ(limits[0][QStringLiteral("verdict")].toString(), QStringLiteral("over"));
    EXPECT_EQ(limits[1][QStringLiteral("verdict")].toString(), QStringLiteral("over"));
}

/// A bar, a word and a sentence each; the page stays well-formed.
TEST(LimitsReport, APageHasABarThatIsReadOut) {
    const QString page = reported("html");
    EXPECT_EQ(page.count(QStringLiteral("<svg class=\"bar\"")), 2);
    EXPECT_TRUE(page.contains(QStringLiteral("aria-label=\"R uses 100.5 % of its limit\"")));
    EXPECT_TRUE(page.contains(QStringLiteral("<th>! over</th>")));
    QXmlStreamReader reader(page);
    while (!reader.atEnd())
        reader.readNext();
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
}

/// In LaTeX each has a bar, the word in bold, and the sentence.
TEST(LimitsReport, LatexHasTheBarsToo) {
    const QString tex = reported("latex");
    EXPECT_EQ(tex.count(QStringLiteral("\\textbf{! over}")), 2) << tex.toStdString();
    EXPECT_EQ(tex.count(QStringLiteral("\\draw[line width=1.2pt]")), 2) << "where the limits are";
    EXPECT_EQ(tex.count(QStringLiteral("\\textbf{Limits}")), 1);
}

/// The mark is read in plain text, too, and stands nowhere else.
TEST(LimitsReport, TextHasTheMarkOfTheFigure) {
    const QString told = reported("text");
    EXPECT_TRUE(told.contains(QStringLiteral("! R is over its limit: 100.5 % of 10 N.")))
        << told.toStdString();
    EXPECT_TRUE(told.contains(QStringLiteral("! The direction of R is not permitted")));
    EXPECT_FALSE(told.contains(QChar(0x25b2)));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
