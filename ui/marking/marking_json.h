// SPDX-License-Identifier: MIT
// Markings for scripts; resources/marking.schema.json says what is in them.
#pragma once

#include "ui/marking/class_output.h"

namespace tailpoint {

inline constexpr int kMarkingVersion = 1;

/// Of one answer. Numbers are full doubles in the sheet's units, directions from the question's axis.
std::string markingJson(const Marking& marking);

/// Of a class: each student as alone, then the tally.
std::unique_ptr<ClassOutput> classJson();

} // namespace tailpoint
