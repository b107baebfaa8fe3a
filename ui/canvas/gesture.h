// SPDX-License-Identifier: MIT
// Input as a small state machine: no gesture is the idle state (the pointer hovers), a press that means
// something makes one of these, a release or Escape ends it.
#pragma once

#include "ui/canvas/drawn.h"
#include "ui/canvas/scene.h"
#include "ui/canvas/snap.h"

#include <QPointF>
#include <functional>

namespace tailpoint {

struct Pointer {
    QPointF at; ///< logical pixels
    Qt::KeyboardModifiers keys;
};

/// What a gesture works on.
struct GestureContext {
    Scene& scene;
    bool snapping = true;
    std::function<void(const Sentence&)> say; ///< the hint line
};

/// What is shown beside the pointer and on the sheet while a force is dragged.
struct Feedback {
    Sentence name;   ///< "P"; may be empty
    QString readout; ///< "340 N at 25.0°"
    SnapMark mark;
    Eigen::Vector2d tail{0, 0}, tip{0, 0}; ///< sketch coordinates
};

class Gesture {
public:
    virtual ~Gesture() = default;
    virtual void move(const Pointer& pointer) = 0;
    virtual void finish() {}
    virtual void cancel() {}
    /// It has begun to preview: it is over once the document says that the preview is.
    virtual bool previews() const { return false; }
    virtual Qt::CursorShape cursor() const { return Qt::ArrowCursor; }
    virtual const Feedback* feedback() const { return nullptr; }
    virtual void setSnapping(bool) {}
    /// Held at the sheet's edge it wants more sheet: it is drawing to where the pointer is.
    virtual bool reaches(Qt::KeyboardModifiers) const { return false; }
    /// The vector under the hand, kNoVector for none.
    virtual int vector() const { return kNoVector; }
};

/// Moves the sheet under the pointer.
class PanGesture : public Gesture {
public:
    PanGesture(GestureContext context, QPointF press) : m_context(std::move(context)), m_last(press) {}
    void move(const Pointer& pointer) override;
    Qt::CursorShape cursor() const override { return Qt::ClosedHandCursor; }

private:
    GestureContext m_context;
    QPointF m_last;
};

/// A drag of something that follows from the rest, or stands still: nothing moves, the hint line says why.
class ExplainGesture : public Gesture {
public:
    ExplainGesture(GestureContext context, int vector, QPointF press, Sentence why)
        : m_context(std::move(context)), m_vector(vector), m_press(press), m_why(std::move(why)) {}
    void move(const Pointer& pointer) override;
    Qt::CursorShape cursor() const override;
    int vector() const override { return m_vector; }

private:
    GestureContext m_context;
    int m_vector;
    QPointF m_press;
    Sentence m_why;
    bool m_said = false;
};

/// A click on the other answer; a drag that begins there does nothing.
class ChooseGesture : public Gesture {
public:
    ChooseGesture(GestureContext context, QPointF press) : m_context(std::move(context)), m_press(press) {}
    void move(const Pointer& pointer) override;
    void finish() override;
    Qt::CursorShape cursor() const override { return Qt::PointingHandCursor; }

private:
    GestureContext m_context;
    QPointF m_press;
    bool m_moved = false;
};

/// Takes the other of two answers, if there are two.
void takeOtherAnswer(SketchDocument& document);
/// Why this vector, or the part of it that is to be found, can't be dragged.
Sentence whyNotDragged(const Result& result, int vector);

inline constexpr double kDragStart = 3; ///< pixels; a press that moves less is a click

} // namespace tailpoint
