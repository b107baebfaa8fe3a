// SPDX-License-Identifier: MIT
// What of an own answer's marking can be drawn: the construction of a slip, and the right one.
#include "ui/marking/own_answer.h"

#include "ui/document/sketch_document.h"

namespace tailpoint {

bool OwnAnswer::canShowSlip() const {
    return m_marking && !slipStrokes(m_document.sketch(), *m_marking).empty();
}

std::vector<AttemptStroke> OwnAnswer::slipDrawing() const {
    return m_slipShown && m_marking ? slipStrokes(m_document.sketch(), *m_marking)
                                    : std::vector<AttemptStroke>();
}

std::vector<AttemptStroke> OwnAnswer::answerDrawing() const {
    const Sketch& sketch = m_document.sketch();
    return m_answerShown ? rightStrokes(sketch, solve(sketch)) : std::vector<AttemptStroke>();
}

} // namespace tailpoint
