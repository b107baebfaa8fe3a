// SPDX-License-Identifier: MIT
#include "ui/window/practice_dialog.h"
#include "ui/window/dialog_size.h"

#include <QDialogButtonBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace tailpoint {

namespace {

constexpr int kPlace = Qt::UserRole; ///< which choice; headings have none
constexpr QSize kChoiceSize(620, 560);
constexpr int kDetailLines = 5;

} // namespace

PracticeDialog::PracticeDialog(QWidget* parent)
    : QDialog(parent), m_choices(practiceChoices()), m_listed(m_choices.size()), m_search(new QLineEdit),
      m_list(new QListWidget), m_details(new QLabel), m_begin(nullptr), m_fill(nullptr), m_find(nullptr) {
    setObjectName(QStringLiteral("practiceDialog"));
    setWindowTitle(tr("Practice"));
    build();
    resize(withinScreen(*this, kChoiceSize));
    fill();
}

void PracticeDialog::build() {
    m_search->setObjectName(QStringLiteral("practiceSearch"));
    m_search->setPlaceholderText(tr("Search, or type a problem's code"));
    m_search->setAccessibleName(tr("Search problems"));
    m_search->setClearButtonEnabled(true);
    m_search->installEventFilter(this);
    m_list->setObjectName(QStringLiteral("practiceList"));
    m_list->setAccessibleName(tr("Problems"));
    m_list->setUniformItemSizes(false);
    m_list->setWordWrap(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_details->setObjectName(QStringLiteral("practiceDetails"));
    m_details->setWordWrap(true);
    m_details->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_details->setFixedHeight(kDetailLines * m_details->fontMetrics().lineSpacing() + 4);
    auto* buttons = new QDialogButtonBox;
    m_begin = buttons->addButton(tr("&Begin"), QDialogButtonBox::AcceptRole);
    m_begin->setObjectName(QStringLiteral("practiceBegin"));
    m_begin->setDefault(true);
    m_fill = buttons->addButton(tr("&Fill in a solution"), QDialogButtonBox::ActionRole);
    m_fill->setObjectName(QStringLiteral("practiceFillIn"));
    m_fill->setToolTip(tr("Its last lines are blank, one more each time it goes well"));
    m_find = buttons->addButton(tr("Find the &slip"), QDialogButtonBox::ActionRole);
    m_find->setObjectName(QStringLiteral("practiceFindSlip"));
    m_find->setToolTip(tr("One line of a solution is wrong: point at it and mend it"));
    buttons->addButton(QDialogButtonBox::Close);
    for (QAbstractButton* button : buttons->buttons()) {
        button->setIcon({});
        static_cast<QPushButton*>(button)->setAutoDefault(button == m_begin);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 18, 20, 16);
    column->setSpacing(10);
    column->addWidget(m_search);
    column->addWidget(m_list, 1);
    column->addWidget(m_details);
    column->addWidget(buttons);
    connect(m_search, &QLineEdit::textChanged, this, &PracticeDialog::fill);
    connect(m_list, &QListWidget::currentRowChanged, this, &PracticeDialog::showDetails);
    connect(m_list, &QListWidget::itemDoubleClicked, this, [this] { take(); });
    connect(m_begin, &QPushButton::clicked, this, [this] { take(); });
    connect(m_fill, &QPushButton::clicked, this, [this] { take(WorkedAs::faded); });
    connect(m_find, &QPushButton::clicked, this, [this] { take(WorkedAs::flawed); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void PracticeDialog::ask() {
    m_search->selectAll();
    m_search->setFocus();
    open();
}

/// Arrows move in the list while one types.
bool PracticeDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched != m_search || event->type() != QEvent::KeyPress)
        return QDialog::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Up && key != Qt::Key_Down)
        return QDialog::eventFilter(watched, event);
    move(key == Qt::Key_Down ? 1 : -1);
    return true;
}

/// To the next row that is none of the headings.
void PracticeDialog::move(int by) {
    for (int row = m_list->currentRow() + by; row >= 0 && row < m_list->count(); row += by)
        if (m_list->item(row)->data(kPlace).isValid())
            return m_list->setCurrentRow(row);
}

void PracticeDialog::addRow(std::size_t index) {
    const PracticeChoice& choice = m_choices[index];
    auto* row = new QListWidgetItem(choice.title);
    row->setData(kPlace, QVariant::fromValue(index));
    row->setData(Qt::AccessibleTextRole, choice.group + QStringLiteral(", ") + choice.title);
    m_list->addItem(row);
}

/// A group's heading stands before the first of its rows that is found.
void PracticeDialog::fill() {
    m_choices.resize(m_listed);
    if (auto coded = choiceOfCode(m_search->text()))
        m_choices.push_back(std::move(*coded));
    m_list->clear();
    QString group;
    const auto add = [&](std::size_t index) {
        if (m_choices[index].group != group) {
            group = m_choices[index].group;
            auto* heading = new QListWidgetItem(group);
            heading->setFlags(Qt::ItemIsEnabled);
            QFont bold = m_list->font();
            bold.setWeight(QFont::DemiBold);
            heading->setFont(bold);
            m_list->addItem(heading);
        }
        addRow(index);
    };
    if (m_choices.size() > m_listed)
        add(m_listed);
    for (std::size_t i = 0; i < m_listed; ++i)
        if (matches(m_choices[i], m_search->text()))
            add(i);
    m_list->setCurrentRow(-1);
    move(1); // to the first
    const QString wanted = m_search->text().trimmed();
    const auto isNamed = [&](const PracticeChoice& choice) {
        return choice.group.startsWith(wanted, Qt::CaseInsensitive);
    };
    const auto hasInName = [&](const PracticeChoice& choice) {
        PracticeChoice name;
        name.words = choice.group.toLower();
        return matches(name, wanted);
    };
    if (!wanted.isEmpty() && !chooseFirst(isNamed)) // one of that name before others
        chooseFirst(hasInName);
    showDetails();
}

bool PracticeDialog::chooseFirst(const std::function<bool(const PracticeChoice&)>& isIt) {
    for (int row = 0; row < m_list->count(); ++row) {
        const QVariant place = m_list->item(row)->data(kPlace);
        if (!place.isValid() || !isIt(m_choices[place.value<std::size_t>()]))
            continue;
        m_list->setCurrentRow(row);
        return true;
    }
    return false;
}

const PracticeChoice* PracticeDialog::current() const {
    const QListWidgetItem* row = m_list->currentItem();
    const QVariant place = row != nullptr ? row->data(kPlace) : QVariant();
    return place.isValid() ? &m_choices[place.value<std::size_t>()] : nullptr;
}

void PracticeDialog::showDetails() {
    const PracticeChoice* choice = current();
    m_details->setText(choice != nullptr      ? choice->details.join(u'\n')
                       : m_list->count() == 0 ? tr("Nothing of that is in the list.")
                                              : QString());
    m_begin->setEnabled(choice != nullptr);
    for (QPushButton* example : {m_fill, m_find})
        example->setEnabled(choice != nullptr && choice->sample.isEmpty());
    m_begin->setText(choice != nullptr && !choice->sample.isEmpty() ? tr("&Open") : tr("&Begin"));
}

void PracticeDialog::take(WorkedAs as) {
    if (const PracticeChoice* choice = current()) {
        const PracticeChoice taken = *choice;
        accept();
        emit chosen(taken, as);
    }
}

} // namespace tailpoint
