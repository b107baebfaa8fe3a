#include "core/explain/table.h"

namespace tailpoint::explaining {

namespace {

constexpr std::size_t kMostRows = 40;   ///< of a table; beyond, the first half of them and the rest summed up
constexpr std::size_t kMostWritten = 6; ///< terms of a written sum

void explainTable(const Board& board, Step& step) {
    step.reasoning.push_back(board.say(SENTENCE(
        "solution", "Resolve each force along the sheet's x and y: x = magnitude times cosine, y = "
                    "magnitude times sine of its angle from +x, signs included. Then add each column.")));
    if (!isPlainReference(board.sketch))
        step.reasoning.push_back(board.say(
            board.isCounterClockwise(1)
                ? SENTENCE("solution",
                           "The sheet measures from {axis}, counter-clockwise; in the table all angles are "
                           "turned to +x, counter-clockwise.")
                : SENTENCE("solution",
                           "The sheet measures from {axis}, clockwise; in the table all angles are turned "
                           "to +x, counter-clockwise."),
            "axis", board.axisWords()));
    step.notes.push_back(
        board.say(SENTENCE("solution", "Magnitudes don't add up, components do, each with its sign.")));
}

std::vector<Formula> headOf(const Board& board) {
    const auto cell = [&](const Wording& wording) { return inWords(board.text(wording)); };
    return {cell(SENTENCE("table", "force")), cell(SENTENCE("table", "magnitude")),
            isPlainReference(board.sketch) ? cell(SENTENCE("table", "direction"))
                                           : cell(SENTENCE("table", "from +x")),
            inWords("x"), inWords("y")};
}

struct Rows {
    const Board& board;
    const Carried& lines;

    /// Under the ids that the vector has where the lines begin.
    QuantityId of(What what, const Vector& vector) const {
        return {what, vector.id, {}, std::max(vector.sizeId.answer, vector.wayId.answer), vector.wayId.part};
    }
    /// The angle from +x, within half a turn.
    Formula angle(const Vector& vector) const {
        if (isPlainReference(board.sketch))
            return vector.wayNumber;
        const QuantityId fromX{What::fromX, vector.id, {}, vector.wayId.answer, vector.wayId.part};
        Formula number = lines.number(fromX);
        const double within = normalized(number.value, board.sketch.angleUnit);
        return within == number.value ? number : lines.shown(within, Dimension::angle);
    }
    Formula opposite(const Formula& angle) const {
        return lines.shown(normalized(angle.value + board.half(), board.sketch.angleUnit), Dimension::angle);
    }
    Formula component(What what, const Entry& entry) const {
        const QuantityId id = of(what, board.at(entry.first));
        if (entry.second > 0)
            return lines.number(id);
        Formula taken = lines.shown(0 - lines.number(id).value, Dimension::force);
        taken.id = id;
        return taken;
    }
    std::vector<Formula> row(const Entry& entry) const {
        const Vector& vector = board.at(entry.first);
        const bool taken = entry.second < 0;
        return {taken ? negative(vector.vector) : vector.vector, vector.sizeNumber,
                taken ? opposite(angle(vector)) : angle(vector), component(What::x, entry),
                component(What::y, entry)};
    }
    /// All entries from `first` on in one row.
    std::vector<Formula> rest(const Entries& entries, std::size_t first) const {
        Eigen::Vector2d total(0, 0);
        for (std::size_t i = first; i < entries.size(); ++i)
            total +=
                Eigen::Vector2d(component(What::x, entries[i]).value, component(What::y, entries[i]).value);
        const auto cell = [&](double value) {
            return lines.shown(withoutNoise(value, lines.scale), Dimension::force);
        };
        return {inWords(toText(board.say(SENTENCE("table", "the other {count}"), "count",
                                         count(static_cast<int>(entries.size() - first))))),
                inWords(""), inWords(""), cell(total.x()), cell(total.y())};
    }
};

} // namespace

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
    if (total)
        table.rows.push_back(
            {total->name, inWords(""), inWords(""), lines.number(total->x), lines.number(total->y)});
    step.table = std::move(table);
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
