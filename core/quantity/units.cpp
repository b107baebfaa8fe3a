#include "core/quantity/units.h"

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
    case ForceUnit::N:
        break;
    }
    return 1.0L;
}

} // namespace

double newtonsPer(ForceUnit unit) {
    return static_cast<double>(factorOf(unit));
}

double convert(double value, ForceUnit from, ForceUnit to) {
    if (from == to) {
        return value;
    }
    return static_cast<double>(static_cast<long double>(value) * factorOf(from) / factorOf(to));
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
    case ForceUnit::N:
        break;
    }
    return "N";
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
    for (const ForceUnit unit : kForceUnits) {
        if (symbolOf(unit) == symbol) {
            return unit;
        }
    }
    return std::nullopt;
}

std::optional<AngleUnit> angleUnitFrom(std::string_view name) {
    for (const AngleUnit unit : kAngleUnits) {
        if (nameOf(unit) == name) {
            return unit;
        }
    }
    return std::nullopt;
}

} // namespace tailpoint
