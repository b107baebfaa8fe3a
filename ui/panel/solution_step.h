// One step of the worked solution: a head that folds it, and its body, painted from the very formula trees.
#pragma once

#include "ui/render/formula.h"
#include "ui/style/theme.h"

#include <QAbstractButton>
#include <QWidget>

namespace tailpoint {

/// Number and title; checked: unfolded.
class SolutionHead : public QAbstractButton {
    Q_OBJECT
public:
    explicit SolutionHead(QWidget* parent);
    void show(int number, const QString& title);
    void setTheme(const Theme& theme);
    int heightFor(int width) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    int m_number = 0;
    const Theme* m_theme;
};

class SolutionStep : public QWidget {
    Q_OBJECT
public:
    explicit SolutionStep(QWidget* parent);

    /// Takes the step over; lays out anew only what differs. `number` counts from 1.
    void show(const Step& step, int number);
    void setTheme(const Theme& theme);
    void setLit(bool lit);
    bool isLit() const { return m_lit; }
    void setUnfolded(bool unfolded);
    bool isUnfolded() const;
    const Step& step() const { return m_step; }

    /// Lays the step out for this width and says how high it is.
    int layOut(int width);
    QString plainText() const;
    /// What goes along with a copy of its text.
    void setCopiedBelow(const QString& text) { m_copiedBelow = text; }

signals:
    void pointed(bool inside); ///< the pointer or the keyboard is on this step
    void foldChanged();

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    enum class Ink { plain, formula, note };
    struct Block {
        Setting setting;
        QPointF baseline;
        Ink ink = Ink::plain;
    };
    void layOutBody(double width);
    void add(Setting setting, double x, Ink ink, double before);
    QColor colourOf(Ink ink) const;

    Step m_step;
    std::vector<Block> m_blocks;
    SolutionHead* m_head;
    const Theme* m_theme;
    int m_width = -1, m_height = 0;
    double m_y = 0;
    bool m_lit = false;
    QString m_copiedBelow;
};

} // namespace tailpoint
