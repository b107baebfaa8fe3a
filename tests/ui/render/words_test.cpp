// SPDX-License-Identifier: MIT
// Words in a PDF, as its own bytes have them.
#include "ui/render/fonts.h"
#include "ui/style/theme.h"

#include <QBuffer>
#include <QPdfWriter>
#include <QRegularExpression>
#include <gtest/gtest.h>

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

} // namespace TAILPOINT_FILE
