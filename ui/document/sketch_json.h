// The sketch as a file: UTF-8 JSON, versioned, refused in one line when it can't be read.
#pragma once

#include "core/sketch/sketch.h"

#include <QByteArray>
#include <QString>
#include <variant>

namespace tailpoint {

/// One line: place (line and column, or a path such as forces[2].magnitude), what is wrong, and the mend.
struct FileError {
    QString place, message;
    QString line() const; ///< "place: message"
};

inline constexpr qint64 kLargestFile = 16 * 1024 * 1024; ///< bytes; a sketch of 10,000 forces has about 1 MiB

/// Reads a sketch from JSON text or from a SVG that carries one.
std::variant<Sketch, FileError> readSketch(const QByteArray& bytes);
/// Stable order of keys, a force a line; unknown keys last, as they came.
QByteArray writeSketch(const Sketch& sketch);

/// Reads a whole file ("-": standard input): folders, missing permission, sizes above kLargestFile are refused in words.
std::variant<QByteArray, FileError> readBytes(const QString& path);
/// Writes beside and renames, checked to the disk; on any failure the old file stands. Empty: done.
std::optional<FileError> saveBytes(const QString& path, const QByteArray& bytes);

} // namespace tailpoint
