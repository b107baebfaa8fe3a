// SPDX-License-Identifier: MIT
// canvas/: the sheet on screen. Paints the display list over a cached static layer and turns gestures, keys
// and typed values into edits of the document. Keeps no number of the sketch: what it needs it reads from
// SketchDocument::result() or from the figure.
#pragma once

#include "core/construct/figure_part.h"
#include "core/figure/compose.h"
#include "ui/style/theme.h"

#include <QWidget>
#include <memory>

namespace tailpoint {

enum class Entry;
class OwnAnswer;
class SketchDocument;
enum class UnitOf;

/// Object name "canvas". Vectors are named by their index into the sketch's forces, kSumIndex for the sum and
/// kNoVector for none.
class Canvas : public QWidget {
    Q_OBJECT
public:
    explicit Canvas(SketchDocument& document, QWidget* parent = nullptr);
    ~Canvas() override;

    ConstructionKind construction() const;
    bool otherOrder() const;
    ConstructionKind drawnConstruction() const; ///< what the sketch makes of what was asked for
    bool parallelMarks() const;
    bool shadesTips() const;
    bool snapping() const;
    ThemeName theme() const;
    int selected() const;

    /// The view in points; the sheet is as large as the widget, a point is logicalDpi / 72 logical pixels.
    const View& view() const;
    double pixelsPerPoint() const;
    /// What is drawn at this moment; composed now if something changed since the last frame.
    const Figure& figure() const;
    /// How the figure is composed, for an export of what is seen.
    FigureOptions figureOptions() const;

    /// Opens a small field over the label and selects its text. `vector` must be in the sketch.
    void editMagnitude(int vector);
    void editDirection(int vector);
    void rename(int vector);
    /// The same in the title block.
    void editTitle();
    void editReference();
    void editFigures();

    /// The one way of changing a vector without a pointer: keys and assistive technology take it. What is to
    /// be found stays, and hint() says why. Steps close in time are one undo step. `way` +1 is larger, or
    /// counter-clockwise as seen; `fine` is one shown digit.
    void nudgeMagnitude(int vector, int way, bool fine = false);
    void nudgeDirection(int vector, int way, bool fine = false);
    /// Puts the label of a vector, or of its direction, elsewhere: so many points to the right and up.
    bool nudgeLabel(int vector, bool ofDirection, QPointF by);
    void freeLabels(int vector); ///< both find their own places again
    /// Sets a given quantity to the shown digits: sheet's force unit; its angle unit, from its axis in its
    /// sense.
    bool setMagnitude(int vector, double magnitude);
    bool setDirection(int vector, double referred);
    /// Makes a quantity one to find, or a given one with the value that was found. Where it can't, or where
    /// a value is set that is not given, hint() says so. True: it is as asked for.
    bool setToFind(int vector, tailpoint::Entry quantity, bool toFind);

    SketchDocument& document() const;
    /// What the learner draws for his own answer of it, "340 N at 25.0°"; empty where nothing is.
    QString ownDrawn(int vector) const;
    /// Where a vector stands, in the widget's pixels; empty where it isn't drawn.
    QRect vectorRect(int vector) const;

    bool isGliding() const;   ///< labels are on their way to where they belong
    bool isRevealing() const; ///< new parts are drawing themselves
    bool isDragging() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

public slots:
    void setConstruction(tailpoint::ConstructionKind kind);
    void setOtherOrder(bool other);
    void setParallelMarks(bool on);    ///< on the sides of the parallelogram
    void setShadesTips(bool on);       ///< where the tips of found vectors can lie
    void layCasesOver(bool on);        ///< the sketch's other cases, thin behind the one that is shown
    void setByParallelograms(bool on); ///< of several forces: two at a time instead of a polygon
    void setSnapping(bool on);
    void setTheme(tailpoint::ThemeName name);
    /// On a stage the figure is shown as it is told, and a hand may drag what is given, and nothing else: no
    /// keys, no typing, no menus, no zoom. Every other press is a click.
    void setStaged(bool on);
    bool isStaged() const;
    /// The figure on a stage; with `moves` its new parts draw themselves. The answer drawn is the document's.
    void setFigure(const tailpoint::FigureOptions& options, bool moves);
    /// What is given can't be dragged or moved by arrow keys, nor a force drawn beside it; the hint line says
    /// so.
    void setGivensStill(bool on);
    void setAnimated(bool on); ///< labels glide to their places at the end of a drag; on by default

    /// A new axis typed into the title block leaves the forces where they are and says their angles anew (the
    /// default), or keeps the numbers.
    void setKeepsForces(bool keeps);

    /// While it is under way the sheet shows the question alone and a tip to drag for what is sought, and
    /// afterwards what it showed before. Kept alive by the caller.
    void setOwnAnswer(tailpoint::OwnAnswer& answer);

    void fit();
    void zoomIn();
    void zoomOut();

    /// A drag's last move, which else waits for the next frame.
    void catchUp();

    void addForce();        ///< one more force in a free direction, selected
    void removeSelected();  ///< nothing where no force is selected
    void takeOtherAnswer(); ///< where there are two

    void select(int vector);
    void highlight(int vector); ///< lights a vector without selecting it, as the panel's pointer does
    /// Lights what a step of the solution speaks of; empty: nothing.
    void lightParts(const std::vector<tailpoint::FigurePart>& parts);

signals:
    void selectionChanged(int vector);
    void
    pointerReadout(const QString& text); ///< the pointer's place as a force, "212 N at 61.3°"; empty outside
    /// The pointer stands on an arrow, an angle, a side or a locus; empty: on none. Not during a drag.
    void partPointed(const std::optional<tailpoint::FigurePart>& part);
    /// One line of what to do, or why something can't be done; `rich` has the names in it as symbols.
    void hint(const QString& text, const QString& rich);
    /// The same where it answers a key, a command or a typed value rather than tells of the pointer.
    void answered(const QString& text);
    void constructionChanged();              ///< kind or order
    void divisionChanged(double forceUnits); ///< what one division of the sheet stands for
    void clicked();                          ///< on a stage: pressed and released without a drag
    void snappingChanged(bool on);
    void unitAsked(tailpoint::UnitOf of, QPoint at); ///< a unit was clicked; `at` on the screen

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace tailpoint
