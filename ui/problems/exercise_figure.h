// SPDX-License-Identifier: MIT
// The figure of a problem: what is given, and nothing of the answer.
#pragma once

#include "core/figure/display_list.h"
#include "core/sketch/sketch.h"

namespace tailpoint {

struct ExerciseFigure {
    DisplayList list;
    double unitsPerCm = 0; ///< force units in one centimetre of the paper; 0: it isn't to scale
};

inline constexpr double kLeastExerciseHeight = 120, kMostExerciseHeight = 310; ///< points, without the
                                                                               ///< bar

/// At true scale, as large as `width` and `mostHeight` points allow, with a bar to check the print. Labels
/// are measured: needs a QGuiApplication.
ExerciseFigure exerciseFigure(const Sketch& sketch, double width, double mostHeight = kMostExerciseHeight);

/// Nothing can be measured in it, and it says so: lengths and angles are others than those that are given,
/// and no value stands in it. Which way forces point, and in which order they follow one another round the
/// point, is as given.
ExerciseFigure figureNotToScale(const Sketch& sketch, double width, double mostHeight = kMostExerciseHeight);

} // namespace tailpoint
