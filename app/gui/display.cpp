// SPDX-License-Identifier: MIT
#include "app/gui/display.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <sys/mman.h>
#include <unistd.h>

namespace tailpoint {

InsteadOfAborting* InsteadOfAborting::s_standing = nullptr;

InsteadOfAborting::InsteadOfAborting(std::function<int()> instead) : m_instead(std::move(instead)) {
    s_standing = this;
    m_before = qInstallMessageHandler(hear);
    m_aside = ::memfd_create("remarks", MFD_CLOEXEC);
    m_standardError = ::dup(STDERR_FILENO);
    if (m_aside >= 0 && m_standardError >= 0)
        ::dup2(m_aside, STDERR_FILENO);
}

void InsteadOfAborting::giveBackStandardError() {
    std::fflush(stderr);
    if (m_standardError >= 0)
        ::dup2(m_standardError, STDERR_FILENO);
}

InsteadOfAborting::~InsteadOfAborting() {
    qInstallMessageHandler(m_before);
    s_standing = nullptr;
    giveBackStandardError();
    std::array<char, 4096> part{};
    ::lseek(m_aside, 0, SEEK_SET);
    for (ssize_t got = 0; (got = ::read(m_aside, part.data(), part.size())) > 0;)
        std::fwrite(part.data(), 1, static_cast<std::size_t>(got), stderr);
    for (const QString& remark : std::as_const(m_remarks))
        std::fprintf(stderr, "%s\n", remark.toLocal8Bit().constData());
    for (const int fd : {m_aside, m_standardError})
        if (fd >= 0)
            ::close(fd);
}

/// The application is half made then, so the process ends without taking it down.
void InsteadOfAborting::end() {
    giveBackStandardError();
    std::_Exit(m_instead());
}

void InsteadOfAborting::hear(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type == QtFatalMsg)
        s_standing->end();
    s_standing->m_remarks << qFormatLogMessage(type, context, message);
}

/// Source: Qt's documentation of QGuiApplication and QApplication, "Supported Command Line Options"; -name
/// and -visual are its xcb plugin's.
QStringList withoutToolkitOptions(const QStringList& words) {
    static const QStringList withValue = QStringLiteral("platform platformpluginpath platformtheme plugin "
                                                        "qwindowgeometry geometry qwindowicon icon "
                                                        "qwindowtitle title session display name visual "
                                                        "style stylesheet")
                                             .split(QLatin1Char(' '));
    static const QStringList alone =
        QStringLiteral("reverse nograb dograb sync widgetcount").split(QLatin1Char(' '));
    QStringList left;
    for (qsizetype i = 0; i < words.size(); ++i) {
        if (!words[i].startsWith(QLatin1Char('-')) || words[i] == QLatin1String("--")) {
            left << words[i];
            continue;
        }
        const QString bare = words[i].mid(words[i].startsWith(QLatin1String("--")) ? 2 : 1);
        const QString name = bare.section(QLatin1Char('='), 0, 0);
        if (withValue.contains(name))
            i += name == bare ? 1 : 0;
        else if (!alone.contains(bare) && name != QLatin1String("qmljsdebugger"))
            left << words[i];
    }
    return left;
}

} // namespace tailpoint
