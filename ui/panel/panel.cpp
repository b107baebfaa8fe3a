// SPDX-License-Identifier: MIT
#include "ui/panel/panel.h"

#include "core/explain/caution.h"
#include "core/sketch/shown.h"
#include "ui/panel/answer_text.h"
#include "ui/panel/check_text.h"
#include "ui/panel/figures_model.h"
#include "ui/panel/find_view.h"
#include "ui/panel/given_view.h"
#include "ui/panel/own_answer_view.h"
#include "ui/panel/result_told.h"
#include "ui/panel/solution_view.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QScrollBar>
#include <QVBoxLayout>

namespace tailpoint {

namespace {

constexpr int kFrame = 16;  // milliseconds: at most one refresh a frame at 60 Hz
constexpr int kRest = 300;  // milliseconds that a pointer rests before anything is scrolled for it
constexpr int kMargin = 18; // left and right of the panel's text

} // namespace

Panel::Panel(SketchDocument& document, OwnAnswer* ownAnswer, QWidget* parent)
    : QScrollArea(parent), m_document(document), m_given(new GivenView(document)),
      m_find(new FindView(document)),
      m_own(ownAnswer != nullptr ? new OwnAnswerView(document, *ownAnswer) : nullptr),
      m_reference(quietLabel(QStringLiteral("reference"))), m_carried(quietLabel(QStringLiteral("carried"))),
      m_hidden(quietLabel(QStringLiteral("answerHidden"))), m_vectors(new VectorsModel(document, this)),
      m_angles(new AnglesModel(document, this)),
      m_vectorTable(new PanelTable(new PanelDelegate(Rules::headings, kNarrowGap), kReadOnlyRowHeight)),
      m_angleTable(new PanelTable(new PanelDelegate(Rules::headings, kNarrowGap), kReadOnlyRowHeight)),
      m_check(new SteadyLines(QStringLiteral("check"))),
      m_caution(new ValueLabel(QStringLiteral("caution-line"))), m_steps(new SolutionView(document)),
      m_column(nullptr) {
    setObjectName(QStringLiteral("panel"));
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    build();
    connectParts();
    refresh();
}

/// A field that loses the keyboard because it goes must not write any more.
Panel::~Panel() {
    m_given->table()->dropTyping();
}

void Panel::build() {
    auto* content = new QWidget;
    content->setObjectName(QStringLiteral("panelContent"));
    content->setBackgroundRole(QPalette::Base);
    content->setAutoFillBackground(true);
    m_column = new QVBoxLayout(content);
    m_column->setContentsMargins(kMargin, 14, kMargin, 14);
    m_column->setSpacing(8);
    m_vectorTable->setObjectName(QStringLiteral("vectorTable"));
    m_vectorTable->setAccessibleName(tr("Forces and components"));
    m_vectorTable->setShares({14, 23, 21, 21, 21});
    m_vectorTable->setWholeValues();
    m_vectorTable->setMostRows(24); // eight vectors with their ranges
    m_vectorTable->setModel(m_vectors);
    m_angleTable->setObjectName(QStringLiteral("angleTable"));
    m_angleTable->setAccessibleName(tr("Parallelogram, force triangle and legs"));
    m_angleTable->setShares({48, 22, 30});
    m_angleTable->setMostRows(20);
    m_angleTable->setWholeValues();
    m_angleTable->setModel(m_angles);
    m_check->setWrapped();
    m_caution->setForegroundRole(QPalette::BrightText);
    addSection(tr("Given"), m_reference, {m_given});
    addSection(tr("Find"), m_hidden, {m_find});
    if (m_own != nullptr) {
        m_sections.back().body->layout()->addWidget(m_own);
    }
    addSection(tr("Values"), nullptr, {m_vectorTable, m_angleTable}, QStringLiteral("values"),
               Shown::answered);
    addSection(tr("Check"), nullptr, {m_check}, QStringLiteral("check"), Shown::answered);
    addSection(tr("Solution"), m_carried, {m_steps}, QStringLiteral("solution"));
    m_column->addWidget(m_caution);
    m_column->addStretch(1);
    setWidget(content);
}

void Panel::addSection(const QString& title, QLabel* aside, QList<QWidget*> contents, const QString& name,
                       Shown shown) {
    const bool first = m_sections.isEmpty();
    Section section{name, shown, first ? nullptr : new Rule, new QWidget, new QWidget, nullptr};
    auto* line = new QHBoxLayout(section.head);
    line->setContentsMargins(0, first ? 0 : 2, 0, 0);
    if (name.isEmpty()) {
        line->addWidget(headingLabel(title));
    } else {
        section.fold = new SectionHead(title);
        section.fold->setObjectName(QStringLiteral("fold-") + name);
        line->addWidget(section.fold);
        connect(section.fold, &SectionHead::toggled, this, [this] {
            showSections();
            emit foldingChanged();
        });
    }
    line->addStretch(1);
    if (aside) {
        line->addWidget(aside);
    }
    auto* body = new QVBoxLayout(section.body);
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(m_column->spacing());
    for (QWidget* part : contents) {
        body->addWidget(part);
    }
    if (section.rule != nullptr) {
        m_column->addWidget(section.rule);
    }
    m_column->addWidget(section.head);
    m_column->addWidget(section.body);
    m_sections << section;
}

/// An answer's sections are there only with an answer; what is folded shows its heading alone.
void Panel::showSections() {
    const bool answered = shownSolution(m_document.result()) != nullptr;
    for (const Section& section : std::as_const(m_sections)) {
        const bool there = section.name == QLatin1String("solution")
                               ? !m_document.sketch().forces.empty() && !m_document.withholdsAnswer()
                           : section.name == QLatin1String("check")
                               ? answered && !m_check->label()->text().isEmpty()
                               : answered || section.shown == Shown::always;
        if (section.rule != nullptr) {
            section.rule->setVisible(there);
        }
        section.head->setVisible(there);
        section.body->setVisible(there && (section.fold == nullptr || section.fold->isChecked()));
    }
}

void Panel::addUnderFind(QWidget* part) {
    m_find->parentWidget()->layout()->addWidget(part);
}

QStringList Panel::folded() const {
    QStringList names;
    for (const Section& section : m_sections) {
        if (section.fold != nullptr && !section.fold->isChecked()) {
            names << section.name;
        }
    }
    return names;
}

void Panel::setFolded(const QStringList& names) {
    for (const Section& section : std::as_const(m_sections)) {
        if (section.fold != nullptr) {
            section.fold->setChecked(!names.contains(section.name));
        }
    }
}

void Panel::connectParts() {
    m_frame.setSingleShot(true);
    connect(&m_frame, &QTimer::timeout, this, &Panel::refresh);
    connect(&m_document, &SketchDocument::changed, this, &Panel::documentChanged);
    connect(&m_document, &SketchDocument::replaced, m_given, &GivenView::forgetDrafts);
    connect(&m_document, &SketchDocument::replaced, this, [this] { verticalScrollBar()->setValue(0); });
    connect(m_given, &GivenView::cellUsed, this, &Panel::showCell);
    connect(m_given, &GivenView::told, this, &Panel::givenTold);
    connect(m_given, &GivenView::selected, this, &Panel::selected);
    connect(m_given, &GivenView::pointedAt, this, &Panel::pointedAt);
    connect(m_vectorTable, &PanelTable::pointedAt, this,
            [this](int row) { emit pointedAt(row < 0 ? kNoVector : m_vectors->drawnVector(row)); });
    for (const PanelTable* table :
         std::initializer_list<PanelTable*>{m_given->table(), m_vectorTable, m_angleTable})
        connect(table, &PanelTable::unitAsked, this, &Panel::unitAsked);
    connect(m_steps, &SolutionView::partsPointed, this, &Panel::partsPointed);
    connect(m_steps, &SolutionView::attended, this, &Panel::showAttended);
    m_rest.setObjectName(QStringLiteral("rest"));
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRest);
    connect(&m_rest, &QTimer::timeout, this, &Panel::showLitStep);
    connect(m_steps, &SolutionView::handRoundingChanged, this,
            [this] { m_carried->setText(m_steps->carriedWords()); });
    connect(m_find, &FindView::cellWanted, this, &Panel::edit);
    connect(m_find, &FindView::unitAsked, this, &Panel::unitAsked);
    if (m_own != nullptr) {
        connect(&m_own->answer(), &OwnAnswer::modeChanged, this, &Panel::ownAnswerChanged);
        connect(&m_own->answer(), &OwnAnswer::marked, this, &Panel::showHidden);
    }
}

void Panel::showHidden() {
    const OwnAnswer& own = m_own->answer();
    m_hidden->setText(!own.isOn()           ? QString()
                      : own.isAnswerShown() ? tr("Esc leaves")
                                            : tr("answer hidden \u00b7 Esc leaves"));
}

/// At once: not for the blink of an eye may the answer stand beside the fields. The bar at the right keeps
/// its room, so that nothing moves when the text under the fields grows.
void Panel::ownAnswerChanged() {
    const bool on = m_own->answer().isOn();
    showHidden();
    setVerticalScrollBarPolicy(on ? Qt::ScrollBarAlwaysOn : Qt::ScrollBarAsNeeded);
    m_steps->refreshNow();
    refresh();
    if (on) {
        m_own->takeFocus();
    }
}

/// Numbers wait for the next frame; a table whose rows no longer fit the document does not.
void Panel::documentChanged() {
    if (m_given->isStale()) {
        refresh();
    } else if (!m_frame.isActive()) {
        const qint64 since = m_sinceRefresh.isValid() ? m_sinceRefresh.elapsed() : kFrame;
        m_frame.start(static_cast<int>(std::max<qint64>(0, kFrame - since)));
    }
}

void Panel::refresh() {
    m_frame.stop();
    m_sinceRefresh.start();
    const Sketch& sketch = m_document.sketch();
    m_given->refresh();
    m_find->refresh();
    refreshSolution();
    m_reference->setText(
        QStringLiteral("%1 \u00b7 %2")
            .arg(text(symbolOf(sketch.forceUnit)), onScreen(referenceWords(sketch.reference))));
    m_caution->show(needsCaution(sketch) ? text(cautionLine()).toHtmlEscaped() : QString());
}

void Panel::refreshSolution() {
    const Result& result = m_document.result();
    m_vectors->refresh();
    m_angles->refresh();
    m_check->show(checkText(result, m_steps->options()));
    showSections();
    m_carried->setText(m_steps->carriedWords());
}

void Panel::setTheme(ThemeName name) {
    const Theme& theme = themeOf(name);
    m_given->setTheme(theme);
    m_vectorTable->setTheme(theme);
    m_angleTable->setTheme(theme);
    m_steps->setTheme(name);
    if (m_own != nullptr) {
        m_own->setTheme(theme);
    }
}

void Panel::setDivision(double forceUnits) {
    m_steps->setDivision(forceUnits);
    m_given->setDivision(forceUnits);
}

void Panel::select(int vector) {
    m_given->select(vector);
}

void Panel::edit(int vector, Entry cell) {
    m_given->edit(vector, cell);
}

void Panel::addForce() {
    m_given->addForce();
}

void Panel::paste(const QString& lines) {
    m_given->paste(lines);
}

void Panel::takeFocus() {
    if (m_own != nullptr && m_own->answer().isOn() && !m_own->answer().standsAside()) {
        return m_own->takeFocus();
    }
    m_given->table()->setFocus(Qt::TabFocusReason);
    showCell();
}

/// Nobody types out of sight.
void Panel::showCell() {
    const GivenTable* table = m_given->table();
    const QRect cell = table->visualRect(table->currentIndex());
    const QPoint at = table->viewport()->mapTo(widget(), cell.center());
    ensureVisible(at.x(), at.y(), 0, cell.height() / 2 + 12);
}

void Panel::catchUp() {
    if (m_frame.isActive())
        refresh();
    m_steps->catchUp();
}

void Panel::finishTyping() {
    m_given->table()->finishTyping();
}

const ExplainOptions& Panel::explainOptions() const {
    return m_steps->options();
}

QStringList Panel::resultTold() const {
    return tailpoint::resultTold(m_document.result(), m_steps->worked());
}

bool Panel::handRounding() const {
    return m_steps->handRounding();
}

Method Panel::method() const {
    return m_steps->method();
}

void Panel::setMethod(Method method) {
    m_steps->setMethod(method);
    refreshSolution();
}

bool Panel::byParallelograms() const {
    return m_steps->byParallelograms();
}

void Panel::setByParallelograms(bool on) {
    m_steps->setByParallelograms(on);
    refreshSolution();
}

void Panel::setUncertainty(const std::optional<tolerance::UncertaintyAsked>& asked) {
    m_steps->setUncertainty(asked);
    refreshSolution();
}

void Panel::setHandRounding(bool on) {
    m_steps->setHandRounding(on);
    refreshSolution();
}

void Panel::lightPart(const std::optional<FigurePart>& part) {
    m_rest.stop();
    m_steps->lightPart(part);
    // A hand rests on arrows all the time while it draws: nothing is scrolled for these.
    if (m_steps->litStep() >= 0 && !std::holds_alternative<VectorId>(*part)) {
        m_rest.start();
    }
}

void Panel::showLitStep() {
    if (!m_steps->visibleRegion().isEmpty() && m_steps->litStep() >= 0) {
        const QRect step = m_steps->stepRect(m_steps->litStep());
        const QPoint top = m_steps->mapTo(widget(), step.topLeft());
        ensureVisible(top.x(), top.y() + std::min(step.height(), viewport()->height() - 16), 0, 8);
        ensureVisible(top.x(), top.y(), 0, 8);
    }
}

/// The end of what is taller than the panel gives way to its beginning.
void Panel::showAttended(const QRect& place) {
    catchUp(); // what waits to be laid out would move it away again
    m_steps->layOutAll();
    for (const QWidget* around = m_steps->parentWidget(); around != viewport();
         around = around->parentWidget())
        if (around->layout() != nullptr)
            around->layout()->activate();                                  // tells the next one
    QCoreApplication::sendPostedEvents(viewport(), QEvent::LayoutRequest); // how far it can be scrolled
    const QPoint top = m_steps->mapTo(widget(), place.topLeft());
    const int height = std::min(place.height(), viewport()->height() - 16);
    ensureVisible(top.x(), top.y() + height, 0, 8);
    ensureVisible(top.x(), top.y(), 0, 8);
}

QSize Panel::sizeHint() const {
    return {400, 600};
}

} // namespace tailpoint
