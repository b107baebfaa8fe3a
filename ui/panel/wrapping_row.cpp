// SPDX-License-Identifier: MIT
#include "ui/panel/wrapping_row.h"

#include <QStyle>
#include <QWidget>
#include <algorithm>

namespace tailpoint {

namespace {

constexpr int kBetweenLines = 4; // pixels

bool expands(const QLayoutItem* item) {
    const QWidget* widget = const_cast<QLayoutItem*>(item)->widget();
    return widget != nullptr && widget->sizePolicy().horizontalPolicy() == QSizePolicy::Ignored;
}

/// What expands asks for nothing.
int leastWidth(const QLayoutItem* item) {
    return expands(item) ? 0 : item->sizeHint().width();
}

} // namespace

WrappingRow::WrappingRow(QWidget* parent) : QLayout(parent) {}
WrappingRow::~WrappingRow() = default;

void WrappingRow::insertWidget(int index, QWidget* widget) {
    addChildWidget(widget);
    m_items.insert(m_items.begin() + std::clamp(index, 0, count()), std::make_unique<QWidgetItem>(widget));
    invalidate();
}

void WrappingRow::addItem(QLayoutItem* item) {
    m_items.emplace_back(item);
}

QLayoutItem* WrappingRow::itemAt(int index) const {
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)].get() : nullptr;
}

QLayoutItem* WrappingRow::takeAt(int index) {
    if (index < 0 || index >= count())
        return nullptr;
    QLayoutItem* taken = m_items[static_cast<std::size_t>(index)].release();
    m_items.erase(m_items.begin() + index);
    return taken;
}

int WrappingRow::widthOf(const Line& line) const {
    int width = line.empty() ? 0 : spacing() * (static_cast<int>(line.size()) - 1);
    for (const QLayoutItem* item : line)
        width += leastWidth(item);
    return width;
}

int WrappingRow::heightOf(const Line& line) {
    int height = 0;
    for (const QLayoutItem* item : line)
        height = std::max(height, item->sizeHint().height());
    return height;
}

std::vector<WrappingRow::Line> WrappingRow::linesIn(int width) const {
    std::vector<Line> lines(1);
    for (const auto& item : m_items) {
        if (item->isEmpty())
            continue;
        Line longer = lines.back();
        longer.push_back(item.get());
        if (lines.back().empty() || widthOf(longer) <= width)
            lines.back() = std::move(longer);
        else
            lines.push_back({item.get()});
    }
    return lines;
}

int WrappingRow::heightForWidth(int width) const {
    const QMargins margins = contentsMargins();
    const auto lines = linesIn(width - margins.left() - margins.right());
    int height = margins.top() + margins.bottom() + kBetweenLines * (static_cast<int>(lines.size()) - 1);
    for (const Line& line : lines)
        height += heightOf(line);
    return height;
}

QSize WrappingRow::minimumSize() const {
    QSize size;
    for (const auto& item : m_items)
        if (!item->isEmpty())
            size = size.expandedTo({leastWidth(item.get()), item->minimumSize().height()});
    return size.grownBy(contentsMargins());
}

QSize WrappingRow::sizeHint() const {
    Line all;
    for (const auto& item : m_items)
        if (!item->isEmpty())
            all.push_back(item.get());
    return QSize(widthOf(all), heightOf(all)).grownBy(contentsMargins());
}

void WrappingRow::place(const Line& line, const QRect& room) const {
    const int left = std::max(0, room.width() - widthOf(line));
    int x = room.x();
    for (QLayoutItem* item : line) {
        const int width = expands(item) ? left : std::min(leastWidth(item), room.width());
        const QRect rect(x, room.y(), width, room.height());
        item->setGeometry(QStyle::visualRect(parentWidget()->layoutDirection(), room, rect));
        x += width + spacing();
    }
}

void WrappingRow::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    const QRect room = rect.marginsRemoved(contentsMargins());
    int y = room.y();
    for (const Line& line : linesIn(room.width())) {
        const int height = heightOf(line);
        place(line, {room.x(), y, room.width(), height});
        y += height + kBetweenLines;
    }
}

} // namespace tailpoint
