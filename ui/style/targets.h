// SPDX-License-Identifier: MIT
// How large a thing to press has to be.
#pragma once

namespace tailpoint {

/// Its least height and width, logical pixels: 24 for a pointer (WCAG 2.2, 2.5.8), 44 where the machine has a
/// touch screen (2.5.5). Asked when a window is laid out.
int targetSide();

} // namespace tailpoint
