// SPDX-License-Identifier: MIT
// Composes the whole figure: Sketch + Solved + Construction + View -> DisplayList.
#pragma once

#include "core/construct/construct.h"
#include "core/construct/figure_part.h"
#include "core/construct/stage.h"
#include "core/figure/display_list.h"
#include "core/figure/place.h"
#include "core/figure/view.h"
#include "core/sketch/things.h"

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace tailpoint {

/// A construction that the sketch doesn't allow (a parallelogram of five forces) gives way to the polygon.
enum class ConstructionKind { none, parallelogram, triangle, polygon };

/// What is drawn where `asked` was asked for: a polygon where there is no parallelogram or no one triangle.
ConstructionKind drawnKind(ConstructionKind asked, const Construction& construction);

/// Sizes in points; a lecture view or a small figure scales them together.
struct Style {
    double factor = 1; ///< multiplies every weight and size below
    double givenWidth = 2.0, sumWidth = 2.8, constructionWidth = 1.0, arcWidth = 0.85, axisWidth = 0.85,
           gridWidth = 0.5, locusWidth = 0.9;
    double labelSize = 14, angleSize = 11.5;
    /// No text is set smaller than this, whatever `factor` says, points: for the last row of a room.
    double leastSerif = 0, leastSans = 0;
    double leastStroke = 0; ///< the same for strokes, the grid apart
    double leastArrow = 0;  ///< the same for the shafts of forces and sum
};

struct Tolerated; // core/figure/tolerated.h

inline constexpr int kNoPairs = -1, kAllPairs = 0;

/// A vector as other states of the sketch have it (core/figure/case_arrows.h), drawn thin behind the figure.
struct CaseArrow {
    VectorId of;
    Eigen::Vector2d vector{0, 0}; ///< sheet's force unit, from the common point
    std::string names;            ///< of the states, as they stand at its tip: "calm, breeze"
    bool operator==(const CaseArrow&) const = default;
};

struct FigureOptions {
    ConstructionKind construction = ConstructionKind::parallelogram;
    bool otherOrder =
        false;           ///< the triangle begins with the other force: the other half of the parallelogram
    int pair = kNoPairs; ///< a parallelogram of several forces: two at a time, the nth of pairsOf() alone
    bool parallelMarks = false; ///< on the sides of a parallelogram: one on the first pair, two on the
                                ///< second; not where several parallelograms stand at once
    bool alone = false;         ///< the force triangle without anything that is no part of it
    bool grid = true, titleBlock = true, angles = true, values = true;
    bool interior = true; ///< angles between the strokes; false: only those from the axis
    bool note = true;     ///< at the sheet's foot, in words: what the answer is, or why there is none, from
                          ///< the stage on at which it is found
    bool caution = true;  ///< with the note, whatever else is asked for; false: it is told beside the figure
    Stage stage = Stage::all;
    Stage otherStage = Stage::all; ///< of the other of two answers no more is drawn than this and `stage`
    /// Quantities whose values are not to be read yet: the stroke stays. An id with the number of an answer
    /// counts for that answer alone. A direction's arc from the axis keeps its value: that comes by its
    /// stage.
    std::vector<QuantityId> hidden{};
    /// Symbols of angles; the last for an angle counts. An angle with a symbol is drawn as soon as both its
    /// sides are seen, its value stands beside the symbol from its stage on.
    std::vector<AngleName> names{};
    bool onlyNamed = false; ///< of the interior angles those with a symbol
    bool axisAngles = true; ///< the angles of the vectors from the axis
    bool asGiven = false;   ///< slopes and bearings as they are given, not as angles from the axis
    bool bearings = false;  ///< bearings from north or south, as they are given; slopes from the axis too
    /// What tolerances make of the answers. Null where the sketch has some: then the ranges of what was found
    /// read 'range not known'.
    std::shared_ptr<const Tolerated> tolerated{};
    bool regions = true;            ///< the regions in which found tips can lie are shaded
    bool legend = true;             ///< with the note, and without it: what is shaded
    std::vector<CaseArrow> cases{}; ///< drawn with what is found
    int highlighted = kNoVector;    ///< vector under the pointer or selected
    std::size_t solution = 0;       ///< which of two answers is drawn solid
    Style style;
};

/// Whether the answer may be spoken of. Where it may not, a figure is made from the sketch alone, whatever is
/// known of its answer; the view is the caller's.
inline bool tellsAnswer(const FigureOptions& options) {
    return options.stage >= Stage::found;
}

struct Figure {
    DisplayList list;
    Placement placement;
    std::map<std::string, Point>
        homes; ///< by label's id: the middle of what it belongs to; pins count from it
};

/// Loci and their meetings where a figure has them. In a polygon they start where the known forces end, so
/// that they meet at its corner; in a triangle that is asked for in the other order they go with their forces
/// to its other end. Else as the construction has them, from the common point.
struct DrawnLoci {
    std::vector<Locus> loci;
    std::vector<Eigen::Vector2d> meetings;
    bool changed = false; ///< their forces have changed places
};
DrawnLoci drawnLoci(const Solved& solved, const Construction& construction, const FigureOptions& options);

Figure compose(const Sketch& sketch, const Solved& solved, const Construction& construction, const View& view,
               const FigureOptions& options, const TextMeasure& measure, const Placement& previous = {});

/// The symbols of the angles that follow from given directions, as the figure has them by a stage.
std::vector<AngleName> namesOfGiven(const Sketch& sketch, Stage stage);
/// Those of one answer, the same letters as in its worked solution by either method: the triangle's angles,
/// the angle between the tails of two forces, and where several are added two at a time those of each
/// parallelogram. None without an answer, where the triangle is flat, or where a force
/// closes the polygon of many. Of three forces in equilibrium whose
/// magnitudes are sought none: their solution names the three angles between the tails. Well below 1 us.
std::vector<AngleName> namesOfAnswer(const Sketch& sketch, const Things& things, const Solved& solved,
                                     const Construction& construction, std::size_t solution,
                                     bool byParallelograms = false);

/// A view that shows the whole construction with room for labels and title block on a sheet of this size
/// (points). Without a measure the lengths of title block and note are estimated.
View fittedView(const Sketch& sketch, const Solved& solved, const Construction& construction,
                const FigureOptions& options, double width, double height,
                const TextMeasure* measure = nullptr);

} // namespace tailpoint
