// SPDX-License-Identifier: MIT
#include "ui/panel/marked_text.h"

#include "core/explain/spoken.h"

#include <QEvent>
#include <QPainter>
#include <QResizeEvent>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kSymbols = 1.16, kFormula = 1.16; // by the size of the words
constexpr double kIndent = 14;                     // of a line of calculation, pixels

} // namespace

double pixelsOf(const QWidget& widget) {
    const QFont& font = widget.font();
    return font.pixelSize() > 0 ? font.pixelSize() : font.pointSizeF() * widget.logicalDpiY() / 72;
}

MarkedText::MarkedText(const QString& objectName, QWidget* parent)
    : QWidget(parent), m_theme(&themeOf(ThemeName::paper)) {
    setObjectName(objectName);
}

void MarkedText::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

void MarkedText::show(std::vector<Block> blocks) {
    m_blocks = std::move(blocks);
    if (const QString spoken = spokenText(); spoken != accessibleName())
        setAccessibleName(spoken);
    layOut();
    setVisible(!m_blocks.empty());
}

QString MarkedText::plainText() const {
    QStringList lines;
    for (const Block& block : m_blocks)
        lines << (block.working ? plainOf(*block.working) : QString::fromStdString(toText(block.prose)));
    return lines.join(u'\n');
}

QString MarkedText::spokenText() const {
    QStringList lines;
    for (const Block& block : m_blocks)
        lines << QString::fromStdString(block.working ? spoken(*block.working) : spoken(block.prose));
    return lines.join(u'\n');
}

QString MarkedText::plainOf(const Working& working) {
    QStringList sides;
    for (const auto* side : {&working.subject, &working.general, &working.substituted, &working.value})
        if (*side)
            sides << QString::fromStdString(toText(Prose{{**side}}));
    return sides.join(QStringLiteral(" = "));
}

/// Lines of calculation that stand under one another are of one size, in which the widest fits.
double MarkedText::formulaSize(double wanted, double room) const {
    constexpr double kAnyWidth = 1e6, kLeast = 0.6;
    double factor = 1;
    for (const Block& block : m_blocks)
        if (block.working) {
            const double width = setWorking(*block.working, {wanted, logicalDpiY()}, kAnyWidth).width;
            factor = std::min(factor, room / std::max(1.0, width));
        }
    return wanted *
           std::max(kLeast, factor * 0.995); // a hair less, so that none of them is set smaller again
}

void MarkedText::layOut() {
    m_set.clear();
    const double words = pixelsOf(*this), room = std::max(120, width());
    const double formula = formulaSize(words * kFormula, room - kIndent);
    double y = 0;
    for (const Block& block : m_blocks) {
        const double in = block.working ? kIndent : 0;
        Setting setting = block.working
                              ? setWorking(*block.working, {formula, logicalDpiY()}, room - in)
                              : setProse(block.prose, font(), {words * kSymbols, logicalDpiY()}, room);
        if (setting.isEmpty())
            continue;
        y += block.before;
        const QPointF baseline(in, y + setting.ascent);
        y += setting.height();
        m_set.push_back({std::move(setting), baseline, block.ink});
    }
    setFixedHeight(static_cast<int>(std::ceil(y)));
    update();
}

void MarkedText::resizeEvent(QResizeEvent* event) {
    if (event->size().width() != event->oldSize().width())
        layOut();
}

void MarkedText::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange)
        layOut();
    QWidget::changeEvent(event);
}

void MarkedText::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    for (const Set& set : m_set) {
        painter.setPen(set.ink == Ink::warning ? m_theme->warning
                       : set.ink == Ink::quiet ? m_theme->quietInk
                                               : m_theme->ink);
        set.setting.paint(painter, set.baseline);
    }
}

} // namespace tailpoint
