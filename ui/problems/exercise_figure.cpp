// SPDX-License-Identifier: MIT
#include "ui/problems/exercise_figure.h"

#include "core/explain/question.h"
#include "core/figure/compose.h"
#include "ui/files/result.h"
#include "ui/handout/figure_parts.h"
#include "ui/render/render.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kPointsPerCm = 72 / 2.54;
constexpr double kBarRoom = 34,
                 kEdge = 16;   ///< points for the bar; between what is drawn and the sheet's edge
constexpr int kMostScales = 6; ///< that are tried

FigureOptions exerciseOptions(const Sketch& sketch) {
    FigureOptions options;
    options.construction = ConstructionKind::polygon;
    options.stage = Stage::directions;
    options.asGiven = true;
    options.bearings = true;
    options.titleBlock = false; // scale and axis are told beside the figure
    options.note = false;
    options.caution = false;
    options.names = namesOfGiven(sketch, options.stage);
    return options;
}

/// A box that grows.
struct Reach {
    double left = 1e300, right = -1e300, top = 1e300, bottom = -1e300;
    double width() const { return right - left; }
    double height() const { return bottom - top; }
    void take(Point point) {
        left = std::min(left, point.x);
        right = std::max(right, point.x);
        top = std::min(top, point.y);
        bottom = std::max(bottom, point.y);
    }
    void take(const Path& path) {
        for (const Point& point : path.points)
            take(point);
    }
    void take(const Arc& arc) {
        constexpr int pieces = 48; // of which each reaches less than a point beyond its ends
        for (int i = 0; i <= pieces; ++i) {
            const double angle = toRadians(arc.startDegrees + arc.sweepDegrees * i / pieces, AngleUnit::deg);
            take(Point{arc.centre.x + arc.radius * std::cos(angle),
                       arc.centre.y - arc.radius * std::sin(angle)});
        }
    }
    void take(const Disc& disc) {
        take(Point{disc.centre.x - disc.radius, disc.centre.y - disc.radius});
        take(Point{disc.centre.x + disc.radius, disc.centre.y + disc.radius});
    }
    void take(const Text& text) {
        take(Point{text.box.left, text.box.top});
        take(Point{text.box.right(), text.box.bottom()});
    }
};

/// How far the drawing goes; axes, grid and lines of action go as far as their sheet.
Reach reachOf(const DisplayList& list) {
    Reach reach;
    for (const Group& group : list.groups)
        if (group.role != Role::sheet && group.role != Role::grid && group.role != Role::axis &&
            group.role != Role::locus)
            for (const Item& item : group.items)
                std::visit([&](const auto& one) { reach.take(one); }, item);
    return reach;
}

/// A question's figure at one scale after another.
class Drafting {
public:
    Drafting(Result question, FigureOptions options, double width, double mostHeight)
        : m_question(std::move(question)), m_options(std::move(options)), m_width(width),
          m_mostHeight(mostHeight) {}

    /// The greatest scale, points a force unit, at which the given arrows alone would fit.
    double mostScale() const {
        Reach reach;
        reach.take(Point{});
        const auto take = [&](const Force& vector) {
            const auto unit = unitVector(vector.direction, m_question.sketch);
            if (unit && vector.magnitude.value)
                reach.take(Point{*vector.magnitude.value * static_cast<double>(unit->cos),
                                 *vector.magnitude.value * static_cast<double>(unit->sin)});
        };
        for (const Force& force : m_question.sketch.forces)
            take(force);
        take(m_question.sketch.sum);
        const double most = std::min(reach.width() > 0 ? (m_width - 2 * kEdge) / reach.width() : 1e300,
                                     reach.height() > 0 ? mostHeight() / reach.height() : 1e300);
        return most < 1e300 ? most : 1; // nothing has a length
    }

    /// At this scale, on a sheet as high as it needs; empty: too large for the paper, but for arcs and
    /// labels, which are as large at any scale.
    std::optional<DisplayList> at(double scale, bool isLast) const {
        constexpr double ample = 3000; // points: a sheet on which nothing is cut off
        const Reach reach = reachOf(composed({ample, ample, {ample / 2, ample / 2}, scale}));
        const bool fits = reach.height() <= mostHeight() && reach.width() <= m_width - 2 * kEdge;
        if (!fits && !isLast)
            return std::nullopt;
        const double height = std::max(kLeastExerciseHeight, reach.height() + 2 * kEdge);
        return composed({m_width,
                         height,
                         {(m_width + ample - reach.left - reach.right) / 2,
                          (height + ample - reach.top - reach.bottom) / 2},
                         scale});
    }

private:
    double mostHeight() const { return m_mostHeight - 2 * kEdge; }
    DisplayList composed(const View& view) const {
        return compose(m_question.sketch, m_question.solved, m_question.construction, view, m_options,
                       m_measure)
            .list;
    }

    QtTextMeasure m_measure;
    Result m_question;
    FigureOptions m_options;
    double m_width, m_mostHeight;
};

/// The next of 1, 2, 5 times a power of ten.
double nextCoarser(double unitsPerCm) {
    constexpr double more = 1.01;
    View view;
    view.scale = kPointsPerCm / (more * unitsPerCm);
    return divisionOf(view);
}

} // namespace

ExerciseFigure exerciseFigure(const Sketch& sketch, double width, double mostHeight) {
    const Drafting drafting(unanswered(sketch), exerciseOptions(sketch), width, mostHeight);
    ExerciseFigure figure;
    View most;
    most.scale = drafting.mostScale();
    figure.unitsPerCm = divisionOf(most);
    for (int tries = 1;; ++tries) {
        if (auto drawn = drafting.at(kPointsPerCm / figure.unitsPerCm, tries == kMostScales)) {
            figure.list = std::move(*drawn);
            break;
        }
        figure.unitsPerCm = nextCoarser(figure.unitsPerCm);
    }
    addScaleBar(figure.list, kBarRoom, figure.unitsPerCm, sketch, QtTextMeasure{});
    figure.list.description = plain(question(sketch)); // what is read aloud gives nothing away either
    return figure;
}

namespace {

/// Another angle of the same quadrant; greater ones stay greater, the axes where they are.
double bent(double radians) {
    constexpr double power = 0.75, least = 1e-9; // what lies so near to an axis lies on it
    const double quarter = std::acos(0.0), turns = std::floor(radians / quarter + least) * quarter;
    return turns + quarter * std::pow(std::max(0.0, (radians - turns) / quarter), power);
}

/// The same question with nearer magnitudes and other directions.
Sketch distorted(Sketch sketch) {
    double greatest = 0;
    for (const Force& force : sketch.forces)
        greatest = std::max(greatest, force.magnitude.value.value_or(0));
    const Sketch given = sketch;
    sketch.angleUnit = AngleUnit::deg;
    const auto change = [&](Force& vector, std::size_t index) {
        constexpr double least = 0.55, share = 0.25, more = 0.15; // of the greatest
        if (vector.magnitude.value.value_or(0) > 0)
            vector.magnitude = {greatest * (least + more * static_cast<double>(index % 2)) +
                                    share * std::min(greatest, *vector.magnitude.value),
                                {},
                                {}};
        if (const auto unit = unitVector(vector.direction, given)) {
            const auto turned = static_cast<double>(std::atan2(unit->sin, unit->cos));
            const double angle = bent(turned);
            vector.direction = {
                AngleForm{referredDirection(std::cos(angle), std::sin(angle), sketch).value_or(0), {}}, {}};
        }
    };
    for (std::size_t i = 0; i < sketch.forces.size(); ++i)
        change(sketch.forces[i], i);
    change(sketch.sum, 1);
    return sketch;
}

void sayNotToScale(DisplayList& list) {
    constexpr double inset = 14, size = 9;
    Group group;
    group.role = Role::axis;
    group.id = "not-to-scale";
    group.title.name = "Not to scale";
    Text text;
    text.anchor = Anchor::start;
    text.face = Face::sans;
    text.size = size;
    text.baseline = {inset, list.height - inset};
    text.runs = {{"Not to scale"}};
    text.halo = true; // an axis may pass there
    const TextExtent extent = QtTextMeasure{}.measure(text.runs, text.face, text.size);
    text.box = {inset, text.baseline.y - extent.ascent, extent.width, extent.ascent + extent.descent};
    group.items.emplace_back(std::move(text));
    list.groups.push_back(std::move(group));
}

} // namespace

ExerciseFigure figureNotToScale(const Sketch& sketch, double width, double mostHeight) {
    const Sketch other = distorted(sketch);
    FigureOptions options = exerciseOptions(other);
    options.values = false;
    options.grid = false;
    const Drafting drafting(unanswered(other), options, width, mostHeight);
    constexpr double smaller = 0.8;
    ExerciseFigure figure;
    double scale = drafting.mostScale();
    for (int tries = 1;; ++tries, scale *= smaller)
        if (auto drawn = drafting.at(scale, tries == kMostScales)) {
            figure.list = std::move(*drawn);
            break;
        }
    leaveOutWords(figure.list, true);
    sayNotToScale(figure.list);
    figure.list.description = plain(question(sketch));
    return figure;
}

} // namespace tailpoint
