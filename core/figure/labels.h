// SPDX-License-Identifier: MIT
// Where labels stand. A label is put only where it touches no stroke, no other label and not the sheet's
// edge. Where its full text finds no such place beside its feature, the rule is, in this order: the full text
// at the end of a leader; the abbreviation (the name alone) beside its feature; the abbreviation at a leader;
// a key letter in the same way. No leader crosses another force than its own, but for a letter's that has no
// other way. What an abbreviation or a letter stands for is told in the key, a small table. To be read in
// this order: place.h, label_candidates, label_evaluation, label_search, the passes in labels.cpp.
// Of a crowd of forces nobody could read the names at any scale that shows them all: see kMostLabelled.
#pragma once

#include "core/figure/compose.h"
#include "core/figure/label_candidates.h"
#include "core/figure/obstacles.h"

#include <optional>
#include <span>

namespace tailpoint {

/// Beyond these numbers of forces the arcs of their directions, the names along their chain and their own
/// names are left out. Every stroke stays, the sum and the loci keep their names, and the note at the sheet's
/// foot says how many forces are not named.
inline constexpr std::size_t kMostAxisArcs = 6, kMostChainNames = 8, kMostLabelled = 40;

struct LabelRequest {
    std::size_t group = 0;            ///< index into DisplayList::groups
    std::optional<FigurePart> part{}; ///< what the full text says
    std::string id;
    Feature anchor;
    Role ink = Role::label;
    double size = 12;
    std::vector<Run> full,
        abbreviation;      ///< abbreviation: what is left when the full text has no room; may be empty
    bool optional = false; ///< left out rather than led by a leader
    Point home{};          ///< middle of what it belongs to
    std::optional<Point> pinned{}; ///< its middle, put there by hand: where the sheet and other texts let it
};

struct Placed {
    Text text;
    std::optional<Path> leader;
    LabelPlace place;
    std::optional<char> letter{}; ///< what stands there instead of the text; the key tells what it means
    double cost = 0;
    bool isAbbreviated() const { return place.text != LabelText::full; }
};

/// Places the labels; an empty entry found no place. Deterministic: a function of its arguments alone. A
/// label in `previous` keeps its place as long as that is free, and takes its turn before the others; if it
/// must move it goes as near as it can.
std::vector<std::optional<Placed>> placeLabels(const std::vector<LabelRequest>& requests,
                                               Obstacles& obstacles, const TextMeasure& measure,
                                               const Placement& previous, double factor);

/// Middle of what a label belongs to: of a shaft or an arc, a point itself.
Point homeOf(const Feature& anchor);

/// Cuts what a label belongs to down to the part that is seen on the sheet and beside `covers`
/// (title block, note). False: next to nothing is seen, and there is no label.
bool keepSeen(Feature& anchor, const Box& sheet, std::span<const Box> covers, double factor);

/// A text whose measured box has its middle here.
Text textAround(Point middle, const std::vector<Run>& runs, Role ink, double size, const Extent& extent);

} // namespace tailpoint
