// SPDX-License-Identifier: MIT
// Where a label could stand: places as continuous functions of what it belongs to, each with what it costs.
// A label that has to move slides along its rail before it takes another.
//
// The value of an angle stands between the legs of its own angle, and no other arc is nearer to it than its
// own; else it is led to its arc. Led or not, it never stands in another angle's wedge, unless that holds its
// own. The label of an arrow is not nearer to another arrow than to its own; else it is led to it. (While
// dragging, a label may keep its place when another thing comes nearer; but never in another angle's wedge.)
#pragma once

#include "core/figure/geometry.h"
#include "core/figure/place.h"

#include <optional>
#include <variant>
#include <vector>

namespace tailpoint {

/// Beside an arrow or a side.
struct Shaft {
    Point tail, tip;
    double side = 1; ///< preferred: +1 left as seen from tail to tip, -1 right
};
/// At an arc. `splits`: strokes through its centre and inside of it, degrees in the order of the sweep.
struct Sector {
    Point centre;
    double radius = 0, startDegrees = 0, sweepDegrees = 0;
    std::vector<double> splits{};
    bool within = false; ///< rather between corner and arc than beyond the arc
    bool angle = true;   ///< false: no angle but a circle that has a name
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
using Feature = std::variant<Shaft, Sector, Spot, LineEnd>;

struct Candidate {
    Point middle;
    Place place;
    double cost = 0; ///< 0 is best; about 1 for each step that a person would call worse
};

struct Extent {
    double width = 0, height = 0, ascent = 0;
};

/// Best first. `gap`: wanted distance between the text and its stroke, points.
void listPlaces(std::vector<Candidate>& places, const Feature& anchor, const Extent& text, double gap);
/// Only those that are best if they are free; the others cost no less than what is returned.
double listFirstPlaces(std::vector<Candidate>& places, const Feature& anchor, const Extent& text, double gap);
/// That place as the geometry is now; empty where there is none.
std::optional<Point> placeOf(const Feature& anchor, const Extent& text, double gap, const Place& place);
/// Where a label can slide to from there, nearest first; their cost is not told.
void listSlides(std::vector<Candidate>& places, const Feature& anchor, const Extent& text, double gap,
                const Place& place);

/// Where a leader may take hold, and the way that leads out of the drawing there (zero where none does).
struct LeaderAnchor {
    Point at, outward;
};
void listLeaderAnchors(std::vector<LeaderAnchor>& grips, const Feature& anchor); ///< best first

/// Least distance from the corner, along the bisector, at which the text lies between two rays `half` degrees
/// to either side of it; 0 for half turns and more.
double wedgeDistance(double bisectorDegrees, double half, const Extent& text, double air);
/// Greatest distance in direction `unit` at which the whole text lies inside a circle about the corner;
/// negative where it can't.
double insideDistance(Point unit, double radius, const Extent& text);

/// Does the whole box stand between the legs of the angle?
bool standsBetweenLegs(const Box& box, const Sector& sector);
/// How far the box is from the arc, points; 0 where it touches.
double gapToArc(const Box& box, const Sector& sector);

} // namespace tailpoint
