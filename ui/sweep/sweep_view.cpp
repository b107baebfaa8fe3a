// SPDX-License-Identifier: MIT
#include "ui/sweep/sweep_view.h"

#include "core/explain/caution.h"
#include "core/explain/swept.h"
#include "ui/render/render.h"
#include "ui/style/symbols.h"

#include <QAccessible>
#include <QFontInfo>
#include <QPainter>

namespace tailpoint {

namespace {

constexpr double kTextByFont = 0.92; ///< of the window's letters
constexpr double kLinesWithKey = 30; ///< heights of a letter

} // namespace

SweepView::SweepView(std::function<ThemeName()> theme, QWidget* parent)
    : QWidget(parent), m_theme(std::move(theme)) {
    setObjectName(QStringLiteral("sweepView"));
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Curves"));
    setAttribute(Qt::WA_OpaquePaintEvent);
}

double SweepView::textSize() const {
    return kTextByFont * QFontInfo(font()).pixelSize();
}

void SweepView::show(std::optional<Sweep> sweep, const Sketch& sketch, const QString& words) {
    m_sweep = std::move(sweep);
    m_sketch = sketch;
    m_words = words;
    compose();
}

void SweepView::setPresent(std::optional<double> present) {
    if (m_present != present) {
        m_present = present;
        update();
    }
}

/// What is painted is read out as well.
void SweepView::compose() {
    QString told = m_words;
    m_plot = {};
    if (m_sweep) {
        SweepPlotOptions options;
        options.width = width();
        options.height = height();
        options.textSize = textSize();
        options.title = false;
        options.key = height() > kLinesWithKey * options.textSize; // else the curves would have no room
        for (const SweptLimit& limit : sweptLimits(*m_sweep, m_sketch)) {
            options.feet.push_back(wordsOf(limit, m_sketch));
        }
        for (std::string note : {sweptProofNote(*m_sweep), sweptToleranceNote(m_sketch)}) {
            if (!note.empty()) {
                options.feet.push_back(std::move(note));
            }
        }
        if (needsCaution(m_sketch)) {
            options.feet.emplace_back(cautionLine());
        }
        m_plot = sweepPlot(*m_sweep, m_sketch, options, QtTextMeasure());
        told = text(m_plot.list.description);
    }
    if (accessibleDescription() != told) {
        setAccessibleDescription(told);
    }
    update();
}

void SweepView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Theme& theme = themeOf(m_theme());
    painter.fillRect(rect(), theme.sheet);
    if (!m_sweep) {
        painter.setPen(theme.ink);
        const int inset = fontMetrics().height();
        painter.drawText(rect().adjusted(inset, inset, -inset, -inset), Qt::AlignCenter | Qt::TextWordWrap,
                         m_words);
    } else {
        paint(painter, m_plot.list, theme);
        if (m_present) {
            paint(painter, sweepMarker(m_plot, *m_sweep, m_sketch, *m_present, textSize(), QtTextMeasure()),
                  theme);
        }
    }
    if (hasFocus()) {
        painter.setPen(QPen(theme.ink, 1, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void SweepView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    compose();
}

void SweepView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        compose();
    } else if (event->type() == QEvent::PaletteChange) {
        update();
    }
}

} // namespace tailpoint
