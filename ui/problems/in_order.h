// SPDX-License-Identifier: MIT
// Work spread over the machine's cores, taken over in its order.
#pragma once

#include <algorithm>
#include <array>
#include <atomic>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>
#include <utility>
#include <vector>

namespace tailpoint {

inline std::size_t workers() {
    return std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, 16);
}

/// Calls make(0), ... make(count - 1) on several threads, and user(i, made) of each user for each i in its
/// order, each user on a thread of its own, the first on this one. As many threads as cores, where users are
/// no more: a user's thread makes while nothing is there to use. Users of one `made` may have it at the same
/// time. A user that has an end() is told on its thread that nothing more comes, whatever came before.
/// No more than a few wait to be used. False: `isCancelled` was set, or a user said false; then some were not
/// made. None may throw.
template <class Make, class... Users>
bool madeInOrder(std::size_t count, const std::atomic<bool>& isCancelled, Make make, Users... users) {
    using Made = decltype(make(std::size_t{}));
    constexpr std::size_t userCount = sizeof...(Users);
    const std::size_t waiting = 16 * workers();
    struct Slot {
        std::unique_ptr<Made> made;
        std::size_t index = 0, maker = 0;
    };
    std::vector<Slot> ring(waiting);
    const std::size_t threadCount = std::max(userCount, std::min(workers(), count));
    std::vector<std::vector<std::unique_ptr<Made>>> spent(threadCount); // by maker
    std::mutex mutex;
    std::condition_variable changed;
    std::size_t next = 0;
    std::array<std::size_t, userCount> used{};
    bool stops = false;
    const auto isMade = [&](std::size_t index) { // not what another user is behind with
        const Slot& slot = ring[index % waiting];
        return slot.made && slot.index == index;
    };
    const auto mayMake = [&] {
        return next < count && next < *std::min_element(used.begin(), used.end()) + waiting;
    };
    // Memory goes back where it came from: another thread would wait for the maker, and the maker for it.
    const auto takeApart = [&](std::size_t who, std::unique_lock<std::mutex>& lock) {
        auto own = std::exchange(spent[who], {});
        lock.unlock();
        own.clear();
        lock.lock();
    };
    const auto makeNext = [&](std::size_t who, std::unique_lock<std::mutex>& lock) {
        const std::size_t index = next++;
        lock.unlock();
        auto made = std::make_unique<Made>(make(index));
        lock.lock();
        ring[index % waiting] = {std::move(made), index, who};
        changed.notify_all();
    };
    const auto useNext = [&](std::size_t who, auto& user, std::unique_lock<std::mutex>& lock) {
        const std::size_t index = used[who];
        Slot& slot = ring[index % waiting];
        lock.unlock();
        const bool goesOn = !isCancelled && user(index, *slot.made);
        lock.lock();
        stops = stops || !goesOn;
        ++used[who];
        if (std::all_of(used.begin(), used.end(), [&](std::size_t behind) { return behind > index; }))
            spent[slot.maker].push_back(std::move(slot.made));
        changed.notify_all();
    };
    const auto workAs = [&](std::size_t who, auto& user) {
        std::unique_lock lock(mutex);
        while (!stops && used[who] < count) {
            if (!spent[who].empty())
                takeApart(who, lock);
            else if (isMade(used[who]))
                useNext(who, user, lock);
            else if (mayMake())
                makeNext(who, lock);
            else
                changed.wait(lock);
        }
        lock.unlock();
        if constexpr (requires { user.end(); })
            user.end();
    };
    const auto workAlone = [&](std::size_t who) {
        std::unique_lock lock(mutex);
        while (!stops && next < count) {
            if (!spent[who].empty())
                takeApart(who, lock);
            else if (mayMake())
                makeNext(who, lock);
            else
                changed.wait(lock);
        }
    };
    std::vector<std::thread> threads;
    std::function<void()> first;
    std::size_t who = 0;
    const auto seat = [&](auto& user) {
        if (who == 0)
            first = [&workAs, &user] { workAs(0, user); };
        else
            threads.emplace_back([&workAs, &user, who] { workAs(who, user); });
        ++who;
    };
    (seat(users), ...);
    for (std::size_t i = userCount; i < threadCount; ++i)
        threads.emplace_back(workAlone, i);
    first();
    for (std::thread& thread : threads)
        thread.join();
    return !stops;
}

} // namespace tailpoint
