// Steps from the keyboard and from assistive technology: which value comes next, and which steps are one undo
// step.
#pragma once

#include "ui/canvas/force_edits.h"

#include <QElapsedTimer>
#include <QtGlobal>
#include <functional>

namespace tailpoint {

/// The next multiple of `step` above (+1) or below (-1) `value`.
double nextMultiple(double value, double step, int way);

/// What a press changes.
enum class Nudged { magnitude, direction, label, directionLabel };

/// Presses that follow one another within kPause on the same quantity share a token.
class NudgeToken {
public:
    using Clock = std::function<qint64()>; ///< milliseconds, never going back
    static constexpr qint64 kPause = 600;

    explicit NudgeToken(Clock clock = {});
    quint64 next(int vector, Nudged what);
    /// Something else happened: the next press begins a new step.
    void end() { m_token = 0; }

private:
    Clock m_clock;
    quint64 m_token = 0;
    qint64 m_last = 0;
    int m_vector = kNoVector;
    Nudged m_what = Nudged::magnitude;
};

} // namespace tailpoint
