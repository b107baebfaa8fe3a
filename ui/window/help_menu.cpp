// SPDX-License-Identifier: MIT
#include "ui/window/help_menu.h"

#include "core/explain/caution.h"
#include "ui/style/symbols.h"
#include "ui/window/menu_tools.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace tailpoint {

namespace {

struct Help {
    Q_DECLARE_TR_FUNCTIONS(Help)
};

using Line = std::pair<QString, QString>; ///< key or gesture, what it does

/// All rows of one table, so that the columns stand under one another.
QString section(const QString& title, const QList<Line>& lines) {
    QString rows =
        QStringLiteral("<tr><td colspan=\"2\" style=\"padding:12px 0 4px 0\"><b>%1</b></td></tr>").arg(title);
    for (const auto& [keys, does] : lines) {
        rows += QStringLiteral("<tr><td width=\"215\" style=\"padding:3px 16px 3px 0\">%1</td>"
                               "<td style=\"padding:3px 0\">%2</td></tr>")
                    .arg(keys.toHtmlEscaped(), does.toHtmlEscaped());
    }
    return rows;
}

QString keysPage() {
    return QStringLiteral("<table>") +
           section(
               Help::tr("On the sheet"),
               {{Help::tr("drag from the common point"), Help::tr("draws a new force")},
                {Help::tr("drag a tip"),
                 Help::tr("changes a force; Shift holds its direction, Ctrl its magnitude")},
                {Help::tr("drag a shaft"), Help::tr("turns a force")},
                {Help::tr("S, also while dragging"),
                 Help::tr(
                     "turns snapping on and off, as the switch at the window's foot does; Alt: not now")},
                {Help::tr("Escape while dragging"), Help::tr("takes the drag back")},
                {Help::tr("drag to the sheet's edge"),
                 Help::tr("scrolls; held there the scale steps out, so that a force can be drawn longer")},
                {Help::tr("0, Home"),
                 Help::tr("fits the figure; drawing by hand leaves the common point where it is")},
                {Help::tr("double-click a label"), Help::tr("opens it for an exact value")},
                {Help::tr("wheel, Ctrl and + or −"),
                 Help::tr("zooms; middle drag or Space drag moves the sheet")},
                {Help::tr("Tab"), Help::tr("takes the next force")},
                {Help::tr("arrows"),
                 Help::tr("turn and stretch the selected force; with Shift by the last digit")},
                {Help::tr("Ctrl+arrows, Alt+arrows"),
                 Help::tr("put its label, or that of its direction, elsewhere; with Shift by half a point. "
                          "Ctrl+Backspace lets them find their own places")},
                {Help::tr("Enter, Shift+Enter, F2"), Help::tr("type magnitude, direction, name")},
                {Help::tr("1 to 9"), Help::tr("begins a new magnitude of what is selected")},
                {Help::tr("Insert, Delete"), Help::tr("adds and deletes a force")},
                {Help::tr("N"), Help::tr("takes the other answer")}}) +
           section(
               Help::tr("In the table of given values"),
               {{Help::tr("type"),
                 Help::tr("340, 1.2 kN, 75 lbf; 25, 0.4 rad, 3:4 (run to rise), N30E; ± for a tolerance")},
                {Help::tr("? or Space"), Help::tr("makes a value one to find, or given again")},
                {Help::tr("Ctrl+V"), Help::tr("adds forces from lines of name, magnitude and direction")},
                {Help::tr("Ctrl+C"), Help::tr("copies the selected rows")},
                {Help::tr("Delete"), Help::tr("deletes the selected forces")}}) +
           section(
               Help::tr("Practice"),
               {{Help::tr("F8"), Help::tr("the list of problems: type to search, arrows, Return")},
                {Help::tr("F9"), Help::tr("one more hint; between two of them something is to be entered")},
                {Help::tr("Ctrl+F8, Shift+F8"),
                 Help::tr("the same kind once more with other numbers; a harder one")},
                {Help::tr("Shift+F9"),
                 Help::tr("fill in the last lines of the solution: what each rests on, and its number")},
                {Help::tr("Ctrl+F9"),
                 Help::tr("find the slip in a solution: arrows and Return, or a click; then mend the line")},
                {Help::tr("Ctrl+Page Down"), Help::tr("the next, as the answers before suggest")},
                {Help::tr("Ctrl+Shift+N"), Help::tr("other numbers for the open question")}}) +
           section(Help::tr("While you check an answer of your own"),
                   {{Help::tr("F7"), Help::tr("hides the answer, and shows it again")},
                    {Help::tr("Tab"), Help::tr("goes from the sheet through the fields to Mark it")},
                    {Help::tr("Enter in a field, Ctrl+M"), Help::tr("marks what is typed and drawn")},
                    {Help::tr("drag the open tip"), Help::tr("draws what is sought")},
                    {Help::tr("Escape"), Help::tr("leaves; what is typed is kept")}}) +
           section(
               Help::tr("Anywhere"),
               {{Help::tr("Ctrl+Z, Ctrl+Shift+Z"), Help::tr("undo, redo")},
                {Help::tr("F6"), Help::tr("goes from the sheet to the table and back")},
                {Help::tr("Alt+Page Down, Alt+Page Up"),
                 Help::tr("the next case of the sketch, the one before")},
                {Help::tr("Ctrl+Shift+E"), Help::tr("what differs between the cases, and their envelope")},
                {Help::tr("Ctrl+0"), Help::tr("fits the figure to the sheet")},
                {Help::tr("Ctrl+Shift+C, Ctrl+Shift+V"), Help::tr("copy the figure, copy the values")}}) +
           QStringLiteral("</table>");
}

QString aboutPage() {
    return QStringLiteral("<h2>Tailpoint</h2><p>%1</p><p>%2</p><p>%3</p>")
        .arg(Help::tr("Version %1").arg(QCoreApplication::applicationVersion()).toHtmlEscaped(),
             Help::tr("Sketch forces that meet at one point, ask for any two of their magnitudes and "
                      "directions, and "
                      "see how the answer comes about.")
                 .toHtmlEscaped(),
             text(cautionLine()).toHtmlEscaped());
}

/// Made when it is asked for, gone when it is closed; the window stays usable beside it.
void showPage(QWidget* window, const QString& title, const QString& html, const QString& name) {
    auto* dialog = new QDialog(window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setObjectName(name);
    dialog->setWindowTitle(title);
    auto* page = new QLabel(html);
    page->setTextFormat(Qt::RichText);
    page->setWordWrap(true);
    page->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    page->setMargin(16);
    page->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* area = new QScrollArea;
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setWidget(page);
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(Help::tr("Close"), QDialogButtonBox::RejectRole);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
    auto* column = new QVBoxLayout(dialog);
    column->addWidget(area);
    column->addWidget(buttons);
    const int width = qMin(620, window->width() - 40);
    dialog->resize(width, qMin(page->heightForWidth(width - 40) + 90, window->height() - 40));
    dialog->show();
}

} // namespace

void addHelp(QMenu* menu, QWidget* window) {
    addCommand(menu, {"helpKeys", Help::tr("&Keys and gestures"), QKeySequence(Qt::Key_F1)}, [window] {
        showPage(window, Help::tr("Keys and gestures"), keysPage(), QStringLiteral("keysPage"));
    });
    addCommand(menu, {"helpAbout", Help::tr("&About Tailpoint")}, [window] {
        showPage(window, Help::tr("About Tailpoint"), aboutPage(), QStringLiteral("aboutPage"));
    });
}

} // namespace tailpoint
