// SPDX-License-Identifier: MIT
// A pocket calculator with fifty digits, for lines as they are printed: its own tokens, its own grammar,
// nothing of core's formulas. Angles are numbers in the report's unit, as a calculator is set to it.
#pragma once

#include <boost/multiprecision/cpp_dec_float.hpp>

#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace tailpoint::keyed {

using Big = boost::multiprecision::cpp_dec_float_50;

enum class Angles { degrees, radians, gon };

/// A value and the power of the unit of force that it has: 1 for newtons, 2 for their squares, 0 for numbers.
struct Amount {
    Big value;
    int force = 0;
    Big largest; ///< the greatest number on the way to it: what rounding noise is measured by
};

/// What a symbol stood for when it was last printed.
using Memory = std::map<std::string, Amount, std::less<>>;

struct Outcome {
    enum class Kind {
        value,
        unread,   ///< not a formula, or with a symbol that nobody has printed
        undefined ///< a sine above 1, the root of a negative number
    };
    Kind kind = Kind::unread;
    Amount amount;
};

/// The whole text as one formula.
Outcome keyIn(std::string_view text, Angles angles, const Memory& memory = {});

/// A printed number with its unit, and nothing else: "−1.23 × 10⁸ N", "65.0°".
struct PrintedNumber {
    Amount amount;
    int digits = 0;   ///< significant ones as they stand, trailing zeros too
    int decimals = 0; ///< behind the point, less the exponent
    bool hasPoint = false;
};
std::optional<PrintedNumber> printedNumber(std::string_view text, Angles angles);

Big powerOfTen(int exponent);

} // namespace tailpoint::keyed
