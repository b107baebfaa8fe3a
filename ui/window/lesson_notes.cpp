#include "ui/window/lesson_notes.h"

#include "ui/panel/panel_parts.h"

#include <QHBoxLayout>
#include <QLabel>

namespace tailpoint {

LessonNotes::LessonNotes(QWidget* parent)
    : QWidget(parent), m_place(new QLabel), m_notes(new QLabel),
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
    for (QLabel* label : {m_place, m_notes}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    }
    m_place->setForegroundRole(QPalette::PlaceholderText);
    auto* again = linkButton(tr("To the lecture"), QStringLiteral("lessonResume"));
    auto* end = linkButton(tr("End the lesson"), QStringLiteral("lessonEnd"));
    for (LinkButton* button : {m_before, m_next, again, end})
        row->addWidget(button, 0, Qt::AlignTop);
    connect(m_before, &QPushButton::clicked, this, [this] { emit asked(-1); });
    connect(m_next, &QPushButton::clicked, this, [this] { emit asked(1); });
    connect(again, &QPushButton::clicked, this, &LessonNotes::resumed);
    connect(end, &QPushButton::clicked, this, &LessonNotes::ended);
    hide();
}

void LessonNotes::show(std::size_t index, std::size_t count, const QString& name, const QString& notes) {
    m_place->setText(tr("Sketch %1 of %2: %3").arg(index + 1).arg(count).arg(name));
    m_notes->setText(notes);
    m_notes->setVisible(!notes.isEmpty());
    m_before->setEnabled(index > 0);
    m_next->setEnabled(index + 1 < count);
    setAccessibleName(text());
    setVisible(true);
}

QString LessonNotes::text() const {
    return m_notes->text().isEmpty() ? m_place->text()
                                     : m_place->text() + QLatin1Char('\n') + m_notes->text();
}

} // namespace tailpoint
