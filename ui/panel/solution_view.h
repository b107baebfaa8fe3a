// SPDX-License-Identifier: MIT
// The panel's section Solution: the worked steps of the open sketch, each foldable, lit as the pointer asks.
// Put it into a scroll area with setWidgetResizable(true); it keeps its own height. Reads the document's
// result at most once a frame and keeps no number of it.
#pragma once

#include "core/explain/explain.h"
#include "ui/panel/solution_step.h"

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>
#include <vector>

namespace tailpoint {

class SketchDocument;

/// Object name "solution".
class SolutionView : public QWidget {
    Q_OBJECT
public:
    explicit SolutionView(SketchDocument& document, QWidget* parent = nullptr);

    void setTheme(ThemeName name);
    void setDivision(double forceUnits); ///< one division of the sheet, for the check by scale; 0: none

    const ExplainOptions& options() const { return m_options; }
    bool handRounding() const { return m_options.handRounding; }
    Method method() const { return m_options.method; }
    void setMethod(Method method);
    bool byParallelograms() const { return m_options.parallelograms; }
    void setByParallelograms(bool on);
    void setUncertainty(const std::optional<tolerance::UncertaintyAsked>& asked); ///< empty: not told
    /// "guard figures carried" or "rounded as by hand", for the section's heading.
    QString carriedWords() const;

    const Worked& worked() const { return *m_worked; }
    void refreshNow() { refresh(); }      ///< not with the next frame
    void catchUp();                       ///< where there is something to be shown with the next frame
    void layOutAll();                     ///< what waits for the first paint
    int litStep() const { return m_lit; } ///< -1: none
    QRect stepRect(int step);             ///< in this widget
    QString plainText() const;            ///< the whole solution
    /// What goes along with a copy of it or of one of its steps: caution and record.
    QString copiedFoot() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

public slots:
    void setHandRounding(bool on);
    void foldAll();
    void unfoldAll();
    /// Lights the first step that speaks of this part of the figure; none does: no step.
    void lightPart(const std::optional<tailpoint::FigurePart>& part);
    void lightVector(int vector); ///< the same for an arrow; kNoVector: no step
    void copy();                  ///< the whole solution as text

signals:
    /// The pointer or the keyboard is on this step; -1: on none. Its parts are worked().steps[step].parts.
    void stepPointed(int step);
    void partsPointed(const std::vector<tailpoint::FigurePart>& parts);
    void handRoundingChanged(bool on);
    void attended(const QRect& place); ///< in this widget: the keyboard is there, so it is to be seen

protected:
    void showEvent(QShowEvent* event) override;
    void moveEvent(QMoveEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void schedule();
    void refresh();
    void relayout();
    int endOfSight() const;
    void layOutBehindPaint();
    SolutionStep* addStep();
    void point(int step, bool inside);
    void go(int from, SolutionStep::Go where);
    void tabOn(const QWidget* from);
    void tellNew();
    void setLit(int step);

    SketchDocument& m_document;
    ExplainOptions m_options;
    std::shared_ptr<const Worked> m_worked = std::make_shared<const Worked>();
    std::vector<SolutionStep*> m_steps; ///< as many as ever were needed; those beyond worked() are hidden
    const Theme* m_theme;
    QTimer m_timer;
    QTimer m_rest; ///< until the numbers rest
    QElapsedTimer m_last;
    int m_lit = -1, m_height = 0;
    /// Until the window was painted for the first time only the steps in sight are laid out: to set them all
    /// takes longer than all else of that paint. Who asks for one gets all at once.
    bool m_waits = true;
    bool m_wasExposed = false; ///< when it was to be laid out behind the first paint
};

} // namespace tailpoint
