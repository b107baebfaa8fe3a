// A table as a drafting sheet has it: hairlines under the rows, no frame, no header, as high as its rows.
#pragma once

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
    BelongsAboveRole ///< bool: the row is not copied without, nor left out beside, the one above
};

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

private:
    const CellText& textFor(const QFont& font) const;
    void paintText(QPainter& painter, const QRectF& rect, const QFont& font, const QModelIndex& index) const;
    void paintFault(QPainter& painter, const QRectF& under) const;

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
    PanelTable(PanelDelegate* delegate, int rowHeight, QWidget* parent = nullptr);
    void setModel(QAbstractItemModel* model) override;
    void setTheme(const Theme& theme);

    /// Widths of the columns as shares of the table's width.
    void setShares(const QList<int>& shares);
    /// The same, but these columns are as wide as their values need; what they take the others give, down to
    /// what they need themselves, and then the gaps between them. Where that is too little the table scrolls
    /// sideways. `ifRoom`: columns that are whole too as long as nothing has to give way for them.
    void setWholeValues(const QList<int>& columns, const QList<int>& ifRoom = {});
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
    void pointedAt(int row); ///< the pointer came to another row; -1: to none

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void wheelEvent(QWheelEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void fitHeight();
    void fitColumns();
    QList<int> wholeWidths(const QList<int>& whole) const;
    bool fitIfRoom(QList<int>& widths);
    QList<int> neededWidths() const;
    PanelDelegate* m_delegate;
    QList<int> m_shares;
    QList<int> m_wholeColumns; ///< whose values are not cut
    QList<int> m_wholeIfRoom;
    bool m_sideways = false;
    int m_mostRows = 12, m_rowHeight;
};

} // namespace tailpoint
