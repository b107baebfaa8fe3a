// SPDX-License-Identifier: MIT
// The hints that were opened, under the fields of a learner's own answer.
#pragma once

#include "ui/style/theme.h"

#include <QWidget>

namespace tailpoint {

class MarkedText;
class Practice;

class PracticeHints : public QWidget {
    Q_OBJECT
public:
    explicit PracticeHints(Practice& practice, QWidget* parent = nullptr);
    void setTheme(const Theme& theme);
    /// The hint that was opened last, to be read out.
    QString lastWords() const { return m_last; }

signals:
    void laidOut(); ///< what was opened has its room now

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();

    Practice& m_practice;
    MarkedText* m_text;
    QString m_last;
};

} // namespace tailpoint
