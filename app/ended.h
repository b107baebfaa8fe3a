// The ways in which a window ends that nobody asked for: signals, the end of the session, a display that
// goes.
#pragma once

#include <QObject>
#include <functional>

namespace tailpoint {

/// While it stands, SIGTERM, SIGHUP and SIGINT end the application's loop instead of the process, and on each
/// of these ways `leave` is called first, which must ask nothing. One at a time. A signal that was ignored
/// from the start (nohup) stays ignored; the second of a kind ends the process at once.
class EndedFromOutside : public QObject {
public:
    explicit EndedFromOutside(std::function<void()> leave);
    ~EndedFromOutside() override;
    int signal() const { return m_signal; } ///< that ended the loop; 0: none

private:
    void heard();
    static void hear(int signal);
    static void atExit(); ///< Qt ends the process by exit() where the X server goes
    static EndedFromOutside* s_standing;
    static int s_pipe[2]; ///< all that a signal's handler may touch

    std::function<void()> m_leave;
    int m_signal = 0;
};

} // namespace tailpoint
