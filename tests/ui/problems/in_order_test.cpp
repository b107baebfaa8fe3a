// SPDX-License-Identifier: MIT
#include "ui/problems/in_order.h"

#include <chrono>
#include <gtest/gtest.h>
#include <set>
#include <string>

using namespace tailpoint;

namespace TAILPOINT_FILE {

/// Writes down what comes, and on which threads.
struct Diary {
    std::vector<std::size_t> seen;
    std::set<std::thread::id> threads;
    int ends = 0;
};

struct Writer {
    Diary& diary;
    std::size_t stopsAt = 1'000'000;
    std::chrono::microseconds takes{0};
    bool operator()(std::size_t i, const std::string& made) const {
        EXPECT_EQ(made, std::to_string(i));
        diary.seen.push_back(i);
        diary.threads.insert(std::this_thread::get_id());
        if (takes.count() > 0)
            std::this_thread::sleep_for(takes);
        return i < stopsAt;
    }
    void end() const {
        ++diary.ends;
        diary.threads.insert(std::this_thread::get_id());
    }
};

std::vector<std::size_t> upTo(std::size_t count) {
    std::vector<std::size_t> all(count);
    for (std::size_t i = 0; i < count; ++i)
        all[i] = i;
    return all;
}

std::string madeOf(std::size_t i) {
    if (i % 7 == 0) // some take longer
        std::this_thread::sleep_for(std::chrono::microseconds(200));
    return std::to_string(i);
}

TEST(MadeInOrder, EachUserHasAllInOrderOnAThreadOfItsOwn) {
    for (const std::size_t count : {std::size_t{0}, std::size_t{1}, std::size_t{2}, std::size_t{500}}) {
        const std::atomic<bool> isCancelled = false;
        Diary first, second;
        std::atomic<std::size_t> made = 0;
        EXPECT_TRUE(madeInOrder(
            count, isCancelled,
            [&](std::size_t i) {
                ++made;
                return madeOf(i);
            },
            Writer{first}, Writer{second}));
        EXPECT_EQ(made, count);
        EXPECT_EQ(first.seen, upTo(count));
        EXPECT_EQ(second.seen, upTo(count));
        EXPECT_EQ(first.ends, 1);
        EXPECT_EQ(second.ends, 1);
        EXPECT_EQ(first.threads, std::set{std::this_thread::get_id()});
        EXPECT_EQ(second.threads.size(), 1U);
        EXPECT_NE(second.threads, first.threads);
    }
}

TEST(MadeInOrder, AUserFarAheadGetsNothingThatTheOtherIsBehindWith) {
    for (const bool isFirstSlow : {true, false}) {
        const std::atomic<bool> isCancelled = false;
        const std::chrono::microseconds slow{300}, quick{0};
        Diary first, second;
        EXPECT_TRUE(madeInOrder(400, isCancelled, madeOf,
                                Writer{.diary = first, .takes = isFirstSlow ? slow : quick},
                                Writer{.diary = second, .takes = isFirstSlow ? quick : slow}));
        EXPECT_EQ(first.seen, upTo(400));
        EXPECT_EQ(second.seen, upTo(400));
    }
}

TEST(MadeInOrder, AUserMayStopItAndBothHearTheirEnd) {
    for (const bool isFirst : {true, false}) {
        const std::atomic<bool> isCancelled = false;
        Diary first, second;
        EXPECT_FALSE(madeInOrder(500, isCancelled, madeOf, Writer{first, isFirst ? 100U : 1'000U},
                                 Writer{second, isFirst ? 1'000U : 100U}));
        const Diary& stopped = isFirst ? first : second;
        EXPECT_EQ(stopped.seen, upTo(101)) << "nothing after what it said false to";
        EXPECT_EQ(first.ends, 1);
        EXPECT_EQ(second.ends, 1);
    }
}

TEST(MadeInOrder, CancelledIsNotWhole) {
    std::atomic<bool> isCancelled = false;
    Diary diary;
    const auto make = [&](std::size_t i) {
        if (i == 50)
            isCancelled = true;
        return madeOf(i);
    };
    EXPECT_FALSE(madeInOrder(500, isCancelled, make, Writer{diary}));
    EXPECT_LT(diary.seen.size(), 500U);
    EXPECT_EQ(diary.ends, 1);
}

} // namespace TAILPOINT_FILE
