// SPDX-License-Identifier: MIT
#include "ui/lecture/lecture_notes.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kSizes[]{0.75, 0.65, 0.55, 0.48}; ///< by the least size for the room
constexpr double kAir = 0.4;                       ///< of the margin, above and below

} // namespace

LectureNotes::LectureNotes(QWidget* parent) : QWidget(parent), m_theme(&themeOf(ThemeName::slate)) {
    setObjectName(QStringLiteral("lectureNotes"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    hide();
}

void LectureNotes::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

void LectureNotes::setNotes(const QString& notes) {
    m_notes = notes;
    setAccessibleName(text());
    update();
}

QString LectureNotes::text() const {
    return m_notes.isEmpty() ? tr("No notes for this sketch. (S hides this.)") : m_notes;
}

QFont LectureNotes::font() const {
    QFont font = sansFont();
    font.setPointSizeF(m_size * 72 / logicalDpiY());
    return font;
}

int LectureNotes::lay(const Measures& measures, int width) {
    m_measures = measures;
    double height = 0;
    for (const double size : kSizes) {
        m_size = size * measures.sans;
        const QRectF room(0, 0, width - 1.6 * measures.margin, 1e6);
        height = QFontMetricsF(font()).boundingRect(room, Qt::TextWordWrap, text()).height() +
                 2 * kAir * measures.margin;
        if (height <= measures.height / 3)
            break;
    }
    update();
    return static_cast<int>(std::ceil(std::min(height, measures.height / 3)));
}

void LectureNotes::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), m_theme->panel);
    painter.fillRect(QRectF(0, 0, width(), std::max(1.0, m_measures.height / 540)), m_theme->hairline);
    painter.setFont(font());
    painter.setPen(m_notes.isEmpty() ? m_theme->quietInk : m_theme->ink);
    const double side = 0.8 * m_measures.margin, air = kAir * m_measures.margin;
    painter.drawText(QRectF(rect()).adjusted(side, air, -side, -air), Qt::TextWordWrap, text());
}

} // namespace tailpoint
