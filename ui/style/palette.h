// SPDX-License-Identifier: MIT
// The theme as a palette, for the widgets around the sheet.
#pragma once

#include "ui/style/theme.h"

#include <QPalette>

namespace tailpoint {

/// Roles beyond the usual: Mid is the hairline, PlaceholderText secondary text, Link what can be pressed,
/// LinkVisited the sum's colour, BrightText the warning's, Highlight the ground of what is selected.
QPalette paletteOf(const Theme& theme);

/// Of what can't be pressed now: plainly fainter in every theme.
QColor disabledInk(const Theme& theme);

} // namespace tailpoint
