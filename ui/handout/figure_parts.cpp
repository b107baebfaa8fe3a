// SPDX-License-Identifier: MIT
#include "ui/handout/figure_parts.h"

#include "core/figure/words.h"
#include "core/quantity/decimals.h"

#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

constexpr double kPartPointsPerCm = 72 / 2.54;
constexpr double kBarInset = 14, kTick = 4, kBarText = 9;
constexpr int kMostCm = 10;
constexpr double kRecordText = 8, kRecordLine = 10.5, kRecordInset = 14; // print is read from 8 points on

Path stroke(std::vector<Point> points) {
    Path path;
    path.role = Role::axis;
    path.points = std::move(points);
    path.width = 0.7;
    return path;
}

/// "P = 340 N" to "340 N"; "P" and "circle of possible tips of P" to nothing.
std::vector<Run> valueOf(const std::vector<Run>& runs) {
    const auto first =
        std::find_if(runs.begin(), runs.end(), [](const Run& run) { return run.valueAt.has_value(); });
    std::vector<Run> value(first, runs.end());
    if (!value.empty())
        value.front().text.erase(0, *value.front().valueAt);
    return value;
}

/// Sentences, which stand in sans, keep theirs.
bool hasName(const Text& text) {
    return text.face == Face::serif &&
           std::any_of(text.runs.begin(), text.runs.end(), [](const Run& run) { return run.isName; });
}

void setBox(Text& text, const TextMeasure& measure) {
    const TextExtent e = measure.measure(text.runs, text.face, text.size);
    const double before = text.anchor == Anchor::start    ? 0
                          : text.anchor == Anchor::middle ? e.width / 2
                                                          : e.width;
    text.box = {text.baseline.x - before, text.baseline.y - e.ascent, e.width, e.ascent + e.descent};
}

/// A strip under the figure, of the same sheet.
void extend(DisplayList& list, double room) {
    list.height += room;
    for (Group& group : list.groups)
        if (group.role == Role::sheet && !group.items.empty())
            if (auto* ground = std::get_if<Path>(&group.items.front()))
                ground->points = {{0, 0}, {list.width, 0}, {list.width, list.height}, {0, list.height}};
}

std::vector<Runs> recordRows(const std::vector<std::string>& lines, double width,
                             const TextMeasure& measure) {
    std::vector<Runs> rows;
    const auto widthOf = [&](const Runs& runs) {
        return measure.measure(runs, Face::sans, kRecordText).width;
    };
    for (const std::string& line : lines)
        for (Runs& row : wrapped(plainRuns(line), width - 2 * kRecordInset, widthOf))
            rows.push_back(std::move(row));
    return rows;
}

void leaveOutName(Group& group, const TextMeasure& measure) {
    bool gone = false;
    for (Item& item : group.items) {
        auto* text = std::get_if<Text>(&item);
        if (text && hasName(*text)) {
            text->runs = valueOf(text->runs);
            gone = gone || text->runs.empty();
            setBox(*text, measure);
        }
    }
    const auto left = [&](const Item& item) {
        if (const auto* text = std::get_if<Text>(&item))
            return text->runs.empty();
        const auto* path = std::get_if<Path>(&item);
        return gone && path && path->role == Role::leader;
    };
    std::erase_if(group.items, left);
}

} // namespace

void addScaleBar(DisplayList& list, double room, double unitsPerCm, const Sketch& sketch,
                 const TextMeasure& measure) {
    const int most = static_cast<int>((list.width - 2 * kBarInset) / kPartPointsPerCm);
    const int cm = std::clamp(most, 1, kMostCm);
    const double y = list.height + room - kBarInset, left = kBarInset;
    extend(list, room);
    Group bar;
    bar.role = Role::axis;
    bar.id = "scale-bar";
    bar.title.name = "Bar of " + std::to_string(cm) + " cm to check the scale with a ruler";
    bar.items.emplace_back(stroke({{left, y}, {left + cm * kPartPointsPerCm, y}}));
    for (int i = 0; i <= cm; ++i)
        bar.items.emplace_back(
            stroke({{left + i * kPartPointsPerCm, y - kTick}, {left + i * kPartPointsPerCm, y}}));
    Text text;
    text.anchor = Anchor::start;
    text.face = Face::sans;
    text.size = kBarText;
    text.baseline = {left, y - kTick - 4};
    text.runs = {{std::to_string(cm) + " cm on the ruler.  1 cm = " + shortest(unitsPerCm) + ' ' +
                  std::string(symbolOf(sketch.forceUnit))}};
    setBox(text, measure);
    bar.items.emplace_back(std::move(text));
    list.groups.push_back(std::move(bar));
}

double recordRoom(const std::vector<std::string>& lines, double width, const TextMeasure& measure) {
    const std::size_t rows = recordRows(lines, width, measure).size();
    return rows == 0 ? 0 : static_cast<double>(rows) * kRecordLine + kRecordInset;
}

void addRecord(DisplayList& list, const std::vector<std::string>& lines, const TextMeasure& measure) {
    double baseline = list.height + kRecordLine;
    extend(list, recordRoom(lines, list.width, measure));
    Group group;
    group.role = Role::titleblock;
    group.id = "record";
    group.title.name = "Where the figure comes from";
    for (Runs& row : recordRows(lines, list.width, measure)) {
        Text text;
        text.anchor = Anchor::start;
        text.face = Face::sans;
        text.size = kRecordText;
        text.baseline = {kRecordInset, baseline};
        text.runs = std::move(row);
        setBox(text, measure);
        group.items.emplace_back(std::move(text));
        baseline += kRecordLine;
    }
    list.groups.push_back(std::move(group));
}

void leaveOutNames(DisplayList& list, const TextMeasure& measure) {
    for (Group& group : list.groups)
        if (group.role != Role::axis && group.role != Role::titleblock)
            leaveOutName(group, measure);
}

void leaveOutWords(DisplayList& list, bool names) {
    list.description = "A figure to be completed: some of its names or values are left out.";
    for (Group& group : list.groups) {
        if (group.title.name.empty() || group.role == Role::axis || group.role == Role::titleblock)
            continue;
        if (!names)
            group.id = std::string(nameOf(group.role)) + "-" + std::to_string(&group - list.groups.data());
        group.title = {names ? group.title.name : std::string(nameOf(group.role)), {}};
    }
}

void leaveOutSheet(DisplayList& list) {
    std::erase_if(list.groups, [](const Group& group) { return group.role == Role::sheet; });
    for (Group& group : list.groups)
        for (Item& item : group.items)
            if (auto* text = std::get_if<Text>(&item))
                text->halo = false;
}

} // namespace tailpoint
