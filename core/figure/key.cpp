// SPDX-License-Identifier: MIT
// The key: what names without values and key letters stand for, as a small table where the sheet is free.
#include "core/figure/drawing.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kSize = 10.5, kLeading = 1.45, kPad = 6, kKeyInset = 10, kStep = 12;

struct KeyTable {
    std::vector<Runs> rows;
    double width = 0, height = 0, size = 0;
};

KeyTable tableOf(const Drawing& d, std::vector<Runs> rows) {
    KeyTable table;
    table.rows = std::move(rows);
    table.size = d.sizeOf(Face::serif, kSize);
    for (Runs& row : table.rows) {
        row = d.legible(std::move(row), table.size);
        table.width = std::max(table.width, d.measure.measure(row, Face::serif, table.size).width);
    }
    table.width += 2 * kPad * d.factor;
    table.height = (static_cast<double>(table.rows.size()) * kLeading) * table.size + kPad * d.factor;
    return table;
}

/// The first free place: from the top left, row by row.
std::optional<Point> placeFor(const Drawing& d, const KeyTable& table, const Obstacles& obstacles) {
    const double inset = kKeyInset * d.factor, step = kStep * d.factor;
    for (double y = inset; y + table.height + inset <= d.sheet.height; y += step)
        for (double x = inset; x + table.width + inset <= d.sheet.width; x += step)
            if (obstacles.isFree(grown({x, y, table.width, table.height}, 3 * d.factor)))
                return Point{x, y};
    return std::nullopt;
}

Text rowText(const Drawing& d, const KeyTable& table, Point at, std::size_t row) {
    const TextExtent e = d.measure.measure(table.rows[row], Face::serif, table.size);
    Text text;
    text.size = table.size;
    text.anchor = Anchor::start;
    text.runs = table.rows[row];
    text.baseline = {at.x + kPad * d.factor, at.y + (static_cast<double>(row) + 1) * kLeading * table.size};
    text.box = {text.baseline.x, text.baseline.y - e.ascent, e.width, e.ascent + e.descent};
    return text;
}

Path frameOf(const Drawing& d, const KeyTable& table, Point at) {
    Path frame;
    frame.role = Role::titleblock;
    frame.points = {at,
                    {at.x + table.width, at.y},
                    {at.x + table.width, at.y + table.height},
                    {at.x, at.y + table.height}};
    frame.closed = true;
    frame.width = d.weight(d.style.arcWidth / 2);
    return frame;
}

} // namespace

void drawKey(Drawing& d, std::vector<Runs> rows, const Obstacles& obstacles) {
    if (rows.empty())
        return;
    const KeyTable table = tableOf(d, std::move(rows));
    const auto at = placeFor(d, table, obstacles);
    if (!at)
        return; // the figure's description still says it all
    Group& g = d.add(Role::label, "key", {"Key", {}});
    g.items.emplace_back(frameOf(d, table, *at));
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        g.items.emplace_back(rowText(d, table, *at, row));
}

} // namespace tailpoint
