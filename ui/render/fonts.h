// The fonts of a figure, made once: looking a font up by its family costs more than drawing with it.
#pragma once

#include "core/figure/display_list.h"

#include <QFont>
#include <QPaintDevice>
#include <array>
#include <vector>

namespace tailpoint {

/// Size of a subscript or superscript, and how far its baseline moves, by the size of the text.
inline constexpr double kScriptSize = 0.72, kSubDrop = 0.18, kSuperRise = 0.36;

inline double sizeOf(const Run& run, double size) {
    return run.script == Script::normal ? size : kScriptSize * size;
}
/// Downward, points.
inline double shiftOf(const Run& run, double size) {
    return run.script == Script::sub ? kSubDrop * size : run.script == Script::super ? -kSuperRise * size : 0;
}

class FontShelf {
public:
    /// `size` in the painter's units on a device of this logical resolution.
    const QFont& font(const Run& run, Face face, double size, int dotsPerInch);
    static FontShelf& ofThread();

private:
    struct Entry {
        unsigned style;
        int dotsPerInch;
        double size;
        QFont font;
    };
    std::vector<Entry> m_entries;
};

} // namespace tailpoint
