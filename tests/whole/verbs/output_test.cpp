// SPDX-License-Identifier: MIT
// Where a verb's output goes, and what happens when it can't.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QFile>
#include <fcntl.h>
#include <linux/capability.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kRaft = sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"));

class Output : public Verbs {
protected:
    QString good() const { return put(QStringLiteral("good.json"), kRaft); }
    QString out() const { return path(QStringLiteral("out")); }
};

TEST_F(Output, TheProgramSaysItsVersion) {
    const Ran ran = run({QStringLiteral("--version")});
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(ran.out.startsWith("tailpoint ")) << ran.out.toStdString();
}

TEST_F(Output, EveryVerbKnowsHelp) {
    for (const char* verb : {"report", "figure", "sweep"}) {
        const Ran ran = run({QString::fromLatin1(verb), QStringLiteral("--help")});
        EXPECT_EQ(ran.status, 0);
        EXPECT_TRUE(ran.out.contains(QByteArray("Usage: tailpoint ") + verb)) << ran.out.toStdString();
        EXPECT_EQ(ran.err, "");
    }
    const Ran general = run({QStringLiteral("--help")});
    EXPECT_EQ(general.status, 0);
    EXPECT_TRUE(general.out.contains("report") && general.out.contains("figure"));
}

TEST_F(Output, AReportGoesToStandardOutputUnlessAFileIsNamed) {
    const Ran shown = run({QStringLiteral("report"), good()});
    EXPECT_EQ(shown.status, 0);
    const Ran saved = run({QStringLiteral("report"), good(), QStringLiteral("-o"), out()});
    EXPECT_EQ(saved.status, 0);
    EXPECT_EQ(saved.out, "");
    EXPECT_EQ(bytesOf(out()), shown.out);
    EXPECT_EQ(run({QStringLiteral("report"), good(), QStringLiteral("-o"), QStringLiteral("-")}).out,
              shown.out);
}

TEST_F(Output, FileMayBeStandardInput) {
    const QByteArray named = run({QStringLiteral("report"), good()}).out;
    EXPECT_TRUE(named.contains("good.json; ")); // the record names the file
    EXPECT_EQ(run({QStringLiteral("report"), QStringLiteral("-")}, kRaft).out,
              QByteArray(named).replace("good.json; ", ""));
}

/// The hypotenuse of 100 and 50 is 111.803 (computed outside).
TEST_F(Output, OneFigureMoreAfterAOneWhereThatIsAsked) {
    const QByteArray right = sketch(force("P", "100", "0") + "," + force("Q", "50", "90"));
    const QStringList report{QStringLiteral("report"), QStringLiteral("-")};
    EXPECT_TRUE(run(report, right).out.contains("111.80 N, to three figures 112 N"));
    const Ran more = run(report + QStringList{QStringLiteral("--more-after-one")}, right);
    EXPECT_TRUE(more.out.contains("111.803 N, to four figures 111.8 N")) << more.out.toStdString();
    EXPECT_TRUE(more.out.contains("R = 111.8 N, 26.6")) << more.out.toStdString();
}

TEST_F(Output, AnOptionMayCarryItsValueAfterAnEqualsSign) {
    EXPECT_TRUE(run({QStringLiteral("report"), good(), QStringLiteral("--as=json")}).out.startsWith('{'));
}

TEST_F(Output, AfterTwoDashesANameMayBeginWithADash) {
    put(QStringLiteral("-raft.json"), kRaft);
    const QString folder = m_folder.path();
    const Ran ran = run({QStringLiteral("report"), QStringLiteral("--"), QStringLiteral("-raft.json")}, {},
                        [folder] { EXPECT_EQ(::chdir(qPrintable(folder)), 0); });
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
}

TEST_F(Output, TheTextOfAReportSaysTheAnswerInWords) {
    const QByteArray text = run({QStringLiteral("report"), good()}).out;
    for (const char* part : {"Given", "340 N", "-40.0\u00B0", "Find the resultant R of P and Q.",
                             "R = 520 N, 3.6\u00B0 clockwise from +x", "115.0\u00B0", "-33.1"})
        EXPECT_TRUE(text.contains(part)) << part << " is not in\n" << text.toStdString();
}

TEST_F(Output, TheTextOfAReportShowsTolerancesAndLinesOfAction) {
    const QByteArray forces = R"({"name": "P", "magnitude": {"value": 340, "plusMinus": 5},
        "direction": {"value": 25, "plusMinus": 0.5}, "sense": "either"})";
    const QByteArray text = run({QStringLiteral("report"), QStringLiteral("-")}, sketch(forces)).out;
    for (const char* part : {"340 \u00B1 5 N", "25.0\u00B0 \u00B1 0.5\u00B0", "line of action only"})
        EXPECT_TRUE(text.contains(part)) << part << " is not in\n" << text.toStdString();
}

TEST_F(Output, TheTextOfAReportNeverPartsANumberFromItsUnit) {
    const QByteArray forces = force("P", "null", "25") + "," + force("Q", "null", "null");
    const QByteArray question = sketch(forces, R"(, "sum": {"magnitude": 400, "direction": 10})");
    const QByteArray text = run({QStringLiteral("report"), QStringLiteral("-")}, question).out;
    EXPECT_TRUE(text.contains("400 N at 10.0")) << text.toStdString();
}

TEST_F(Output, AFullDiskBehindStandardOutputIsSaid) {
    const Ran ran = run({QStringLiteral("report"), good()}, {}, [] {
        const int full = ::open("/dev/full", O_WRONLY);
        ::dup2(full, STDOUT_FILENO);
    });
    expectRefused(ran, {QStringLiteral("standard output"), QStringLiteral("disk is full")});
}

TEST_F(Output, AClosedPipeBehindStandardOutputIsSaid) {
    const Ran ran = run({QStringLiteral("report"), good()}, {}, [] {
        int ends[2];
        if (::pipe(ends) == 0) {
            ::close(ends[0]);
            ::dup2(ends[1], STDOUT_FILENO);
        }
    });
    expectRefused(ran, {QStringLiteral("standard output"), QStringLiteral("closed the pipe")});
}

TEST_F(Output, BeyondAFileSizeLimitTheOlderFileStandsAndTheErrorIsSaid) {
    for (const char* name : {"old.txt", "old.svg", "old.png", "old.pdf"}) {
        const QString file = put(QString::fromLatin1(name), "older");
        const bool text = file.endsWith(QLatin1String(".txt"));
        const Ran ran = run(
            {text ? QStringLiteral("report") : QStringLiteral("figure"), good(), QStringLiteral("-o"), file},
            {}, [] {
                const rlimit limit{512, 512};
                ::setrlimit(RLIMIT_FSIZE, &limit);
            });
        expectRefused(ran, {file, QStringLiteral("larger than the system allows")});
        EXPECT_EQ(bytesOf(file), "older");
    }
    EXPECT_EQ(everything().size(), 5); // the four and the sketch: nothing beside them
}

/// Root writes everywhere; without this capability it is bound by permissions like anybody.
void giveUpWritingEverywhere() {
    ::prctl(PR_CAPBSET_DROP, CAP_DAC_OVERRIDE);
}

TEST_F(Output, AFileThatMayNotBeWrittenStands) {
    const QString file = put(QStringLiteral("old.svg"), "older");
    ASSERT_EQ(::chmod(qPrintable(file), 0444), 0);
    expectRefused(
        run({QStringLiteral("figure"), good(), QStringLiteral("-o"), file}, {}, giveUpWritingEverywhere),
        {file, QStringLiteral("no permission")});
    EXPECT_EQ(bytesOf(file), "older");
}

TEST_F(Output, AFolderThatMayNotBeWrittenStaysAsItIs) {
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("shut")));
    const QString file = path(QStringLiteral("shut/a.svg"));
    ASSERT_EQ(::chmod(qPrintable(path(QStringLiteral("shut"))), 0555), 0);
    expectRefused(
        run({QStringLiteral("figure"), good(), QStringLiteral("-o"), file}, {}, giveUpWritingEverywhere),
        {file, QStringLiteral("no permission")});
    EXPECT_TRUE(
        QDir(path(QStringLiteral("shut"))).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot));
}

/// As a profiler's or a terminal's signals do.
TEST_F(Output, CallsThatASignalInterruptsAreTakenUpAgain) {
    for (const char* call : {"fsync", "fchmod", "rename", "close", "write"}) {
        const QString file = put(QStringLiteral("old.txt"), "older"); // fchmod: takes its permissions over
        const Ran ran = run({QStringLiteral("report"), good(), QStringLiteral("-o"), file}, {}, nullptr,
                            withFaults(QLatin1String(call) + QStringLiteral("=EINTR:1:3")));
        EXPECT_EQ(ran.status, 0) << call << ": " << ran.err.toStdString();
        EXPECT_TRUE(bytesOf(file).contains("R = 520 N")) << call;
    }
    EXPECT_EQ(everything().size(), 2);
}

TEST_F(Output, ACallThatFailsLeavesTheOlderFileAndNothingBeside) {
    for (const char* fault : {"fsync=EIO", "fchmod=EIO", "rename=EIO", "close=EIO", "write=ENOSPC"}) {
        const QString file = put(QStringLiteral("old.txt"), "older");
        expectRefused(run({QStringLiteral("report"), good(), QStringLiteral("-o"), file}, {}, nullptr,
                          withFaults(QLatin1String(fault))),
                      {file, QStringLiteral("not saved")});
        EXPECT_EQ(bytesOf(file), "older") << fault;
    }
    EXPECT_EQ(everything().size(), 2);
}

TEST_F(Output, AllStagesAreWrittenOrNone) {
    const QString older = put(QStringLiteral("k-2.svg"), "older");
    const QStringList figure{QStringLiteral("figure"),  good(),
                             QStringLiteral("--stage"), QStringLiteral("all"),
                             QStringLiteral("-o"),      path(QStringLiteral("k.svg"))};
    for (const char* fault : {"write=ENOSPC:7:1", "fsync=EIO:9:1", "rename=EIO:6:1", "rename=EIO:9:1"}) {
        expectRefused(run(figure, {}, nullptr, withFaults(QLatin1String(fault))),
                      {path(QStringLiteral("k-")), QStringLiteral("not saved")});
        EXPECT_EQ(bytesOf(older), "older") << fault;
        EXPECT_EQ(everything().size(), 2) << fault << everything().join(u' ').toStdString();
    }
    EXPECT_EQ(run(figure).status, 0);
    EXPECT_EQ(everything().size(), 10);
}

TEST_F(Output, AReportNeverReplacesTheSketchThatItReports) {
    const QString link = path(QStringLiteral("link.json"));
    ASSERT_TRUE(QFile::link(good(), link));
    for (const QString& out : {good(), link})
        expectRefused(run({QStringLiteral("report"), good(), QStringLiteral("-o"), out}),
                      {out, QStringLiteral("is the sketch itself")});
    EXPECT_EQ(bytesOf(good()), kRaft);
}

TEST_F(Output, TenThousandForcesAreReportedAndDrawn) {
    QByteArray forces;
    for (int i = 0; i < 10'000; ++i)
        forces += (i ? "," : "") + force(("F" + std::to_string(i)).c_str(), QByteArray::number(1 + i % 7),
                                         QByteArray::number(i * 37 % 360));
    const QString file = put(QStringLiteral("many.json"), sketch(forces));
    EXPECT_EQ(run({QStringLiteral("report"), file}).status, 0);
    EXPECT_EQ(run({QStringLiteral("report"), file, QStringLiteral("--as"), QStringLiteral("json")}).status,
              0);
    EXPECT_EQ(
        run({QStringLiteral("figure"), file, QStringLiteral("-o"), path(QStringLiteral("a.svg"))}).status, 0);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
