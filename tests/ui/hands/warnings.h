// SPDX-License-Identifier: MIT
// What Qt complains of while this is there.
#pragma once

#include <QGuiApplication>
#include <QStringList>

namespace tailpoint::test {

class Warnings {
public:
    Warnings() {
        said().clear();
        m_before = qInstallMessageHandler(hear);
    }
    ~Warnings() { qInstallMessageHandler(m_before); }
    Warnings(const Warnings&) = delete;
    Warnings& operator=(const Warnings&) = delete;

    /// Those since the last call.
    QStringList take() { return std::exchange(said(), {}); }

private:
    static QStringList& said() {
        static QStringList lines;
        return lines;
    }
    /// The offscreen platform says so of raising a window and the like, which a screen's platform does.
    static bool isOfPlatform(const QString& line) {
        return QGuiApplication::platformName() == QLatin1String("offscreen") &&
               line.startsWith(QLatin1String("This plugin does not support "));
    }
    static void hear(QtMsgType type, const QMessageLogContext& context, const QString& line) {
        if (type == QtDebugMsg || type == QtInfoMsg || isOfPlatform(line))
            return;
        said() << QLatin1String(context.category) + QStringLiteral(": ") + line;
    }
    QtMessageHandler m_before;
};

} // namespace tailpoint::test
