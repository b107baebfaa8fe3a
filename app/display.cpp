#include "app/display.h"

#include <QByteArray>
#include <QList>
#include <QtGlobal>

#include <cstddef>
#include <cstring>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

namespace tailpoint {

namespace {

bool answers(const QByteArray& path, bool isAbstract) {
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    const auto length = static_cast<std::size_t>(path.size());
    const std::size_t at = isAbstract ? 1 : 0; // an abstract name begins with a zero
    if (length + at >= sizeof address.sun_path)
        return false;
    std::memcpy(address.sun_path + at, path.constData(), length);
    const int fd = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    if (fd < 0)
        return true; // not known: let the window try
    const auto size = static_cast<socklen_t>(offsetof(sockaddr_un, sun_path) + at + length + (1 - at));
    const bool connected = ::connect(fd, reinterpret_cast<const sockaddr*>(&address), size) == 0;
    ::close(fd);
    return connected;
}

/// Of ":0" or ":0.0", an X server of this machine: whether one listens there. Others are not asked.
bool isServed(const QByteArray& display) {
    if (!display.startsWith(':'))
        return !display.isEmpty();
    bool isNumber = false;
    const int number = display.mid(1).split('.').front().toInt(&isNumber);
    const QByteArray path = "/tmp/.X11-unix/X" + QByteArray::number(number);
    return isNumber && (answers(path, true) || answers(path, false));
}

} // namespace

bool hasDisplay(int argc, char** argv) {
    for (int i = 1; i < argc; ++i)
        if (qstrcmp(argv[i], "-platform") == 0 || qstrcmp(argv[i], "--platform") == 0)
            return true;
    return qEnvironmentVariableIsSet("WAYLAND_DISPLAY") || qEnvironmentVariableIsSet("QT_QPA_PLATFORM") ||
           isServed(qgetenv("DISPLAY"));
}

} // namespace tailpoint
