// SPDX-License-Identifier: MIT
// The sheet for assistive technology: the canvas holds the vectors, each a group of two values with actions.
//
//   canvas "Sheet"  -  "Force P, 340 N at 25.0°"  -  "Magnitude of P"  (value, increase, decrease)
//                                                 -  "Direction of P"  (value, increase, decrease)
#pragma once

#include "ui/canvas/canvas.h"

#include <QAccessibleWidget>
#include <QPointer>
#include <vector>

namespace tailpoint {

/// Once, before the first canvas is asked for its interface.
void installAccessibleCanvas();

/// On a stage nothing can be read but what is seen: the children are the vectors that are drawn.
/// Otherwise children are the forces in the sketch's order, then the sum, then the canvas's child widgets.
class AccessibleCanvas : public QAccessibleWidget {
public:
    explicit AccessibleCanvas(Canvas* canvas);
    ~AccessibleCanvas() override;

    int childCount() const override;
    QAccessibleInterface* child(int index) const override;
    int indexOfChild(const QAccessibleInterface* child) const override;
    QAccessibleInterface* childAt(int x, int y) const override;
    QAccessibleInterface* focusChild() const override;
    QString text(QAccessible::Text what) const override;

    void tellNew(); ///< names that are other than when they were last told, and how many there are

private:
    int vectors() const;
    Canvas* canvas() const;
    mutable std::vector<QAccessible::Id> m_ids; ///< of those asked for so far, by index
    mutable QStringList m_names;                ///< of these, as last told
    int m_count = -1;                           ///< of vectors, when last told
};

/// Tells assistive technology at once what is new. Nothing where nobody listens.
void tellNewNames(Canvas& canvas);

/// The vector that a child of the canvas stands for, and back.
int vectorOfChild(const Canvas& canvas, int index);
int childOfVector(const Canvas& canvas, int vector);

} // namespace tailpoint
