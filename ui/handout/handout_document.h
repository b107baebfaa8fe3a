// SPDX-License-Identifier: MIT
// handout/: the open question as something to hand out: statement, figure, worked solution, check, caution.
// The words come from core/explain, the figure from core/figure; nothing is computed here.
#pragma once

#include "core/explain/handout.h"
#include "core/figure/compose.h"
#include "ui/document/provenance.h"
#include "ui/document/sketch_document.h"
#include "ui/style/theme.h"

namespace tailpoint {

struct HandoutChoice {
    bool solution = true; ///< false: statement and what is given, for an exercise
    /// The question as the sketch's file words it stands in place of what is given and asked, where it has
    /// such words; false: they are of other values.
    bool ownWords = true;
    bool handRounding = false;
    Method method = Method::suited;                           ///< of the solution
    std::optional<tolerance::UncertaintyAsked> uncertainty{}; ///< told in the solution
    bool parallelograms = false;                              ///< more than two forces: two at a time
    /// As it is seen in the window; empty: a parallelogram for two forces, else a polygon.
    std::optional<ConstructionKind> construction;
    bool otherOrder = false;
    bool parallelMarks = false;
    /// What the record at its end says; empty: there is none. An exercise has none: it is a student's sheet.
    std::optional<Provenance> from{};
};

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
