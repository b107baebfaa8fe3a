// SPDX-License-Identifier: MIT
// Words in a PDF, as its own bytes have them.
#include "ui/render/fonts.h"
#include "ui/render/shaped_words.h"
#include "ui/style/theme.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QGlyphRun>
#include <QMap>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QTextLayout>
#include <gtest/gtest.h>
#include <random>

using namespace tailpoint;

namespace TAILPOINT_FILE {

QByteArray pdfOf(const QString& text, const QFont& font) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    QPainter painter(&writer);
    WordPainter(painter, WordPainter::Places::whole).add({500, 500}, text, font);
    painter.end();
    return bytes;
}

/// The content of its streams. qUncompress() asks for the length before what zlib wrote, and grows it.
QByteArray streamsOf(const QByteArray& pdf) {
    QByteArray all;
    const QByteArray begins("stream\n"), length("\0\0\x10\0", 4);
    for (qsizetype at = pdf.indexOf(begins); at >= 0; at = pdf.indexOf(begins, at + 1)) {
        const qsizetype from = at + begins.size();
        const QByteArray packed = pdf.mid(from, pdf.indexOf("endstream", from) - from);
        if (packed.startsWith('\x78')) // zlib's mark
            all += qUncompress(length + packed);
    }
    return all;
}

TEST(WordsInAPdf, BlanksAreGapsAndAskForNoOtherFont) {
    // STIX has no thin space (U+2009): drawn, it would come alone from another font.
    const QString text = QStringLiteral("P = 340\u2009N to 2.5\u202FkN,\u00A0up");
    for (const QFont& face : {serifFont(), sansFont()}) {
        QFont font = face;
        font.setPixelSize(120);
        const QByteArray pdf = pdfOf(text, font);
        EXPECT_EQ(pdf.count("/BaseFont") / 2, 1) << "a font and its descendant, of one face";
        EXPECT_EQ(streamsOf(pdf).count(" Tj\n"), QStringLiteral("P=340Nto2.5kN,up").size());
    }
}

TEST(WordsInAPdf, AWordBehindABlankStandsWhereTheBlankEnds) {
    QFont font = sansFont();
    font.setPixelSize(120);
    const auto lastPlace = [&](const QString& text) {
        const QString content = QString::fromLatin1(streamsOf(pdfOf(text, font)));
        static const QRegularExpression move(QStringLiteral("(-?\\d+) -?\\d+ Td"));
        int x = 0;
        for (auto found = move.globalMatch(content); found.hasNext();)
            x += found.next().captured(1).toInt(); // each from the one before
        return x;
    };
    EXPECT_EQ(lastPlace(QStringLiteral("N")), 500);
    EXPECT_NEAR(lastPlace(QStringLiteral("aa N")) - 500,
                QFontMetricsF(font).horizontalAdvance(QStringLiteral("aa ")), 1);
}

/// What Qt makes of a text when it sets it as one.
struct SetWhole {
    QList<quint32> indexes;
    QList<QPointF> positions;
};

SetWhole setWhole(const QString& text, const QFont& font) {
    QTextLayout layout(text, font);
    layout.beginLayout();
    QTextLine line = layout.createLine();
    line.setLineWidth(1e6);
    line.setPosition({0, -line.ascent()});
    layout.endLayout();
    QMap<double, quint32> ink; // by place
    const QList<QGlyphRun> runs = layout.glyphRuns();
    for (const QGlyphRun& run : runs)
        for (qsizetype i = 0; i < run.glyphIndexes().size(); ++i)
            if (!run.rawFont().boundingRect(run.glyphIndexes()[i]).isEmpty())
                ink[run.positions()[i].x()] = run.glyphIndexes()[i];
    SetWhole out;
    for (auto at = ink.cbegin(); at != ink.cend(); ++at) {
        out.indexes << at.value();
        out.positions << QPointF(at.key(), 0);
    }
    return out;
}

SetWhole setInParts(const QString& text, const QFont& font) {
    SetWhole out;
    double x = 0;
    for (const ShapedWord* word : shapedWords(font, text)) {
        for (const ShapedGlyphs& glyphs : word->glyphs) {
            out.indexes += glyphs.indexes;
            for (const QPointF& position : glyphs.positions)
                out.positions << position + QPointF(x, 0);
        }
        x += word->advance;
    }
    return out;
}

/// Faces and sizes of pages and figures, and one that sets letters apart.
std::vector<QFont> facesOfPages() {
    std::vector<QFont> fonts;
    for (const QFont& face : {serifFont(), sansFont()})
        for (const auto weight : {QFont::Normal, QFont::DemiBold})
            for (const bool italic : {false, true})
                for (const int pixels : {11, 64, 132}) {
                    QFont font = face;
                    font.setWeight(weight);
                    font.setItalic(italic);
                    font.setPixelSize(pixels);
                    fonts.push_back(font);
                }
    fonts.push_back(sansFont());
    fonts.back().setLetterSpacing(QFont::AbsoluteSpacing, 3);
    return fonts;
}

TEST(NumbersOfParts, StandAsQtSetsThemWhole) { // 25 fonts, 14 words round 30 numbers each
    std::mt19937 lots(11);
    const QStringList beside{"%1",
                             "%1 ",
                             "\u2212%1",
                             "\u00B1%1 ",
                             "%1\u00B0",
                             "%1\u00B0,",
                             "%1\u2009kN",
                             "\u2212%1\u2009N",
                             "(%1\u2009lbf)",
                             "N%1\u00B0E",
                             "R\u00A0=\u00A0%1\u00A0N. ",
                             "%1.",
                             "T%1",
                             "%1TM4"};
    for (const QFont& font : facesOfPages())
        for (int i = 0; i < 30; ++i) {
            const QString number = QString::number(0.001 * static_cast<double>(lots() % 9'999'999), 'f',
                                                   static_cast<int>(lots() % 4));
            for (const QString& around : beside) {
                const QString word = around.arg(number);
                SCOPED_TRACE((font.toString() + ' ' + word).toStdString());
                ASSERT_EQ(advanceOf(font, word), QFontMetricsF(font).horizontalAdvance(word));
                const SetWhole parts = setInParts(word, font), whole = setWhole(word, font);
                ASSERT_EQ(parts.indexes, whole.indexes);
                ASSERT_EQ(parts.positions.size(), whole.positions.size());
                for (qsizetype at = 0; at < whole.positions.size(); ++at)
                    ASSERT_NEAR(parts.positions[at].x(), whole.positions[at].x(), 1e-9);
            }
        }
}

TEST(NumbersOfParts, AreOfTheirFigures) {
    QFont font = serifFont();
    font.setPixelSize(64);
    EXPECT_EQ(shapedWords(font, u"270.5\u2009N").size(), 6U); // five figures and the unit with its blank
    EXPECT_EQ(shapedWords(font, u"raft ").size(), 1U);
    EXPECT_EQ(shapedWords(font, u"2T7").size(), 1U) << "no number";
}

} // namespace TAILPOINT_FILE
