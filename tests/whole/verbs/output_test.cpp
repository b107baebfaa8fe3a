// Where a verb's output goes, and what happens when it can't.
#include "tests/whole/verbs/driver.h"

#include <QProcess>
#include <fcntl.h>
#include <sys/resource.h>
#include <unistd.h>

namespace tailpoint::whole {
namespace {

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
    for (const char* verb : {"report", "figure"}) {
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
    EXPECT_EQ(run({QStringLiteral("report"), QStringLiteral("-")}, kRaft).out,
              run({QStringLiteral("report"), good()}).out);
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

} // namespace
} // namespace tailpoint::whole
