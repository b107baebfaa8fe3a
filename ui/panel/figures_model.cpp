// SPDX-License-Identifier: MIT
#include "ui/panel/figures_model.h"

#include "ui/panel/answer_text.h"
#include "ui/panel/panel_table.h"
#include "ui/style/symbols.h"

namespace tailpoint {

FiguresModel::FiguresModel(SketchDocument& document, int columns, QObject* parent)
    : QAbstractTableModel(parent), m_document(document), m_columns(columns) {}

int FiguresModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : m_columns;
}

QVariant FiguresModel::spokenAt(const FigureRow& row, int column) const {
    const QString spoken = row.spoken.value(column - m_columns + row.spoken.size());
    return spoken.isEmpty() ? QVariant() : QVariant(spoken);
}

QVariant FiguresModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const FigureRow row = rowAt(index.row());
    const bool label = index.column() == 0;
    switch (role) {
    case Qt::DisplayRole: // values stand at the right: the last column holds the last value
        return label ? onScreen(plain(row.label))
                     : row.values.value(index.column() - m_columns + row.values.size());
    case Qt::TextAlignmentRole:
        return QVariant::fromValue((label ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    case SentenceRole:
        return label ? QVariant::fromValue(row.label) : QVariant();
    case QuietRole:
        return row.heading || row.belongsAbove;
    case HeadingRole:
        return row.heading;
    case BelongsAboveRole:
        return row.belongsAbove;
    case UnitRole:
        return label ? QVariant() : unitRole(index.data().toString(), m_document.sketch());
    case Qt::AccessibleTextRole:
        if (label && index.data().toString().isEmpty()) // over the names nothing stands
            return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole);
        [[fallthrough]];
    case Qt::ToolTipRole:
        return label ? QVariant() : spokenAt(row, index.column());
    default:
        return {};
    }
}

QVariant FiguresModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) {
        return QAbstractTableModel::headerData(section, orientation, role);
    }
    if (orientation == Qt::Horizontal) {
        const QStringList names = columnNames();
        return section >= 0 && section < names.size() ? QVariant(names[section]) : QVariant();
    }
    return section >= 0 && section < rowCount() ? onScreen(plain(rowAt(section).label)) : QVariant();
}

QStringList VectorsModel::columnNames() const {
    const QString unit = text(symbolOf(m_document.sketch().forceUnit));
    return {tr("Vector"), tr("Magnitude in %1").arg(unit), tr("Direction"), tr("x in %1").arg(unit),
            tr("y in %1").arg(unit)};
}

QStringList AnglesModel::columnNames() const {
    return {tr("Part of the construction"),
            tr("Side in %1").arg(text(symbolOf(m_document.sketch().forceUnit))), tr("Angle")};
}

VectorsModel::VectorsModel(SketchDocument& document, QObject* parent) : FiguresModel(document, 5, parent) {}

int VectorsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_places.size());
}

int VectorsModel::drawnVector(int row) const {
    const VectorPlace place = m_places.value(row);
    return place.answer == m_document.result().chosen ? place.vector : kNoVector; // its range's rows too
}

FigureRow VectorsModel::rowAt(int row) const {
    if (row != m_lastRow) {
        m_last = tailpoint::rowAt(m_document.result(), m_places.value(row));
        m_lastRow = row;
    }
    return m_last;
}

void VectorsModel::refresh() {
    m_lastRow = -1;
    QList<VectorPlace> places = vectorPlaces(m_document.result());
    if (places.size() != m_places.size()) {
        beginResetModel();
        m_places = std::move(places);
        endResetModel();
        return;
    }
    m_places = std::move(places);
    if (!m_places.isEmpty()) {
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
}

AnglesModel::AnglesModel(SketchDocument& document, QObject* parent) : FiguresModel(document, 3, parent) {}

int AnglesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

void AnglesModel::refresh() {
    QList<FigureRow> rows = angleRows(m_document.result());
    if (rows.size() != m_shown.size()) {
        beginResetModel();
        m_shown = std::move(rows);
        endResetModel();
        return;
    }
    m_shown = std::move(rows);
    if (!m_shown.isEmpty()) {
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
}

} // namespace tailpoint
