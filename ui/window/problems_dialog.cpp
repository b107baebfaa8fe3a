// SPDX-License-Identifier: MIT
#include "ui/window/problems_dialog.h"

#include "core/practice/families.h"
#include "ui/practice/sheet_task.h"
#include "ui/problems/roster.h"
#include "ui/problems/set_text.h"
#include "ui/problems/sheet_from.h"
#include "ui/problems/sheet_pages.h"
#include "ui/problems/write_sheet.h"
#include "ui/window/page_preview.h"
#include "ui/window/settings.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QRegularExpression>
#include <QSpinBox>
#include <QStackedWidget>

namespace tailpoint {

namespace {

void chooseData(QComboBox* box, const QVariant& data) {
    box->setCurrentIndex(std::max(0, box->findData(data)));
}

/// "sheet", or "sheet-2" where that is there.
QString freeName(const QString& wanted) {
    static const QRegularExpression number(QStringLiteral("-\\d+$"));
    const QString base = QString(wanted).remove(number);
    QString name = wanted;
    for (int i = 2; QFileInfo::exists(name); ++i)
        name = QStringLiteral("%1-%2").arg(base).arg(i);
    return name;
}

} // namespace

ProblemsDialog::~ProblemsDialog() {
    if (m_thread.joinable()) {
        m_job->work.isCancelled = true;
        m_thread.join();
    }
}

void ProblemsDialog::ask() {
    restore();
    m_fault->clear();
    showLevel();
    showPreview();
    open();
    m_families->setFocus();
}

void ProblemsDialog::restore() {
    const QVariantMap last = m_parts.settings.problemChoices();
    const QStringList families =
        last.value(QStringLiteral("families"), QStringList{QStringLiteral("two-forces")}).toStringList();
    for (int i = 0; i < m_families->count(); ++i) {
        QListWidgetItem* item = m_families->item(i);
        item->setCheckState(families.contains(item->data(Qt::UserRole).toString()) ? Qt::Checked
                                                                                   : Qt::Unchecked);
    }
    m_families->setCurrentRow(0);
    chooseData(m_source, last.value(QStringLiteral("own"), false).toBool());
    chooseData(m_task, last.value(QStringLiteral("task")).toString());
    chooseData(m_level, last.value(QStringLiteral("level"), 1).toInt());
    m_count->setValue(last.value(QStringLiteral("count"), 10).toInt());
    m_seed->setValue(last.value(QStringLiteral("seed"), 1).toInt());
    chooseData(m_form, last.value(QStringLiteral("form")).toString());
    chooseData(m_figures, last.value(QStringLiteral("toScale"), true).toBool());
    chooseData(m_paper, m_parts.settings.handoutPaper());
    m_solutions->setChecked(last.value(QStringLiteral("solutions"), true).toBool());
    m_grid->setChecked(last.value(QStringLiteral("grid"), false).toBool());
    m_roster->setText(last.value(QStringLiteral("roster")).toString());
    const QString folder = m_folder->text();
    m_folder->setText(freeName(folder.isEmpty() ? QDir::home().filePath(tr("problem-sheet")) : folder));
}

void ProblemsDialog::remember() const {
    QStringList families;
    for (const std::string& id : request().families)
        families << QString::fromStdString(id);
    m_parts.settings.setProblemChoices({{QStringLiteral("families"), families},
                                        {QStringLiteral("own"), m_source->currentData()},
                                        {QStringLiteral("task"), m_task->currentData()},
                                        {QStringLiteral("level"), m_level->currentData()},
                                        {QStringLiteral("count"), m_count->value()},
                                        {QStringLiteral("seed"), m_seed->value()},
                                        {QStringLiteral("form"), m_form->currentData()},
                                        {QStringLiteral("toScale"), m_figures->currentData()},
                                        {QStringLiteral("solutions"), m_solutions->isChecked()},
                                        {QStringLiteral("grid"), m_grid->isChecked()},
                                        {QStringLiteral("roster"), m_roster->text()}});
    m_parts.settings.setHandoutPaper(m_paper->currentData().toString());
}

SheetRequest ProblemsDialog::request() const {
    SheetRequest request;
    for (int i = 0; i < m_families->count(); ++i)
        if (m_families->item(i)->checkState() == Qt::Checked)
            request.families.push_back(m_families->item(i)->data(Qt::UserRole).toString().toStdString());
    for (const SheetTask task : {SheetTask::questions, SheetTask::faded, SheetTask::findSlip})
        if (m_task->currentData().toString() == inText(nameOf(task)))
            request.task = task;
    request.level = m_level->currentData().toInt();
    request.count = static_cast<std::size_t>(m_count->value());
    request.seed = static_cast<std::uint32_t>(m_seed->value());
    return request;
}

bool ProblemsDialog::isOwn() const {
    return m_source->currentData().toBool();
}

QStringList ProblemsDialog::ownFiles() const {
    QStringList files;
    for (int i = 0; i < m_own->count(); ++i)
        files << m_own->item(i)->data(Qt::UserRole).toString();
    return files;
}

void ProblemsDialog::chooseOwn() {
    const QStringList files = QFileDialog::getOpenFileNames(this, tr("Sketches for the sheet"), {},
                                                            tr("Sketches (*.json *.svg);;All files (*)"));
    addOwn(files);
}

void ProblemsDialog::addOwn(const QStringList& files) {
    for (const QString& file : files) {
        auto* item = new QListWidgetItem(QFileInfo(file).fileName());
        item->setData(Qt::UserRole, file);
        item->setToolTip(file);
        m_own->addItem(item);
        m_own->setCurrentItem(item);
    }
}

void ProblemsDialog::removeOwn() {
    delete m_own->takeItem(m_own->currentRow());
}

void ProblemsDialog::moveOwn(int by) {
    const int row = m_own->currentRow(), other = row + by;
    if (row < 0 || other < 0 || other >= m_own->count())
        return;
    m_own->insertItem(other, m_own->takeItem(row));
    m_own->setCurrentRow(other);
}

SheetLook ProblemsDialog::look() const {
    SheetLook look;
    look.form = sheetFormFrom(m_form->currentData().toString()).value_or(SheetForm::pdf);
    look.paper =
        m_paper->currentData().toString() == QLatin1String("Letter") ? QPageSize::Letter : QPageSize::A4;
    look.solutions = m_solutions->isChecked();
    look.grid = m_grid->isChecked();
    look.toScale = m_figures->currentData().toBool();
    return look;
}

/// The level in words, as the first kind that is chosen has it; what has no say for the form is off.
void ProblemsDialog::showLevel() {
    const SheetRequest wanted = request();
    const FamilyEntry* family = wanted.families.empty() ? nullptr : familyNamed(wanted.families.front());
    QString words;
    if (family) {
        const LevelEntry& level = family->levels[static_cast<std::size_t>(wanted.level - 1)];
        words = inText(level.numbers) + QStringLiteral("; ") + inText(level.reference) +
                QStringLiteral("; ") + inText(level.traps);
    }
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    const bool own = isOwn();
    m_levelWords->setText(own ? QString() : words);
    m_sources->setCurrentIndex(own ? 1 : 0);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_level, m_count, m_seed, m_roster, m_chooseRoster})
        widget->setEnabled(!own);
    const int row = m_own->currentRow();
    m_removeOwn->setEnabled(row >= 0);
    m_upOwn->setEnabled(row > 0);
    m_downOwn->setEnabled(row >= 0 && row + 1 < m_own->count());
    const SheetForm form = look().form;
    m_paper->setEnabled(form == SheetForm::pdf);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_figures, m_solutions, m_grid})
        widget->setEnabled(form != SheetForm::json);
    m_make->setEnabled(own ? m_own->count() > 0 : !wanted.families.empty());
}

void ProblemsDialog::showPreview() {
    SheetRequest wanted = request();
    const SheetLook how = look();
    const QSizeF paper = QPageSize(how.paper).size(QPageSize::Point);
    std::optional<ProblemSheet> sheet;
    if (isOwn()) {
        const QStringList files = ownFiles();
        auto read = files.isEmpty() ? std::variant<ProblemSheet, QString>(QString())
                                    : sheetFrom(files.first(1), wanted);
        if (const auto* fault = std::get_if<QString>(&read))
            complain(*fault);
        else
            sheet = std::get<ProblemSheet>(std::move(read));
        wanted.count = static_cast<std::size_t>(files.size());
    } else if (!wanted.families.empty()) {
        SheetRequest first = wanted;
        first.count = 1;
        sheet = sheetToDraw(first);
        if (!completed(*sheet))
            sheet.reset();
    }
    if (!sheet)
        return m_preview->show(nullptr, paper);
    sheet->request.count = wanted.count;
    m_preview->show(SheetPdf(*sheet, how).part(0, taskOf(*sheet, 0)).sheet, paper);
}

void ProblemsDialog::chooseRoster() {
    const QString file = QFileDialog::getOpenFileName(this, tr("Names of a class"), m_roster->text(),
                                                      tr("Text (*.txt);;All files (*)"));
    if (!file.isEmpty())
        m_roster->setText(file);
}

void ProblemsDialog::chooseFolder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Where the new folder is made"),
                                                             QFileInfo(m_folder->text()).path());
    if (!folder.isEmpty())
        m_folder->setText(QDir(folder).filePath(QFileInfo(m_folder->text()).fileName()));
}

void ProblemsDialog::make() {
    if (isAtWork())
        return;
    auto job = std::make_unique<SheetJob>();
    job->request = request();
    job->look = look();
    job->folder = m_folder->text().trimmed();
    if (isOwn())
        job->own = ownFiles();
    if (isOwn() ? job->own.isEmpty() : job->request.families.empty())
        return complain(isOwn() ? tr("Add a sketch.") : tr("Choose a kind of problem."));
    if (job->folder.isEmpty())
        return complain(tr("Name a new folder."));
    if (!isOwn() && !m_roster->text().trimmed().isEmpty()) {
        auto roster = readRoster(m_roster->text().trimmed());
        if (const auto* fault = std::get_if<QString>(&roster))
            return complain(*fault);
        job->request.roster = std::get<std::vector<std::string>>(std::move(roster));
    }
    if (job->wanted() > kMostVariants)
        return complain(
            tr("%1 problems are more than %2; ask for fewer.").arg(job->wanted()).arg(kMostVariants));
    remember();
    m_fault->clear();
    m_job = std::move(job);
    m_progress->setRange(0, static_cast<int>(m_job->wanted()));
    m_thread = std::thread([job = m_job.get()] { job->run(); });
    showAtWork(true);
    m_timer.start();
}

void ProblemsDialog::watch() {
    m_progress->setValue(m_job->work.done);
    if (m_job->isOver)
        finish();
}

void ProblemsDialog::finish() {
    m_timer.stop();
    m_thread.join();
    const bool wasCancelled = m_job->work.isCancelled;
    const QString fault = m_job->fault, folder = m_job->folder;
    m_job.reset();
    showAtWork(false);
    if (!fault.isEmpty())
        return complain(fault);
    if (wasCancelled)
        return complain(tr("Cancelled; nothing was written."));
    emit said(tr("The problem sheet is in %1").arg(folder));
    accept();
}

void ProblemsDialog::showAtWork(bool on) {
    m_progress->setValue(0);
    m_progress->setVisible(on);
    m_make->setEnabled(!on);
    for (QWidget* widget : std::initializer_list<QWidget*>{
             m_source, m_sources, m_task, m_level, m_form, m_paper, m_figures, m_count, m_seed, m_roster,
             m_folder, m_solutions, m_grid, m_chooseRoster, m_chooseFolder})
        widget->setEnabled(!on);
    if (on)
        m_cancel->setFocus();
    else
        showLevel();
}

void ProblemsDialog::reject() {
    if (isAtWork())
        m_job->work.isCancelled = true;
    else
        QDialog::reject();
}

void ProblemsDialog::complain(const QString& line) {
    m_fault->setText(line);
}

} // namespace tailpoint
