// SPDX-License-Identifier: MIT
#include "ui/canvas/scene.h"

#include "core/construct/pairs.h"
#include "core/figure/case_arrows.h"
#include "ui/canvas/drawn.h"
#include "ui/marking/own_answer.h"

#include <algorithm>

namespace tailpoint {

namespace {
constexpr double kSmall = 2.5;    // so many times smaller than it could be is too small
constexpr double kWaste = 1.6;    // and so many times is too small just to spare the common point a move
constexpr double kMostZoom = 400; // against the fitted scale; beyond it painting coordinates overflow
constexpr double kLeastZoom = 0.02;
} // namespace

OwnAnswer* Scene::ownAnswer() const {
    const bool isAsked = m_ownAnswer != nullptr && m_ownAnswer->isOn() && !m_ownAnswer->standsAside();
    return isAsked ? m_ownAnswer : nullptr;
}

FigureOptions Scene::options() const {
    FigureOptions options = m_options;
    if (m_document.withholdsAnswer()) { // as an exercise is drawn
        options.stage = Stage::directions;
        options.solution = 0;
        options.note = false;
        options.asGiven = true;
        options.names = namesOfGiven(sketch(), options.stage);
        options.tolerated.reset();
        return options;
    }
    options.solution = result().chosen;
    options.tolerated = m_restingOf.get() == &result() ? m_restingTips : result().tolerated(options.solution);
    options.note = m_options.note && result().solved.solutions.empty(); // the panel tells an answer already
    if (!m_told) {
        options.cases = casesNow();
        options.names = result().angleNames(options.solution, options.pair != kNoPairs);
        options.bearings = true;
    }
    return options;
}

/// The other states, where they are laid over.
std::vector<CaseArrow> Scene::casesNow() const {
    const auto& states = m_document.caseStates();
    if (!m_laysCasesOver || states.empty())
        return {};
    const auto shown = m_document.shownCase();
    return caseArrows(states, shown ? *shown + 1 : 0, result().chosen);
}

void Scene::layCasesOver(bool on) {
    if (on == m_laysCasesOver)
        return;
    m_laysCasesOver = on;
    if (!m_document.caseStates().empty())
        keepInSheet();
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

const std::vector<DrawnVector>& Scene::drawn() const {
    if (Snapshot now = m_document.snapshot(); m_drawnOf != now) {
        m_drawn = drawnVectors(*this);
        m_drawnOf = std::move(now);
    }
    return m_drawn;
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
    keepInSheet();
}

void Scene::setOtherOrder(bool other) {
    m_options.otherOrder = other;
    keepInSheet();
}

void Scene::setByParallelograms(bool on) {
    m_options.pair = on ? kAllPairs : kNoPairs;
    touch();
}

void Scene::setParallelMarks(bool on) {
    m_options.parallelMarks = on;
    touch();
}

void Scene::setShadesTips(bool on) {
    m_options.regions = on;
    touch();
}

void Scene::setRestingTips(const Snapshot& of, std::shared_ptr<const Tolerated> tips) {
    m_restingOf = of;
    m_restingTips = std::move(tips);
    touch();
}

void Scene::setHighlighted(int vector) {
    m_stale = m_stale || vector != m_options.highlighted;
    m_options.highlighted = vector;
}

void Scene::resize(QSizeF pixels, double pixelsPerPoint) {
    m_sheet.resize(pixels, pixelsPerPoint);
    if (m_steady) {
        touch(); // never under a hand
    } else if (m_hold == fittedAlone) {
        fit();
    } else {
        keepInSheet();
    }
}

void Scene::zoomAbout(QPointF pixel, double factor) {
    const double full = fitted().scale;
    const double now = m_sheet.view().scale;
    m_sheet.zoomAbout(pixel, std::clamp(now * factor, full * kLeastZoom, full * kMostZoom) / now);
    m_hold = chosen;
    touch();
}

void Scene::panBy(QPointF pixels) {
    m_sheet.panBy(pixels);
    m_hold = chosen;
    touch();
}

void Scene::fit() {
    m_sheet.set(fitted());
    m_hold = fittedAlone;
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

void Scene::keepInSheet() {
    touch();
    if (m_hold == chosen) {
        return;
    }
    const View full = fitted();
    const double now = m_sheet.view().scale;
    const bool small = m_hold == fittedAlone && full.scale > kSmall * now;
    if (!small && !leavesSheet()) {
        return;
    }
    const std::optional<double> held = heldScale(seen(), m_sheet.view());
    if (held && *held * (m_hold == fittedAlone ? kWaste : kSmall) >= full.scale) {
        setScale(*held);
    } else {
        fit();
    }
}

void Scene::restore(const Look& look) {
    m_sheet.set(look.view);
    m_hold = look.hold;
    touch();
}

void Scene::scrollBy(QPointF pixels) {
    m_sheet.panBy(pixels);
    touch();
}

void Scene::stepOut() {
    setScale(scaleStepOut(m_sheet.view()));
}

void Scene::setScale(double scale) {
    View view = m_sheet.view();
    view.scale = scale;
    m_sheet.set(view);
    touch();
}

void Scene::holdStill() {
    m_hold = std::max<int>(m_hold, drawnOn);
}

bool Scene::stepOutToWhole() {
    constexpr double kMost = 3; // smaller than so many times is no drawing any more
    const std::optional<double> held = heldScale(seen(), m_sheet.view());
    if (!held || *held * kMost < m_sheet.view().scale) {
        return false;
    }
    setScale(std::min(*held, m_sheet.view().scale));
    return true;
}

void Scene::bringIn(const std::vector<Eigen::Vector2d>& points) {
    constexpr double kInside = 24;
    m_sheet.set(broughtIn(m_sheet.view(), points, kInside));
    touch();
}

bool Scene::bringInDrawing(const std::vector<AttemptStroke>& strokes) {
    constexpr double kInside = 40, kMost = 4; // smaller than so many times is no drawing any more
    std::vector<Eigen::Vector2d> points{Eigen::Vector2d(0, 0)};
    for (const DrawnVector& arrow : drawn())
        points.push_back(arrow.tip);
    for (const AttemptStroke& stroke : strokes)
        if (stroke.kind == AttemptStroke::Kind::arrow || stroke.kind == AttemptStroke::Kind::line)
            points.insert(points.end(), {stroke.from, stroke.to});
    const View before = m_sheet.view(), after = broughtIn(before, points, kInside);
    if (after == before || after.scale * kMost < before.scale)
        return false;
    m_sheet.set(after);
    touch();
    return true;
}

Seen Scene::seen() const {
    const Result& r = result();
    return {r.sketch, r.solved, r.construction, options(), &m_measure};
}

View Scene::fitted() const {
    const Result& r = result();
    const View full = fittedView(r.sketch, r.solved, r.construction, options(), m_sheet.view().width,
                                 m_sheet.view().height, &m_measure);
    std::vector<Eigen::Vector2d> points = ownDrawn();
    if (points.empty())
        return full;
    points.emplace_back(0, 0);
    for (const DrawnVector& arrow : drawn())
        points.push_back(arrow.tip);
    constexpr double kInside = 24;
    return broughtIn(full, points, kInside);
}

std::vector<Eigen::Vector2d> Scene::ownDrawn() const {
    std::vector<Eigen::Vector2d> tips;
    const OwnAnswer* answer = ownAnswer();
    if (answer != nullptr)
        for (const VectorId vector : answer->drawable())
            if (const auto tip = answer->drawn(vector))
                tips.push_back(*tip);
    return tips;
}

Scene::Shown Scene::shown() const {
    const View& view = m_sheet.view();
    return isWhole(seen(), view) ? clear : isOnSheet(seen(), view) ? all : partly;
}

/// Where even the fitted figure runs over the title block, nothing is gained by another view.
bool Scene::leavesSheet() const {
    const Shown now = shown();
    return now == partly || (now == all && isWhole(seen(), fitted()));
}

} // namespace tailpoint
