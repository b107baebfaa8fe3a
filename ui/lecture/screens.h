// SPDX-License-Identifier: MIT
// Which screen a lecture takes.
#pragma once

class QScreen;
class QWindow;

namespace tailpoint {

/// A screen other than `own`, such as a projector that shows something else; `own` where there is none. A
/// mirrored screen lies at the same place and is no other one.
QScreen* screenForLecture(QScreen* own);

} // namespace tailpoint
