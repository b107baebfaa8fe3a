// SPDX-License-Identifier: MIT
#ifdef TAILPOINT_HAS_DBUS

#include "tests/whole/window/assisted.h"

#include "tests/whole/window/hearing.h"

#include <QDBusArgument>
#include <QDBusConnection>

namespace whole {

namespace {

constexpr const char* kAccessible = "org.a11y.atspi.Accessible";
constexpr int kCallMs = 5'000; // milliseconds

Node nodeFrom(const QDBusArgument& reference) {
    QString service;
    QDBusObjectPath path;
    reference.beginStructure();
    reference >> service >> path;
    reference.endStructure();
    return {service, path.path()};
}

} // namespace

QDBusMessage Node::call(const char* interface, const char* method, const QVariantList& arguments) const {
    QDBusMessage message =
        QDBusMessage::createMethodCall(m_service, m_path, QLatin1String(interface), QLatin1String(method));
    message.setArguments(arguments);
    QDBusMessage answer = Hearing::bus().call(message, QDBus::Block, kCallMs);
    if (answer.type() != QDBusMessage::ReplyMessage)
        answer.setArguments({}); // an error's words are no answer
    return answer;
}

QVariant Node::property(const char* interface, const char* name) const {
    const QDBusMessage answer =
        call("org.freedesktop.DBus.Properties", "Get", {QLatin1String(interface), QLatin1String(name)});
    return answer.arguments().isEmpty() ? QVariant()
                                        : answer.arguments().front().value<QDBusVariant>().variant();
}

QString Node::name() const {
    return property(kAccessible, "Name").toString();
}

QString Node::description() const {
    return property(kAccessible, "Description").toString();
}

QString Node::role() const {
    return call(kAccessible, "GetRoleName").arguments().value(0).toString();
}

QString Node::words() const {
    return call("org.a11y.atspi.Text", "GetText", {0, -1}).arguments().value(0).toString();
}

QRect Node::place() const {
    const QVariantList answer =
        call("org.a11y.atspi.Component", "GetExtents", {QVariant::fromValue<uint>(0)}).arguments();
    if (answer.isEmpty() || !answer.front().canConvert<QDBusArgument>())
        return {};
    int x = 0, y = 0, width = 0, height = 0;
    const auto extents = answer.front().value<QDBusArgument>();
    extents.beginStructure();
    extents >> x >> y >> width >> height;
    extents.endStructure();
    return {x, y, width, height};
}

std::optional<double> Node::value() const {
    const QVariant value = property("org.a11y.atspi.Value", "CurrentValue");
    return value.isValid() ? std::optional(value.toDouble()) : std::nullopt;
}

bool Node::setValue(double value) const {
    const QDBusMessage answer = call("org.freedesktop.DBus.Properties", "Set",
                                     {QStringLiteral("org.a11y.atspi.Value"), QStringLiteral("CurrentValue"),
                                      QVariant::fromValue(QDBusVariant(value))});
    return answer.type() == QDBusMessage::ReplyMessage;
}

bool Node::hasState(int state) const {
    const QVariantList answer = call(kAccessible, "GetState").arguments();
    QList<uint> words;
    if (!answer.isEmpty())
        answer.front().value<QDBusArgument>() >> words;
    return words.size() > state / 32 && ((words[state / 32] >> (state % 32)) & 1U) != 0;
}

std::vector<Node> Node::children() const {
    std::vector<Node> all;
    const QVariantList answer = call(kAccessible, "GetChildren").arguments();
    if (answer.isEmpty())
        return all;
    const auto list = answer.front().value<QDBusArgument>();
    list.beginArray();
    while (!list.atEnd())
        all.push_back(nodeFrom(list));
    list.endArray();
    return all;
}

QStringList Node::actions() const {
    QStringList names;
    const int count = property("org.a11y.atspi.Action", "NActions").toInt();
    for (int i = 0; i < count; ++i)
        names << call("org.a11y.atspi.Action", "GetName", {i}).arguments().value(0).toString();
    return names;
}

bool Node::act(const QString& action) const {
    const auto index = static_cast<int>(actions().indexOf(action));
    return index >= 0 && call("org.a11y.atspi.Action", "DoAction", {index}).arguments().value(0).toBool();
}

bool Node::takeFocus() const {
    return act(QStringLiteral("SetFocus")); // Qt's bridge answers GrabFocus with no
}

std::optional<Node> Node::find(const std::function<bool(const Node&)>& isIt) const {
    for (const Node& child : children()) {
        if (isIt(child))
            return child;
        if (const auto below = child.find(isIt))
            return below;
    }
    return std::nullopt;
}

std::optional<Node> Node::find(const QString& role, const QString& beginning) const {
    return find([&](const Node& node) { return node.name().startsWith(beginning) && node.role() == role; });
}

void Node::each(const std::function<void(const Node&)>& tell) const {
    for (const Node& child : children()) {
        tell(child);
        child.each(tell);
    }
}

} // namespace whole

#endif
