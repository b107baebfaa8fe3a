// SPDX-License-Identifier: MIT
// The ranges of an answer within its worked solution: beside every number that was found, and where the
// extremes lie.
#include "core/explain/families.h"
#include "core/explain/listed.h"
#include "core/explain/ranges.h"
#include "core/explain/rounded.h"
#include "core/sketch/shown.h"

#include <algorithm>
#include <functional>

namespace tailpoint::explaining {

namespace {

using tolerance::AnswerRange;
using tolerance::InputAt;
using tolerance::VectorRange;

/// More inputs than that are no sentence any more.
constexpr std::size_t kMostInputs = 6;

const VectorRange* rangeOf(const Board& board, std::size_t answer, const Vector& vector) {
    return board.ranges && answer < board.ranges->size() ? (*board.ranges)[answer].find(vector.index)
                                                         : nullptr;
}

bool hasMagnitude(const VectorRange* range, const Sketch& sketch) {
    return range && range->magnitudeFound && !endsTold(range->magnitude, sketch).isOne;
}

bool hasWay(const VectorRange* range, const Sketch& sketch) {
    return range && range->directionFound && !endsTold(range->direction, sketch).isOne;
}

bool isPlaceTold(const tolerance::Place& place) {
    return !place.empty() && place.size() <= kMostInputs;
}

/// "P at 335 N".
Prose inputTold(const Board& board, const InputAt& at) {
    const VectorId vector = vectorId(at.index);
    const Formula symbol = board.symbolOf(at.isDirection ? directionId(vector) : magnitudeId(vector));
    const Formula value =
        numberWithUnit(at.value, at.isDirection ? shownAngle(at.value, board.sketch)
                                                : shownForceWithUnit(at.value, board.sketch));
    return board.say(SENTENCE("solution", "{quantity} at {value}"), "quantity", symbol, "value", value);
}

Prose placeTold(const Board& board, const tolerance::Place& place) {
    std::vector<Prose> items;
    for (const InputAt& at : place)
        items.push_back(inputTold(board, at));
    return listed(board, std::move(items));
}

/// What was found of all vectors, each with its symbol.
void eachFound(const Board& board, std::size_t answer,
               const std::function<void(const Vector&, const VectorRange&)>& visit) {
    if (!board.ranges || answer >= board.ranges->size())
        return;
    for (const VectorRange& range : (*board.ranges)[answer].vectors)
        visit(board.in(answer, vectorId(range.index)), range);
}

void append(Prose& to, const Piece& piece) {
    if (const auto* text = std::get_if<std::string>(&piece))
        appendText(to, *text);
    else
        to.pieces.push_back(piece);
}

void appendPieces(Prose& to, const Prose& more) {
    for (const Piece& piece : more.pieces)
        append(to, piece);
}

/// A quantity that was found, and what it can be.
struct Ranged {
    QuantityId id;
    Prose ends, between;
};

/// Those of the answer that is told come first: what both have in common is told of it.
std::vector<Ranged> rangedIn(const Board& board) {
    std::vector<Ranged> all;
    const auto add = [&](const QuantityId& id, const auto& range) {
        if (std::none_of(all.begin(), all.end(), [&](const Ranged& each) { return each.id == id; }))
            all.push_back(
                {id, rangeTold(range, board.sketch, board), betweenTold(range, board.sketch, board)});
    };
    const auto addAll = [&](std::size_t answer) {
        eachFound(board, answer, [&](const Vector& vector, const VectorRange& range) {
            if (hasMagnitude(&range, board.sketch))
                add(vector.size.id, range.magnitude);
            if (hasWay(&range, board.sketch))
                add(vector.theta.id, range.direction);
        });
    };
    addAll(board.solution);
    for (std::size_t answer = 0; board.ranges && answer < board.ranges->size(); ++answer)
        addAll(answer);
    return all;
}

const Ranged* rangedBy(const std::vector<Ranged>& all, const QuantityId& id) {
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Ranged& each) { return each.id == id; });
    return found != all.end() ? &*found : nullptr;
}

bool isNumber(const Formula& formula) {
    return formula.kind == FormulaKind::number ||
           (formula.kind == FormulaKind::negative && formula.parts[0].kind == FormulaKind::number);
}

/// "R = 520 N", and nothing between.
const QuantityId* foundBy(const Formula& formula) {
    const bool isValue = formula.kind == FormulaKind::relation && formula.parts.size() == 2 &&
                         formula.relations[0] == Relation::equal &&
                         formula.parts[0].kind == FormulaKind::symbol && isNumber(formula.parts[1]);
    return isValue ? &formula.parts[0].id : nullptr;
}

/// "R = 520 N (509 to 530 N) lies between".
Prose withRanges(const Board& board, const std::vector<Ranged>& all, const Prose& prose) {
    Prose out;
    for (const Piece& piece : prose.pieces) {
        const auto* formula = std::get_if<Formula>(&piece);
        const QuantityId* id = formula ? foundBy(*formula) : nullptr;
        const Ranged* ranged = id ? rangedBy(all, *id) : nullptr;
        if (ranged)
            appendPieces(out, board.say(SENTENCE("solution", "{value} ({range})"), "value", *formula, "range",
                                        ranged->ends));
        else
            append(out, piece);
    }
    return out;
}

/// "519.86 N, to three figures 520 N, between 509 N and 530 N".
void addRange(const Board& board, const std::vector<Ranged>& all, Working& working) {
    const Ranged* ranged = working.subject && working.value && working.subject->kind == FormulaKind::symbol
                               ? rangedBy(all, working.subject->id)
                               : nullptr;
    if (!ranged)
        return;
    Prose value;
    if (working.told && working.told->kind == FormulaKind::row)
        for (const Formula& part : std::as_const(working.told->parts))
            value.pieces.push_back(part);
    else
        value.pieces.push_back(working.told ? *working.told : *working.value);
    working.told = inRow(board.say(SENTENCE("solution", "{value}, {range}"), "value", std::move(value),
                                   "range", ranged->between));
}

} // namespace

Prose withRange(const Board& board, std::size_t answer, const Vector& vector, Prose size) {
    const VectorRange* range = rangeOf(board, answer, vector);
    return hasMagnitude(range, board.sketch)
               ? board.say(SENTENCE("solution", "{value}, {range}"), "value", std::move(size), "range",
                           betweenTold(range->magnitude, board.sketch, board))
               : size;
}

Prose withRangeOfWay(const Board& board, std::size_t answer, const Vector& vector, Prose way) {
    const VectorRange* range = rangeOf(board, answer, vector);
    return hasWay(range, board.sketch)
               ? board.say(SENTENCE("solution", "{way}, {symbol} {range}"), "way", std::move(way), "symbol",
                           vector.theta, "range", betweenTold(range->direction, board.sketch, board))
               : way;
}

void writeExtremes(const Board& board, Step& step) {
    if (!board.ranges || board.solution >= board.ranges->size())
        return;
    bool isAny = false;
    for (std::size_t answer = 0; answer < board.ranges->size(); ++answer)
        eachFound(board, answer, [&](const Vector&, const VectorRange& range) {
            isAny = isAny || hasMagnitude(&range, board.sketch) || hasWay(&range, board.sketch);
        });
    if (isAny)
        step.conclusion.push_back(board.say(
            SENTENCE("solution",
                     "Each range is what can come out when every given value lies within its tolerance.")));
    if (isAny && board.solved.family == Family::oneUnknown)
        step.conclusion.push_back(board.say(SENTENCE(
            "solution", "Elsewhere in the tolerances the other equation need not hold as it stands: the "
                        "range is of what leaves least over.")));
    eachFound(board, board.solution, [&](const Vector& vector, const VectorRange& range) {
        const auto& magnitude = range.magnitude;
        if (hasMagnitude(&range, board.sketch) && isPlaceTold(magnitude.atLeast) &&
            isPlaceTold(magnitude.atGreatest))
            step.conclusion.push_back(
                board.say(SENTENCE("solution", "{quantity} is least with {least}, greatest with {greatest}."),
                          "quantity", vector.size, "least", placeTold(board, magnitude.atLeast), "greatest",
                          placeTold(board, magnitude.atGreatest)));
        const auto& direction = range.direction; // told only where it is found alone
        if (hasWay(&range, board.sketch) && !range.magnitudeFound && !direction.any &&
            isPlaceTold(direction.atFrom) && isPlaceTold(direction.atTo))
            step.conclusion.push_back(board.say(
                SENTENCE("solution", "{quantity} begins its range with {least} and ends it with {greatest}."),
                "quantity", vector.theta, "least", placeTold(board, direction.atFrom), "greatest",
                placeTold(board, direction.atTo)));
    });
    for (Prose& remark : rangeRemarks((*board.ranges)[board.solution], board.sketch, board))
        step.conclusion.push_back(std::move(remark));
}

void tellRangesBeside(Board& board) {
    const std::vector<Ranged> all = rangedIn(board);
    if (all.empty())
        return;
    for (Step& step : board.worked.steps) {
        if (step.key == StepKey::answer)
            continue;
        for (auto* told : {&step.reasoning, &step.conclusion})
            for (Prose& prose : *told)
                prose = withRanges(board, all, prose);
        for (Working& working : step.workings)
            addRange(board, all, working);
    }
}

} // namespace tailpoint::explaining
