// SPDX-License-Identifier: MIT
#include "app/gui.h"

#include "app/common.h"

#include <QFile>
#include <QFileInfo>
#include <dlfcn.h>

namespace tailpoint {

namespace {

int complainOf(const QString& what) {
    return complain(
        QStringLiteral(TAILPOINT_GUI ": %1; install the program anew, or build it whole").arg(what));
}

/// Beside the program as it is built, among the libraries as it is installed.
QString pathOfGui() {
    const QString here = QFileInfo(QFile::symLinkTarget(QStringLiteral("/proc/self/exe"))).path();
    const QString built = here + QStringLiteral("/" TAILPOINT_GUI);
    return QFile::exists(built) ? built
                                : here + QStringLiteral("/" TAILPOINT_WAY_TO_LIBRARIES "/" TAILPOINT_GUI);
}

const Gui* loaded() {
    void* const library = // stays as long as the process
        ::dlopen(QFile::encodeName(pathOfGui()).constData(), RTLD_LAZY | RTLD_LOCAL);
    void* const door = library ? ::dlsym(library, "tailpointGui") : nullptr;
    if (!door) {
        complainOf(QStringLiteral("can't be loaded (%1)").arg(QString::fromLocal8Bit(::dlerror())));
        return nullptr;
    }
    const Gui* part = reinterpret_cast<const Gui* (*)()>(door)();
    if (qstrcmp(part->version, TAILPOINT_VERSION) == 0)
        return part;
    complainOf(QStringLiteral("is of version %1, the program of %2")
                   .arg(QLatin1String(part->version), QLatin1String(TAILPOINT_VERSION)));
    return nullptr;
}

} // namespace

const Gui* gui() {
    static const Gui* const part = loaded();
    return part;
}

} // namespace tailpoint
