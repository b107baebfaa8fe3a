// SPDX-License-Identifier: MIT
#include "ui/canvas/label_editor.h"

#include "ui/document/readings.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr int kLeastWidth = 96, kLeastHeight = 26;

QPalette fieldPalette(const Theme& theme) {
    QPalette palette;
    palette.setColor(QPalette::Base, theme.panel);
    palette.setColor(QPalette::Text, theme.ink);
    palette.setColor(QPalette::Highlight, theme.given);
    palette.setColor(QPalette::HighlightedText, theme.panel);
    return palette;
}

QPalette notePalette(const Theme& theme) {
    QPalette palette;
    palette.setColor(QPalette::Window, theme.panel);
    palette.setColor(QPalette::WindowText, theme.warning);
    palette.setColor(QPalette::Link, theme.warning);
    return palette;
}

} // namespace

LabelEditor::LabelEditor(QWidget* sheet) : QLineEdit(sheet), m_note(new QLabel(sheet)) {
    setObjectName(QStringLiteral("labelEditor"));
    setTextMargins(3, 0, 3, 0);
    m_note->setObjectName(QStringLiteral("labelEditorNote"));
    m_note->setMargin(4);
    m_note->setAutoFillBackground(true);
    m_note->setTextFormat(Qt::RichText);
    m_note->setTextInteractionFlags(Qt::LinksAccessibleByMouse); // takes no focus from the field
    m_note->hide();
    hide();
    connect(this, &QLineEdit::textChanged, this, [this] {
        m_note->hide();
        m_readings.clear();
        widen();
    });
    connect(m_note, &QLabel::linkActivated, this,
            [this](const QString& which) { takeReading(which.toInt()); });
}

void LabelEditor::open(const QRectF& over, const QString& text, const QString& what, const Theme& theme,
                       Take take) {
    m_open = true;
    m_take = std::move(take);
    m_first = text;
    setAccessibleName(what);
    setToolTip(what);
    setPalette(fieldPalette(theme));
    m_note->setPalette(notePalette(theme));
    setText(text);
    place(over);
    show();
    raise();
    selectAll();
    setFocus(Qt::OtherFocusReason);
}

void LabelEditor::follow(const QRectF& over) {
    if (m_open) {
        place(over);
        placeNote();
    }
}

void LabelEditor::place(const QRectF& over) {
    const QSize size(std::max(kLeastWidth, int(over.width()) + 24),
                     std::max({kLeastHeight, int(over.height()) + 6, sizeHint().height()}));
    QRect box(QPoint(0, 0), size);
    box.moveCenter(over.center().toPoint());
    const QRect sheet = parentWidget()->rect().adjusted(2, 2, -2, -2);
    box.moveLeft(std::clamp(box.left(), sheet.left(), std::max(sheet.left(), sheet.right() - box.width())));
    box.moveTop(std::clamp(box.top(), sheet.top(), std::max(sheet.top(), sheet.bottom() - box.height())));
    setGeometry(box);
    widen();
}

void LabelEditor::widen() {
    const int needed = fontMetrics().horizontalAdvance(text()) + 34;
    if (needed > width()) {
        const int most = parentWidget()->width() - 4;
        resize(std::min(needed, most), height());
        move(std::max(2, std::min(x(), parentWidget()->width() - 2 - width())), y());
    }
}

void LabelEditor::complain(const Refused& why) {
    m_complaint = why.message;
    m_readings = why.readings;
    m_note->setText(withReadings(why));
    placeNote();
    m_note->show();
    m_note->raise();
    setAccessibleDescription(why.message);
    emit complained(why.message);
}

void LabelEditor::placeNote() {
    m_note->setWordWrap(false);
    QSize size = m_note->sizeHint();
    const int most = parentWidget()->width() - 4;
    if (size.width() > most) {
        m_note->setWordWrap(true);
        size = {most, m_note->heightForWidth(most)};
    }
    QRect box(QPoint(x(), geometry().bottom() + 3), size);
    if (box.bottom() > parentWidget()->height() - 2) {
        box.moveBottom(y() - 3);
    }
    box.moveLeft(std::max(2, std::min(box.left(), parentWidget()->width() - 2 - box.width())));
    m_note->setGeometry(box);
}

void LabelEditor::takeReading(qsizetype which) {
    if (which < m_readings.size()) {
        setText(QString(m_readings[which]));
        commit();
    }
}

bool LabelEditor::commit() {
    if (text() != m_first) {
        if (const std::optional<Refused> why = m_take(text())) {
            complain(*why);
            return false;
        }
    }
    close();
    return true;
}

void LabelEditor::leave() {
    if (m_open) {
        close();
    }
}

void LabelEditor::close() {
    m_open = false;
    m_take = nullptr;
    m_note->hide();
    setAccessibleDescription({});
    if (hasFocus()) { // before it hides: else Qt moves the focus on, as Tab would, and the selection with it
        parentWidget()->setFocus(Qt::OtherFocusReason);
    }
    hide();
    emit closed();
}

void LabelEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        leave();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        commit();
    } else if (const auto which = readingOf(*event, m_readings)) {
        takeReading(*which);
    } else {
        QLineEdit::keyPressEvent(event);
    }
}

void LabelEditor::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    const bool elsewhere =
        event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason;
    if (m_open && elsewhere) {
        commit();
    }
}

} // namespace tailpoint
