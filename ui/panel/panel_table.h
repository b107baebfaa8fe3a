// SPDX-License-Identifier: MIT
// A table as a drafting sheet has it: hairlines under the rows, no frame, no header, as high as its rows.
#pragma once

#include "ui/document/sheet_edits.h"
#include "ui/style/theme.h"

#include <QStyledItemDelegate>
#include <QTableView>
#include <memory>

namespace tailpoint {

class CellText;

/// What the cells of a panel's model are, beside Qt's own roles.
enum PanelRole {
    ToFindRole = Qt::UserRole + 1, ///< bool: the value is one to find
    SentenceRole,                  ///< Sentence: words and symbols
    QuietRole,                     ///< bool: secondary text
    FaultRole,                     ///< QString: why a typed text was not taken; empty where all is well
    HeadingRole,                   ///< bool: a heading row
    ChangedRole,      ///< bool: the case that is shown gives another value than the sketch as drawn
    BelongsAboveRole, ///< bool: the row is not copied without, nor left out beside, the one above
    UnitRole          ///< int, a UnitOf: the text ends in that unit of the sheet; invalid: in none
};

/// The UnitRole of a text: which of the sheet's units it ends in.
QVariant unitRole(const QString& shown, const Sketch& sketch);

/// Under which rows a hairline stands.
enum class Rules { everyRow, headings };

inline constexpr int kCellGap = 8, kNarrowGap = 4, kTightGap = 2;
inline constexpr int kRowHeight = 30,
                     kReadOnlyRowHeight = 26; ///< logical pixels; 24 or more (WCAG 2.2, 2.5.8)

/// Paints a cell by the PanelRoles of its model.
class PanelDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    /// `gap`: at either side of what stands between two columns, logical pixels.
    explicit PanelDelegate(Rules rules, int gap = kCellGap);
    ~PanelDelegate() override;
    void setTheme(const Theme& theme) { m_theme = &theme; }
    const Theme& theme() const { return *m_theme; }
    /// Less room round the values, where they would not stand beside one another otherwise.
    void setTight(bool tight) { m_tight = tight; }
    bool isTight() const { return m_tight; }
    int edge() const { return m_tight ? kTightGap : kCellGap; } ///< at the table's own edges

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    /// The width in which the cell is not cut; the height is the table's.
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    /// Where the letters of a cell's unit stand; empty where none ends its text.
    QRect unitRect(const QRect& cell, const QFont& font, const QModelIndex& index) const;

private:
    const CellText& textFor(const QFont& font) const;
    void paintText(QPainter& painter, const QRectF& rect, const QFont& font, const QModelIndex& index) const;
    void paintFault(QPainter& painter, const QRectF& under) const;
    void paintChanged(QPainter& painter, const QRectF& under) const;

    QMargins margins(const QModelIndex& index) const;

    Rules m_rules;
    int m_gap;
    bool m_tight = false;
    const Theme* m_theme = &themeOf(ThemeName::paper);
    mutable std::unique_ptr<CellText> m_text; ///< fonts looked up
};

class PanelTable;

/// The names of a table's columns, small and quiet above it, each where its column stands.
class ColumnHeads : public QWidget {
    Q_OBJECT
public:
    explicit ColumnHeads(PanelTable& table, int columns);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    PanelTable& m_table;
    int m_columns; ///< named; those after them need no name
};

class PanelTable : public QTableView {
    Q_OBJECT
public:
    /// `rowHeight`: the least, logical pixels; rows are as high as their letters need.
    PanelTable(PanelDelegate* delegate, int rowHeight, QWidget* parent = nullptr);
    void setModel(QAbstractItemModel* model) override;
    void setTheme(const Theme& theme);

    /// Widths of the columns as shares of the table's width.
    void setShares(const QList<int>& shares);
    /// The same, but no text is cut: a column is as wide as its values need. What it takes others give, down
    /// to what they need themselves, and then the gaps between them; where that is too little the table
    /// scrolls sideways.
    void setWholeValues();
    /// Columns whose names stand above them: a column is no narrower than its name.
    void setHeads(int columns) { m_heads = columns; }
    static QFont headFont(const QFont& around); ///< of such names
    /// The most rows shown at once; beyond it the table scrolls.
    void setMostRows(int rows);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    /// The selected rows as lines of tab-separated fields, as shown.
    virtual QString selectedText() const;
    /// Beside what stands at the table's edges, logical pixels.
    int edge() const { return m_delegate->edge(); }

    /// Rows that hold a selected or the current cell, from above.
    QList<int> chosenRows() const;

signals:
    void pointedAt(int row);                         ///< the pointer came to another row; -1: to none
    void unitAsked(tailpoint::UnitOf of, QPoint at); ///< a unit was clicked; `at` on the screen

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void wheelEvent(QWheelEvent* event) override;
    void leaveEvent(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QModelIndex unitAt(const QPoint& at) const;
    void pointAtUnit(const QModelIndex& cell);
    void fitRows();
    void fitHeight();
    void fitColumns();
    int headWidth(int column) const;
    QList<int> neededWidths() const;
    PanelDelegate* m_delegate;
    QList<int> m_shares;
    bool m_isWhole = false, m_sideways = false;
    QPersistentModelIndex m_unit, m_unitPressed; ///< the cell whose unit is under the pointer; was pressed
    int m_mostRows = 12, m_leastRow, m_rowHeight, m_heads = 0;
};

} // namespace tailpoint
