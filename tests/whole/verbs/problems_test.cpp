// SPDX-License-Identifier: MIT
// The verb `problems`: the folder that it makes, the key that `mark` reads, the same bytes from the same
// seed, and bad input of every kind, after which nothing is left.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QProcess>
#include <csignal>
#include <unistd.h>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

QStringList words(const char* text) {
    return QString::fromUtf8(text).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

class Problems : public Verbs {
protected:
    Ran problems(const char* options, const QString& out = {}) const {
        QStringList arguments{QStringLiteral("problems")};
        arguments += words(options);
        if (!arguments.contains(QStringLiteral("--as")) && !arguments.contains(QStringLiteral("--list")))
            arguments << QStringLiteral("--as=json");
        if (!out.isEmpty())
            arguments << QStringLiteral("-o") << path(out);
        return run(arguments);
    }
    QJsonArray sheetOf(const QString& out) const {
        return QJsonDocument::fromJson(bytesOf(path(out + QStringLiteral("/sheet.json"))))
            .object()[QLatin1String("problems")]
            .toArray();
    }
};

TEST_F(Problems, MakesSketchesWithTheirKey) {
    const Ran ran = problems("--family two-forces --count 3 --seed 7 --level 2", QStringLiteral("sheet"));
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_EQ(ran.out.toStdString() + ran.err.toStdString(), "");
    const QDir folder(path(QStringLiteral("sheet")));
    EXPECT_EQ(folder.entryList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden),
              words("answers.csv sheet.json sketches"));
    EXPECT_EQ(QDir(folder.filePath(QStringLiteral("sketches"))).entryList(QDir::Files),
              words("0001.json 0002.json 0003.json"));
    const QJsonArray sheet = sheetOf(QStringLiteral("sheet"));
    ASSERT_EQ(sheet.size(), 3);
    for (const QJsonValue& one : sheet) {
        const QByteArray bytes = bytesOf(folder.filePath(one[QLatin1String("sketch")].toString()));
        const QJsonObject sketch = QJsonDocument::fromJson(bytes).object();
        EXPECT_EQ(sketch[QLatin1String("statement")], one[QLatin1String("statement")]);
        EXPECT_EQ(sketch[QLatin1String("practice")][QLatin1String("code")], one[QLatin1String("code")]);
        EXPECT_EQ(sketch[QLatin1String("practice")][QLatin1String("level")].toInt(), 2);
    }
}

TEST_F(Problems, EachRowOfTheKeyIsRightForItsOwnSketch) {
    for (const char* family : {"two-forces", "two-answers", "bearings", "push-or-pull", "smallest-force"}) {
        const QString out = QString::fromLatin1(family);
        ASSERT_EQ(problems(("--count 4 --level 3 --family " + QByteArray(family)).constData(), out).status,
                  0);
        for (int i = 1; i <= 4; ++i) {
            const QString who = QStringLiteral("%1").arg(i, 4, 10, QLatin1Char('0'));
            const Ran marked =
                run({QStringLiteral("mark"), path(out + QStringLiteral("/sketches/%1.json").arg(who)),
                     QStringLiteral("--answers"), path(out + QStringLiteral("/answers.csv")),
                     QStringLiteral("--as=json")});
            ASSERT_EQ(marked.status, 0) << family << marked.err.toStdString();
            const QJsonObject student =
                QJsonDocument::fromJson(marked.out)[QLatin1String("students")][i - 1].toObject();
            EXPECT_EQ(student[QLatin1String("who")].toString(), who);
            EXPECT_EQ(student[QLatin1String("verdict")].toString(), QStringLiteral("right"))
                << family << ' ' << i;
        }
    }
}

TEST_F(Problems, TheSameSeedMakesTheSameBytesAndAnotherOneOthers) {
    const char* options = "--family slopes,several-forces --count 6 --level 1 --seed 3";
    ASSERT_EQ(problems(options, QStringLiteral("a")).status, 0);
    ASSERT_EQ(problems(options, QStringLiteral("b")).status, 0);
    ASSERT_EQ(
        problems("--family slopes,several-forces --count 6 --level 1 --seed 4", QStringLiteral("c")).status,
        0);
    for (const char* file : {"answers.csv", "sheet.json", "sketches/0001.json", "sketches/0006.json"}) {
        const auto in = [&](const char* folder) {
            return bytesOf(path(QStringLiteral("%1/%2").arg(QLatin1String(folder), QLatin1String(file))));
        };
        EXPECT_FALSE(in("a").isEmpty());
        EXPECT_EQ(in("a"), in("b")) << file;
        EXPECT_NE(in("a"), in("c")) << file;
    }
}

TEST_F(Problems, ARosterGivesEachProblemsOfTheirOwn) {
    const QString names = put(QStringLiteral("names.txt"), "\xEF\xBB\xBF"
                                                           "Ada Byron\r\n\r\n=Emmy\r\nSofja\r\n");
    const Ran ran = run({QStringLiteral("problems"), QStringLiteral("--family=two-ropes,bearings"),
                         QStringLiteral("--count=2"), QStringLiteral("--as=json"), QStringLiteral("--roster"),
                         names, QStringLiteral("-o"), path(QStringLiteral("class"))});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    const QJsonArray sheet = sheetOf(QStringLiteral("class"));
    ASSERT_EQ(sheet.size(), 6);
    QSet<QString> codes;
    for (int i = 0; i < 6; ++i) {
        const QJsonObject one = sheet[i].toObject();
        EXPECT_EQ(one[QLatin1String("who")].toString(),
                  QStringList({QStringLiteral("Ada Byron"), QStringLiteral("=Emmy"),
                               QStringLiteral("Sofja")})[i / 2]);
        EXPECT_EQ(one[QLatin1String("place")].toInt(), i % 2 + 1);
        EXPECT_EQ(one[QLatin1String("family")].toString(),
                  i % 2 == 0 ? QStringLiteral("two-ropes") : QStringLiteral("bearings"));
        codes.insert(one[QLatin1String("code")].toString());
    }
    EXPECT_EQ(codes.size(), 6);
    const QByteArray key = bytesOf(path(QStringLiteral("class/answers.csv")));
    EXPECT_TRUE(key.startsWith("who,A,B,R,theta_R\n\"Ada Byron, 1\",")) << key.toStdString();
    EXPECT_TRUE(key.contains("\n\"'=Emmy, 2\",,,")) << key.toStdString(); // no formula for a spreadsheet
}

TEST_F(Problems, AnEmptyFolderIsFilled) {
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("empty")));
    EXPECT_EQ(problems("--family slopes --count 1", QStringLiteral("empty")).status, 0);
    EXPECT_TRUE(QFile::exists(path(QStringLiteral("empty/sheet.json"))));
}

TEST_F(Problems, TheListHasEveryFamilyWithItsLevels) {
    const Ran text = problems("--list"), json = problems("--list --as json");
    EXPECT_EQ(text.status, 0);
    EXPECT_EQ(json.status, 0);
    const QJsonArray families = QJsonDocument::fromJson(json.out)[QLatin1String("families")].toArray();
    EXPECT_EQ(families.size(), 11);
    for (const QJsonValue& family : families) {
        EXPECT_TRUE(text.out.contains(family[QLatin1String("id")].toString().toUtf8() + ": "));
        EXPECT_EQ(family[QLatin1String("levels")].toArray().size(), 3);
        for (const QJsonValue& level : family[QLatin1String("levels")].toArray())
            EXPECT_TRUE(text.out.contains(level[QLatin1String("traps")].toString().toUtf8()));
    }
}

/// Options, and what the one line says.
struct Refused {
    const char* options;
    const char* part;
};

TEST_F(Problems, BadOptionsAreOneLineAndNothingIsWritten) {
    put(QStringLiteral("names.txt"), "Ada\nEmmy\nAda\n");
    put(QStringLiteral("none.txt"), "\n\n");
    put(QStringLiteral("bad.txt"), "Ada\n\xFF\xFE\n");
    const QStringList before = everything();
    const Refused rows[] = {{"--family one-force", "one-force"},
                            {"--family two-forces, ", "''"},
                            {"--count 3", "--family"},
                            {"--family slopes --count 0", "--count"},
                            {"--family slopes --count 10000", "--count"},
                            {"--family slopes --count x", "--count"},
                            {"--family slopes --seed -1", "--seed"},
                            {"--family slopes --level 4", "--level"},
                            {"--family slopes --as text", "--as text"},
                            {"--family slopes --as csv", "--as"},
                            {"--list --family slopes", "--list"},
                            {"slopes", "'slopes'"}};
    for (const Refused& row : rows)
        expectRefused(problems(row.options, QStringLiteral("out")), {QString::fromLatin1(row.part)});
    expectRefused(problems("--family slopes"), {QStringLiteral("-o DIR")});
    const auto withRoster = [&](const char* file) {
        return run({QStringLiteral("problems"), QStringLiteral("--family=slopes"), QStringLiteral("--roster"),
                    path(QLatin1String(file)), QStringLiteral("-o"), path(QStringLiteral("out"))});
    };
    expectRefused(withRoster("names.txt"), {QStringLiteral("names.txt:3"), QStringLiteral("twice")});
    expectRefused(withRoster("none.txt"), {QStringLiteral("no names")});
    expectRefused(withRoster("bad.txt"), {QStringLiteral("bad.txt:2"), QStringLiteral("UTF-8")});
    expectRefused(withRoster("absent.txt"), {QStringLiteral("absent.txt")});
    EXPECT_EQ(everything(), before);
}

TEST_F(Problems, WhatStandsThereIsKept) {
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("full")));
    put(QStringLiteral("full/mine.txt"), "mine");
    put(QStringLiteral("file"), "mine too");
    expectRefused(problems("--family slopes", QStringLiteral("full")), {QStringLiteral("not empty")});
    expectRefused(problems("--family slopes", QStringLiteral("file")), {QStringLiteral("no folder")});
    expectRefused(problems("--family slopes", QStringLiteral("absent/out")),
                  {QStringLiteral("cannot be written")});
    EXPECT_EQ(bytesOf(path(QStringLiteral("full/mine.txt"))), "mine");
    EXPECT_EQ(bytesOf(path(QStringLiteral("file"))), "mine too");
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot),
              words("file full"));
}

TEST_F(Problems, OneThatIsCancelledLeavesNothing) {
    QProcess process;
    process.start(QStringLiteral(TAILPOINT_BINARY),
                  words("problems --family several-forces --level 3 --count 9999 --as json -o")
                      << path(QStringLiteral("out")));
    ASSERT_TRUE(process.waitForStarted());
    const QDir folder(m_folder.path());
    const auto hasBegun = [&] {
        return !folder.entryList(QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot).isEmpty();
    };
    while (process.state() == QProcess::Running && !hasBegun())
        process.waitForFinished(5);
    ASSERT_TRUE(hasBegun());
    ::kill(static_cast<pid_t>(process.processId()), SIGINT);
    ASSERT_TRUE(process.waitForFinished(60'000));
    EXPECT_NE(process.exitCode(), 0);
    EXPECT_FALSE(hasBegun()) << folder.entryList(QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot)
                                    .join(QLatin1Char(' '))
                                    .toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
