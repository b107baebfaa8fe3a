// SPDX-License-Identifier: MIT
// What a drag that rests at the sheet's edge does to the view. Pure arithmetic, no widget and no clock.
#pragma once

#include "ui/canvas/sheet_view.h"

#include <vector>

namespace tailpoint {

class EdgeScroll {
public:
    /// A drag begins. `kept`: sketch coordinates that the sheet must go on showing, the common point first;
    /// empty where that is not on the sheet.
    void begin(const SheetView& sheet, QPointF press, std::vector<Eigen::Vector2d> kept);

    /// Pixels per second that the sheet is pulled aside: faster the further the pointer is out. Null away
    /// from the edge, and where the drag began at the edge until it has left it or gone further.
    QPointF pull(const SheetView& sheet, QPointF pointer);

    struct Step {
        QPointF scroll;       ///< pixels that everything on the sheet moves
        bool stepOut = false; ///< the scale goes a step down
    };
    /// What happens in the next `seconds` of a pointer that rests at the edge: the sheet scrolls as long as
    /// what must be kept stays on it, and not for long; then the scale steps out, time and again.
    Step rest(const SheetView& sheet, QPointF pointer, double seconds);

    static constexpr double kBand = 18;      ///< pixels inside the edge that count as the edge
    static constexpr double kKeep = 24;      ///< pixels that what is kept stays away from the edge
    static constexpr double kLong = 2;       ///< seconds of scrolling
    static constexpr double kStepTime = 0.7; ///< seconds between steps of the scale
    static constexpr double kLeast = 200;    ///< so many times the scale may fall in one drag

private:
    /// Per axis: how far into the band or beyond it, negative to the left and up.
    struct Depth {
        double at = 0;
        bool free = true; ///< the drag has been away from this edge
    };
    static double speed(Depth& began, double at);
    QPointF allowed(const SheetView& sheet, QPointF step) const;

    std::vector<Eigen::Vector2d> m_kept;
    Depth m_x, m_y;
    double m_leastScale = 0;
    double m_rested = 0;    ///< seconds at the edge
    double m_untilStep = 0; ///< seconds
    bool m_stepping =
        false; ///< from the first step on there is no scrolling until the pointer leaves the edge
};

} // namespace tailpoint
