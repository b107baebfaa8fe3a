// SPDX-License-Identifier: MIT
#include "ui/panel/panel_table.h"

#include <QHeaderView>
#include <QPainter>
#include <QScrollBar>

namespace tailpoint {

ColumnHeads::ColumnHeads(PanelTable& table, int columns) : m_table(table), m_columns(columns) {
    setFont(PanelTable::headFont(font()));
    table.setHeads(columns);
    connect(table.horizontalHeader(), &QHeaderView::sectionResized, this, qOverload<>(&QWidget::update));
    connect(table.horizontalScrollBar(), &QScrollBar::valueChanged, this, qOverload<>(&QWidget::update));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize ColumnHeads::sizeHint() const {
    return {100, fontMetrics().height() + 4};
}

void ColumnHeads::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::PlaceholderText));
    for (int column = 0; column < m_columns; ++column) {
        QRect place(m_table.columnViewportPosition(column) + m_table.edge(), 0,
                    m_table.columnWidth(column) - 2 * m_table.edge(), height());
        const QVariant side = m_table.model()->index(0, column).data(Qt::TextAlignmentRole);
        if (side.toInt() & Qt::AlignRight) {
            place.setLeft(place.left() - 2 * kCellGap); // a long name in a narrow panel: over the gap
        }
        const QString name = m_table.model()->headerData(column, Qt::Horizontal).toString();
        painter.drawText(place, side.toInt() | Qt::AlignBottom, column == 0 ? name : name.toLower());
    }
}

} // namespace tailpoint
