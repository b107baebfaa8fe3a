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
    const QDBusMessage registered =
        registry.call(QStringLiteral("RegisterEvent"), QStringLiteral("object:state-changed:showing"));
    return registered.type() != QDBusMessage::ErrorMessage &&
           speech.connect(QString(), QString(), QStringLiteral("org.a11y.atspi.Event.Object"),
                          QStringLiteral("StateChanged"), this, SLOT(cameUp(QDBusMessage)));
}

/// As a screen reader does: asks what it is that shows now.
void Hearing::cameUp(const QDBusMessage& message) {
    const QVariantList arguments = message.arguments();
    if (arguments.size() < 2 || arguments[0].toString() != QStringLiteral("showing") ||
        arguments[1].toInt() != 1)
        return;
    const QDBusConnection speech(kSpeech);
    QDBusInterface object(message.service(), message.path(), QStringLiteral("org.a11y.atspi.Accessible"),
                          speech);
    const QDBusReply<QString> role = object.call(QStringLiteral("GetRoleName"));
    m_heard << role.value() + QStringLiteral(": ") + object.property("Name").toString();
}

const QStringList& Hearing::heard() {
    QCoreApplication::processEvents();
    return m_heard;
}

} // namespace whole

#endif
