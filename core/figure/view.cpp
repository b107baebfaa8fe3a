// SPDX-License-Identifier: MIT
#include "core/figure/view.h"

#include <cmath>
#include <cstdlib>
#include <string>

namespace tailpoint {
namespace {

/// No division is drawn narrower: one centimetre on paper.
constexpr double kLeastDivision = 72 / 2.54;

/// digit * 10^exponent, correctly rounded: what a person would type.
double decimal(int digit, int exponent) {
    const std::string text = std::to_string(digit) + "e" + std::to_string(exponent);
    return std::strtod(text.c_str(), nullptr);
}

} // namespace

double divisionOf(const View& view) {
    const double least = kLeastDivision / view.scale * (1 - 1e-9);
    if (!std::isfinite(least) || least <= 0)
        return 1;
    int exponent = static_cast<int>(std::floor(std::log10(least))) - 1;
    for (;; ++exponent)
        for (const int digit : {1, 2, 5})
            if (const double division = decimal(digit, exponent); division >= least)
                return division;
}

std::optional<double> scaleOfDivision(double division) {
    View view;
    view.scale = kLeastDivision / division;
    const bool usable = std::isfinite(view.scale) && view.scale > 0 && divisionOf(view) == division;
    return usable ? std::optional(view.scale) : std::nullopt;
}

} // namespace tailpoint
