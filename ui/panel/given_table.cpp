// SPDX-License-Identifier: MIT
#include "ui/panel/given_view.h"

#include "ui/document/sketch_document.h"
#include "ui/style/symbols.h"
#include "ui/style/targets.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace tailpoint {

QWidget* GivenDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                     const QModelIndex& index) const {
    auto* field = new QLineEdit(parent);
    field->setObjectName(QStringLiteral("cellField"));
    field->setFrame(false);
    field->setAutoFillBackground(true);
    field->setAlignment(Qt::Alignment(index.data(Qt::TextAlignmentRole).toInt()));
    if (const auto* model = qobject_cast<const GivenModel*>(index.model())) {
        const Sentence edited = model->editedWords(index);
        field->setAccessibleName(text(plain(edited)));
        field->setToolTip(htmlOf(edited));
    }
    if (index.column() != GivenModel::Name) {
        field->setPlaceholderText(tr("to find"));
    }
    const QPersistentModelIndex cell(index);
    field->setProperty("cell", QVariant::fromValue(cell));
    connect(field, &QLineEdit::textEdited, this,
            [this, cell](const QString& text) { emit typing(cell, text); });
    return field;
}

void GivenDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* field = qobject_cast<QLineEdit*>(editor);
    const QString text = index.data(Qt::EditRole).toString();
    if (field && !field->isModified() &&
        field->text() != text) { // the same text again would drop the selection
        field->setText(text);
        field->selectAll(); // what is typed now takes its place
    }
}

void GivenDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                         const QModelIndex&) const {
    editor->setGeometry(option.rect.adjusted(1, 1, -1, -2));
}

/// Enter on a text that can't be taken keeps the field open, with the reason said.
bool GivenDelegate::staysOpen(QLineEdit* field) {
    const auto cell = field->property("cell").value<QPersistentModelIndex>();
    const auto* model = cell.isValid() ? qobject_cast<const GivenModel*>(cell.model()) : nullptr;
    if (!model || !std::holds_alternative<Refused>(model->tried(cell, field->text()))) {
        return false;
    }
    emit typing(cell, field->text());
    return true;
}

/// Enter ends the typing; lines from a spreadsheet are forces, not a value.
bool GivenDelegate::keyTaken(QLineEdit* field, const QKeyEvent& key) {
    if (key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter) {
        if (!staysOpen(field)) {
            emit commitData(field);
            emit closeEditor(field);
        }
        return true;
    }
    const QString lines = key.matches(QKeySequence::Paste) ? QGuiApplication::clipboard()->text() : QString();
    if (!lines.trimmed().contains(u'\n') && !lines.contains(u'\t')) {
        return false;
    }
    emit closeEditor(field, RevertModelCache);
    emit linesPasted(lines);
    return true;
}

bool GivenDelegate::eventFilter(QObject* editor, QEvent* event) {
    auto* field = qobject_cast<QLineEdit*>(editor);
    const bool taken =
        field && event->type() == QEvent::KeyPress && keyTaken(field, *static_cast<QKeyEvent*>(event));
    return taken || PanelDelegate::eventFilter(editor, event);
}

GivenTable::GivenTable(GivenModel& model, GivenDelegate* delegate, QWidget* parent)
    : PanelTable(delegate, std::max(kRowHeight, targetSide()), parent), m_model(model) {
    setObjectName(QStringLiteral("givenTable"));
    setAccessibleName(tr("Given"));
    setEditTriggers(DoubleClicked | SelectedClicked | EditKeyPressed | AnyKeyPressed);
    setShares({24, 26, 28, 22});
    setWholeValues();
    setModel(&model);
    m_secondClick.setSingleShot(true);
    connect(&m_secondClick, &QTimer::timeout, this, [this] { typeInto(m_clicked); });
}

QString GivenTable::selectedText() const {
    std::vector<int> vectors;
    for (int row : chosenRows()) {
        vectors.push_back(m_model.vectorAt(row));
    }
    return m_model.lines(vectors);
}

/// A field that was closed waits, hidden, for its deletion.
QLineEdit* GivenTable::openField() const {
    for (auto* field : viewport()->findChildren<QLineEdit*>(QStringLiteral("cellField"))) {
        if (!field->isHidden()) {
            return field;
        }
    }
    return nullptr;
}

void GivenTable::typeInto(const QModelIndex& cell) {
    if (QLineEdit* field = openField()) {
        field->setFocus(Qt::OtherFocusReason);
    } else if (cell.column() == GivenModel::Note) {
        emit boundsAsked(cell);
    } else if (cell.flags().testFlag(Qt::ItemIsEditable)) {
        edit(cell, AllEditTriggers, nullptr);
    }
}

/// Qt waits by the current cell, which an undo in between may take away.
bool GivenTable::edit(const QModelIndex& cell, EditTrigger trigger, QEvent* event) {
    m_secondClick.stop();
    if (cell.column() == GivenModel::Note && openField() == nullptr) {
        return editNote(cell, trigger, event);
    }
    if (trigger != SelectedClicked) {
        return PanelTable::edit(cell, trigger, event);
    }
    if (!cell.flags().testFlag(Qt::ItemIsEditable) || openField() != nullptr) {
        return false;
    }
    m_clicked = cell;
    m_secondClick.start(QApplication::doubleClickInterval());
    return true;
}

/// A note has no field: limit and permitted direction are asked for together. A digit would be lost on the
/// way, so it only says how.
bool GivenTable::editNote(const QModelIndex& cell, EditTrigger trigger, QEvent* event) {
    if (trigger == DoubleClicked || trigger == EditKeyPressed) {
        emit boundsAsked(cell);
        return true;
    }
    const auto* key = trigger == AnyKeyPressed ? static_cast<QKeyEvent*>(event) : nullptr;
    if (key != nullptr && !key->text().isEmpty() && key->text().front().isDigit()) {
        emit noteTyped();
        return true;
    }
    return false;
}

/// To the next cell by its place: taking the value may have made the model anew.
void GivenTable::closeEditor(QWidget* field, QAbstractItemDelegate::EndEditHint hint) {
    const bool toNext = hint == QAbstractItemDelegate::EditNextItem,
               toPrevious = hint == QAbstractItemDelegate::EditPreviousItem;
    if (!toNext && !toPrevious) {
        return PanelTable::closeEditor(field, hint);
    }
    PanelTable::closeEditor(field, QAbstractItemDelegate::NoHint);
    const QModelIndex cell = moveCursor(toNext ? MoveNext : MovePrevious, Qt::NoModifier);
    if (cell.isValid()) {
        const int row = cell.row(), column = cell.column();
        setCurrentIndex(cell);
        typeInto(m_model.index(row, column));
    }
}

void GivenTable::finishTyping() {
    if (QLineEdit* field = openField()) {
        emit itemDelegate()->commitData(field);
        emit itemDelegate()->closeEditor(field);
    }
}

void GivenTable::dropTyping() {
    if (QLineEdit* field = openField()) {
        emit itemDelegate()->closeEditor(field, QAbstractItemDelegate::RevertModelCache);
    }
}

void GivenTable::keyPressEvent(QKeyEvent* event) {
    emit keyed();
    if (event->matches(QKeySequence::Paste)) {
        emit pasted(QGuiApplication::clipboard()->text());
    } else if (event->text() == QLatin1String("?") || event->key() == Qt::Key_Space) {
        m_model.toggle(currentIndex());
    } else if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) {
        emit removal(chosenRows());
    } else if (event->key() == Qt::Key_Insert) {
        emit addition();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        typeInto(currentIndex());
    } else if (event->key() == Qt::Key_Escape) {
        m_model.discardDraft(currentIndex());
        emit draftDropped();
    } else {
        PanelTable::keyPressEvent(event);
    }
}

void GivenTable::contextMenuEvent(QContextMenuEvent* event) {
    const bool mouse = event->reason() == QContextMenuEvent::Mouse;
    const QModelIndex index = mouse ? indexAt(event->pos()) : currentIndex();
    const QPoint place = mouse ? event->pos() : visualRect(index).bottomLeft();
    emit menuAsked(index, viewport()->mapToGlobal(place));
}

/// Tab from an open field goes to the next field, past the notes.
QModelIndex GivenTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    const QModelIndex here = currentIndex();
    const bool next = action == MoveNext, previous = action == MovePrevious;
    if (!here.isValid() || (!next && !previous)) {
        return PanelTable::moveCursor(action, modifiers);
    }
    const int fields = GivenModel::Note;
    const int place = here.row() * fields + std::min(here.column(), fields - 1) + (next ? 1 : -1);
    const int last = m_model.rowCount() * fields - 1;
    return place < 0 || place > last ? here : m_model.index(place / fields, place % fields);
}

} // namespace tailpoint
