// SPDX-License-Identifier: MIT
// Arrows, arcs and marks as items of the display list.
#pragma once

#include "core/figure/compose.h"
#include "core/figure/geometry.h"

namespace tailpoint {

enum class Head {
    filled, ///< slim, notched back: given forces
    open,   ///< outline: the sum
    hollow, ///< the notched head in outline: forces that were found
    small   ///< filled, for construction and arcs
};

/// Head length for a shaft `length` long, `width` wide: at least 3.5 mm and five widths, at most 40 % of the
/// arrow.
double headLength(double length, double width);

/// Shaft and head from `tail` to exactly `tip`. Nothing where they coincide. A short arrow is drawn thinner,
/// but not under `least`: rather its head takes more of it.
void addArrow(std::vector<Item>& items, Role role, Point tail, Point tip, double width, Head head,
              Dash dash = Dash::solid, double least = 0);

/// The head alone, `size` long, its tip exactly at `tip`; no outline is thinner than `least`.
void addHead(std::vector<Item>& items, Role role, Point tip, Point unit, double size, Head head, double width,
             double least = 0);

Path line(Role role, Point a, Point b, double width, Dash dash = Dash::solid);

/// Arc about `centre` from `startDegrees`; with a small head at its end where `head` is wanted and fits.
void addArc(std::vector<Item>& items, Role role, Point centre, double radius, double startDegrees,
            double sweepDegrees, double width, bool head);

/// `count` marks of parallelism, open chevrons along `unit` about `at`.
void addParallelMarks(std::vector<Item>& items, Role role, Point at, Point unit, int count, double size,
                      double width);

/// The square mark of a right angle between two unit vectors.
void addSquare(std::vector<Item>& items, Role role, Point corner, Point u, Point v, double size,
               double width);

} // namespace tailpoint
