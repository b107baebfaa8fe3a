// SPDX-License-Identifier: MIT
#include "tests/whole/window/x_server.h"

#include <array>
#include <csignal>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace whole {

namespace {

constexpr int kStartMs = 20'000;

/// In the child: becomes the server, which writes its display's number to `out`.
[[noreturn]] void becomeServer(int out, int width, int height) {
    prctl(PR_SET_PDEATHSIG, SIGTERM); // a test that dies takes its server along
    const std::string screen = std::to_string(width) + "x" + std::to_string(height) + "x24";
    const std::string number = std::to_string(out);
    execlp("Xvfb", "Xvfb", "-displayfd", number.c_str(), "-screen", "0", screen.c_str(), "-nolisten", "tcp",
           "-noreset", static_cast<char*>(nullptr));
    _exit(127);
}

/// The line that the server writes, or empty when it ended or kept silent.
std::string firstLine(int in) {
    std::string line;
    pollfd waited{in, POLLIN, 0};
    std::array<char, 32> part{};
    while (line.find('\n') == std::string::npos) {
        if (poll(&waited, 1, kStartMs) <= 0)
            return {};
        const ssize_t got = read(in, part.data(), part.size());
        if (got <= 0)
            return {};
        line.append(part.data(), static_cast<std::size_t>(got));
    }
    return line.substr(0, line.find('\n'));
}

} // namespace

XServer::XServer(int width, int height) {
    std::array<int, 2> ends{};
    if (pipe(ends.data()) != 0)
        return;
    m_pid = fork();
    if (m_pid == 0) {
        close(ends[0]);
        becomeServer(ends[1], width, height);
    }
    close(ends[1]);
    const std::string number = firstLine(ends[0]);
    close(ends[0]);
    if (!number.empty())
        m_display = ":" + number;
}

XServer::~XServer() {
    if (m_pid <= 0)
        return;
    kill(m_pid, SIGTERM);
    waitpid(m_pid, nullptr, 0);
}

} // namespace whole
