// SPDX-License-Identifier: MIT
// The problems of a set as they come: drawn side by side by whoever needs them, and settled in their turn, so
// that each is another one than all before it.
//
//   ProblemsInTurn problems({"two-forces", "slopes"}, 2, 30);
//   const auto first = problems.at(0);        // on any thread
//   const Scheme scheme = schemeOf(*first);
#pragma once

#include "core/practice/drawn.h"

#include <condition_variable>
#include <functional>
#include <mutex>
#include <unordered_set>

namespace tailpoint {

class ProblemsInTurn {
public:
    /// Of these families in turn. `perSheet`: they begin anew after so many (a sheet for each of a class); 0:
    /// never.
    ProblemsInTurn(std::vector<std::string> families, int level, std::uint32_t seed,
                   std::size_t perSheet = 0);

    /// Each index is asked for once. Waits until those before it are settled: whoever shares the work out
    /// does so in rising order. Empty: a family or the level doesn't exist, there are no more different ones,
    /// or `isCancelled` says so (to look for different ones takes long where there are hardly more); then
    /// there is none behind it either.
    std::optional<DrawnProblem> at(std::size_t index, const std::function<bool()>& isCancelled = {});

private:
    std::optional<DrawnProblem> drawn(std::size_t index, std::uint32_t again) const;

    std::vector<std::string> m_families;
    int m_level;
    std::uint32_t m_seed;
    std::size_t m_perSheet;
    std::mutex m_mutex;
    std::condition_variable m_changed;
    std::size_t m_settled = 0; ///< so many
    bool m_isOver = false;
    std::unordered_set<std::string> m_seen; ///< of whose turn it is
};

} // namespace tailpoint
