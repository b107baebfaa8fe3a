#include "ui/render/fonts.h"

#include "ui/style/theme.h"

#include <QFontMetricsF>
#include <cmath>

namespace tailpoint {
namespace {

/// Heights are rounded up to this part of the size, so that a changing digit doesn't move a label.
constexpr double kHeightStep = 1.0 / 16;

double roundedUp(double height) {
    return std::max(0.0, std::ceil(height / kHeightStep - 0.02) * kHeightStep);
}

unsigned styleOf(const Run& run, Face face) {
    return (face == Face::serif ? 1U : 0U) | (run.italic ? 2U : 0U) | (run.bold ? 4U : 0U);
}

} // namespace

const QFont& FontShelf::font(const Run& run, Face face) {
    std::optional<QFont>& place = m_fonts[styleOf(run, face)];
    if (!place) {
        QFont font = face == Face::serif ? serifFont() : sansFont();
        font.setItalic(run.italic);
        font.setBold(run.bold);
        font.setHintingPreference(QFont::PreferNoHinting);
        font.setPixelSize(kSize);
        place = font;
    }
    return *place;
}

const RunExtent& FontShelf::extent(const Run& run, Face face) {
    m_key.assign(1, static_cast<char>('0' + styleOf(run, face)));
    m_key += run.text;
    if (const auto it = m_extents.find(m_key); it != m_extents.end())
        return it->second;
    constexpr std::size_t most = 20'000; // hours of dragging
    if (m_extents.size() > most)
        m_extents.clear();
    return m_extents.emplace(m_key, measured(run, face)).first->second;
}

RunExtent FontShelf::measured(const Run& run, Face face) {
    const QFontMetricsF metrics(font(run, face));
    const QString text = QString::fromStdString(run.text);
    const QRectF tight = metrics.tightBoundingRect(text);
    const double advance = metrics.horizontalAdvance(text) / kSize;
    RunExtent out;
    out.width = advance;
    out.ascent = roundedUp(-tight.top() / kSize);
    out.descent = roundedUp(tight.bottom() / kSize);
    out.before = std::max(0.0, -tight.left() / kSize);
    out.after = std::max(0.0, tight.right() / kSize - advance);
    return out;
}

FontShelf& FontShelf::ofThread() {
    thread_local FontShelf shelf;
    return shelf;
}

} // namespace tailpoint
