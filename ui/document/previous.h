// SPDX-License-Identifier: MIT
// The version of a file that stood there before this sitting's first save, for who saves and regrets it.
#pragma once

#include "core/sketch/sketch.h"

#include <QByteArray>
#include <QDateTime>
#include <QString>
#include <optional>

namespace tailpoint {

/// $XDG_STATE_HOME/tailpoint/previous, beside the recovery's folder.
QString previousFolder();

/// Keeps what stands under `path` now, bytes and time, in place of what was kept of it before. Quiet where it
/// can't: saving goes on. One version of a file, of the hundred files last kept.
void keepPrevious(const QString& path, const QString& folder = previousFolder());

struct Previous {
    Sketch sketch;
    QDateTime written; ///< when that version was
};
/// Empty: none was kept, or it is no sketch any more that can be read.
std::optional<Previous> previousOf(const QString& path, const QString& folder = previousFolder());
bool hasPrevious(const QString& path, const QString& folder = previousFolder());

} // namespace tailpoint
