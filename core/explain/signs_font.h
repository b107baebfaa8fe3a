// SPDX-License-Identifier: MIT
// The signs of a formula that grow with it, as a font of our own for handouts in HTML.
#pragma once

#include <string_view>

namespace tailpoint {

/// TrueType with a MATH table, in base64: root, parentheses and bar in many sizes. The family is "Tailpoint
/// Signs". Drawn by resources/signs/make.py.
std::string_view signsFont();

} // namespace tailpoint
