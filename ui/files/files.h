// SPDX-License-Identifier: MIT
// Bytes from and to the disk: refused in words, never half written.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>
#include <variant>
#include <vector>

namespace tailpoint {

/// One line: place (line and column, or a path such as forces[2].magnitude), what is wrong, and the mend.
struct FileError {
    QString place, message;
    QString line() const; ///< "place: message"
};

inline constexpr qint64 kLargestFile =
    qint64{16} * 1024 * 1024; ///< bytes; a sketch of 10,000 forces has about 1 MiB

/// Reads a whole file ("-": standard input): folders, pipes, devices, sockets, missing permission and sizes
/// above kLargestFile are refused in words, and waited for is nobody but the writer of a pipe that the shell
/// gave (/dev/fd/63); `kind`: what is looked for in it, for a file that is too large to be one.
std::variant<QByteArray, FileError> readBytes(const QString& path,
                                              const QString& kind = QStringLiteral("sketch"));

/// Writes beside and renames, checked to the disk; on any failure the old file stands. Empty: done.
/// Links are followed; the permissions of a file that is replaced are kept; devices and pipes are written to
/// directly, a pipe without a reader is refused.
std::optional<FileError> saveBytes(const QString& path, const QByteArray& bytes);

struct FileBytes {
    QString path;
    QByteArray bytes;
};
struct FailedFile {
    QString path;
    FileError error;
};
/// Saves all of them or none: what fails before the first is in its place leaves everything as it was, what
/// fails then takes back those that are. Only a process that is killed in between, which takes microseconds,
/// leaves some, each of them whole. Empty: done.
std::optional<FailedFile> saveTogether(const std::vector<FileBytes>& files);

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
