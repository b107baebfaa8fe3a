// SPDX-License-Identifier: MIT
// The quiet line at the foot of the column: how far, and where the keys are told; a caution over it.
#pragma once

#include "ui/lecture/measures.h"
#include "ui/style/theme.h"

#include <QWidget>

namespace tailpoint {

class LectureProgress : public QWidget {
    Q_OBJECT
public:
    explicit LectureProgress(QWidget* parent);
    void setMeasures(const Measures& measures);
    void setTheme(const Theme& theme);
    /// `part`: how much of the stop's lines stand. `changed`: the sheet is not the plan's.
    void show(std::size_t stop, std::size_t stops, double part, bool changed);
    void setCaution(bool on);          ///< what may not be taken for a design says so at every step
    void setPart(const QString& part); ///< which sketch of a lesson; empty: none
    void setMore(bool more);           ///< lines of this stop follow on another page: a mark says so
    bool more() const { return m_more; }
    QString text() const;
    QString cautionText() const; ///< empty: none
    bool cautionFits() const;
    int heightNeeded() const;
    double capital() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QFont font() const;
    QString spoken() const;
    Measures m_measures;
    const Theme* m_theme;
    std::size_t m_stop = 0, m_stops = 1;
    double m_part = 1;
    QString m_lessonPart;
    bool m_changed = false, m_more = false, m_caution = false;
};

} // namespace tailpoint
