// SPDX-License-Identifier: MIT
// A number that reads two ways: how the question is put, and which key answers it.
#pragma once

#include "ui/document/given_edits.h"

class QKeyEvent;

namespace tailpoint {

/// The reason as rich text, with the readings behind it, if any, as links "0", "1", ...
QString withReadings(const Refused& refused);

/// Alt+1 is the first reading, and so on; empty for any other key and where there is no such reading.
std::optional<qsizetype> readingOf(const QKeyEvent& key, const QStringList& readings);

} // namespace tailpoint
