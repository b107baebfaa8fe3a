#include "ui/lecture/column.h"

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

void LectureColumn::show(const Stop& stop, std::size_t beat, bool notes) {
    const bool same =
        !m_titleOnly && stop.step.key == m_stop.step.key && stop.step.title == m_stop.step.title;
    m_stop = stop;
    m_beat = beat;
    m_notes = notes;
    m_titleOnly = false;
    m_title = QString::fromStdString(stop.step.title);
    m_slide.stop();
    if (!same)
        m_scroll = 0;
    relayout();
    const double to = wanted();
    if (same && m_moves && to != m_scroll && isVisible()) {
        m_slide.setStartValue(m_scroll);
        m_slide.setEndValue(to);
        m_slide.start();
    } else {
        m_scroll = to;
    }
    update();
}

void LectureColumn::showTitle(const QString& title) {
    m_titleOnly = true;
    m_title = title;
    m_slide.stop();
    m_scroll = 0;
    relayout();
    update();
}

/// Everything up to `beat`, from the top of the body. False: a formula had to be broken.
/// The newest lines at the bottom, but never their beginning out of sight; no line is cut by the title.
/// How far the lines can be pushed up: until the last of them stands under the title.
void LectureColumn::scrollBy(double pixels) {
    m_slide.stop();
    m_scroll = std::clamp(m_scroll + pixels, 0.0, furthest());
    update();
}

QString LectureColumn::plainText() const {
    QStringList lines{m_title};
    if (m_titleOnly)
        return m_title;
    for (std::size_t b = 0; b <= m_beat && b < m_stop.beats.size(); ++b)
        for (const Line& line : m_stop.beats[b]) {
            std::string text;
            if (line.kind == Line::Kind::reasoning)
                text = toText(m_stop.step.reasoning[line.index]);
            else if (line.kind == Line::Kind::conclusion)
                text = line.index < m_stop.step.conclusion.size() ? toText(m_stop.step.conclusion[line.index])
                                                                  : std::string();
            else if (line.kind == Line::Kind::working) {
                const auto relations = linesOf(m_stop.step.workings[line.index]);
                const auto at = static_cast<std::size_t>(line.parts - 1);
                if (at < relations.size())
                    text = toText(relations[at]);
            }
            if (!text.empty())
                lines << QString::fromStdString(text);
        }
    return lines.join(u'\n');
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
    for (const Block& block : m_blocks) {
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
    m_scroll = wanted();
}

void LectureColumn::wheelEvent(QWheelEvent* event) {
    scrollBy(-event->angleDelta().y() / 120.0 * 1.5 * m_measures.serif);
    event->accept();
}

} // namespace tailpoint
