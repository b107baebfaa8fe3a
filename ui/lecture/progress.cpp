// SPDX-License-Identifier: MIT
#include "ui/lecture/progress.h"

#include <QFontMetricsF>
#include <QPainter>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kCautionLine = 1.4; ///< by the size of the letters

} // namespace

LectureProgress::LectureProgress(QWidget* parent) : QWidget(parent), m_theme(&themeOf(ThemeName::slate)) {
    setObjectName(QStringLiteral("lectureProgress"));
    setAttribute(Qt::WA_OpaquePaintEvent);
}

void LectureProgress::setMeasures(const Measures& measures) {
    m_measures = measures;
    update();
}

void LectureProgress::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

void LectureProgress::show(std::size_t stop, std::size_t stops, double part, bool changed) {
    m_stop = stop;
    m_stops = stops;
    m_part = part;
    m_changed = changed;
    setAccessibleName(spoken());
    update();
}

void LectureProgress::setCaution(bool on) {
    m_caution = on;
    setAccessibleName(spoken());
    update();
}

QString LectureProgress::cautionText() const {
    return m_caution ? tr("A check, not a design") : QString();
}

QString LectureProgress::spoken() const {
    const QString step = tr("Step %1 of %2").arg(m_stop + 1).arg(m_stops);
    return m_caution ? step + QStringLiteral(". ") + cautionText() : step;
}

void LectureProgress::setPart(const QString& part) {
    m_lessonPart = part;
    setAccessibleName(spoken());
    update();
}

void LectureProgress::setMore(bool more) {
    if (more != m_more) {
        m_more = more;
        update();
    }
}

QFont LectureProgress::font() const {
    QFont font = sansFont();
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setPointSizeF(m_measures.sans * 72 / logicalDpiY());
    return font;
}

QString LectureProgress::text() const {
    if (m_changed)
        return tr("U: back to the plan");
    return m_lessonPart.isEmpty() ? tr("F1 keys") : tr("%1 \u00B7 F1 keys").arg(m_lessonPart);
}

bool LectureProgress::cautionFits() const {
    return QFontMetricsF(font()).horizontalAdvance(cautionText()) <= m_measures.textWidth();
}

int LectureProgress::heightNeeded() const {
    return static_cast<int>(std::ceil((2.6 + (m_caution ? kCautionLine : 0)) * m_measures.sans));
}

double LectureProgress::capital() const {
    return QFontMetricsF(font()).tightBoundingRect(QStringLiteral("E")).height();
}

void LectureProgress::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), m_theme->panel);
    const double left = m_measures.margin, wide = m_measures.textWidth(), thick = m_measures.height / 360;
    const double top = (0.5 + (m_caution ? kCautionLine : 0)) * m_measures.sans;
    painter.setFont(font());
    painter.setPen(m_theme->warning);
    painter.drawText(QPointF(left, kCautionLine * m_measures.sans), cautionText());
    painter.fillRect(QRectF(left, top, wide, thick), m_theme->hairline);
    const double done = (static_cast<double>(m_stop) + m_part) / static_cast<double>(m_stops);
    painter.fillRect(QRectF(left, top, wide * done, thick), m_theme->quietInk);
    painter.setPen(m_theme->quietInk);
    const double base = top + thick + 1.35 * m_measures.sans;
    painter.drawText(QPointF(left, base), QStringLiteral("%1 / %2").arg(m_stop + 1).arg(m_stops));
    if (m_changed)
        painter.setPen(m_theme->warning);
    const double room = QFontMetricsF(font()).horizontalAdvance(text());
    painter.drawText(QPointF(left + wide - room, base), text());
    if (m_more) {
        const double size = m_measures.height / 60, x = left + wide / 2;
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_theme->ink);
        painter.drawPolygon(QPolygonF({{x - size, base - size}, {x + size, base - size}, {x, base}}));
    }
}

} // namespace tailpoint
