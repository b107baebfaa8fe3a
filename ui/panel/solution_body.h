// SPDX-License-Identifier: MIT
// The body of a step of the worked solution: its paragraphs, painted from the very formula trees, and read
// one by one: one of them is current while the keyboard is here.
#pragma once

#include "ui/render/formula.h"
#include "ui/style/theme.h"

#include <QWidget>

namespace tailpoint {

class SolutionBody : public QWidget {
    Q_OBJECT
public:
    /// Tells of a step that is its owner's, and outlives it.
    SolutionBody(const Step& step, QWidget* parent);

    void setTheme(const Theme& theme);
    void setLit(bool lit);
    /// Lays out the step as it is now and says how high it is.
    int layOut(int width);
    void clear(); ///< folded: nothing to be seen or read
    /// It is not laid out as it is now: who asks for a line, or sees it, has wanted() said first.
    void wait() { m_waits = true; }

    int lineCount() const;
    QString lineText(int line) const; ///< in words; empty where there is no such line
    QRect lineRect(int line) const;   ///< in this widget
    int currentLine() const { return m_current; }
    /// Goes there with the keyboard.
    void enter(int line);

signals:
    void lineEntered(const QRect& place); ///< in this widget: to be brought into sight
    void tabbed(bool next);               ///< Tab leaves it, or Shift+Tab
    void wanted() const;                  ///< it waits to be laid out, and somebody reads it

protected:
    bool focusNextPrevChild(bool next) override;
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    enum class Ink { plain, formula, note };
    enum class Source { reasoning, table, working, conclusion, note };
    struct Block {
        Setting setting;
        QPointF baseline;
        Ink ink = Ink::plain;
        Source source = Source::reasoning; ///< and which of these in the step
        std::size_t index = 0;
    };
    void add(Setting setting, double x, Ink ink, double before, Source source, std::size_t index);
    QColor colourOf(Ink ink) const;
    void tellLine();

    const Step& m_step;
    std::vector<Block> m_blocks;
    const Theme* m_theme;
    double m_y = 0;
    int m_current = 0;
    bool m_lit = false, m_waits = false;
};

} // namespace tailpoint
