// SPDX-License-Identifier: MIT
#include "core/explain/table.h"

#include "core/explain/agreement.h"
#include "core/explain/families.h"
#include "core/explain/listed.h"
#include "core/quantity/decimals.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::explaining {

namespace {

/// Decimals of a turned angle in radians, so that a small cosine still computes: as many more than figures
/// are carried, these at least, and no more than a double has.
constexpr int kMoreDecimals = 7, kLeastDecimals = 12, kMostDecimals = 15;

constexpr std::size_t kMostRows = 40;   ///< of a table; beyond, the first half of them and the rest summed up
constexpr std::size_t kMostWritten = 6; ///< terms of a written sum
constexpr std::size_t kMostResolved = 12; ///< vectors whose components are worked line by line

void explainTable(const Board& board, Step& step) {
    step.reasoning.push_back(
        board.say(SENTENCE("solution", "Each component with its sign; then add each column.")));
    if (!isPlainReference(board.sketch))
        step.reasoning.push_back(board.say(
            board.isCounterClockwise(1)
                ? SENTENCE("solution", "Directions count from {axis}, counter-clockwise; in the "
                                       "table all angles are converted to angles from +x, "
                                       "counter-clockwise.")
                : SENTENCE("solution", "Directions count from {axis}, clockwise; in the table all "
                                       "angles are converted to angles from +x, counter-clockwise."),
            "axis", board.axisWords()));
}

/// What the magnitudes would make as plain numbers.
void noteAddedMagnitudes(const Board& board, Step& step, const Carried& lines, const Entries& entries,
                         const Total& total) {
    double added = 0;
    for (const auto& [vector, sign] : entries)
        added += sign * board.at(vector).sizeNumber.value;
    const Formula wrong = board.force(std::abs(added)),
                  right = board.force(static_cast<double>(
                      std::hypot(lines.value(total.x).value_or(0), lines.value(total.y).value_or(0))));
    const bool areAdded =
        std::all_of(entries.begin(), entries.end(), [](const Entry& entry) { return entry.second > 0; });
    const auto wording = [&] {
        if (isWithinOnePlace(board, wrong, right))
            return SENTENCE("solution", "Magnitudes don't add up, components do, each with its sign.");
        return areAdded
                   ? SENTENCE("solution", "Magnitudes don't add up, components do, each with its sign: as "
                                          "plain numbers the magnitudes would give {value} for {total}.")
                   : SENTENCE("solution",
                              "Magnitudes are not added and taken away, components are, each with "
                              "its sign: as plain numbers the magnitudes would give {value} for "
                              "{total}.");
    }();
    step.notes.push_back(board.say(wording, "value", wrong, "total", total.name));
}

std::vector<Formula> headOf(const Board& board) {
    const auto cell = [&](const Wording& wording) { return inWords(board.text(wording)); };
    return {cell(SENTENCE("table", "force")), cell(SENTENCE("table", "magnitude")),
            isPlainReference(board.sketch) ? cell(SENTENCE("table", "direction"))
                                           : cell(SENTENCE("table", "from +x")),
            inWords("x"), inWords("y")};
}

Formula withOtherSign(Formula number) {
    if (number.value == 0)
        return number;
    number.value = -number.value;
    number.text = number.text.starts_with('-') ? number.text.substr(1) : "-" + number.text;
    return number;
}

bool isAlongSlope(const Board& board, const Vector& vector) {
    return std::holds_alternative<SlopeForm>(board.given(vector.id).direction.form) && !vector.turned;
}

void explainComponents(const Board& board, Step& step, const Entries& entries) {
    const auto alongSlope = [&](const Entry& entry) { return isAlongSlope(board, board.at(entry.first)); };
    std::vector<const Vector*> slopes;
    if (!std::all_of(entries.begin(), entries.end(), alongSlope))
        step.reasoning.push_back(board.say(
            SENTENCE("solution", "Resolve along the sheet's x and y: x is the magnitude times the cosine, "
                                 "y the magnitude times the sine of the angle from +x, signs included.")));
    for (const Entry& entry : entries)
        if (alongSlope(entry))
            slopes.push_back(&board.at(entry.first));
    tellSlopes(board, step, slopes);
}

struct Rows {
    const Board& board;
    const Carried& lines;

    /// Under the ids that the vector has where the lines begin.
    QuantityId of(What what, const Vector& vector) const {
        return {what, vector.id, {}, std::max(vector.sizeId.answer, vector.wayId.answer), vector.wayId.part};
    }
    /// The angle from +x.
    Formula angle(const Vector& vector) const {
        if (isAlongSlope(board, vector))
            return inWords(withMinusSigns(shownAsGiven(board.given(vector.id).direction, board.sketch)));
        if (isPlainReference(board.sketch))
            return vector.wayNumber;
        const QuantityId fromX{What::fromX, vector.id, {}, vector.wayId.answer, vector.wayId.part};
        return lines.number(fromX);
    }
    /// Where the sheet measures otherwise, unless a step has told it.
    void showFromX(Step& step, const Vector& vector) const {
        const QuantityId id{What::fromX, vector.id, {}, vector.wayId.answer, vector.wayId.part};
        const bool isTold = !vector.turned && isToldFromX(board, vector.id);
        if (isPlainReference(board.sketch) || isTold || lines.find(id) == nullptr)
            return;
        introduceFromX(board, step);
        step.workings.push_back(lines.working(id));
        step.lines.push_back(id);
    }
    /// Of the vector with the other sign.
    Formula opposite(const Vector& vector) const {
        if (isAlongSlope(board, vector)) {
            auto slope = std::get<SlopeForm>(board.given(vector.id).direction.form);
            Direction turned;
            turned.form = SlopeForm{0 - slope.run, 0 - slope.rise};
            return inWords(withMinusSigns(shownAsGiven(turned, board.sketch)));
        }
        Formula turned = angle(vector);
        const auto point = turned.text.find('.');
        int decimals = point == std::string::npos ? 0 : static_cast<int>(turned.text.size() - point - 1);
        if (board.sketch.angleUnit == AngleUnit::rad) // a half turn has no end there
            decimals = std::clamp(board.sketch.figures + lines.guard() + kMoreDecimals, kLeastDecimals,
                                  kMostDecimals);
        turned.value = normalized(turned.value + board.half(), board.sketch.angleUnit);
        turned.text = fixedDecimals(turned.value, decimals);
        return turned;
    }
    Formula component(What what, const Entry& entry) const {
        const QuantityId id = of(what, board.at(entry.first));
        Formula number = lines.number(id);
        return entry.second > 0 ? number : withOtherSign(std::move(number));
    }
    std::vector<Formula> row(const Entry& entry) const {
        const Vector& vector = board.at(entry.first);
        const bool taken = entry.second < 0;
        return {taken ? negative(vector.vector) : vector.vector, vector.sizeNumber,
                taken ? opposite(vector) : angle(vector), component(What::x, entry),
                component(What::y, entry)};
    }
    /// All entries from `first` on in one row.
    std::vector<Formula> rest(const Entries& entries, std::size_t first) const {
        Eigen::Vector2d total(0, 0);
        for (std::size_t i = first; i < entries.size(); ++i)
            total +=
                Eigen::Vector2d(component(What::x, entries[i]).value, component(What::y, entries[i]).value);
        const auto cell = [&](double value) {
            return lines.carried(withoutNoise(value, lines.scale), Dimension::force);
        };
        return {inWords(toText(board.say(SENTENCE("table", "the other {count}"), "count",
                                         count(static_cast<int>(entries.size() - first))))),
                inWords(""), inWords(""), cell(total.x()), cell(total.y())};
    }
};

} // namespace

void tellSlopes(const Board& board, Step& step, const std::vector<const Vector*>& slopes) {
    if (slopes.empty())
        return;
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "Along a slope the components are to the magnitude as run and rise are "
                             "to their hypotenuse, by Pythagoras: no angle is needed.")));
    std::vector<Prose> lengths;
    for (const Vector* vector : slopes) {
        const auto slope = std::get<SlopeForm>(board.given(vector->id).direction.form);
        const double length = std::hypot(slope.run, slope.rise);
        if (length != std::round(length) || slope.run != std::round(slope.run))
            continue; // stands as a root in the lines
        const auto squared = [](double side) { return power(number(side, shortest(side)), 2); };
        Prose told{{equal(root(sum(squared(std::abs(slope.run)), squared(std::abs(slope.rise)))),
                          number(length, shortest(length)))}};
        if (std::find(lengths.begin(), lengths.end(), told) == lengths.end())
            lengths.push_back(std::move(told));
    }
    if (lengths.size() == 1)
        step.reasoning.push_back(board.say(SENTENCE("solution", "The hypotenuse is {length}."), "length",
                                           std::move(lengths.front())));
    else if (!lengths.empty())
        step.reasoning.push_back(board.say(SENTENCE("solution", "The hypotenuses are {lengths}."), "lengths",
                                           listed(board, std::move(lengths))));
}

Total totalOf(const Vector& vector) {
    return {vector.vector, {What::x, vector.id}, {What::y, vector.id}};
}

void writeComponentTable(const Board& board, Step& step, const Carried& lines, const Entries& entries,
                         const std::optional<Total>& total) {
    explainTable(board, step);
    const Rows rows{board, lines};
    Table table;
    table.head = headOf(board);
    table.hasTotal = total.has_value();
    const std::size_t shown = entries.size() <= kMostRows ? entries.size() : kMostRows / 2;
    for (std::size_t i = 0; i < shown; ++i)
        table.rows.push_back(rows.row(entries[i]));
    if (shown < entries.size())
        table.rows.push_back(rows.rest(entries, shown));
    if (total) {
        table.rows.push_back(
            {total->name, inWords(""), inWords(""), lines.number(total->x), lines.number(total->y)});
        noteAddedMagnitudes(board, step, lines, entries, *total);
    }
    step.table = std::move(table);
}

void writeComponents(Board& board, const Carried& lines, const Entries& entries) {
    if (entries.empty() || entries.size() > kMostResolved)
        return;
    Step& step = board.step(StepKey::resolved, SENTENCE("solution", "Components of each vector"),
                            Stage::construction, Law::components);
    explainComponents(board, step, entries);
    const Rows rows{board, lines};
    for (const auto& [vector, sign] : entries) {
        step.parts.push_back(arrowPart(board.at(vector).index));
        rows.showFromX(step, board.at(vector));
        for (const What what : {What::x, What::y}) {
            const QuantityId id = rows.of(what, board.at(vector));
            step.workings.push_back(lines.working(id));
            step.lines.push_back(id);
        }
    }
}

void writeColumns(const Board& board, Step& step, const Entries& entries, const Total& total) {
    for (const QuantityId& column : {total.x, total.y}) {
        board.show(step, column);
        if (entries.size() > kMostWritten) {
            step.workings.back().general.reset();
            step.workings.back().substituted.reset();
        }
    }
}

} // namespace tailpoint::explaining
