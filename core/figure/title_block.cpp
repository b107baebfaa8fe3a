// SPDX-License-Identifier: MIT
// The title block: title, scale, axis and sense, figures. Texts in this order.
#include "core/figure/drawing.h"
#include "core/quantity/utf8.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kInset = 10, kLeastWidth = 230;
constexpr double kMostOfHeight = 0.3; ///< a sheet on which it would take more has none
constexpr double kPadInRoom = 0.3;    ///< of the letters' size
constexpr double kMostInRoom = 0.5;   ///< the same where it can't be set smaller
constexpr double kBoundless = 1e300;
constexpr std::size_t kMostTitleLines = 4;

struct Cell {
    Runs words;
    double width = 0;
};
struct Row {
    std::vector<Cell> cells;
    double height = 0, lift = 0; ///< lift: of the baseline over the row's foot
    bool ruled = true;           ///< a line above it
};
struct Layout {
    Box box;
    std::vector<Row> rows;
    double size = 0, pad = 0;
};

Runs scaleWords(const Sketch& sketch, double division) {
    return plainRuns("1 division = " + withMinusSigns(shortest(division)) + " " +
                     std::string(symbolOf(sketch.forceUnit)));
}

/// "from +x, ccw", or "+x, ccw" in little room.
Runs axisWords(const Sketch& sketch, bool isShort) {
    Runs words = isShort ? Runs() : plainRuns("from ");
    for (Run& run : axisRuns(sketch.reference))
        if (words.empty() || run.italic || words.back().italic)
            words.push_back(std::move(run));
        else
            words.back().text += run.text;
    const std::string_view sense = sketch.reference.sense == Sense::ccw ? ", ccw" : ", cw";
    if (words.back().italic)
        words.push_back(plainRuns(sense).front());
    else
        words.back().text += sense;
    return words;
}

Runs figuresWords(const Sketch& sketch) {
    return plainRuns(std::to_string(sketch.figures) + (sketch.figures == 1 ? " figure" : " figures"));
}

Runs boldRuns(std::string_view words) {
    Runs runs = plainRuns(words);
    runs.front().bold = true;
    return runs;
}

double widthOf(const Runs& runs, double size, const TextMeasure* measure) {
    if (measure)
        return measure->measure(runs, Face::sans, size).width;
    return 0.6 * size * static_cast<double>(plainText(runs).size());
}

/// What stands side by side under the title.
using Arrangement = std::vector<std::vector<Runs>>;

double widthOf(const Arrangement& rows, double size, double pad, const TextMeasure* measure) {
    double widest = 0;
    for (const auto& row : rows) {
        double width = 0;
        for (const Runs& words : row)
            width += widthOf(words, size, measure) + 2 * pad;
        widest = std::max(widest, width);
    }
    return widest;
}

/// All in one row; where that is too wide and nothing may be set smaller, with fewer words, in two rows or in
/// three.
Arrangement arranged(const Sketch& sketch, const View& view, double size, double pad, double room,
                     const TextMeasure* measure) {
    const Runs scale = scaleWords(sketch, divisionOf(view)), axis = axisWords(sketch, false),
               figures = figuresWords(sketch);
    const std::array<Arrangement, 4> ways{{{{scale, axis, figures}},
                                           {{scale, axisWords(sketch, true), figures}},
                                           {{scale}, {axis, figures}},
                                           {{scale}, {axis}, {figures}}}};
    for (const Arrangement& rows : ways)
        if (widthOf(rows, size, pad, measure) <= room)
            return rows;
    return ways.back();
}

/// As much of the title as fits, with an ellipsis where it doesn't; found by halves, since each measure takes
/// as long as the text.
std::string fittedTitle(const std::string& title, double room, double size, const TextMeasure* measure) {
    const auto fits = [&](const std::string& words) {
        return widthOf(boldRuns(words), size, measure) <= room;
    };
    if (fits(title))
        return title;
    const auto begin = characterBegins(title);
    const auto cut = [&](std::size_t count) { return title.substr(0, begin[count]) + "\u2026"; };
    std::size_t most = 0, over = begin.size(); // characters that fit, and that don't
    while (over - most > 1) {
        const std::size_t middle = (most + over) / 2;
        (fits(cut(middle)) ? most : over) = middle;
    }
    return most == 0 ? std::string() : cut(most);
}

/// The whole title, in several lines where it must; of a very long one as much as leaves the block its other
/// rows.
std::vector<std::string> titleLines(const Sketch& sketch, double room, double size,
                                    const TextMeasure* measure) {
    const std::string title = figureTitle(sketch);
    std::vector<std::string> lines;
    for (const Runs& line :
         wrapped(boldRuns(title), room, [&](const Runs& words) { return widthOf(words, size, measure); }))
        lines.push_back(plainText(line));
    if (lines.size() > kMostTitleLines) {
        for (std::size_t i = kMostTitleLines; i < lines.size(); ++i)
            lines[kMostTitleLines - 1] += ' ' + lines[i];
        lines.resize(kMostTitleLines);
    }
    for (std::string& line : lines) // a long word too
        line = fittedTitle(line, room, size, measure);
    return lines;
}

/// Who drew and checked it and its revision, as far as they are given: side by side where the block is wide
/// enough, else one below the other, shortened.
Arrangement entriesOf(const TitleBlock& block, double size, double pad, double width,
                      const TextMeasure* measure) {
    std::vector<std::string> entries;
    for (const auto& [what, entry] :
         {std::pair{"drawn ", &block.drawn}, std::pair{"checked ", &block.checked},
          std::pair{"revision ", &block.revision}})
        if (!entry->empty())
            entries.push_back(what + *entry);
    std::vector<Runs> row;
    for (const std::string& entry : entries)
        row.push_back(plainRuns(entry));
    if (row.empty() || widthOf(Arrangement{row}, size, pad, measure) <= width)
        return row.empty() ? Arrangement{} : Arrangement{row};
    Arrangement rows;
    for (const std::string& entry : entries)
        rows.push_back({plainRuns(fittedTitle(entry, width - 2 * pad, size, measure))});
    return rows;
}

void addTitle(Layout& out, const std::vector<std::string>& lines, double width) {
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const double above = (i == 0 ? 0.65 : 0.1) * out.pad,
                     below = (i + 1 == lines.size() ? 0.65 : 0.1) * out.pad;
        out.rows.push_back(
            {{{boldRuns(lines[i]), width}}, out.size + above + below, below + 0.15 * out.size, false});
    }
}

void addCells(Layout& out, const Arrangement& rows, double width, const TextMeasure* measure) {
    for (const auto& words : rows) {
        Row row{{}, out.size + 1.3 * out.pad, 0.65 * out.pad + 0.15 * out.size, true};
        double taken = 0;
        for (const Runs& cell : words) {
            row.cells.push_back({cell, widthOf(cell, out.size, measure) + 2 * out.pad});
            taken += row.cells.back().width;
        }
        for (Cell& cell : row.cells)
            cell.width += (width - taken) / static_cast<double>(row.cells.size());
        out.rows.push_back(std::move(row));
    }
}

Layout layoutOf(const Sketch& sketch, const View& view, const FigureOptions& options, const FootSizes& sizes,
                const TextMeasure* measure) {
    const Style& style = options.style;
    const double factor = style.factor, room = view.width - 2 * kInset * factor;
    Layout out;
    out.size = std::max(sizes.block * factor, style.leastSans);
    out.pad = sizes.pad * factor;
    if (style.leastSans > 0) // large letters part the rows by themselves
        out.pad = std::min(out.pad, kPadInRoom * out.size);
    const bool shrinks = style.leastSans <= 0; // a narrow sheet: smaller rather than cut
    const Arrangement rows = arranged(sketch, view, out.size, out.pad, shrinks ? kBoundless : room, measure);
    double cells = widthOf(rows, out.size, out.pad, measure);
    const double title = widthOf(boldRuns(figureTitle(sketch)), out.size, measure) + 2 * out.pad;
    if (cells > room && shrinks) {
        out.size *= room / cells;
        out.pad *= room / cells;
        cells = room;
    }
    const double most = std::max(cells, shrinks ? 0.5 * view.width : room); // in a room rather wide than high
    const double width = std::clamp(
        std::max(title, std::min(kLeastWidth * factor * sizes.block / FootSizes{}.block, most)), cells, most);
    addTitle(out, titleLines(sketch, width - 2 * out.pad, out.size, measure), width);
    addCells(out, rows, width, measure);
    if (tellsAnswer(options)) // an exercise is a student's sheet
        addCells(out, entriesOf(sketch.titleBlock, out.size, out.pad, width, measure), width, measure);
    double height = 0;
    for (const Row& row : out.rows)
        height += row.height;
    const double inset = kInset * factor;
    out.box = {view.width - inset - width, view.height - inset - height, width, height};
    return out;
}

Text cellText(Point baseline, Runs runs, double size, const TextMeasure& measure) {
    const TextExtent e = measure.measure(runs, Face::sans, size);
    Text text;
    text.role = Role::titleblock;
    text.baseline = baseline;
    text.anchor = Anchor::start;
    text.face = Face::sans;
    text.size = size;
    text.runs = std::move(runs);
    text.box = {baseline.x, baseline.y - e.ascent, e.width, e.ascent + e.descent};
    return text;
}

Path frameOf(Role role, const Box& box, bool filled, double width) {
    Path path;
    path.role = role;
    path.points = {
        {box.left, box.top}, {box.right(), box.top}, {box.right(), box.bottom()}, {box.left, box.bottom()}};
    path.closed = true;
    path.filled = filled;
    path.width = width;
    return path;
}

} // namespace

std::optional<Box> titleBlockBox(const Sketch& sketch, const View& view, const FigureOptions& options,
                                 const FootSizes& sizes, const TextMeasure* measure) {
    if (!options.titleBlock)
        return std::nullopt;
    const Box box = layoutOf(sketch, view, options, sizes, measure).box;
    const double most = options.style.leastSans > 0 ? kMostInRoom : kMostOfHeight;
    const bool fits = box.left > 0 && box.height < most * view.height;
    return fits ? std::optional(box) : std::nullopt;
}

void drawTitleBlock(Drawing& d) {
    if (!d.foot.block)
        return;
    const Layout layout = layoutOf(d.sketch, d.view, d.options, d.foot.sizes, &d.measure);
    const Box& box = layout.box;
    const double outer = d.weight(d.style.arcWidth), inner = std::max(outer / 2, d.style.leastStroke);
    Group& g = d.add(Role::titleblock, "titleblock", {"Title block", {}});
    g.items.emplace_back(frameOf(Role::sheet, box, true, 0));
    g.items.emplace_back(frameOf(Role::titleblock, box, false, outer));
    double top = box.top;
    for (const Row& row : layout.rows) {
        const double foot = top + row.height;
        if (row.ruled)
            g.items.emplace_back(line(Role::titleblock, {box.left, top}, {box.right(), top}, inner));
        double left = box.left;
        for (const Cell& cell : row.cells) {
            if (left > box.left)
                g.items.emplace_back(line(Role::titleblock, {left, top}, {left, foot}, inner));
            g.items.emplace_back(
                cellText({left + layout.pad, foot - row.lift}, cell.words, layout.size, d.measure));
            left += cell.width;
        }
        top = foot;
    }
}

} // namespace tailpoint
