// SPDX-License-Identifier: MIT
// The statement of a question: what is given, in words and numbers.
#pragma once

#include "core/explain/explain.h"

namespace tailpoint {

/// A sentence, or a table where there are too many forces for one.
struct Statement {
    Prose sentence; ///< empty where nothing at all is given
    std::optional<Table> table;
    bool operator==(const Statement&) const = default;
};

/// "Given are P = 340 N at 25.0° and Q = 275 N at -40.0°; angles are measured from +x, ...". What the sum is
/// to be belongs to what is asked: question().
Statement statement(const Sketch& sketch, const Sentences* sentences = nullptr);

} // namespace tailpoint
