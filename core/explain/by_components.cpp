// SPDX-License-Identifier: MIT
// Two unknowns of two vectors by components: the sums along x and y are two equations, and one unknown is
// eliminated from them.
#include "core/explain/families.h"
#include "core/explain/slip.h"
#include "core/explain/table_slips.h"

#include <cmath>
#include <utility>

namespace tailpoint::explaining {

namespace {

/// k: the known side; where one of the others lies on a known line and the other does not, u is on the line.
struct Equations : Triangle {
    explicit Equations(const Board& theBoard)
        : Triangle(theBoard), k(r.knownSide()), u(r.sought[0]), v(r.sought[1]) {
        const bool firstOnLine =
            asksForSmallest() ? board.things.name(r.side[u]) != *board.sketch.smallest : !side(u).sizeGiven;
        if (!firstOnLine && (asksForSmallest() || board.solved.family == Family::magnitudeAndDirection))
            std::swap(u, v);
    }
    std::size_t k, u, v;

    bool asksForSmallest() const { return board.sketch.smallest.has_value(); }
    QuantityId of(What what, std::size_t i) const { return {what, r.side[i]}; }
    QuantityId fromX(std::size_t i) const {
        return of(isPlainReference(board.sketch) ? What::direction : What::fromX, i);
    }
    /// What a side adds to ΣFx or ΣFy, its unknowns as symbols.
    Formula term(std::size_t i, What axis, bool inNumbers) const {
        if (i == k)
            return inNumbers ? board.number(of(axis, i)) : board.symbolOf(of(axis, i));
        const Vector& vector = side(i);
        if (!vector.sizeGiven && !vector.wayGiven)
            return board.symbolOf(of(axis, i));
        Formula angle = inNumbers && vector.wayGiven ? board.number(fromX(i)) : board.symbolOf(fromX(i));
        return product(inNumbers && vector.sizeGiven ? vector.sizeNumber : vector.size,
                       apply(axis == What::x ? "cos" : "sin", std::move(angle)));
    }
    /// ΣF = 0, or the forces on one side and their sum on the other.
    Formula balance(What axis, bool inNumbers) const {
        std::vector<Formula> forces;
        for (std::size_t i = 0; i < (r.loop ? 3U : 2U); ++i)
            forces.push_back(term(i, axis, inNumbers));
        return equal(sumOf(std::move(forces)), r.loop ? count(0) : term(2, axis, inNumbers));
    }
};

/// What is known, along x and y.
void writeKnownSide(Board& board, const Equations& e) {
    if (!e.r.addsUp())
        writeComponents(board, board.carried, {{e.r.side[e.k], 1}});
}

/// The angle from +x of a side, where the sheet measures otherwise and nothing has told it.
void showFromX(const Board& board, Step& step, const Equations& e, std::size_t i) {
    if (!isPlainReference(board.sketch) && e.side(i).wayGiven && !isToldFromX(board, e.r.side[i]) &&
        board.carried.find(e.fromX(i)) != nullptr) {
        introduceFromX(board, step);
        board.show(step, e.fromX(i));
    }
}

void writeEquations(Board& board, const Equations& e) {
    Step& step =
        board.step(StepKey::equations, SENTENCE("solution", "The two equations, along x and along y"),
                   Stage::construction, Law::components);
    step.parts = {arrowPart(e.side(e.u).index), arrowPart(e.side(e.v).index)};
    step.reasoning.push_back(board.say(
        e.r.loop ? SENTENCE("solution", "In equilibrium the components add up to zero along either axis, "
                                        "each force in the sense drawn:")
                 : SENTENCE("solution", "Along either axis the components of the forces add up to the "
                                        "component of their sum, each force in the sense drawn:")));
    showFromX(board, step, e, e.u);
    showFromX(board, step, e, e.v);
    for (const What axis : {What::x, What::y}) {
        const Formula symbols = e.balance(axis, false), numbers = e.balance(axis, true);
        step.workings.push_back({{}, symbols, {}, {}});
        if (numbers != symbols)
            step.workings.push_back({{}, numbers, {}, {}});
    }
}

QuantityId alongOf(const Vector& vector) {
    return {What::along, vector.id, {}, vector.sizeId.answer};
}

} // namespace

void introduceAlong(const Board& board, Step& step, const std::vector<const Vector*>& vectors, bool isFirst) {
    std::vector<const Vector*> signedOnes;
    for (const Vector* vector : vectors)
        if (board.carried.value(alongOf(*vector)))
            signedOnes.push_back(vector);
    if (isFirst && signedOnes.size() == 2)
        step.reasoning.push_back(board.say(
            SENTENCE("solution",
                     "{first} and {second} are the components of {u} and {v}, each along its own "
                     "line, the axis {axis}, and positive in the sense drawn; without its sign each "
                     "is the magnitude."),
            "first", board.symbolOf(alongOf(*signedOnes[0])), "second",
            board.symbolOf(alongOf(*signedOnes[1])), "u", signedOnes[0]->vector, "v", signedOnes[1]->vector,
            "axis", symbol("u")));
    if (isFirst && signedOnes.size() == 1)
        step.reasoning.push_back(board.say(
            SENTENCE("solution", "{along} is the component of {vector} along its own line, the axis {axis}, "
                                 "positive in the sense drawn; without its sign it is the magnitude."),
            "along", board.symbolOf(alongOf(*signedOnes[0])), "vector", signedOnes[0]->vector, "axis",
            symbol("u")));
    for (const Vector* vector : signedOnes)
        if (vector->turned)
            step.reasoning.push_back(
                board.say(SENTENCE("solution", "{theta} is the direction in which {vector} acts."), "theta",
                          vector->theta, "vector", vector->vector));
}

void showMagnitude(const Board& board, Step& step, const Vector& vector) {
    const QuantityId along = alongOf(vector);
    const auto value = board.carried.value(along);
    if (!value)
        return board.show(step, vector.sizeId);
    board.show(step, along);
    if (*value < 0)
        step.conclusion.push_back(board.say(
            SENTENCE("solution", "{along} is negative: {vector} acts against the sense assumed. A bar drawn "
                                 "as pulling pushes."),
            "along", board.symbolOf(along), "vector", vector.vector));
    board.show(step, vector.sizeId);
    if (vector.turned)
        board.show(step, {What::direction, vector.id, {}, vector.sizeId.answer, 1});
}

namespace {

Prose dropsOut(const Board& board, const Equations& e, std::size_t left, std::size_t out, bool first) {
    const Formula angle = board.symbolOf(e.fromX(out));
    return board.say(
        first ? SENTENCE("solution", "Multiply the equation along x by {sine}, the one along y by {cosine}, "
                                     "and take the second from the first: {out} drops out, and {left} is "
                                     "left alone.")
              : SENTENCE("solution", "With {sine} and {cosine} in their places {out} drops out in the same "
                                     "way, and {left} is left."),
        "sine", apply("sin", angle), "cosine", apply("cos", angle), "out", e.side(out).size, "left",
        e.side(left).size);
}

/// The line that the elimination gives first.
QuantityId firstFound(const Board& board, const Equations& e) {
    const Vector& u = board.found(e.r.side[e.u]);
    const QuantityId along{What::along, u.id};
    return board.carried.find(along) != nullptr ? along : u.sizeId;
}

/// A cosine or a sine without its sign, as the acute angle from the axis would give it.
void noteLostSign(const Board& board, Step& step, const Equations& e) {
    const QuantityId line = firstFound(board, e);
    for (const std::size_t i : {e.u, e.v})
        for (const std::uint8_t part : {kCosine, kSine}) {
            const QuantityId term{What::term, e.r.side[i], {}, 0, part};
            const auto factor = board.carried.value(term);
            if (!factor || *factor >= 0)
                continue;
            const auto value = slipped(
                board, line, exchanged(board.carried.formulaOf(line), term, absolute(board.symbolOf(term))));
            if (!value)
                continue;
            step.notes.push_back(board.say(
                SENTENCE("solution", "{factor} is negative. Taken from the acute angle alone, without its "
                                     "sign, it would make {size} come out as {value}."),
                "factor", apply(part == kCosine ? "cos" : "sin", board.symbolOf(e.fromX(i))), "size",
                board.symbolOf(line), "value", *value));
            return;
        }
}

/// Sine and cosine of a direction in each other's place.
void noteSwappedFunctions(const Board& board, Step& step, const Equations& e, std::size_t side,
                          const QuantityId& target) {
    const QuantityId cosine{What::term, e.r.side[side], {}, 0, kCosine},
        sine{What::term, e.r.side[side], {}, 0, kSine};
    const auto value = slipped(
        board, {{cosine, board.carried.formulaOf(sine)}, {sine, board.carried.formulaOf(cosine)}}, target);
    if (value)
        step.notes.push_back(swappedTold(board, e.side(side).vector, board.symbolOf(target), *value));
}

/// Of forces in equilibrium: both positive, both as assumed.
void readSigns(const Board& board, Step& step, const Equations& e) {
    const Vector &u = board.found(e.r.side[e.u]), &v = board.found(e.r.side[e.v]);
    if (!e.r.loop || u.turned || v.turned || u.magnitude == 0 || v.magnitude == 0)
        return;
    step.conclusion.push_back(board.say(
        SENTENCE("solution",
                 "{u} and {v} both come out positive: each acts in the sense assumed, away from the "
                 "point."),
        "u", u.size, "v", v.size));
}

void writeElimination(Board& board, const Equations& e) {
    Step& step = board.step(StepKey::elimination, SENTENCE("solution", "Eliminate one unknown at a time"),
                            Stage::magnitudes, Law::components);
    step.parts = {arrowPart(e.side(e.u).index), arrowPart(e.side(e.v).index)};
    step.reasoning.push_back(dropsOut(board, e, e.u, e.v, true));
    step.reasoning.push_back(dropsOut(board, e, e.v, e.u, false));
    const Vector &u = board.found(e.r.side[e.u]), &v = board.found(e.r.side[e.v]);
    introduceAlong(board, step, {&u, &v});
    showMagnitude(board, step, u);
    showMagnitude(board, step, v);
    readSigns(board, step, e);
    noteLostSign(board, step, e);
    noteSwappedFunctions(board, step, e, e.v, firstFound(board, e));
}

Step& answerStep(Board& board, std::uint8_t answer) {
    switch (answer) {
    case 0:
        return board.step(StepKey::rest, SENTENCE("solution", "The answer from the components"), Stage::all,
                          Law::components);
    case 1:
        return board.step(StepKey::first, SENTENCE("solution", "First answer"), Stage::all, Law::components);
    default:
        return board.step(StepKey::second, SENTENCE("solution", "Second answer"), Stage::all,
                          Law::components);
    }
}

Step& answerStep(Board& board, std::size_t index) {
    return answerStep(board, board.hasTwoAnswers() ? static_cast<std::uint8_t>(index + 1) : std::uint8_t{0});
}

void showXY(const Board& board, Step& step, VectorId vector, std::uint8_t answer) {
    board.show(step, {What::x, vector, {}, answer});
    board.show(step, {What::y, vector, {}, answer});
}

/// Squared and added, the direction of v drops out.
void writeQuadratic(Board& board, const Equations& e) {
    const Vector &u = e.side(e.u), &v = e.side(e.v), &known = e.known();
    const QuantityId along{What::along, known.id}, across{What::distance},
        chord{What::distance, {}, {}, 0, 1};
    const bool isTaken = -e.r.sign(e.k) * e.r.sign(e.u) < 0; // u against k: p has the other sign
    Step& step = board.step(StepKey::quadratic, SENTENCE("solution", "Square and add: a quadratic equation"),
                            Stage::construction, Law::components);
    step.parts = {part(FigurePart::Kind::locus, u.index), part(FigurePart::Kind::locus, v.index)};
    step.reasoning.push_back(board.say(
        isTaken ? SENTENCE("solution", "Let {along} be the component of {known} along the line of {u}, the "
                                       "axis {axis}, but positive against the sense of {u}, and {across} "
                                       "the magnitude of the one across that line.")
                : SENTENCE("solution", "Let {along} be the component of {known} along the line of {u}, the "
                                       "axis {axis}, and {across} the magnitude of the one across it."),
        "along", board.symbolOf(along), "known", known.vector, "u", u.vector, "axis", symbol("u"), "across",
        board.symbolOf(across)));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Leave the terms with {v} alone on one side of both equations, square them and add: since "
                 "{one} the direction of {vector} drops out, and a quadratic equation for {u} is left."),
        "v", v.size, "vector", v.vector, "u", u.size, "one",
        equal(sum(power(apply("sin", board.symbolOf(directionId(v.id))), 2),
                  power(apply("cos", board.symbolOf(directionId(v.id))), 2)),
              count(1))));
    const Formula gap = sum(power(v.size, 2), negative(power(board.symbolOf(across), 2)));
    step.reasoning.push_back(board.say(
        board.solved.tangent
            ? SENTENCE("solution", "With the square completed it reads {square}.")
            : SENTENCE("solution", "With the square completed it reads {square}: the roots lie {chord}, the "
                                   "square root of the right side, to either side of {along}. In the "
                                   "drawing that is how far the circle reaches along the line, by "
                                   "Pythagoras' theorem."),
        "square", equal(power(sum(u.size, negative(board.symbolOf(along))), 2), gap), "chord",
        board.symbolOf(chord), "along", board.symbolOf(along)));
    step.workings.push_back(
        {{},
         equal(sum(power(u.size, 2), negative(product(count(2), board.symbolOf(along), u.size)),
                   power(board.symbolOf(along), 2), power(board.symbolOf(across), 2),
                   negative(power(v.size, 2))),
               count(0)),
         {},
         {}});
    board.show(step, along);
    board.show(step, across);
    if (board.solved.tangent) {
        step.conclusion.push_back(board.say(SENTENCE("solution", "{gap} is zero: both roots are {root}."),
                                            "gap", gap, "root", board.symbolOf(along)));
        return;
    }
    board.show(step, chord);
    step.conclusion.push_back(
        board.say(SENTENCE("solution", "{gap} is positive: there are two roots, {less} and {more}."), "gap",
                  gap, "less", sum(board.symbolOf(along), negative(board.symbolOf(chord))), "more",
                  sum(board.symbolOf(along), board.symbolOf(chord))));
    if (board.hasTwoAnswers() && board.in(0, u.id).magnitude > 0 && !board.in(0, u.id).turned &&
        !board.in(1, u.id).turned)
        step.conclusion.push_back(board.say(
            SENTENCE("solution", "Both are positive, so in both {u} acts in its sense: each is an answer."),
            "u", u.vector));
    else if (board.hasTwoAnswers() && board.in(0, u.id).turned != board.in(1, u.id).turned)
        step.conclusion.push_back(board.say(
            SENTENCE("solution",
                     "One of them is negative: with it {u} acts in the other sense of its line, which "
                     "is allowed here. Both are answers."),
            "u", u.vector));
    if (!board.hasTwoAnswers())
        step.conclusion.push_back(board.say(
            SENTENCE("solution", "One of them is negative, {root}: with it {u} would act against its "
                                 "sense, so it is no answer."),
            "u", u.vector, "root", sum(board.symbolOf(along), negative(board.symbolOf(chord)))));
}

/// The foot taken for the answer, as if the circle only touched; sine and cosine of the line exchanged.
void noteQuadraticSlips(const Board& board, Step& step, const Equations& e) {
    const Vector& u = board.in(0, e.r.side[e.u]);
    const QuantityId along{What::along, u.id, {}, u.sizeId.answer};
    const QuantityId target = board.carried.find(along) != nullptr ? along : u.sizeId;
    const Formula foot = board.symbolOf({What::along, e.known().id});
    if (const auto value = slipped(board, target, foot))
        step.notes.push_back(
            board.say(SENTENCE("solution",
                               "{foot} alone, without the root, would make {u} come out as {value}: that is "
                               "the middle of the chord, not a point of the circle."),
                      "foot", foot, "u", board.symbolOf(target), "value", *value));
    if (!board.solved.tangent) // there the exchange leaves the root of a negative number
        return noteSwappedFunctions(board, step, e, e.u, target);
    const Formula difference = absolute(sum(e.known().size, negative(e.side(e.v).size)));
    if (const auto value = slipped(board, target, difference))
        step.notes.push_back(
            board.say(SENTENCE("solution", "A magnitude is not a component: {difference} would give "
                                           "{value} for {target}."),
                      "difference", difference, "value", *value, "target", board.symbolOf(target)));
}

void writeQuadraticAnswers(Board& board, const Equations& e) {
    writeQuadratic(board, e);
    for (std::size_t i = 0; i < board.solved.solutions.size(); ++i) {
        const Vector &u = board.in(i, e.r.side[e.u]), &v = board.in(i, e.r.side[e.v]);
        Step& step = answerStep(board, i);
        step.parts = {arrowPart(u.index), part(FigurePart::Kind::direction, v.index)};
        introduceAlong(board, step, {&u}, i == 0);
        showMagnitude(board, step, u);
        showXY(board, step, v.id, v.wayId.answer);
        writeWayFromComponents(board, step, v, true);
        if (i == 0)
            noteQuadraticSlips(board, step, e);
    }
}

/// All three magnitudes are known: how far u reaches along k, and how far to its side.
void writeReaches(Board& board, const Equations& e) {
    const Vector &u = e.side(e.u), &v = e.side(e.v), &known = e.known();
    const QuantityId along{What::along, u.id}, height{What::distance, {}, {}, 0, 1};
    const bool isAgainst = -e.r.sign(e.k) * e.r.sign(e.u) < 0;
    Step& step = board.step(StepKey::quadratic, SENTENCE("solution", "Along the known vector and across it"),
                            Stage::construction, Law::components);
    step.parts = {part(FigurePart::Kind::locus, u.index), part(FigurePart::Kind::locus, v.index)};
    step.reasoning.push_back(board.say(
        isAgainst
            ? SENTENCE("solution", "Let {along} be the component of {u} along {known}, the axis {axis}, but "
                                   "positive against its sense, and {height} the one across it.")
            : SENTENCE("solution", "Let {along} be the component of {u} along {known}, the axis {axis}, and "
                                   "{height} the one across it."),
        "axis", symbol("u"), "along", board.symbolOf(along), "u", u.vector, "known", known.vector, "height",
        board.symbolOf(height)));
    step.reasoning.push_back(board.say(
        SENTENCE("solution",
                 "Bring {v} to one side of both equations, square them and add: its direction "
                 "drops out, and {square} gives {along}. Pythagoras' theorem then gives {height}, "
                 "to the one side of {known} or to the other:"),
        "v", v.vector, "square",
        equal(power(v.size, 2), sum(power(u.size, 2), power(known.size, 2),
                                    negative(product(count(2), known.size, board.symbolOf(along))))),
        "along", board.symbolOf(along), "height", board.symbolOf(height), "known", known.vector));
    if (known.id == kKnownVector)
        board.show(step, known.sizeId);
    board.show(step, along);
    board.show(step, height);
    const Formula& right = board.carried.formulaOf(along);
    Formula place = u.size;
    place.id = {What::term, kNobody};
    Formula swapped = exchanged(right, u.sizeId, place);
    swapped = exchanged(std::move(swapped), v.sizeId, u.size);
    swapped = exchanged(std::move(swapped), place.id, v.size);
    if (const auto value = slipped(board, along, std::move(swapped)))
        step.notes.push_back(board.say(
            SENTENCE("solution", "The square of {v} is the one that is taken away, for {along} says how far "
                                 "{u} reaches: with the two exchanged it would come out as {value}."),
            "v", v.size, "along", board.symbolOf(along), "u", u.vector, "value", *value));
    const QuantityId square{What::square, {}, {}, 0, 1};
    if (const auto value =
            slipped(board, {{square, sum(power(u.size, 2), power(board.symbolOf(along), 2))}}, height))
        step.notes.push_back(board.say(
            SENTENCE("solution", "{u} is the hypotenuse over {along} and {height}: with the squares added "
                                 "{height} would come out as {value}."),
            "u", u.size, "along", board.symbolOf(along), "height", board.symbolOf(height), "value", *value));
}

/// How the components along the known vector and across it become those along x and y.
Prose turnedBackBoth(const Board& board, const Equations& e) {
    const Vector &u = e.side(e.u), &known = e.known();
    const Formula angle = board.symbolOf(e.fromX(e.k));
    const auto quotient = [&](What axis, const char* function) {
        return equal(apply(function, angle), over(board.symbolOf({axis, known.id}), known.size));
    };
    return board.say(
        SENTENCE("solution",
                 "{u} is {along} along {known} and {height} at right angles to it: with {cosine} and "
                 "{sine} that is turned back to x and y."),
        "u", u.vector, "along", board.symbolOf({What::along, u.id}), "known", known.vector, "height",
        board.symbolOf({What::distance, {}, {}, 0, 1}), "cosine", quotient(What::x, "cos"), "sine",
        quotient(What::y, "sin"));
}

void writeTwoWays(Board& board, const Equations& e) {
    writeReaches(board, e);
    for (std::size_t i = 0; i < board.solved.solutions.size(); ++i) {
        Step& step = answerStep(board, i);
        if (i == 0)
            step.reasoning.push_back(turnedBackBoth(board, e));
        for (const std::size_t side : {e.u, e.v}) {
            const Vector& vector = board.in(i, e.r.side[side]);
            step.parts.push_back(part(FigurePart::Kind::direction, vector.index));
            showXY(board, step, vector.id, vector.wayId.answer);
        }
        for (const std::size_t side : {e.u, e.v})
            writeWayFromComponents(board, step, board.in(i, e.r.side[side]), true);
    }
}

void writeLeast(Board& board, const Equations& e) {
    const Vector &line = board.found(e.r.side[e.u]), &leg = board.found(e.r.side[e.v]);
    const QuantityId along{What::along, e.known().id};
    Step& step = board.step(StepKey::elimination, SENTENCE("solution", "Along the line and across it"),
                            Stage::magnitudes, Law::components);
    step.parts = {arrowPart(line.index), arrowPart(leg.index)};
    step.reasoning.push_back(board.say(
        board.solved.family == Family::smallestSum
            ? SENTENCE("solution",
                       "Across its own line {line} has no component, so what {known} has there stays. "
                       "Along its line {line} can cancel all that {known} has there, and {leg} is "
                       "smallest when it does.")
            : SENTENCE("solution",
                       "Across its own line {line} has no component, so whatever {known} has there is "
                       "left to {leg}. Along the line {leg} is smallest when it has no component "
                       "there."),
        "line", line.vector, "known", e.known().vector, "leg", leg.vector));
    const bool isAgainst = -e.r.sign(e.k) * e.r.sign(e.u) < 0;
    step.reasoning.push_back(board.say(
        isAgainst
            ? SENTENCE("solution", "{along} is the component of {known} along the line of {line}, the axis "
                                   "{axis}, but positive against the sense of {line}:")
            : SENTENCE("solution", "{along} is the component of {known} along the line of {line}, the axis "
                                   "{axis}:"),
        "axis", symbol("u"), "along", board.symbolOf(along), "known", e.known().vector, "line", line.vector));
    board.show(step, along);
    introduceAlong(board, step, {&line});
    showMagnitude(board, step, line);
    showXY(board, step, leg.id, 0);
    noteSwappedFunctions(board, step, e, e.u, along);
    const Formula difference = absolute(sum(e.known().size, negative(line.size)));
    if (const auto value = slipped(board, leg.sizeId, difference))
        step.notes.push_back(
            board.say(SENTENCE("solution", "{leg} is at right angles to {line}: the difference of the "
                                           "magnitudes, {difference}, would give {value} for {size}."),
                      "leg", leg.vector, "line", line.vector, "difference", difference, "value", *value,
                      "size", leg.size));
    writePolar(board, leg);
}

} // namespace

void writeTwoByComponents(Board& board) {
    const Equations e(board);
    writeGiven(board);
    writeCount(board);
    if (e.r.addsUp()) // what is drawn to scale is known first
        writeKnown(board);
    switch (board.solved.family) {
    case Family::twoMagnitudes:
        writeLinesEstimate(board);
        writeKnownSide(board, e);
        writeEquations(board, e);
        writeElimination(board, e);
        break;
    case Family::magnitudeAndDirection:
        writeAmbiguousEstimate(board);
        writeKnownSide(board, e);
        writeEquations(board, e);
        writeQuadraticAnswers(board, e);
        writeOtherRoot(board);
        break;
    case Family::twoDirections:
        writeSidesEstimate(board);
        writeKnownSide(board, e);
        writeEquations(board, e);
        writeTwoWays(board, e);
        break;
    default:
        writeSmallestEstimate(board);
        writeKnownSide(board, e);
        writeEquations(board, e);
        writeLeast(board, e);
        break;
    }
    writeEnd(board);
}

} // namespace tailpoint::explaining
