// SPDX-License-Identifier: MIT
#include "tests/whole/window/program.h"

#include "tests/whole/window/wait.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QProcessEnvironment>
#include <QRegularExpression>
#include <csignal>
#include <thread>

namespace whole {

namespace {

/// Output of an xdotool call; a null string when it failed.
QString xdotool(const QStringList& arguments) {
    QProcess tool;
    tool.start(QStringLiteral("xdotool"), arguments);
    if (!tool.waitForFinished(10'000) || tool.exitStatus() != QProcess::NormalExit || tool.exitCode() != 0)
        return {};
    const QString output = QString::fromUtf8(tool.readAllStandardOutput().trimmed());
    return output.isNull() ? QStringLiteral("") : output;
}

bool succeeds(const QStringList& arguments) {
    return !xdotool(arguments).isNull();
}

QStringList placeArguments(QPointF place) {
    return {QString::number(qRound(place.x())), QString::number(qRound(place.y()))};
}

/// A function key by its code on every keyboard of X ("F1" to "F10" are 67 to 76). Asked by name, xdotool
/// also presses Alt where the keymap's key type has a level for it, which no hand does.
QString codeOrName(const QString& key) {
    static const QRegularExpression function(QStringLiteral("^F([1-9]|10)$"));
    const auto match = function.match(key);
    return match.hasMatch() ? QString::number(66 + match.captured(1).toInt()) : key;
}

/// Of the windows of a process the one with a title: a toolkit keeps hidden helpers too.
qlonglong visibleWindowOf(qint64 pid) {
    const QString found = xdotool({QStringLiteral("search"), QStringLiteral("--onlyvisible"),
                                   QStringLiteral("--all"), QStringLiteral("--pid"), QString::number(pid),
                                   QStringLiteral("--name"), QStringLiteral(".+")});
    return found.isEmpty() ? 0 : found.section(u'\n', 0, 0).toLongLong();
}

} // namespace

QProcessEnvironment homeIn(const QString& folder) {
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("HOME"), folder);
    const QHash<QString, QString> folders{{QStringLiteral("XDG_CONFIG_HOME"), QStringLiteral("config")},
                                          {QStringLiteral("XDG_DATA_HOME"), QStringLiteral("data")},
                                          {QStringLiteral("XDG_STATE_HOME"), QStringLiteral("state")},
                                          {QStringLiteral("XDG_CACHE_HOME"), QStringLiteral("cache")},
                                          {QStringLiteral("XDG_RUNTIME_DIR"), QStringLiteral("run")}};
    for (auto entry = folders.begin(); entry != folders.end(); ++entry) {
        const QString path = folder + u'/' + entry.value();
        QDir().mkpath(path);
        QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        environment.insert(entry.key(), path);
    }
    environment.insert(QStringLiteral("CUPS_SERVER"),
                       folder + QStringLiteral("/none")); // no printer of this machine
    environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("xcb"));
    environment.remove(QStringLiteral("WAYLAND_DISPLAY"));
    return environment;
}

bool turnToClass(const QString& name) {
    const QString found =
        xdotool({QStringLiteral("search"), QStringLiteral("--onlyvisible"), QStringLiteral("--class"), name});
    return !found.isEmpty() &&
           succeeds({QStringLiteral("windowfocus"), QStringLiteral("--sync"), found.section(u'\n', 0, 0)});
}

Program::Program(const QStringList& arguments, const QString& home)
    : m_homePath(home.isEmpty() ? m_home.path() : home) {
    m_process.setProcessEnvironment(homeIn(m_homePath));
    m_process.setWorkingDirectory(m_homePath);
    m_process.start(QStringLiteral(TAILPOINT_BINARY), arguments);
    if (!m_process.waitForStarted())
        return;
    eventually([this] {
        m_process.waitForReadyRead(0);
        m_window = visibleWindowOf(m_process.processId());
        return m_window != 0 || m_process.state() != QProcess::Running;
    });
    if (m_window != 0) // without a window manager nobody else gives it the keys
        turnTo();
}

bool Program::turnTo() const {
    return succeeds({QStringLiteral("windowfocus"), QStringLiteral("--sync"), QString::number(m_window)});
}

Program::~Program() {
    if (m_process.state() == QProcess::NotRunning)
        return;
    m_process.terminate();
    if (!m_process.waitForFinished(2'000)) {
        m_process.kill();
        m_process.waitForFinished();
    }
}

QString Program::title() const {
    return xdotool({QStringLiteral("getwindowname"), QString::number(m_window)});
}

QRect Program::frame() const {
    const QString answer =
        xdotool({QStringLiteral("getwindowgeometry"), QStringLiteral("--shell"), QString::number(m_window)});
    QHash<QString, int> values;
    for (const QString& line : answer.split(u'\n'))
        values[line.section(u'=', 0, 0)] = line.section(u'=', 1).toInt();
    return {values[QStringLiteral("X")], values[QStringLiteral("Y")], values[QStringLiteral("WIDTH")],
            values[QStringLiteral("HEIGHT")]};
}

QRect Program::sheet() const {
    constexpr int kAbove = 110, kPanel = 440, kBelow = 40;
    return frame().adjusted(4, kAbove, -kPanel, -kBelow);
}

bool Program::shows(const QString& title) const {
    return !xdotool({QStringLiteral("search"), QStringLiteral("--onlyvisible"), QStringLiteral("--name"),
                     u'^' + title + u'$'})
                .isEmpty();
}

bool Program::asks(const QString& title) const {
    return shows(title) &&
           xdotool({QStringLiteral("getwindowfocus"), QStringLiteral("getwindowname")}) == title;
}

void Program::kill() {
    m_process.kill(); // SIGKILL
    m_process.waitForFinished();
}

void Program::signal(int number) {
    ::kill(static_cast<pid_t>(m_process.processId()), number);
}

int Program::waitForEnd() {
    return m_process.waitForFinished(20'000) ? m_process.exitCode() : -1;
}

bool moveTo(QPointF place) {
    return succeeds(QStringList{QStringLiteral("mousemove")} + placeArguments(place));
}

bool press() {
    return succeeds({QStringLiteral("mousedown"), QStringLiteral("1")});
}

bool release() {
    return succeeds({QStringLiteral("mouseup"), QStringLiteral("1")});
}

bool click(QPointF place) {
    return moveTo(place) && press() && release();
}

bool dragAndHold(QPointF from, QPointF to) {
    bool done = moveTo(from) && press();
    constexpr int kSteps = 12;
    for (int i = 1; i <= kSteps; ++i)
        done = done && moveTo(from + (to - from) * (static_cast<double>(i) / kSteps));
    return done;
}

bool drag(QPointF from, QPointF to, const QString& heldKey) {
    const auto hold = [&](const QString& how) { return heldKey.isEmpty() || succeeds({how, heldKey}); };
    bool done = hold(QStringLiteral("keydown")) && dragAndHold(from, to);
    done = release() && done;
    return hold(QStringLiteral("keyup")) && done;
}

bool key(const QString& name) {
    return succeeds({QStringLiteral("key"), codeOrName(name)});
}

bool holdKey(const QString& name, std::chrono::milliseconds time) {
    const bool down = succeeds({QStringLiteral("keydown"), name});
    std::this_thread::sleep_for(time); // as long as the hand does
    return succeeds({QStringLiteral("keyup"), name}) && down;
}

bool type(const QString& text) {
    return succeeds({QStringLiteral("type"), QStringLiteral("--delay"), QStringLiteral("20"), text});
}

QString focusedTitle() {
    return xdotool({QStringLiteral("getwindowfocus"), QStringLiteral("getwindowname")});
}

QJsonObject readJson(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QJsonDocument::fromJson(file.readAll()).object() : QJsonObject();
}

QString copyOfSample(const QString& name, const QTemporaryDir& folder) {
    const QString copy = folder.filePath(name);
    QFile::copy(QStringLiteral(TAILPOINT_SAMPLES) + u'/' + name, copy);
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    return copy;
}

} // namespace whole
