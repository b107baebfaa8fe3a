#include "ui/render/fonts.h"

#include "ui/style/theme.h"

namespace tailpoint {

const QFont& FontShelf::font(const Run& run, Face face, double size, int dotsPerInch) {
    const unsigned style = (face == Face::serif ? 1U : 0U) | (run.italic ? 2U : 0U) | (run.bold ? 4U : 0U);
    for (const Entry& entry : m_entries)
        if (entry.style == style && entry.size == size && entry.dotsPerInch == dotsPerInch)
            return entry.font;
    constexpr std::size_t most = 64; // a zoomed preview asks for ever new sizes
    if (m_entries.size() >= most)
        m_entries.clear();
    QFont font = face == Face::serif ? serifFont() : sansFont();
    font.setItalic(run.italic);
    font.setBold(run.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // A size in pixels must be whole, one in points need not: so say it in points of this device.
    font.setPointSizeF(size * 72 / dotsPerInch);
    return m_entries.emplace_back(Entry{style, dotsPerInch, size, font}).font;
}

FontShelf& FontShelf::ofThread() {
    thread_local FontShelf shelf;
    return shelf;
}

} // namespace tailpoint
