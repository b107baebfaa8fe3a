// SPDX-License-Identifier: MIT
#include "core/figure/drawing.h"

#include "core/construct/loci.h"

#include <algorithm>
#include <numbers>

namespace tailpoint {
namespace {

/// Rays closer to a leg than this bound no place for a label.
constexpr double kSameRay = 0.2;
/// Size of a subscript by its text's, where nothing may be set smaller than a least size.
constexpr double kScriptInRoom = 0.85;
/// A line of action that stands for its vector, points by the figure's factor; its part past the common
/// point.
constexpr double kLine = 104, kPastPoint = 0.7;
constexpr double kLineInset = 14; ///< from the sheet's edge

} // namespace

double degreesOf(const Eigen::Vector2d& vector) {
    return std::atan2(vector.y(), vector.x()) * 180 / std::numbers::pi;
}

Drawing::Drawing(const Sketch& sketch_, const Solved& solved_, const Construction& construction_,
                 const View& view_, const FigureOptions& options_, const TextMeasure& measure_,
                 const Placement& previous_)
    : sketch(sketch_), given(tellsAnswer(options_) ? std::nullopt : std::optional<GivenAlone>(sketch_)),
      solved(given ? given->solved : solved_), construction(given ? given->construction : construction_),
      view(view_), options(options_), measure(measure_), previous(previous_), style(options_.style),
      loci(drawnLoci(solved, construction, options_)), vectors(vectorsOf(sketch_, solved, options_.solution)),
      things(sketch_), stage(options_.stage),
      factor(options_.style.factor), sheet{0, 0, view_.width, view_.height} {
    tolerated = given ? nullptr : options.tolerated.get();
    figure.list.width = view.width;
    figure.list.height = view.height;
    if (options.pair != kNoPairs && options.construction == ConstructionKind::parallelogram)
        pairs = pairsOf(sketch, solved, options.solution);
    if (!options.alone)
        rays.push_back({axisDegrees(), sheet.width + sheet.height});
    if (vectors.forces.size() > kMostLabelled)
        return;
    forEachVector([&](int index) {
        if (!hasRay(index) || (isMoved(index) && options.alone))
            return;
        const double degrees = degreesOf(vectors.at(index).unit);
        rays.push_back({degrees, lengthOf(index)});
        if (const Ends ends = lineOf(index); isLine(index) && !(ends.tail == common()))
            rays.push_back({degrees + 180, length(ends.tail - common())});
    });
}

bool Drawing::runsUnder(Point a, Point b) const {
    return std::any_of(reserved.begin(), reserved.end(), [&](const Box& box) { return meets(box, a, b); });
}

bool Drawing::runsUnder(const ArcShape& arc) const {
    return std::any_of(reserved.begin(), reserved.end(), [&](const Box& box) { return arc.meets(box); });
}

Group& Drawing::add(Role role, std::string id, Title title, std::optional<FigurePart> part) {
    Group& group = figure.list.groups.emplace_back();
    group.role = role;
    group.id = std::move(id);
    group.title = {spoken(title.name), spoken(title.detail)};
    group.part = part;
    return group;
}

LabelRequest& Drawing::ask(Feature anchor, Role ink, double size, Runs full, Runs abbreviation) {
    LabelRequest request;
    request.group = figure.list.groups.size() - 1;
    request.part = figure.list.groups.back().part;
    request.id = figure.list.groups.back().id;
    request.home = homeOf(anchor);
    request.anchor = std::move(anchor);
    request.ink = ink;
    request.size = sizeOf(Face::serif, size);
    const auto isScript = [](const Run& run) { return run.script != Script::normal; };
    if (std::any_of(full.begin(), full.end(), isScript)) // larger, so that what is least is still a subscript
        request.size = std::max(request.size, style.leastSerif / kScriptInRoom);
    if (full != abbreviation)
        request.abbreviation = legible(std::move(abbreviation), request.size);
    request.full = legible(std::move(full), request.size);
    return labels.emplace_back(std::move(request));
}

const AngleName* Drawing::nameOf(const QuantityId& angle) const {
    for (auto name = options.names.rbegin(); name != options.names.rend(); ++name)
        if (isSame(name->angle, angle))
            return &*name;
    return nullptr;
}

Runs Drawing::legible(Runs runs, double size) const {
    const double least = std::min(style.leastSerif / size, 1.0);
    for (Run& run : runs)
        run.part = std::max(run.line > 0 ? run.part : kScriptPart, least);
    return runs;
}

bool Drawing::isDrawn(const PlainVector& vector) const {
    return vector.complete() && vector.magnitude > 0 && (!vector.found() || shows(Stage::found));
}

bool Drawing::isDrawn(int index) const {
    return isDrawn(vectors.at(index)) && (!options.alone || !triangle() || sideOf(index) < 3);
}

bool Drawing::isLine(int index) const {
    const PlainVector& v = vectors.at(index);
    return given && v.hasDirection && !v.hasMagnitude && !(options.alone && triangle());
}

double Drawing::lengthOf(int index) const {
    return isLine(index) ? length(lineOf(index).tip - common()) : vectors.at(index).magnitude * view.scale;
}

Ends Drawing::lineOf(int index) const {
    const Eigen::Vector2d& u = vectors.at(index).unit;
    const Point unit{u.x(), -u.y()};
    const Box room = grown(sheet, -kLineInset * factor);
    const auto end = [&](double along) {
        const Point to = common() + along * factor * unit;
        const auto parts = visibleParts(common(), to, room, reserved);
        return parts.empty() || parts.front()[0] > 0 ? to : common() + parts.front()[1] * (to - common());
    };
    return {forceAt(index).lineOfActionOnly ? end(-kPastPoint * kLine) : common(), end(kLine)};
}

std::optional<double> Drawing::referred(int index) const {
    if (answered()) {
        const Solution& s = solved.solutions[options.solution];
        return referredAsShown(index == kSumIndex ? s.sum : s.forces[static_cast<std::size_t>(index)],
                               forceAt(index), sketch);
    }
    return referredAsGiven(forceAt(index).direction, sketch);
}

std::array<std::size_t, 2> Drawing::drawnPairs() const {
    if (options.pair == kAllPairs)
        return {0, pairs.size()};
    const auto one = static_cast<std::size_t>(options.pair) - 1; // kNoPairs: beyond them all
    return one < pairs.size() ? std::array{one, one + 1} : std::array<std::size_t, 2>{0, 0};
}

bool Drawing::isRevealed(const QuantityId& quantity, bool otherAnswer) const {
    const std::size_t answer = otherAnswer ? 2 - options.solution : options.solution + 1;
    const auto is = [&](QuantityId hidden) {
        if (hidden.answer != 0 && hidden.answer != answer)
            return false;
        hidden.answer = 0;
        if (hidden.what == What::direction) // as given or as it acts: the figure shows one of them
            hidden.part = 0;
        return isSame(hidden, quantity);
    };
    return options.values && std::none_of(options.hidden.begin(), options.hidden.end(), is);
}

std::string Drawing::idOfVector(int index) const {
    return index == kSumIndex ? "sum" : idOf("force", vectors.at(index).name);
}

ConstructionKind drawnKind(ConstructionKind asked, const Construction& construction) {
    switch (asked) {
    case ConstructionKind::none:
        return ConstructionKind::none;
    case ConstructionKind::parallelogram:
        return construction.parallelogram ? ConstructionKind::parallelogram : ConstructionKind::polygon;
    case ConstructionKind::triangle:
        return construction.triangle ? ConstructionKind::triangle : ConstructionKind::polygon;
    case ConstructionKind::polygon:
        break;
    }
    return ConstructionKind::polygon;
}

ConstructionKind Drawing::kind() const {
    return drawnKind(options.construction, construction);
}

const ForceTriangle* Drawing::triangle() const {
    if (kind() != ConstructionKind::triangle || !shows(Stage::construction))
        return nullptr;
    return options.otherOrder ? &*construction.otherTriangle : &*construction.triangle;
}

namespace {

int vectorOf(const Locus& locus) {
    return std::visit([](const auto& l) { return l.vector; }, locus);
}

/// Where a locus starts: of two that meet the second does at the far end of the known side.
Eigen::Vector2d startOf(const Locus& locus) {
    const auto* line = std::get_if<LineLocus>(&locus);
    return line ? line->through : std::get<CircleLocus>(locus).centre;
}

} // namespace

namespace {

/// Two unknown forces stand in the triangle that is asked for in the order in which their loci do not: where
/// the triangle ends. Empty where they keep their places.
std::optional<Eigen::Vector2d> endOfChanged(const Solved& solved, const Construction& construction,
                                            const FigureOptions& options) {
    const auto [u, v] = solved.unknownVectors;
    if (options.construction != ConstructionKind::triangle || u < 0 || v < 0 || construction.loci.size() != 2)
        return std::nullopt;
    const int first = options.otherOrder ? v : u;
    return first == vectorOf(construction.loci[0]) ? std::nullopt
                                                   : std::optional(startOf(construction.loci[1]));
}

/// Where the known forces of a polygon end.
Eigen::Vector2d shiftOf(const Solved& solved, const Construction& construction,
                        const FigureOptions& options) {
    const auto [u, v] = solved.unknownVectors;
    const bool inPolygon = u >= 0 && v >= 0 && lociMeet(solved) &&
                           drawnKind(options.construction, construction) == ConstructionKind::polygon;
    return inPolygon ? solved.knownSum : Eigen::Vector2d(0, 0);
}

} // namespace

DrawnLoci drawnLoci(const Solved& solved, const Construction& construction, const FigureOptions& options) {
    const auto end = endOfChanged(solved, construction, options);
    const Eigen::Vector2d shift = shiftOf(solved, construction, options);
    const auto placed = [&](Eigen::Vector2d& at) { at = end ? Eigen::Vector2d(*end - at) : at + shift; };
    DrawnLoci drawn{construction.loci, construction.meetings, end.has_value()};
    for (Locus& locus : drawn.loci)
        if (auto* ray = std::get_if<LineLocus>(&locus)) {
            placed(ray->through);
            ray->unit = end ? Eigen::Vector2d(-ray->unit) : ray->unit;
        } else {
            placed(std::get<CircleLocus>(locus).centre);
        }
    for (Eigen::Vector2d& meeting : drawn.meetings)
        placed(meeting);
    return drawn;
}

std::size_t Drawing::sideOf(int index) const {
    const ForceTriangle* t = triangle();
    if (!t)
        return 3;
    return static_cast<std::size_t>(std::find(t->vectors.begin(), t->vectors.end(), index) -
                                    t->vectors.begin());
}

bool Drawing::isMoved(int index) const {
    const std::size_t side = sideOf(index);
    return side == 1 || (side == 2 && index != kSumIndex);
}

Ends Drawing::endsOf(int index) const {
    Eigen::Vector2d tail(0, 0);
    if (isMoved(index))
        tail = triangle()->corners[sideOf(index)];
    return {view.toSheet(tail), view.toSheet(tail + vectors.at(index).vector)};
}

std::vector<double> Drawing::raysInside(double startDegrees, double sweepDegrees, double radius) const {
    const double sense = sweepDegrees < 0 ? -1 : 1;
    std::vector<double> inside;
    for (const Ray& ray : rays) {
        const double turn = turned(sense * (ray.degrees - startDegrees));
        if (ray.length >= radius && turn > kSameRay && turn < std::abs(sweepDegrees) - kSameRay)
            inside.push_back(turn);
    }
    std::sort(inside.begin(), inside.end());
    for (double& split : inside)
        split = startDegrees + sense * split;
    return inside;
}

} // namespace tailpoint
