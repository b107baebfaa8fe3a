// A lesson's file: read in order, from files and whole, and refused in one line with its place.
#include "ui/lesson/lesson.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace tailpoint {
namespace {

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

TEST_F(LessonFile, OfTheSamplesCanBeRead) {
    const QDir lessons(QStringLiteral(TAILPOINT_SAMPLES "/lessons"));
    const QStringList names = lessons.entryList({QStringLiteral("*.json")});
    EXPECT_FALSE(names.isEmpty());
    for (const QString& name : names) {
        const auto read = readLessonFile(lessons.filePath(name));
        EXPECT_TRUE(std::holds_alternative<Lesson>(read)) << name.toStdString();
    }
}

} // namespace
} // namespace tailpoint
