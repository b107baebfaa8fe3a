// SPDX-License-Identifier: MIT
// A heading that folds what is under it, as assistive technology is told of it: a button that is expanded or
// not, rather than a box with a tick.
#pragma once

class QAbstractButton;

namespace tailpoint {

/// From now on, and told of whenever it changes. The button is checkable; checked is unfolded.
void makeFold(QAbstractButton& button);

} // namespace tailpoint
