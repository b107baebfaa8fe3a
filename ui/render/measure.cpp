#include "ui/render/fonts.h"
#include "ui/render/render.h"

#include <QFontMetricsF>
#include <QImage>
#include <algorithm>
#include <cmath>
#include <string>
#include <unordered_map>

namespace tailpoint {
namespace {

/// Metrics are taken once at this size and scaled: without hinting they are proportional.
constexpr double kMetricSize = 128;
constexpr int kMetricDots = 72;
/// Heights are rounded up to this part of the size, so that a changing digit doesn't move a label.
constexpr double kHeightStep = 1.0 / 16;

double roundedUp(double height) {
    return std::max(0.0, std::ceil(height / kHeightStep - 1e-6) * kHeightStep);
}

} // namespace

struct QtTextMeasure::Cache {
    QImage device{1, 1, QImage::Format_ARGB32_Premultiplied};
    std::unordered_map<std::string, TextExtent> known;
    std::string key;

    /// Of a run at size 1.
    const TextExtent& extent(const Run& run, Face face) {
        key.assign(
            1, static_cast<char>((face == Face::serif ? 1 : 0) + (run.italic ? 2 : 0) + (run.bold ? 4 : 0)));
        key += run.text;
        const auto it = known.find(key);
        if (it != known.end())
            return it->second;
        constexpr std::size_t most = 20'000; // hours of dragging
        if (known.size() > most)
            known.clear();
        return known.emplace(key, measured(run, face)).first->second;
    }

    TextExtent measured(const Run& run, Face face) const {
        const QFontMetricsF metrics(FontShelf::ofThread().font(run, face, kMetricSize, kMetricDots), &device);
        const QString text = QString::fromStdString(run.text);
        const QRectF tight = metrics.tightBoundingRect(text);
        return {metrics.horizontalAdvance(text) / kMetricSize, roundedUp(-tight.top() / kMetricSize),
                roundedUp(tight.bottom() / kMetricSize)};
    }
};

QtTextMeasure::QtTextMeasure() : m_cache(std::make_unique<Cache>()) {
    const int dotsPerMetre = qRound(kMetricDots / 0.0254);
    m_cache->device.setDotsPerMeterX(dotsPerMetre);
    m_cache->device.setDotsPerMeterY(dotsPerMetre);
}

QtTextMeasure::~QtTextMeasure() = default;

TextExtent QtTextMeasure::measure(const std::vector<Run>& runs, Face face, double size) const {
    TextExtent out;
    for (const Run& run : runs) {
        const TextExtent& one = m_cache->extent(run, face);
        const double own = sizeOf(run, size), shift = shiftOf(run, size);
        out.width += own * one.width;
        out.ascent = std::max(out.ascent, own * one.ascent - shift);
        out.descent = std::max(out.descent, own * one.descent + shift);
    }
    return out;
}

} // namespace tailpoint
