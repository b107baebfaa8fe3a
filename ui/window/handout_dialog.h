// SPDX-License-Identifier: MIT
// Make handout: form, with or without the solution, rounding, paper; then a file, the clipboard or the
// printer's tray. Choices are remembered; what goes wrong is said in the dialog.
#pragma once

#include "ui/handout/handout_pages.h"
#include "ui/window/window_parts.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QLabel;
class QMimeData;

namespace tailpoint {

/// The question as the window shows it: construction and order of the canvas.
HandoutChoice handoutChoiceOf(const WindowParts& parts);

class HandoutDialog : public QDialog {
    Q_OBJECT
public:
    explicit HandoutDialog(const WindowParts& parts);

    /// Opens on the choices made last. `name`: the proposed file without its ending.
    void ask(const QString& name);
    /// The ending of `path` decides (html, htm, pdf, tex); without one the chosen form's is put on.
    /// Replaces what is there unasked: see askSaveName(). False: the dialog says why.
    bool saveTo(QString path);
    void copy();

signals:
    void said(const QString& hint); ///< what was done

private:
    void build();
    void remember();
    void chooseAndSave();
    QString form() const;
    HandoutChoice choice() const;
    QByteArray bytesFor(const QString& form) const;
    QMimeData* forClipboard() const;
    void complain(const QString& line);

    WindowParts m_parts;
    QString m_name;
    QComboBox *m_form, *m_paper;
    QCheckBox *m_solution, *m_handRounding;
    QLabel *m_paperLabel, *m_fault;
};

} // namespace tailpoint
