// SPDX-License-Identifier: MIT
// Forces, the sum, the other answer, the points and the highlight.
#include "core/construct/reduction.h"
#include "core/explain/limits.h"
#include "core/figure/drawing.h"
#include "core/figure/tolerated.h"

#include <algorithm>
#include <numeric>

namespace tailpoint {
namespace {

constexpr double kLineHead = 8; ///< of a line of action that has a sense, points by the figure's factor

/// May the magnitude stand beside the arrow added last?
bool saysMagnitude(const Drawing& d, int index, const PlainVector& vector) {
    const bool other = d.figure.list.groups.back().otherAnswer;
    const bool isDue = other ? d.showsOther(Stage::magnitudes) : d.shows(Stage::magnitudes);
    return vector.hasMagnitude && (isDue || !vector.foundMagnitude) &&
           d.isRevealed(magnitudeId(vectorId(index)), other);
}

/// A magnitude as it is found, or given with its tolerance; behind it that of a slope, whose direction has no
/// arc of its own.
std::string sizeSaid(const Drawing& d, int index, const PlainVector& vector) {
    const Force& given = d.forceAt(index);
    std::string said = vector.foundMagnitude || !isGiven(given.magnitude)
                           ? shownForceWithUnit(vector.magnitude, d.sketch)
                           : shownWithTolerance(given.magnitude, d.sketch);
    if (std::holds_alternative<SlopeForm>(given.direction.form) && given.direction.tolerance)
        said += ", slope " + shownTolerance(given.direction, d.sketch);
    return withMinusSigns(said);
}

/// For the arrow added last its name, with its magnitude where that is known by now.
LabelRequest& askForName(Drawing& d, Feature at, double size, int index, const PlainVector& vector) {
    const Role ink = index == kSumIndex ? Role::sum : Role::given;
    const Runs name = d.nameRuns(vector.name);
    if (!saysMagnitude(d, index, vector))
        return d.ask(std::move(at), ink, size, name, name);
    Runs full = d.valueRuns(vector.name, sizeSaid(d, index, vector)), alone = name;
    const Runs below = linesBelow(d, index, d.figure.list.groups.back().otherAnswer);
    full.insert(full.end(), below.begin(), below.end());
    if (warns(below)) // not even a label without room is silent about it
        alone.push_back(Run{" " + std::string(kPassedMark), false, true});
    LabelRequest& request = d.ask(std::move(at), ink, size, std::move(full), std::move(alone));
    request.part = magnitudeId(vectorId(index));
    return request;
}

/// The side of a shaft at the common point that has more room before the next stroke.
double roomierSide(const Drawing& d, double degrees) {
    double left = 360, right = 360;
    for (const Ray& ray : d.rays) {
        const double turn = turned(ray.degrees - degrees);
        if (turn > 1e-6 && turn < 360 - 1e-6) {
            left = std::min(left, turn);
            right = std::min(right, 360 - turn);
        }
    }
    return left + 1e-6 >= right ? 1 : -1;
}

/// Away from the middle of the triangle.
double outerSide(const Drawing& d, const Ends& ends) {
    Eigen::Vector2d middle(0, 0);
    for (const Eigen::Vector2d& corner : d.triangle()->corners)
        middle += corner / 3;
    const Point m = d.view.toSheet(middle);
    return dot(m - ends.tail, leftOf(unitFrom(ends.tail, ends.tip))) > 0 ? -1 : 1;
}

double sideOfShaft(const Drawing& d, int index, const Ends& ends) {
    return d.sideOf(index) < 3 ? outerSide(d, ends) : roomierSide(d, degreesOf(d.vectors.at(index).unit));
}

/// The locus is the same line from the common point on, and longer.
bool isCovered(const Drawing& d, int index) {
    const auto isIts = [&](const Locus& locus) {
        const auto* line = std::get_if<LineLocus>(&locus);
        return line && line->vector == index && line->through.isZero();
    };
    return d.shows(Stage::construction) && !d.loci.changed &&
           std::any_of(d.loci.loci.begin(), d.loci.loci.end(), isIts);
}

/// Of a vector whose magnitude is sought the direction is given, and its sense or not.
void drawLineOfAction(Drawing& d, int index) {
    if (isCovered(d, index))
        return;
    const PlainVector& vector = d.vectors.at(index);
    const Role role = index == kSumIndex ? Role::sum : Role::given;
    const double width = d.weight(d.style.locusWidth);
    const Ends ends = d.lineOf(index);
    Group& g = d.add(role, "line-" + d.idOfVector(index), {"Line of action of " + vector.name, {}},
                     FigureShape{FigureShape::Kind::locus, vectorId(index)});
    g.items.emplace_back(line(role, ends.tail, ends.tip, width, Dash::chainTwoDots));
    if (!d.forceAt(index).lineOfActionOnly)
        addHead(g.items, role, ends.tip, unitFrom(ends.tail, ends.tip), kLineHead * d.factor, Head::small,
                width);
    if (d.vectors.forces.size() <= kMostLabelled)
        d.ask(Shaft{d.common(), ends.tip, roomierSide(d, degreesOf(vector.unit))}, role, d.style.labelSize,
              d.nameRuns(vector.name));
}

/// As much of it as is known by this stage.
Title titleNow(const Drawing& d, int index) {
    PlainVector said = d.vectors.at(index);
    said.hasMagnitude = said.hasMagnitude && (d.shows(Stage::magnitudes) || !said.foundMagnitude) &&
                        d.isRevealed(magnitudeId(vectorId(index)));
    const bool turns = d.options.values && (d.shows(Stage::all) || !said.foundDirection);
    return titleOf(said, turns ? d.referred(index) : std::nullopt, d.forceAt(index), d.options.asGiven,
                   d.sketch, rangesSaid(d.sketch, d.solved, d.options.solution, d.tolerated, index));
}

void drawVector(Drawing& d, int index) {
    if (d.isLine(index))
        return drawLineOfAction(d, index);
    const PlainVector& vector = d.vectors.at(index);
    const bool isSum = index == kSumIndex;
    const Role role = isSum ? Role::sum : Role::given;
    const bool isZero = vector.complete() && vector.magnitude == 0 &&
                        (!vector.found() || d.shows(Stage::found)) &&
                        !(isSum && (isEquilibrium(d.sketch) || d.vectors.forces.empty()));
    if (!isZero && !d.isDrawn(index))
        return;
    Group& g = d.add(role, d.idOfVector(index), titleNow(d, index), vectorId(index));
    const Ends ends = d.endsOf(index);
    g.ends = {ends.tail, ends.tip};
    addArrow(g.items, role, ends.tail, ends.tip, d.weight(isSum ? d.style.sumWidth : d.style.givenWidth),
             isSum            ? Head::open
             : vector.found() ? Head::hollow
                              : Head::filled,
             Dash::solid, std::max(d.style.leastArrow, d.style.leastStroke));
    if (!isSum && d.vectors.forces.size() > kMostLabelled)
        return;
    const Feature at = isZero ? Feature(Spot{ends.tail, 4 * d.factor})
                              : Feature(Shaft{ends.tail, ends.tip, sideOfShaft(d, index, ends)});
    d.pin(askForName(d, at, d.style.labelSize, index, vector), d.forceAt(index).label);
}

/// The sum, then the longest first: of arrows on one line each stays to be seen.
std::vector<int> paintingOrder(const Drawing& d) {
    std::vector<int> order(d.vectors.forces.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(),
                     [&](int a, int b) { return d.vectors.at(a).magnitude > d.vectors.at(b).magnitude; });
    order.insert(order.begin(), kSumIndex);
    return order;
}

/// Where the other answer's vector is drawn.
Ends endsOfOther(const Drawing& d, const PlainVector& vector, const Construction& other, int index) {
    Eigen::Vector2d tail(0, 0);
    if (d.isMoved(index) && other.triangle)
        tail = (d.options.otherOrder ? other.otherTriangle : other.triangle)->corners[d.sideOf(index)];
    return {d.view.toSheet(tail), d.view.toSheet(tail + vector.vector)};
}

void drawOther(Drawing& d, int index, const PlainVector& v, const Ends& ends) {
    const Role role = index == kSumIndex ? Role::sum : Role::given;
    Group& g =
        d.add(role, "other-" + d.idOfVector(index), {"The other answer: " + v.name, {}}, vectorId(index));
    g.otherAnswer = true;
    const auto [from, to] = ends;
    g.ends = {from, to};
    addArrow(g.items, role, from, to, d.weight(d.style.constructionWidth), Head::open, Dash::dotted,
             d.style.leastStroke);
    // Where both answers lie on one line the shorter covers the longer: the label goes to what is seen of it.
    const PlainVector& solid = d.vectors.at(index);
    const bool covers =
        d.isDrawn(solid) && solid.magnitude < v.magnitude && solid.unit.dot(v.unit) > 1 - 1e-9;
    const double hidden = covers ? solid.magnitude / v.magnitude : 0;
    askForName(d, Shaft{from + hidden * (to - from), to, 1}, 0.85 * d.style.angleSize, index, v).optional =
        true;
}

} // namespace

void drawVectors(Drawing& d) {
    for (const int index : paintingOrder(d))
        drawVector(d, index);
}

void drawPoints(Drawing& d) {
    if (d.shows(Stage::construction) && !d.loci.meetings.empty() && d.shows(Stage::found)) {
        Group& g = d.add(Role::point, "meeting-points", {"Where the loci meet", {}});
        for (std::size_t i = 0; i < d.loci.meetings.size(); ++i) {
            if (i != d.options.solution && !d.showsOther(Stage::found))
                continue;
            Disc mark;
            mark.centre = d.view.toSheet(d.loci.meetings[i]);
            mark.radius = 2.6 * d.factor;
            mark.width = d.weight(1);
            g.items.emplace_back(mark);
        }
    }
    double shortest = 1e300;
    d.forEachVector([&](int index) {
        if (d.hasRay(index))
            shortest = std::min(shortest, d.lengthOf(index));
    });
    Disc ring;
    ring.centre = d.common();
    ring.radius = std::clamp(shortest / 4, 1.6 * d.factor, 3.2 * d.factor);
    ring.width = d.weight(1.2);
    d.add(Role::point, "point", {"Common point", {}}).items.emplace_back(ring);
}

void drawHighlight(Drawing& d) {
    const int index = d.options.highlighted;
    if (index != kSumIndex && (index < 0 || index >= static_cast<int>(d.vectors.forces.size())))
        return;
    if (!d.isDrawn(index))
        return;
    const Ends ends = d.endsOf(index);
    d.add(Role::highlight, "highlight", {}, vectorId(index))
        .items.emplace_back(line(Role::highlight, ends.tail, ends.tip, 9 * d.factor));
}

void forEachOther(const Drawing& d, const std::function<void(int, const PlainVector&, const Ends&)>& take) {
    if (d.solved.solutions.size() < 2 || !d.showsOther(Stage::found) || d.options.solution > 1)
        return;
    const std::size_t other = 1 - d.options.solution;
    const Vectors vectors = vectorsOf(d.sketch, d.solved, other);
    const Construction construction = construct(d.sketch, d.solved, other);
    d.forEachVector([&](int index) {
        const PlainVector& v = vectors.at(index);
        if (v.found() && d.isDrawn(v))
            take(index, v, endsOfOther(d, v, construction, index));
    });
}

void drawOtherAnswer(Drawing& d) {
    forEachOther(d, [&](int index, const PlainVector& v, const Ends& ends) { drawOther(d, index, v, ends); });
}

} // namespace tailpoint
