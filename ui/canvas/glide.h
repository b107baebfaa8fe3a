// SPDX-License-Identifier: MIT
// Labels on their way: after a drag they move from where the hand left them to where the sheet alone puts
// them.
#pragma once

#include "core/figure/display_list.h"

#include <cstddef>
#include <vector>

namespace tailpoint {

class Glide {
public:
    static constexpr int kMilliseconds = 120;

    /// True where a label of `to` stood elsewhere in `from`, saying the same.
    bool start(const DisplayList& from, const DisplayList& to);
    /// The figure at `part` (0..1) of the way.
    DisplayList at(double part) const;
    bool running() const { return !m_moves.empty(); }
    void stop() { m_moves.clear(); }

private:
    struct Move {
        std::size_t group = 0, item = 0;
        double dx = 0, dy = 0; ///< from the end back to the start
    };
    DisplayList m_to;
    std::vector<Move> m_moves;
};

} // namespace tailpoint
