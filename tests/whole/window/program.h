// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QJsonObject>
#include <QPointF>
#include <QProcess>
#include <QProcessEnvironment>
#include <QRect>
#include <QStringList>
#include <QTemporaryDir>
#include <chrono>

namespace whole {

/// The built program with a home of its own, so that tests neither see nor leave settings.
class Program {
public:
    /// `home`: of a program before it, which must outlive this one; empty: a new one.
    explicit Program(const QStringList& arguments = {}, const QString& home = {});
    ~Program();

    /// Its visible main window; 0 when none appeared in time.
    qlonglong window() const { return m_window; }
    QString title() const;
    QString home() const { return m_homePath; } ///< its home folder, and where it was started
    QRect frame() const;                        ///< of the main window on the screen
    /// The sheet's part of the window: without bars, panel and hint line, on the safe side.
    QRect sheet() const;
    /// Whether a dialog of this title is to be seen and has the keys.
    bool asks(const QString& title) const;
    bool shows(const QString& title) const;
    /// Gives the main window the keys, as a window manager does once a dialog has gone.
    bool turnTo() const;
    bool isRunning() { return m_process.state() == QProcess::Running; }
    /// What it wrote on standard error so far.
    QByteArray complaints() { return m_process.readAllStandardError(); }
    int waitForEnd(); ///< its exit status, or -1
    void signal(int number);
    /// As the power cut does: nothing is asked, nothing is tidied up.
    void kill();

private:
    QTemporaryDir m_home;
    QString m_homePath;
    QProcess m_process;
    qlonglong m_window = 0;
};

/// The hand of a person, by xdotool. Screen coordinates. False: xdotool failed.
bool moveTo(QPointF place);
bool press();
bool release();
bool click(QPointF place);
/// Presses, moves in small steps, releases: as a hand does.
bool drag(QPointF from, QPointF to, const QString& heldKey = {});
bool key(const QString& name);                                     ///< "ctrl+s", "Tab", "Up"
bool holdKey(const QString& name, std::chrono::milliseconds time); ///< down, so long, and up again
bool type(const QString& text);

/// Presses, moves and keeps the button down.
bool dragAndHold(QPointF from, QPointF to);

/// Title of the window that has the keys.
QString focusedTitle();

/// An environment in which all that a program keeps is in this folder.
QProcessEnvironment homeIn(const QString& folder);
/// Whether the window `name` (a class of X) gets the keys.
bool turnToClass(const QString& name);

QJsonObject readJson(const QString& path);
/// A copy of a sample in `folder`; its path.
QString copyOfSample(const QString& name, const QTemporaryDir& folder);

} // namespace whole
