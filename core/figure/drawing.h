// The figure while it is being drawn: what every part of it reads, and the groups and labels collected so
// far.
#pragma once

#include "core/figure/labels.h"
#include "core/figure/strokes.h"
#include "core/figure/words.h"

namespace tailpoint {

struct Drawing {
    const Sketch& sketch;
    const Solved& solved;
    const Construction& construction;
    const View& view;
    const FigureOptions& options;
    const TextMeasure& measure;
    Vectors vectors;
    int stage;
    double factor;
    Figure figure{};
    std::vector<LabelRequest> labels{};

    Drawing(const Sketch& sketch_, const Solved& solved_, const Construction& construction_,
            const View& view_, const FigureOptions& options_, const TextMeasure& measure_);

    Group& add(Role role, std::string id, std::string title, int vector = kNoVector);
    /// Asks for a label on the group added last.
    void ask(Anchoring anchor, Role ink, double size, std::vector<Run> full, std::vector<Run> brief = {},
             bool optional = false);

    bool answered() const { return options.solution < solved.solutions.size(); }
    bool shows(int from) const { return stage >= from; }
    /// Is this vector drawn as an arrow at the present stage?
    bool isDrawn(const PlainVector& vector) const;
    /// Direction as the sheet says it, of a force or the sum.
    std::optional<double> referred(int index) const;
    std::string idOfVector(int index) const;
    Point common() const { return view.origin; }
    double weight(double points) const { return points * factor; }
    ConstructionKind kind() const; ///< the construction that can be drawn
};

// Parts of the figure, in painting order.
void drawSheet(Drawing& drawing);
void drawAxis(Drawing& drawing);
void drawHighlight(Drawing& drawing);
void drawLoci(Drawing& drawing);
void drawConstruction(Drawing& drawing);
void drawAngles(Drawing& drawing);
void drawOtherAnswer(Drawing& drawing);
void drawVectors(Drawing& drawing);
void drawPoint(Drawing& drawing);
void drawNote(Drawing& drawing);
void drawTitleBlock(Drawing& drawing);

/// Extent of the title block for a sheet of this width; needs the measured title. Right bottom corner.
struct BlockSize {
    double width, height, cells[3];
};
BlockSize titleBlockSize(const Sketch& sketch, double division, double sheetWidth, double factor,
                         const TextMeasure* measure);
Box titleBlockBox(const BlockSize& size, double sheetWidth, double sheetHeight, double factor);

/// Where the vector is drawn: tail and tip on the sheet (tip-to-tail constructions move it).
struct Ends {
    Point tail, tip;
};
Ends endsOf(const Drawing& drawing, int index);

} // namespace tailpoint
