#include "ui/canvas/scene.h"

#include "core/construct/pairs.h"
#include "ui/canvas/drawn.h"

#include <algorithm>

namespace tailpoint {

namespace {
constexpr double kEdge = 6;       // points that a tip may come near the edge before the sheet is fitted anew
constexpr double kSmall = 2.5;    // so many times smaller than it could be is too small
constexpr double kMostZoom = 400; // against the fitted scale; beyond it painting coordinates overflow
constexpr double kLeastZoom = 0.02;
} // namespace

FigureOptions Scene::options() const {
    FigureOptions options = m_options;
    options.solution = result().chosen;
    options.note = m_options.note && result().solved.solutions.empty(); // the panel tells an answer already
    return options;
}

const Figure& Scene::figure() const {
    if (m_stale) {
        const Placement previous = m_steady ? m_figure.placement : Placement{};
        const Result& r = result();
        m_figure =
            compose(r.sketch, r.solved, r.construction, m_sheet.view(), options(), m_measure, previous);
        m_stale = false;
    }
    return m_figure;
}

ConstructionKind Scene::drawnConstruction() const {
    const Result& r = result();
    const bool pairs = m_options.pair != kNoPairs &&
                       m_options.construction == ConstructionKind::parallelogram &&
                       !pairsOf(r.sketch, r.solved, r.chosen).empty();
    return pairs ? ConstructionKind::parallelogram : drawnKind(m_options.construction, r.construction);
}

void Scene::setConstruction(ConstructionKind kind) {
    m_options.construction = kind;
    fitAgain();
}

void Scene::setOtherOrder(bool other) {
    m_options.otherOrder = other;
    fitAgain();
}

void Scene::setByParallelograms(bool on) {
    m_options.pair = on ? kAllPairs : kNoPairs;
    touch();
}

void Scene::setParallelMarks(bool on) {
    m_options.parallelMarks = on;
    touch();
}

void Scene::setHighlighted(int vector) {
    m_stale = m_stale || vector != m_options.highlighted;
    m_options.highlighted = vector;
}

void Scene::resize(QSizeF pixels, double pixelsPerPoint) {
    m_sheet.resize(pixels, pixelsPerPoint);
    if (m_fitted) {
        fit();
    }
    touch();
}

void Scene::zoomAbout(QPointF pixel, double factor) {
    const double full = fitted().scale;
    const double now = m_sheet.view().scale;
    m_sheet.zoomAbout(pixel, std::clamp(now * factor, full * kLeastZoom, full * kMostZoom) / now);
    m_fitted = false;
    touch();
}

void Scene::panBy(QPointF pixels) {
    m_sheet.panBy(pixels);
    m_fitted = false;
    touch();
}

void Scene::fit() {
    m_sheet.set(fitted());
    m_fitted = true;
    touch();
}

void Scene::frame() {
    constexpr double kCloser = 1.25;
    const double now = m_sheet.view().scale, wanted = m_options.alone ? fitted().scale : now;
    const bool comes = m_options.alone && (m_close ? wanted != now : wanted > kCloser * now);
    if (comes || (m_close && !m_options.alone)) {
        fit();
        m_close = m_options.alone;
    }
}

void Scene::fitAgain() {
    touch();
    if (m_fitted)
        fit();
}

void Scene::keepInSheet() {
    touch();
    if (m_fitted && (leavesSheet() || fitted().scale > kSmall * m_sheet.view().scale)) {
        fit();
    }
}

View Scene::fitted() const {
    const Result& r = result();
    return fittedView(r.sketch, r.solved, r.construction, options(), m_sheet.view().width,
                      m_sheet.view().height, &m_measure);
}

bool Scene::leavesSheet() const {
    const View& view = m_sheet.view();
    const auto outside = [&](const Eigen::Vector2d& v) {
        const Point p = view.toSheet(v);
        return !(p.x >= kEdge && p.y >= kEdge && p.x <= view.width - kEdge && p.y <= view.height - kEdge);
    };
    for (const Locus& locus : result().construction.loci) {
        if (const auto* circle = std::get_if<CircleLocus>(&locus)) {
            const Eigen::Vector2d reach(circle->radius, circle->radius);
            if (outside(circle->centre - reach) || outside(circle->centre + reach)) {
                return true;
            }
        }
    }
    const std::vector<DrawnVector> drawn = drawnVectors(*this);
    return std::any_of(drawn.begin(), drawn.end(),
                       [&](const DrawnVector& d) { return outside(d.tail) || outside(d.tip); });
}

} // namespace tailpoint
