// SPDX-License-Identifier: MIT
// What is put to a drawn figure or taken from it before it is handed out.
#pragma once

#include "core/figure/display_list.h"
#include "core/sketch/sketch.h"

namespace tailpoint {

/// A bar of whole centimetres in a strip of `room` points added under the figure: who prints lays a ruler on
/// it.
void addScaleBar(DisplayList& list, double room, double unitsPerCm, const Sketch& sketch,
                 const TextMeasure& measure);

/// Lines that say whence a figure comes, in a strip added under it: its height is recordRoom().
void addRecord(DisplayList& list, const std::vector<std::string>& lines, const TextMeasure& measure);
/// Points; 0 without lines. `width`: of the figure.
double recordRoom(const std::vector<std::string>& lines, double width, const TextMeasure& measure);

/// The forces' names out of the labels; a label that was a name alone goes. What stays stands where it stood.
void leaveOutNames(DisplayList& list, const TextMeasure& measure);

/// Titles and description without values, and without names if asked: what a figure hides is not read out
/// either.
void leaveOutWords(DisplayList& list, bool names);

/// Sheet and halos go: what is behind shows through.
void leaveOutSheet(DisplayList& list);

} // namespace tailpoint
