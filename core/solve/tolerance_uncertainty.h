// SPDX-License-Identifier: MIT
// Standard uncertainty of what is found, from the tolerances of what is given: on request, beside the range.
#pragma once

#include "core/solve/tolerance.h"
#include "core/solve/tolerance_spread.h"

namespace tailpoint::tolerance {

/// Why a standard uncertainty is not told.
enum class Withheld {
    no,
    noDerivative, ///< a tangent, a zero vector: nothing is proportional to small changes
    partWithout,  ///< a part of the box has no such answer
    unlikeRange,  ///< first order and the exact range are unlike one another
    unlikeDraws   ///< first order and the draws are
};

/// Part of the variance that one given value makes.
struct Share {
    int index = kSumIndex; ///< of its vector
    bool isDirection = false;
    double part = 0; ///< 0..1
};

/// Of one found quantity, sheet's unit. Told only where `withheld` is `no`; `standard` is first order's all
/// the same, but 0 for noDerivative.
struct Uncertain {
    double standard = 0;
    std::vector<Share> shares; ///< greatest first; they add up to 1, or there are none
    Withheld withheld = Withheld::no;
    double drawn = 0; ///< standard deviation of the draws; 0 where there were none
    double expanded() const { return 2 * standard; } ///< coverage factor 2
};

struct VectorUncertainty {
    int index = kSumIndex;
    std::optional<Uncertain> magnitude, direction, x, y; ///< what of it is found; x and y with either
};

/// First order by the derivatives of the equation, compared with the exact range (either end may lie off by a
/// quarter of first order's own) and with seeded draws (their standard deviation by a tenth): bounds by
/// common practice, no source. A fifth of the draws does where they are as like by half as much; none are
/// made where nothing is told anyhow. The draws are the same everywhere but for the last bits. Only vectors
/// with something to find; empty without any tolerance. Preconditions as for rangesOf(); `range` is that of
/// the same answer.
///
/// Source: JCGM 100:2008 (GUM), 4.3.7 (rectangular), 4.3.8 (uneven limits), 5.1.2; JCGM 101:2008, 7.
std::vector<VectorUncertainty> uncertaintyOf(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                             const AnswerRange& range, const UncertaintyAsked& asked = {});

/// Of every answer, in the order of `ranges`; empty where there are none.
using Uncertainties = std::vector<std::vector<VectorUncertainty>>;
Uncertainties uncertaintiesOf(const Sketch& sketch, const Solved& solved, const Ranges& ranges,
                              const UncertaintyAsked& asked = {});

} // namespace tailpoint::tolerance
