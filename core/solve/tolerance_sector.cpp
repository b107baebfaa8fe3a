// SPDX-License-Identifier: MIT
#include "core/solve/tolerance_sector.h"

#include <algorithm>
#include <numbers>

namespace tailpoint::tolerance {

Sector sectorOf(double least, double greatest, double from, double to) {
    return {least, greatest, from, to, unitAt(from), unitAt(to)};
}

Sector Sector::half(bool upper) const {
    Sector made = *this;
    const double cut = middle();
    (upper ? made.from : made.to) = cut;
    (upper ? made.atFrom : made.atTo) = unitAt(cut);
    return made;
}

Line2 within(Line2 line, const Sector& endless) {
    if (endless.width() >= std::numbers::pi) {
        return {line.base, line.step, 1, 0};
    }
    for (const Pt edge : {endless.atFrom, endless.atTo}) {
        const double constant = dot(line.base, edge);
        const double slope = dot(line.step, edge);
        if (std::fabs(slope) < kSquare) {
            if (constant > kSquare) {
                return {line.base, line.step, 1, 0};
            }
        } else if (slope > 0) {
            line.high = std::min(line.high, -constant / slope);
        } else {
            line.low = std::max(line.low, -constant / slope);
        }
    }
    return line;
}

} // namespace tailpoint::tolerance
