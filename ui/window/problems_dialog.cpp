#include "ui/window/problems_dialog.h"

#include "core/practice/families.h"
#include "ui/problems/roster.h"
#include "ui/problems/sheet_pages.h"
#include "ui/problems/write_sheet.h"
#include "ui/window/page_preview.h"
#include "ui/window/settings.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMainWindow>
#include <QProgressBar>
#include <QPushButton>
#include <QRegularExpression>
#include <QSpinBox>
#include <QVBoxLayout>

namespace tailpoint {

namespace {

QString inText(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

template <class Widget>
Widget* named(Widget* widget, const char* name) {
    widget->setObjectName(QLatin1String(name));
    return widget;
}

void choose(QComboBox* box, const QVariant& data) {
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

constexpr int kMostSeed = 999'999; // as the verb takes it

} // namespace

/// What the other thread works on and leaves behind.
struct ProblemsDialog::Job {
    SheetRequest request;
    SheetLook look;
    QString folder;
    SheetWork work;
    std::atomic<bool> isOver = false;
    QString fault; ///< to be read when it is over

    void run() {
        NewFolder made(folder);
        if (made.fault())
            fault = folder + QStringLiteral(": ") + made.fault()->message;
        else if (const auto sheet = makeSheet(request, [this] { return work.isCancelled.load(); }))
            fault = write(*sheet, made);
        isOver = true;
    }
    std::size_t wanted() const { return request.count * std::max<std::size_t>(1, request.roster.size()); }
    QString write(const ProblemSheet& sheet, NewFolder& made) {
        if (sheet.variants.size() < wanted())
            return ProblemsDialog::tr("There are no %1 different problems of this kind, but %2.")
                .arg(wanted())
                .arg(sheet.variants.size());
        auto error = writeSheet(sheet, look, made, work);
        if (!error && !work.isCancelled)
            error = made.finish();
        return error ? folder + QStringLiteral(": ") + error->message : QString();
    }
};

ProblemsDialog::ProblemsDialog(const WindowParts& parts)
    : QDialog(&parts.window), m_parts(parts), m_families(named(new QListWidget, "problemsFamilies")),
      m_level(named(new QComboBox, "problemsLevel")), m_form(named(new QComboBox, "problemsForm")),
      m_paper(named(new QComboBox, "problemsPaper")), m_figures(named(new QComboBox, "problemsFigures")),
      m_count(named(new QSpinBox, "problemsCount")), m_seed(named(new QSpinBox, "problemsSeed")),
      m_roster(named(new QLineEdit, "problemsRoster")), m_folder(named(new QLineEdit, "problemsFolder")),
      m_solutions(named(new QCheckBox(tr("Worked &solutions in the key")), "problemsSolutions")),
      m_grid(named(new QCheckBox(tr("S&quares in the room to draw")), "problemsGrid")),
      m_levelWords(named(new QLabel, "problemsLevelWords")), m_fault(named(new QLabel, "problemsFault")),
      m_progress(named(new QProgressBar, "problemsProgress")), m_preview(new PagePreview) {
    setObjectName(QStringLiteral("problemsDialog"));
    setWindowTitle(tr("Problem sheet"));
    build();
    m_timer.setInterval(60);
    m_soon.setSingleShot(true);
    m_soon.setInterval(150); // a key held down asks for no page each time
    connect(&m_timer, &QTimer::timeout, this, &ProblemsDialog::watch);
    connect(&m_soon, &QTimer::timeout, this, &ProblemsDialog::showPreview);
}

ProblemsDialog::~ProblemsDialog() {
    if (m_thread.joinable()) {
        m_job->work.isCancelled = true;
        m_thread.join();
    }
}

void ProblemsDialog::buildChoices(QFormLayout* rows) {
    for (const FamilyEntry& family : problemFamilies()) {
        auto* item = new QListWidgetItem(inText(family.title), m_families);
        item->setData(Qt::UserRole, inText(family.id));
        item->setToolTip(inText(family.asks));
        item->setCheckState(Qt::Unchecked);
    }
    constexpr int leastWidth = 300;
    m_families->setMinimumWidth(leastWidth);
    m_families->setFixedHeight(m_families->count() * m_families->sizeHintForRow(0) +
                               2 * m_families->frameWidth() + 2);
    m_families->setAccessibleName(tr("Kinds of problems"));
    for (int level = 1; level <= kLevels; ++level)
        m_level->addItem(tr("Level %1").arg(level), level);
    m_levelWords->setWordWrap(true);
    constexpr int lines = 7; // nothing moves where a level says more
    m_levelWords->setFixedHeight(lines * m_levelWords->fontMetrics().lineSpacing());
    m_levelWords->setAlignment(Qt::AlignTop);
    m_count->setRange(1, static_cast<int>(kMostVariants));
    m_seed->setRange(0, kMostSeed);
    m_form->addItem(tr("Pages to print (PDF)"), QStringLiteral("pdf"));
    m_form->addItem(tr("Pages for a browser (HTML)"), QStringLiteral("html"));
    m_form->addItem(tr("Data for scripts (JSON)"), QStringLiteral("json"));
    m_figures->addItem(tr("To scale"), true);
    m_figures->addItem(tr("Not to scale, and saying so"), false);
    for (const char* name : {"A4", "Letter"})
        m_paper->addItem(QLatin1String(name), QLatin1String(name));
    m_roster->setPlaceholderText(tr("One sheet for all"));
    m_chooseRoster = named(new QPushButton(tr("Choo&se\u2026")), "problemsChooseRoster");
    m_chooseFolder = named(new QPushButton(tr("C&hoose\u2026")), "problemsChooseFolder");
    const auto withButton = [](QLineEdit* edit, QPushButton* button) {
        button->setAutoDefault(false); // Enter makes the sheet
        auto* row = new QHBoxLayout;
        row->setSpacing(8);
        row->addWidget(edit, 1);
        row->addWidget(button);
        return row;
    };
    const auto add = [rows](const QString& words, QWidget* widget, QLayout* row = nullptr) {
        auto* label = new QLabel(words);
        label->setBuddy(widget);
        if (row)
            rows->addRow(label, row);
        else
            rows->addRow(label, widget);
    };
    add(tr("&Kinds"), m_families);
    add(tr("&Level"), m_level);
    rows->addRow(QString(), m_levelWords);
    add(tr("Problems for &each"), m_count);
    add(tr("See&d"), m_seed);
    add(tr("&Names, one a line"), m_roster, withButton(m_roster, m_chooseRoster));
    add(tr("&Form"), m_form);
    add(tr("&Paper"), m_paper);
    add(tr("F&igures"), m_figures);
    rows->addRow(QString(), m_solutions);
    rows->addRow(QString(), m_grid);
    add(tr("New f&older"), m_folder, withButton(m_folder, m_chooseFolder));
}

void ProblemsDialog::build() {
    auto* rows = new QFormLayout;
    rows->setHorizontalSpacing(14);
    rows->setVerticalSpacing(8);
    buildChoices(rows);
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->setWordWrap(true);
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(tr("Problems made"));
    auto* buttons = new QDialogButtonBox;
    m_make = buttons->addButton(tr("&Make sheet"), QDialogButtonBox::AcceptRole);
    m_cancel = buttons->addButton(QDialogButtonBox::Cancel);
    for (QAbstractButton* button : buttons->buttons())
        button->setIcon({});
    named(m_make, "problemsMake")->setDefault(true);
    named(m_cancel, "problemsCancel");
    auto* left = new QVBoxLayout;
    left->addLayout(rows);
    left->addWidget(m_fault);
    left->addStretch(1);
    left->addWidget(m_progress);
    left->addWidget(buttons);
    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(20, 18, 20, 16);
    all->setSpacing(20);
    all->addLayout(left, 3);
    all->addWidget(m_preview, 4);
    const auto changed = [this] {
        m_fault->clear();
        showLevel();
        m_soon.start();
    };
    connect(m_families, &QListWidget::itemChanged, this, changed);
    for (QComboBox* box : {m_level, m_form, m_paper, m_figures})
        connect(box, &QComboBox::currentIndexChanged, this, changed);
    for (QSpinBox* box : {m_count, m_seed})
        connect(box, &QSpinBox::valueChanged, this, changed);
    for (QCheckBox* box : {m_solutions, m_grid})
        connect(box, &QCheckBox::toggled, this, changed);
    for (QLineEdit* edit : {m_roster, m_folder})
        connect(edit, &QLineEdit::textChanged, this, [this] { m_fault->clear(); });
    connect(m_chooseRoster, &QPushButton::clicked, this, &ProblemsDialog::chooseRoster);
    connect(m_chooseFolder, &QPushButton::clicked, this, &ProblemsDialog::chooseFolder);
    connect(m_make, &QPushButton::clicked, this, &ProblemsDialog::make);
    connect(m_cancel, &QPushButton::clicked, this, &ProblemsDialog::reject);
    showAtWork(false);
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
    choose(m_level, last.value(QStringLiteral("level"), 1).toInt());
    m_count->setValue(last.value(QStringLiteral("count"), 10).toInt());
    m_seed->setValue(last.value(QStringLiteral("seed"), 1).toInt());
    choose(m_form, last.value(QStringLiteral("form")).toString());
    choose(m_figures, last.value(QStringLiteral("toScale"), true).toBool());
    choose(m_paper, m_parts.settings.handoutPaper());
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
    request.level = m_level->currentData().toInt();
    request.count = static_cast<std::size_t>(m_count->value());
    request.seed = static_cast<std::uint32_t>(m_seed->value());
    return request;
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
    m_levelWords->setText(words);
    const SheetForm form = look().form;
    m_paper->setEnabled(form == SheetForm::pdf);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_figures, m_solutions, m_grid})
        widget->setEnabled(form != SheetForm::json);
    m_make->setEnabled(!wanted.families.empty());
}

void ProblemsDialog::showPreview() {
    SheetRequest wanted = request();
    const SheetLook how = look();
    const QSizeF paper = QPageSize(how.paper).size(QPageSize::Point);
    if (wanted.families.empty()) {
        m_preview->show(nullptr, paper);
        return;
    }
    const std::size_t count = std::exchange(wanted.count, 1);
    if (auto sheet = makeSheet(wanted)) {
        sheet->request.count = count;
        m_preview->show(SheetPdf(*sheet, how).part(0).sheet, paper);
    }
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
    auto job = std::make_unique<Job>();
    job->request = request();
    job->look = look();
    job->folder = m_folder->text().trimmed();
    if (job->request.families.empty())
        return complain(tr("Choose a kind of problem."));
    if (job->folder.isEmpty())
        return complain(tr("Name a new folder."));
    if (!m_roster->text().trimmed().isEmpty()) {
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
    m_progress->setEnabled(on);
    m_make->setEnabled(!on);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_families, m_level, m_form, m_paper, m_figures,
                                                           m_count, m_seed, m_roster, m_folder, m_solutions,
                                                           m_grid, m_chooseRoster, m_chooseFolder})
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
