// SPDX-License-Identifier: MIT
// `report FILE... -o DIR` and `figure FILE... -o DIR`: an output each, in one call.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFileInfo>
#include <cstdlib>
#include <fcntl.h>
#include <poll.h>
#include <unistd.h>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

class Many : public Verbs {
protected:
    /// Of `verb`, with the same day in every report.
    Ran call(const char* verb, const QStringList& rest, const Environment& added = {}) const {
        Environment environment = added;
        environment.insert(QStringLiteral("SOURCE_DATE_EPOCH"), QStringLiteral("1767225600"));
        return run(QStringList{QLatin1String(verb)} + rest, {}, nullptr, environment);
    }
    QString question(const QString& name, const QByteArray& size = "340") const {
        return put(name, sketch(force("P", size, "25") + "," + force("Q", "275", "-40")));
    }
    QString unanswered(const QString& name) const { // 340 sin 25 = 143.7 > 100: no triangle
        return put(name, sketch(force("P", "340", "25") + "," + force("Q", "100", "null"),
                                R"(, "sum": {"name": "R", "magnitude": null, "direction": 0})"));
    }
    QString folder() const { return path(QStringLiteral("out")); }
    QByteArray output(const char* name) const { return bytesOf(folder() + '/' + QLatin1String(name)); }
    QStringList outputs() const {
        return QDir(folder()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
    }
};

TEST_F(Many, EachReportIsTheOneOfACallOfItsOwn) {
    const QString a = question(QStringLiteral("a.json")), b = question(QStringLiteral("b.v2.json"), "120");
    for (const auto& [form, ending] :
         {std::pair{"text", "txt"}, {"json", "json"}, {"html", "html"}, {"latex", "tex"}}) {
        const QStringList as{QStringLiteral("--as"), QLatin1String(form)};
        const Ran ran = call("report", QStringList{a, b} + as + QStringList{QStringLiteral("-o"), folder()});
        EXPECT_EQ(ran.status, 0);
        EXPECT_EQ(ran.out + ran.err, "");
        for (const auto& [file, base] : {std::pair{a, "a."}, {b, "b.v2."}}) {
            const QByteArray alone = call("report", QStringList{file} + as).out;
            EXPECT_GT(alone.size(), 200);
            EXPECT_EQ(output((std::string(base) + ending).c_str()), alone) << base << ending;
        }
    }
    EXPECT_EQ(outputs().size(), 8);
}

TEST_F(Many, EachFigureIsTheOneOfACallOfItsOwn) {
    const QString a = question(QStringLiteral("a.json")), b = question(QStringLiteral("b.json"), "120");
    for (const char* form : {"svg", "pdf", "png", "tex"}) {
        const Ran ran = call(
            "figure", {a, b, QStringLiteral("--as"), QLatin1String(form), QStringLiteral("-o"), folder()});
        EXPECT_EQ(ran.status, 0);
        EXPECT_EQ(ran.out + ran.err, "");
        const QString alone = path(QStringLiteral("alone.") + QLatin1String(form));
        EXPECT_EQ(call("figure", {b, QStringLiteral("-o"), alone}).status, 0);
        EXPECT_GT(bytesOf(alone).size(), 500);
        if (QLatin1String(form) != QLatin1String("pdf")) { // which has the time of its making
            EXPECT_EQ(output((std::string("b.") + form).c_str()), bytesOf(alone)) << form;
        }
    }
    EXPECT_EQ(outputs().size(), 8);
}

TEST_F(Many, AFigureIsAnSvgUnlessAnotherFormIsAskedForAndHasItsStages) {
    const QString a = question(QStringLiteral("a.json")), b = question(QStringLiteral("b.json"));
    EXPECT_EQ(call("figure",
                   {a, b, QStringLiteral("-o"), folder(), QStringLiteral("--stage"), QStringLiteral("all")})
                  .status,
              0);
    EXPECT_EQ(outputs().size(), 18); // stages 0 to 8 of two
    EXPECT_TRUE(output("b-8.svg").startsWith("<?xml"));
}

TEST_F(Many, OneFileGoesIntoAFolderToo) {
    const QString a = question(QStringLiteral("a.json"));
    EXPECT_EQ(call("report", {a, QStringLiteral("-o"), folder() + '/'}).status, 0);
    EXPECT_EQ(outputs(), QStringList{QStringLiteral("a.txt")});
    EXPECT_EQ(call("figure", {a, QStringLiteral("-o"), folder()}).status, 0); // which is there by now
    EXPECT_EQ(outputs(), (QStringList{QStringLiteral("a.svg"), QStringLiteral("a.txt")}));
}

TEST_F(Many, TheWorstStatusIsThatOfTheCall) {
    const QString good = question(QStringLiteral("good.json")),
                  none = unanswered(QStringLiteral("none.json"));
    for (const char* verb : {"report", "figure"})
        EXPECT_EQ(call(verb, {none, good, QStringLiteral("-o"), folder()}).status, 1);
    EXPECT_EQ(outputs().size(), 4);
}

TEST_F(Many, ABadFileIsOneLineInItsPlaceAndTheOthersGoOn) {
    const QString good = question(QStringLiteral("good.json")),
                  none = unanswered(QStringLiteral("none.json"));
    const QString broken = put(QStringLiteral("broken.json"), "{"),
                  missing = path(QStringLiteral("missing.json"));
    for (const char* verb : {"report", "figure"}) {
        const Ran ran = call(verb, {broken, good, missing, none, QStringLiteral("-o"), folder()});
        EXPECT_EQ(ran.status, 2);
        const QList<QByteArray> lines = ran.err.trimmed().split('\n');
        ASSERT_EQ(lines.size(), 2) << ran.err.toStdString();
        EXPECT_TRUE(lines[0].startsWith("tailpoint: " + broken.toUtf8() + ": line 1"))
            << lines[0].toStdString();
        const QString alone = path(QStringLiteral("alone.svg")); // the line is that of a call of its own
        EXPECT_EQ(lines[1] + '\n', call(verb, {missing, QStringLiteral("-o"), alone}).err);
        EXPECT_TRUE(lines[1].contains("does not exist")) << lines[1].toStdString();
    }
    EXPECT_EQ(outputs(), (QStringList{QStringLiteral("good.svg"), QStringLiteral("good.txt"),
                                      QStringLiteral("none.svg"), QStringLiteral("none.txt")}));
}

TEST_F(Many, WhatOneSketchCannotGiveIsItsLine) {
    const QString plain = question(QStringLiteral("plain.json"));
    const QString cases =
        put(QStringLiteral("cases.json"),
            sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"),
                   R"(, "cases": [{"name": "storm", "changes": {"P": {"magnitude": 640}}}])"));
    const Ran ran = call("report", {plain, cases, QStringLiteral("--case"), QStringLiteral("storm"),
                                    QStringLiteral("-o"), folder()});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.err, "tailpoint: " + plain.toUtf8() + ": --case: the sketch has no cases; leave it out\n");
    EXPECT_EQ(outputs(), QStringList{QStringLiteral("cases.txt")});
}

TEST_F(Many, NamesakesInTwoFoldersAreRefusedBeforeAnythingIsMade) {
    QDir(m_folder.path()).mkdir(QStringLiteral("one"));
    QDir(m_folder.path()).mkdir(QStringLiteral("two"));
    const QString a = question(QStringLiteral("one/raft.json")),
                  b = question(QStringLiteral("two/raft.json"));
    for (const char* verb : {"report", "figure"})
        expectRefused(call(verb, {a, b, QStringLiteral("-o"), folder()}),
                      {a + QStringLiteral(" and ") + b + QStringLiteral(" would both become")});
    EXPECT_FALSE(QFileInfo::exists(folder()));
}

TEST_F(Many, NoFileThatIsReadIsReplaced) {
    const QString a = question(QStringLiteral("a.json")), b = question(QStringLiteral("b.json"));
    const QByteArray before = bytesOf(a);
    expectRefused(call("report", {a, b, QStringLiteral("--as"), QStringLiteral("json"), QStringLiteral("-o"),
                                  m_folder.path()}),
                  {QStringLiteral("would replace one of the FILEs")});
    QDir(m_folder.path()).mkdir(QStringLiteral("out"));
    ASSERT_TRUE(QFile::link(a, folder() + QStringLiteral("/b.json"))); // by another name
    expectRefused(call("report", {a, b, QStringLiteral("--as"), QStringLiteral("json"), QStringLiteral("-o"),
                                  folder()}),
                  {QStringLiteral("would replace one of the FILEs")});
    EXPECT_EQ(bytesOf(a), before);
}

TEST_F(Many, WrongUsesAreRefusedInOneLine) {
    const QString a = question(QStringLiteral("a.json")), b = question(QStringLiteral("b.json"));
    for (const char* verb : {"report", "figure"}) {
        expectRefused(call(verb, {a, b}), {QStringLiteral("-o DIR")});
        expectRefused(call(verb, {a, b, QStringLiteral("-o"), b}),
                      {QStringLiteral("is a file; several FILEs want a folder")});
        expectRefused(call(verb, {a, QStringLiteral("-"), QStringLiteral("-o"), folder()}),
                      {QStringLiteral("standard input has no name")});
        expectRefused(call(verb, {a, b, QStringLiteral("-o"), path(QStringLiteral("no/out"))}),
                      {QStringLiteral("can't be made")});
    }
    EXPECT_EQ(everything(), (QStringList{QStringLiteral("a.json"), QStringLiteral("b.json")}));
}

TEST_F(Many, NothingIsHalfWritten) {
    const QString a = question(QStringLiteral("a.json")), b = question(QStringLiteral("b.json"));
    for (const char* verb : {"report", "figure"}) {
        const Ran ran =
            call(verb, {a, b, QStringLiteral("-o"), folder()}, withFaults(QStringLiteral("fsync=EIO:1:9")));
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.err.count("not saved"), 2) << ran.err.toStdString();
        EXPECT_FALSE(QFileInfo::exists(folder())); // nor a folder with nothing in it
    }
}

/// What the program writes to standard error where that is a terminal.
QByteArray onTerminal(const QStringList& arguments) {
    const int master = ::posix_openpt(O_RDWR | O_NOCTTY);
    if (master < 0 || ::grantpt(master) != 0 || ::unlockpt(master) != 0)
        return {};
    const int slave = ::open(::ptsname(master), O_RDWR | O_NOCTTY);
    EXPECT_EQ(run(arguments, {}, [slave] { ::dup2(slave, STDERR_FILENO); }).status, 0);
    QByteArray seen;
    char buffer[4096];
    for (pollfd waiting{master, POLLIN, 0}; ::poll(&waiting, 1, 0) == 1 && (waiting.revents & POLLIN) != 0;) {
        const auto read = ::read(master, buffer, sizeof buffer);
        if (read <= 0)
            break;
        seen.append(buffer, read);
    }
    ::close(slave);
    ::close(master);
    return seen;
}

TEST_F(Many, ATerminalSeesHowFarItIsAndIsLeftClean) {
    QStringList files;
    for (int i = 0; i < 12; ++i)
        files << question(QStringLiteral("q%1.json").arg(i));
    const QByteArray seen = onTerminal(QStringList{QStringLiteral("report")} + files +
                                       QStringList{QStringLiteral("-o"), folder()});
    EXPECT_TRUE(seen.contains(" of 12")) << seen.toStdString();
    ASSERT_TRUE(seen.endsWith('\r'));
    const QByteArray last = seen.chopped(1).mid(seen.chopped(1).lastIndexOf('\r') + 1);
    EXPECT_EQ(last.trimmed(), "") << "the line is still there: " << seen.toStdString();
    EXPECT_EQ(outputs().size(), 12);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
