// SPDX-License-Identifier: MIT
#include "core/formula/arithmetic.h"

#include "core/quantity/extended_angle.h"

#include <cmath>
#include <numbers>

namespace tailpoint::arithmetic {

namespace {

long double quarterTurn(AngleUnit unit) {
    switch (unit) {
    case AngleUnit::gon:
        return 100;
    case AngleUnit::rad:
        return std::numbers::pi_v<long double> / 2;
    case AngleUnit::deg:
        break;
    }
    return 90;
}

/// `x` radians in `unit`.
long double inUnit(long double x, AngleUnit unit) {
    return unit == AngleUnit::rad ? x : x * (quarterTurn(unit) / (std::numbers::pi_v<long double> / 2));
}

/// Exact where the angle is a known part of the quarter turn.
Value arcsine(long double x, AngleUnit unit) {
    const long double size = std::fabs(x), quarter = quarterTurn(unit);
    if (size > 1)
        return std::nullopt;
    const long double angle = size == 1      ? quarter
                              : size == 0.5L ? quarter / 3
                                             : inUnit(std::asin(size), unit);
    return x < 0 ? -angle : angle;
}

/// Written out by hand in a worked solution; no result of the program is computed here.
Value arccosine(long double x, AngleUnit unit) {
    const long double size = std::fabs(x), quarter = quarterTurn(unit);
    if (size > 1)
        return std::nullopt;
    const long double angle = size == 0 ? quarter
                              : size == 0.5L
                                  ? quarter * 2 / 3
                                  : inUnit(std::atan2(std::sqrt((1 - size) * (1 + size)), size), unit);
    return x < 0 ? 2 * quarter - angle : angle;
}

Value arctangent(long double x, AngleUnit unit) {
    const long double size = std::fabs(x);
    const long double angle = size == 1 ? quarterTurn(unit) / 2 : inUnit(std::atan(size), unit);
    return x < 0 ? -angle : angle;
}

} // namespace

Function functionNamed(std::string_view name) {
    if (name == "sin")
        return Function::sine;
    if (name == "cos")
        return Function::cosine;
    if (name == "tan")
        return Function::tangent;
    if (name == "arctan")
        return Function::arctangent;
    if (name == "arcsin")
        return Function::arcsine;
    return name == "arccos" ? Function::arccosine : Function::none;
}

Value finite(long double x) {
    return std::isfinite(x) ? Value(x) : std::nullopt;
}

Value valueOf(Function function, long double x, AngleUnit unit) {
    switch (function) {
    case Function::sine:
        return sinExtended(x, unit);
    case Function::cosine:
        return cosExtended(x, unit);
    case Function::tangent:
        return quotient(sinExtended(x, unit), cosExtended(x, unit));
    case Function::arctangent:
        return arctangent(x, unit);
    case Function::arcsine:
        return arcsine(x, unit);
    case Function::arccosine:
        return arccosine(x, unit);
    case Function::none:
        break;
    }
    return std::nullopt;
}

Value quotient(long double a, long double b) {
    return b == 0 ? Value() : finite(a / b);
}

Value raised(long double base, long double exponent) {
    return finite(exponent == 2 ? base * base : std::pow(base, exponent));
}

Value rootOf(long double x) {
    return x < 0 ? Value() : finite(std::sqrt(x));
}

std::optional<bool> compared(long double a, Relation relation, long double b) {
    switch (relation) {
    case Relation::equal:
        return a == b;
    case Relation::less:
        return a < b;
    case Relation::lessOrEqual:
        return a <= b;
    case Relation::greater:
        return a > b;
    case Relation::greaterOrEqual:
        return a >= b;
    case Relation::approximately:
    case Relation::implies:
        break;
    }
    return std::nullopt;
}

} // namespace tailpoint::arithmetic
