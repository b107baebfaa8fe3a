// SPDX-License-Identifier: MIT
#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

// Decimal factors, kept in extended precision so that a conversion is rounded only once to double.
long double factorOf(ForceUnit unit) {
    switch (unit) {
    case ForceUnit::kN:
        return 1000.0L;
    case ForceUnit::lbf:
        return 4.4482216152605L;
    case ForceUnit::kip:
        return 4448.2216152605L;
    case ForceUnit::kgf:
        return 9.80665L;
    case ForceUnit::daN:
        return 10.0L;
    case ForceUnit::tonf:
        return 9806.65L;
    case ForceUnit::shortTonf:
        return 8896.443230521L;
    case ForceUnit::N:
        break;
    }
    return 1.0L;
}

// The decimal that was typed for g, not its double: a weight by the standard g is that by kgf.
long double decimalOf(double gravity) {
    const long double decimal = std::round(static_cast<long double>(gravity) * 1e9L) / 1e9L;
    return static_cast<double>(decimal) == gravity ? decimal : static_cast<long double>(gravity);
}

template <class Units, class Unit = typename Units::value_type>
std::optional<Unit> unitFrom(const Units& units, std::string_view symbol) {
    const auto* found =
        std::find_if(units.begin(), units.end(), [&](Unit unit) { return symbolOf(unit) == symbol; });
    return found == units.end() ? std::nullopt : std::optional(*found);
}

} // namespace

double newtonsPer(ForceUnit unit) {
    return static_cast<double>(factorOf(unit));
}

double kilogrammesPer(MassUnit unit) {
    return unit == MassUnit::t ? 1000 : 1;
}

double convert(double value, ForceUnit from, ForceUnit to) {
    if (from == to) {
        return value;
    }
    return static_cast<double>(static_cast<long double>(value) * factorOf(from) / factorOf(to));
}

double convert(double value, const LoadUnit& from, ForceUnit to, double gravity) {
    if (const auto* force = std::get_if<ForceUnit>(&from)) {
        return convert(value, *force, to);
    }
    const long double mass = static_cast<long double>(value) * kilogrammesPer(std::get<MassUnit>(from));
    return static_cast<double>(mass * decimalOf(gravity) / factorOf(to));
}

std::string_view symbolOf(ForceUnit unit) {
    switch (unit) {
    case ForceUnit::kN:
        return "kN";
    case ForceUnit::lbf:
        return "lbf";
    case ForceUnit::kip:
        return "kip";
    case ForceUnit::kgf:
        return "kgf";
    case ForceUnit::daN:
        return "daN";
    case ForceUnit::tonf:
        return "tonf";
    case ForceUnit::shortTonf:
        return "short tonf";
    case ForceUnit::N:
        break;
    }
    return "N";
}

std::string_view symbolOf(MassUnit unit) {
    return unit == MassUnit::t ? "t" : "kg";
}

std::string_view symbolOf(const LoadUnit& unit) {
    return std::visit([](auto one) { return symbolOf(one); }, unit);
}

std::string_view nameOf(AngleUnit unit) {
    switch (unit) {
    case AngleUnit::rad:
        return "rad";
    case AngleUnit::gon:
        return "gon";
    case AngleUnit::deg:
        break;
    }
    return "deg";
}

std::optional<ForceUnit> forceUnitFrom(std::string_view symbol) {
    return unitFrom(kForceUnits, symbol);
}

std::optional<ForceUnit> sheetForceUnitFrom(std::string_view symbol) {
    return unitFrom(kSheetForceUnits, symbol);
}

std::optional<LoadUnit> loadUnitFrom(std::string_view symbol) {
    if (const auto force = forceUnitFrom(symbol)) {
        return *force;
    }
    const auto mass = unitFrom(kMassUnits, symbol);
    return mass ? std::optional<LoadUnit>(*mass) : std::nullopt;
}

std::optional<AngleUnit> angleUnitFrom(std::string_view name) {
    for (const AngleUnit unit : kAngleUnits) {
        if (nameOf(unit) == name) {
            return unit;
        }
    }
    return std::nullopt;
}

bool beginsUnit(std::string_view word) {
    return loadUnitFrom(word) || word == "short" || word == nameOf(AngleUnit::rad) ||
           word == nameOf(AngleUnit::gon);
}

} // namespace tailpoint
