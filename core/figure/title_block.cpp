// The title block: title, scale, axis and sense, figures. Texts in this order.
#include "core/figure/drawing.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kTextSize = 9.5, kPad = 7, kInset = 10, kLeastWidth = 230;
constexpr double kMostOfHeight = 0.3; ///< a sheet on which it would take more has none

struct Layout {
    Box box;
    std::array<double, 3> cells{}; ///< widths
    std::array<std::string, 3> words{};
    double size = kTextSize, pad = kPad;
};

std::string scaleWords(const Sketch& sketch, double division) {
    return "1 division = " + withMinus(shortest(division)) + " " + std::string(symbolOf(sketch.forceUnit));
}

std::string axisWords(const Sketch& sketch) {
    return "from " + withMinus(axisName(sketch.reference)) +
           (sketch.reference.sense == Sense::ccw ? ", ccw" : ", cw");
}

std::string figuresWords(const Sketch& sketch) {
    return std::to_string(sketch.figures) + (sketch.figures == 1 ? " figure" : " figures");
}

Runs boldRuns(std::string_view words) {
    Runs runs = plainRuns(words);
    runs.front().bold = true;
    return runs;
}

double widthOf(const Runs& runs, double size, const TextMeasure* measure) {
    if (measure)
        return measure->measure(runs, Face::sans, size).width;
    return 0.6 * size * static_cast<double>(runs.front().text.size());
}

Layout layoutOf(const Sketch& sketch, const View& view, const Style& style, const TextMeasure* measure) {
    const double factor = style.factor;
    Layout out;
    out.size = std::max(kTextSize * factor, style.leastSans);
    out.pad = kPad * factor;
    out.words = {scaleWords(sketch, divisionOf(view)), axisWords(sketch), figuresWords(sketch)};
    double cells = 0;
    for (std::size_t i = 0; i < 3; ++i)
        cells += out.cells[i] = widthOf(plainRuns(out.words[i]), out.size, measure) + 2 * out.pad;
    const double title = widthOf(boldRuns(figureTitle(sketch)), out.size, measure) + 2 * out.pad;
    const double room = view.width - 2 * kInset * factor;
    if (cells > room && style.leastSans <= 0) { // a narrow sheet: smaller rather than cut
        const double less = room / cells;
        out.size *= less;
        out.pad *= less;
        for (double& cell : out.cells)
            cell *= less;
        cells = room;
    }
    const double most = std::max(cells, 0.5 * view.width);
    const double width = std::clamp(std::max(title, std::min(kLeastWidth * factor, most)), cells, most);
    for (double& cell : out.cells)
        cell += (width - cells) / 3;
    const double height = 2 * (out.size + 1.3 * out.pad), inset = kInset * factor;
    out.box = {view.width - inset - width, view.height - inset - height, width, height};
    return out;
}

/// One UTF-8 character less.
void dropLast(std::string& text) {
    while (!text.empty() && (static_cast<unsigned char>(text.back()) & 0xC0U) == 0x80U)
        text.pop_back();
    if (!text.empty())
        text.pop_back();
}

/// As much of the title as fits, with an ellipsis where it doesn't.
std::string fittedTitle(std::string title, double room, double size, const TextMeasure& measure) {
    if (widthOf(boldRuns(title), size, &measure) <= room)
        return title;
    while (!title.empty() && widthOf(boldRuns(title + "\u2026"), size, &measure) > room)
        dropLast(title);
    return title.empty() ? title : title + "\u2026";
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
                                 const TextMeasure* measure) {
    if (!options.titleBlock)
        return std::nullopt;
    const Box box = layoutOf(sketch, view, options.style, measure).box;
    const bool fits = box.left > 0 && box.height < kMostOfHeight * view.height;
    return fits ? std::optional(box) : std::nullopt;
}

void drawTitleBlock(Drawing& d) {
    if (!titleBlockBox(d.sketch, d.view, d.options, &d.measure))
        return;
    const Layout layout = layoutOf(d.sketch, d.view, d.style, &d.measure);
    const Box& box = layout.box;
    const double outer = d.weight(d.style.arcWidth), inner = std::max(outer / 2, d.style.leastStroke);
    const double middle = box.top + box.height / 2, lift = 0.35 * layout.size;
    Group& g = d.add(Role::titleblock, "titleblock", "Title block");
    g.items.emplace_back(frameOf(Role::sheet, box, true, 0));
    g.items.emplace_back(frameOf(Role::titleblock, box, false, outer));
    g.items.emplace_back(line(Role::titleblock, {box.left, middle}, {box.right(), middle}, inner));
    const auto title = fittedTitle(figureTitle(d.sketch), box.width - 2 * layout.pad, layout.size, d.measure);
    g.items.emplace_back(cellText({box.left + layout.pad, box.top + box.height / 4 + lift}, boldRuns(title),
                                  layout.size, d.measure));
    double left = box.left;
    for (std::size_t i = 0; i < 3; ++i) {
        if (i > 0)
            g.items.emplace_back(line(Role::titleblock, {left, middle}, {left, box.bottom()}, inner));
        g.items.emplace_back(cellText({left + layout.pad, middle + box.height / 4 + lift},
                                      plainRuns(layout.words[i]), layout.size, d.measure));
        left += layout.cells[i];
    }
}

} // namespace tailpoint
