// SPDX-License-Identifier: MIT
// Things move where the desktop lets them, unless the person chose otherwise.
#include "ui/lecture/movement.h"

#include <QApplication>
#include <QFile>
#include <QProxyStyle>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

/// As styles of a desktop do whose animations are off.
class StillStyle : public QProxyStyle {
public:
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* more) const override {
        return hint == SH_Widget_Animation_Duration ? 0 : QProxyStyle::styleHint(hint, option, widget, more);
    }
};

QString fileWith(const QTemporaryDir& folder, const char* text) {
    const QString path = folder.filePath(QStringLiteral("settings"));
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return path;
}

/// A desktop that says nothing, for the time of a test.
class NoDesktop {
public:
    NoDesktop() {
        qputenv("XDG_CURRENT_DESKTOP", "");
        qputenv("XDG_CONFIG_HOME", m_folder.path().toUtf8());
    }
    ~NoDesktop() {
        qputenv("XDG_CURRENT_DESKTOP", m_desktop);
        qputenv("XDG_CONFIG_HOME", m_config);
    }

private:
    QTemporaryDir m_folder;
    QByteArray m_desktop = qgetenv("XDG_CURRENT_DESKTOP"), m_config = qgetenv("XDG_CONFIG_HOME");
};

TEST(LectureMovement, AStyleWithoutAnimationsMeansStill) {
    const NoDesktop none;
    const QString before = QApplication::style()->name();
    EXPECT_TRUE(desktopMoves());
    QApplication::setStyle(new StillStyle);
    EXPECT_FALSE(desktopMoves());
    QApplication::setStyle(before);
    EXPECT_TRUE(desktopMoves());
}

TEST(LectureMovement, TheDesktopsOwnSettingsAreRead) {
    const QTemporaryDir folder;
    EXPECT_FALSE(kdeMoves(fileWith(folder, "[KDE]\nAnimationDurationFactor=0\n")));
    EXPECT_TRUE(kdeMoves(fileWith(folder, "[KDE]\nAnimationDurationFactor=0.5\n")));
    EXPECT_TRUE(kdeMoves(fileWith(folder, "")));
    EXPECT_FALSE(gtkMoves(fileWith(folder, "[Settings]\ngtk-enable-animations=0\n")));
    EXPECT_FALSE(gtkMoves(fileWith(folder, "[Settings]\ngtk-enable-animations=false\n")));
    EXPECT_TRUE(gtkMoves(fileWith(folder, "[Settings]\ngtk-enable-animations=1\n")));
    EXPECT_TRUE(gtkMoves(folder.filePath(QStringLiteral("none"))));
    EXPECT_FALSE(gnomeMoves(QStringLiteral("false\n")));
    EXPECT_TRUE(gnomeMoves(QStringLiteral("true\n")));
    EXPECT_TRUE(gnomeMoves(QString()));
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
