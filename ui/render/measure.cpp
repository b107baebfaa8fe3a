// SPDX-License-Identifier: MIT
#include "ui/render/fonts.h"
#include "ui/render/render.h"

#include <algorithm>

namespace tailpoint {

TextExtent QtTextMeasure::measure(const std::vector<Run>& runs, Face face, double size) const {
    TextExtent out;
    double lean = 0, line = 0;
    int at = 0;
    for (const Run& run : runs) {
        const RunExtent& one = FontShelf::ofThread().extent(run, face);
        const double own = sizeOf(run, size), shift = shiftOf(run, size);
        line = run.line == at ? line + own * one.width : own * one.width;
        at = run.line;
        out.width = std::max(out.width, line);
        out.ascent = std::max(out.ascent, own * one.ascent - shift);
        out.descent = std::max(out.descent, own * one.descent + shift);
        if (&run == &runs.front())
            lean = std::max(lean, own * one.before);
        if (&run == &runs.back())
            lean = std::max(lean, own * one.after);
    }
    out.width += 2 * lean; // the same on both sides, so that the middle stays the middle
    return out;
}

} // namespace tailpoint
