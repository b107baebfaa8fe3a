// SPDX-License-Identifier: MIT
// The sketch as a file: UTF-8 JSON, versioned, refused in one line when it can't be read.
#pragma once

#include "core/sketch/sketch.h"
#include "ui/files/files.h"

#include <QByteArray>
#include <variant>

namespace tailpoint {

inline constexpr int kSketchVersion = 1;

/// Reads a sketch from JSON text or from a SVG that carries one. The place of a fault is a path, a line and a
/// column: "forces[2].magnitude (line 9, column 31)". Keys that this version doesn't know are kept
/// (ui/document/unknown_keys.h).
std::variant<Sketch, FileError> readSketch(const QByteArray& bytes);
/// The bytes are markup: a picture, whether it carries a sketch or not.
bool isPicture(const QByteArray& bytes);
/// Stable order of keys, a force a line; unknown keys last, as they came.
QByteArray writeSketch(const Sketch& sketch);

} // namespace tailpoint
