// SPDX-License-Identifier: MIT
// A verb never writes what is no sketch over the sketch that it reads, whatever the name, the link or the
// stream.
#include "tests/whole/verbs/driver.h"

#include <QFile>
#include <fcntl.h>
#include <unistd.h>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kRaft = sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"));

class ReplacedInput : public Verbs {
protected:
    QString json() const { return put(QStringLiteral("q.json"), kRaft); }
    /// An SVG that carries the raft.
    QString svg(const char* name) const {
        const QString file = path(QLatin1String(name));
        EXPECT_EQ(run({QStringLiteral("figure"), json(), QStringLiteral("-o"), file}).status, 0);
        return file;
    }
    /// Standard input, or output, is this file.
    static std::function<void()> stream(const QString& file, int flags, int as) {
        return [name = QFile::encodeName(file), flags, as] {
            const int fd = ::open(name.constData(), flags);
            ::dup2(fd, as);
        };
    }
};

TEST_F(ReplacedInput, OneOfAllStagesIsNotWrittenOverTheSketch) {
    const QString own = svg("k-3.svg");
    const QByteArray whole = bytesOf(own);
    const QStringList before = everything();
    const QStringList stages{QStringLiteral("figure"),  own,
                             QStringLiteral("-o"),      path(QStringLiteral("k.svg")),
                             QStringLiteral("--stage"), QStringLiteral("all")};
    for (const char* hides : {"--values=hidden", "--names=hidden", "--given-only"})
        expectRefused(run(stages + QStringList{QLatin1String(hides)}),
                      {QStringLiteral("k-3.svg"), QStringLiteral("is the sketch itself")});
    EXPECT_EQ(bytesOf(own), whole);
    EXPECT_EQ(everything(), before) << "nor is any other written";
    EXPECT_EQ(run(stages).status, 0) << "these carry it";
    EXPECT_EQ(run({QStringLiteral("report"), own}).status, 0);
}

TEST_F(ReplacedInput, StandardInputIsAFileToo) {
    const QString own = json(), picture = svg("own.svg");
    const QByteArray whole = bytesOf(picture);
    const QStringList report{QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("-o"), own};
    expectRefused(run(report, {}, stream(own, O_RDONLY, STDIN_FILENO)),
                  {QStringLiteral("q.json"), QStringLiteral("is the sketch itself")});
    EXPECT_EQ(bytesOf(own), kRaft);
    const QStringList figure{QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"), picture,
                             QStringLiteral("--given-only")};
    expectRefused(run(figure, {}, stream(picture, O_RDONLY, STDIN_FILENO)),
                  {QStringLiteral("own.svg"), QStringLiteral("is the sketch itself")});
    EXPECT_EQ(bytesOf(picture), whole);
}

TEST_F(ReplacedInput, SoIsStandardOutput) {
    const QString own = json();
    for (const QStringList& out : {QStringList{}, QStringList{QStringLiteral("-o"), QStringLiteral("-")}})
        expectRefused(run(QStringList{QStringLiteral("report"), own} + out, {},
                          stream(own, O_WRONLY | O_APPEND, STDOUT_FILENO)),
                      {QStringLiteral("standard output"), QStringLiteral("is the sketch itself")});
    EXPECT_EQ(bytesOf(own), kRaft);
}

TEST_F(ReplacedInput, ALinkOfEitherKindIsNoWayRound) {
    const QString own = json(), soft = path(QStringLiteral("soft.pdf")),
                  hard = path(QStringLiteral("hard.pdf"));
    ASSERT_TRUE(QFile::link(own, soft));
    ASSERT_EQ(::link(qPrintable(own), qPrintable(hard)), 0);
    for (const QString& out : {soft, hard})
        for (const char* verb : {"report", "figure"})
            expectRefused(run({QLatin1String(verb), own, QStringLiteral("-o"), out}),
                          {out, QStringLiteral("is the sketch itself")});
    EXPECT_EQ(bytesOf(own), kRaft);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
