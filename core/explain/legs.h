// SPDX-License-Identifier: MIT
// Legs under a load: how steep each stands, how far it is from its neighbour, and what it takes of the load.
#pragma once

#include "core/explain/table_told.h"
#include "core/explain/wording.h"
#include "core/solve/tolerance.h"

#include <optional>
#include <vector>

namespace tailpoint {

/// Angles in the sheet's angle unit, magnitudes in its force unit.
struct LegNeighbour {
    VectorId vector;
    double angle = 0; ///< between the two tails, on the side away from the load
};
struct Leg {
    VectorId vector;
    double fromHorizontal = 0, fromVertical = 0; ///< both from 0 to a quarter turn
    std::vector<LegNeighbour> neighbours;        ///< one at either side where there is one
    double tension = 0, overLoad = 0;            ///< overLoad: tension over load
    bool isLow = false;         ///< may stand less than kLowLeg from the horizontal, and carries
    bool isLowAtMiddle = false; ///< does so without its tolerance
};
struct Legs {
    VectorId load;
    double magnitude = 0;  ///< of the load, > 0
    std::vector<Leg> legs; ///< at least one, counter-clockwise from the load
};

/// Degrees from the horizontal below which a leg is remarked upon.
/// Source: common practice, no source.
inline constexpr double kLowLeg = 30;

/// The legs of an answer (of an equation that is given throughout and holds: of what is given, whatever
/// `solution`). In equilibrium: one force straight down is the load where none of the others has a part
/// downwards and one at least a part upwards, these others are its legs; or all of it upside down, under a
/// hook. With a sum, where the sketch needs the caution and the sum is vertical: the sum is the load, the
/// forces are the legs. Empty elsewhere, and where a line of action leaves a sense open (a bar may push).
/// `range`: of that answer; how low a leg stands is judged at the worst end of its direction.
std::optional<Legs> legsOf(const Sketch& sketch, const Solved& solved, std::size_t solution,
                           const tolerance::AnswerRange* range = nullptr);

using LegsTold = TableTold;
LegsTold told(const Legs& legs, const Sketch& sketch, const Sentences* sentences = nullptr);

/// About the legs that stand low, with the caution where the sketch has none of its own; nothing where none
/// does.
std::optional<Prose> lowLegsTold(const Legs& legs, const Sketch& sketch,
                                 const Sentences* sentences = nullptr);

} // namespace tailpoint
