// SPDX-License-Identifier: MIT
#include "core/figure/sweep_plot.h"

#include "core/explain/swept.h"
#include "core/figure/geometry.h"
#include "core/figure/sweep_labels.h"
#include "core/figure/words.h"
#include "core/sketch/cases.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

constexpr double kMargin = 12, kTick = 4;
constexpr double kLeastPanel = 40;  ///< points: a lower one tells nothing
constexpr double kKeySample = 34;   ///< length of a line's sample in the key
constexpr double kMostOverRest = 4; ///< a curve is cut off at so many times what nine tenths of it reach
constexpr double kNearerThan = 0.3; ///< points: the next one drawn is no nearer to the last

class Plotter {
public:
    Plotter(const Sweep& sweep, const Sketch& sketch, const SweepPlotOptions& options,
            const TextMeasure& measure)
        : m_sweep(sweep), m_sketch(sketch), m_options(options), m_measure(measure), m_size(options.textSize),
          m_isDegrees(sketch.angleUnit == AngleUnit::deg) {}

    SweepPlot plotted() {
        m_plot.list.width = m_options.width;
        m_plot.list.height = m_options.height;
        m_plot.list.title = withMinusSigns(titleOf(m_sweep, m_sketch, m_options.sentences));
        describe();
        m_plot.from = std::min(m_sweep.range.from, m_sweep.range.to);
        m_plot.to = std::max(m_sweep.range.from, m_sweep.range.to);
        drawSheet();
        const double top = m_options.title ? drawTitle() : kMargin;
        const double foot = drawKey(drawFeet());
        layPanels(top, foot);
        for (std::size_t i = 0; i < m_plot.panels.size(); ++i) {
            drawAxes(m_plot.panels[i], i + 1 == m_plot.panels.size());
        }
        for (const SweepPanel& panel : m_plot.panels) {
            drawCurves(panel);
        }
        return std::move(m_plot);
    }

private:
    void describe() {
        std::string all;
        for (const std::string& line : sweepLines(m_sweep, m_sketch, m_options.sentences)) {
            all += (all.empty() ? "" : ". ") + withMinusSigns(line);
        }
        m_plot.list.description = all;
    }

    Group& add(Role role, std::string id, std::string name, std::string detail = {}) {
        Group& group = m_plot.list.groups.emplace_back();
        group.role = role;
        group.id = std::move(id);
        group.title = {std::move(name), std::move(detail)};
        return group;
    }

    Text text(Point at, Runs runs, Anchor anchor, Role ink = Role::label) const {
        return sweepText(at, std::move(runs), anchor, ink, m_size, m_measure);
    }
    double widthOf(const Runs& runs) const { return m_measure.measure(runs, Face::sans, m_size).width; }

    void drawSheet() {
        Path sheet{Role::sheet,
                   {{0, 0}, {m_options.width, 0}, {m_options.width, m_options.height}, {0, m_options.height}},
                   true,
                   true,
                   0};
        add(Role::sheet, "sheet", "Sheet").items.emplace_back(std::move(sheet));
    }

    double drawTitle() {
        double y = kMargin + m_size;
        Group& group = add(Role::titleblock, "title", "Title");
        const std::string title = titleWithCase(m_sketch);
        const std::string name = title.empty() ? m_plot.list.title : title + ". " + m_plot.list.title;
        for (Runs& line : lines(name, m_options.width - 2 * kMargin)) {
            for (Run& run : line) {
                run.bold = true;
            }
            group.items.emplace_back(text({kMargin, y}, std::move(line), Anchor::start));
            y += 1.4 * m_size;
        }
        return y;
    }

    std::vector<Runs> lines(std::string_view words, double room) const {
        return wrapped(plainRuns(words), room, [&](const Runs& runs) { return widthOf(runs); });
    }

    /// The lines at the foot; where the next thing above them may end.
    double drawFeet() {
        std::vector<Runs> all;
        for (const std::string& foot : m_options.feet) {
            for (Runs& line : lines(foot, m_options.width - 2 * kMargin)) {
                all.push_back(std::move(line));
            }
        }
        double y = m_options.height - kMargin - 0.3 * m_size;
        if (all.empty()) {
            return m_options.height - kMargin;
        }
        Group& group = add(Role::label, "foot", "Note");
        for (auto line = all.rbegin(); line != all.rend(); ++line) {
            group.items.emplace_back(text({kMargin, y}, std::move(*line), Anchor::start));
            y -= 1.35 * m_size;
        }
        return y;
    }

    double drawKey(double foot) {
        if (!m_options.key) {
            return foot;
        }
        std::vector<std::pair<const Curve*, Runs>> rows;
        const double room = m_options.width - 2 * kMargin - kKeySample - 8;
        for (const Curve& curve : m_sweep.curves) {
            const ExtremeWords words = extremeWords(curve, m_sweep, m_sketch, m_options.sentences);
            const std::string both = words.least + (words.greatest.empty() ? "" : "; " + words.greatest);
            bool isFirst = true;
            for (Runs& line : lines(withMinusSigns(both), room)) {
                rows.emplace_back(isFirst ? &curve : nullptr, std::move(line));
                isFirst = false;
            }
        }
        for (const Gap& gap : m_sweep.gaps) {
            rows.emplace_back(
                nullptr, plainRuns(withMinusSigns(wordsOf(gap, m_sweep, m_sketch, m_options.sentences))));
        }
        const double leading = 1.45 * m_size;
        double y = foot - leading * static_cast<double>(rows.size()) + m_size;
        const double top = y - m_size;
        Group& group = add(Role::label, "key", "Key");
        for (auto& [curve, words] : rows) {
            if (curve) {
                Path sample = strokeOf(*curve);
                sample.points = {{kMargin, y - 0.32 * m_size}, {kMargin + kKeySample, y - 0.32 * m_size}};
                group.items.emplace_back(std::move(sample));
            }
            group.items.emplace_back(text({kMargin + kKeySample + 8, y}, std::move(words), Anchor::start));
            y += leading;
        }
        return top - 0.5 * m_size;
    }

    bool isIn(const Curve& curve, bool directions) const {
        return (curve.of.kind == Swept::Kind::direction) == directions && curve.least.has_value();
    }

    void layPanels(double top, double foot) {
        std::vector<bool> kinds;
        for (const bool directions : {false, true}) {
            const auto& all = m_sweep.curves;
            if (std::any_of(all.begin(), all.end(), [&](const Curve& c) { return isIn(c, directions); })) {
                kinds.push_back(directions);
            }
        }
        const double under = 3.2 * m_size, between = 1.2 * m_size, head = 1.5 * m_size;
        const double room = foot - top - under - between * static_cast<double>(kinds.size()) -
                            head * static_cast<double>(kinds.size());
        const double height = kinds.empty() ? 0 : room / static_cast<double>(kinds.size());
        const double left = kMargin + 5.2 * m_size, right = m_options.width - kMargin - nameRoom();
        if (height < kLeastPanel || right - left < 2 * kLeastPanel) {
            return;
        }
        double y = top;
        for (const bool directions : kinds) {
            SweepPanel panel{{left, y + head, right - left, height}, 0, 1, directions};
            takeRange(panel);
            m_plot.panels.push_back(panel);
            y += head + height + between;
        }
    }

    double nameRoom() const {
        double widest = 2 * m_size;
        for (const Curve& curve : m_sweep.curves) {
            widest = std::max(widest, widthOf(nameRuns(curve)));
        }
        return widest + 10;
    }

    Runs nameRuns(const Curve& curve) const {
        if (curve.of.kind == Swept::Kind::larger) {
            return plainRuns("larger");
        }
        const VectorId vector = vectorId(curve.of.vector);
        Runs runs = symbolRuns(curve.of.kind == Swept::Kind::direction ? m_things.symbol(directionId(vector))
                                                                       : m_things.symbol(vector));
        if (curve.of.answer != 0) {
            runs.push_back(plainRuns(" (" + std::to_string(curve.of.answer) + ")").front());
        }
        return runs;
    }

    /// Forces from zero; both ends on a mark.
    void takeRange(SweepPanel& panel) const {
        std::vector<double> values;
        for (const Curve& curve : m_sweep.curves) {
            if (isIn(curve, panel.areDirections)) {
                for (const auto& piece : curve.pieces) {
                    for (const CurvePoint& point : piece) {
                        values.push_back(point.value);
                    }
                }
            }
        }
        std::sort(values.begin(), values.end());
        double low = panel.areDirections ? values.front() : 0, high = values.back();
        const double most = values[values.size() * 9 / 10];
        if (!panel.areDirections && most > 0 && high > kMostOverRest * most) {
            high = kMostOverRest / 2 * most;
        }
        if (!(high > low)) {
            low -= panel.areDirections ? 1 : 0;
            high = low + (high > 0 && !panel.areDirections ? 1.2 * high : 2);
        }
        const bool degrees = panel.areDirections && m_isDegrees;
        const auto marks = niceMarks(low, high, 5, degrees);
        const double step = marks.size() > 1 ? marks[1] - marks[0] : 0;
        if (step > 0) {
            low = std::floor(low / step + 1e-9) * step;
            high = std::ceil(high / step - 1e-9) * step;
        }
        panel.low = low;
        panel.high = high;
    }

    static std::string shownMark(double value, double step) {
        const int decimals = std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 12);
        return std::fabs(value) >= 1e7 || step < 1e-9 ? shortest(value)
                                                      : withMinusSigns(fixedDecimals(value, decimals));
    }
    static double stepOf(const std::vector<double>& marks) {
        return marks.size() > 1 ? marks[1] - marks[0] : 1;
    }

    std::string unitOf(bool angle) const {
        return angle ? m_isDegrees ? "°" : std::string(nameOf(m_sketch.angleUnit))
                     : std::string(symbolOf(m_sketch.forceUnit));
    }

    void drawAxes(const SweepPanel& panel, bool isLast) {
        const Box& box = panel.box;
        const bool angleBelow = m_sweep.range.varied.isDirection;
        const auto across = niceMarks(m_plot.from, m_plot.to, std::max(2, static_cast<int>(box.width / 60)),
                                      angleBelow && m_isDegrees);
        const auto up = niceMarks(panel.low, panel.high, std::max(2, static_cast<int>(box.height / 30)),
                                  panel.areDirections && m_isDegrees);
        const std::string suffix = panel.areDirections ? "-directions" : "-magnitudes";
        Group& grid = add(Role::grid, "grid" + suffix, "Grid");
        for (const double mark : across) {
            const double x = m_plot.xOf(mark, panel);
            grid.items.emplace_back(stroke(Role::grid, {x, box.top}, {x, box.bottom()}, 0.5));
        }
        for (const double mark : up) {
            const double y = SweepPlot::yOf(mark, panel);
            grid.items.emplace_back(stroke(Role::grid, {box.left, y}, {box.right(), y}, 0.5));
        }
        Group& axes = add(Role::axis, "axes" + suffix, "Axes");
        axes.items.emplace_back(stroke(Role::axis, {box.left, box.top}, {box.left, box.bottom()}, 0.85));
        axes.items.emplace_back(
            stroke(Role::axis, {box.left, box.bottom()}, {box.right(), box.bottom()}, 0.85));
        for (const double mark : up) {
            const double y = SweepPlot::yOf(mark, panel);
            axes.items.emplace_back(stroke(Role::axis, {box.left - kTick, y}, {box.left, y}, 0.85));
            axes.items.emplace_back(text({box.left - kTick - 3, y + 0.35 * m_size},
                                         plainRuns(shownMark(mark, stepOf(up))), Anchor::end));
        }
        axes.items.emplace_back(text(
            {box.left, box.top - 0.6 * m_size},
            plainRuns((panel.areDirections ? "direction, " : "magnitude, ") + unitOf(panel.areDirections)),
            Anchor::start));
        for (const double mark : across) {
            const double x = m_plot.xOf(mark, panel);
            axes.items.emplace_back(stroke(Role::axis, {x, box.bottom()}, {x, box.bottom() + kTick}, 0.85));
            if (isLast) {
                axes.items.emplace_back(text({x, box.bottom() + kTick + 1.1 * m_size},
                                             plainRuns(shownMark(mark, stepOf(across))), Anchor::middle));
            }
        }
        if (isLast) {
            const std::string words =
                wordsOf(m_sweep.range.varied, m_sketch, m_options.sentences) + ", " + unitOf(angleBelow);
            axes.items.emplace_back(text({box.left + box.width / 2, box.bottom() + kTick + 2.5 * m_size},
                                         plainRuns(words), Anchor::middle));
        }
    }

    static Path stroke(Role role, Point a, Point b, double width) {
        return {role, {a, b}, false, false, width};
    }

    /// The larger is a broad band under the others. Of the rest no two have a dash in common where there are
    /// no more than five.
    Path strokeOf(const Curve& curve) const {
        static constexpr std::array dashes{Dash::solid, Dash::dashed, Dash::chain, Dash::dotted,
                                           Dash::chainTwoDots};
        Path path;
        if (curve.of.kind == Swept::Kind::larger) {
            path.role = Role::highlight;
            path.width = 6;
            return path;
        }
        std::size_t before = 0;
        for (const Curve& other : m_sweep.curves) {
            if (&other == &curve) {
                break;
            }
            before += other.of.kind == curve.of.kind ? 1 : 0;
        }
        path.role = curve.of.vector == kSumIndex ? Role::sum : Role::given;
        path.dash = dashes[before % dashes.size()];
        path.width = curve.of.vector == kSumIndex ? 2.2 : 1.7;
        return path;
    }

    /// A piece as it is drawn: cut at the panel's head, points no nearer than is seen.
    std::vector<Path> pathsOf(const Curve& curve, const SweepPanel& panel) const {
        std::vector<Path> paths;
        for (const auto& piece : curve.pieces) {
            Path path = strokeOf(curve);
            const auto close = [&] {
                if (path.points.size() > 1) {
                    paths.push_back(path);
                }
                path.points.clear();
            };
            std::optional<Point> before;
            for (const CurvePoint& point : piece) {
                const Point here{m_plot.xOf(point.at, panel),
                                 std::max(SweepPlot::yOf(point.value, panel), -1e6)};
                const bool isIn = here.y >= panel.box.top - 0.01;
                if (before && isIn != (before->y >= panel.box.top - 0.01)) {
                    const double part = (panel.box.top - before->y) / (here.y - before->y);
                    path.points.push_back(*before + part * (here - *before));
                    if (!isIn) {
                        close();
                    }
                }
                const bool isLast = &point == &piece.back();
                if (isIn &&
                    (path.points.empty() || isLast || length(here - path.points.back()) > kNearerThan)) {
                    path.points.push_back(here);
                }
                before = here;
            }
            close();
        }
        return paths;
    }

    void drawCurves(const SweepPanel& panel) {
        std::vector<const Curve*> shown;
        for (const bool band : {true, false}) { // drawn first, under the others
            for (const Curve& curve : m_sweep.curves) {
                if (isIn(curve, panel.areDirections) && (curve.of.kind == Swept::Kind::larger) == band) {
                    shown.push_back(&curve);
                }
            }
        }
        SweepLabels labels(panel, m_size, m_measure);
        for (const Curve* each : shown) {
            const Curve& curve = *each;
            const Path look = strokeOf(curve);
            const ExtremeWords words = extremeWords(curve, m_sweep, m_sketch, m_options.sentences);
            Group& group =
                add(look.role, "curve-" + std::to_string(&curve - m_sweep.curves.data() + 1),
                    wordsOf(curve.of, m_sketch, m_options.sentences),
                    withMinusSigns(words.least + (words.greatest.empty() ? "" : "; " + words.greatest)));
            for (Path& path : pathsOf(curve, panel)) {
                labels.avoid(path);
                group.items.emplace_back(std::move(path));
            }
            labels.name(nameRuns(curve), endOf(curve, panel));
            if (!curve.isConstant()) {
                mark(labels, group, curve, *curve.least, words.least, panel);
                mark(labels, group, curve, *curve.greatest, words.greatest, panel);
            }
        }
        Group& group =
            add(Role::label, panel.areDirections ? "labels-directions" : "labels-magnitudes", "Labels");
        for (Item& item : labels.placed()) {
            group.items.push_back(std::move(item));
        }
    }

    Point endOf(const Curve& curve, const SweepPanel& panel) const {
        const CurvePoint& last = curve.pieces.back().back();
        return {m_plot.xOf(last.at, panel), SweepPlot::yOf(std::min(last.value, panel.high), panel)};
    }

    void mark(SweepLabels& labels, Group& group, const Curve& curve, const Extreme& extreme,
              const std::string& words, const SweepPanel& panel) const {
        if (extreme.isUnbounded || extreme.value > panel.high) {
            return;
        }
        const Point at{m_plot.xOf(extreme.at, panel), SweepPlot::yOf(extreme.value, panel)};
        Disc disc{curve.of.kind == Swept::Kind::larger ? Role::construction : group.role, at, 0.32 * m_size,
                  1.4, true};
        group.items.emplace_back(disc);
        labels.extreme(at, plainRuns(withMinusSigns(words)), curve.of.kind == Swept::Kind::larger);
    }

    const Sweep& m_sweep;
    const Sketch& m_sketch;
    const SweepPlotOptions& m_options;
    const TextMeasure& m_measure;
    const Things m_things{m_sketch};
    double m_size;
    bool m_isDegrees;
    SweepPlot m_plot;
};

} // namespace

SweepPlot sweepPlot(const Sweep& sweep, const Sketch& sketch, const SweepPlotOptions& options,
                    const TextMeasure& measure) {
    return Plotter(sweep, sketch, options, measure).plotted();
}

} // namespace tailpoint
