// SPDX-License-Identifier: MIT
// One vector of the sheet, and one quantity of a vector, for assistive technology. All changes go through the
// canvas.
#pragma once

#include "ui/canvas/canvas.h"

#include <QAccessible>
#include <QPointer>
#include <array>

namespace tailpoint {

enum class Quantity { magnitude, direction };

class AccessibleVector : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    /// `index` among the canvas's children; the same child stands for another force when one is deleted.
    AccessibleVector(Canvas* canvas, int index) : m_canvas(canvas), m_index(index) {}
    ~AccessibleVector() override;

    bool isValid() const override;
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override;
    int childCount() const override;
    QAccessibleInterface* child(int index) const override;
    int indexOfChild(const QAccessibleInterface* child) const override;
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    QString text(QAccessible::Text what) const override;
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override;
    QAccessible::Role role() const override { return QAccessible::Grouping; }
    QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    QStringList actionNames() const override;
    void doAction(const QString& name) override;
    QStringList keyBindingsForAction(const QString& name) const override;
    QString localizedActionName(const QString& name) const override;
    static QString deleteAction();

    int vector() const;

private:
    QPointer<Canvas> m_canvas;
    int m_index;
    mutable std::array<QAccessible::Id, 2> m_ids{0, 0};
};

class AccessibleQuantity : public QAccessibleInterface,
                           public QAccessibleValueInterface,
                           public QAccessibleActionInterface {
public:
    AccessibleQuantity(Canvas* canvas, int index, Quantity quantity)
        : m_canvas(canvas), m_index(index), m_quantity(quantity) {}

    bool isValid() const override;
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override;
    int childCount() const override { return 0; }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    QString text(QAccessible::Text what) const override;
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override;
    QAccessible::Role role() const override { return QAccessible::SpinBox; }
    QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    QVariant currentValue() const override;
    void setCurrentValue(const QVariant& value) override;
    QVariant maximumValue() const override;
    QVariant minimumValue() const override;
    QVariant minimumStepSize() const override;

    QStringList actionNames() const override;
    void doAction(const QString& name) override;
    QStringList keyBindingsForAction(const QString&) const override { return {}; }
    QString localizedActionName(const QString& name) const override;
    QString localizedActionDescription(const QString& name) const override;
    static QString toFindAction(); ///< of a given quantity
    static QString givenAction();  ///< of one that is to be found

private:
    bool isMagnitude() const { return m_quantity == Quantity::magnitude; }
    bool given() const;
    int vector() const;

    QPointer<Canvas> m_canvas;
    int m_index;
    Quantity m_quantity;
};

} // namespace tailpoint
