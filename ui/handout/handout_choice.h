// SPDX-License-Identifier: MIT
// What is wanted of a handout.
#pragma once

#include "core/explain/explain.h"
#include "core/figure/compose.h"
#include "ui/files/provenance.h"

#include <optional>

namespace tailpoint {

struct HandoutChoice {
    bool solution = true; ///< false: statement and what is given, for an exercise
    /// The question as the sketch's file words it stands in place of what is given and asked, where it has
    /// such words; false: they are of other values.
    bool ownWords = true;
    bool handRounding = false;
    Method method = Method::suited;                           ///< of the solution
    std::optional<tolerance::UncertaintyAsked> uncertainty{}; ///< told in the solution
    bool parallelograms = false;                              ///< more than two forces: two at a time
    /// As it is seen in the window; empty: a parallelogram for two forces, else a polygon.
    std::optional<ConstructionKind> construction;
    bool otherOrder = false;
    bool parallelMarks = false;
    /// What the record at its end says; empty: there is none. An exercise has none: it is a student's sheet.
    std::optional<Provenance> from{};
};

} // namespace tailpoint
