// Under the bar, while a lesson runs: which sketch is on the lecture's screen, the notes for who speaks, and
// the way to the next.
#pragma once

#include <QWidget>

class QLabel;

namespace tailpoint {

class LinkButton;

/// Object name "lessonNotes"; hidden until a lesson runs.
class LessonNotes : public QWidget {
    Q_OBJECT
public:
    explicit LessonNotes(QWidget* parent = nullptr);
    /// `index` from 0.
    void show(std::size_t index, std::size_t count, const QString& name, const QString& notes);
    QString text() const; ///< all that is read, for the tests

signals:
    void asked(int by); ///< 1: the next sketch; -1: the one before
    void resumed();     ///< the lecture again
    void ended();

private:
    QLabel *m_place, *m_notes;
    LinkButton *m_before, *m_next;
};

} // namespace tailpoint
