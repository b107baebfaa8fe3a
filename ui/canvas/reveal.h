// SPDX-License-Identifier: MIT
// What is new on the sheet draws itself: strokes from their beginning to their end, values last; what stays
// but stands elsewhere moves there.
#pragma once

#include "core/figure/display_list.h"

#include <cstddef>
#include <vector>

namespace tailpoint {

class Reveal {
public:
    static constexpr int kMilliseconds = 480;

    /// True where `to` shows something that `from` doesn't, or elsewhere.
    bool start(const DisplayList& from, const DisplayList& to);
    /// The figure at `part` (0..1) of the way; at 1 it is `to`.
    DisplayList at(double part) const;
    bool running() const { return !m_news.empty(); }
    void stop() { m_news.clear(); }

private:
    struct News {
        std::size_t group = 0;
        Point from{0, 0};       ///< where the group stood, relative to where it belongs
        bool labelOnly = false; ///< the arrow was there; its text is new
    };
    DisplayList m_to;
    std::vector<News> m_news;
};

} // namespace tailpoint
