// SPDX-License-Identifier: MIT
#include "ui/style/theme.h"

#include <QFontDatabase>
#include <QStringList>

namespace tailpoint {
namespace {

Theme paper() {
    Theme t;
    t.name = ThemeName::paper;
    t.sheet = QColor(0xFA, 0xF8, 0xF2);
    t.grid = QColor(0xE7, 0xE2, 0xD6);
    t.ink = QColor(0x1F, 0x2A, 0x30);
    t.given = QColor(0x0F, 0x4C, 0x5C);
    t.sum = QColor(0x8F, 0x2F, 0x10);
    t.construction = t.axis = QColor(0x5F, 0x6B, 0x73);
    t.arc = QColor(0x3F, 0x4C, 0x54);
    t.locus = QColor(0x6B, 0x4E, 0x9B);
    t.highlight = QColor(0xF3, 0xD9, 0xA4);
    t.mark = QColor(0x9A, 0x6A, 0x0C);
    t.region = QColor(0xDC, 0xD4, 0xC6);
    t.warning = QColor(0x6B, 0x46, 0x00);
    t.bar = QColor(0xF5, 0xF2, 0xE9);
    t.panel = QColor(0xFD, 0xFC, 0xF8);
    t.hairline = QColor(0xD9, 0xD3, 0xC4);
    t.quietInk = QColor(0x4C, 0x58, 0x5F);
    t.accentGround = QColor(0xDD, 0xEA, 0xEC);
    return t;
}

Theme slate() {
    Theme t;
    t.name = ThemeName::slate;
    t.sheet = QColor(0x18, 0x24, 0x2A);
    t.grid = QColor(0x22, 0x32, 0x3A);
    t.ink = QColor(0xF4, 0xF1, 0xE8);
    t.given = QColor(0x8F, 0xD3, 0xE0);
    t.sum = QColor(0xFF, 0xB2, 0x7A);
    t.construction = t.axis = QColor(0x98, 0xA4, 0xAA);
    t.arc = QColor(0xC9, 0xD3, 0xD6);
    t.locus = QColor(0xB6, 0x97, 0xEE);
    t.highlight = QColor(0x4A, 0x43, 0x26);
    t.mark = QColor(0xC9, 0xA8, 0x4A);
    t.region = QColor(0x3B, 0x4C, 0x55);
    t.warning = QColor(0xF0, 0xC4, 0x66);
    t.bar = QColor(0x14, 0x1D, 0x22);
    t.panel = QColor(0x16, 0x1F, 0x25);
    t.hairline = QColor(0x33, 0x44, 0x4C);
    t.quietInk = QColor(0xB9, 0xC5, 0xCA);
    t.accentGround = QColor(0x21, 0x3C, 0x46);
    return t;
}

Theme contrast() {
    Theme t;
    t.name = ThemeName::contrast;
    t.sheet = t.bar = t.panel = Qt::white;
    t.ink = t.given = t.construction = t.axis = t.arc = t.locus = t.hairline = t.quietInk = Qt::black;
    t.grid = QColor(0xD8, 0xD8, 0xD8);
    t.sum = t.warning = QColor(0x9A, 0x00, 0x2E);
    t.highlight = QColor(0xFF, 0xE0, 0x8A);
    t.mark = Qt::black;
    t.region = QColor(0xC8, 0xC8, 0xC8);
    t.accentGround = QColor(0xE4, 0xE4, 0xE4);
    return t;
}

} // namespace

QColor Theme::colour(Role role) const {
    switch (role) {
    case Role::sheet:
    case Role::halo:
        return sheet;
    case Role::grid:
        return grid;
    case Role::axis:
        return axis;
    case Role::given:
        return given;
    case Role::sum:
        return sum;
    case Role::construction:
    case Role::titleblock:
    case Role::leader:
        return construction;
    case Role::arc:
        return arc;
    case Role::locus:
        return locus;
    case Role::highlight:
        return highlight;
    case Role::region:
        return region;
    case Role::label:
    case Role::point:
        break;
    }
    return ink;
}

const Theme& themeOf(ThemeName name) {
    static const Theme themes[] = {paper(), slate(), contrast()};
    return themes[static_cast<int>(name)];
}

const Theme& printTheme() {
    static const Theme theme = [] {
        Theme t = paper();
        t.sheet = t.panel = t.bar = Qt::white;
        return t;
    }();
    return theme;
}

std::optional<ThemeName> themeFrom(const QString& name) {
    for (const ThemeName theme : {ThemeName::paper, ThemeName::slate, ThemeName::contrast})
        if (name == nameOf(theme))
            return theme;
    return std::nullopt;
}

QString nameOf(ThemeName name) {
    switch (name) {
    case ThemeName::paper:
        return QStringLiteral("paper");
    case ThemeName::slate:
        return QStringLiteral("slate");
    case ThemeName::contrast:
        break;
    }
    return QStringLiteral("contrast");
}

namespace {

/// The first that is there, alone. Of a list Qt asks at once for everything that could stand in for it, a
/// millisecond for each size and style; of one family when it lacks a letter.
QStringList firstInstalled(const QStringList& families) {
    for (const QString& family : families)
        if (QFontDatabase::hasFamily(family))
            return {family};
    return families;
}

QFont fontOf(const QStringList& families, QFont::StyleHint hint) {
    QFont font;
    font.setFamilies(families);
    font.setStyleHint(hint);
    return font;
}

} // namespace

QFont serifFont() {
    static const QStringList families =
        firstInstalled({QStringLiteral("STIX"), QStringLiteral("TeX Gyre Termes"),
                        QStringLiteral("Liberation Serif"), QStringLiteral("serif")});
    return fontOf(families, QFont::Serif);
}

QFont sansFont() {
    static const QStringList families =
        firstInstalled({QStringLiteral("Inter"), QStringLiteral("DejaVu Sans"),
                        QStringLiteral("Liberation Sans"), QStringLiteral("sans-serif")});
    return fontOf(families, QFont::SansSerif);
}

const char* serifStack() {
    return "STIX, 'TeX Gyre Termes', 'Liberation Serif', serif";
}
const char* sansStack() {
    return "Inter, 'DejaVu Sans', 'Liberation Sans', sans-serif";
}

} // namespace tailpoint
