// SPDX-License-Identifier: MIT
// Steps of a solution by the names that tests call them by.
#pragma once

#include "core/explain/explain.h"

#include <string>

namespace tailpoint::testing {

/// "given", "tails", ...; of several parallelograms "pair1", "pair2".
inline std::string keyOf(const Step& step) {
    std::string name(nameOf(step.key));
    return step.key == StepKey::pair ? name + std::to_string(step.pair) : name;
}

} // namespace tailpoint::testing
