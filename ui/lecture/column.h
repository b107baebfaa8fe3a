// SPDX-License-Identifier: MIT
// The left third: title, a few words and the formulas, large; lines that do not fit scroll under the title.
#pragma once

#include "ui/lecture/measures.h"
#include "ui/lecture/plan.h"
#include "ui/render/formula.h"
#include "ui/style/theme.h"

#include <QVariantAnimation>
#include <QWidget>
#include <set>

namespace tailpoint {

class LectureColumn : public QWidget {
    Q_OBJECT
public:
    explicit LectureColumn(QWidget* parent);

    void setMeasures(const Measures& measures);
    void setTheme(const Theme& theme);
    void setMoves(bool on);

    /// Where reading begins: at the newest lines, at the top, or at the end of what stands.
    enum class From { newest, top, end };
    /// The stop as far as `beat`; `notes` adds its margin notes.
    void show(const Stop& stop, std::size_t beat, bool notes, From from = From::newest);
    /// What doesn't fit is read page by page; false where there is no more, or nothing before.
    bool pageOn();
    bool pageBack();
    bool hasMore() const;
    /// The title alone, for asking what comes next.
    void showTitle(const QString& title);

    void scrollBy(double pixels);
    /// What is to be read now, as it stands.
    QString plainText() const;
    /// The same for assistive technology, formulas in words.
    QString spokenText() const;

    /// As laid out, for the tests: sizes of text in pixels, and what would leave the column.
    double leastCapital() const;
    double widest() const;
    std::set<std::size_t> linesSeen() const;   ///< whole, on the page that is shown
    std::set<std::size_t> newestLines() const; ///< that came with the last press

signals:
    void turned(); ///< to another page

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    static constexpr double kAir = 0.35; ///< ems between the title and the first line
    enum class Ink { plain, sum, note };
    struct Block {
        Setting setting;
        double x = 0, top = 0;
        Ink ink = Ink::plain;
        bool isNewest = false;
        bool begins = true; ///< a paragraph, a line of calculation with its subject: good to have at the top
    };
    template <class Told> ///< of a text or a formula
    QString told(Told told) const;
    void relayout();
    void layTitle();
    bool layBody(double scale, std::size_t beat, std::vector<Block>& out) const;
    void add(std::vector<Block>& out, Setting setting, double& y, double x, Ink ink, bool newest,
             bool begins = true) const;
    void layWorking(std::vector<Block>& out, const BeatLine& line, double& y, double scale, int seen,
                    bool& broken) const;
    double bodyTop() const { return m_titleHeight; }
    double bodyRoom() const { return height() - m_titleHeight; }
    double heightOf(const std::vector<Block>& blocks) const;
    bool endsInACrumb(const std::vector<Block>& blocks) const;
    // Places are how far the lines have gone up, pixels; always so that a line stands at the top.
    double newestPlace() const;
    double lastPlace() const;
    double nearestPlace(double wanted) const;
    double topOf(const Block& block) const;
    double place() const { return m_target; }
    bool isWhole(const Block& block, double scroll) const;
    void scrollTo(double to);

    Measures m_measures;
    const Theme* m_theme;
    Stop m_stop;
    std::size_t m_beat = 0;
    bool m_notes = false, m_titleOnly = false;
    QString m_title;
    std::vector<std::pair<QString, QPointF>> m_titleLines;
    QFont m_titleFont;
    double m_titleHeight = 0;
    std::vector<Block> m_blocks;
    double m_scroll = 0, m_target = 0; ///< now, and where it slides to
    double m_first = 0;                ///< where reading began
    From m_from = From::newest;
    QVariantAnimation m_slide;
    bool m_moves = true;
};

} // namespace tailpoint
