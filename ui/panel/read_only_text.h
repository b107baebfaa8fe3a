// SPDX-License-Identifier: MIT
// A text that assistive technology reads, letter by letter too, and nobody types into.
#pragma once

#include <QAccessibleWidget>
#include <functional>

namespace tailpoint {

class ReadOnlyText : public QAccessibleTextInterface {
public:
    virtual QString readText() const = 0;

    void selection(int, int* start, int* end) const override { *start = *end = 0; }
    int selectionCount() const override { return 0; }
    void addSelection(int, int) override {}
    void removeSelection(int) override {}
    void setSelection(int, int, int) override {}
    int cursorPosition() const override { return 0; }
    void setCursorPosition(int) override {}
    QString text(int start, int end) const override;
    int characterCount() const override { return static_cast<int>(readText().size()); }
    QRect characterRect(int) const override { return {}; }
    int offsetAtPoint(const QPoint&) const override { return -1; }
    void scrollToSubstring(int, int) override {}
    QString attributes(int offset, int* start, int* end) const override;
};

/// A widget that is read as a text of its own beside its name.
class AccessibleReading : public QAccessibleWidget, public ReadOnlyText {
public:
    AccessibleReading(QWidget* widget, QAccessible::Role role, std::function<QString()> text)
        : QAccessibleWidget(widget, role), m_text(std::move(text)) {}

    QString readText() const override { return m_text(); }
    QString text(QAccessible::Text what) const override { return QAccessibleWidget::text(what); }
    using ReadOnlyText::text;
    QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

private:
    std::function<QString()> m_text;
};

/// Tells that a widget with such an interface has another text: the new one is inserted in place of the old
/// one. Nothing where nobody listens.
void tellNewText(QWidget* widget, const QString& before, const QString& now);

} // namespace tailpoint
