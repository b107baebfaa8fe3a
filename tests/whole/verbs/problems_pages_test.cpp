// SPDX-License-Identifier: MIT
// The pages of `problems`: what can be read out of the sheet and its key, that the sheet tells no answer, the
// same bytes from the same order, sheets of one's own sketches, and a class marked by the key.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QXmlStreamReader>
#include <sys/resource.h>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const char* const kFamilies = "two-forces,bearings,two-answers,push-or-pull,smallest-force";

class ProblemPages : public Verbs {
protected:
    Ran problems(const QString& options, const QString& out) const {
        return run(QStringList{QStringLiteral("problems")} +
                   options.split(QLatin1Char(' '), Qt::SkipEmptyParts) +
                   QStringList{QStringLiteral("-o"), path(out)});
    }
    /// All that the JSON of the same order says of its problems.
    QJsonArray told(const QString& options) const {
        const QString out = QStringLiteral("told");
        EXPECT_EQ(problems(options + QStringLiteral(" --as json"), out).status, 0);
        return QJsonDocument::fromJson(bytesOf(path(out + QStringLiteral("/sheet.json"))))
            .object()[QLatin1String("problems")]
            .toArray();
    }
    /// A page each, its words by single blanks.
    QStringList pagesOf(const QString& pdf) const {
        QProcess process;
        process.start(QStringLiteral("pdftotext"),
                      {QStringLiteral("-layout"), path(pdf), QStringLiteral("-")});
        EXPECT_TRUE(process.waitForFinished());
        QStringList pages;
        for (const QString& page :
             QString::fromUtf8(process.readAllStandardOutput()).split(QLatin1Char('\f')))
            pages << page.simplified();
        pages.removeLast(); // behind the last form feed
        return pages;
    }
};

#define NEEDS_PDFTOTEXT                                                                                      \
    if (QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty())                               \
    GTEST_SKIP() << "no pdftotext"

QString printed(const QJsonValue& text) {
    return QString(text.toString()).replace(QLatin1Char('-'), QChar(0x2212));
}

/// As pdftotext has it: formulas may stand apart, and "fi" be one sign.
QString squeezed(const QString& given) {
    QString text = given.normalized(QString::NormalizationForm_KC);
    return text.remove(QLatin1Char(' ')).remove(QChar(0x2009)).remove(QChar(0xA0));
}

TEST_F(ProblemPages, EverySheetPageHasItsStatementCodeAndScaleAndNoAnswer) {
    NEEDS_PDFTOTEXT;
    const QString order =
        QStringLiteral("--family %1 --count 5 --level 2 --seed 11").arg(QLatin1String(kFamilies));
    ASSERT_EQ(problems(order, QStringLiteral("sheet")).status, 0);
    const QJsonArray problems = told(order);
    const QStringList pages = pagesOf(QStringLiteral("sheet/sheet.pdf"));
    ASSERT_EQ(problems.size(), 5);
    qsizetype page = 0;
    for (int i = 0; i < 5; ++i) {
        const QJsonObject problem = problems[i].toObject();
        const QString code = problem[QLatin1String("code")].toString();
        QString text;
        for (; page < pages.size() && pages[page].contains(code); ++page)
            text += pages[page];
        EXPECT_TRUE(squeezed(text).contains(squeezed(problem[QLatin1String("statement")].toString())))
            << text.toStdString();
        EXPECT_TRUE(text.contains(QStringLiteral("Problem %1 of 5").arg(i + 1)));
        EXPECT_TRUE(text.contains(QRegularExpression(QStringLiteral("1 cm = [125]0* [kN]"))))
            << text.toStdString();
        for (const QJsonValue& answer : problem[QLatin1String("answers")].toArray())
            for (const QJsonValue& right : answer[QLatin1String("texts")].toArray())
                EXPECT_FALSE(squeezed(text).contains(squeezed(printed(right)))) << text.toStdString();
    }
    EXPECT_EQ(page, pages.size()); // no page without its code
}

TEST_F(ProblemPages, TheKeyHasTheAnswersAndTheSlipsNumbersAscending) {
    NEEDS_PDFTOTEXT;
    const QString order = QStringLiteral("--family two-forces,two-ropes --count 4 --level 2 --seed 11");
    ASSERT_EQ(problems(order, QStringLiteral("sheet")).status, 0);
    const QStringList pages = pagesOf(QStringLiteral("sheet/key.pdf"));
    const QString whole = pages.join(QLatin1Char(' '));
    int listed = 0;
    for (const QJsonValue& problem : told(order)) {
        const QString code = problem[QLatin1String("code")].toString();
        const qsizetype begin = whole.indexOf(code);
        ASSERT_GE(begin, 0);
        const QString entry = whole.mid(begin, 2000);
        for (const QJsonValue& answer : problem[QLatin1String("answers")].toArray())
            EXPECT_TRUE(squeezed(entry).contains(squeezed(printed(answer[QLatin1String("texts")][0]))))
                << entry.toStdString();
        QList<QPair<double, QString>> numbers;
        for (const QJsonValue& slip : problem[QLatin1String("slips")].toArray())
            numbers << qMakePair(slip[QLatin1String("value")].toDouble(),
                                 printed(slip[QLatin1String("text")]));
        std::stable_sort(numbers.begin(), numbers.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        qsizetype at = entry.indexOf(QStringLiteral("Slip"));
        for (const auto& [value, text] : numbers) {
            const qsizetype next = entry.indexOf(text, at);
            EXPECT_GE(next, at) << text.toStdString() << " in " << entry.toStdString();
            at = next;
            ++listed;
        }
    }
    EXPECT_GT(listed, 20);
    for (const QString& page : pages) // the code's alphabet: no I, L, O, U
        EXPECT_TRUE(page.contains(QRegularExpression(QStringLiteral("\\b[0-9A-HJKMNP-TV-Z]{6}\\b"))));
}

TEST_F(ProblemPages, TheSameOrderMakesTheSameBytes) {
    const QString order = QStringLiteral("--family two-forces --count 3 --seed 4 --solutions --grid");
    for (const char* form : {"pdf", "html"}) {
        const QString as = QStringLiteral(" --as ") + QLatin1String(form);
        const QString a = QLatin1String(form) + QStringLiteral("-a"),
                      b = QLatin1String(form) + QStringLiteral("-b");
        ASSERT_EQ(problems(order + as, a).status, 0);
        ASSERT_EQ(problems(order + as, b).status, 0);
        for (const char* name : {"sheet.", "key."}) {
            const QString file = QLatin1Char('/') + QLatin1String(name) + QLatin1String(form);
            const QByteArray bytes = bytesOf(path(a + file));
            EXPECT_GT(bytes.size(), 2000);
            EXPECT_TRUE(bytes == bytesOf(path(b + file))) << file.toStdString();
            EXPECT_FALSE(bytes.contains("CreationDate"));
        }
    }
}

TEST_F(ProblemPages, PagesForABrowserAreWellFormedWithIdsOfTheirOwn) {
    ASSERT_EQ(problems(QStringLiteral("--family slopes,bearings --count 4 --as html --solutions --grid"),
                       QStringLiteral("web"))
                  .status,
              0);
    for (const char* name : {"web/sheet.html", "web/key.html"}) {
        QXmlStreamReader reader(bytesOf(path(QLatin1String(name))));
        QSet<QString> ids;
        int sections = 0;
        while (!reader.atEnd()) {
            if (reader.readNext() != QXmlStreamReader::StartElement)
                continue;
            sections += reader.name() == QLatin1String("section");
            const QString id = reader.attributes().value(QLatin1String("id")).toString();
            if (id.isEmpty())
                continue;
            EXPECT_FALSE(ids.contains(id)) << name << ' ' << id.toStdString();
            ids.insert(id);
        }
        EXPECT_FALSE(reader.hasError()) << name << ' ' << reader.errorString().toStdString();
        EXPECT_EQ(sections, 4);
        EXPECT_GT(ids.size(), 8);
    }
}

TEST_F(ProblemPages, OnesOwnSketchesBecomeASheetInTheirOrder) {
    NEEDS_PDFTOTEXT;
    const QString samples = QStringLiteral(TAILPOINT_SAMPLES "/");
    const Ran ran =
        run({QStringLiteral("problems"), QStringLiteral("--from"),
             samples + QStringLiteral("two-answers.json"), samples + QStringLiteral("survey-raft.json"),
             QStringLiteral("--paper=letter"), QStringLiteral("-o"), path(QStringLiteral("own"))});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    const QStringList pages = pagesOf(QStringLiteral("own/sheet.pdf"));
    ASSERT_EQ(pages.size(), 2);
    EXPECT_TRUE(pages[1].contains(QStringLiteral("Survey raft"))) << pages[1].toStdString();
    EXPECT_FALSE(pages[1].contains(QStringLiteral("520"))); // R of the raft, by hand (README)
    EXPECT_TRUE(squeezed(pagesOf(QStringLiteral("own/key.pdf")).join(QLatin1Char(' ')))
                    .contains(QStringLiteral("R=520N")));
    EXPECT_EQ(bytesOf(path(QStringLiteral("own/sketches/0002.json"))),
              bytesOf(samples + QStringLiteral("survey-raft.json")));
    expectRefused(run({QStringLiteral("problems"), QStringLiteral("--from"),
                       samples + QStringLiteral("too-few-given.json"), QStringLiteral("-o"),
                       path(QStringLiteral("refused"))}),
                  {QStringLiteral("too-few-given.json")});
    EXPECT_FALSE(QDir(path(QStringLiteral("refused"))).exists());
}

TEST_F(ProblemPages, AStatementForOtherNumbersIsRefused) {
    ASSERT_EQ(
        problems(QStringLiteral("--family two-forces --count 1 --as json"), QStringLiteral("one")).status, 0);
    QJsonObject sketch =
        QJsonDocument::fromJson(bytesOf(path(QStringLiteral("one/sketches/0001.json")))).object();
    QJsonArray forces = sketch[QLatin1String("forces")].toArray();
    QJsonObject first = forces[0].toObject();
    first[QLatin1String("magnitude")] = 997;
    forces[0] = first;
    sketch[QLatin1String("forces")] = forces;
    const QString file = put(QStringLiteral("changed.json"), QJsonDocument(sketch).toJson());
    const auto sheet = [&](const QString& from, const char* out) {
        return run({QStringLiteral("problems"), QStringLiteral("--from"), from, QStringLiteral("-o"),
                    path(QLatin1String(out))});
    };
    expectRefused(sheet(file, "a"), {QStringLiteral("997"), QStringLiteral("statement")});
    sketch.remove(QLatin1String("statement"));
    EXPECT_EQ(sheet(put(QStringLiteral("without.json"), QJsonDocument(sketch).toJson()), "b").status, 0);
}

TEST_F(ProblemPages, AClassIsMarkedByEachOnesOwnQuestion) {
    const QString names = put(QStringLiteral("names.txt"), "Anna Mirow\nJan Pohl\n");
    ASSERT_EQ(
        problems(QStringLiteral(
                     "--family two-forces,bearings,two-answers --count 3 --level 2 --seed 5 --roster ") +
                     names,
                 QStringLiteral("class"))
            .status,
        0);
    const QString key = path(QStringLiteral("class")), right = path(QStringLiteral("class/answers.csv"));
    const auto marked = [&](const QString& table) {
        return run({QStringLiteral("mark"), QStringLiteral("--key"), key, QStringLiteral("--answers"), table,
                    QStringLiteral("--as=json")});
    };
    const auto verdicts = [](const Ran& ran) {
        QStringList all;
        for (const QJsonValue& one : QJsonDocument::fromJson(ran.out)[QLatin1String("students")].toArray())
            all << one[QLatin1String("verdict")].toString();
        return all;
    };
    const Ran all = marked(right);
    EXPECT_EQ(all.status, 0) << all.err.toStdString();
    EXPECT_EQ(verdicts(all), QStringList(6, QStringLiteral("right")));
    // Jan's first question answered with Anna's values, and somebody who has none.
    QList<QByteArray> lines = bytesOf(right).split('\n');
    const QByteArray annas = lines[1].mid(lines[1].indexOf("\",") + 2);
    const QString mixed =
        put(QStringLiteral("mixed.csv"), lines[0] + "\n\"Jan Pohl, 1\"," + annas + "\nNobody,1,,,\n");
    const Ran ran = marked(mixed);
    EXPECT_EQ(verdicts(ran).value(1), QStringLiteral("unread"));
    EXPECT_FALSE(verdicts(ran).value(0) == QLatin1String("right"));
    EXPECT_TRUE(ran.err.contains(":3: 'Nobody'")) << ran.err.toStdString();
    expectRefused(run({QStringLiteral("mark"), QStringLiteral("--key"), path(QStringLiteral("absent")),
                       QStringLiteral("--answers"), right}),
                  {QStringLiteral("answers.csv")});
}

TEST_F(ProblemPages, OptionsWithoutASayAreRefused) {
    const struct {
        const char* options;
        const char* part;
    } rows[] = {{"--family slopes --as json --grid", "--grid"},
                {"--family slopes --as html --paper letter", "--paper"},
                {"--from --family slopes x.json", "--family"},
                {"--from", "FILE"},
                {"--family slopes --paper a5", "--paper"},
                {"--family slopes --figures large", "--figures"},
                {"--family slopes --faded 0", "--faded"},
                {"--family slopes --faded 100", "--faded"},
                {"--family slopes --faded x", "'x'"},
                {"--family slopes --faded --faded", "twice"},
                {"--family slopes --faded 2 --find-slip", "--find-slip"},
                {"--family slopes --find-slip=2", "--find-slip"},
                {"--list --find-slip", "--find-slip"},
                {"--list --faded", "--faded"}};
    for (const auto& row : rows)
        expectRefused(problems(QLatin1String(row.options), QStringLiteral("out")), {QLatin1String(row.part)});
    EXPECT_FALSE(QDir(path(QStringLiteral("out"))).exists());
}

TEST_F(ProblemPages, FadedSolutionsLeaveTheirLastLinesToTheStudent) {
    NEEDS_PDFTOTEXT;
    const QString order = QStringLiteral("--family two-forces --count 2 --seed 11 --faded 2");
    ASSERT_EQ(problems(order, QStringLiteral("faded")).status, 0);
    const QString sheet = pagesOf(QStringLiteral("faded/sheet.pdf")).join(QLatin1Char(' ')),
                  key = pagesOf(QStringLiteral("faded/key.pdf")).join(QLatin1Char(' '));
    for (const QJsonValue& problem : told(order)) {
        const QJsonObject faded = problem[QLatin1String("faded")].toObject();
        ASSERT_EQ(faded[QLatin1String("blank")].toArray().size(), 2);
        for (const QJsonValue& blank : faded[QLatin1String("blank")].toArray()) {
            EXPECT_TRUE(squeezed(sheet).contains(squeezed(blank[QLatin1String("prompt")].toString())));
            const QString line = blank[QLatin1String("line")].toString(),
                          value = line.mid(line.lastIndexOf(QLatin1Char('=')) + 1)
                                      .section(QLatin1Char(','), 0, 0);
            EXPECT_FALSE(squeezed(sheet).contains(squeezed(value))) << line.toStdString();
            EXPECT_TRUE(squeezed(key).contains(squeezed(value))) << line.toStdString();
        }
        const QString last = faded[QLatin1String("lines")].toArray().last().toString(); // that stands there
        EXPECT_TRUE(squeezed(sheet).contains(squeezed(last.mid(last.lastIndexOf(QLatin1Char('=')) + 1))))
            << last.toStdString();
    }
}

TEST_F(ProblemPages, WithoutANumberMoreLinesAreBlankFromProblemToProblem) {
    const QJsonArray problems = told(QStringLiteral("--family two-forces --count 5 --seed 11 --faded"));
    ASSERT_EQ(problems.size(), 5);
    int before = 0;
    for (const QJsonValue& problem : problems) {
        const int blank =
            static_cast<int>(problem[QLatin1String("faded")][QLatin1String("blank")].toArray().size());
        EXPECT_GT(blank, before);
        before = blank;
    }
}

TEST_F(ProblemPages, ASlipIsToBeFoundAndTheKeyTellsItsLine) {
    NEEDS_PDFTOTEXT;
    const QString order =
        QStringLiteral("--family two-forces,two-ropes,two-answers --count 3 --seed 2 --find-slip");
    ASSERT_EQ(problems(order, QStringLiteral("slips")).status, 0);
    const QString sheet = pagesOf(QStringLiteral("slips/sheet.pdf")).join(QLatin1Char(' ')),
                  key = pagesOf(QStringLiteral("slips/key.pdf")).join(QLatin1Char(' '));
    QSet<QString> slips;
    for (const QJsonValue& problem : told(order)) {
        const QJsonObject flawed = problem[QLatin1String("flawed")].toObject();
        const QJsonArray lines = flawed[QLatin1String("lines")].toArray();
        const int line = flawed[QLatin1String("line")].toInt();
        ASSERT_TRUE(line >= 1 && line <= lines.size());
        EXPECT_EQ(lines[line - 1], flawed[QLatin1String("wrong")]);
        EXPECT_NE(flawed[QLatin1String("wrong")], flawed[QLatin1String("right")]);
        const QString name = flawed[QLatin1String("name")].toString();
        EXPECT_FALSE(squeezed(sheet).contains(squeezed(name))) << name.toStdString();
        EXPECT_TRUE(squeezed(key).contains(squeezed(QStringLiteral("Line (%1): ").arg(line) + name)))
            << key.toStdString();
        EXPECT_TRUE(squeezed(key).contains(squeezed(flawed[QLatin1String("mend")].toString())));
        EXPECT_TRUE(squeezed(sheet).contains(QStringLiteral("(%1)").arg(lines.size())));
        slips.insert(name);
    }
    EXPECT_GE(slips.size(), 2);
}

TEST_F(ProblemPages, SolutionsForABrowserAreWellFormedAndTheSameAgain) {
    for (const char* task : {"--faded", "--find-slip"}) {
        const QString order =
            QStringLiteral("--family slopes,two-answers --count 4 --as html ") + QLatin1String(task);
        const QString a = QLatin1String(task) + QStringLiteral("a"),
                      b = QLatin1String(task) + QStringLiteral("b");
        ASSERT_EQ(problems(order, a).status, 0);
        ASSERT_EQ(problems(order, b).status, 0);
        for (const char* name : {"/sheet.html", "/key.html"}) {
            const QByteArray bytes = bytesOf(path(a + QLatin1String(name)));
            QXmlStreamReader reader(bytes);
            while (!reader.atEnd())
                reader.readNext();
            EXPECT_FALSE(reader.hasError()) << task << name << ' ' << reader.errorString().toStdString();
            EXPECT_TRUE(bytes == bytesOf(path(b + QLatin1String(name)))) << task << name;
        }
    }
}

TEST_F(ProblemPages, OnesOwnSketchIsGivenWithASlipToo) {
    const QString raft = QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json");
    const Ran ran =
        run({QStringLiteral("problems"), QStringLiteral("--from"), raft, QStringLiteral("--find-slip"),
             QStringLiteral("--as=json"), QStringLiteral("-o"), path(QStringLiteral("own"))});
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(bytesOf(path(QStringLiteral("own/sheet.json"))).contains("\"task\": \"find-slip\""));
}

TEST_F(ProblemPages, AClassWithQuestionsOfTheirOwnGetsPages) {
    const QString names = put(QStringLiteral("names.txt"), "Anna Mirow\nJan Pohl\n");
    ASSERT_EQ(problems(QStringLiteral("--family two-forces --count 1 --seed 5 --roster ") + names,
                       QStringLiteral("class"))
                  .status,
              0);
    const QByteArray right = bytesOf(path(QStringLiteral("class/answers.csv")));
    const QList<QByteArray> lines = right.split('\n');
    const QByteArray annas = lines[1].mid(lines[1].indexOf(',') + 1);
    const QString mixed = put(QStringLiteral("mixed.csv"),
                              lines[0] + '\n' + lines[1] + "\nJan Pohl," + annas + "\nNobody,1,2\n");
    const auto mark = [&](const QStringList& more) {
        return run(QStringList{QStringLiteral("mark"), QStringLiteral("--key"), path(QStringLiteral("class")),
                               QStringLiteral("--answers"), mixed} +
                   more);
    };
    const QString pages = path(QStringLiteral("pages"));
    const Ran ran = mark({QStringLiteral("--as=html"), QStringLiteral("--feedback"), pages});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_EQ(QDir(pages).entryList(QDir::Files),
              QStringList({QStringLiteral("Anna-Mirow.html"), QStringLiteral("Jan-Pohl.html")}));
    for (const QByteArray& page : {ran.out, bytesOf(pages + QStringLiteral("/Anna-Mirow.html")),
                                   bytesOf(pages + QStringLiteral("/Jan-Pohl.html"))}) {
        QXmlStreamReader reader(page);
        while (!reader.atEnd())
            reader.readNext();
        EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    }
    EXPECT_TRUE(ran.out.contains("3 answers: 1 "));
    EXPECT_TRUE(ran.out.contains("1 right"));
    EXPECT_TRUE(ran.out.contains("1 unread"));
    EXPECT_TRUE(bytesOf(pages + QStringLiteral("/Anna-Mirow.html")).contains("<td>right</td>"));
    expectRefused(mark({QStringLiteral("--names")}), {QStringLiteral("--as html")});
    expectRefused(mark({QStringLiteral("-o"), path(QStringLiteral("class/answers.csv"))}),
                  {QStringLiteral("the sheet's key")});
    EXPECT_EQ(bytesOf(path(QStringLiteral("class/answers.csv"))), right);
}

TEST_F(ProblemPages, AFileThatFindsNoRoomSaysWhyAndNothingStays) {
    const Ran ran = run({QStringLiteral("problems"), QStringLiteral("--family=two-forces"),
                         QStringLiteral("--as=html"), QStringLiteral("-o"), path(QStringLiteral("out"))},
                        {}, [] {
                            const rlimit limit{9000, 9000}; // bytes: a page has more, a sketch less
                            ::setrlimit(RLIMIT_FSIZE, &limit);
                        });
    expectRefused(ran, {QStringLiteral("cannot be written"), QStringLiteral("File too large")});
    EXPECT_EQ(everything(), QStringList());
}

const char* const kAllFamilies =
    "two-forces,several-forces,missing-force,oblique-lines,two-ropes,"
    "three-in-equilibrium,smallest-force,two-answers,slopes,bearings,push-or-pull";

TEST_F(ProblemPages, AQuestionStandsOnOnePageOnLetterPaperToo) {
    NEEDS_PDFTOTEXT;
    for (const char* level : {"1", "2", "3"}) {
        const QString out = QStringLiteral("letter") + QLatin1String(level);
        ASSERT_EQ(problems(QStringLiteral("--count 22 --seed 7 --paper letter --grid --level %1 --family %2")
                               .arg(QLatin1String(level), QLatin1String(kAllFamilies)),
                           out)
                      .status,
                  0);
        EXPECT_EQ(pagesOf(out + QStringLiteral("/sheet.pdf")).size(), 22) << level;
    }
}

TEST_F(ProblemPages, NoLineEndsInAnEquationOrASlopeOrBeforeAUnit) {
    NEEDS_PDFTOTEXT;
    ASSERT_EQ(
        problems(QStringLiteral("--count 33 --seed 3 --level 2 --family ") + QLatin1String(kAllFamilies),
                 QStringLiteral("sheet"))
            .status,
        0);
    QProcess process;
    process.start(QStringLiteral("pdftotext"),
                  {QStringLiteral("-layout"), path(QStringLiteral("sheet/sheet.pdf")), QStringLiteral("-")});
    ASSERT_TRUE(process.waitForFinished());
    static const QRegularExpression torn(QStringLiteral("[=:]$|^[=:]|^(kN|N|kgf|lbf|kip)\\b"));
    int looked = 0;
    for (const QString& line : QString::fromUtf8(process.readAllStandardOutput()).split(QLatin1Char('\n'))) {
        if (line.contains(QStringLiteral("nswer"))) // to be written on
            continue;
        looked += line.contains(QLatin1Char('=')) ? 1 : 0;
        EXPECT_FALSE(torn.match(line.trimmed()).hasMatch()) << line.toStdString();
    }
    EXPECT_GT(looked, 60);
}

TEST_F(ProblemPages, ALongNameIsCutShortAtHeadAndFoot) {
    NEEDS_PDFTOTEXT;
    const QByteArray name = QByteArray("Maximiliane ").repeated(20).trimmed();
    const QString names = put(QStringLiteral("names.txt"), name + "\nJan Pohl\n");
    ASSERT_EQ(
        problems(QStringLiteral("--family two-forces --count 1 --roster ") + names, QStringLiteral("class"))
            .status,
        0);
    const QStringList pages = pagesOf(QStringLiteral("class/sheet.pdf"));
    ASSERT_EQ(pages.size(), 2);
    EXPECT_GE(pages[0].count(QChar(0x2026)), 2) << pages[0].toStdString();
    EXPECT_LT(pages[0].count(QStringLiteral("Maximiliane")), 12);
    EXPECT_EQ(pages[1].count(QChar(0x2026)), 0);
    EXPECT_TRUE(bytesOf(path(QStringLiteral("class/answers.csv"))).contains(name)) << "the key has it whole";
}

TEST_F(ProblemPages, FiguresThatAreNotToScaleSaySoAndHaveNoValue) {
    NEEDS_PDFTOTEXT;
    ASSERT_EQ(problems(QStringLiteral("--family two-forces --count 2 --figures free"), QStringLiteral("free"))
                  .status,
              0);
    for (const QString& page : pagesOf(QStringLiteral("free/sheet.pdf"))) {
        EXPECT_TRUE(page.contains(QStringLiteral("Not to scale"))) << page.toStdString();
        EXPECT_FALSE(page.contains(QStringLiteral("1 cm =")));
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
