// SPDX-License-Identifier: MIT
#include "ui/practice/record_json.h"

#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

PracticeRecord record() {
    RecordEntry first, second;
    first.problem = {"two-forces", 2, 4711};
    first.scene = "raft";
    first.when = "2026-11-29T10:00";
    first.verdict = Verdict::slip;
    first.slips = {"magnitudes-added"};
    second.problem = {"two-forces", 2, 5};
    second.scene = "kite";
    second.sitting = 2;
    second.verdict = Verdict::right;
    second.lastHint = true;
    second.aimedAt = "magnitudes-added";
    RecordEntry third = second, fourth = second;
    third.worked = WorkedAs::faded;
    third.blank = 3;
    fourth.worked = WorkedAs::flawed;
    fourth.tries = 3;
    fourth.cameRight = true;
    PracticeRecord made;
    made.entries = {first, second, third, fourth};
    return made;
}

TEST(RecordJson, IsReadBack) {
    const QByteArray bytes = writeRecord(record());
    const auto read = readRecord(bytes);
    ASSERT_TRUE(std::holds_alternative<PracticeRecord>(read)) << bytes.toStdString();
    EXPECT_EQ(std::get<PracticeRecord>(read), record());
    EXPECT_EQ(std::get<PracticeRecord>(readRecord(writeRecord({}))), PracticeRecord());
}

/// As records were written before examples were worked by their lines.
TEST(RecordJson, WithoutWordsForItAnEntryIsAQuestion) {
    QByteArray bytes = writeRecord(record());
    for (const char* added : {", \"as\": \"faded\", \"blank\": 3", ", \"as\": \"flawed\""}) {
        ASSERT_TRUE(bytes.contains(added)) << bytes.toStdString();
        bytes.replace(added, "");
    }
    const auto read = readRecord(bytes);
    ASSERT_TRUE(std::holds_alternative<PracticeRecord>(read)) << bytes.toStdString();
    for (const RecordEntry& entry : std::get<PracticeRecord>(read).entries)
        EXPECT_EQ(entry.worked, WorkedAs::question);
}

TEST(RecordJson, EveryVerdictIsReadBack) {
    for (int verdict = 0; verdict <= static_cast<int>(Verdict::incomplete); ++verdict) {
        PracticeRecord one = record();
        one.entries.front().verdict = static_cast<Verdict>(verdict);
        EXPECT_EQ(std::get<PracticeRecord>(readRecord(writeRecord(one))), one);
    }
}

TEST(RecordJson, WhatIsNoRecordIsRefusedInOneLineWithItsPlace) {
    struct Row {
        const char *from, *to, *part;
    };
    const Row rows[] = {{"tailpoint-practice", "tailpoint-sketch", "format"},
                        {"\"version\": 1", "\"version\": 2", "version"},
                        {"\"level\": 2", "\"level\": 4", "entries[0].level"},
                        {"4711", "-1", "entries[0].number"},
                        {"\"slip\"", "\"slap\"", "entries[0].verdict"},
                        {"[\"magnitudes-added\"]", "[3]", "entries[0].slips[0]"},
                        {"\"scene\": \"kite\", ", "", "entries[1].scene"},
                        {"true", "1", "entries[1].lastHint"},
                        {"\"faded\"", "\"phaded\"", "entries[2].as"},
                        {"\"blank\": 3", "\"blank\": -3", "entries[2].blank"},
                        {"]\n}", "", "line"}};
    for (const Row& row : rows) {
        QByteArray bytes = writeRecord(record());
        ASSERT_TRUE(bytes.contains(row.from)) << row.from << bytes.toStdString();
        bytes.replace(row.from, row.to);
        const auto read = readRecord(bytes);
        ASSERT_TRUE(std::holds_alternative<FileError>(read)) << bytes.toStdString();
        const QString line = std::get<FileError>(read).line();
        EXPECT_TRUE(line.contains(QLatin1String(row.part))) << line.toStdString();
        EXPECT_FALSE(line.contains(QLatin1Char('\n')));
    }
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
