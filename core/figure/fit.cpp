// A view that shows the whole construction, with room for labels, title block and note.
#include "core/figure/drawing.h"

#include <algorithm>

namespace tailpoint {
namespace {

/// Room for labels around the drawing, points.
constexpr double kSideMargin = 58, kUpMargin = 40;
/// A division is a multiple of this length, so that the scale can be said and measured.
constexpr double kScaleStep = 72 / 25.4 * 1.25;
constexpr double kEmptyDivision = 15 * kScaleStep / 50; ///< points per unit on a sheet with nothing to fit

using Points = std::vector<Eigen::Vector2d>;

struct Content {
    Points points;
    std::vector<std::pair<Eigen::Vector2d, Eigen::Vector2d>> strokes;
    void stroke(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
        points.push_back(a);
        points.push_back(b);
        strokes.emplace_back(a, b);
    }
};

void takeVectors(Content& content, const Vectors& vectors) {
    const Eigen::Vector2d origin(0, 0);
    for (const PlainVector& force : vectors.forces)
        if (force.complete())
            content.stroke(origin, force.vector);
    if (vectors.sum.complete())
        content.stroke(origin, vectors.sum.vector);
}

void takeConstruction(Content& content, const Construction& construction, ConstructionKind kind) {
    if (kind == ConstructionKind::none)
        return;
    if (kind == ConstructionKind::parallelogram && construction.parallelogram) {
        const auto& c = construction.parallelogram->corners;
        content.stroke(c[1], c[2]);
        content.stroke(c[3], c[2]);
        return;
    }
    const auto& corners = construction.polygon.corners;
    for (std::size_t i = 0; i + 1 < corners.size(); ++i)
        content.stroke(corners[i], corners[i + 1]);
    for (const auto* t : {&construction.triangle, &construction.otherTriangle})
        if (kind == ConstructionKind::triangle && *t)
            for (std::size_t i = 0; i < 3; ++i)
                content.stroke((*t)->corners[i], (*t)->corners[(i + 1) % 3]);
}

/// The force triangle stands alone, without the other answer's.
const ForceTriangle* aloneIn(const Solved& solved, const Construction& construction,
                             const FigureOptions& options) {
    const bool both = solved.solutions.size() > 1 && options.otherStage < 0;
    if (!options.alone || both || drawnKind(options.construction, construction) != ConstructionKind::triangle)
        return nullptr;
    return options.otherOrder ? &*construction.otherTriangle : &*construction.triangle;
}

/// `whole`: where the triangle ends, if the loci go with their forces to the other end of it.
void takeLoci(Content& content, const Construction& construction, const Eigen::Vector2d* whole) {
    const auto placed = [&](const Eigen::Vector2d& at) { return whole ? Eigen::Vector2d(*whole - at) : at; };
    for (const Locus& locus : construction.loci) {
        if (const auto* ray = std::get_if<LineLocus>(&locus)) {
            content.points.push_back(placed(ray->through));
            continue;
        }
        const auto& circle = std::get<CircleLocus>(locus);
        const Eigen::Vector2d centre = placed(circle.centre);
        for (const Eigen::Vector2d& way : {Eigen::Vector2d(1, 0), Eigen::Vector2d(0, 1)}) {
            content.points.push_back(centre + circle.radius * way);
            content.points.push_back(centre - circle.radius * way);
        }
    }
}

const Eigen::Vector2d* endOfChanged(const Sketch& sketch, const Solved& solved,
                                    const Construction& construction, const FigureOptions& options) {
    if (options.construction != ConstructionKind::triangle || !construction.triangle)
        return nullptr;
    const ForceTriangle& t = options.otherOrder ? *construction.otherTriangle : *construction.triangle;
    const bool changed =
        lociChangePlaces(t, solved, construction, vectorsOf(sketch, solved, options.solution));
    return changed ? &t.corners[2] : nullptr;
}

void takeAll(Content& content, const Sketch& sketch, const Solved& solved, const Construction& construction,
             const FigureOptions& options) {
    if (const ForceTriangle* t = aloneIn(solved, construction, options)) {
        for (std::size_t i = 0; i < 3; ++i)
            content.stroke(t->corners[i], t->corners[(i + 1) % 3]);
        return;
    }
    for (std::size_t s = 0; s < std::max<std::size_t>(1, solved.solutions.size()); ++s)
        takeVectors(content, vectorsOf(sketch, solved, s));
    takeConstruction(content, construction, options.construction);
    takeLoci(content, construction, endOfChanged(sketch, solved, construction, options));
}

struct Bounds {
    double left = 0, right = 0, down = 0, up = 0;
};

Bounds boundsOf(const Points& points) {
    Bounds b; // the common point belongs to it
    for (const Eigen::Vector2d& p : points) {
        b.left = std::min(b.left, p.x());
        b.right = std::max(b.right, p.x());
        b.down = std::min(b.down, p.y());
        b.up = std::max(b.up, p.y());
    }
    return b;
}

/// Down to a scale at which a division is a multiple of kScaleStep.
double niceScale(double most, double width, double height) {
    const double division = divisionOf({width, height, {0, 0}, most});
    const double points = std::floor(division * most / kScaleStep * (1 + 1e-9)) * kScaleStep;
    return points > 0 && std::isfinite(points / division) ? points / division : most;
}

/// Points that the arcs at the common point need to the right, up, left and down of it.
using ArcRoom = std::array<double, 4>;

ArcRoom arcRoomOf(const Sketch& sketch, const Vectors& vectors, const FigureOptions& options) {
    ArcRoom room{};
    const std::size_t arcs = vectors.forces.size() + 1;
    if (!options.angles || vectors.forces.size() > kMostAxisArcs)
        return room;
    const double reach = (62 + 13 * static_cast<double>(arcs)) * options.style.factor;
    const auto consider = [&](const PlainVector& v) {
        if (!v.complete() || v.magnitude == 0)
            return;
        const double turn = turned(degreesOf(v.unit) - sketch.reference.axisDegrees);
        const double sense = turn > 180 ? -1 : 1, sweep = turn > 180 ? 360 - turn : turn;
        for (std::size_t way = 0; way < 4; ++way)
            if (turned(sense * (90.0 * static_cast<double>(way) - sketch.reference.axisDegrees)) < sweep)
                room[way] = reach;
    };
    for (const PlainVector& force : vectors.forces)
        consider(force);
    consider(vectors.sum);
    return room;
}

/// Greatest scale at which max(low * scale, lowRoom) + max(high * scale, highRoom) fits `room`.
double scaleFor(double low, double high, double lowRoom, double highRoom, double room) {
    const double both = room / (low + high);
    if (low * both >= lowRoom && high * both >= highRoom)
        return both;
    const double lowFixed = (room - lowRoom) / high, highFixed = (room - highRoom) / low;
    if (low * both < lowRoom && low * lowFixed <= lowRoom)
        return std::max(lowFixed, both / 3);
    return std::max(highFixed, both / 3);
}

/// Fits the bounds and the arcs into a part of the sheet.
View viewInto(const Box& room, const Bounds& b, const ArcRoom& arcs, double width, double height) {
    double scale = kEmptyDivision;
    if (b.right - b.left > 0 || b.up - b.down > 0) {
        const double x =
            b.right - b.left > 0 ? scaleFor(-b.left, b.right, arcs[2], arcs[0], room.width) : 1e300;
        const double y = b.up - b.down > 0 ? scaleFor(b.up, -b.down, arcs[1], arcs[3], room.height) : 1e300;
        scale = niceScale(std::min(x, y), width, height);
    }
    const auto middle = [](double from, double size, double low, double high) {
        return from + (size - low - high) / 2 + low;
    };
    View view{width, height, {}, scale};
    view.origin.x =
        middle(room.left, room.width, std::max(-b.left * scale, arcs[2]), std::max(b.right * scale, arcs[0]));
    view.origin.y =
        middle(room.top, room.height, std::max(b.up * scale, arcs[1]), std::max(-b.down * scale, arcs[3]));
    return view;
}

/// Does the drawing keep clear of the title block, arcs and their values included?
bool isClear(const View& view, const Content& content, const ArcRoom& arcs, const Box& box) {
    const double right = arcs[0] > 0 ? arcs[0] : 0, down = arcs[3] > 0 ? arcs[3] : 0;
    if (std::max(right, down) > 0 && view.origin.x + std::max(right, down) > box.left &&
        view.origin.y + down > box.top)
        return false;
    return std::none_of(content.strokes.begin(), content.strokes.end(), [&](const auto& stroke) {
        return meets(box, view.toSheet(stroke.first), view.toSheet(stroke.second));
    });
}

Box roomOf(double width, double height, double f) {
    const double x = std::min(kSideMargin * f, 0.16 * width), y = std::min(kUpMargin * f, 0.14 * height);
    return {x, y, width - 2 * x, height - 2 * y};
}

/// Title block and note, as they will stand at this scale.
std::vector<Box> bandOf(const Sketch& sketch, const Solved& solved, const Construction& construction,
                        const FigureOptions& options, const View& view, const TextMeasure* measure) {
    std::vector<Box> band;
    const auto block = titleBlockBox(sketch, view, options, measure);
    if (block)
        band.push_back(*block);
    const double f = options.style.factor, size = std::max(10 * f, options.style.leastSans);
    const NoteRoom note = roomForNote(view, block, f);
    const auto lines = noteLines(sketch, solved, construction, options, note.width, size, measure);
    const double noteHeight = 1.45 * size * static_cast<double>(lines.size());
    if (!lines.empty())
        band.push_back({0, note.bottom - noteHeight, note.width + 14 * f, noteHeight + 3 * f});
    return band;
}

/// The largest drawing above all of these boxes, or to the left of them.
template <class Clear>
View viewBeside(const std::vector<Box>& boxes, const Box& all, const Bounds& bounds, const ArcRoom& arcs,
                const View& sheet, const Clear& clear) {
    double top = sheet.height, left = sheet.width;
    for (const Box& box : boxes) {
        top = std::min(top, box.top);
        left = std::min(left, box.left);
    }
    Box above = all, beside = all;
    above.height = std::max(top - all.top, 0.2 * sheet.height);
    beside.width = left - all.left;
    View best = viewInto(above, bounds, arcs, sheet.width, sheet.height);
    if (!clear(best)) // the arcs do without their room
        best = viewInto(above, bounds, {}, sheet.width, sheet.height);
    if (beside.width > 0.2 * sheet.width)
        if (const View other = viewInto(beside, bounds, arcs, sheet.width, sheet.height);
            other.scale > best.scale && clear(other))
            best = other;
    return best;
}

} // namespace

View fittedView(const Sketch& sketch, const Solved& solved, const Construction& construction,
                const FigureOptions& options, double width, double height, const TextMeasure* measure) {
    width = std::max(width, 1.0);
    height = std::max(height, 1.0);
    Content content;
    takeAll(content, sketch, solved, construction, options);
    const Bounds bounds = boundsOf(content.points);

    const double f = options.style.factor;
    // Values stand out to the margin as labels do: of the arcs' room the margin is already there.
    const ArcRoom wanted = aloneIn(solved, construction, options)
                               ? ArcRoom{}
                               : arcRoomOf(sketch, vectorsOf(sketch, solved, options.solution), options);
    ArcRoom arcs = wanted;
    for (std::size_t way = 0; way < 4; ++way)
        arcs[way] = std::clamp(arcs[way] - (way % 2 == 0 ? kSideMargin : kUpMargin) * f, 0.0,
                               0.3 * std::min(width, height));
    const Box all = roomOf(width, height, f);
    View best = viewInto(all, bounds, arcs, width, height);
    // Title block and note must not be drawn over. They depend on the scale, so the drawing that keeps clear
    // of those that it has is looked for in a few turns.
    std::vector<Box> below;
    constexpr int turns = 3;
    for (int turn = 0; turn < turns; ++turn) {
        for (const Box& box : bandOf(sketch, solved, construction, options, best, measure))
            below.push_back(grown(box, 12 * f));
        const auto clear = [&](const View& view) {
            return std::all_of(below.begin(), below.end(),
                               [&](const Box& box) { return isClear(view, content, wanted, box); });
        };
        if (clear(best))
            break;
        best = viewBeside(below, all, bounds, arcs, best, clear);
    }
    return best;
}

} // namespace tailpoint
