// SPDX-License-Identifier: MIT
// Preloaded into the program: makes calls on the files of a saving fail as a signal or a bad disk does.
// TAILPOINT_FAULTS="fsync=EINTR:1:3 rename=EIO:2:1": the first three calls of the one, the second of the
// other.
#ifndef _GNU_SOURCE
#define _GNU_SOURCE
#endif
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <dlfcn.h>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

namespace {

enum Call { fsyncCall, fchmodCall, renameCall, closeCall, writeCall, kCalls };
constexpr const char* kNames[kCalls] = {"fsync", "fchmod", "rename", "close", "write"};
int counts[kCalls];

int errorNamed(const std::string& name) {
    return name == "EINTR" ? EINTR : name == "EIO" ? EIO : name == "ENOSPC" ? ENOSPC : 0;
}

/// The error of this call; 0: it is done as ever.
int faultOf(Call call) {
    const char* faults = std::getenv("TAILPOINT_FAULTS");
    const std::string wanted = std::string(kNames[call]) + "=";
    const char* at = faults != nullptr ? std::strstr(faults, wanted.c_str()) : nullptr;
    if (at == nullptr)
        return 0;
    char name[16] = {};
    int from = 1, count = 1;
    if (std::sscanf(at + wanted.size(), "%15[A-Z]:%d:%d", name, &from, &count) < 1)
        return 0;
    const int now = ++counts[call];
    return now >= from && now < from + count ? errorNamed(name) : 0;
}

bool isSaving(const char* path) {
    return std::strstr(path, ".tailpoint-saving-") != nullptr;
}

bool isSaving(int fd) {
    char path[4096] = {}, link[64];
    std::snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
    const int before = errno;
    const bool is = ::readlink(link, path, sizeof path - 1) > 0 && isSaving(path);
    errno = before;
    return is;
}

template <class Function>
Function* real(const char* name) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

} // namespace

extern "C" {

int fsync(int fd) {
    const int error = isSaving(fd) ? faultOf(fsyncCall) : 0;
    if (error == 0)
        return real<int(int)>("fsync")(fd);
    errno = error;
    return -1;
}

int fchmod(int fd, mode_t mode) {
    const int error = isSaving(fd) ? faultOf(fchmodCall) : 0;
    if (error == 0)
        return real<int(int, mode_t)>("fchmod")(fd, mode);
    errno = error;
    return -1;
}

int rename(const char* from, const char* to) {
    const int error = isSaving(from) ? faultOf(renameCall) : 0;
    if (error == 0)
        return real<int(const char*, const char*)>("rename")(from, to);
    errno = error;
    return -1;
}

/// Interrupted, it has closed (close(2), Linux).
int close(int fd) {
    const int error = isSaving(fd) ? faultOf(closeCall) : 0;
    const int given = real<int(int)>("close")(fd);
    if (error == 0)
        return given;
    errno = error;
    return -1;
}

ssize_t write(int fd, const void* bytes, size_t count) {
    const int error = isSaving(fd) ? faultOf(writeCall) : 0;
    if (error == 0)
        return real<ssize_t(int, const void*, size_t)>("write")(fd, bytes, count);
    errno = error;
    return -1;
}
}
