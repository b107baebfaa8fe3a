#include "app/display.h"

#include <cstdio>
#include <cstdlib>

namespace tailpoint {

InsteadOfAborting* InsteadOfAborting::s_standing = nullptr;

InsteadOfAborting::InsteadOfAborting(std::function<int()> instead) : m_instead(std::move(instead)) {
    s_standing = this;
    m_before = qInstallMessageHandler(hear);
}

InsteadOfAborting::~InsteadOfAborting() {
    qInstallMessageHandler(m_before);
    s_standing = nullptr;
    for (const QString& remark : std::as_const(m_remarks))
        std::fprintf(stderr, "%s\n", remark.toLocal8Bit().constData());
}

/// The application is half made then, so the process ends without taking it down.
void InsteadOfAborting::hear(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type == QtFatalMsg)
        std::_Exit(s_standing->m_instead());
    s_standing->m_remarks << qFormatLogMessage(type, context, message);
}

} // namespace tailpoint
