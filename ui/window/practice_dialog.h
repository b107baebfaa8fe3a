// SPDX-License-Identifier: MIT
// The list of what can be practised, found by typing: families by level, problems by their code, samples as
// worked examples. A problem is answered, or worked by its solution's lines.
#pragma once

#include "core/practice/record.h"
#include "ui/practice/practice_choices.h"

#include <QDialog>
#include <functional>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace tailpoint {

class PracticeDialog : public QDialog {
    Q_OBJECT
public:
    explicit PracticeDialog(QWidget* parent);
    /// Opens on what was chosen last, ready to be typed into.
    void ask();

signals:
    void chosen(const tailpoint::PracticeChoice& choice, tailpoint::WorkedAs as);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void fill();
    void addRow(std::size_t index);
    void showDetails();
    void take(WorkedAs as = WorkedAs::question);
    const PracticeChoice* current() const;
    bool chooseFirst(const std::function<bool(const PracticeChoice&)>& isIt); ///< of the list
    void move(int by);

    std::vector<PracticeChoice> m_choices; ///< the last one a code's, where there is one
    std::size_t m_listed = 0;              ///< without it
    QLineEdit* m_search;
    QListWidget* m_list;
    QLabel* m_details;
    QPushButton *m_begin, *m_fill, *m_find;
};

} // namespace tailpoint
