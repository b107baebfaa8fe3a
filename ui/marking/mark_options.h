// SPDX-License-Identifier: MIT
// How a question is marked: what its file says under "marking". The key is kept with the sketch like every
// key that the window has no use for, and is read here alone.
#pragma once

#include "core/mark/mark.h"
#include "ui/files/files.h"

#include <variant>

namespace tailpoint {

/// {"points": {"R": 2}, "followThrough": true, "credit": {"unit": 0.5, "axis": 0.5, "slip": 0.5},
/// "bothAnswers": false, "unitRequired": false, "signedSenses": false}, all of it optional; other keys are
/// passed over. The place of a fault is a path: "marking.points.R".
std::variant<MarkOptions, FileError> markOptionsOf(const Sketch& sketch);

/// Points for a quantity that isn't asked; `marker` was made with those options.
std::optional<FileError> faultOfPoints(const MarkOptions& options, const Marker& marker);

} // namespace tailpoint
