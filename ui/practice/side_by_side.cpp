// SPDX-License-Identifier: MIT
#include "ui/practice/side_by_side.h"

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

namespace tailpoint {

bool sideBySide(std::size_t count, const std::function<void(std::size_t)>& each,
                const std::function<bool()>& isCancelled) {
    std::atomic<std::size_t> next = 0;
    std::atomic<bool> cancelled = false;
    const auto work = [&] {
        for (std::size_t index = next++; index < count && !cancelled; index = next++) {
            if (isCancelled && isCancelled())
                cancelled = true;
            else
                each(index);
        }
    };
    const std::size_t cores = std::max(1U, std::thread::hardware_concurrency());
    std::vector<std::thread> others;
    for (std::size_t i = 1; i < std::min(cores, count); ++i)
        others.emplace_back(work);
    work();
    for (std::thread& other : others)
        other.join();
    return !cancelled;
}

} // namespace tailpoint
