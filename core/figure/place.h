// SPDX-License-Identifier: MIT
// What a label's place is: its kind, the rail it is on and the position along it, none of which changes while
// the geometry moves. So a label can be held to its place, slide along its rail, or be found again.
// Read on in label_candidates (what places there are), label_evaluation (what each costs), label_search.
#pragma once

#include <cstdint>

#include <compare>
#include <map>
#include <string>

namespace tailpoint {

enum class PlaceKind : std::uint8_t {
    besideShaft, ///< position: steps from the tail, kRailSteps to the tip
    aroundTip, ///< position: steps from one end of the sweep round the tip, half of kRailSteps straight ahead
    offTip,    ///< the same, further off
    beyondArc, ///< position: steps from the start of the arc, kRailSteps to its end
    inWedge,   ///< between the corner of an angle and its arc; position as beyond the arc
    offArc,    ///< the same, further beyond it
    aroundPoint, ///< position: eighths of a turn
    atLineEnd,   ///< position: 0 ahead of the end, then by turns on both sides, step by step back
    onLeader,    ///< position: directions round the leader's anchor, kLeaderDirections to a turn
    pinned       ///< put there by hand
};

/// Which of the lines of its kind.
enum class Rail : std::uint8_t {
    only,
    left, ///< of a shaft, as seen from tail to tip
    right,
    farLeft,
    farRight,
    furthestLeft,
    furthestRight,
    firstAnchor, ///< of a leader
    secondAnchor
};

struct Place {
    PlaceKind kind = PlaceKind::besideShaft;
    Rail rail = Rail::only;
    std::int16_t ring = 0; ///< on a leader: how far out
    double position = 0;   ///< along the rail, in whole steps
    auto operator<=>(const Place&) const = default;
};

/// Positions along a whole shaft or arc, and round the anchor of a leader.
inline constexpr int kRailSteps = 2000, kLeaderDirections = 512;

enum class LabelText : std::uint8_t { full, abbreviated, keyLetter };

/// Where a label stands, and with which of its texts.
struct LabelPlace {
    Place place;
    LabelText text = LabelText::full;
    bool operator==(const LabelPlace&) const = default;
};

/// Where each label stood last time, and in which row each direction's arc. Given back while dragging so that
/// both are steady; left empty for release and export, so that the figure is a function of the sketch alone.
struct Placement {
    std::map<std::string, LabelPlace> labels; ///< by the label's id
    std::map<std::string, int> arcRows;       ///< by the id of the arc's vector
    bool operator==(const Placement&) const = default;
};

} // namespace tailpoint
