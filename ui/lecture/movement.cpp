// SPDX-License-Identifier: MIT
#include "ui/lecture/movement.h"

#include <QApplication>
#include <QProcess>
#include <QSettings>
#include <QStandardPaths>
#include <QStyle>

namespace tailpoint {

namespace {

constexpr int kPatience = 400; ///< milliseconds for an answer that usually takes 10

bool isDesktop(const char* name) {
    return qEnvironmentVariable("XDG_CURRENT_DESKTOP").split(u':').contains(QLatin1String(name));
}

QString inConfig(const char* path) {
    return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) + u'/' +
           QLatin1String(path);
}

/// GNOME keeps it in a database that only its own tools read.
QString askGnome() {
    QProcess ask;
    ask.start(QStringLiteral("gsettings"),
              {QStringLiteral("get"), QStringLiteral("org.gnome.desktop.interface"),
               QStringLiteral("enable-animations")});
    if (ask.waitForFinished(kPatience))
        return QString::fromUtf8(ask.readAllStandardOutput());
    ask.kill();
    ask.waitForFinished(kPatience);
    return {};
}

} // namespace

bool kdeMoves(const QString& kdeglobals) {
    const QSettings settings(kdeglobals, QSettings::IniFormat);
    return settings.value(QStringLiteral("KDE/AnimationDurationFactor"), 1.0).toDouble() > 0;
}

bool gtkMoves(const QString& settings) {
    const QSettings file(settings, QSettings::IniFormat);
    return file.value(QStringLiteral("Settings/gtk-enable-animations"), true).toBool();
}

bool gnomeMoves(const QString& answer) {
    return answer.trimmed() != QStringLiteral("false");
}

bool desktopMoves() {
    if (QApplication::style()->styleHint(QStyle::SH_Widget_Animation_Duration) <= 0)
        return false;
    if (isDesktop("KDE"))
        return kdeMoves(inConfig("kdeglobals"));
    if (isDesktop("GNOME") || isDesktop("Unity") || isDesktop("Budgie"))
        return gnomeMoves(askGnome());
    return gtkMoves(inConfig("gtk-3.0/settings.ini"));
}

} // namespace tailpoint
