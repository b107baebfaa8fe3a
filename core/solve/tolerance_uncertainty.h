// Standard uncertainty of what is found, from the tolerances of what is given: on request, beside the range.
#pragma once

#include "core/solve/tolerance.h"

namespace tailpoint::tolerance {

/// How a given value is spread within its tolerance, half-width a.
enum class Spread {
    rectangular, ///< evenly: standard uncertainty a / sqrt(3)
    normal       ///< the half-width is k standard uncertainties: a / k
};
struct UncertaintyAsked {
    Spread spread = Spread::rectangular;
    double k = 2;        ///< of Spread::normal, > 0
    int draws = 100'000; ///< to compare with; 0: not compared with draws
};

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
/// common practice, no source. The draws are the same everywhere but for the last bits. Only vectors with
/// something to find; empty without any tolerance. Preconditions as for rangesOf(); `range` is that of the
/// same answer.
///
/// Source: JCGM 100:2008 (GUM), 4.3.7 (rectangular), 4.3.8 (uneven limits), 5.1.2; JCGM 101:2008, 7.
std::vector<VectorUncertainty> uncertaintyOf(const Sketch& sketch, const Solved& solved, std::size_t answer,
                                             const AnswerRange& range, const UncertaintyAsked& asked = {});

} // namespace tailpoint::tolerance
