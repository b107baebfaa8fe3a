#include "ui/panel/solution_step.h"

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

constexpr double kIndent = 28;    ///< of the body, pixels: room for the number
constexpr double kPadding = 8;    ///< around a step
constexpr double kFormula = 1.32; ///< size of formulas by that of the words
constexpr double kNote = 0.92;    ///< size of margin notes
constexpr double kRule = 3;       ///< at the left of a margin note

/// Pixels of the widget's own text.
double pixelsOf(const QWidget& widget) {
    const QFont& font = widget.font();
    return font.pixelSize() > 0 ? font.pixelSize() : font.pointSizeF() * widget.logicalDpiY() / 72;
}

QFont titleFont(const QFont& base) {
    QFont font = base;
    font.setWeight(QFont::DemiBold);
    return font;
}

QFont noteFont(const QFont& base) {
    QFont font = base;
    if (font.pointSizeF() > 0)
        font.setPointSizeF(font.pointSizeF() * kNote);
    return font;
}

} // namespace

SolutionHead::SolutionHead(QWidget* parent) : QAbstractButton(parent), m_theme(&themeOf(ThemeName::paper)) {
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
    const QFontMetrics metrics(titleFont(font()));
    const QRect box = metrics.boundingRect(QRect(0, 0, width - static_cast<int>(kIndent) - 18, 1000),
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
    const QRectF circle(1.5, 3, 18, 18);
    painter.setPen(QPen(m_theme->quietInk, 1));
    painter.drawEllipse(circle);
    QFont digits = font();
    digits.setPointSizeF(digits.pointSizeF() * (m_number > 9 ? 0.78 : 0.86));
    painter.setFont(digits);
    painter.setPen(m_theme->ink);
    painter.drawText(circle, Qt::AlignCenter, QString::number(m_number));
    painter.setFont(titleFont(font()));
    painter.drawText(QRectF(kIndent, 2, width() - kIndent - 18, height() - 4),
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
    : QWidget(parent), m_head(new SolutionHead(this)), m_theme(&themeOf(ThemeName::paper)) {
    m_head->installEventFilter(this);
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
    setAccessibleName(m_head->accessibleName());
    update();
}

void SolutionStep::setTheme(const Theme& theme) {
    m_theme = &theme;
    m_head->setTheme(theme);
    update();
}

void SolutionStep::setLit(bool lit) {
    if (m_lit == lit)
        return;
    m_lit = lit;
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

void SolutionStep::add(Setting setting, double x, Ink ink, double before) {
    if (setting.isEmpty())
        return;
    m_y += before;
    const QPointF baseline(x, m_y + setting.ascent);
    m_y += setting.height();
    m_blocks.push_back({std::move(setting), baseline, ink});
}

void SolutionStep::layOutBody(double width) {
    const double words = pixelsOf(*this), room = width - kIndent - kPadding;
    const TypeSize inText{words * 1.16, logicalDpiY()}, alone{words * kFormula, logicalDpiY()};
    const double left = kPadding + kIndent;
    for (const Prose& prose : m_step.reasoning)
        add(setProse(prose, font(), inText, room), left, Ink::plain, 3);
    if (m_step.table)
        add(setTable(*m_step.table, font(), inText, room), left, Ink::plain, 8);
    for (const Working& working : m_step.workings)
        add(setWorking(working, alone, room), left, Ink::formula, 8);
    bool first = true;
    for (const Prose& prose : m_step.conclusion) {
        add(setProse(prose, font(), inText, room), left, Ink::plain, first ? 7 : 3);
        first = false;
    }
    for (const Prose& prose : m_step.notes)
        add(setProse(prose, noteFont(font()), {words * 1.04, logicalDpiY()}, room - 12), left + 12, Ink::note,
            9);
}

int SolutionStep::layOut(int width) {
    if (width == m_width)
        return m_height;
    m_width = width;
    m_blocks.clear();
    const int head = m_head->heightFor(width - 2 * static_cast<int>(kPadding));
    m_head->setGeometry(static_cast<int>(kPadding), 4, width - 2 * static_cast<int>(kPadding), head);
    m_y = head + 4;
    if (isUnfolded())
        layOutBody(width);
    m_height = static_cast<int>(std::ceil(m_y + (isUnfolded() ? 10 : 4)));
    update();
    return m_height;
}

QColor SolutionStep::colourOf(Ink ink) const {
    return ink == Ink::note && !m_lit ? m_theme->warning : m_theme->ink;
}

void SolutionStep::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    if (m_lit) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_theme->highlight);
        painter.drawRoundedRect(rect(), 4, 4);
    }
    for (const Block& block : m_blocks) {
        const double top = block.baseline.y() - block.setting.ascent,
                     bottom = block.baseline.y() + block.setting.descent;
        if (bottom < event->rect().top() || top > event->rect().bottom() + 1)
            continue;
        if (block.ink == Ink::note)
            painter.fillRect(QRectF(block.baseline.x() - 12, top, kRule, bottom - top), m_theme->warning);
        painter.setPen(colourOf(block.ink));
        block.setting.paint(painter, block.baseline);
    }
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
    else if (event->type() == QEvent::KeyPress &&
             static_cast<QKeyEvent*>(event)->matches(QKeySequence::Copy)) {
        QApplication::clipboard()->setText(plainText() + m_copiedBelow);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void SolutionStep::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange)
        m_width = -1;
    QWidget::changeEvent(event);
}

void SolutionStep::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    QAction* text = menu.addAction(tr("Copy this step as text"));
    QAction* latex = menu.addAction(tr("Copy its formulas as LaTeX"));
    const QAction* chosen = menu.exec(event->globalPos());
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
