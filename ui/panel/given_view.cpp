// SPDX-License-Identifier: MIT
#include "ui/panel/given_view.h"

#include "ui/document/new_force.h"
#include "ui/document/readings.h"
#include "ui/document/sketch_document.h"
#include "ui/panel/panel_parts.h"
#include "ui/style/symbols.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTextDocumentFragment>
#include <QVBoxLayout>

namespace tailpoint {

GivenView::GivenView(SketchDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_model(new GivenModel(document, this)),
      m_delegate(new GivenDelegate(Rules::everyRow)), m_table(new GivenTable(*m_model, m_delegate)),
      m_line(quietLabel(QStringLiteral("givenLine"))), m_fault(quietLabel(QStringLiteral("givenFault"))) {
    auto* add = linkButton(tr("+ Add force"), QStringLiteral("addRow"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(new ColumnHeads(*m_table, GivenModel::Note));
    column->addWidget(m_table);
    column->addWidget(m_fault);
    m_fault->setWordWrap(true);
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->setTextFormat(Qt::RichText);
    m_fault->setTextInteractionFlags(Qt::LinksAccessibleByMouse); // takes no focus from the field
    connect(m_fault, &QLabel::linkActivated, this,
            [this](const QString& which) { takeReading(which.toInt()); });
    for (const int which : {0, 1}) { // as readingOf() says; a field hands such keys on
        auto* key = new QShortcut(QKeySequence(Qt::ALT | Qt::Key(Qt::Key_1 + which)), this);
        key->setContext(Qt::WidgetWithChildrenShortcut);
        connect(key, &QShortcut::activated, this, [this, which] { takeReading(which); });
    }
    m_fault->setContentsMargins(8, 3, 8, 0);
    m_fault->hide();
    auto* foot = new QHBoxLayout; // the line stands beside the button: nothing moves when it speaks
    foot->addWidget(add, 0, Qt::AlignTop);
    foot->addWidget(m_line, 1);
    column->addLayout(foot);
    m_line->setWordWrap(true);
    m_line->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_line->setContentsMargins(0, 5, 8, 0);
    connect(add, &QPushButton::clicked, this, &GivenView::addForce);
    connect(m_delegate, &GivenDelegate::typing, this, &GivenView::onTyping);
    connect(m_model, &GivenModel::refused, this, [this](const QModelIndex& cell) { sayCell(cell); });
    connect(m_model, &GivenModel::taken, this,
            [this](const QModelIndex&, const QString& understood) { say(understood, false); });
    connect(m_delegate, &GivenDelegate::closeEditor, this,
            [this](QWidget*, QAbstractItemDelegate::EndEditHint hint) {
                if (hint == QAbstractItemDelegate::RevertModelCache) { // Escape: what was said of it goes too
                    sayCell(m_table->currentIndex());
                }
            });
    connect(m_delegate, &GivenDelegate::linesPasted, this, &GivenView::paste);
    connect(m_table, &GivenTable::pointedAt, this,
            [this](int row) { emit pointedAt(row < 0 ? kNoVector : m_model->vectorAt(row)); });
    connect(m_table, &GivenTable::pasted, this, &GivenView::paste);
    connect(m_table, &GivenTable::removal, this, &GivenView::removeChosen);
    connect(m_table, &GivenTable::addition, this, &GivenView::addForce);
    connect(m_table, &GivenTable::menuAsked, this, &GivenView::showMenu);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, &GivenView::onSelection);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& cell) {
                sayCell(cell);
                emit cellUsed();
            });
    connect(m_table, &GivenTable::keyed, this, &GivenView::cellUsed);
    connect(m_table, &GivenTable::boundsAsked, this,
            [this](const QModelIndex& cell) { editBounds(m_model->vectorAt(cell.row())); });
    connect(m_table, &GivenTable::noteTyped, this,
            [this] { say(tr("Enter or a double click here sets limit and permitted direction."), false); });
    connect(m_table, &GivenTable::draftDropped, this, [this] { sayCell(m_table->currentIndex()); });
    // What waits to be mended was typed into a sketch that an undo has left.
    connect(&document.history(), &QUndoStack::indexChanged, this, [this](int index) {
        if (index < std::exchange(m_steps, index)) {
            forgetDrafts();
        }
    });
}

void GivenView::setTheme(const Theme& theme) {
    m_table->setTheme(theme);
}

void GivenView::refresh() {
    m_model->refresh();
}

void GivenView::forgetDrafts() {
    m_model->forgetDrafts();
    say({}, false);
}

void GivenView::say(const QString& line, bool fault) {
    if (fault) {
        sayWhy({line});
        return;
    }
    m_readings.clear();
    m_line->setText(line);
    m_fault->hide();
    emit told(line);
}

void GivenView::sayWhy(const Refused& why, const QModelIndex& cell) {
    m_asked = cell;
    m_readings = why.readings;
    showFault(withReadings(why));
}

void GivenView::showFault(const QString& rich) {
    m_line->clear();
    m_fault->setText(QStringLiteral("\u25b2 ") + rich);
    m_fault->show();
    emit told(QTextDocumentFragment::fromHtml(rich).toPlainText());
}

/// The one reading or the other of a number in place of the text that was typed.
void GivenView::takeReading(qsizetype which) {
    if (which >= m_readings.size() || !m_asked.isValid()) {
        return;
    }
    const QPersistentModelIndex cell = m_asked; // closing the field may change the table
    const QString reading = m_readings[which];
    m_table->dropTyping();
    if (cell.isValid()) {
        m_table->setCurrentIndex(cell);
        m_model->setData(cell, reading);
    }
}

/// The reason of a cell whose text was not taken, else that of any other that still waits to be mended.
void GivenView::sayCell(const QModelIndex& cell) {
    if (const auto why = m_model->whyRefused(cell)) {
        sayWhy(*why, cell);
        return;
    }
    say(m_model->statedAt(cell), false);
    if (const Sentence fault = m_model->waitingFault(); !fault.empty()) {
        showFault(htmlOf(fault));
    }
}

/// Echoes what is understood while it is typed, and why it is not.
void GivenView::onTyping(const QModelIndex& cell, const QString& typed) {
    const Outcome outcome = m_model->tried(cell, typed);
    if (const auto* reason = std::get_if<Refused>(&outcome)) {
        sayWhy(*reason, cell);
        return;
    }
    say(std::get<Accepted>(outcome).understood, false);
}

void GivenView::apply(const Sketch& after, const QString& step) {
    if (const auto fault = m_document.edit(after, step)) {
        say(text(fault->message), true);
    }
}

void GivenView::addForce() {
    apply(withNewForce(m_document.result(), m_division), tr("Add a force"));
    edit(static_cast<int>(m_document.sketch().forces.size()) - 1, Entry::magnitude);
}

void GivenView::removeChosen() {
    const std::vector<std::string> names = chosenForces();
    if (names.empty()) {
        say(tr("The sum stays: make its magnitude and direction to find with ?"), false);
        return;
    }
    remove(names);
}

void GivenView::paste(const QString& lines) {
    const Outcome outcome = withLinesAdded(m_document.sketch(), lines);
    if (const auto* reason = std::get_if<Refused>(&outcome)) {
        say(reason->message, true);
        return;
    }
    const auto& accepted = std::get<Accepted>(outcome);
    apply(accepted.sketch, tr("Paste forces"));
    say(accepted.understood, false);
}

void GivenView::toggleCurrent() {
    m_model->toggle(m_table->currentIndex());
}

void GivenView::select(int vector) {
    m_following = true;
    if (vector == kNoVector || !hasVector(m_document.sketch(), vector)) {
        m_table->clearSelection();
    } else {
        const int column = std::max(0, m_table->currentIndex().column());
        const QModelIndex cell = m_model->index(m_model->rowOf(vector), column);
        m_table->selectionModel()->setCurrentIndex(cell, QItemSelectionModel::ClearAndSelect |
                                                             QItemSelectionModel::Rows);
    }
    m_following = false;
}

void GivenView::edit(int vector, Entry cell) {
    const QModelIndex index = m_model->index(m_model->rowOf(vector), static_cast<int>(cell));
    m_table->setFocus(Qt::OtherFocusReason);
    m_table->setCurrentIndex(index);
    m_table->typeInto(index);
}

void GivenView::onSelection() {
    if (m_following) {
        return;
    }
    const auto rows = m_table->selectionModel()->selectedRows();
    emit selected(rows.size() == 1 ? m_model->vectorAt(rows.front().row()) : kNoVector);
}

void GivenView::remove(const std::vector<std::string>& names) {
    std::vector<int> forces;
    for (const std::string& name : names) {
        const int vector = vectorNamed(m_document.sketch(), name);
        if (vector >= 0) {
            forces.push_back(vector);
        }
    }
    if (!forces.empty()) {
        apply(withForcesRemoved(m_document.sketch(), forces),
              forces.size() == 1 ? tr("Delete a force") : tr("Delete %1 forces").arg(forces.size()));
    }
}

std::vector<std::string> GivenView::chosenForces() const {
    std::vector<std::string> names;
    for (const int row : m_table->chosenRows()) {
        if (m_model->vectorAt(row) != kSumIndex) {
            names.push_back(vectorOf(m_document.sketch(), m_model->vectorAt(row)).name);
        }
    }
    return names;
}

} // namespace tailpoint
