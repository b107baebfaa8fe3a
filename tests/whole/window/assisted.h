// SPDX-License-Identifier: MIT
// The program's tree as a screen reader walks it: objects on the accessibility bus, asked one by one.
#pragma once

#ifdef TAILPOINT_HAS_DBUS

#include <QDBusMessage>
#include <QRect>
#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <vector>

namespace whole {

/// One object of a program. Copies speak of the same one.
class Node {
public:
    Node(QString service, QString path) : m_service(std::move(service)), m_path(std::move(path)) {}

    QString name() const;
    QString role() const;
    QString description() const;
    QString words() const; ///< of its text interface; empty where it has none
    QRect place() const;   ///< on the screen
    std::optional<double> value() const;
    bool hasState(int state) const; ///< its number in AT-SPI, as below
    std::vector<Node> children() const;
    QStringList actions() const; ///< as the user is told them
    bool act(const QString& action) const;
    bool setValue(double value) const;
    bool takeFocus() const;

    /// The first below it, in the order of the tree.
    std::optional<Node> find(const std::function<bool(const Node&)>& isIt) const;
    std::optional<Node> find(const QString& role, const QString& beginning) const;
    void each(const std::function<void(const Node&)>& tell) const;

    bool operator==(const Node&) const = default;

private:
    QDBusMessage call(const char* interface, const char* method, const QVariantList& arguments = {}) const;
    QVariant property(const char* interface, const char* name) const;

    QString m_service, m_path;
};

/// AtspiStateType, from AT-SPI's atspi-constants.h.
inline constexpr int kExpanded = 10, kFocusable = 11, kFocused = 12, kShowing = 25;

} // namespace whole

#endif
