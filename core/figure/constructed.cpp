// SPDX-License-Identifier: MIT
// The construction's thin lines, and the loci.
#include "core/construct/loci.h"
#include "core/construct/reduction.h"
#include "core/figure/drawing.h"
#include "core/figure/tolerated.h"
#include "core/sketch/stated.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kOnLocus = 1e-9; ///< of the parallelogram's size

/// Dashes beyond the sheet cost time and show nothing.
void addDashed(Drawing& d, Group& group, Role role, Point a, Point b, double width, Dash dash) {
    if (clip(grown(d.sheet, 20), a, b))
        group.items.emplace_back(line(role, a, b, width, dash));
}

bool waitsForAnswer(const Drawing& d) {
    return !d.shows(Stage::found) && std::any_of(d.vectors.forces.begin(), d.vectors.forces.end(),
                                                 [](const PlainVector& f) { return f.sought(); });
}

/// Each side and its copy get the same marks; a side too short for them, none.
void markSides(const Drawing& d, Group& group, const Parallelogram& p) {
    const double size = 6 * d.factor;
    for (std::size_t i = 0; i < 4; ++i) { // 0-1 and 3-2 are the first force, 0-3 and 1-2 the second
        const bool first = i % 2 == 0;
        const Point from = d.view.toSheet(p.corners[i == 0 || i == 3 ? 0 : i == 1 ? 1 : 3]);
        const Point to = d.view.toSheet(p.corners[i == 0 ? 1 : i == 3 ? 3 : 2]);
        const Point along = to - from;
        if (length(along) < 5 * size)
            continue;
        addParallelMarks(group.items, Role::construction, from + 0.5 * along, (1 / length(along)) * along,
                         first ? 1 : 2, size, d.weight(d.style.constructionWidth));
    }
}

/// A line of action that is drawn already.
bool liesOnLocus(const Drawing& d, const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    const double slack = kOnLocus * std::max(a.norm(), b.norm());
    const auto isOn = [&](const LineLocus& line, const Eigen::Vector2d& p) {
        const Eigen::Vector2d from = p - line.through;
        const double off = from.x() * line.unit.y() - from.y() * line.unit.x();
        return std::abs(off) <= slack && (!line.ray || from.dot(line.unit) >= -slack);
    };
    return std::any_of(d.loci.loci.begin(), d.loci.loci.end(), [&](const Locus& locus) {
        const auto* line = std::get_if<LineLocus>(&locus);
        return line && isOn(*line, a) && isOn(*line, b);
    });
}

/// `next`: of several the force that this one adds.
void drawCopiedSides(Drawing& d, const Parallelogram& p, std::string id, VectorId next = kNobody) {
    Group& g =
        d.add(Role::construction, std::move(id), {"Parallelogram on " + p.first + " and " + p.second, {}},
              FigureShape{FigureShape::Kind::parallelogram, next});
    const Point far = d.view.toSheet(p.corners[2]);
    for (const std::size_t corner : {1U, 3U})
        if (!liesOnLocus(d, p.corners[corner], p.corners[2]))
            addDashed(d, g, Role::construction, d.view.toSheet(p.corners[corner]), far,
                      d.weight(d.style.constructionWidth), Dash::dashed);
    const auto [first, last] = d.drawnPairs();
    if (d.options.parallelMarks &&
        last - first < 2) // of several at once the same marks would tie what isn't parallel
        markSides(d, g, p);
}

void drawParallelogram(Drawing& d) {
    const Parallelogram& p = *d.construction.parallelogram;
    if (p.shape != Shape::proper || waitsForAnswer(d))
        return;
    drawCopiedSides(d, p, "parallelogram");
}

Run boldName(const Run& run) {
    Run out = run;
    out.bold = out.italic;
    return out;
}

void append(const Drawing& d, Runs& runs, std::string_view between, std::string_view name) {
    if (!between.empty())
        runs.push_back(plainRuns(between).front());
    for (const Run& run : d.nameRuns(name))
        runs.push_back(boldName(run));
}

/// "K = A + B", vectors in bold.
Runs knownsRuns(const Drawing& d, const std::vector<std::string>& knowns, const std::string& name) {
    Runs runs;
    append(d, runs, "", name);
    const bool fromSum = knowns.back() == d.vectors.sum.name;
    if (fromSum)
        append(d, runs, " = ", d.vectors.sum.name);
    for (std::size_t i = 0; i + (fromSum ? 1 : 0) < knowns.size(); ++i)
        append(d, runs, fromSum ? " \u2212 " : i == 0 ? " = " : " + ", knowns[i]);
    return runs;
}

using SidePoints = std::array<Eigen::Vector2d, 2>; // tail and tip

/// What stands for several known forces.
void drawKnowns(Drawing& d, const SidePoints& side, const std::string& name,
                const std::vector<std::string>& knowns) {
    const Point from = d.view.toSheet(side[0]), to = d.view.toSheet(side[1]);
    Group& g = d.add(Role::construction, idOf("knowns", name), {"Known forces added up", {}}, kKnownVector);
    addArrow(g.items, Role::construction, from, to, d.weight(1.3 * d.style.constructionWidth), Head::small,
             Dash::dashed, d.style.leastStroke);
    Runs abbreviation;
    append(d, abbreviation, "", name);
    d.ask(Shaft{from, to, 1}, Role::label, d.style.angleSize, knownsRuns(d, knowns, name), abbreviation);
}

void drawKnownSide(Drawing& d, const ForceTriangle& t, std::size_t side) {
    Eigen::Vector2d tail = side == 1 ? t.corners[1] : Eigen::Vector2d(0, 0);
    Eigen::Vector2d tip = side == 0 ? t.corners[1] : t.corners[2];
    if (side == 2 && isEquilibrium(d.sketch))
        std::swap(tail, tip); // the closing side is the known sum turned round
    drawKnowns(d, {tail, tip}, t.names[side], t.knowns);
}

/// What the known vectors leave for two forces that are sought, K: from where the known forces end, or, at
/// rest, what these add up to.
void drawRemainder(Drawing& d) {
    const auto [u, v] = d.solved.unknownVectors;
    const auto reduction = u >= 0 && v >= 0 ? reductionOf(d.sketch, d.solved) : std::nullopt;
    if (!reduction || reduction->known.size() < 2 || !lociMeet(d.solved))
        return;
    Eigen::Vector2d remainder(0, 0);
    std::vector<std::string> knowns, sum;
    for (const auto& [vector, sign] : reduction->known) {
        remainder += sign * d.vectors.at(indexOf(vector)).vector;
        (vector == kSumVector ? sum : knowns).push_back(d.vectors.at(indexOf(vector)).name);
    }
    knowns.insert(knowns.end(), sum.begin(), sum.end());
    const Eigen::Vector2d tail = reduction->loop ? Eigen::Vector2d(0, 0) : d.solved.knownSum;
    drawKnowns(d, {tail, tail + remainder}, d.things.name(kKnownVector), knowns);
}

/// Before what is sought is found, the known forces alone, where the loci start at their end.
void drawPolygon(Drawing& d) {
    const ForcePolygon& polygon = d.construction.polygon;
    if (waitsForAnswer(d) && !lociMeet(d.solved))
        return;
    drawRemainder(d);
    const bool named = polygon.names.size() <= kMostChainNames;
    const auto kind = d.construction.triangle ? FigureShape::Kind::triangle : FigureShape::Kind::polygon;
    for (std::size_t i = 1; i < polygon.names.size(); ++i) {
        const Point from = d.view.toSheet(polygon.corners[i]), to = d.view.toSheet(polygon.corners[i + 1]);
        Group& g = d.add(Role::construction, idOf("polygon", polygon.names[i]),
                         {polygon.names[i], "drawn on tip to tail"},
                         FigureShape{kind, vectorId(polygon.vectors[i])});
        const bool onLocus = liesOnLocus(d, polygon.corners[i], polygon.corners[i + 1]);
        addArrow(g.items, Role::construction, from, to, d.weight(d.style.constructionWidth), Head::small,
                 onLocus ? Dash::solid : Dash::dashed, d.style.leastStroke);
        if (named)
            d.ask(Shaft{from, to, 1}, Role::label, 0.9 * d.style.angleSize, d.nameRuns(polygon.names[i]))
                .optional = true;
    }
}

/// What a sum on the way comes to; no range of it is known.
Runs sumRuns(const Drawing& d, std::string_view name, const std::string& value) {
    Runs runs = d.valueRuns(name, value);
    if (tolerance::boxOf(d.sketch).hasTolerance)
        runs.push_back(lowerLine("at the stated values", 1));
    return runs;
}

/// The sum so far, on which the next parallelogram stands.
void drawPartialSum(Drawing& d, const Parallelogram& next, VectorId sum) {
    const double size = std::hypot(next.corners[1].x(), next.corners[1].y());
    const std::string value = withMinusSigns(shownForceWithUnit(size, d.sketch));
    const Point tip = d.view.toSheet(next.corners[1]);
    const bool isSaid = d.isRevealed(magnitudeId(sum));
    Group& g = d.add(Role::construction, idOf("partial", next.first),
                     {next.first, "the sum so far" + (isSaid ? ", " + value : "")}, sum);
    addArrow(g.items, Role::construction, d.common(), tip, d.weight(1.3 * d.style.constructionWidth),
             Head::small, Dash::solid);
    Runs name = d.nameRuns(next.first);
    if (isSaid)
        d.ask(Shaft{d.common(), tip, 1}, Role::label, d.style.angleSize, sumRuns(d, next.first, value), name)
            .part = magnitudeId(sum);
    else
        d.ask(Shaft{d.common(), tip, 1}, Role::label, d.style.angleSize, name);
}

/// One after the other: the sum so far and the next force make a parallelogram, its diagonal the next sum.
void drawPairs(Drawing& d) {
    const auto [first, last] = d.drawnPairs();
    for (std::size_t i = first; i < last; ++i)
        drawCopiedSides(d, d.pairs[i], "pair-" + std::to_string(i + 1), forceVector(i + 1));
    for (std::size_t i = std::max<std::size_t>(first, 1); i < std::min(last + 1, d.pairs.size()); ++i)
        drawPartialSum(d, d.pairs[i], partialVector(i));
}

/// Where a moved force was: at the common point.
void drawHome(Drawing& d, int index) {
    if (!d.isMoved(index) || !d.isDrawn(index) || d.options.alone)
        return;
    const PlainVector& v = d.vectors.at(index);
    Group& g = d.add(Role::construction, idOf("home", v.name), {v.name + " at the common point", {}},
                     vectorId(index));
    addDashed(d, g, Role::construction, d.common(), d.view.toSheet(v.vector),
              d.weight(d.style.constructionWidth), Dash::dashed);
}

void drawTriangle(Drawing& d) {
    const ForceTriangle& t = *d.triangle();
    d.forEachVector([&](int index) { drawHome(d, index); });
    if (waitsForAnswer(d))
        return;
    for (std::size_t side = 0; side < 3; ++side)
        if (t.vectors[side] == kNoVector && t.sides[side] > 0)
            drawKnownSide(d, t, side);
}

Runs locusName(const Drawing& d, std::string_view kind, std::string_view name) {
    Runs runs = plainRuns(kind);
    for (Run& run : d.nameRuns(name))
        runs.push_back(std::move(run));
    return runs;
}

/// What is given of a vector with one unknown: ", 260 N" or ", at 40.0\u00B0".
std::string givenPart(const Drawing& d, int vector) {
    const PlainVector& v = d.vectors.at(vector);
    if (v.hasMagnitude)
        return ", " + withMinusSigns(shownWithTolerance(d.forceAt(vector).magnitude, d.sketch));
    const auto referred = d.isLine(vector) ? std::nullopt : d.referred(vector); // else its arc says it
    return referred ? ", " + withMinusSigns(shownAngle(*referred, d.sketch) +
                                            spaced(shownTolerance(d.forceAt(vector).direction, d.sketch)))
                    : "";
}

/// Where there is no answer no arrow carries what is given of the vector: the name of its locus does.
void askForLocus(Drawing& d, Feature where, int vector, Runs name) {
    Runs full = name;
    const bool waits = !d.answered() && d.options.values;
    if (waits)
        for (Run& run : plainRuns(givenPart(d, vector)))
            full.push_back(std::move(run));
    d.ask(std::move(where), Role::label, (waits ? 1 : 0.85) * d.style.angleSize, std::move(full),
          std::move(name))
        .optional = !waits;
}

/// Through the common point the force itself acts along it; elsewhere it is drawn parallel to that.
bool isLineOfAction(const LineLocus& ray) {
    const double off = ray.through.x() * ray.unit.y() - ray.through.y() * ray.unit.x();
    return std::abs(off) <= 1e-9 * ray.through.norm();
}

void drawLine(Drawing& d, const LineLocus& ray, const std::string& id, const std::string& name) {
    const Point through = d.view.toSheet(ray.through), unit{ray.unit.x(), -ray.unit.y()};
    const double far = d.sheet.width + d.sheet.height + length(through - d.common());
    const Point a = ray.ray ? through : through - far * unit, b = through + far * unit;
    const auto parts = visibleParts(a, b, d.sheet, d.reserved);
    if (parts.empty())
        return;
    const bool itself = isLineOfAction(ray);
    Group& g = d.add(Role::locus, id,
                     {(itself ? "Line of action of " : "Parallel to the line of action of ") + name, {}},
                     FigureShape{FigureShape::Kind::locus, vectorId(ray.vector)});
    for (const auto& part : parts)
        g.items.emplace_back(line(Role::locus, a + part[0] * (b - a), a + part[1] * (b - a),
                                  d.weight(d.style.locusWidth), Dash::chainTwoDots));
    const auto longest = *std::max_element(parts.begin(), parts.end(), [](const auto& one, const auto& two) {
        return one[1] - one[0] < two[1] - two[0];
    });
    const Point from = a + longest[0] * (b - a), to = a + longest[1] * (b - a);
    askForLocus(d, Shaft{from, to, 1}, ray.vector,
                locusName(d, itself ? "line of action of " : "parallel to ", name));
}

/// Two unknown forces: the first locus has the tips of its force, the second, drawn back from where both end,
/// its tails. In the triangle the other way round where they have changed places.
std::string circleWords(const Drawing& d, const CircleLocus& circle) {
    const auto [u, v] = d.solved.unknownVectors;
    const auto isSecond = [&] {
        const auto* second = std::get_if<CircleLocus>(&d.loci.loci.back());
        return second && second->vector == circle.vector;
    };
    const bool back = u >= 0 && v >= 0 && lociMeet(d.solved) && isSecond() != d.loci.changed;
    return back ? "ircle of possible tails of " : "ircle of possible tips of ";
}

void drawCircle(Drawing& d, const CircleLocus& circle, const std::string& id, const std::string& name) {
    const Point centre = d.view.toSheet(circle.centre);
    const double radius = circle.radius * d.view.scale;
    const auto arcs = visibleArcs(centre, radius, d.sheet, d.reserved);
    if (arcs.empty())
        return;
    Group& g = d.add(Role::locus, id, {"C" + circleWords(d, circle) + name, {}},
                     FigureShape{FigureShape::Kind::locus, vectorId(circle.vector)});
    for (const auto& visible : arcs) {
        Arc arc;
        arc.role = Role::locus;
        arc.centre = centre;
        arc.radius = radius;
        arc.startDegrees = visible[0];
        arc.sweepDegrees = visible[1];
        arc.width = d.weight(d.style.locusWidth);
        arc.dash = Dash::chainTwoDots;
        g.items.emplace_back(arc);
    }
    Sector where{centre, radius, arcs.front()[0], arcs.front()[1]};
    where.angle = false;
    askForLocus(d, std::move(where), circle.vector, locusName(d, "c" + circleWords(d, circle), name));
}

void drawLocus(Drawing& d, const Locus& locus) {
    const int vector = std::visit([](const auto& l) { return l.vector; }, locus);
    const std::string id = "locus-" + d.idOfVector(vector), name = d.vectors.at(vector).name;
    if (const auto* ray = std::get_if<LineLocus>(&locus))
        drawLine(d, *ray, id, name);
    else
        drawCircle(d, std::get<CircleLocus>(locus), id, name);
}

} // namespace

void drawConstruction(Drawing& d) {
    if (!d.shows(Stage::construction))
        return;
    if (d.triangle())
        drawTriangle(d);
    else if (d.kind() == ConstructionKind::parallelogram)
        drawParallelogram(d);
    else if (!d.pairs.empty())
        drawPairs(d);
    else if (d.kind() == ConstructionKind::polygon)
        drawPolygon(d);
}

void drawLoci(Drawing& d) {
    if (!d.shows(Stage::construction) || (d.options.alone && d.triangle()))
        return;
    for (const Locus& locus : d.loci.loci)
        drawLocus(d, locus);
}

} // namespace tailpoint
