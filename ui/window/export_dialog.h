// SPDX-License-Identifier: MIT
// Export figure: form, paper, true scale, what is shown; a live preview; then a file, the clipboard or the
// printer. Choices are remembered; what goes wrong is said in the dialog.
#pragma once

#include "ui/handout/figure_job.h"
#include "ui/window/window_parts.h"

#include <QDialog>
#include <QTimer>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPrinter;
class QPushButton;

namespace tailpoint {

class FigurePreview;

class ExportDialog : public QDialog {
    Q_OBJECT
public:
    explicit ExportDialog(const WindowParts& parts);

    /// Opens on the choices made last. `name`: the proposed file without its ending.
    void ask(const QString& name);
    /// The ending of `path` decides; without one the chosen form's is put on. Replaces what is there unasked:
    /// see askSaveName(). False: the dialog says why.
    bool saveTo(QString path);
    void copy();
    /// Paints the pages as chosen; the printer's paper takes the place of the dialog's. False: refused.
    bool paintOn(QPrinter& printer);

    FigureJob job() const;

signals:
    void said(const QString& hint); ///< what was done

private:
    void build();
    void addRows(QFormLayout* rows);
    void takeChoices();
    void takeScale(const QString& last);
    void tellLeftOut();
    void remember();
    bool drawsAnswerUnnumbered(const FigureJob& job) const;
    void refresh();
    void chooseAndSave();
    QString lostSketch(const QStringList& names, const FigureJob& wanted) const;
    void preview();
    void complain(const QString& line);
    std::optional<double> unitsPerCm(QString& fault) const;
    std::vector<std::string> record() const; ///< of the open sketch, for pages

    WindowParts m_parts;
    QString m_name;
    FigurePreview* m_preview;
    QComboBox *m_form, *m_paper, *m_size, *m_theme, *m_stage;
    QCheckBox *m_trueScale, *m_values, *m_names, *m_given, *m_transparent;
    QLineEdit* m_perCm;
    QLabel *m_fault, *m_leftOut, *m_stillDrawn;
    QPushButton *m_save, *m_copy, *m_print;
    QTimer m_soon; ///< one preview for several choices that change at once
};

} // namespace tailpoint
