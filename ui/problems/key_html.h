// SPDX-License-Identifier: MIT
// The page of a class that had questions of their own: how it did, the slips by how often each is named
// first, and every row with its question.
#pragma once

#include "ui/problems/key_marking.h"

#include "ui/marking/class_output.h"

namespace tailpoint {

/// Unless `names` is set, no name stands beside a slip. HTML 5, UTF-8, well-formed as XML too. Kept until its
/// end: the tally comes first. Each row() is the row that `marking` gave last; `marking` outlives it.
std::unique_ptr<ClassOutput> keyHtml(const KeyMarking& marking, bool names);

} // namespace tailpoint
