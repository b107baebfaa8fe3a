// SPDX-License-Identifier: MIT
// The handout on pages: laid out once for a paper, then painted page by page on a printer, a PDF or an image.
// A step stays on one page wherever it fits on one.
#pragma once

#include "core/explain/handout.h"
#include "core/figure/display_list.h"
#include "ui/handout/handout_document.h"
#include "ui/render/formula.h"

#include <QPageSize>
#include <QSizeF>
#include <optional>

class QPagedPaintDevice;
class QPdfWriter;

namespace tailpoint {

class PagePainter;

class HandoutPages {
public:
    enum class Ink { plain, quiet, note, caution, figure };
    struct Block {
        Setting setting;
        double x = 0, before = 0; ///< from the column's left; above it
        Ink ink = Ink::plain;
        double height = 0;  ///< of one that fills the page: at least
        int number = 0;     ///< of the step that begins here
        bool rule = false;  ///< a hairline above
        double inset = 0;   ///< of a page-wide box round it
        bool fills = false; ///< room that reaches as far down as what is kept with it allows
        double grid = 0;    ///< points between the lines of a grid in it, every second one stronger; 0: none
        QString code;       ///< told at the foot of its page
        std::optional<LimitShown> limit{}; ///< its bar and word at the column's left, the block beside them
    };
    /// What is kept together.
    using Kept = std::vector<Block>;
    /// At the foot of every page: the codes of what stands on it and `left`; `right`, and of several pages
    /// their numbers.
    struct Foot {
        QString left, right;
    };

    /// `paper` in points.
    HandoutPages(const Handout& handout, DisplayList figure, QSizeF paper);
    /// Of other blocks; `figure` is what a block of that ink paints.
    HandoutPages(std::vector<Kept> groups, DisplayList figure, QSizeF paper, Foot foot);
    HandoutPages(const HandoutPages&) = delete; // pages point at their blocks
    HandoutPages& operator=(const HandoutPages&) = delete;

    int count() const { return static_cast<int>(m_pages.size()); }
    /// Page `index` (0 ...), its paper's top left at the painter's origin, on a device of resolution().
    void paint(QPainter& painter, int index) const;
    /// Dots per inch that the fonts were measured for; a device must have the same.
    static int resolution();
    /// Width of the column on such a paper, layout units (handout_blocks.h).
    static double columnWidth(QSizeF paper);
    /// Points between what these take of a first page and its lower margin; negative where they need more.
    static double roomBelow(const std::vector<Kept>& groups, QSizeF paper);

private:
    struct Placed {
        const Block* block;
        double y, height; ///< of its upper edge on the page; as high as it is there
    };
    void flow();
    void paintBlock(PagePainter& page, const Placed& placed) const;
    void paintGrid(PagePainter& page, const Placed& placed) const;
    void paintLimit(QPainter& painter, const Placed& placed) const;
    void paintFoot(PagePainter& page, int index) const;

    DisplayList m_figure;
    Foot m_foot;
    double m_width, m_height, m_left; ///< page and its left margin, in the layout's units
    std::vector<Kept> m_groups;
    std::vector<std::vector<Placed>> m_pages;
};

/// Every page. False: the device could not be written.
bool paintHandout(QPagedPaintDevice& device, const Result& result, const HandoutChoice& choice);

/// A writer of such pages on this paper, without margins of its own. `title`: of the document.
void prepare(QPdfWriter& writer, const QString& title, QPageSize::PageSizeId paper);

/// Empty where it could not be made.
QByteArray handoutPdf(const Result& result, const HandoutChoice& choice, QPageSize::PageSizeId paper);

} // namespace tailpoint
