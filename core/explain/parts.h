// What of the figure a step lights up, as the families say it. Internal to explain/.
#pragma once

#include "core/explain/figure_part.h"
#include "core/formula/formula.h"

namespace tailpoint::explaining {

FigurePart arrowPart(int vector);
FigurePart part(FigurePart::Kind kind, int vector = kNoVector, int other = kNoVector);
AngleName named(FigurePart angle, const Formula& symbol);

} // namespace tailpoint::explaining
