// SPDX-License-Identifier: MIT
// System calls on files: owned descriptors, and calls that a signal interrupts taken up again.
#pragma once

#include <QByteArray>
#include <QString>
#include <cerrno>
#include <optional>
#include <sys/types.h>

namespace tailpoint {

/// Calls again while a signal interrupts it; errno is the last call's.
template <class Call>
int retrying(Call call) {
    int given = call();
    while (given < 0 && errno == EINTR)
        given = call();
    return given;
}

/// Owns a file descriptor.
class Descriptor {
public:
    explicit Descriptor(int fd = -1) : m_fd(fd) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() { close(); }
    int get() const { return m_fd; }
    bool valid() const { return m_fd >= 0; }
    void reset(int fd);
    bool close(); ///< whether the bytes arrived; false leaves the reason in errno

private:
    int m_fd;
};

QByteArray encoded(const QString& path);
int openRetrying(const QString& path, int flags, mode_t mode = 0);
int writeAll(int fd, const QByteArray& bytes); ///< 0, or the error
/// Up to `most` bytes; empty on an error, which is left in errno.
std::optional<QByteArray> readUpTo(int fd, qint64 most);

/// What went wrong with an output and the mend, in words; `error` as in errno.
QString reasonOf(int error);

} // namespace tailpoint
