// SPDX-License-Identifier: MIT
#include "core/explain/rounded.h"

#include <algorithm>
#include <array>

namespace tailpoint::explaining {

namespace {

constexpr std::array<Wording, kMostFigures> kToFigures{
    SENTENCE("solution", "{value}, to one figure {shown}"),
    SENTENCE("solution", "{value}, to two figures {shown}"),
    SENTENCE("solution", "{value}, to three figures {shown}"),
    SENTENCE("solution", "{value}, to four figures {shown}"),
    SENTENCE("solution", "{value}, to five figures {shown}"),
    SENTENCE("solution", "{value}, to six figures {shown}"),
    SENTENCE("solution", "{value}, to seven figures {shown}"),
    SENTENCE("solution", "{value}, to eight figures {shown}"),
    SENTENCE("solution", "{value}, to nine figures {shown}"),
    SENTENCE("solution", "{value}, to ten figures {shown}"),
    SENTENCE("solution", "{value}, to eleven figures {shown}"),
    SENTENCE("solution", "{value}, to twelve figures {shown}")};

constexpr std::array<Wording, kMostAngleDecimals + 2> kToDecimals{
    SENTENCE("solution", "{value}, to one decimal {shown}"),
    SENTENCE("solution", "{value}, to two decimals {shown}"),
    SENTENCE("solution", "{value}, to three decimals {shown}"),
    SENTENCE("solution", "{value}, to four decimals {shown}"),
    SENTENCE("solution", "{value}, to five decimals {shown}"),
    SENTENCE("solution", "{value}, to six decimals {shown}"),
    SENTENCE("solution", "{value}, to seven decimals {shown}"),
    SENTENCE("solution", "{value}, to eight decimals {shown}"),
    SENTENCE("solution", "{value}, to nine decimals {shown}"),
    SENTENCE("solution", "{value}, to ten decimals {shown}")};

Wording toDecimals(int decimals, AngleUnit unit) {
    if (decimals > 0)
        return kToDecimals[std::min<std::size_t>(static_cast<std::size_t>(decimals), kToDecimals.size()) - 1];
    return unit == AngleUnit::gon ? SENTENCE("solution", "{value}, to the nearest gon {shown}")
                                  : SENTENCE("solution", "{value}, to the nearest degree {shown}");
}

} // namespace

Prose roundedTo(const Board& board, const Formula& value, Formula shown) {
    const bool angle = dimensionOf(value.id.what) == Dimension::angle;
    const Wording wording =
        angle ? toDecimals(shownAngleDecimals(board.sketch), board.sketch.angleUnit)
              : kToFigures[std::min(static_cast<std::size_t>(figuresOf(shown.value, board.sketch)),
                                    kToFigures.size()) -
                           1];
    return board.say(wording, "value", value, "shown", std::move(shown));
}

namespace {

/// Why a line has the value of the full calculation: its printed numbers leave it none.
Prose withoutValue(const Board& board, const Line& line, const Formula& value) {
    const auto wording = [&] {
        switch (line.kind) {
        case LineKind::inverse:
            return SENTENCE("solution",
                            "{value}, by the full calculation: with the rounded numbers it has no value");
        case LineKind::root:
            return SENTENCE("solution",
                            "{value}, by the full calculation: with the rounded numbers the root is "
                            "of a negative number");
        default:
            return SENTENCE("solution",
                            "{value}, by the full calculation: the rounded numbers leave no value");
        }
    }();
    return board.say(wording, "value", value);
}

} // namespace

std::optional<Prose> offTheFull(const Board& board, const Carried& lines, const QuantityId& line,
                                const Formula& value) {
    if (lines.isReplaced(line))
        return withoutValue(board, *lines.find(line), value);
    if (board.options.handRounding && lines.goesAnotherWay(line))
        return board.say(SENTENCE("solution", "{value}, where the full calculation goes another way"),
                         "value", value);
    return std::nullopt;
}

Formula inRow(Prose prose) {
    std::vector<Formula> parts;
    parts.reserve(prose.pieces.size());
    for (Piece& piece : prose.pieces)
        if (auto* words = std::get_if<std::string>(&piece))
            parts.push_back(inWords(std::move(*words)));
        else
            parts.push_back(std::move(std::get<Formula>(piece)));
    return rowOf(std::move(parts));
}

} // namespace tailpoint::explaining
