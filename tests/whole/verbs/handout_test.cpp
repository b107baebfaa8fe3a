// SPDX-License-Identifier: MIT
// The report as a handout, HTML and LaTeX: what is in it, whatever the question and whatever the names.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QProcess>
#include <QXmlStreamReader>
#include <map>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kRaft = sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"));
const QByteArray kTwoAnswers = sketch(force("P", "null", "40") + "," + force("Q", "260", "null"),
                                      R"(, "sum": {"magnitude": 400, "direction": 10})");
/// Everything that HTML, XML or TeX takes for more than a character.
const QByteArray kSpecial =
    R"({"format": "tailpoint-sketch", "version": 1, "title": "A&B <50%> of #1_$x {~^\\} \"rope\" 'n' --> ]]> μ☃",
        "units": {"force": "N", "angle": "deg"},
        "forces": [{"name": "A&B", "magnitude": 10, "direction": 0},
                   {"name": "<i>", "magnitude": 20, "direction": 50},
                   {"name": "50%#", "magnitude": 30, "direction": 120},
                   {"name": "T_A$", "magnitude": 15, "direction": 200},
                   {"name": "{\\~^}", "magnitude": 12, "direction": 250},
                   {"name": "Ярд☃", "magnitude": 9, "direction": 300}]})";

Ran handout(const QByteArray& question, const char* form, const QStringList& more = {}) {
    return run(QStringList{QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"),
                           QString::fromLatin1(form)} +
                   more,
               question);
}

/// Elements by name, and every text; empty where it is not well-formed.
struct Page {
    std::map<std::string, int> elements;
    QStringList headings;
    QString text;
    int emptyFormulas = 0;
};

Page pageOf(const QByteArray& html) {
    Page page;
    QXmlStreamReader xml(html);
    xml.setEntityExpansionLimit(0);
    QString formula;
    bool inFormula = false, inHeading = false;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement()) {
            ++page.elements[xml.name().toString().toStdString()];
            if (xml.name() == QLatin1String("math"))
                inFormula = true, formula.clear();
            if (xml.name() == QLatin1String("h2") || xml.name() == QLatin1String("h3"))
                inHeading = true, page.headings << QString();
        } else if (xml.isEndElement()) {
            if (xml.name() == QLatin1String("math")) {
                inFormula = false;
                page.emptyFormulas += formula.trimmed().isEmpty() ? 1 : 0;
            }
            inHeading = inHeading && xml.name() != QLatin1String("h2") && xml.name() != QLatin1String("h3");
        } else if (xml.isCharacters()) {
            page.text += xml.text();
            if (inFormula)
                formula += xml.text();
            if (inHeading)
                page.headings.back() += xml.text();
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString() << " in line " << xml.lineNumber();
    return page;
}

TEST(Handout, InHtmlHasStatementFigureStepsAnswerAndCheck) {
    const Ran ran = handout(kRaft, "html");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err.toStdString(), "");
    const Page page = pageOf(ran.out);
    EXPECT_EQ(page.elements.at("svg"), 1);
    EXPECT_EQ(page.elements.at("h1"), 1);
    EXPECT_EQ(page.elements.at("h3"), 12);
    EXPECT_EQ(page.emptyFormulas, 0);
    EXPECT_TRUE(page.headings.contains(QStringLiteral("Solution")));
    for (const char* title : {"Law of cosines for the magnitude", "Answer", "Check by components"})
        EXPECT_TRUE(page.headings.contains(QString::fromLatin1(title))) << title;
    EXPECT_TRUE(page.text.contains(QStringLiteral("Find the resultant R of P and Q.")));
    EXPECT_TRUE(page.text.contains(QStringLiteral("3.6\u00B0 clockwise from +x")));
}

TEST(Handout, InHtmlNeedsNoScriptAndNoNetwork) {
    const QByteArray html = handout(kRaft, "html").out;
    for (const char* word : {"<script", "src=", "href=", "@import", "javascript:", "onload"})
        EXPECT_FALSE(html.contains(word)) << word;
    EXPECT_EQ(html.count("url("), 1);
    EXPECT_EQ(html.count("url(data:font/ttf;base64,"), 1) << "the font comes along";
}

TEST(Handout, InLatexHasStatementFigureStepsAnswerAndCheck) {
    const Ran ran = handout(kRaft, "latex");
    EXPECT_EQ(ran.status, 0);
    for (const char* part :
         {"\\documentclass", "\\usepackage{amsmath}", "\\begin{tikzpicture}", "\\step{Answer}",
          "\\step{Check by components}", "\\boldsymbol{R}", "\\sqrt{P^{2} + Q^{2} - 2 P Q\\,\\cos \\gamma}",
          "520\\,\\mathrm{N}", "\\end{document}"})
        EXPECT_TRUE(ran.out.contains(part)) << part;
    EXPECT_EQ(ran.out.count("\\begin{"), ran.out.count("\\end{"));
    EXPECT_EQ(ran.out.count("\\usepackage{"), 2); // amsmath, tikz: T1 and utf8 have options
}

TEST(Handout, OfTwoAnswersTellsSharedStepsOnce) {
    for (const char* form : {"html", "latex"}) {
        const Ran ran = handout(kTwoAnswers, form);
        EXPECT_EQ(ran.status, 0);
        for (const char* once :
             {"Given and to find", "Count the unknowns", "Answer 1 of 2", "Answer 2 of 2", "First answer: "})
            EXPECT_EQ(ran.out.count(once), 1) << form << ": " << once;
        EXPECT_EQ(ran.out.count("Check by components"), 2) << form;
    }
    const Page page = pageOf(handout(kTwoAnswers, "html").out);
    EXPECT_TRUE(page.text.contains(QStringLiteral("10.3\u00B0 clockwise"))); // of the first
    EXPECT_TRUE(page.text.contains(QStringLiteral("89.7\u00B0 clockwise"))); // of the second
}

TEST(Report, OfTwoAnswersTellsSharedStepsOnceInTextToo) {
    const Ran ran = run({QStringLiteral("report"), QStringLiteral("-")}, kTwoAnswers);
    EXPECT_EQ(ran.status, 0);
    for (const char* once : {"Given and to find", "Count the unknowns", " 7 First answer\n",
                             " 8 Second answer\n", "First answer: ", "the same as in the first answer"})
        EXPECT_EQ(ran.out.count(once), 1) << once;
    EXPECT_EQ(ran.out.count("Check by components"), 2);
    EXPECT_EQ(ran.out.count("10 Check by components"), 2) << "both go on from the steps they share";
}

TEST(Handout, OfAQuestionWithoutAnswerSaysWhyAndExitsWithOne) {
    const QByteArray outOfReach = sketch(force("P", "null", "40") + "," + force("Q", "100", "null"),
                                         R"(, "sum": {"magnitude": 400, "direction": 10})");
    const QByteArray tooFew = sketch(force("P", "null", "40") + "," + force("Q", "null", "null"));
    for (const QByteArray& question : {outOfReach, tooFew})
        for (const char* form : {"html", "latex"}) {
            const Ran ran = handout(question, form);
            EXPECT_EQ(ran.status, 1) << form;
            EXPECT_EQ(ran.err.toStdString(), "");
            EXPECT_TRUE(ran.out.contains("Answer")) << form;
        }
    EXPECT_TRUE(pageOf(handout(outOfReach, "html").out).text.contains(QStringLiteral("No answer")));
}

TEST(Handout, OfDegenerateQuestionsIsShortAndWhole) {
    const QByteArray parallel = sketch(force("P", "30", "20") + "," + force("Q", "50", "20"));
    const QByteArray opposite = sketch(force("P", "30", "20") + "," + force("Q", "30", "200"));
    const QByteArray zero = sketch(force("P", "0", "20") + "," + force("Q", "50", "70"));
    for (const QByteArray& question : {parallel, opposite, zero}) {
        const Ran ran = handout(question, "html");
        EXPECT_EQ(ran.status, 0);
        const Page page = pageOf(ran.out);
        EXPECT_LE(page.elements.at("h3"), 7); // given, count, directions, estimate, line, answer, check
        EXPECT_FALSE(page.text.contains(QStringLiteral("nan")) || page.text.contains(QStringLiteral("inf ")));
        EXPECT_EQ(handout(question, "latex").status, 0);
    }
}

TEST(Handout, WithoutSolutionGivesNothingAwayAndStatesWhatIsGiven) {
    const QStringList bare{QStringLiteral("--no-solution")};
    const QByteArray latex = handout(kRaft, "latex", bare).out;
    for (const char* answer : {"520 N", "520\\,", "{3.6", "{115.0", "{28.6", "Solution", "step{"})
        EXPECT_FALSE(latex.mid(latex.indexOf("\\begin{document}")).contains(answer)) << answer;
    EXPECT_TRUE(latex.contains("340\\,") || latex.contains("340 N"));
    const QString text = pageOf(handout(kRaft, "html", bare).out).text;
    EXPECT_TRUE(
        text.contains(QStringLiteral("P=340 N at 25.0\u00B0 and Q=275 N at \u221240.0\u00B0 are given.")))
        << text.toStdString();
    EXPECT_TRUE(
        text.contains(QStringLiteral("Angles are measured from +x, counter-clockwise being positive.")));
    expectRefused(
        run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--no-solution")}, kRaft),
        {QStringLiteral("--no-solution"), QStringLiteral("--as html")});
}

TEST(Handout, OfManyForcesListsThemInATable) {
    QByteArray forces;
    for (int i = 0; i < 60; ++i)
        forces += (i ? "," : "") + force(("F" + std::to_string(i)).c_str(), QByteArray::number(1 + i % 7),
                                         QByteArray::number(i * 37 % 360));
    const Page page = pageOf(handout(sketch(forces), "html", {QStringLiteral("--no-solution")}).out);
    EXPECT_EQ(page.elements.at("table"), 1);
    EXPECT_EQ(page.elements.at("tr"), 61);
}

TEST(Handout, RoundedByHandCarriesShownNumbersAndSaysWhatThatCosts) {
    const QStringList byHand{QStringLiteral("--rounding"), QStringLiteral("hand")};
    for (const char* form : {"text", "html", "latex"}) {
        EXPECT_TRUE(handout(kRaft, form, byHand).out.contains("What the rounding by hand costs")) << form;
        EXPECT_FALSE(handout(kRaft, form).out.contains("What the rounding by hand costs")) << form;
    }
    EXPECT_TRUE(handout(kRaft, "json", byHand).out.contains("What the rounding by hand costs"));
    expectRefused(
        run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--rounding=up")}, kRaft),
        {QStringLiteral("--rounding"), QStringLiteral("full, hand")});
}

TEST(Handout, AddsTwoAtATimeWhereThatIsAsked) {
    const QByteArray three =
        sketch(force("P", "30", "0") + "," + force("Q", "40", "90") + "," + force("S", "20", "200"));
    const QStringList pairs{QStringLiteral("--adding"), QStringLiteral("parallelograms")};
    for (const char* form : {"text", "html", "latex"}) {
        const QByteArray paired = handout(three, form, pairs).out, table = handout(three, form).out;
        EXPECT_TRUE(paired.contains("The last parallelogram gives the resultant")) << form;
        EXPECT_FALSE(paired.contains("Component table")) << form;
        EXPECT_TRUE(table.contains("Component table")) << form;
    }
}

/// By the triangle several forces are told two at a time: so they are drawn, figure and text alike.
TEST(Handout, DrawsWhatTheMethodTells) {
    const QByteArray three =
        sketch(force("P", "30", "0") + "," + force("Q", "40", "90") + "," + force("S", "20", "200"));
    const auto by = [&](const char* method) {
        return handout(three, "html", {QStringLiteral("--method"), QLatin1String(method)}).out;
    };
    EXPECT_TRUE(by("triangle").contains("The last parallelogram gives the resultant"));
    EXPECT_TRUE(by("triangle").contains("id=\"pair-1\""));
    EXPECT_FALSE(by("components").contains("id=\"pair-1\""));
}

TEST(Handout, TakesTheMethodThatIsAskedFor) {
    const QStringList method{QStringLiteral("--method"), QStringLiteral("components")};
    for (const char* form : {"text", "json", "html", "latex"}) {
        const QByteArray by = handout(kRaft, form, method).out, plain = handout(kRaft, form).out;
        EXPECT_TRUE(by.contains("Check by the force triangle")) << form;
        EXPECT_FALSE(by.contains("Check by components")) << form;
        EXPECT_TRUE(plain.contains("Check by components")) << form;
    }
    expectRefused(
        run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--method=graph")}, kRaft),
        {QStringLiteral("--method"), QStringLiteral("triangle, components")});
}

TEST(Handout, CarriesTheCautionWhereALiftingSceneIsNamed) {
    QByteArray lifting = kRaft;
    lifting.replace(R"("version": 1)", R"("version": 1, "title": "Lifting a mast")");
    for (const char* form : {"html", "latex"}) {
        EXPECT_TRUE(handout(lifting, form).out.contains("A sketch check, not a design")) << form;
        EXPECT_FALSE(handout(kRaft, form).out.contains("A sketch check, not a design")) << form;
    }
}

class HandoutFile : public Verbs {};

TEST_F(HandoutFile, OfAnyTitleAndNamesIsWellFormed) {
    const QString out = path(QStringLiteral("special.html"));
    ASSERT_EQ(run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as=html"),
                   QStringLiteral("-o"), out},
                  kSpecial)
                  .status,
              0);
    QProcess xmllint;
    xmllint.start(QStringLiteral("xmllint"), {QStringLiteral("--noout"), QStringLiteral("--nonet"), out});
    ASSERT_TRUE(xmllint.waitForFinished());
    EXPECT_EQ(xmllint.exitCode(), 0) << xmllint.readAllStandardError().toStdString();
    const Page page = pageOf(bytesOf(out));
    for (const char* name : {"A&B", "<i>", "50%#", "{\\~^}"})
        EXPECT_TRUE(page.text.contains(QString::fromLatin1(name))) << name;
    EXPECT_EQ(page.elements.count("i"), 0u) << "a name became an element";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
