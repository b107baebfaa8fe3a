// SPDX-License-Identifier: MIT
// Where what is written comes from: the sketch's file, the day, this program.
#pragma once

#include "core/explain/record.h"

#include <QByteArray>
#include <QString>

namespace tailpoint {

/// Of a sketch in this file; empty: not saved, or from standard input. The day is today's, or that of
/// SOURCE_DATE_EPOCH (seconds since 1970, UTC) where it is set.
/// Source: reproducible-builds.org, specification of SOURCE_DATE_EPOCH.
Provenance provenanceOf(const QString& path);

} // namespace tailpoint
