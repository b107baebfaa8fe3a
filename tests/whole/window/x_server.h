// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <sys/types.h>

namespace whole {

/// An Xvfb on a display that it chose itself; ends with the object.
class XServer {
public:
    XServer(int width, int height);
    ~XServer();
    XServer(const XServer&) = delete;
    XServer& operator=(const XServer&) = delete;

    /// ":7", or empty when the server did not start.
    const std::string& display() const { return m_display; }

private:
    pid_t m_pid = -1;
    std::string m_display;
};

/// The screen of the tests: another one of this size, and back to the usual one. No program may be open.
void takeScreen(int width, int height);
void takeUsualScreen();

} // namespace whole
