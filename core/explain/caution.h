// The caution that stands wherever a sketch could be taken for a rated design.
#pragma once

#include "core/sketch/sketch.h"

#include <string_view>

namespace tailpoint {

/// The sketch asks for it, or its title does.
bool needsCaution(const Sketch& sketch);

/// The title speaks of lifting or anchoring: a word of it is, or begins with, one such as lift, hoist, sling,
/// crane, anchor, moor, shackle, rigging. (A sketch of this version holds no limits and no utilisations.)
bool titleAsksCaution(const Sketch& sketch);

/// One short line.
std::string_view cautionLine();

} // namespace tailpoint
