// What assistive technology is told: a session bus of our own with the accessibility bus on it, and a
// listener there, as a screen reader is one. Programs that are started while it lives speak to it.
#pragma once

#ifdef TAILPOINT_HAS_DBUS

#include <QDBusConnection>
#include <QDBusMessage>
#include <QObject>
#include <QProcess>
#include <QStringList>
#include <QTemporaryDir>

namespace whole {

class Hearing : public QObject {
    Q_OBJECT
public:
    Hearing();
    ~Hearing() override;
    /// Why nothing can be heard on this machine; empty where it can.
    const QString& whyNot() const { return m_whyNot; }
    /// "role: name" of what came up since, in order.
    const QStringList& heard();

private slots:
    void cameUp(const QDBusMessage& message);

private:
    bool startBus();
    bool listen();

    QTemporaryDir m_home;
    QProcess m_bus;
    QString m_whyNot;
    QStringList m_heard;
};

} // namespace whole

#endif
