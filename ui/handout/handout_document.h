// SPDX-License-Identifier: MIT
// handout/: the open question as something to hand out: statement, figure, worked solution, check, caution.
// The words come from core/explain, the figure from core/figure; nothing is computed here.
#pragma once

#include "core/explain/handout.h"
#include "ui/files/result.h"
#include "ui/handout/handout_choice.h"
#include "ui/style/theme.h"

namespace tailpoint {

/// The figure for a column of `width` points. Without the solution: the given forces and their directions.
DisplayList handoutFigure(const Result& result, const HandoutChoice& choice, double width, double height);

/// Force units in one division of that figure.
double handoutDivision(const Result& result, const HandoutChoice& choice, double width, double height);

/// Everything but the figure's own form. `division`: force units in one division of the figure.
Handout handoutOf(const Result& result, const HandoutChoice& choice, double division);

/// One self-contained file each. Both need a QGuiApplication, which measures the figure's labels.
QByteArray handoutHtml(const Result& result, const HandoutChoice& choice);
QByteArray handoutLatex(const Result& result, const HandoutChoice& choice);

/// A handout's column on the page, points; fits A4 and Letter.
inline constexpr double kHandoutWidth = 480;
/// As high as the figure needs to fill the column's width, within limits.
double handoutFigureHeight(const Result& result, const HandoutChoice& choice);
inline constexpr double kLeastFigureHeight = 310, kMostFigureHeight = 400;

} // namespace tailpoint
