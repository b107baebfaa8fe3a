// SPDX-License-Identifier: MIT
#include "ui/canvas/gesture.h"

#include "core/construct/reduction.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/words.h"
#include "ui/style/symbols.h"

#include <QLineF>

namespace tailpoint {

void PanGesture::move(const Pointer& pointer) {
    m_context.scene.panBy(pointer.at - m_last);
    m_last = pointer.at;
}

void ExplainGesture::move(const Pointer& pointer) {
    if (!m_said && QLineF(m_press, pointer.at).length() >= kDragStart) {
        m_said = true;
        m_context.say(m_why);
    }
}

Qt::CursorShape ExplainGesture::cursor() const {
    return m_said ? Qt::ForbiddenCursor : Qt::ArrowCursor;
}

void ChooseGesture::move(const Pointer& pointer) {
    m_moved = m_moved || QLineF(m_press, pointer.at).length() >= kDragStart;
}

void ChooseGesture::finish() {
    if (!m_moved) {
        takeOtherAnswer(m_context.scene.document());
    }
}

void takeOtherAnswer(SketchDocument& document) {
    const Result& result = document.result();
    if (result.solved.solutions.size() == 2) {
        document.choose(1 - result.chosen);
    }
}

namespace {

QString whyNot(const Sketch& sketch, int vector) {
    const Force* force = forceAt(sketch, vector);
    const bool magnitude = isGiven(force->magnitude), direction = isGiven(force->direction);
    if (magnitude && !direction) {
        return words::tr("The direction of %1 is to be found: it follows from the rest. Drag the tip to "
                         "change the magnitude.");
    }
    if (direction && !magnitude) {
        return words::tr("The magnitude of %1 is to be found: it follows from the rest. Drag to turn %1.");
    }
    if (vector == kSumIndex) {
        return words::tr("%1 is to be found: it follows from the forces. Drag one of them instead.");
    }
    return words::tr("%1 is to be found: it follows from the rest. Set it to given to drag it.");
}

} // namespace

Sentence whyNotDragged(const Result& result, int vector) {
    return sentence(whyNot(result.sketch, vector), symbolWords(result.things(), vectorId(vector)));
}

} // namespace tailpoint
