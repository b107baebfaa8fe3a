// SPDX-License-Identifier: MIT
#include "ui/lesson/lesson.h"

#include "ui/document/open_file.h"
#include "ui/files/json_at.h"
#include "ui/files/sketch_json.h"

#include <QDir>
#include <QFileInfo>

namespace tailpoint {

namespace {

using namespace reading;
using Kind = JsonValue::Kind;

constexpr const char* kPartMend = "write a part as {\"file\": \"raft.json\", \"notes\": \"…\"}";

QString plain(const std::string& text) {
    return QString::fromStdString(text);
}

QString textOrNothing(const At& at, std::string_view key) {
    const auto found = at.maybe(key);
    return found && !found->is(Kind::null) ? plain(textIn(*found, "write it in quotes")) : QString();
}

Sketch sketchOf(const At& at, const std::variant<Sketch, FileError>& read) {
    if (const auto* error = std::get_if<FileError>(&read))
        at.refuse("can't be read: " + error->line().toStdString());
    return std::get<Sketch>(read);
}

Sketch sketchInFile(const At& at, const QString& folder) {
    const QString name = plain(textIn(at, "write the name of a sketch's file, as \"raft.json\""));
    const auto bytes = readBytes(QDir(folder).absoluteFilePath(name));
    if (const auto* error = std::get_if<FileError>(&bytes))
        at.refuse(inQuotes(name.toStdString()) + " can't be read: " + error->line().toStdString());
    return sketchOf(at, readSketch(std::get<QByteArray>(bytes)));
}

LessonPart readPart(const At& at, const QString& folder) {
    requireObject(at, kPartMend);
    const auto file = at.maybe("file"), sketch = at.maybe("sketch");
    if (file.has_value() == sketch.has_value())
        at.refuse(std::string("has ") +
                  (file ? "both a \"file\" and a \"sketch\"" : "neither a \"file\" nor a \"sketch\"") +
                  "; write one of them");
    LessonPart part{file ? sketchInFile(*file, folder)
                         : sketchOf(*sketch, readSketch(QByteArray::fromStdString(writeJson(sketch->value)))),
                    {},
                    textOrNothing(at, "notes")};
    part.name = plain(part.sketch.title);
    if (part.name.isEmpty() && file)
        part.name = QFileInfo(plain(file->value.text)).completeBaseName();
    return part;
}

Lesson readAll(const At& at, const QString& folder) {
    requireObject(at, "write a lesson as {\"format\": \"tailpoint-lesson\", \"version\": 1, \"parts\": […]}");
    const At format = at.require("format", "write \"format\": \"tailpoint-lesson\"");
    if (textIn(format, "write \"tailpoint-lesson\"") != "tailpoint-lesson")
        format.refuse("is " + inQuotes(format.value.text) + ", not \"tailpoint-lesson\"; open a lesson");
    const At version = at.require("version", "write \"version\": 1");
    if (integerIn(version) != 1)
        version.refuse("is " + version.value.text + ", and this Tailpoint reads version 1; use a newer one");
    Lesson lesson;
    lesson.title = textOrNothing(at, "title");
    const At parts =
        at.require("parts", "write the sketches in order, as \"parts\": [{\"file\": \"raft.json\"}]");
    if (!parts.is(Kind::array))
        refuseKind(parts, "write a list of parts");
    if (parts.value.items.empty())
        parts.refuse("is empty; name one sketch at least");
    if (parts.value.items.size() > kMostParts)
        parts.refuse("has more than 200 parts; make two lessons of it");
    for (std::size_t i = 0; i < parts.value.items.size(); ++i)
        lesson.parts.push_back(
            readPart({parts.value.items[i], parts.path + '[' + std::to_string(i) + ']'}, folder));
    return lesson;
}

} // namespace

std::variant<Lesson, FileError> readLesson(const QByteArray& bytes, const QString& folder) {
    const std::string_view text(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    const auto parsed = parseJson(text);
    if (const auto* fault = std::get_if<JsonFault>(&parsed))
        return located(text, {}, fault->offset, fault->message);
    try {
        return readAll({std::get<JsonValue>(parsed), {}}, folder);
    } catch (const Refusal& refusal) {
        return located(text, refusal.path, refusal.offset, refusal.message);
    }
}

std::variant<Lesson, FileError> readLessonFile(const QString& path) {
    const auto bytes = readBytes(path, QStringLiteral("lesson"));
    if (const auto* error = std::get_if<FileError>(&bytes))
        return *error;
    auto read = readLesson(std::get<QByteArray>(bytes), QFileInfo(path).absolutePath());
    if (auto* lesson = std::get_if<Lesson>(&read)) {
        lesson->path = QFileInfo(path).absoluteFilePath();
        lesson->digest = digestOf(std::get<QByteArray>(bytes));
    }
    return read;
}

namespace {

/// How many bytes a value without parts takes where it begins at `offset`: a string or null.
std::size_t lengthAt(std::string_view text, std::size_t offset) {
    if (text[offset] != '"')
        return std::string_view("null").size();
    std::size_t at = offset + 1;
    while (text[at] != '"')
        at += text[at] == '\\' ? 2 : 1;
    return at + 1 - offset;
}

/// The file's text with other notes for a part; a part without any gets them in front.
std::string withNotes(std::string text, std::size_t part, const std::string& notes) {
    const auto parsed = parseJson(text);
    const JsonValue& value = std::get<JsonValue>(parsed).find("parts")->items[part];
    if (const JsonValue* old = value.find("notes"))
        text.replace(old->offset, lengthAt(text, old->offset), jsonString(notes));
    else
        text.insert(value.offset + 1, "\"notes\": " + jsonString(notes) + ", ");
    return text;
}

} // namespace

std::optional<FileError> saveNotes(Lesson& lesson, std::size_t part, const QString& notes) {
    const auto read = readBytes(lesson.path, QStringLiteral("lesson"));
    if (const auto* error = std::get_if<FileError>(&read))
        return *error;
    const auto& bytes = std::get<QByteArray>(read);
    if (digestOf(bytes) != lesson.digest)
        return FileError{{},
                         QStringLiteral("was changed by another program since it was opened; copy the "
                                        "notes and open the lesson again")};
    const QByteArray changed =
        QByteArray::fromStdString(withNotes(bytes.toStdString(), part, notes.toStdString()));
    if (auto error = saveBytes(lesson.path, changed))
        return error;
    lesson.digest = digestOf(changed);
    lesson.parts[part].notes = notes;
    return std::nullopt;
}

} // namespace tailpoint
