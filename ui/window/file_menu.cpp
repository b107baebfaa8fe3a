// SPDX-License-Identifier: MIT
#include "ui/window/file_menu.h"

#include "ui/canvas/canvas.h"
#include "ui/document/previous.h"
#include "ui/document/sketch_document.h"
#include "ui/marking/own_answer.h"
#include "ui/panel/panel.h"
#include "ui/style/symbols.h"
#include "ui/window/changed_file.h"
#include "ui/window/export_dialog.h"
#include "ui/window/handout_dialog.h"
#include "ui/window/lines.h"
#include "ui/window/menu_tools.h"
#include "ui/window/save_name.h"
#include "ui/window/settings.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QMainWindow>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QRegularExpression>

namespace tailpoint {

namespace {

const QStringList kSketchEndings{QStringLiteral("json"), QStringLiteral("tailpoint")};
constexpr int kTitleInQuestion = 420; // pixels: a long title is no reason for a wide question

QString folderOf(const QString& path) {
    return path.isEmpty() ? QString() : QFileInfo(path).absolutePath() + u'/';
}

/// Why `path` can't be opened, found out without touching the open sketch.
std::optional<FileError> unreadable(const QString& path) {
    const auto bytes = readBytes(path);
    if (const auto* error = std::get_if<FileError>(&bytes)) {
        return *error;
    }
    const auto sketch = readSketch(std::get<QByteArray>(bytes));
    const auto* error = std::get_if<FileError>(&sketch);
    return error ? std::optional(*error) : std::nullopt;
}

} // namespace

FileMenu::FileMenu(const WindowParts& parts, QMenu* menu)
    : QObject(menu), m_parts(parts), m_changed(new ChangedFile(parts, [this] { return saveBeside(); })) {
    addCommand(menu, {"fileNew", tr("&New"), QKeySequence::New}, [this] {
        if (mayLoseChanges()) {
            startEmpty();
        }
    });
    addCommand(menu, {"fileOpen", tr("&Open…"), QKeySequence::Open}, [this] { chooseAndOpen(); });
    QMenu* recent = menu->addMenu(tr("Open &recent"));
    recent->setObjectName(QStringLiteral("recentMenu"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(recent); });
    connect(menu, &QMenu::aboutToShow, recent,
            [this, recent] { recent->setEnabled(!m_parts.settings.recentFiles().isEmpty()); });
    menu->addSeparator();
    addCommand(menu, {"fileSave", tr("&Save"), QKeySequence::Save}, [this] { save(); });
    addCommand(menu, {"fileSaveAs", tr("Save &as…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S)},
               [this] { chooseAndSave(); });
    QAction* previous = addCommand(menu, {"filePrevious", tr("Back to the pre&vious version")},
                                   [this] { bringBackPrevious(); });
    previous->setToolTip(tr("The file as it was before it was first saved here"));
    connect(menu, &QMenu::aboutToShow, previous,
            [this, previous] { previous->setEnabled(hasPrevious(m_parts.document.path())); });
    recover = menu->addAction(tr("Re&cover\u2026"));
    recover->setObjectName(QStringLiteral("fileRecover"));
    recover->setToolTip(tr("Work that was not saved before a crash"));
    menu->addSeparator();
    addCommand(menu, {"fileExport", tr("&Export figure…"), QKeySequence(Qt::CTRL | Qt::Key_E)},
               [this] { chooseAndExport(); });
    handOut = addCommand(menu, {"fileHandout", tr("Make &handout…"), QKeySequence(Qt::CTRL | Qt::Key_H)},
                         [this] { makeHandout(); });
    handOut->setIconText(tr("Hand out"));
    handOut->setToolTip(tr("Make a handout: question, figure and worked solution"));
    addCommand(menu, {"filePrint", tr("&Print…"), QKeySequence::Print}, [this] { print(); });
    connect(&m_parts.ownAnswer, &OwnAnswer::modeChanged, this, &FileMenu::showOwnAnswer);
    addCommand(menu, {"fileWelcome", tr("Open the &welcome sketch")}, [this] {
        if (mayLoseChanges()) {
            welcome();
        }
    });
    menu->addSeparator();
    addCommand(menu, {"fileQuit", tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q)},
               [this] { m_parts.window.close(); });
}

/// While it is hidden the question alone is handed out and printed.
void FileMenu::showOwnAnswer() {
    handOut->setToolTip(m_parts.ownAnswer.isOn()
                            ? tr("Make a handout of the question, without its answer")
                            : tr("Make a handout: question, figure and worked solution"));
}

/// What is being typed and what a hand still holds belong to the sketch before anything is done with it.
void FileMenu::finishEdits() {
    m_parts.panel.finishTyping();
    m_parts.document.commit();
}

/// What is opened is laid out once: the sheet that a window would show without it is not made first.
void FileMenu::start(const QString& path) {
    if (QFileInfo::exists(path) && open(path))
        return;
    m_parts.settings.hasBegun() ? startEmpty() : welcome();
    if (!path.isEmpty())
        openOrBegin(path);
}

void FileMenu::startEmpty() {
    m_parts.document.replace(m_parts.settings.newSketch(), {});
    m_parts.canvas.fit();
    hintAtDrawing();
}

void FileMenu::hintAtDrawing() {
    m_parts.hints.setHint(
        tr("Drag from the common point to draw a force, or press Insert, or paste lines of name, "
           "magnitude and direction."));
}

void FileMenu::welcome() {
    QFile file(QStringLiteral(":/samples/survey-raft.json"));
    const auto read = file.open(QIODevice::ReadOnly) ? readSketch(file.readAll()) : FileError{};
    const auto* sketch = std::get_if<Sketch>(&read);
    if (!sketch) {
        startEmpty();
        return;
    }
    m_parts.document.replace(*sketch, {});
    m_parts.canvas.fit();
    hintAtDragging();
}

void FileMenu::hintAtDragging() {
    m_parts.hints.setHint(
        tr("Drag a tip to change a force: Shift holds its direction, Ctrl its magnitude. Or type into "
           "the table."));
}

void FileMenu::sayNotOpened(const QString& path, const FileError& error) {
    m_parts.notice.say(tr("Not opened \u2013 %1: %2").arg(QFileInfo(path).fileName(), error.line()));
}

bool FileMenu::open(const QString& path) {
    if (const auto error = m_parts.document.open(path)) {
        sayNotOpened(path, *error);
        return false;
    }
    m_parts.notice.say({});
    m_parts.canvas.fit();
    if (!m_parts.ownAnswer.isOn()) // a question says how it is answered
        hintAtDragging();
    if (!m_parts.document.readOnlyReason().isEmpty())
        sayHeld({});
    m_parts.settings.setBegun();
    m_parts.settings.addRecent(path);
    return true;
}

/// Another window has the file: what can be done about it.
void FileMenu::sayHeld(const QString& before) {
    const auto takeOver = [this] {
        if (m_parts.document.file().takeOver())
            m_parts.hints.setHint(tr("The file is this window's now; the other one can't save it any more."));
        else
            sayHeld({});
    };
    const auto openCopy = [this] {
        m_parts.document.leaveFile();
        m_parts.hints.setHint(tr("This is a copy without a name until it is saved."));
    };
    m_parts.notice.ask(before + tr("%1 %2").arg(QFileInfo(m_parts.document.path()).fileName(),
                                                m_parts.document.readOnlyReason()),
                       {{tr("Take it &over"), takeOver}, {tr("Make it a &copy"), openCopy}});
}

void FileMenu::openOrBegin(const QString& path) {
    const QFileInfo file(path);
    const bool canBegin = !file.exists() && !file.isSymLink() && file.absoluteDir().exists() &&
                          kSketchEndings.contains(endingMeantBy(path));
    if (!canBegin) {
        open(path);
        return;
    }
    m_parts.notice.ask(tr("%1 is not there yet. Begin it?").arg(file.fileName()),
                       {{tr("&Begin it"),
                         [this, path] {
                             if (!mayLoseChanges())
                                 return;
                             m_parts.document.begin(m_parts.settings.newSketch(), path);
                             m_parts.canvas.fit();
                             hintAtDrawing();
                         }},
                        {tr("&Open another\u2026"), [this] { chooseAndOpen(); }}});
}

void FileMenu::bringBackPrevious() {
    const QString path = m_parts.document.path();
    const auto previous = previousOf(path);
    if (!previous) {
        m_parts.notice.say(
            tr("No earlier version of this sketch is kept: the first save of a sitting keeps one."));
        return;
    }
    finishEdits();
    m_parts.document.edit(previous->sketch, tr("Previous version"));
    m_parts.canvas.fit();
    m_parts.hints.setHint(tr("The version of %1 is here. Undo brings back what was; save to keep it.")
                              .arg(QLocale().toString(previous->written, QLocale::ShortFormat)));
}

/// Nobody is asked to give up changes for a file that can't be opened.
void FileMenu::openAsked(const QString& path) {
    if (const auto error = unreadable(path)) {
        sayNotOpened(path, *error);
    } else if (mayLoseChanges()) {
        open(path);
    }
}

void FileMenu::chooseAndOpen() {
    const QString path =
        QFileDialog::getOpenFileName(&m_parts.window, tr("Open a sketch"), folderOf(m_parts.document.path()),
                                     tr("Sketches (*.json *.tailpoint *.svg);;All files (*)"));
    if (!path.isEmpty()) {
        openAsked(path);
    }
}

bool FileMenu::saveTo(const QString& path) {
    finishEdits();
    if (const auto error = m_parts.document.save(path)) {
        if (path == m_parts.document.path() && !m_parts.document.readOnlyReason().isEmpty()) {
            sayHeld(tr("Not saved \u2013 "));
            return false;
        }
        m_parts.notice.say(tr("Not saved \u2013 %1: %2").arg(QFileInfo(path).fileName(), error->line()));
        return false;
    }
    m_parts.notice.say({});
    m_parts.hints.setHint(tr("Saved in %1.").arg(QFileInfo(path).fileName()));
    m_parts.settings.setBegun();
    m_parts.settings.addRecent(path);
    return true;
}

bool FileMenu::save() {
    if (m_parts.document.path().isEmpty())
        return chooseAndSave();
    const ChangedFile::Answer answer = m_changed->mayBeSaved();
    if (answer != ChangedFile::Answer::save)
        return answer == ChangedFile::Answer::settled;
    return saveTo(m_parts.document.path());
}

/// Under the first free name beside the file.
bool FileMenu::saveBeside() {
    const QString name = suggestedName({});
    int number = 2;
    const auto numbered = [&] { return QStringLiteral("%1-%2.json").arg(name).arg(number); };
    while (QFileInfo::exists(numbered()))
        ++number;
    return chooseAndSave(numbered());
}

QString FileMenu::suggestedName(const QString& ending) const {
    const QString path = m_parts.document.path();
    if (!path.isEmpty()) {
        return folderOf(path) + QFileInfo(path).completeBaseName() + ending;
    }
    QString title = QString::fromStdString(m_parts.document.sketch().title).simplified();
    title.remove(
        QRegularExpression(QStringLiteral("[^\\w .-]"), QRegularExpression::UseUnicodePropertiesOption));
    constexpr qsizetype longest = 60; // letters; a file system has room for 255 bytes
    title = title.left(longest).trimmed();
    return (title.isEmpty() ? tr("sketch") : title) + ending;
}

bool FileMenu::chooseAndSave() {
    return chooseAndSave(suggestedName(QStringLiteral(".json")));
}

bool FileMenu::chooseAndSave(const QString& proposed) {
    const QStringList others =
        QStringLiteral("svg pdf png tex html htm").split(QLatin1Char(' ')); // of figures and handouts
    SaveName save{tr("Save the sketch"), proposed, tr("Sketches (*.json *.tailpoint)"),
                  QStringLiteral("json")};
    save.endings = others + kSketchEndings;
    save.files = [&](const QString& name) {
        return others.contains(endingMeantBy(name)) ? QStringList() : QStringList{name};
    };
    const auto name = askSaveName(&m_parts.window, save);
    if (!name)
        return false;
    if (const QString ending = endingMeantBy(*name); others.contains(ending)) {
        m_parts.notice.say(tr("Not saved \u2013 a sketch ends in .json; for .%1 use %2")
                               .arg(ending, ending.startsWith(QLatin1String("htm")) ? tr("Make handout")
                                                                                    : tr("Export figure")));
        return false;
    }
    return saveTo(*name);
}

/// Built on first use: a start does not pay for it.
void FileMenu::chooseAndExport() {
    finishEdits();
    auto* dialog = m_parts.window.findChild<ExportDialog*>();
    if (!dialog) {
        dialog = new ExportDialog(m_parts);
        connect(dialog, &ExportDialog::said, &m_parts.hints, &HintLine::setHint);
    }
    dialog->ask(suggestedName({}));
}

/// Built on first use: a start does not pay for it.
void FileMenu::makeHandout() {
    finishEdits();
    auto* dialog = m_parts.window.findChild<HandoutDialog*>();
    if (!dialog) {
        dialog = new HandoutDialog(m_parts);
        connect(dialog, &HandoutDialog::said, &m_parts.hints, &HintLine::setHint);
    }
    dialog->ask(suggestedName({}));
}

/// Whole, as the panel rounds, or the question alone while its answer is hidden; the printer's own dialog has
/// the paper.
void FileMenu::print() {
    finishEdits();
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, &m_parts.window);
    dialog.setObjectName(QStringLiteral("printDialog"));
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    if (const QString file = printer.outputFileName(); isSameFile(file, m_parts.document.path())) {
        m_parts.notice.say(tr("Not printed \u2013 %1 is the sketch itself").arg(QFileInfo(file).fileName()));
        return;
    }
    HandoutChoice choice = handoutChoiceOf(m_parts);
    choice.solution = !m_parts.document.withholdsAnswer();
    choice.handRounding = m_parts.panel.handRounding();
    choice.method = m_parts.panel.method();
    choice.uncertainty = m_parts.panel.explainOptions().uncertainty;
    choice.parallelograms = m_parts.panel.byParallelograms();
    printer.setFullPage(true);
    printer.setResolution(HandoutPages::resolution());
    printer.setDocName(text(m_parts.document.sketch().title));
    if (!paintHandout(printer, m_parts.document.result(), choice)) {
        m_parts.notice.say(tr("Not printed \u2013 the printer did not take the pages"));
        return;
    }
    m_parts.hints.setHint(printer.outputFileName().isEmpty()
                              ? tr("Sent to %1").arg(printer.printerName())
                              : tr("Printed to %1").arg(printer.outputFileName()));
}

void FileMenu::fillRecent(QMenu* menu) {
    menu->clear();
    for (const QString& path : m_parts.settings.recentFiles()) {
        QAction* action =
            menu->addAction(QFileInfo(path).fileName(), this, [this, path] { openAsked(path); });
        action->setToolTip(path);
    }
    menu->setToolTipsVisible(true);
    menu->addSeparator();
    menu->addAction(tr("Clear the list"), this, [this] { m_parts.settings.clearRecent(); });
}

bool FileMenu::mayLoseChanges() {
    finishEdits();
    if (!m_parts.document.isModified()) {
        return true;
    }
    const QString title = m_parts.window.fontMetrics().elidedText(text(m_parts.document.sketch().title),
                                                                  Qt::ElideRight, kTitleInQuestion);
    QMessageBox box(QMessageBox::NoIcon, tr("Unsaved changes"),
                    title.isEmpty() ? tr("The sketch has changes that are not saved.")
                                    : tr("\u201c%1\u201d has changes that are not saved.").arg(title),
                    QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, &m_parts.window);
    box.setObjectName(QStringLiteral("unsavedQuestion"));
    box.setDefaultButton(QMessageBox::Save);
    box.button(QMessageBox::Discard)->setText(tr("&Don't save"));
    for (QAbstractButton* button : box.buttons()) {
        button->setIcon({});
    }
    switch (box.exec()) {
    case QMessageBox::Save:
        return save();
    case QMessageBox::Discard:
        return true;
    default:
        return false;
    }
}

} // namespace tailpoint
