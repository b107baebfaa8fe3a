// SPDX-License-Identifier: MIT
// Sheet, grid, axis, the note, and the room that title block and note take.
#include "core/explain/caution.h"
#include "core/explain/ranges.h"
#include "core/figure/drawing.h"
#include "core/figure/tolerated.h"

#include <algorithm>
#include <array>

namespace tailpoint {
namespace {

constexpr double kNoteInset = 14;
constexpr double kLeastNote = 130; ///< a narrower note goes above the title block

void addGridLine(Group& grid, Point a, Point b, double width) {
    grid.items.emplace_back(line(Role::grid, a, b, width));
}

/// One after the other, each broken into lines of the note.
struct NoteLines {
    const Sketch& sketch;
    double room, size;
    const TextMeasure* measure;
    std::vector<Runs> lines{};
    void add(const Runs& text);
};

void NoteLines::add(const Runs& text) {
    const auto more = wrapped(text, room, [&](const Runs& words) {
        return measure ? measure->measure(words, Face::sans, size).width
                       : 0.6 * size * static_cast<double>(plainText(words).size());
    });
    lines.insert(lines.end(), more.begin(), more.end());
}

std::vector<Text> noteTexts(const Drawing& d) {
    const Note& note = d.foot.note;
    std::vector<Text> texts;
    double y = note.bottom - note.leading * static_cast<double>(note.lines.size() - 1);
    for (const Runs& words : note.lines) {
        Text text;
        text.baseline = {kNoteInset * d.factor, y};
        text.anchor = Anchor::start;
        text.face = Face::sans;
        text.size = note.size;
        text.runs = words;
        text.halo = true;
        const TextExtent e = d.measure.measure(text.runs, text.face, text.size);
        text.box = {text.baseline.x, y - e.ascent, e.width, e.ascent + e.descent};
        texts.push_back(std::move(text));
        y += note.leading;
    }
    return texts;
}

/// What the answer is, or why there is none.
void addAnswer(NoteLines& note, const Solved& solved, const Construction& construction,
               const FigureOptions& options) {
    const Sketch& sketch = note.sketch;
    if (isEquilibrium(sketch) && !solved.solutions.empty())
        note.add(plainRuns("Equilibrium: the sum of the forces is zero."));
    if (construction.parallelogram && options.construction == ConstructionKind::parallelogram &&
        construction.shape != Shape::proper && !isEquilibrium(sketch)) {
        std::string words(wordsFor(construction.shape));
        words.front() = 'T';
        if (construction.shape == Shape::zeroForce)
            words.replace(0, 1, "A");
        note.add(plainRuns(words + "."));
    }
    if (!solved.finding().empty())
        note.add(phraseRuns(solved.finding(), Things(sketch)));
    if (options.tolerated && options.solution < options.tolerated->ranges.size())
        for (const Prose& remark : rangeRemarks(options.tolerated->ranges[options.solution], sketch))
            note.add(plainRuns(toText(remark)));
}

bool needsCautionNow(const Sketch& sketch, const FigureOptions& options) {
    return options.caution && needsCaution(sketch);
}

std::vector<Runs> noteLines(const Sketch& sketch, const Solved& solved, const Construction& construction,
                            const FigureOptions& options, double room, double size,
                            const TextMeasure* measure) {
    NoteLines note{sketch, room, size, measure};
    if (options.note && sketch.forces.size() > kMostLabelled)
        note.add(plainRuns(std::to_string(sketch.forces.size()) + " forces: their names are left out."));
    if (options.note && tellsAnswer(options))
        addAnswer(note, solved, construction, options);
    if (const Runs legend = toleranceLegend(sketch, solved, options); !legend.empty())
        note.add(legend);
    if (needsCautionNow(sketch, options))
        note.add(plainRuns(cautionLine()));
    return std::move(note.lines);
}

/// Beside the block, or above it.
Note noteIn(const View& view, const std::optional<Box>& block, const FootSizes& sizes, const Style& style) {
    const double factor = style.factor, inset = kNoteInset * factor;
    Note note;
    note.size = std::max(sizes.note * factor, style.leastSans);
    note.leading = sizes.leading * note.size;
    note.width = view.width - 2 * inset;
    note.bottom = view.height - sizes.under * factor;
    if (!block)
        return note;
    const double beside = block->left - 12 * factor - inset;
    if (beside >= std::max(0.3 * view.width, kLeastNote * factor))
        note.width = beside;
    else
        note.bottom = block->top - 0.7 * inset;
    return note;
}

double topOf(const Foot& foot, const View& view) {
    return std::min(foot.block ? foot.block->top : view.height,
                    foot.note.lines.empty() ? view.height : foot.note.top());
}

/// From what is comfortable down to what can still be read: 8 points, the least that print is read at.
constexpr std::array kFootSizes{FootSizes{}, FootSizes{9.5, 7, 9.5, 1.25, 12},
                                FootSizes{8.5, 5, 8.5, 1.2, 12}, FootSizes{8, 4, 8, 1.2, 12}};
constexpr double kMostOfFoot = 0.1; ///< of the sheet's height, with a caution

} // namespace

Foot footOf(const Sketch& sketch, const Solved& solved, const Construction& construction, const View& view,
            const FigureOptions& options, const TextMeasure* measure) {
    const auto footWith = [&](const FootSizes& sizes) {
        Foot foot{titleBlockBox(sketch, view, options, sizes, measure), sizes, {}};
        foot.note = noteIn(view, foot.block, sizes, options.style);
        foot.note.lines =
            noteLines(sketch, solved, construction, options, foot.note.width, foot.note.size, measure);
        return foot;
    };
    Foot best = footWith(kFootSizes.front());
    if (!needsCautionNow(sketch, options))
        return best;
    const double enough = (1 - kMostOfFoot) * view.height;
    for (std::size_t i = 1; i < kFootSizes.size() && topOf(best, view) < enough; ++i)
        if (Foot smaller = footWith(kFootSizes.at(i)); topOf(smaller, view) > topOf(best, view))
            best = std::move(smaller);
    return best;
}

void reserveRoom(Drawing& d) {
    d.foot = footOf(d.sketch, d.solved, d.construction, d.view, d.options, &d.measure);
    if (d.foot.block)
        d.reserved.push_back(grown(*d.foot.block, 3 * d.factor));
    for (const Text& text : noteTexts(d))
        d.reserved.push_back(grown(text.box, 3 * d.factor));
}

void drawNote(Drawing& d) {
    const auto texts = noteTexts(d);
    if (texts.empty())
        return;
    Group& g = d.add(Role::label, "note", {"Note", {}});
    for (const Text& text : texts)
        g.items.emplace_back(text);
}

void drawSheet(Drawing& d) {
    Path ground;
    ground.role = Role::sheet;
    ground.points = {{0, 0}, {d.sheet.width, 0}, {d.sheet.width, d.sheet.height}, {0, d.sheet.height}};
    ground.closed = ground.filled = true;
    ground.width = 0;
    d.add(Role::sheet, "sheet", {}).items.emplace_back(ground);
    const double step = divisionOf(d.view) * d.view.scale, width = d.style.gridWidth * d.factor;
    if (!d.options.grid || !(step > 4))
        return;
    Group& grid = d.add(Role::grid, "grid", {});
    const auto first = [&](double origin) { return origin - std::floor(origin / step) * step; };
    for (double x = first(d.common().x); x <= d.sheet.width; x += step)
        addGridLine(grid, {x, 0}, {x, d.sheet.height}, width);
    for (double y = first(d.common().y); y <= d.sheet.height; y += step)
        addGridLine(grid, {0, y}, {d.sheet.width, y}, width);
}

void drawAxis(Drawing& d) {
    if (d.options.alone && d.triangle())
        return;
    const double size = d.sizeOf(Face::serif, d.style.labelSize);
    const Runs name = axisRuns(d.sketch.reference);
    const TextExtent e = d.measure.measure(name, Face::serif, size);
    const Point unit = onCircle({0, 0}, 1, d.axisDegrees());
    const Box room = grown(d.sheet, -12 * d.factor);
    // Ahead as far as the sheet goes, less the name; behind the point a stub that marks the line.
    const double ahead = d.sheet.width + d.sheet.height;
    const Point from = d.common() - 84 * d.factor * unit, to = d.common() + ahead * unit;
    const auto parts = visibleParts(from, to, room, d.reserved);
    if (parts.empty())
        return;
    Group& g = d.add(Role::axis, "axis", {"Reference axis " + axisName(d.sketch.reference), {}},
                     FigureShape{FigureShape::Kind::axis, kNobody});
    Point end = to, start = from;
    for (const auto& part : parts) {
        if ((part[1] - part[0]) * length(to - from) < 8 * d.factor)
            continue; // a crumb beside title block or note
        start = from + part[0] * (to - from);
        end = from + part[1] * (to - from);
        if (&part == &parts.back()) {
            const double nameRoom = 2 * reach(e.width, e.ascent + e.descent, unit) + 6 * d.factor;
            end = end - std::min(nameRoom, length(end - start)) * unit;
        }
        g.items.emplace_back(line(Role::axis, start, end, d.weight(d.style.axisWidth), Dash::chain));
    }
    // Beside the stub the name would stand for the other way.
    const auto aheadOf = [&](Point place) { return dot(place - d.common(), unit); };
    if (aheadOf(end) > 0)
        d.ask(LineEnd{aheadOf(start) > 0 ? start : d.common(), end}, Role::label, d.style.labelSize, name)
            .optional = true;
}

} // namespace tailpoint
