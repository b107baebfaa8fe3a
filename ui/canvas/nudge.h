// SPDX-License-Identifier: MIT
// Steps from the keyboard and from assistive technology: which value comes next, and which of them are one
// undo step.
#pragma once

#include "ui/canvas/force_edits.h"
#include "ui/document/sketch_document.h"

#include <QTimer>

namespace tailpoint {

/// The next multiple of `step` above (+1) or below (-1) `value`.
double nextMultiple(double value, double step, int way);

/// What a press changes.
enum class Nudged { magnitude, direction, label, directionLabel };

/// Presses that follow one another on the same quantity are previewed, and become one undo step: once a key
/// that was held has come up, kPause after the last of several presses, or when anything else begins. Nothing
/// is committed while a key is down: keyboards wait longer than kPause before they repeat it.
class Nudges : public QObject {
public:
    static constexpr int kPause = 600; ///< milliseconds
    /// A server that is busy tells a repeated key's release before it tells the press that belongs to it.
    static constexpr int kAfterRelease = 100;

    explicit Nudges(SketchDocument& document);
    std::optional<SketchFault> take(int vector, Nudged what, const Sketch& after, const QString& step);
    void end();                  ///< commits what is under way
    void keyPressed(bool again); ///< `again`: the keyboard repeats a held key
    void keyReleased();

private:
    SketchDocument& m_document;
    QTimer m_pause;
    bool m_underWay = false;
    bool m_down = false, m_held = false; ///< a key is down; it was down long enough to be repeated
    int m_vector = kNoVector;
    Nudged m_what = Nudged::magnitude;
};

} // namespace tailpoint
