// SPDX-License-Identifier: MIT
// Every report can be traced: title, file, day, program, who, what is assumed. SOURCE_DATE_EPOCH: 1764374400
// is 2025-11-29 00:00 UTC (date -u -d @1764374400).
#include "tests/whole/verbs/driver.h"

#include <QJsonDocument>
#include <QProcess>
#include <QStandardPaths>
#include <cstdlib>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kSigned =
    sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"),
           R"(, "title": "Raft", "drawn": "A. Moss", "checked": "B. Rell", "revision": "C")");

class Record : public Verbs {
protected:
    Ran reportAs(const char* form, const QStringList& more = {}) const {
        ::setenv("SOURCE_DATE_EPOCH", "1764374400", 1);
        Ran ran = run(QStringList{QStringLiteral("report"), put(QStringLiteral("raft.json"), kSigned),
                                  QStringLiteral("--as"), QString::fromLatin1(form)} +
                      more);
        ::unsetenv("SOURCE_DATE_EPOCH");
        return ran;
    }
};

TEST_F(Record, StandsInTextHtmlAndLatex) {
    for (const char* form : {"text", "html", "latex"}) {
        SCOPED_TRACE(form);
        const Ran ran = reportAs(form);
        EXPECT_EQ(ran.status, 0);
        for (const char* part : {"Raft", "raft.json; 2025-11-29; Tailpoint ",
                                 "drawn by A. Moss; checked by B. Rell; revision C", "Assumed: all forces"})
            EXPECT_TRUE(ran.out.contains(part)) << part << "\n" << ran.out.toStdString();
    }
}

TEST_F(Record, IsTheSameBytesForTheSameDay) {
    for (const char* form : {"text", "html", "latex"})
        EXPECT_EQ(reportAs(form).out, reportAs(form).out) << form;
}

TEST_F(Record, HasNoPlaceOnAnExerciseAndNoDateInJson) {
    for (const char* form : {"html", "latex"}) {
        const Ran ran = reportAs(form, {QStringLiteral("--no-solution")});
        EXPECT_EQ(ran.status, 0);
        EXPECT_FALSE(ran.out.contains("Moss") || ran.out.contains("2025-11-29") ||
                     ran.out.contains("Assumed"))
            << form;
    }
    EXPECT_FALSE(reportAs("json").out.contains("2025"));
}

TEST_F(Record, IsInTheFiguresTitleBlockButNotOnAnExercise) {
    const QString file = put(QStringLiteral("raft.json"), kSigned), out = path(QStringLiteral("raft.svg"));
    ASSERT_EQ(run({QStringLiteral("figure"), file, QStringLiteral("-o"), out}).status, 0);
    EXPECT_TRUE(bytesOf(out).contains("drawn A. Moss"));
    EXPECT_TRUE(bytesOf(out).contains("revision C"));
    ASSERT_EQ(run({QStringLiteral("figure"), file, QStringLiteral("-o"), out, QStringLiteral("--given-only"),
                   QStringLiteral("--values"), QStringLiteral("hidden")})
                  .status,
              0);
    EXPECT_FALSE(bytesOf(out).contains("Moss"));
}

TEST_F(Record, RefusesATitleBlockThatCantBePrinted) {
    expectRefused(run({QStringLiteral("report"), QStringLiteral("-")},
                      sketch(force("P", "340", "25"), R"(, "drawn": 7)")),
                  {QStringLiteral("drawn"), QStringLiteral("double quotes")});
    expectRefused(run({QStringLiteral("report"), QStringLiteral("-")},
                      sketch(force("P", "340", "25"), R"(, "revision": "a\nb")")),
                  {QStringLiteral("revision")});
}

TEST_F(Record, StandsUnderAFigureOnAPage) {
    if (QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty())
        GTEST_SKIP() << "pdftotext is not installed";
    const QString file = put(QStringLiteral("raft.json"), kSigned), out = path(QStringLiteral("raft.pdf"));
    const auto words = [&](const QStringList& more) {
        ::setenv("SOURCE_DATE_EPOCH", "1764374400", 1);
        EXPECT_EQ(run(QStringList{QStringLiteral("figure"), file, QStringLiteral("-o"), out} + more).status,
                  0);
        ::unsetenv("SOURCE_DATE_EPOCH");
        QProcess reader;
        reader.start(QStringLiteral("pdftotext"), {out, QStringLiteral("-")});
        EXPECT_TRUE(reader.waitForFinished());
        return QString::fromUtf8(reader.readAllStandardOutput());
    };
    for (const char* paper : {"free", "a4", "letter-landscape"}) {
        SCOPED_TRACE(paper);
        const QString told = words({QStringLiteral("--paper"), QLatin1String(paper)});
        for (const char* part :
             {"Raft", "raft.json; 2025-11-29; Tailpoint ", "A. Moss", "B. Rell", "Assumed: all"})
            EXPECT_TRUE(told.contains(QLatin1String(part))) << part << told.toStdString();
    }
    const QString exercise = words({QStringLiteral("--given-only")});
    EXPECT_FALSE(exercise.contains(QStringLiteral("2025")) || exercise.contains(QStringLiteral("Assumed")));
}
} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
