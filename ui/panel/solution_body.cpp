// SPDX-License-Identifier: MIT
#include "ui/panel/solution_body.h"

#include "core/explain/spoken.h"
#include "ui/panel/marked_text.h"
#include "ui/panel/solution_reading.h"

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kBodyLeft = 36;      ///< of its paragraphs, pixels: under the title, behind the number
constexpr double kBodyFormula = 1.32; ///< size of formulas by that of the words
constexpr double kNote = 0.92;        ///< size of margin notes
constexpr double kNoteIn = 12;        ///< of a margin note
constexpr double kRule = 3;           ///< at the left of a margin note

QFont noteFont(const QFont& base) {
    QFont font = base;
    if (font.pointSizeF() > 0)
        font.setPointSizeF(font.pointSizeF() * kNote);
    return font;
}

template <class List>
std::string spokenAt(const List& list, std::size_t index) {
    return index < list.size() ? spoken(list[index]) : std::string();
}

} // namespace

SolutionBody::SolutionBody(const Step& step, QWidget* parent)
    : QWidget(parent), m_step(step), m_theme(&themeOf(ThemeName::paper)) {
    installAccessibleSolution();
    setObjectName(QStringLiteral("solutionBody"));
}

void SolutionBody::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

void SolutionBody::setLit(bool lit) {
    m_lit = lit;
    update();
}

void SolutionBody::add(Setting setting, double x, Ink ink, double before, Source source, std::size_t index) {
    if (setting.isEmpty())
        return;
    m_y += before;
    const QPointF baseline(x, m_y + setting.ascent);
    m_y += setting.height();
    m_blocks.push_back({std::move(setting), baseline, ink, source, index});
}

int SolutionBody::layOut(int width) {
    m_waits = false;
    m_blocks.clear();
    m_y = 0;
    const double words = pixelsOf(*this), room = width - kBodyLeft;
    const TypeSize inText{words * 1.16, logicalDpiY()}, alone{words * kBodyFormula, logicalDpiY()};
    for (std::size_t i = 0; i < m_step.reasoning.size(); ++i)
        add(setProse(m_step.reasoning[i], font(), inText, room), kBodyLeft, Ink::plain, 3, Source::reasoning,
            i);
    if (m_step.table)
        add(setTable(*m_step.table, font(), inText, room), kBodyLeft, Ink::plain, 8, Source::table, 0);
    for (std::size_t i = 0; i < m_step.workings.size(); ++i)
        add(setWorking(m_step.workings[i], alone, room), kBodyLeft, Ink::formula, 8, Source::working, i);
    for (std::size_t i = 0; i < m_step.conclusion.size(); ++i)
        add(setProse(m_step.conclusion[i], font(), inText, room), kBodyLeft, Ink::plain, i == 0 ? 7 : 3,
            Source::conclusion, i);
    for (std::size_t i = 0; i < m_step.notes.size(); ++i)
        add(setProse(m_step.notes[i], noteFont(font()), {words * 1.04, logicalDpiY()}, room - kNoteIn),
            kBodyLeft + kNoteIn, Ink::note, 9, Source::note, i);
    m_current = std::clamp(m_current, 0, std::max(0, lineCount() - 1));
    update();
    return static_cast<int>(std::ceil(m_y));
}

void SolutionBody::clear() {
    m_waits = false;
    m_blocks.clear();
    m_current = 0;
    update();
}

int SolutionBody::lineCount() const {
    if (m_waits)
        emit wanted();
    return static_cast<int>(m_blocks.size());
}

QString SolutionBody::lineText(int line) const {
    if (line < 0 || line >= lineCount())
        return {};
    const auto& [setting, baseline, ink, source, index] = m_blocks[static_cast<std::size_t>(line)];
    switch (source) {
    case Source::reasoning:
        return QString::fromStdString(spokenAt(m_step.reasoning, index));
    case Source::table:
        return m_step.table ? QString::fromStdString(spoken(*m_step.table)) : QString();
    case Source::working:
        return QString::fromStdString(spokenAt(m_step.workings, index));
    case Source::conclusion:
        return QString::fromStdString(spokenAt(m_step.conclusion, index));
    case Source::note:
        return QString::fromStdString(spokenAt(m_step.notes, index));
    }
    return {};
}

QRect SolutionBody::lineRect(int line) const {
    if (line < 0 || line >= lineCount())
        return {};
    const Block& block = m_blocks[static_cast<std::size_t>(line)];
    const double left = block.baseline.x() - (block.ink == Ink::note ? kNoteIn : 0);
    return QRectF(left, block.baseline.y() - block.setting.ascent, width() - left - 1, block.setting.height())
        .toAlignedRect()
        .adjusted(-5, -2, 0, 2);
}

void SolutionBody::enter(int line) {
    m_current = std::clamp(line, 0, std::max(0, lineCount() - 1));
    if (!hasFocus())
        setFocus(Qt::OtherFocusReason);
    tellLine();
}

/// Qt itself tells of the widget that has the keyboard, and after that it is told which line of it.
void SolutionBody::tellLine() {
    update();
    tellFocusedLine(*this);
    emit lineEntered(lineRect(m_current));
}

/// It is no tab stop itself, so its place among these is its head's.
bool SolutionBody::focusNextPrevChild(bool next) {
    emit tabbed(next);
    return true;
}

void SolutionBody::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
    if (event->reason() != Qt::OtherFocusReason) // the window has the keys again, say
        QMetaObject::invokeMethod(
            this, [this] { tellFocusedLine(*this); }, Qt::QueuedConnection);
}

void SolutionBody::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

QColor SolutionBody::colourOf(Ink ink) const {
    return ink == Ink::note && !m_lit ? m_theme->warning : m_theme->ink;
}

void SolutionBody::paintEvent(QPaintEvent* event) {
    if (m_waits) // seen earlier than was thought
        QMetaObject::invokeMethod(this, &SolutionBody::wanted, Qt::QueuedConnection);
    QPainter painter(this);
    for (const Block& block : m_blocks) {
        const double top = block.baseline.y() - block.setting.ascent,
                     bottom = block.baseline.y() + block.setting.descent;
        if (bottom < event->rect().top() || top > event->rect().bottom() + 1)
            continue;
        if (block.ink == Ink::note)
            painter.fillRect(QRectF(block.baseline.x() - kNoteIn, top, kRule, bottom - top),
                             m_theme->warning);
        painter.setPen(colourOf(block.ink));
        block.setting.paint(painter, block.baseline);
    }
    if (hasFocus() && lineCount() > 0) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(m_theme->given, 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(lineRect(m_current)).adjusted(0.75, 0.75, -0.75, -0.75), 3, 3);
    }
}

} // namespace tailpoint
