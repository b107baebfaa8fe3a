// SPDX-License-Identifier: MIT
// What the words behind the verb `figure` ask for.
#pragma once

#include "app/arguments.h"
#include "ui/handout/figure_job.h"

namespace tailpoint {

QList<Option> figureOptions();

/// What was asked for, checked before the sketch is read.
struct Wanted {
    QString out;
    FigureJob job; ///< without its construction and its true scale, which wait for the sketch
};
/// Or why it can't be had, with the mend.
std::variant<Wanted, QString> wantedBy(const Arguments& arguments);

} // namespace tailpoint
