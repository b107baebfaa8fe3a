// The symbols that the worked solution gives to angles, for the figures that stand beside it.
#pragma once

#include "core/construct/figure_part.h"
#include "core/construct/stage.h"
#include "ui/document/result.h"

#include <vector>

namespace tailpoint {

/// Those of one answer that are introduced by a stage of the figure, in the order of the steps: the same
/// letter is the same angle in words and figure. Three angles round one point are left out: they would want
/// the room of those from the axis. `parallelograms`: of a solution that adds forces two at a time.
std::vector<AngleName> angleNames(const Result& result, std::size_t solution, Stage by = Stage::all,
                                  bool parallelograms = false);

} // namespace tailpoint
