// SPDX-License-Identifier: MIT
#include "ui/panel/panel_table.h"

#include "ui/panel/cell_text.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <numeric>

namespace tailpoint {

PanelDelegate::PanelDelegate(Rules rules, int gap) : m_rules(rules), m_gap(gap) {}
PanelDelegate::~PanelDelegate() = default;

/// Made anew only where the font is another.
const CellText& PanelDelegate::textFor(const QFont& font) const {
    if (!m_text || m_text->around() != font) {
        m_text = std::make_unique<CellText>(font);
    }
    return *m_text;
}

/// A cell whose text was not taken: a wavy line under it, so that the mark does not hang on colour.
void PanelDelegate::paintFault(QPainter& painter, const QRectF& under) const {
    QPolygonF wave;
    bool up = true;
    for (double x = under.left(); x <= under.right(); x += 3, up = !up) {
        wave << QPointF(x, under.bottom() - (up ? 2 : 0));
    }
    painter.setPen(QPen(m_theme->warning, 1));
    painter.drawPolyline(wave);
}

/// A value that only the shown case has: an upright bar before it, so that the mark does not hang on colour.
void PanelDelegate::paintChanged(QPainter& painter, const QRectF& under) const {
    constexpr double wide = 3, before = 8, high = 14;
    painter.fillRect(QRectF(under.left() - before, under.bottom() - 2 - high, wide, high), m_theme->given);
}

void PanelDelegate::paintText(QPainter& painter, const QRectF& rect, const QFont& font,
                              const QModelIndex& index) const {
    const CellText& text = textFor(font);
    const bool toFind = index.data(ToFindRole).toBool();
    const bool fault = !index.data(FaultRole).toString().isEmpty();
    const bool quiet = index.data(QuietRole).toBool();
    painter.setPen(fault    ? m_theme->warning
                   : toFind ? m_theme->sum
                   : quiet  ? m_theme->quietInk
                            : m_theme->ink);
    const bool heads = index.data(HeadingRole).toBool();
    painter.setFont(heads ? text.heading() : font);
    if (const QVariant sentence = index.data(SentenceRole); sentence.isValid() && !quiet) {
        text.drawSentence(painter, rect, sentence.value<Sentence>());
        return;
    }
    const Qt::Alignment alignment(index.data(Qt::TextAlignmentRole).toInt());
    const QString shown = index.data().toString();
    // Letters of its own size, which a figure would be measured without.
    if (heads && QFontMetricsF(text.heading()).horizontalAdvance(shown) <= rect.width()) {
        painter.drawText(rect, static_cast<int>(alignment), shown);
        return;
    }
    const double width = text.drawFigures(painter, rect, alignment, shown);
    const double left = alignment & Qt::AlignRight ? rect.right() - width : rect.left();
    const QRectF under(left, rect.top(), width, rect.height() / 2 + text.ascent() / 2 + 4);
    if (index.data(ChangedRole).toBool()) {
        paintChanged(painter, under);
    }
    if (toFind) { // a blank to be filled in: the mark beside the colour
        painter.setPen(QPen(m_theme->sum, 1, Qt::DashLine));
        painter.drawLine(under.bottomLeft(), under.bottomRight());
    } else if (fault) {
        paintFault(painter, under);
    }
}

namespace {

/// Empty cells behind the first of a row, which its words may use.
int emptyBehindFirst(const QModelIndex& first) {
    const int columns = first.model()->columnCount();
    int empty = 0;
    while (empty + 1 < columns && first.siblingAtColumn(empty + 1).data().toString().isEmpty()) {
        ++empty;
    }
    return empty;
}

/// The first cell has the room of the empty ones behind it; a note in a row that holds nothing else all of
/// it.
QRect withEmptyRest(QRect cell, const QStyleOptionViewItem& option, const QModelIndex& index) {
    const auto* table = qobject_cast<const QTableView*>(option.widget);
    if (index.column() != 0 || table == nullptr) {
        return cell;
    }
    const int empty = emptyBehindFirst(index);
    if (empty + 1 == index.model()->columnCount()) {
        cell.setRight(table->width());
        return cell;
    }
    for (int column = 1; column <= empty; ++column) {
        cell.setRight(cell.right() + table->columnWidth(column));
    }
    return cell;
}

} // namespace

void PanelDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    const QRect& cell = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QRect room = withEmptyRest(cell, option, index);
    const bool isLent = index.column() > 0 && index.column() <= emptyBehindFirst(index.siblingAtColumn(0));
    if ((option.state & QStyle::State_Selected) && !isLent) { // else it would cover the words that reach here
        painter->fillRect(room, m_theme->accentGround);
    }
    if (m_rules == Rules::everyRow || index.data(HeadingRole).toBool()) {
        painter->fillRect(QRect(cell.left(), cell.bottom(), cell.width(), 1), m_theme->hairline);
    }
    painter->setClipRect(room);
    paintText(*painter, QRectF(room.marginsRemoved(margins(index))), option.font, index);
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    if (view && view->hasFocus() && view->currentIndex() == index) {
        painter->setPen(QPen(m_theme->given, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(QRectF(cell).adjusted(1, 1, -1, -2), 3, 3);
    }
    painter->restore();
}

QSize PanelDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const CellText& text = textFor(option.font);
    const QVariant sentence = index.data(SentenceRole);
    const QString shown = index.data().toString();
    const double wanted =
        sentence.isValid() && !index.data(QuietRole).toBool() ? text.room(sentence.value<Sentence>())
        : index.data(HeadingRole).toBool() ? QFontMetricsF(text.heading()).horizontalAdvance(shown)
                                           : text.room(shown);
    const QMargins around = margins(index);
    return {static_cast<int>(std::ceil(wanted)) + around.left() + around.right() + 1, option.rect.height()};
}

QRect PanelDelegate::unitRect(const QRect& cell, const QFont& font, const QModelIndex& index) const {
    const QString shown = index.data().toString();
    const qsizetype digits =
        std::find_if(shown.rbegin(), shown.rend(), [](QChar c) { return c.isDigit() || c == u' '; }) -
        shown.rbegin();
    if (!index.data(UnitRole).isValid() || digits == 0) {
        return {};
    }
    const bool heads = index.data(HeadingRole).toBool();
    const QFontMetrics metrics(heads ? textFor(font).heading() : font);
    const QRect room = cell.marginsRemoved(margins(index));
    const int width = metrics.horizontalAdvance(shown.right(digits)), height = metrics.height();
    return {room.right() + 1 - width, room.center().y() - height / 2, width, height};
}

/// At the table's own edges always the same.
QMargins PanelDelegate::margins(const QModelIndex& index) const {
    const bool last = index.column() + 1 == index.model()->columnCount();
    const int gap = std::min(m_gap, edge());
    return {index.column() == 0 ? edge() : gap, 0, last ? edge() : gap, 0};
}

PanelTable::PanelTable(PanelDelegate* delegate, int rowHeight, QWidget* parent)
    : QTableView(parent), m_delegate(delegate), m_leastRow(rowHeight), m_rowHeight(rowHeight) {
    delegate->setParent(this);
    setItemDelegate(delegate);
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setWordWrap(false);
    setTabKeyNavigation(false); // Tab leaves the table; arrows walk in it
    setSelectionMode(ExtendedSelection);
    setSelectionBehavior(SelectRows);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    horizontalHeader()->hide();
    horizontalHeader()->setMinimumSectionSize(20);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    fitRows();
    viewport()->setAutoFillBackground(false);
    setMouseTracking(true);
    connect(this, &QAbstractItemView::entered, this,
            [this](const QModelIndex& index) { emit pointedAt(index.row()); });
    connect(this, &QAbstractItemView::viewportEntered, this, [this] { emit pointedAt(-1); });
}

void PanelTable::setModel(QAbstractItemModel* model) {
    QTableView::setModel(model);
    connect(model, &QAbstractItemModel::modelReset, this, &PanelTable::fitHeight);
    connect(model, &QAbstractItemModel::modelReset, this, &PanelTable::fitColumns);
    connect(model, &QAbstractItemModel::dataChanged, this, &PanelTable::fitColumns);
    fitHeight();
}

void PanelTable::setTheme(const Theme& theme) {
    m_delegate->setTheme(theme);
    viewport()->update();
}

void PanelTable::setShares(const QList<int>& shares) {
    m_shares = shares;
}

void PanelTable::setWholeValues() {
    m_isWhole = true;
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setHorizontalScrollMode(ScrollPerPixel);
    connect(verticalScrollBar(), &QScrollBar::valueChanged, this, &PanelTable::fitColumns);
}

void PanelTable::setMostRows(int rows) {
    m_mostRows = rows;
    fitHeight();
}

void PanelTable::fitRows() {
    constexpr int kAir = 8; // above and below the letters together
    m_rowHeight = std::max(m_leastRow, fontMetrics().height() + kAir);
    verticalHeader()->setMinimumSectionSize(m_rowHeight);
    verticalHeader()->setDefaultSectionSize(m_rowHeight);
}

void PanelTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        fitRows();
        fitHeight();
        fitColumns();
    }
}

void PanelTable::fitHeight() {
    const int rows = model() ? model()->rowCount() : 0;
    setFocusPolicy(rows > 0 ? Qt::StrongFocus : Qt::NoFocus); // nobody stops where nothing is
    if (rows == 0 && hasFocus()) {
        focusNextChild();
    }
    setVerticalScrollBarPolicy(rows > m_mostRows ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    setFixedHeight(sizeHint().height());
}

QSize PanelTable::sizeHint() const {
    const int rows = model() ? std::min(model()->rowCount(), m_mostRows) : 0;
    return {320, rows * m_rowHeight + (m_sideways ? horizontalScrollBar()->sizeHint().height() : 0)};
}

QSize PanelTable::minimumSizeHint() const {
    return {220, m_rowHeight};
}

void PanelTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fitColumns();
}

namespace {

/// As the shares have it, all of `room`.
QList<int> sharedOut(int room, const QList<int>& shares) {
    const int all = std::max(1, std::accumulate(shares.begin(), shares.end(), 0));
    QList<int> widths;
    int used = 0;
    for (qsizetype column = 0; column < shares.size(); ++column) {
        const bool last = column + 1 == shares.size();
        widths << (last ? room - used : room * shares[column] / all);
        used += widths.back();
    }
    return widths;
}

/// Gives every column what it needs, and takes it where there is more than that.
QList<int> madeWhole(QList<int> widths, const QList<int>& needed) {
    int wanting = 0;
    for (qsizetype i = 0; i < widths.size(); ++i) {
        const int more = std::max(0, needed[i] - widths[i]);
        wanting += more;
        widths[i] += more;
    }
    for (bool given = true; wanting > 0 && given;) {
        given = false;
        for (qsizetype i = 0; i < widths.size() && wanting > 0; ++i)
            if (widths[i] > needed[i]) {
                --widths[i];
                --wanting;
                given = true;
            }
    }
    return widths;
}

} // namespace

/// Of the rows in sight.
QList<int> PanelTable::neededWidths() const {
    const int first = std::max(0, rowAt(0)), last = rowAt(viewport()->height() - 1);
    const int end = last < 0 ? model()->rowCount() : last + 1;
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    QList<int> widths(m_shares.size(), 0);
    const auto neededBy = [&](const QModelIndex& cell) {
        return itemDelegate()->sizeHint(option, cell).width();
    };
    QList<std::pair<int, int>> spread; // what words need, and how many empty cells are theirs too
    for (int row = first; row < end; ++row) {
        const QModelIndex words = model()->index(row, 0);
        const int empty = emptyBehindFirst(words);
        if (empty > 0) {
            spread.append({neededBy(words), empty});
        }
        for (int column = empty > 0 ? empty + 1 : 0; column < widths.size(); ++column) {
            widths[column] = std::max(widths[column], neededBy(model()->index(row, column)));
        }
    }
    for (int column = 0; column < m_heads; ++column) {
        widths[column] = std::max(widths[column], headWidth(column));
    }
    for (const auto& [needed, empty] : spread) {
        const int has = std::accumulate(widths.begin(), widths.begin() + empty + 1, 0);
        widths[0] += std::max(0, needed - has);
    }
    return widths;
}

QFont PanelTable::headFont(const QFont& around) {
    QFont small = around;
    small.setPointSizeF(small.pointSizeF() * 0.9);
    return small;
}

int PanelTable::headWidth(int column) const {
    const QString name = model()->headerData(column, Qt::Horizontal).toString();
    return QFontMetrics(headFont(font())).horizontalAdvance(name) + 2 * edge() + 1;
}

void PanelTable::fitColumns() {
    if (!model() || m_shares.isEmpty()) {
        return;
    }
    QList<int> widths = sharedOut(viewport()->width(), m_shares);
    if (m_isWhole) {
        bool sideways = true;
        for (const bool tight : {false, true, false}) { // tight only where that is enough
            m_delegate->setTight(tight);
            widths = madeWhole(sharedOut(viewport()->width(), m_shares), neededWidths());
            sideways = std::accumulate(widths.begin(), widths.end(), 0) > viewport()->width();
            if (!sideways) {
                break;
            }
        }
        if (sideways != m_sideways) {
            m_sideways = sideways;
            fitHeight();
        }
    }
    for (int column = 0; column < widths.size(); ++column) {
        setColumnWidth(column, widths[column]);
    }
}

/// A table that shows all of its rows leaves the wheel to the panel.
void PanelTable::wheelEvent(QWheelEvent* event) {
    if (verticalScrollBarPolicy() == Qt::ScrollBarAlwaysOff) {
        event->ignore();
        return;
    }
    QTableView::wheelEvent(event);
}

void PanelTable::leaveEvent(QEvent* event) {
    QTableView::leaveEvent(event);
    emit pointedAt(-1);
}

void PanelTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (!currentIndex().isValid() && model() && model()->rowCount() > 0) {
        selectionModel()->setCurrentIndex(model()->index(0, 0), QItemSelectionModel::NoUpdate);
    }
    viewport()->update();
}

/// A table that follows the sheet has not got the keyboard, and QTableView would tell that its cell had.
void PanelTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    hasFocus() ? QTableView::currentChanged(current, previous)
               : QAbstractItemView::currentChanged(current, previous);
}

QList<int> PanelTable::chosenRows() const {
    QList<int> rows;
    for (const QModelIndex& index : selectionModel()->selectedRows()) {
        rows << index.row();
    }
    if (rows.isEmpty() && currentIndex().isValid()) {
        rows << currentIndex().row();
    }
    std::sort(rows.begin(), rows.end());
    return rows;
}

QString PanelTable::selectedText() const {
    QString lines;
    QList<int> rows = chosenRows();
    for (qsizetype i = 0; i < rows.size(); ++i) { // no value is copied without its range
        const QModelIndex below = model()->index(rows[i] + 1, 0);
        if (below.data(BelongsAboveRole).toBool() && !rows.contains(below.row())) {
            rows.insert(i + 1, below.row());
        }
    }
    for (int row : rows) {
        QStringList fields;
        for (int column = 0; column < model()->columnCount(); ++column) {
            fields << model()->index(row, column).data().toString();
        }
        lines += fields.join(u'\t') + u'\n';
    }
    return lines;
}

void PanelTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy)) {
        QGuiApplication::clipboard()->setText(selectedText());
        return;
    }
    QTableView::keyPressEvent(event);
}

} // namespace tailpoint
