// SPDX-License-Identifier: MIT
#include "ui/practice/sitting.h"

#include "ui/practice/how_it_went.h"
#include "ui/practice/record_json.h"

#include <QFile>
#include <QLockFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <set>
#include <thread>

namespace tailpoint {
namespace TAILPOINT_FILE {

RecordEntry entry(Verdict verdict, std::vector<std::string> slips = {}, std::string aimedAt = {}) {
    RecordEntry made;
    made.problem = {"two-forces", 1, 7};
    made.scene = "raft";
    made.when = "2026-11-29T10:00:00Z";
    made.verdict = verdict;
    made.slips = std::move(slips);
    made.aimedAt = std::move(aimedAt);
    return made;
}

class SittingTest : public ::testing::Test {
protected:
    QString file() const { return m_folder.filePath(QStringLiteral("state/practice.json")); }
    PracticeRecord onDisk() const {
        QFile in(file());
        EXPECT_TRUE(in.open(QIODevice::ReadOnly));
        const auto read = readRecord(in.readAll());
        EXPECT_TRUE(std::holds_alternative<PracticeRecord>(read));
        return std::get<PracticeRecord>(read);
    }
    QTemporaryDir m_folder;
};

TEST_F(SittingTest, NothingIsOnTheDiskUntilItIsAskedFor) {
    Sitting sitting(file());
    sitting.add(entry(Verdict::right));
    EXPECT_FALSE(QFile::exists(file()));
    ASSERT_FALSE(sitting.keep(true));
    EXPECT_EQ(onDisk(), sitting.record());
    sitting.change(sitting.add(entry(Verdict::other)), entry(Verdict::slip, {"magnitudes-added"}));
    EXPECT_EQ(onDisk().entries.size(), 2U);
    EXPECT_EQ(onDisk().entries.back().slips.front(), "magnitudes-added");
    ASSERT_FALSE(sitting.keep(false));
    EXPECT_FALSE(QFile::exists(file()));
    EXPECT_EQ(sitting.record().entries.size(), 2U) << "it is known until the window is closed";
}

TEST_F(SittingTest, TheNextSittingGoesOnBehindTheLastOne) {
    {
        Sitting first(file());
        ASSERT_FALSE(first.keep(true));
        first.add(entry(Verdict::right));
    }
    Sitting second(file());
    second.add(entry(Verdict::other)); // before it was asked to be kept
    ASSERT_FALSE(second.keep(true));
    EXPECT_EQ(second.number(), 2);
    ASSERT_EQ(onDisk().entries.size(), 2U);
    EXPECT_EQ(onDisk().entries[0].sitting, 1);
    EXPECT_EQ(onDisk().entries[1].sitting, 2);
}

TEST_F(SittingTest, ADamagedFileIsSaidAndStaysAsItIs) {
    ASSERT_FALSE(Sitting(file()).keep(true)); // makes the folder
    QFile out(file());
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    out.write("{\"format\": ");
    out.close();
    Sitting sitting(file());
    sitting.add(entry(Verdict::right));
    const auto fault = sitting.keep(true);
    ASSERT_TRUE(fault);
    EXPECT_FALSE(fault->line().contains(u'\n'));
    EXPECT_FALSE(sitting.isKept());
    EXPECT_EQ(sitting.record().entries.size(), 1U);
    EXPECT_EQ(QFile(file()).size(), 11);
}

TEST_F(SittingTest, WhatIsForgottenIsForgottenEverywhere) {
    Sitting sitting(file());
    ASSERT_FALSE(sitting.keep(true));
    sitting.add(entry(Verdict::right));
    ASSERT_FALSE(sitting.forget());
    EXPECT_FALSE(QFile::exists(file()));
    EXPECT_TRUE(sitting.record().entries.empty());
    EXPECT_TRUE(sitting.isKept()) << "the switch is another question";
}

RecordEntry at(int sitting, const char* when) {
    RecordEntry made = entry(Verdict::right);
    made.sitting = sitting;
    made.when = when;
    return made;
}

TEST_F(SittingTest, TwoWindowsLoseNoEntryOfEachOther) {
    Sitting first(file()), second(file());
    ASSERT_FALSE(first.keep(true));
    ASSERT_FALSE(second.keep(true));
    const std::size_t one = first.add(at(1, "2026-11-29T10:00:00Z"));
    const std::size_t two = second.add(at(1, "2026-11-29T10:05:00Z"));
    first.add(at(1, "2026-11-29T10:03:00Z"));
    ASSERT_EQ(onDisk().entries.size(), 3U);
    RecordEntry changed = *first.entry(one);
    changed.slips = {"magnitudes-added"};
    first.change(one, changed);
    second.change(two, at(1, "2026-11-29T10:06:00Z"));
    const auto all = onDisk().entries;
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[0], changed);
    EXPECT_EQ(all[1].when, "2026-11-29T10:03:00Z") << "oldest first";
    EXPECT_EQ(all[2].when, "2026-11-29T10:06:00Z");
    EXPECT_EQ(second.record(), onDisk()) << "each knows what the other wrote";
    EXPECT_FALSE(first.fault() || second.fault());
}

/// Two writers, 40 entries each in turn from two threads, as two windows are two processes.
TEST_F(SittingTest, WritingAtTheSameTimeLosesNothing) {
    constexpr int kEach = 40;
    const auto write = [&](int number) {
        Sitting sitting(file());
        if (sitting.keep(true))
            return;
        for (int i = 0; i < kEach; ++i) {
            RecordEntry made = entry(Verdict::right);
            made.problem.number = static_cast<std::uint32_t>(1000 * number + i);
            sitting.add(made);
        }
    };
    std::thread a(write, 1), b(write, 2);
    a.join();
    b.join();
    std::set<std::uint32_t> numbers;
    for (const RecordEntry& one : onDisk().entries)
        numbers.insert(one.problem.number);
    EXPECT_EQ(numbers.size(), 2U * kEach);
    EXPECT_EQ(onDisk().entries.size(), 2U * kEach);
}

TEST_F(SittingTest, ALaterSittingStaysBehindAnEarlierOneThatGoesOn) {
    Sitting first(file());
    ASSERT_FALSE(first.keep(true));
    first.add(at(first.number(), "2026-11-29T10:00:00Z"));
    Sitting second(file());
    ASSERT_FALSE(second.keep(true));
    ASSERT_EQ(second.number(), 2);
    second.add(at(second.number(), "2026-11-29T11:00:00Z"));
    first.add(at(first.number(), "2026-11-29T12:00:00Z"));
    std::vector<int> sittings;
    for (const RecordEntry& one : onDisk().entries)
        sittings.push_back(one.sitting);
    EXPECT_EQ(sittings, (std::vector<int>{1, 1, 2})) << "never falling";
}

TEST_F(SittingTest, WhatOneWindowForgetsTheOtherDoesNotBringBack) {
    Sitting first(file()), second(file());
    ASSERT_FALSE(first.keep(true));
    first.add(at(1, "2026-11-29T10:00:00Z"));
    ASSERT_FALSE(second.keep(true));
    ASSERT_FALSE(first.forget());
    second.add(at(second.number(), "2026-11-29T11:00:00Z"));
    ASSERT_EQ(onDisk().entries.size(), 1U);
    EXPECT_EQ(onDisk().entries.front().when, "2026-11-29T11:00:00Z");
    const std::size_t known = first.add(at(1, "2026-11-29T12:00:00Z"));
    EXPECT_EQ(first.entry(0), nullptr) << "that was forgotten";
    ASSERT_NE(first.entry(known), nullptr);
    EXPECT_EQ(onDisk().entries.size(), 2U);
}

TEST_F(SittingTest, ARecordThatAnotherWindowHoldsIsWrittenWithTheNextAnswer) {
    Sitting sitting(file());
    ASSERT_FALSE(sitting.keep(true));
    {
        QLockFile other(file() + QStringLiteral(".lock"));
        ASSERT_TRUE(other.tryLock(0));
        sitting.add(at(1, "2026-11-29T10:00:00Z"));
        ASSERT_TRUE(sitting.fault());
        EXPECT_FALSE(sitting.fault()->line().contains(u'\n'));
    }
    sitting.add(at(1, "2026-11-29T10:01:00Z"));
    EXPECT_FALSE(sitting.fault());
    EXPECT_EQ(onDisk().entries.size(), 2U);
}

TEST(HowItWent, CountsAndNamesTheSlips) {
    PracticeRecord record;
    RecordEntry example = entry(Verdict::right);
    example.lastHint = true;
    RecordEntry before = entry(Verdict::slip, {"right-triangle-assumed"});
    record.entries = {before, entry(Verdict::slip, {"supplement-in-cosines"}),
                      entry(Verdict::right, {}, "supplement-in-cosines"), example};
    for (std::size_t i = 1; i < record.entries.size(); ++i)
        record.entries[i].sitting = 2;
    const HowItWent went = howItWent(record, 2);
    EXPECT_EQ(went.count.toStdString(),
              "3 questions: 1 right at once, 1 not right at once, 1 as an example.");
    EXPECT_EQ(went.gone, QStringList{QStringLiteral("supplement in the law of cosines")});
    EXPECT_EQ(went.left, QStringList{QStringLiteral("triangle taken as right-angled")});
    ASSERT_EQ(went.asked.size(), 3);
    EXPECT_TRUE(went.asked[0].endsWith(QStringLiteral(
        "Two forces and their resultant, level 1: not right: supplement in the law of cosines")))
        << went.asked[0].toStdString();
    EXPECT_TRUE(went.asked[2].endsWith(QStringLiteral("an example")));
    ASSERT_EQ(went.earlier.size(), 1);
    EXPECT_TRUE(went.earlier[0].endsWith(QStringLiteral("One question: 1 not right at once.")));
    record.entries[0].when = "2026-11-28T12:00:00Z";
    EXPECT_TRUE(
        howItWent(record, 2).earlier[0].endsWith(QStringLiteral("  One question: 1 not right at once.")));
    record.entries[1].tries = 3;
    EXPECT_TRUE(howItWent(record, 2).asked[0].endsWith(QStringLiteral("; 3 tries")));
    record.entries[1].cameRight = true;
    EXPECT_TRUE(howItWent(record, 2).asked[0].endsWith(QStringLiteral("; right at try 3")));
    record.entries.back().worked = WorkedAs::faded;
    record.entries.back().blank = 2;
    EXPECT_TRUE(howItWent(record, 2).asked[2].endsWith(QStringLiteral("an example, 2 lines filled in")));
    EXPECT_EQ(howItWent(record, 3).count, QStringLiteral("Nothing has been answered in this sitting yet."));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
