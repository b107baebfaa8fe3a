// Sheet, grid, axis, the note, and the room that title block and note take.
#include "core/explain/caution.h"
#include "core/figure/drawing.h"

#include <algorithm>

namespace tailpoint {
namespace {

constexpr double kNoteSize = 10, kNoteInset = 14, kNoteLeading = 1.45;
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

std::optional<Box> blockOf(const Drawing& d) {
    return titleBlockBox(d.sketch, d.view, d.options, &d.measure);
}

std::vector<Runs> linesOf(const Drawing& d) {
    return noteLines(d.sketch, d.solved, d.construction, d.options,
                     roomForNote(d.view, blockOf(d), d.factor).width, d.sizeOf(Face::sans, kNoteSize),
                     &d.measure);
}

std::vector<Text> noteTexts(const Drawing& d) {
    const auto lines = linesOf(d);
    const double size = d.sizeOf(Face::sans, kNoteSize), leading = kNoteLeading * size;
    std::vector<Text> texts;
    double y =
        roomForNote(d.view, blockOf(d), d.factor).bottom - leading * static_cast<double>(lines.size() - 1);
    for (const Runs& words : lines) {
        Text text;
        text.baseline = {kNoteInset * d.factor, y};
        text.anchor = Anchor::start;
        text.face = Face::sans;
        text.size = size;
        text.runs = words;
        text.halo = true;
        const TextExtent e = d.measure.measure(text.runs, text.face, size);
        text.box = {text.baseline.x, y - e.ascent, e.width, e.ascent + e.descent};
        texts.push_back(std::move(text));
        y += leading;
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
}

} // namespace

NoteRoom roomForNote(const View& view, const std::optional<Box>& block, double factor) {
    const double inset = kNoteInset * factor, width = view.width - 2 * inset, bottom = view.height - inset;
    if (!block)
        return {width, bottom, true};
    const double beside = block->left - 12 * factor - inset;
    if (beside >= std::max(0.3 * view.width, kLeastNote * factor))
        return {beside, bottom, true};
    return {width, block->top - 0.7 * inset, false};
}

std::vector<Runs> noteLines(const Sketch& sketch, const Solved& solved, const Construction& construction,
                            const FigureOptions& options, double room, double size,
                            const TextMeasure* measure) {
    NoteLines note{sketch, room, size, measure};
    if (options.note && sketch.forces.size() > kMostLabelled)
        note.add(plainRuns(std::to_string(sketch.forces.size()) + " forces: their names are left out."));
    if (options.note && tellsAnswer(options))
        addAnswer(note, solved, construction, options);
    if (needsCaution(sketch))
        note.add(plainRuns(cautionLine()));
    return std::move(note.lines);
}

void reserveRoom(Drawing& d) {
    if (const auto block = blockOf(d))
        d.reserved.push_back(grown(*block, 3 * d.factor));
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
    d.ask(LineEnd{start, end}, Role::label, d.style.labelSize, name).optional = true;
}

} // namespace tailpoint
