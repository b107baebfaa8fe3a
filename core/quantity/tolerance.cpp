// SPDX-License-Identifier: MIT
#include "core/quantity/tolerance.h"

#include "core/quantity/decimals.h"

namespace tailpoint {

std::string shownTolerance(const Tolerance& tolerance, const std::string& unit, bool eachUnit) {
    const std::string plus = shortest(tolerance.plus);
    if (tolerance.percent) {
        return "± " + plus + " %";
    }
    return isEven(tolerance)
               ? "± " + plus + unit
               : "+" + plus + (eachUnit ? unit : std::string()) + "/-" + shortest(tolerance.minus) + unit;
}

std::string withTolerance(const std::string& number, const std::optional<Tolerance>& tolerance,
                          const std::string& unit, bool eachUnit) {
    if (!tolerance) {
        return number + unit;
    }
    const bool twice = eachUnit || tolerance->percent;
    return number + (twice ? unit : std::string()) + " " + shownTolerance(*tolerance, unit, eachUnit);
}

} // namespace tailpoint
