// SPDX-License-Identifier: MIT
// lesson/: several sketches in one lecture, in order, with notes for who speaks. A file of our own:
//
//   { "format": "tailpoint-lesson", "version": 1, "title": "Two forces at a point",
//     "parts": [ { "file": "survey-raft.json", "notes": "Ask first: longer than 340 N?" },
//                { "sketch": { "format": "tailpoint-sketch", … } } ] }
//
// A "file" is found from the lesson's own folder; a "sketch" stands in the lesson whole.
#pragma once

#include "core/sketch/sketch.h"
#include "ui/files/files.h"

#include <QString>
#include <variant>
#include <vector>

namespace tailpoint {

struct LessonPart {
    Sketch sketch;
    QString name; ///< its title, else its file's name
    QString notes;
};
struct Lesson {
    QString title;
    QString path;                  ///< of its file; empty: it was read from bytes alone
    QByteArray digest;             ///< of the file's bytes as they were read or written last
    std::vector<LessonPart> parts; ///< at least one
};

inline constexpr std::size_t kMostParts = 200;

/// `folder`: from which names of files count. A fault names its place, "parts[1].file (line 4, column 12)",
/// and what is wrong with the sketch that it names.
std::variant<Lesson, FileError> readLesson(const QByteArray& bytes, const QString& folder);
std::variant<Lesson, FileError> readLessonFile(const QString& path);

/// Writes other notes for a part into the lesson's file; every other byte of it stays. Refused where the file
/// is not as it was read: nothing is written, and `lesson` stays as it was. Precondition: `lesson` has a path
/// and the part.
std::optional<FileError> saveNotes(Lesson& lesson, std::size_t part, const QString& notes);

} // namespace tailpoint
