// SPDX-License-Identifier: MIT
// A figure on its page, as a job draws it.
#pragma once

#include "ui/handout/figure_job.h"

#include <QWidget>

namespace tailpoint {

/// The figure as the job draws it, as large as there is room; with all stages the last one.
class FigurePreview : public QWidget {
    Q_OBJECT
public:
    explicit FigurePreview(QWidget* parent = nullptr);
    void show(std::vector<DisplayList> lists, const FigureJob& job);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<DisplayList> m_lists;
    FigureJob m_job;
};

} // namespace tailpoint
