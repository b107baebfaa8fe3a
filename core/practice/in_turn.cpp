// SPDX-License-Identifier: MIT
#include "core/practice/in_turn.h"

namespace tailpoint {

namespace {

constexpr std::uint32_t kFurther = 65'537, kMostAgain = 1000; ///< numbers on, for a problem that is alike

} // namespace

ProblemsInTurn::ProblemsInTurn(std::vector<std::string> families, int level, std::uint32_t seed,
                               std::size_t perSheet)
    : m_families(std::move(families)), m_level(level), m_seed(seed), m_perSheet(perSheet) {}

std::optional<DrawnProblem> ProblemsInTurn::drawn(std::size_t index, std::uint32_t again) const {
    if (m_families.empty())
        return std::nullopt;
    const std::size_t place = m_perSheet > 0 ? index % m_perSheet : index;
    return practising::drawProblem({m_families[place % m_families.size()], m_level,
                                    (problemNumber(m_seed, index) + again * kFurther) % kProblemNumbers});
}

std::optional<DrawnProblem> ProblemsInTurn::at(std::size_t index, const std::function<bool()>& isCancelled) {
    auto made = drawn(index, 0);
    {
        std::unique_lock lock(m_mutex);
        m_changed.wait(lock, [&] { return m_isOver || m_settled == index; });
        if (m_isOver)
            return std::nullopt;
    }
    for (std::uint32_t again = 1; made && m_seen.contains(practising::givenText(made->problem.sketch));
         ++again) {
        if (again > kMostAgain || (isCancelled && isCancelled()))
            made.reset();
        else
            made = drawn(index, again);
    }
    const std::lock_guard lock(m_mutex);
    if (made) {
        m_seen.insert(practising::givenText(made->problem.sketch));
        ++m_settled;
    } else {
        m_isOver = true;
    }
    m_changed.notify_all();
    return made;
}

} // namespace tailpoint
