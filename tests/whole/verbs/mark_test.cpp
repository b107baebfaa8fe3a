// SPDX-License-Identifier: MIT
// The verb `mark`: verdicts and exit statuses of single answers, classes with everything that tables bring
// along, bad input of every kind, and that nothing is written on a fault.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QXmlStreamReader>
#include <fcntl.h>
#include <unistd.h>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

// Python: hypot and atan2 of (340 cos 25° + 275 cos 40°, 340 sin 25° - 275 sin 40°): 519.86 N at -3.648°;
// √(340² + 275² - 2·340·275 cos 65°) = 334.96; 340 + 275 = 615; 90° + 3.648° = 93.6°; 519.86 N = 116.87 lbf.
const QByteArray kRaft = sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"));
// A second boat: R = 400 N at 10°, Q = 260 N, P at 40°. By hand: 260² = P² + 400² - 2·400 P cos 30° gives
// P = 400 cos 30° ∓ √(260² - 200²) = 180.28 and 512.54; Python's atan2: theta_Q = -10.28° and -89.72°.
const QByteArray kTwo = sketch(force("P", "null", "40") + "," + force("Q", "260", "null"),
                               R"(, "sum": {"name": "R", "magnitude": 400, "direction": 10})");

/// Standard input is the sketch.
Ran mark(const QByteArray& sketch, const QStringList& answers, const QStringList& more = {}) {
    QStringList arguments{QStringLiteral("mark"), QStringLiteral("-")};
    for (const QString& answer : answers)
        arguments << QStringLiteral("--answer") << answer;
    return run(arguments + more, sketch);
}

/// An answer, its exit status, verdict and points of two, and the slip that is named first.
struct Answered {
    const char* name;
    QByteArray question;
    QStringList answers;
    int status;
    const char* verdict;
    double points;
    const char* slip = "";
};
void PrintTo(const Answered& answered, std::ostream* out) {
    *out << answered.name;
}

class OneAnswer : public ::testing::TestWithParam<Answered> {};

TEST_P(OneAnswer, HasItsVerdictPointsSlipAndExitStatus) {
    const Answered& want = GetParam();
    const Ran ran = mark(want.question, want.answers, {QStringLiteral("--as=json")});
    EXPECT_EQ(ran.status, want.status) << ran.err.toStdString();
    EXPECT_EQ(ran.err.toStdString(), "");
    const QJsonObject json = QJsonDocument::fromJson(ran.out).object();
    EXPECT_EQ(json[QLatin1String("format")].toString(), QStringLiteral("tailpoint-marking"));
    EXPECT_EQ(json[QLatin1String("verdict")].toString().toStdString(), want.verdict);
    EXPECT_EQ(json[QLatin1String("points")].toDouble(), want.points);
    EXPECT_EQ(json[QLatin1String("of")].toDouble(), 2);
    const QJsonArray slips = json[QLatin1String("slips")].toArray();
    EXPECT_EQ(slips.isEmpty() ? "" : slips[0].toObject()[QLatin1String("id")].toString().toStdString(),
              want.slip);
}

QStringList answers(const char* texts) {
    return QString::fromUtf8(texts).split(QLatin1Char('|'));
}

const Answered kAnswered[] = {
    {"Right", kRaft, answers("R = 520 N|theta_R = -3.6"), 0, "right", 2},
    {"RightWithoutSpacesInAnotherUnit", kRaft, answers("R=0.520kN|θ_R=356.4°"), 0, "right", 2},
    {"RightInTheReportsWords", kRaft, answers("R = 520|theta_R = 3.6° clockwise from +x"), 0, "right", 2},
    {"RightAsTheOppositeVector", kRaft, answers("R = -520|theta_R = 176.4"), 0, "right", 2},
    {"Rounded", kRaft, answers("R = 519|theta_R = -4"), 0, "rounded", 2},
    {"OneMissing", kRaft, answers("R = 520"), 1, "incomplete", 1},
    {"TheOtherDiagonal", kRaft, answers("R = 335 N"), 1, "slip", 0, "supplement-in-cosines"},
    {"MagnitudesAdded", kRaft, answers("R = 615|theta_R = -3.6"), 1, "slip", 1, "magnitudes-added"},
    {"TheOtherTurn", kRaft, answers("R = 520|theta_R = 3.6"), 1, "axis", 1, "wrong-turn"},
    {"TheOtherAxis", kRaft, answers("R = 520|theta_R = 93.6"), 1, "axis", 1, "wrong-axis"},
    {"AnotherUnitWritten", kRaft, answers("R = 520 lbf|theta_R = -3.6"), 1, "unit", 1, "unit-confused"},
    {"ConvertedToPounds", kRaft, answers("R = 117|theta_R = -3.6"), 1, "unit", 1, "unit-confused"},
    {"NothingKnown", kRaft, answers("R = 777|theta_R = 51"), 1, "other", 0},
    {"OneOfTwoAnswers", kTwo, answers("P = 180|theta_Q = -10.3"), 0, "right", 2},
    {"BothAnswers", kTwo, answers("P = 180; 513|theta_Q = -10.3; -89.7"), 0, "right", 2},
    {"AnswersMixed", kTwo, answers("P = 180|theta_Q = -89.7"), 1, "slip", 1, "answers-mixed"},
};
INSTANTIATE_TEST_SUITE_P(Mark, OneAnswer, ::testing::ValuesIn(kAnswered),
                         [](const auto& row) { return std::string(row.param.name); });

TEST(Mark, SaysInTextWhatGivesTheNumberWithItsLineBesideTheRightOne) {
    const Ran ran = mark(kRaft, {QStringLiteral("R = 335 N"), QStringLiteral("theta_R = -3.6")});
    EXPECT_EQ(ran.status, 1);
    for (const char* part :
         {"R = 335 N: slip; right is 520 N", "theta_R = -3.6", "334.96 N", "519.86 N", "?"})
        EXPECT_TRUE(ran.out.contains(part)) << part << ran.out.toStdString();
}

TEST(Mark, HeedsWhatTheSketchSaysOfMarking) {
    const auto with = [](const char* marking) {
        return sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"),
                      QByteArray(", \"marking\": ") + marking);
    };
    const auto points = [](const Ran& ran) {
        return QJsonDocument::fromJson(ran.out).object()[QLatin1String("points")].toDouble(-1);
    };
    const QStringList json{QStringLiteral("--as"), QStringLiteral("json")};
    EXPECT_EQ(points(mark(with(R"({"points": {"R": 5, "theta_R": 2}})"), answers("R = 520"), json)), 5);
    EXPECT_EQ(points(mark(with(R"({"credit": {"axis": 0.5}})"), answers("R = 520|theta_R = 3.6"), json)),
              1.5);
    EXPECT_EQ(points(mark(with(R"({"unitRequired": true, "credit": {"unit": 0.25}})"),
                          answers("R = 520|theta_R = -3.6"), json)),
              1.25);
    const Ran right = run({QStringLiteral("report"), QStringLiteral("-")}, with(R"({"points": {"R": 2}})"));
    EXPECT_EQ(right.status, 0) << "the key is no bar to other verbs";
}

class MarkedClass : public Verbs {
protected:
    QString raft() const { return put(QStringLiteral("raft.json"), kRaft); }
    Ran markTable(const QByteArray& table, const QStringList& more = {}) const {
        const QStringList call{QStringLiteral("mark"), raft(), QStringLiteral("--answers"),
                               put(QStringLiteral("class.csv"), table)};
        return run(call + more);
    }
    QString out(const char* name) const { return path(QLatin1String(name)); }
};

TEST_F(MarkedClass, KeepsBadRowsTellsThemByTheirLineAndMarksTheRest) {
    const Ran ran =
        markTable("who,R,theta_R\n\"Müller, \"\"Mo\"\"\",520,-3.6\ns2,520x,1\ns3,520,-3,6\ns4,5 deg,\n"
                  "s5,\"335,1\ns6,335,\n");
    EXPECT_EQ(ran.status, 0);
    const QList<QByteArray> told = ran.err.trimmed().split('\n');
    ASSERT_EQ(told.size(), 4) << ran.err.toStdString();
    for (int i = 0; i < 4; ++i)
        EXPECT_TRUE(told[i].contains("class.csv:" + QByteArray::number(i + 3) + ": "))
            << told[i].toStdString();
    const QList<QByteArray> lines = ran.out.trimmed().split('\n');
    ASSERT_EQ(lines.size(), 7) << ran.out.toStdString();
    EXPECT_EQ(lines[0].toStdString(), "who,R,theta_R,verdict,points,slip,sentence");
    EXPECT_EQ(lines[1].toStdString(), "\"Müller, \"\"Mo\"\"\",520,-3.6,right,2,,");
    for (int i = 2; i < 6; ++i)
        EXPECT_TRUE(lines[i].contains(",unread,0,")) << lines[i].toStdString();
    EXPECT_TRUE(lines[6].startsWith("s6,335,,slip,0,supplement-in-cosines,")) << lines[6].toStdString();
}

TEST_F(MarkedClass, ReadsWhatSpreadsheetsOfOtherCountriesSave) {
    const Ran ran = markTable("\xEF\xBB\xBFName;R;theta_R\r\nŁukasz;519,9;-3,65\r\n\r\n李雷;0,520 kN;-3,6");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err.toStdString(), "");
    EXPECT_EQ(ran.out.toStdString(), "\xEF\xBB\xBFName;R;theta_R;verdict;points;slip;sentence\r\n"
                                     "Łukasz;519,9;-3,65;right;2;;\r\n李雷;0,520 kN;-3,6;right;2;;\r\n");
}

TEST_F(MarkedClass, CarriesNoFormulaIntoASpreadsheet) {
    const Ran ran = markTable("who,R,theta_R\n=HYPERLINK(\"x\"),520,-3.6\n@a,520,+x\n\t=b,520,-3.6\n",
                              {QStringLiteral("--points"), out("points.csv")});
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    for (const QByteArray& text : {ran.out, bytesOf(out("points.csv"))})
        for (const QByteArray& line : text.split('\n'))
            for (const char* sign : {"=", "@", "\"=", "\"\t", ",=", ",@", ",+", "\t"})
                EXPECT_FALSE(line.startsWith(sign) || (*sign == ',' && line.contains(sign)))
                    << line.toStdString();
}

TEST_F(MarkedClass, RegradedGivesTheSameBytes) {
    const QByteArray table =
        "who,R,theta_R,override\nAda,335,,\n=x,-520,176.4,\nBo,52o,-8.7; -77.3,2: shown orally\n"
        "Cy,615,-7.5,1\nDi,1,2,3,4\n";
    const QString once = out("once.csv"), again = out("again.csv"), twice = out("twice.csv");
    EXPECT_EQ(markTable(table, {QStringLiteral("-o"), once}).status, 0);
    EXPECT_EQ(markTable(table, {QStringLiteral("-o"), again}).status, 0);
    EXPECT_EQ(bytesOf(once), bytesOf(again));
    EXPECT_EQ(
        run({QStringLiteral("mark"), raft(), QStringLiteral("--answers"), once, QStringLiteral("-o"), twice})
            .status,
        0);
    EXPECT_EQ(bytesOf(twice).toStdString(), bytesOf(once).toStdString());
    EXPECT_TRUE(bytesOf(once).contains(",2: shown orally,unread,2,")) << bytesOf(once).toStdString();
}

TEST_F(MarkedClass, WritesPagesPointsAndFeedback) {
    const Ran ran = markTable("who,R,theta_R,override\nAda,335,,\n../x,615,-7.5,2: spoke\nada,520,-3.6,\n",
                              {QStringLiteral("--as"), QStringLiteral("html"), QStringLiteral("-o"),
                               out("class.html"), QStringLiteral("--points"), out("points.csv"),
                               QStringLiteral("--feedback"), out("pages")});
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_EQ(ran.out.toStdString() + ran.err.toStdString(), "");
    EXPECT_EQ(bytesOf(out("points.csv")).toStdString(), "who,points\nAda,0\n../x,2\nada,2\n");
    QStringList pages = QDir(out("pages")).entryList(QDir::Files | QDir::Hidden);
    pages.sort();
    EXPECT_EQ(pages.join(QLatin1Char(' ')).toStdString(), "Ada.html ada-2.html x.html");
    for (const QString& page : QStringList{out("class.html")} + pages) {
        QXmlStreamReader reader(bytesOf(page.contains(QLatin1Char('/')) ? page : out("pages/") + page));
        while (!reader.atEnd())
            reader.readNext();
        EXPECT_FALSE(reader.hasError()) << page.toStdString() << ": " << reader.errorString().toStdString();
    }
    EXPECT_TRUE(bytesOf(out("pages/x.html")).contains("2 of 2 points, set by the marker: spoke"));
    EXPECT_FALSE(bytesOf(out("class.html")).contains("class=\"names\""));
}

TEST_F(MarkedClass, ComesFromStandardInputToo) {
    const Ran ran = run({QStringLiteral("mark"), raft(), QStringLiteral("--answers"), QStringLiteral("-"),
                         QStringLiteral("--as"), QStringLiteral("text")},
                        "who,R\ns1,520\n");
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(ran.out.startsWith("s1: incomplete, 1 of 2\n")) << ran.out.toStdString();
}

TEST_F(MarkedClass, OfTenThousandIsMarkedWhole) {
    QByteArray table = "who,R,theta_R\n";
    constexpr int count = 10'000;
    for (int i = 0; i < count; ++i) // every other adds the magnitudes
        table += "s" + QByteArray::number(i) + (i % 2 == 0 ? ",520,-3.6\n" : ",615,-3.6\n");
    const Ran ran = markTable(table);
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.out.count('\n'), count + 1);
    EXPECT_EQ(ran.out.count(",right,2,"), count / 2);
    EXPECT_EQ(ran.out.count(",slip,1,magnitudes-added,"), count / 2);
}

/// A table that can't be marked at all, and what its line must say.
struct BadTable {
    const char* name;
    QByteArray table;
    const char* place;
    const char* part;
};
void PrintTo(const BadTable& bad, std::ostream* out) {
    *out << bad.name;
}

class BadTables : public MarkedClass, public ::testing::WithParamInterface<BadTable> {};

TEST_P(BadTables, AreRefusedOnOneLineAndNothingIsWritten) {
    const Ran ran =
        markTable(GetParam().table, {QStringLiteral("-o"), out("marked.csv"), QStringLiteral("--points"),
                                     out("points.csv"), QStringLiteral("--feedback"), out("pages")});
    expectRefused(ran, {QString::fromUtf8(GetParam().place), QString::fromUtf8(GetParam().part)});
    EXPECT_EQ(everything().size(), 2) << everything().join(QLatin1Char(' ')).toStdString();
}

const BadTable kBadTables[] = {
    {"Empty", "", "class.csv: ", "is empty; the first row names the columns"},
    {"OnlyBlank", "\r\n  \r\n", "class.csv: ", "is empty"},
    {"NoHead", "s1,520,-3.6\n", "class.csv:1: ", "'520' is no quantity of this question"},
    {"NoQuantity", "who\ns1\n", "class.csv:1: ", "no column has answers"},
    {"AnUnknownName", "who,R,S\ns1,1,2\n", "class.csv:1: ", "then any of R, theta_R"},
    {"ANameTwice", "who,R,R\ns1,1,2\n", "class.csv:1: ", "'R' stands twice; take one of the columns out"},
    {"NobodyInFront", "R,theta_R\n1,2\n", "class.csv:1: ", "the first column says who"},
    {"AHeadWithABrokenQuotationMark", "who,\"R\ns1,1\n", "class.csv:1: ", "never closed"},
    {"Latin1", "who,R\nM\xFCller,520\n", "class.csv:2: ", "save it as CSV in UTF-8"},
    {"AWorkbook", "PK\x03\x04xl/workbook.xml", "class.csv: ", "save it as CSV in UTF-8"},
};
INSTANTIATE_TEST_SUITE_P(Mark, BadTables, ::testing::ValuesIn(kBadTables),
                         [](const auto& row) { return std::string(row.param.name); });

/// One wrong call a row: GOOD is the raft, TABLE a class, FOLDER their folder.
struct WrongCall {
    const char* name;
    const char* words; ///< parted by '|'
    const char* part;
};
void PrintTo(const WrongCall& wrong, std::ostream* out) {
    *out << wrong.name;
}

class WrongMarking : public MarkedClass, public ::testing::WithParamInterface<WrongCall> {};

TEST_P(WrongMarking, IsRefusedOnOneLineAndMakesNoFile) {
    QStringList words{QStringLiteral("mark")};
    if (*GetParam().words != '\0')
        words += QString::fromUtf8(GetParam().words).split(QLatin1Char('|'));
    const QString table = put(QStringLiteral("class.csv"), "who,R\ns1,520\n"), question = raft();
    put(QStringLiteral("given.json"),
        sketch(force("P", "1", "2"), R"(, "sum": {"name": "R", "magnitude": 1, "direction": 2})"));
    put(QStringLiteral("none.json"), sketch(force("P", "1", "null") + "," + force("Q", "null", "null")));
    put(QStringLiteral("text.json"), sketch(force("P", "1", "2"), R"(, "marking": {"points": {"R": "2"}})"));
    put(QStringLiteral("other.json"), sketch(force("P", "1", "2"), R"(, "marking": {"points": {"S": 2}})"));
    words.replaceInStrings(QStringLiteral("GOOD"), question)
        .replaceInStrings(QStringLiteral("TABLE"), table)
        .replaceInStrings(QStringLiteral("FOLDER"), m_folder.path());
    const QStringList before = everything();
    expectRefused(run(words), {QString::fromUtf8(GetParam().part)});
    EXPECT_EQ(everything(), before);
    EXPECT_EQ(bytesOf(question), kRaft);
    EXPECT_EQ(bytesOf(table).toStdString(), "who,R\ns1,520\n");
}

const WrongCall kWrong[] = {
    {"NoFile", "--answer|R=1", "wants one FILE"},
    {"Nothing", "GOOD", "--answer NAME=VALUE, or a class with --answers"},
    {"AnswerAndClass", "GOOD|--answer|R=1|--answers|TABLE", "or a class with --answers"},
    {"AFileThatIsNotThere", "FOLDER/no.json|--answer|R=1", "no.json: does not exist"},
    {"AClassThatIsNotThere", "GOOD|--answers|FOLDER/no.csv", "no.csv: does not exist"},
    {"AFolderForAClass", "GOOD|--answers|FOLDER", "is a folder"},
    {"BothFromStandardInput", "-|--answers|-", "both standard input"},
    {"AnUnknownName", "GOOD|--answer|S=1", "'S' is no quantity of this question; there are R, theta_R"},
    {"NoEqualsSign", "GOOD|--answer|R 335", "has no '='"},
    {"NoValue", "GOOD|--answer|R=", "R has no value"},
    {"AValueThatIsNone", "GOOD|--answer|R=3x5", "R: '3x5'"},
    {"AUnitThatDoesNotFit", "GOOD|--answer|R=5 deg", "R: "},
    {"OneQuantityTwice", "GOOD|--answer|R=1|--answer|R=2", "R is given twice"},
    {"TwoValuesForOneAnswer", "GOOD|--answer|R=1;2", "the question has one answer"},
    {"ClassTwice", "GOOD|--answers|TABLE|--answers|TABLE", "--answers stands twice"},
    {"FormTwice", "GOOD|--answer|R=1|--as|text|--as|json", "--as stands twice"},
    {"AnUnknownForm", "GOOD|--answer|R=1|--as|latex",
     "--as knows no 'latex'; use one of text, json, csv, html"},
    {"ATableOfOneAnswer", "GOOD|--answer|R=1|--as|csv", "--as csv goes with --answers"},
    {"FeedbackOfOneAnswer", "GOOD|--answer|R=1|--feedback|FOLDER", "--feedback goes with --answers"},
    {"PointsOfOneAnswer", "GOOD|--answer|R=1|--points|FOLDER/p.csv", "--points goes with --answers"},
    {"NamesWithoutAPage", "GOOD|--answers|TABLE|--names", "--names goes with --as html"},
    {"AnAnswerWithoutItsValue", "GOOD|--answer", "wants a value"},
    {"AllGiven", "FOLDER/given.json|--answer|R=1", "given.json: "},
    {"TooManyUnknowns", "FOLDER/none.json|--answer|Q=1", "none.json: "},
    {"PointsThatAreText", "FOLDER/text.json|--answer|R=1",
     "text.json: marking.points.R: is text; write the number without quotes"},
    {"PointsForAStranger", "FOLDER/other.json|--answer|R=1", "other.json: marking.points: 'S' is not asked"},
    {"OntoTheSketch", "GOOD|--answer|R=1|-o|GOOD", "raft.json: is the sketch itself"},
    {"OntoTheSketchFromAClass", "GOOD|--answers|TABLE|-o|GOOD", "raft.json: is the sketch itself"},
    {"OntoTheClass", "GOOD|--answers|TABLE|-o|TABLE", "class.csv: is the class's table itself"},
    {"PointsOntoTheClass", "GOOD|--answers|TABLE|--points|TABLE", "class.csv: is the class's table itself"},
    {"TwoOutputsInOneFile", "GOOD|--answers|TABLE|-o|FOLDER/a|--points|FOLDER/./a", "is written twice"},
    {"TwoOutputsOnStandardOutput", "GOOD|--answers|TABLE|--points|-", "standard output: is written twice"},
    {"IntoNoFolder", "GOOD|--answers|TABLE|-o|FOLDER/no/a.csv|--feedback|FOLDER/pages",
     "folder does not exist"},
    {"OntoAFolder", "GOOD|--answers|TABLE|-o|FOLDER", "is a folder"},
    {"FeedbackIntoAFile", "GOOD|--answers|TABLE|--feedback|TABLE", "is no folder"},
    {"FeedbackInNoFolder", "GOOD|--answers|TABLE|--feedback|FOLDER/no/pages", "can't be made"},
};
INSTANTIATE_TEST_SUITE_P(Mark, WrongMarking, ::testing::ValuesIn(kWrong),
                         [](const auto& row) { return std::string(row.param.name); });

TEST_F(MarkedClass, NeverWritesAPageOverAnInput) {
    const QString question = put(QStringLiteral("Ada.html"), kRaft),
                  table = put(QStringLiteral("class.csv"), "who,R\nBo,520\nAda,520\n");
    const QStringList before = everything();
    expectRefused(run({QStringLiteral("mark"), question, QStringLiteral("--answers"), table,
                       QStringLiteral("--feedback"), m_folder.path()}),
                  {QStringLiteral("Ada.html: is the sketch itself")});
    EXPECT_EQ(everything(), before);
    EXPECT_EQ(bytesOf(question), kRaft);
}

TEST_F(MarkedClass, IsNotWrittenOverThroughALinkOrStandardOutput) {
    const QString table = put(QStringLiteral("class.csv"), "who,R\ns1,520\n"), link = out("link.csv");
    ASSERT_TRUE(QFile::link(table, link));
    const QStringList call{QStringLiteral("mark"), raft(), QStringLiteral("--answers"), table};
    expectRefused(run(call + QStringList{QStringLiteral("-o"), link}),
                  {QStringLiteral("is the class's table itself")});
    expectRefused(run(call, {},
                      [name = QFile::encodeName(table)] {
                          ::dup2(::open(name.constData(), O_WRONLY | O_APPEND), STDOUT_FILENO);
                      }),
                  {QStringLiteral("standard output: is the class's table itself")});
    EXPECT_EQ(bytesOf(table).toStdString(), "who,R\ns1,520\n");
}

TEST(Mark, HasHelp) {
    const Ran ran = run({QStringLiteral("mark"), QStringLiteral("--help")});
    EXPECT_EQ(ran.status, 0);
    for (const char* option :
         {"--answer ", "--answers ", "--as ", "--names", "--feedback ", "--points ", "-o "})
        EXPECT_TRUE(ran.out.contains(option)) << option;
    EXPECT_TRUE(run({QStringLiteral("--help")}).out.contains("tailpoint mark FILE"));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
