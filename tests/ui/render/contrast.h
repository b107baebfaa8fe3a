// SPDX-License-Identifier: MIT
// How well one colour stands out from another.
#pragma once

#include <QColor>
#include <algorithm>
#include <cmath>

namespace tailpoint::testing {

/// Source: WCAG 2.2 (W3C, 2023), definitions of relative luminance and contrast ratio.
inline double luminance(const QColor& colour) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

inline double contrast(const QColor& a, const QColor& b) {
    const double one = luminance(a), two = luminance(b);
    return (std::max(one, two) + 0.05) / (std::min(one, two) + 0.05);
}

} // namespace tailpoint::testing
