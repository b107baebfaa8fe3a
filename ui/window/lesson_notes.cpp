// SPDX-License-Identifier: MIT
#include "ui/window/lesson_notes.h"

#include "ui/panel/panel_parts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QTextBlock>
#include <QTextLayout>
#include <QtMath>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr int kMostLines = 5;
constexpr qsizetype kLongestNotes = 20'000; ///< letters: what is laid out has a limit

} // namespace

NotesField::NotesField(QWidget* parent) : QPlainTextEdit(parent) {
    setObjectName(QStringLiteral("lessonNotesText"));
    setAccessibleName(tr("Notes for this sketch"));
    setPlaceholderText(tr("Notes for this sketch, kept in the lesson\u2019s file"));
    setTabChangesFocus(true);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    connect(this, &QPlainTextEdit::textChanged, this, &NotesField::fitLines);
    fitLines();
}

/// Lines as they are wrapped; more than a few are scrolled.
void NotesField::fitLines() {
    int lines = 0;
    for (QTextBlock block = document()->begin(); block.isValid() && lines < kMostLines; block = block.next())
        lines += std::max(1, block.layout()->lineCount());
    const double line = QFontMetricsF(font()).lineSpacing();
    setFixedHeight(qCeil(std::clamp(lines, 1, kMostLines) * line + 2 * document()->documentMargin() + 2));
}

void NotesField::focusOutEvent(QFocusEvent* event) {
    QPlainTextEdit::focusOutEvent(event);
    emit left();
}

void NotesField::hideEvent(QHideEvent* event) {
    QPlainTextEdit::hideEvent(event);
    emit left();
}

void NotesField::resizeEvent(QResizeEvent* event) {
    QPlainTextEdit::resizeEvent(event);
    fitLines();
}

LessonNotes::LessonNotes(QWidget* parent)
    : QWidget(parent), m_place(new QLabel), m_notes(new NotesField),
      m_before(linkButton(tr("Previous"), QStringLiteral("lessonPrevious"))),
      m_next(linkButton(tr("Next"), QStringLiteral("lessonNext"))) {
    setObjectName(QStringLiteral("lessonNotes"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 6, 8, 6);
    row->setSpacing(12);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_place);
    words->addWidget(m_notes);
    row->addLayout(words, 1);
    m_place->setTextFormat(Qt::PlainText);
    m_place->setWordWrap(true);
    m_place->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_place->setForegroundRole(QPalette::PlaceholderText);
    auto* again = linkButton(tr("To the lecture"), QStringLiteral("lessonResume"));
    auto* end = linkButton(tr("End the lesson"), QStringLiteral("lessonEnd"));
    for (LinkButton* button : {m_before, m_next, again, end})
        row->addWidget(button, 0, Qt::AlignTop);
    connect(m_before, &QPushButton::clicked, this, [this] { emit asked(-1); });
    connect(m_next, &QPushButton::clicked, this, [this] { emit asked(1); });
    connect(again, &QPushButton::clicked, this, &LessonNotes::resumed);
    connect(end, &QPushButton::clicked, this, &LessonNotes::ended);
    connect(m_notes, &NotesField::left, this, &LessonNotes::finish);
    hide();
}

void LessonNotes::show(const Part& part) {
    finish();
    const bool same = isVisible() && part.index == m_part.index && part.notes == m_notes->toPlainText();
    m_part = part;
    if (!same) // what was typed can be undone as long as its sketch is on
        m_notes->setPlainText(part.notes);
    m_before->setEnabled(part.index > 0);
    m_next->setEnabled(part.index + 1 < part.count);
    tellPlace();
    setVisible(true);
}

void LessonNotes::setShown(bool isShown) {
    m_part.isShown = isShown;
    tellPlace();
}

void LessonNotes::tellPlace() {
    const QString place =
        m_part.isShown ? tr("The lecture shows sketch %1 of %2: %3. The sheet below is no part of it.")
                       : tr("The lesson waits at sketch %1 of %2: %3. The sheet below is no part of it.");
    m_place->setText(place.arg(m_part.index + 1).arg(m_part.count).arg(m_part.name));
    setAccessibleName(text());
}

void LessonNotes::finish() {
    const QString typed = m_notes->toPlainText().left(kLongestNotes);
    if (typed == m_part.notes)
        return;
    m_part.notes = typed; // once, also where it can't be saved
    emit written(m_part.index, typed);
}

QString LessonNotes::text() const {
    return m_notes->toPlainText().isEmpty() ? m_place->text()
                                            : m_place->text() + QLatin1Char('\n') + m_notes->toPlainText();
}

} // namespace tailpoint
