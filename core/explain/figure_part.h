// What of the figure a step speaks of: the word between the solution and the sheet.
#pragma once

#include "core/solve/solve.h"

#include <string>

namespace tailpoint {

/// What of the figure a step speaks of. `vector` indexes the sketch's forces, or is kSumIndex.
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
    Kind kind = Kind::vector;
    int vector = kNoVector;
    int other = kNoVector;
    bool operator==(const FigurePart&) const = default;
};

/// What an angle of the figure is called from a step on: "γ", "α′", "φ" with the subscript Q. `part` is tails
/// or opposite.
struct AngleName {
    FigurePart part;
    std::string letter, sub{};
    bool operator==(const AngleName&) const = default;
};

} // namespace tailpoint
