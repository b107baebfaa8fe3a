// SPDX-License-Identifier: MIT
// The arrows of a display list: a shaft and the head on it are one arrow in TikZ, so that both follow its
// ends.
#pragma once

#include "core/figure/display_list.h"

#include <optional>
#include <string>
#include <vector>

namespace tailpoint {

/// A head's polygon: tip, wing, notch or back, wing; read back to lengths.
struct TikzHead {
    Point tip;
    double length = 0, width = 0, inset = 0;
    bool open = false;
    double weight = 0; ///< of an open head's outline
};

struct TikzArrow {
    std::string id;  ///< of its group; of the second arrow of a group with "-2" behind
    Point tail, tip; ///< the tip where an open head's outline ends
    Role role = Role::given;
    VectorId vector;          ///< whose arrow it is, or of which force the copy in a polygon; kNobody: none
    bool otherAnswer = false; ///< of the other of two answers
    Path shaft;
    TikzHead head;
};

inline constexpr double kTikzFar =
    5000; ///< TeX's lengths end at 16383 pt: what lies farther out is left away
bool isNearForTikz(Point p);

/// The arrow that begins with this item and the next; empty: something else. `before`: arrows of the group so
/// far.
std::optional<TikzArrow> arrowAt(const Group& group, std::size_t item, int before);
bool isTooShort(const TikzArrow& arrow); ///< it can't be seen, and TeX divides by its length
std::vector<TikzArrow> arrowsOf(const Group& group);
std::vector<TikzArrow> arrowsOf(const DisplayList& list);

} // namespace tailpoint
