#include "ui/problems/exercise_figure.h"

#include "core/explain/question.h"
#include "core/figure/compose.h"
#include "ui/document/result.h"
#include "ui/handout/figure_parts.h"
#include "ui/render/render.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kPointsPerCm = 72 / 2.54;
constexpr double kBarRoom = 34,
                 kEdge = 16;     ///< points for the bar; between what is drawn and the sheet's edge
constexpr int kMostScales = 6;   ///< that are tried
constexpr double kTallest = 640; ///< points: of a sheet on which any scale worth printing fits

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

struct Reach {
    double top = 1e300, bottom = -1e300;
    void take(double y) {
        top = std::min(top, y);
        bottom = std::max(bottom, y);
    }
    void take(const Path& path) {
        for (const Point& point : path.points)
            take(point.y);
    }
    void take(const Arc& arc) {
        constexpr int pieces = 48; // of which each reaches less than a point beyond its ends
        for (int i = 0; i <= pieces; ++i)
            take(arc.centre.y -
                 arc.radius *
                     std::sin(toRadians(arc.startDegrees + arc.sweepDegrees * i / pieces, AngleUnit::deg)));
    }
    void take(const Disc& disc) {
        take(disc.centre.y - disc.radius);
        take(disc.centre.y + disc.radius);
    }
    void take(const Text& text) {
        take(text.box.top);
        take(text.box.bottom());
    }
};

/// How far up and down the drawing goes; axes, grid and lines of action go as far as their sheet.
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
    Drafting(Result question, FigureOptions options, double width)
        : m_question(std::move(question)), m_options(std::move(options)),
          m_fitted(fittedView(m_question.sketch, m_question.solved, m_question.construction, m_options, width,
                              kTallest, &m_measure)) {}

    const View& fitted() const { return m_fitted; }

    /// At this scale, on a sheet as high as it needs; empty: higher than kMostExerciseHeight, but for arcs
    /// and labels that are as high at any scale.
    std::optional<DisplayList> at(double scale, bool isLast) const {
        View view = m_fitted; // about its middle
        const Point middle{view.width / 2, view.height / 2};
        const Eigen::Vector2d there = view.toSketch(middle);
        view.scale = scale;
        view.origin = {middle.x - scale * there.x(), middle.y + scale * there.y()};
        const Reach reach = reachOf(composed(view));
        const double height = std::max(kLeastExerciseHeight, reach.bottom - reach.top + 2 * kEdge);
        if (height > kMostExerciseHeight && !isLast)
            return std::nullopt;
        view.origin.y += (height - reach.bottom - reach.top) / 2;
        view.height = height;
        return composed(view);
    }

private:
    DisplayList composed(const View& view) const {
        return compose(m_question.sketch, m_question.solved, m_question.construction, view, m_options,
                       m_measure)
            .list;
    }

    QtTextMeasure m_measure;
    Result m_question;
    FigureOptions m_options;
    View m_fitted;
};

/// The next of 1, 2, 5 times a power of ten.
double nextCoarser(double unitsPerCm) {
    constexpr double more = 1.01;
    View view;
    view.scale = kPointsPerCm / (more * unitsPerCm);
    return divisionOf(view);
}

} // namespace

ExerciseFigure exerciseFigure(const Sketch& sketch, double width) {
    const Drafting drafting(unanswered(sketch), exerciseOptions(sketch), width);
    ExerciseFigure figure;
    figure.unitsPerCm = divisionOf(drafting.fitted());
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
    const TextExtent extent = QtTextMeasure{}.measure(text.runs, text.face, text.size);
    text.box = {inset, text.baseline.y - extent.ascent, extent.width, extent.ascent + extent.descent};
    group.items.emplace_back(std::move(text));
    list.groups.push_back(std::move(group));
}

} // namespace

ExerciseFigure figureNotToScale(const Sketch& sketch, double width) {
    const Sketch other = distorted(sketch);
    FigureOptions options = exerciseOptions(other);
    options.values = false;
    options.grid = false;
    const Drafting drafting(unanswered(other), options, width);
    constexpr double smaller = 0.8;
    ExerciseFigure figure;
    double scale = drafting.fitted().scale;
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
