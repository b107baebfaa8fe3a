// SPDX-License-Identifier: MIT
// A label put elsewhere by hand: it stays there, at the same offset from the middle of its arrow or arc.
#pragma once

#include "ui/canvas/gesture.h"
#include "ui/canvas/hit.h"

namespace tailpoint {

/// One undo step, taken back by cancel(). A press that doesn't move is a click and changes nothing.
class LabelGesture : public Gesture {
public:
    LabelGesture(GestureContext context, const Hit& label, QPointF press);
    void move(const Pointer& pointer) override;
    void finish() override;
    void cancel() override;
    bool previews() const override { return m_moved; }
    Qt::CursorShape cursor() const override;
    int vector() const override { return m_vector; }

private:
    GestureContext m_context;
    int m_vector;
    bool m_ofDirection;
    QPointF m_press;
    Sketch m_before;
    std::optional<LabelPin> m_start; ///< where it stood at the press
    bool m_moved = false;
};

/// Where the label stands now, as a pin would say it; of the arrow or of its direction.
std::optional<LabelPin> pinAsItStands(const Scene& scene, int vector, bool ofDirection);
/// With the label put there, to the half point and not too far.
Sketch withPin(const Sketch& sketch, int vector, bool ofDirection, LabelPin pin);
/// Can this label be put elsewhere? Those of arrows and of their directions can.
bool labelCanMove(const Hit& label);
/// Labels of this vector that were put somewhere by hand find their own places again.
Sketch withoutPins(const Sketch& sketch, int vector);
bool hasPins(const Sketch& sketch, int vector);

} // namespace tailpoint
