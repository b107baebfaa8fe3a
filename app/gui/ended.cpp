// SPDX-License-Identifier: MIT
#include "app/gui/ended.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QSocketNotifier>
#include <QWindow>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <unistd.h>
#include <utility>

namespace tailpoint {

namespace {

constexpr int kSignals[] = {SIGTERM, SIGHUP, SIGINT};

bool isIgnored(int signal) {
    struct sigaction now {};
    return ::sigaction(signal, nullptr, &now) == 0 && now.sa_handler == SIG_IGN;
}

void catchOnce(int signal, void (*handler)(int)) {
    struct sigaction action {};
    action.sa_handler = handler;
    action.sa_flags = static_cast<int>(SA_RESETHAND | SA_RESTART);
    ::sigaction(signal, &action, nullptr);
}

} // namespace

EndedFromOutside* EndedFromOutside::s_standing = nullptr;
int EndedFromOutside::s_pipe[2] = {-1, -1};

EndedFromOutside::EndedFromOutside(std::function<void()> keep, std::function<void()> leave)
    : m_keep(std::move(keep)), m_leave(std::move(leave)) {
    s_standing = this;
    static const bool registered = std::atexit(atExit) == 0;
    Q_UNUSED(registered);
    if (::pipe2(s_pipe, O_CLOEXEC | O_NONBLOCK) == 0) {
        auto* notifier = new QSocketNotifier(s_pipe[0], QSocketNotifier::Read, this);
        connect(notifier, &QSocketNotifier::activated, this, [this] { heard(); });
        for (const int signal : kSignals)
            if (!isIgnored(signal))
                catchOnce(signal, hear);
    }
    connect(
        qGuiApp, &QGuiApplication::commitDataRequest, this,
        [this] {
            m_sessionMayEnd = true;
            m_keep();
        },
        Qt::DirectConnection);
    qGuiApp->installEventFilter(this);
}

EndedFromOutside::~EndedFromOutside() {
    s_standing = nullptr;
    for (const int signal : kSignals)
        if (!isIgnored(signal))
            std::signal(signal, SIG_DFL);
    for (int& end : s_pipe)
        ::close(std::exchange(end, -1));
}

void EndedFromOutside::hear(int signal) {
    const int before = errno;
    const auto byte = static_cast<char>(signal);
    if (::write(s_pipe[1], &byte, 1) < 0) {
        // nobody to tell it to: the second signal ends the process
    }
    errno = before;
}

void EndedFromOutside::heard() {
    char byte = 0;
    if (::read(s_pipe[0], &byte, 1) != 1)
        return;
    m_signal = byte;
    end(m_signal);
}

/// exit() of the application, not quit(): that would close the window and ask about what is not saved.
void EndedFromOutside::end(int status) {
    m_keep();
    m_leave();
    QCoreApplication::exit(status);
}

/// The session manager's word to go comes as Quit, which would ask each window; nobody is there to answer.
/// Our own Quit closes the window, and Qt's, behind the last window, finds none.
bool EndedFromOutside::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Quit || !m_sessionMayEnd)
        return QObject::eventFilter(watched, event);
    const QWindowList windows = QGuiApplication::topLevelWindows();
    if (std::none_of(windows.begin(), windows.end(),
                     [](const QWindow* window) { return window->isVisible(); }))
        return QObject::eventFilter(watched, event);
    end(0);
    return true;
}

void EndedFromOutside::atExit() {
    if (s_standing)
        std::exchange(s_standing, nullptr)->m_leave();
}

} // namespace tailpoint
