// SPDX-License-Identifier: MIT
// Read-only tables under Solution.
#pragma once

#include "ui/panel/figure_rows.h"

#include <QAbstractTableModel>

namespace tailpoint {

/// Rows of a few figures. `refresh` tells the view what changed: numbers alone, or the rows themselves.
class FiguresModel : public QAbstractTableModel {
    Q_OBJECT
public:
    FiguresModel(SketchDocument& document, int columns, QObject* parent = nullptr);
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    /// What the columns hold, with their units, and the rows' labels.
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

protected:
    virtual QStringList columnNames() const = 0;
    virtual FigureRow rowAt(int row) const = 0;
    SketchDocument& m_document;

private:
    QVariant spokenAt(const FigureRow& row, int column) const;
    int m_columns;
};

/// Magnitude, direction and components of every vector, of both answers where there are two; rows are made
/// when they are looked at.
class VectorsModel : public FiguresModel {
    Q_OBJECT
public:
    explicit VectorsModel(SketchDocument& document, QObject* parent = nullptr);
    int rowCount(const QModelIndex& parent = {}) const override;
    void refresh();
    /// The arrow on the sheet that the row is of; kNoVector: a heading, or an answer that is not drawn.
    int drawnVector(int row) const;

protected:
    QStringList columnNames() const override;
    FigureRow rowAt(int row) const override;

private:
    QList<VectorPlace> m_places; ///< one a row
    mutable int m_lastRow = -1;  ///< a row's cells are asked for one after another: made once
    mutable FigureRow m_last;
};

/// Parallelogram and force triangle.
class AnglesModel : public FiguresModel {
    Q_OBJECT
public:
    explicit AnglesModel(SketchDocument& document, QObject* parent = nullptr);
    int rowCount(const QModelIndex& parent = {}) const override;
    void refresh();

protected:
    QStringList columnNames() const override;
    FigureRow rowAt(int row) const override { return m_shown.value(row); }

private:
    QList<FigureRow> m_shown; ///< as last shown
};

} // namespace tailpoint
