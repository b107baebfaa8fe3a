// SPDX-License-Identifier: MIT
// What a report says to a class, sample by sample: whole sentences, each once, nothing of the program's own
// talk.
#include "tests/whole/verbs/driver.h"

#include <QRegularExpression>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

QString sampleFile(const QString& name) {
    return QStringLiteral(TAILPOINT_SAMPLES "/%1.json").arg(name);
}

QString reportOf(const QString& name, const QString& as = QStringLiteral("text")) {
    return QString::fromUtf8(
        run({QStringLiteral("report"), sampleFile(name), QStringLiteral("--as=") + as}).out);
}

/// With every run of white space as one space, so that a sentence is found across lines.
QString flowed(const QString& text) {
    return text.simplified();
}

/// The paragraph under a heading of the text report.
QString under(const QString& report, const QString& heading) {
    const qsizetype begin = report.indexOf(u'\n' + heading + u'\n') + heading.size() + 2;
    return flowed(report.mid(begin, report.indexOf(QStringLiteral("\n\n"), begin) - begin));
}

TEST(ReportWords, TheGivenSumIsTheResultantOrEquilibriumIsSaid) {
    const QString given = reportOf(QStringLiteral("two-answers")),
                  atRest = reportOf(QStringLiteral("ring-at-rest"));
    EXPECT_TRUE(given.contains(QStringLiteral("  R, resultant")));
    EXPECT_TRUE(atRest.contains(QStringLiteral("\n  in equilibrium: ΣF = 0\n")));
    EXPECT_FALSE(atRest.contains(QStringLiteral("no direction")));
    EXPECT_FALSE((given + atRest).contains(QStringLiteral("(sum)")));
}

/// 340 cos 25° = 308.1446.
TEST(ReportWords, ByHandAQuestionWithoutAnswerIsRoundedToo) {
    const auto ran = run({QStringLiteral("report"), sampleFile(QStringLiteral("all-given")),
                          QStringLiteral("--rounding=hand")});
    const QString report = QString::fromUtf8(ran.out);
    EXPECT_TRUE(report.contains(QStringLiteral("= 308 N\n"))) << ran.out.constData();
    EXPECT_FALSE(report.contains(QStringLiteral("308.1"))) << ran.out.constData();
}

/// At the step of the answer; where there is none it is all that can be said, and stands in front.
TEST(ReportWords, WhatIsToBeSaidOfTheAnswerStandsOnceAtItsAnswer) {
    for (const auto& [sample, said] :
         {std::pair{"two-answers", "Two answers: the circle"},
          std::pair{"either-sense", "Two answers: the circle"},
          std::pair{"two-directions", "Two answers: the circle"},
          std::pair{"tangent", "One answer (tangent)"}, std::pair{"no-resultant", "the forces balance"}}) {
        const QString report = reportOf(QLatin1String(sample));
        EXPECT_EQ(flowed(report).count(QLatin1String(said)), 1) << sample;
        EXPECT_FALSE(report.contains(QStringLiteral("\nNote\n"))) << sample;
    }
    EXPECT_TRUE(reportOf(QStringLiteral("no-answer")).contains(QStringLiteral("\nNote\n")));
}

/// What could be asked next is for the window and for scripts, not for paper.
TEST(ReportWords, NothingIsSaidOfHowToAskTheProgram) {
    const QString file = QStringLiteral("all-given");
    for (const char* form : {"text", "html", "latex"})
        EXPECT_FALSE(reportOf(file, QLatin1String(form)).contains(QStringLiteral("leave two"))) << form;
    EXPECT_TRUE(
        reportOf(file, QStringLiteral("json")).contains(QStringLiteral("leave two of these unknown")));
    EXPECT_TRUE(flowed(reportOf(file)).contains(QStringLiteral("the equation holds within rounding")));
    static const QRegularExpression digits(QStringLiteral("agree (exactly|to \\d+ digits)"));
    EXPECT_FALSE(reportOf(QStringLiteral("survey-raft")).contains(digits));
}

TEST(ReportWords, RulerAndProtractorAreSpokenOfOnceWhereTheEstimateIsMade) {
    const QString sentence = QStringLiteral("Ruler and protractor");
    for (const char* sample : {"survey-raft", "five-forces", "missing-force", "two-directions", "tangent",
                               "smallest-force", "oblique-components", "line-that-holds"}) {
        const QString report = reportOf(QLatin1String(sample));
        EXPECT_EQ(report.count(sentence), 1) << sample;
        EXPECT_LT(report.indexOf(sentence),
                  report.indexOf(QStringLiteral(" Answer\n"), report.indexOf(QStringLiteral("Worked"))))
            << sample;
    }
}

/// How many answers there are is not given away by the question.
TEST(ReportWords, TheQuestionIsTheSameHoweverManyAnswersThereAre) {
    for (const char* sample : {"no-answer", "tangent", "two-answers"})
        EXPECT_EQ(
            under(reportOf(QLatin1String(sample)), QStringLiteral("Find")).toStdString(),
            "Find every magnitude of P and direction of Q for which the resultant is R = 400 N at 10.0°.")
            << sample;
    EXPECT_TRUE(
        under(reportOf(QStringLiteral("two-directions")), QStringLiteral("Find"))
            .startsWith(QStringLiteral("Find all directions of P and Q for which the resultant is R = ")));
}

TEST(ReportWords, BothAnswersStandInTheirOrderInAStepThatTheyShare) {
    const QString report = flowed(reportOf(QStringLiteral("two-answers")));
    const QString both = QStringLiteral("First answer: P′ = 180 N; 𝑸 acts 10.3° clockwise from +x. "
                                        "Second answer: P″ = 513 N; 𝑸 acts 89.7° clockwise from +x.");
    EXPECT_EQ(report.count(both), 1) << "shared, and told once";
    EXPECT_TRUE(report.contains(QStringLiteral("Steps 1 to 9 are the same as in the first answer.")));
}

class FigureWords : public Verbs {};

/// Through another vector's tip runs a parallel; the line of action runs through the common point.
TEST_F(FigureWords, ALineThatMissesTheCommonPointIsAParallel) {
    const auto figureOf = [&](const char* name) {
        const QString file = path(QStringLiteral("figure.svg"));
        run({QStringLiteral("figure"), sampleFile(QLatin1String(name)), QStringLiteral("-o"), file});
        return bytesOf(file);
    };
    const QByteArray lines = figureOf("ring-at-rest");
    // P, which is known, comes first: Q follows at its tip, and S leads back to the common point.
    EXPECT_TRUE(lines.contains(">Parallel to the line of action of Q</title>"));
    EXPECT_FALSE(lines.contains(">Line of action of Q</title>"));
    EXPECT_TRUE(lines.contains(">Line of action of S</title>"));
    for (const char* sample : {"no-answer", "tangent", "two-answers"})
        EXPECT_FALSE(figureOf(sample).contains(">Line of action of P</title>")) << sample;
}

/// Source: A = 120 N at 75°, so -A points to 75° - 180° = -105°.
TEST(ReportWords, AVectorTakenAwayPointsTheOtherWayInTheTable) {
    const QString report = reportOf(QStringLiteral("ring-of-known-pulls"));
    static const QRegularExpression row(QStringLiteral("-𝑨 +120 N +-105.0° +-31.058 N +-115.91 N"));
    EXPECT_TRUE(report.contains(row));
    const qsizetype told = report.indexOf(QStringLiteral("is what the forces sought must amount to"));
    EXPECT_GT(told, 0);
    EXPECT_LT(told, report.indexOf(QStringLiteral("then add each column")));
}

/// Along u = cos 22.423°, sin 22.423° the five forces add up to 278.476 N, across it to 0.0061 N (Python 3,
/// double precision); the rounded components across, 15.29 - 243.76 + 159.24 - 18.58 + 87.82, leave 0.01.
TEST(ReportWords, TheCheckInTurnedAxesComparesNumberWithNumber) {
    const QString report = reportOf(QStringLiteral("five-forces"));
    const QString check = report.mid(report.indexOf(QStringLiteral("Check by components")));
    EXPECT_TRUE(check.contains(QStringLiteral("= 278.48 N"))) << check.toStdString();
    EXPECT_TRUE(flowed(check).contains(QStringLiteral("0.01 N is left across it"))) << check.toStdString();
    EXPECT_TRUE(flowed(check).contains(QStringLiteral("both ways agree"))) << check.toStdString();
}

/// 508.629 to 531.148 N and -4.7392 to -2.5575 degrees: own dense grid over all four inputs, ends included
/// (Python 3, double precision).
TEST(ReportWords, AnAnswerStandsWithItsRange) {
    const QString report = reportOf(QStringLiteral("with-tolerance"));
    const QString answer = flowed(under(report, QStringLiteral("Answer")));
    EXPECT_TRUE(answer.contains(QStringLiteral("R = 520 N, between 508 N and 532 N; ")))
        << answer.toStdString();
    EXPECT_TRUE(answer.contains(QStringLiteral(", between -4.8° and -2.5°"))) << answer.toStdString();
    EXPECT_TRUE(flowed(under(report, QStringLiteral("Force triangle")))
                    .contains(QStringLiteral("R 520 N (508 to 532 N) 115.0°")))
        << report.toStdString();
    const QString worked = flowed(report.mid(report.indexOf(QStringLiteral("Worked solution"))));
    for (const char* told :
         {"= 519.86 N, to three figures 520 N, between 508 N and 532 N",
          "R = 520 N, between 508 N and 532 N, 3.6° clockwise from +x, θ_R between -4.8° and "
          "-2.5°.",
          "R = 520 N (508 to 532 N) lies between."})
        EXPECT_TRUE(worked.contains(QString::fromUtf8(told))) << told << '\n' << worked.toStdString();
    const QString html = reportOf(QStringLiteral("with-tolerance"), QStringLiteral("html"));
    EXPECT_TRUE(html.contains(QStringLiteral("<p>Each range is what can come out")))
        << "in the size of the text";
    EXPECT_TRUE(reportOf(QStringLiteral("with-tolerance"), QStringLiteral("latex"))
                    .contains(QStringLiteral("Each range is what can come out")));
    EXPECT_FALSE(reportOf(QStringLiteral("survey-raft")).contains(QStringLiteral("tolerance")));
}

/// Beyond half a turn an angle stands as it was typed where it is given, and once as its equal.
TEST(ReportWords, ADirectionStandsInTheFormInWhichItWasTyped) {
    const QByteArray typed =
        R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N", "angle": "deg"},
        "forces": [{"name": "P", "magnitude": 300, "direction": 210}, {"name": "Q", "magnitude": 200, "direction": -250},
                   {"name": "S", "magnitude": 100, "direction": {"bearing": "N30W"}}]})";
    const QString report = QString::fromUtf8(run({QStringLiteral("report"), QStringLiteral("-")}, typed).out);
    for (const char* given : {"P = 300 N at 210.0°.", "Q = 200 N at -250.0°.", "S = 100 N at N30°W."})
        EXPECT_TRUE(report.contains(QString::fromUtf8(given))) << given;
    EXPECT_EQ(report.count(QStringLiteral("θ_P = 210.0° - 360°")), 1);
    EXPECT_EQ(flowed(report).count(QStringLiteral("= -150.0°")), 1);
}

/// Source: south 65 degrees east is 180 - 65 = 115 degrees from north, clockwise.
TEST(ReportWords, ABearingIsAnAngleAtOnceWhereTheSheetCountsFromNorth) {
    const QString report = flowed(reportOf(QStringLiteral("kip-bearings")));
    EXPECT_TRUE(report.contains(QStringLiteral("θ_P = 30.0° θ_Q = 180° - 65° = 115.0°")));
    EXPECT_LT(report.indexOf(QStringLiteral("Answer R")), report.indexOf(QStringLiteral("ψ_P")));
    EXPECT_EQ(report.count(QStringLiteral("ψ_P = 90.0° - θ_P")), 1) << "for the components of the check";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
