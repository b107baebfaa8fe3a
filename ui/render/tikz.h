// SPDX-License-Identifier: MIT
// The display list as TikZ: named coordinates, real arrows, a style for each role, so that a lecturer can go
// on with it. Lengths in bp (1/72 inch), y up; at most three decimals.
#pragma once

#include "core/figure/display_list.h"
#include "ui/style/theme.h"

#include <QByteArray>

namespace tailpoint {

/// A tikzpicture; needs \usepackage{amsmath,tikz} and \usetikzlibrary{angles,arrows.meta,calc}.
QByteArray toTikz(const DisplayList& list, const Theme& theme);

/// The same as a document for pdflatex: one page as large as the figure.
QByteArray toTikzDocument(const DisplayList& list, const Theme& theme);

} // namespace tailpoint
