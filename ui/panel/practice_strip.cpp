// SPDX-License-Identifier: MIT
#include "ui/panel/practice_strip.h"

#include "core/practice/families.h"
#include "core/quantity/text.h"
#include "ui/panel/panel_parts.h"
#include "ui/panel/spoken_line.h"
#include "ui/panel/wrapping_row.h"
#include "ui/practice/practice.h"
#include "ui/style/palette.h"
#include "ui/style/symbols.h"

#include <QAction>
#include <QEvent>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr int kWidest = 900;             // pixels: a line of text that the eye can follow
constexpr int kAtSide = 16, kAbove = 10; // pixels
constexpr double kMostOfSide = 0.5;      // of the height that it shares with the sheet
constexpr int kMostShown = 2000;         // characters: a file may have more, the sheet has its room too

} // namespace

PracticeStrip::PracticeStrip(Practice& practice, QWidget* parent)
    : QWidget(parent), m_practice(practice), m_statement(new ValueLabel(QStringLiteral("statement"))),
      m_page(new QScrollArea), m_kind(quietLabel(QStringLiteral("practiceKind"))),
      m_said(new SpokenLine(QStringLiteral("practiceSaid"))), m_commands(new QWidget),
      m_row(new WrappingRow(m_commands)) {
    setObjectName(QStringLiteral("practiceStrip"));
    setAutoFillBackground(true);
    m_page->setWidget(m_statement);
    m_page->setWidgetResizable(true);
    m_page->setFrameShape(QFrame::NoFrame);
    m_page->setFocusPolicy(Qt::NoFocus);
    m_page->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_page->setMaximumWidth(kWidest);
    m_page->viewport()->setAutoFillBackground(false);
    m_statement->setAutoFillBackground(false);
    m_statement->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_commands->setMaximumWidth(kWidest);
    m_statement->setAccessibleDescription(tr("The question"));
    m_statement->setFocusPolicy(Qt::StrongFocus); // can be read and copied without a mouse
    m_said->setForegroundRole(QPalette::PlaceholderText);
    m_said->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed); // what is said moves nothing
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(18);
    m_row->insertWidget(0, m_said);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kAtSide, kAbove, kAtSide, 6);
    column->setSpacing(4);
    column->addWidget(m_kind);
    column->addWidget(m_page);
    column->addWidget(m_commands);
    connect(&practice, &Practice::problemChanged, this, &PracticeStrip::refresh);
    refresh();
}

void PracticeStrip::setTheme(const Theme& theme) {
    QPalette palette = paletteOf(theme);
    palette.setColor(QPalette::Window, theme.sheet);
    setPalette(palette);
}

void PracticeStrip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitStatement();
}

void PracticeStrip::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    window()->installEventFilter(this);
    fitStatement();
}

bool PracticeStrip::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && watched == window())
        fitStatement();
    return QWidget::eventFilter(watched, event);
}

/// What stands with the statement in the strip, in height.
int PracticeStrip::heightOfRest(int across) const {
    const QMargins margins = layout()->contentsMargins();
    int height = margins.top() + margins.bottom();
    if (!m_kind->isHidden())
        height += std::max(m_kind->sizeHint().height(), m_kind->heightForWidth(across)) + layout()->spacing();
    if (!m_commands->isHidden())
        height += m_row->heightForWidth(across) + layout()->spacing();
    return height;
}

/// As high as the statement, and in a low window as many whole lines as leave the sheet its room: the rest is
/// scrolled to.
void PracticeStrip::fitStatement() {
    constexpr int least = 3;       // lines
    m_statement->ensurePolished(); // before it is shown it may have another font
    const int across = std::min(width() - 2 * kAtSide, kWidest), whole = m_statement->heightForWidth(across),
              line = QFontMetrics(m_statement->font()).lineSpacing();
    const QWidget* side = parentWidget() != nullptr ? parentWidget() : this; // the sheet's and its own
    const int room = static_cast<int>(kMostOfSide * side->height()) - heightOfRest(across),
              most = line * std::max(least, room / line);
    m_page->setVerticalScrollBarPolicy(whole > most ? Qt::ScrollBarAlwaysOn : Qt::ScrollBarAlwaysOff);
    m_page->setFixedHeight(std::clamp(whole, 0, most));
}

LinkButton* PracticeStrip::buttonFor(QAction* action, const QString& icon) {
    auto* button = linkButton(action->iconText(), QStringLiteral("link-") + action->objectName());
    button->setFlush();
    button->setSign(icon);
    const auto follow = [button, action] {
        button->setEnabled(action->isEnabled());
        button->setToolTip(action->toolTip());
        button->setAccessibleDescription(action->toolTip());
    };
    follow();
    connect(action, &QAction::changed, button, follow);
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    return button;
}

void PracticeStrip::addAtLeft(QAction* action, const QString& icon) {
    m_row->insertWidget(m_row->indexOf(m_said), buttonFor(action, icon));
}

void PracticeStrip::addAtRight(QAction* action, const QString& icon) {
    m_row->insertWidget(m_row->count(), buttonFor(action, icon));
}

void PracticeStrip::say(const QString& shown, const QString& spoken) {
    m_said->say(shown, spoken);
    m_said->setToolTip(shown);
}

QString PracticeStrip::kindWords() const {
    const auto& problem = m_practice.problem();
    const FamilyEntry* family = problem ? familyNamed(problem->id.family) : nullptr;
    return family == nullptr ? QString()
                             : tr("%1 \u00b7 level %2 \u00b7 %3")
                                   .arg(text(family->title))
                                   .arg(problem->id.level)
                                   .arg(text(problem->code));
}

/// Values that were changed are no longer those of the words.
void PracticeStrip::refresh() {
    const bool isStale = m_practice.isStatementStale();
    const QString all = m_practice.statement();
    const QString statement = all.size() > kMostShown ? all.left(kMostShown) + QChar(0x2026) : all;
    m_kind->setText(isStale
                        ? tr("The sheet has other values than its question in words: Undo leads back to it.")
                        : kindWords());
    m_kind->setVisible(!m_kind->text().isEmpty());
    m_statement->show(text(keptTogether(statement.toStdString())).toHtmlEscaped());
    fitStatement();
    m_commands->setVisible(m_practice.problem().has_value());
    setVisible(isStale || !statement.isEmpty() || m_practice.problem());
    if (!m_practice.problem())
        say({}, {});
}

} // namespace tailpoint
