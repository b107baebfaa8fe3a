// SPDX-License-Identifier: MIT
// Sentences and lines of calculation one under another, painted as the worked solution is. As high as they
// are at its width; assistive technology reads them in words.
#pragma once

#include "ui/render/formula.h"
#include "ui/style/theme.h"

#include <QWidget>
#include <vector>

namespace tailpoint {

/// Height of the widget's own text in its pixels.
double pixelsOf(const QWidget& widget);

class MarkedText : public QWidget {
    Q_OBJECT
public:
    enum class Ink { plain, quiet, warning };
    struct Block {
        Prose prose;
        std::optional<Working> working; ///< in place of the prose
        Ink ink = Ink::plain;
        double before = 4; ///< pixels above it
    };

    explicit MarkedText(const QString& objectName, QWidget* parent = nullptr);
    void setTheme(const Theme& theme);
    /// Empty: it takes no room.
    void show(std::vector<Block> blocks);
    QString plainText() const;
    QString spokenText() const; ///< its formulas in words
    static QString plainOf(const Working& working);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Set {
        Setting setting;
        QPointF baseline;
        Ink ink = Ink::plain;
    };
    void layOut();
    double formulaSize(double wanted, double room) const;

    std::vector<Block> m_blocks;
    std::vector<Set> m_set;
    const Theme* m_theme;
};

} // namespace tailpoint
