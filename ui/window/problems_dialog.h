// SPDX-License-Identifier: MIT
// Teach › Problem sheet: which problems, for whom, on which paper; the first page as it will be; made beside
// the window's work, and cancelled without a trace. Choices are remembered.
#pragma once

#include "ui/problems/sheet_job.h"
#include "ui/window/window_parts.h"

#include <QDialog>
#include <QTimer>
#include <memory>
#include <thread>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QListWidget;
class QHBoxLayout;
class QProgressBar;
class QPushButton;
class QScrollArea;
class QSpinBox;
class QStackedWidget;

namespace tailpoint {

class PagePreview;

class ProblemsDialog : public QDialog {
    Q_OBJECT
public:
    explicit ProblemsDialog(const WindowParts& parts);
    ~ProblemsDialog() override;

    /// Opens on the choices made last.
    void ask();
    /// Makes the sheet in the folder that is typed; done() or a fault in the dialog tells how it went.
    void make();
    /// Behind the last in the list of one's own sketches.
    void addOwn(const QStringList& files);
    bool isAtWork() const { return m_thread.joinable(); }

signals:
    void said(const QString& hint); ///< what was done

protected:
    void reject() override; ///< while a sheet is made: stops that, and stays

private:
    void build();
    QScrollArea* scrolled(QWidget* choices);
    void buildSource(QFormLayout* rows);
    void buildChoices(QFormLayout* rows);
    void connectAll();
    void remember() const;
    void restore();
    SheetRequest request() const; ///< without the roster
    SheetLook look() const;
    bool isOwn() const; ///< the sheet is of sketches of the user's
    QStringList ownFiles() const;
    void chooseOwn();
    void removeOwn();
    void moveOwn(int by); ///< the current one, in the list's order
    void showLevel();
    void showPreview();
    void chooseFolder();
    void chooseRoster();
    void complain(const QString& line);
    void showAtWork(bool on);
    void watch(); ///< the progress, and the end
    void finish();

    WindowParts m_parts;
    QComboBox *m_source, *m_task;
    QStackedWidget* m_sources;
    QListWidget *m_families, *m_own;
    QPushButton *m_addOwn, *m_removeOwn, *m_upOwn, *m_downOwn;
    QComboBox *m_level, *m_form, *m_paper, *m_figures;
    QSpinBox *m_count, *m_seed;
    QLineEdit *m_roster, *m_folder;
    QCheckBox *m_solutions, *m_grid;
    QLabel *m_levelWords, *m_fault;
    QProgressBar* m_progress;
    QHBoxLayout* m_where = nullptr; ///< the new folder's row
    QPushButton *m_make, *m_cancel, *m_chooseRoster, *m_chooseFolder;
    PagePreview* m_preview;
    QTimer m_timer, m_soon;
    std::unique_ptr<SheetJob> m_job;
    std::thread m_thread;
};

} // namespace tailpoint
