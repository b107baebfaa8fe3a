// SPDX-License-Identifier: MIT
// The figure verb's outputs for the page and the class: paper, true scale, pixels, hidden parts, all stages.
#include "tests/whole/verbs/driver.h"

#include <QFileInfo>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QXmlStreamReader>
#include <QtEndian>
#include <cmath>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kRaft = sketch(force("Port", "340", "25") + "," + force("Lee", "275", "-40"),
                                R"(, "title": "Raft on two lines")");

class FigureOutput : public Verbs {
protected:
    Ran draw(const char* name, const QStringList& options, const QByteArray& from = kRaft) {
        return run(QStringList{QStringLiteral("figure"), QStringLiteral("-"), QStringLiteral("-o"),
                               path(QString::fromLatin1(name))} +
                       options,
                   from);
    }
    QByteArray svg(const QStringList& options, const QByteArray& from = kRaft) {
        const Ran ran = draw("out.svg", options, from);
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        return bytesOf(path(QStringLiteral("out.svg")));
    }
    static QStringList words(const char* line) { return QString::fromLatin1(line).split(QLatin1Char(' ')); }
    QByteArray pdfInfo(const char* name) {
        return QByteArray::fromStdString(
            output(QStringLiteral("pdfinfo"), {path(QString::fromLatin1(name))}).toStdString());
    }
    static QString output(const QString& program, const QStringList& arguments) {
        QProcess process;
        process.start(program, arguments);
        EXPECT_TRUE(process.waitForFinished()) << program.toStdString();
        return QString::fromUtf8(process.readAllStandardOutput());
    }
};

/// The word at `offset` of a PNG's chunk (ISO/IEC 15948: big-endian, behind the chunk's name).
quint32 wordAt(const QByteArray& png, const char* chunk, int offset) {
    const qsizetype at = png.indexOf(chunk);
    return at < 0 ? 0 : qFromBigEndian<quint32>(png.constData() + at + 4 + offset);
}

/// The longest stroke of a group, points.
double longestStroke(const QByteArray& svg, const QString& id) {
    QXmlStreamReader reader(svg);
    double longest = 0;
    bool inside = false;
    while (!reader.atEnd()) {
        reader.readNext();
        const auto attributes = reader.attributes();
        if (reader.isStartElement() && attributes.value(QLatin1String("id")) == id)
            inside = true;
        else if (reader.isEndElement() && reader.name() == QLatin1String("g"))
            inside = false;
        if (!inside || !reader.isStartElement())
            continue;
        static const QRegularExpression number(QStringLiteral("-?[0-9.]+"));
        QList<double> values;
        for (const char* name : {"d", "points"}) {
            auto found = number.globalMatch(attributes.value(QLatin1String(name)).toString());
            while (found.hasNext())
                values << found.next().captured().toDouble();
        }
        for (const char* name : {"x1", "y1", "x2", "y2"})
            if (attributes.hasAttribute(QLatin1String(name)))
                values << attributes.value(QLatin1String(name)).toDouble();
        for (qsizetype i = 0; i + 3 < values.size(); i += 2)
            longest = std::max(longest, std::hypot(values[i + 2] - values[i], values[i + 3] - values[i + 1]));
    }
    return longest;
}

/// What an SVG says: all its words and every attribute but those of geometry, whose digits say nothing.
QString saidIn(const QByteArray& svg) {
    static const QRegularExpression geometry(
        QStringLiteral("^(d|points|x|y|x1|y1|x2|y2|dx|dy|cx|cy|r|rx|ry|width|height|viewBox|transform|"
                       "font-size|stroke-width|stroke-dasharray|textLength)$"));
    QXmlStreamReader reader(svg);
    QString said;
    const auto say = [&](QStringView text) { said.append(text).append(u' '); };
    while (!reader.atEnd()) {
        reader.readNext();
        say(reader.text());
        say(reader.processingInstructionData());
        for (const auto& attribute : reader.attributes())
            if (reader.isStartElement() && !geometry.match(attribute.name().toString()).hasMatch())
                say(attribute.value());
    }
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    return said;
}

/// Whether this number stands there, and not merely its digits in another.
bool saysNumber(const QString& said, const char* number) {
    return said.contains(QRegularExpression(QStringLiteral("(?<![0-9.])%1(?![0-9]|\\.[0-9])")
                                                .arg(QRegularExpression::escape(QLatin1String(number)))));
}

TEST_F(FigureOutput, TrueScaleMakesTheBarTenCentimetresLong) {
    const QByteArray figure = svg(words("--paper a4-landscape --per-cm 50"));
    // ISO 80000-3: 1 in = 25.4 mm; SVG's viewBox is in points of 1/72 in.
    EXPECT_NEAR(longestStroke(figure, QStringLiteral("scale-bar")), 10 * 72 / 2.54, 0.01);
    EXPECT_TRUE(figure.contains("1 cm = 50 N")) << figure.right(900).toStdString();
    EXPECT_TRUE(figure.contains("1 division = 50 N"));
}

TEST_F(FigureOutput, AScaleTooLargeForThePaperIsRefusedWithOneThatFits) {
    const Ran ran = draw("out.svg", words("--paper a4 --per-cm 5"));
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(ran.err.contains("1 cm = 5.00 N"));
    const auto fits = QRegularExpression(QStringLiteral("take 1 cm = ([0-9.]+) N"))
                          .match(QString::fromUtf8(ran.err))
                          .captured(1);
    ASSERT_FALSE(fits.isEmpty()) << ran.err.toStdString();
    EXPECT_EQ(draw("out.svg", words("--paper a4 --per-cm") << fits).status, 0);
    EXPECT_EQ(draw("out.svg", words("--per-cm 0")).status, 2);
    EXPECT_EQ(draw("out.svg", words("--per-cm wide")).status, 2);
}

TEST_F(FigureOutput, PagesAreOfTheAskedPaper) {
    struct Row {
        const char *paper, *size;
    };
    // ISO 216 and ANSI/ASME Y14.1, in whole points as Qt writes them.
    for (const Row& row : {Row{"a4", "595 x 842"}, Row{"a4-landscape", "842 x 595"},
                           Row{"letter", "612 x 792"}, Row{"letter-landscape", "792 x 612"}}) {
        EXPECT_EQ(draw("page.pdf", {QStringLiteral("--paper"), QString::fromLatin1(row.paper)}).status, 0);
        EXPECT_TRUE(pdfInfo("page.pdf").contains(row.size)) << pdfInfo("page.pdf").toStdString();
    }
}

TEST_F(FigureOutput, AllStagesAreFilesOrPagesAndNothingComesBeforeItsTurn) {
    EXPECT_EQ(draw("stage.svg", words("--stage all")).status, 0);
    for (int stage = 0; stage < 9; ++stage) {
        const QByteArray bytes = bytesOf(path(QStringLiteral("stage-%1.svg").arg(stage)));
        ASSERT_FALSE(bytes.isEmpty()) << stage;
        EXPECT_EQ(bytes.contains(">520 N<") || bytes.contains("520 N</tspan>"), stage >= 6) << stage;
    }
    EXPECT_FALSE(QFileInfo::exists(path(QStringLiteral("stage-9.svg"))));
    EXPECT_EQ(draw("stages.pdf", words("--stage all")).status, 0);
    EXPECT_TRUE(pdfInfo("stages.pdf").contains("Pages:           9")) << pdfInfo("stages.pdf").toStdString();
}

TEST_F(FigureOutput, SeveralForcesAreAddedTwoAtATimeIfAsked) {
    const QByteArray three =
        sketch(force("P", "30", "0") + "," + force("Q", "40", "90") + "," + force("S", "20", "200"));
    EXPECT_FALSE(svg({}, three).contains("id=\"pair-1\""));
    const QByteArray all = svg(words("--pairs all"), three), second = svg(words("--pairs 2 --marks"), three);
    EXPECT_TRUE(all.contains("id=\"pair-1\"") && all.contains("id=\"pair-2\""));
    EXPECT_TRUE(all.contains("<title>K1, the sum so far, 50.0 N</title>"));
    EXPECT_TRUE(!second.contains("id=\"pair-1\"") && second.contains("id=\"pair-2\""));
    EXPECT_GT(second.size(), all.size() / 2);
    for (const auto& [options, words_] : std::vector<std::pair<const char*, const char*>>{
             {"--pairs 3", "there are 2 parallelograms"},
             {"--pairs 0", "a whole number from 1 to 5"},
             {"--pairs all --marks", "goes with one parallelogram"},
             {"--pairs all --construction polygon", "leave one of them out"}}) {
        const Ran ran = draw("bad.svg", words(options), three);
        EXPECT_EQ(ran.status, 2) << options;
        EXPECT_TRUE(ran.err.contains(words_)) << ran.err.toStdString();
        EXPECT_EQ(ran.err.count('\n'), 1);
        EXPECT_FALSE(QFileInfo::exists(path(QStringLiteral("bad.svg"))));
    }
    EXPECT_EQ(draw("bad.svg", words("--pairs all")).status, 2) << "two forces have one parallelogram";
}

TEST_F(FigureOutput, PixelsAndDotsPerInchAreAsAsked) {
    EXPECT_EQ(draw("wide.png", words("--pixels 1500")).status, 0);
    EXPECT_EQ(wordAt(bytesOf(path(QStringLiteral("wide.png"))), "IHDR", 0), 1500u);
    EXPECT_EQ(draw("dots.png", words("--dpi 144")).status, 0);
    const QByteArray dots = bytesOf(path(QStringLiteral("dots.png")));
    EXPECT_EQ(wordAt(dots, "IHDR", 0), 1440u);
    EXPECT_EQ(wordAt(dots, "pHYs", 0), quint32(qRound(144 / 0.0254)));
    EXPECT_EQ(draw("bad.png", words("--pixels 0")).status, 2);
}

TEST_F(FigureOutput, APngSaysInWordsWhatItShowsAndNothingThatItHides) {
    EXPECT_EQ(draw("said.png", {}).status, 0);
    const QImage said = QImage::fromData(bytesOf(path(QStringLiteral("said.png"))));
    EXPECT_FALSE(said.text(QStringLiteral("Title")).isEmpty());
    EXPECT_TRUE(said.text(QStringLiteral("Description")).contains(QStringLiteral("340 N at 25.0°")));
    EXPECT_EQ(draw("hidden.png", words("--values hidden")).status, 0);
    const QImage hidden = QImage::fromData(bytesOf(path(QStringLiteral("hidden.png"))));
    EXPECT_FALSE(hidden.text(QStringLiteral("Description")).contains(QStringLiteral("340")));
}

TEST_F(FigureOutput, AFigureThatCannotCarryTheSketchIsNotWrittenOverIt) {
    const QByteArray whole = svg({});
    const QString file = put(QStringLiteral("own.svg"), whole);
    expectRefused(run(QStringList{QStringLiteral("figure"), file, QStringLiteral("-o"), file} +
                      words("--values hidden")),
                  {QStringLiteral("is the sketch itself"), QStringLiteral("name another file")});
    EXPECT_EQ(bytesOf(file), whole);
    EXPECT_EQ(
        run(QStringList{QStringLiteral("figure"), file, QStringLiteral("-o"), file} + words("--theme slate"))
            .status,
        0);
    EXPECT_NE(bytesOf(file), whole);
    EXPECT_EQ(run({QStringLiteral("report"), file}).status, 0);
}

TEST_F(FigureOutput, WhatIsHiddenIsNowhereInTheFile) {
    const QByteArray whole = svg({}), values = svg(words("--values hidden"));
    for (const char* hidden : {"340", "275", "520", "25.0", "115.0"}) {
        EXPECT_TRUE(saysNumber(saidIn(whole), hidden)) << hidden;
        EXPECT_FALSE(saysNumber(saidIn(values), hidden)) << hidden;
    }
    EXPECT_FALSE(saysNumber(saidIn(values), "115"));
    EXPECT_TRUE(values.contains("Port"));
    EXPECT_FALSE(values.contains("<metadata"));

    const QByteArray names = svg(words("--names hidden"));
    EXPECT_FALSE(names.contains("Port"));
    EXPECT_FALSE(names.contains("Lee"));
    EXPECT_TRUE(names.contains("340 N"));

    const QByteArray given = svg(words("--given-only"));
    EXPECT_FALSE(saysNumber(saidIn(given), "520"));
    EXPECT_FALSE(saysNumber(saidIn(given), "115.0"));
    EXPECT_TRUE(given.contains("340 N"));
    EXPECT_TRUE(given.contains("25.0"));
}

/// An exercise shows nothing that a person could not know by then; who asks for a later stage wants the
/// answer.
TEST_F(FigureOutput, HiddenValuesDrawNoAnswerUnlessAStageAsksForIt) {
    const auto hidden = [&](const char* more) { return svg(words("--values hidden") + words(more)); };
    const QByteArray exercise = svg(words("--values hidden"));
    EXPECT_TRUE(exercise.contains("id=\"force-Port\""));
    EXPECT_FALSE(exercise.contains("id=\"sum\""));
    EXPECT_FALSE(exercise.contains("id=\"parallelogram\""));
    EXPECT_FALSE(hidden("--stage 3").contains("id=\"sum\""));
    EXPECT_TRUE(hidden("--stage 5").contains("id=\"sum\""));
    EXPECT_TRUE(hidden("--stage 8").contains("id=\"sum\""));
    EXPECT_TRUE(svg({}).contains("id=\"sum\""));
}

TEST_F(FigureOutput, FollowsTheSolutionsMethod) {
    const QByteArray three = sketch(R"({"name": "P", "magnitude": 340, "direction": 25},
                  {"name": "Q", "magnitude": 275, "direction": -40}, {"name": "S", "magnitude": 160, "direction": 118})");
    EXPECT_EQ(svg(words("--method triangle"), three), svg(words("--pairs all"), three));
    EXPECT_EQ(svg(words("--method components"), three), svg({}, three));
    EXPECT_EQ(svg(words("--method triangle")), svg({})) << "two forces have one parallelogram";
    for (const char* other : {"--construction polygon", "--pairs all"}) {
        const Ran ran = draw("bad.svg", words("--method triangle") + words(other), three);
        EXPECT_EQ(ran.status, 2);
        EXPECT_TRUE(ran.err.contains("--method says what is drawn")) << ran.err.toStdString();
    }
}

TEST_F(FigureOutput, TheNoteThatNamesAnAnswerIsHiddenTooAndTheCautionIsNot) {
    const QByteArray two =
        sketch(R"({"name": "P", "magnitude": null, "direction": 40},
                  {"name": "Q", "magnitude": 260, "direction": null})",
               R"(, "sum": {"name": "R", "magnitude": 400, "direction": 10}, "caution": true)");
    EXPECT_TRUE(svg({}, two).contains("Two answers"));
    const QByteArray hidden = svg(words("--values hidden"), two);
    EXPECT_FALSE(hidden.contains("Two answers"));
    EXPECT_TRUE(hidden.contains("competent person decides"));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
