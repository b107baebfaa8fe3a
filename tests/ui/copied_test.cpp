// What the clipboard gets: numbers for a spreadsheet, a table and a note for a text, and whence it comes.
#include "tests/ui/window_fixture.h"
#include "ui/panel/copied_values.h"
#include "ui/window/title_block_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QMimeData>
#include <QRegularExpression>

namespace tailpoint::test {
namespace {

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

} // namespace
} // namespace tailpoint::test
