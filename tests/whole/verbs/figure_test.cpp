// SPDX-License-Identifier: MIT
// The figure verb: every form, every theme, every stage, and a picture that opens as a sketch again.
#include "tests/whole/verbs/driver.h"

#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kRaft = sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"),
                                R"(, "title": "Raft & <two> lines", "kept": [1.50])");

class Figure : public Verbs {
protected:
    /// The figure's bytes; the sketch comes by standard input.
    QByteArray draw(const char* name, const QStringList& options = {}, const QByteArray& from = kRaft,
                    int status = 0) {
        const QString file = path(QString::fromLatin1(name));
        const Ran ran = run(
            QStringList{QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"), file} + options,
            from);
        EXPECT_EQ(ran.status, status) << ran.err.toStdString();
        EXPECT_EQ(ran.out, "");
        EXPECT_EQ(ran.err, "") << ran.err.toStdString();
        return bytesOf(file);
    }
    static QStringList with(const char* option, const char* value) {
        return {QString::fromLatin1(option), QString::fromLatin1(value)};
    }
};

/// What an XML reader finds in a SVG.
struct Seen {
    QSet<QString> classes, elements;
    QStringList texts; ///< of the labels
    int halos = 0;
    bool wellFormed = false;
};

Seen look(const QByteArray& svg) {
    Seen seen;
    QXmlStreamReader reader(svg);
    while (!reader.atEnd()) {
        if (reader.readNext() != QXmlStreamReader::StartElement)
            continue;
        const QString element = reader.name().toString();
        const QString classes = reader.attributes().value(QLatin1String("class")).toString();
        seen.elements << element;
        for (const QString& one : classes.split(QLatin1Char(' '), Qt::SkipEmptyParts))
            seen.classes << one;
        if (element == QLatin1String("rect") && classes.contains(QLatin1String("halo")))
            ++seen.halos;
        if (element == QLatin1String("text"))
            seen.texts << reader.readElementText(QXmlStreamReader::IncludeChildElements);
    }
    seen.wellFormed = !reader.hasError();
    return seen;
}

TEST_F(Figure, CarriesTheCautionWhereTheSketchOrItsTitleAsksForIt) {
    const auto cautions = [&](const char* extra) {
        const QByteArray from =
            sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"), QByteArray(extra));
        return look(draw("caution.svg", {}, from))
            .texts.join(QLatin1Char(' '))
            .contains(QLatin1String("licensed engineer"));
    };
    EXPECT_TRUE(cautions(R"(, "title": "Sling under the survey buoy")"));
    EXPECT_TRUE(cautions(R"(, "caution": true)"));
    EXPECT_FALSE(cautions(R"(, "title": "Survey raft")"));
}

TEST_F(Figure, AnSvgIsWellFormedAndItsClassesAreTheRoles) {
    const Seen seen = look(draw("a.svg"));
    EXPECT_TRUE(seen.wellFormed);
    const QSet<QString> roles{
        QStringLiteral("sheet"),  QStringLiteral("grid"),     QStringLiteral("axis"),
        QStringLiteral("given"),  QStringLiteral("sum"),      QStringLiteral("construction"),
        QStringLiteral("arc"),    QStringLiteral("locus"),    QStringLiteral("label"),
        QStringLiteral("leader"), QStringLiteral("halo"),     QStringLiteral("titleblock"),
        QStringLiteral("point"),  QStringLiteral("highlight")};
    EXPECT_TRUE((seen.classes - roles).isEmpty())
        << QStringList((seen.classes - roles).values()).join(QLatin1Char(' ')).toStdString();
    for (const char* needed :
         {"sheet", "grid", "axis", "given", "sum", "construction", "arc", "label", "titleblock", "point"})
        EXPECT_TRUE(seen.classes.contains(QLatin1String(needed))) << needed;
}

TEST_F(Figure, AnSvgHasPresentationAttributesOnly) {
    const QByteArray svg = draw("a.svg");
    EXPECT_FALSE(svg.contains("<style"));
    EXPECT_FALSE(svg.contains("url(#"));
    EXPECT_FALSE(svg.contains(" style="));
}

TEST_F(Figure, ALabelIsOneTextElement) {
    const Seen seen = look(draw("a.svg"));
    const auto isIn = [&](const char* label) {
        return std::any_of(seen.texts.begin(), seen.texts.end(), [&](QString text) {
            return text.remove(QLatin1Char(' ')).remove(QChar(0xA0)).contains(QString::fromUtf8(label));
        });
    };
    for (const char* label : {"340N", "275N", "520N", "115.0\u00B0"})
        EXPECT_TRUE(isIn(label)) << label << " is not in one text of: "
                                 << seen.texts.join(QLatin1String(" | ")).toStdString();
}

TEST_F(Figure, AnSvgOpensAsTheSketchAgain) {
    const QByteArray svg = draw("a.svg");
    const Ran fromSvg = run(
        {QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"), QStringLiteral("json")}, svg);
    const Ran fromJson =
        run({QStringLiteral("report"), QStringLiteral("-"), QStringLiteral("--as"), QStringLiteral("json")},
            kRaft);
    EXPECT_EQ(fromSvg.status, 0) << fromSvg.err.toStdString();
    EXPECT_EQ(fromSvg.out, fromJson.out);
    EXPECT_EQ(draw("b.svg", {}, svg), svg); // unknown keys included
    EXPECT_TRUE(svg.contains("kept"));
}

TEST_F(Figure, AStageShowsItsPartsAndNoLaterOnes) {
    const Seen given = look(draw("0.svg", with("--stage", "0")));
    EXPECT_TRUE(given.classes.contains(QLatin1String("given")));
    EXPECT_FALSE(given.classes.contains(QLatin1String("sum")));
    EXPECT_FALSE(given.classes.contains(QLatin1String("construction")));
    EXPECT_TRUE(look(draw("8.svg", with("--stage", "8"))).classes.contains(QLatin1String("sum")));
}

TEST_F(Figure, EveryThemeDrawsAndDiffers) {
    const QByteArray paper = draw("p.svg", with("--theme", "paper"));
    EXPECT_EQ(paper, draw("default.svg"));
    EXPECT_NE(paper, draw("s.svg", with("--theme", "slate")));
    EXPECT_NE(paper, draw("c.svg", with("--theme", "contrast")));
}

TEST_F(Figure, EveryConstructionDrawsAndDiffers) {
    const QByteArray parallelogram = draw("1.svg", with("--construction", "parallelogram"));
    const QByteArray triangle = draw("2.svg", with("--construction", "triangle"));
    const QByteArray polygon = draw("3.svg", with("--construction", "polygon"));
    EXPECT_NE(parallelogram, triangle);
    EXPECT_NE(parallelogram, polygon);
}

TEST_F(Figure, APngHasTheAskedSize) {
    const QByteArray png =
        draw("a.png", {QStringLiteral("--width"), QStringLiteral("300"), QStringLiteral("--height"),
                       QStringLiteral("200"), QStringLiteral("--scale"), QStringLiteral("3")});
    ASSERT_TRUE(png.startsWith("\x89PNG"));
    const auto at = [&](int offset) {
        int value = 0;
        for (int i = 0; i < 4; ++i)
            value = value * 256 + static_cast<unsigned char>(png[offset + i]);
        return value;
    };
    EXPECT_EQ(at(16), 900); // IHDR: width, height
    EXPECT_EQ(at(20), 600);
}

TEST_F(Figure, APdfIsOne) {
    const QByteArray pdf = draw("a.pdf");
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    EXPECT_TRUE(pdf.contains("/FontFile")) << "fonts are embedded";
    EXPECT_FALSE(pdf.contains("/Subtype /Image")) << "vectors, no picture of pixels";
}

TEST_F(Figure, TheSameSketchGivesTheSameSvgEveryTime) {
    EXPECT_EQ(draw("a.svg"), draw("b.svg"));
}

TEST_F(Figure, WithoutAnAnswerItDrawsWhatIsGivenSaysWhatIsMissingAndExitsWith1) {
    const QByteArray unclear =
        sketch(force("P", "null", "25") + "," + force("Q", "null", "null") + "," + force("S", "90", "120"),
               R"(, "sum": {"magnitude": 400, "direction": 10})");
    const Seen seen = look(draw("a.svg", {}, unclear, 1));
    EXPECT_TRUE(seen.classes.contains(QLatin1String("given")));
    const QString all = seen.texts.join(QLatin1Char(' '));
    EXPECT_TRUE(all.contains(QLatin1String("90"))) << all.toStdString();
    EXPECT_TRUE(all.contains(QLatin1String("unknown")) || all.contains(QLatin1String("to find")))
        << all.toStdString();
}

TEST_F(Figure, ASketchWithoutForcesStillDrawsASheet) {
    EXPECT_TRUE(look(draw("a.svg", {}, sketch(""), 0)).wellFormed);
}

TEST_F(Figure, TheSecondAnswerCanBeTheSolidOne) {
    const QByteArray two = sketch(force("P", "250", "null") + "," + force("Q", "300", "null"),
                                  R"(, "sum": {"magnitude": 420, "direction": 5})");
    EXPECT_NE(draw("1.svg", with("--solution", "1"), two), draw("2.svg", with("--solution", "2"), two));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
