// SPDX-License-Identifier: MIT
#ifdef TAILPOINT_HAS_DBUS

#include "tests/whole/window/hearing.h"

#include "tests/whole/window/wait.h"

#include <QCoreApplication>
#include <QDBusInterface>
#include <QDBusReply>

namespace whole {

namespace {

const QString kSession = QStringLiteral("hearing-session"), kSpeech = QStringLiteral("hearing-speech");

} // namespace

Hearing::Hearing() {
    if (!startBus())
        m_whyNot = QStringLiteral("no session bus: is dbus-daemon installed?");
    else if (!listen())
        m_whyNot = QStringLiteral("no accessibility bus: is at-spi2-core installed?");
}

Hearing::~Hearing() {
    QDBusConnection::disconnectFromBus(kSpeech);
    QDBusConnection::disconnectFromBus(kSession);
    qunsetenv("DBUS_SESSION_BUS_ADDRESS");
    qunsetenv("QT_LINUX_ACCESSIBILITY_ALWAYS_ON");
    m_bus.terminate();
    if (!m_bus.waitForFinished(2'000)) {
        m_bus.kill();
        m_bus.waitForFinished();
    }
}

bool Hearing::startBus() {
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("HOME"), m_home.path());
    environment.insert(QStringLiteral("XDG_RUNTIME_DIR"), m_home.path());
    m_bus.setProcessEnvironment(environment);
    m_bus.start(QStringLiteral("dbus-daemon"),
                {QStringLiteral("--session"), QStringLiteral("--nofork"), QStringLiteral("--nopidfile"),
                 QStringLiteral("--print-address=1")});
    if (!m_bus.waitForStarted() || !m_bus.waitForReadyRead(10'000))
        return false;
    const QByteArray address = m_bus.readLine().trimmed();
    qputenv("DBUS_SESSION_BUS_ADDRESS", address);
    qputenv("QT_LINUX_ACCESSIBILITY_ALWAYS_ON", "1");
    return QDBusConnection::connectToBus(QString::fromUtf8(address), kSession).isConnected();
}

bool Hearing::listen() {
    QDBusInterface launcher(QStringLiteral("org.a11y.Bus"), QStringLiteral("/org/a11y/bus"),
                            QStringLiteral("org.a11y.Bus"), QDBusConnection(kSession));
    const QDBusReply<QString> address = launcher.call(QStringLiteral("GetAddress"));
    if (!address.isValid())
        return false;
    QDBusConnection speech = QDBusConnection::connectToBus(address.value(), kSpeech);
    QDBusInterface registry(QStringLiteral("org.a11y.atspi.Registry"),
                            QStringLiteral("/org/a11y/atspi/registry"),
                            QStringLiteral("org.a11y.atspi.Registry"), speech);
    bool isHeard = true;
    for (const char* event : {"object:", "focus:"}) {
        const QDBusMessage registered = registry.call(QStringLiteral("RegisterEvent"), QLatin1String(event));
        isHeard = isHeard && registered.type() != QDBusMessage::ErrorMessage;
    }
    const QString object = QStringLiteral("org.a11y.atspi.Event.Object");
    return isHeard &&
           speech.connect({}, {}, object, QStringLiteral("StateChanged"), this,
                          SLOT(stateChanged(QDBusMessage))) &&
           speech.connect({}, {}, object, QStringLiteral("PropertyChange"), this,
                          SLOT(propertyChanged(QDBusMessage))) &&
           speech.connect({}, {}, object, QStringLiteral("TextChanged"), this,
                          SLOT(textChanged(QDBusMessage)));
}

namespace {

Node sourceOf(const QDBusMessage& message) {
    return {message.service(), message.path()};
}

QString told(const Node& node) {
    return node.role() + QStringLiteral(": ") + node.name();
}

/// "showing", "accessible-name", "insert".
bool isAbout(const QDBusMessage& message, const char* what) {
    return message.arguments().value(0).toString() == QLatin1String(what);
}

} // namespace

/// As a screen reader does: asks what it is that shows now, or has the keyboard.
void Hearing::stateChanged(const QDBusMessage& message) {
    if (message.arguments().value(1).toInt() != 1)
        return;
    if (isAbout(message, "showing"))
        m_heard << told(sourceOf(message));
    if (isAbout(message, "focused")) {
        m_focus = sourceOf(message);
        m_focused << m_focus->name();
    }
}

void Hearing::propertyChanged(const QDBusMessage& message) {
    if (isAbout(message, "accessible-name"))
        m_renamed << told(sourceOf(message));
}

void Hearing::textChanged(const QDBusMessage& message) {
    if (isAbout(message, "insert"))
        m_inserted << sourceOf(message).role() + QStringLiteral(": ") +
                          message.arguments().value(3).value<QDBusVariant>().variant().toString();
}

const QStringList& Hearing::heard() {
    QCoreApplication::processEvents();
    return m_heard;
}

const QStringList& Hearing::renamed() {
    QCoreApplication::processEvents();
    return m_renamed;
}

const QStringList& Hearing::inserted() {
    QCoreApplication::processEvents();
    return m_inserted;
}

const QStringList& Hearing::focused() {
    QCoreApplication::processEvents();
    return m_focused;
}

std::optional<Node> Hearing::focus() {
    QCoreApplication::processEvents();
    return m_focus;
}

void Hearing::forget() {
    QCoreApplication::processEvents();
    for (QStringList* list : {&m_heard, &m_renamed, &m_inserted, &m_focused})
        list->clear();
}

std::optional<Node> Hearing::program() {
    std::optional<Node> found;
    eventually([&] {
        const Node root(QStringLiteral("org.a11y.atspi.Registry"),
                        QStringLiteral("/org/a11y/atspi/accessible/root"));
        for (const Node& program : root.children())
            if (!program.children().empty())
                found = program;
        return found.has_value();
    });
    return found;
}

QDBusConnection Hearing::bus() {
    return QDBusConnection(kSpeech);
}

} // namespace whole

#endif
