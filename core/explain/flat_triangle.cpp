// SPDX-License-Identifier: MIT
// Two unknowns whose triangle is flat: all vectors on one line, or one of them without length.
#include "core/explain/families.h"
#include "core/explain/slip.h"

#include <algorithm>
#include <cmath>

namespace tailpoint::explaining {

namespace {

/// k: the known side. Of two magnitudes or of a smallest vector `all` takes what is known, `none` is zero.
struct FlatTriangle : Triangle {
    explicit FlatTriangle(const Board& theBoard) : Triangle(theBoard), k(r.knownSide()) {
        all = r.sought[0], none = r.sought[1];
        if (side(all).magnitude < side(none).magnitude)
            std::swap(all, none);
    }
    std::size_t k, all = 0, none = 0;
    bool isEmpty() const { return side(k).magnitude == 0; }
    /// Of a magnitude and a direction: the vector on the line.
    std::size_t onLine() const { return sought(0).sizeGiven ? r.sought[1] : r.sought[0]; }
    std::size_t onCircle() const { return sought(0).sizeGiven ? r.sought[0] : r.sought[1]; }
};

bool isFlatShown(const Board& board, const QuantityId& line) {
    return std::any_of(board.worked.steps.begin(), board.worked.steps.end(), [&](const Step& step) {
        return std::find(step.lines.begin(), step.lines.end(), line) != step.lines.end();
    });
}

/// Every line that leads to the answer and that no step has told.
void showLines(const Board& board, Step& step) {
    for (const QuantityId& id : board.carried.quantities()) {
        const bool isTold = id.what == What::opposite || id.what == What::between || id.what == What::along ||
                            id.what == What::magnitude || id.what == What::direction;
        const bool hasNoWay = id.what == What::direction && board.at(id.of).magnitude == 0; // K that vanishes
        if (!isTold || hasNoWay || board.carried.find(id) == nullptr || isFlatShown(board, id))
            continue;
        if (id.what == What::between)
            step.reasoning.push_back(tailsNamed(board, id));
        board.show(step, id);
    }
}

Step& estimateStep(Board& board, const FlatTriangle& t) {
    Step& step = board.step(StepKey::estimate, SENTENCE("solution", "Draw it to scale"), Stage::construction);
    for (const std::size_t i : t.r.sought)
        step.parts.push_back(part(FigurePart::Kind::locus, t.side(i).index));
    return step;
}

Step& lineStep(Board& board, const FlatTriangle& t) {
    Step& step =
        board.step(StepKey::line, SENTENCE("solution", "No height: the triangle is flat"), Stage::magnitudes);
    for (const std::size_t i : t.r.sought)
        step.parts.push_back(arrowPart(t.side(i).index));
    return step;
}

void expectNothing(Board& board, Step& step, const FlatTriangle& t) {
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "{known} is zero: there is nothing to draw to scale. Expect both {u} and {v} to "
                             "be zero."),
        "known", t.side(t.k).vector, "u", t.sought(0).size, "v", t.sought(1).size));
}

/// One of the two takes everything, the other is no projection.
void noteShares(const Board& board, Step& step, const FlatTriangle& t) {
    const Vector &all = t.side(t.all), &none = t.side(t.none), &known = t.side(t.k);
    if (const auto value = slipped(board, all.sizeId, over(known.size, count(2))))
        step.notes.push_back(
            board.say(SENTENCE("solution",
                               "{known} is not shared between the two: half of it each would be {value}, and "
                               "what {none} has across the line nothing would balance."),
                      "known", known.vector, "value", *value, "none", none.vector));
    const auto [a, b] = Reduction::others(t.all);
    const QuantityId between =
        t.r.loop ? QuantityId{What::between, t.r.side[a], t.r.side[b]} : t.angle(t.all);
    if (board.carried.find(between) == nullptr)
        return;
    const Formula projection = absolute(product(known.size, apply("cos", board.symbolOf(between))));
    if (const auto value = slipped(board, none.sizeId, projection))
        step.notes.push_back(board.say(
            SENTENCE("solution", "{none} is not the projection of {known} on the line of {noneVector}, which "
                                 "would have the length {value}."),
            "none", none.size, "known", known.vector, "noneVector", none.vector, "value", *value));
}

/// Magnitudes added as if they were numbers.
void noteAdded(const Board& board, Step& step, const FlatTriangle& t) {
    const Vector &all = t.side(t.all), &known = t.side(t.k);
    if (const auto value = slipped(board, all.sizeId, product(count(2), known.size)))
        step.notes.push_back(board.say(
            SENTENCE("solution", "{all} is as great as {known} already: counted twice over it would come out "
                                 "as {value}."),
            "all", all.size, "known", known.size, "value", *value));
}

void writeMagnitudes(Board& board, const FlatTriangle& t) {
    Step& step = estimateStep(board, t);
    const Vector &all = t.side(t.all), &none = t.side(t.none), &known = t.side(t.k);
    if (t.isEmpty()) {
        expectNothing(board, step, t);
    } else {
        step.reasoning.push_back(
            board.say(SENTENCE("solution",
                               "{known} lies on the line of action of {all}: the parallel to {none} through "
                               "its end meets that line in this very end. Expect {size} to be as great as "
                               "{whole}, and {zero} to be zero."),
                      "known", known.vector, "all", all.vector, "none", none.vector, "size", all.size,
                      "whole", equal(known.size, known.sizeNumber), "zero", none.size));
    }
    Step& line = lineStep(board, t);
    if (t.isEmpty()) {
        line.reasoning.push_back(
            board.say(SENTENCE("solution", "Each of the two is a part of {known}, and {known} is zero."),
                      "known", known.vector));
    } else {
        if (!t.r.loop) {
            line.reasoning.push_back(namedAngles(t));
            nameAngles(line, t);
        }
        line.reasoning.push_back(board.say(
            t.r.loop
                ? SENTENCE("solution", "Lami's form of the law of sines holds here too, each force over "
                                       "the sine of the angle between the other two: the angle that faces "
                                       "{none} is straight, and its sine is zero.")
                : SENTENCE("solution", "The law of sines holds here too: the angle opposite {none} is "
                                       "flat, and its sine is zero."),
            "none", none.size));
    }
    showLines(board, line);
    noteShares(board, line, t);
}

Prose callAxis(const Board& board, const Vector& along) {
    return board.say(
        SENTENCE("solution",
                 "Count components along the line as positive in the sense of {along}; call that axis "
                 "{axis}."),
        "along", along.vector, "axis", symbol("u"));
}

void writeBounds(Board& board, Step& step, const FlatTriangle& t) {
    const Vector &u = t.side(t.onLine()), &v = t.side(t.onCircle()), &known = t.side(t.k);
    const double k = known.sizeNumber.value, radius = v.sizeNumber.value;
    const auto bounds = [&](Formula least, Formula most) {
        return related(std::move(least), Relation::lessOrEqual, u.size, Relation::lessOrEqual,
                       std::move(most));
    };
    const Formula least = board.bound(std::abs(k - radius)), most = board.bound(k + radius);
    step.workings.push_back({{},
                             bounds(absolute(sum(known.size, negative(v.size))), sum(known.size, v.size)),
                             {},
                             bounds(least, most)});
    board.expected = {u.sizeId, least, most};
}

void writeMagnitudeAndDirection(Board& board, const FlatTriangle& t) {
    const Vector &u = t.side(t.onLine()), &v = t.side(t.onCircle()), &known = t.side(t.k);
    Step& step = estimateStep(board, t);
    step.reasoning.push_back(board.say(
        SENTENCE("solution", "The circle of {v} has its centre on the line of action of {u} itself, and cuts "
                             "it at the distance {radius} to either side:"),
        "v", v.vector, "u", u.vector, "radius", equal(v.size, v.sizeNumber)));
    writeBounds(board, step, t);
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "On one line the bounds themselves are reached, as far as they point "
                                       "to the side of {u}."),
                  "u", u.vector));
    Step& line = lineStep(board, t);
    line.reasoning.push_back(board.say(
        SENTENCE("solution", "{known}, {u} and {v} act along one line: components along it add with their "
                             "signs, and across it there are none."),
        "known", known.vector, "u", u.vector, "v", v.vector));
    line.reasoning.push_back(callAxis(board, u));
    showLines(board, line);
    const Vector& found = board.in(0, u.id);
    const Formula hypotenuse = root(sum(power(known.size, 2), power(v.size, 2)));
    if (const auto value = t.isEmpty() ? std::nullopt : slipped(board, found.sizeId, hypotenuse))
        line.notes.push_back(board.say(
            SENTENCE("solution", "{hypotenuse} holds for forces at right angles only; here it would "
                                 "give {value}."),
            "hypotenuse", hypotenuse, "value", *value));
    const QuantityId along{What::along, v.id, {}, found.sizeId.answer};
    const Formula& right = board.carried.formulaOf(along);
    const auto value = slipped(
        board, {{along, right.kind == FormulaKind::negative ? Formula(right.parts[0]) : negative(right)}},
        found.sizeId);
    if (value)
        line.notes.push_back(board.say(
            SENTENCE("solution", "{along} has a sign: with the other one {u} would come out as {value}."),
            "along", board.symbolOf(along), "u", found.size, "value", *value));
}

void writeTwoDirections(Board& board, const FlatTriangle& t) {
    std::array<const Vector*, 3> sides{&t.side(0), &t.side(1), &t.side(2)};
    std::sort(sides.begin(), sides.end(),
              [](const Vector* a, const Vector* b) { return a->magnitude > b->magnitude; });
    const auto [a, b, c] = sides;
    Step& step = estimateStep(board, t);
    step.reasoning.push_back(board.say(SENTENCE(
        "solution", "Three sides close a triangle only if the greatest is no longer than the other two "
                    "together. Here it is just as long:")));
    step.workings.push_back(
        {{},
         related(a->size, Relation::equal, sum(b->size, c->size)),
         {},
         related(a->sizeNumber, Relation::equal, board.bound(b->sizeNumber.value + c->sizeNumber.value))});
    step.conclusion.push_back(board.say(
        SENTENCE("solution", "The triangle is flat: expect {b} and {c} to act along the line of {a}."), "b",
        t.sought(0).vector, "c", t.sought(1).vector, "a", t.side(t.k).vector));
    Step& line = lineStep(board, t);
    line.reasoning.push_back(callAxis(board, t.side(t.k)));
    showLines(board, line);
    for (const std::size_t i : t.r.sought) {
        const Vector& vector = board.found(t.r.side[i]);
        const auto value =
            slipped(board, vector.wayId, sum(board.number(vector.wayId), negative(board.halfTurn())));
        if (value)
            line.notes.push_back(board.say(
                SENTENCE("solution", "{vector} the other way along the line, {theta} would be {value}: then "
                                     "the components would not add up."),
                "vector", vector.vector, "theta", vector.theta, "value", *value));
    }
}

Wording expectedSmallest(const Board& board, const FlatTriangle& t, bool isLegAll) {
    if (!isLegAll)
        return SENTENCE("solution", "{known} lies on the line of {all} already, and nothing is left across "
                                    "it: expect {size} to be as great as {whole}, and {zero} to be zero.");
    if (board.carried.find({What::along, t.side(t.k).id}) != nullptr && !t.r.loop &&
        t.r.side[2] == t.side(t.k).id)
        return SENTENCE("solution",
                        "{known} has a component against the sense of {none}, so any {none} would "
                        "only add to what is left to make up: expect {zero} to be zero, and {size} "
                        "to be as great as {whole}.");
    return board.carried.find({What::along, t.side(t.k).id}) != nullptr
               ? SENTENCE("solution", "{known} has a component in the sense of {none} already, so any {none} "
                                      "would only add to it: expect {zero} to be zero, and {size} to be as "
                                      "great as {whole}.")
               : SENTENCE("solution", "{known} is at right angles to the line of {none}: nothing of it lies "
                                      "along that line. Expect {zero} to be zero, and {size} to be as great "
                                      "as {whole}.");
}

void writeSmallestLine(Board& board, const FlatTriangle& t) {
    const Vector &all = t.side(t.all), &none = t.side(t.none), &known = t.side(t.k);
    Step& step = estimateStep(board, t);
    const bool isLegAll = board.things.name(t.r.side[t.all]) == *board.sketch.smallest;
    if (t.isEmpty())
        expectNothing(board, step, t);
    else
        step.reasoning.push_back(board.say(expectedSmallest(board, t, isLegAll), "known", known.vector, "all",
                                           all.vector, "none", none.vector, "size", all.size, "whole",
                                           equal(known.size, known.sizeNumber), "zero", none.size));
    Step& line = lineStep(board, t);
    const bool isWithout = board.carried.find({What::along, t.side(t.k).id}) != nullptr;
    if (isWithout) {
        const bool isMadeUp = !t.r.loop && t.r.side[2] == known.id;
        line.reasoning.push_back(
            isMadeUp ? board.say(SENTENCE("solution",
                                          "Call the axis along {none}, in its sense, {axis}: a negative "
                                          "component along it can't be made up by {none}."),
                                 "none", none.vector, "axis", symbol("u"))
                     : board.say(SENTENCE("solution",
                                          "Call the axis along {none}, in its sense, {axis}: a positive "
                                          "component along it can't be made smaller by {none}."),
                                 "none", none.vector, "axis", symbol("u")));
    } else if (!t.isEmpty()) {
        line.reasoning.push_back(namedAngles(t));
        line.reasoning.push_back(board.say(SENTENCE(
            "solution", "The leg opposite an angle is the hypotenuse times its sine, the leg beside it the "
                        "hypotenuse times its cosine.")));
    }
    showLines(board, line);
    if (t.isEmpty())
        return;
    if (!isWithout) {
        const QuantityId& size = all.sizeId;
        const Formula& right = board.carried.formulaOf(size);
        const bool isSine = isLegAll;
        if (const auto value =
                slipped(board, size, withFunction(right, isSine ? "sin" : "cos", isSine ? "cos" : "sin")))
            line.notes.push_back(board.say(
                SENTENCE("solution", "With sine and cosine exchanged {size} would come out as {value}."),
                "size", all.size, "value", *value));
    } else {
        const QuantityId angle{What::between, t.side(t.k).id, none.id};
        const Formula across = product(known.size, apply("sin", board.symbolOf(angle)));
        if (const auto value = slipped(board, all.sizeId, across))
            line.notes.push_back(
                board.say(SENTENCE("solution",
                                   "{across} = {value} would be smaller, but for it {none} would have to act "
                                   "against its sense."),
                          "across", across, "value", *value, "none", none.vector));
    }
    noteAdded(board, line, t);
}

} // namespace

void writeAlongOneLine(Board& board) {
    const FlatTriangle t(board);
    writeGiven(board);
    writeCount(board);
    writeKnown(board);
    writeSenses(board);
    switch (board.solved.family) {
    case Family::twoMagnitudes:
        writeMagnitudes(board, t);
        break;
    case Family::magnitudeAndDirection:
        writeMagnitudeAndDirection(board, t);
        break;
    case Family::twoDirections:
        writeTwoDirections(board, t);
        break;
    default:
        writeSmallestLine(board, t);
        break;
    }
    writeEnd(board);
}

} // namespace tailpoint::explaining
