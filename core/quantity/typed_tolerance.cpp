// SPDX-License-Identifier: MIT
#include "core/quantity/typed_tolerance.h"

namespace tailpoint::typing {

Joint takeJoint(Reader& reader) {
    reader.skipSpaces();
    if (reader.takeIf(kPlusMinusSign)) {
        return Joint::both;
    }
    if (!isSign(reader.peek())) {
        return Joint::none;
    }
    if (reader.take() != '+') {
        return Joint::down;
    }
    const std::size_t slash = reader.peek() == '/' ? 1 : 0;
    const char32_t minus = reader.peek(slash);
    if (minus != '-' && minus != kMinusSign && minus != kEnDash) {
        return Joint::up;
    }
    for (std::size_t i = 0; i < 1 + slash; ++i) {
        reader.take();
    }
    return Joint::both;
}

bool takeSecond(Reader& reader, Joint second) {
    reader.skipSpaces();
    reader.takeIf('/');
    reader.skipSpaces();
    const char32_t sign = reader.peek();
    if (!isSign(sign) || (sign == '+') != (second == Joint::up)) {
        return false;
    }
    reader.take();
    reader.skipSpaces();
    return !isSign(reader.peek());
}

bool takePercent(Reader& reader) {
    reader.skipSpaces();
    return reader.takeIf('%');
}

TypedError badTolerance(std::string_view text) {
    return {TypedCode::toleranceNotPositive,
            inQuotes(text) + " has a tolerance that is not above 0; type one such as 5 or leave it out"};
}

TypedError oneSided(std::string_view text) {
    return {TypedCode::toleranceOneSided,
            inQuotes(text) + " has a tolerance of one side; type both, as in 340 +5/-0, or 340 ± 5"};
}

TypedError unevenPercent(std::string_view text) {
    return {TypedCode::tolerancePercent,
            inQuotes(text) + " has a percentage of one side; type ± 5 %, or both sides as values"};
}

TypedError percentOfNoNumber(std::string_view text) {
    return {TypedCode::tolerancePercent,
            inQuotes(text) + " has a percentage of no angle; type the tolerance as an angle, as in ± 0.5"};
}

TypedError percentOfNothing(std::string_view text) {
    return {TypedCode::tolerancePercent,
            inQuotes(text) + " has a percentage of 0, which is nothing; type the tolerance as a value"};
}

} // namespace tailpoint::typing
