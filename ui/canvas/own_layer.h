// SPDX-License-Identifier: MIT
// The learner's own answer on the sheet: thin strokes over the figure, which belong to nobody else's figure
// and go into no export. Its tips can be dragged.
#pragma once

#include "ui/canvas/gesture.h"
#include "ui/canvas/nudge.h"
#include "ui/style/theme.h"

#include <vector>

class QPainter;

namespace tailpoint {

class OwnAnswer;

/// Where the tip of a sought vector stands to be dragged; sketch coordinates.
struct OwnTip {
    VectorId vector;
    Eigen::Vector2d tip{0, 0};
    bool isDrawn = false; ///< false: put where there is room, and no answer yet
};
/// Empty while no own answer is under way.
std::vector<OwnTip> ownTips(const Scene& scene);

/// The tip of one; empty where it is not sought.
std::optional<Eigen::Vector2d> ownTipOf(const Scene& scene, int vector);

/// One step from the keyboard along the vector (Nudged::magnitude; along a line of free sense beyond the
/// common point too) or about it (counter-clockwise for a positive `way`). Empty where that is given, or
/// where nothing would be left of it.
std::optional<Eigen::Vector2d> ownTipNudged(const Scene& scene, int vector, Nudged what, int way, bool fine);

/// What is drawn of it, the likeliest slip's numbers and the answer, as far as they are to be shown.
/// `selected`: the vector that has the keyboard.
void paintOwnAnswer(QPainter& painter, const Scene& scene, const Theme& theme, int selected);

/// Draws a sought vector; Escape takes the drag back.
class OwnTipGesture : public Gesture {
public:
    OwnTipGesture(GestureContext context, OwnAnswer& answer, const DrawnVector& drawn, QPointF press);
    void move(const Pointer& pointer) override;
    void cancel() override;
    bool reaches(Qt::KeyboardModifiers keys) const override;
    Qt::CursorShape cursor() const override { return Qt::ClosedHandCursor; }
    const Feedback* feedback() const override { return m_moved ? &m_feedback : nullptr; }
    int vector() const override { return m_drawn.vector; }

private:
    GestureContext m_context;
    OwnAnswer& m_answer;
    DrawnVector m_drawn;
    QPointF m_press, m_grip; ///< m_grip: from the tip to where it was taken
    std::optional<Eigen::Vector2d> m_before;
    bool m_moved = false;
    Feedback m_feedback;
};

} // namespace tailpoint
