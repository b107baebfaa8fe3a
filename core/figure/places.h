// Where a label could stand: places as continuous functions of what it belongs to, each with what it costs.
// A place keeps its number while the geometry moves, so that a label can be held to it.
#pragma once

#include "core/figure/geometry.h"

#include <variant>
#include <vector>

namespace tailpoint {

/// Beside an arrow or a side.
struct Shaft {
    Point tail, tip;
    double side = 1; ///< preferred: +1 left as seen from tail to tip, -1 right
};
/// A stroke through a corner, inside the sector. `ray` tells it from the others while they move.
struct Split {
    double degrees = 0;
    int ray = 0; ///< 1 or more
};
/// At an arc; `splits` in the order of the sweep.
struct Sector {
    Point centre;
    double radius = 0, startDegrees = 0, sweepDegrees = 0;
    std::vector<Split> splits{};
    bool within = false; ///< rather between corner and arc than beyond the arc
};
/// Around a point.
struct Spot {
    Point at;
    double clearance = 0;
};
/// At the end of a line that has a name.
struct LineEnd {
    Point from, to;
};
using Anchoring = std::variant<Shaft, Sector, Spot, LineEnd>;

struct Place {
    Point middle;
    int number = 0;  ///< the same while the geometry moves
    double cost = 0; ///< 0 is best; about 1 for each step that a person would call worse
};

struct Extent {
    double width = 0, height = 0, ascent = 0;
};

/// `gap`: wanted distance between the text and its stroke, points.
void listPlaces(std::vector<Place>& places, const Anchoring& anchor, const Extent& text, double gap);

/// Where a leader may take hold, and the way that leads out of the drawing there (zero where none does).
struct Grip {
    Point at, outward;
};
void listGrips(std::vector<Grip>& grips, const Anchoring& anchor); ///< best first

/// Least distance from the corner, along the bisector, at which the text lies between two rays `half` degrees
/// to either side of it; 0 for half turns and more.
double wedgeDistance(double bisectorDegrees, double half, const Extent& text, double air);
/// Greatest distance at which the whole text lies inside a circle about the corner; negative where it can't.
double insideDistance(double bisectorDegrees, double radius, const Extent& text);

} // namespace tailpoint
