// SPDX-License-Identifier: MIT
// Under the bar, while a lesson runs: which sketch the lecture shows, the notes for who speaks, to be written
// here too, and the way to the next.
#pragma once

#include <QPlainTextEdit>

class QLabel;

namespace tailpoint {

class LinkButton;

/// A field that is as high as its lines, up to a few, and says when it is left.
class NotesField : public QPlainTextEdit {
    Q_OBJECT
public:
    explicit NotesField(QWidget* parent = nullptr);

signals:
    void left();

protected:
    void focusOutEvent(QFocusEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitLines();
};

/// Object name "lessonNotes"; hidden until a lesson runs.
class LessonNotes : public QWidget {
    Q_OBJECT
public:
    explicit LessonNotes(QWidget* parent = nullptr);
    struct Part {
        std::size_t index = 0, count = 1; ///< from 0
        QString name, notes;
        bool isShown = true; ///< on the lecture's screen; false: the lecture was left
    };
    /// What was typed for another part is written() first.
    void show(const Part& part);
    void setShown(bool isShown);
    /// Says what was typed and not said yet: before the sketch changes, at the end.
    void finish();
    QString text() const; ///< all that is read, for the tests

signals:
    void asked(int by); ///< 1: the next sketch; -1: the one before
    void resumed();     ///< the lecture again
    void ended();
    void written(std::size_t index, const QString& notes); ///< other notes, when the field is left

private:
    void tellPlace();
    Part m_part;
    QLabel* m_place;
    NotesField* m_notes;
    LinkButton *m_before, *m_next;
};

} // namespace tailpoint
