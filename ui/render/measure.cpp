#include "ui/render/fonts.h"
#include "ui/render/render.h"

#include <algorithm>

namespace tailpoint {

TextExtent QtTextMeasure::measure(const std::vector<Run>& runs, Face face, double size) const {
    TextExtent out;
    for (const Run& run : runs) {
        const TextExtent& one = FontShelf::ofThread().extent(run, face);
        const double own = sizeOf(run, size), shift = shiftOf(run, size);
        out.width += own * one.width;
        out.ascent = std::max(out.ascent, own * one.ascent - shift);
        out.descent = std::max(out.descent, own * one.descent + shift);
    }
    return out;
}

} // namespace tailpoint
