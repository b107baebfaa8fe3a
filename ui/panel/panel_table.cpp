#include "ui/panel/panel_table.h"

#include "core/explain/question.h"
#include "ui/panel/symbols.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <numeric>

namespace tailpoint {

namespace {

constexpr int kPadding = 8; // left and right of a cell's text

QFont symbolFont(const QFont& around) {
    QFont font = serifFont();
    font.setPointSizeF(around.pointSizeF() * 1.3);
    font.setItalic(true);
    return font;
}

/// Digits of one width each, whatever the font's own are: columns of numbers stand under one another.
void drawTabular(QPainter& painter, QRectF rect, Qt::Alignment alignment, const QString& shown) {
    const QFontMetricsF metrics(painter.font());
    double widest = 0, narrowest = 1e9;
    for (char16_t digit = u'0'; digit <= u'9'; ++digit) {
        const double advance = metrics.horizontalAdvance(QChar(digit));
        widest = std::max(widest, advance);
        narrowest = std::min(narrowest, advance);
    }
    if (widest - narrowest < 0.01) {
        painter.drawText(rect, static_cast<int>(alignment), shown);
        return;
    }
    const auto advanceOf = [&](QChar c) { return c.isDigit() ? widest : metrics.horizontalAdvance(c); };
    const double whole = std::accumulate(shown.begin(), shown.end(), 0.0,
                                         [&](double sum, QChar c) { return sum + advanceOf(c); });
    double x = alignment & Qt::AlignRight ? rect.right() - whole : rect.left();
    for (const QChar c : shown) {
        painter.drawText(QRectF(x, rect.top(), advanceOf(c), rect.height()), Qt::AlignCenter, QString(c));
        x += advanceOf(c);
    }
}

/// One symbol from `x` on; returns where it ends.
double drawSymbol(QPainter& painter, double x, double baseline, const QFont& around,
                  const std::string& name) {
    const Symbol symbol = symbolOf(name);
    const QFont font = symbolFont(around);
    painter.setFont(font);
    painter.drawText(QPointF(x, baseline), symbol.letters);
    x += QFontMetricsF(font).horizontalAdvance(symbol.letters);
    if (!symbol.subscript.isEmpty()) {
        QFont small = font;
        small.setItalic(false);
        small.setPointSizeF(font.pointSizeF() * 0.7);
        painter.setFont(small);
        painter.drawText(QPointF(x + 1, baseline + QFontMetricsF(around).descent()), symbol.subscript);
        x += QFontMetricsF(small).horizontalAdvance(symbol.subscript) + 1;
    }
    return x + 1;
}

/// Words and symbols on the row's baseline.
void drawSentence(QPainter& painter, const QRectF& rect, const Sentence& sentence) {
    const QFont around = painter.font();
    const QFontMetricsF metrics(around);
    const double baseline = std::round(rect.center().y() + (metrics.ascent() - metrics.descent()) / 2);
    double x = rect.left();
    for (const Words& words : sentence) {
        if (words.symbol) {
            x = drawSymbol(painter, x, baseline, around, words.text);
        } else {
            painter.setFont(around);
            const QString shown = onScreen(words.text);
            painter.drawText(QPointF(x, baseline), shown);
            x += metrics.horizontalAdvance(shown);
        }
    }
}

} // namespace

QColor PanelDelegate::inkOf(const QModelIndex& index) const {
    if (!index.data(FaultRole).toString().isEmpty()) {
        return m_theme->warning;
    }
    if (index.data(ToFindRole).toBool()) {
        return m_theme->sum;
    }
    return index.data(QuietRole).toBool() ? m_theme->quietInk : m_theme->ink;
}

/// A cell whose text was not taken: a wavy line under it, so that the mark does not hang on colour.
void PanelDelegate::paintFault(QPainter& painter, const QRect& rect, const QModelIndex& index) const {
    QPolygonF wave;
    const double y = rect.bottom() - 5;
    const int width = std::min(painter.fontMetrics().horizontalAdvance(index.data().toString()) + 2,
                               rect.width() - 2 * kPadding);
    const bool right = index.column() > 0;
    const int from = right ? rect.right() - kPadding - width : rect.left() + kPadding;
    for (int x = from; x <= from + width; x += 3) {
        wave << QPointF(x, y + ((x / 3) % 2 == 0 ? 0 : 2));
    }
    painter.setPen(QPen(m_theme->warning, 1));
    painter.drawPolyline(wave);
}

/// A number with many figures is set smaller, down to three fifths, rather than cut.
static void narrowTo(QPainter& painter, const QString& shown, int width) {
    const int wanted = painter.fontMetrics().horizontalAdvance(shown);
    if (wanted <= width || wanted == 0) {
        return;
    }
    QFont font = painter.font();
    const double size = font.pointSizeF() > 0 ? font.pointSizeF() : font.pixelSize() * 0.75;
    font.setPointSizeF(size * std::max(0.6, 0.97 * width / wanted));
    painter.setFont(font);
}

void PanelDelegate::paintText(QPainter& painter, const QRect& rect, const QModelIndex& index) const {
    const QString shown = index.data().toString();
    const Qt::Alignment alignment(index.data(Qt::TextAlignmentRole).toInt());
    const QRect inner = rect.adjusted(kPadding, 0, -kPadding, 0);
    painter.setPen(inkOf(index));
    painter.setClipRect(rect);
    if (const QVariant sentence = index.data(SentenceRole); sentence.isValid()) {
        drawSentence(painter, inner, sentence.value<Sentence>());
        return;
    }
    narrowTo(painter, shown, inner.width());
    const QString fitting = painter.fontMetrics().elidedText(shown, Qt::ElideRight, inner.width());
    drawTabular(painter, inner, alignment, fitting);
    if (index.data(ToFindRole).toBool()) { // a blank to be filled in: the mark beside the colour
        const int width = painter.fontMetrics().horizontalAdvance(fitting);
        const int y = inner.center().y() + painter.fontMetrics().ascent() / 2 + 4;
        painter.setPen(QPen(m_theme->sum, 1, Qt::DashLine));
        painter.drawLine(inner.right() - width, y, inner.right(), y);
    }
}

void PanelDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    const bool heading = index.data(HeadingRole).toBool();
    painter->save();
    if (option.state & QStyle::State_Selected) {
        painter->fillRect(option.rect, m_theme->accentGround);
    }
    if (heading || m_rules == Rules::everyRow) {
        painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1),
                          m_theme->hairline);
    }
    QFont font = option.font;
    if (heading) {
        font.setPointSizeF(font.pointSizeF() * 0.9);
    }
    painter->setFont(font);
    painter->setRenderHint(QPainter::Antialiasing);
    paintText(*painter, option.rect, index);
    if (!index.data(FaultRole).toString().isEmpty()) {
        paintFault(*painter, option.rect, index);
    }
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    if (view && view->hasFocus() && view->currentIndex() == index) {
        painter->setPen(QPen(m_theme->given, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -2), 3, 3);
    }
    painter->restore();
}

PanelTable::PanelTable(PanelDelegate* delegate, int rowHeight, QWidget* parent)
    : QTableView(parent), m_delegate(delegate), m_rowHeight(rowHeight) {
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
    verticalHeader()->setMinimumSectionSize(rowHeight);
    verticalHeader()->setDefaultSectionSize(rowHeight);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    viewport()->setAutoFillBackground(false);
}

void PanelTable::setModel(QAbstractItemModel* model) {
    QTableView::setModel(model);
    connect(model, &QAbstractItemModel::modelReset, this, &PanelTable::fitHeight);
    fitHeight();
}

void PanelTable::setTheme(const Theme& theme) {
    m_delegate->setTheme(theme);
    viewport()->update();
}

void PanelTable::setShares(const QList<int>& shares) {
    m_shares = shares;
}

void PanelTable::setMostRows(int rows) {
    m_mostRows = rows;
    fitHeight();
}

void PanelTable::fitHeight() {
    const int rows = model() ? model()->rowCount() : 0;
    setVerticalScrollBarPolicy(rows > m_mostRows ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    setFixedHeight(sizeHint().height());
}

QSize PanelTable::sizeHint() const {
    const int rows = model() ? std::min(model()->rowCount(), m_mostRows) : 0;
    return {320, rows * m_rowHeight};
}

QSize PanelTable::minimumSizeHint() const {
    return {220, m_rowHeight};
}

void PanelTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    const int all = std::max(1, std::accumulate(m_shares.begin(), m_shares.end(), 0));
    int used = 0;
    for (int column = 0; column < m_shares.size(); ++column) {
        const bool last = column + 1 == m_shares.size();
        const int width = last ? viewport()->width() - used : viewport()->width() * m_shares[column] / all;
        setColumnWidth(column, width);
        used += width;
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

void PanelTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (!currentIndex().isValid() && model() && model()->rowCount() > 0) {
        selectionModel()->setCurrentIndex(model()->index(0, 0), QItemSelectionModel::NoUpdate);
    }
    viewport()->update();
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
    for (int row : chosenRows()) {
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
