// SPDX-License-Identifier: MIT
// What a tolerance is taken for where a standard uncertainty is asked for.
#pragma once

namespace tailpoint::tolerance {

/// How a given value is spread within its tolerance, half-width a.
enum class Spread {
    rectangular, ///< evenly: standard uncertainty a / sqrt(3)
    normal       ///< the half-width is k standard uncertainties: a / k
};
struct UncertaintyAsked {
    Spread spread = Spread::rectangular;
    double k = 2;        ///< of Spread::normal, > 0
    int draws = 100'000; ///< at most, to compare with; 0: not compared with draws
    bool operator==(const UncertaintyAsked&) const = default;
};

} // namespace tailpoint::tolerance
