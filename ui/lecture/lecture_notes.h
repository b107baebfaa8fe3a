// SPDX-License-Identifier: MIT
// A lesson's notes for who speaks, on a key under the sheet: for a room with one screen, where the window
// that else has them is hidden behind the lecture. Not for the last row: smaller than all else.
#pragma once

#include "ui/lecture/measures.h"
#include "ui/style/theme.h"

#include <QWidget>

namespace tailpoint {

class LectureNotes : public QWidget {
    Q_OBJECT
public:
    explicit LectureNotes(QWidget* parent);
    void setTheme(const Theme& theme);
    void setNotes(const QString& notes);
    QString text() const; ///< what is read, also where there are no notes
    /// The height that it takes at this width: a third of the screen at the most, smaller letters first.
    int lay(const Measures& measures, int width);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QFont font() const;
    const Theme* m_theme;
    QString m_notes;
    Measures m_measures;
    double m_size = 0; ///< of the letters, pixels
};

} // namespace tailpoint
