// SPDX-License-Identifier: MIT
#include "ui/panel/solution_reading.h"

#include "ui/panel/read_only_text.h"
#include "ui/panel/solution_body.h"
#include "ui/panel/solution_step.h"

#include <QPointer>

namespace tailpoint {

namespace {

/// One paragraph of a body.
class AccessibleLine : public QAccessibleInterface, public QAccessibleActionInterface, public ReadOnlyText {
public:
    AccessibleLine(SolutionBody* body, int line) : m_body(body), m_line(line) {}

    bool isValid() const override { return m_body && m_line < m_body->lineCount(); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(m_body); }
    int childCount() const override { return 0; }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    void setText(QAccessible::Text, const QString&) override {}
    QAccessible::Role role() const override { return QAccessible::Paragraph; }

    QString readText() const override { return m_body ? m_body->lineText(m_line) : QString(); }
    using ReadOnlyText::text;
    QString text(QAccessible::Text what) const override {
        return what == QAccessible::Name ? readText() : QString();
    }
    QRect rect() const override {
        return isValid() ? QRect(m_body->mapToGlobal(m_body->lineRect(m_line).topLeft()),
                                 m_body->lineRect(m_line).size())
                         : QRect();
    }
    QAccessible::State state() const override {
        QAccessible::State state;
        state.invalid = !isValid();
        state.readOnly = true;
        state.focusable = isValid();
        state.focused = isValid() && m_body->hasFocus() && m_body->currentLine() == m_line;
        state.invisible = isValid() && !m_body->isVisible();
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override {
        if (type == QAccessible::TextInterface)
            return static_cast<QAccessibleTextInterface*>(this);
        if (type == QAccessible::ActionInterface)
            return static_cast<QAccessibleActionInterface*>(this);
        return nullptr;
    }
    QStringList actionNames() const override { return {setFocusAction()}; }
    void doAction(const QString& name) override {
        if (name == setFocusAction() && isValid())
            m_body->enter(m_line);
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    QPointer<SolutionBody> m_body;
    int m_line;
};

class AccessibleBody : public QAccessibleWidget {
public:
    explicit AccessibleBody(SolutionBody* body) : QAccessibleWidget(body, QAccessible::Grouping) {}
    ~AccessibleBody() override {
        for (const Told& line : m_lines)
            QAccessible::deleteAccessibleInterface(line.id);
    }

    int childCount() const override { return body()->lineCount(); }
    QAccessibleInterface* child(int index) const override {
        if (index < 0 || index >= childCount())
            return nullptr;
        while (m_lines.size() <= static_cast<std::size_t>(index)) {
            const auto line = static_cast<int>(m_lines.size());
            m_lines.push_back({QAccessible::registerAccessibleInterface(new AccessibleLine(body(), line)),
                               body()->lineText(line)});
        }
        return QAccessible::accessibleInterface(m_lines[static_cast<std::size_t>(index)].id);
    }
    int indexOfChild(const QAccessibleInterface* child) const override {
        for (std::size_t i = 0; i < m_lines.size(); ++i)
            if (QAccessible::accessibleInterface(m_lines[i].id) == child)
                return static_cast<int>(i);
        return -1;
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        for (int i = 0; i < childCount(); ++i)
            if (child(i)->rect().contains(x, y))
                return child(i);
        return nullptr;
    }
    QAccessibleInterface* focusChild() const override {
        return body()->hasFocus() ? child(body()->currentLine()) : nullptr;
    }

    void tellNew() {
        const int now = childCount();
        if (now != std::exchange(m_count, now)) {
            QAccessibleEvent event(body(), QAccessible::ObjectReorder);
            QAccessible::updateAccessibility(&event);
        }
        for (std::size_t i = 0; i < m_lines.size() && static_cast<int>(i) < now; ++i) {
            const QString text = body()->lineText(static_cast<int>(i));
            if (std::exchange(m_lines[i].text, text) == text)
                continue;
            QAccessibleEvent event(QAccessible::accessibleInterface(m_lines[i].id), QAccessible::NameChanged);
            QAccessible::updateAccessibility(&event);
        }
    }

private:
    struct Told {
        QAccessible::Id id;
        QString text; ///< as it was last told
    };
    SolutionBody* body() const { return static_cast<SolutionBody*>(widget()); }
    mutable std::vector<Told> m_lines; ///< those asked for so far, in their order
    int m_count = 0;
};

AccessibleBody* readingOf(SolutionBody& body) {
    return QAccessible::isActive()
               ? static_cast<AccessibleBody*>(QAccessible::queryAccessibleInterface(&body))
               : nullptr;
}

QAccessibleInterface* makeReading(const QString& className, QObject* object) {
    if (className == QLatin1String(SolutionBody::staticMetaObject.className()))
        return new AccessibleBody(static_cast<SolutionBody*>(object));
    if (className == QLatin1String(SolutionStep::staticMetaObject.className())) {
        auto* step = static_cast<SolutionStep*>(object);
        return new AccessibleReading(step, QAccessible::Grouping, [step] { return step->spokenText(); });
    }
    return nullptr;
}

} // namespace

void installAccessibleSolution() {
    static const bool isInstalled = (QAccessible::installFactory(makeReading), true);
    Q_UNUSED(isInstalled);
}

void tellFocusedLine(SolutionBody& body) {
    AccessibleBody* reading = body.hasFocus() ? readingOf(body) : nullptr;
    if (QAccessibleInterface* line = reading ? reading->child(body.currentLine()) : nullptr) {
        QAccessibleEvent event(line, QAccessible::Focus);
        QAccessible::updateAccessibility(&event);
    }
}

void tellNewLines(SolutionBody& body) {
    if (AccessibleBody* reading = readingOf(body))
        reading->tellNew();
}

} // namespace tailpoint
