// SPDX-License-Identifier: MIT
// A class's table marked: what is read, what is refused, and its outputs as text, CSV, JSON and pages.
#include "ui/marking/class_output.h"

#include "ui/files/sketch_json.h"
#include "ui/marking/mark_options.h"
#include "ui/marking/marking_csv.h"
#include "ui/marking/marking_html.h"
#include "ui/marking/marking_json.h"

#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QXmlStreamReader>

namespace tailpoint {
namespace TAILPOINT_FILE {

// P = 340 N at 25°, Q = 275 N at -40°. Python: hypot of the sums of 340 cos 25° + 275 cos 40° and of
// 340 sin 25° - 275 sin 40°: R = 519.86 N, theta_R = -3.648°; √(340² + 275² - 2·340·275 cos 65°) = 334.96;
// 340 + 275 = 615.
constexpr const char* kRaft = R"({"format": "tailpoint-sketch", "version": 1, "title": "Raft & <buoy>",
  "units": {"force": "N", "angle": "deg"}, "forces": [{"name": "P", "magnitude": 340, "direction": 25},
  {"name": "Q", "magnitude": 275, "direction": -40}]MORE})";

class MarkingAClass : public ::testing::Test {
protected:
    explicit MarkingAClass(const char* more = "")
        : sketch(std::get<Sketch>(readSketch(QByteArray(kRaft).replace("MORE", more)))),
          marker(sketch, solve(sketch)) {}

    std::vector<MarkedRow> rowsOf(std::string_view text) const {
        auto opened = ClassMarking::open(text, marker);
        std::vector<MarkedRow> rows;
        if (const auto* fault = std::get_if<ClassFault>(&opened)) {
            ADD_FAILURE() << fault->message;
            return rows;
        }
        while (auto row = std::get<ClassMarking>(opened).next())
            rows.push_back(std::move(*row));
        return rows;
    }
    ClassFault faultOf(std::string_view text) const {
        const auto opened = ClassMarking::open(text, marker);
        const auto* fault = std::get_if<ClassFault>(&opened);
        EXPECT_NE(fault, nullptr) << text;
        return fault ? *fault : ClassFault{};
    }
    template <class Make>
    std::string as(std::string_view text, Make make) const {
        auto opened = ClassMarking::open(text, marker);
        auto& marking = std::get<ClassMarking>(opened);
        const std::unique_ptr<ClassOutput> output = make(marking);
        std::string out = output->begin();
        while (const auto row = marking.next())
            out += output->row(*row);
        return out + output->end();
    }
    std::string csv(std::string_view text) const { return as(text, classCsv); }
    std::string html(std::string_view text, bool names = false) const {
        return as(text, [&](const ClassMarking& marking) { return classHtml(sketch, marking, names); });
    }

    Sketch sketch;
    Marker marker;
};

void expectSays(const ClassFault& fault, std::size_t line, const char* part) {
    EXPECT_EQ(fault.line, line) << fault.message;
    EXPECT_NE(fault.message.find(part), std::string::npos) << fault.message;
}

TEST_F(MarkingAClass, ReadsColumnsInAnyOrderGreekLettersAndMissingAnswers) {
    const auto rows = rowsOf("who,θ_R,R\ns1,-3.6,520\ns2,,520\ns3,-3.6\n");
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].verdict(), "right");
    EXPECT_EQ(rows[1].verdict(), "incomplete");
    EXPECT_EQ(rows[1].points(), 1);
    EXPECT_EQ(rows[2].verdict(), "incomplete") << "fewer cells are missing answers";
    EXPECT_EQ(rows[2].line, 4U);
}

TEST_F(MarkingAClass, ReadsDecimalCommasInEitherTable) {
    for (const char* text : {"who;R;theta_R\ns1;519,9;-3,65\n", "who,R,theta_R\ns1,\"519,9\",\"-3,65\"\n"})
        EXPECT_EQ(rowsOf(text).at(0).verdict(), "right") << text;
}

TEST_F(MarkingAClass, RefusesAHeadThatSaysNotWhatIsAnswered) {
    expectSays(faultOf(""), 0, "is empty");
    expectSays(faultOf("\n \n"), 0, "is empty");
    expectSays(faultOf("who\ns1\n"), 1,
               "no column has answers; the first row names the columns: who, then any of R");
    expectSays(faultOf("who,S\n"), 1, "'S' is no quantity of this question");
    expectSays(faultOf("who,S\n"), 1, "R, theta_R");
    expectSays(faultOf("s1,520,-3.6\n"), 1, "'520' is no quantity");
    expectSays(faultOf("who,R,theta_R,θ_R\n"), 1, "'theta_R' stands twice");
    expectSays(faultOf("who,R,override,override\n"), 1, "'override' stands twice");
    expectSays(faultOf("R,theta_R\n"), 1, "the first column says who");
    expectSays(faultOf("who,R,,theta_R\n"), 1, "column 3 has no name");
    expectSays(faultOf("\n\nwho,S\n"), 3, "'S'");
    expectSays(faultOf("who,R\ns1,1\nM\xFCller,2\n"), 3, "is not UTF-8");
    expectSays(faultOf(std::string_view("\xFF\xFEw\0", 4)), 0, "UTF-16");
    expectSays(faultOf("PK\x03\x04..."), 0, "workbook");
}

TEST_F(MarkingAClass, PassesOverEmptyColumnsBehindTheLast) {
    EXPECT_EQ(rowsOf("who,R,theta_R,,\ns1,520,-3.6,,\n,,,,\n").at(0).verdict(), "right");
}

TEST_F(MarkingAClass, KeepsARowThatCantBeReadAndMarksTheRest) {
    const auto rows = rowsOf("who,R,theta_R\ns1,52o,1\ns2,520 deg,1\ns3,520,-3,6\ns4,\"520,1\ns5,520,-3.6\n");
    ASSERT_EQ(rows.size(), 5U);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(rows[i].verdict(), "unread");
        EXPECT_EQ(rows[i].points(), 0);
        EXPECT_EQ(rows[i].of, 2);
        EXPECT_NE(rows[i].fault, "");
    }
    EXPECT_EQ(rows[0].who, "s1");
    EXPECT_EQ(rows[4].verdict(), "right");
}

TEST_F(MarkingAClass, ACellThatCantBeReadLeavesTheOthersMarked) {
    const auto rows = rowsOf("who,R,theta_R,R_x\ns1,52o,-3.6,\ns2,520,-3.6,much\ns3,R=520,-3° 39′,\ns4,,,\n");
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0].verdict(), "unread");
    EXPECT_EQ(rows[0].points(), 1) << "of the direction";
    EXPECT_NE(rows[0].fault.find("R: '52o'"), std::string::npos) << rows[0].fault;
    EXPECT_EQ(rows[1].verdict(), "unread");
    EXPECT_EQ(rows[1].points(), 2);
    EXPECT_EQ(rows[2].verdict(), "right") << rows[2].fault;
    EXPECT_EQ(rows[3].verdict(), "incomplete");
    const std::string out = csv("who,R,theta_R\ns1,52o,-3.6\n");
    EXPECT_NE(out.find("\ns1,52o,-3.6,unread,1,,"), std::string::npos) << out;
    EXPECT_EQ(csv(out), out) << "marked again";
    const std::string json = as("who,R,theta_R\ns1,52o,-3.6\n", [](const auto&) { return classJson(); });
    const QJsonObject student =
        QJsonDocument::fromJson(QByteArray::fromStdString(json))["students"][0].toObject();
    EXPECT_EQ(student["verdict"].toString(), "unread");
    EXPECT_NE(student["message"].toString(), "");
    const QJsonObject cell = student["quantities"].toArray()[0].toObject();
    EXPECT_EQ(cell["verdict"].toString(), "unread");
    EXPECT_TRUE(cell["given"].isNull());
    EXPECT_EQ(cell["text"]["given"].toString(), "52o");
    EXPECT_EQ(student["quantities"].toArray()[1].toObject()["verdict"].toString(), "right");
}

TEST_F(MarkingAClass, AColumnInParenthesesIsKeptAndNotMarked) {
    const std::string out = csv("who,(remark),R\ns1,left early,520\n");
    EXPECT_TRUE(out.starts_with("who,(remark),R,verdict,points,slip,sentence\ns1,left early,520,")) << out;
    EXPECT_NE(faultOf("who,remark,R\n").message.find("parentheses"), std::string::npos);
}

TEST_F(MarkingAClass, TakesAMarkersOwnPointsAndRemark) {
    const auto rows = rowsOf("who,R,override\ns1,335,2: shown orally: well\ns2,335,\"1,5\"\ns3,520,0:copied\n"
                             "s4,x,1\ns5,520,3\ns6,520,shown\ns7,520,-1\n");
    ASSERT_EQ(rows.size(), 7U);
    EXPECT_EQ(rows[0].points(), 2);
    EXPECT_EQ(rows[0].own->remark, "shown orally: well");
    EXPECT_EQ(rows[0].verdict(), "slip") << "the verdict stays what it is";
    EXPECT_EQ(rows[1].points(), 1.5);
    EXPECT_EQ(rows[2].points(), 0);
    EXPECT_EQ(rows[3].verdict(), "unread");
    EXPECT_EQ(rows[3].points(), 1) << "what can't be read can still be given points";
    for (std::size_t i = 4; i < 7; ++i) { // own points that can't be read take nothing from the row
        EXPECT_EQ(rows[i].verdict(), rows[6].verdict());
        EXPECT_NE(rows[i].verdict(), "unread");
        EXPECT_EQ(rows[i].points(), 1) << "for a right R, as without own points";
        EXPECT_TRUE(rows[i].fault.empty()) << "a student is told nothing of it";
    }
    EXPECT_NE(rows[4].faults().find("outside 0 to 2 points"), std::string::npos);
    EXPECT_NE(rows[5].faults().find("as 2: shown orally"), std::string::npos);
}

TEST_F(MarkingAClass, IsWrittenAsTheTableWithFourColumnsMore) {
    const std::string out =
        csv("\xEF\xBB\xBFwho;R;theta_R;override\r\n\"Ng; Bo\";520;-3,6;\r\ns2;615;;0,5: half\r\n");
    EXPECT_TRUE(out.starts_with("\xEF\xBB\xBFwho;R;theta_R;override;verdict;points;slip;sentence\r\n"
                                "\"Ng; Bo\";520;-3,6;;right;2;;\r\n"
                                "s2;615;;0,5: half;slip;0,5;magnitudes-added;"))
        << out;
    EXPECT_TRUE(out.ends_with("\r\n"));
}

TEST_F(MarkingAClass, MarkedAgainGivesTheSameBytes) {
    const std::string once =
        csv("who,R,override,theta_R\ns1,520,,-3.6\n=cmd(),335,1: ok,\ns3,1,2,3,4,5\ns4,12q,,\n"
            "\"two\nlines\",-520,,\"176,4\"\n+x,520,,N90E\n");
    EXPECT_EQ(csv(once), once);
    EXPECT_NE(once.find("\n'=cmd(),335,"), std::string::npos) << once;
    EXPECT_NE(once.find("\n'+x,520,"), std::string::npos) << once;
}

TEST_F(MarkingAClass, GivesPointsAsATableOfWhoAndPoints) {
    EXPECT_EQ(as("who,R,theta_R,override\ns1,520,-3.6,\n=x,520,,\ns3,zz,,1\n", pointsCsv),
              "who,points\ns1,2\n'=x,1\ns3,1\n");
}

TEST_F(MarkingAClass, HasTheContractsKeysInJson) {
    const std::string text = as("who,R,theta_R,override\ns1,335,,\ns2,x,,\ns3,520,3.6,2: ok\n",
                                [](const auto&) { return classJson(); });
    QJsonParseError error;
    const QJsonObject json = QJsonDocument::fromJson(QByteArray::fromStdString(text), &error).object();
    ASSERT_EQ(error.error, QJsonParseError::NoError) << text;
    EXPECT_EQ(json["format"].toString(), "tailpoint-marking-class");
    const QJsonArray students = json["students"].toArray();
    ASSERT_EQ(students.size(), 3);
    const QJsonObject first = students[0].toObject();
    EXPECT_EQ(first["who"].toString(), "s1");
    EXPECT_EQ(first["line"].toInt(), 2);
    EXPECT_EQ(first["verdict"].toString(), "slip");
    const QJsonObject slip = first["slips"].toArray()[0].toObject();
    EXPECT_EQ(slip["id"].toString(), "supplement-in-cosines");
    EXPECT_EQ(slip["evidence"].toString(), "weak");
    EXPECT_NEAR(slip["gives"].toObject()["R"].toDouble(), 334.95579567233824, 1e-9);
    const QJsonObject missing = first["quantities"].toArray()[1].toObject();
    EXPECT_TRUE(missing["given"].isNull());
    EXPECT_NEAR(missing["expected"].toDouble(), -3.6479388439346, 1e-9);
    EXPECT_EQ(students[1].toObject()["verdict"].toString(), "unread");
    EXPECT_NE(students[1].toObject()["message"].toString(), "");
    EXPECT_EQ(students[2].toObject()["points"].toDouble(), 2);
    EXPECT_EQ(students[2].toObject()["override"].toObject()["remark"].toString(), "ok");
    const QJsonArray tally = json["tally"].toArray();
    ASSERT_EQ(tally.size(), 2);
    EXPECT_EQ(tally[0].toObject()["who"].toArray()[0].toString(), "s1");
    EXPECT_EQ(tally[1].toObject()["id"].toString(), "wrong-turn");
}

TEST_F(MarkingAClass, OfNobodyIsStillJson) {
    const std::string text = as("who,R\n", [](const auto&) { return classJson(); });
    EXPECT_FALSE(QJsonDocument::fromJson(QByteArray::fromStdString(text)).isNull()) << text;
}

/// What is wrong with it as XML, or nothing.
std::string faultOfMarkup(const std::string& page) {
    QXmlStreamReader reader(QByteArray::fromStdString(page));
    while (!reader.atEnd())
        reader.readNext();
    return reader.hasError() ? reader.errorString().toStdString() : std::string();
}

constexpr const char* kClass =
    "who,R,theta_R,gamma,override\nAda,335,,,\nBo,335,-23.1,,\nCy <b>&\x01\",520,3.6,,\n"
    "Di,615,-7.5,,1: spoke\nEd,x,,,\nFay,520,-3.6,115,\n";

TEST_F(MarkingAClass, IsAPageThatIsSoundMarkup) {
    const std::string page = html(kClass);
    EXPECT_EQ(faultOfMarkup(page), "");
    EXPECT_NE(page.find("Raft &amp; &lt;buoy&gt;"), std::string::npos);
    EXPECT_NE(page.find("<bdi>Cy &lt;b&gt;&amp; &quot;</bdi>"), std::string::npos);
    EXPECT_NE(
        page.find("6 answers: 1 right, 1 counted from another axis or in the other turn, 3 with a slip"),
        std::string::npos);
    EXPECT_NE(page.find("set by the marker"), std::string::npos);
    EXPECT_NE(page.find("Line 6: R: "), std::string::npos);
    EXPECT_EQ(page.find("<script"), std::string::npos);
    EXPECT_EQ(page.find("src=\"http"), std::string::npos);
}

TEST_F(MarkingAClass, HasATallyInAPictureThatIsToldInWords) {
    const std::string page = html(kClass);
    EXPECT_NE(page.find("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\""), std::string::npos);
    EXPECT_NE(page.find("Of 6 answers: 2 with supplement in the law of cosines, 1 with magnitudes added, "
                        "1 with angle in the other turning sense."),
              std::string::npos);
    EXPECT_NE(html("who,R\ns1,520\n").find("No slip is named."), std::string::npos);
}

TEST_F(MarkingAClass, ShowsTheChangedLineBesideTheRightOne) {
    const std::string page = html(kClass);
    // of Ada's one number the evidence is weak
    const auto slip = page.find("<h3>May be: supplement in the law of cosines"),
               end = page.find("</section>", slip);
    const std::string section = page.substr(slip, end - slip);
    EXPECT_NE(section.find("(2 answers)"), std::string::npos);
    EXPECT_NE(section.find("519.86"), std::string::npos);
    EXPECT_NE(section.find("334.96"), std::string::npos);
    EXPECT_NE(section.find("<math>"), std::string::npos);
    EXPECT_NE(section.find(" = 335 N</p>"), std::string::npos) << "this number is named";
}

/// Cells of the table of answers that say a verdict.
TEST_F(MarkingAClass, HasTheSameWordsForVerdictsInThePageAsInTheTable) {
    const std::string text = "who,R,theta_R\ns1,777,51\ns2,520,\ns3,x,\ns4,520,3.6\ns5,519,-3.6\n";
    const std::string page = html(text);
    std::size_t row = 0;
    for (const MarkedRow& marked : rowsOf(text)) {
        const auto at = page.find("<bdi>s" + std::to_string(++row) + "</bdi>");
        ASSERT_NE(at, std::string::npos);
        EXPECT_NE(page.find("<td class=\"words\">" + std::string(marked.verdict()), at), std::string::npos);
        EXPECT_NE(csv(text).find("," + std::string(marked.verdict()) + ","), std::string::npos);
        EXPECT_NE(page.find("<dt>" + std::string(marked.verdict()) + "</dt>"), std::string::npos)
            << marked.verdict() << " is explained";
    }
}

TEST_F(MarkingAClass, NamesANegativeNumberWithItsSign) {
    // by hand: the magnitudes of -437 N is 437 N, and so it was not typed
    const std::string page = studentHtml(sketch, rowsOf("who,R,theta_R\ns1,-335,\n").at(0));
    EXPECT_NE(page.find("A magnitude is never negative"), std::string::npos) << page;
}

TEST_F(MarkingAClass, NamesNobodyBesideASlipUnlessAsked) {
    const std::string quiet = html(kClass), named = html(kClass, true);
    const auto answers = quiet.find("<h2>Answers</h2>");
    ASSERT_NE(answers, std::string::npos);
    for (const char* who : {"Ada", "Bo", "Cy", "Di"}) {
        EXPECT_GT(quiet.find("<bdi>" + std::string(who)), answers) << who;
        EXPECT_LT(named.find("<bdi>" + std::string(who)), named.find("<h2>Answers</h2>")) << who;
    }
    EXPECT_EQ(quiet.find("upplement in the law of cosines", answers), std::string::npos);
    EXPECT_NE(named.find("upplement in the law of cosines", named.find("<h2>Answers</h2>")),
              std::string::npos);
    EXPECT_EQ(faultOfMarkup(named), "");
}

TEST_F(MarkingAClass, TellsEachStudentOnAPageOfTheirOwn) {
    for (const MarkedRow& row : rowsOf(kClass)) {
        const std::string page = studentHtml(sketch, row);
        EXPECT_EQ(faultOfMarkup(page), "") << row.who;
        EXPECT_EQ(page.find("<script"), std::string::npos);
    }
    const auto rows = rowsOf(kClass);
    const std::string ada = studentHtml(sketch, rows[0]);
    for (const char* part : {"<bdi>Ada</bdi>", "335 N", "520 N", "0 of 2 points", "334.96", "class=\"ask\""})
        EXPECT_NE(ada.find(part), std::string::npos) << part;
    EXPECT_NE(studentHtml(sketch, rows[3]).find("1 of 2 points, set by the marker: spoke"),
              std::string::npos);
    EXPECT_NE(studentHtml(sketch, rows[4]).find("could not be read"), std::string::npos);
    EXPECT_EQ(studentHtml(sketch, rows[5]).find("What gives this number"), std::string::npos);
}

TEST_F(MarkingAClass, IsToldAsTextWithTheTally) {
    const std::string text = as(kClass, [](const auto&) { return classText(); });
    EXPECT_NE(text.find("Ada: slip, 0 of 2\n"), std::string::npos) << text;
    EXPECT_NE(text.find("override: 1 of 2: spoke"), std::string::npos);
    const auto eds = text.find("\nEd: "), next = text.find("\n\n", eds);
    ASSERT_NE(eds, std::string::npos) << text;
    EXPECT_NE(text.substr(eds, next - eds).find("\n  unread: R: "), std::string::npos) << text;
    EXPECT_EQ(text.find("  unread: R: "), text.rfind("  unread: R: ")) << "of nobody else";
    EXPECT_TRUE(text.ends_with(
        "Slips named first:\n  2  supplement-in-cosines\n  1  magnitudes-added\n  1  wrong-turn\n"))
        << text;
}

struct Scheme {
    const char* json;
    const char* place;   ///< of the fault; nullptr: there is none
    const char* message; ///< a part of it
};

TEST(HowAQuestionIsMarked, IsReadFromTheSketchOrRefusedWithItsPlace) {
    const Scheme schemes[] = {
        {"null", nullptr, ""},
        {"{}", nullptr, ""},
        {R"({"points": null, "mine": [1], "credit": {"unit": null, "also": 2}})", nullptr, ""},
        {"[]", "marking", "is a list"},
        {R"({"points": {"R": "2"}})", "marking.points.R", "write the number without quotes"},
        {R"({"points": {"R": -1}})", "marking.points.R", "outside 0 to"},
        {R"({"points": 2})", "marking.points", "is a number"},
        {R"({"followThrough": "yes"})", "marking.followThrough", "write true or false"},
        {R"({"bothAnswers": 1})", "marking.bothAnswers", "write true or false"},
        {R"({"credit": {"axis": 1.5}})", "marking.credit.axis", "outside 0 to 1"},
        {R"({"credit": [1]})", "marking.credit", "is a list"}};
    for (const Scheme& scheme : schemes) {
        const auto sketch =
            readSketch(QByteArray(kRaft).replace("MORE", QByteArray(", \"marking\": ") + scheme.json));
        ASSERT_TRUE(std::holds_alternative<Sketch>(sketch)) << scheme.json;
        const auto options = markOptionsOf(std::get<Sketch>(sketch));
        const auto* fault = std::get_if<FileError>(&options);
        ASSERT_EQ(fault != nullptr, scheme.place != nullptr) << scheme.json;
        if (fault) {
            EXPECT_EQ(fault->place.toStdString(), scheme.place);
            EXPECT_TRUE(fault->message.contains(QLatin1String(scheme.message)))
                << fault->message.toStdString();
        }
    }
}

TEST(HowAQuestionIsMarked, GoesIntoPointsAndCredit) {
    const auto sketch = std::get<Sketch>(readSketch(QByteArray(kRaft).replace(
        "MORE", R"(, "marking": {"points": {"R": 2, "theta_R": 3}, "followThrough": false,
                   "credit": {"unit": 0.5, "axis": 0.25, "slip": 0.75}, "bothAnswers": true, "unitRequired": true})")));
    const auto options = std::get<MarkOptions>(markOptionsOf(sketch));
    const Marker marker(sketch, solve(sketch), options);
    EXPECT_FALSE(faultOfPoints(options, marker));
    EXPECT_EQ(marker.of(), 5);
    EXPECT_FALSE(options.followThrough);
    EXPECT_TRUE(options.bothAnswers && options.unitRequired);
    EXPECT_EQ(options.creditUnit, 0.5);
    EXPECT_EQ(options.creditAxis, 0.25);
    EXPECT_EQ(options.creditSlip, 0.75);
}

TEST(HowAQuestionIsMarked, KnowsTheQuantitiesThatAreAsked) {
    const auto sketch = std::get<Sketch>(readSketch(QByteArray(kRaft).replace("MORE", "")));
    MarkOptions options;
    options.points = {{"gamma", 1.0}};
    const auto fault = faultOfPoints(options, Marker(sketch, solve(sketch), options));
    ASSERT_TRUE(fault);
    EXPECT_TRUE(fault->message.contains(QStringLiteral("'gamma' is not asked")))
        << fault->message.toStdString();
    EXPECT_TRUE(fault->message.contains(QStringLiteral("R, theta_R")));
}

TEST(HowAQuestionIsMarked, StaysInTheSketchsFileAsItWas) {
    const QByteArray marking = R"("marking": {"points": {"R": 2.50}, "mine": [1, {"a": null}]})";
    const auto sketch = std::get<Sketch>(readSketch(QByteArray(kRaft).replace("MORE", ", " + marking)));
    EXPECT_TRUE(writeSketch(sketch).contains(marking)) << writeSketch(sketch).toStdString();
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
