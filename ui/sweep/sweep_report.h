// SPDX-License-Identifier: MIT
// sweep/: one given value varied: what is written of it, and the window that shows it live.
// Computes nothing: core/solve/sweep.h does.
#pragma once

#include "core/figure/display_list.h"
#include "core/solve/sweep.h"
#include "ui/files/provenance.h"
#include "ui/style/theme.h"

#include <QByteArray>

namespace tailpoint {

inline constexpr int kSweepVersion = 1;

/// A row a step; the heads carry the units. Numbers are full doubles with a point; a cell is empty where
/// there is no such answer. Commas part the cells, or `separator`.
QByteArray sweepCsv(const Sweep& sweep, const Sketch& sketch, char separator = ',');
/// resources/sweep.schema.json says what is in it.
QByteArray sweepJson(const Sweep& sweep, const Sketch& sketch);
/// Extremes and gaps in words, the caution where the sketch needs one, and the record: a line each, UTF-8.
QByteArray sweepText(const Sweep& sweep, const Sketch& sketch, const Provenance& from);
/// The plot with the same under it. Needs a QGuiApplication. Points.
inline constexpr double kSweepWidth = 720, kSweepHeight = 540;
DisplayList sweepFigure(const Sweep& sweep, const Sketch& sketch, const Provenance& from);
QByteArray sweepSvg(const Sweep& sweep, const Sketch& sketch, const Theme& theme, const Provenance& from);

} // namespace tailpoint
