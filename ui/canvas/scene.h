// What the canvas shows at this moment: the document's result seen through a view, composed once per change.
#pragma once

#include "core/figure/compose.h"
#include "ui/canvas/sheet_view.h"
#include "ui/document/sketch_document.h"
#include "ui/render/render.h"

namespace tailpoint {

class Scene {
public:
    explicit Scene(SketchDocument& document) : m_document(document) {}

    SketchDocument& document() const { return m_document; }
    const Result& result() const { return m_document.result(); }
    const Sketch& sketch() const { return m_document.sketch(); }

    const SheetView& sheet() const { return m_sheet; }
    const TextMeasure& measure() const { return m_measure; }
    FigureOptions options() const;
    const Figure& figure() const;
    /// Something changed: the next figure() composes anew.
    void touch() { m_stale = true; }

    /// A parallelogram where two forces have one, or several have one after the other and that is wanted.
    ConstructionKind drawnConstruction() const;
    void setConstruction(ConstructionKind kind);
    void setOtherOrder(bool other);
    void setByParallelograms(bool on);
    void setParallelMarks(bool on);
    void setHighlighted(int vector);
    /// All of it but the answer, which is the document's; the view stays.
    void setOptions(const FigureOptions& options) {
        m_options = options;
        touch();
    }
    /// While steady, labels keep the side they are on if they can.
    void setSteady(bool steady) { m_steady = steady; }

    void resize(QSizeF pixels, double pixelsPerPoint);
    void zoomAbout(QPointF pixel, double factor);
    void panBy(QPointF pixels);
    void fit();
    /// A triangle that stands alone comes closer where that makes it much larger; what follows goes back.
    void frame();
    /// After a change that no hand on the sheet made: fits anew if the view was fitted and the figure has
    /// left the sheet or become small on it.
    void keepInSheet();

private:
    void fitAgain(); ///< another construction, another place for it; a view that somebody chose stays
    View fitted() const;
    bool leavesSheet() const;

    SketchDocument& m_document;
    SheetView m_sheet;
    QtTextMeasure m_measure;
    FigureOptions m_options;
    bool m_steady = false;
    bool m_close = false; ///< to a triangle that stands alone
    bool m_fitted = true; ///< nobody zoomed or panned since the last fit
    mutable bool m_stale = true;
    mutable Figure m_figure;
};

} // namespace tailpoint
