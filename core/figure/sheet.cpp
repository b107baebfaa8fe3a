// Sheet, grid, axis and title block.
#include "core/figure/drawing.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {
namespace {

Path rectangle(Role role, const Box& box, bool filled, double width) {
    Path path;
    path.role = role;
    path.points = {
        {box.left, box.top}, {box.right(), box.top}, {box.right(), box.bottom()}, {box.left, box.bottom()}};
    path.closed = true;
    path.filled = filled;
    path.width = width;
    return path;
}

Text cellText(Point baseline, std::string_view words, double size, bool bold) {
    Text text;
    text.role = Role::titleblock;
    text.ink = Role::label;
    text.baseline = baseline;
    text.anchor = Anchor::start;
    text.face = Face::sans;
    text.size = size;
    text.runs = plainRuns(words);
    text.runs.front().bold = bold;
    return text;
}

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

double widthOf(std::string_view words, double size, bool bold, const TextMeasure* measure) {
    if (!measure)
        return 0.56 * size * static_cast<double>(words.size());
    Runs runs = plainRuns(words);
    runs.front().bold = bold;
    return measure->measure(runs, Face::sans, size).width;
}

constexpr double kBlockText = 9.5, kBlockPad = 7, kBlockInset = 10;

/// As much of the title as fits, with an ellipsis where it doesn't.
std::string shortenedTitle(const std::string& title, double room, double size, const TextMeasure& measure) {
    if (widthOf(title, size, true, &measure) <= room)
        return title;
    std::string head = title;
    while (!head.empty() && widthOf(head + "\u2026", size, true, &measure) > room) {
        do
            head.pop_back();
        while (!head.empty() && (static_cast<unsigned char>(head.back()) & 0xC0U) == 0x80U);
        if (!head.empty() && (static_cast<unsigned char>(head.back()) & 0x80U) != 0)
            head.pop_back();
    }
    return head.empty() ? head : head + "\u2026";
}

} // namespace

BlockSize titleBlockSize(const Sketch& sketch, double division, double sheetWidth, double factor,
                         const TextMeasure* measure) {
    const double size = kBlockText * factor, pad = kBlockPad * factor;
    const auto cell = [&](const std::string& words) {
        return widthOf(words, size, false, measure) + 2 * pad;
    };
    BlockSize out{};
    out.cells[0] = cell(scaleWords(sketch, division));
    out.cells[1] = cell(axisWords(sketch));
    out.cells[2] = cell(figuresWords(sketch));
    const double cells = out.cells[0] + out.cells[1] + out.cells[2];
    const double title = widthOf(figureTitle(sketch), size, true, measure) + 2 * pad;
    const double most = std::max(cells, 0.6 * sheetWidth);
    out.width = std::clamp(std::max(title, 230 * factor), cells, most);
    const double spare = (out.width - cells) / 3;
    for (double& width : out.cells)
        width += spare;
    out.height = 2 * (size + 1.3 * pad);
    return out;
}

Box titleBlockBox(const BlockSize& size, double sheetWidth, double sheetHeight, double factor) {
    const double inset = kBlockInset * factor;
    return {sheetWidth - inset - size.width, sheetHeight - inset - size.height, size.width, size.height};
}

void drawTitleBlock(Drawing& d) {
    if (!d.options.titleBlock)
        return;
    const double division = divisionOf(d.view), width = d.weight(d.options.style.arcWidth);
    const BlockSize size = titleBlockSize(d.sketch, division, d.view.width, d.factor, &d.measure);
    const Box box = titleBlockBox(size, d.view.width, d.view.height, d.factor);
    const double pad = kBlockPad * d.factor, middle = box.top + box.height / 2, text = kBlockText * d.factor;
    Group& g = d.add(Role::titleblock, "titleblock", "Title block");
    Path ground = rectangle(Role::sheet, box, true, 0);
    g.items.emplace_back(ground);
    g.items.emplace_back(rectangle(Role::titleblock, box, false, width));
    g.items.emplace_back(line(Role::titleblock, {box.left, middle}, {box.right(), middle}, width / 2));
    const double lift = 0.35 * text; // from the middle of a row to the baseline
    g.items.emplace_back(cellText({box.left + pad, box.top + box.height / 4 + lift},
                                  shortenedTitle(figureTitle(d.sketch), box.width - 2 * pad, text, d.measure),
                                  text, true));
    double left = box.left;
    const std::string cells[3] = {scaleWords(d.sketch, division), axisWords(d.sketch),
                                  figuresWords(d.sketch)};
    for (int i = 0; i < 3; ++i) {
        if (i > 0)
            g.items.emplace_back(line(Role::titleblock, {left, middle}, {left, box.bottom()}, width / 2));
        g.items.emplace_back(cellText({left + pad, middle + box.height / 4 + lift}, cells[i], text, false));
        left += size.cells[i];
    }
    for (Item& item : g.items)
        if (auto* t = std::get_if<Text>(&item)) {
            const TextExtent e = d.measure.measure(t->runs, t->face, t->size);
            t->box = {t->baseline.x, t->baseline.y - e.ascent, e.width, e.ascent + e.descent};
        }
}

void drawSheet(Drawing& d) {
    const Box sheet{0, 0, d.view.width, d.view.height};
    d.add(Role::sheet, "sheet", "").items.emplace_back(rectangle(Role::sheet, sheet, true, 0));
    if (!d.options.grid)
        return;
    const double step = divisionOf(d.view) * d.view.scale, width = d.weight(d.options.style.gridWidth);
    if (!(step > 4))
        return;
    Group& grid = d.add(Role::grid, "grid", "");
    for (double x = d.view.origin.x - std::floor(d.view.origin.x / step) * step; x <= sheet.width; x += step)
        grid.items.emplace_back(line(Role::grid, {x, 0}, {x, sheet.height}, width));
    for (double y = d.view.origin.y - std::floor(d.view.origin.y / step) * step; y <= sheet.height; y += step)
        grid.items.emplace_back(line(Role::grid, {0, y}, {sheet.width, y}, width));
}

void drawAxis(Drawing& d) {
    const double inset = 14 * d.factor, size = d.options.style.labelSize * d.factor;
    const Runs name = axisRuns(d.sketch.reference);
    const TextExtent e = d.measure.measure(name, Face::serif, size);
    const Box room = grown({0, 0, d.view.width, d.view.height}, -inset);
    const Point unit = onCircle({0, 0}, 1, d.sketch.reference.axisDegrees);
    const double far = d.view.width + d.view.height + std::abs(d.view.origin.x) + std::abs(d.view.origin.y);
    Point from = d.common() - far * unit, to = d.common() + far * unit;
    if (!clip(room, from, to))
        return;
    if (contains(room, d.common())) {
        const double back = std::min(length(from - d.common()), 90 * d.factor);
        from = d.common() - back * unit;
    }
    const double name_reach = 2 * reach(e.width, e.ascent + e.descent, unit) + 4 * d.factor;
    to = to - std::min(name_reach, length(to - from)) * unit;
    Group& g = d.add(Role::axis, "axis", "Reference axis " + axisName(d.sketch.reference));
    g.items.emplace_back(line(Role::axis, from, to, d.weight(d.options.style.axisWidth), Dash::chain));
    const Point middle = to + (reach(e.width, e.ascent + e.descent, unit) + 4 * d.factor) * unit;
    g.items.emplace_back(textAround(middle, name, Role::label, size, Face::serif, d.measure));
}

} // namespace tailpoint
