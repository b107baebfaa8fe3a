// SPDX-License-Identifier: MIT
// What assistive technology is told: a session bus of our own with the accessibility bus on it, and a
// listener there, as a screen reader is one. Programs that are started while it lives speak to it.
#pragma once

#ifdef TAILPOINT_HAS_DBUS

#include "tests/whole/window/assisted.h"

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
    const QStringList& renamed();  ///< "role: name" of what has another name since, as it then was
    const QStringList& inserted(); ///< "role: text" of what was inserted into a text since
    const QStringList& focused();  ///< the name of what had the keyboard since
    std::optional<Node> focus();   ///< what has it now
    void forget();                 ///< what was heard so far

    std::optional<Node> program(); ///< the one that speaks here
    static QDBusConnection bus();

private slots:
    void stateChanged(const QDBusMessage& message);
    void propertyChanged(const QDBusMessage& message);
    void textChanged(const QDBusMessage& message);

private:
    bool startBus();
    bool listen();

    QTemporaryDir m_home;
    QProcess m_bus;
    QString m_whyNot;
    QStringList m_heard, m_renamed, m_inserted, m_focused;
    std::optional<Node> m_focus;
};

} // namespace whole

#endif
