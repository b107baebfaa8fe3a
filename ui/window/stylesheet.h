// SPDX-License-Identifier: MIT
// How menus, scroll bars and fields look around the sheet: flat, hairlines, no gradients.
#pragma once

#include "ui/style/theme.h"

#include <QString>

namespace tailpoint {

QString styleSheetOf(const Theme& theme);

} // namespace tailpoint
