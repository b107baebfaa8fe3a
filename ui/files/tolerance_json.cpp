// SPDX-License-Identifier: MIT
#include "ui/files/tolerance_json.h"

namespace tailpoint {

std::vector<JsonMember> toleranceMembers(const std::optional<Tolerance>& tolerance) {
    if (!tolerance)
        return {};
    if (tolerance->percent)
        return {{"plusMinusPercent", jsonNumber(tolerance->plus)}};
    if (isEven(*tolerance))
        return {{"plusMinus", jsonNumber(tolerance->plus)}};
    return {{"plus", jsonNumber(tolerance->plus)}, {"minus", jsonNumber(tolerance->minus)}};
}

} // namespace tailpoint
