// SPDX-License-Identifier: MIT
// The angle between the tails, interior angles, and the square of the smallest force.
#include "core/construct/reduction.h"
#include "core/figure/corner.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

bool asksForSmallest(const Drawing& d) {
    return d.solved.family == Family::smallestForce || d.solved.family == Family::smallestSum;
}

/// The sum ends at this corner.
std::vector<double> splitBy(const Corner& corner, double degrees) {
    const double sense = corner.sweep < 0 ? -1 : 1, turn = turned(sense * (degrees - corner.start));
    if (turn > 0.2 && turn < std::abs(corner.sweep) - 0.2)
        return {corner.start + sense * turn};
    return {};
}

Stage stageOfCorner(const Drawing& d, std::size_t corner) {
    const auto& f = d.vectors.forces;
    const Stage from = corner == 0 ? Stage::between : Stage::interior;
    const bool directionsGiven = !f[0].foundDirection && !f[1].foundDirection;
    const bool given = !f[0].found() && !f[1].found();
    if (given)
        return from;
    if (directionsGiven && corner == 0)
        return Stage::found; // nothing to draw the arc at before
    return directionsGiven ? Stage::found : Stage::triangle;
}

/// Between the sides that meet at corner i. Precondition: it has an angle.
Corner cornerOf(const Drawing& d, const Parallelogram& p, std::size_t i) {
    return cornerBetween(d, p.corners[i], p.corners[(i + 3) % 4], p.corners[(i + 1) % 4], *p.interior[i]);
}

/// The half of the parallelogram that is kept begins with the greater force.
std::size_t firstOfHalf(const Drawing& d) {
    return d.vectors.forces[1].magnitude > d.vectors.forces[0].magnitude ? 1 : 0;
}

/// The angle between a force and the sum lies opposite to the other force. Where the angle between the tails
/// has a symbol of its own, the triangle is the half that is kept: its first force meets the sum at the
/// common point, its second at the sum's tip. Else both are angles at the common point.
struct Half {
    const AngleName* name = nullptr;
    bool atTip = false;
};

Half halfOf(const Drawing& d, std::size_t force) {
    if (!d.isDrawn(static_cast<int>(force)) || !d.isDrawn(kSumIndex))
        return {};
    const bool apart = d.nameOf(betweenId(forceVector(0), forceVector(1))) != nullptr;
    if (apart && d.kind() != ConstructionKind::parallelogram)
        return {};
    return {d.nameOf(oppositeId(forceVector(1 - force))), apart && force != firstOfHalf(d)};
}

void drawHalf(Drawing& d, std::size_t force) {
    const Half half = halfOf(d, force);
    if (!half.name)
        return;
    const PlainVector &side = d.vectors.forces[force], &sum = d.vectors.sum;
    const double radians = std::abs(
        std::atan2(side.unit.x() * sum.unit.y() - side.unit.y() * sum.unit.x(), side.unit.dot(sum.unit)));
    const Eigen::Vector2d tip = sum.vector, none(0, 0);
    Corner corner = half.atTip ? cornerBetween(d, tip, tip - side.vector, none, radians)
                               : cornerBetween(d, none, side.vector, tip, radians);
    corner.angle = half.name->angle;
    const std::string& opposite = d.vectors.forces[1 - force].name;
    corner.id = idOf("opposite", opposite);
    corner.title = {"Angle opposite to " + opposite, shownAngleFromRadians(radians, d.sketch)};
    corner.name = half.name;
    corner.isDue = d.shows(side.foundDirection || sum.foundDirection ? Stage::triangle : Stage::found);
    addCorner(d, corner,
              half.atTip ? std::vector<double>()
                         : d.raysInside(corner.start, corner.sweep, kRaysAt * d.factor));
}

void drawParallelogramAngles(Drawing& d) {
    const Parallelogram& p = *d.construction.parallelogram;
    if (p.shape != Shape::proper)
        return;
    for (const std::size_t force : {0U, 1U})
        drawHalf(d, force);
    const Half halves[]{halfOf(d, 0), halfOf(d, 1)};
    const bool inHalves = halves[0].name && halves[1].name, tipTaken = halves[0].atTip || halves[1].atTip;
    const bool whole = d.kind() == ConstructionKind::parallelogram && d.shows(Stage::construction);
    for (std::size_t i = 0; i < 4; ++i) {
        const QuantityId angle =
            i % 2 == 0 ? betweenId(forceVector(0), forceVector(1)) : oppositeId(kSumVector);
        const AngleName* name = d.nameOf(angle);
        const bool due = d.shows(stageOfCorner(d, i));
        const bool seen = due || (name && d.isDrawn(0) && d.isDrawn(1));
        if (!p.interior[i] || !seen || (i > 0 && !whole) || (inHalves && !name) || (i == 2 && tipTaken))
            continue;
        Corner corner = cornerOf(d, p, i);
        corner.angle = angle;
        corner.id = i == 0 ? "angle-tails" : "angle-" + std::to_string(i);
        corner.title = {i == 0 ? "Angle between the tails" : "Interior angle",
                        shownAngleFromRadians(*p.interior[i], d.sketch)};
        corner.doubled = i % 2 == 1;
        corner.name = name;
        corner.isDue = due;
        corner.isCopy = name && i > 1;
        corner.isRepeated = !name && i > 1;
        corner.beyondAxisArcs = name && i == 0 && d.options.axisAngles && !d.isDrawn(kSumIndex);
        std::vector<double> splits;
        if (i == 0)
            splits = d.raysInside(corner.start, corner.sweep, kRaysAt * d.factor);
        else if (i == 2 && d.isDrawn(kSumIndex))
            splits = splitBy(corner, degreesOf(d.vectors.sum.unit) + 180);
        addCorner(d, corner, std::move(splits));
    }
}

/// Of the nth parallelogram, from 1: between the sum so far and the next force.
QuantityId tailsOfPair(std::size_t n) {
    return betweenId(n == 1 ? forceVector(0) : partialVector(n - 1), forceVector(n), n);
}

/// Its supplement, opposite to what becomes of both.
QuantityId innerOfPair(const Drawing& d, std::size_t n) {
    return oppositeId(n == d.pairs.size() ? kSumVector : partialVector(n), n);
}

/// Of one parallelogram among several: where the tails meet, and its supplement at the first tip.
void drawPairAngles(Drawing& d) {
    const auto [first, last] = d.drawnPairs();
    if (last != first + 1 || !d.shows(Stage::construction))
        return; // of several at once the angles would hide the figure
    const Parallelogram& p = d.pairs[first];
    for (const std::size_t i : {0U, 1U}) {
        if (!p.interior[i])
            continue;
        Corner corner = cornerOf(d, p, i);
        corner.id = i == 0 ? "pair-tails" : "pair-inner";
        corner.title = {i == 0 ? "Angle between the tails of " + p.first + " and " + p.second
                               : "Interior angle",
                        shownAngleFromRadians(*p.interior[i], d.sketch)};
        corner.angle = i == 0 ? tailsOfPair(last) : innerOfPair(d, last);
        corner.name = d.nameOf(corner.angle);
        addCorner(d, corner,
                  i == 0 ? d.raysInside(corner.start, corner.sweep, kRaysAt * d.factor)
                         : std::vector<double>());
    }
}

bool hasGivenDirection(const Drawing& d, int vector) {
    return vector == kNoVector || d.vectors.at(vector).givesDirection();
}

bool isFound(const Drawing& d, int vector) {
    return vector != kNoVector && d.vectors.at(vector).sought();
}

bool isSeen(const Drawing& d, int vector) {
    return vector == kNoVector || d.isDrawn(vector);
}

void drawTriangleAngles(Drawing& d) {
    const ForceTriangle& t = *d.triangle();
    for (std::size_t side = 0; side < 3; ++side) {
        const std::size_t at = ForceTriangle::cornerOpposite(side);
        const int one = t.vectors[(side + 1) % 3], two = t.vectors[(side + 2) % 3];
        if (!t.opposite[side] || *t.opposite[side] == 0 || std::numbers::pi - *t.opposite[side] < 1e-9)
            continue;
        Stage from = Stage::triangle;
        if (hasGivenDirection(d, one) && hasGivenDirection(d, two))
            from = isFound(d, one) || isFound(d, two) ? Stage::found : Stage::interior;
        else if (asksForSmallest(d) && isRight(*t.opposite[side]))
            from = Stage::found;
        const QuantityId angle = oppositeId(sideId(t.vectors[side]));
        const AngleName* name = d.nameOf(angle);
        const bool due = d.shows(from);
        if (!due && !(name && isSeen(d, one) && isSeen(d, two)))
            continue;
        Corner corner = cornerBetween(d, t.corners[at], t.corners[(at + 1) % 3], t.corners[(at + 2) % 3],
                                      *t.opposite[side]);
        corner.angle = angle;
        corner.id = idOf("opposite", t.names[side]);
        corner.name = name;
        corner.isDue = due;
        corner.beyondAxisArcs = name && at == 0 && d.options.onlyNamed && !d.options.alone;
        corner.title = {"Angle opposite to " + t.names[side],
                        shownAngleFromRadians(*t.opposite[side], d.sketch)};
        addCorner(d, corner,
                  at == 0 ? d.raysInside(corner.start, corner.sweep, kRaysAt * d.factor)
                          : std::vector<double>());
    }
}

/// Of the triangle's angles the one between these sides.
std::optional<FigurePart> angleAt(const Drawing& d, int one, int two) {
    if (!d.construction.triangle)
        return std::nullopt;
    for (const int side : d.construction.triangle->vectors)
        if (side != one && side != two)
            return FigurePart(oppositeId(sideId(side)));
    return std::nullopt;
}

/// The square where two vectors meet at right angles: their lengths there, and away from the corner their
/// unit vectors.
void addFoot(Drawing& d, const std::array<int, 2>& vectors, const Eigen::Vector2d& corner,
             const Eigen::Vector2d& u, const Eigen::Vector2d& v) {
    const double legs =
        d.view.scale * std::min(d.vectors.at(vectors[0]).magnitude, d.vectors.at(vectors[1]).magnitude);
    addSquare(d.add(Role::arc, "right-angle", {"Right angle", {}}, angleAt(d, vectors[0], vectors[1])).items,
              Role::arc, d.view.toSheet(corner), {u.x(), -u.y()}, {v.x(), -v.y()},
              std::min(9 * d.factor, 0.4 * legs), d.weight(d.style.arcWidth));
}

/// The smallest beside another force, tip to tail in the polygon.
void drawFootOfForces(Drawing& d) {
    const auto [u, v] = d.solved.unknownVectors;
    if (d.kind() != ConstructionKind::polygon || d.loci.meetings.empty() || !d.isDrawn(u) || !d.isDrawn(v) ||
        d.vectors.at(u).magnitude == 0 || d.vectors.at(v).magnitude == 0)
        return;
    addFoot(d, {u, v}, d.loci.meetings.front(), -d.vectors.at(u).unit, d.vectors.at(v).unit);
}

/// The smallest force or sum stands at right angles to the line that it reaches.
void drawFoot(Drawing& d) {
    if (!asksForSmallest(d) || !d.answered() || !d.shows(Stage::found) || d.triangle())
        return;
    if (d.solved.unknownVectors[0] >= 0 && d.solved.unknownVectors[1] >= 0)
        return drawFootOfForces(d);
    const int force =
        d.solved.unknownVectors[0] == kSumIndex ? d.solved.unknownVectors[1] : d.solved.unknownVectors[0];
    if (force == kNoVector || !d.isDrawn(force) || !d.isDrawn(kSumIndex))
        return;
    addFoot(d, {force, kSumIndex}, d.vectors.sum.vector, -d.vectors.sum.unit, -d.vectors.at(force).unit);
}

} // namespace

void drawAngles(Drawing& d) {
    if (!d.options.angles)
        return;
    if (!d.options.interior)
        return drawFoot(d);
    if (d.triangle())
        drawTriangleAngles(d);
    else if (!d.pairs.empty())
        drawPairAngles(d);
    else if (d.construction.parallelogram && (d.shows(Stage::between) || !d.options.names.empty()))
        drawParallelogramAngles(d);
    drawNamedAngles(d);
    drawFoot(d);
}

} // namespace tailpoint
