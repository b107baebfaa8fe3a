// SPDX-License-Identifier: MIT
// A lesson's file: read in order, from files and whole, and refused in one line with its place.
#include "ui/lesson/lesson.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

constexpr const char* kRaft = R"({"format": "tailpoint-sketch", "version": 1, "title": "Raft",
  "units": {"force": "N", "angle": "deg"}, "reference": {"axis": "+x", "sense": "ccw"}, "figures": 3,
  "forces": [{"name": "P", "magnitude": 340, "direction": 25}, {"name": "Q", "magnitude": 275, "direction": -40}]})";

class LessonFile : public ::testing::Test {
protected:
    void write(const QString& name, const QByteArray& bytes) {
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    std::string refused(const QByteArray& parts) {
        const auto read = readLesson(whole(parts), folder.path());
        const auto* error = std::get_if<FileError>(&read);
        return error ? error->line().toStdString() : std::string("read");
    }
    static QByteArray whole(const QByteArray& parts) {
        return R"({"format": "tailpoint-lesson", "version": 1, "title": "Day one", "parts": )" + parts + "}";
    }
    QTemporaryDir folder;
};

TEST_F(LessonFile, IsReadInOrderFromFilesAndWhole) {
    write(QStringLiteral("raft.json"), kRaft);
    QByteArray untitled = kRaft;
    untitled.replace(R"("title": "Raft",)", "");
    write(QStringLiteral("kite pull.json"), untitled);
    const auto read = readLesson(whole(QByteArray(R"([{"file": "raft.json", "notes": "Ask first."},
        {"file": "kite pull.json"}, {"sketch": )") +
                                       kRaft + R"(, "notes": null}])"),
                                 folder.path());
    const auto* lesson = std::get_if<Lesson>(&read);
    ASSERT_NE(lesson, nullptr) << std::get<FileError>(read).line().toStdString();
    EXPECT_EQ(lesson->title, QStringLiteral("Day one"));
    ASSERT_EQ(lesson->parts.size(), 3U);
    EXPECT_EQ(lesson->parts[0].name, QStringLiteral("Raft"));
    EXPECT_EQ(lesson->parts[0].notes, QStringLiteral("Ask first."));
    EXPECT_EQ(lesson->parts[1].name, QStringLiteral("kite pull"));
    EXPECT_TRUE(lesson->parts[1].notes.isEmpty());
    EXPECT_EQ(lesson->parts[2].sketch, lesson->parts[0].sketch);
}

TEST_F(LessonFile, IsRefusedInOneLineWithItsPlace) {
    write(QStringLiteral("raft.json"), kRaft);
    write(QStringLiteral("broken.json"), R"({"format": "tailpoint-sketch", "version": 1)");
    const auto expectRefused = [&](const QByteArray& parts, const std::string& place,
                                   const std::string& says) {
        const std::string line = refused(parts);
        EXPECT_EQ(line.find(place), 0U) << line;
        EXPECT_NE(line.find(says), std::string::npos) << line;
        EXPECT_EQ(line.find('\n'), std::string::npos) << line;
    };
    expectRefused("[]", "parts", "is empty; name one sketch at least");
    expectRefused("3", "parts", "write a list of parts");
    expectRefused(R"(["raft.json"])", "parts[0]", "write a part as");
    expectRefused(R"([{"notes": "x"}])", "parts[0]", "neither a \"file\" nor a \"sketch\"");
    expectRefused(R"([{"file": "raft.json", "sketch": {}}])", "parts[0]", "both");
    expectRefused(R"([{"file": "raft.json"}, {"file": "no such.json"}])", "parts[1].file", "no such.json");
    expectRefused(R"([{"file": "broken.json"}])", "parts[0].file", "can't be read");
    expectRefused(R"([{"sketch": {"format": "tailpoint-sketch"}}])", "parts[0].sketch", "can't be read");
    expectRefused(R"([{"file": "raft.json", "notes": 3}])", "parts[0].notes", "write it in quotes");
    QByteArray many = "[";
    for (int i = 0; i < 201; ++i)
        many += i == 0 ? R"({"file": "raft.json"})" : R"(, {"file": "raft.json"})";
    expectRefused(many + "]", "parts", "more than 200 parts");
    for (const char* text : {"", "[]", "{}", R"({"format": "tailpoint-sketch", "version": 1})",
                             R"({"format": "tailpoint-lesson", "version": 2, "parts": []})"})
        EXPECT_TRUE(std::holds_alternative<FileError>(readLesson(text, folder.path()))) << text;
}

/// Bytes that nobody asked to change stay: order, layout, keys of somebody else's.
TEST_F(LessonFile, TakesOtherNotesAndNothingElseChanges) {
    write(QStringLiteral("raft.json"), kRaft);
    const QByteArray before = R"({"version": 1,   "format": "tailpoint-lesson", "mine": [1.50, "notes"],
  "parts": [ {"file": "raft.json"},
             {"notes": "Say \"why\" \\ here", "file": "raft.json"},
             { "sketch": )" + QByteArray(kRaft) +
                              R"(, "notes": null } ]
})";
    write(QStringLiteral("day.lesson.json"), before);
    const QString path = folder.filePath(QStringLiteral("day.lesson.json"));
    auto read = readLessonFile(path);
    ASSERT_TRUE(std::holds_alternative<Lesson>(read)) << std::get<FileError>(read).line().toStdString();
    auto& lesson = std::get<Lesson>(read);
    const auto bytes = [&] {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    QByteArray wanted = before;
    const auto save = [&](std::size_t part, const char* notes, const char* from, const char* to) {
        EXPECT_FALSE(saveNotes(lesson, part, QString::fromUtf8(notes)));
        wanted.replace(from, to);
        EXPECT_EQ(bytes(), wanted);
        EXPECT_EQ(lesson.parts[part].notes, QString::fromUtf8(notes));
    };
    save(1, "So.\nAnd \"θ\"?", R"("Say \"why\" \\ here")", R"("So.\nAnd \"θ\"?")");
    save(2, "Last.", "null", R"("Last.")");
    save(0, "First.", R"({"file": "raft.json"})", R"({"notes": "First.", "file": "raft.json"})");
    save(0, "", R"("First.")", R"("")");
    const auto again = readLessonFile(path);
    EXPECT_EQ(std::get<Lesson>(again).parts[1].notes, QStringLiteral("So.\nAnd \"θ\"?"));
}

TEST_F(LessonFile, WithWorkOfSomebodyElseIsNotReplaced) {
    write(QStringLiteral("raft.json"), kRaft);
    write(QStringLiteral("day.lesson.json"), whole(R"([{"file": "raft.json", "notes": "Mine."}])"));
    auto read = readLessonFile(folder.filePath(QStringLiteral("day.lesson.json")));
    auto& lesson = std::get<Lesson>(read);
    const QByteArray theirs = whole(R"([{"file": "raft.json", "notes": "Theirs."}])");
    write(QStringLiteral("day.lesson.json"), theirs);
    const auto error = saveNotes(lesson, 0, QStringLiteral("Mine again."));
    ASSERT_TRUE(error);
    EXPECT_TRUE(error->line().contains(QStringLiteral("was changed by another program")));
    EXPECT_EQ(lesson.parts[0].notes, QStringLiteral("Mine."));
    QFile file(folder.filePath(QStringLiteral("day.lesson.json")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), theirs);
}

TEST_F(LessonFile, OfTheSamplesCanBeRead) {
    const QDir lessons(QStringLiteral(TAILPOINT_SAMPLES "/lessons"));
    const QStringList names = lessons.entryList({QStringLiteral("*.json")});
    EXPECT_FALSE(names.isEmpty());
    for (const QString& name : names) {
        const auto read = readLessonFile(lessons.filePath(name));
        EXPECT_TRUE(std::holds_alternative<Lesson>(read)) << name.toStdString();
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
