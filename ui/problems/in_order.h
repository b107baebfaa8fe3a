// SPDX-License-Identifier: MIT
// Work spread over the machine's cores, taken over in its order.
#pragma once

#include <algorithm>
#include <atomic>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

namespace tailpoint {

inline std::size_t workers() {
    return std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, 16);
}

/// Calls make(0), ... make(count - 1) on several threads, and use(i, made) for each in its order on this one.
/// No more than a few wait to be used. False: `isCancelled` was set, or use() said false; then some were not
/// made. Neither may throw.
template <class Make, class Use>
bool madeInOrder(std::size_t count, const std::atomic<bool>& isCancelled, Make make, Use use) {
    using Made = decltype(make(std::size_t{}));
    const std::size_t waiting = 16 * workers();
    std::vector<std::optional<Made>> ring(waiting);
    std::mutex mutex;
    std::condition_variable changed;
    std::size_t next = 0, used = 0;
    bool stops = false;
    const auto work = [&] {
        std::unique_lock lock(mutex);
        while (true) {
            changed.wait(lock, [&] { return stops || next >= count || next < used + waiting; });
            if (stops || next >= count)
                return;
            const std::size_t index = next++;
            lock.unlock();
            Made made = make(index);
            lock.lock();
            ring[index % waiting] = std::move(made);
            changed.notify_all();
        }
    };
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < std::min(workers(), count); ++i)
        threads.emplace_back(work);
    bool isWhole = true;
    for (std::size_t index = 0; index < count && isWhole; ++index) {
        std::unique_lock lock(mutex);
        changed.wait(lock, [&] { return ring[index % waiting].has_value(); });
        Made made = std::move(*ring[index % waiting]);
        ring[index % waiting].reset();
        used = index + 1;
        changed.notify_all();
        lock.unlock();
        isWhole = !isCancelled && use(index, std::move(made));
    }
    {
        const std::lock_guard lock(mutex);
        stops = true;
    }
    changed.notify_all();
    for (std::thread& thread : threads)
        thread.join();
    return isWhole;
}

} // namespace tailpoint
