// SPDX-License-Identifier: MIT
#include "ui/lecture/column.h"

#include "core/explain/spoken.h"

#include <QPainter>
#include <QWheelEvent>

namespace tailpoint {

namespace {
constexpr int kSlide = 260; ///< milliseconds
}

LectureColumn::LectureColumn(QWidget* parent) : QWidget(parent), m_theme(&themeOf(ThemeName::slate)) {
    setObjectName(QStringLiteral("lectureColumn"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    m_slide.setDuration(kSlide);
    m_slide.setEasingCurve(QEasingCurve::OutCubic);
    connect(&m_slide, &QVariantAnimation::valueChanged, this, [this](const QVariant& value) {
        m_scroll = value.toDouble();
        update();
    });
}

void LectureColumn::setMeasures(const Measures& measures) {
    m_measures = measures;
    relayout();
}

void LectureColumn::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

void LectureColumn::setMoves(bool on) {
    m_moves = on;
}

void LectureColumn::show(const Stop& stop, std::size_t beat, bool notes, From from) {
    const bool same =
        !m_titleOnly && stop.step.key == m_stop.step.key && stop.step.title == m_stop.step.title;
    const bool stays =
        same && beat == m_beat && notes == m_notes && from == m_from; // what changed is a value
    m_stop = stop;
    m_beat = beat;
    m_notes = notes;
    m_titleOnly = false;
    m_title = QString::fromStdString(stop.step.title);
    m_from = from;
    m_slide.stop();
    if (!same)
        m_scroll = 0;
    relayout();
    m_first = from == From::newest ? newestPlace() : 0;
    const double to = stays                  ? nearestPlace(m_target)
                      : from == From::newest ? m_first
                      : from == From::end    ? lastPlace()
                                             : 0;
    if (same)
        scrollTo(to);
    else
        m_scroll = m_target = to;
    update();
}

void LectureColumn::scrollTo(double to) {
    m_slide.stop();
    m_target = to;
    if (m_moves && to != m_scroll && isVisible()) {
        m_slide.setStartValue(m_scroll);
        m_slide.setEndValue(to);
        m_slide.start();
    } else {
        m_scroll = to;
    }
    emit turned();
    update();
}

void LectureColumn::showTitle(const QString& title) {
    m_titleOnly = true;
    m_title = title;
    m_slide.stop();
    m_scroll = m_target = m_first = 0;
    relayout();
    update();
}

/// By whole lines; as far as the last page.
void LectureColumn::scrollBy(double pixels) {
    double to = place();
    for (const Block& block : m_blocks) {
        if (pixels > 0 && topOf(block) >= place() + pixels) {
            to = topOf(block);
            break;
        }
        if (pixels < 0 && topOf(block) <= std::max(0.0, place() + pixels))
            to = topOf(block);
    }
    scrollTo(std::clamp(to, 0.0, lastPlace()));
}

template <class Told>
QString LectureColumn::told(Told told) const {
    QStringList lines{m_title};
    if (m_titleOnly)
        return m_title;
    for (std::size_t b = 0; b <= m_beat && b < m_stop.beats.size(); ++b)
        for (const BeatLine& line : m_stop.beats[b]) {
            std::string text;
            if (line.kind == BeatLine::Kind::reasoning)
                text = told(m_stop.step.reasoning[line.index]);
            else if (line.kind == BeatLine::Kind::conclusion)
                text = line.index < m_stop.step.conclusion.size() ? told(m_stop.step.conclusion[line.index])
                                                                  : std::string();
            else if (line.kind == BeatLine::Kind::working) {
                const auto relations = linesOf(m_stop.step.workings[line.index]);
                const auto at = static_cast<std::size_t>(line.parts - 1);
                if (at < relations.size())
                    text = told(relations[at]);
            }
            if (!text.empty())
                lines << QString::fromStdString(text);
        }
    return lines.join(u'\n');
}

QString LectureColumn::plainText() const {
    return told([](const auto& what) { return toText(what); });
}

QString LectureColumn::spokenText() const {
    return told([](const auto& what) { return spoken(what); });
}

void LectureColumn::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), m_theme->panel);
    painter.setPen(m_theme->ink);
    painter.setFont(m_titleFont);
    for (const auto& [line, at] : m_titleLines)
        painter.drawText(at, line);
    const QRectF body(0, bodyTop(), width(), bodyRoom());
    painter.setClipRect(body);
    painter.translate(0, bodyTop() - m_scroll);
    const bool still = m_slide.state() != QAbstractAnimation::Running;
    for (const Block& block : m_blocks) {
        if (still && !isWhole(block, m_scroll) && block.setting.height() < bodyRoom())
            continue; // no half line at the edge
        if (block.ink == Ink::note)
            painter.fillRect(QRectF(block.x - 0.6 * m_measures.serif, block.top, m_measures.height / 300,
                                    block.setting.height()),
                             m_theme->warning);
        painter.setPen(block.ink == Ink::sum    ? m_theme->sum
                       : block.ink == Ink::note ? m_theme->warning
                                                : m_theme->ink);
        block.setting.paint(painter, {block.x, block.top + block.setting.ascent});
    }
    painter.resetTransform();
    painter.setClipping(false);
    if (m_scroll > 0.5) // lines have gone under the title
        painter.fillRect(QRectF(m_measures.margin, bodyTop() - 1, m_measures.textWidth(), 1),
                         m_theme->hairline);
}

void LectureColumn::resizeEvent(QResizeEvent*) {
    relayout();
    m_first = m_from == From::newest ? newestPlace() : 0;
    m_slide.stop();
    m_scroll = m_target = m_from == From::end ? lastPlace() : m_first;
}

void LectureColumn::wheelEvent(QWheelEvent* event) {
    scrollBy(-event->angleDelta().y() / 120.0 * 1.5 * m_measures.serif);
    event->accept();
}

} // namespace tailpoint
