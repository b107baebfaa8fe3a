// Bytes from and to the disk: refused in words, never half written.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>
#include <variant>

namespace tailpoint {

/// One line: place (line and column, or a path such as forces[2].magnitude), what is wrong, and the mend.
struct FileError {
    QString place, message;
    QString line() const; ///< "place: message"
};

inline constexpr qint64 kLargestFile =
    qint64{16} * 1024 * 1024; ///< bytes; a sketch of 10,000 forces has about 1 MiB

/// Reads a whole file ("-": standard input): folders, missing permission, sizes above kLargestFile are
/// refused in words; `kind`: what is looked for in it, for a file that is too large to be one.
std::variant<QByteArray, FileError> readBytes(const QString& path,
                                              const QString& kind = QStringLiteral("sketch"));

/// Writes beside and renames, checked to the disk; on any failure the old file stands. Empty: done.
/// Links are followed; the permissions of a file that is replaced are kept; devices and pipes are written to
/// directly.
std::optional<FileError> saveBytes(const QString& path, const QByteArray& bytes);

/// What a name leads to in the end, links followed; absolute, whether it is there or not.
QString finalPath(const QString& path);

/// Is `output` the very file that is read as `input`: by another name, through a link, or as what stands
/// behind standard output and input ("-")? No, where it is no plain file.
bool isSameFile(const QString& output, const QString& input);
/// The first of the files to be written that is the input itself; empty: none is, nothing is lost.
QString replacedInput(const QStringList& outputs, const QString& input);

/// Writes everything to standard output; a closed pipe or a full disk is said.
std::optional<FileError> writeStandardOutput(const QByteArray& bytes);

/// A write beyond a file-size limit or into a closed pipe becomes an error that can be said, instead of the
/// process's end. Call once, first thing in main.
void turnFileSignalsIntoErrors();

/// Takes away what savings that were killed left in `folder` and nobody is writing any more. Returns how
/// many.
int sweepStaleTemporaries(const QString& folder);

} // namespace tailpoint
