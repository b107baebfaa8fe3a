// SPDX-License-Identifier: MIT
#include "core/figure/display_list.h"

namespace tailpoint {

std::string_view nameOf(Role role) {
    switch (role) {
    case Role::sheet:
        return "sheet";
    case Role::grid:
        return "grid";
    case Role::axis:
        return "axis";
    case Role::given:
        return "given";
    case Role::sum:
        return "sum";
    case Role::construction:
        return "construction";
    case Role::arc:
        return "arc";
    case Role::locus:
        return "locus";
    case Role::label:
        return "label";
    case Role::leader:
        return "leader";
    case Role::halo:
        return "halo";
    case Role::titleblock:
        return "titleblock";
    case Role::point:
        return "point";
    case Role::region:
        return "region";
    case Role::highlight:
        break;
    }
    return "highlight";
}

VectorId vectorOf(const Group& group) {
    const bool arrow = group.role == Role::given || group.role == Role::sum;
    const auto* vector = group.part ? std::get_if<VectorId>(&*group.part) : nullptr;
    return arrow && vector ? *vector : kNobody;
}

bool isArrow(const Group& group) {
    return !group.otherAnswer && vectorOf(group) != kNobody;
}

} // namespace tailpoint
