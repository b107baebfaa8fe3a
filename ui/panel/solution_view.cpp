// SPDX-License-Identifier: MIT
#include "ui/panel/solution_view.h"

#include "core/construct/reduction.h"
#include "core/explain/caution.h"
#include "core/explain/tolerance.h"
#include "ui/document/sketch_document.h"
#include "ui/files/provenance.h"
#include "ui/panel/solution_reading.h"
#include "ui/style/symbols.h"

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QEvent>
#include <QWindow>
#include <algorithm>
#include <utility>

namespace tailpoint {

namespace {

constexpr int kViewFrame = 16;        ///< milliseconds: refreshed no more often than this
constexpr int kViewRest = 400;        ///< milliseconds without a change: assistive technology is told then
constexpr int kAfterFirstPaint = 100; ///< milliseconds from when it is shown

bool speaksOf(const Step& step, const FigurePart& part) {
    return std::any_of(step.parts.begin(), step.parts.end(),
                       [&](const FigurePart& own) { return covers(own, part); });
}

} // namespace

SolutionView::SolutionView(SketchDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_theme(&themeOf(ThemeName::paper)) {
    setObjectName(QStringLiteral("solution"));
    setAccessibleName(tr("Worked solution"));
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &SolutionView::refresh);
    connect(&document, &SketchDocument::changed, this, &SolutionView::schedule);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kViewRest);
    connect(&m_rest, &QTimer::timeout, this, &SolutionView::tellNew);
    refresh();
}

void SolutionView::schedule() {
    if (m_timer.isActive())
        return;
    const qint64 since = m_last.isValid() ? m_last.elapsed() : kViewFrame;
    m_timer.start(static_cast<int>(std::max<qint64>(0, kViewFrame - since)));
}

void SolutionView::catchUp() {
    if (!m_timer.isActive())
        return;
    m_timer.stop();
    refresh();
}

void SolutionView::refresh() {
    m_worked = m_document.result().worked(m_options);
    while (m_steps.size() < m_worked->steps.size())
        m_steps.push_back(addStep());
    const QString foot = copiedFoot();
    for (std::size_t i = 0; i < m_worked->steps.size(); ++i) {
        m_steps[i]->show(m_worked->steps[i], static_cast<int>(i) + 1);
        m_steps[i]->setCopiedBelow(foot);
    }
    for (std::size_t i = m_worked->steps.size(); i < m_steps.size(); ++i)
        if (!(m_steps[i]->step() == Step()))
            m_steps[i]->forget();
    if (m_lit >= static_cast<int>(m_worked->steps.size()))
        setLit(-1);
    relayout();
    m_last.start();
    if (QAccessible::isActive())
        m_rest.start();
}

void SolutionView::tellNew() {
    for (std::size_t i = 0; i < m_worked->steps.size(); ++i)
        tellNewLines(m_steps[i]->body());
}

/// To the next tab stop behind this one.
void SolutionView::tabOn(const QWidget* from) {
    for (QWidget* next = from->nextInFocusChain(); next != from; next = next->nextInFocusChain())
        if (next->isEnabled() && next->isVisibleTo(window()) && (next->focusPolicy() & Qt::TabFocus) &&
            next->window() == window()) {
            next->setFocus(Qt::TabFocusReason);
            if (isAncestorOf(next))
                emit attended({next->mapTo(this, QPoint()), next->size()});
            return;
        }
}

void SolutionView::go(int from, SolutionStep::Go where) {
    const int last = static_cast<int>(m_worked->steps.size()) - 1;
    const auto step = [&](int index) { return m_steps[static_cast<std::size_t>(index)]; };
    switch (where) {
    case SolutionStep::Go::toFirst:
        return step(0)->focusHead();
    case SolutionStep::Go::toLast:
        return step(last)->focusHead();
    case SolutionStep::Go::toNext:
        return from < last ? step(from + 1)->focusHead() : void();
    case SolutionStep::Go::byTab:
        return tabOn(step(from)->tabStop());
    case SolutionStep::Go::toPrevious:
        return from > 0 ? step(from - 1)->focusHead() : void();
    case SolutionStep::Go::toEndOfPrevious:
        return from > 0 ? step(from - 1)->focusLastLine() : void();
    }
}

SolutionStep* SolutionView::addStep() {
    auto* step = new SolutionStep(this);
    const int index = static_cast<int>(m_steps.size());
    step->setObjectName(QStringLiteral("solutionStep%1").arg(index + 1));
    step->setTheme(*m_theme);
    if (!m_steps.empty())
        step->tabAfter(*m_steps.back()); // those that are made later, too
    connect(step, &SolutionStep::pointed, this, [this, index](bool inside) { point(index, inside); });
    connect(step, &SolutionStep::foldChanged, this, &SolutionView::relayout);
    connect(step, &SolutionStep::bodyWanted, this, &SolutionView::layOutAll);
    connect(step, &SolutionStep::goAsked, this, [this, index](SolutionStep::Go where) { go(index, where); });
    connect(step, &SolutionStep::attended, this,
            [this, step](const QRect& place) { emit attended(place.translated(step->pos())); });
    return step;
}

/// How far down it is seen; not at all while it is hidden.
int SolutionView::endOfSight() const {
    return isVisible() ? visibleRegion().boundingRect().bottom() + 1 : 0;
}

void SolutionView::layOutAll() {
    if (std::exchange(m_waits, false))
        relayout();
}

void SolutionView::relayout() {
    m_waits = m_waits && !QAccessible::isActive();
    const int end = m_waits ? endOfSight() : 0;
    int y = 0;
    for (std::size_t i = 0; i < m_steps.size(); ++i) {
        const bool used = i < m_worked->steps.size();
        m_steps[i]->setVisible(used);
        if (!used)
            continue;
        const bool later = m_waits && y >= end;
        const int height = later ? m_steps[i]->layOutLater(width()) : m_steps[i]->layOut(width());
        m_steps[i]->setGeometry(0, y, width(), height);
        y += height;
    }
    if (y == m_height)
        return;
    m_height = y;
    setMinimumHeight(y);
    updateGeometry();
}

void SolutionView::setTheme(ThemeName name) {
    m_theme = &themeOf(name);
    for (SolutionStep* step : m_steps)
        step->setTheme(*m_theme);
}

void SolutionView::setDivision(double forceUnits) {
    const std::optional<double> division = forceUnits > 0 ? std::optional(forceUnits) : std::nullopt;
    if (m_options.division == division)
        return;
    m_options.division = division;
    schedule();
}

QString SolutionView::carriedWords() const {
    return m_options.handRounding ? tr("rounded as by hand") : tr("guard figures carried");
}

void SolutionView::setMethod(Method method) {
    if (m_options.method != method) {
        m_options.method = method;
        schedule();
    }
}

void SolutionView::setByParallelograms(bool on) {
    if (m_options.parallelograms != on) {
        m_options.parallelograms = on;
        schedule();
    }
}

void SolutionView::setUncertainty(const std::optional<tolerance::UncertaintyAsked>& asked) {
    if (m_options.uncertainty != asked) {
        m_options.uncertainty = asked;
        schedule();
    }
}

void SolutionView::setHandRounding(bool on) {
    if (m_options.handRounding == on)
        return;
    m_options.handRounding = on;
    refresh();
    emit handRoundingChanged(on);
}

QString SolutionView::plainText() const {
    return QString::fromStdString(toText(*m_worked, Minus::typographic));
}

QString SolutionView::copiedFoot() const {
    const Sketch& sketch = m_document.sketch();
    QString foot;
    if (const auto note = toleranceNote(sketch)) {
        foot += u'\n' + text(note->text) + u'\n';
    }
    if (needsCaution(sketch)) {
        foot += u'\n' + text(cautionLine()) + u'\n';
    }
    for (const std::string& line : recordLines(sketch, provenanceOf(m_document.path()))) {
        foot += u'\n' + text(line) + u'\n';
    }
    return foot;
}

void SolutionView::copy() {
    const QString title = text(m_document.sketch().title);
    QApplication::clipboard()->setText((title.isEmpty() ? title : title + QStringLiteral("\n\n")) +
                                       plainText() + copiedFoot());
}

void SolutionView::foldAll() {
    for (SolutionStep* step : m_steps)
        step->setUnfolded(false);
}

void SolutionView::unfoldAll() {
    for (SolutionStep* step : m_steps)
        step->setUnfolded(true);
}

void SolutionView::point(int step, bool inside) {
    setLit(inside ? step : -1);
    emit stepPointed(m_lit);
    emit partsPointed(m_lit < 0 ? std::vector<FigurePart>()
                                : m_worked->steps[static_cast<std::size_t>(m_lit)].parts);
}

void SolutionView::setLit(int step) {
    m_lit = step;
    for (std::size_t i = 0; i < m_steps.size(); ++i)
        m_steps[i]->setLit(static_cast<int>(i) == step);
}

QRect SolutionView::stepRect(int step) {
    layOutAll();
    return m_steps[static_cast<std::size_t>(step)]->geometry();
}

void SolutionView::lightPart(const std::optional<FigurePart>& part) {
    if (!part)
        return setLit(-1);
    const auto& steps = m_worked->steps;
    const auto found =
        std::find_if(steps.begin(), steps.end(), [&](const Step& step) { return speaksOf(step, *part); });
    setLit(found == steps.end() ? -1 : static_cast<int>(found - steps.begin()));
}

void SolutionView::lightVector(int vector) {
    if (vector == kNoVector)
        return setLit(-1);
    lightPart(FigurePart(vectorId(vector)));
}

QSize SolutionView::sizeHint() const {
    return {360, m_height};
}
QSize SolutionView::minimumSizeHint() const {
    return {220, m_height};
}

void SolutionView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!m_waits)
        return;
    relayout();
    QTimer::singleShot(kAfterFirstPaint, this, &SolutionView::layOutBehindPaint);
}

/// On a slow machine the screen may be later than the timer. A window paints when it is exposed, and others
/// have their turn behind that.
void SolutionView::layOutBehindPaint() {
    const QWindow* onScreen = window()->windowHandle();
    if (m_waits && isVisible() && onScreen && !std::exchange(m_wasExposed, onScreen->isExposed()))
        QTimer::singleShot(kAfterFirstPaint, this, &SolutionView::layOutBehindPaint);
    else
        layOutAll();
}

/// More of it may be in sight.
void SolutionView::moveEvent(QMoveEvent*) {
    if (m_waits && isVisible())
        relayout();
}

void SolutionView::resizeEvent(QResizeEvent*) {
    relayout();
}

void SolutionView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        relayout();
}

} // namespace tailpoint
