// SPDX-License-Identifier: MIT
// The arithmetic of a formula's nodes, shared by who walks a tree and who has compiled it, so that both give
// the same bits. Empty where there is no value.
#pragma once

#include "core/formula/formula.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace tailpoint::arithmetic {

using Value = std::optional<long double>;

enum class Function : std::uint8_t { none, sine, cosine, tangent, arcsine, arccosine, arctangent };
Function functionNamed(std::string_view name); ///< "sin", "arccos", ...

Value finite(long double x); ///< empty for infinities and NaN
Value valueOf(Function function, long double x, AngleUnit unit);
Value quotient(long double a, long double b);
Value raised(long double base, long double exponent);
Value rootOf(long double x);

/// Empty for 'approximately' and 'implies', which are nobody's to decide.
std::optional<bool> compared(long double a, Relation relation, long double b);

} // namespace tailpoint::arithmetic
