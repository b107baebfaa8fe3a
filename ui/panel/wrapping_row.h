// SPDX-License-Identifier: MIT
// A row of widgets that goes on below where it finds no room. Of a line what expands takes the room that the
// others leave, else they stand at the left.
#pragma once

#include <QLayout>
#include <memory>
#include <vector>

namespace tailpoint {

class WrappingRow : public QLayout {
public:
    explicit WrappingRow(QWidget* parent);
    ~WrappingRow() override;

    void insertWidget(int index, QWidget* widget);
    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize minimumSize() const override; ///< of its widest widget
    QSize sizeHint() const override;    ///< all in one line
    void setGeometry(const QRect& rect) override;

private:
    using Line = std::vector<QLayoutItem*>;
    std::vector<Line> linesIn(int width) const;
    int widthOf(const Line& line) const;
    static int heightOf(const Line& line);
    void place(const Line& line, const QRect& room) const;

    std::vector<std::unique_ptr<QLayoutItem>> m_items;
};

} // namespace tailpoint
