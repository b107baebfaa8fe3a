// SPDX-License-Identifier: MIT
// The gestures that change a force: its tip, its body, a new one. Each is one undo step, taken back by
// cancel().
#pragma once

#include "ui/canvas/gesture.h"

namespace tailpoint {

/// What the three have in common: the sketch before, its snap lines, one step for all moves.
class ForceGesture : public Gesture {
public:
    void finish() override;
    void cancel() override;
    bool previews() const override { return m_moved; }
    const Feedback* feedback() const override { return m_moved ? &m_feedback : nullptr; }
    int vector() const override { return m_vector; }
    void setSnapping(bool on) override { m_snapping = on; }
    Qt::CursorShape cursor() const override { return Qt::ClosedHandCursor; }

protected:
    ForceGesture(GestureContext context, int vector, QPointF press);
    const Sketch& before() const { return m_before; }
    const GestureContext& context() const { return m_context; }
    QPointF press() const; ///< the sheet may have moved since
    const SnapField& field() const { return m_field; }
    /// True once the press has become a drag. Alt turns snapping off for this move.
    bool begins(const Pointer& pointer);
    virtual QString help() const; ///< the hint line while dragging
    bool moved() const { return m_moved; }
    bool isHome(const Pointer& pointer) const;      ///< back where the drag began
    bool isNothing(const Eigen::Vector2d& v) const; ///< so short that it is no force

    void apply(const Sketch& after, const SnapMark& mark, const QString& text);
    /// As it was before the drag; `words` stand in the readout.
    void applyNothing(const QString& words);

private:
    void readBack(const SnapMark& mark);

    GestureContext m_context;
    int m_vector;
    QPointF m_press;
    Eigen::Vector2d m_pressed; ///< the same place in the sketch
    Sketch m_before;
    SnapField m_field;
    bool m_snapping;
    bool m_moved = false;
    Feedback m_feedback;
};

/// Magnitude and direction; Shift holds the direction, Ctrl the magnitude; what is to be found is held too.
class TipGesture : public ForceGesture {
public:
    TipGesture(GestureContext context, const DrawnVector& drawn, QPointF press);
    void move(const Pointer& pointer) override;
    bool reaches(Qt::KeyboardModifiers keys) const override;

private:
    Polar held(const Eigen::Vector2d& v, bool direction, bool magnitude) const;
    DrawnVector m_drawn;
    QPointF m_grip; ///< from the tip to where it was taken
    Polar m_start;
};

/// Direction alone.
class BodyGesture : public ForceGesture {
public:
    BodyGesture(GestureContext context, const DrawnVector& drawn, QPointF press);
    void move(const Pointer& pointer) override;

private:
    QString help() const override;
    DrawnVector m_drawn;
    Polar m_start;
};

/// A new force from the common point.
class NewGesture : public ForceGesture {
public:
    NewGesture(GestureContext context, QPointF press);
    void move(const Pointer& pointer) override;
    bool reaches(Qt::KeyboardModifiers) const override { return moved(); }
    /// The new force's index, kNoVector where nothing was drawn.
    int made() const;
};

} // namespace tailpoint
