// SPDX-License-Identifier: MIT
// What tolerances and limits put on a figure: ranges beside what was found, verdicts beside what is limited,
// the regions in which tips can lie, the sectors that are permitted.
#pragma once

#include "core/figure/display_list.h"
#include "core/solve/tolerance.h"

#include <string>
#include <vector>

namespace tailpoint {

struct Drawing;       // core/figure/drawing.h
struct FigureOptions; // core/figure/compose.h

/// What is known of a sketch's tolerances, from core/solve/tolerance.h.
struct Tolerated {
    tolerance::Ranges ranges;                  ///< by answer; empty: not known
    std::vector<tolerance::TipRegion> regions; ///< of the answer that is drawn; empty: none is to be drawn
};

/// What stands beside something found: "508 to 532 N", "within 500 to 540 N" of an outer bound, "range not
/// known". Empty: it was given, or no tolerance moves it.
struct RangesSaid {
    std::string magnitude, direction;
};

/// Of the answer with this number. A direction as the sheet says it.
RangesSaid rangesSaid(const Sketch& sketch, const Solved& solved, std::size_t answer,
                      const Tolerated* tolerated, int index);

/// A direction at its arc: the size alone ("40.0°", "39.1° to 41.2°") where the arc's sense says the sign of
/// all of it, else both with their signs.
struct DirectionSaid {
    std::string value, range;
};
DirectionSaid directionSaid(const Drawing& drawing, int index, double referred);

/// Lines below a label's first: the unit of its own in which a magnitude was stated, the range of a found
/// one, and in bold a limit that is passed and a direction that is not permitted. `other`: of the other of
/// two answers.
std::vector<Run> linesBelow(const Drawing& drawing, int index, bool other);
/// A line below another, set as small as those are.
Run lowerLine(std::string text, int line, bool bold = false);
/// Does one of them tell of a limit that is passed?
bool warns(const std::vector<Run>& lines);

/// What is shaded, and what has no range: for the sheet's foot. Empty where nothing has a tolerance.
std::vector<Run> toleranceLegend(const Sketch& sketch, const Solved& solved, const FigureOptions& options);

} // namespace tailpoint
