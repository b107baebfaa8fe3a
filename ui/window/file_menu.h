// SPDX-License-Identifier: MIT
// File: new, open, save, recent files, export, and the question before unsaved changes are lost.
#pragma once

#include "ui/files/sketch_json.h"
#include "ui/window/window_parts.h"

#include <QObject>

class QAction;
class QMenu;

namespace tailpoint {

class ChangedFile;

class FileMenu : public QObject {
    Q_OBJECT
public:
    FileMenu(const WindowParts& parts, QMenu* menu);

    /// Opens without asking. False: the open sketch stays, and the notice says why.
    bool open(const QString& path);
    bool saveTo(const QString& path); ///< without asking
    /// The window's first sketch: the file, or what a window shows that was given none or one that can't be
    /// read. A name under which nothing is yet is offered to be begun.
    void start(const QString& path);
    void startEmpty();

    QAction* handOut; ///< Make handout…
    QAction* recover; ///< Recover…; who has the copies answers it

    /// Saved, given up, or nothing to lose: true. False: stay.
    bool mayLoseChanges();
    /// Asks where that is needed, then opens.
    void openAsked(const QString& path);

private:
    void openOrBegin(const QString& path);
    /// The welcome sketch of the resources, without a path of its own.
    void welcome();
    void showOwnAnswer();
    void finishEdits();
    void sayHeld(const QString& before);
    void bringBackPrevious();
    void sayNotOpened(const QString& path, const FileError& error);
    void chooseAndOpen();
    bool save();
    bool chooseAndSave();
    bool chooseAndSave(const QString& proposed);
    bool saveBeside();
    void chooseAndExport();
    void makeHandout();
    void print();
    void fillRecent(QMenu* menu);
    void hintAtDragging();
    void hintAtDrawing();
    QString suggestedName(const QString& ending) const;

    WindowParts m_parts;
    ChangedFile* m_changed; ///< belongs to the window
};

} // namespace tailpoint
