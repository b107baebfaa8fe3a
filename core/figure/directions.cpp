// SPDX-License-Identifier: MIT
// Directions of the vectors: arcs from the axis, and run and rise where a direction is given as a slope.
#include "core/construct/reduction.h"
#include "core/figure/drawing.h"
#include "core/figure/tolerated.h"
#include "core/sketch/stated.h"

#include <algorithm>
#include <array>
#include <numbers>
#include <numeric>

namespace tailpoint {
namespace {

constexpr double kBroughtOut = 20, kOutermostOut = 150, kOutPerDegree = 40; ///< points
constexpr double kLeastStep = 14, kRoomyStep = 42; ///< points from an arc to the next one on its side
constexpr double kValueRoom = 20;                  ///< beyond the outermost arc, points
constexpr double kOnOneSide = 0.75;                ///< of the arcs, where the sheet is narrow
constexpr double kNorth = 90, kSouth = 270;        ///< degrees as drawn
constexpr double kPastArc = 8;                     ///< of the line from which a bearing counts, points

/// From the sheet's axis, or as a bearing from north or south.
struct AxisArc {
    int index;
    double from, sweep; ///< degrees as drawn
    const BearingForm* bearing = nullptr;
    std::vector<int> others{}; ///< vectors in the same direction, which share it
    double end() const { return from + sweep; }
};

/// As it is drawn; nothing where the angle is none, or where a slope says it.
std::optional<AxisArc> arcOf(const Drawing& d, int index) {
    const double degrees = degreesOf(d.vectors.at(index).unit);
    const Direction& direction = d.forceAt(index).direction;
    if (d.options.asGiven && std::holds_alternative<SlopeForm>(direction.form))
        return std::nullopt;
    const auto* bearing =
        d.options.asGiven || d.options.bearings ? std::get_if<BearingForm>(&direction.form) : nullptr;
    const double from = !bearing ? d.axisDegrees() : bearing->from == 'N' ? kNorth : kSouth;
    const double turn = turned(degrees - from);
    double sweep = turn > 180 + 1e-9 ? turn - 360 : turn;
    if (const auto stated = bearing ? std::nullopt : d.referred(index);
        stated && std::abs(*stated) > turnIn(d.sketch.angleUnit) / 2) // 223° is no 137° clockwise
        sweep = (*stated > 0) == (d.sketch.reference.sense == Sense::ccw) ? turn : turn - 360;
    return std::abs(sweep) > 1e-6 ? std::optional(AxisArc{index, from, sweep, bearing}) : std::nullopt;
}

/// The widest first, and so innermost: beyond its arc each value has the room beside its own force, where no
/// narrower angle reaches. While dragging they keep their rows.
std::vector<AxisArc> axisArcs(const Drawing& d) {
    std::vector<AxisArc> arcs;
    d.forEachVector([&](int index) {
        const PlainVector& v = d.vectors.at(index);
        if (!d.hasRay(index) || (index != kSumIndex && d.vectors.forces.size() > kMostAxisArcs) ||
            (v.foundDirection && !d.shows(Stage::all)) || d.isMoved(index))
            return;
        if (const auto arc = arcOf(d, index))
            arcs.push_back(*arc);
    });
    for (std::size_t i = 0; i < arcs.size(); ++i)
        for (std::size_t j = arcs.size(); j-- > i + 1;)
            if (arcs[j].from == arcs[i].from && std::abs(arcs[j].sweep - arcs[i].sweep) < 1e-7) {
                arcs[i].others.insert(arcs[i].others.begin(), arcs[j].index);
                arcs.erase(arcs.begin() + static_cast<std::ptrdiff_t>(j));
            }
    std::stable_sort(arcs.begin(), arcs.end(), [](const AxisArc& a, const AxisArc& b) {
        return std::abs(a.sweep) > std::abs(b.sweep) + 1e-7;
    });
    return arcs;
}

/// A short force is led out to the arc by a thin line.
void addExtension(Drawing& d, Group& group, int index, double degrees, double radius) {
    const double size = d.lengthOf(index);
    if (size >= radius)
        return;
    const double from = size + 2.5 * d.factor, to = radius + 4 * d.factor;
    if (to > from)
        group.items.emplace_back(line(Role::arc, onCircle(d.common(), from, degrees),
                                      onCircle(d.common(), to, degrees), d.weight(0.6 * d.style.arcWidth)));
}

/// What an arc says of one of its vectors; both empty where that has no direction.
DirectionSaid saidAt(const Drawing& d, const AxisArc& arc, int index) {
    if (arc.bearing)
        return {shownWithTolerance(d.forceAt(index).direction, d.sketch), {}};
    const auto referred = d.referred(index);
    return referred ? directionSaid(d, index, *referred) : DirectionSaid();
}

/// "R 23.6° to 26.4°" in a line of its own.
void addOf(const Drawing& d, Runs& runs, int index, const DirectionSaid& said) {
    const int line = runs.empty() ? 0 : runs.back().line + 1;
    Runs added = symbolRuns(d.things.symbol(vectorId(index)));
    added.push_back(Run{' ' + withMinusSigns(said.range.empty() ? said.value : said.range)});
    for (Run& run : added) {
        run.line = line;
        run.part = line == 0 ? run.part : kLowerPart * (run.script == Script::normal ? 1 : kScriptPart);
    }
    runs.insert(runs.end(), added.begin(), added.end());
}

/// Of vectors in one direction each says for itself what that may be, where they differ in it.
Runs sharedRuns(const Drawing& d, const AxisArc& arc) {
    const DirectionSaid first = saidAt(d, arc, arc.index);
    const auto differs = [&](int index) {
        const DirectionSaid said = saidAt(d, arc, index);
        return said.value != first.value || said.range != first.range;
    };
    if (std::none_of(arc.others.begin(), arc.others.end(), differs))
        return {};
    Runs runs;
    addOf(d, runs, arc.index, {first.value, {}});
    if (!first.range.empty())
        addOf(d, runs, arc.index, first);
    for (const int index : arc.others)
        addOf(d, runs, index, saidAt(d, arc, index));
    return runs;
}

Runs valueRunsOf(const Drawing& d, const AxisArc& arc) {
    const Direction& given = d.forceAt(arc.index).direction;
    if (Runs shared = sharedRuns(d, arc); !shared.empty())
        return shared;
    if (arc.bearing)
        return plainRuns(withMinusSigns(shownWithTolerance(given, d.sketch)));
    const auto referred = d.referred(arc.index);
    if (!referred)
        return {};
    const DirectionSaid said = directionSaid(d, arc.index, *referred);
    Runs runs = plainRuns(withMinusSigns(said.value));
    if (!said.range.empty())
        runs.push_back(lowerLine(said.range, 1));
    if (const std::string stated =
            d.vectors.at(arc.index).foundDirection ? std::string() : ownUnitWords(given);
        !stated.empty())
        runs.push_back(lowerLine(withMinusSigns(stated), 1));
    return runs;
}

/// What a direction may be off, behind its words.
std::string turnedOff(const Drawing& d, int index, double referred) {
    const std::string range =
        rangesSaid(d.sketch, d.solved, d.options.solution, d.tolerated, index).direction;
    if (!range.empty())
        return " (" + range + ")";
    const std::string tolerance = toleranceOfSize(d.forceAt(index).direction, referred, d.sketch);
    return tolerance.empty() ? tolerance : ", " + tolerance;
}

void addAxisArc(Drawing& d, const AxisArc& arc, double radius) {
    const auto referred = d.referred(arc.index);
    if (!referred)
        return;
    const std::string name = d.vectors.at(arc.index).name;
    Group& g = d.add(Role::arc, "direction-" + d.idOfVector(arc.index),
                     {"Direction of " + name,
                      arc.bearing ? plainText(valueRunsOf(d, arc))
                                  : directionWords(referred, d.sketch) + turnedOff(d, arc.index, *referred)},
                     directionId(vectorId(arc.index)));
    addExtension(d, g, arc.index, arc.end(), radius);
    if (arc.bearing) // where it counts from
        g.items.emplace_back(line(Role::arc, d.common(),
                                  onCircle(d.common(), radius + kPastArc * d.factor, arc.from),
                                  d.weight(0.6 * d.style.arcWidth)));
    addArc(g.items, Role::arc, d.common(), radius, arc.from, arc.sweep, d.weight(d.style.arcWidth), true);
    if (!d.options.values)
        return;
    Sector sector{d.common(), radius, arc.from, arc.sweep};
    sector.splits = d.raysInside(sector.startDegrees, sector.sweepDegrees, radius);
    LabelRequest& label = d.ask(std::move(sector), arc.index == kSumIndex ? Role::sum : Role::label,
                                d.style.angleSize, valueRunsOf(d, arc));
    d.pin(label, d.forceAt(arc.index).directionLabel);
}

/// A narrow angle's arc is brought out to where its value fits between the legs, if that is not far. So that
/// no drag makes it jump it goes out, and back again where that is too far, by so much a degree at most. The
/// outermost pushes no other and goes further.
double broughtOut(const Drawing& d, const AxisArc& arc, double radius, double longest, double furthest) {
    if (!d.options.values || std::abs(arc.sweep) >= 90)
        return radius;
    const TextExtent t =
        d.measure.measure(valueRunsOf(d, arc), Face::serif, d.sizeOf(Face::serif, d.style.angleSize));
    const Extent e{t.width, t.ascent + t.descent, t.ascent};
    const double half = std::abs(arc.sweep) / 2, bisector = arc.from + arc.sweep / 2;
    const double gap = 4.2 * d.factor, along = reach(e.width, e.height, onCircle({0, 0}, 1, bisector));
    const double most = std::clamp(0.7 * longest - radius, 0.0, furthest * d.factor);
    const double distance = wedgeDistance(bisector, half, e, gap);
    // The angle at which its value fits at the furthest: distances go by the sine of half of it.
    const double sine = distance * std::sin(half * std::numbers::pi / 180) / (radius + most + along + gap);
    const double narrowest = 2 * std::asin(std::min(sine, 1.0)) * 180 / std::numbers::pi;
    const double past = std::abs(arc.sweep) - narrowest;
    const double wanted = past > 0 ? distance - along - gap - radius : 0;
    return radius + std::clamp(std::max(wanted, most - kOutPerDegree * d.factor * std::abs(past)), 0.0, most);
}

/// Drawn in as far as title block and note ask for it; 0 where there is no room at all.
double clearRadius(const Drawing& d, const AxisArc& arc, double wanted) {
    const auto isClear = [&](double radius) {
        const double past = radius + 6 * d.factor, from = radius + kPastArc * d.factor;
        return !(arc.bearing && d.runsUnder(d.common(), onCircle(d.common(), from, arc.from))) &&
               !d.runsUnder(ArcShape(d.common(), radius, arc.from, arc.sweep)) &&
               !d.runsUnder(d.common(), onCircle(d.common(), past, arc.end()));
    };
    for (double radius = wanted; radius > 12 * d.factor; radius -= 7 * d.factor)
        if (isClear(radius))
            return radius;
    return 0;
}

bool isOnOneSide(const AxisArc& a, const AxisArc& b) {
    return a.from != b.from || (a.sweep > 0) == (b.sweep > 0);
}

/// Rows from the inside out, in half steps: arcs on one side of the axis are a whole step apart, else half a
/// step (two ends at one radius would look like one arc). An arc in `previous` keeps its row if it can: one
/// that turns over to the other side of the axis may come as near as half a step to the others there.
std::vector<int> rowsOf(const Drawing& d, const std::vector<AxisArc>& arcs) {
    std::vector<int> rows(arcs.size(), -1);
    const auto fits = [&](std::size_t i, int row, int sameSide) {
        for (std::size_t j = 0; j < arcs.size(); ++j)
            if (rows[j] >= 0 && std::abs(rows[j] - row) < (isOnOneSide(arcs[i], arcs[j]) ? sameSide : 1))
                return false;
        return true;
    };
    for (std::size_t i = 0; i < arcs.size(); ++i)
        if (const auto held = d.previous.arcRows.find(d.idOfVector(arcs[i].index));
            held != d.previous.arcRows.end())
            rows[i] = fits(i, held->second, 1) ? held->second : -1;
    for (std::size_t i = 0; i < arcs.size(); ++i)
        for (int row = 0; rows[i] < 0; ++row)
            if (fits(i, row, 2))
                rows[i] = row;
    return rows;
}

/// From the common point to where the axis leaves the sheet: all arcs begin there.
double roomAlongAxis(const Drawing& d) {
    Point from = d.common(), to = onCircle(from, d.sheet.width + d.sheet.height, d.axisDegrees());
    return contains(d.sheet, from) && clip(d.sheet, from, to) ? length(to - d.common()) : 0;
}

/// Wide enough for a value between an arc and the next one on its side, where the sheet is.
double stepOfRows(const Drawing& d, double first, double longest) {
    const double arcs = static_cast<double>(d.vectors.forces.size() + 1); // which no drag changes
    const double byLength = (0.8 * longest - first) / (0.5 * arcs);
    const double byRoom = (roomAlongAxis(d) - kValueRoom * d.factor - first) / (kOnOneSide * arcs);
    return std::clamp(std::min(byLength, byRoom), kLeastStep * d.factor, kRoomyStep * d.factor);
}

void drawAxisArcs(Drawing& d) {
    const auto arcs = axisArcs(d);
    double longest = 0;
    d.forEachVector([&](int index) {
        if (d.hasRay(index))
            longest = std::max(longest, d.lengthOf(index));
    });
    const double first = std::max(58 * d.factor, std::min(d.innerReach, 0.4 * longest));
    const double step = stepOfRows(d, first, longest);
    const auto rows = rowsOf(d, arcs);
    std::vector<std::size_t> order(arcs.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rows[a] < rows[b]; });
    double radius = first;
    int row = 0;
    for (const std::size_t i : order) {
        const AxisArc& arc = arcs[i];
        d.figure.placement.arcRows[d.idOfVector(arc.index)] = rows[i];
        const double inRow = std::max(first + rows[i] * step / 2, radius + (rows[i] - row) * step / 2);
        const double wanted = std::max(inRow, widened(0, arc.sweep, d.factor));
        const double out =
            broughtOut(d, arc, wanted, longest, i == order.back() ? kOutermostOut : kBroughtOut);
        const double clear = clearRadius(d, arc, out);
        if (clear <= 0)
            continue;
        addAxisArc(d, arc, clear);
        radius = out;
        row = rows[i];
    }
}

/// Run and rise on a small triangle at the shaft, as they are given.
void drawSlope(Drawing& d, int index) {
    const Force& force = index == kSumIndex ? d.sketch.sum : d.sketch.forces[static_cast<std::size_t>(index)];
    const auto* slope = std::get_if<SlopeForm>(&force.direction.form);
    if (!slope || slope->run == 0 || slope->rise == 0 || !d.hasRay(index))
        return;
    const Ends ends = d.isLine(index) ? Ends{d.common(), d.lineOf(index).tip} : d.endsOf(index);
    const double size = length(ends.tip - ends.tail), side = std::min(46 * d.factor, 0.3 * size);
    if (side < 18 * d.factor)
        return;
    const Point unit = unitFrom(ends.tail, ends.tip);
    const Point from = ends.tail + 0.55 * size * unit, to = from + side * unit, corner{to.x, from.y};
    Path legs;
    legs.role = Role::arc;
    legs.points = {from, corner, to};
    legs.width = d.weight(d.style.arcWidth);
    Group& g = d.add(Role::arc, "slope-" + d.idOfVector(index),
                     {"Slope of " + d.vectors.at(index).name, shownWithTolerance(force.direction, d.sketch)},
                     slopeId(vectorId(index)));
    g.items.emplace_back(legs);
    if (!d.options.values)
        return;
    // Outside the triangle: away from the shaft.
    const double sense = (to.x - from.x) * (to.y - from.y) < 0 ? -1 : 1;
    const auto ask = [&](Point a, Point b, double value, const char* which) {
        d.ask(Shaft{a, b, sense}, Role::label, 0.9 * d.style.angleSize, plainRuns(shortest(std::abs(value))))
            .id += which;
    };
    ask(from, corner, slope->run, "-run");
    ask(corner, to, slope->rise, "-rise");
}

} // namespace

double widened(double radius, double sweepDegrees, double factor) {
    const double span = std::max(std::abs(sweepDegrees) * std::numbers::pi / 180, 1e-9);
    // An arc that shrinks to nothing leaves its place little by little, so that the others don't jump.
    const double most = 58 + 22 * std::clamp((std::abs(sweepDegrees) - 0.5) / 3, 0.0, 1.0);
    return std::max(radius, std::min(kLeastSpan / span, most) * factor);
}

void drawDirections(Drawing& d) {
    if (!d.options.angles || !d.shows(Stage::directions) || (d.options.alone && d.triangle()))
        return;
    if (d.options.axisAngles)
        drawAxisArcs(d);
    if (d.vectors.forces.size() <= kMostAxisArcs)
        d.forEachVector([&](int index) { drawSlope(d, index); });
}

} // namespace tailpoint
