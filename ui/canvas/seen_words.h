// SPDX-License-Identifier: MIT
// A staged figure in words: what is seen of it and nothing else, for assistive technology.
#pragma once

#include "core/figure/display_list.h"

#include <QString>
#include <vector>

namespace tailpoint {

class Canvas;

/// The vectors that are drawn, in the sketch's order, the sum last.
std::vector<int> vectorsSeen(const Canvas& canvas);
/// "Force P = 340 N. Direction of P, 25.0° counter-clockwise from +x": the name as drawn, and what is written
/// beside it.
QString wordsSeen(const Canvas& canvas, int vector);
/// The whole figure, part by part.
QString wordsSeen(const Canvas& canvas);

} // namespace tailpoint
