// SPDX-License-Identifier: MIT
// Under Find: a worked solution whose blank lines are filled one by one, or in which the line with a slip is
// pointed at and mended. What came of an entry is said in one line that is spoken, with what a slip did under
// it.
#pragma once

#include "core/practice/asked_lines.h"
#include "ui/style/theme.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace tailpoint {

class LineExercise;
class LinkButton;
class MarkedText;
class SketchDocument;
class SolutionLines;
class SpokenLine;

/// Object name "lineExercise".
class LineExerciseView : public QWidget {
    Q_OBJECT
public:
    LineExerciseView(SketchDocument& document, LineExercise& exercise, QWidget* parent = nullptr);
    LineExercise& exercise() const { return m_exercise; }
    void setTheme(const Theme& theme);
    /// Puts the keyboard where the next entry is made.
    void takeFocus();
    /// What Tab takes one after another.
    QList<QWidget*> tabOrder() const;

signals:
    void asks();                   ///< what is asked now has its room
    void wentTo(const QRect& row); ///< by keys, in this widget

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    QVBoxLayout* buildForm();
    void refresh();
    void showLines();
    void showForm();
    void showSubject();
    void tell();
    QString headWords() const;
    QString taskWords() const;
    QString cameWords() const;
    QString doneWords() const;
    void showFindings();
    void enter();
    std::optional<Principle> principle() const;

    SketchDocument& m_document;
    LineExercise& m_exercise;
    QLabel *m_head, *m_task;
    SolutionLines* m_lines;
    QWidget* m_form;
    QLabel *m_prompt, *m_subject, *m_unit;
    QComboBox* m_principle;
    QLineEdit* m_number;
    QPushButton* m_enter;
    LinkButton* m_show;
    SpokenLine* m_said;
    MarkedText* m_findings;
};

} // namespace tailpoint
