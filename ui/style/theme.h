// SPDX-License-Identifier: MIT
// style/: what the roles look like. Colours stand here and nowhere else.
#pragma once

#include "core/figure/display_list.h"

#include <QColor>
#include <QFont>
#include <QString>
#include <optional>

namespace tailpoint {

enum class ThemeName { paper, slate, contrast };

/// Colours by role, and those of the window around the sheet.
struct Theme {
    ThemeName name = ThemeName::paper;
    QColor sheet, grid, ink, given, sum, construction, axis, arc, locus, highlight, region, warning;
    QColor mark; ///< edges of what is selected, lit or under the pointer: their grounds alone are too quiet
    QColor bar, panel, hairline, quietInk,
        accentGround;               ///< window: bar, panel ground, rules, secondary text, pressed button
    QColor colour(Role role) const; ///< of a figure's strokes or text
};

const Theme& themeOf(ThemeName name);
const Theme& printTheme(); ///< Paper's inks on white: for pages that are printed
std::optional<ThemeName> themeFrom(const QString& name); ///< "paper", "slate", "contrast"
QString nameOf(ThemeName name);

/// Figure and formulas: STIX, 'TeX Gyre Termes', 'Liberation Serif', serif.
QFont serifFont(); ///< precondition, here and below: there is a QGuiApplication
/// Title block and notes on the figure (the window's own text is the platform's font).
QFont sansFont();
const char* serifStack(); ///< for SVG and HTML
const char* sansStack();

} // namespace tailpoint
