// SPDX-License-Identifier: MIT
// What the dialog of problem sheets is made of.
#include "core/practice/families.h"
#include "ui/problems/set_text.h"
#include "ui/window/dialog_size.h"
#include "ui/window/page_preview.h"
#include "ui/window/problems_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMainWindow>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace tailpoint {

namespace {

template <class Widget>
Widget* named(Widget* widget, const char* name) {
    widget->setObjectName(QLatin1String(name));
    return widget;
}

constexpr int kMostSeed = 999'999; // as the verb takes it

} // namespace

ProblemsDialog::ProblemsDialog(const WindowParts& parts)
    : QDialog(&parts.window), m_parts(parts), m_source(named(new QComboBox, "problemsSource")),
      m_task(named(new QComboBox, "problemsTask")), m_sources(new QStackedWidget),
      m_families(named(new QListWidget, "problemsFamilies")), m_own(named(new QListWidget, "problemsOwn")),
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

/// What the problems come from: kinds with their levels, or a list of files with an order.
void ProblemsDialog::buildSource(QFormLayout* rows) {
    m_source->addItem(tr("Kinds of problems, with other numbers each"), false);
    m_source->addItem(tr("Sketches of my own"), true);
    for (const FamilyEntry& family : problemFamilies()) {
        auto* item = new QListWidgetItem(inText(family.title), m_families);
        item->setData(Qt::UserRole, inText(family.id));
        item->setToolTip(inText(family.asks));
        item->setCheckState(Qt::Unchecked);
    }
    constexpr int leastWidth = 300, seen = 8;
    m_families->setMinimumWidth(leastWidth);
    m_families->setAccessibleName(tr("Kinds of problems"));
    m_own->setAccessibleName(tr("Sketches of the sheet, in its order"));
    m_addOwn = named(new QPushButton(tr("&Add\u2026")), "problemsAddOwn");
    m_removeOwn = named(new QPushButton(tr("&Remove")), "problemsRemoveOwn");
    m_upOwn = named(new QPushButton(tr("&Up")), "problemsUpOwn");
    m_downOwn = named(new QPushButton(tr("Do&wn")), "problemsDownOwn");
    auto* order = new QVBoxLayout;
    order->setSpacing(6);
    for (QPushButton* button : {m_addOwn, m_removeOwn, m_upOwn, m_downOwn}) {
        button->setAutoDefault(false);
        order->addWidget(button);
    }
    order->addStretch(1);
    auto* own = new QWidget;
    auto* side = new QHBoxLayout(own);
    side->setContentsMargins(0, 0, 0, 0);
    side->setSpacing(8);
    side->addWidget(m_own, 1);
    side->addLayout(order);
    m_sources->addWidget(m_families);
    m_sources->addWidget(own);
    m_sources->setFixedHeight(seen * m_families->sizeHintForRow(0) + 2 * m_families->frameWidth() + 2);
    auto* from = new QLabel(tr("Pro&blems of"));
    from->setBuddy(m_source);
    rows->addRow(from, m_source);
    rows->addRow(QString(), m_sources);
}

namespace {

int widestLabel(const QFormLayout& rows) {
    int widest = 0;
    for (int row = 0; row < rows.rowCount(); ++row)
        if (const QLayoutItem* label = rows.itemAt(row, QFormLayout::LabelRole))
            widest = std::max(widest, label->sizeHint().width());
    return widest;
}

} // namespace

void ProblemsDialog::buildChoices(QFormLayout* rows) {
    m_task->addItem(tr("Questions"), QStringLiteral("questions"));
    m_task->addItem(tr("Solutions to fill in, line by line more"), QStringLiteral("faded"));
    m_task->addItem(tr("Solutions with a slip to be found"), QStringLiteral("find-slip"));
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
    add(tr("On the shee&t"), m_task);
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
    auto* label = new QLabel(tr("New f&older")); // in sight, however far the rest is scrolled
    label->setBuddy(m_folder);
    label->setMinimumWidth(widestLabel(*rows));
    m_where = new QHBoxLayout;
    m_where->setSpacing(rows->horizontalSpacing());
    m_where->addWidget(label);
    m_where->addLayout(withButton(m_folder, m_chooseFolder), 1);
}

/// What is chosen, which scrolls on a screen that is too low for it.
QScrollArea* ProblemsDialog::scrolled(QWidget* choices) {
    auto* area = named(new QScrollArea, "problemsChoices");
    area->setWidget(choices);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->viewport()->setAutoFillBackground(false);
    choices->setAutoFillBackground(false);
    area->setMinimumWidth(choices->minimumSizeHint().width() +
                          style()->pixelMetric(QStyle::PM_ScrollBarExtent));
    return area;
}

void ProblemsDialog::build() {
    auto* choices = new QWidget;
    auto* rows = new QFormLayout(choices);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setHorizontalSpacing(14);
    rows->setVerticalSpacing(8);
    buildSource(rows);
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
    QScrollArea* area = scrolled(choices);
    left->addWidget(area, 1);
    left->addLayout(m_where);
    left->addWidget(m_fault);
    left->addWidget(m_progress);
    left->addWidget(buttons);
    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(20, 18, 20, 16);
    all->setSpacing(20);
    all->addLayout(left, 3);
    all->addWidget(m_preview, 4);
    connectAll();
    showAtWork(false);
    const QSize hint = sizeHint();
    const int more = choices->sizeHint().height() - area->sizeHint().height();
    resize(withinScreen(*this, {hint.width(), hint.height() + std::max(0, more)}));
}

void ProblemsDialog::connectAll() {
    const auto changed = [this] {
        m_fault->clear();
        showLevel();
        m_soon.start();
    };
    connect(m_families, &QListWidget::itemChanged, this, changed);
    for (QComboBox* box : {m_source, m_task, m_level, m_form, m_paper, m_figures})
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
    connect(m_addOwn, &QPushButton::clicked, this, &ProblemsDialog::chooseOwn);
    connect(m_removeOwn, &QPushButton::clicked, this, &ProblemsDialog::removeOwn);
    connect(m_upOwn, &QPushButton::clicked, this, [this] { moveOwn(-1); });
    connect(m_downOwn, &QPushButton::clicked, this, [this] { moveOwn(1); });
    connect(m_own, &QListWidget::currentRowChanged, this, &ProblemsDialog::showLevel);
    connect(m_own->model(), &QAbstractItemModel::rowsInserted, this, changed);
    connect(m_own->model(), &QAbstractItemModel::rowsRemoved, this, changed);
}

} // namespace tailpoint
