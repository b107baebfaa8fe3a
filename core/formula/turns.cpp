// SPDX-License-Identifier: MIT
#include "core/formula/turns.h"

#include <numbers>

namespace tailpoint {

namespace {

Formula inUnit(AngleUnit unit, double degrees, std::string radians) {
    switch (unit) {
    case AngleUnit::gon:
        return number(degrees / 0.9, std::to_string(static_cast<int>(degrees / 0.9)), "gon");
    case AngleUnit::rad:
        return number(std::numbers::pi * (degrees / 180), std::move(radians), "rad");
    case AngleUnit::deg:
        break;
    }
    return number(degrees, std::to_string(static_cast<int>(degrees)), "°");
}

Formula turnOf(AngleUnit unit, double degrees, std::string radians) {
    Formula turn = inUnit(unit, degrees, std::move(radians));
    turn.isTurn = true;
    return turn;
}

} // namespace

Formula fullTurn(AngleUnit unit) {
    return turnOf(unit, 360, "2π");
}
Formula halfTurn(AngleUnit unit) {
    return turnOf(unit, 180, "π");
}
Formula quarterTurn(AngleUnit unit) {
    return turnOf(unit, 90, "π/2");
}

} // namespace tailpoint
