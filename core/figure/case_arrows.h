// SPDX-License-Identifier: MIT
// The other cases of a sketch, laid over the one that is drawn.
#pragma once

#include "core/explain/cases.h"
#include "core/figure/compose.h"

namespace tailpoint {

/// What lies elsewhere in the other states than in the state `shown`, of the answer with that number (of a
/// state that has fewer, of its first): given vectors and found ones. States that have it alike share an
/// arrow. Precondition: shown < states.size().
std::vector<CaseArrow> caseArrows(const std::vector<CaseState>& states, std::size_t shown,
                                  std::size_t answer);

} // namespace tailpoint
