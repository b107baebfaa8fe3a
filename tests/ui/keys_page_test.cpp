// SPDX-License-Identifier: MIT
// resources/keys.md is the program's own list of keys: what its menus, F1 in the window and F1 in the lecture
// say. TAILPOINT_WRITE_GOLDEN=1 writes it anew: read the difference before you keep it.
#include "tests/ui/window_fixture.h"
#include "ui/lecture/key_sheet.h"

#include <QAction>
#include <QDialog>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTextDocument>
#include <cstdlib>
#include <functional>

namespace tailpoint {
namespace TAILPOINT_FILE {

const QString kFile = QStringLiteral(TAILPOINT_SOURCE "/resources/keys.md");

QString plain(QString text) {
    return text.remove(u'&').remove(QChar(0x2026)).simplified();
}

QString head(const QString& title, const char* left, const char* right) {
    return QStringLiteral("\n## %1\n\n| %2 | %3 |\n| --- | --- |\n")
        .arg(title, QLatin1String(left), QLatin1String(right));
}

QString row(QString keys, QString does) {
    return QStringLiteral("| %1 | %2 |\n")
        .arg(keys.replace(u'|', QStringLiteral("\\|")), does.replace(u'|', QStringLiteral("\\|")));
}

QString menuKeys(const MainWindow& window) {
    QString rows;
    const std::function<void(const QMenu*, const QString&)> add = [&](const QMenu* menu,
                                                                      const QString& path) {
        for (const QAction* action : menu->actions()) {
            const QString name = path + plain(action->text());
            if (action->menu())
                add(action->menu(), name + QStringLiteral(" › "));
            QStringList keys;
            for (const QKeySequence& key : action->shortcuts())
                keys << key.toString(QKeySequence::PortableText);
            if (!keys.isEmpty())
                rows += row(keys.join(QStringLiteral(", ")), name);
        }
    };
    for (const QAction* top : window.menuBar()->actions())
        add(top->menu(), plain(top->text()) + QStringLiteral(" › "));
    return rows;
}

/// The page that F1 shows, a table: a cell over both columns is a heading.
QString pageKeys(MainWindow& window) {
    auto* keys = window.findChild<QAction*>(QStringLiteral("helpKeys"));
    if (!keys)
        return {};
    keys->trigger();
    auto* page = window.findChild<QDialog*>(QStringLiteral("keysPage"));
    const auto* label = page ? page->findChild<QLabel*>() : nullptr;
    if (!label)
        return {};
    static const QRegularExpression lines(QStringLiteral(
        "<tr>(?:<td colspan[^>]*><b>(.*?)</b></td>|<td[^>]*>(.*?)</td><td[^>]*>(.*?)</td>)</tr>"));
    const auto text = [](const QString& html) {
        QTextDocument document;
        document.setHtml(html);
        return document.toPlainText();
    };
    QString all;
    for (auto found = lines.globalMatch(label->text()); found.hasNext();) {
        const auto line = found.next();
        all += line.captured(1).isEmpty() ? row(text(line.captured(2)), text(line.captured(3)))
                                          : head(text(line.captured(1)), "key or gesture", "does");
    }
    page->close();
    return all;
}

QString lectureKeys(const KeySheet::Kind& kind) {
    KeySheet sheet(nullptr);
    sheet.setKind(kind);
    QString rows;
    for (const QString& line : sheet.text().split(u'\n'))
        rows += row(line.section(QStringLiteral(": "), 0, 0), line.section(QStringLiteral(": "), 1));
    return rows;
}

using KeysPage = test::OpenWindow;

TEST_F(KeysPage, IsWhatTheProgramItselfSays) {
    QString told = QStringLiteral("# Keys and gestures\n\nAs the program lists them: its menus, F1 in the "
                                  "window and F1 in the lecture.\n");
    told += head(QStringLiteral("Menus"), "key", "command") + menuKeys(*window);
    told += pageKeys(*window);
    told +=
        head(QStringLiteral("Lecture view, and a lesson"), "key", "does") + lectureKeys({false, true, true, true});
    told += head(QStringLiteral("While a vote is on"), "key", "does") + lectureKeys({true, false, false, false});
    ASSERT_GT(told.count(u'\n'), 80);
    QFile file(kFile);
    if (std::getenv("TAILPOINT_WRITE_GOLDEN") != nullptr) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(told.toUtf8());
        return;
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(QString::fromUtf8(file.readAll()).toStdString(), told.toStdString());
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
