// SPDX-License-Identifier: MIT
// The curves of a sweep, painted live, with a marker at the present value.
#pragma once

#include "core/figure/sweep_plot.h"
#include "ui/style/theme.h"

#include <QWidget>
#include <functional>
#include <optional>

namespace tailpoint {

/// Holds a sweep and the sketch that it is of; computes nothing. One unit of the plot is a pixel.
class SweepView : public QWidget {
    Q_OBJECT
public:
    /// `theme` is asked for each paint.
    explicit SweepView(std::function<ThemeName()> theme, QWidget* parent = nullptr);

    /// Nothing: an empty sheet with these words on it.
    void show(std::optional<Sweep> sweep, const Sketch& sketch, const QString& words = {});
    void setPresent(std::optional<double> present);
    const std::optional<Sweep>& sweep() const { return m_sweep; }
    std::optional<double> present() const { return m_present; }
    QSize minimumSizeHint() const override { return {320, 160}; }
    QSize sizeHint() const override { return {700, 520}; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void compose();
    double textSize() const;

    std::function<ThemeName()> m_theme;
    std::optional<Sweep> m_sweep;
    std::optional<double> m_present;
    Sketch m_sketch;
    QString m_words;
    SweepPlot m_plot;
};

} // namespace tailpoint
