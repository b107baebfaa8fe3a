// SPDX-License-Identifier: MIT
#include "ui/panel/solution_step.h"

#include "core/explain/spoken.h"
#include "ui/panel/accessible_fold.h"
#include "ui/style/targets.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QEnterEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QStyleHints>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kStepIndent = 28;                      ///< of the body, pixels: room for the number
constexpr double kStepPadding = 8;                      ///< around a step
constexpr double kLineGuessed = 1.9, kTableGuessed = 6; ///< heights, by that of a line of words

QFont titleFont(const QFont& base) {
    QFont font = base;
    font.setWeight(QFont::DemiBold);
    return font;
}

} // namespace

SolutionHead::SolutionHead(QWidget* parent) : QAbstractButton(parent), m_theme(&themeOf(ThemeName::paper)) {
    makeFold(*this); // before anything is told of it
    setCheckable(true);
    setChecked(true);
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::TabFocus);
}

void SolutionHead::show(int number, const QString& title) {
    if (m_number == number && text() == title)
        return;
    m_number = number;
    setText(title);
    setAccessibleName(tr("Step %1: %2").arg(number).arg(title));
    update();
}

void SolutionHead::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

int SolutionHead::heightFor(int width) const {
    return std::max(targetSide(), lettersHeight(width));
}

int SolutionHead::lettersHeight(int width) const {
    const QFontMetrics metrics(titleFont(font()));
    const QRect box = metrics.boundingRect(QRect(0, 0, width - static_cast<int>(kStepIndent) - 18, 1000),
                                           Qt::TextWordWrap | Qt::AlignLeft, text());
    return std::max(24, box.height() + 6);
}

void SolutionHead::keyPressEvent(QKeyEvent* event) {
    const bool folds = event->key() == Qt::Key_Left, unfolds = event->key() == Qt::Key_Right;
    if (folds || unfolds)
        setChecked(unfolds);
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

void SolutionHead::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(0, (height() - lettersHeight(width())) / 2);
    const QRectF circle(1.5, 3, 18, 18);
    painter.setPen(QPen(m_theme->quietInk, 1));
    painter.drawEllipse(circle);
    QFont digits = font();
    digits.setPointSizeF(digits.pointSizeF() * (m_number > 9 ? 0.78 : 0.86));
    painter.setFont(digits);
    painter.setPen(m_theme->ink);
    painter.drawText(circle, Qt::AlignCenter, QString::number(m_number));
    painter.setFont(titleFont(font()));
    painter.drawText(QRectF(kStepIndent, 2, width() - kStepIndent - 18, height() - 4),
                     Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop, text());
    painter.setPen(QPen(m_theme->quietInk, 1.4));
    painter.translate(width() - 9, 12);
    if (!isChecked())
        painter.rotate(-90);
    painter.drawPolyline(QPolygonF({{-4, -2}, {0, 2}, {4, -2}}));
    if (hasFocus()) {
        painter.resetTransform();
        painter.setPen(QPen(m_theme->given, 1.5));
        painter.drawRoundedRect(QRectF(rect()).adjusted(0.75, 0.75, -0.75, -0.75), 3, 3);
    }
}

SolutionStep::SolutionStep(QWidget* parent)
    : QWidget(parent), m_head(new SolutionHead(this)), m_body(new SolutionBody(m_step, this)),
      m_theme(&themeOf(ThemeName::paper)) {
    m_head->installEventFilter(this);
    m_body->installEventFilter(this);
    connect(m_body, &SolutionBody::wanted, this, &SolutionStep::bodyWanted);
    connect(m_body, &SolutionBody::lineEntered, this,
            [this](const QRect& place) { emit attended(place.translated(m_body->pos())); });
    connect(m_body, &SolutionBody::tabbed, this,
            [this](bool next) { next ? emit goAsked(Go::byTab) : focusHead(); });
    connect(m_head, &QAbstractButton::toggled, this, [this] {
        m_width = -1;
        emit foldChanged();
    });
}

void SolutionStep::show(const Step& step, int number) {
    m_head->show(number, QString::fromStdString(step.title));
    if (m_step == step)
        return;
    m_step = step;
    m_width = -1;
    if (accessibleName() != m_head->accessibleName()) // each setting is told on the bus
        for (QWidget* part : {static_cast<QWidget*>(this), static_cast<QWidget*>(m_body)})
            part->setAccessibleName(m_head->accessibleName());
    update();
}

void SolutionStep::forget() {
    m_step = {};
    m_width = -1;
    m_body->clear();
    m_head->show(0, {});
    for (QWidget* part :
         {static_cast<QWidget*>(this), static_cast<QWidget*>(m_head), static_cast<QWidget*>(m_body)})
        part->setAccessibleName({});
}

void SolutionStep::setTheme(const Theme& theme) {
    m_theme = &theme;
    m_head->setTheme(theme);
    m_body->setTheme(theme);
    update();
}

void SolutionStep::setLit(bool lit) {
    if (m_lit == lit)
        return;
    m_lit = lit;
    m_body->setLit(lit);
    update();
}

void SolutionStep::setUnfolded(bool unfolded) {
    m_head->setChecked(unfolded);
}
bool SolutionStep::isUnfolded() const {
    return m_head->isChecked();
}

QString SolutionStep::plainText() const {
    return QString::fromStdString(m_step.title + '\n' + toText(m_step, Minus::typographic));
}

QString SolutionStep::spokenText() const {
    QStringList lines{m_head->accessibleName()};
    for (const std::string& line : spokenLines(m_step))
        lines << QString::fromStdString(line);
    return lines.join(u'\n');
}

void SolutionStep::focusHead() {
    m_head->setFocus(Qt::OtherFocusReason);
    emit attended(m_head->geometry());
}

void SolutionStep::tabAfter(const SolutionStep& before) {
    setTabOrder(before.m_head, m_head);
}

void SolutionStep::focusLastLine() {
    m_body->lineCount() > 0 ? m_body->enter(m_body->lineCount() - 1) : focusHead();
}

int SolutionStep::placeHead(int width) {
    const int room = width - 2 * static_cast<int>(kStepPadding), head = m_head->heightFor(room);
    m_head->setGeometry(static_cast<int>(kStepPadding), 4, room, head);
    return head;
}

int SolutionStep::layOut(int width) {
    if (width == m_width)
        return m_height;
    m_width = width;
    const int head = placeHead(width);
    int body = 0;
    if (isUnfolded())
        body = m_body->layOut(width);
    else
        m_body->clear();
    m_body->setGeometry(0, head + 4, width, body + 4); // the mark of the last line reaches below it
    m_body->setVisible(body > 0);
    m_height = head + 4 + body + (isUnfolded() ? 10 : 4);
    update();
    return m_height;
}

/// Without setting a word of its body.
int SolutionStep::layOutLater(int width) {
    if (width == m_width)
        return m_height;
    m_width = -1;
    m_body->wait();
    const int head = placeHead(width);
    if (!isUnfolded())
        return head + 8;
    const std::size_t lines =
        m_step.reasoning.size() + m_step.workings.size() + m_step.conclusion.size() + m_step.notes.size();
    const double high = kLineGuessed * static_cast<double>(lines) + (m_step.table ? kTableGuessed : 0);
    return head + 4 + static_cast<int>(high * fontMetrics().height()) + 10;
}

void SolutionStep::paintEvent(QPaintEvent*) {
    if (!m_lit)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme->highlight);
    painter.drawRoundedRect(rect(), 4, 4);
}

void SolutionStep::enterEvent(QEnterEvent*) {
    emit pointed(true);
}
void SolutionStep::leaveEvent(QEvent*) {
    emit pointed(false);
}

bool SolutionStep::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn)
        emit pointed(true);
    else if (event->type() == QEvent::FocusOut)
        emit pointed(false);
    else if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Copy)) {
            QApplication::clipboard()->setText(plainText() + m_copiedBelow);
            return true;
        }
        const bool plain = (key->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
        if (plain && (watched == m_body ? moveInBody(key->key()) : moveFromHead(key->key())))
            return true;
    }
    return QWidget::eventFilter(watched, event);
}

bool SolutionStep::moveFromHead(int key) {
    switch (key) {
    case Qt::Key_Down:
        m_body->lineCount() > 0 ? m_body->enter(0) : emit goAsked(Go::toNext);
        return true;
    case Qt::Key_Up:
        return emit goAsked(Go::toEndOfPrevious), true;
    case Qt::Key_PageDown:
        return emit goAsked(Go::toNext), true;
    case Qt::Key_PageUp:
        return emit goAsked(Go::toPrevious), true;
    case Qt::Key_Home:
        return emit goAsked(Go::toFirst), true;
    case Qt::Key_End:
        return emit goAsked(Go::toLast), true;
    default:
        return false;
    }
}

bool SolutionStep::moveInBody(int key) {
    const int line = m_body->currentLine(), last = m_body->lineCount() - 1;
    switch (key) {
    case Qt::Key_Down:
        line < last ? m_body->enter(line + 1) : emit goAsked(Go::toNext);
        return true;
    case Qt::Key_Up:
        line > 0 ? m_body->enter(line - 1) : focusHead();
        return true;
    case Qt::Key_PageDown:
        return emit goAsked(Go::toNext), true;
    case Qt::Key_PageUp:
    case Qt::Key_Left:
        return focusHead(), true;
    case Qt::Key_Home:
        return m_body->enter(0), true;
    case Qt::Key_End:
        return m_body->enter(last), true;
    default:
        return false;
    }
}

void SolutionStep::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange)
        m_width = -1;
    QWidget::changeEvent(event);
}

/// Under what has the keyboard.
QPoint SolutionStep::menuPlace() const {
    const QRect at = m_body->hasFocus() ? m_body->lineRect(m_body->currentLine()).translated(m_body->pos())
                                        : m_head->geometry();
    return mapToGlobal(at.bottomLeft());
}

void SolutionStep::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    menu.setObjectName(QStringLiteral("stepMenu"));
    QAction* text = menu.addAction(tr("Copy this step as text"));
    QAction* latex = menu.addAction(tr("Copy its formulas as LaTeX"));
    const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
    const QAction* chosen = menu.exec(byKey ? menuPlace() : event->globalPos());
    if (chosen == text)
        QApplication::clipboard()->setText(plainText() + m_copiedBelow);
    if (chosen == latex) {
        std::string lines;
        for (const Working& working : m_step.workings)
            for (const Formula& line : linesOf(working))
                lines += toLatex(line) + '\n';
        QApplication::clipboard()->setText(QString::fromStdString(lines));
    }
}

} // namespace tailpoint
