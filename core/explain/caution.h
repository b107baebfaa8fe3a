// SPDX-License-Identifier: MIT
// The caution that stands wherever a sketch could be taken for a rated design.
#pragma once

#include "core/sketch/sketch.h"

#include <string_view>

namespace tailpoint {

/// The sketch asks for it by its switch, or sceneAsksCaution() does.
bool needsCaution(const Sketch& sketch);

/// What is drawn may hurt somebody: the words of the sketch (its title, the names of its forces and of the
/// sum, the notes of its file) speak of lifting, towing, guying or anchoring, a force has a limit, or one is
/// stated in a unit in which loads are weighed.
bool sceneAsksCaution(const Sketch& sketch);

/// Whether a text speaks of such a scene: by one word of the trade, or by a rope (cable, chain, ...) beside a
/// load (weight, cargo, ...). Whole words: 'tower' and 'towards' are no 'tow'. Case, hyphens and the plural
/// do not matter.
bool speaksOfRigging(std::string_view text);

/// One short line: what the sketch is, what it does not cover, and who decides.
std::string_view cautionLine();

} // namespace tailpoint
