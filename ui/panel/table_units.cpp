// SPDX-License-Identifier: MIT
// A unit in a cell is pressed to choose another for the sheet.
#include "ui/panel/panel_table.h"
#include "ui/style/symbols.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

namespace tailpoint {

namespace {

constexpr int kSide = 24, kAir = 3; // logical pixels; WCAG 2.2, 2.5.8

/// What can be pressed: the row's height, and to the cell's edge; hardly any of the number.
QRect targetOf(const QRect& unit, const QRect& cell) {
    const int left = std::min(unit.left() - kAir, cell.right() + 1 - kSide);
    return {left, cell.top(), cell.right() + 1 - left, cell.height()};
}

} // namespace

QVariant unitRole(const QString& shown, const Sketch& sketch) {
    const bool degrees = sketch.angleUnit == AngleUnit::deg;
    const QString force = u' ' + text(symbolOf(sketch.forceUnit));
    const QString angle = degrees ? QStringLiteral("\u00b0") : u' ' + text(nameOf(sketch.angleUnit));
    return shown.endsWith(force)   ? QVariant(static_cast<int>(UnitOf::force))
           : shown.endsWith(angle) ? QVariant(static_cast<int>(UnitOf::angle))
                                   : QVariant();
}

QModelIndex PanelTable::unitAt(const QPoint& at) const {
    const QModelIndex cell = indexAt(at);
    const QRect room = visualRect(cell);
    const QRect unit = cell.isValid() ? m_delegate->unitRect(room, font(), cell) : QRect();
    return !unit.isEmpty() && targetOf(unit, room).contains(at) ? cell : QModelIndex();
}

void PanelTable::pointAtUnit(const QModelIndex& cell) {
    if (cell == m_unit) {
        return;
    }
    m_unit = cell;
    viewport()->setCursor(cell.isValid() ? Qt::PointingHandCursor : Qt::ArrowCursor);
    viewport()->update();
}

void PanelTable::mousePressEvent(QMouseEvent* event) {
    m_unitPressed = event->button() == Qt::LeftButton ? unitAt(event->pos()) : QModelIndex();
    if (!m_unitPressed.isValid()) {
        return QTableView::mousePressEvent(event);
    }
    setFocus(Qt::MouseFocusReason); // as by any press, but no field opens
    selectionModel()->setCurrentIndex(m_unitPressed,
                                      QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
}

void PanelTable::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() == Qt::NoButton) {
        pointAtUnit(unitAt(event->pos()));
    }
    if (!m_unitPressed.isValid()) {
        QTableView::mouseMoveEvent(event);
    }
}

void PanelTable::mouseReleaseEvent(QMouseEvent* event) {
    const QPersistentModelIndex pressed = std::exchange(m_unitPressed, QPersistentModelIndex());
    if (!pressed.isValid()) {
        return QTableView::mouseReleaseEvent(event);
    }
    if (unitAt(event->pos()) == pressed) {
        emit unitAsked(static_cast<UnitOf>(pressed.data(UnitRole).toInt()),
                       event->globalPosition().toPoint());
    }
}

void PanelTable::mouseDoubleClickEvent(QMouseEvent* event) {
    if (unitAt(event->pos()).isValid()) {
        return mousePressEvent(event);
    }
    QTableView::mouseDoubleClickEvent(event);
}

bool PanelTable::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        if (const QModelIndex cell = unitAt(help->pos()); cell.isValid()) {
            QToolTip::showText(help->globalPos(),
                               cell.data(UnitRole).toInt() == static_cast<int>(UnitOf::force)
                                   ? tr("Click to choose the sheet's unit of force.")
                                   : tr("Click to choose the sheet's unit of angles."));
            return true;
        }
    }
    if (event->type() == QEvent::Leave) {
        pointAtUnit({});
    }
    return QTableView::viewportEvent(event);
}

/// The unit under the pointer is underlined: it can be pressed.
void PanelTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (m_unit.isValid()) {
        const QRect unit = m_delegate->unitRect(visualRect(m_unit), font(), m_unit);
        QPainter(viewport()).fillRect(unit.left(), unit.bottom(), unit.width(), 2, m_delegate->theme().mark);
    }
}

} // namespace tailpoint
