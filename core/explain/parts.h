// SPDX-License-Identifier: MIT
// What of the figure a step lights up, as the families say it. Internal to explain/.
#pragma once

#include "core/construct/figure_part.h"
#include "core/formula/formula.h"
#include "core/solve/solve.h"

namespace tailpoint::explaining {

/// The families know a vector by its index (Arrow::index).
struct FigurePart {
    enum class Kind {
        vector,        ///< the arrow
        direction,     ///< the arc from the reference axis to `vector`
        tails,         ///< the angle between the tails of `vector` and `other`
        opposite,      ///< the triangle's angle opposite to the side of `vector`
        parallelogram, ///< its two copied sides and its interior angles; of several (pairsOf), the one that
                       ///< adds the force `vector`
        triangle,
        polygon,
        locus, ///< line of action or circle of possible tips of `vector`
        axis
    };
};

/// kNoVector is K at an arrow, a direction or an angle, and nobody at a shape.
tailpoint::FigurePart arrowPart(int vector);
tailpoint::FigurePart part(FigurePart::Kind kind, int vector = kNoVector, int other = kNoVector);
/// The angles of successive parallelograms are the ones that their symbols stand for.
AngleName named(const tailpoint::FigurePart& angle, const Formula& symbol);

} // namespace tailpoint::explaining
