// SPDX-License-Identifier: MIT
// A session manager of X (XSMP) for one client, by the library that the real ones use.
#pragma once

#ifdef TAILPOINT_HAS_SM

#include <QString>
#include <memory>

namespace whole {

class SessionManager {
public:
    SessionManager();
    ~SessionManager();
    SessionManager(const SessionManager&) = delete;
    SessionManager& operator=(const SessionManager&) = delete;

    QString address() const; ///< for SESSION_MANAGER; empty: it could not listen
    /// Each waits until it is so, or patience runs out.
    bool waitForClient();
    bool askToSave(); ///< the session is about to end: true once the client has saved
    bool callOff();   ///< the session goes on
    bool sendAway();  ///< it ends: true once the client has gone

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace whole

#endif
