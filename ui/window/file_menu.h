// File: new, open, save, recent files, export, and the question before unsaved changes are lost.
#pragma once

#include "ui/document/sketch_json.h"
#include "ui/window/parts.h"

#include <QObject>

class QAction;
class QMenu;

namespace tailpoint {

class FileMenu : public QObject {
    Q_OBJECT
public:
    FileMenu(const Parts& parts, QMenu* menu);

    /// Opens without asking. False: the open sketch stays, and the notice says why.
    bool open(const QString& path);
    bool saveTo(const QString& path);
    /// The welcome sketch of the resources, without a path of its own.
    void welcome();
    void startEmpty();

    QAction* handOut; ///< Make handout…

    /// Saved, given up, or nothing to lose: true. False: stay.
    bool mayLoseChanges();
    /// Asks where that is needed, then opens.
    void openAsked(const QString& path);

private:
    void finishEdits();
    void sayNotOpened(const QString& path, const FileError& error);
    void chooseAndOpen();
    bool save();
    bool chooseAndSave();
    void chooseAndExport();
    void makeHandout();
    void print();
    void fillRecent(QMenu* menu);
    void hintAtDragging();
    QString suggestedName(const QString& ending) const;

    Parts m_parts;
};

} // namespace tailpoint
