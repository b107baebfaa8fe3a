// SPDX-License-Identifier: MIT
// The first page of what will be printed.
#pragma once

#include "ui/handout/handout_pages.h"

#include <QWidget>
#include <memory>

namespace tailpoint {

/// A page on its paper, as large as there is room.
class PagePreview : public QWidget {
    Q_OBJECT
public:
    explicit PagePreview(QWidget* parent = nullptr);
    void show(std::unique_ptr<HandoutPages> pages, QSizeF paper); ///< none: an empty page
    QSize sizeHint() const override { return {360, 500}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::unique_ptr<HandoutPages> m_pages;
    QSizeF m_paper;
};

} // namespace tailpoint
