// SPDX-License-Identifier: MIT
// The record of practice as JSON: {"format": "tailpoint-practice", "version": 1, "entries": [...]}.
#pragma once

#include "core/practice/record.h"
#include "ui/files/files.h"

namespace tailpoint {

QByteArray writeRecord(const PracticeRecord& record);
/// Refused in one line where it can't be read; the place is a path with line and column. Keys that this
/// version doesn't know are passed over.
std::variant<PracticeRecord, FileError> readRecord(const QByteArray& bytes);

} // namespace tailpoint
