// SPDX-License-Identifier: MIT
// Least and greatest of a function of one number, closed in upon. Used by sweep() only.
#pragma once

#include <functional>
#include <optional>

namespace tailpoint {

/// Empty: the function has no value there.
using Function = std::function<std::optional<double>(double)>;

struct Lowest {
    double at = 0, value = 0;
    std::optional<double> missing; ///< a place on the way at which there is no value
};

/// The least value between `left` and `right`, of which `middle` in between lies below both ends (or as low).
/// Golden section, to the last bits of the place at a kink, to half of them at a smooth least.
/// Source: J. Kiefer, 'Sequential minimax search for a maximum', Proc. Amer. Math. Soc. 4 (1953) 502-506.
Lowest lowestBetween(const Function& function, double left, double middle, double right);

/// The same place made sharper where the function is smooth: the zero of its slope, by Newton's method on
/// central differences of sixth order with the step `step`. Where that is no improvement, `lowest` as it was.
Lowest sharpened(const Function& function, const Lowest& lowest, double step);

} // namespace tailpoint
