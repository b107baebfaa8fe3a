// SPDX-License-Identifier: MIT
// whole/window/: the real window on an X server of its own, moved by a real mouse and keys. Nothing here
// knows the inside of the program: it sees pixels, window titles and files, as a person does.
#pragma once

#include <chrono>
#include <thread>

namespace whole {

inline constexpr std::chrono::seconds kPatience{20};

/// Polls until `condition` holds. False when patience ran out.
template <class Condition>
bool eventually(Condition condition, std::chrono::milliseconds patience = kPatience) {
    const auto deadline = std::chrono::steady_clock::now() + patience;
    while (!condition()) {
        if (std::chrono::steady_clock::now() > deadline)
            return false;
        std::this_thread::sleep_for(std::chrono::milliseconds(15));
    }
    return true;
}

} // namespace whole
