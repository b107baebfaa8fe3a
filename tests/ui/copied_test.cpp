// SPDX-License-Identifier: MIT
// What the clipboard gets: numbers for a spreadsheet, a table and a note for a text, and whence it comes.
#include "tests/support/sketches.h"
#include "tests/ui/window_fixture.h"
#include "ui/panel/copied_values.h"
#include "ui/window/title_block_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QMimeData>
#include <QRegularExpression>

namespace tailpoint::test {
namespace TAILPOINT_FILE {

class Copied : public OpenWindow {
protected:
    const QMimeData& copied(const char* command) {
        trigger(command);
        return *QApplication::clipboard()->mimeData();
    }
};

/// The raft: R = 519.86 N at -3.648 degrees, Q = 275 N at -40: x = 210.66, y = -176.77 (mpmath).
TEST_F(Copied, ASpreadsheetGetsNumbersWithUnitsInTheHeads) {
    const QMimeData& data = copied("copyValues");
    const QString table = QString::fromUtf8(data.data(QStringLiteral("text/tab-separated-values")));
    const QStringList lines = table.split(u'\n');
    EXPECT_EQ(lines.value(0).toStdString(), "vector\tmagnitude (N)\tdirection (deg)\tx (N)\ty (N)");
    EXPECT_TRUE(lines.contains(QStringLiteral("Q\t275\t-40.0\t211\t-177"))) << table.toStdString();
    EXPECT_TRUE(lines.contains(QStringLiteral("R\t520\t-3.6\t519\t-33.1"))) << table.toStdString();
    static const QRegularExpression number(QStringLiteral("^-?[0-9.]+$"));
    for (const QString& line : lines.mid(1, 3))
        for (const QString& cell : line.split(u'\t').mid(1))
            EXPECT_TRUE(number.match(cell).hasMatch()) << cell.toStdString();
}

TEST_F(Copied, ATextGetsATable) {
    const QMimeData& data = copied("copyValues");
    EXPECT_TRUE(data.html().contains(QStringLiteral("<td>-177</td>")));
    EXPECT_TRUE(data.html().contains(QStringLiteral("<th>magnitude (N)</th>")));
    EXPECT_TRUE(data.text().contains(QStringLiteral("R = 520 N")));
}

TEST_F(Copied, EveryCopySaysWhenceItComes) {
    Sketch sketch = window->document().sketch();
    sketch.titleBlock = {"A. Moss", "B. Rell", "C"};
    ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("sign")));
    ASSERT_TRUE(window->saveTo(file("raft.json")));
    qputenv("SOURCE_DATE_EPOCH", "1764374400"); // 2025-11-29 UTC
    for (const char* command : {"copyValues", "copyNote", "copyFigure"}) {
        SCOPED_TRACE(command);
        const QMimeData& data = copied(command);
        for (const char* part : {"Survey raft on two lines", "raft.json; 2025-11-29; Tailpoint",
                                 "drawn by A. Moss; checked by B. Rell; revision C", "Assumed: all forces"}) {
            EXPECT_TRUE(data.text().contains(QLatin1String(part))) << part << data.text().toStdString();
            if (data.hasHtml()) {
                EXPECT_TRUE(data.html().contains(QLatin1String(part))) << part;
            }
        }
    }
    qunsetenv("SOURCE_DATE_EPOCH");
}

TEST_F(Copied, ANoteIsAParagraphATableAndTheFigure) {
    const QMimeData& data = copied("copyNote");
    const QString html = data.html();
    EXPECT_TRUE(html.contains(QStringLiteral("R = 520 N")));
    EXPECT_EQ(html.count(QStringLiteral("<table")), 1);
    static const QRegularExpression figure(QStringLiteral("data:image/png;base64,([A-Za-z0-9+/=]+)"));
    const auto found = figure.match(html);
    ASSERT_TRUE(found.hasMatch());
    const QImage image = QImage::fromData(QByteArray::fromBase64(found.captured(1).toLatin1()));
    EXPECT_GT(image.width(), 300);
    EXPECT_TRUE(data.text().contains(QStringLiteral("Q\t275\t-40.0\t211\t-177")));
}

TEST_F(Copied, WithoutAnAnswerThereIsNoTable) {
    Sketch sketch = window->document().sketch();
    sketch.forces[0].magnitude.value.reset();
    ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("too few")));
    const QMimeData& data = copied("copyValues");
    EXPECT_FALSE(data.hasFormat(QStringLiteral("text/tab-separated-values")));
    EXPECT_FALSE(data.html().contains(QStringLiteral("<table")));
    EXPECT_FALSE(data.text().isEmpty());
}

TEST_F(Copied, TheTitleBlockIsOneUndoStep) {
    auto& dialog = ask<TitleBlockDialog>("titleBlock");
    child<QLineEdit>(dialog, "blockDrawn")->setText(QStringLiteral(" A. Moss "));
    child<QLineEdit>(dialog, "blockRevision")->setText(QStringLiteral("2"));
    dialog.accept();
    EXPECT_EQ(window->document().sketch().titleBlock, (TitleBlock{"A. Moss", "", "2"}));
    window->document().undo();
    EXPECT_EQ(window->document().sketch().titleBlock, TitleBlock{});
}

TEST_F(Copied, ATitleBlockThatIsTooLongIsSaidAndTheDialogStays) {
    auto& dialog = ask<TitleBlockDialog>("titleBlock");
    child<QLineEdit>(dialog, "blockDrawn")->setText(QString(81, u'x'));
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(child<QLabel>(dialog, "blockFault")->text().contains(QStringLiteral("81")));
    EXPECT_EQ(window->document().sketch().titleBlock, TitleBlock{});
}

/// P = 340 +- 5 N at 25 +- 2 degrees, Q = 275 N at -40: R from 509.747 to 529.901 N, its direction from
/// -5.0506 to -2.2263, x from 335 cos 27 + 210.662 = 509.149 to 345 cos 23 + 210.662 = 528.236, y from 335
/// sin 23 - 176.767 = -45.872 to 345 sin 27 - 176.767 = -20.140 (Python); each end goes outward.
TEST_F(Copied, NoValueGoesWithoutItsRange) {
    Sketch sketch = window->document().sketch();
    sketch.forces[0].magnitude.tolerance = plusMinus(5);
    sketch.forces[0].direction.tolerance = plusMinus(2);
    sketch.sum.limit = TypedForce{530, ForceUnit::N, {}};
    ASSERT_FALSE(window->document().edit(sketch, QStringLiteral("tolerances")));
    const QMimeData& data = copied("copyValues");
    const QStringList lines =
        QString::fromUtf8(data.data(QStringLiteral("text/tab-separated-values"))).split(u'\n');
    EXPECT_EQ(lines.value(0).toStdString(),
              "vector\tmagnitude (N)\tmagnitude low (N)\tmagnitude high (N)\tdirection (deg)\tdirection low "
              "(deg)\tdirection high (deg)\tx (N)\tx low (N)\tx high (N)\ty (N)\ty low (N)\ty high "
              "(N)\tremark");
    const QString sum =
        QStringLiteral("R\t520\t509\t530\t-3.6\t-5.1\t-2.2\t519\t509\t529\t-33.1\t-45.9\t-20.1\t");
    EXPECT_TRUE(lines.contains(sum)) << lines.join(u'\n').toStdString();
    const QString exact =
        QStringLiteral("Q\t275\t275\t275\t-40.0\t-40.0\t-40.0\t211\t211\t211\t-177\t-177\t-177\t");
    EXPECT_TRUE(lines.contains(exact)) << lines.join(u'\n').toStdString();
    EXPECT_TRUE(data.html().contains(QStringLiteral("<th>x high (N)</th>")));
    EXPECT_TRUE(data.html().contains(QStringLiteral("<td>-45.9</td>")));
    for (const char* command : {"copyValues", "copyNote", "copyFigure"}) {
        SCOPED_TRACE(command);
        const QString told = copied(command).text();
        EXPECT_TRUE(told.contains(QStringLiteral("509 to 530 N"))) << told.toStdString();
        EXPECT_TRUE(told.contains(QStringLiteral("R is within its limit: 100.0 % of 530 N")));
        EXPECT_TRUE(told.contains(QStringLiteral("not rated data")));
    }
    EXPECT_TRUE(copied("copyNote").html().contains(QStringLiteral("509 to 530 N")));
}

/// 12 kN down on two lines that rise by 1.5 +- 2 degrees: no upper bound, which no number says.
TEST_F(Copied, WhatNoNumberSaysIsARemark) {
    Sketch sketch =
        testing::balanced({testing::force("W", 12, -90), testing::force("A", testing::kToFind, 1.5),
                           testing::force("B", testing::kToFind, 178.5)});
    for (int leg : {1, 2})
        sketch.forces[static_cast<std::size_t>(leg)].direction.tolerance = plusMinus(2);
    window->document().replace(sketch, {});
    const QMimeData& data = copied("copyValues");
    const QString table = QString::fromUtf8(data.data(QStringLiteral("text/tab-separated-values")));
    EXPECT_TRUE(table.contains(QStringLiteral("A\t229\t98.2\t\t"))) << table.toStdString();
    EXPECT_TRUE(table.contains(QStringLiteral("\tmagnitude unbounded"))) << table.toStdString();
    EXPECT_TRUE(data.text().contains(QStringLiteral("A part of the tolerances has no such answer")));
}
} // namespace TAILPOINT_FILE
} // namespace tailpoint::test
