// SPDX-License-Identifier: MIT
// A figure as files to hand out: the form, the paper, what is shown of it, one stage or all of them. The verb
// `figure` and the window's export both draw through here, so that they can't differ.
#pragma once

#include "core/explain/record.h"
#include "core/figure/compose.h"
#include "ui/document/sketch_document.h"
#include "ui/style/theme.h"

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <variant>
#include <vector>

class QPainter;

namespace tailpoint {

enum class FigureForm { svg, pdf, png, tex };
std::optional<FigureForm> figureFormFrom(const QString& ending); ///< "svg", "pdf", "png", "tex"
QString endingOf(FigureForm form);

/// `free`: the sheet's own size; else a page with margins, the figure as large as fits between them.
enum class FigurePaper { free, a4, a4Landscape, letter, letterLandscape };

struct FigureJob {
    FigureForm form = FigureForm::svg;
    FigureOptions options; ///< construction, order, stage, answer, values
    ThemeName theme = ThemeName::paper;
    FigurePaper paper = FigurePaper::free;
    double width = 720, height = 480;   ///< of a free sheet, points
    std::optional<View> view;           ///< of a free sheet: as it is seen; empty: fitted
    std::optional<double> unitsPerCm;   ///< true scale: force units in one centimetre, with a bar to check it
    double pixelsPerPoint = 300.0 / 72; ///< of a PNG
    std::optional<int> pixelWidth;      ///< of a PNG, instead
    bool transparent = false;           ///< a PNG, and an SVG or PDF, without the sheet behind
    bool names = true;                  ///< of the forces
    bool givenOnly = false;             ///< the given forces and their directions
    bool tolerances = true; ///< false: the sketch is without those of its file, and no SVG carries it
    bool stageAsked = true; ///< false: nobody chose the stage, and hidden values make an exercise
    bool allStages = false; ///< one page or file each
    /// Whence a page comes, under its figure (figureRecord()); not on one that is an exercise.
    std::vector<std::string> record{};
};

/// The lines of the record that the title block doesn't have: file, date and program; what is assumed.
std::vector<std::string> figureRecord(const Sketch& sketch, const Provenance& from);

/// Only what is given is drawn: that is asked for, or values are hidden and no stage with an answer is.
bool drawsGivenOnly(const FigureJob& job);

/// Names or values are hidden: then no form of the figure tells them, nor an SVG's metadata.
bool carriesNoSketch(const FigureJob& job);
/// What the job writes can't be opened as the sketch again: it hides something, or its form carries none.
bool losesSketch(const FigureJob& job);

/// The figure of one stage; with `allStages` there are kFigureStages of them.
inline constexpr int kFigureStages = static_cast<int>(Stage::all) + 1;

/// Why it can't be drawn, with the mend: at that scale the figure is larger than the paper.
using FigureFault = QString;

/// What the job draws. Labels are measured: needs a QGuiApplication.
std::variant<std::vector<DisplayList>, FigureFault> figuresOf(const Result& result, const FigureJob& job);

struct FigureFile {
    QString suffix; ///< put before the ending: "", or "-1", "-2", ... of the stages
    QByteArray bytes;
};
/// "raft.svg" and "-3" to "raft-3.svg".
QString withSuffix(const QString& path, const QString& suffix);
/// The names of all files that figureFiles() is written to where `path` was named.
QStringList figureNames(const QString& path, const FigureJob& job);
/// One file, or one a stage where the form has no pages. An SVG that hides something carries no sketch.
std::variant<std::vector<FigureFile>, FigureFault> figureFiles(const Result& result, const FigureJob& job);

/// Points of the page, and of the figure's room between its margins and over its record; both the sheet's own
/// where it is free, but for the record's strip. Measures words: needs a QGuiApplication where there is a
/// record.
struct PageRoom {
    double pageWidth, pageHeight, left, top, width, height;
};
PageRoom roomOf(const FigureJob& job);

} // namespace tailpoint
