// SPDX-License-Identifier: MIT
// The figure while it is being drawn: what every part of it reads, and the groups and labels collected so
// far.
#pragma once

#include "core/construct/pairs.h"
#include "core/figure/compose.h"
#include "core/figure/labels.h"
#include "core/figure/strokes.h"
#include "core/figure/words.h"

#include <algorithm>
#include <functional>

namespace tailpoint {

/// Tail and tip on the sheet.
struct Ends {
    Point tail, tip;
};

/// From the common point.
struct Ray {
    double degrees = 0, length = 0; ///< as drawn, points
};

/// How large title block and note are set, points by the figure's factor.
struct FootSizes {
    double block = 9.5, pad = 7;      ///< letters of the title block, and the room around them
    double note = 10, leading = 1.45; ///< letters of the note, and its lines by them
    double under = 14;                ///< from the note's last line to the sheet's foot
};
/// Where the note stands: beside the title block, or above it where that leaves too little.
struct Note {
    std::vector<Runs> lines;
    double size = 0, leading = 0; ///< leading: from one baseline to the next, points
    double width = 0;             ///< that it may take
    double bottom = 0;            ///< baseline of the last line
    double top() const { return bottom - leading * static_cast<double>(lines.size()) + 0.25 * size; }
};
/// What a sheet has at its foot. No title block on a sheet that is too small for it.
struct Foot {
    std::optional<Box> block;
    FootSizes sizes;
    Note note;
};
inline const Placement kNoPlacement{};

struct Drawing {
    const Sketch& sketch;
    const std::optional<GivenAlone> given; ///< until the answer may be spoken of: `solved` and `construction`
    const Solved& solved;
    const Construction& construction;
    const View& view;
    const FigureOptions& options;
    const TextMeasure& measure;
    const Placement& previous;
    const Style& style;
    DrawnLoci loci;
    Vectors vectors;
    Things things;
    Stage stage;
    double factor;
    Box sheet;
    Figure figure{};
    std::vector<LabelRequest> labels{};
    Foot foot{};
    std::vector<Box> reserved{}; ///< title block and note: long lines stop before them
    /// Would a stroke run under title block or note?
    bool runsUnder(Point a, Point b) const;
    bool runsUnder(const ArcShape& arc) const;
    double innerReach = 0; ///< how far the angle at the common point and its value take room, points
    std::vector<Parallelogram> pairs{};   ///< two at a time, where that is what is drawn
    const Tolerated* tolerated = nullptr; ///< null as well until the answer may be spoken of
    std::vector<Ray> rays{};              ///< the strokes from the common point

    Drawing(const Sketch& sketch_, const Solved& solved_, const Construction& construction_,
            const View& view_, const FigureOptions& options_, const TextMeasure& measure_,
            const Placement& previous_ = kNoPlacement);
    Drawing(const Drawing&) = delete; // refers to itself
    Drawing& operator=(const Drawing&) = delete;

    /// `title` is read out: see spoken().
    Group& add(Role role, std::string id, Title title, std::optional<FigurePart> part = std::nullopt);
    /// Asks for a label on the group added last.
    LabelRequest& ask(Feature anchor, Role ink, double size, Runs full, Runs abbreviation = {});

    /// Puts a label where it was put by hand.
    void pin(LabelRequest& request, const std::optional<LabelPin>& at) const {
        if (at)
            request.pinned = request.home + factor * Point{at->right, -at->up};
    }
    const Force& forceAt(int index) const {
        return index == kSumIndex ? sketch.sum : sketch.forces[static_cast<std::size_t>(index)];
    }

    /// How a vector's name stands on the sheet.
    Runs nameRuns(std::string_view name) const { return symbolRuns(things.symbolNamed(name)); }
    Runs valueRuns(std::string_view name, std::string_view value) const {
        return tailpoint::valueRuns(things.symbolNamed(name), value);
    }

    bool answered() const { return options.solution < solved.solutions.size(); }
    bool shows(Stage from) const { return stage >= from; }
    bool showsOther(Stage from) const { return shows(from) && options.otherStage >= from; }
    /// Is this vector drawn as an arrow at the present stage?
    bool isDrawn(const PlainVector& vector) const;
    /// The same for a vector of the sketch; a triangle that stands alone leaves out what is no side of it.
    bool isDrawn(int index) const;
    /// Stands for its vector by its given direction alone: the magnitude is sought.
    bool isLine(int index) const;
    /// Both, at the common point.
    bool hasRay(int index) const { return isDrawn(index) || isLine(index); }
    /// From the common point to the tip of a vector, or along a line of action as far as it is drawn, points.
    double lengthOf(int index) const;
    /// A line of action where it stands for its vector: from the common point in the given sense, and past it
    /// in the other where the sense is open.
    Ends lineOf(int index) const;
    /// Direction as the sheet says it, of a force or the sum; a given one as it was given.
    std::optional<double> referred(int index) const;
    /// The successive parallelograms that are drawn: [first, last), indices into `pairs`.
    std::array<std::size_t, 2> drawnPairs() const;
    std::string idOfVector(int index) const;
    /// May its value stand on the sheet? `quantity` without the number of an answer.
    bool isRevealed(const QuantityId& quantity, bool otherAnswer = false) const;
    Point common() const { return view.origin; }
    double weight(double points) const { return std::max(points * factor, style.leastStroke); }
    double sizeOf(Face face, double points) const {
        return std::max(points * factor, face == Face::serif ? style.leastSerif : style.leastSans);
    }
    /// Symbol of an angle; null where it has none.
    const AngleName* nameOf(const QuantityId& angle) const;
    /// Subscripts no smaller than the least size, in a text of this size.
    Runs legible(Runs runs, double size) const;
    double axisDegrees() const { return sketch.reference.axisDegrees; }

    ConstructionKind kind() const; ///< the construction that can be drawn
    /// The force triangle, if it is drawn at this stage.
    const ForceTriangle* triangle() const;
    /// Side of the triangle that is this vector; 3 where none is.
    std::size_t sideOf(int index) const;
    bool isMoved(int index) const; ///< away from the common point
    Ends endsOf(int index) const;
    /// Calls `take(index)` for every force, then for the sum.
    template <class Take>
    void forEachVector(Take take) const {
        for (std::size_t i = 0; i < vectors.forces.size(); ++i)
            take(static_cast<int>(i));
        take(kSumIndex);
    }
    /// Rays from the common point strictly inside a sector that are as long as `radius`: degrees in the order
    /// of its sweep.
    std::vector<double> raysInside(double startDegrees, double sweepDegrees, double radius) const;
};

/// Calls `take(index, vector, ends)` for every arrow of the other of two answers.
void forEachOther(const Drawing& drawing,
                  const std::function<void(int, const PlainVector&, const Ends&)>& take);

// Parts of the figure, in painting order.
void reserveRoom(Drawing& drawing); ///< before everything: title block and note
void drawSheet(Drawing& drawing);
void drawAxis(Drawing& drawing);
void drawHighlight(Drawing& drawing);
void drawRegions(Drawing& drawing);
void drawPermitted(Drawing& drawing);
void drawLoci(Drawing& drawing);
void drawConstruction(Drawing& drawing);
void drawOtherAnswer(Drawing& drawing);
void drawCases(Drawing& drawing);
void drawVectors(Drawing& drawing);
void drawAngles(Drawing& drawing); ///< before the directions: these go outside of them
void drawDirections(Drawing& drawing);
void drawPoints(Drawing& drawing);
void drawNote(Drawing& drawing);
void drawTitleBlock(Drawing& drawing);
/// After the labels, where these left room.
void drawKey(Drawing& drawing, std::vector<Runs> rows, const Obstacles& obstacles);

/// An arc shorter than this is hardly seen, points.
inline constexpr double kLeastSpan = 9;
/// A narrow angle gets a wider arc, so that there is an arc to see.
double widened(double radius, double sweepDegrees, double factor);

/// Direction of a vector as drawn, degrees counter-clockwise from the right.
double degreesOf(const Eigen::Vector2d& vector);

/// With a caution it takes no more than a tenth of the sheet's height, or as little as letters allow that can
/// still be read. Estimated from the lengths of the texts where there is no measure.
Foot footOf(const Sketch& sketch, const Solved& solved, const Construction& construction, const View& view,
            const FigureOptions& options, const TextMeasure* measure);
std::optional<Box> titleBlockBox(const Sketch& sketch, const View& view, const FigureOptions& options,
                                 const FootSizes& sizes, const TextMeasure* measure);

} // namespace tailpoint
