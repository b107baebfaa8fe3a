// SPDX-License-Identifier: MIT
// A worked solution row by row, to be walked through and pointed at: what a step says, and each of its lines.
// A list to assistive technology, with a node of its own for every row. As high as its rows are at its width.
#pragma once

#include "core/practice/faded.h"
#include "ui/render/formula.h"
#include "ui/style/theme.h"

#include <QListWidget>
#include <map>

namespace tailpoint {

/// Object name "solutionLines".
class SolutionLines : public QListWidget {
    Q_OBJECT
public:
    explicit SolutionLines(QWidget* parent = nullptr);
    void setTheme(const Theme& theme);

    /// What is to be seen of a solution.
    struct Shown {
        const Worked* worked = nullptr;
        bool linesAlone = false;                 ///< only lines that calculate can be gone to and chosen
        std::optional<WorkingPlace> asked;       ///< a bar stands beside it
        std::map<WorkingPlace, QString> remarks; ///< beneath a line: what was said of it
    };
    /// The row that was gone to stays so, where it is still there.
    void show(const Shown& shown);
    void clearLines();
    /// Puts the keyboard on the first row that can be chosen.
    void takeFocus();
    QString plainText() const;

signals:
    void chosen(tailpoint::WorkingPlace place); ///< clicked, or Return: a line that calculates

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    enum class Ink { plain, quiet, warning };
    struct Block {
        Prose prose;
        std::optional<Working> working;
        Ink ink = Ink::plain;
        bool isBold = false;
    };
    struct Set {
        Setting setting;
        QPointF baseline;
        Ink ink = Ink::plain;
    };
    struct Row {
        std::vector<Block> blocks;
        std::optional<WorkingPlace> place; ///< of a line that calculates, or is blank
        bool isAsked = false;
        QString spoken;
        std::vector<Set> set;
        int height = 0;
    };
    friend class SolutionLineDelegate;

    void addStep(std::size_t index, const Shown& shown);
    void addLine(WorkingPlace place, const Shown& shown);
    void fill(bool linesAlone);
    void layOut();
    double formulaSize(double room) const;
    void layOut(Row& row, double formula);
    void chooseAt(int row);

    std::vector<Row> m_rows;
    int m_lines = 0; ///< that calculate
    const Theme* m_theme;
};

} // namespace tailpoint
