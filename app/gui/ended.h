// SPDX-License-Identifier: MIT
// The ways in which a window ends that nobody asked for: signals, the end of the session, a display that
// goes.
#pragma once

#include <QObject>
#include <functional>

namespace tailpoint {

/// While it stands, SIGTERM, SIGHUP and SIGINT end the application's loop instead of the process. `keep` is
/// called while the window lives: on a signal and when the session may end, which can yet be called off.
/// Where it does end, so does the loop. `leave` is the last that is called, also where no display is left: it
/// may touch no window. Neither may ask. One at a time. A signal that was ignored from the start (nohup)
/// stays ignored; the second of a kind ends the process at once.
class EndedFromOutside : public QObject {
public:
    EndedFromOutside(std::function<void()> keep, std::function<void()> leave);
    ~EndedFromOutside() override;
    int signal() const { return m_signal; } ///< that ended the loop; 0: none

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void heard();
    void end(int status);
    static void hear(int signal);
    static void atExit(); ///< Qt ends the process by exit() where the X server goes
    static EndedFromOutside* s_standing;
    static int s_pipe[2]; ///< all that a signal's handler may touch

    std::function<void()> m_keep, m_leave;
    int m_signal = 0;
    bool m_sessionMayEnd = false;
};

} // namespace tailpoint
