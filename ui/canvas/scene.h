// SPDX-License-Identifier: MIT
// What the canvas shows at this moment: the document's result seen through a view, composed once per change.
#pragma once

#include "core/figure/hold.h"
#include "ui/canvas/drawn.h"
#include "ui/canvas/sheet_view.h"
#include "ui/document/sketch_document.h"
#include "ui/render/render.h"

namespace tailpoint {

class OwnAnswer;      // ui/marking/own_answer.h
struct AttemptStroke; // core/figure/attempt_strokes.h

class Scene {
public:
    explicit Scene(SketchDocument& document) : m_document(document) {}

    SketchDocument& document() const { return m_document; }
    const Result& result() const { return m_document.result(); }
    const Sketch& sketch() const { return m_document.sketch(); }

    /// The learner's own answer while one is under way; null otherwise.
    OwnAnswer* ownAnswer() const;
    void setOwnAnswer(OwnAnswer* answer) { m_ownAnswer = answer; }

    const SheetView& sheet() const { return m_sheet; }
    const TextMeasure& measure() const { return m_measure; }
    FigureOptions options() const;
    const Figure& figure() const;
    /// Found once per change, as the figure is: a frame of a drag asks for them again and again.
    const std::vector<DrawnVector>& drawn() const;
    /// Something changed: the next figure() composes anew.
    void touch() {
        m_stale = true;
        m_drawnOf.reset();
    }

    /// A parallelogram where two forces have one, or several have one after the other and that is wanted.
    ConstructionKind drawnConstruction() const;
    void setConstruction(ConstructionKind kind);
    void setOtherOrder(bool other);
    void setByParallelograms(bool on);
    void setParallelMarks(bool on);
    void setShadesTips(bool on);
    /// Regions of tips that were made while a hand rests, for this result alone.
    void setRestingTips(const Snapshot& of, std::shared_ptr<const Tolerated> tips);
    void setHighlighted(int vector);
    /// The sketch's other cases, thin behind the one that is shown.
    void layCasesOver(bool on);
    bool laysCasesOver() const { return m_laysCasesOver; }
    /// All of it but the answer, which is the document's; the view stays.
    void setOptions(const FigureOptions& options) {
        m_options = options;
        m_told = true;
        touch();
    }
    /// While steady, labels keep the side they are on if they can.
    void setSteady(bool steady) { m_steady = steady; }

    void resize(QSizeF pixels, double pixelsPerPoint);
    void zoomAbout(QPointF pixel, double factor);
    void panBy(QPointF pixels);
    void fit();
    /// The sheet under a drag that has reached its edge: moves, or steps out about the common point.
    void scrollBy(QPointF pixels);
    void stepOut();
    /// A triangle that stands alone comes closer where that makes it much larger; what follows goes back.
    void frame();
    /// After a change that no hand on the sheet made, where nobody chose the view: the scale goes down as far
    /// as the figure needs and the common point stays; where that would waste the sheet, or the figure has
    /// become small on it, it is fitted anew.
    void keepInSheet();

    /// How one looks at the sheet, to come back to.
    struct Look {
        View view;
        int hold = 0;
    };
    Look look() const { return {m_sheet.view(), m_hold}; }
    void restore(const Look& look);
    /// How much of the figure is to be seen: not all, all, all and off the title block.
    enum Shown { partly, all, clear };
    Shown shown() const;
    /// A hand has drawn: from now on the common point stays, and only fit() fits.
    void holdStill();
    /// The scale goes down as far as the figure needs, the common point stays. False, and nothing happens,
    /// where that would make it much smaller.
    bool stepOutToWhole();
    /// Moves the sheet by as little as brings these points (sketch coordinates) onto it.
    void bringIn(const std::vector<Eigen::Vector2d>& points);
    /// The same with the figure's arrows and these strokes; false where nothing moved, as where the strokes
    /// reach so far that the figure would be lost.
    bool bringInDrawing(const std::vector<AttemptStroke>& strokes);

private:
    /// What a change may do to the view: everything after a fit, no fit of its own once a hand has drawn,
    /// nothing once somebody zoomed or panned.
    enum Hold { fittedAlone, drawnOn, chosen };
    Seen seen() const;
    std::vector<CaseArrow> casesNow() const;
    View fitted() const;
    std::vector<Eigen::Vector2d> ownDrawn() const; ///< tips of the learner's own answer
    bool leavesSheet() const;
    void setScale(double scale); ///< the common point stays

    SketchDocument& m_document;
    OwnAnswer* m_ownAnswer = nullptr;
    SheetView m_sheet;
    QtTextMeasure m_measure;
    FigureOptions m_options;
    bool m_steady = false;
    bool m_told = false; ///< by setOptions() which symbols angles have, and how directions stand
    bool m_laysCasesOver = true;
    bool m_close = false; ///< to a triangle that stands alone
    Snapshot m_restingOf;
    std::shared_ptr<const Tolerated> m_restingTips;
    int m_hold = fittedAlone;
    mutable bool m_stale = true;
    mutable Figure m_figure;
    mutable Snapshot m_drawnOf; ///< whose arrows these are; null: nobody's
    mutable std::vector<DrawnVector> m_drawn;
};

} // namespace tailpoint
